//! The day beside the plan: who was briefed, what was read and when, what is used, who performs. Each
//! answers one question, and the day stands when none of them leaves one open.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::PersonId;
use jiff::{SignedDuration, Timestamp, civil::Date};

use super::{
    bench::Bench,
    day,
    day_marks::{self, Where},
    elsewhere, people_today,
    required::Needed,
};
use crate::{
    case::{
        Briefing, BriefingStanding, DayBlock, DayBlockKind, DayStanding, EquipmentStanding,
        EquipmentState, Reading, ReadingKind, ReadingStanding, ReadingState, RoleStanding,
        RoleState,
    },
    day_mark::{day_and_place, same_place, span},
    plan::Hazard,
    words,
};

/// How the day stands.
pub(crate) fn standing(
    bench: &Bench<'_>,
    needed: &[Needed<'_>],
    hazards: &BTreeSet<Hazard>,
    roles: &[RoleStanding],
) -> DayStanding {
    let (day, place) = day_and_place(bench.case, bench.now);
    let today = Where { day, place };
    let marks = day_marks::standings(bench, needed, &today);
    let briefing = briefing(bench, &marks, &today);
    let readings = readings(bench, hazards, &today);
    let equipment = equipment(bench, &today);
    let people = people_today::people(bench, hazards, &today);
    let mut blocks: Vec<DayBlock> = not_today(bench, &today).into_iter().collect();
    blocks.extend(briefing_blocks(bench, &briefing));
    blocks.extend(readings.iter().filter_map(|one| reading_block(one, &today)));
    blocks.extend(equipment.iter().filter_map(equipment_block));
    blocks.extend(people_today::blocks(bench, &people));
    blocks.extend(another_day(bench, roles, &today));
    blocks.extend(day_marks::blocks(bench, &marks));
    blocks.extend(elsewhere::blocks(bench));
    // Stable: within a kind the order is the plan's and the policy's own.
    blocks.sort_by_key(|block| block.kind);
    DayStanding {
        day: today.day,
        place: today.place,
        stands: blocks.is_empty(),
        marks,
        briefing,
        readings,
        equipment,
        people,
        blocks,
    }
}

fn not_today(bench: &Bench<'_>, today: &Where) -> Option<DayBlock> {
    let (from, until) = span(today.day);
    if from <= bench.now && bench.now < until {
        return None;
    }
    Some(DayBlock {
        kind: DayBlockKind::NotToday,
        about: today.day.to_string(),
        reason: format!("The plan is for {}, which is not today.", today.day),
        remedy: "Wait for that day; or brief those involved for today.".to_owned(),
    })
}

/// People judged for the plan's day are judged again for another.
fn another_day(bench: &Bench<'_>, roles: &[RoleStanding], today: &Where) -> Vec<DayBlock> {
    if bench.case.plan.facets.setting.day == Some(today.day) {
        return Vec::new();
    }
    let slots = &bench.case.plan.facets.cast.slots;
    slots
        .iter()
        .filter_map(|slot| {
            let verdict = super::slots::verdict(bench, slot, roles, today.day)?;
            let name = bench.name(slot.person?);
            let open = super::slots::unmet(&verdict);
            if open.is_empty() {
                return None;
            }
            Some(DayBlock {
                kind: DayBlockKind::Performer,
                about: slot.id.to_string(),
                reason: format!(
                    "{name} cannot perform as {} on {}: {}.",
                    slot.name,
                    today.day,
                    open.join("; ")
                ),
                remedy: "Cure what is named, or shoot on the plan's own day.".to_owned(),
            })
        })
        .collect()
}

fn briefing(bench: &Bench<'_>, marks: &[RoleStanding], today: &Where) -> BriefingStanding {
    let policy = &bench.case.policy.day.briefing;
    let here: Vec<&Briefing> = bench
        .case
        .day
        .briefings
        .iter()
        .filter(|one| one.day == today.day && same_place(&one.place, &today.place))
        .filter(|one| is_recent(bench, one.at))
        .collect();
    let current = |one: &&&Briefing| bench.is_as_then(&super::BRIEFED, &one.facets);
    let counting: Vec<&&Briefing> = here.iter().filter(current).collect();
    let attended: BTreeSet<PersonId> = counting
        .iter()
        .flat_map(|one| one.attended.iter().copied().chain([one.by]))
        .collect();
    let mut must: Vec<PersonId> = Vec::new();
    if policy.cast {
        let slots = bench.case.plan.facets.cast.slots.iter();
        must.extend(slots.filter_map(|slot| slot.person));
    }
    if policy.signers {
        let standing = marks.iter().filter(|one| one.state == RoleState::Standing);
        must.extend(standing.filter_map(|one| one.signer));
    }
    let mut named = BTreeSet::new();
    must.retain(|person| !attended.contains(person) && named.insert(*person));
    BriefingStanding {
        asked: policy.cast || policy.signers,
        at: counting.iter().map(|one| one.at).max(),
        outdated: counting.is_empty() && !here.is_empty(),
        attended: attended.into_iter().collect(),
        missed: must,
    }
}

/// Whether what was said on the spot is of this shift: it counts as long as a mark for the day does.
fn is_recent(bench: &Bench<'_>, at: Timestamp) -> bool {
    let hours = SignedDuration::from_hours(bench.case.policy.day.good_for_hours.into());
    at.checked_add(hours).is_ok_and(|until| bench.now < until)
}

fn briefing_blocks(bench: &Bench<'_>, briefing: &BriefingStanding) -> Option<DayBlock> {
    if !briefing.asked || (briefing.at.is_some() && briefing.missed.is_empty()) {
        return None;
    }
    let missed: Vec<String> = briefing.missed.iter().map(|one| bench.name(*one)).collect();
    let (reason, remedy) = match (briefing.at, briefing.outdated) {
        (Some(_), _) => (
            format!("{} missed the briefing.", words::list(&missed)),
            "Brief them on the spot and record it.",
        ),
        (None, true) => (
            "The plan has changed since the briefing.".to_owned(),
            "Brief everyone again on what changed.",
        ),
        (None, false) => (
            "Nobody has been briefed for this day and place.".to_owned(),
            "Brief everyone involved on the spot and record who was there.",
        ),
    };
    Some(DayBlock {
        kind: DayBlockKind::Briefing,
        about: "briefing".to_owned(),
        reason,
        remedy: remedy.to_owned(),
    })
}

/// What must be read: the plan's bands, and what the policy asks for on gags with such hazards.
fn readings(bench: &Bench<'_>, hazards: &BTreeSet<Hazard>, today: &Where) -> Vec<ReadingStanding> {
    let bands = &bench.case.plan.facets.conditions.bands;
    let mut ages: BTreeMap<ReadingKind, u32> = BTreeMap::new();
    let asked = bench.case.policy.day.readings.iter();
    let asked = asked
        .filter(|one| one.hazards.is_empty() || !one.hazards.is_disjoint(hazards))
        .map(|one| (one.kind, one.max_age_minutes));
    for (kind, age) in asked.chain(bands.iter().map(|one| (one.reading, one.max_age_minutes))) {
        ages.entry(kind)
            .and_modify(|kept| *kept = age.min(*kept))
            .or_insert(age);
    }
    ages.into_iter()
        .map(|(kind, max_age)| reading(bench, kind, max_age, today))
        .collect()
}

/// Whether everybody was somewhere else when something was read: briefed for this day at another place, and
/// not yet here.
fn was_elsewhere(bench: &Bench<'_>, at: Timestamp, today: &Where) -> bool {
    let briefings = bench.case.day.briefings.iter();
    let before = briefings
        .filter(|one| one.day == today.day && one.at <= at)
        .max_by_key(|one| (one.at, one.id));
    before.is_some_and(|one| !same_place(&one.place, &today.place))
}

fn reading(
    bench: &Bench<'_>,
    kind: ReadingKind,
    max_age_minutes: u32,
    today: &Where,
) -> ReadingStanding {
    let bands = bench.case.plan.facets.conditions.bands.iter();
    let bands: Vec<_> = bands.filter(|band| band.reading == kind).collect();
    let outside = |one: &Reading| {
        !one.value.is_finite() || bands.iter().any(|band| day::is_outside(band, one.value))
    };
    let latest = day::latest(bench, kind, outside);
    let latest = latest.filter(|one| !was_elsewhere(bench, one.at, today));
    let age = SignedDuration::from_mins(max_age_minutes.into());
    let good_until = latest.and_then(|one| one.at.checked_add(age).ok());
    let state = match latest {
        None => ReadingState::Missing,
        Some(one) if outside(one) => ReadingState::Outside,
        Some(_) if good_until.is_some_and(|until| until < bench.now) => ReadingState::Old,
        Some(_) => ReadingState::Good,
    };
    ReadingStanding {
        kind,
        state,
        reading: latest.map(|one| one.id),
        value: latest.map(|one| one.value),
        at: latest.map(|one| one.at),
        good_until,
        max_age_minutes,
        min: bands.iter().filter_map(|band| band.min).reduce(f64::max),
        max: bands.iter().filter_map(|band| band.max).reduce(f64::min),
    }
}

fn reading_block(reading: &ReadingStanding, today: &Where) -> Option<DayBlock> {
    let what = words::capital(reading.kind.words());
    let (reason, remedy) = match reading.state {
        ReadingState::Good => return None,
        ReadingState::Missing => (
            match today.place.trim() {
                "" => format!("{what} has not been read."),
                place => format!("{what} has not been read at \"{place}\"."),
            },
            "Read it and log it.".to_owned(),
        ),
        ReadingState::Old => (
            format!(
                "{what} was last read on {}; a reading counts for {} min.",
                reading.at.map(words::minute).unwrap_or_default(),
                reading.max_age_minutes
            ),
            "Read it again and log it.".to_owned(),
        ),
        ReadingState::Outside => (
            format!("{what} is outside what the plan allows."),
            "Wait for a reading inside the band; changing the band is a new revision.".to_owned(),
        ),
    };
    Some(DayBlock {
        kind: DayBlockKind::Reading,
        about: reading.kind.name().to_owned(),
        reason,
        remedy,
    })
}

/// Whether a piece may be used on a day: set aside it may not, whatever its inspection says.
pub fn equipment_state(
    quarantined: bool,
    inspected_until: Option<Date>,
    day: Date,
) -> EquipmentState {
    if quarantined {
        EquipmentState::Quarantined
    } else if inspected_until.is_some_and(|until| until >= day) {
        EquipmentState::Ready
    } else {
        EquipmentState::Uninspected
    }
}

/// Every piece the plan is built from, as the register has it.
fn equipment(bench: &Bench<'_>, today: &Where) -> Vec<EquipmentStanding> {
    let listed = bench.case.plan.facets.rigging.equipment.iter();
    listed
        .map(|item| {
            let registered = day::registered(bench, &item.serial);
            let inspected_until = day::inspected_until(bench, item);
            let what = format!("{} ({})", words::capital(&item.name), item.serial);
            let quarantined = day::quarantined(bench, item);
            let state = equipment_state(quarantined.is_some(), inspected_until, today.day);
            let reason = match (state, inspected_until) {
                (EquipmentState::Ready, _) => String::new(),
                (EquipmentState::Quarantined, _) => quarantined.unwrap_or_default(),
                (EquipmentState::Uninspected, Some(until)) => format!(
                    "The inspection of {} ({}) counts until {until}.",
                    item.name, item.serial
                ),
                (EquipmentState::Uninspected, None) => {
                    format!("{what} has no inspection date.")
                }
            };
            EquipmentStanding {
                serial: item.serial.clone(),
                name: item.name.clone(),
                item: registered.map(|one| one.id),
                working_load: registered
                    .and_then(|one| one.working_load)
                    .or(item.working_load),
                inspected_until,
                state,
                reason,
            }
        })
        .collect()
}

fn equipment_block(one: &EquipmentStanding) -> Option<DayBlock> {
    let remedy = match one.state {
        EquipmentState::Ready => return None,
        EquipmentState::Uninspected => "Have it inspected, or use another piece.",
        EquipmentState::Quarantined => day::FREE_OR_REPLACE,
    };
    Some(DayBlock {
        kind: DayBlockKind::Equipment,
        about: one.serial.clone(),
        reason: one.reason.clone(),
        remedy: remedy.to_owned(),
    })
}
