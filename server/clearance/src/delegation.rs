//! Delegates: somebody named beforehand to sign in a holder's stead, for stated gags, until a stated
//! moment. The policy says who may; this file says whether one delegation covers a gag and a moment.
//! It must not know how a sign-off is verified.

use gagwright_casting::{GagId, PersonId};
use jiff::{SignedDuration, Timestamp};
use serde::{Deserialize, Serialize};

use crate::{
    case::Case,
    ids::RecordId,
    policy::{Policy, Role},
    signoff::Member,
    words,
};

/// Consent, a minor's conditions and the welfare of animals are nobody else's to give; an observer has
/// nothing to hand on.
pub const NEVER: [Role; 4] = [
    Role::Performer,
    Role::Guardian,
    Role::Animals,
    Role::Observer,
];

/// What the policy allows the holders of one role to hand on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct DelegationRule {
    /// The longest that one delegation may run, days.
    pub longest_days: u32,
    /// Whether the delegate needs the certificates that the role asks for.
    pub certificates: bool,
}

/// One delegation: `to` may sign as `role` in the stead of `from`.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Delegation {
    /// Which.
    pub id: RecordId,
    /// The holder of the role.
    pub from: PersonId,
    /// Who signs in their stead.
    pub to: PersonId,
    /// The role.
    pub role: Role,
    /// The gags it is for; empty: all of them.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Vec<uuid::Uuid>))]
    pub gags: Vec<GagId>,
    /// From when, by the server's clock: what arrives before does not count, whenever it was signed.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub starts: Timestamp,
    /// Until when.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub until: Timestamp,
    /// Its limits in words: "the night unit only".
    #[serde(default)]
    pub limits: String,
    /// When it was made, server time.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub made_at: Timestamp,
    /// When it was ended before its time, if it was.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub ended_at: Option<Timestamp>,
}

/// Under which hat somebody speaks, their own or one that a delegation lends them.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Hat {
    pub role: Role,
    pub signer: PersonId,
    pub delegation: Option<RecordId>,
}

/// Why a delegation does not count, in a sentence; none: it counts now for that gag and moment.
pub(crate) fn refusal(
    case: &Case,
    delegation: &Delegation,
    signed: Timestamp,
    now: Timestamp,
    name: impl Fn(PersonId) -> String,
) -> Option<String> {
    let (from, to) = (name(delegation.from), name(delegation.to));
    let policy = &case.policy;
    let title = policy.title(delegation.role);
    let gag = case.plan.gag;
    let Some(rule) = policy
        .delegation
        .get(&delegation.role)
        .filter(|_| !NEVER.contains(&delegation.role))
    else {
        return Some(format!("The policy lets nobody sign for {title}."));
    };
    if !holds(&case.members, delegation.from, delegation.role) {
        return Some(format!(
            "{from}, for whom {to} signed, no longer holds the role {title}."
        ));
    }
    if !delegation.gags.is_empty() && !delegation.gags.contains(&gag) {
        return Some(format!("{from} did not let {to} sign for this gag."));
    }
    if let Some(ended) = delegation.ended_at
        && ended <= now
    {
        return Some(format!(
            "{from} ended on {} that {to} may sign as {title}.",
            words::minute(ended)
        ));
    }
    if signed < delegation.starts {
        return Some(format!(
            "{to} may sign for {from} only from {}.",
            words::minute(delegation.starts)
        ));
    }
    let until = delegation.until.min(longest(rule, delegation.starts));
    if until <= now {
        return Some(format!(
            "{to} could sign for {from} until {}.",
            words::minute(until)
        ));
    }
    if case.plan.casts(delegation.to) {
        return Some(format!(
            "{to} performs in this gag, and so signs for nobody on it."
        ));
    }
    None
}

/// The last moment that the rule allows to a delegation.
pub fn longest(rule: &DelegationRule, starts: Timestamp) -> Timestamp {
    starts
        .checked_add(SignedDuration::from_hours(
            i64::from(rule.longest_days) * 24,
        ))
        .unwrap_or(Timestamp::MAX)
}

/// The delegation under which somebody may sign as a role on this gag now; none when they need none
/// because they hold the role themselves, or have none.
pub fn in_force(case: &Case, person: PersonId, role: Role, now: Timestamp) -> Option<&Delegation> {
    if holds(&case.members, person, role) {
        return None;
    }
    case.delegations.iter().find(|one| {
        one.to == person
            && one.role == role
            && refusal(case, one, now, now, |_| String::new()).is_none()
    })
}

/// The hats under which a person may sign on this gag now: their own and those of whom they deputise for.
pub fn hats(case: &Case, person: PersonId, now: Timestamp) -> std::collections::BTreeSet<Role> {
    let own = case
        .members
        .iter()
        .find(|member| member.person == person)
        .map(|member| member.roles.clone())
        .unwrap_or_default();
    let lent = case.delegations.iter().filter(|one| {
        one.to == person && refusal(case, one, now, now, |_| String::new()).is_none()
    });
    own.iter()
        .copied()
        .chain(lent.map(|one| one.role))
        .collect()
}

/// Everything that keeps a delegation from being made, by the field of the request it is about.
pub fn problems(
    delegation: &Delegation,
    policy: &Policy,
    members: &[Member],
    now: Timestamp,
) -> Vec<(&'static str, String, String)> {
    let mut found = Vec::new();
    let mut add = |field, problem: String, fix: &str| found.push((field, problem, fix.to_owned()));
    let title = policy.title(delegation.role);
    let rule = policy
        .delegation
        .get(&delegation.role)
        .filter(|_| !NEVER.contains(&delegation.role));
    if rule.is_none() {
        add(
            "/role",
            format!("the policy lets nobody sign for {title}"),
            "have the holder sign themselves, or change the policy where it may be",
        );
    }
    if !holds(members, delegation.from, delegation.role) {
        add(
            "/role",
            format!("you do not hold the role {title} yourself"),
            "name a role you hold; a delegate cannot hand on what was lent to them",
        );
    }
    let to = members.iter().find(|one| one.person == delegation.to);
    match to {
        _ if delegation.to == delegation.from => {
            add("/to", "is yourself".to_owned(), "name somebody else")
        }
        None => add(
            "/to",
            "is nobody with a role on this production".to_owned(),
            "give them a role first",
        ),
        Some(to) if to.roles.contains(&delegation.role) => add(
            "/to",
            format!("holds the role {title} already"),
            "they sign in their own name",
        ),
        Some(_) => {}
    }
    if delegation.until <= now || delegation.until <= delegation.starts {
        add(
            "/until",
            "is past, or before it starts".to_owned(),
            "give a later moment",
        );
    } else if let Some(rule) = rule
        && delegation.until > longest(rule, delegation.starts)
    {
        let days = rule.longest_days;
        add(
            "/until",
            format!("is more than {days} days after it starts"),
            "give an earlier moment; it can be made again when it runs out",
        );
    }
    found
}

pub(crate) fn holds(members: &[Member], person: PersonId, role: Role) -> bool {
    members
        .iter()
        .any(|member| member.person == person && member.roles.contains(&role))
}

#[cfg(test)]
#[path = "tests/delegation.rs"]
mod tests;
