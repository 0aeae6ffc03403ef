//! Who must sign what, as data. The default is `seed-data/catalogue/policy.json`; a production may
//! carry its own, and a plan records which version it is judged by.

mod check_day;
mod lapses;
mod on_the_day;

use std::{
    collections::{BTreeMap, BTreeSet},
    sync::LazyLock,
};

use gagwright_casting::Requirement;
use gagwright_mechanics::{Facet, models::risk::RiskLevel};
use serde::{Deserialize, Serialize};

use crate::{
    accepted::AcceptedBand, delegation::DelegationRule, facets::Rung, own_limits::OwnLimits,
    plan::Hazard, resolving::Settling, validate::FieldProblem,
};

pub(crate) use check_day::problems as day_problems;
pub use lapses::{LapseEvent, LapseRow};
pub use on_the_day::{AfterTake, BriefingPolicy, DayPolicy, DayReading, DayRole, Tell};

/// A hat someone wears on a production. One person may wear several, each said aloud.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Answers for the gag.
    Coordinator,
    /// Consents to perform it; never delegated.
    Performer,
    /// Lines, anchors, catchers.
    Rigging,
    /// Special effects.
    Effects,
    /// Fire safety.
    Fire,
    /// Cover and fitness.
    Medic,
    /// Runs the set.
    FirstAd,
    /// Action vehicles.
    Vehicles,
    /// Weapons, and nothing else.
    Armourer,
    /// Water and diving.
    Marine,
    /// Animals and their welfare.
    Animals,
    /// Camera and visual effects.
    Camera,
    /// Chartered or professional engineer.
    Engineer,
    /// A minor's guardian or studio teacher.
    Guardian,
    /// Producer or production manager.
    Production,
    /// Reads the record (an insurer, an authority); signs nothing.
    Observer,
}

/// The whole policy.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Policy {
    /// Version, for example `2026.1`.
    pub version: String,
    /// Who answers for what.
    pub roles: Vec<RolePolicy>,
    /// What each technique brings: hazards, requirements of a slot, a ladder to rehearse.
    pub techniques: BTreeMap<String, TechniquePolicy>,
    /// Pairs that one person may not sign on the same revision.
    #[cfg_attr(feature = "openapi", schema(value_type = Vec<(Role, Role)>))]
    pub separate: Vec<[Role; 2]>,
    /// Which role owns which hazard, for releasing holds.
    pub owners: BTreeMap<Hazard, Role>,
    /// Roles whose decline nobody, the coordinator included, can overrule.
    pub final_say: BTreeSet<Role>,
    /// Which event of the day voids whose marks.
    pub lapses: Vec<LapseRow>,
    /// What the day needs beyond the plan.
    pub day: DayPolicy,
    /// What follows a take.
    pub after_take: AfterTake,
    /// Who must be told of what went wrong.
    pub tell: Vec<Tell>,
    /// Which roles may let somebody sign in their stead, and how.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub delegation: BTreeMap<Role, DelegationRule>,
    /// Small changes that a role accepts in advance.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub bands: Vec<AcceptedBand>,
    /// What settles a role's decline or its conditions.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub settling: BTreeMap<Role, Settling>,
    /// The production's own values for limits of habit.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, BTreeMap<String, crate::own_limits::OwnLimit>>))]
    pub limits: OwnLimits,
}

impl Policy {
    /// Whether one person may not wear both hats on a gag.
    pub fn keeps_apart(&self, one: Role, other: Role) -> bool {
        self.separate.contains(&[one, other]) || self.separate.contains(&[other, one])
    }

    /// The policy that comes with the program: `seed-data/catalogue/policy.json`.
    pub fn built_in() -> &'static Policy {
        &BUILT_IN
    }

    /// Reads and checks a policy.
    ///
    /// # Errors
    /// When the text is not a policy, or says things that do not fit together.
    pub fn from_json(text: &str) -> Result<Policy, PolicyError> {
        let policy: Policy = serde_json::from_str(text)
            .map_err(|error| PolicyError::Malformed(error.to_string()))?;
        let problems = policy.problems();
        if problems.is_empty() {
            Ok(policy)
        } else {
            Err(PolicyError::Inconsistent(problems))
        }
    }

    /// Everything that does not fit together, a sentence each, without the final stop.
    pub fn problems(&self) -> Vec<String> {
        let problem = |one: FieldProblem| one.problem;
        self.inconsistencies().into_iter().map(problem).collect()
    }

    /// What a role answers for.
    pub fn role(&self, role: Role) -> Option<&RolePolicy> {
        self.roles.iter().find(|policy| policy.role == role)
    }

    /// What people read for a role.
    pub fn title(&self, role: Role) -> &str {
        self.role(role)
            .map_or(role.name(), |policy| policy.title.as_str())
    }
}

/// Why a policy was refused.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PolicyError {
    /// Not the JSON of a policy.
    #[error("this is not a policy: {0}")]
    Malformed(String),
    /// Things in it do not fit together.
    #[error("the policy does not hold together: {}", .0.join("; "))]
    Inconsistent(Vec<String>),
}

#[allow(clippy::expect_used)] // compiled in, and a test reads it: it cannot fail in anyone's hands
static BUILT_IN: LazyLock<Policy> = LazyLock::new(|| {
    Policy::from_json(include_str!("../../../seed-data/catalogue/policy.json"))
        .expect("the built-in policy is checked by a test")
});

/// What one role answers for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct RolePolicy {
    /// The role.
    pub role: Role,
    /// What people read.
    pub title: String,
    /// Facets it answers for: a change in any makes its sign-off lapse.
    pub covers: BTreeSet<Facet>,
    /// When its sign-off is required.
    pub required: Required,
    /// The attestation text and its id (`coordinator/1`).
    pub attestation: Attestation,
    /// Hours a sign-off stays good; none: until something changes.
    #[serde(default)]
    pub good_for_hours: Option<u32>,
    /// Certificates the signer must hold in date, any one of each group.
    #[serde(default)]
    pub certificates: Vec<Vec<String>>,
}

/// When a role must sign.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields, default)]
pub struct Required {
    /// Every gag.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub always: bool,
    /// Gags with any of these hazards.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub hazards: BTreeSet<Hazard>,
    /// Gags with a check that is marginal, unknown or exceeded.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub doubtful_check: bool,
    /// Gags with a risk that, after its controls, is of this level or higher.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub risk_from: Option<RiskLevel>,
}

/// What a signer puts their name to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Attestation {
    /// Versioned id.
    pub id: String,
    /// The words, in English.
    pub text: String,
    /// The same words in other languages, by language code (RFC 5646).
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub texts: BTreeMap<String, String>,
}

impl Attestation {
    /// The language of [`Attestation::text`].
    pub const ENGLISH: &'static str = "en";

    /// The words in a language, where there are any.
    pub fn in_language(&self, language: &str) -> Option<&str> {
        match language {
            Self::ENGLISH => Some(&self.text),
            other => self.texts.get(other).map(String::as_str),
        }
    }
}

/// What a technique brings with it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields, default)]
pub struct TechniquePolicy {
    /// Hazards it always has.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub hazards: BTreeSet<Hazard>,
    /// Roles that must sign it whatever its hazards.
    #[serde(skip_serializing_if = "BTreeSet::is_empty")]
    pub roles: BTreeSet<Role>,
    /// What a slot needs unless the plan says otherwise.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub requirements: Vec<Requirement>,
    /// The ladder a new plan starts with.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub rungs: Vec<Rung>,
}
