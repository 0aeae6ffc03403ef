//! Near misses and incidents: what happened freezes the plan until everyone who must be told was, and
//! the coordinator and the production have each put a name to what was done about it.

use super::bench::Bench;
use crate::{
    case::{Block, BlockKind, Incident, IncidentKind},
    policy::{Policy, Role},
    signoff::Member,
    words,
};

/// Who closes an incident, by two people.
const CLOSERS: [Role; 2] = [Role::Coordinator, Role::Production];

/// The hats whose corrective action an incident still waits for; empty: it has both. An incident once
/// closed waits for nobody, whoever holds the hats later.
pub fn missing_closings(incident: &Incident, policy: &Policy, members: &[Member]) -> Vec<Role> {
    if incident.closed_at.is_some() {
        return Vec::new();
    }
    let closed_by = |role: Role| {
        incident.closings.iter().filter(move |one| {
            one.role == role
                && !one.action.trim().is_empty()
                && members
                    .iter()
                    .any(|member| member.person == one.person && member.roles.contains(&role))
        })
    };
    let needed = CLOSERS
        .into_iter()
        .filter(|role| policy.role(*role).is_some());
    let missing: Vec<Role> = needed
        .filter(|role| closed_by(*role).next().is_none())
        .collect();
    if missing.is_empty() && policy.role(Role::Production).is_some() {
        let two = closed_by(Role::Coordinator)
            .any(|one| closed_by(Role::Production).any(|other| other.person != one.person));
        if !two {
            return vec![Role::Production];
        }
    }
    missing
}

/// Who must be told and has not been, as the policy names them.
pub fn untold(incident: &Incident, policy: &Policy) -> Vec<String> {
    if incident.closed_at.is_some() {
        return Vec::new();
    }
    let mut wanted = policy.to_tell(incident.kind);
    wanted.retain(|who| !incident.told.iter().any(|told| told.who == *who));
    wanted
}

/// Whether an incident still freezes what it is about.
pub fn is_open(incident: &Incident, policy: &Policy, members: &[Member]) -> bool {
    !missing_closings(incident, policy, members).is_empty() || !untold(incident, policy).is_empty()
}

/// Every open incident on this gag or on the whole production, oldest first.
pub(crate) fn blocks(bench: &Bench<'_>) -> Vec<Block> {
    let case = bench.case;
    let mut incidents: Vec<&Incident> = case
        .day
        .incidents
        .iter()
        .filter(|one| one.gag.is_none_or(|gag| gag == case.plan.gag))
        .filter(|one| is_open(one, &case.policy, &case.members))
        .collect();
    incidents.sort_by_key(|one| (one.at, one.id));
    incidents.into_iter().map(|one| block(bench, one)).collect()
}

fn block(bench: &Bench<'_>, incident: &Incident) -> Block {
    let case = bench.case;
    let kind = match incident.kind {
        IncidentKind::NearMiss => "near miss",
        IncidentKind::Incident => "incident",
    };
    let what = if incident.gag.is_some() {
        "this gag"
    } else {
        "the whole production"
    };
    let mut remedies = Vec::new();
    let untold: Vec<String> = untold(incident, &case.policy)
        .iter()
        .map(|who| {
            let role = Role::ALL.into_iter().find(|role| role.name() == who);
            role.map_or_else(|| who.clone(), |role| bench.title(role))
        })
        .collect();
    if !untold.is_empty() {
        remedies.push(format!("Tell {} and record it.", words::list(&untold)));
    }
    let closers: Vec<String> = missing_closings(incident, &case.policy, &case.members)
        .into_iter()
        .map(|role| bench.title(role))
        .collect();
    if !closers.is_empty() {
        remedies.push(format!(
            "{} must say what was done so that it does not happen again.",
            words::list(&closers)
        ));
    }
    Block {
        kind: BlockKind::Incident,
        about: incident.id.to_string(),
        reason: format!(
            "{} freezes {what} since {}, reported by {}.",
            words::capital(&format!(
                "{} {kind}",
                if kind.starts_with('i') { "an" } else { "a" }
            )),
            words::minute(incident.at),
            bench.name(incident.by)
        ),
        remedy: remedies.join(" "),
    }
}
