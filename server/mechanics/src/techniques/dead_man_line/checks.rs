//! What a dead-man line's figures are held against: its checks, their limits and who says so.

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

const FOOT: f64 = 0.3048;

/// What the stop needs, and more; the absorber's numbers only where there is one.
macro_rules! stop_and {
    ($torn:expr $(, $extra:literal)*) => {
        if $torn {
            &[
                "performer_mass", "pull_direction", "top_speed", "slack", "line_length",
                "line_modulus", "absorber", "absorber_force", "absorber_stroke", "anchor_height",
                $($extra),*
            ]
        } else {
            &[
                "performer_mass", "pull_direction", "top_speed", "slack", "line_length",
                "line_modulus", "absorber", "anchor_height", $($extra),*
            ]
        }
    };
}

/// What the stop itself cannot be computed without.
pub(super) fn needed(evaluation: &Evaluation) -> &'static [&'static str] {
    stop_and!(tears(evaluation))
}

fn tears(evaluation: &Evaluation) -> bool {
    evaluation.values.choice("absorber") == Some("tearing")
}

fn arrest(clause: &str) -> Source {
    published("29 CFR 1926.502", clause, Some("United States"))
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = body(evaluation);
    checks.extend(arrests(evaluation));
    checks.extend(rig(evaluation));
    checks.extend(ground(evaluation));
    checks
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let torn = tears(evaluation);
    let of = |name, quantity| {
        evaluation
            .value(name)
            .map_or_else(|| "an unknown way".to_owned(), |v| say(quantity, v))
    };
    let (speed, distance) = (
        of("run_speed", Quantity::Speed),
        of("stopping_distance", Quantity::Length),
    );
    let alarm = evaluation.values.number("peak_alarm");
    let limits = tolerance::response(axis(&evaluation.values).unwrap_or(Axis::Backward)).limits;
    let acceleration = |name, title, figure, limit: f64, source, blocking, says: &str| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure(figure),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit,
                source,
                blocking,
                reserve: RESERVE,
                needs: stop_and!(torn),
            },
            |held| {
                format!(
                    "{speed} stopped in {distance} {says} {}; less slack, a softer line or an absorber \
                     brings it down.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
    let brinkley = |risk| from_memory("J. W. Brinkley, dynamic response limits", risk);
    vec![
        acceleration(
            "peak_acceleration",
            "Peak on the body",
            "peak_acceleration",
            alarm.unwrap_or(4.0 * GRAVITY),
            plan(),
            true,
            "peaks at",
        ),
        acceleration(
            "response_low",
            "Dynamic response, low risk",
            "dynamic_response",
            limits[0] * GRAVITY,
            brinkley("low risk"),
            false,
            "gives a dynamic response of",
        ),
        acceleration(
            "response_medium",
            "Dynamic response, medium risk",
            "dynamic_response",
            limits[1] * GRAVITY,
            brinkley("medium risk"),
            true,
            "gives a dynamic response of",
        ),
    ]
}

fn arrests(evaluation: &Evaluation) -> Vec<Check> {
    let torn = tears(evaluation);
    let rule = |name, title, figure, quantity, limit, source, blocking| Rule {
        name,
        title,
        subject: Subject::Figure(figure),
        quantity,
        bound: Bound::AtMost,
        limit,
        source,
        blocking,
        reserve: RESERVE,
        needs: stop_and!(torn),
    };
    let force = |held: f64| say(Quantity::Force, held);
    vec![
        judge(
            evaluation,
            rule(
                "harness_force",
                "Force on the body",
                "peak_force",
                Quantity::Force,
                8000.0,
                arrest("(d)(16): 1,800 lbf (8 kN) in a full-body harness"),
                true,
            ),
            |held| format!("The harness takes up to {}.", force(held.value)),
        ),
        judge(
            evaluation,
            rule(
                "absorber_limit",
                "Force, European absorber limit",
                "peak_force",
                Quantity::Force,
                6000.0,
                published(
                    "EN 355:2002",
                    "at most 6 kN from an energy absorber",
                    Some("Europe"),
                ),
                false,
            ),
            |held| {
                format!(
                    "{} where an energy absorber may let no more than {} through.",
                    force(held.value),
                    force(6000.0)
                )
            },
        ),
        judge(
            evaluation,
            rule(
                "arrest_distance",
                "Arrest distance",
                "stopping_distance",
                Quantity::Length,
                3.5 * FOOT,
                arrest("(d)(16): deceleration distance 3.5 ft (1.07 m)"),
                false,
            ),
            |held| {
                format!(
                    "The body stops in {}; fall arrest allows {}, which a run on level ground may pass when \
                     the way is clear.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, 3.5 * FOOT)
                )
            },
        ),
        judge(
            evaluation,
            rule(
                "free_fall",
                "Run as a free fall",
                "fall_equal",
                Quantity::Length,
                6.0 * FOOT,
                arrest("(d)(16): free fall 6 ft (1.8 m)"),
                false,
            ),
            |held| {
                format!(
                    "The run has the speed of a fall of {}; arrest gear is made for {}.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, 6.0 * FOOT)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "rebound",
                "Speed flung back",
                Subject::Figure("rebound_speed"),
                Bound::AtMost,
                stop_and!(torn),
            )
            .cautionary(),
            |held| {
                format!(
                    "The stretched line flings the body back at {}; a line with more damping or an absorber \
                     keeps the energy.",
                    say(Quantity::Speed, held.value)
                )
            },
        ),
    ]
}

fn rig(evaluation: &Evaluation) -> Vec<Check> {
    let torn = tears(evaluation);
    let peak = evaluation
        .value("peak_force")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    let mut checks = vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "line_factor",
                "Line factor at the peak",
                Subject::Figure("line_factor"),
                Bound::AtLeast,
                stop_and!(torn, "line_strength"),
            ),
            |held| {
                format!(
                    "{}: the line peaks at {peak}; a stronger line or a softer stop raises it.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
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
                needs: stop_and!(torn, "anchor_strength"),
            },
            |held| {
                format!(
                    "{}: the anchor takes up to {peak}.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "anchor_rating",
                title: "Anchor without a design",
                subject: Subject::Input("anchor_strength"),
                quantity: Quantity::Force,
                bound: Bound::AtLeast,
                limit: 22_200.0,
                source: from_memory(
                    "29 CFR 1926.502",
                    "(d)(15): 5,000 lbf (22.2 kN) for each person",
                ),
                blocking: false,
                reserve: 0.0,
                needs: &["anchor_strength"],
            },
            |held| {
                format!(
                    "The anchor holds {}; under {} it needs a qualified person's design and the factor \
                     above.",
                    say(Quantity::Force, held.value),
                    say(Quantity::Force, 22_200.0)
                )
            },
        ),
    ];
    if torn {
        let stroke = evaluation.values.number("absorber_stroke").unwrap_or(0.0);
        let travel = judge(
            evaluation,
            Rule {
                name: "absorber_travel",
                title: "Absorber not used up",
                subject: Subject::Figure("absorber_travel"),
                quantity: Quantity::Length,
                bound: Bound::AtMost,
                // No more than its stroke can tear, so one torn to the end must read as past it.
                limit: (1.0 - 1e-6) * stroke,
                source: Source {
                    document: "the marking on the equipment".to_owned(),
                    ..common_practice()
                },
                blocking: true,
                reserve: RESERVE,
                needs: stop_and!(torn),
            },
            |held| {
                format!(
                    "{} of the absorber's {} tear; once it is used up the line stops the rest.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, stroke)
                )
            },
        );
        checks.push(travel);
    }
    checks
}

fn ground(evaluation: &Evaluation) -> Vec<Check> {
    let torn = tears(evaluation);
    let clear = evaluation.values.number("site_clear").unwrap_or(0.0);
    let place = evaluation
        .value("landing_place")
        .map_or_else(String::new, |v| {
            let side = if v < 0.0 { "behind" } else { "ahead of" };
            format!("{} {side}", say(Quantity::Length, v.abs()))
        });
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "pads",
                "Pads around the landing",
                Subject::Figure("pad_margin"),
                Bound::AtLeast,
                stop_and!(torn, "pad_ahead", "pad_behind"),
            ),
            |held| {
                format!(
                    "Swept off the legs the body comes down {place} the mark, {} from the nearer edge of \
                     the pads.",
                    say(Quantity::Length, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "clear_run",
                title: "Clear run past the mark",
                subject: Subject::Figure("furthest_ahead"),
                quantity: Quantity::Length,
                bound: Bound::AtMost,
                limit: clear,
                source: plan(),
                blocking: true,
                reserve: RESERVE,
                needs: stop_and!(torn, "site_clear"),
            },
            |held| {
                format!(
                    "The harness point comes {} past the mark, up to {} within the tolerances, where {} are \
                     clear; arms and legs reach further.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, held.high),
                    say(Quantity::Length, clear)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "stops_today",
                "Hard stops on the day",
                Subject::Input("stops_today"),
                Bound::AtMost,
                &["stops_today"],
            )
            .cautionary()
            .exact(),
            |held| {
                format!(
                    "{} planned for this performer, rehearsals included.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
    ]
}
