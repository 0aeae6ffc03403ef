//! The policy in force as people read it, and what another would change.

use gagwright_clearance::{FieldProblem, Policy, policy_change::PolicyEffects};
use gagwright_store::Connection;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{GagRef, PersonRef, gags::person_ref, gathering, today::gag_ref};
use crate::{
    commands::{Actor, CommandError, policies::Previewed},
    permissions::Permission,
};

/// A policy that was put in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PolicyVersion {
    /// Its version.
    pub version: String,
    /// Who put it in force; none: it came with the program.
    #[schema(required = true)]
    pub by: Option<PersonRef>,
    /// When.
    #[schema(required = true, value_type = Option<String>, format = DateTime)]
    pub at: Option<Timestamp>,
    /// Why.
    pub note: String,
    /// Its leaf in the trail.
    #[schema(required = true)]
    pub leaf: Option<u64>,
    /// How many gags have a plan that was written under it.
    pub plans: u32,
}

/// The policy in force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PolicyPage {
    /// The policy.
    pub policy: Policy,
    /// Every version that was in force, newest first.
    pub versions: Vec<PolicyVersion>,
    /// Whether the reader may put another in force.
    pub may_change: bool,
}

/// What another policy would change on one gag.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GagEffects {
    /// The gag.
    pub gag: GagRef,
    /// What would change on it.
    pub effects: PolicyEffects,
}

/// A policy looked at before it comes into force.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct PolicyPreview {
    /// What keeps it from coming into force; pointers into the policy.
    pub problems: Vec<FieldProblem>,
    /// What it would change now, gag by gag.
    pub gags: Vec<GagEffects>,
}

impl From<Previewed> for PolicyPreview {
    fn from(previewed: Previewed) -> Self {
        PolicyPreview {
            problems: previewed.problems,
            gags: previewed
                .effects
                .into_iter()
                .map(|(row, effects)| GagEffects {
                    gag: gag_ref(&row),
                    effects,
                })
                .collect(),
        }
    }
}

/// The policy in force, and those before it.
///
/// # Errors
/// Without [`Permission::ReadProduction`].
pub fn policy_page(conn: &mut Connection, reader: &Actor) -> Result<PolicyPage, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let plans = gagwright_store::plans::current_for_production(conn, reader.production)?;
    let written = |version: &str| {
        let under = plans.iter().filter(|plan| plan.policy == version).count();
        u32::try_from(under).unwrap_or(u32::MAX)
    };
    let kept = gagwright_store::policies::list(conn, reader.production)?;
    let mut versions: Vec<PolicyVersion> = kept
        .into_iter()
        .map(|one| PolicyVersion {
            plans: written(&one.policy.version),
            version: one.policy.version,
            by: Some(person_ref(one.by, &shared.people)),
            at: Some(one.at),
            note: one.note,
            leaf: Some(one.leaf),
        })
        .collect();
    let built_in = &Policy::built_in().version;
    versions.push(PolicyVersion {
        version: built_in.clone(),
        by: None,
        at: None,
        note: String::new(),
        leaf: None,
        plans: written(built_in),
    });
    Ok(PolicyPage {
        policy: shared.production.policy.clone(),
        versions,
        may_change: reader.may(Permission::ChangePolicy),
    })
}

/// A policy that was in force.
///
/// # Errors
/// When none of that version was.
pub fn policy_of_version(
    conn: &mut Connection,
    reader: &Actor,
    version: &str,
) -> Result<Policy, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let kept = gagwright_store::policies::list(conn, reader.production)?;
    let mut kept = kept.into_iter().map(|one| one.policy);
    let built_in = Policy::built_in();
    kept.find(|one| one.version == version)
        .or_else(|| (built_in.version == version).then(|| built_in.clone()))
        .ok_or_else(|| CommandError::NotFound {
            what: "policy",
            id: version.to_owned(),
        })
}
