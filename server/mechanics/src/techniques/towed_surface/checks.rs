//! What a towed surface's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, judge},
    units::{Quantity, say},
};

/// What the motion needs, and more.
macro_rules! motion_and {
    ($($extra:literal),*) => {
        &[
            "direction", "order", "tow_speed", "tow_acceleration", "tow_stop", "ramp_time",
            "run_speed", $($extra),*
        ]
    };
}

/// What nothing can be computed without.
pub(super) const NEEDED: &[&str] = motion_and!();

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = mat(evaluation);
    checks.extend(feet(evaluation));
    checks.extend(ground(evaluation));
    checks
}

fn of(evaluation: &Evaluation, name: &str, quantity: Quantity) -> String {
    evaluation
        .value(name)
        .map_or_else(String::new, |value| say(quantity, value))
}

fn mat(evaluation: &Evaluation) -> Vec<Check> {
    let shot = evaluation.values.number("shot_time").unwrap_or(0.0);
    let strength = evaluation.values.number("tow_strength").unwrap_or(0.0);
    let length = |name| of(evaluation, name, Quantity::Length);
    let (gather, stop) = (length("surface_to_gather"), length("surface_to_stop"));
    let force = of(evaluation, "tow_force", Quantity::Force);
    vec![
        judge(
            evaluation,
            Rule::planned(
                "shot",
                "Shot within the mat",
                Subject::Figure("longest_shot"),
                Quantity::Time,
                Bound::AtLeast,
                shot,
                motion_and!("surface_length", "shot_time"),
            ),
            |held| {
                if held.value > 0.0 {
                    format!(
                        "Start and stop use {gather} and {stop} of the mat, which leaves {} at full speed; a \
                         longer mat or a slower run on it with a faster tow leaves more.",
                        say(Quantity::Time, held.value)
                    )
                } else {
                    format!(
                        "Start and stop use {gather} and {stop}, which is the whole mat: there is no shot at \
                         full speed in it."
                    )
                }
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "tow_factor",
                "Tow factor",
                Subject::Figure("tow_factor"),
                Bound::AtLeast,
                motion_and!(
                    "performer_mass",
                    "surface_mass",
                    "ground_friction",
                    "tow_strength"
                ),
            ),
            |held| {
                format!(
                    "{}: the tow of {} pulls up to {force}; hem and release are part of it.",
                    say(Quantity::Ratio, held.value),
                    say(Quantity::Force, strength)
                )
            },
        ),
    ]
}

fn feet(evaluation: &Evaluation) -> Vec<Check> {
    let base = evaluation.values.number("balance_base").unwrap_or(0.0);
    let friction = evaluation.values.number("foot_friction").unwrap_or(0.0);
    let grip = |name, title, figure, at: &str| {
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                name,
                title,
                Subject::Figure(figure),
                Bound::AtMost,
                motion_and!("foot_friction"),
            ),
            |held| {
                format!(
                    "{} of a friction of {} is used as {at}; a gentler tow or runner, or one after the other, \
                     leaves grip for the stride.",
                    say(Quantity::Ratio, held.value),
                    say(Quantity::Ratio, friction)
                )
            },
        )
    };
    let balance = |name, title, figure, at: &str| {
        judge(
            evaluation,
            Rule::planned(
                name,
                title,
                Subject::Figure(figure),
                Quantity::Length,
                Bound::AtMost,
                base,
                motion_and!("balance_base"),
            ),
            |held| {
                format!(
                    "Balance needs a foothold {} away as {at} and there is {}; a slower build-up of the pull, \
                     less of it or a counted start needs less.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, base)
                )
            },
        )
    };
    vec![
        grip(
            "grip_take_up",
            "Grip at take-up",
            "grip_take_up",
            "the mat takes up",
        ),
        grip(
            "grip_stop",
            "Grip at the stop",
            "grip_stop",
            "the mat stops",
        ),
        balance(
            "balance_take_up",
            "Balance at take-up",
            "take_up_base",
            "the mat takes up",
        ),
        balance(
            "balance_stop",
            "Balance at the stop",
            "stop_base",
            "the mat stops",
        ),
        letting_go(evaluation, base),
    ]
}

/// A tow that parts is a fault and not the plan: its balance is for those who sign, and it also needs the
/// ground's friction.
fn letting_go(evaluation: &Evaluation, base: f64) -> Check {
    judge(
        evaluation,
        Rule::planned(
            "balance_let_go",
            "Balance if the tow lets go",
            Subject::Figure("let_go_base"),
            Quantity::Length,
            Bound::AtMost,
            base,
            motion_and!(
                "performer_mass",
                "surface_mass",
                "ground_friction",
                "balance_base"
            ),
        )
        .cautionary(),
        |held| {
            format!(
                "If the tow parts the ground stops the mat at once and balance needs {} where there is {}: \
                 the runner must know how to roll.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, base)
            )
        },
    )
}

fn ground(evaluation: &Evaluation) -> Vec<Check> {
    let number = |name| evaluation.values.number(name).unwrap_or(0.0);
    let (path, out, legs) = (
        number("tow_path"),
        number("run_out"),
        number("legs_top_speed"),
    );
    let speed = of(evaluation, "run_off_speed", Quantity::Speed);
    vec![
        judge(
            evaluation,
            Rule::planned(
                "tow_path",
                "Clear way for the mat",
                Subject::Figure("tow_distance"),
                Quantity::Length,
                Bound::AtMost,
                path,
                motion_and!("shot_time", "tow_path"),
            ),
            |held| {
                format!(
                    "The mat slides {}, up to {} within the tolerances, where {} are clear; a harder take-up \
                     or stop, or a shorter shot, needs less.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, held.high),
                    say(Quantity::Length, path)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "run_out",
                "Run-out beyond the mat",
                Subject::Figure("run_off"),
                Quantity::Length,
                Bound::AtMost,
                out,
                motion_and!("run_out"),
            ),
            |held| {
                format!(
                    "Off the end at {speed} the body comes to rest after {}, where {} are clear.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, out)
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "run_off_speed",
                "Legs against the speed off the end",
                Subject::Figure("run_off_speed"),
                Quantity::Speed,
                Bound::AtMost,
                legs,
                motion_and!("legs_top_speed"),
            )
            .cautionary(),
            |held| {
                format!(
                    "The ground passes at {} and the legs can follow {}: above that, whoever comes off the \
                     mat falls, so the runner must stop on it.",
                    say(Quantity::Speed, held.value),
                    say(Quantity::Speed, legs)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "spotters",
                "Spotters who can stop the tow",
                Subject::Input("spotters"),
                Bound::AtLeast,
                &["spotters"],
            )
            .exact(),
            |held| {
                format!(
                    "{} along the sides with nothing else to do.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
    ]
}
