//! What a pod car's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Held, Rule, Subject, judge, published},
    models::GRAVITY,
    units::{Quantity, say},
};

/// What the whole's middle needs, and more.
macro_rules! rig_and {
    ($($extra:literal),*) => {
        &[
            "performer_mass", "pod_mass", "pod_centre_height", "pod_place", "car_mass", "centre_height",
            "front_share", "wheelbase", $($extra),*
        ]
    };
}

pub(super) const RIG: &[&str] = rig_and!();
const BEND: &[&str] = rig_and!("track", "bend_radius", "bend_speed");
const BEND_GRIP: &[&str] = rig_and!("track", "bend_radius", "bend_speed", "friction");
pub(super) const SWERVE: &[&str] = rig_and!("track", "friction", "top_speed", "swerve_length");
/// What holds the pod, and more.
macro_rules! mounts_and {
    ($($extra:literal),*) => {
        &[
            "performer_mass", "pod_mass", "mount_height", "mounts", "mount_length", "mount_width",
            "mount_strength", $($extra),*
        ]
    };
}
const MOUNTS: &[&str] = mounts_and!();
const MOUNT_FACTOR: &[&str] = mounts_and!(
    "pod_centre_height",
    "pod_place",
    "car_mass",
    "centre_height",
    "front_share",
    "wheelbase",
    "track",
    "brakes_alone",
    "friction",
    "top_speed",
    "bend_radius",
    "bend_speed",
    "swerve_length"
);

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = tipping(evaluation);
    checks.extend(axles(evaluation));
    checks.extend(stopping(evaluation));
    checks.extend(pod(evaluation));
    checks
}

fn length(value: f64) -> String {
    say(Quantity::Length, value)
}

fn ratio(value: f64) -> String {
    say(Quantity::Ratio, value)
}

fn pull(value: f64) -> String {
    say(Quantity::Acceleration, value)
}

fn known(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .figure(name)
        .map_or_else(String::new, |figure| say(figure.quantity, figure.value))
}

fn input(evaluation: &Evaluation, name: &str) -> f64 {
    evaluation.values.number(name).unwrap_or(0.0)
}

fn wanted(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .policies
        .get(name)
        .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn habit(
    evaluation: &Evaluation,
    name: &'static str,
    title: &'static str,
    bound: Bound,
    needs: &'static [&'static str],
) -> Rule {
    Rule::policy(evaluation, name, title, Subject::Figure(name), bound, needs)
}

fn tipping(evaluation: &Evaluation) -> Vec<Check> {
    let known = |name| known(evaluation, name);
    let wanted = |name| wanted(evaluation, name);
    let habit = |name, title, bound, needs| habit(evaluation, name, title, bound, needs);
    vec![
        judge(
            evaluation,
            habit(
                "rollover_margin",
                "Margin against rolling over",
                Bound::AtLeast,
                BEND,
            ),
            |held| {
                format!(
                    "{}, {} at the worst of the tolerances, where {} is wanted: the bend pulls {} and {} tip the car, \
                     so slow down or lower the pod.",
                    ratio(held.value),
                    ratio(held.low),
                    wanted("rollover_margin"),
                    known("bend_pull"),
                    known("tipping_pull")
                )
            },
        ),
        judge(
            evaluation,
            habit(
                "slide_margin",
                "Slides before it tips",
                Bound::AtLeast,
                rig_and!("track", "friction"),
            ),
            |held| {
                format!(
                    "The car tips at {} times the road's grip, {} at the worst; {} is wanted, so lower the pod or \
                     widen the track.",
                    ratio(held.value),
                    ratio(held.low),
                    wanted("slide_margin")
                )
            },
        ),
        judge(
            evaluation,
            habit(
                "bend_pull",
                "Sideways pull in the bend",
                Bound::AtMost,
                BEND,
            )
            .cautionary(),
            |held| {
                format!(
                    "The people aboard feel {} in the bend, up to {}; {} is the habit.",
                    pull(held.value),
                    pull(held.high),
                    wanted("bend_pull")
                )
            },
        ),
        judge(
            evaluation,
            habit(
                "bend_grip",
                "Share of grip in the bend",
                Bound::AtMost,
                BEND_GRIP,
            ),
            |held| {
                format!(
                    "The bend takes {} of the grip, up to {}; {} is the most wanted, so slow down or wait for a dry \
                     road.",
                    ratio(held.value),
                    ratio(held.high),
                    wanted("bend_grip")
                )
            },
        ),
        judge(
            evaluation,
            habit(
                "swerve_grip",
                "Share of grip in the swerve",
                Bound::AtMost,
                &["top_speed", "swerve_length", "friction"],
            ),
            |held| {
                format!(
                    "At top speed the swerve takes {} of the grip, up to {}; {} is the most wanted, so leave it more \
                     road or go slower.",
                    ratio(held.value),
                    ratio(held.high),
                    wanted("swerve_grip")
                )
            },
        ),
        judge(
            evaluation,
            habit(
                "swerve_lift",
                "Load off the inner wheels",
                Bound::AtMost,
                SWERVE,
            ),
            |held| {
                format!(
                    "The swerve takes {} of their load off the inner wheels, up to {} with the lean's own swing; {} is \
                     the most wanted.",
                    ratio(held.value),
                    ratio(held.high),
                    wanted("swerve_lift")
                )
            },
        ),
    ]
}

