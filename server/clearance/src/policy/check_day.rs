//! Whether what a policy says of the day holds together.

use std::collections::BTreeSet;

use super::{LapseEvent, Policy, Role};
use crate::case::IncidentKind;

/// Everything of the day that does not fit together, a sentence each, without the final stop.
pub(crate) fn problems(policy: &Policy, problems: &mut Vec<String>) {
    lapses(policy, problems);
    roles(policy, problems);
    let day = &policy.day;
    if day.good_for_hours == 0 {
        problems.push("marks for the day are good for no time at all".to_owned());
    }
    for reading in &day.readings {
        if reading.max_age_minutes == 0 {
            problems.push(format!(
                "the reading of {} may not be old at all",
                reading.kind.words()
            ));
        }
    }
    if day.go.is_empty() {
        problems.push("nobody may call a go".to_owned());
    }
    if policy.after_take.head_impact_days == 0 {
        problems.push("a head impact keeps nobody from performing".to_owned());
    }
    for kind in [IncidentKind::NearMiss, IncidentKind::Incident] {
        if policy.to_tell(kind).is_empty() {
            let what = match kind {
                IncidentKind::NearMiss => "a near miss",
                IncidentKind::Incident => "an incident",
            };
            problems.push(format!("nobody is told of {what}"));
        }
    }
    for other in policy.tell.iter().flat_map(|tell| &tell.others) {
        if other.trim().is_empty() || Role::ALL.iter().any(|role| role.name() == other) {
            problems.push(format!("\"{other}\" is no name for somebody to tell"));
        }
    }
}

fn lapses(policy: &Policy, problems: &mut Vec<String>) {
    for event in LapseEvent::ALL {
        let rows: Vec<_> = policy
            .lapses
            .iter()
            .filter(|row| row.event == event)
            .collect();
        let row = match rows.as_slice() {
            [row] => row,
            [] => {
                problems.push(format!("it does not say what lapses on {}", event.words()));
                continue;
            }
            _ => {
                problems.push(format!("it says twice what lapses on {}", event.words()));
                continue;
            }
        };
        let Some(facet) = event.seen_in() else {
            continue;
        };
        // The plan layer sees these in a facet: a row that promises more would promise what cannot be
        // seen, and one that keeps the go would keep it for another plan.
        for role in &row.plan {
            let covers = policy
                .role(*role)
                .is_some_and(|role| role.covers.contains(&facet));
            if !covers {
                problems.push(format!(
                    "{} is to sign the plan again on {} and does not answer for the {}",
                    role.name(),
                    event.words(),
                    facet.name()
                ));
            }
        }
        if !row.go {
            problems.push(format!("a go is to outlast {}", event.words()));
        }
    }
    if let Some(row) = policy.lapse(LapseEvent::HeadImpact)
        && !(row.day.contains(&Role::Performer) && row.day.contains(&Role::Medic) && row.go)
    {
        problems.push(
            "after a head impact the performer's and the medic's mark for the day and the go must \
             lapse"
                .to_owned(),
        );
    }
}

fn roles(policy: &Policy, problems: &mut Vec<String>) {
    let mut seen = BTreeSet::new();
    let mut attestations: BTreeSet<&str> = policy
        .roles
        .iter()
        .map(|role| role.attestation.id.as_str())
        .collect();
    for one in &policy.day.roles {
        let name = one.role.name();
        if !seen.insert(one.role) {
            problems.push(format!("the role {name} is to sign the day twice"));
        }
        if !attestations.insert(one.attestation.id.as_str()) {
            problems.push(format!(
                "the attestation {} is used twice",
                one.attestation.id
            ));
        }
        if one.attestation.id.trim().is_empty() || one.attestation.text.trim().is_empty() {
            problems.push(format!("the role {name} has no words to sign the day by"));
        }
    }
    for role in [Role::Coordinator, Role::Performer, Role::Medic] {
        if !seen.contains(&role) {
            problems.push(format!("the role {} need not sign the day", role.name()));
        }
    }
    let lapsing = policy
        .lapses
        .iter()
        .flat_map(|row| row.plan.iter().chain(&row.day));
    let named: BTreeSet<&Role> = lapsing
        .chain(policy.day.roles.iter().map(|one| &one.role))
        .chain(&policy.day.go)
        .chain(policy.tell.iter().flat_map(|tell| &tell.roles))
        .collect();
    for role in named {
        if policy.role(*role).is_none() {
            problems.push(format!(
                "it names the role {} for the day and does not describe it",
                role.name()
            ));
        }
    }
}
