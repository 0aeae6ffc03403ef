//! What is shown beside a switch's figures: cover over time, ground to keep clear, and cautions.

use super::{checks::SHOT, scene::Scene};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(scene) = Scene::read(&evaluation.values) else {
        return Vec::new();
    };
    let mut cover = Recorder::new();
    let mut paths = Recorder::new();
    for i in 0..=240 {
        let time = scene.shot_length * f64::from(i) / 240.0;
        // Far outside says no more than outside, and would flatten what matters.
        let shown = |value: f64| value.clamp(-3.0, 3.0);
        cover.push(
            time,
            [
                shown(scene.cover(&scene.actor, time)),
                shown(scene.cover(&scene.double, time)),
            ],
        );
        paths.push(
            time,
            [
                scene.actor.at(time)[0],
                scene.double.at(time)[0],
                scene.eye(time)[0],
            ],
        );
    }
    let time = ("Time", Quantity::Time);
    vec![
        cover.trace(
            "cover",
            "How far inside the cover",
            time,
            [
                ("The actor", Quantity::Length),
                ("The double", Quantity::Length),
            ],
        ),
        paths.trace(
            "paths",
            "Places across the shot",
            time,
            [
                ("The actor", Quantity::Length),
                ("The double", Quantity::Length),
                ("Camera", Quantity::Length),
            ],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let Some(scene) = Scene::read(&evaluation.values) else {
        return Vec::new();
    };
    // A step and an outstretched arm beyond both paths.
    let room = scene.radius + 1.0;
    let ends = [
        scene.actor.from,
        scene.actor.to,
        scene.double.from,
        scene.double.to,
    ];
    let span = |i: usize| {
        let (low, high) = ends
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), end| {
                (low.min(end[i]), high.max(end[i]))
            });
        (low - room, high + room)
    };
    let (x, y) = (span(0), span(1));
    vec![Zone {
        name: "paths".to_owned(),
        title: "Both paths and the exchange".to_owned(),
        shape: Shape::Rectangle {
            x0: x.0,
            x1: x.1,
            y0: y.0,
            y1: y.1,
        },
        reason: "Only the actor, the double and one person who cues them are in here: nobody runs blind into \
                 a helper."
            .to_owned(),
    }]
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
    let time = |value| say(Quantity::Time, value);
    if let Some(window) = evaluation.figure("hidden_window") {
        if window.value <= 0.0 {
            say_so(
                "never_hidden",
                "At no time are both hidden: the switch cannot be seen to work in this shot."
                    .to_owned(),
            );
        } else {
            say_so(
                "window",
                format!(
                    "The window of {} shrinks to {} when every tolerance goes the wrong way at once.",
                    time(window.value),
                    time(window.low.max(0.0))
                ),
            );
        }
    }
    if let (Some(end), Some(length)) = (evaluation.value("window_end"), input("shot_length"))
        && end >= length - 1e-6
    {
        say_so(
            "double_not_seen",
            format!(
                "Nobody comes out before the shot ends at {}: the double's cue or path is not what it should be.",
                time(length)
            ),
        );
    }
    if let Some(gap) = input("occluder_gap")
        && gap > 0.0
    {
        say_so(
            "feet",
            format!(
                "Feet may show under the gap of {}; it counts here from the camera's height, not in reflections \
                 on wet ground.",
                say(Quantity::Length, gap)
            ),
        );
    }
    if let (Some(actor), Some(double)) = (input("actor_height"), input("double_height"))
        && (actor - double).abs() > 0.02
    {
        say_so(
            "height_match",
            format!(
                "The two differ in height by {}, which the same frame will show at the edge.",
                say(Quantity::Length, (actor - double).abs())
            ),
        );
    }
    let missing = evaluation.values.missing(SHOT);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
