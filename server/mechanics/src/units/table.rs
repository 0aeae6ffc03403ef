//! The units of each quantity: how people spell them and what they are in SI. A table and a lookup;
//! reading numbers is `parse`'s work, choosing what to show is `format`'s.

use super::Quantity;

/// One unit: SI value = number * `factor` + `offset`.
pub(super) struct Unit {
    /// Spellings, the one to recommend first. Written without spaces, with plain digits for powers.
    pub names: &'static [&'static str],
    /// Multiplier to SI.
    pub factor: f64,
    /// Added after multiplying; only temperatures have one.
    pub offset: f64,
}

const fn unit(names: &'static [&'static str], factor: f64) -> Unit {
    Unit {
        names,
        factor,
        offset: 0.0,
    }
}

/// Metres in a foot, exact by the international yard and pound agreement of 1959.
pub(super) const FOOT: f64 = 0.3048;
/// Metres in an inch, exact.
pub(super) const INCH: f64 = 0.0254;
/// Kilograms in a pound, exact by the same agreement.
pub(super) const POUND: f64 = 0.453_592_37;
/// Standard gravity, exact (CGPM 1901).
pub(super) const GRAVITY: f64 = 9.806_65;
/// Newtons in a pound-force, exact from the two above.
pub(super) const POUND_FORCE: f64 = POUND * GRAVITY;
/// Radians in a degree.
pub(super) const DEGREE: f64 = core::f64::consts::PI / 180.0;
/// Cubic metres in a US gallon, exact (231 cubic inches).
pub(super) const US_GALLON: f64 = 231.0 * INCH * INCH * INCH;

