//! A hazard weighed: what could happen, how bad and how likely, what is done about it, and what is left.
//! People write the ratings and the matrix gives the level. A score is a prompt, never a permit: a low
//! one clears nothing, and no rule here lets anything pass.

use gagwright_mechanics::models::risk::{self, Probability, RiskLevel, Severity};
use serde::{Deserialize, Serialize};

use crate::{facets::Action, plan::Hazard, policy::Role};

/// One way in which a hazard can hurt somebody.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Risk {
    /// The hazard it comes from.
    pub hazard: Hazard,
    /// What could happen, and to whom; its own in the plan.
    pub event: String,
    /// As it would be with nothing done.
    pub before: Rating,
    /// What is done, the strongest kind first.
    #[serde(default)]
    pub controls: Vec<Control>,
    /// As it is with all of that done.
    pub after: Rating,
    /// Who answers for the controls.
    pub owner: Role,
}

/// How bad and how likely. The level follows, and is nowhere typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Rating {
    /// How bad.
    pub severity: Severity,
    /// How likely.
    pub probability: Probability,
}

impl Rating {
    /// What the matrix says.
    pub fn level(self) -> RiskLevel {
        risk::level(self.severity, self.probability)
    }

    /// Number and letter: "1C".
    pub fn code(self) -> String {
        risk::code(self.severity, self.probability)
    }
}

/// One thing done against a risk.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Control {
    /// What kind of thing.
    pub kind: ControlKind,
    /// What is done.
    pub what: String,
}

/// The hierarchy of controls, the strongest first (ISO 45001 clause 8.1.2; from memory).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum ControlKind {
    /// The hazard is taken away.
    Remove,
    /// Something less dangerous is used instead.
    Substitute,
    /// Guards, catchers, interlocks, distance.
    Engineer,
    /// Procedures, training, signs, supervision.
    Organise,
    /// What people wear.
    Protect,
}

impl ControlKind {
    /// Every kind, the strongest first.
    pub const ALL: [ControlKind; 5] = [
        ControlKind::Remove,
        ControlKind::Substitute,
        ControlKind::Engineer,
        ControlKind::Organise,
        ControlKind::Protect,
    ];

    /// The kind in running text.
    pub fn words(self) -> &'static str {
        match self {
            ControlKind::Remove => "remove",
            ControlKind::Substitute => "substitute",
            ControlKind::Engineer => "engineer",
            ControlKind::Organise => "organise",
            ControlKind::Protect => "protective equipment",
        }
    }
}

/// One risk with its levels.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct RiskStanding {
    /// The hazard.
    pub hazard: Hazard,
    /// What could happen.
    pub event: String,
    /// The level with nothing done.
    pub before: RiskLevel,
    /// The level with the controls.
    pub after: RiskLevel,
    /// What whoever reads it must know, in a sentence; none where nothing stands out.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub caution: Option<String>,
}

/// Said wherever a level shows.
pub const PROMPT: &str = "A score is a prompt, never a permit.";

/// Every risk of a plan with its levels, in the plan's order.
pub fn standings(action: &Action) -> Vec<RiskStanding> {
    action
        .risks
        .iter()
        .map(|one| RiskStanding {
            hazard: one.hazard,
            event: one.event.clone(),
            before: one.before.level(),
            after: one.after.level(),
            caution: caution(one),
        })
        .collect()
}

fn caution(one: &Risk) -> Option<String> {
    match one.after.level() {
        RiskLevel::High => Some(format!(
            "\"{}\" is still a high risk after its controls. {PROMPT}",
            one.event
        )),
        _ => None,
    }
}

#[cfg(test)]
#[path = "tests/risk.rs"]
mod tests;
