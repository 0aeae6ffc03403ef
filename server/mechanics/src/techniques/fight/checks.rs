//! What a fight's figures are held against: published head and heat limits, and habits, which are data.

use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge, published},
    models::CELSIUS_ZERO,
    units::{Quantity, say},
};

pub(super) const STANDOFF: &[&str] = &["distance", "reach", "closing_speed", "shoe_friction"];
const CREW: &[&str] = &["reach", "closing_speed", "shoe_friction", "crew_distance"];
pub(super) const CHANCE: &[&str] = &[
    "distance",
    "reach",
    "mark_scatter",
    "strikes",
    "take_time",
    "rest_time",
    "takes",
    "full_effort_time",
];
const RESERVE_END: &[&str] = &["take_time", "rest_time", "takes", "full_effort_time"];

macro_rules! hit_and {
    ($($extra:literal),*) => {
        &[
            "performer_mass",
            "weapon",
            "distance",
            "reach",
            "closing_speed",
            "strike_speed",
            "pull_distance",
            "strike_mass",
            $($extra),*
        ]
    };
}
pub(super) const HIT: &[&str] = hit_and!();
const HIT_BREAKS: &[&str] = hit_and!("break_force");
pub(super) const HEAT: &[&str] = &[
    "take_time",
    "rest_time",
    "takes",
    "place",
    "air_temperature",
    "wet_bulb",
    "globe",
    "costume",
    "used_to_heat",
];
const INDEX: &[&str] = &["air_temperature", "humidity"];

/// The heat index from which the chart of the United States weather service reads danger, 103 degrees Fahrenheit.
const DANGER: f64 = CELSIUS_ZERO + (103.0 - 32.0) / 1.8;

/// What a check says, given the value and the limit in words.
type Says<'a> = &'a dyn Fn(&str, &str) -> String;

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = distance(evaluation);
    checks.extend(hit(evaluation));
    checks.extend(effort(evaluation));
    checks.extend(people(evaluation));
    checks
}

