//! Inputs read against a technique's parameters: defaults filled in, and anything unknown, not finite,
//! out of range or of the wrong kind refused with the parameter's name, its range in metric and
//! imperial, and the fix. Every technique reads its inputs through here and nowhere else.

use std::sync::Arc;

use crate::{
    technique::{AssessError, InputValue, Inputs, Parameter, ParameterKind},
    units::say_range,
};

/// What is known of one parameter.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Entry {
    Number { value: f64, tolerance: f64 },
    Choice(&'static str),
    Unknown,
}

/// A technique's inputs, all checked. A parameter left out without a default is unknown.
#[derive(Clone, Debug)]
pub struct Values {
    parameters: &'static [Parameter],
    entries: Vec<Entry>,
    /// Where each parameter stands, found from its name's [`slot`] on; nothing where the table is empty.
    places: Arc<[u8; SLOTS]>,
}

/// Places of the table of names: several for each parameter, so that names seldom meet.
const SLOTS: usize = 256;

/// An empty place.
const EMPTY: u8 = u8::MAX;

/// Where to begin to look for a name: by its length and a few of its letters.
fn slot(name: &str) -> usize {
    let bytes = name.as_bytes();
    let Some(last) = bytes.len().checked_sub(1) else {
        return 0;
    };
    let letter = |at: usize| usize::from(bytes[at]);
    let mixed = letter(0) * 31 + letter(last) * 7 + letter(last / 2) * 101 + letter(last / 3) * 57;
    (mixed + last * 13) % SLOTS
}

fn table(parameters: &[Parameter]) -> Arc<[u8; SLOTS]> {
    let mut places = [EMPTY; SLOTS];
    for (index, parameter) in parameters.iter().enumerate().take(SLOTS / 2) {
        let mut at = slot(parameter.name);
        while places[at] != EMPTY {
            at = (at + 1) % SLOTS;
        }
        places[at] = u8::try_from(index).unwrap_or(EMPTY);
    }
    Arc::new(places)
}

/// Checks inputs against the parameters and fills in defaults.
///
/// # Errors
/// Names the parameter and how to put it right.
pub fn read(
    technique: &'static str,
    parameters: &'static [Parameter],
    inputs: &Inputs,
) -> Result<Values, AssessError> {
    for name in inputs.0.keys() {
        if !parameters.iter().any(|parameter| parameter.name == name) {
            let known = parameters
                .iter()
                .map(|parameter| parameter.name)
                .collect::<Vec<_>>();
            return Err(AssessError::UnknownParameter {
                technique: technique.to_owned(),
                // A name is quoted back, and nobody needs a megabyte of it.
                name: name.chars().take(80).collect(),
                known: known.join(", "),
            });
        }
    }
    let mut entries = Vec::with_capacity(parameters.len());
    for parameter in parameters {
        entries.push(read_one(parameter, inputs.0.get(parameter.name))?);
    }
    Ok(Values {
        parameters,
        entries,
        places: table(parameters),
    })
}

fn read_one(parameter: &Parameter, given: Option<&InputValue>) -> Result<Entry, AssessError> {
    let refuse = |problem: String| {
        Err(AssessError::BadValue {
            name: parameter.name.to_owned(),
            problem,
        })
    };
    match (&parameter.kind, given) {
        (
            ParameterKind::Number {
                default, tolerance, ..
            },
            None,
        ) => Ok(match default {
            Some(value) => Entry::Number {
                value: *value,
                tolerance: *tolerance,
            },
            None => Entry::Unknown,
        }),
        (ParameterKind::Choice { default, .. }, None) => {
            Ok(default.map_or(Entry::Unknown, Entry::Choice))
        }
        (
            ParameterKind::Number {
                quantity,
                min,
                max,
                tolerance: usual,
                ..
            },
            Some(InputValue::Number { value, tolerance }),
        ) => {
            let range = say_range(*quantity, *min, *max);
            if !value.is_finite() {
                return refuse(format!(
                    "is not a finite number; give a {} from {range}",
                    quantity.title()
                ));
            }
            if value < min || value > max {
                return refuse(format!(
                    "{} is outside what this model covers; give a {} from {range}",
                    crate::units::say(*quantity, *value),
                    quantity.title()
                ));
            }
            let tolerance = tolerance.unwrap_or(*usual);
            if !tolerance.is_finite() || tolerance < 0.0 {
                return refuse(format!(
                    "its tolerance must be a finite number, 0 or more; give how far the {} may be out \
                     either way, or leave it out for {}",
                    quantity.title(),
                    crate::units::say(*quantity, *usual)
                ));
            }
            Ok(Entry::Number {
                value: *value,
                tolerance,
            })
        }
        (ParameterKind::Choice { options, .. }, Some(InputValue::Choice(name))) => {
            match options.iter().find(|option| option.name == name) {
                Some(option) => Ok(Entry::Choice(option.name)),
                None => refuse(format!("give one of: {}", names(options))),
            }
        }
        (
            ParameterKind::Number {
                quantity, min, max, ..
            },
            Some(InputValue::Choice(_)),
        ) => refuse(format!(
            "is a name where a number is needed; give a {} from {}",
            quantity.title(),
            say_range(*quantity, *min, *max)
        )),
        (ParameterKind::Choice { options, .. }, Some(InputValue::Number { .. })) => {
            refuse(format!(
                "is a number where a name is needed; give one of: {}",
                names(options)
            ))
        }
    }
}

