//! What a change of plan changes: inputs, figures and outcomes of checks, before and after.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use crate::{
    assessment::{Assessment, Status},
    reading::{Values, read},
    technique::{AssessError, InputValue, Inputs, ParameterKind, Technique},
    units::Quantity,
};

/// Two plans of one technique.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct CompareRequest {
    /// The inputs of the earlier plan.
    pub before: Inputs,
    /// The inputs of the later plan.
    pub after: Inputs,
}

/// What changed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Comparison {
    /// The technique's name.
    pub technique: String,
    /// The inputs that differ, in the order of the form; an input left out counts as its default.
    pub inputs: Vec<Change>,
    /// Every figure that either plan gives.
    pub figures: Vec<MovedFigure>,
    /// Every check that either plan has.
    pub checks: Vec<MovedCheck>,
}

/// An input that differs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Change {
    /// The parameter's machine name.
    pub name: String,
    /// Its title.
    pub title: String,
    /// Its kind of quantity; none for a choice.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub quantity: Option<Quantity>,
    /// Its value before; none when it was unknown.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub before: Option<InputValue>,
    /// Its value after.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub after: Option<InputValue>,
}

/// A value with its interval, SI.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Interval {
    /// The value.
    pub value: f64,
    /// The low end.
    pub low: f64,
    /// The high end.
    pub high: f64,
}

/// One figure before and after.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct MovedFigure {
    /// Machine name.
    pub name: String,
    /// What people read.
    pub title: String,
    /// The kind of quantity.
    pub quantity: Quantity,
    /// Before; none when it was not given.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub before: Option<Interval>,
    /// After.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub after: Option<Interval>,
    /// Whether value or interval differ.
    pub moved: bool,
}

/// One check before and after.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct MovedCheck {
    /// Machine name.
    pub name: String,
    /// What people read.
    pub title: String,
    /// The outcome before; none when there was no such check.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub before: Option<Status>,
    /// The outcome after.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub after: Option<Status>,
    /// Whether the outcome differs.
    pub moved: bool,
}

/// Compares two plans.
///
/// # Errors
/// As [`Technique::assess`], for either plan.
pub fn compare(
    technique: &dyn Technique,
    request: &CompareRequest,
) -> Result<Comparison, AssessError> {
    let before = technique.assess(&request.before)?;
    let after = technique.assess(&request.after)?;
    Ok(Comparison {
        technique: technique.name().to_owned(),
        inputs: inputs(technique, request)?,
        figures: figures(technique, &before, &after),
        checks: checks(&before, &after),
    })
}

fn inputs(technique: &dyn Technique, request: &CompareRequest) -> Result<Vec<Change>, AssessError> {
    let parameters = technique.parameters();
    let before = read(technique.name(), parameters, &request.before)?;
    let after = read(technique.name(), parameters, &request.after)?;
    let input = |values: &Values, name| {
        let choice = || {
            values
                .choice(name)
                .map(|one| InputValue::Choice(one.to_owned()))
        };
        let number = |value| InputValue::Number {
            value,
            tolerance: values.tolerance(name),
        };
        values.number(name).map(number).or_else(choice)
    };
    let changes = parameters.iter().filter_map(|parameter| {
        let (before, after) = (
            input(&before, parameter.name),
            input(&after, parameter.name),
        );
        let quantity = match parameter.kind {
            ParameterKind::Number { quantity, .. } => Some(quantity),
            ParameterKind::Choice { .. } => None,
        };
        (before != after).then(|| Change {
            name: parameter.name.to_owned(),
            title: parameter.title.to_owned(),
            quantity,
            before,
            after,
        })
    });
    Ok(changes.collect())
}

fn figures(technique: &dyn Technique, before: &Assessment, after: &Assessment) -> Vec<MovedFigure> {
    let interval = |assessment: &Assessment, name: &str| {
        let figure = assessment.figures.iter().find(|one| one.name == name)?;
        Some(Interval {
            value: figure.value,
            low: figure.low,
            high: figure.high,
        })
    };
    technique
        .figures()
        .iter()
        .filter_map(|description| {
            let before = interval(before, description.name);
            let after = interval(after, description.name);
            (before.is_some() || after.is_some()).then(|| MovedFigure {
                name: description.name.to_owned(),
                title: description.title.to_owned(),
                quantity: description.quantity,
                before,
                after,
                moved: before != after,
            })
        })
        .collect()
}

fn checks(before: &Assessment, after: &Assessment) -> Vec<MovedCheck> {
    let mut seen = BTreeSet::new();
    let all = after.checks.iter().chain(&before.checks);
    let status = |assessment: &Assessment, name: &str| {
        let check = assessment.checks.iter().find(|one| one.name == name);
        check.map(|check| check.status)
    };
    all.filter(|check| seen.insert(check.name.clone()))
        .map(|check| {
            let (before, after) = (status(before, &check.name), status(after, &check.name));
            MovedCheck {
                name: check.name.clone(),
                title: check.title.clone(),
                before,
                after,
                moved: before != after,
            }
        })
        .collect()
}
