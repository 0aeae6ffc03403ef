//! What a run assist's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, judge, published},
    units::{Quantity, say},
};

/// What the rig needs, and more.
macro_rules! rig_and {
    ($($extra:literal),*) => {
        &["performer_mass", "counterweight_mass", "line_stiffness", $($extra),*]
    };
}

/// What the stride cannot be computed without.
pub(super) const NEEDED: &[&str] = rig_and!("run_speed");

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = run(evaluation);
    checks.extend(stride(evaluation));
    checks.extend(caught(evaluation));
    checks.extend(loads(evaluation));
    checks.extend(travel(evaluation));
    checks
}

fn of(evaluation: &Evaluation, name: &str, quantity: Quantity) -> String {
    evaluation
        .value(name)
        .map_or_else(String::new, |value| say(quantity, value))
}

fn run(evaluation: &Evaluation) -> Vec<Check> {
    let planned = evaluation.values.number("run_speed").unwrap_or(0.0);
    let pull = of(evaluation, "line_pull", Quantity::Force);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "relief",
                "Relief",
                Subject::Figure("relief"),
                Bound::AtMost,
                rig_and!(),
            ),
            |held| {
                format!(
                    "The counterweight takes {} of the weight with {pull}; a lighter one leaves more on the \
                     feet.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "speed",
                "Speed within reach",
                Subject::Figure("reachable_speed"),
                Quantity::Speed,
                Bound::AtLeast,
                planned,
                rig_and!("run_speed", "own_top_speed"),
            ),
            |held| {
                format!(
                    "With this relief the performer's own push is good for {}, and {} are planned; more relief \
                     allows more speed.",
                    say(Quantity::Speed, held.value),
                    say(Quantity::Speed, planned)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "swing_time",
                "Leg swing time",
                Subject::Figure("swing_time"),
                Bound::AtLeast,
                rig_and!("run_speed"),
            )
            .cautionary(),
            |held| {
                format!(
                    "{} to bring a leg forward; longer steps in the air give more.",
                    say(Quantity::Time, held.value)
                )
            },
        ),
    ]
}

fn stride(evaluation: &Evaluation) -> Vec<Check> {
    let values = &evaluation.values;
    let room = values
        .number("counterweight_travel")
        .zip(values.number("counterweight_ratio"))
        .map_or(0.0, |(travel, ratio)| travel * ratio);
    let peak = of(evaluation, "stride_peak", Quantity::Force);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "stride_least",
                "Line taut at every stride",
                Subject::Figure("stride_least"),
                Bound::AtLeast,
                rig_and!("run_speed"),
            )
            .cautionary(),
            |held| {
                format!(
                    "Over a step the line falls to {} of its steady pull and peaks at {peak}; more purchase or \
                     an elastic part evens it out.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "bounce",
                "Bounce clear of the weight's stop",
                Subject::Figure("bounce"),
                Quantity::Length,
                Bound::AtMost,
                room,
                rig_and!("run_speed", "counterweight_travel"),
            ),
            |held| {
                format!(
                    "The body rises and falls by {} at each step and the counterweight's stop leaves {}; short \
                     of that every step would meet it.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, room)
                )
            },
        ),
    ]
}

fn caught(evaluation: &Evaluation) -> Vec<Check> {
    let speed = of(evaluation, "catch_speed", Quantity::Speed);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "catch_height",
                "Catch height",
                Subject::Figure("catch_height"),
                Bound::AtLeast,
                rig_and!("counterweight_travel"),
            ),
            |held| {
                format!(
                    "A stumbling body is held with its harness point at {}; less way for the counterweight or a \
                     stiffer line holds it higher.",
                    say(Quantity::Length, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "catch_force",
                title: "Force on the body at the catch",
                subject: Subject::Figure("catch_force"),
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
                needs: rig_and!("counterweight_travel"),
            },
            |held| {
                format!(
                    "Caught at {speed} the harness takes {}; a softer line brings it down.",
                    say(Quantity::Force, held.value)
                )
            },
        ),
    ]
}

fn loads(evaluation: &Evaluation) -> Vec<Check> {
    let load = of(evaluation, "overhead_load", Quantity::Force);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "line_factor",
                "Line factor at the peak",
                Subject::Figure("line_factor"),
                Bound::AtLeast,
                rig_and!("run_speed", "counterweight_travel", "line_strength"),
            ),
            |held| {
                format!(
                    "{} on the highest pull of stride and catch; a stronger line or less way for the \
                     counterweight raises it.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "overhead_factor",
                "Overhead factor",
                Subject::Figure("overhead_factor"),
                Bound::AtLeast,
                rig_and!(
                    "run_speed",
                    "counterweight_travel",
                    "trolley_mass",
                    "overhead_strength"
                ),
            ),
            |held| {
                format!(
                    "{}: track and anchors take up to {load}.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
    ]
}

fn travel(evaluation: &Evaluation) -> Vec<Check> {
    let track = evaluation.values.number("track_length").unwrap_or(0.0);
    let stop = of(evaluation, "stop_distance", Quantity::Length);
    vec![
        judge(
            evaluation,
            Rule::planned(
                "travel",
                "Travel within the track",
                Subject::Figure("travel"),
                Quantity::Length,
                Bound::AtMost,
                track,
                rig_and!("run_speed", "shot_time", "track_length"),
            ),
            |held| {
                format!(
                    "The run takes {}, {stop} of it to stop, on a track of {}; a shorter shot or a lower speed \
                     takes less.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, track)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "grip",
                "Grip under the weight left",
                Subject::Figure("grip"),
                Bound::AtMost,
                rig_and!("run_speed", "trolley_mass", "counterweight_place"),
            ),
            |held| {
                format!(
                    "{} of what the shoes can push is used; a gentler start and stop, less relief or a lighter \
                     trolley needs less.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "clear_below",
                "Nobody below the counterweight",
                Subject::Input("clear_below"),
                Bound::AtLeast,
                &["clear_below"],
            )
            .exact(),
            |held| {
                format!(
                    "{} are fenced off round the counterweight's way.",
                    say(Quantity::Length, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "operators",
                "Operators on weight and brake",
                Subject::Input("operators"),
                Bound::AtLeast,
                &["operators"],
            )
            .exact(),
            |held| {
                format!(
                    "{} on counterweight and brake.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
    ]
}
