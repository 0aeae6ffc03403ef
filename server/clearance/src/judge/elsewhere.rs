//! Takes of other gags that have somebody or something of this one in them: nobody falls twice at once, and
//! whoever fell on another gag is looked at before they perform on this one.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;

use super::{bench::Bench, people_today::performed, required};
use crate::{
    case::{DayBlock, DayBlockKind, Take, TakeElsewhere},
    plan::{Hazard, Plan},
    policy::Policy,
    words,
};

/// What of another gag's takes bears on this one: those that are open with somebody or something of this gag
/// in them, and those after which the medic looks at somebody of this gag's cast.
pub fn elsewhere(
    here: &Plan,
    there: &Plan,
    code: &str,
    takes: &[Take],
    policy: &Policy,
) -> Vec<TakeElsewhere> {
    let asks = asks_look(policy, &required::plan_hazards(there, policy));
    let listed = here.facets.rigging.equipment.iter();
    let shared: Vec<String> = listed
        .filter(|item| there.uses(&item.serial))
        .map(|item| item.serial.clone())
        .collect();
    let told = |take: &Take| {
        let people: BTreeSet<PersonId> = take.cast.values().copied().collect();
        let look = asks && performed(take);
        let one = TakeElsewhere {
            gag: there.gag,
            code: code.to_owned(),
            take: take.id,
            number: take.number,
            day: take.day,
            called_at: take.called_at,
            ended_at: take.outcome.as_ref().map(|outcome| outcome.at),
            people: people.into_iter().filter(|one| here.casts(*one)).collect(),
            serials: match take.outcome {
                Some(_) => Vec::new(),
                None => shared.clone(),
            },
            look,
        };
        let open = one.ended_at.is_none() && !(one.people.is_empty() && one.serials.is_empty());
        (open || (look && !one.people.is_empty())).then_some(one)
    };
    takes.iter().filter_map(told).collect()
}

/// Whether the medic looks at whoever performed, after a take with these hazards.
pub(crate) fn asks_look(policy: &Policy, hazards: &BTreeSet<Hazard>) -> bool {
    let after = &policy.after_take;
    after.look_always || !after.look_hazards.is_disjoint(hazards)
}

/// Everybody and everything that is in a take of another gag at this moment.
pub(crate) fn blocks(bench: &Bench<'_>) -> Vec<DayBlock> {
    let takes = bench.case.day.elsewhere.iter();
    let mut open: Vec<&TakeElsewhere> = takes.filter(|one| one.ended_at.is_none()).collect();
    open.sort_by_key(|one| (one.called_at, one.take));
    open.into_iter()
        .filter_map(|one| {
            let plan = &bench.case.plan;
            let people = one.people.iter().filter(|person| plan.casts(**person));
            let serials = one.serials.iter().filter(|serial| plan.uses(serial));
            let busy: Vec<String> = people
                .map(|person| bench.name(*person))
                .chain(serials.cloned())
                .collect();
            (!busy.is_empty()).then(|| DayBlock {
                kind: DayBlockKind::OpenTake,
                about: one.take.to_string(),
                reason: format!(
                    "Take {} of {} is open, with {}.",
                    one.number,
                    one.code,
                    words::list(&busy)
                ),
                remedy: format!("Record how it ended, on {}.", one.code),
            })
        })
        .collect()
}
