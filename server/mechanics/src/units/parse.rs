//! What a person typed, read as a quantity: a number, a unit and perhaps a tolerance. Refusals name
//! what was read and what would be right. It never guesses between two readings.

use super::{Quantity, table};

/// A value as entered, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// The value.
    pub value: f64,
    /// Plus or minus, when one was written.
    pub tolerance: Option<f64>,
}

/// Why a text is not a quantity. Every message quotes the text and says what to write instead.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum UnitError {
    /// Nothing was written.
    #[error("nothing was written; give a {quantity}, in {units}")]
    Empty {
        /// The kind of quantity wanted.
        quantity: &'static str,
        /// Units that would be right.
        units: String,
    },
    /// The text does not start with a number.
    #[error("\"{text}\" does not start with a number; give a {quantity}, in {units}")]
    NotANumber {
        /// What was read.
        text: String,
        /// The kind of quantity wanted.
        quantity: &'static str,
        /// Units that would be right.
        units: String,
    },
    /// Not a number, infinite, or too large to hold.
    #[error("\"{text}\" is not a finite number; give an ordinary {quantity}, in {units}")]
    NotFinite {
        /// What was read.
        text: String,
        /// The kind of quantity wanted.
        quantity: &'static str,
        /// Units that would be right.
        units: String,
    },
    /// The comma could be a decimal mark or a thousands mark.
    #[error(
        "\"{text}\": the comma could be read as {decimal} or as {thousands}; write one of those"
    )]
    AmbiguousComma {
        /// What was read.
        text: String,
        /// The reading as a decimal mark.
        decimal: String,
        /// The reading as a thousands mark.
        thousands: String,
    },
    /// A number with no unit.
    #[error("\"{text}\" has no unit; write it with one of {units}")]
    MissingUnit {
        /// What was read.
        text: String,
        /// Units that would be right.
        units: String,
    },
    /// A unit of another kind of quantity.
    #[error("\"{unit}\" in \"{text}\" is a unit of {other}, not of {quantity}; use {units}")]
    WrongUnit {
        /// What was read.
        text: String,
        /// The unit found.
        unit: String,
        /// What that unit measures.
        other: &'static str,
        /// The kind of quantity wanted.
        quantity: &'static str,
        /// Units that would be right.
        units: String,
    },
    /// Neither a unit nor part of the number.
    #[error("\"{unit}\" in \"{text}\" is not a unit of {quantity}; use {units}")]
    UnknownUnit {
        /// What was read.
        text: String,
        /// The piece not understood.
        unit: String,
        /// The kind of quantity wanted.
        quantity: &'static str,
        /// Units that would be right.
        units: String,
    },
    /// The tolerance is negative, of another kind, or has no one meaning.
    #[error("the tolerance in \"{text}\": {problem}")]
    Tolerance {
        /// What was read.
        text: String,
        /// What is wrong and what to write.
        problem: String,
    },
    /// A temperature below absolute zero.
    #[error("\"{text}\" is below absolute zero (-273.15 °C); check the number and its unit")]
    BelowAbsoluteZero {
        /// What was read.
        text: String,
    },
    /// A count with a fraction, or below nothing.
    #[error("\"{text}\" is not a whole number of things; write 0, 1, 2 and so on")]
    NotWhole {
        /// What was read.
        text: String,
    },
}

/// Longest text looked at; nothing a person means is longer.
const LONGEST: usize = 80;

/// Reads a quantity as people write it: `30m`, `5'6"`, `90 psi`, `30 m ± 0.5 m`, `30m +-2%`.
///
/// A tolerance may be in its own unit, bare (then in the value's unit), or in per cent of the value.
/// For a ratio, a tolerance in per cent means percentage points, as in `40 % ± 5 %`. A comma is read
/// as a decimal or thousands mark only when it can be just one of them.
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

/// `3:40`, the way rescue drills are written down; none when the text is not that.
fn minutes_and_seconds(text: &str) -> Option<f64> {
    let (minutes, seconds) = text.trim().split_once(':')?;
    let whole = |part: &str| -> Option<f64> {
        if part.is_empty() || part.len() > 4 || !part.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
        part.parse::<f64>().ok()
    };
    let (minutes, seconds) = (whole(minutes)?, whole(seconds)?);
    (seconds < 60.0).then_some(minutes * 60.0 + seconds)
}

/// One spelling for the many marks that mean the same.
fn normalise(text: &str) -> String {
    text.chars()
        .filter(|c| *c != '^')
        .map(|c| match c {
            '²' => '2',
            '³' => '3',
            '′' | '’' | '‘' => '\'',
            '″' | '”' | '“' => '"',
            '−' | '–' => '-',
            '·' | '⋅' | '*' | '\u{a0}' | '\u{202f}' => ' ',
            'º' | '˚' => '°',
            '％' => '%',
            other => other,
        })
        .collect()
}

/// The value's text and the tolerance's.
fn split_tolerance(text: &str) -> (&str, Option<&str>) {
    ["±", "+/-", "+-"]
        .iter()
        .find_map(|mark| text.split_once(mark))
        .map_or((text, None), |(value, tolerance)| (value, Some(tolerance)))
}

/// Where the number at the start of a text ends, in bytes.
fn number_end(text: &str) -> usize {
    let bytes = text.as_bytes();
    let mut end = 0;
    if matches!(bytes.first(), Some(b'+' | b'-')) {
        end = 1;
    }
    while matches!(bytes.get(end), Some(b'0'..=b'9' | b'.' | b',')) {
        end += 1;
    }
    // An exponent only when digits follow, so that no unit's letter is swallowed.
    if matches!(bytes.get(end), Some(b'e' | b'E')) {
        let mut next = end + 1;
        if matches!(bytes.get(next), Some(b'+' | b'-')) {
            next += 1;
        }
        let digits = next;
        while matches!(bytes.get(next), Some(b'0'..=b'9')) {
            next += 1;
        }
        if next > digits {
            end = next;
        }
    }
    end
}

fn leading_digits(text: &str) -> Option<&str> {
    let end = text.bytes().take_while(u8::is_ascii_digit).count();
    (end > 0).then(|| &text[..end])
}

enum Commas {
    Plain(String),
    Ambiguous { decimal: String, thousands: String },
    Broken,
}

/// Reads commas only where they can mean one thing: `1,5` and `0,250` are decimals, `1,200.5` and
/// `1,200,000` have thousands, `1,200` could be either.
fn commas(written: &str) -> Commas {
    let Some((head, tail)) = written.split_once(',') else {
        return Commas::Plain(written.to_owned());
    };
    let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    let unsigned = head.trim_start_matches(['+', '-']);
    if !digits(unsigned) || unsigned.is_empty() {
        return Commas::Broken;
    }
    let grouped = |whole: &str| {
        whole
            .split(',')
            .skip(1)
            .all(|group| group.len() == 3 && digits(group))
            && unsigned.len() <= 3
    };
    if let Some((whole, fraction)) = written.split_once('.') {
        return if grouped(whole) && digits(fraction) {
            Commas::Plain(written.replace(',', ""))
        } else {
            Commas::Broken
        };
    }
    if tail.contains(',') {
        return if grouped(written) {
            Commas::Plain(written.replace(',', ""))
        } else {
            Commas::Broken
        };
    }
    if tail.is_empty() || !digits(tail) {
        return Commas::Broken;
    }
    if tail.len() == 3 && unsigned.len() <= 3 && !unsigned.starts_with('0') {
        return Commas::Ambiguous {
            decimal: written.replace(',', "."),
            thousands: written.replace(',', ""),
        };
    }
    Commas::Plain(written.replace(',', "."))
}
