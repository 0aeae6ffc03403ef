//! Short ways to write the tables of parameters and figures that techniques are described by.

use crate::{
    plan_part::Facet,
    technique::{Choice, FigureDescription, Parameter, ParameterKind},
    units::Quantity,
};

/// A number parameter; `range` is (min, max) and `tolerance` the usual plus or minus, all SI.
#[allow(
    clippy::too_many_arguments,
    reason = "one row of a table, read in columns"
)]
pub(crate) const fn number(
    name: &'static str,
    title: &'static str,
    facet: Facet,
    quantity: Quantity,
    default: Option<f64>,
    range: (f64, f64),
    tolerance: f64,
    help: &'static str,
) -> Parameter {
    let kind = ParameterKind::Number {
        quantity,
        default,
        min: range.0,
        max: range.1,
        tolerance,
    };
    Parameter {
        name,
        title,
        facet,
        kind,
        help,
    }
}

/// A parameter with named options.
pub(crate) const fn choice(
    name: &'static str,
    title: &'static str,
    facet: Facet,
    options: &'static [Choice],
    default: Option<&'static str>,
    help: &'static str,
) -> Parameter {
    Parameter {
        name,
        title,
        facet,
        kind: ParameterKind::Choice { options, default },
        help,
    }
}

/// One option.
pub(crate) const fn option(name: &'static str, title: &'static str) -> Choice {
    Choice { name, title }
}

/// One figure.
pub(crate) const fn figure(
    name: &'static str,
    title: &'static str,
    quantity: Quantity,
    help: &'static str,
) -> FigureDescription {
    FigureDescription {
        name,
        title,
        quantity,
        help,
    }
}
