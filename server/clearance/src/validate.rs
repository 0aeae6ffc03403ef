//! What makes a plan's contents impossible to accept: texts too long, numbers that mean nothing, names
//! used twice, parameters nobody asked for or kept in the wrong facet. Whether the plan is any good is
//! for the judge, not for this file.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{Catalogue, Requirement, Slot};
use gagwright_mechanics::{AssessError, Technique};
use serde::{Deserialize, Serialize};

use crate::{
    case::ReadingKind,
    facets::{Band, Effects, Rigging, Rung},
    plan::Facets,
};

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

#[derive(Default)]
struct Problems(Vec<FieldProblem>);

impl Problems {
    fn add(
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
    slots(&facets.cast.slots, problems);
    rigging(&facets.rigging, problems);
    effects(&facets.effects, problems);
    bands(&facets.conditions.bands, problems);
    rungs(&facets.rehearsals.rungs, problems);
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

fn slots(slots: &[Slot], problems: &mut Problems) {
    problems.length("/facets/cast/slots", slots.len());
    for (at, slot) in slots.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/cast/slots/{at}");
        problems.required(&format!("{pointer}/name"), &slot.name, SHORT);
        problems.number(
            &format!("{pointer}/kit_mass"),
            slot.kit_mass,
            (0.0, 150.0),
            "kg",
        );
        problems.length(&format!("{pointer}/requirements"), slot.requirements.len());
        for unknown in Catalogue::built_in().unknown_names(slot) {
            let pointer = format!(
                "{pointer}/requirements/{}/{}",
                unknown.requirement, unknown.field
            );
            problems.add(pointer, unknown.problem, unknown.fix);
        }
        for (place, requirement) in slot.requirements.iter().enumerate().take(MOST) {
            self::requirement(
                &format!("{pointer}/requirements/{place}"),
                requirement,
                problems,
            );
        }
    }
}

fn requirement(pointer: &str, requirement: &Requirement, problems: &mut Problems) {
    match requirement {
        Requirement::Skill { level, .. } => {
            problems.number(&format!("{pointer}/level"), (*level).into(), (0.0, 5.0), "");
        }
        Requirement::Certificate { cover_days, .. } => {
            problems.number(
                &format!("{pointer}/cover_days"),
                (*cover_days).into(),
                (0.0, 366.0),
                "days",
            );
        }
        Requirement::Measurement {
            target, tolerance, ..
        } => {
            problems.number(&format!("{pointer}/target"), *target, (0.0, 500.0), "");
            problems.number(
                &format!("{pointer}/tolerance"),
                *tolerance,
                (0.0, 100.0),
                "",
            );
        }
        Requirement::KittedMass { min, max } => {
            problems.number(&format!("{pointer}/min"), *min, (0.0, 500.0), "kg");
            problems.number(&format!("{pointer}/max"), *max, (0.0, 500.0), "kg");
            if min > max {
                let problem = format!("{min} kg is more than the most, {max} kg");
                problems.add(
                    format!("{pointer}/min"),
                    problem,
                    "give the smaller mass as min",
                );
            }
        }
        Requirement::Age {
            min: Some(min),
            max: Some(max),
        } if min > max => {
            let problem = format!("{min} is more than the most, {max}");
            problems.add(
                format!("{pointer}/min"),
                problem,
                "give the smaller age as min",
            );
        }
        Requirement::Rest { hours } => {
            problems.number(&format!("{pointer}/hours"), *hours, (0.0, 168.0), "hours");
        }
        Requirement::DailyExposure {
            exposure,
            adds,
            max,
        } => {
            problems.required(&format!("{pointer}/exposure"), exposure, SHORT);
            if adds > max {
                let problem = format!("{adds} is more than the most in a day, {max}");
                problems.add(
                    format!("{pointer}/adds"),
                    problem,
                    "give at most the day's most",
                );
            }
        }
        Requirement::Age { .. }
        | Requirement::MedicalClearance
        | Requirement::Availability
        | Requirement::Consent => {}
    }
}

fn rigging(rigging: &Rigging, problems: &mut Problems) {
    problems.length("/facets/rigging/equipment", rigging.equipment.len());
    for (at, item) in rigging.equipment.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/rigging/equipment/{at}");
        problems.required(&format!("{pointer}/name"), &item.name, SHORT);
        problems.required(&format!("{pointer}/serial"), &item.serial, SHORT);
        if let Some(load) = item.working_load {
            problems.number(&format!("{pointer}/working_load"), load, (1.0, 1e8), "N");
        }
    }
    let rescue = &rigging.rescue;
    for (field, seconds) in [
        ("limit_seconds", rescue.limit_seconds),
        ("drilled_seconds", rescue.drilled_seconds),
    ] {
        if let Some(seconds) = seconds {
            let pointer = format!("/facets/rigging/rescue/{field}");
            problems.number(&pointer, seconds, (0.0, 86_400.0), "s");
        }
    }
}

fn effects(effects: &Effects, problems: &mut Problems) {
    problems.length("/facets/effects/charges", effects.charges.len());
    for (at, charge) in effects.charges.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/effects/charges/{at}");
        problems.required(&format!("{pointer}/name"), &charge.name, SHORT);
        problems.required(&format!("{pointer}/given_by"), &charge.given_by, SHORT);
        problems.number(
            &format!("{pointer}/count"),
            charge.count.into(),
            (1.0, 10_000.0),
            "",
        );
        problems.number(
            &format!("{pointer}/lead_seconds"),
            charge.lead_seconds,
            (0.0, 3_600.0),
            "s",
        );
        problems.number(
            &format!("{pointer}/stand_off"),
            charge.stand_off,
            (0.0, 10_000.0),
            "m",
        );
    }
}

fn bands(bands: &[Band], problems: &mut Problems) {
    problems.length("/facets/conditions/bands", bands.len());
    for (at, band) in bands.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/conditions/bands/{at}");
        // What the planet and its weather stations can show, with room to spare.
        let (range, unit) = match band.reading {
            ReadingKind::Wind | ReadingKind::Gust => ((0.0, 150.0), "m/s"),
            ReadingKind::AirTemperature => ((180.0, 340.0), "K"),
            ReadingKind::WaterTemperature => ((260.0, 340.0), "K"),
            ReadingKind::Light => ((0.0, 200_000.0), "lux"),
        };
        for (field, value) in [("min", band.min), ("max", band.max)] {
            if let Some(value) = value {
                problems.number(&format!("{pointer}/{field}"), value, range, unit);
            }
        }
        match (band.min, band.max) {
            (None, None) => problems.add(
                format!("{pointer}/max"),
                "neither least nor most is given",
                "give min, max or both",
            ),
            (Some(min), Some(max)) if min > max => problems.add(
                format!("{pointer}/min"),
                format!("{min} is more than the most, {max}"),
                "give the smaller value as min",
            ),
            _ => {}
        }
        let age = f64::from(band.max_age_minutes);
        problems.number(
            &format!("{pointer}/max_age_minutes"),
            age,
            (1.0, 1_440.0),
            "minutes",
        );
    }
}

fn rungs(rungs: &[Rung], problems: &mut Problems) {
    problems.length("/facets/rehearsals/rungs", rungs.len());
    for (at, rung) in rungs.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/rehearsals/rungs/{at}");
        problems.required(&format!("{pointer}/name"), &rung.name, SHORT);
        problems.required(&format!("{pointer}/what"), &rung.what, LONG);
        problems.number(
            &format!("{pointer}/good_runs"),
            rung.good_runs.into(),
            (1.0, 100.0),
            "",
        );
    }
}

#[cfg(test)]
#[path = "tests/validate.rs"]
mod tests;
