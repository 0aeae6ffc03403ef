//! What a motorcycle jump's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, judge},
    units::{Quantity, say},
};

/// What the flight needs, and more.
macro_rules! jump_and {
    ($($extra:literal),*) => {
        &[
            "performer_mass", "motorcycle_mass", "takeoff_speed", "takeoff_angle", "lip_height", "gap",
            "landing_edge_height", "landing_angle", "landing_length", $($extra),*
        ]
    };
}

pub(super) const JUMP: &[&str] = jump_and!();

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = flight(evaluation);
    checks.extend(landing(evaluation));
    checks.extend(ground(evaluation));
    checks
}

fn length(value: f64) -> String {
    say(Quantity::Length, value)
}

fn known(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .figure(name)
        .map_or_else(String::new, |figure| say(figure.quantity, figure.value))
}

fn wanted(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .policies
        .get(name)
        .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn flight(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let margin = input("edge_margin");
    let speed = |name| {
        evaluation
            .value(name)
            .map_or_else(|| "no speed".to_owned(), |v| say(Quantity::Speed, v))
    };
    let (slow, fast) = (speed("speed_low"), speed("speed_high"));
    let edge = |name, title, which: &'static str| {
        judge(
            evaluation,
            Rule::planned(
                name,
                title,
                Subject::Figure(name),
                Quantity::Length,
                Bound::AtLeast,
                margin,
                JUMP,
            ),
            |held| {
                format!(
                    "The landing is {} from the {which} edge, {} at the worst of the tolerances; {} is wanted, and \
                     take-off from {slow} to {fast} gives it.",
                    length(held.value),
                    length(held.low),
                    length(margin)
                )
            },
        )
    };
    vec![
        edge("near_spare", "Spare at the near edge", "near"),
        edge("far_spare", "Spare at the far edge", "far"),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "speed_window",
                "Take-off window",
                Subject::Figure("speed_window"),
                Bound::AtLeast,
                JUMP,
            ),
            |held| {
                format!(
                    "Take-off may lie anywhere within {} in all, from {slow} to {fast}; {} is wanted, and a longer \
                     landing widens it.",
                    say(Quantity::Speed, held.value),
                    wanted(evaluation, "speed_window")
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "miss_probability",
                "Chance to miss the landing",
                Subject::Figure("miss_probability"),
                Quantity::Ratio,
                Bound::AtMost,
                input("accepted_miss"),
                JUMP,
            ),
            |held| {
                format!(
                    "The chance is {} with landings spread by {}; {} is accepted, so aim at the middle or hold the \
                     speed closer.",
                    say(Quantity::Ratio, held.value),
                    known(evaluation, "landing_spread"),
                    say(Quantity::Ratio, input("accepted_miss"))
                )
            },
        ),
    ]
}

