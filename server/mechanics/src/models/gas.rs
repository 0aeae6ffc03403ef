//! Compressed air: mass flow through a valve by ISO 6358-1 and gas that follows p V^n = constant.

use super::atmosphere::GAS_CONSTANT;

/// Density at the reference conditions of ISO 6358 (ISO 8778), kg/m3.
pub const REFERENCE_DENSITY: f64 = 1.185;
/// Temperature at those conditions, K.
pub const REFERENCE_TEMPERATURE: f64 = 293.15;

/// Pressure ratio above which the flow is taken to fall in a straight line to nothing at 1. The
/// ellipse of ISO 6358 is infinitely steep there, which no real valve is and no solver can follow.
const NEARLY_EQUAL: f64 = 0.99;

/// One over what is left of equality there.
const PER_NEARLY_EQUAL: f64 = 100.0;

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
            ellipse(NEARLY_EQUAL) * (1.0 - ratio) * PER_NEARLY_EQUAL
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
    /// The same for each pascal, kg/(s Pa), and one over what the critical ratio leaves of equality.
    choked_for_each: f64,
    over_span: f64,
    /// Flow when full for each pascal of difference where the pressures are nearly equal, kg/(s Pa).
    near: f64,
    /// One over its mass when full, 1/kg, and over its volume, 1/m3.
    over_mass: f64,
    over_volume: f64,
    /// One over the gas constant times its temperature when full, kg/J.
    over_gas: f64,
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
        let mass = pressure * volume / (GAS_CONSTANT * temperature);
        let choked = valve.choked(pressure, temperature);
        Reservoir {
            pressure,
            temperature,
            mass,
            valve,
            choked,
            choked_for_each: choked / pressure,
            over_span: 1.0 / (1.0 - valve.critical_ratio),
            near: choked * valve.share(NEARLY_EQUAL) * PER_NEARLY_EQUAL / pressure,
            over_mass: 1.0 / mass,
            over_volume: 1.0 / volume,
            over_gas: 1.0 / (GAS_CONSTANT * temperature),
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
    #[inline]
    pub fn flow(&self, root: f64, open: f64, downstream: f64) -> Inflow {
        let (upstream, root) = (self.pressure(root), root.max(LEAST_ROOT));
        let (square, over_root) = (root * root, 1.0 / root);
        let over_square = over_root * over_root;
        // All pressures in pascals, so that only the root is divided by: choked flow goes with the pressure over the root
        // of the temperature, which is the sixth power, and so with the pressure over the root.
        let past = (downstream - self.valve.critical_ratio * upstream) * self.over_span;
        let flow = if upstream <= downstream {
            0.0
        } else if past <= 0.0 {
            self.choked * (square * square) * square
        } else if downstream < NEARLY_EQUAL * upstream {
            self.choked_for_each * over_root * f64::sqrt(upstream * upstream - past * past)
        } else {
            self.near * over_root * (upstream - downstream)
        };
        let flow = open * flow;
        Inflow {
            flow,
            temperature: self.temperature * square,
            root_rate: -0.2 * self.over_mass * flow * (over_square * over_square),
        }
    }
}

/// A cylinder that stands while it is filled through a valve that opens evenly.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Standing {
    /// Absolute pressure at first, Pa.
    pub pressure: f64,
    /// m3.
    pub volume: f64,
    /// How long the valve takes to open, s.
    pub opening: f64,
}

/// When a standing cylinder is filled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filled {
    /// s.
    pub time: f64,
    /// Root of what is left in the reservoir.
    pub root: f64,
}

/// Gauss's rule of four points (Abramowitz and Stegun, table 25.4).
fn integral(from: f64, to: f64, value: impl Fn(f64) -> f64) -> f64 {
    let (half, middle) = (0.5 * (to - from), 0.5 * (from + to));
    let pair = |place: f64| value(middle - half * place) + value(middle + half * place);
    let near = 0.652_145_154_862_546_1 * pair(0.339_981_043_584_856_3);
    let far = 0.347_854_845_137_453_9 * pair(0.861_136_311_594_052_6);
    half * (near + far)
}