fn axles(evaluation: &Evaluation) -> Vec<Check> {
    let mass = |value| say(Quantity::Mass, value);
    let plate = |name, title, rating, needs, detail: fn(&str, &str, &str) -> String| {
        let limit = input(evaluation, rating);
        judge(
            evaluation,
            Rule::planned(
                name,
                title,
                Subject::Figure(name),
                Quantity::Mass,
                Bound::AtMost,
                limit,
                needs,
            )
            .exact(),
            |held: &Held| detail(&mass(held.value), &mass(held.high), &mass(limit)),
        )
    };
    vec![
        plate(
            "total_mass",
            "Gross weight on the plate",
            "gross_rating",
            rig_and!("gross_rating"),
            |value, high, limit| {
                format!("The whole comes to {value}, up to {high}; the plate allows {limit}.")
            },
        ),
        plate(
            "front_load",
            "Front axle on the plate",
            "front_rating",
            rig_and!("front_rating"),
            |value, high, limit| {
                format!(
                    "The front axle carries {value}, up to {high}, and the plate allows {limit}: move the pod back."
                )
            },
        ),
        plate(
            "rear_load",
            "Rear axle on the plate",
            "rear_rating",
            rig_and!("rear_rating"),
            |value, high, limit| {
                format!(
                    "The rear axle carries {value}, up to {high}, and the plate allows {limit}: move the pod forward."
                )
            },
        ),
        judge(
            evaluation,
            habit(
                evaluation,
                "front_share_loaded",
                "Weight left to steer with",
                Bound::AtLeast,
                RIG,
            ),
            |held| {
                format!(
                    "{} of the weight stands on the front wheels, {} at the worst; {} is wanted, so move the pod \
                     forward or put ballast in front.",
                    ratio(held.value),
                    ratio(held.low),
                    wanted(evaluation, "front_share_loaded")
                )
            },
        ),
    ]
}

