//! Tools that work on any technique through its trait alone: how far figures spread, what moves them,
//! which input gives a wanted figure, what logged test shots teach, and what a change of plan changes.
//! Each takes one request and gives one answer, both plain values that travel as JSON.

mod calibrate;
mod compare;
mod least_squares;
mod random;
mod sensitivity;
mod solve;
mod spread;
mod statistics;
mod wording;

pub use calibrate::{
    CalibrateRequest, Calibration, Coefficient, Deviation, Prediction, ShotRow, TestShot, calibrate,
};
pub use compare::{Change, CompareRequest, Comparison, Interval, MovedCheck, MovedFigure, compare};
pub use sensitivity::{Bar, Sensitivity, SensitivityRequest, sensitivity};
pub use solve::{Solution, SolveRequest, solve_for};
pub use spread::{
    Crossing, Dealer, InPlace, Runner, Spread, SpreadFigure, SpreadRequest, spread, spread_on,
};

use crate::{
    evaluation::Computed,
    reading::Values,
    technique::{AssessError, FigureDescription, Parameter, Technique},
};

/// The figures of one plan, which is its own stated state.
fn figures_of(technique: &dyn Technique, values: &Values) -> Computed {
    technique.prepare(values)(values)
}

/// A figure's description by name.
fn described(
    technique: &dyn Technique,
    figure: &str,
) -> Result<&'static FigureDescription, AssessError> {
    let known = technique.figures();
    known
        .iter()
        .find(|one| one.name == figure)
        .ok_or_else(|| AssessError::BadValue {
            name: "figure".to_owned(),
            problem: format!(
                "{} gives no figure \"{}\"; it gives: {}",
                technique.name(),
                quoted(figure),
                known
                    .iter()
                    .map(|one| one.name)
                    .collect::<Vec<_>>()
                    .join(", ")
            ),
        })
}

/// A number parameter's place and description by name; `field` is what the request calls it.
fn numbered(
    technique: &dyn Technique,
    field: &str,
    name: &str,
) -> Result<(usize, &'static Parameter, (f64, f64)), AssessError> {
    let known = technique.parameters();
    let found = known
        .iter()
        .enumerate()
        .find(|(_, one)| one.name == name)
        .and_then(|(at, one)| one.range().map(|range| (at, one, range)));
    found.ok_or_else(|| AssessError::BadValue {
        name: field.to_owned(),
        problem: format!(
            "{} has no number \"{}\"; its numbers are: {}",
            technique.name(),
            quoted(name),
            known
                .iter()
                .filter(|one| one.range().is_some())
                .map(|one| one.name)
                .collect::<Vec<_>>()
                .join(", ")
        ),
    })
}

/// A name is quoted back, and nobody needs a megabyte of it.
fn quoted(name: &str) -> String {
    name.chars().take(80).collect()
}

fn refused(name: &str, problem: impl Into<String>) -> AssessError {
    AssessError::BadValue {
        name: name.to_owned(),
        problem: problem.into(),
    }
}
