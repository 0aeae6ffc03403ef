//! What makes a plan's contents impossible to accept: texts too long, numbers that mean nothing, names
//! used twice, parameters nobody asked for or kept in the wrong facet. Whether the plan is any good is
//! for the judge, not for this file.

mod parts;
mod risks;

use std::collections::{BTreeMap, BTreeSet};

use gagwright_mechanics::{AssessError, Technique};
use serde::{Deserialize, Serialize};

use crate::plan::Facets;

/// The longest short text: titles, names, serial numbers.
pub const SHORT: usize = 200;
/// The longest long text: a paragraph, a method, a reason.
pub const LONG: usize = 8_000;
/// The longest list. A plan is printed, read and signed; longer is a mistake or an attack.
pub const MOST: usize = 200;

/// One thing wrong with one field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct FieldProblem {
    /// JSON pointer into `{"technique": ..., "facets": {...}}`.
    pub pointer: String,
    /// What is wrong, to be read after the field's name: "is empty".
    pub problem: String,
    /// What to do about it: "write at least one character".
    pub fix: String,
}

/// Everything wrong with a technique and its facets; empty when they can be accepted.
pub fn validate(facets: &Facets, technique: &str) -> Vec<FieldProblem> {
    match gagwright_mechanics::find(technique) {
        Some(technique) => validate_with(facets, technique),
        None => {
            let known: Vec<&str> = gagwright_mechanics::techniques()
                .iter()
                .map(|one| one.name())
                .collect();
            let mut problems = Problems::default();
            problems.add(
                "/technique",
                format!("\"{}\" is not a technique", technique.escape_debug()),
                format!("use one of: {}", known.join(", ")),
            );
            contents(facets, &mut problems);
            problems.0
        }
    }
}

/// As [`validate`], with the technique already found.
pub fn validate_with(facets: &Facets, technique: &dyn Technique) -> Vec<FieldProblem> {
    let mut problems = Problems::default();
    parameters(facets, technique, &mut problems);
    contents(facets, &mut problems);
    problems.0
}

/// Names that must be unique in a plan and are not: two things under one name cannot be judged apart.
pub fn repeated_names(facets: &Facets) -> Vec<FieldProblem> {
    let mut problems = Problems::default();
    problems.unique(
        "/facets/cast/slots",
        "id",
        facets.cast.slots.iter().map(|slot| slot.id),
    );
    let people = facets.cast.slots.iter().enumerate();
    let mut cast = BTreeSet::new();
    for (at, person) in people.filter_map(|(at, slot)| Some((at, slot.person?))) {
        if !cast.insert(person) {
            problems.add(
                format!("/facets/cast/slots/{at}/person"),
                "is cast in an earlier slot of this gag already",
                "cast each person once in a gag",
            );
        }
    }
    let rungs = facets
        .rehearsals
        .rungs
        .iter()
        .map(|rung| rung.name.as_str());
    problems.unique("/facets/rehearsals/rungs", "name", rungs);
    let events = facets.action.risks.iter().map(|risk| risk.event.as_str());
    problems.unique("/facets/action/risks", "event", events);
    let serials = facets
        .rigging
        .equipment
        .iter()
        .map(|item| item.serial.as_str());
    problems.unique("/facets/rigging/equipment", "serial", serials);
    let bands = facets.conditions.bands.iter().map(|band| band.reading);
    problems.unique("/facets/conditions/bands", "reading", bands);
    let cameras = facets
        .camera
        .positions
        .iter()
        .map(|position| position.name.as_str());
    problems.unique("/facets/camera/positions", "name", cameras);
    problems.0
}

/// What was found so far.
#[derive(Default)]
pub(crate) struct Problems(pub(crate) Vec<FieldProblem>);

impl Problems {
    pub(crate) fn add(
        &mut self,
        pointer: impl Into<String>,
        problem: impl Into<String>,
        fix: impl Into<String>,
    ) {
        self.0.push(FieldProblem {
            pointer: pointer.into(),
            problem: problem.into(),
            fix: fix.into(),
        });
    }

    fn required(&mut self, pointer: &str, text: &str, most: usize) {
        if text.trim().is_empty() {
            self.add(pointer, "is empty", "write at least one character");
        }
        self.text(pointer, text, most);
    }

    fn text(&mut self, pointer: &str, text: &str, most: usize) {
        let length = text.chars().count();
        if length > most {
            let fix = format!("shorten it to {most} characters at most");
            self.add(pointer, format!("has {length} characters"), fix);
        }
        if text
            .chars()
            .any(|one| one.is_control() && one != '\n' && one != '\t')
        {
            let fix = "type the text again, or paste it as plain text";
            self.add(pointer, "holds a control character", fix);
        }
    }

