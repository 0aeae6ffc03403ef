//! What is shown beside a dead-man line's figures: plots, ground to keep clear, and cautions.

use super::checks::needed;
use super::{Setup, axis};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::tether::Legs,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(setup) = Setup::of(&evaluation.values) else {
        return Vec::new();
    };
    let mut traces = Vec::new();
    let mut pull = Recorder::new();
    let done = setup.tether.stop(setup.speed, Legs::Carry, |m| {
        pull.push(m.time, [m.tension, m.along, m.speed]);
    });
    if done.is_some() {
        traces.push(pull.trace(
            "stop",
            "The stop",
            ("Time from the taut line", Quantity::Time),
            [
                ("Line pull", Quantity::Force),
                ("Distance past the mark", Quantity::Length),
                ("Speed", Quantity::Speed),
            ],
        ));
    }
    if setup.fall > 0.0 {
        let mut way = Recorder::new();
        let done = setup
            .tether
            .stop(setup.speed, Legs::Swept(setup.fall), |m| {
                way.push(m.time, [m.along, setup.fall - m.down]);
            });
        if done.is_some() {
            traces.push(way.trace(
                "ground",
                "The way to the ground",
                ("Time from the taut line", Quantity::Time),
                [
                    ("Distance past the mark", Quantity::Length),
                    ("Height above lying", Quantity::Length),
                ],
            ));
        }
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(furthest), Some(slack), Some(setup)) = (
        evaluation.figure("furthest_ahead"),
        values.number("slack"),
        Setup::of(values),
    ) else {
        return Vec::new();
    };
    let landing = evaluation
        .figure("landing_place")
        .map_or(0.0, |place| place.low);
    let anchor = setup.tether.reach().unwrap_or(0.0);
    vec![Zone {
        name: "corridor".to_owned(),
        title: "Run, line and landing".to_owned(),
        // Two metres past the furthest point for the body's own length, and a line's whip to each side.
        shape: Shape::Rectangle {
            x0: -slack.max(anchor).max(-landing) - 1.0,
            x1: furthest.high + 2.0,
            y0: -2.0,
            y1: 2.0,
        },
        reason: "The line springs up, the body is flung back and slides; nobody stands or steps in here. \
                 Measured from the mark where the line comes taut."
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
    let values = &evaluation.values;
    let length = |v| say(Quantity::Length, v);
    let speed = |v| say(Quantity::Speed, v);
    let Some((setup, _)) = Setup::of(values).zip(axis(values)) else {
        let missing = values.missing(needed(evaluation));
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
        return cautions;
    };
    let Some(reach) = setup.tether.reach() else {
        say_so(
            "line_does_not_reach",
            format!(
                "A line of {} does not reach from an anchor {} above or below the harness point: it is taut \
                 before the run begins.",
                length(setup.tether.length),
                length(setup.tether.rise.abs())
            ),
        );
        return cautions;
    };
    let Some(peak) = evaluation.value("peak_force") else {
        say_so(
            "no_solution",
            "The stop could not be followed with these inputs: check the line's modulus and the mass."
                .to_owned(),
        );
        return cautions;
    };
    if let Some((top, slack)) = values.number("top_speed").zip(values.number("slack")) {
        if setup.speed < 0.9 * top {
            say_so(
                "still_gathering",
                format!(
                    "{} of slack lets the runner reach {} of {}: more slack is a harder stop.",
                    length(slack),
                    speed(setup.speed),
                    speed(top)
                ),
            );
        }
        if slack > reach {
            say_so(
                "past_the_anchor",
                format!(
                    "The run of {} begins {} on the far side of the anchor: the line trails past the feet.",
                    length(slack),
                    length(slack - reach)
                ),
            );
        }
    }
    if let Some(time) = evaluation.value("stop_time") {
        say_so(
            "neck",
            format!(
                "The body loses {} in {} while head and arms go on; the peak of {} does not count what that \
                 does to the neck.",
                speed(setup.speed),
                say(Quantity::Time, time),
                say(Quantity::Force, peak)
            ),
        );
    }
    if values.number("harness_give") == Some(0.0) && peak > 6000.0 {
        say_so(
            "stiff_line",
            format!(
                "With no give but the line's {} the peak is {}: measure what harness and body give, or put \
                 in an absorber.",
                say(Quantity::Stiffness, setup.tether.stiffness),
                say(Quantity::Force, peak)
            ),
        );
    }
    if setup.fall <= 0.0 {
        say_so(
            "pads_too_high",
            "The pads are as high as the harness point lies: where the body comes down is not computed."
                .to_owned(),
        );
    } else if let Some(landing) = evaluation.value("landing_speed") {
        say_so(
            "landing",
            format!(
                "Swept off the legs the body meets the pads at {} after {}, and the stop may not be over by \
                 then.",
                speed(landing),
                say(
                    Quantity::Time,
                    evaluation.value("landing_time").unwrap_or(0.0)
                )
            ),
        );
    } else {
        say_so(
            "stays_up",
            format!(
                "From an anchor {} above the harness point the line keeps the body off the ground: it swings, \
                 and no landing is computed.",
                length(setup.tether.rise)
            ),
        );
    }
    say_so(
        "ladder",
        format!(
            "Walk, jog, then run up to {}, a weight bag first; measure the line of {} again after each stop, \
             since a loaded line stays longer.",
            speed(setup.speed),
            length(setup.tether.length)
        ),
    );
    cautions
}
