//! Who performs on the day: stood down or not, looked at after the last take or not, and what their
//! bodies have taken. Never says why somebody is stood down.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{Exposure, Person, PersonId, Requirement, Slot};
use jiff::{
    SignedDuration, Timestamp, ToSpan,
    civil::{Date, Time},
    tz::Offset,
};

use super::{bench::Bench, day_marks::Where, elsewhere::asks_look};
use crate::{
    case::{
        Case, DayBlock, DayBlockKind, Debrief, Fitness, Look, PersonStanding, Practised, StandDown,
        Take, TakeResult, Taken, Used,
    },
    ids::RecordId,
    plan::{Hazard, Plan},
    words,
};

/// How everyone cast stands.
pub(crate) fn people(
    bench: &Bench<'_>,
    hazards: &BTreeSet<Hazard>,
    today: &Where,
) -> Vec<PersonStanding> {
    let slots = bench.case.plan.facets.cast.slots.iter();
    slots
        .filter_map(|slot| {
            let person = slot.person?;
            let stood = stood_down(bench, person);
            let (stood_down, until) = stood.map_or((None, None), |(why, until)| (Some(why), until));
            Some(PersonStanding {
                slot: slot.id,
                person,
                stood_down,
                until,
                look_owed: look_owed(bench, hazards, person, today.day),
            })
        })
        .collect()
}

/// Why somebody does not perform on a day, and until when.
fn stood_down(bench: &Bench<'_>, person: PersonId) -> Option<(String, Option<Timestamp>)> {
    let case = bench.case;
    let name = bench.name(person);
    let looks = || {
        case.day
            .looks
            .iter()
            .filter(move |one| one.person == person)
    };
    let days = case.policy.after_take.head_impact_days;
    let kept_off = looks()
        .filter(|one| one.head_impact)
        .map(|one| rests_until(one, days))
        .chain(after_looks(case, person).filter_map(|one| one.until))
        .max()
        .filter(|until| bench.now < *until);
    if let Some(until) = kept_off {
        let said = words::minute(until);
        let said = format!("{name} is stood down until {said}, after the medic's look.");
        return Some((said, Some(until)));
    }
    let latest = looks().max_by_key(|one| (one.at, one.fitness, one.id));
    if latest.is_some_and(|one| one.fitness == Fitness::Unfit) {
        let said = format!("{name} is stood down until the medic has looked again.");
        return Some((said, None));
    }
    let downs = case.day.stand_downs.iter();
    let mut open: Vec<&StandDown> = downs
        .filter(|one| one.person == person && !one.after_look && is_down(one, bench.now))
        .collect();
    // The one that ends last decides; one without an end ends last of all.
    open.sort_by_key(|one| (one.until.unwrap_or(Timestamp::MAX), one.id));
    let down = open.last()?;
    let said = match down.until {
        Some(until) => format!("{name} is stood down until {}.", words::minute(until)),
        None => format!("{name} is stood down."),
    };
    Some((said, down.until))
}

/// Until when a head impact keeps somebody from performing: the end of the policy's days by the calendar, and
/// as many times 24 hours, for a day that ends at midnight, minutes after the blow, is no day's rest.
pub fn rests_until(look: &Look, days: u32) -> Timestamp {
    let last = look.day.checked_add(i64::from(days).days());
    let calendar = last.map(|after| Offset::UTC.to_timestamp(after.to_datetime(Time::midnight())));
    let calendar = calendar.ok().and_then(Result::ok).unwrap_or(Timestamp::MAX);
    let hours = SignedDuration::from_hours(24 * i64::from(days));
    let rest = look.at.checked_add(hours).unwrap_or(Timestamp::MAX);
    calendar.max(rest)
}

/// What stands for looks of the medic's that keep somebody from performing.
pub(crate) fn after_looks(case: &Case, person: PersonId) -> impl Iterator<Item = &StandDown> {
    let downs = case.day.stand_downs.iter();
    downs.filter(move |one| one.person == person && one.after_look)
}

/// Whether a stand-down holds at a moment.
pub fn is_down(one: &StandDown, now: Timestamp) -> bool {
    one.from.duration_since(now) <= SignedDuration::from_mins(5)
        && one.until.is_none_or(|until| now < until)
        && one.returned.is_none()
}

