//! Measurements as people write them, to SI and back. A value without its unit is refused: 62 may
//! be kilograms or pounds, and a rig must know.
//!
//! A cell may say by itself when and by whom it was taken, "62.5 kg on 2026-10-02 by Ada", where
//! that differs from the row's `measured_on` and `measured_by`.

use jiff::civil::Date;

use super::{
    cell::{date, quoted, text},
    error::Wrong,
};
use crate::person::Measurement;

/// International inch and pound: exact by the agreement of 1959 (NIST SP 811, appendix B).
const INCH: f64 = 0.0254;
const FOOT: f64 = 12.0 * INCH;
const POUND: f64 = 0.453_592_37;
const STONE: f64 = 14.0 * POUND;

/// One measurement cell.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct MeasuredCell {
    /// SI; shoe in EU size.
    pub(super) value: f64,
    /// When and by whom, where the cell says so itself.
    pub(super) taken: Option<(Date, Option<String>)>,
}

pub(super) fn measured(of: Measurement, cell: &str) -> Result<MeasuredCell, Wrong> {
    let (amount, taken) = match cell.split_once(" on ") {
        None => (cell, None),
        Some((amount, taken)) => {
            let (on, by) = match taken.split_once(" by ") {
                None => (taken, None),
                Some((on, by)) => (on, Some(text(by.trim())?)),
            };
            (amount, Some((date(on.trim())?, by)))
        }
    };
    let value = match of {
        Measurement::Mass => mass(amount)?,
        Measurement::Shoe => shoe(amount)?,
        _ => length(amount)?,
    };
    let (least, most) = bounds(of);
    if (least..=most).contains(&value) {
        Ok(MeasuredCell { value, taken })
    } else {
        Err(Wrong::new(
            format!(
                "{} is not from {} to {}",
                quoted(amount),
                write(of, least),
                write(of, most)
            ),
            "check the figure and its unit",
        ))
    }
}

/// A measurement as it is exported, so that reading it back gives the very same value.
pub(super) fn write(of: Measurement, value: f64) -> String {
    match of {
        Measurement::Mass => format!("{value} kg"),
        Measurement::Shoe => format!("{value}"),
        _ => {
            // Centimetres, as people say it, unless dividing by 100 again would not give the same
            // bits.
            let centimetres = tidy(value * 100.0);
            if centimetres / 100.0 == value {
                format!("{centimetres} cm")
            } else {
                format!("{value} m")
            }
        }
    }
}

/// A hundred times a decimal such as 1.13 leaves dust in the last bits (112.99999999999999).
fn tidy(value: f64) -> f64 {
    format!("{value:.6}").parse().unwrap_or(value)
}

/// What a body can measure: wide enough for any performer, child or giant, and narrow enough to
/// catch a slip of unit.
fn bounds(of: Measurement) -> (f64, f64) {
    match of {
        Measurement::Height => (0.5, 2.6),
        Measurement::Mass => (5.0, 300.0),
        Measurement::Chest | Measurement::Waist | Measurement::Hip => (0.3, 2.2),
        Measurement::Inseam | Measurement::Sleeve => (0.2, 1.3),
        Measurement::Neck => (0.15, 0.8),
        Measurement::Shoulder => (0.15, 0.9),
        Measurement::Head => (0.3, 0.8),
        Measurement::Shoe => (14.0, 60.0),
    }
}

fn length(amount: &str) -> Result<f64, Wrong> {
    let pieces = pieces(amount)?;
    let unit = |unit: &str| {
        Some(match unit {
            "mm" => 0.001,
            "cm" => 0.01,
            "m" => 1.0,
            "in" | "inch" | "inches" | "\"" => INCH,
            "ft" | "foot" | "feet" | "'" => FOOT,
            _ => return None,
        })
    };
    match pieces.as_slice() {
        [(number, name)] => match unit(name) {
            // Dividing keeps 172 cm at exactly 1.72; multiplying by 0.01 does not.
            Some(0.01) => Ok(number / 100.0),
            Some(0.001) => Ok(number / 1000.0),
            Some(size) => Ok(number * size),
            None => Err(unit_wrong(amount, name, "172 cm or 5 ft 8 in")),
        },
        [(feet, first), (inches, second)]
            if unit(first) == Some(FOOT) && unit(second) == Some(INCH) =>
        {
            if feet.fract() == 0.0 && (0.0..12.0).contains(inches) {
                Ok(feet * FOOT + inches * INCH)
            } else {
                Err(Wrong::new(
                    format!("{} is not feet and inches", quoted(amount)),
                    "write whole feet and less than 12 inches, for example 5 ft 8 in",
                ))
            }
        }
        _ => Err(Wrong::new(
            format!("{} is not a length", quoted(amount)),
            "write a number and its unit, for example 172 cm or 5 ft 8 in",
        )),
    }
}

