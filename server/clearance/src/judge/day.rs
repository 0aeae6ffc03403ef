//! What the day and the gear say: readings against bands, inspections, the rescue drill, and the
//! rehearsal ladder. None of it is signed for; all of it stops a gag.

use std::collections::BTreeMap;

use gagwright_mechanics::Facet;
use jiff::SignedDuration;

use super::bench::Bench;
use crate::{
    case::{Block, BlockKind, Reading, ReadingKind, RehearsalRun},
    facets::{Band, Rung},
    words,
};

/// Facets a rehearsal rehearses: a run counts while these are as they were.
pub const REHEARSED: [Facet; 4] = [
    Facet::Action,
    Facet::Rigging,
    Facet::Effects,
    Facet::Vehicles,
];

/// A reading's clock may be this far ahead of the server's and still be of now.
const AHEAD: SignedDuration = SignedDuration::from_mins(5);

/// Bands whose latest reading that still counts is outside. No reading at all does not stop a plan: the
/// day asks for readings, the plan only fixes the band.
pub(crate) fn bands(bench: &Bench<'_>) -> Vec<Block> {
    let bands = &bench.case.plan.facets.conditions.bands;
    bands
        .iter()
        .filter_map(|band| band_block(bench, band))
        .collect()
}

fn band_block(bench: &Bench<'_>, band: &Band) -> Option<Block> {
    let age = SignedDuration::from_mins(band.max_age_minutes.into());
    let counts = |reading: &&Reading| {
        let since = bench.now.duration_since(reading.at);
        reading.kind == band.reading && since <= age && since >= -AHEAD
    };
    let outside = |reading: &Reading| {
        !reading.value.is_finite()
            || band.min.is_some_and(|min| reading.value < min)
            || band.max.is_some_and(|max| reading.value > max)
    };
    // Of two readings at one moment the one outside the band decides.
    let latest = bench
        .case
        .readings
        .iter()
        .filter(counts)
        .max_by_key(|reading| (reading.at, outside(reading), reading.id))?;
    if !outside(latest) {
        return None;
    }
    let (name, unit) = describe(band.reading);
    let allowed = match (band.min, band.max) {
        (Some(min), Some(max)) => format!("between {min} and {max} {unit}"),
        (Some(min), None) => format!("at least {min} {unit}"),
        (None, Some(max)) => format!("at most {max} {unit}"),
        (None, None) => "a number".to_owned(),
    };
    let place = if latest.place.is_empty() {
        String::new()
    } else {
        format!(" at {}", latest.place)
    };
    Some(Block {
        kind: BlockKind::Condition,
        about: machine_name(band.reading).to_owned(),
        reason: format!(
            "{} was read as {} {unit}{place} by {} on {}; the plan allows {allowed}.",
            words::capital(name),
            latest.value,
            bench.name(latest.by),
            words::minute(latest.at)
        ),
        remedy: "Wait for a reading inside the band; changing the band is a new revision."
            .to_owned(),
    })
}

fn describe(kind: ReadingKind) -> (&'static str, &'static str) {
    match kind {
        ReadingKind::Wind => ("mean wind", "m/s"),
        ReadingKind::Gust => ("gust", "m/s"),
        ReadingKind::AirTemperature => ("air temperature", "K"),
        ReadingKind::WaterTemperature => ("water temperature", "K"),
        ReadingKind::Light => ("light", "lux"),
    }
}

fn machine_name(kind: ReadingKind) -> &'static str {
    match kind {
        ReadingKind::Wind => "wind",
        ReadingKind::Gust => "gust",
        ReadingKind::AirTemperature => "air_temperature",
        ReadingKind::WaterTemperature => "water_temperature",
        ReadingKind::Light => "light",
    }
}

/// Equipment whose inspection runs out before the day, and a rescue that was drilled too slowly.
pub(crate) fn equipment(bench: &Bench<'_>) -> Vec<Block> {
    let facets = &bench.case.plan.facets;
    let day = facets
        .setting
        .day
        .map_or(bench.today, |day| day.max(bench.today));
    let mut blocks = Vec::new();
    for item in &facets.rigging.equipment {
        if let Some(until) = item.inspected_until
            && until < day
        {
            blocks.push(Block {
                kind: BlockKind::Equipment,
                about: item.serial.clone(),
                reason: format!(
                    "The inspection of {} ({}) counts until {until}; it is needed on {day}.",
                    item.name, item.serial
                ),
                remedy: "Have it inspected again, or use another piece; either is a new revision."
                    .to_owned(),
            });
        }
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
    let unchanged = |run: &&RehearsalRun| {
        REHEARSED.iter().all(|facet| {
            let now = bench.hashes.get(facet);
            now.is_some() && run.facets.get(facet) == now
        })
    };
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
