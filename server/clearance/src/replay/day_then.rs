//! How a gag's day stood after the leaves so far, and what of it cannot be known any more.

use std::collections::BTreeSet;

use gagwright_casting::{GagId, PersonId};

use super::{Kept, Replay, day::OnGag, rebuilt::Lost};
use crate::{
    case::{Briefing, DayLog, Debrief, Incident, RegisteredItem, Take},
    judge,
    plan::Plan,
    policy::Policy,
};

fn of_gag<T: Clone>(all: &[OnGag<T>], gag: GagId) -> Vec<T> {
    let here = all.iter().filter(|(_, of, _)| *of == gag);
    here.map(|(_, _, one)| one.clone()).collect()
}

impl Replay {
    /// Briefings on a gag, in the order of the leaves.
    pub fn briefings(&self, gag: GagId) -> Vec<Briefing> {
        of_gag(&self.day.briefings, gag)
    }

    /// Takes of a gag, in the order of the leaves.
    pub fn takes(&self, gag: GagId) -> Vec<Take> {
        of_gag(&self.day.takes, gag)
    }

    /// Debriefs after takes of a gag, in the order of the leaves.
    pub fn debriefs(&self, gag: GagId) -> Vec<Debrief> {
        of_gag(&self.day.debriefs, gag)
    }

    /// What of the day bears on one gag, with what of it cannot be known any more.
    pub(super) fn day_of(
        &self,
        plan: &Plan,
        cast: &BTreeSet<PersonId>,
        policy: &Policy,
        lost: &mut Lost,
    ) -> DayLog {
        let (day, gag) = (&self.day, plan.gag);
        self.lost_of_the_day(plan, cast, lost);
        let used = |one: &&RegisteredItem| plan.uses(&one.serial);
        let (mut taken, mut practised) = (Vec::new(), Vec::new());
        let mut elsewhere = Vec::new();
        for (other, then) in &self.gags {
            let takes = of_gag(&day.takes, *other);
            if *other == gag || takes.is_empty() {
                continue;
            }
            match &then.plan {
                Kept::Known(there) => {
                    taken.extend(judge::taken(there, &takes));
                    let debriefs = of_gag(&day.debriefs, *other);
                    practised.extend(judge::practised(there, &takes, &debriefs));
                    let code = &then.code;
                    elsewhere.extend(judge::elsewhere(plan, there, code, &takes, policy));
                }
                Kept::Gone { leaf } => {
                    if takes
                        .iter()
                        .any(|one| one.cast.values().any(|who| cast.contains(who)))
                    {
                        lost.needed(format!(
                            "The plan of another gag, leaf {leaf}, is not in this file: what its takes put the \
                             people cast through cannot be known."
                        ));
                    }
                }
            }
        }
        taken.retain(|one| cast.contains(&one.person));
        practised.retain(|one| cast.contains(&one.person));
        let marks = day.marks.iter().filter(|(of, _)| *of == gag);
        let looks = day.looks.iter().filter(|one| cast.contains(&one.person));
        let downs = day.stand_downs.iter();
        let incidents = day.incidents.iter().map(|(_, one)| one);
        DayLog {
            equipment: day.equipment.iter().filter(used).cloned().collect(),
            briefings: of_gag(&day.briefings, gag),
            signoffs: marks.map(|(_, mark)| mark.clone()).collect(),
            takes: of_gag(&day.takes, gag),
            debriefs: of_gag(&day.debriefs, gag),
            looks: looks.cloned().collect(),
            stand_downs: downs
                .filter(|one| cast.contains(&one.person))
                .cloned()
                .collect(),
            incidents: incidents
                .filter(|one| one.gag.is_none_or(|of| of == gag))
                .cloned()
                .collect(),
            elsewhere,
            taken,
            practised,
        }
    }

    fn lost_of_the_day(&self, plan: &Plan, cast: &BTreeSet<PersonId>, lost: &mut Lost) {
        let (day, gag) = (&self.day, plan.gag);
        for (leaf, person) in &day.lost_looks {
            if cast.contains(person) {
                lost.needed(format!(
                    "What the medic found of {person}, leaf {leaf}, was erased or is not in this file: whether \
                     they could go on cannot be known any more."
                ));
            }
        }
        for (leaf, person) in &day.lost_used {
            if cast.contains(person) {
                lost.needed(format!(
                    "The skills that {person} used, leaf {leaf}, were erased or are not in this file: whether theirs \
                     were recent cannot be known any more."
                ));
            }
        }
        for (leaf, id) in &day.lost_items {
            let serial = day.equipment.iter().find(|one| one.id == *id);
            if serial.is_some_and(|one| plan.uses(&one.serial)) {
                lost.words(
                    *leaf,
                    "what the piece of equipment was called and rated for",
                );
            }
        }
        for (leaf, of, _) in day.briefings.iter().filter(|(_, of, _)| *of == gag) {
            if *of == gag && self.gone.contains(leaf) {
                lost.words(*leaf, "what the briefing said");
            }
        }
        for (leaf, of, _) in &day.debriefs {
            if *of == gag && self.gone.contains(leaf) {
                lost.words(*leaf, "what the debrief said");
            }
        }
        for (leaf, _, take) in day.takes.iter().filter(|(_, of, _)| *of == gag) {
            if day.lost_places.contains(leaf) && take.outcome.is_none() {
                lost.needed(format!(
                    "The place of the go, leaf {leaf}, is not in this file: whether the go still stood cannot be \
                     known."
                ));
            } else if self.gone.contains(leaf) {
                lost.words(*leaf, "what the server answered to the go");
            }
        }
        let on = |one: &Incident| one.gag.is_none_or(|of| of == gag);
        for (leaf, _) in day.incidents.iter().filter(|(_, one)| on(one)) {
            if self.gone.contains(leaf) {
                lost.words(*leaf, "what the incident was");
            }
        }
    }
}
