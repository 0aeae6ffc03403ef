//! What a composite's figures are held against. All limits here are habit, and data.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, judge},
    units::{Quantity, say},
};

/// Everything the picture's drift needs.
pub(super) const PICTURE: &[&str] = &[
    "focal_length",
    "sensor_width",
    "pan_drift",
    "tilt_drift",
    "roll_drift",
    "near_distance",
    "far_distance",
];
/// Everything the sun needs.
pub(super) const SUN: &[&str] = &[
    "light",
    "latitude",
    "longitude",
    "year",
    "day_of_year",
    "first_pass",
    "between_passes",
];

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = picture(evaluation);
    // Under cloud or lamps there is no sun to judge; not knowing the light is not that.
    if evaluation
        .values
        .choice("light")
        .is_none_or(|light| light == "sun")
    {
        checks.extend(light(evaluation));
    }
    checks
}

fn wanted(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .policies
        .get(name)
        .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn picture(evaluation: &Evaluation) -> Vec<Check> {
    let policy = |name, title, figure| {
        Rule::policy(
            evaluation,
            name,
            title,
            Subject::Figure(figure),
            Bound::AtMost,
            PICTURE,
        )
    };
    let pixels = |value| say(Quantity::Pixels, value);
    vec![
        judge(
            evaluation,
            policy("drift", "Drift against the pixel limit", "worst_drift"),
            |held| {
                format!(
                    "A corner moves by {} between passes, most of it by {}; the limit is {}, so lock the head, weigh \
                 the legs down and shoot a still of the marks before each pass.",
                    pixels(held.value),
                    largest(evaluation),
                    wanted(evaluation, "drift")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "left_after_alignment",
                "Drift that aligning leaves",
                "left_after_alignment",
            ),
            |held| {
                format!(
                    "{} are left after the best alignment of the whole picture; {} can be hidden, so keep near \
                     things off the join or stop the camera from shifting.",
                    pixels(held.value),
                    wanted(evaluation, "left_after_alignment")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "keep_out",
                "Ground kept clear round the camera",
                Subject::Input("camera_keep_out"),
                Bound::AtLeast,
                &["camera_keep_out"],
            )
            .cautionary()
            .exact(),
            |held| {
                format!(
                    "{} round the camera are kept clear between passes; {} is the habit, more on boards or soft \
                     ground.",
                    say(Quantity::Length, held.value),
                    wanted(evaluation, "keep_out")
                )
            },
        ),
    ]
}

/// What moves the picture most, in words.
fn largest(evaluation: &Evaluation) -> &'static str {
    [
        ("pan_part", "pan"),
        ("tilt_part", "tilt"),
        ("roll_part", "roll"),
        ("shift_part", "shift"),
        ("focal_part", "focal length"),
    ]
    .into_iter()
    .map(|(figure, word)| (evaluation.value(figure).unwrap_or(0.0), word))
    .fold(
        (-1.0, ""),
        |most, one| if one.0 > most.0 { one } else { most },
    )
    .1
}

fn light(evaluation: &Evaluation) -> Vec<Check> {
    let policy = |name, title, figure, bound| {
        Rule::policy(evaluation, name, title, Subject::Figure(figure), bound, SUN)
    };
    let angle = |value| say(Quantity::Angle, value);
    let tip = evaluation
        .value("shadow_tip")
        .map_or_else(String::new, |tip| say(Quantity::Length, tip));
    vec![
        judge(
            evaluation,
            policy(
                "sun_up",
                "Sun above the skyline",
                "sun_clearance",
                Bound::AtLeast,
            ),
            |held| {
                format!(
                    "The sun stands {} over the skyline at its lower pass; under {} it goes or comes while you \
                     shoot, so bring the passes nearer to midday.",
                    angle(held.value),
                    wanted(evaluation, "sun_up")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "shadow_angle",
                "Turn of the shadows",
                "shadow_turn",
                Bound::AtMost,
            ),
            |held| {
                format!(
                    "Shadows turn by {} between passes and the tip moves {tip}; {} goes unseen, so bring the \
                     passes closer together or shade the join.",
                    angle(held.value),
                    wanted(evaluation, "shadow_angle")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "shadow_length",
                "Length of the shadows",
                "shadow_stretch",
                Bound::AtMost,
            ),
            |held| {
                format!(
                    "Shadows change in length by {} between passes; {} goes unseen, so shoot nearer to midday or \
                     closer together.",
                    percent(held.value),
                    percent(
                        evaluation
                            .policies
                            .get("shadow_length")
                            .map_or(0.0, |p| p.value)
                    )
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "light",
                "Change of direct light",
                "light_change",
                Bound::AtMost,
            )
            .cautionary(),
            |held| {
                format!(
                    "Clear sun changes by {} stops between passes; {} can be evened out, and its colour shifts too \
                     when it is low.",
                    say(Quantity::Ratio, held.value),
                    wanted(evaluation, "light")
                )
            },
        ),
    ]
}

fn percent(share: f64) -> String {
    format!("{:.1} %", 100.0 * share)
}