/// Whether the medic has yet to look at somebody since they last performed, today or in the night before.
fn look_owed(bench: &Bench<'_>, hazards: &BTreeSet<Hazard>, person: PersonId, day: Date) -> bool {
    let case = bench.case;
    let lately = bench.now.checked_sub(SignedDuration::from_hours(24));
    let lately = lately.unwrap_or(Timestamp::MIN);
    let recent = |on: Date, called: Timestamp| on == day || called >= lately;
    // A look that names no take, or a later one that was stopped, has seen them since this one ended.
    let unseen = |take: RecordId, ended: Timestamp| {
        let mut looks = case.day.looks.iter().filter(|one| one.person == person);
        !looks.any(|look| look.take == Some(take) || look.at >= ended)
    };
    let others = case.day.elsewhere.iter().filter(|one| one.look);
    let owed_elsewhere = others
        .filter(|one| one.people.contains(&person) && recent(one.day, one.called_at))
        .any(|one| unseen(one.take, one.ended_at.unwrap_or(one.called_at)));
    let takes = case.day.takes.iter();
    let last = takes
        .filter(|take| recent(take.day, take.called_at) && performed(take))
        .filter(|take| take.cast.values().any(|one| *one == person))
        .max_by_key(|take| (take.number, take.called_at, take.id));
    let owed_here = || {
        asks_look(&case.policy, hazards)
            && last.is_some_and(|take| {
                let ended = take.outcome.as_ref().map_or(take.called_at, |one| one.at);
                unseen(take.id, ended)
            })
    };
    owed_elsewhere || owed_here()
}

/// Whether anybody performed: it has ended, and not before the action.
pub(super) fn performed(take: &Take) -> bool {
    let outcome = take.outcome.as_ref();
    outcome.is_some_and(|one| one.result != TakeResult::Stopped)
}

pub(crate) fn blocks(bench: &Bench<'_>, people: &[PersonStanding]) -> Vec<DayBlock> {
    let mut blocks = Vec::new();
    for one in people {
        if let Some(reason) = &one.stood_down {
            blocks.push(DayBlock {
                kind: DayBlockKind::StoodDown,
                about: one.person.to_string(),
                reason: reason.clone(),
                remedy: "Cast someone else, or wait until they are back.".to_owned(),
            });
        }
        if one.look_owed {
            blocks.push(DayBlock {
                kind: DayBlockKind::Look,
                about: one.person.to_string(),
                reason: format!(
                    "The medic has not looked at {} since the last take.",
                    bench.name(one.person)
                ),
                remedy: "Ask the medic to look and to record it.".to_owned(),
            });
        }
    }
    blocks
}

/// What the takes of a gag put bodies through: for each performer, what their slot counts. Of a slot that
/// the plan has since dropped it is not known, so it counts what the worst of the others does: what a body
/// took it took, whatever became of the plan.
pub fn taken(plan: &Plan, takes: &[Take]) -> Vec<Taken> {
    let slots = &plan.facets.cast.slots;
    let mut all = Vec::new();
    for take in takes.iter().filter(|take| performed(take)) {
        for (id, person) in &take.cast {
            let own = slots.iter().filter(|slot| slot.id == *id);
            let counts = match own.clone().next() {
                Some(_) => counted(own),
                None => counted(slots.iter()),
            };
            all.extend(counts.into_iter().map(|(kind, count)| Taken {
                person: *person,
                exposure: Exposure {
                    kind: kind.to_owned(),
                    on: take.day,
                    count,
                },
            }));
        }
    }
    all
}

/// What slots count of each exposure, the most that one of them does.
fn counted<'a>(slots: impl Iterator<Item = &'a Slot>) -> BTreeMap<&'a str, u32> {
    let mut most = BTreeMap::new();
    for slot in slots {
        let mut own: BTreeMap<&str, u32> = BTreeMap::new();
        for requirement in &slot.requirements {
            if let Requirement::DailyExposure { exposure, adds, .. } = requirement {
                let sum = own.entry(exposure).or_default();
                *sum = sum.saturating_add(*adds);
            }
        }
        for (kind, adds) in own {
            let kept = most.entry(kind).or_insert(adds);
            *kept = adds.max(*kept);
        }
    }
    most
}

/// The machine name of a head impact among exposures.
pub const HEAD_IMPACT: &str = "head_impact";

/// What a look at somebody whose head was struck counts as.
pub fn head_impact(look: &Look) -> Taken {
    Taken {
        person: look.person,
        exposure: Exposure {
            kind: HEAD_IMPACT.to_owned(),
            on: look.day,
            count: 1,
        },
    }
}

