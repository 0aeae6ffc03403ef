//! A blow that lands by mistake: two free masses that stop against each other (conservation of momentum, any text
//! on mechanics), with the strike slowing evenly to its end point before it is met.

use super::stopping::{self, Shape, Stop};

/// A head's share of a body's mass (P. de Leva, J. Biomechanics 29, 1996, men, from memory).
pub const HEAD_SHARE: f64 = 0.0694;

/// Speed of a strike that is slowed evenly to rest over `pulled`, met `early` before its end point, m/s.
pub fn speed_when_met(speed: f64, pulled: f64, early: f64) -> f64 {
    speed * f64::sqrt((early / pulled).clamp(0.0, 1.0))
}

/// The mass that a stop between two free bodies counts with, kg.
pub fn reduced_mass(one: f64, other: f64) -> f64 {
    one * other / (one + other)
}

/// A blow on a free mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blow {
    /// Energy that the stop takes up, J.
    pub energy: f64,
    /// Peak force, N.
    pub force: f64,
    /// The struck mass's own pulse.
    pub felt: Stop,
}

/// Stops a strike against a free mass over a distance, as a half-sine pulse. A prop that breaks lets no more force
/// through, and as a spring would, only the square of that share of the energy.
pub fn land(speed: f64, strike: f64, struck: f64, distance: f64, breaks_at: Option<f64>) -> Blow {
    let mass = reduced_mass(strike, struck);
    let stop = stopping::stop(speed, distance, Shape::HalfSine);
    let whole = mass * stop.peak;
    let share = match breaks_at {
        Some(limit) if limit < whole => limit / whole,
        _ => 1.0,
    };
    Blow {
        energy: 0.5 * mass * speed * speed * share * share,
        force: whole * share,
        felt: Stop {
            mean: stop.mean * mass / struck * share,
            peak: whole * share / struck,
            time: stop.time,
        },
    }
}
