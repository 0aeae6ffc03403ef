//! What a horse fall's and a drag's figures are held against: human tolerance, and habits, which are data.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge, plan, published},
    models::{
        GRAVITY,
        tolerance::{self, Axis},
    },
    units::{Quantity, say},
};

pub(super) const FALL: &[&str] = &[
    "action",
    "performer_mass",
    "horse",
    "ride_speed",
    "saddle_height",
    "landing_attitude",
    "bed_depth",
];
const BED: &[&str] = &[
    "action",
    "performer_mass",
    "horse",
    "ride_speed",
    "saddle_height",
    "landing_attitude",
    "bed_depth",
    "bed_length",
    "bed_width",
];
const HORSE: &[&str] = &[
    "action",
    "performer_mass",
    "horse",
    "ride_speed",
    "saddle_height",
    "landing_attitude",
    "bed_depth",
    "horse_ground",
];
pub(super) const DRAG: &[&str] = &[
    "action",
    "performer_mass",
    "drag_speed",
    "drag_distance",
    "ground_friction",
    "line_stiffness",
];
const LINE: &[&str] = &[
    "action",
    "performer_mass",
    "drag_speed",
    "drag_distance",
    "ground_friction",
    "line_stiffness",
    "line_strength",
];
const RELEASE: &[&str] = &[
    "action",
    "performer_mass",
    "drag_speed",
    "drag_distance",
    "ground_friction",
    "line_stiffness",
    "release_rating",
];
const GROUND: &[&str] = &[
    "action",
    "performer_mass",
    "drag_speed",
    "drag_distance",
    "ground_friction",
    "line_stiffness",
    "release_time",
    "clear_ground",
];

/// What a check says, given the value and the limit in words.
type Says<'a> = &'a dyn Fn(&str, &str) -> String;

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let action = evaluation.values.choice("action");
    let mut checks = Vec::new();
    // Not to know what is done is not to do without it.
    if action != Some("drag") {
        checks.extend(body(evaluation));
        checks.extend(bed(evaluation));
    }
    if action != Some("fall") {
        checks.extend(drag(evaluation));
    }
    checks.extend(people(evaluation));
    checks
}

