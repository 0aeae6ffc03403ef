//! What has been logged beside the plan, as what a packet prints: earlier revisions, rehearsal runs,
//! test shots beside what the model says of them, readings and holds.

use std::collections::BTreeMap;

use gagwright_casting::PersonId;
use gagwright_clearance::{Case, TestShot, judge::missing_agreements};
use gagwright_mechanics::{Figure, InputValue, ParameterKind};
use gagwright_packet::document::{Content, Part};
use gagwright_store::plans::PlanSummary;
use jiff::tz::TimeZone;

use crate::words;

/// The newest readings, runs and test shots that still fit a page; the trail keeps all.
const NEWEST: usize = 12;

pub(super) fn parts(
    case: &Case,
    history: &[PlanSummary],
    shots: &[TestShot],
    names: &BTreeMap<PersonId, String>,
    zone: &TimeZone,
) -> Vec<Part> {
    let name = |id: &PersonId| {
        names
            .get(id)
            .cloned()
            .unwrap_or_else(|| "not on the roster".into())
    };
    let mut parts = Vec::new();
    let mut add = |title: &str, columns: &[&str], rows: Vec<Vec<String>>| {
        if !rows.is_empty() {
            parts.push(Part {
                title: title.into(),
                content: vec![Content::Table {
                    heading: String::new(),
                    columns: columns.iter().map(|one| (*one).to_owned()).collect(),
                    rows,
                    note: String::new(),
                }],
                ..Part::default()
            });
        }
    };
    let revisions = history.iter().rev().map(|one| {
        vec![
            one.revision.to_string(),
            words::short_moment(one.written_at, zone),
            name(&one.author),
            one.note.clone(),
        ]
    });
    add(
        "Revisions",
        &["Revision", "Written", "By", "Why"],
        revisions.collect(),
    );
    let runs = case.runs.iter().rev().take(NEWEST).map(|run| {
        vec![
            run.rung.replace('_', " "),
            if run.good { "good" } else { "not good" }.into(),
            words::short_moment(run.at, zone),
            name(&run.by),
            run.note.clone(),
        ]
    });
    add(
        "Rehearsal runs",
        &["Rung", "Run", "When", "Logged by", "Seen"],
        runs.collect(),
    );
    add(
        "Test shots",
        &["Shot", "Logged by", "Unlike the plan", "Measured", "Seen"],
        shots
            .iter()
            .rev()
            .take(NEWEST)
            .map(|shot| {
                vec![
                    format!(
                        "{}\n{}",
                        words::load(shot.load),
                        words::short_moment(shot.shot_at, zone)
                    ),
                    name(&shot.recorded_by),
                    set(shot, case),
                    measured(shot),
                    shot.note.clone(),
                ]
            })
            .collect(),
    );
    let readings = case.readings.iter().rev().take(NEWEST).map(|reading| {
        vec![
            words::named(&reading.kind),
            words::reading(reading.kind, reading.value),
            words::short_moment(reading.at, zone),
            name(&reading.by),
            reading.place.clone(),
        ]
    });
    add(
        "Readings",
        &["Of", "Value", "When", "By", "Where"],
        readings.collect(),
    );
    let held = case.holds.iter().rev().map(|hold| {
        let missing = missing_agreements(hold, &case.policy, &case.members);
        let state = if missing.is_empty() {
            "released".to_owned()
        } else {
            let roles: Vec<String> = missing.iter().map(words::named).collect();
            format!("open, needs {}", roles.join(" and "))
        };
        vec![
            words::short_moment(hold.raised_at, zone),
            hold.raised_by.as_ref().map_or("by code".into(), name),
            if hold.reason.is_empty() {
                "no reason given".into()
            } else {
                hold.reason.clone()
            },
            state,
        ]
    });
    add(
        "Holds",
        &["Raised", "By", "Reason", "State"],
        held.collect(),
    );
    parts
}

/// What was set otherwise than the plan now says: the rest is in the plan's own pages.
fn set(shot: &TestShot, case: &Case) -> String {
    let Some(technique) = gagwright_mechanics::find(&shot.technique) else {
        return shot.technique.clone();
    };
    if shot.technique != case.plan.technique {
        return technique.title().to_owned();
    }
    let plan = case.plan.inputs().unwrap_or_default();
    let told = technique.parameters().iter().filter_map(|one| {
        let given = shot.inputs.0.get(one.name)?;
        let value = match (&one.kind, given, plan.0.get(one.name)) {
            (ParameterKind::Number { quantity, .. }, InputValue::Number { value, .. }, planned) => {
                match planned {
                    Some(InputValue::Number { value: other, .. }) if other == value => return None,
                    _ => words::metric(*quantity, *value),
                }
            }
            (ParameterKind::Choice { .. }, InputValue::Choice(_), Some(planned))
                if planned == given =>
            {
                return None;
            }
            (ParameterKind::Choice { options, .. }, InputValue::Choice(name), _) => options
                .iter()
                .find(|option| option.name == name)
                .map_or_else(|| name.clone(), |option| option.title.to_owned()),
            _ => return None,
        };
        Some(format!("{}: {value}", one.title))
    });
    told.collect::<Vec<_>>().join("\n")
}

/// What was measured, each beside what the model gives for the same settings.
fn measured(shot: &TestShot) -> String {
    let Some(technique) = gagwright_mechanics::find(&shot.technique) else {
        return String::new();
    };
    let figures: Vec<Figure> = technique
        .assess(&shot.inputs)
        .map(|assessment| assessment.figures)
        .unwrap_or_default();
    let told = shot.measured.iter().filter_map(|(name, value)| {
        let described = technique.figures().iter().find(|one| one.name == name)?;
        let say = |si| words::metric(described.quantity, si);
        let model = figures.iter().find(|one| one.name == *name);
        Some(match model {
            Some(model) => format!(
                "{}: {}, model {}",
                described.title,
                say(*value),
                say(model.value)
            ),
            None => format!("{}: {}, model unknown", described.title, say(*value)),
        })
    });
    told.collect::<Vec<_>>().join("\n")
}
