//! What is shown beside a high fall's figures: plots, ground to keep clear, and cautions.

use super::checks::FALL;
use super::{felt, landing, middle_off, stop, throw};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::trajectory,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let mut traces = Vec::new();
    let Some(throw) = throw(&evaluation.values) else {
        return traces;
    };
    let mut flight = Recorder::new();
    let landing = trajectory::fly_and_sample(&throw, |s| {
        flight.push(s.time, [s.height, s.speed, s.along])
    });
    let Some(landing) = landing else {
        return traces;
    };
    traces.push(flight.trace(
        "flight",
        "The fall",
        ("Time", Quantity::Time),
        [
            ("Height", Quantity::Length),
            ("Speed", Quantity::Speed),
            ("Distance along", Quantity::Length),
        ],
    ));
    if let Some((stop, shape, _)) = stop(&evaluation.values, &landing) {
        let mut felt_trace = Recorder::new();
        for (time, value) in felt(&stop, shape) {
            felt_trace.push(time, [value]);
        }
        traces.push(felt_trace.trace(
            "stop",
            "What the body feels",
            ("Time from contact", Quantity::Time),
            [("Felt", Quantity::Acceleration)],
        ));
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let mut zones = Vec::new();
    let value = |name| evaluation.value(name);
    if let (Some(x), Some(half_x), Some(half_y)) = (
        value("landing_distance"),
        value("landing_half_length"),
        value("landing_half_width"),
    ) {
        let direction = evaluation.values.number("exit_direction").unwrap_or(0.0);
        let (sine, cosine) = libm::sincos(direction);
        let off = middle_off(&evaluation.values).unwrap_or(0.0);
        zones.push(Zone {
            name: "landing".to_owned(),
            title: "Landing ellipse, 99 %".to_owned(),
            shape: Shape::Ellipse {
                x: x * cosine,
                y: x * sine,
                half_x: half_x + off * cosine,
                half_y: half_y + off * sine.abs(),
            },
            reason: "99 of 100 bodies come down inside it; nothing hard and nobody stands here."
                .to_owned(),
        });
    }
    let input = |name| evaluation.values.number(name);
    if let (Some(x), Some(length), Some(width)) = (
        input("catcher_distance"),
        input("catcher_length"),
        input("catcher_width"),
    ) {
        // Two metres are an arm's reach and a step back.
        let (along, across) = (0.5 * length + 2.0, 0.5 * width + 2.0);
        zones.push(Zone {
            name: "spotters".to_owned(),
            title: "Catcher and spotters".to_owned(),
            shape: Shape::Rectangle {
                x0: x - along,
                x1: x + along,
                y0: -across,
                y1: across,
            },
            reason: "Only spotters stand within 2 m of the catcher.".to_owned(),
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
    let value = |name| evaluation.value(name);
    if let (Some(mean), Some(peak)) = (value("mean_felt"), value("peak_felt")) {
        say_so(
            "pulse_shape",
            format!(
                "The peak of {} rests on the pulse shape entered; only the mean of {} follows from energy \
                 alone. Measure the shape with an instrumented weight bag.",
                say(Quantity::Acceleration, peak),
                say(Quantity::Acceleration, mean)
            ),
        );
    }
    if let (Some(distance), Some(depth)) = (
        value("stopping_distance"),
        evaluation.values.number("catcher_depth"),
    ) && let Some(energy) = value("impact_energy")
    {
        say_so(
            "bottoming_out",
            format!(
                "Whether {} of this catcher's {} give way evenly under {} is not computed: drop weight \
                 bags of rising mass first.",
                say(Quantity::Length, distance),
                say(Quantity::Length, depth),
                say(Quantity::Energy, energy)
            ),
        );
    }
    if let Some(wind) = evaluation.values.number("wind_speed")
        && wind > 0.0
        && let Some(mut blown) = throw(&evaluation.values)
        && let Some(still) = landing(evaluation)
    {
        blown.wind = wind;
        if let Some(landing) = trajectory::fly(&blown) {
            say_so(
                "wind_drift",
                format!(
                    "A steady wind of {} moves the landing by {}; a bag's top moves in it too.",
                    say(Quantity::Speed, wind),
                    say(Quantity::Length, (landing.distance - still.distance).abs())
                ),
            );
        }
    }
    let missing = evaluation.values.missing(FALL);
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
