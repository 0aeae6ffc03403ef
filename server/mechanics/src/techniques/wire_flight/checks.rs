//! What a wire flight's figures are held against: its checks, their limits and who says so.

use super::flight::{self};
use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, common_practice, from_memory, judge, plan, published},
    units::{Quantity, say},
};

pub(super) const FLIGHT: &[&str] = &[
    "performer_mass",
    "lift_height",
    "lift_speed",
    "lift_acceleration",
    "wire_length",
    "overhead_spread",
    "balance_depth",
];
const WIRE: &[&str] = &[
    "performer_mass",
    "lift_height",
    "lift_speed",
    "lift_acceleration",
    "wire_length",
    "overhead_spread",
    "balance_depth",
    "wire_size",
    "wire_material",
    "termination",
    "sheave_ratio",
];
const EMERGENCY: &[&str] = &[
    "performer_mass",
    "wire_length",
    "overhead_spread",
    "wire_size",
    "wire_material",
    "termination",
    "sheave_ratio",
    "emergency_stop",
];
const ANCHOR: &[&str] = &[
    "performer_mass",
    "lift_height",
    "lift_speed",
    "lift_acceleration",
    "wire_length",
    "overhead_spread",
    "balance_depth",
    "emergency_stop",
    "anchor_strength",
];

/// The trade's factors for flying people: policy, not the standards' text.
fn flying_policy() -> Source {
    Source {
        document: "common practice for performer flying".to_owned(),
        ..common_practice()
    }
}

/// The same for the planned peak, which is what the standard calls the characteristic load. The failure of
/// a wire is no part of that load.
fn characteristic() -> Source {
    Source {
        clause: Some("on the characteristic load of ANSI E1.43".to_owned()),
        ..flying_policy()
    }
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = factors(evaluation);
    checks.extend(body(evaluation));
    checks.extend(rig(evaluation));
    checks
}

fn factors(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name, otherwise| evaluation.values.number(name).unwrap_or(otherwise);
    let force = |name| {
        evaluation
            .value(name)
            .map_or_else(String::new, |v| say(Quantity::Force, v))
    };
    let strength = force("wire_strength");
    let place = flight::worst(&evaluation.values).map_or("", |worst| worst.place.words());
    let left = evaluation.value("peak_tension_left").unwrap_or(0.0);
    let right = evaluation.value("peak_tension_right").unwrap_or(0.0);
    let side = if left > right { "left" } else { "right" };
    let planned = say(Quantity::Force, left.max(right));
    let factor = |name, title, figure, limit, source, needs, detail: &dyn Fn(String) -> String| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure(figure),
                quantity: Quantity::Ratio,
                bound: Bound::AtLeast,
                limit,
                source,
                blocking: true,
                reserve: RESERVE,
                needs,
            },
            |held| detail(say(Quantity::Ratio, held.value)),
        )
    };
    vec![
        factor(
            "design_factor",
            "Design factor in flight",
            "lowest_factor",
            input("wanted_factor", 10.0),
            characteristic(),
            WIRE,
            &|value| {
                format!(
                    "Lowest {value}, {place}: the {side} wire carries {planned} of {strength}; a larger \
                     wire or a softer start raises it."
                )
            },
        ),
        factor(
            "one_wire_factor",
            "Factor when one wire fails",
            "one_wire_factor",
            input("wanted_failure_factor", 3.0),
            flying_policy(),
            WIRE,
            &|value| {
                format!(
                    "{value}: if a wire fails {place}, the other takes {} of {strength} at once.",
                    force("one_wire_tension")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "emergency_factor",
                "Factor in an emergency stop",
                Subject::Figure("emergency_factor"),
                Bound::AtLeast,
                EMERGENCY,
            ),
            |held| {
                format!(
                    "{}: stopped hardest on the way down, the worse wire carries {} of {strength}; a \
                     gentler brake setting raises it.",
                    say(Quantity::Ratio, held.value),
                    force("emergency_tension")
                )
            },
        ),
        factor(
            "anchor_factor",
            "Anchor factor",
            "anchor_factor",
            2.0,
            from_memory(
                "29 CFR 1926.502",
                "(d)(15): factor 2 designed by a qualified person",
            ),
            ANCHOR,
            &|value| {
                format!(
                    "{value} on the weaker overhead point, with the wire's pull counted twice over its \
                     sheave, and the emergency stop and the failure of the other wire included."
                )
            },
        ),
    ]
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let clear = evaluation.values.number("clear_distance");
    let reach = judge(
        evaluation,
        Rule {
            name: "clearance",
            title: "Reach against the set",
            subject: Subject::Figure("swing_reach"),
            quantity: Quantity::Length,
            bound: Bound::AtMost,
            limit: clear.unwrap_or(0.0),
            source: plan(),
            blocking: true,
            reserve: RESERVE,
            needs: &[
                "performer_mass",
                "wire_length",
                "overhead_spread",
                "balance_depth",
                "clear_distance",
            ],
        },
        |held| {
            format!(
                "Hands and feet reach {} out and the nearest thing stands at {}; striking the set is the \
                 commonest hurt in flying.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, clear.unwrap_or(0.0))
            )
        },
    );
    let force = judge(
        evaluation,
        Rule {
            name: "harness_force",
            title: "Force on the body",
            subject: Subject::Figure("emergency_body_force"),
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
            needs: &[
                "performer_mass",
                "wire_length",
                "overhead_spread",
                "emergency_stop",
            ],
        },
        |held| {
            format!(
                "An emergency stop puts {} on the body through the hip picks.",
                say(Quantity::Force, held.value)
            )
        },
    );
    let balance = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "balance",
            "Balance point below the picks",
            Subject::Input("balance_depth"),
            Bound::AtLeast,
            &["balance_depth"],
        )
        .cautionary()
        .exact(),
        |held| {
            if held.value < 0.0 {
                format!(
                    "The balance point lies {} above the picks: the body turns over when it does nothing.",
                    say(Quantity::Length, -held.value)
                )
            } else {
                format!(
                    "The balance point lies {} below the picks; the body rests tilted by {}.",
                    say(Quantity::Length, held.value),
                    say(
                        Quantity::Angle,
                        evaluation.value("hang_angle").unwrap_or(0.0)
                    )
                )
            }
        },
    );
    vec![reach, force, balance]
}

