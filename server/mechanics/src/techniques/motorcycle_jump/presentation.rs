//! What is shown beside a motorcycle jump's figures: the flight, ground to keep clear, and cautions.

use super::{
    checks::JUMP,
    jump::{Jump, Place},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::trajectory::Sample,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(jump) = Jump::read(&evaluation.values) else {
        return Vec::new();
    };
    let mut path = Recorder::new();
    let mut last: Option<Sample> = None;
    let met = jump.fly(Some(&mut |sample| {
        // A strong headwind can carry it back, which a curve over distance cannot show.
        if last.is_some_and(|before| sample.along < before.along) {
            return;
        }
        // Steps are long in smooth flight: a point half way rounds the curve for the eye.
        if let Some(before) = last {
            let middle = 0.5 * (before.along + sample.along);
            let lift = 9.806_65 * (sample.time - before.time) * (sample.time - before.time) / 8.0;
            path.push(
                middle,
                [
                    0.5 * (before.height + sample.height) + lift,
                    0.5 * (before.speed + sample.speed),
                ],
            );
        }
        path.push(sample.along, [sample.height, sample.speed]);
        last = Some(sample);
    }));
    if met.is_none() {
        return Vec::new();
    }
    vec![path.trace(
        "flight",
        "The flight",
        ("Distance from the lip", Quantity::Length),
        [("Height", Quantity::Length), ("Speed", Quantity::Speed)],
    )]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(jump), Some(landing)) = (Jump::read(values), evaluation.figure("landing_distance"))
    else {
        return Vec::new();
    };
    let half = 0.5 * values.number("landing_width").unwrap_or(0.0)
        + evaluation.figure("drift").map_or(0.0, |drift| drift.high)
        + 3.0;
    vec![Zone {
        name: "flight".to_owned(),
        title: "Ramp, gap, landing and run-out".to_owned(),
        shape: Shape::Rectangle {
            x0: -values.number("in_run").unwrap_or(0.0),
            x1: (jump.gap + jump.length).max(landing.high) + values.number("run_out").unwrap_or(0.0),
            y0: -half,
            y1: half,
        },
        reason: "The motorcycle and the rider may come down apart anywhere in here: nobody is inside, cameras stand \
                 alone."
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
    let speed = |value| say(Quantity::Speed, value);
    if let (Some(low), Some(high), Some(stated)) = (
        evaluation.value("speed_low"),
        evaluation.value("speed_high"),
        values.number("takeoff_speed"),
    ) {
        say_so(
            "turn_away",
            format!(
                "The rider turns away before the ramp below {} or above {}: {} is planned.",
                speed(low),
                speed(high),
                speed(stated)
            ),
        );
        if high <= low {
            say_so(
                "no_window",
                "With these margins no take-off speed lands well: lengthen the landing.".to_owned(),
            );
        }
    }
    let met = Jump::read(values).and_then(|jump| Some((jump, jump.fly(None)?)));
    match met.map(|(jump, met)| (jump, met.place, met.landing.distance)) {
        Some((jump, Place::Ground, distance)) => say_so(
            "short",
            format!(
                "The jump comes down {} short of the landing.",
                say(Quantity::Length, jump.gap - distance)
            ),
        ),
        Some((_, Place::Face { under }, _)) => say_so(
            "face",
            format!(
                "The jump strikes the face of the landing {} under its edge, as into a wall.",
                say(Quantity::Length, under)
            ),
        ),
        Some((jump, Place::Beyond, distance)) => say_so(
            "past_foot",
            format!(
                "The jump comes down {} past the foot of the slope, on level ground.",
                say(Quantity::Length, distance - jump.end())
            ),
        ),
        _ => {}
    }
    if let Some(jump) = Jump::read(values)
        && jump.end() < jump.gap + jump.length
    {
        say_so(
            "buried",
            format!(
                "The slope meets the ground {} past its near edge, short of its stated length: raise the edge, shorten \
                 it, or say how far the ground falls.",
                say(Quantity::Length, jump.end() - jump.gap)
            ),
        );
    }
    if let (Some(flips), Some(rate)) =
        (values.number("flips"), evaluation.value("turn_rate_needed"))
        && flips > 0.0
    {
        say_so(
            "flip",
            format!(
                "A flip takes {} all the way through: foam or air bag first, and no jump after a turn that stops \
                 short.",
                say(Quantity::Rotation, rate)
            ),
        );
    }
    let missing = values.missing(JUMP);
    if missing.is_empty() && evaluation.value("speed_window").is_none() {
        say_so(
            "no_speed",
            "No take-off speed reaches the landing at this angle: raise the lip or steepen the ramp.".to_owned(),
        );
    }
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
