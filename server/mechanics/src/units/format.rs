//! SI values as people read them: metric and imperial, with a sensible number of digits. Never a
//! thousands separator, so that whatever is written here can be read back by `parse`.

use super::{Quantity, table};

/// The number and unit to show in metric.
///
/// Three significant digits, but never fewer than the whole part has: `12.2`, `1870`, `0.0412`.
pub fn format_metric(quantity: Quantity, si: f64) -> (String, &'static str) {
    let size = si.abs();
    match quantity {
        Quantity::Length if size < 0.1 && size > 0.0 => (digits(si * 1000.0), "mm"),
        Quantity::Length => (digits(si), "m"),
        Quantity::Mass if size < 0.1 && size > 0.0 => (digits(si * 1000.0), "g"),
        Quantity::Mass => (digits(si), "kg"),
        Quantity::Time => time(si),
        Quantity::Speed => (digits(si), "m/s"),
        Quantity::Acceleration => (digits(si / table::GRAVITY), "g"),
        Quantity::Force if size < 1000.0 => (digits(si), "N"),
        Quantity::Force => (digits(si / 1000.0), "kN"),
        Quantity::Pressure if size < 1000.0 => (digits(si), "Pa"),
        Quantity::Pressure => (digits(si / 1.0e5), "bar"),
        Quantity::Temperature => (one_decimal(si - 273.15), "°C"),
        Quantity::Energy if size < 1000.0 => (digits(si), "J"),
        Quantity::Energy => (digits(si / 1000.0), "kJ"),
        Quantity::HeatFlux => (digits(si / 1000.0), "kW/m²"),
        Quantity::Angle => (digits(si / table::DEGREE), "°"),
        Quantity::Stiffness => (digits(si / 1000.0), "kN/m"),
        Quantity::Volume => (digits(si * 1000.0), "L"),
        Quantity::Area => (digits(si), "m²"),
        Quantity::ArealDensity => (digits(si), "kg/m²"),
        Quantity::Conductance => (digits(si * 1.0e8), "dm³/(s bar)"),
        Quantity::Rotation => (digits(si * 30.0 / core::f64::consts::PI), "rpm"),
        Quantity::Torque if size < 1000.0 => (digits(si), "N m"),
        Quantity::Torque => (digits(si / 1000.0), "kN m"),
        Quantity::Power if size < 1000.0 => (digits(si), "W"),
        Quantity::Power => (digits(si / 1000.0), "kW"),
        Quantity::Pixels => (digits(si), "px"),
        Quantity::Ratio => (ratio(si), ""),
        Quantity::Count => (count(si), ""),
    }
}

/// The number and unit to show in imperial; quantities without an imperial habit stay metric.
pub fn format_imperial(quantity: Quantity, si: f64) -> (String, &'static str) {
    let size = si.abs();
    match quantity {
        Quantity::Length if size < table::FOOT && size > 0.0 => (digits(si / table::INCH), "in"),
        Quantity::Length => (digits(si / table::FOOT), "ft"),
        Quantity::Mass => (digits(si / table::POUND), "lb"),
        Quantity::Speed => (digits(si * 3600.0 / (5280.0 * table::FOOT)), "mph"),
        Quantity::Force => (digits(si / table::POUND_FORCE), "lbf"),
        Quantity::Pressure => (
            digits(si * table::INCH * table::INCH / table::POUND_FORCE),
            "psi",
        ),
        Quantity::Temperature => (one_decimal(si * 9.0 / 5.0 - 459.67), "°F"),
        Quantity::Energy => (digits(si / (table::FOOT * table::POUND_FORCE)), "ft lbf"),
        Quantity::HeatFlux => (digits(si / 41_840.0), "cal/(cm² s)"),
        Quantity::Stiffness => (digits(si * table::INCH / table::POUND_FORCE), "lbf/in"),
        Quantity::Volume => (digits(si / table::US_GALLON), "US gal"),
        Quantity::Area => (digits(si / (table::FOOT * table::FOOT)), "ft²"),
        Quantity::ArealDensity => (
            digits(si * 16.0 * 9.0 * table::FOOT * table::FOOT / table::POUND),
            "oz/yd²",
        ),
        Quantity::Torque => (digits(si / (table::FOOT * table::POUND_FORCE)), "lbf ft"),
        Quantity::Power => (
            digits(si / (550.0 * table::FOOT * table::POUND_FORCE)),
            "hp",
        ),
        Quantity::Time
        | Quantity::Acceleration
        | Quantity::Angle
        | Quantity::Conductance
        | Quantity::Rotation
        | Quantity::Pixels
        | Quantity::Ratio
        | Quantity::Count => format_metric(quantity, si),
    }
}

