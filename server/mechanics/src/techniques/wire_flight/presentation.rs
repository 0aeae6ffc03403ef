//! What is shown beside a wire flight's figures: plots, ground to keep clear, and cautions.

use super::checks::FLIGHT;
use super::flight::{self, Shares};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::GRAVITY,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let (Some(mass), Some(shares)) = (values.number("performer_mass"), Shares::of(values)) else {
        return Vec::new();
    };
    let mut tensions = Recorder::new();
    let mut motion = Recorder::new();
    let done = flight::course(values, |time, felt, speed, gain| {
        let (left, right) = shares.tensions(mass * felt * gain);
        tensions.push(time, [left, right]);
        motion.push(time, [felt, speed]);
    });
    // A flight with neither lift nor swing has nothing to draw.
    if done.is_none() || motion.is_empty() {
        return Vec::new();
    }
    vec![
        tensions.trace(
            "tensions",
            "Tension of each wire",
            ("Time", Quantity::Time),
            [("Left", Quantity::Force), ("Right", Quantity::Force)],
        ),
        motion.trace(
            "motion",
            "What the body feels",
            ("Time", Quantity::Time),
            [("Felt", Quantity::Acceleration), ("Speed", Quantity::Speed)],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let Some(reach) = evaluation.figure("swing_reach") else {
        return Vec::new();
    };
    let across = evaluation.values.number("body_reach").unwrap_or(1.2)
        + 0.5 * evaluation.values.number("overhead_spread").unwrap_or(0.0);
    vec![Zone {
        name: "flight_path".to_owned(),
        title: "Under the flight".to_owned(),
        shape: Shape::Rectangle {
            x0: -reach.high,
            x1: reach.high,
            y0: -across,
            y1: across,
        },
        reason: "The body, or a dropped prop, can come down anywhere here.".to_owned(),
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
    if let Some(ramp) = flight::Ramp::of(values)
        && ramp.acceleration > 0.95 * GRAVITY
    {
        say_so(
            "slack",
            format!(
                "At {} the wires go slack whenever the lift slows upward or the lowering starts, and then \
                 snatch; the tensions here do not include a snatch.",
                say(Quantity::Acceleration, ramp.acceleration)
            ),
        );
    }
    if let Some(shares) = Shares::of(values) {
        if shares.heavier() > 0.6 {
            say_so(
                "uneven",
                format!(
                    "One side carries {:.0} % of the load: move the picks or the props until the body hangs \
                     even.",
                    100.0 * shares.heavier()
                ),
            );
        }
        if shares.lean > 0.5 {
            say_so(
                "lean",
                format!(
                    "Each wire leans {} from the vertical, so the harness is pulled sideways with {} of the \
                     load; a spreader bar takes that off the body.",
                    say(Quantity::Angle, shares.lean),
                    say(Quantity::Ratio, 0.5 * libm::tan(shares.lean))
                ),
            );
        }
    }
    if evaluation.figure("hang_angle").is_some_and(|f| {
        f.low < core::f64::consts::FRAC_PI_2 && f.high > core::f64::consts::FRAC_PI_2
    }) {
        say_so(
            "inversion",
            "Within the tolerances the balance point may lie above the picks: the body may turn over \
             without meaning to."
                .to_owned(),
        );
    }
    if let Some(length) = values.number("wire_length")
        && evaluation.value("lowest_factor").is_some()
    {
        say_so(
            "not_counted",
            format!(
                "Snatches, side swing and the {} wires' own weight are not in the tensions: read a load \
                 cell at the first full-speed run.",
                say(Quantity::Length, length)
            ),
        );
    }
    let missing = values.missing(FLIGHT);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Tensions are not computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
