//! What water work's figures are held against: human tolerance from memory, and habits, which are data.

use super::attitude;
use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge},
    models::{
        GRAVITY,
        tolerance::{self, Axis},
    },
    units::{Quantity, say},
};

pub(super) const ENTRY: &[&str] = &["performer_mass", "entry_height", "entry_attitude"];
const BOTTOM: &[&str] = &[
    "performer_mass",
    "entry_height",
    "entry_attitude",
    "water_depth",
];
const BREATH: &[&str] = &["planned_submerged", "rehearsed_breath", "water_temperature"];
const AIR: &[&str] = &[
    "planned_submerged",
    "rehearsed_breath",
    "water_temperature",
    "diver_distance",
];
const COLD: &[&str] = &["performer_mass", "water_temperature", "planned_immersion"];

/// What a check says, with the limit's own value at hand.
type Says<'a> = &'a dyn Fn(&str, &str) -> String;

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = entry(evaluation);
    checks.extend(breath(evaluation));
    checks.extend(cold(evaluation));
    checks.extend(people(evaluation));
    checks
}

/// Judges a rule of habit; `says` is given the value and the limit in words.
fn habit(evaluation: &Evaluation, rule: Rule, says: Says) -> Check {
    let (quantity, limit) = (rule.quantity, rule.limit);
    judge(evaluation, rule, |held| {
        says(&say(quantity, held.value), &say(quantity, limit))
    })
}