fn habit(evaluation: &Evaluation, rule: Rule, says: Says) -> Check {
    let (quantity, limit) = (rule.quantity, rule.limit);
    judge(evaluation, rule, |held| {
        says(&say(quantity, held.value), &say(quantity, limit))
    })
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let axis = match evaluation.values.choice("landing_attitude") {
        Some("back") => Axis::Forward,
        Some("front") => Axis::Backward,
        Some("side") => Axis::Sideways,
        _ => Axis::Headward,
    };
    let limits = tolerance::response(axis).limits;
    let response = |name, title, risk, limit: f64, blocking| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure("dynamic_response"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: limit * GRAVITY,
                source: from_memory("J. W. Brinkley, dynamic response limits", risk),
                blocking,
                reserve: RESERVE,
                needs: FALL,
            },
            |held| {
                format!(
                    "The bed's stop gives a dynamic response of {}; a deeper or looser bed brings it down.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
    vec![
        response(
            "response_low",
            "Dynamic response, low risk",
            "low risk",
            limits[0],
            false,
        ),
        response(
            "response_medium",
            "Dynamic response, medium risk",
            "medium risk",
            limits[1],
            true,
        ),
        judge(
            evaluation,
            Rule {
                name: "head_criterion",
                title: "Head injury criterion, 15 ms",
                subject: Subject::Figure("head_criterion"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit: 700.0,
                source: published("49 CFR 571.208", "S6.2, 15 ms", Some("United States")),
                blocking: true,
                reserve: RESERVE,
                needs: FALL,
            },
            |held| {
                format!(
                    "HIC is {} for a head that stops with the body; a hoof, a stone or the bed's edge would give far \
                     more.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
    ]
}

fn bed(evaluation: &Evaluation) -> Vec<Check> {
    let length = |figure: &str| {
        evaluation
            .value(figure)
            .map_or_else(String::new, |v| say(Quantity::Length, v))
    };
    let (long, wide) = (length("bed_length_needed"), length("bed_width_needed"));
    let run = length("horse_run");
    let accepted = evaluation.values.number("accepted_miss").unwrap_or(0.001);
    vec![
        judge(
            evaluation,
            Rule {
                name: "miss_probability",
                title: "Chance of missing the bed",
                subject: Subject::Figure("miss_probability"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit: accepted,
                source: plan(),
                blocking: true,
                reserve: RESERVE,
                needs: BED,
            },
            |held| {
                format!(
                    "The chance of leaving the bed less its margin is {}; {long} by {wide}, placed round the landing \
                     and the slide, brings it to {}.",
                    chance(held.value),
                    chance(accepted)
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "bed_depth",
                "Depth of the bed",
                Subject::Input("bed_depth"),
                Bound::AtLeast,
                &["bed_depth"],
            )
            .exact(),
            &|value, limit| {
                format!(
                    "The bed is {value} deep; loose dirt alone over hard ground is {limit} or more by habit."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "bed_probes",
                "Probes of the bed",
                Subject::Input("bed_probes"),
                Bound::AtLeast,
                &["bed_probes"],
            )
            .exact(),
            &|value, limit| {
                format!(
                    "Places probed since the last raking: {value}; at least {limit} find a stone or a shallow spot."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "rest_gap",
                "Gap between rider and horse",
                Subject::Figure("rest_gap"),
                Bound::AtLeast,
                FALL,
            ),
            &|value, limit| {
                format!(
                    "Rider and horse come within {value}; {limit} is wanted, so push off harder to the side or fall from \
                     the side away from the legs."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "horse_room",
                "Ground ahead of the horse",
                Subject::Figure("horse_room"),
                Bound::AtLeast,
                HORSE,
            ),
            &|value, limit| {
                format!(
                    "The horse needs {run} and {value} are left beyond; {limit} is wanted, so move people and fences back \
                     or post the pick-up rider earlier."
                )
            },
        ),
    ]
}

/// A small chance as people say it.
fn chance(probability: f64) -> String {
    if probability <= 1e-9 {
        "under 1 in a thousand million".to_owned()
    } else if probability < 0.02 {
        format!("1 in {:.0}", 1.0 / probability)
    } else {
        format!("{:.0} %", 100.0 * probability)
    }
}

fn drag(evaluation: &Evaluation) -> Vec<Check> {
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
    let peak = evaluation
        .value("peak_tension")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    let after = evaluation
        .value("release_distance")
        .map_or_else(String::new, |v| say(Quantity::Length, v));
    let time = evaluation
        .value("drag_time")
        .map_or_else(String::new, |v| say(Quantity::Time, v));
    vec![
        habit(
            evaluation,
            policy(
                "line_factor",
                "Line against the peak",
                "line_factor",
                Bound::AtLeast,
                LINE,
            ),
            &|value, limit| {
                format!(
                    "The line holds {value} times the peak of {peak}; {limit} is wanted, so take up the slack slowly, add \
                     stretch or a stronger line."
                )
            },
        ),
        habit(
            evaluation,
            policy(
                "release_factor",
                "Release under load",
                "release_factor",
                Bound::AtLeast,
                RELEASE,
            ),
            &|value, limit| {
                format!(
                    "The release was seen to open under {value} times the peak of {peak}; {limit} is wanted, so test it \
                     at more load or change it."
                )
            },
        ),
        habit(
            evaluation,
            policy(
                "ground_left",
                "Ground after trouble",
                "ground_left",
                Bound::AtLeast,
                GROUND,
            ),
            &|value, limit| {
                format!(
                    "From trouble to lying still takes {after} and leaves {value}; {limit} is wanted, so slow down, clear \
                     more ground or drill the release."
                )
            },
        ),
        habit(
            evaluation,
            policy(
                "pad_temperature",
                "Heat at the padding",
                "pad_temperature",
                Bound::AtMost,
                DRAG,
            )
            .exact(),
            &|value, limit| {
                format!(
                    "The padding's face reaches {value} in {time}; over {limit} plastics soften and the next layer \
                     burns, so shorten the drag, wet the ground or widen the plate."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "second_release",
                "Second release",
                Subject::Input("second_releases"),
                Bound::AtLeast,
                &["second_releases"],
            )
            .exact(),
            &|value, limit| {
                format!(
                    "People besides the performer who can let go: {value}; at least {limit} is the habit."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "drags_today",
                "Drags on the day",
                Subject::Input("drags_today"),
                Bound::AtMost,
                &["drags_today"],
            )
            .cautionary()
            .exact(),
            &|value, limit| {
                format!(
                    "{value} planned for this performer, rehearsals included; {limit} is the habit."
                )
            },
        ),
    ]
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name, title, input, bound, needs| {
        Rule::policy(evaluation, name, title, Subject::Input(input), bound, needs).exact()
    };
    vec![
        habit(
            evaluation,
            input(
                "horse_falls",
                "Falls asked of one horse",
                "falls_per_horse",
                Bound::AtMost,
                &["falls_per_horse"],
            ),
            &|value, limit| {
                format!(
                    "Falls asked of the same horse on the day: {value}; {limit} is the habit, fewer on a hot day."
                )
            },
        ),
        habit(
            evaluation,
            input(
                "handlers",
                "Horse handlers",
                "handlers",
                Bound::AtLeast,
                &["handlers"],
            ),
            &|value, limit| {
                format!(
                    "Handlers who do nothing else: {value}; at least {limit} is the habit, one at each end of the run."
                )
            },
        ),
        habit(
            evaluation,
            input(
                "vet",
                "Veterinarian present",
                "vets",
                Bound::AtLeast,
                &["vets"],
            ),
            &|value, limit| {
                format!(
                    "Veterinarians at the place: {value}; at least {limit} is the habit whenever a horse falls or draws."
                )
            },
        ),
    ]
}
