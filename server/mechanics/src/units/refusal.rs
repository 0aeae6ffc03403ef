//! Why a text is not a quantity, said so that a person can put it right.

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