/// A metric value in a sentence: `12.2 m`, `20°`, `7.2`.
pub fn say(quantity: Quantity, si: f64) -> String {
    join(format_metric(quantity, si))
}

/// A range in metric and imperial: `0.5 m to 70 m (1.64 ft to 230 ft)`.
pub fn say_range(quantity: Quantity, min: f64, max: f64) -> String {
    let metric = format!("{} to {}", say(quantity, min), say(quantity, max));
    let low = format_imperial(quantity, min);
    let high = format_imperial(quantity, max);
    if low == format_metric(quantity, min) && high == format_metric(quantity, max) {
        return metric;
    }
    format!("{metric} ({} to {})", join(low), join(high))
}

/// A number and its unit as one piece of text.
pub fn join((number, unit): (String, &'static str)) -> String {
    match unit {
        "" => number,
        "°" => format!("{number}°"),
        _ => format!("{number} {unit}"),
    }
}

/// A share, or a chance. A small one in words: nobody on a set reads exponents or counts noughts.
fn ratio(si: f64) -> String {
    if si > 0.0 && si < 1.0e-12 {
        return "under 1 in 1000000 million".to_owned();
    }
    if !(1.0e-12..1.000_5e-6).contains(&si) {
        return digits(si);
    }
    match digits(1.0e-6 / si).as_str() {
        "1" => "1 in a million".to_owned(),
        "1000" => "1 in a thousand million".to_owned(),
        millions => format!("1 in {millions} million"),
    }
}

fn time(si: f64) -> (String, &'static str) {
    let size = si.abs();
    if size > 0.0 && size < 0.1 {
        (digits(si * 1000.0), "ms")
    } else if size >= 120.0 {
        (digits(si / 60.0), "min")
    } else {
        (digits(si), "s")
    }
}

fn count(value: f64) -> String {
    tidy(format!("{value:.0}"))
}

fn one_decimal(value: f64) -> String {
    tidy(format!("{value:.1}"))
}

/// Three significant digits without an exponent where that stays readable; trailing zeros after the
/// point are dropped, since they would claim a precision that the inputs do not have.
fn digits(value: f64) -> String {
    let size = value.abs();
    // What rounding left over is nothing to anybody.
    if size < 1.0e-12 {
        return "0".to_owned();
    }
    if !(1.0e-6..1.0e15).contains(&size) {
        return format!("{value:.2e}");
    }
    let decimals = if size >= 99.95 {
        0
    } else if size >= 9.995 {
        1
    } else if size >= 0.9995 {
        2
    } else {
        // One more decimal for each further zero after the point.
        let mut decimals = 3;
        let mut edge = 0.099_95;
        while size < edge && decimals < 9 {
            decimals += 1;
            edge /= 10.0;
        }
        decimals
    };
    let written = format!("{value:.decimals$}");
    if written.contains('.') {
        tidy(
            written
                .trim_end_matches('0')
                .trim_end_matches('.')
                .to_owned(),
        )
    } else {
        tidy(written)
    }
}

/// A rounded negative nothing is nothing.
fn tidy(text: String) -> String {
    if text == "-0" || text == "-0.0" {
        text[1..].to_owned()
    } else {
        text
    }
}
