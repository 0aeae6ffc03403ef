//! Putting another policy in force: whether it may follow the one before, and what would happen to each
//! sign-off if it did. Sign-offs are always judged by the policy in force; a plan only records which one
//! it was written under. So a change of policy lapses exactly what no longer meets it.

use gagwright_casting::{PersonId, SlotId};
use gagwright_mechanics::Status;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use crate::{
    case::{Case, Clearance, RoleStanding, RoleState},
    judge::{FindTechnique, clearance_with},
    policy::{Attestation, Policy, Role},
    validate::FieldProblem,
};

/// Everything that keeps a policy from following the one in force, and those that were in force earlier.
pub fn succession(before: &Policy, earlier: &[&Policy], after: &Policy) -> Vec<FieldProblem> {
    let mut found = after.findings();
    let mut add = |pointer: String, problem: String, fix: &str| {
        found.push(FieldProblem {
            pointer,
            problem,
            fix: fix.to_owned(),
        });
    };
    if before.version == after.version {
        add(
            "/version".to_owned(),
            format!("version {} is the one in force", after.version),
            "give the new one another version",
        );
    }
    for (pointer, words) in attestations(after) {
        // What was signed is known by its id alone, so an id means the same words for ever.
        let signed = earlier.iter().copied().chain([before]);
        let mut signed = signed.flat_map(attestations).map(|(_, one)| one);
        if signed.any(|one| one.id == words.id && says_otherwise(one, words)) {
            add(
                format!("{pointer}/attestation/id"),
                format!(
                    "the words of {} are not those that were signed under that id",
                    words.id
                ),
                "give the new words a new id, for example with the next number",
            );
        }
    }
    found
}

/// Every attestation of a policy, for the plan and for the day, with where it stands.
fn attestations(policy: &Policy) -> impl Iterator<Item = (String, &Attestation)> {
    let plan = policy.roles.iter().enumerate();
    let plan = plan.map(|(at, one)| (format!("/roles/{at}"), &one.attestation));
    let day = policy.day.roles.iter().enumerate();
    plan.chain(day.map(|(at, one)| (format!("/day/roles/{at}"), &one.attestation)))
}

/// Whether the words are others, in any language that both have.
fn says_otherwise(one: &Attestation, other: &Attestation) -> bool {
    let mut texts = one.texts.iter();
    one.text != other.text
        || texts.any(|(language, text)| other.texts.get(language).is_some_and(|now| now != text))
}

/// What becomes of one sign-off, or of the need for one.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct PolicyEffect {
    /// The role.
    pub role: Role,
    /// What people read for it.
    pub title: String,
    /// The performer's slot.
    pub slot: Option<SlotId>,
    /// How it stands now; none: it is not asked.
    pub before: Option<RoleState>,
    /// How it would stand; none: it would not be asked.
    pub after: Option<RoleState>,
    /// Whose sign-off it is.
    pub signer: Option<PersonId>,
    /// Why it would not stand, in sentences.
    pub reasons: Vec<String>,
}

/// What becomes of one check, where the policy sets a limit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct CheckEffect {
    /// The check's machine name.
    pub check: String,
    /// What people read.
    pub title: String,
    /// How it stands now.
    pub before: Status,
    /// How it would stand.
    pub after: Status,
}

/// What a policy would change on one gag.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct PolicyEffects {
    /// Sign-offs, in the judge's order.
    pub roles: Vec<PolicyEffect>,
    /// Checks.
    pub checks: Vec<CheckEffect>,
}

impl PolicyEffects {
    /// Whether nothing would change.
    pub fn is_empty(&self) -> bool {
        self.roles.is_empty() && self.checks.is_empty()
    }
}

/// What a policy would change on one gag now.
pub fn effects(case: &Case, policy: &Policy, now: Timestamp, find: FindTechnique) -> PolicyEffects {
    let before = clearance_with(case, now, find);
    let changed = Case {
        policy: policy.clone(),
        ..case.clone()
    };
    let after = clearance_with(&changed, now, find);
    PolicyEffects {
        roles: on_roles(&before.roles, &after.roles),
        checks: on_checks(&before, &after),
    }
}

fn on_roles(before: &[RoleStanding], after: &[RoleStanding]) -> Vec<PolicyEffect> {
    let same =
        |one: &RoleStanding, other: &RoleStanding| one.role == other.role && one.slot == other.slot;
    let mut effects = Vec::new();
    for will in after {
        let was = before.iter().find(|one| same(one, will));
        if was.is_some_and(|was| was.state == will.state) {
            continue;
        }
        effects.push(PolicyEffect {
            role: will.role,
            title: will.title.clone(),
            slot: will.slot,
            before: was.map(|was| was.state),
            after: Some(will.state),
            signer: will.signer,
            reasons: will.reasons.clone(),
        });
    }
    for was in before {
        if !after.iter().any(|will| same(was, will)) {
            effects.push(PolicyEffect {
                role: was.role,
                title: was.title.clone(),
                slot: was.slot,
                before: Some(was.state),
                after: None,
                signer: was.signer,
                reasons: vec!["It would no longer be asked.".to_owned()],
            });
        }
    }
    effects
}

fn on_checks(before: &Clearance, after: &Clearance) -> Vec<CheckEffect> {
    let checks = |one: &Clearance| one.assessment.clone().map(|one| one.checks);
    let (before, after) = (checks(before), checks(after));
    let before = before.unwrap_or_default();
    after
        .unwrap_or_default()
        .into_iter()
        .filter_map(|will| {
            let was = before.iter().find(|one| one.name == will.name)?;
            (was.status != will.status).then(|| CheckEffect {
                check: will.name.clone(),
                title: will.title.clone(),
                before: was.status,
                after: will.status,
            })
        })
        .collect()
}

#[cfg(test)]
#[path = "tests/policy_change.rs"]
mod tests;
