//! What is shown beside a descender drop's figures: plots, ground to keep clear, and cautions.

use super::checks::needed;
use super::drop::{self, Setup};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::long_line::{Even, FOR_PLOTS},
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some((setup, profile)) =
        Setup::of(&evaluation.values).and_then(|setup| setup.profile().map(|found| (setup, found)))
    else {
        return Vec::new();
    };
    let mut whole = Recorder::new();
    let pieces = drop::pieces(&setup, &profile, 3.0);
    let done = setup
        .line
        .follow(setup.at_start(), &pieces, FOR_PLOTS, |m| {
            whole.push(m.time, [m.depth, m.speed, m.felt, m.head_tension]);
        });
    let mut stop = Recorder::new();
    let braking = setup.end_length - profile.brake_distance;
    let from = Even {
        length: braking,
        speed: profile.speed,
        acceleration: 0.0,
    };
    let pieces = drop::emergency(&setup, profile.speed, braking);
    let stopped = setup.line.follow(from, &pieces, FOR_PLOTS, |m| {
        stop.push(m.time, [m.felt, m.head_tension]);
    });
    if done.and(stopped).is_none() {
        return Vec::new();
    }
    vec![
        whole.trace(
            "drop",
            "The drop",
            ("Time", Quantity::Time),
            [
                ("Depth below the head", Quantity::Length),
                ("Speed", Quantity::Speed),
                ("Felt", Quantity::Acceleration),
                ("Tension at the head", Quantity::Force),
            ],
        ),
        stop.trace(
            "emergency_stop",
            "Emergency stop before the brake",
            ("Time", Quantity::Time),
            [
                ("Felt", Quantity::Acceleration),
                ("Tension at the head", Quantity::Force),
            ],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let Some(drift) = evaluation.figure("wind_drift") else {
        return Vec::new();
    };
    // Three metres for what a hand lets go, beside how far the wind carries.
    let half = drift.high + 3.0;
    vec![Zone {
        name: "under_line".to_owned(),
        title: "Ground under the line".to_owned(),
        shape: Shape::Ellipse {
            x: 0.0,
            y: 0.0,
            half_x: half,
            half_y: half,
        },
        reason: "The body, the line or something dropped comes down in here; only who unhooks enters, on \
                 the word."
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
    let Some(setup) = Setup::of(values) else {
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
    let length = |v| say(Quantity::Length, v);
    if setup.asked.travel <= 0.0 {
        say_so(
            "no_travel",
            format!(
                "The line is {} out at the start and {} at the end: there is no drop to compute.",
                length(setup.start_length),
                length(setup.end_length)
            ),
        );
        return cautions;
    }
    let Some(profile) = setup.profile() else {
        return cautions;
    };
    let Some(stretch) = evaluation.value("static_stretch") else {
        say_so(
            "no_solution",
            "The drop could not be followed with these inputs: check the line's modulus and the emergency \
             stop."
                .to_owned(),
        );
        return cautions;
    };
    if profile.speed < setup.asked.speed {
        say_so(
            "speed_not_reached",
            format!(
                "{} of travel is too short for {}: the body reaches {} and the brake follows at once.",
                length(setup.asked.travel),
                say(Quantity::Speed, setup.asked.speed),
                say(Quantity::Speed, profile.speed)
            ),
        );
    }
    if let Some(period) = evaluation.value("bounce_period") {
        say_so(
            "stretch",
            format!(
                "With all of it out the line stretches {} and bounces with a period of {}: mark the stop by \
                 the body's height under load, not by the length read at the drum.",
                length(stretch),
                say(Quantity::Time, period)
            ),
        );
        let ramp = profile.brake.ramp;
        if ramp < 0.5 * period {
            say_so(
                "short_ramp",
                format!(
                    "The brake comes in within {}, under half of the bounce period of {}: the body swings \
                     past as if the brake had struck at once.",
                    say(Quantity::Time, ramp),
                    say(Quantity::Time, period)
                ),
            );
        }
    }
    if setup.emergency < setup.asked.brake {
        say_so(
            "soft_emergency_stop",
            format!(
                "The emergency stop, {}, is softer than the planned brake, {}: hit late, it runs past the \
                 planned stop.",
                say(Quantity::Acceleration, setup.emergency),
                say(Quantity::Acceleration, setup.asked.brake)
            ),
        );
    }
    if let Some(felt) = evaluation.value("emergency_felt") {
        let tension = evaluation.value("emergency_tension").unwrap_or(0.0);
        say_so(
            "ladder",
            format!(
                "An emergency stop at full speed gives {} and {} at the head; hit it with a weight bag of \
                 the people's mass before anybody hangs on the line.",
                say(Quantity::Acceleration, felt),
                say(Quantity::Force, tension)
            ),
        );
    }
    if !setup.line.runs
        && let Some(energy) = evaluation.value("brake_energy")
    {
        say_so(
            "hot_device",
            format!(
                "{} of heat go into a device at the body: keep skin, wardrobe and the line's core away from \
                 it.",
                say(Quantity::Energy, energy)
            ),
        );
    }
    cautions
}
