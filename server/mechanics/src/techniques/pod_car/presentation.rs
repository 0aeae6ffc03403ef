//! What is shown beside a pod car's figures: the swerve, the stop, ground to keep clear, and cautions.

use super::{
    checks::RIG,
    rig::{Rig, Swerve},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::GRAVITY,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let mut traces = Vec::new();
    traces.extend(swerve(evaluation));
    traces.extend(stop(evaluation));
    traces
}

fn swerve(evaluation: &Evaluation) -> Option<Trace> {
    let values = &evaluation.values;
    let lean = Rig::read(values)?.lean(values)?;
    let swerve = Swerve::read(values)?;
    let grip = values.number("friction")? * GRAVITY;
    let mut run = Recorder::new();
    lean.swerve(swerve.pull.min(grip), swerve.time, |moment| {
        run.push(moment.time, [moment.pull, moment.lean, moment.moved]);
    })?;
    Some(run.trace(
        "swerve",
        "The swerve at top speed",
        ("Time", Quantity::Time),
        [
            ("Sideways pull", Quantity::Acceleration),
            ("Lean", Quantity::Angle),
            ("Load moved to the outer wheels", Quantity::Ratio),
        ],
    ))
}

/// Points of the braking curve.
const POINTS: usize = 40;

fn stop(evaluation: &Evaluation) -> Option<Trace> {
    let values = &evaluation.values;
    let braking = evaluation.value("braking")?;
    let speed = values.number("top_speed")?;
    let reaction = values.number("reaction_time")?;
    let mut run = Recorder::new();
    run.push(0.0, [speed, 0.0]);
    let time = speed / braking;
    for i in 0..=POINTS {
        let t = time * i as f64 / POINTS as f64;
        run.push(
            reaction + t,
            [
                speed - braking * t,
                speed * reaction + speed * t - 0.5 * braking * t * t,
            ],
        );
    }
    Some(run.trace(
        "stop",
        "The stop from top speed",
        ("Time", Quantity::Time),
        [("Speed", Quantity::Speed), ("Distance", Quantity::Length)],
    ))
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(stop), Some(track), Some(aside)) = (
        evaluation.figure("stop_distance"),
        values.number("track"),
        values.number("swerve_aside"),
    ) else {
        return Vec::new();
    };
    // Mirrors, mounts and people leaning out reach about half a metre beyond the tyres.
    let half = 0.5 * track + 0.5 + aside;
    vec![Zone {
        name: "moving".to_owned(),
        title: "Before the moving car".to_owned(),
        shape: Shape::Rectangle {
            x0: 0.0,
            x1: stop.high,
            y0: -half,
            y1: half,
        },
        reason: "Moves with the car from its nose: it cannot stop within this, and it may swerve to either side."
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
    let length = |value| say(Quantity::Length, value);
    if let (Some(rig), Some(tips)) = (Rig::read(values), evaluation.value("tipping_speed")) {
        say_so(
            "raised",
            format!(
                "The pod lifts the middle of the mass from {} to {}: in this bend the car tips at {}, sooner than it \
                 did without the pod.",
                length(rig.car.height),
                length(rig.whole.height),
                say(Quantity::Speed, tips)
            ),
        );
    }
    if let Some(adds) = evaluation.value("pod_costs")
        && adds > 0.0
    {
        say_so(
            "longer_stop",
            format!(
                "With the pod on, braking from top speed takes {} more road than the car by itself.",
                length(adds)
            ),
        );
    }
    if let (Some(pull), Some(share)) = (
        evaluation.value("swerve_pull"),
        evaluation.value("swerve_grip"),
    ) && share > 1.0
    {
        say_so(
            "no_swerve",
            format!(
                "The swerve would take {}, which this road does not give: the car slides straight on instead.",
                say(Quantity::Acceleration, pull)
            ),
        );
    }
    if let Some(lift) = evaluation.value("swerve_lift")
        && lift > 1.0
    {
        say_so(
            "lifts",
            format!(
                "In the swerve the inner wheels leave the ground: the load moved comes to {} of theirs.",
                say(Quantity::Ratio, lift)
            ),
        );
    }
    if let (Some(eye), Some(edge)) = (values.number("eye_height"), values.number("edge_height"))
        && evaluation.value("hidden_ahead").is_none()
        && values.missing(&["edge_distance", "eye_to_nose"]).is_empty()
    {
        say_so(
            "no_sight",
            format!(
                "The pod driver's eyes at {} are not over the edge at {}: no road ahead is seen at all.",
                length(eye),
                length(edge)
            ),
        );
    }
    if let Some(share) = evaluation.value("front_share_loaded")
        && !(share > 0.0 && share < 1.0)
    {
        say_so(
            "stands_up",
            format!(
                "With {} of the weight in front one axle carries nothing: the car stands up, and braking is not \
                 computed.",
                say(Quantity::Ratio, share)
            ),
        );
    }
    if let (Some(people), Some(speed)) = (values.number("people"), values.number("top_speed")) {
        say_so(
            "abort_word",
            format!(
                "{} ride at up to {}: the actor's abort word is tried with the pod driver before the car moves, and \
                 nobody stands on a tow bar.",
                say(Quantity::Count, people),
                say(Quantity::Speed, speed)
            ),
        );
    }
    let missing = values.missing(RIG);
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
