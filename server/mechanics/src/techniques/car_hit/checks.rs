//! What the two passes are held against: checks, limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, common_practice, judge, published},
    units::{Quantity, say},
};

const CONTACT: &[&str] = &["approach_speed", "run_in", "friction"];

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = passes(evaluation);
    checks.extend(car(evaluation));
    checks.extend(body(evaluation));
    checks
}

fn wanted(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .policies
        .get(name)
        .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn length(value: f64) -> String {
    say(Quantity::Length, value)
}

fn passes(evaluation: &Evaluation) -> Vec<Check> {
    let policy = |name, title, figure, bound, needs| {
        Rule::policy(
            evaluation,
            name,
            title,
            Subject::Figure(figure),
            bound,
            needs,
        )
    };
    vec![
        judge(
            evaluation,
            Rule::planned(
                "both_live",
                "Never both live",
                Subject::Figure("people_before_car"),
                Quantity::Count,
                Bound::AtMost,
                0.0,
                &["passes"],
            )
            .by(common_practice())
            .exact(),
            |held| {
                format!(
                    "{} people stand before a car that runs; by lock-off the car and the performer are shot apart, \
                     and anything else needs a plan of its own.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "time_gap",
                "Time between the passes",
                "time_gap",
                Bound::AtLeast,
                &[
                    "passes",
                    "performer_start",
                    "car_pass_length",
                    "performer_pass_length",
                ],
            ),
            |held| {
                format!(
                    "{} lie between the end of one pass and the start of the other; {} are wanted to clear the place \
                     and say so.",
                    say(Quantity::Time, held.value),
                    wanted(evaluation, "time_gap")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "space_gap",
                "Room to the parked car",
                "space_gap",
                Bound::AtLeast,
                &[
                    "performer_mass",
                    "release_speed",
                    "pull_travel",
                    "car_parked",
                ],
            ),
            |held| {
                format!(
                    "The parked car stands {} from the furthest place of the pull; {} is wanted, so park it further \
                     away.",
                    length(held.value),
                    wanted(evaluation, "space_gap")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "registration",
                "Contact in step",
                "registration",
                Bound::AtMost,
                &["approach_speed", "run_in", "friction", "trigger"],
            )
            .cautionary(),
            |held| {
                format!(
                    "As laid, contact and first movement are {} frames apart; slip the performer's plate by {} \
                     frames.",
                    say(Quantity::Ratio, held.value),
                    evaluation
                        .value("slip_needed")
                        .map_or_else(String::new, |v| say(Quantity::Ratio, v))
                )
            },
        ),
    ]
}

fn car(evaluation: &Evaluation) -> Vec<Check> {
    let speed = |name| {
        evaluation
            .value(name)
            .map_or_else(String::new, |v| say(Quantity::Speed, v))
    };
    let throws = ["throw_least", "throw_most"]
        .map(|name| evaluation.value(name).map_or_else(String::new, length));
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "stop_gap",
                "Room past the car's stop",
                Subject::Figure("stop_gap"),
                Bound::AtLeast,
                &["approach_speed", "run_in", "friction", "camera_distance"],
            ),
            |held| {
                format!(
                    "The car rests {} short of the first person or camera, {} at the worst of the tolerances; {} is \
                     wanted.",
                    length(held.value),
                    length(held.low),
                    wanted(evaluation, "stop_gap")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "throw_miss",
                "Throw the audience believes",
                Subject::Figure("throw_miss"),
                Bound::AtMost,
                &[
                    "performer_mass",
                    "car_mass",
                    "approach_speed",
                    "run_in",
                    "friction",
                    "thrown_distance",
                ],
            )
            .cautionary()
            .exact(),
            |held| {
                format!(
                    "At {} a body is thrown {} to {}; the picture is {} outside that, so change the throw or the \
                     car's speed and not the other way about with people.",
                    speed("contact_speed"),
                    throws[0],
                    throws[1],
                    length(held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "contact_speed",
                "Car's speed at the contact mark",
                Subject::Figure("contact_speed"),
                Bound::AtMost,
                CONTACT,
            )
            .cautionary(),
            |held| {
                format!(
                    "The car passes the mark at {}; over {} a slower car shot at fewer frames looks the same.",
                    say(Quantity::Speed, held.value),
                    wanted(evaluation, "contact_speed")
                )
            },
        ),
    ]
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "pull_acceleration",
                "Mean pull on the body",
                Subject::Figure("pull_acceleration"),
                Bound::AtMost,
                &["release_speed", "pull_travel"],
            ),
            |held| {
                format!(
                    "{} on the mean over the pull; a longer travel or less speed lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "pads_far",
                "Landing before the far edge",
                Subject::Figure("landing_distance"),
                Quantity::Length,
                Bound::AtMost,
                input("pad_far") - super::two_passes::BODY,
                &["performer_mass", "release_speed", "pull_travel", "pad_far"],
            ),
            |held| {
                format!(
                    "The body's middle lands at {}, up to {} within the tolerances, on pads that end at {}; a body \
                     needs 1 m of them beyond its middle.",
                    length(held.value),
                    length(held.high),
                    length(input("pad_far"))
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "pads_near",
                "Landing past the near edge",
                Subject::Figure("landing_distance"),
                Quantity::Length,
                Bound::AtLeast,
                input("pad_near") + super::two_passes::BODY,
                &["performer_mass", "release_speed", "pull_travel", "pad_near"],
            ),
            |held| {
                format!(
                    "The body's middle lands at {}, as little as {} within the tolerances, on pads that begin at {}; \
                     a body needs 1 m of them before its middle.",
                    length(held.value),
                    length(held.low),
                    length(input("pad_near"))
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "head_criterion",
                "Head injury criterion, landing",
                Subject::Figure("head_criterion"),
                Quantity::Ratio,
                Bound::AtMost,
                700.0,
                &["performer_mass", "release_speed", "pull_travel", "pad_stop"],
            )
            .by(published(
                "49 CFR 571.208",
                "S6.2: HIC15 at most 700",
                Some("United States"),
            )),
            |held| {
                format!(
                    "{} with a peak of {} in the pads, the head moving with the body; deeper pads lower it.",
                    say(Quantity::Ratio, held.value),
                    evaluation
                        .value("landing_peak")
                        .map_or_else(String::new, |v| say(Quantity::Acceleration, v))
                )
            },
        ),
    ]
}
