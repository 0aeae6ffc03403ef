//! Test shots: what a rig did at which settings, logged before a model is trusted. An addition like a
//! reading or a run; what the shots settle is worked out by mechanics whenever somebody asks.

use gagwright_clearance::{GagId, TestShot};
use gagwright_mechanics::{AssessError, Technique, find, reading, techniques};
use gagwright_store::Connection;
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CommandError, Entropy, NewTestShot,
    problems::{LONG, Problems},
    record,
};
use crate::permissions::Permission;

/// Logs a test shot of a gag.
///
/// # Errors
/// Without [`Permission::LogDay`], for fields that are not valid, or when the id is taken.
pub fn log_test_shot(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewTestShot,
    entropy: Entropy<'_>,
) -> Result<TestShot, CommandError> {
    actor.require(Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    let mut problems = Problems::default();
    problems.text("/note", &new.note, LONG);
    match find(&new.technique) {
        Some(technique) => {
            check_inputs(technique, &new, &mut problems);
            check_measured(technique, &new, &mut problems);
        }
        None => {
            let known: Vec<&str> = techniques().iter().map(|one| one.name()).collect();
            problems.add(
                "/technique",
                format!("\"{}\" is not a technique", new.technique),
                format!("use one of: {}", known.join(", ")),
            );
        }
    }
    problems.finish()?;
    let shot = TestShot {
        id: new.id,
        gag,
        technique: new.technique,
        inputs: new.inputs,
        measured: new.measured,
        load: new.load,
        note: new.note,
        shot_at: new.shot_at.min(now),
        recorded_by: actor.person,
        recorded_at: now,
    };
    // A body's mass is among the inputs, so they stand in the trail as a commitment.
    let leaf = record::Leaf::new("test_shot.logged", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("test_shot", json!(shot.id))
        .fact("technique", json!(shot.technique))
        .fact("load", json!(shot.load))
        .fact("measured", json!(shot.measured))
        .happened("shot_at", new.shot_at)
        .part("shot", None, json!({ "inputs": shot.inputs }), entropy)
        .personal(json!({ "note": shot.note }), entropy)
        .append(conn)?;
    gagwright_store::test_shots::insert(conn, &shot, leaf)?;
    Ok(shot)
}

fn check_inputs(technique: &dyn Technique, new: &NewTestShot, problems: &mut Problems) {
    match reading::read(technique.name(), technique.parameters(), &new.inputs) {
        Ok(_) => {}
        Err(AssessError::UnknownParameter { name, known, .. }) => problems.add(
            format!("/inputs/{}", super::problems::step(&name)),
            format!("is not a parameter of {}", technique.name()),
            format!("leave it out, or use one of: {known}"),
        ),
        Err(AssessError::BadValue { name, problem }) => problems.add(
            format!("/inputs/{}", super::problems::step(&name)),
            problem,
            "give the value that was set",
        ),
    }
}

fn check_measured(technique: &dyn Technique, new: &NewTestShot, problems: &mut Problems) {
    let figures: Vec<&str> = technique.figures().iter().map(|one| one.name).collect();
    if new.measured.is_empty() {
        problems.add(
            "/measured",
            "is empty",
            format!("give at least one measured figure: {}", figures.join(", ")),
        );
    }
    for (name, value) in &new.measured {
        let pointer = format!("/measured/{}", super::problems::step(name));
        if !figures.contains(&name.as_str()) {
            problems.add(
                pointer,
                format!("is not a figure of {}", technique.name()),
                format!("leave it out, or use one of: {}", figures.join(", ")),
            );
        } else if !value.is_finite() {
            problems.add(
                pointer,
                "is not a finite number",
                "give what was measured, or leave it out",
            );
        }
    }
}
