//! What is shown beside a vehicle roll's figures: the roll, ground to keep clear, and cautions.

use super::{
    checks::roll_needs,
    roll::{self, Setup},
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
    traces.extend(rolled(evaluation));
    traces.extend(run(evaluation));
    traces
}

fn rolled(evaluation: &Evaluation) -> Option<Trace> {
    let setup = Setup::read(&evaluation.values)?;
    let mut states = Recorder::new();
    setup.run(|state| {
        states.push(
            state.time,
            [state.angle, state.rate, state.height, state.aside],
        );
    })?;
    Some(states.trace(
        "roll",
        "The roll from the ramp's end",
        ("Time", Quantity::Time),
        [
            ("Rolled", Quantity::Angle),
            ("Roll rate", Quantity::Rotation),
            ("Height of the middle", Quantity::Length),
            ("Aside", Quantity::Length),
        ],
    ))
}

/// Points of each part of the way to rest.
const POINTS: usize = 30;

fn run(evaluation: &Evaluation) -> Option<Trace> {
    let values = &evaluation.values;
    let setup = Setup::read(values)?;
    let tumble = setup.run(|_| {})?.tumble;
    let (tumbling, sliding) = (
        values.number("tumble_share")?,
        values.number("slide_share")?,
    );
    let along = roll::along(setup.speed, &tumble, tumbling, sliding);
    let mut way = Recorder::new();
    let (mut time, mut place, mut speed) = (0.0, 0.0, setup.speed);
    way.push(time, [speed, place]);
    for (slowing, until) in [
        (0.0, tumble.lands),
        (tumbling * GRAVITY, tumble.time),
        (sliding * GRAVITY, along.time),
    ] {
        let stands = if slowing > 0.0 {
            speed / slowing
        } else {
            f64::INFINITY
        };
        let span = (until - time).min(stands);
        if span <= 0.0 {
            continue;
        }
        for i in 1..=POINTS {
            let t = span * i as f64 / POINTS as f64;
            way.push(
                time + t,
                [
                    speed - slowing * t,
                    place + speed * t - 0.5 * slowing * t * t,
                ],
            );
        }
        place += speed * span - 0.5 * slowing * span * span;
        speed -= slowing * span;
        time += span;
    }
    Some(way.trace(
        "way",
        "The way to rest",
        ("Time", Quantity::Time),
        [("Speed", Quantity::Speed), ("Distance", Quantity::Length)],
    ))
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let mut zones = Vec::new();
    let (Some(ahead), Some(side)) = (
        evaluation.figure("rest_reach"),
        evaluation.figure("side_reach"),
    ) else {
        return zones;
    };
    let before = evaluation.values.number("ramp_length").unwrap_or(0.0);
    zones.push(Zone {
        name: "rest".to_owned(),
        title: "Ramp to rest".to_owned(),
        shape: Shape::Rectangle {
            x0: -before,
            x1: ahead.high,
            y0: -side.high,
            y1: side.high,
        },
        reason: "The car may roll, slide and lie anywhere in here, and parts of it come off: nobody is inside, cameras \
                 stand alone."
            .to_owned(),
    });
    let Some(fire) = evaluation.figure("safe_distance") else {
        return zones;
    };
    zones.push(Zone {
        name: "fire".to_owned(),
        title: "Clear of a fuel fire".to_owned(),
        shape: Shape::Rectangle {
            x0: -before - fire.high,
            x1: ahead.high + fire.high,
            y0: -side.high - fire.high,
            y1: side.high + fire.high,
        },
        reason: "Wherever the car lies, its fuel may burn: only the fire crew, in their gear, comes in here before it \
                 is called safe."
            .to_owned(),
    });
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
    let length = |value| say(Quantity::Length, value);
    let time = |value| say(Quantity::Time, value);
    if let Some(turns) = evaluation.figure("turns") {
        if turns.value < 0.25 {
            say_so(
                "falls_back",
                format!(
                    "The car falls back on its wheels at {} and drives on: the driver needs brakes and steering \
                     after it, and how far it reaches is not given.",
                    evaluation
                        .value("takeoff_speed")
                        .map_or_else(String::new, |v| say(Quantity::Speed, v))
                ),
            );
        } else if turns.value.fract() == 0.0 {
            say_so(
                "on_wheels",
                format!(
                    "After {} turns it lies on its wheels, and may roll on past {}: how far it reaches is not given.",
                    say(Quantity::Ratio, turns.value),
                    evaluation
                        .value("rest_distance")
                        .map_or_else(String::new, length)
                ),
            );
        }
        if turns.high - turns.low > 0.2 {
            say_so(
                "turns_open",
                format!(
                    "Within the tolerances it lies after {} turns or {}: belt, exit and fire crew are ready for each.",
                    say(Quantity::Ratio, turns.low),
                    say(Quantity::Ratio, turns.high)
                ),
            );
        }
        if (turns.value.fract() - 0.5).abs() < 1e-9
            && let (Some(roof), Some(chest)) =
                (values.number("roof_height"), values.number("chest_height"))
        {
            say_so(
                "on_roof",
                format!(
                    "It lies on its roof with the driver hanging {} from the ground: the exit is rehearsed upside down.",
                    length((roof - chest).max(0.0))
                ),
            );
        }
    }
    if let (Some(turns), Some(most)) = (evaluation.value("turns"), evaluation.value("turns_most"))
        && most > turns
    {
        say_so(
            "more_turns",
            format!(
                "Only the turning that it took off with is counted, {} turns: a car that comes to lie across its way is \
                 rolled on by its speed, up to {}, and strikes \
                 again in each.",
                say(Quantity::Ratio, turns),
                say(Quantity::Ratio, most)
            ),
        );
    }
    if values.choice("method") == Some("measured") {
        say_so(
            "measured",
            "The roll rate is the empty car's: another mass, track or charge gives another, and the charge is the \
             licensed operator's."
                .to_owned(),
        );
    }
    if let (Some(fire), Some(burns), Some(out)) = (
        evaluation.value("flame_height"),
        evaluation.value("burn_time"),
        values.number("exit_time"),
    ) {
        say_so(
            "fire",
            format!(
                "Spilled fuel burns for {} with flames of {}, and the driver takes {} to get out: the fire crew stands \
                 by and does not wait for a call.",
                time(burns),
                length(fire),
                time(out)
            ),
        );
    }
    if let (Some(width), Some(distance)) = (
        evaluation.value("pool_width"),
        values.number("people_distance"),
    ) && distance < 2.5 * width
    {
        say_so(
            "near_fire",
            format!(
                "People at {} are so near a spill of {} across that heat from a single point tells too little: stand \
                 back.",
                length(distance),
                length(width)
            ),
        );
    }
    let missing = values.missing(roll_needs(evaluation));
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    } else if evaluation.value("roll_rate").is_none() {
        say_so(
            "no_take_off",
            "The car does not come off this ramp: it is too slow, the ramp is too high for its track, or the roof is \
             not over the middle of the mass."
                .to_owned(),
        );
    } else if evaluation.value("turns").is_none() {
        say_so(
            "no_end",
            "The roll does not come to an end that this model can follow.".to_owned(),
        );
    }
    cautions
}
