//! Blank firing: a weapon that swings while it fires blanks near performers, camera and crew.
//!
//! The stand-offs are given by the armourer and held against published guidance, never worked out from a
//! load. It knows nothing of what a blank holds, and takes sound from a measurement.

mod checks;
mod presentation;
mod sweep;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{GRAVITY, sound},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use sweep::{CAMERA, CREW, PERFORMER, Sweep};

/// The technique.
pub struct BlankFiring;

impl Technique for BlankFiring {
    fn name(&self) -> &'static str {
        "blank-firing"
    }

    fn title(&self) -> &'static str {
        "Blank firing"
    }

    fn summary(&self) -> &'static str {
        "A weapon swings while it fires blanks near people. Covers who comes how near the muzzle and its line, \
         against the stand-offs the armourer gives, a shield's cover, sound at the ear, misfires, cases and the \
         count of rounds; leaves out what a blank throws, ricochets and sound in small rooms."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "peak_level",
            "forward_gain",
            "reflection_gain",
            "exposure_drop",
            "ejection_speed",
            "ejection_rise",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/blank-firing.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(compute)
    }

    fn checks(&self, evaluation: &Evaluation) -> Vec<Check> {
        checks::checks(evaluation)
    }

    fn traces(&self, evaluation: &Evaluation) -> Vec<Trace> {
        presentation::traces(evaluation)
    }

    fn zones(&self, evaluation: &Evaluation) -> Vec<Zone> {
        presentation::zones(evaluation)
    }

    fn cautions(&self, evaluation: &Evaluation) -> Vec<Caution> {
        presentation::cautions(evaluation)
    }
}

/// Peak that obliges to wear protectors, dB(C): the upper action value of directive 2003/10/EC, 140 Pa.
const ACTION_LEVEL: f64 = 137.0;

/// Level that a full dose is 8 hours of, dB(A) (NIOSH publication 98-126).
const FULL_DOSE: f64 = 85.0;

/// Shots that stand for any more of them.
const MANY_SHOTS: f64 = 1e6;

/// Bare level at 1 m to the side, reflections included, dB(C).
fn side_level(values: &Values) -> Option<f64> {
    Some(
        values.number("peak_level")?
            + 20.0 * libm::log10(values.number("peak_distance")?)
            + values.number("reflection_gain")?,
    )
}

/// How far a case flies to the side before it lands: without drag, so no less than it does.
fn case_range(values: &Values) -> Option<f64> {
    if values.choice("ejection")? == "kept" {
        return None;
    }
    let speed = values.number("ejection_speed")?;
    let (sin, cos) = libm::sincos(values.number("ejection_rise")?);
    let up = speed * sin;
    let time = (up + f64::sqrt(up * up + 2.0 * GRAVITY * values.number("port_height")?)) / GRAVITY;
    Some(speed * cos * time)
}

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let cases = case_range(values);
    let sweep = Sweep::read(values, cases);
    let found = sweep.as_ref().map(Sweep::find);
    if let (Some(sweep), Some(found)) = (&sweep, &found) {
        out.set("stand_off_margin", found.margin);
        out.set("front_distance", found.front);
        out.set("least_off_axis", found.off_axis);
        out.set("performer_distance", found.distance[PERFORMER]);
        out.set("crew_distance", found.distance[CREW]);
        if found.distance[CAMERA].is_finite() {
            out.set("camera_distance", found.distance[CAMERA]);
        }
        out.set_if("shield_spare", sweep.shield_spare(values));
        if values.knows("safe_direction") {
            out.set("safe_angle", found.safe);
        }
        if cases.is_some() {
            out.set("case_clearance", found.cases);
        }
    }
    out.set_if("case_range", cases);
    heard(&mut out, values, found.as_ref());
    if let (Some(chance), Some(rounds)) = (
        values.number("misfire_chance"),
        values.number("rounds_per_take"),
    ) {
        // 1 - (1 - p)^n, with its digits kept when p is small.
        out.set(
            "misfire_in_take",
            -libm::expm1(rounds * libm::log1p(-chance)),
        );
    }
    if values.choice("count_stage") == Some("after") {
        counted(&mut out, values);
    }
    out
}

/// Levels at ears: a point source that is louder ahead, as the cosine of the angle goes. The firer's ear is so
/// near that nothing is taken off for being behind.
fn heard(out: &mut Computed, values: &Values, found: Option<&sweep::Found>) {
    let (Some(side), Some(gain)) = (side_level(values), values.number("forward_gain")) else {
        return;
    };
    out.set(
        "bare_ear_distance",
        libm::pow(10.0, (side + gain - ACTION_LEVEL) / 20.0),
    );
    let performers = values.number("performer_protection");
    let crew = values.number("crew_protection");
    let firer = values
        .number("firer_ear_distance")
        .zip(performers)
        .map(|(ear, taken)| side - 20.0 * libm::log10(ear) - taken);
    // From the logarithm of a ratio of pressures to decibels.
    let decibels = 20.0 / core::f64::consts::LN_10;
    let performer = found
        .zip(performers)
        .map(|(found, taken)| side + decibels * found.loudness[PERFORMER] - taken);
    let crew = found.zip(crew).map(|(found, taken)| {
        side + decibels * found.loudness[CREW].max(found.loudness[CAMERA]) - taken
    });
    for (level, pressure, heard) in [
        ("firer_level", "firer_pressure", firer),
        ("performer_level", "performer_pressure", performer),
        ("crew_level", "crew_pressure", crew),
    ] {
        out.set_if(level, heard);
        out.set_if(pressure, heard.map(sound::pressure));
    }
    let (Some(firer), Some(performer), Some(crew), Some(drop)) =
        (firer, performer, crew, values.number("exposure_drop"))
    else {
        return;
    };
    let shot = firer.max(performer).max(crew) - drop;
    let one = sound::dose(sound::daily_exposure(shot, 1.0), FULL_DOSE);
    out.set("shots_allowed", f64::floor((1.0 / one).min(MANY_SHOTS)));
    if let (Some(rounds), Some(takes)) = (values.number("rounds_per_take"), values.number("takes"))
    {
        let daily = sound::daily_exposure(shot, rounds * takes);
        out.set("daily_exposure", daily);
        out.set("noise_dose", sound::dose(daily, FULL_DOSE));
    }
}

/// Rounds and cases after the takes.
fn counted(out: &mut Computed, values: &Values) {
    let number = |name| values.number(name);
    if let (Some(issued), Some(fired), Some(misfires), Some(returned)) = (
        number("issued"),
        number("fired"),
        number("misfires"),
        number("returned"),
    ) {
        out.set(
            "rounds_unaccounted",
            (issued - fired - misfires - returned).abs(),
        );
    }
    out.set_if(
        "cases_missing",
        number("fired")
            .zip(number("cases_found"))
            .map(|(fired, found)| (fired - found).abs()),
    );
}
