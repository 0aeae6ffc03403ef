//! Compressed air: mass flow through a valve by ISO 6358-1 and gas that follows p V^n = constant.

use super::atmosphere::GAS_CONSTANT;

/// Density at the reference conditions of ISO 6358 (ISO 8778), kg/m3.
pub const REFERENCE_DENSITY: f64 = 1.185;
/// Temperature at those conditions, K.
pub const REFERENCE_TEMPERATURE: f64 = 293.15;

/// Pressure ratio above which the flow is taken to fall in a straight line to nothing at 1. The
/// ellipse of ISO 6358 is infinitely steep there, which no real valve is and no solver can follow.
const NEARLY_EQUAL: f64 = 0.99;

/// A valve, as its maker states it by ISO 6358.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Valve {
    /// Sonic conductance C, m3/(s Pa).
    pub conductance: f64,
    /// Critical pressure ratio b.
    pub critical_ratio: f64,
}

impl Valve {
    /// Mass flow, kg/s, from absolute `upstream` pressure and temperature to absolute `downstream`.
    pub fn mass_flow(&self, upstream: f64, temperature: f64, downstream: f64) -> f64 {
        if upstream <= downstream || upstream <= 0.0 {
            return 0.0;
        }
        let choked = self.conductance
            * REFERENCE_DENSITY
            * upstream
            * libm::sqrt(REFERENCE_TEMPERATURE / temperature);
        let ratio = (downstream / upstream).max(0.0);
        if ratio <= self.critical_ratio {
            return choked;
        }
        let ellipse = |ratio: f64| {
            let past = (ratio - self.critical_ratio) / (1.0 - self.critical_ratio);
            choked * libm::sqrt((1.0 - past * past).max(0.0))
        };
        if ratio < NEARLY_EQUAL {
            ellipse(ratio)
        } else {
            ellipse(NEARLY_EQUAL) * (1.0 - ratio) / (1.0 - NEARLY_EQUAL)
        }
    }
}

/// Pressure after a gas that follows p V^n = constant goes from `volume` to `new_volume`.
pub fn polytropic_pressure(pressure: f64, volume: f64, new_volume: f64, exponent: f64) -> f64 {
    pressure * libm::pow(volume / new_volume, exponent)
}

/// Work the gas gives out on that way, J; `exponent` must not be 1.
pub fn polytropic_work(pressure: f64, volume: f64, new_volume: f64, exponent: f64) -> f64 {
    let after = polytropic_pressure(pressure, volume, new_volume, exponent);
    (pressure * volume - after * new_volume) / (exponent - 1.0)
}

/// Temperature over its first value when the pressure went to `pressure_ratio` of its first value.
pub fn polytropic_temperature_ratio(pressure_ratio: f64, exponent: f64) -> f64 {
    libm::pow(pressure_ratio, (exponent - 1.0) / exponent)
}

/// A reservoir that empties: its pressure and temperature follow what is left in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reservoir {
    /// Volume, m3.
    pub volume: f64,
    /// Absolute pressure when full, Pa.
    pub pressure: f64,
    /// Temperature when full, K.
    pub temperature: f64,
    /// Polytropic exponent.
    pub exponent: f64,
}

impl Reservoir {
    /// Mass when full, kg.
    pub fn mass(&self) -> f64 {
        self.pressure * self.volume / (GAS_CONSTANT * self.temperature)
    }

    /// Absolute pressure, Pa, and temperature, K, with `share` of the mass left.
    pub fn at(&self, share: f64) -> (f64, f64) {
        let share = share.max(1e-9);
        // Within rounding of the power, and asked for at every stage of every step.
        let cooling = libm::exp((self.exponent - 1.0) * libm::log(share));
        (self.pressure * share * cooling, self.temperature * cooling)
    }
}

/// How fast the absolute pressure in a cylinder changes, Pa/s, with gas coming in at `inflow` kg/s and
/// `temperature` while the volume grows at `growth` m3/s: n (R T m' - p V') / V. With no inflow this
/// is p V^n = constant.
pub fn cylinder_pressure_rate(
    pressure: f64,
    volume: f64,
    growth: f64,
    inflow: f64,
    temperature: f64,
    exponent: f64,
) -> f64 {
    exponent * (GAS_CONSTANT * temperature * inflow - pressure * growth) / volume
}

/// Area of a round bore less its rod, m2.
pub fn piston_area(bore: f64, rod: f64) -> f64 {
    core::f64::consts::FRAC_PI_4 * (bore * bore - rod * rod)
}
