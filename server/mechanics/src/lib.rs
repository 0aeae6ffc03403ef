//! Techniques to figures, checks and traces: the physics of a gag.
//!
//! This crate is pure. It knows no clock, file, network, database or random source, and it compiles
//! to WebAssembly, where it gives the same bytes as on the server. Everything inside is SI; people's
//! units are read and written by [`units`] alone.
//!
//! A technique is one file under `techniques/` that implements [`Technique`] and one line in
//! [`registry`]. Shared physics lives under `models/`, each model with its equation's source.
//!
//! Nothing here computes an explosive or propellant charge, and nothing here ever may.

pub mod assessment;
mod describe;
pub mod description;
pub mod evaluation;
pub mod judging;
pub mod limits;
pub mod models;
pub mod plan_part;
mod plotting;
pub mod reading;
pub mod registry;
pub mod technique;
pub mod techniques;
pub mod tools;
pub mod units;

pub use assessment::{
    Assessment, Bound, Caution, Check, Figure, Limit, Series, Shape, Source, Standing, Status,
    Trace, Zone,
};
pub use description::{TechniqueDescription, descriptions};
pub use limits::{Limits, Policy, SetLimit};
pub use plan_part::Facet;
pub use registry::{find, techniques};
pub use technique::{
    AssessError, Choice, FigureDescription, InputValue, Inputs, Parameter, ParameterKind, Technique,
};
pub use units::Quantity;
