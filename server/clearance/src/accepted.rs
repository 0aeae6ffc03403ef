//! Small changes that a role accepts in advance. They are measured against the value that was signed,
//! never against the revision before, so that many small steps do not add up to a large one unseen.

use gagwright_mechanics::{Parameter, ParameterKind, Quantity, Technique, units};
use serde::{Deserialize, Serialize};

use crate::{
    diff::FieldChange,
    policy::{Policy, Role},
    words,
};

/// How far one parameter, or every parameter of one quantity, may move before a role signs again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct AcceptedBand {
    /// The role that accepts it.
    pub role: Role,
    /// The parameter, by its machine name in whichever technique has it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub parameter: Option<String>,
    /// Or every parameter of this quantity.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub quantity: Option<Quantity>,
    /// Where the number comes from: "common practice", or whoever set it.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "openapi", schema(required = false))]
    pub because: String,
    /// Up to this share of the value signed: 0.02 is two per cent.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub relative: Option<f64>,
    /// Or up to this much, SI.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub absolute: Option<f64>,
}

/// Whether every one of these changes is a number that the role accepts in advance; then a sentence for
/// each. None when one of them is anything else.
pub(crate) fn all(
    policy: &Policy,
    role: Role,
    technique: &dyn Technique,
    changes: &[FieldChange],
) -> Option<Vec<String>> {
    changes
        .iter()
        .map(|change| one(policy, role, technique, change))
        .collect()
}

fn one(
    policy: &Policy,
    role: Role,
    technique: &dyn Technique,
    change: &FieldChange,
) -> Option<String> {
    let name = change
        .pointer
        .strip_prefix("/parameters/")?
        .strip_suffix("/value")?;
    let parameter = technique.parameters().iter().find(|one| one.name == name)?;
    let ParameterKind::Number { quantity, .. } = parameter.kind else {
        return None;
    };
    let before = change.before.as_ref()?.as_f64()?;
    let after = change.after.as_ref()?.as_f64()?;
    let band = policy
        .bands
        .iter()
        .filter(|band| band.role == role)
        .find(|band| about(band, parameter, quantity) && inside(band, before, after))?;
    let title = policy.title(role);
    Some(match band.relative {
        Some(share) if before != 0.0 && within(share * before.abs(), before, after) => format!(
            "{} moved {} %, inside the {} % that {title} accepts.",
            words::capital(parameter.title),
            number((after - before).abs() / before.abs() * 100.0),
            number(share * 100.0),
        ),
        _ => format!(
            "{} moved {}, inside the {} that {title} accepts.",
            words::capital(parameter.title),
            difference(quantity, (after - before).abs()),
            difference(quantity, band.absolute.unwrap_or_default()),
        ),
    })
}

fn about(band: &AcceptedBand, parameter: &Parameter, quantity: Quantity) -> bool {
    match (&band.parameter, band.quantity) {
        (Some(name), _) => name == parameter.name,
        (None, wanted) => wanted == Some(quantity),
    }
}

fn inside(band: &AcceptedBand, before: f64, after: f64) -> bool {
    let relative = band
        .relative
        .is_some_and(|share| within(share * before.abs(), before, after));
    let absolute = band
        .absolute
        .is_some_and(|most| within(most, before, after));
    relative || absolute
}

/// A band of 2 % includes 2 %: numbers typed in decimal are not exact in binary.
fn within(most: f64, before: f64, after: f64) -> bool {
    let slack = 1e-9 * before.abs().max(after.abs());
    (after - before).abs() <= most + slack
}

/// A number with at most two decimals and no trailing noughts.
fn number(value: f64) -> String {
    let text = format!("{value:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A difference as people read it. A difference of temperatures is in kelvins: on the scale of degrees
/// it would be read as a temperature.
pub(crate) fn difference(quantity: Quantity, amount: f64) -> String {
    match quantity {
        Quantity::Temperature => format!("{} K", number(amount)),
        _ => units::say(quantity, amount),
    }
}

#[cfg(test)]
#[path = "tests/accepted.rs"]
mod tests;
