//! Sound of a bang: levels, spreading, the speed of sound, and what many shots add up to in a day.
//!
//! Levels are in decibels over 20 micropascals (ISO 1683). A point source's pressure falls as one over the
//! distance; the speed of sound is that of ISO 9613-1; daily exposure is taken over 8 hours as in directive
//! 2003/10/EC and NIOSH publication 98-126, both with 3 dB for each doubling.

/// Pressure at 0 dB, Pa.
const REFERENCE: f64 = 20e-6;

/// Seconds in the 8 hours that a day's exposure is spread over.
const WORKING_DAY: f64 = 28_800.0;

/// Sound pressure of a level, Pa.
pub fn pressure(level: f64) -> f64 {
    REFERENCE * libm::pow(10.0, level / 20.0)
}

/// Level of a sound pressure, dB.
pub fn level(pressure: f64) -> f64 {
    20.0 * libm::log10(pressure / REFERENCE)
}

/// Speed of sound in air at a temperature in kelvin, m/s: 343.2 m/s at 20 degrees Celsius.
pub fn speed(temperature: f64) -> f64 {
    343.2 * f64::sqrt(temperature / 293.15)
}

/// A day's exposure to a number of shots of one exposure level, dB.
pub fn daily_exposure(shot: f64, shots: f64) -> f64 {
    shot + 10.0 * libm::log10(shots / WORKING_DAY)
}

/// A day's exposure as a share of what a daily level allows.
pub fn dose(daily: f64, allowed: f64) -> f64 {
    libm::pow(10.0, (daily - allowed) / 10.0)
}
