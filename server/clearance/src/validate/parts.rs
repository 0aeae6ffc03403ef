//! The lists in a plan, entry by entry: slots and what they need, equipment, charges, bands, rungs.

use gagwright_casting::{Catalogue, Requirement, Slot};

use super::{LONG, MOST, Problems, SHORT};
use crate::facets::{Band, Effects, Rigging, Rung};

pub(super) fn slots(slots: &[Slot], problems: &mut Problems) {
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

pub(super) fn rigging(rigging: &Rigging, problems: &mut Problems) {
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

pub(super) fn effects(effects: &Effects, problems: &mut Problems) {
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

pub(super) fn bands(bands: &[Band], problems: &mut Problems) {
    problems.length("/facets/conditions/bands", bands.len());
    for (at, band) in bands.iter().enumerate().take(MOST) {
        let pointer = format!("/facets/conditions/bands/{at}");
        let (range, unit) = (band.reading.range(), band.reading.unit());
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

pub(super) fn rungs(rungs: &[Rung], problems: &mut Problems) {
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