fn rig(evaluation: &Evaluation) -> Vec<Check> {
    let mass = evaluation
        .values
        .ends_of("performer_mass")
        .map(|(_, heaviest)| heaviest);
    let felt = evaluation.figure("peak_felt").map(|figure| figure.high);
    let wanted = mass.zip(felt).map_or(0.0, |(mass, felt)| 1.5 * mass * felt);
    let proof = judge(
        evaluation,
        Rule {
            name: "proof_load",
            title: "Proof load of the rig",
            subject: Subject::Input("proof_load"),
            quantity: Quantity::Force,
            bound: Bound::AtLeast,
            limit: wanted,
            source: common_practice(),
            blocking: true,
            reserve: RESERVE,
            needs: &[
                "performer_mass",
                "lift_height",
                "lift_speed",
                "lift_acceleration",
                "wire_length",
                "overhead_spread",
                "balance_depth",
                "proof_load",
            ],
        },
        |held| {
            format!(
                "Tested with {}; one and a half times the highest planned load is {}.",
                say(Quantity::Force, held.value),
                say(Quantity::Force, wanted)
            )
        },
    );
    let operators = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "operators",
            "Operator and understudy",
            Subject::Input("operators"),
            Bound::AtLeast,
            &["operators"],
        )
        .exact(),
        |held| {
            format!(
                "{} trained on this flight; one operator for each flyer and an understudy make 2.",
                say(Quantity::Count, held.value)
            )
        },
    );
    let rescue = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "rescue_time",
            "Timed rescue",
            Subject::Input("rescue_time"),
            Bound::AtMost,
            &["rescue_time"],
        ),
        |held| {
            format!(
                "The drill took {} to the ground; a suspended body is brought down within 5 minutes, and \
                 not by waiting for the emergency services.",
                say(Quantity::Time, held.value)
            )
        },
    );
    vec![proof, operators, rescue]
}
