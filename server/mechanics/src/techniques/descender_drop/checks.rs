//! What a descender drop's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, common_practice, from_memory, judge, plan, published},
    units::{Quantity, say},
};

/// What the drop needs, and more; a second person's mass only where there is a second person.
macro_rules! drop_and {
    ($two:expr $(, $extra:literal)*) => {
        if $two {
            &[
                "people", "performer_mass", "second_mass", "start_length", "line_out", "top_speed",
                "start_acceleration", "brake_deceleration", "emergency_stop", "brake_place",
                "line_mass", "line_modulus", $($extra),*
            ]
        } else {
            &[
                "people", "performer_mass", "start_length", "line_out", "top_speed",
                "start_acceleration", "brake_deceleration", "emergency_stop", "brake_place",
                "line_mass", "line_modulus", $($extra),*
            ]
        }
    };
}

/// What the drop itself cannot be computed without.
pub(super) fn needed(evaluation: &Evaluation) -> &'static [&'static str] {
    drop_and!(two(evaluation))
}

fn two(evaluation: &Evaluation) -> bool {
    evaluation.values.choice("people") == Some("two")
}

/// A maker's own limit, as marked on the equipment.
fn marking() -> Source {
    Source {
        document: "the marking on the equipment".to_owned(),
        ..common_practice()
    }
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = vec![clearance(evaluation)];
    checks.extend(body(evaluation));
    checks.extend(line(evaluation));
    checks.extend(brake(evaluation));
    checks.extend(place(evaluation));
    checks
}

fn clearance(evaluation: &Evaluation) -> Check {
    let of = |name| {
        evaluation
            .value(name)
            .map_or_else(String::new, |v| say(Quantity::Length, v))
    };
    let (stretch, bounce) = (of("static_stretch"), of("bounce"));
    judge(
        evaluation,
        Rule::policy(
            evaluation,
            "clearance",
            "Clearance at the lowest point",
            Subject::Figure("clearance"),
            Bound::AtLeast,
            drop_and!(two(evaluation), "head_height"),
        ),
        |held| {
            format!(
                "{} stays free under the body with {stretch} of stretch, {bounce} of bounce and a late \
                 brake, as little as {} within the tolerances; less line out raises it.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, held.low)
            )
        },
    )
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let two = two(evaluation);
    let felt = |name: &'static str, title, figure, bound, says: &str| {
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                name,
                title,
                Subject::Figure(figure),
                bound,
                drop_and!(two),
            ),
            |held| format!("{} {says}", say(Quantity::Acceleration, held.value)),
        )
    };
    let force = evaluation.value("emergency_felt");
    let heavier = super::heavier(&evaluation.values);
    vec![
        felt(
            "peak_felt",
            "Felt in the planned stop",
            "peak_felt",
            Bound::AtMost,
            "is the most felt in the drop as planned; softer braking or a longer ramp lowers it.",
        ),
        felt(
            "line_taut",
            "Line stays taut",
            "least_felt",
            Bound::AtLeast,
            "is the least felt, bounce included; at nothing the line is slack and snatches: a gentler \
             start or a longer ramp raises it.",
        ),
        felt(
            "emergency_felt",
            "Felt in an emergency stop",
            "emergency_felt",
            Bound::AtMost,
            "is felt when the emergency stop is hit at the worst moment; a softer stop, a gentler start or a \
             slower drop lowers it.",
        ),
        judge(
            evaluation,
            Rule {
                name: "harness_force",
                title: "Force on one body",
                subject: Subject::Figure("emergency_force"),
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
                needs: drop_and!(two),
            },
            |held| {
                format!(
                    "The harness of the heavier body, {}, takes up to {} at {} in an emergency stop.",
                    say(Quantity::Mass, heavier),
                    say(Quantity::Force, held.value),
                    say(Quantity::Acceleration, force.unwrap_or(0.0))
                )
            },
        ),
    ]
}

