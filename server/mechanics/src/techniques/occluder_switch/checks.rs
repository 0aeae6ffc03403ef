//! What a switch's figures are held against. All limits here are habit, and data.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, judge},
    units::{Quantity, say},
};

/// Everything the geometry needs.
pub(super) const SHOT: &[&str] = &[
    "focal_length",
    "sensor_width",
    "occluder_distance",
    "occluder_offset",
    "occluder_width",
    "occluder_height",
    "actor_start_across",
    "actor_start_away",
    "actor_end_across",
    "actor_end_away",
    "actor_speed",
    "double_start_across",
    "double_start_away",
    "double_end_across",
    "double_end_away",
    "double_speed",
    "double_cue",
    "shot_length",
];
const EXCHANGE: &[&str] = &[
    "focal_length",
    "sensor_width",
    "occluder_distance",
    "occluder_offset",
    "occluder_width",
    "occluder_height",
    "actor_start_across",
    "actor_start_away",
    "actor_end_across",
    "actor_end_away",
    "actor_speed",
    "double_start_across",
    "double_start_away",
    "double_end_across",
    "double_end_away",
    "double_speed",
    "double_cue",
    "shot_length",
    "rehearsed_exchange",
];

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
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
    let length = |value| say(Quantity::Length, value);
    let time = |value| say(Quantity::Time, value);
    let window = evaluation
        .value("hidden_window")
        .map_or_else(String::new, time);
    let exchange = evaluation
        .values
        .number("rehearsed_exchange")
        .map_or_else(String::new, time);
    let wanted = |name: &str| {
        evaluation
            .policies
            .get(name)
            .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
    };
    vec![
        judge(
            evaluation,
            policy(
                "exchange_margin",
                "Margin over the exchange",
                "exchange_margin",
                Bound::AtLeast,
                EXCHANGE,
            ),
            |held| {
                format!(
                    "Both are hidden for {window} and the exchange took {exchange} at rehearsal, which leaves {}; \
                     a wider occluder, a slower camera or a later cue gives more than the {} wanted.",
                    time(held.value),
                    wanted("exchange_margin")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "both_hidden",
                "Nobody seen who should be hidden",
                "stray_time",
                Bound::AtMost,
                SHOT,
            )
            .exact(),
            |held| {
                format!(
                    "One of the two is in the picture for {} when only the other should be; move the mark or \
                     the wait deeper behind the occluder, or shorten the camera's move.",
                    time(held.value)
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "frame",
                "Edges inside the frame",
                "frame_margin",
                Bound::AtLeast,
                SHOT,
            ),
            |held| {
                format!(
                    "At the least {} of the picture's width is left beside the one who goes or comes; {} is \
                     wanted, so pan, widen the lens or move the occluder.",
                    percent(held.value),
                    percent(evaluation.policies.get("frame").map_or(0.0, |p| p.value))
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "passing_room",
                "Room between the two",
                "closest_approach",
                Bound::AtLeast,
                SHOT,
            ),
            |held| {
                format!(
                    "The two come within {} of each other out of everybody's sight; {} is wanted, so part their \
                     paths or cue the double later.",
                    length(held.value),
                    wanted("passing_room")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "room_behind",
                "Room behind the occluder",
                "clearance_behind",
                Bound::AtLeast,
                SHOT,
            ),
            |held| {
                format!(
                    "A body passes the occluder's back with {} to spare; {} is wanted, so take the path further \
                     back.",
                    length(held.value),
                    wanted("room_behind")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "stop_room",
                "Room to stop out of sight",
                "stop_room",
                Bound::AtLeast,
                SHOT,
            ),
            |held| {
                format!(
                    "After stopping the actor has {} left to the mark; {} is wanted, so move the mark on or slow \
                     the entry, and pad what stands behind it.",
                    length(held.value),
                    wanted("stop_room")
                )
            },
        ),
    ]
}

/// A share as people say it.
fn percent(share: f64) -> String {
    format!("{:.1} %", 100.0 * share)
}