/// The skills that were used in the takes of a gag: a skill used in a take is recent. What a debrief of that day says
/// of a performer counts; of whom it says nothing, the skills that their slot asks for.
pub fn practised(plan: &Plan, takes: &[Take], debriefs: &[Debrief]) -> Vec<Practised> {
    let by_plan = asked(plan, takes).filter_map(|(person, on, requirement)| match requirement {
        Requirement::Skill { name, .. } if last_word(debriefs, person, on).is_none() => {
            Some(Practised {
                person,
                skill: name.clone(),
                on,
            })
        }
        _ => None,
    });
    // Only who performed has used anything, whatever was written down.
    let performed: BTreeSet<(PersonId, Date)> = takes
        .iter()
        .filter(|take| performed(take))
        .flat_map(|take| take.cast.values().map(|person| (*person, take.day)))
        .collect();
    let by_debrief = performed
        .into_iter()
        .filter_map(|(person, on)| Some((person, on, last_word(debriefs, person, on)?)))
        .flat_map(|(person, on, used)| {
            let skills = used.skills.iter();
            skills.map(move |skill| Practised {
                person,
                skill: skill.clone(),
                on,
            })
        });
    by_plan.chain(by_debrief).collect()
}

/// What a debrief begins with: the last take that has ended, and who performed that day with the skills that their slots
/// ask for. None while no take has ended.
pub fn to_debrief<'a>(plan: &Plan, takes: &'a [Take]) -> Option<(&'a Take, Vec<Used>)> {
    let ended = takes.iter().filter(|take| take.outcome.is_some());
    let last = ended.max_by_key(|take| (take.number, take.called_at, take.id))?;
    let of_day = takes
        .iter()
        .filter(|take| take.day == last.day && performed(take));
    let mut used: BTreeMap<PersonId, BTreeSet<String>> = of_day
        .flat_map(|take| take.cast.values().map(|person| (*person, BTreeSet::new())))
        .collect();
    for (person, on, requirement) in asked(plan, takes) {
        if let (true, Requirement::Skill { name, .. }) = (on == last.day, requirement) {
            used.entry(person).or_default().insert(name.clone());
        }
    }
    let used = used.into_iter();
    Some((
        last,
        used.map(|(person, skills)| Used { person, skills })
            .collect(),
    ))
}

/// What the latest debrief of a day that names a performer says they used.
fn last_word(debriefs: &[Debrief], person: PersonId, on: Date) -> Option<&Used> {
    let of_day = debriefs.iter().filter(|one| one.day == on);
    let naming = of_day.filter_map(|one| Some(((one.at, one.id), one.of(person)?)));
    let latest = naming.max_by_key(|(when, _)| *when);
    latest.map(|(_, used)| used)
}

/// What the slots of a gag asked of whoever performed in its takes, and on which day.
fn asked<'a>(
    plan: &'a Plan,
    takes: &'a [Take],
) -> impl Iterator<Item = (PersonId, Date, &'a Requirement)> {
    let performed = takes.iter().filter(|take| performed(take));
    performed.flat_map(move |take| {
        let slots = plan.facets.cast.slots.iter();
        slots
            .filter_map(|slot| Some((slot, *take.cast.get(&slot.id)?)))
            .flat_map(move |(slot, person)| {
                let asked = slot.requirements.iter();
                asked.map(move |requirement| (person, take.day, requirement))
            })
    })
}

/// Puts what takes and looks did to one person into what is known of them: what their body has taken, and
/// the skills they have used since anybody wrote down when.
pub fn with_takes<'a>(
    person: &mut Person,
    taken: impl Iterator<Item = &'a Taken>,
    practised: impl Iterator<Item = &'a Practised>,
    looks: &[Look],
) {
    let who = person.id;
    let heads = looks
        .iter()
        .filter(|one| one.head_impact && one.person == who);
    let heads = heads.map(|one| head_impact(one).exposure);
    let taken = taken.filter(|one| one.person == who);
    let taken = taken.map(|one| one.exposure.clone()).chain(heads);
    person.exposures.extend(taken);
    for one in practised.filter(|one| one.person == who) {
        let used = person
            .skills
            .iter_mut()
            .filter(|skill| skill.name == one.skill);
        for skill in used {
            skill.last_used = skill.last_used.max(Some(one.on));
        }
    }
}

/// The same from everything that the case knows.
pub(crate) fn with_takes_of(case: &Case, person: &mut Person) {
    let taken_here = taken(&case.plan, &case.day.takes);
    let practised_here = practised(&case.plan, &case.day.takes, &case.day.debriefs);
    with_takes(
        person,
        taken_here.iter().chain(&case.day.taken),
        practised_here.iter().chain(&case.day.practised),
        &case.day.looks,
    );
}
