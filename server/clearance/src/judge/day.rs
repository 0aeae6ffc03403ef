//! What the day and the gear say: readings against bands, inspections, the rescue drill, and the
//! rehearsal ladder. None of it is signed for; all of it stops a gag.

use std::collections::BTreeMap;

use gagwright_mechanics::Facet;
use jiff::{SignedDuration, Timestamp, civil::Date};

use super::bench::Bench;
use crate::{
    case::{Block, BlockKind, Reading, ReadingKind, RegisteredItem, RehearsalRun},
    day_mark::plain,
    facets::{Band, Equipment, Rung},
    words,
};

/// Facets a rehearsal rehearses: a run counts while these are as they were.
pub const REHEARSED: [Facet; 4] = [
    Facet::Action,
    Facet::Rigging,
    Facet::Effects,
    Facet::Vehicles,
];

/// What a briefing briefs: it counts while these are as they were. Who is cast is seen by who was there,
/// and the day and the place are the briefing's own.
pub const BRIEFED: [Facet; 4] = REHEARSED;

/// A reading's clock may be this far ahead of the server's and still be of now.
const AHEAD: SignedDuration = SignedDuration::from_mins(5);

/// Bands whose latest reading is outside, however long ago it was read: waiting makes no wind drop, only
/// a newer reading says that it has. No reading at all does not stop a plan: the day asks for readings,
/// the plan only fixes the band.
pub(crate) fn bands(bench: &Bench<'_>) -> Vec<Block> {
    let bands = &bench.case.plan.facets.conditions.bands;
    bands
        .iter()
        .filter_map(|band| band_block(bench, band))
        .collect()
}

fn band_block(bench: &Bench<'_>, band: &Band) -> Option<Block> {
    let kind = band.reading;
    let broken = |reading: &Reading| {
        let under = band.min.filter(|min| reading.value < *min);
        under.or(band.max.filter(|max| reading.value > *max))
    };
    let outside = |reading: &Reading| !reading.value.is_finite() || broken(reading).is_some();
    let latest = latest(bench, kind, outside)?;
    if !outside(latest) {
        return None;
    }
    let allowed = match (band.min, band.max) {
        (Some(min), Some(max)) => format!("{} to {}", kind.say(min), kind.say(max)),
        (Some(min), None) => format!("at least {}", kind.say(min)),
        (None, Some(max)) => format!("at most {}", kind.say(max)),
        (None, None) => "a number".to_owned(),
    };
    let place = if latest.place.is_empty() {
        String::new()
    } else {
        format!(" at {}", latest.place)
    };
    Some(Block {
        kind: BlockKind::Condition,
        about: kind.name().to_owned(),
        reason: format!(
            "{} was read as {}{place} by {} on {}; the plan allows {allowed}.",
            words::capital(kind.words()),
            kind.say_beyond(latest.value, broken(latest)),
            bench.name(latest.by),
            words::minute(latest.at)
        ),
        remedy: "Wait for a reading inside the band; changing the band is a new revision."
            .to_owned(),
    })
}

/// Whether a reading was made by now, give or take what clocks differ by.
pub(crate) fn is_past(reading: &Reading, now: Timestamp) -> bool {
    now.duration_since(reading.at) >= -AHEAD
}

/// Whether a value is outside a band.
pub(crate) fn is_outside(band: &Band, value: f64) -> bool {
    !value.is_finite()
        || band.min.is_some_and(|min| value < min)
        || band.max.is_some_and(|max| value > max)
}

/// A piece of equipment as the production's register has it.
pub(crate) fn registered<'a>(bench: &Bench<'a>, serial: &str) -> Option<&'a RegisteredItem> {
    let mut items = bench.case.day.equipment.iter();
    items.find(|item| plain(&item.serial) == plain(serial))
}

/// The last day its inspection counts: as the register says, or the plan where it says nothing.
pub(crate) fn inspected_until(bench: &Bench<'_>, item: &Equipment) -> Option<Date> {
    let known = registered(bench, &item.serial).and_then(|one| one.inspected_until);
    known.or(item.inspected_until)
}

/// What to do about a piece in quarantine.
pub(crate) const FREE_OR_REPLACE: &str =
    "Have it inspected and released, or use another piece, which is a new revision.";

/// That nobody may use a piece, and why, in a sentence; none: the register does not say so.
pub(crate) fn quarantined(bench: &Bench<'_>, item: &Equipment) -> Option<String> {
    let quarantine = registered(bench, &item.serial)?.quarantined.as_ref()?;
    Some(format!(
        "{} ({}) has been in quarantine since {}: {}.",
        words::capital(&item.name),
        item.serial,
        words::minute(quarantine.since),
        words::unstopped(&quarantine.reason)
    ))
}

/// The latest reading of a kind. Of two at one moment the one that is outside decides.
pub(crate) fn latest<'a>(
    bench: &Bench<'a>,
    kind: ReadingKind,
    outside: impl Fn(&Reading) -> bool,
) -> Option<&'a Reading> {
    let readings = bench.case.readings.iter();
    readings
        .filter(|one| one.kind == kind && is_past(one, bench.now))
        .max_by_key(|one| (one.at, outside(one), one.id))
}

