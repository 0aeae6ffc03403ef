//! Quantities and the units people write them in. This is the one place where feet become metres.
//!
//! [`parse()`] reads what a person typed for a known quantity, with an optional tolerance; a refusal
//! says what was read and which units would be right. [`format_metric`] and [`format_imperial`] write
//! an SI value back. This module knows no technique and no limit.

mod format;
mod parse;
mod refusal;
mod table;
mod text;

use serde::{Deserialize, Serialize};

pub use format::{format_imperial, format_metric, join, say, say_range};
pub use parse::{Measured, parse};
pub use refusal::UnitError;

/// A kind of quantity. Its SI unit is what every number in this crate is in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// Metres.
    Length,
    /// Kilograms.
    Mass,
    /// Seconds.
    Time,
    /// Metres per second.
    Speed,
    /// Metres per second squared; people read multiples of g.
    Acceleration,
    /// Newtons.
    Force,
    /// Pascals, absolute or gauge as the parameter says.
    Pressure,
    /// Kelvin; people read degrees Celsius or Fahrenheit.
    Temperature,
    /// Joules.
    Energy,
    /// Watts per square metre.
    HeatFlux,
    /// Radians; people read degrees.
    Angle,
    /// Newtons per metre.
    Stiffness,
    /// Cubic metres; people read litres.
    Volume,
    /// Square metres.
    Area,
    /// Kilograms per square metre.
    ArealDensity,
    /// Cubic metres per second per pascal (sonic conductance); people read dm3/(s bar).
    Conductance,
    /// Radians per second; people read turns per minute.
    Rotation,
    /// Newton metres.
    Torque,
    /// Watts.
    Power,
    /// Picture elements across a frame.
    Pixels,
    /// A pure number; people may read per cent.
    Ratio,
    /// A whole number of things.
    Count,
}

impl Quantity {
    /// Every quantity, in the order of the enum.
    pub const ALL: [Quantity; 22] = [
        Quantity::Length,
        Quantity::Mass,
        Quantity::Time,
        Quantity::Speed,
        Quantity::Acceleration,
        Quantity::Force,
        Quantity::Pressure,
        Quantity::Temperature,
        Quantity::Energy,
        Quantity::HeatFlux,
        Quantity::Angle,
        Quantity::Stiffness,
        Quantity::Volume,
        Quantity::Area,
        Quantity::ArealDensity,
        Quantity::Conductance,
        Quantity::Rotation,
        Quantity::Torque,
        Quantity::Power,
        Quantity::Pixels,
        Quantity::Ratio,
        Quantity::Count,
    ];

    /// The symbol of the SI unit; empty for pure numbers and counts.
    pub fn si_symbol(self) -> &'static str {
        match self {
            Quantity::Length => "m",
            Quantity::Mass => "kg",
            Quantity::Time => "s",
            Quantity::Speed => "m/s",
            Quantity::Acceleration => "m/s²",
            Quantity::Force => "N",
            Quantity::Pressure => "Pa",
            Quantity::Temperature => "K",
            Quantity::Energy => "J",
            Quantity::HeatFlux => "W/m²",
            Quantity::Angle => "rad",
            Quantity::Stiffness => "N/m",
            Quantity::Volume => "m³",
            Quantity::Area => "m²",
            Quantity::ArealDensity => "kg/m²",
            Quantity::Conductance => "m³/(s Pa)",
            Quantity::Rotation => "rad/s",
            Quantity::Torque => "N m",
            Quantity::Power => "W",
            Quantity::Pixels => "px",
            Quantity::Ratio | Quantity::Count => "",
        }
    }

    /// What people call the quantity, in a sentence.
    pub fn title(self) -> &'static str {
        match self {
            Quantity::Length => "length",
            Quantity::Mass => "mass",
            Quantity::Time => "time",
            Quantity::Speed => "speed",
            Quantity::Acceleration => "acceleration",
            Quantity::Force => "force",
            Quantity::Pressure => "pressure",
            Quantity::Temperature => "temperature",
            Quantity::Energy => "energy",
            Quantity::HeatFlux => "heat flux",
            Quantity::Angle => "angle",
            Quantity::Stiffness => "stiffness",
            Quantity::Volume => "volume",
            Quantity::Area => "area",
            Quantity::ArealDensity => "mass per area",
            Quantity::Conductance => "sonic conductance",
            Quantity::Rotation => "turn rate",
            Quantity::Torque => "torque",
            Quantity::Power => "power",
            Quantity::Pixels => "number of pixels",
            Quantity::Ratio => "ratio",
            Quantity::Count => "count",
        }
    }
}
