//! The one judge. Everything it says follows from the case and the moment, so that a server and a phone
//! with no signal say the same. There is no other way to become cleared.

mod bench;
mod changes;
mod day;
mod day_marks;
mod elsewhere;
mod events;
mod go;
mod holds;
mod incidents;
mod marks;
mod memory;
mod people_today;
mod required;
mod slots;
mod standing;
mod the_day;
mod working;

use gagwright_mechanics::Technique;
use jiff::Timestamp;

pub use day::{BRIEFED, REHEARSED};
pub use elsewhere::elsewhere;
pub use holds::{agreements_needed, missing_agreements};
pub use incidents::{is_open, missing_closings, untold};
pub use memory::JudgeMemory;
pub use people_today::{
    HEAD_IMPACT, head_impact, is_down, practised, rests_until, taken, to_debrief, with_takes,
};
pub use required::{age_day, is_minor};
pub use the_day::equipment_state;

pub(crate) use day::is_past;
pub(crate) use {bench::Bench, memory::Hashed, required::Needed, standing::standing};

use crate::{
    canonical,
    case::{Block, BlockKind, Case, Clearance, ClearanceState, RoleStanding},
    risk,
    signoff::Statement,
};

/// Judges a case at a moment.
pub fn clearance(case: &Case, now: Timestamp) -> Clearance {
    clearance_with(case, now, gagwright_mechanics::find)
}

/// Where techniques are looked up by name.
pub type FindTechnique = fn(&str) -> Option<&'static dyn Technique>;

/// Judges with the techniques given: the registry's, or the same ones behind something that remembers
/// what they answered. What is found under a name must answer as the registry's technique does.
pub fn clearance_with(case: &Case, now: Timestamp, find: FindTechnique) -> Clearance {
    clearance_remembering(case, now, find, &JudgeMemory::default())
}

/// As [`clearance_with`], remembering which signatures verified from one judgement to the next.
pub fn clearance_remembering(
    case: &Case,
    now: Timestamp,
    find: FindTechnique,
    memory: &JudgeMemory,
) -> Clearance {
    let plan = &case.plan;
    let mut blocks = Vec::new();
    let (hashes, plan_digest) = match memory.hashes(&plan.facets) {
        Ok(hashed) => (hashed.facets.clone(), hashed.digest.clone()),
        Err(error) => {
            blocks.push(working::refused(error.to_string()));
            Default::default()
        }
    };
    let bench = Bench::with(case, now, hashes, find, memory);
    blocks.extend(holds::blocks(&bench));
    blocks.extend(incidents::blocks(&bench));
    let (assessment, refused) = working::assess(&bench, find);
    blocks.extend(refused);
    blocks.extend(assessment.iter().flat_map(working::checks));
    let hazards = required::hazards(&bench);
    let needed = required::needed(&bench, &hazards, assessment.as_ref());
    let roles: Vec<RoleStanding> = needed
        .iter()
        .map(|needed| standing::standing(&bench, needed))
        .collect();
    let (slots, performers) = slots::slots(&bench, &roles);
    blocks.extend(performers);
    blocks.extend(day::bands(&bench));
    blocks.extend(day::equipment(&bench));
    blocks.extend(day::rehearsals(&bench));
    blocks.extend(marks::blocks(&bench, &roles));
    blocks.extend(marks::separation(&bench, &roles));
    // Stable: within a kind the order is the plan's and the policy's own.
    blocks.sort_by_key(|block| block.kind);
    let day = the_day::standing(&bench, &needed, &hazards, &roles);
    let go = go::standing(&bench, &plan_digest, &blocks, &day);
    Clearance {
        gag: plan.gag,
        revision: plan.revision,
        plan_digest,
        state: state(&blocks, case),
        facets: bench.hashes,
        roles,
        slots,
        blocks,
        assessment,
        hazards: hazards.into_iter().collect(),
        day,
        go,
        risks: risk::standings(&plan.facets.action),
    }
}

/// How what a sign-off was made for stands now, whether or not the gag still asks for it.
pub fn standing_of(case: &Case, statement: &Statement, now: Timestamp) -> RoleStanding {
    let hashes = canonical::facet_hashes(&case.plan.facets).unwrap_or_default();
    let memory = JudgeMemory::default();
    let bench = Bench::new(case, now, hashes, &memory);
    let mut slots = case.plan.facets.cast.slots.iter();
    let slot = statement
        .slot
        .and_then(|wanted| slots.find(|slot| slot.id == wanted));
    match case.policy.role(statement.role) {
        Some(policy) if slot.is_some() == statement.slot.is_some() => standing::standing(
            &bench,
            &Needed {
                policy,
                slot,
                because: "it was signed".to_owned(),
            },
        ),
        _ => standing::unasked(&bench, statement),
    }
}

/// The answer in a word follows from the blocks alone: cleared exactly when there is none.
fn state(blocks: &[Block], case: &Case) -> ClearanceState {
    let worst = blocks.iter().map(|block| match block.kind {
        BlockKind::Hold | BlockKind::Incident => ClearanceState::Held,
        BlockKind::Check
        | BlockKind::Inputs
        | BlockKind::Performer
        | BlockKind::Condition
        | BlockKind::Equipment
        | BlockKind::Separation => ClearanceState::Blocked,
        BlockKind::Decline | BlockKind::Lapsed => ClearanceState::Lapsed,
        BlockKind::Unsigned
        | BlockKind::OpenCondition
        | BlockKind::Uncast
        | BlockKind::Undated
        | BlockKind::Rehearsal => ClearanceState::Waiting,
    });
    match worst.max().unwrap_or(ClearanceState::Cleared) {
        ClearanceState::Waiting if case.signoffs.is_empty() => ClearanceState::NotAsked,
        worst => worst,
    }
}

#[cfg(test)]
#[path = "tests/judge.rs"]
mod tests;

#[cfg(test)]
#[path = "tests/day.rs"]
mod day_tests;

#[cfg(test)]
#[path = "tests/marks.rs"]
mod marks_tests;

#[cfg(test)]
#[path = "tests/properties.rs"]
mod properties;

#[cfg(test)]
#[path = "tests/lapses.rs"]
mod lapses_tests;

#[cfg(test)]
#[path = "tests/go.rs"]
mod go_tests;

#[cfg(test)]
#[path = "tests/late.rs"]
mod late_tests;