fn stopping(evaluation: &Evaluation) -> Vec<Check> {
    let known = |name| known(evaluation, name);
    let (room, sight) = (
        input(evaluation, "clear_road"),
        input(evaluation, "sight_ahead"),
    );
    vec![
        judge(
            evaluation,
            Rule::planned(
                "stop_distance",
                "Room to stop, loaded",
                Subject::Figure("stop_distance"),
                Quantity::Length,
                Bound::AtMost,
                room,
                rig_and!("brakes_alone", "friction", "top_speed", "clear_road"),
            ),
            |held| {
                format!(
                    "From top speed the loaded car stops in {}, up to {}, at {} of braking; {} of road are clear.",
                    length(held.value),
                    length(held.high),
                    known("braking"),
                    length(room)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "stop_in_sight",
                "Stops within sight",
                Subject::Figure("stop_distance"),
                Quantity::Length,
                Bound::AtMost,
                sight,
                rig_and!("brakes_alone", "friction", "top_speed", "sight_ahead"),
            ),
            |held| {
                format!(
                    "The pod driver sees {} ahead and needs {}, up to {}, to stop.",
                    length(sight),
                    length(held.value),
                    length(held.high)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "road_sight",
                "Sight that roads are designed for",
                Subject::Figure("road_sight"),
                Quantity::Length,
                Bound::AtMost,
                sight,
                &["top_speed", "sight_ahead"],
            )
            .by(published(
                "AASHTO, A Policy on Geometric Design of Highways and Streets",
                "equation 3-2",
                Some("United States"),
            ))
            .exact()
            .cautionary(),
            |held| {
                format!(
                    "A public road would give {} of sight at this speed, up to {}; the pod driver has {}.",
                    length(held.value),
                    length(held.high),
                    length(sight)
                )
            },
        ),
        judge(
            evaluation,
            habit(
                evaluation,
                "hidden_ahead",
                "Road hidden before the nose",
                Bound::AtMost,
                &["eye_height", "edge_height", "edge_distance", "eye_to_nose"],
            ),
            |held| {
                format!(
                    "{} before the nose are hidden from the pod driver, up to {}; {} is the most wanted, so raise the \
                     eyes or lower what is in the way, and nobody walks in front.",
                    length(held.value),
                    length(held.high),
                    wanted(evaluation, "hidden_ahead")
                )
            },
        ),
    ]
}

fn pod(evaluation: &Evaluation) -> Vec<Check> {
    let rule = |name, title, quantity, limit, clause, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(name),
            quantity,
            Bound::AtLeast,
            limit,
            needs,
        )
        .by(published("49 CFR", clause, Some("United States")))
    };
    let (forward, side, half) = (super::RULE_FORWARD, super::RULE_SIDE, 0.5);
    let most = 7.0;
    vec![
        judge(
            evaluation,
            rule(
                "mount_forward",
                "Mounts in a hard stop",
                Quantity::Acceleration,
                forward,
                "393.102",
                MOUNTS,
            ),
            |held| {
                format!(
                    "A mount comes to its strength at a stop of {}, {} at the worst; the rule asks {}, so set the \
                     mounts wider apart or use stronger ones.",
                    pull(held.value),
                    pull(held.low),
                    pull(forward)
                )
            },
        ),
        judge(
            evaluation,
            rule(
                "mount_side",
                "Mounts under a side pull",
                Quantity::Acceleration,
                side,
                "393.102",
                MOUNTS,
            ),
            |held| {
                format!(
                    "A mount comes to its strength at a side pull of {}, {} at the worst; the rule asks {}.",
                    pull(held.value),
                    pull(held.low),
                    pull(side)
                )
            },
        ),
        judge(
            evaluation,
            habit(
                evaluation,
                "mount_factor",
                "Factor on the mounts",
                Bound::AtLeast,
                MOUNT_FACTOR,
            ),
            |held| {
                format!(
                    "{} on the worst loaded mount, {} at the worst; {} is wanted where a person sits on it.",
                    ratio(held.value),
                    ratio(held.low),
                    wanted(evaluation, "mount_factor")
                )
            },
        ),
        judge(
            evaluation,
            rule(
                "tie_down_share",
                "Tie-downs over the pod's weight",
                Quantity::Ratio,
                half,
                "393.106",
                &[
                    "performer_mass",
                    "pod_mass",
                    "tie_downs",
                    "tie_down_limit",
                    "tie_down_run",
                ],
            ),
            |held| {
                format!(
                    "The limits that count come to {} of the weight of pod and driver, {}; the rule asks {}.",
                    ratio(held.value),
                    say(
                        Quantity::Force,
                        input(evaluation, "pod_mass") * GRAVITY
                            + input(evaluation, "performer_mass") * GRAVITY
                    ),
                    ratio(half)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "people",
                "People aboard",
                Subject::Input("people"),
                Quantity::Count,
                Bound::AtMost,
                most,
                &["people"],
            )
            .by(published(
                "Ontario film safety guideline 17, camera cars",
                "",
                Some("Ontario"),
            ))
            .exact(),
            |held| {
                format!(
                    "{} are aboard; the guideline for camera cars allows {}, so leave behind who need not ride.",
                    say(Quantity::Count, held.value),
                    say(Quantity::Count, most)
                )
            },
        ),
        judge(
            evaluation,
            habit(
                evaluation,
                "drivers",
                "One person drives",
                Bound::AtMost,
                &["actor_controls"],
            )
            .exact(),
            |held| {
                format!(
                    "{} can steer, brake or drive the car; {} may, so the actor's wheel and pedals are made dead.",
                    say(Quantity::Count, held.value),
                    wanted(evaluation, "drivers")
                )
            },
        ),
    ]
}
