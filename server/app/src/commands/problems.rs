//! Gathers everything wrong with an input before it is refused, so that people mend it in one go.

use jiff::Timestamp;

use super::{CommandError, FieldProblem};

/// The longest short text: titles, names, codes.
pub(crate) const SHORT: usize = 200;
/// The longest long text: a paragraph, a note, a reason.
pub(crate) const LONG: usize = 8_000;

/// A name as one step of a JSON pointer (RFC 6901 section 3), cut where nobody needs the rest.
pub(crate) fn step(name: &str) -> String {
    let name: String = name.chars().take(80).collect();
    name.replace('~', "~0").replace('/', "~1")
}

/// Problems found so far.
#[derive(Debug, Default)]
pub(crate) struct Problems(Vec<FieldProblem>);

impl Problems {
    /// Adds one.
    pub(crate) fn add(
        &mut self,
        pointer: impl Into<String>,
        problem: impl Into<String>,
        fix: impl Into<String>,
    ) {
        self.0.push(FieldProblem::new(pointer, problem, fix));
    }

    /// A text that must say something.
    pub(crate) fn required(&mut self, pointer: &str, text: &str, most: usize) {
        if text.trim().is_empty() {
            self.add(pointer, "is empty", "write at least one character");
        }
        self.text(pointer, text, most);
    }

    /// A text that may be empty.
    pub(crate) fn text(&mut self, pointer: &str, text: &str, most: usize) {
        let length = text.chars().count();
        if length > most {
            self.add(
                pointer,
                format!("has {length} characters"),
                format!("shorten it to {most} characters at most"),
            );
        }
        if text
            .chars()
            .any(|one| one.is_control() && one != '\n' && one != '\t')
        {
            self.add(
                pointer,
                "holds a control character",
                "type the text again or paste it as plain text",
            );
        }
    }

    /// A number that must be finite and inside a range.
    pub(crate) fn number(&mut self, pointer: &str, value: f64, least: f64, most: f64, unit: &str) {
        if !value.is_finite() || value < least || value > most {
            self.add(
                pointer,
                format!("is {value}"),
                format!("give a number from {least} to {most} {unit}")
                    .trim_end()
                    .to_owned(),
            );
        }
    }

    /// A moment, by a device's clock, of what may let something go ahead: a reading, an inspection. By a clock that is
    /// ahead it would stay fresh for too long and hide what came after it, so a little is all that is allowed. Whatever
    /// else is told is taken as of its arrival at the latest, and never refused for a clock.
    pub(crate) fn not_in_future(&mut self, pointer: &str, at: Timestamp, now: Timestamp) {
        if at.as_second() > now.as_second() + 300 {
            self.add(
                pointer,
                format!("is {at}, which is still to come"),
                "check the clock of the device and give the moment it happened",
            );
        }
    }

    /// A revision that the plan has reached.
    pub(crate) fn reached(&mut self, pointer: &str, revision: u32, current: u32) {
        if revision == 0 || revision > current {
            self.add(
                pointer,
                format!("there is no revision {revision}"),
                format!("revision {current} is current"),
            );
        }
    }

    /// Refuses if anything was found.
    pub(crate) fn finish(self) -> Result<(), CommandError> {
        if self.0.is_empty() {
            Ok(())
        } else {
            Err(CommandError::Invalid { problems: self.0 })
        }
    }
}
