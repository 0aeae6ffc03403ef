//! What a person typed, read as a quantity: a number, a unit and perhaps a tolerance. Refusals name
//! what was read and what would be right. It never guesses between two readings.

use super::{
    Quantity,
    refusal::UnitError,
    table,
    text::{
        Commas, commas, leading_digits, minutes_and_seconds, normalise, number_end, one_in,
        split_tolerance,
    },
};

/// A value as entered, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// The value.
    pub value: f64,
    /// Plus or minus, when one was written.
    pub tolerance: Option<f64>,
}

/// Longest text looked at; nothing a person means is longer.
const LONGEST: usize = 80;

/// Reads a quantity as people write it: `30m`, `5'6"`, `90 psi`, `30 m ± 0.5 m`, `30m +-2%`.
///
/// A tolerance may be in its own unit, bare (then in the value's unit), or in per cent of the value.
/// For a ratio, a tolerance in per cent means percentage points, as in `40 % ± 5 %`. A comma is read
/// as a decimal or thousands mark only when it can be just one of them.
///
/// ```
/// use gagwright_mechanics::{Quantity, units::parse};
///
/// let drop = parse(Quantity::Length, "46 ft ± 1 ft")?;
/// assert_eq!(drop.value, 46.0 * 0.3048);
/// assert_eq!(drop.tolerance, Some(0.3048));
///
/// let refused = parse(Quantity::Length, "46 kg").unwrap_err();
/// assert_eq!(
///     refused.to_string(),
///     "\"kg\" in \"46 kg\" is a unit of mass, not of length; use m, ft, in, cm, mm, km, yd"
/// );
/// # Ok::<(), gagwright_mechanics::units::UnitError>(())
/// ```
///
/// # Errors
/// Says what was read and which units would be right; see [`UnitError`].
pub fn parse(quantity: Quantity, text: &str) -> Result<Measured, UnitError> {
    let shown: String = text.trim().chars().take(LONGEST).collect();
    let context = Context {
        quantity,
        text: &shown,
    };
    if shown.is_empty() {
        return Err(UnitError::Empty {
            quantity: quantity.title(),
            units: context.units(),
        });
    }
    if text.trim().chars().count() > LONGEST {
        return Err(context.unknown(&shown));
    }
    if let Some(value) = one_in(&shown).filter(|_| quantity == Quantity::Ratio) {
        let tolerance = None;
        return Ok(Measured { value, tolerance });
    }
    let plain = normalise(&shown);
    let (main, tolerance) = split_tolerance(&plain);
    let (value, unit) = context.read(main, None)?;
    let value = context.accept(value, unit)?;
    let tolerance = match tolerance {
        None => None,
        Some(text) => Some(context.tolerance(text, value, unit)?),
    };
    Ok(Measured { value, tolerance })
}

/// What every refusal needs to say.
struct Context<'a> {
    quantity: Quantity,
    text: &'a str,
}

