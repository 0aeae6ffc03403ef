//! What is shown beside blank firing's figures: the sweep over time, ground to keep clear, and cautions.

use super::{
    ACTION_LEVEL, case_range,
    checks::{decibels, sweep_needs},
    side_level,
    sweep::{CREW, PERFORMER, Sweep},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    plotting::Recorder,
    units::{Quantity, say},
};

/// A chance as people say it.
fn likely(chance: f64) -> String {
    if chance < 0.02 {
        format!("1 in {:.0}", 1.0 / chance)
    } else {
        format!("{:.0} %", 100.0 * chance)
    }
}

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let mut traces = Vec::new();
    if let (Some(sweep), Some(time)) = (
        Sweep::read(values, case_range(values)),
        values.number("sweep_time"),
    ) {
        let mut distances = Recorder::new();
        let mut angles = Recorder::new();
        for moment in sweep.moments() {
            let at = time * moment.share;
            distances.push(at, [moment.distance[PERFORMER], moment.distance[CREW]]);
            angles.push(at, [moment.off_axis[PERFORMER], moment.off_axis[CREW]]);
        }
        let axis = ("Time", Quantity::Time);
        traces.push(distances.trace(
            "distances",
            "Distance from the muzzle",
            axis,
            [("Performer", Quantity::Length), ("Crew", Quantity::Length)],
        ));
        traces.push(angles.trace(
            "off_axis",
            "Angle off the line of fire",
            axis,
            [("Performer", Quantity::Angle), ("Crew", Quantity::Angle)],
        ));
    }
    if let (Some(side), Some(gain)) = (side_level(values), values.number("forward_gain")) {
        let mut levels = Recorder::new();
        for i in 0..=100 {
            let distance = 0.5 + 29.5 * f64::from(i) / 100.0;
            let level = side - 20.0 * libm::log10(distance);
            levels.push(distance, [level + gain, level]);
        }
        traces.push(levels.trace(
            "levels",
            "Peak at a bare ear, dB(C)",
            ("Distance from the muzzle", Quantity::Length),
            [
                ("Straight ahead", Quantity::Ratio),
                ("To the side", Quantity::Ratio),
            ],
        ));
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(sweep), Some(ahead)) = (
        Sweep::read(values, case_range(values)),
        values.number("forward_stand_off"),
    ) else {
        return Vec::new();
    };
    let boxed = |[x, y]: [(f64, f64); 2]| Shape::Rectangle {
        x0: x.0,
        x1: x.1,
        y0: y.0,
        y1: y.1,
    };
    let mut zones = vec![Zone {
        name: "ahead".to_owned(),
        title: "Ahead of the muzzle, as given".to_owned(),
        shape: boxed(sweep.swept(ahead)),
        reason: "The box around the armourer's stand-off over the whole sweep: nobody is in here without a shield."
            .to_owned(),
    }];
    if let (Some(aside), Some(along), Some(across)) = (
        values.number("off_axis_stand_off"),
        values.number("firer_travel_along"),
        values.number("firer_travel_across"),
    ) {
        let room = aside + values.number("muzzle_reach").unwrap_or(0.0);
        zones.push(Zone {
            name: "around".to_owned(),
            title: "Around the weapon, as given".to_owned(),
            shape: Shape::Ellipse {
                x: 0.5 * along,
                y: 0.5 * across,
                half_x: 0.5 * along.abs() + room,
                half_y: 0.5 * across.abs() + room,
            },
            reason: "The armourer's stand-off in every other direction, wherever the firer is."
                .to_owned(),
        });
    }
    zones
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let values = &evaluation.values;
    let length = |value| say(Quantity::Length, value);
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    if let (Some(ahead), Some(aside)) = (
        values.number("forward_stand_off"),
        values.number("off_axis_stand_off"),
    ) {
        say_so(
            "as_given",
            format!(
                "The stand-offs of {} ahead and {} elsewhere are the armourer's for one weapon and one blank: a \
                 change of either asks for new ones.",
                length(ahead),
                length(aside)
            ),
        );
    }
    if let Some(bare) = evaluation.figure("bare_ear_distance") {
        say_so(
            "bare_ears",
            format!(
                "Up to {} ahead, {} with every tolerance against it, a bare ear has {} or more: everybody nearer \
                 wears protection, visitors too.",
                length(bare.value),
                length(bare.high),
                decibels(ACTION_LEVEL)
            ),
        );
    }
    if let (Some(ear), Some(measured)) = (
        values.number("firer_ear_distance"),
        values.number("peak_distance"),
    ) && ear < measured
        && evaluation.value("firer_level").is_some()
    {
        say_so(
            "nearer_than_measured",
            format!(
                "The firer's ear is at {} and the level was measured at {}: so near, a blast is stronger than \
                 spreading sound says, so measure at the ear.",
                length(ear),
                length(measured)
            ),
        );
    }
    if let (Some(chance), Some(wait)) = (
        evaluation.value("misfire_in_take"),
        values.number("misfire_wait"),
    ) && chance > 0.0
    {
        say_so(
            "misfire",
            format!(
                "The chance of a misfire in a take is {}: the firer calls it, turns to the safe direction without \
                 crossing anybody, and waits {}; nobody else touches the weapon but the armourer.",
                likely(chance),
                say(Quantity::Time, wait)
            ),
        );
    }
    if values.choice("count_stage") == Some("before")
        && let Some(issued) = values.number("issued")
    {
        say_so(
            "rounds_out",
            format!(
                "{} rounds are out: the count is closed only after the takes, and the set is not released before \
                 it.",
                say(Quantity::Count, issued)
            ),
        );
    }
    if let Some(camera) = evaluation.figure("camera_distance")
        && values.choice("camera_cover") == Some("open")
    {
        say_so(
            "open_camera",
            format!(
                "People at the camera are in the open, {} from the muzzle at the least: an unmanned camera or a \
                 shield takes them out of it.",
                length(camera.low)
            ),
        );
    }
    let missing = values.missing(sweep_needs(evaluation));
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Nobody's distance is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