    fn number(&mut self, pointer: &str, value: f64, range: (f64, f64), unit: &str) {
        if !(value >= range.0 && value <= range.1) {
            let fix = format!("give a number from {} to {} {unit}", range.0, range.1);
            self.add(pointer, format!("is {value}"), fix.trim_end());
        }
    }

    fn length(&mut self, pointer: &str, length: usize) {
        if length > MOST {
            let fix = format!("keep it to {MOST} at most, or split the gag");
            self.add(pointer, format!("has {length} entries"), fix);
        }
    }

    fn unique<T: Ord>(&mut self, list: &str, field: &str, names: impl Iterator<Item = T>) {
        let mut seen = BTreeSet::new();
        for (at, name) in names.enumerate() {
            if !seen.insert(name) {
                let fix = format!("give each its own {field}");
                self.add(
                    format!("{list}/{at}/{field}"),
                    "is used by an earlier entry",
                    fix,
                );
            }
        }
    }
}

fn contents(facets: &Facets, problems: &mut Problems) {
    texts(facets, problems);
    problems.0.extend(repeated_names(facets));
    risks::risks(&facets.action.risks, problems);
    parts::slots(&facets.cast.slots, problems);
    parts::rigging(&facets.rigging, problems);
    parts::effects(&facets.effects, problems);
    parts::bands(&facets.conditions.bands, problems);
    parts::rungs(&facets.rehearsals.rungs, problems);
}

fn texts(facets: &Facets, problems: &mut Problems) {
    for (field, text) in [
        ("setting/scene", &facets.setting.scene),
        ("setting/location", &facets.setting.location),
        ("setting/unit", &facets.setting.unit),
        ("setting/light", &facets.setting.light),
    ] {
        problems.text(&format!("/facets/{field}"), text, SHORT);
    }
    for (field, text) in [
        ("action/summary", &facets.action.summary),
        ("action/abort", &facets.action.abort),
        ("rigging/method", &facets.rigging.method),
        ("rigging/rescue/method", &facets.rigging.rescue.method),
        ("effects/method", &facets.effects.method),
        ("effects/suppression", &facets.effects.suppression),
        ("vehicles/method", &facets.vehicles.method),
        ("medical/cover", &facets.medical.cover),
        ("medical/ambulance", &facets.medical.ambulance),
        ("medical/hospital", &facets.medical.hospital),
        ("camera/notes", &facets.camera.notes),
    ] {
        problems.text(&format!("/facets/{field}"), text, LONG);
    }
    for (field, texts) in [
        ("action/steps", &facets.action.steps),
        ("conditions/stop_on", &facets.conditions.stop_on),
    ] {
        problems.length(&format!("/facets/{field}"), texts.len());
        for (at, text) in texts.iter().enumerate().take(MOST) {
            problems.required(&format!("/facets/{field}/{at}"), text, LONG);
        }
    }
    problems.length("/facets/camera/positions", facets.camera.positions.len());
    for (at, position) in facets.camera.positions.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/camera/positions/{at}");
        problems.required(&format!("{pointer}/name"), &position.name, SHORT);
        problems.text(&format!("{pointer}/place"), &position.place, LONG);
        problems.text(&format!("{pointer}/lens"), &position.lens, SHORT);
    }
}

fn parameters(facets: &Facets, technique: &dyn Technique, problems: &mut Problems) {
    let misplaced = facets.misplaced(technique);
    for one in &misplaced {
        let name = one.name.replace('~', "~0").replace('/', "~1");
        let pointer = format!("/facets/{}/parameters/{name}", one.found.name());
        match one.belongs {
            Some(facet) => {
                let fix = format!("move it to /facets/{}/parameters", facet.name());
                problems.add(pointer, format!("belongs to the {}", facet.name()), fix);
            }
            None => {
                let known: Vec<&str> = technique.parameters().iter().map(|one| one.name).collect();
                let problem = format!("is no parameter of {}", technique.title());
                problems.add(
                    pointer,
                    problem,
                    format!("use one of: {}", known.join(", ")),
                );
            }
        }
    }
    if !misplaced.is_empty() {
        return;
    }
    // Every parameter is in its own facet now, so none can be there twice.
    let Ok(inputs) = facets.inputs() else { return };
    let places: BTreeMap<&str, &str> = technique
        .parameters()
        .iter()
        .map(|one| (one.name, one.facet.name()))
        .collect();
    match technique.assess(&inputs) {
        Ok(_) => {}
        Err(AssessError::BadValue { name, problem }) => {
            let facet = places.get(name.as_str()).copied().unwrap_or("action");
            let pointer = format!("/facets/{facet}/parameters/{name}");
            problems.add(
                pointer,
                problem,
                "give a value in the parameter's range and unit",
            );
        }
        Err(other) => problems.add("/technique", other.to_string(), "use the parameters it has"),
    }
}

#[cfg(test)]
#[path = "tests/validate.rs"]
mod tests;
