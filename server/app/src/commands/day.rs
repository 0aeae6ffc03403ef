//! What is logged while working: readings of the conditions and runs on the rehearsal ladder. Both are
//! additions; nothing is ever taken back, a later one simply counts more.

use gagwright_clearance::{GagId, Reading, RehearsalRun, judge};
use gagwright_store::Connection;
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CommandError, Entropy, NewReading, NewRun,
    problems::{LONG, Problems, SHORT},
    record,
};
use crate::permissions::Permission;

/// Logs a reading for one gag.
///
/// # Errors
/// Without [`Permission::LogDay`], for fields that are not valid, or when the id is taken.
pub fn log_reading(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewReading,
    entropy: Entropy<'_>,
) -> Result<Reading, CommandError> {
    actor.require(Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    let mut problems = Problems::default();
    let (least, most) = new.kind.range();
    problems.number("/value", new.value, least, most, new.kind.unit());
    problems.not_in_future("/at", new.at, now);
    problems.text("/place", &new.place, SHORT);
    problems.finish()?;
    let reading = Reading {
        id: new.id,
        kind: new.kind,
        value: new.value,
        at: new.at,
        by: actor.person,
        place: new.place,
    };
    let leaf = record::Leaf::new("reading.logged", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("reading", json!(reading.id))
        .fact("kind", json!(reading.kind))
        .fact("value", json!(reading.value))
        .fact("read_at", json!(reading.at))
        .personal(json!({ "place": reading.place }), entropy)
        .append(conn)?;
    gagwright_store::readings::insert(conn, actor.production, Some(gag), &reading, leaf)?;
    Ok(reading)
}

/// Logs a run on a rung of the ladder of the revision that was rehearsed: a run logged with no signal counts
/// for what was rehearsed, whatever the plan is when it arrives.
///
/// # Errors
/// Without [`Permission::LogDay`], when there is no such revision or its ladder has no such rung, or when the
/// id is taken.
pub fn log_run(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewRun,
    entropy: Entropy<'_>,
) -> Result<RehearsalRun, CommandError> {
    actor.require(Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    let current = gagwright_store::plans::current(conn, gag)?;
    let mut problems = Problems::default();
    problems.text("/note", &new.note, LONG);
    problems.reached("/revision", new.revision, current.revision);
    problems.finish()?;
    let mut problems = Problems::default();
    let plan = match new.revision == current.revision {
        true => current,
        false => gagwright_store::plans::get(conn, gag, new.revision)?,
    };
    let ladder = &plan.facets.rehearsals.rungs;
    if !ladder.iter().any(|rung| rung.name == new.rung) {
        let names: Vec<&str> = ladder.iter().map(|rung| rung.name.as_str()).collect();
        let fix = if names.is_empty() {
            "add a rung to the plan first".to_owned()
        } else {
            format!("use one of: {}", names.join(", "))
        };
        problems.add(
            "/rung",
            format!("the ladder has no rung \"{}\"", new.rung),
            fix,
        );
    }
    problems.finish()?;
    let mut facets = record::facet_hashes(&plan.facets)?;
    facets.retain(|facet, _| judge::REHEARSED.contains(facet));
    let run = RehearsalRun {
        id: new.id,
        rung: new.rung,
        facets,
        good: new.good,
        note: new.note,
        at: new.at.min(now),
        by: actor.person,
    };
    let leaf = record::Leaf::new("run.logged", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("run", json!(run.id))
        .fact("rung", json!(run.rung))
        .fact("good", json!(run.good))
        .happened("run_at", new.at)
        .fact("revision", json!(plan.revision))
        .fact("facets", json!(run.facets))
        .personal(json!({ "note": run.note }), entropy)
        .append(conn)?;
    gagwright_store::runs::insert(conn, gag, &run, leaf)?;
    Ok(run)
}
