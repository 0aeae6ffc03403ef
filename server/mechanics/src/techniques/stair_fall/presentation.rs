//! What is shown beside a stair fall's figures: the way down, ground to keep clear, and cautions.

use super::{checks::FLIGHT, tumble};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::stopping,
    plotting::Recorder,
    units::{Quantity, say},
};

/// Points of the slide along the landing.
const LANDING_POINTS: i32 = 24;

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let Some(tumble) = tumble(values) else {
        return Vec::new();
    };
    let mut speeds = Recorder::new();
    let down = tumble.go_down(|moment| speeds.push(moment.time, [moment.speed, moment.along]));
    if let Some(time) = down
        && let Some(friction) = values.number("landing_friction")
        && let Some(foot) = tumble.foot_speed()
    {
        // Along the landing the speed falls in a straight line over the run-out.
        let (speed, way) = (
            tumble.landing_speed(foot, friction),
            tumble.run_out(foot, friction),
        );
        let stop = stopping::stop(speed, way.max(1e-9), stopping::Shape::Square);
        for i in 0..=LANDING_POINTS {
            let share = f64::from(i) / f64::from(LANDING_POINTS);
            speeds.push(
                time + share * stop.time,
                [
                    speed * (1.0 - share),
                    tumble.length() + way * share * (2.0 - share),
                ],
            );
        }
    }
    let mut traces = Vec::new();
    // A body that stops before its first contact has only a start.
    if down.is_some() {
        traces.push(speeds.trace(
            "way_down",
            "The way down and along the landing",
            ("Time from the top", Quantity::Time),
            [
                ("Speed", Quantity::Speed),
                ("Way from the top", Quantity::Length),
            ],
        ));
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let mut zones = Vec::new();
    let Some(width) = values.number("stair_width") else {
        return zones;
    };
    let strip = |x0: f64, x1: f64| Shape::Rectangle {
        x0,
        x1,
        y0: -0.5 * width,
        y1: 0.5 * width,
    };
    if let (Some(steps), Some(going)) = (values.number("steps"), values.number("going")) {
        zones.push(Zone {
            name: "stairs".to_owned(),
            title: "The stairs".to_owned(),
            shape: strip(-steps * going, 0.0),
            reason: "Only the performer is on the stairs; each pad, rail and edge is looked at before each fall."
                .to_owned(),
        });
    }
    if let (Some(run_out), Some(reach)) =
        (evaluation.figure("run_out"), values.number("body_reach"))
    {
        zones.push(Zone {
            name: "run_out".to_owned(),
            title: "Run-out at the foot".to_owned(),
            shape: strip(0.0, run_out.high + 0.5 * reach),
            reason: "Where the body and its limbs may come to rest: no person, stand, cable or prop in here."
                .to_owned(),
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
    let values = &evaluation.values;
    let value = |name| evaluation.value(name);
    let speed = |value| say(Quantity::Speed, value);
    let missing = values.missing(FLIGHT);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    if let Some(tumble) = tumble(values) {
        if tumble.foot_speed().is_none() {
            say_so(
                "stops_on_stairs",
                format!(
                    "From {} at the top the body stops on the stairs: the friction of {} and the hits take more than \
                     the height gives.",
                    speed(tumble.start_speed),
                    say(Quantity::Ratio, tumble.friction)
                ),
            );
        }
        if let Some(fastest) = value("top_speed") {
            let cleared = tumble.cleared(fastest);
            if cleared > 1.0 {
                say_so(
                    "thrown_clear",
                    format!(
                        "At {} a body thrown off an edge flies over {} steps before it meets the next; hits are then \
                         fewer and harder than counted here.",
                        speed(fastest),
                        say(Quantity::Ratio, cleared)
                    ),
                );
            }
        }
    }
    if let (Some(foot), Some(settled)) = (value("foot_speed"), value("settled_speed")) {
        let text = if foot > 0.95 * settled {
            format!(
                "The speed has settled at about {}: a longer flight of the same stairs is no faster, only more hits.",
                speed(foot)
            )
        } else {
            format!(
                "The body is at {} at the foot and still gains towards {}: each step more makes the landing harder.",
                speed(foot),
                speed(settled)
            )
        };
        say_so("gaining", text);
    }
    if let (Some(padded), Some(bare)) = (value("hic_padded"), value("hic_bare")) {
        say_so(
            "neck",
            format!(
                "HIC {} on padding and {} without says nothing of a neck bent under the body: chin in and arms round \
                 the head are rehearsed, not computed.",
                say(Quantity::Ratio, padded),
                say(Quantity::Ratio, bare)
            ),
        );
    }
    cautions
}