fn line(evaluation: &Evaluation) -> Vec<Check> {
    let two = two(evaluation);
    let of = |name| {
        evaluation
            .value(name)
            .map_or_else(String::new, |v| say(Quantity::Force, v))
    };
    let (rest, peak, load) = (
        of("static_tension"),
        of("emergency_tension"),
        of("anchor_load"),
    );
    let factor = |name: &'static str, title, figure, says: String| {
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                name,
                title,
                Subject::Figure(figure),
                Bound::AtLeast,
                drop_and!(two, "line_strength", "line_end"),
            ),
            |held| format!("{}: {says}", say(Quantity::Ratio, held.value)),
        )
    };
    let mut checks = vec![
        factor(
            "line_factor",
            "Line factor at rest",
            "line_factor",
            format!(
                "the line holds {rest} at rest with all of it out; a stronger line or fewer people raise \
                 it."
            ),
        ),
        factor(
            "emergency_factor",
            "Line factor, emergency stop",
            "emergency_factor",
            format!(
                "an emergency stop brings the line to {peak}; a softer stop or a stronger line raises it."
            ),
        ),
    ];
    checks.push(judge(
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
            needs: drop_and!(two, "head", "anchor_strength"),
        },
        |held| {
            format!(
                "{}: the anchor of the head takes up to {load}.",
                say(Quantity::Ratio, held.value)
            )
        },
    ));
    checks
}

fn brake(evaluation: &Evaluation) -> Vec<Check> {
    let two = two(evaluation);
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let power = evaluation
        .value("brake_power")
        .map_or_else(String::new, |v| say(Quantity::Power, v));
    let drops = say(Quantity::Count, input("drops"));
    let cycle = evaluation
        .value("cycle_time")
        .map_or_else(String::new, |v| say(Quantity::Time, v));
    vec![
        judge(
            evaluation,
            Rule {
                name: "brake_energy",
                title: "Energy into the brake",
                subject: Subject::Figure("brake_energy"),
                quantity: Quantity::Energy,
                bound: Bound::AtMost,
                limit: input("brake_rating"),
                source: marking(),
                blocking: true,
                reserve: RESERVE,
                needs: drop_and!(two, "brake_mass", "brake_rating"),
            },
            |held| {
                format!(
                    "One drop puts {} into the brake, at most {power} at once; it may take {}.",
                    say(Quantity::Energy, held.value),
                    say(Quantity::Energy, input("brake_rating"))
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "brake_temperature",
                title: "Brake after the last drop",
                subject: Subject::Figure("last_temperature"),
                quantity: Quantity::Temperature,
                bound: Bound::AtMost,
                limit: input("brake_limit"),
                source: marking(),
                blocking: true,
                // A twentieth of a temperature counted from absolute zero would mean nothing.
                reserve: 0.0,
                needs: drop_and!(two, "brake_mass", "brake_limit"),
            },
            |held| {
                format!(
                    "Drop {drops} in a row, one every {cycle}, leaves the brake at {}, up to {} within the \
                     tolerances; a longer wait or a heavier brake lowers it.",
                    say(Quantity::Temperature, held.value),
                    say(Quantity::Temperature, held.high)
                )
            },
        ),
    ]
}

fn place(evaluation: &Evaluation) -> Vec<Check> {
    let two = two(evaluation);
    let clear = evaluation.values.number("clear_distance").unwrap_or(0.0);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "wind",
                "Wind at the head",
                Subject::Input("wind_speed"),
                Bound::AtMost,
                &["wind_speed"],
            ),
            |held| {
                format!(
                    "The drop may go in wind up to {}; the wind at the top of a long line is higher than \
                     at the ground.",
                    say(Quantity::Speed, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "drift",
                title: "Wind drift against the clear distance",
                subject: Subject::Figure("side_reach"),
                quantity: Quantity::Length,
                bound: Bound::AtMost,
                limit: clear,
                source: plan(),
                blocking: true,
                reserve: RESERVE,
                needs: drop_and!(two, "wind_speed", "clear_distance"),
            },
            |held| {
                format!(
                    "Steady wind at its limit brings the furthest hand or foot {} to the side, up to {} \
                     within the tolerances, where {} are clear.",
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
                "rescue_time",
                "Rescue time",
                Subject::Input("rescue_time"),
                Bound::AtMost,
                &["rescue_time"],
            ),
            |held| {
                format!(
                    "{} drilled from a stuck line to the ground; a hanging body is in danger within \
                     minutes.",
                    say(Quantity::Time, held.value)
                )
            },
        ),
    ]
}