impl Reservoir {
    /// When a standing cylinder is filled to an absolute pressure; none where it never is.
    ///
    /// What one volume loses in pressure times volume the other gains, since no heat flows and no work is done. The root
    /// falls with its own square, the share of choked flow and the valve's opening: choked, all of that has a closed
    /// integral; on the ellipse one over its angle, and beyond one over the logarithm of what is left, both of them
    /// smooth: to a millionth of the time where the cylinder is the smaller, and to half a hundredth where it is forty
    /// times as large.
    pub fn fills(&self, standing: &Standing, to: f64) -> Option<Filled> {
        let (first, full) = (standing.pressure, self.pressure);
        // Pressure in the cylinder for each pascal that the reservoir loses.
        let gained = 1.0 / (standing.volume * self.over_volume);
        let critical = self.valve.critical_ratio;
        let together = first + gained * full;
        let lost_at = |ratio: f64| full - together / (ratio + gained);
        let log_at = |lost: f64| libm::log1p(-lost / full) / 7.0;
        let lost = ((to - first) / gained).max(0.0);
        let ratio = together / (full - lost) - gained;
        // So near to equal that the rest is lost in rounding, it never is.
        if lost >= lost_at(1.0) || ratio >= 1.0 - 1e-12 {
            return None;
        }
        let least = first / full;
        // What the valve's opening has to come to, for each part of the way.
        let choked = lost.min(lost_at(critical).max(0.0));
        let mut opened = libm::expm1(-log_at(choked));
        let slowness = |ratio: f64| {
            let root = libm::exp(log_at(lost_at(ratio)));
            1.0 / (7.0 * root * (ratio + gained))
        };
        let span = 1.0 - critical;
        if ratio > critical && least < NEARLY_EQUAL {
            let angle = |ratio: f64| libm::asin(((ratio - critical) / span).clamp(0.0, 1.0));
            let (from, until) = (angle(least), angle(ratio.min(NEARLY_EQUAL)));
            let on_ellipse = |angle: f64| slowness(critical + span * libm::sin(angle));
            opened += span * integral(from, until, on_ellipse);
        }
        if ratio > NEARLY_EQUAL {
            let left = |ratio: f64| -libm::log(1.0 - ratio);
            let (from, until) = (left(least.max(NEARLY_EQUAL)), left(ratio));
            let nearly = |left: f64| slowness(1.0 - libm::exp(-left));
            opened += self.choked_for_each / self.near * integral(from, until, nearly);
        }
        // Nothing of a way may round to less.
        let opened = opened.max(0.0) * 5.0 * self.mass / self.choked;
        let opening = standing.opening;
        Some(Filled {
            time: if opened < 0.5 * opening {
                f64::sqrt(2.0 * opening * opened)
            } else {
                opened + 0.5 * opening
            },
            root: libm::exp(log_at(lost)),
        })
    }

    /// Looks at a standing cylinder on its way to an absolute pressure, that one not among them: when, and the pressure, Pa.
    pub fn filling(&self, standing: &Standing, to: f64) -> impl Iterator<Item = (Filled, f64)> {
        let rise = (to - standing.pressure) / f64::from(FILLING_LOOKS);
        (0..FILLING_LOOKS).filter_map(move |look| {
            let pressure = standing.pressure + rise * f64::from(look);
            Some((self.fills(standing, pressure)?, pressure))
        })
    }
}

/// Looks at a cylinder on its way to a pressure.
const FILLING_LOOKS: u32 = 8;

/// A cylinder that is being filled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cylinder {
    /// Absolute, Pa.
    pub pressure: f64,
    /// m3.
    pub volume: f64,
    /// How fast the volume grows, m3/s.
    pub growth: f64,
    /// How fast that grows, m3/s2.
    pub surge: f64,
}

/// How fast both ends of a valve change.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Filling {
    /// The root of what is left in the reservoir, 1/s.
    pub root: f64,
    /// Absolute pressure in the cylinder, Pa/s.
    pub pressure: f64,
}

