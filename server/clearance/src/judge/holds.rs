//! Whether a hold is released. Anyone raises one; only the coordinator with the owner of the hazard
//! releases it, each saying the cause.

use super::bench::Bench;
use crate::{
    case::{Agreement, Block, BlockKind, Hold},
    policy::{Policy, Role},
    signoff::Member,
    words,
};

/// The roles that must agree before a hold is released: the coordinator and, where a hazard was named,
/// its owner.
pub fn agreements_needed(hold: &Hold, policy: &Policy) -> Vec<Role> {
    let owner = hold
        .hazard
        .and_then(|hazard| policy.owners.get(&hazard).copied());
    match owner {
        Some(owner) if owner != Role::Coordinator => vec![Role::Coordinator, owner],
        _ => vec![Role::Coordinator],
    }
}

/// The roles whose agreement a hold still waits for; empty: released. The coordinator and the owner of
/// the hazard must be two people, except where the coordinator owns the hazard.
///
/// Whoever agrees must hold the hat then, and a hold once released waits for nobody, whoever holds the
/// hats later.
pub fn missing_agreements(hold: &Hold, policy: &Policy, members: &[Member]) -> Vec<Role> {
    if hold.released_at.is_some() {
        return Vec::new();
    }
    let needed = agreements_needed(hold, policy);
    let agreed = |role: Role| -> Vec<&Agreement> {
        let counts = |one: &&Agreement| {
            one.role == role
                && !one.cause.trim().is_empty()
                && members
                    .iter()
                    .any(|member| member.person == one.person && member.roles.contains(&role))
        };
        hold.agreements.iter().filter(counts).collect()
    };
    let missing: Vec<Role> = needed
        .iter()
        .copied()
        .filter(|role| agreed(*role).is_empty())
        .collect();
    if let ([], [coordinator, owner]) = (missing.as_slice(), needed.as_slice()) {
        let two_people = agreed(*coordinator).iter().any(|one| {
            agreed(*owner)
                .iter()
                .any(|other| other.person != one.person)
        });
        if !two_people {
            // One person said both: the owner's word is the one still wanted.
            return vec![*owner];
        }
    }
    missing
}

/// Every open hold on this gag or on the whole production, oldest first.
pub(crate) fn blocks(bench: &Bench<'_>) -> Vec<Block> {
    let case = bench.case;
    let mut holds: Vec<&Hold> = case
        .holds
        .iter()
        .filter(|hold| hold.gag.is_none_or(|gag| gag == case.plan.gag))
        .collect();
    holds.sort_by_key(|hold| (hold.raised_at, hold.id));
    holds
        .into_iter()
        .filter_map(|hold| {
            let missing = missing_agreements(hold, &case.policy, &case.members);
            (!missing.is_empty()).then(|| block(bench, hold, &missing))
        })
        .collect()
}

fn block(bench: &Bench<'_>, hold: &Hold, missing: &[Role]) -> Block {
    let what = if hold.gag.is_some() {
        "this gag"
    } else {
        "the whole production"
    };
    let by = hold.raised_by.map_or_else(
        || "by the code on the day's brief".to_owned(),
        |person| format!("by {}", bench.name(person)),
    );
    let why = match (hold.hazard, hold.reason.trim()) {
        (None, "") => ", no reason given".to_owned(),
        (Some(hazard), "") => format!(", about {}", hazard.words()),
        (None, reason) => format!(": {reason}"),
        (Some(hazard), reason) => format!(", about {}: {reason}", hazard.words()),
    };
    let titles: Vec<String> = missing
        .iter()
        .map(|role| {
            let holders = bench.holders(*role);
            if holders.is_empty() {
                format!("{} (nobody holds this role yet)", bench.title(*role))
            } else {
                format!("{} ({})", bench.title(*role), holders.join(", "))
            }
        })
        .collect();
    let people = if missing.len() == 2 {
        ", two different people,"
    } else {
        ""
    };
    Block {
        kind: BlockKind::Hold,
        about: hold.id.to_string(),
        reason: format!(
            "A hold on {what} was raised {by} on {}{why}.",
            words::minute(hold.raised_at)
        ),
        remedy: format!(
            "{}{people} must state the cause and agree to the release.",
            words::list(&titles)
        ),
    }
}
