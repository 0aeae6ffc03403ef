//! A straight fall from rest with quadratic drag, in closed form (any text on mechanics: with
//! terminal speed vt, v = vt sqrt(1 - exp(-2 g h / vt^2)) and h = (vt^2 / g) ln cosh(g t / vt)).

use super::GRAVITY;

/// The end of a fall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fall {
    /// Speed at the end, m/s.
    pub speed: f64,
    /// Time taken, s.
    pub time: f64,
}

/// Speed at which drag balances weight, m/s. `drag_area` is drag coefficient times area, m2.
pub fn terminal_speed(mass: f64, drag_area: f64, density: f64) -> f64 {
    f64::sqrt(2.0 * mass * GRAVITY / (density * drag_area))
}

/// A fall with no air.
pub fn in_vacuum(height: f64) -> Fall {
    Fall {
        speed: f64::sqrt(2.0 * GRAVITY * height),
        time: f64::sqrt(2.0 * height / GRAVITY),
    }
}

/// A fall with quadratic drag, given the terminal speed.
pub fn with_drag(height: f64, terminal_speed: f64) -> Fall {
    let square = terminal_speed * terminal_speed;
    // expm1 keeps the small difference from the vacuum fall when drag hardly matters.
    let share = -libm::expm1(-2.0 * GRAVITY * height / square);
    let rise = GRAVITY * height / square;
    // acosh(exp(rise)) = rise + ln(1 + sqrt(1 - exp(-2 rise))), which cannot overflow.
    let time =
        terminal_speed / GRAVITY * (rise + libm::log1p(f64::sqrt(-libm::expm1(-2.0 * rise))));
    Fall {
        speed: terminal_speed * f64::sqrt(share),
        time,
    }
}