fn mass(amount: &str) -> Result<f64, Wrong> {
    let pieces = pieces(amount)?;
    let is_pound = |unit: &str| matches!(unit, "lb" | "lbs" | "pound" | "pounds");
    match pieces.as_slice() {
        [(number, unit)] => match unit.as_str() {
            "kg" | "kgs" | "kilogram" | "kilograms" => Ok(*number),
            "st" | "stone" => Ok(number * STONE),
            unit if is_pound(unit) => Ok(number * POUND),
            unit => Err(unit_wrong(amount, unit, "62 kg or 140 lb")),
        },
        [(stones, first), (pounds, second)]
            if matches!(first.as_str(), "st" | "stone")
                && is_pound(second)
                && stones.fract() == 0.0
                && (0.0..14.0).contains(pounds) =>
        {
            Ok(stones * STONE + pounds * POUND)
        }
        _ => Err(Wrong::new(
            format!("{} is not a mass", quoted(amount)),
            "write a number and its unit, for example 62 kg or 140 lb",
        )),
    }
}

fn shoe(amount: &str) -> Result<f64, Wrong> {
    let lower = amount.to_lowercase();
    let bare = lower.trim().trim_start_matches("eu").trim_end_matches("eu");
    match pieces(bare)?.as_slice() {
        [(number, unit)] if unit.is_empty() => Ok(*number),
        _ => Err(Wrong::new(
            format!("{} is not a shoe size", quoted(amount)),
            "write the EU size, for example 42 or EU 42.5",
        )),
    }
}

fn unit_wrong(amount: &str, unit: &str, example: &str) -> Wrong {
    let problem = if unit.is_empty() {
        format!("{} has no unit", quoted(amount))
    } else {
        format!("{} has a unit that is not known here", quoted(amount))
    };
    Wrong::new(
        problem,
        format!("write a number and its unit, for example {example}"),
    )
}

/// Numbers and the units after them: "5 ft 8 in" is (5, ft), (8, in).
fn pieces(amount: &str) -> Result<Vec<(f64, String)>, Wrong> {
    let marks = amount
        .to_lowercase()
        .replace(['′', '’'], "'")
        .replace(['″', '”'], "\"");
    let mut pieces = Vec::new();
    let mut rest = marks.trim();
    while !rest.is_empty() {
        let is_number = |c: char| c.is_ascii_digit() || "+-.,".contains(c);
        let end = rest.find(|c| !is_number(c)).unwrap_or(rest.len());
        let (digits, after) = rest.split_at(end);
        let after = after.trim_start();
        // A dot after a unit belongs to it: 68 in.
        let ends_unit = |c: char| c != '.' && is_number(c) || c.is_whitespace();
        let end = after.find(ends_unit).unwrap_or(after.len());
        let (unit, after) = after.split_at(end);
        pieces.push((
            number(digits, amount)?,
            unit.trim_end_matches('.').to_owned(),
        ));
        rest = after.trim_start();
    }
    if pieces.is_empty() {
        Err(not_a_number(amount))
    } else {
        Ok(pieces)
    }
}

/// A plain decimal number with a point.
fn number(digits: &str, amount: &str) -> Result<f64, Wrong> {
    if digits.contains(',') {
        return Err(Wrong::new(
            format!("{} has a comma in its number", quoted(amount)),
            format!("write a decimal point: {}", amount.replace(',', ".")),
        ));
    }
    let unsigned = digits.strip_prefix(['-', '+']).unwrap_or(digits);
    let mut parts = unsigned.split('.');
    let plain = parts.clone().count() <= 2
        && unsigned.len() <= 30
        && parts.all(|part| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_digit()));
    if plain {
        digits.parse().map_err(|_| not_a_number(amount))
    } else {
        Err(not_a_number(amount))
    }
}