fn names(options: &[crate::technique::Choice]) -> String {
    options
        .iter()
        .map(|option| option.name)
        .collect::<Vec<_>>()
        .join(", ")
}

impl Values {
    /// The place of a parameter by name.
    pub(crate) fn index_of(&self, name: &str) -> Option<usize> {
        self.index(name)
    }

    fn index(&self, name: &str) -> Option<usize> {
        let mut at = slot(name);
        loop {
            let index = usize::from(self.places[at]);
            // An empty place is no parameter's number.
            if self.parameters.get(index)?.name == name {
                return Some(index);
            }
            at = (at + 1) % SLOTS;
        }
    }

    /// A number, SI; none when it is unknown.
    pub fn number(&self, name: &str) -> Option<f64> {
        match self.entries[self.index(name)?] {
            Entry::Number { value, .. } => Some(value),
            _ => None,
        }
    }

    /// A number's tolerance, SI; none when the number is unknown.
    pub fn tolerance(&self, name: &str) -> Option<f64> {
        match self.entries[self.index(name)?] {
            Entry::Number { tolerance, .. } => Some(tolerance),
            _ => None,
        }
    }

    /// A chosen option's machine name; none when it is unknown.
    pub fn choice(&self, name: &str) -> Option<&'static str> {
        match self.entries[self.index(name)?] {
            Entry::Choice(option) => Some(option),
            _ => None,
        }
    }

    /// The parameter of that name.
    pub fn parameter(&self, name: &str) -> Option<&'static Parameter> {
        self.index(name).map(|index| &self.parameters[index])
    }

    /// Whether a parameter was given or has a default.
    pub fn knows(&self, name: &str) -> bool {
        self.index(name)
            .is_some_and(|index| self.entries[index] != Entry::Unknown)
    }

    /// The titles of those parameters that are unknown, in the order of the form.
    pub fn missing(&self, names: &[&str]) -> Vec<&'static str> {
        self.parameters
            .iter()
            .zip(&self.entries)
            .filter(|(parameter, entry)| {
                **entry == Entry::Unknown && names.contains(&parameter.name)
            })
            .map(|(parameter, _)| parameter.title)
            .collect()
    }

    /// How many parameters there are.
    pub(crate) fn count(&self) -> usize {
        self.entries.len()
    }

    /// The lower and upper end of a number's tolerance, cut at the parameter's range, where the
    /// physics ends too (a share above one, a height below nothing). None for anything exact.
    pub(crate) fn ends(&self, index: usize) -> Option<(f64, f64)> {
        let Entry::Number { value, tolerance } = self.entries[index] else {
            return None;
        };
        let ParameterKind::Number { min, max, .. } = self.parameters[index].kind else {
            return None;
        };
        let ends = ((value - tolerance).max(min), (value + tolerance).min(max));
        (tolerance > 0.0 && ends.0 < ends.1).then_some(ends)
    }

    /// The ends of a parameter's tolerance by name; the value twice when it is exact.
    pub fn ends_of(&self, name: &str) -> Option<(f64, f64)> {
        let index = self.index(name)?;
        let value = self.number(name)?;
        Some(self.ends(index).unwrap_or((value, value)))
    }

    /// Adds to a number's tolerance; what is unknown stays so.
    pub(crate) fn widen(&mut self, name: &str, by: f64) {
        if let Some(index) = self.index(name)
            && let Entry::Number { tolerance, .. } = &mut self.entries[index]
        {
            *tolerance += by;
        }
    }

    /// A number and its tolerance, where it has one.
    pub(crate) fn toleranced(&self, index: usize) -> Option<(f64, f64)> {
        match self.entries[index] {
            Entry::Number { value, tolerance } if tolerance > 0.0 => Some((value, tolerance)),
            _ => None,
        }
    }

    /// The same inputs with one number entered, whether or not it was.
    pub(crate) fn make_known(&mut self, index: usize, value: f64) {
        if self.entries[index] == Entry::Unknown {
            self.entries[index] = Entry::Number {
                value,
                tolerance: 0.0,
            };
        }
        self.set(index, value);
    }

    /// The same inputs with one number replaced.
    pub(crate) fn set(&mut self, index: usize, value: f64) {
        if let Entry::Number { value: old, .. } = &mut self.entries[index] {
            *old = value;
        }
    }
}