/// A number already in SI apart from a temperature's offset, or in its unit.
type Read = (f64, &'static table::Unit);

impl Context<'_> {
    fn units(&self) -> String {
        table::suggestions(self.quantity)
    }

    fn unknown(&self, unit: &str) -> UnitError {
        let text = self.text.to_owned();
        let unit = unit.to_owned();
        let quantity = self.quantity.title();
        let units = self.units();
        match table::belongs_to(&unit) {
            Some(other) if other != self.quantity => UnitError::WrongUnit {
                text,
                unit,
                other: other.title(),
                quantity,
                units,
            },
            _ => UnitError::UnknownUnit {
                text,
                unit,
                quantity,
                units,
            },
        }
    }

    fn not_finite(&self) -> UnitError {
        UnitError::NotFinite {
            text: self.text.to_owned(),
            quantity: self.quantity.title(),
            units: self.units(),
        }
    }

    /// Number and unit; a bare number takes `fallback`.
    fn read(&self, text: &str, fallback: Option<&'static table::Unit>) -> Result<Read, UnitError> {
        if self.quantity == Quantity::Length
            && let Some(result) = self.feet_and_inches(text)
        {
            return result;
        }
        if self.quantity == Quantity::Time
            && let Some(seconds) = minutes_and_seconds(text)
        {
            return Ok((seconds, &table::units(Quantity::Time)[0]));
        }
        let (number, rest) = self.number(text)?;
        let spelling: String = rest.chars().filter(|c| !c.is_whitespace()).collect();
        if spelling.is_empty()
            && let Some(unit) = fallback
        {
            return Ok((number, unit));
        }
        match table::find(self.quantity, &spelling) {
            Some(unit) => Ok((number, unit)),
            None if spelling.is_empty() => Err(UnitError::MissingUnit {
                text: self.text.to_owned(),
                units: self.units(),
            }),
            None => Err(self.unknown(&spelling)),
        }
    }

    /// The SI value, if it is one that can exist.
    fn accept(&self, number: f64, unit: &table::Unit) -> Result<f64, UnitError> {
        let value = number * unit.factor + unit.offset;
        if !value.is_finite() {
            return Err(self.not_finite());
        }
        if self.quantity == Quantity::Temperature && value < 0.0 {
            return Err(UnitError::BelowAbsoluteZero {
                text: self.text.to_owned(),
            });
        }
        if self.quantity == Quantity::Count && (value < 0.0 || value.fract() != 0.0) {
            return Err(UnitError::NotWhole {
                text: self.text.to_owned(),
            });
        }
        Ok(value)
    }

    fn tolerance(
        &self,
        text: &str,
        value: f64,
        unit: &'static table::Unit,
    ) -> Result<f64, UnitError> {
        let refuse = |problem: String| UnitError::Tolerance {
            text: self.text.to_owned(),
            problem,
        };
        let text = text.trim();
        let tolerance = match text.strip_suffix('%') {
            Some(share) if self.quantity != Quantity::Ratio => {
                if self.quantity == Quantity::Temperature {
                    return Err(refuse(
                        "a share of a temperature depends on where its scale starts; write degrees, \
                         for example 20 C ± 2 C"
                            .to_owned(),
                    ));
                }
                let (number, rest) = self.number(share)?;
                if !rest.trim().is_empty() {
                    return Err(self.unknown(rest.trim()));
                }
                value.abs() * number / 100.0
            }
            _ if text.is_empty() => {
                return Err(refuse(format!(
                    "nothing follows the ±; write it in {}",
                    self.units()
                )));
            }
            _ => {
                let (number, unit) = self.read(text, Some(unit))?;
                // A difference of temperatures has no offset.
                number * unit.factor
            }
        };
        if !tolerance.is_finite() {
            return Err(self.not_finite());
        }
        if tolerance < 0.0 {
            return Err(refuse(
                "it is negative; write how far either way, such as ± 0.5".to_owned(),
            ));
        }
        Ok(tolerance)
    }

    /// The number a text starts with, and what follows it.
    fn number<'t>(&self, text: &'t str) -> Result<(f64, &'t str), UnitError> {
        let text = text.trim();
        let lower = text.to_ascii_lowercase();
        let unsigned = lower.trim_start_matches(['+', '-']);
        if ["nan", "inf", "∞"]
            .iter()
            .any(|word| unsigned.starts_with(word))
        {
            return Err(self.not_finite());
        }
        let end = number_end(text);
        let (written, rest) = text.split_at(end);
        if !written.contains(|c: char| c.is_ascii_digit()) {
            return Err(UnitError::NotANumber {
                text: self.text.to_owned(),
                quantity: self.quantity.title(),
                units: self.units(),
            });
        }
        // A fraction such as 3/8 in, which wire and hose sizes are spoken in.
        if let Some(after) = rest.strip_prefix('/')
            && let Some(below) = leading_digits(after)
        {
            let above = self.decimal(written)?;
            let divisor = self.decimal(below)?;
            if divisor == 0.0 {
                return Err(self.not_finite());
            }
            return Ok((above / divisor, &after[below.len()..]));
        }
        let value = self.decimal(written)?;
        if !value.is_finite() {
            return Err(self.not_finite());
        }
        Ok((value, rest))
    }

    /// A number's digits, with commas resolved.
    fn decimal(&self, written: &str) -> Result<f64, UnitError> {
        let plain = match commas(written) {
            Commas::Plain(plain) => plain,
            Commas::Ambiguous { decimal, thousands } => {
                return Err(UnitError::AmbiguousComma {
                    text: self.text.to_owned(),
                    decimal,
                    thousands,
                });
            }
            Commas::Broken => return Err(self.unknown(written)),
        };
        plain.parse::<f64>().map_err(|_| self.unknown(written))
    }

    /// `5'6"`, `5 ft 6 in`; none when the text is not feet followed by inches.
    fn feet_and_inches(&self, text: &str) -> Option<Result<Read, UnitError>> {
        let text = text.trim();
        let (negative, text) = match text.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, text),
        };
        let (feet, after) = ["feet", "foot", "ft", "'"]
            .iter()
            .find_map(|mark| text.split_once(mark))?;
        let after = after.trim();
        if after.is_empty() || !after.starts_with(|c: char| c.is_ascii_digit()) {
            return None;
        }
        let inches = ["inches", "inch", "in", "\""]
            .iter()
            .find_map(|mark| after.strip_suffix(mark))?;
        let read = || -> Result<Read, UnitError> {
            let (feet, rest) = self.number(feet)?;
            let (inches, rest_of_inches) = self.number(inches)?;
            for rest in [rest.trim(), rest_of_inches.trim()] {
                if !rest.is_empty() {
                    return Err(self.unknown(rest));
                }
            }
            let metres = feet * table::FOOT + inches * table::INCH;
            Ok((
                if negative { -metres } else { metres },
                &table::units(Quantity::Length)[0],
            ))
        };
        Some(read())
    }
}
