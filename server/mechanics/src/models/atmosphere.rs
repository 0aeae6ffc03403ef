//! The standard atmosphere below 11 km: ISO 2533:1975, clause 2.

use super::{GRAVITY, STANDARD_ATMOSPHERE};

/// Specific gas constant of dry air, J/(kg K) (ISO 2533).
pub const GAS_CONSTANT: f64 = 287.052_87;
/// Temperature at mean sea level, K (ISO 2533).
const SEA_LEVEL_TEMPERATURE: f64 = 288.15;
/// Fall of temperature with height, K/m (ISO 2533, up to 11 km).
const LAPSE: f64 = 0.0065;

/// Temperature, K, at a geopotential height, m.
pub fn temperature(height: f64) -> f64 {
    SEA_LEVEL_TEMPERATURE - LAPSE * height
}

/// Pressure, Pa, at a geopotential height, m.
pub fn pressure(height: f64) -> f64 {
    let exponent = GRAVITY / (GAS_CONSTANT * LAPSE);
    STANDARD_ATMOSPHERE * libm::pow(temperature(height) / SEA_LEVEL_TEMPERATURE, exponent)
}

/// Density, kg/m3, at a geopotential height, m.
pub fn density(height: f64) -> f64 {
    pressure(height) / (GAS_CONSTANT * temperature(height))
}
