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
        self.choked(upstream, temperature) * self.share(downstream / upstream)
    }

    /// Mass flow, kg/s, that no lower pressure behind the valve makes greater.
    fn choked(&self, upstream: f64, temperature: f64) -> f64 {
        self.conductance
            * REFERENCE_DENSITY
            * upstream
            * f64::sqrt(REFERENCE_TEMPERATURE / temperature)
    }

    /// Share of it that flows at a ratio of the pressures behind and before, up to 1.
    fn share(&self, ratio: f64) -> f64 {
        if ratio <= self.critical_ratio {
            return 1.0;
        }
        let ellipse = |ratio: f64| {
            let past = (ratio - self.critical_ratio) / (1.0 - self.critical_ratio);
            f64::sqrt((1.0 - past * past).max(0.0))
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

/// Polytropic exponent of air in what is over before heat can flow: adiabatic.
pub const ADIABATIC: f64 = 1.4;

/// The least root of what is left in a reservoir that is told apart from none: about a millionth of it.
const LEAST_ROOT: f64 = 0.06;

/// A reservoir of air that empties through a valve, faster than heat can flow: p V^n = constant with n = 7/5 ([`ADIABATIC`]),
/// so that pressure and temperature are whole powers of the fifth root of the mass left, and that root is what
/// is followed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reservoir {
    /// Absolute pressure when full, Pa.
    pressure: f64,
    /// Temperature when full, K.
    temperature: f64,
    /// Mass when full, kg.
    mass: f64,
    valve: Valve,
    /// Choked flow when full, kg/s.
    choked: f64,
}

/// What comes through the valve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inflow {
    /// Mass flow, kg/s.
    pub flow: f64,
    /// Its temperature, K.
    pub temperature: f64,
    /// How fast the root of what is left falls, 1/s.
    pub root_rate: f64,
}

impl Reservoir {
    /// A full one: its volume, m3, absolute pressure, Pa, and temperature, K.
    pub fn new(volume: f64, pressure: f64, temperature: f64, valve: Valve) -> Reservoir {
        Reservoir {
            pressure,
            temperature,
            mass: pressure * volume / (GAS_CONSTANT * temperature),
            valve,
            choked: valve.choked(pressure, temperature),
        }
    }

    /// Mass when full, kg.
    pub fn mass(&self) -> f64 {
        self.mass
    }

    /// Absolute pressure, Pa, with the fifth power of `root` of the mass left.
    pub fn pressure(&self, root: f64) -> f64 {
        let root = root.max(LEAST_ROOT);
        let square = root * root;
        self.pressure * (square * square) * (square * root)
    }

    /// Temperature, K.
    pub fn temperature(&self, root: f64) -> f64 {
        let root = root.max(LEAST_ROOT);
        self.temperature * (root * root)
    }

    /// What flows through the valve, `open` of it, to the absolute pressure `downstream`.
    pub fn flow(&self, root: f64, open: f64, downstream: f64) -> Inflow {
        let (upstream, root) = (self.pressure(root), root.max(LEAST_ROOT));
        let square = root * root;
        // Choked flow goes with the pressure over the root of the temperature: the sixth power.
        let flow = if upstream <= downstream {
            0.0
        } else {
            let choked = self.choked * (square * square) * square;
            open * choked * self.valve.share(downstream / upstream)
        };
        Inflow {
            flow,
            temperature: self.temperature * square,
            root_rate: -flow / (5.0 * self.mass * (square * square)),
        }
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
