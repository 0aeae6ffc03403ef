//! A technique's whole description as one value: what forms, tables and help are drawn from.

use serde::Serialize;

use crate::technique::{FigureDescription, Parameter, Technique};

/// Everything there is to know about a technique before any number is entered.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct TechniqueDescription {
    /// Machine name, for example `high-fall`.
    pub name: &'static str,
    /// What people read.
    pub title: &'static str,
    /// What the model covers and leaves out.
    pub summary: &'static str,
    /// The inputs, in the order a person fills them in.
    pub parameters: &'static [Parameter],
    /// The figures it gives, the most telling first.
    pub figures: &'static [FigureDescription],
    /// The inputs that logged test shots can settle.
    pub coefficients: &'static [&'static str],
}

impl From<&'static dyn Technique> for TechniqueDescription {
    fn from(technique: &'static dyn Technique) -> Self {
        Self {
            name: technique.name(),
            title: technique.title(),
            summary: technique.summary(),
            parameters: technique.parameters(),
            figures: technique.figures(),
            coefficients: technique.coefficients(),
        }
    }
}

/// Every technique described, in the order people are offered them.
pub fn descriptions() -> Vec<TechniqueDescription> {
    crate::registry::techniques()
        .iter()
        .copied()
        .map(TechniqueDescription::from)
        .collect()
}
