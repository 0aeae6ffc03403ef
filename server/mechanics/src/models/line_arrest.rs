//! A line that stops a falling or running body: the rope equation (Goldstone's "standard equation" for
//! climbing ropes, F = mg + sqrt((mg)^2 + 2 m g f EA)) and the same line with damping as an ODE.

use super::{
    GRAVITY,
    ode::{self, End, FINE, Point},
};

/// Peak tension, N, of an elastic line that stops a fall. `fall_factor` is the fall over the length
/// of line; `modulus` is EA: force per unit strain, N.
pub fn rope_equation(mass: f64, fall_factor: f64, modulus: f64) -> f64 {
    let weight = mass * GRAVITY;
    weight + f64::sqrt(weight * weight + 2.0 * weight * fall_factor * modulus)
}

/// The modulus EA, N, of a line whose peak is `peak` for that mass and fall factor.
pub fn modulus_from_peak(peak: f64, mass: f64, fall_factor: f64) -> f64 {
    let weight = mass * GRAVITY;
    (peak * peak - 2.0 * weight * peak) / (2.0 * weight * fall_factor)
}

/// A stop by a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stop {
    /// Highest tension, N.
    pub peak_tension: f64,
    /// Stretch when the body stands still, m.
    pub stretch: f64,
    /// Time from taut to standing still, s.
    pub time: f64,
}

/// A running body stopped by a taut elastic line along its way, no damping:
/// F = v sqrt(k m), x = v sqrt(m / k), t = (pi / 2) sqrt(m / k).
pub fn stop_running(mass: f64, speed: f64, stiffness: f64) -> Stop {
    let period = f64::sqrt(mass / stiffness);
    Stop {
        peak_tension: speed * f64::sqrt(stiffness * mass),
        stretch: speed * period,
        time: core::f64::consts::FRAC_PI_2 * period,
    }
}

/// A body stopped by a line with stiffness and a share of critical damping, pulled on by a steady
/// force (its weight for a fall, nothing for a run). None when it never stands still.
pub fn stop_damped(
    mass: f64,
    speed: f64,
    stiffness: f64,
    damping_share: f64,
    steady_force: f64,
) -> Option<Stop> {
    let damping = 2.0 * damping_share * f64::sqrt(stiffness * mass);
    // A line pulls and never pushes.
    let tension = |y: &[f64; 2]| (stiffness * y[0] + damping * y[1]).max(0.0);
    let period = f64::sqrt(mass / stiffness);
    let accuracy = ode::Accuracy {
        longest_step: period * 0.02,
        ..FINE
    };
    let mut peak = 0.0_f64;
    let end = ode::integrate(
        |_, y: &[f64; 2]| [y[1], (steady_force - tension(y)) / mass],
        Point {
            t: 0.0,
            y: [0.0, speed],
        },
        period * 200.0,
        accuracy,
        |point| point.y[1],
        |point| peak = peak.max(tension(&point.y)),
    );
    match end {
        End::Event(point) => Some(Stop {
            peak_tension: peak,
            stretch: point.y[0],
            time: point.t,
        }),
        _ => None,
    }
}
