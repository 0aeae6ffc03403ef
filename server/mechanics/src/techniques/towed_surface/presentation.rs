//! What is shown beside a towed surface's figures: plots, ground to keep clear, and cautions.

use super::{Plan, checks::NEEDED};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    plotting::Recorder,
    units::{Quantity, say},
};

/// Points of the plotted run.
const POINTS: usize = 300;

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let (Some(plan), Some(shot)) = (
        Plan::of(&evaluation.values),
        evaluation.values.number("shot_time"),
    ) else {
        return Vec::new();
    };
    let end = plan.end(shot);
    let mut run = Recorder::new();
    for i in 0..POINTS {
        let time = end * i as f64 / (POINTS - 1) as f64;
        let (floor, over_ground, place) = plan.at(time, shot);
        run.push(time, [over_ground, floor, place]);
    }
    vec![run.trace(
        "run",
        "The run on the mat",
        ("Time from the first pull", Quantity::Time),
        [
            ("Speed over the ground", Quantity::Speed),
            ("Speed of the mat", Quantity::Speed),
            ("Place on the mat", Quantity::Length),
        ],
    )]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let (Some(plan), Some(way), Some(length)) = (
        Plan::of(&evaluation.values),
        evaluation.figure("tow_distance"),
        evaluation.values.number("surface_length"),
    ) else {
        return Vec::new();
    };
    let mut zones = vec![Zone {
        name: "mat_way".to_owned(),
        title: "Way of the mat".to_owned(),
        shape: Shape::Rectangle {
            x0: -length,
            x1: way.high,
            y0: -4.0,
            y1: 4.0,
        },
        reason: "A towed hem takes the feet from under anyone who stands on it or before it. Measured from \
                 the leading hem at the start, the way of the tow."
            .to_owned(),
    }];
    if let Some(off) = evaluation.figure("run_off") {
        // The runner heads for the leading hem along the tow, for the trailing one against it.
        let (x0, x1) = if plan.way > 0.0 {
            (0.0, way.high + off.high)
        } else {
            (-length - off.high, way.high - length)
        };
        zones.push(Zone {
            name: "run_out".to_owned(),
            title: "Run-out beyond the mat".to_owned(),
            shape: Shape::Rectangle {
                x0,
                x1,
                y0: -2.0,
                y1: 2.0,
            },
            reason: "Where a runner who comes off the end of the mat runs on, falls or rolls."
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
    let Some(plan) = Plan::of(values) else {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                values.missing(NEEDED).join(", ")
            ),
        );
        return cautions;
    };
    let speed = |v| say(Quantity::Speed, v);
    let length = |v| say(Quantity::Length, v);
    let over_ground = plan.run + plan.way * plan.tow;
    if over_ground < 0.0 {
        say_so(
            "carried_back",
            format!(
                "The tow carries the runner backward at {}: whoever stumbles goes towards the tow.",
                speed(-over_ground)
            ),
        );
    }
    for (name, figure, at) in [
        ("slips_at_take_up", "grip_take_up", "takes up"),
        ("slips_at_the_stop", "grip_stop", "stops"),
    ] {
        if let Some(used) = evaluation.value(figure).filter(|used| *used > 1.0) {
            say_so(
                name,
                format!(
                    "The foot slips as the mat {at}: {} times the friction that there is would be needed.",
                    say(Quantity::Ratio, used)
                ),
            );
        }
    }
    if plan.together && plan.at_speed() > plan.run / plan.gather {
        say_so(
            "waits_for_the_tow",
            format!(
                "The runner is at speed before the mat is and uses {} of it waiting: start later, or stand \
                 until the mat is at speed.",
                length(plan.run * (plan.at_speed() - plan.run / plan.gather))
            ),
        );
    }
    if let Some(shortest) = evaluation.value("friction_stop") {
        say_so(
            "no_shorter_stop",
            format!(
                "From {} over the ground not even all the friction of the shoe stops a body in less than {}: \
                 nothing hard may stand nearer.",
                speed(over_ground.abs()),
                length(shortest)
            ),
        );
    }
    if let Some(base) = evaluation.value("take_up_base") {
        say_so(
            "smooth_take_up",
            format!(
                "The foothold of {} at take-up counts on a pull that builds up over {}; slack in the tow \
                 makes it a jerk.",
                length(base),
                say(Quantity::Time, plan.take_up.ramp)
            ),
        );
    }
    if let Some((mat, own)) = evaluation.value("stop_base").zip(
        values
            .number("weight_height")
            .and_then(|h| plan.own_base(h)),
    ) {
        say_so(
            "own_slowing",
            format!(
                "The foothold of {} at the stop counts the mat alone: the runner's own slowing the same way asks \
                 for {} more, which only steps set well ahead give, so stop the one after the other.",
                length(mat),
                length(own)
            ),
        );
    }
    say_so(
        "dry_only",
        format!(
            "On a wet or dusty mat the run of {} does not hold: measure the friction again after any water, \
             and stop when a hem lifts.",
            speed(plan.run)
        ),
    );
    cautions
}
