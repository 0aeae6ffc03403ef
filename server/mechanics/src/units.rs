//! Quantities and the units people write them in. This is the one place where feet become metres.

use serde::{Deserialize, Serialize};

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
    /// A pure number; people may read per cent.
    Ratio,
    /// A whole number of things.
    Count,
}
