//! What a ratchet pull's figures are held against: its checks, their limits and who says so.

use super::axis;
use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, common_practice, from_memory, judge, plan, published},
    models::{
        GRAVITY,
        tolerance::{self, Axis},
    },
    units::{Quantity, say},
};

pub(super) const PULL: &[&str] = &[
    "performer_mass",
    "reservoir_pressure",
    "reservoir_volume",
    "bore",
    "stroke",
    "purchase",
    "valve_conductance",
    "line_modulus",
    "line_length",
];

/// What the pull needs, and one thing or two more.
macro_rules! pull_and {
    ($extra:literal) => {
        &[
            "performer_mass",
            "reservoir_pressure",
            "reservoir_volume",
            "bore",
            "stroke",
            "purchase",
            "valve_conductance",
            "line_modulus",
            "line_length",
            $extra,
        ]
    };
    ($extra:literal, $more:literal) => {
        &[
            "performer_mass",
            "reservoir_pressure",
            "reservoir_volume",
            "bore",
            "stroke",
            "purchase",
            "valve_conductance",
            "line_modulus",
            "line_length",
            $extra,
            $more,
        ]
    };
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = body(evaluation);
    checks.extend(rig(evaluation));
    checks
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let alarm = evaluation
        .values
        .number("peak_alarm")
        .unwrap_or(4.0 * GRAVITY);
    let rise = evaluation.value("rise_time").map_or_else(
        || "no rise at all".to_owned(),
        |v| format!("a rise of {}", say(Quantity::Time, v)),
    );
    let limits = tolerance::response(axis(&evaluation.values).unwrap_or(Axis::Headward)).limits;
    let peak = judge(
        evaluation,
        Rule {
            name: "peak_acceleration",
            title: "Peak on the body",
            subject: Subject::Figure("peak_acceleration"),
            quantity: Quantity::Acceleration,
            bound: Bound::AtMost,
            limit: alarm,
            source: plan(),
            blocking: true,
            reserve: RESERVE,
            needs: PULL,
        },
        |held| {
            format!(
                "The line pulls with up to {} after {rise}; less pressure or a slower valve \
                 brings it down.",
                say(Quantity::Acceleration, held.value)
            )
        },
    );
    let response = |name, title, risk, limit: f64, blocking| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure("dynamic_response"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: limit * GRAVITY,
                source: from_memory("J. W. Brinkley, dynamic response limits", risk),
                blocking,
                reserve: RESERVE,
                needs: pull_and!("pull_direction"),
            },
            |held| {
                format!(
                    "The jerk, {rise}, gives a dynamic response of {}; a slower valve lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
    let force = judge(
        evaluation,
        Rule {
            name: "harness_force",
            title: "Force on the body",
            subject: Subject::Figure("body_force"),
            quantity: Quantity::Force,
            bound: Bound::AtMost,
            limit: 8000.0,
            source: published(
                "29 CFR 1926.502",
                "(d)(16): 1,800 lbf (8 kN) in a full-body harness",
                Some("United States"),
            ),
            blocking: true,
            reserve: RESERVE,
            needs: PULL,
        },
        |held| {
            format!(
                "The harness takes up to {}.",
                say(Quantity::Force, held.value)
            )
        },
    );
    let pulls = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "pulls_today",
            "Hard pulls on the day",
            Subject::Input("pulls_today"),
            Bound::AtMost,
            &["pulls_today"],
        )
        .cautionary()
        .exact(),
        |held| {
            format!(
                "{} planned for this performer, rehearsals included; 3 hard pulls a day are the habit.",
                say(Quantity::Count, held.value)
            )
        },
    );
    vec![
        peak,
        response(
            "response_low",
            "Dynamic response, low risk",
            "low risk",
            limits[0],
            false,
        ),
        response(
            "response_medium",
            "Dynamic response, medium risk",
            "medium risk",
            limits[1],
            true,
        ),
        force,
        pulls,
    ]
}

fn rig(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let peak = evaluation
        .value("line_peak")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    let load = evaluation
        .value("anchor_load")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    let landing = evaluation
        .value("total_distance")
        .map_or_else(String::new, |v| say(Quantity::Length, v));
    let corridor = judge(
        evaluation,
        Rule {
            name: "corridor",
            title: "Landing and slide in the corridor",
            subject: Subject::Figure("corridor_needed"),
            quantity: Quantity::Length,
            bound: Bound::AtMost,
            limit: input("corridor_length"),
            source: plan(),
            blocking: true,
            reserve: RESERVE,
            needs: pull_and!("corridor_length"),
        },
        |held| {
            format!(
                "The body lands {landing} from where it stood and may slide to {}, up to {} within the \
                 tolerances, in a corridor of {}.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, held.high),
                say(Quantity::Length, input("corridor_length"))
            )
        },
    );
    let pressure = judge(
        evaluation,
        Rule {
            name: "rated_pressure",
            title: "Pressure against the rating",
            subject: Subject::Input("reservoir_pressure"),
            quantity: Quantity::Pressure,
            bound: Bound::AtMost,
            limit: input("rated_pressure"),
            source: Source {
                document: "the marking on the equipment".to_owned(),
                ..common_practice()
            },
            blocking: true,
            reserve: RESERVE,
            needs: &["reservoir_pressure", "rated_pressure"],
        },
        |held| {
            format!(
                "{} in equipment marked for {}.",
                say(Quantity::Pressure, held.value),
                say(Quantity::Pressure, input("rated_pressure"))
            )
        },
    );
    let line = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "line_factor",
            "Line factor at the peak",
            Subject::Figure("line_factor"),
            Bound::AtLeast,
            pull_and!("line_strength"),
        ),
        |held| {
            format!(
                "{}: the line peaks at {peak} by the cylinder; a stronger line or a softer pull raises it.",
                say(Quantity::Ratio, held.value)
            )
        },
    );
    let anchor = judge(
        evaluation,
        Rule {
            name: "anchor_factor",
            title: "Anchor factor",
            subject: Subject::Figure("anchor_factor"),
            quantity: Quantity::Ratio,
            bound: Bound::AtLeast,
            limit: 2.0,
            source: from_memory(
                "29 CFR 1926.502",
                "(d)(15): factor 2 designed by a qualified person",
            ),
            blocking: true,
            reserve: RESERVE,
            needs: pull_and!("anchor_strength", "redirect_angle"),
        },
        |held| {
            format!(
                "{}: the redirect's anchor takes up to {load} for the line's turn there.",
                say(Quantity::Ratio, held.value)
            )
        },
    );
    vec![corridor, pressure, line, anchor]
}