/// Equipment whose inspection runs out before the day or is not known to count at all, and a rescue that was drilled too slowly.
pub(crate) fn equipment(bench: &Bench<'_>) -> Vec<Block> {
    let facets = &bench.case.plan.facets;
    let day = facets
        .setting
        .day
        .map_or(bench.today, |day| day.max(bench.today));
    let mut blocks = Vec::new();
    for item in &facets.rigging.equipment {
        if let Some(reason) = quarantined(bench, item) {
            blocks.push(Block {
                kind: BlockKind::Equipment,
                about: item.serial.clone(),
                reason,
                remedy: FREE_OR_REPLACE.to_owned(),
            });
        }
        let (reason, remedy) = match inspected_until(bench, item) {
            Some(until) if until >= day => continue,
            Some(until) => (
                format!(
                    "The inspection of {} ({}) counts until {until}; it is needed on {day}.",
                    item.name, item.serial
                ),
                "Have it inspected again and enter the date, or use another piece, which is a new revision.",
            ),
            None => (
                format!(
                    "{} ({}) has no inspection date.",
                    words::capital(&item.name),
                    item.serial
                ),
                "Enter the last day its inspection counts.",
            ),
        };
        blocks.push(Block {
            kind: BlockKind::Equipment,
            about: item.serial.clone(),
            reason,
            remedy: remedy.to_owned(),
        });
    }
    let rescue = &facets.rigging.rescue;
    if let (Some(limit), Some(drilled)) = (rescue.limit_seconds, rescue.drilled_seconds)
        // A time that is not a number is no drill.
        && (drilled.is_nan() || limit.is_nan() || drilled > limit)
    {
        blocks.push(Block {
            kind: BlockKind::Equipment,
            about: "rescue".to_owned(),
            reason: format!("The rescue was drilled in {drilled} s; the limit is {limit} s."),
            remedy: "Change the rescue until a drill is inside the limit.".to_owned(),
        });
    }
    blocks
}

/// Rungs not passed in order with the plan as it is, and a rescue that has a limit and no drill.
pub(crate) fn rehearsals(bench: &Bench<'_>) -> Vec<Block> {
    let facets = &bench.case.plan.facets;
    let mut blocks = Vec::new();
    let rescue = &facets.rigging.rescue;
    if let (Some(limit), None) = (rescue.limit_seconds, rescue.drilled_seconds) {
        blocks.push(Block {
            kind: BlockKind::Rehearsal,
            about: "rescue".to_owned(),
            reason: format!("The rescue must take at most {limit} s and has not been drilled."),
            remedy: "Drill the rescue and enter its time in the rigging.".to_owned(),
        });
    }
    let counting = counting_runs(bench);
    let (passed, good) = climb(&facets.rehearsals.rungs, &counting);
    if let Some(rung) = facets.rehearsals.rungs.get(passed) {
        let later = facets.rehearsals.rungs.len() - passed - 1;
        let and_later = match later {
            0 => String::new(),
            1 => ", and one rung after it".to_owned(),
            many => format!(", and {many} rungs after it"),
        };
        blocks.push(Block {
            kind: BlockKind::Rehearsal,
            about: rung.name.clone(),
            reason: format!(
                "{} good of {} needed on the rung \"{}\"{and_later}{}.",
                good,
                rung.good_runs,
                rung.what,
                stale(bench, &counting)
            ),
            remedy: "Rehearse the rungs in order and log each run.".to_owned(),
        });
    } else if let [.., one, two] = counting.as_slice()
        && !one.good
        && !two.good
    {
        blocks.push(Block {
            kind: BlockKind::Rehearsal,
            about: two.rung.clone(),
            reason: "The last two runs in a row did not go as planned.".to_owned(),
            remedy: "Find the cause, then log a good run.".to_owned(),
        });
    }
    blocks
}

/// Runs of the plan as it is, in the order they were made.
fn counting_runs<'a>(bench: &Bench<'a>) -> Vec<&'a RehearsalRun> {
    let unchanged = |run: &&RehearsalRun| bench.is_as_then(&REHEARSED, &run.facets);
    // By id, so that a run delivered twice counts once.
    let runs: BTreeMap<_, _> = bench.case.runs.iter().map(|run| (run.id, run)).collect();
    let mut runs: Vec<&RehearsalRun> = runs.into_values().filter(unchanged).collect();
    runs.sort_by_key(|run| (run.at, run.id));
    runs
}

/// How many rungs are passed, and how many good runs the next one has. A good run on a later rung counts
/// only once every rung before it is passed.
fn climb(rungs: &[Rung], runs: &[&RehearsalRun]) -> (usize, u32) {
    let (mut passed, mut good) = (0, 0);
    let skip_free = |mut at: usize| {
        while rungs.get(at).is_some_and(|rung| rung.good_runs == 0) {
            at += 1;
        }
        at
    };
    passed = skip_free(passed);
    for run in runs {
        let Some(rung) = rungs.get(passed) else { break };
        if run.good && run.rung == rung.name {
            good += 1;
        }
        if good >= rung.good_runs {
            passed = skip_free(passed + 1);
            good = 0;
        }
    }
    (passed, good)
}

fn stale(bench: &Bench<'_>, counting: &[&RehearsalRun]) -> &'static str {
    if counting.len() < bench.case.runs.len() {
        "; runs made before the plan changed no longer count"
    } else {
        ""
    }
}