/// How fast a cylinder is followed as it comes back to nearly the reservoir's pressure, 1/s: within four thousandths
/// of a second, chosen here. It may be faster still, and steps small enough for that would see nothing else.
const QUICK: f64 = 250.0;

impl Reservoir {
    /// How fast reservoir and cylinder change, the valve `open` so far.
    ///
    /// Where both pressures are nearly equal the cylinder lags behind the reservoir by as much as its growth draws
    /// through the valve, and comes back to that lag faster than anything else happens. What it comes back to is
    /// right to the first order of the lag's own change, a valve that still opens left out; how fast it comes back, from
    /// nearby, is held to what steps can follow. For moments some gas may be taken to flow back.
    #[inline]
    pub fn fill(&self, root: f64, open: f64, cylinder: &Cylinder) -> Filling {
        let lag = self.pressure(root) - cylinder.pressure;
        if lag > 0.0 && lag * PER_NEARLY_EQUAL < cylinder.pressure + lag {
            return self.nearly_filled(root, open, cylinder, lag);
        }
        let inflow = self.flow(root, open, cylinder.pressure);
        // First law: n (R T m' - p V') / V. With no inflow this is p V^n = constant.
        let over_volume = 1.0 / cylinder.volume;
        let brought = GAS_CONSTANT * inflow.temperature * inflow.flow;
        Filling {
            root: inflow.root_rate,
            pressure: ADIABATIC * (brought - cylinder.pressure * cylinder.growth) * over_volume,
        }
    }

    /// The same where flow goes with the lag of the cylinder's pressure behind the reservoir's.
    fn nearly_filled(&self, root: f64, open: f64, cylinder: &Cylinder, lag: f64) -> Filling {
        let Cylinder {
            pressure,
            volume,
            growth,
            surge,
        } = *cylinder;
        let upstream = pressure + lag;
        let root = root.max(LEAST_ROOT);
        let over_root = 1.0 / root;
        let gas = GAS_CONSTANT * self.temperature * (root * root);
        // For each pascal of lag: the flow, and what it does to the lag.
        let flow = open * self.near * over_root;
        let shared = 1.0 + volume * self.over_volume;
        let eased = ADIABATIC * (gas * flow * shared + growth);
        let over_volume = 1.0 / volume;
        // The root falls with the flow over the fourth power of itself.
        let over_square = over_root * over_root;
        let falls = 0.2 * self.over_mass * (over_square * over_square);
        let quick = eased * over_volume;
        if quick <= QUICK || growth < 0.0 {
            let rise = ADIABATIC * (gas * flow * lag - pressure * growth) * over_volume;
            return Filling {
                root: -falls * flow * lag,
                pressure: rise,
            };
        }
        let over_eased = 1.0 / eased;
        let drawn = ADIABATIC * upstream * over_eased;
        let at_once = drawn * growth;
        let emptied = 6.0 * falls * flow * at_once * over_root;
        let over_shared = 1.0 / shared;
        let shrunk = growth * self.over_volume * over_shared;
        let change = drawn * surge - at_once * (emptied + shrunk);
        let off = lag - (at_once - volume * change * over_eased);
        // From the end of where this holds it comes back as fast as it does.
        let most = upstream * (1.0 / PER_NEARLY_EQUAL) - at_once;
        let far = if most > 0.0 {
            (off / most).clamp(-1.0, 1.0)
        } else {
            1.0
        };
        let back = QUICK + (quick - QUICK) * far * far;
        // The flow is what both volumes' gas asks for together, so that none is lost.
        let drains = ADIABATIC * pressure * growth * self.over_volume;
        let rise = (back * off - change - drains) * over_shared;
        let over_gas = self.over_gas * over_square;
        Filling {
            root: -falls * (rise * volume * (1.0 / ADIABATIC) + pressure * growth) * over_gas,
            pressure: rise,
        }
    }
}

/// Area of a round bore less its rod, m2.
pub fn piston_area(bore: f64, rod: f64) -> f64 {
    core::f64::consts::FRAC_PI_4 * (bore * bore - rod * rod)
}