fn entry(evaluation: &Evaluation) -> Vec<Check> {
    let axis = attitude(&evaluation.values).map_or(Axis::Headward, |(_, axis)| axis);
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
                needs: ENTRY,
            },
            |held| {
                format!(
                    "The entry gives a dynamic response of {}; a lower height, or feet first and straight, brings \
                     it down.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
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
    let depth = evaluation
        .value("depth_reached")
        .map_or_else(String::new, |depth| say(Quantity::Length, depth));
    vec![
        habit(
            evaluation,
            policy(
                "bottom",
                "Water under the body",
                "bottom_clearance",
                Bound::AtLeast,
                BOTTOM,
            ),
            &|value, limit| {
                format!(
                    "The body goes {depth} deep and {value} of water are left under it; {limit} is wanted, so lower \
                     the entry, deepen the water or land flatter."
                )
            },
        ),
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
        habit(
            evaluation,
            policy(
                "entry_speed",
                "Speed at the water",
                "entry_speed",
                Bound::AtMost,
                ENTRY,
            )
            .cautionary(),
            &|value, limit| {
                format!(
                    "The body meets the water at {value}; beyond {limit} only high divers enter safely, and a limb out \
                     of line is torn."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "clear_water",
                "Clear water round the entry",
                Subject::Input("clear_radius"),
                Bound::AtLeast,
                &["clear_radius"],
            ),
            &|value, limit| {
                format!(
                    "{value} of clear water lie round the entry; {limit} is the habit, and a swimmer checks it before each entry."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "entries_today",
                "Entries on the day",
                Subject::Input("entries_today"),
                Bound::AtMost,
                &["entries_today"],
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

fn breath(evaluation: &Evaluation) -> Vec<Check> {
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
    let words = |figure: &str| {
        evaluation
            .value(figure)
            .map_or_else(String::new, |v| say(Quantity::Time, v))
    };
    let (available, air) = (words("breath_available"), words("air_time"));
    let percent = |share: f64| format!("{:.0} %", 100.0 * share);
    let limit = evaluation.policies.get("breath").map_or(0.0, |p| p.value);
    let mut checks = vec![
        judge(
            evaluation,
            policy(
                "breath",
                "Time under on one breath",
                "breath_share",
                Bound::AtMost,
                BREATH,
            ),
            |held| {
                format!(
                    "The action takes {} of the {available} that a breath lasts in this water; {} is the most, so cut \
                     the action or give air on the way.",
                    percent(held.value),
                    percent(limit)
                )
            },
        ),
        habit(
            evaluation,
            policy(
                "air",
                "Breath left when spare air comes",
                "air_margin",
                Bound::AtLeast,
                AIR,
            ),
            &|value, limit| {
                format!(
                    "Spare air takes {air} to arrive and then {value} of breath are left; {limit} is wanted, so bring \
                     the diver nearer or shorten the action."
                )
            },
        ),
    ];
    let depth = Rule::policy(
        evaluation,
        "depth_untrained",
        "Depth for one who is no diver",
        Subject::Input("planned_depth"),
        Bound::AtMost,
        &["planned_depth", "training"],
    );
    // For a certified diver the habit says nothing; not knowing is not that.
    if evaluation.values.choice("training") != Some("diver") {
        checks.push(habit(evaluation, depth, &|value, limit| {
            format!("{value} deep for one who is no diver; {limit} with an instructor is the most, so train or stay shallower.")
        }));
    }
    let deepest = evaluation
        .policies
        .get("planned_depth")
        .map_or(0.0, |p| p.value);
    checks.push(judge(
        evaluation,
        Rule::policy(evaluation, "planned_depth", "Planned depth in this water", Subject::Input("planned_depth"), Bound::AtMost, &["planned_depth"]).exact(),
        |held| {
            format!(
                "{} is planned at the deepest; below {} a chest filled at the surface no longer floats a body up.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, deepest)
            )
        },
    ));
    checks
}

fn cold(evaluation: &Evaluation) -> Vec<Check> {
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
    let useful = evaluation
        .value("useful_time")
        .map_or_else(String::new, |v| say(Quantity::Time, v));
    let chill = evaluation
        .value("chill_time")
        .map_or_else(String::new, |v| say(Quantity::Time, v));
    let percent = |share: f64| format!("{:.0} %", 100.0 * share);
    let limit = evaluation
        .policies
        .get("immersion")
        .map_or(0.0, |p| p.value);
    vec![
        judge(
            evaluation,
            policy(
                "immersion",
                "Time in the water by the cold",
                "immersion_share",
                Bound::AtMost,
                COLD,
            ),
            |held| {
                format!(
                    "The longest stretch is {} of the {useful} before exhaustion in water this cold; {} is the most, so \
                     get out and warm sooner or wear a thicker suit.",
                    percent(held.value),
                    percent(limit)
                )
            },
        ),
        habit(
            evaluation,
            policy(
                "body_temperature",
                "Body after the water",
                "body_after",
                Bound::AtLeast,
                COLD,
            )
            .exact(),
            &|value, limit| {
                format!(
                    "The body's mean falls to {value} in the longest stretch, one degree in {chill}; under {limit} hands \
                     fail and judgement goes, so shorten it, add suit or warm the water."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "cold_shock",
                "Water cold enough to gasp",
                Subject::Input("water_temperature"),
                Bound::AtLeast,
                &["water_temperature"],
            )
            .cautionary()
            .exact(),
            &|value, limit| {
                format!(
                    "The water is at {value}; under {limit} the first minute brings gasping that nobody can hold back, so \
                     let the performer settle in it before any breath hold."
                )
            },
        ),
        habit(
            evaluation,
            policy(
                "wind_chill",
                "Wind chill after the water",
                "wind_chill",
                Bound::AtLeast,
                &["air_temperature", "wind_speed"],
            )
            .cautionary()
            .exact(),
            &|value, limit| {
                format!(
                    "Out of the water it feels like {value} on dry skin and colder wet; under {limit} have the warm \
                     shelter within a few steps."
                )
            },
        ),
    ]
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    vec![
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "divers",
                "Safety divers a performer",
                Subject::Figure("divers_each"),
                Bound::AtLeast,
                &["safety_divers", "performers_in_water"],
            )
            .exact(),
            &|value, limit| {
                format!(
                    "Safety divers for each performer in the water: {value}; the habit is {limit} each."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "rescuers",
                "Rescuers at the edge",
                Subject::Input("lifeguards"),
                Bound::AtLeast,
                &["lifeguards"],
            )
            .exact(),
            &|value, limit| {
                format!(
                    "Rescuers dry at the edge or in a boat: {value}; the habit is at least {limit}."
                )
            },
        ),
        habit(
            evaluation,
            Rule::policy(
                evaluation,
                "current",
                "Current against the swimmer",
                Subject::Figure("current_share"),
                Bound::AtMost,
                &["current_speed", "swim_speed"],
            ),
            &|value, limit| {
                format!(
                    "The current runs at {value} of the performer's speed in costume; over {limit} they tire before they \
                     get back, so add a line, a boat downstream or slacker water."
                )
            },
        ),
    ]
}
