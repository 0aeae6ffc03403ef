//! What a slide-in's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, judge},
    units::{Quantity, say},
};

/// What the run itself needs.
macro_rules! run_and {
    ($($extra:literal),*) => {
        &["approach_speed", "slide_speed", $($extra),*]
    };
}

pub(super) const RUN: &[&str] = run_and!("friction_dry", "friction_wet", "surface_state");
const DRY: &[&str] = run_and!(
    "friction_dry",
    "mark_distance",
    "people_distance",
    "car_length",
    "car_width"
);
const WET: &[&str] = run_and!(
    "friction_wet",
    "mark_distance",
    "people_distance",
    "car_length",
    "car_width"
);
const PASS_DRY: &[&str] = run_and!("friction_dry", "mark_distance");
const PASS_WET: &[&str] = run_and!("friction_wet", "mark_distance");

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let length = |value| say(Quantity::Length, value);
    let ratio = |value| say(Quantity::Ratio, value);
    let known = |name| evaluation.value(name).map_or_else(String::new, length);
    let wanted = |name: &str| {
        evaluation
            .policies
            .get(name)
            .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
    };
    let mut checks = Vec::new();
    for (name, title, spread, gap, surface, needs) in [
        (
            "reach_dry",
            "Chance to reach people, dry",
            "spread_dry",
            "gap_dry",
            "dry",
            DRY,
        ),
        (
            "reach_wet",
            "Chance to reach people, wet",
            "spread_wet",
            "gap_wet",
            "wet",
            WET,
        ),
    ] {
        checks.push(judge(
            evaluation,
            Rule::planned(name, title, Subject::Figure(name), Quantity::Ratio, Bound::AtMost, input("accepted_reach"), needs),
            |held| {
                format!(
                    "On the {surface} surface the chance is {} with {} of gap and a spread of {}; {} is accepted, so \
                     move the people back, slow down or brake earlier.",
                    ratio(held.value), known(gap), known(spread), ratio(input("accepted_reach"))
                )
            },
        ));
    }
    for (name, title, surface, needs) in [
        ("gap_dry", "Gap to people, dry", "dry", DRY),
        ("gap_wet", "Gap to people, wet", "wet", WET),
    ] {
        checks.push(judge(
            evaluation,
            Rule::policy(evaluation, name, title, Subject::Figure(name), Bound::AtLeast, needs),
            |held| {
                format!(
                    "The car rests {} from the people on the {surface} surface, as little as {} within the \
                     tolerances; {} is wanted.",
                    length(held.value), length(held.low), wanted(name)
                )
            },
        ));
    }
    for (name, title, spread, surface, needs) in [
        (
            "pass_dry",
            "Chance past the mark, dry",
            "spread_dry",
            "dry",
            PASS_DRY,
        ),
        (
            "pass_wet",
            "Chance past the mark, wet",
            "spread_wet",
            "wet",
            PASS_WET,
        ),
    ] {
        checks.push(judge(
            evaluation,
            Rule::planned(name, title, Subject::Figure(name), Quantity::Ratio, Bound::AtMost, input("accepted_pass"), needs)
                .cautionary(),
            |held| {
                format!(
                    "On the {surface} surface {} of runs end more than {} past the mark, with a spread of {}; move \
                     the brake mark back for this surface.",
                    ratio(held.value), length(input("mark_allowance")), known(spread)
                )
            },
        ));
    }
    let room = input("mark_distance") + input("people_distance");
    let least_room = least(evaluation, "mark_distance") + least(evaluation, "people_distance");
    checks.push(judge(
        evaluation,
        Rule::planned(
            "abort_room", "Room to stop on an abort", Subject::Figure("abort_distance"), Quantity::Length,
            Bound::AtMost, room,
            &["approach_speed", "friction_dry", "friction_wet", "mark_distance", "people_distance", "car_length"],
        )
        .at_poorest(least_room),
        |held| {
            format!(
                "A call at the brake mark stops the car with its nose {} on, up to {} within the tolerances; the \
                 people are {} on, {} at the least, so a later call comes too late.",
                length(held.value), length(held.high), length(room), length(least_room)
            )
        },
    ));
    checks.push(judge(
        evaluation,
        Rule::planned(
            "side_room", "Clear ground to the side", Subject::Figure("side_reach"), Quantity::Length,
            Bound::AtMost, input("corridor_half_width"),
            run_and!("friction_dry", "friction_wet", "car_length", "car_width", "corridor_half_width"),
        )
        .at_poorest(least(evaluation, "corridor_half_width")),
        |held| {
            format!(
                "The car reaches {} to the side, up to {} within the tolerances, where {} are clear, {} at the least.",
                length(held.value), length(held.high), length(input("corridor_half_width")),
                length(least(evaluation, "corridor_half_width"))
            )
        },
    ));
    checks.push(judge(
        evaluation,
        Rule::policy(
            evaluation, "tipping_margin", "Margin against tipping", Subject::Figure("tipping_margin"),
            Bound::AtLeast, &["track", "centre_height", "friction_dry", "friction_wet"],
        ),
        |held| {
            format!(
                "{}: the car tips at that many times its tyres' grip on level ground; {} is wanted, because a kerb \
                 or a rut trips it sooner.",
                ratio(held.value), wanted("tipping_margin")
            )
        },
    ));
    checks.push(judge(
        evaluation,
        Rule::policy(
            evaluation,
            "friction_claim",
            "Friction that is counted on",
            Subject::Input("friction_dry"),
            Bound::AtMost,
            &["friction_dry"],
        )
        .cautionary()
        .exact(),
        |held| {
            format!(
                "{} is counted on; more than {} is rarely measured on a road, so measure it again.",
                ratio(held.value),
                wanted("friction_claim")
            )
        },
    ));
    let heading = evaluation
        .value("heading")
        .map_or_else(String::new, |v| say(Quantity::Angle, v));
    let short = evaluation
        .policies
        .get("heading")
        .map_or(f64::NAN, |policy| -policy.value);
    for (name, title, bound) in [
        ("heading", "Turned past the wanted heading", Bound::AtMost),
        (
            "heading_short",
            "Turned short of the wanted heading",
            Bound::AtLeast,
        ),
    ] {
        // Both sides are held to the one limit, because a middle would hide the end that is far off.
        let rule = Rule::policy(
            evaluation,
            "heading",
            title,
            Subject::Figure("heading_miss"),
            bound,
            RUN,
        )
        .cautionary();
        let limit = if bound == Bound::AtLeast {
            short
        } else {
            rule.limit
        };
        checks.push(judge(evaluation, Rule { name, limit, ..rule }, |held| {
            format!(
                "The car rests turned by {heading}, {} off what is wanted, {} to {} within the tolerances; more speed \
                 at the hand brake or more steering turns it further.",
                say(Quantity::Angle, held.value),
                say(Quantity::Angle, held.low),
                say(Quantity::Angle, held.high)
            )
        }));
    }
    checks
}

/// The low end of an input's tolerance.
fn least(evaluation: &Evaluation, name: &str) -> f64 {
    evaluation.values.ends_of(name).map_or(0.0, |(low, _)| low)
}
