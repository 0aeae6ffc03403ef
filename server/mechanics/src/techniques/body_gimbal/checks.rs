//! What a body gimbal's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, judge},
    units::{Quantity, say},
};

/// What every figure needs, and more.
macro_rules! turn_and {
    ($($extra:literal),*) => {
        &[
            "performer_mass", "turn_rate", "mass_offset", "cradle_mass", "cradle_gyration",
            "counterweight_arm", $($extra),*
        ]
    };
}

/// What the turn itself cannot be computed without.
pub(super) const NEEDED: &[&str] = turn_and!();

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = body(evaluation);
    checks.extend(rig(evaluation));
    checks.extend(stand(evaluation));
    checks
}

fn shown(evaluation: &Evaluation, name: &str, quantity: Quantity) -> String {
    evaluation
        .value(name)
        .map_or_else(String::new, |value| say(quantity, value))
}

fn rate(evaluation: &Evaluation) -> String {
    let rate = evaluation.values.number("turn_rate");
    rate.map_or_else(String::new, |rate| say(Quantity::Rotation, rate))
}

fn limit(evaluation: &Evaluation, name: &str) -> String {
    let policy = evaluation.policies.get(name);
    policy.map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let rate = rate(evaluation);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "turn_rate",
                "Turn rate that nobody bears",
                Subject::Input("turn_rate"),
                Bound::AtMost,
                &["turn_rate"],
            ),
            |held| {
                format!(
                    "Planned at {}, up to {} within the tolerance; head over heels at {} is not borne by \
                     people without training.",
                    say(Quantity::Rotation, held.value),
                    say(Quantity::Rotation, held.high),
                    limit(evaluation, "turn_rate")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "planned_rate",
                "Turn rate by habit",
                Subject::Input("turn_rate"),
                Bound::AtMost,
                &["turn_rate"],
            ),
            |held| {
                format!(
                    "{} where {} is the habit; turn the camera faster rather than the performer.",
                    say(Quantity::Rotation, held.value),
                    limit(evaluation, "planned_rate")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "time_turning",
                "Time turning in one go",
                Subject::Figure("time_turning"),
                Bound::AtMost,
                turn_and!("turn_time", "drive_torque", "brake_torque"),
            ),
            |held| {
                format!(
                    "{} of turning fast enough to make sick, up and down included; a shorter take or two \
                     takes with a rest bring it under {}.",
                    say(Quantity::Time, held.value),
                    limit(evaluation, "time_turning")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "head_down",
                "Blood driven to the head",
                Subject::Figure("head_down"),
                Bound::AtMost,
                NEEDED,
            ),
            |held| {
                format!(
                    "At {rate} the head feels {} when it is down; a slower turn or an axis nearer the head \
                     lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "head_stopping",
                "Head as it stops",
                Subject::Figure("head_stopping"),
                Bound::AtMost,
                turn_and!("brake_torque"),
            ),
            |held| {
                format!(
                    "Braked from {rate} head down the head feels {}; a softer brake lowers it and takes \
                     longer.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
    ]
}

fn rig(evaluation: &Evaluation) -> Vec<Check> {
    let offset = shown(evaluation, "offset_torque", Quantity::Torque);
    let wanted = shown(evaluation, "counterweight_wanted", Quantity::Mass);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "drive_factor",
                "Drive over the offset",
                Subject::Figure("drive_factor"),
                Bound::AtLeast,
                turn_and!("drive_torque"),
            ),
            |held| {
                format!(
                    "{}: the offset pulls back with up to {offset}; {wanted} of counterweight in all would \
                     balance it.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "brake_factor",
                "Brake over the offset",
                Subject::Figure("brake_factor"),
                Bound::AtLeast,
                turn_and!("brake_torque"),
            ),
            |held| {
                format!(
                    "{}: the brake must hold the performer wherever it stops, against up to {offset}.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "stop_angle",
                "Turned while stopping",
                Subject::Figure("stop_angle"),
                Bound::AtMost,
                turn_and!("brake_torque"),
            ),
            |held| {
                format!(
                    "It turns on by {} in {} after the brake bites; more brake, better balance or a slower \
                     turn shortens that.",
                    say(Quantity::Angle, held.value),
                    shown(evaluation, "stop_time", Quantity::Time)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "prong_factor",
                "Prong factor",
                Subject::Figure("prong_factor"),
                Bound::AtLeast,
                turn_and!("drive_torque", "brake_torque", "prong_strength"),
            ),
            |held| {
                format!(
                    "{}: the worse prong carries {}; a stronger prong or a body in the middle raises it.",
                    say(Quantity::Ratio, held.value),
                    shown(evaluation, "prong_load", Quantity::Force)
                )
            },
        ),
    ]
}

fn stand(evaluation: &Evaluation) -> Vec<Check> {
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "tipping_factor",
                "Stand against tipping",
                Subject::Figure("tipping_factor"),
                Bound::AtLeast,
                turn_and!(
                    "drive_torque",
                    "brake_torque",
                    "pivot_height",
                    "stand_mass",
                    "tipping_edge"
                ),
            ),
            |held| {
                format!(
                    "{}: up to {} try to turn the stand over; ballast, wider feet or better balance raises \
                     it.",
                    say(Quantity::Ratio, held.value),
                    shown(evaluation, "overturning", Quantity::Torque)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "floor_gap",
                "Gap to the floor",
                Subject::Figure("floor_gap"),
                Bound::AtLeast,
                turn_and!("drive_torque", "brake_torque", "pivot_height"),
            ),
            |held| {
                format!(
                    "{} are left under the furthest part that turns, where {} are wanted; raise the axis.",
                    say(Quantity::Length, held.value),
                    limit(evaluation, "floor_gap")
                )
            },
        ),
    ]
}