fn landing(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let policy = |name, title, bound, needs| {
        Rule::policy(evaluation, name, title, Subject::Figure(name), bound, needs)
    };
    // Half the landing, less half a handlebar.
    let side = 0.5 * input("landing_width") - 0.4;
    let least_side = 0.5 * least(evaluation, "landing_width") - 0.4;
    vec![
        judge(
            evaluation,
            policy(
                "equivalent_fall",
                "Equivalent fall height",
                Bound::AtMost,
                JUMP,
            ),
            |held| {
                format!(
                    "The landing is met as hard as a drop of {} onto the level, {} at the worst; {} is the habit, and \
                     a slope nearer to the path softens it.",
                    length(held.value),
                    length(held.high),
                    wanted(evaluation, "equivalent_fall")
                )
            },
        ),
        judge(
            evaluation,
            policy("landing_felt", "Mean felt at landing", Bound::AtMost, JUMP).cautionary(),
            |held| {
                format!(
                    "{} on the mean over suspension and legs; more travel or a softer landing lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "ramp_felt",
                "Felt on the ramp",
                Bound::AtMost,
                jump_and!("ramp_radius"),
            )
            .cautionary(),
            |held| {
                format!(
                    "The ramp presses with {}; over {} suspension bottoms out, so a wider curve is wanted.",
                    say(Quantity::Acceleration, held.value),
                    wanted(evaluation, "ramp_felt")
                )
            },
        ),
        turned(
            evaluation,
            "turn_past",
            "Turned past the slope",
            Bound::AtMost,
        ),
        turned(
            evaluation,
            "turn_short",
            "Turned short of the slope",
            Bound::AtLeast,
        ),
        judge(
            evaluation,
            Rule::planned(
                "drift",
                "Drift against the landing's width",
                Subject::Figure("drift"),
                Quantity::Length,
                Bound::AtMost,
                side,
                jump_and!("crosswind", "landing_width"),
            )
            .at_poorest(least_side),
            |held| {
                format!(
                    "Wind across at its limit carries the jump {} aside, {} at the worst, where {} are left beside \
                     the handlebars, {} at the least.",
                    length(held.value),
                    length(held.high),
                    length(side),
                    length(least_side)
                )
            },
        ),
    ]
}

/// How far the turn given is off the turn needed, as one figure, because most of what moves one moves the other; and a
/// turn needed of nothing leaves no limit to keep a share of.
fn turned(evaluation: &Evaluation, name: &'static str, title: &'static str, bound: Bound) -> Check {
    let rule = Rule::policy(
        evaluation,
        name,
        title,
        Subject::Figure("turn_off"),
        bound,
        jump_and!("ramp_radius", "rider_turn_rate"),
    );
    let off = rule.limit;
    let angle = |value| say(Quantity::Angle, value);
    let given = evaluation.figure("turn_given");
    judge(evaluation, rule, |_| {
        format!(
            "Ramp and rider turn the motorcycle {}, {} to {} within the tolerances, where {} meet the slope; it may \
             be off by {}, and {} are needed of which the ramp gives {}.",
            given.map_or_else(String::new, |given| angle(given.value)),
            given.map_or_else(String::new, |given| angle(given.low)),
            given.map_or_else(String::new, |given| angle(given.high)),
            known(evaluation, "turn_needed"),
            angle(off),
            known(evaluation, "turn_rate_needed"),
            known(evaluation, "ramp_turn_rate")
        )
    })
}

/// The low end of an input's tolerance.
fn least(evaluation: &Evaluation, name: &str) -> f64 {
    evaluation.values.ends_of(name).map_or(0.0, |(low, _)| low)
}

fn ground(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "crosswind",
                "Crosswind limit",
                Subject::Input("crosswind"),
                Bound::AtMost,
                &["crosswind"],
            )
            .exact(),
            |held| {
                format!(
                    "The jump may go in {} across, gusts included; {} is the habit.",
                    say(Quantity::Speed, held.value),
                    wanted(evaluation, "crosswind")
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "in_run",
                "Length of the in-run",
                Subject::Figure("in_run_needed"),
                Quantity::Length,
                Bound::AtMost,
                input("in_run"),
                &["takeoff_speed", "in_run_acceleration", "in_run"],
            )
            .at_poorest(least(evaluation, "in_run")),
            |held| {
                format!(
                    "{} are needed to gather speed and read it, {} at the worst; {} are clear, {} at the least.",
                    length(held.value),
                    length(held.high),
                    length(input("in_run")),
                    length(least(evaluation, "in_run"))
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "run_out",
                "Length of the run-out",
                Subject::Figure("run_out_needed"),
                Quantity::Length,
                Bound::AtMost,
                input("run_out"),
                jump_and!("run_out"),
            )
            .at_poorest(least(evaluation, "run_out")),
            |held| {
                format!(
                    "Braking from the landing takes {}, {} at the worst; {} are clear, {} at the least.",
                    length(held.value),
                    length(held.high),
                    length(input("run_out")),
                    length(least(evaluation, "run_out"))
                )
            },
        ),
    ]
}
