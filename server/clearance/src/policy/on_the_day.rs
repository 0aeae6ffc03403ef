//! What the day needs beyond the plan, as data: who signs it and under which words, what must be read
//! and how lately, who is briefed, who is looked at after a take, and who is told when something went
//! wrong.

use std::collections::BTreeSet;

use serde::{Deserialize, Serialize};

use super::{Attestation, Policy, Role};
use crate::{
    case::{IncidentKind, ReadingKind},
    plan::Hazard,
};

/// What the day needs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct DayPolicy {
    /// Who signs the day, of those who must sign the plan, and under which words.
    pub roles: Vec<DayRole>,
    /// Hours a mark for the day counts; it never outlasts the day itself.
    pub good_for_hours: u32,
    /// Readings that are asked for whatever bands the plan has.
    pub readings: Vec<DayReading>,
    /// Who must be briefed on the spot.
    pub briefing: BriefingPolicy,
    /// Hats that may call a go.
    pub go: BTreeSet<Role>,
}

/// A role that signs the day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct DayRole {
    /// The role.
    pub role: Role,
    /// The words and their id (`medic/day/1`).
    pub attestation: Attestation,
}

/// A reading that is asked for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct DayReading {
    /// What is read.
    pub kind: ReadingKind,
    /// The greatest age, minutes; a band of the plan may ask for less.
    pub max_age_minutes: u32,
    /// On gags with any of these hazards; none named: on every gag.
    pub hazards: BTreeSet<Hazard>,
}

/// Who must be briefed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct BriefingPolicy {
    /// Whether everyone cast must have been there.
    pub cast: bool,
    /// Whether everyone must whose mark for the day stands.
    pub signers: bool,
}

/// What follows a take.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct AfterTake {
    /// Whether the medic looks at everyone who performed before the next go, whatever the gag.
    pub look_always: bool,
    /// Gags on which the medic does all the same, by hazard.
    pub look_hazards: BTreeSet<Hazard>,
    /// Days that a head impact keeps a performer from performing, that day included.
    pub head_impact_days: u32,
}

/// Who must be told.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Tell {
    /// Of what.
    pub kind: IncidentKind,
    /// Roles on the production.
    pub roles: BTreeSet<Role>,
    /// Others, as people call them: the insurer, the authority.
    pub others: Vec<String>,
}

impl Policy {
    /// The words under which a role signs the day; none: it does not sign it.
    pub fn day_attestation(&self, role: Role) -> Option<&Attestation> {
        let mut roles = self.day.roles.iter();
        roles
            .find(|one| one.role == role)
            .map(|one| &one.attestation)
    }

    /// Who must be told of an incident: roles by machine name, and others as the policy names them.
    pub fn to_tell(&self, kind: IncidentKind) -> Vec<String> {
        self.tell
            .iter()
            .filter(|one| one.kind == kind)
            .flat_map(|one| {
                let roles = one.roles.iter().map(|role| role.name().to_owned());
                roles.chain(one.others.iter().cloned())
            })
            .collect()
    }
}