fn not_a_number(amount: &str) -> Wrong {
    Wrong::new(
        format!("{} has no plain number", quoted(amount)),
        "write digits 0 to 9 with a decimal point, then the unit",
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn measurements_are_read_as_people_write_them() {
        // Inch 25.4 mm and pound 0.45359237 kg exactly (NIST SP 811, appendix B.8).
        let cases = [
            (Measurement::Height, "172 cm", 1.72),
            (Measurement::Height, "1.72 m", 1.72),
            (Measurement::Height, "1720mm", 1.72),
            (Measurement::Height, "5 ft 8 in", 1.7272),
            (Measurement::Height, "5'8\"", 1.7272),
            (Measurement::Height, "5′ 8″", 1.7272),
            (Measurement::Height, "6ft", 1.8288),
            (Measurement::Height, "68 in.", 1.7272),
            (Measurement::Mass, "62 kg", 62.0),
            (Measurement::Mass, "62.5KG", 62.5),
            (Measurement::Mass, "140 lb", 63.502_931_8),
            (Measurement::Mass, "10 st 2 lb", 64.410_116_54),
            (Measurement::Shoe, "42", 42.0),
            (Measurement::Shoe, "EU 42.5", 42.5),
            (Measurement::Shoe, "39 eu", 39.0),
        ];
        for (of, cell, expected) in cases {
            let value = measured(of, cell).unwrap().value;
            assert!((value - expected).abs() < 1e-9, "{cell}: {value}");
        }
    }

    #[test]
    fn what_is_not_a_measurement_is_refused_with_a_fix() {
        let cases = [
            (Measurement::Mass, "62", "no unit", "62 kg"),
            (Measurement::Mass, "62,5 kg", "comma", "62.5 kg"),
            (Measurement::Mass, "62 stones", "not known", "62 kg"),
            (Measurement::Mass, "620 kg", "5 kg to 300 kg", "check"),
            (Measurement::Mass, "-62 kg", "5 kg to 300 kg", "check"),
            (Measurement::Mass, "nan kg", "no plain number", "digits"),
            (Measurement::Mass, "1e2 kg", "not a mass", "62 kg"),
            (Measurement::Mass, "10 st 14 lb", "not a mass", "62 kg"),
            (Measurement::Mass, "=62 kg", "no plain number", "digits"),
            (Measurement::Height, "172 m", "50 cm to 260 cm", "check"),
            (Measurement::Height, "172", "no unit", "172 cm"),
            (
                Measurement::Height,
                "5 ft 13 in",
                "feet and inches",
                "12 inches",
            ),
            (
                Measurement::Height,
                "5.5 ft 8 in",
                "feet and inches",
                "whole feet",
            ),
            (Measurement::Height, "5 in 8 ft", "not a length", "172 cm"),
            (Measurement::Height, "١٧٢ cm", "no plain number", "digits"),
            (Measurement::Shoe, "UK 8", "no plain number", "digits"),
            (Measurement::Shoe, "8 cm", "not a shoe size", "EU"),
            (
                Measurement::Mass,
                "62 kg on monday",
                "YYYY-MM-DD",
                "2027-03-08",
            ),
            (
                Measurement::Mass,
                "62 kg on 2026-10-02 by =x",
                "formula",
                "apostrophe",
            ),
        ];
        for (of, cell, problem, fix) in cases {
            let wrong = measured(of, cell).unwrap_err();
            assert!(wrong.problem.contains(problem), "{cell}: {}", wrong.problem);
            assert!(wrong.fix.contains(fix), "{cell}: {}", wrong.fix);
        }
    }

    #[test]
    fn a_cell_may_say_when_and_by_whom() {
        let cell = measured(
            Measurement::Mass,
            "62.5 kg on 2026-10-02 by Ada by the door",
        )
        .unwrap();
        assert_eq!(cell.value, 62.5);
        assert_eq!(
            cell.taken,
            Some((
                jiff::civil::date(2026, 10, 2),
                Some("Ada by the door".into())
            ))
        );
        let cell = measured(Measurement::Mass, "62.5 kg on 2026-10-02").unwrap();
        assert_eq!(cell.taken, Some((jiff::civil::date(2026, 10, 2), None)));
    }

    #[test]
    fn writing_and_reading_gives_the_same_bits() {
        for value in [
            1.72,
            1.13,
            1.7272,
            0.565,
            1.0 / 3.0,
            1.700_000_000_000_000_2,
        ] {
            let cell = write(Measurement::Height, value);
            assert_eq!(
                length(&cell).unwrap().to_bits(),
                f64::to_bits(value),
                "{cell}"
            );
        }
        assert_eq!(write(Measurement::Height, 1.13), "113 cm");
        assert_eq!(write(Measurement::Mass, 62.5), "62.5 kg");
    }
}