fn told(evaluation: &Evaluation, rule: Rule, says: Says) -> Check {
    let (quantity, limit) = (rule.quantity, rule.limit);
    judge(evaluation, rule, |held| {
        says(&say(quantity, held.value), &say(quantity, limit))
    })
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

fn words(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .figure(name)
        .map_or_else(String::new, |figure| say(figure.quantity, figure.value))
}

fn distance(evaluation: &Evaluation) -> Vec<Check> {
    let accepted = evaluation.values.number("accepted_hit").unwrap_or(0.0);
    let needed = words(evaluation, "standoff_needed");
    let tired = words(evaluation, "chance_last");
    let run_on = words(evaluation, "run_on");
    vec![
        told(
            evaluation,
            habit(
                evaluation,
                "standoff_left",
                "Distance between the fighters",
                Bound::AtLeast,
                STANDOFF,
            ),
            &|value, limit| {
                format!(
                    "Reach, reaction and a step need {needed} and {value} are left; {limit} is wanted, so stand further \
                     apart and let the lens close the gap, or keep the feet still."
                )
            },
        ),
        told(
            evaluation,
            Rule::planned(
                "chance_day",
                "Chance that a strike lands",
                Subject::Figure("chance_day"),
                Quantity::Ratio,
                Bound::AtMost,
                accepted,
                CHANCE,
            ),
            &|value, limit| {
                format!(
                    "The chance that one strike lands on the day is {value}, and {tired} for each tired one; {limit} is \
                     accepted, so widen the gap, cut strikes or takes, or rest longer."
                )
            },
        ),
        told(
            evaluation,
            habit(
                evaluation,
                "crew_gap",
                "Gap to the crew",
                Bound::AtLeast,
                CREW,
            ),
            &|value, limit| {
                format!(
                    "With a step wrong and a run-on of {run_on}, {value} are left to the nearest person; {limit} is \
                     wanted, so move the camera back or use a longer lens."
                )
            },
        ),
    ]
}

fn hit(evaluation: &Evaluation) -> Vec<Check> {
    let weapon = evaluation.values.choice("weapon");
    let needs = if weapon == Some("breakaway") {
        HIT_BREAKS
    } else {
        HIT
    };
    let speed = words(evaluation, "contact_speed");
    let mut checks = vec![
        told(
            evaluation,
            habit(
                evaluation,
                "peak_force",
                "Force of a hit by mistake",
                Bound::AtMost,
                needs,
            ),
            &|value, limit| {
                format!(
                    "With the partner a step too near the strike lands at {speed} with a peak of {value}; {limit} is \
                     the most by habit, so slow it earlier, pad it or aim it beside the face."
                )
            },
        ),
        told(
            evaluation,
            habit(
                evaluation,
                "hit_energy",
                "Energy of a hit by mistake",
                Bound::AtMost,
                needs,
            ),
            &|value, limit| {
                format!(
                    "That hit at {speed} carries {value}; {limit} is the most by habit, so use a lighter prop or a \
                     strike that is slowed over more of its way."
                )
            },
        ),
        told(
            evaluation,
            Rule {
                name: "head_criterion",
                title: "HIC of a hit by mistake",
                subject: Subject::Figure("head_criterion"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit: 700.0,
                source: published("49 CFR 571.208", "S6.2, 15 ms", Some("United States")),
                blocking: true,
                reserve: RESERVE,
                needs,
            },
            &|value, limit| {
                format!(
                    "HIC is {value} where {limit} is the limit; it is a limit of the brain, and a face breaks long \
                     before it."
                )
            },
        ),
    ];
    // Not to know what strikes is not to know that it has no edge.
    if weapon != Some("unarmed") {
        checks.push(told(
            evaluation,
            Rule::policy(
                evaluation,
                "edge_radius",
                "Edge and tip of the weapon",
                Subject::Input("edge_radius"),
                Bound::AtLeast,
                &["weapon", "edge_radius"],
            ),
            &|value, limit| {
                format!(
                    "The sharpest place has a radius of {value}; at least {limit} is the habit, so file nicks out after \
                     each take and keep the sharp one for the close shot."
                )
            },
        ));
    }
    checks
}

fn effort(evaluation: &Evaluation) -> Vec<Check> {
    let globe = words(evaluation, "wet_bulb_globe");
    let allowed = words(evaluation, "work_allowed");
    let planned = words(evaluation, "work_planned");
    let rule = |name, title, quantity, bound, limit, source: Source, needs| Rule {
        name,
        title,
        subject: Subject::Figure(name),
        quantity,
        bound,
        limit,
        source,
        blocking: true,
        reserve: 0.0,
        needs,
    };
    vec![
        told(
            evaluation,
            rule(
                "heat_margin",
                "Work and rest in the heat",
                Quantity::Ratio,
                Bound::AtLeast,
                0.0,
                from_memory("NIOSH 2016-106", "recommended alert and exposure limits"),
                HEAT,
            ),
            &|value, _| {
                format!(
                    "At {globe} of wet-bulb globe temperature, costume counted, {allowed} of the hour may be fought and \
                     {planned} is planned, which leaves {value}; rest longer, in shade, or fight at a cooler hour."
                )
            },
        ),
        told(
            evaluation,
            rule(
                "heat_index",
                "Heat index",
                Quantity::Temperature,
                Bound::AtMost,
                DANGER,
                from_memory("National Weather Service heat index chart", "danger"),
                INDEX,
            )
            .cautionary(),
            &|value, limit| {
                format!(
                    "The heat index is {value} in the shade; the chart reads danger from {limit}, with exertion and sun \
                     making it worse."
                )
            },
        ),
        told(
            evaluation,
            habit(
                evaluation,
                "reserve_end",
                "Reserve at the end of the day",
                Bound::AtLeast,
                RESERVE_END,
            )
            .cautionary(),
            &|value, limit| {
                format!(
                    "After the last take {value} of a fresh performer's effort is left; {limit} is wanted, so rest \
                     longer, split the fight or change performers."
                )
            },
        ),
    ]
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    let counted = |name, title, bound, needs| {
        Rule::policy(evaluation, name, title, Subject::Input(name), bound, needs).exact()
    };
    vec![
        told(
            evaluation,
            counted("takes", "Takes at full speed", Bound::AtMost, &["takes"]).cautionary(),
            &|value, limit| {
                format!(
                    "Takes at full speed on the day: {value}; {limit} is the most by habit, so cut the fight into \
                     shorter shots."
                )
            },
        ),
        told(
            evaluation,
            counted(
                "run_throughs",
                "Run-through on the day",
                Bound::AtLeast,
                &["run_throughs"],
            ),
            &|value, limit| {
                format!(
                    "Run-throughs of the whole fight on the day: {value}; at least {limit} is the habit, with the same \
                     partners, weapons and floor."
                )
            },
        ),
        told(
            evaluation,
            counted(
                "first_aiders",
                "First aiders at the set",
                Bound::AtLeast,
                &["first_aiders"],
            ),
            &|value, limit| {
                format!("First aiders at the set: {value}; at least {limit} is the habit.")
            },
        ),
    ]
}