static LENGTH: [Unit; 7] = [
    unit(&["m", "metre", "metres", "meter", "meters"], 1.0),
    unit(&["ft", "'", "foot", "feet"], FOOT),
    unit(&["in", "\"", "inch", "inches"], INCH),
    unit(&["cm"], 0.01),
    unit(&["mm"], 0.001),
    unit(&["km"], 1000.0),
    unit(&["yd", "yard", "yards"], 3.0 * FOOT),
];
static MASS: [Unit; 4] = [
    unit(
        &["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"],
        1.0,
    ),
    unit(&["lb", "lbs", "pound", "pounds"], POUND),
    unit(&["g", "gram", "grams"], 0.001),
    unit(&["t", "tonne", "tonnes"], 1000.0),
];
static TIME: [Unit; 4] = [
    unit(&["s", "sec", "secs", "second", "seconds"], 1.0),
    unit(&["min", "mins", "minute", "minutes"], 60.0),
    unit(&["ms"], 0.001),
    unit(&["h", "hr", "hrs", "hour", "hours"], 3600.0),
];
static SPEED: [Unit; 5] = [
    unit(&["m/s", "mps"], 1.0),
    unit(&["km/h", "kph", "kmh"], 1000.0 / 3600.0),
    unit(&["mph", "mi/h"], 5280.0 * FOOT / 3600.0),
    unit(&["ft/s", "fps"], FOOT),
    unit(&["kn", "kt", "kts", "knot", "knots"], 1852.0 / 3600.0),
];
static ACCELERATION: [Unit; 3] = [
    unit(&["g", "gs"], GRAVITY),
    unit(&["m/s2", "m/s/s"], 1.0),
    unit(&["ft/s2", "ft/s/s"], FOOT),
];
static FORCE: [Unit; 5] = [
    unit(&["N", "newton", "newtons"], 1.0),
    unit(&["kN"], 1000.0),
    unit(&["lbf"], POUND_FORCE),
    unit(&["kgf"], GRAVITY),
    unit(&["MN"], 1.0e6),
];
static PRESSURE: [Unit; 6] = [
    unit(&["bar"], 1.0e5),
    unit(&["kPa"], 1000.0),
    unit(&["psi"], POUND_FORCE / (INCH * INCH)),
    unit(&["Pa"], 1.0),
    unit(&["MPa"], 1.0e6),
    unit(&["mbar", "hPa"], 100.0),
];
static TEMPERATURE: [Unit; 3] = [
    Unit {
        names: &["C", "°C", "degC"],
        factor: 1.0,
        offset: 273.15,
    },
    // 459.67 degrees Fahrenheit lie between absolute zero and 0 F.
    Unit {
        names: &["F", "°F", "degF"],
        factor: 5.0 / 9.0,
        offset: 459.67 * 5.0 / 9.0,
    },
    unit(&["K", "kelvin"], 1.0),
];
static ENERGY: [Unit; 5] = [
    unit(&["J", "joule", "joules"], 1.0),
    unit(&["kJ"], 1000.0),
    unit(&["ftlbf", "ft-lbf", "ftlb", "ft-lb"], FOOT * POUND_FORCE),
    unit(&["cal"], 4.184),
    unit(&["MJ"], 1.0e6),
];
static HEAT_FLUX: [Unit; 4] = [
    unit(&["kW/m2"], 1000.0),
    unit(&["W/m2"], 1.0),
    unit(
        &["cal/cm2s", "cal/(cm2s)", "cal/cm2/s", "cal/s/cm2"],
        41_840.0,
    ),
    unit(&["W/cm2"], 1.0e4),
];
static ANGLE: [Unit; 2] = [
    unit(&["deg", "°", "degree", "degrees"], DEGREE),
    unit(&["rad", "radian", "radians"], 1.0),
];
static STIFFNESS: [Unit; 4] = [
    unit(&["kN/m"], 1000.0),
    unit(&["N/m"], 1.0),
    unit(&["N/mm"], 1000.0),
    unit(&["lbf/in"], POUND_FORCE / INCH),
];
static VOLUME: [Unit; 6] = [
    unit(
        &["L", "l", "litre", "litres", "liter", "liters", "dm3"],
        0.001,
    ),
    unit(&["m3"], 1.0),
    unit(&["mL", "ml", "cm3", "cc"], 1.0e-6),
    unit(&["USgal"], US_GALLON),
    unit(&["impgal"], 4.546_09e-3),
    unit(&["ft3", "cuft"], FOOT * FOOT * FOOT),
];
static AREA: [Unit; 5] = [
    unit(&["m2", "sqm"], 1.0),
    unit(&["cm2"], 1.0e-4),
    unit(&["mm2"], 1.0e-6),
    unit(&["ft2", "sqft"], FOOT * FOOT),
    unit(&["in2", "sqin"], INCH * INCH),
];
static AREAL_DENSITY: [Unit; 4] = [
    unit(&["kg/m2"], 1.0),
    unit(&["g/m2", "gsm"], 0.001),
    // An ounce is a sixteenth of a pound, a square yard nine square feet.
    unit(&["oz/yd2"], POUND / 16.0 / (9.0 * FOOT * FOOT)),
    unit(&["lb/ft2"], POUND / (FOOT * FOOT)),
];
static CONDUCTANCE: [Unit; 2] = [
    unit(
        &[
            "dm3/(sbar)",
            "dm3/sbar",
            "dm3/s/bar",
            "L/(sbar)",
            "L/sbar",
            "l/(sbar)",
            "l/s/bar",
        ],
        1.0e-8,
    ),
    unit(&["m3/(sPa)", "m3/sPa", "m3/s/Pa"], 1.0),
];
static ROTATION: [Unit; 3] = [
    unit(&["rpm", "rev/min"], core::f64::consts::PI / 30.0),
    unit(&["deg/s", "°/s"], DEGREE),
    unit(&["rad/s"], 1.0),
];
static TORQUE: [Unit; 3] = [
    unit(&["Nm", "N·m"], 1.0),
    unit(&["kNm", "kN·m"], 1000.0),
    unit(&["lbfft", "ftlbf", "ft-lbf"], FOOT * POUND_FORCE),
];
static POWER: [Unit; 3] = [
    unit(&["kW"], 1000.0),
    unit(&["W", "watt", "watts"], 1.0),
    // 550 foot-pounds-force a second.
    unit(&["hp"], 550.0 * FOOT * POUND_FORCE),
];
static PIXELS: [Unit; 1] = [unit(&["px", "pixel", "pixels"], 1.0)];
static RATIO: [Unit; 2] = [unit(&["", "x"], 1.0), unit(&["%", "percent", "pct"], 0.01)];
static COUNT: [Unit; 1] = [unit(&[""], 1.0)];

