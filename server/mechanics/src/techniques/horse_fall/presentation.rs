//! What is shown beside a horse fall's and a drag's figures: plots, ground to keep clear, and cautions.

use super::{
    checks::{DRAG, FALL},
    ride::{Drag, Fall},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::trajectory,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let mut traces = Vec::new();
    if let Some(fall) = Fall::read(&evaluation.values) {
        let mut flight = Recorder::new();
        let _ = trajectory::fly_and_sample(&fall.throw, |s| {
            flight.push(s.time, [s.height, s.along]);
        });
        traces.push(flight.trace(
            "flight",
            "Off the horse",
            ("Time", Quantity::Time),
            [
                ("Height over the bed", Quantity::Length),
                ("Distance along", Quantity::Length),
            ],
        ));
        let mut felt = Recorder::new();
        for (time, value) in fall.felt() {
            felt.push(time, [value]);
        }
        traces.push(felt.trace(
            "stop",
            "What the body feels",
            ("Time from contact", Quantity::Time),
            [("Felt", Quantity::Acceleration)],
        ));
    }
    if let Some(drag) = Drag::read(&evaluation.values) {
        let mut line = Recorder::new();
        for i in 0..=120 {
            let time = drag.pull.period() * f64::from(i) / 120.0;
            line.push(time, [drag.pull.tension(time)]);
        }
        traces.push(line.trace(
            "line",
            "Line as the slack runs out",
            ("Time from tight", Quantity::Time),
            [("Tension", Quantity::Force)],
        ));
        let mut pad = Recorder::new();
        for i in 0..=100 {
            let time = drag.time() * f64::from(i) / 100.0;
            if let Some(temperature) = drag.pad_after(time) {
                pad.push(time, [temperature]);
            }
        }
        traces.push(pad.trace(
            "padding",
            "Heat at the padding",
            ("Time from the start", Quantity::Time),
            [("Padding's face", Quantity::Temperature)],
        ));
    }
    traces.retain(|trace| trace.x.values.len() >= 2);
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let mut zones = Vec::new();
    let input = |name| evaluation.values.number(name);
    let value = |name| evaluation.value(name);
    let strip = |x0: f64, x1: f64, half: f64| Shape::Rectangle {
        x0,
        x1,
        y0: -half,
        y1: half,
    };
    if let (Some(land), Some(slide), Some(length), Some(width)) = (
        value("landing_distance"),
        value("slide"),
        input("bed_length"),
        input("bed_width"),
    ) {
        let middle = land + 0.5 * slide;
        zones.push(Zone {
            name: "bed".to_owned(),
            title: "Bed, measured from the fall".to_owned(),
            shape: strip(middle - 0.5 * length, middle + 0.5 * length, 0.5 * width),
            reason:
                "Raked and free of stones; nobody stands in it or within two strides of its edge."
                    .to_owned(),
        });
    }
    if let Some(run) = value("horse_run") {
        zones.push(Zone {
            name: "horse".to_owned(),
            title: "Horse's run".to_owned(),
            shape: strip(0.0, run + 5.0, 6.0),
            reason:
                "A loose horse comes through here; only its handler and a pick-up rider are in it."
                    .to_owned(),
        });
    }
    if let (Some(distance), Some(after)) = (input("drag_distance"), value("release_distance")) {
        zones.push(Zone {
            name: "drag".to_owned(),
            title: "Drag path and what follows".to_owned(),
            shape: strip(-2.0, distance + after, 3.0),
            reason: "Walked for stones, roots and pegs before each drag; nobody and no wheel crosses it.".to_owned(),
        });
    }
    zones
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    let input = |name| evaluation.values.number(name);
    let value = |name| evaluation.value(name);
    let falls = evaluation.values.choice("horse") == Some("falls");
    let action = evaluation.values.choice("action");
    if let (Some(speed), Some(depth)) = (input("ride_speed"), input("bed_depth"))
        && falls
        && action != Some("drag")
    {
        say_so(
            "horse_welfare",
            format!(
                "At {} into {} of dirt only a horse trained to fall is asked to, on its rider's cue and never by a \
                 wire, a pit or a trip; the animal's own guardian may stop it at any time.",
                say(Quantity::Speed, speed),
                say(Quantity::Length, depth)
            ),
        );
    }
    if let (Some(mean), Some(slide)) = (value("mean_felt"), value("slide")) {
        say_so(
            "two_stops",
            format!(
                "The mean of {} is the stop downward; the slide of {} adds its own pull and rolls the body, which is \
                 not computed. Throw a bag from the saddle at speed first.",
                say(Quantity::Acceleration, mean),
                say(Quantity::Length, slide)
            ),
        );
    }
    if let (Some(heat), Some(distance)) = (value("drag_heat"), input("drag_distance")) {
        say_so(
            "rubbing",
            format!(
                "{} of heat are made over {}; the padding's face is a mean over its area, and an edge or a buckle runs \
                 hotter.",
                say(Quantity::Energy, heat),
                say(Quantity::Length, distance)
            ),
        );
    }
    if let (Some(peak), Some(steady)) = (value("peak_tension"), value("drag_tension")) {
        say_so(
            "slack",
            format!(
                "The slack makes {} out of a steady {}: the horse walks the line tight before it is let go.",
                say(Quantity::Force, peak),
                say(Quantity::Force, steady)
            ),
        );
    }
    let mut needed = Vec::new();
    if action != Some("drag") {
        needed.extend(FALL);
    }
    if action != Some("fall") {
        needed.extend(DRAG);
    }
    let missing = evaluation.values.missing(&needed);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Not everything is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
