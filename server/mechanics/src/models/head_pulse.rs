//! The head injury criterion of a half-sine pulse in closed form.
//!
//! The criterion takes the worst window (49 CFR 571.208 S6.2). For a pulse that rises and falls alike the worst
//! window of any length lies about its middle; over a share u of a half-sine of mean a and time T the mean is
//! a sin(pi u / 2) / u, so the criterion is T a^2.5 sin(pi u / 2)^2.5 u^-1.5. It is greatest where
//! tan(y) = 5 y / 3, y = pi u / 2, or at the longest window allowed when that is shorter.

use super::{GRAVITY, stopping::Stop};

/// The share of a half-sine's time that its worst window takes, 2 y / pi.
const WORST_SHARE: f64 = 0.670_229_663_649_656_3;

/// The criterion of a head that stops with a half-sine pulse, windows up to `window` seconds. No stop is none.
pub fn half_sine_criterion(stop: &Stop, window: f64) -> f64 {
    if stop.time <= 0.0 {
        return 0.0;
    }
    let share = (window / stop.time).min(WORST_SHARE);
    let mean = stop.mean / GRAVITY * libm::sin(core::f64::consts::FRAC_PI_2 * share) / share;
    mean * mean * f64::sqrt(mean) * share * stop.time
}