/// The units of a quantity, the ones to recommend first.
pub(super) fn units(quantity: Quantity) -> &'static [Unit] {
    match quantity {
        Quantity::Length => &LENGTH,
        Quantity::Mass => &MASS,
        Quantity::Time => &TIME,
        Quantity::Speed => &SPEED,
        Quantity::Acceleration => &ACCELERATION,
        Quantity::Force => &FORCE,
        Quantity::Pressure => &PRESSURE,
        Quantity::Temperature => &TEMPERATURE,
        Quantity::Energy => &ENERGY,
        Quantity::HeatFlux => &HEAT_FLUX,
        Quantity::Angle => &ANGLE,
        Quantity::Stiffness => &STIFFNESS,
        Quantity::Volume => &VOLUME,
        Quantity::Area => &AREA,
        Quantity::ArealDensity => &AREAL_DENSITY,
        Quantity::Conductance => &CONDUCTANCE,
        Quantity::Rotation => &ROTATION,
        Quantity::Torque => &TORQUE,
        Quantity::Power => &POWER,
        Quantity::Pixels => &PIXELS,
        Quantity::Ratio => &RATIO,
        Quantity::Count => &COUNT,
    }
}

/// The unit of that spelling. Exact case wins; another case is taken when only one unit fits it, so
/// that "KG" and "Bar" are read while "MN" and "mN" can never be taken for each other.
pub(super) fn find(quantity: Quantity, spelling: &str) -> Option<&'static Unit> {
    let all = units(quantity);
    if let Some(unit) = all.iter().find(|unit| unit.names.contains(&spelling)) {
        return Some(unit);
    }
    // A prefix's case carries its size, so these spellings are read only as written.
    if spelling == "mN" || spelling == "mPa" || spelling == "mJ" || spelling == "Mbar" {
        return None;
    }
    let mut fits = all.iter().filter(|unit| {
        unit.names
            .iter()
            .any(|name| name.eq_ignore_ascii_case(spelling))
    });
    match (fits.next(), fits.next()) {
        (Some(unit), None) => Some(unit),
        _ => None,
    }
}

/// Another quantity that has a unit spelt like this, to tell a person what they wrote.
pub(super) fn belongs_to(spelling: &str) -> Option<Quantity> {
    if spelling.is_empty() {
        return None;
    }
    Quantity::ALL
        .into_iter()
        .find(|quantity| find(*quantity, spelling).is_some())
}

/// The recommended spellings of a quantity's units, for error messages.
pub(super) fn suggestions(quantity: Quantity) -> String {
    match quantity {
        Quantity::Count => "a whole number".to_owned(),
        Quantity::Ratio => "a plain number, or %".to_owned(),
        Quantity::Conductance => "dm3/(s bar), m3/(s Pa)".to_owned(),
        Quantity::Torque => "N m, kN m, lbf ft".to_owned(),
        Quantity::Volume => "L, m3, mL, US gal, imp gal, ft3".to_owned(),
        Quantity::Energy => "J, kJ, ft lbf, cal, MJ".to_owned(),
        _ => units(quantity)
            .iter()
            .map(|unit| unit.names[0])
            .collect::<Vec<_>>()
            .join(", "),
    }
}
