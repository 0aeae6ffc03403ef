//! What a burn's figures are held against: its checks, their limits and who says so.

use super::layers::HORIZON;
use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge, plan},
    units::{Quantity, say},
};

pub(super) const LAYERS: &[&str] = &[
    "outer_cloth",
    "outer_mass",
    "outer_thickness",
    "gel_mass",
    "under_cloth",
    "under_mass",
    "under_thickness",
];
const PLANNED: &[&str] = &[
    "planned_time",
    "outer_cloth",
    "outer_mass",
    "outer_thickness",
    "gel_mass",
    "under_cloth",
    "under_mass",
    "under_thickness",
];
const CALLED_OUT: &[&str] = &[
    "called_out_time",
    "outer_cloth",
    "outer_mass",
    "outer_thickness",
    "gel_mass",
    "under_cloth",
    "under_mass",
    "under_thickness",
];

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = skin(evaluation);
    checks.extend(times(evaluation));
    checks.extend(people(evaluation));
    checks
}

/// A time that may stand for "the horizon or more".
pub(super) fn at_least(seconds: f64) -> String {
    let time = say(Quantity::Time, seconds);
    if seconds >= HORIZON {
        format!("{time} or more")
    } else {
        time
    }
}

fn skin(evaluation: &Evaluation) -> Vec<Check> {
    let second = evaluation.figure("time_to_second_degree");
    let margin = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "planned_under_half",
            "Time to second degree over plan",
            Subject::Figure("time_margin"),
            Bound::AtLeast,
            PLANNED,
        ),
        |held| {
            let (value, low) = second.map_or((0.0, 0.0), |f| (f.value, f.low));
            format!(
                "A second-degree burn comes at {} ({} at the earliest within the tolerances), {} times the \
                 planned burn; more gel or a shorter burn raises it.",
                at_least(value),
                at_least(low),
                say(Quantity::Ratio, held.value)
            )
        },
    );
    let flames = evaluation
        .value("flame_time")
        .map_or_else(String::new, |v| say(Quantity::Time, v));
    let after = evaluation
        .value("stored_heat_damage")
        .map_or_else(String::new, |v| say(Quantity::Ratio, v));
    let damage = |name, title, limit, clause, blocking| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure("skin_damage"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit,
                source: from_memory("ASTM F1930, Henriques damage integral", clause),
                blocking,
                reserve: RESERVE,
                needs: CALLED_OUT,
            },
            |held| {
                format!(
                    "Called out at the latest, {flames} in flames and stripped as entered, the damage comes to \
                     {}, of which {after} after the last flame.",
                    say(Quantity::Ratio, held.value)
                )
            },
        )
    };
    vec![
        margin,
        damage(
            "second_degree",
            "Second-degree burn",
            1.0,
            "second degree at 1",
            true,
        ),
        damage(
            "first_degree",
            "First-degree burn",
            0.53,
            "first degree at 0.53",
            false,
        ),
    ]
}

fn times(evaluation: &Evaluation) -> Vec<Check> {
    let values = &evaluation.values;
    let mut checks = Vec::new();
    // A partial burn has no agreed longest time; an unknown coverage must not pass for one.
    if values.choice("coverage") != Some("partial") {
        let longest = Rule::policy(
            evaluation,
            "full_engulfment",
            "Longest full engulfment",
            Subject::Input("called_out_time"),
            Bound::AtMost,
            &["coverage", "called_out_time"],
        )
        .exact();
        let limit = longest.limit;
        checks.push(judge(evaluation, longest, |held| {
            format!(
                "Called out at {} at the latest; full engulfment is never planned past {}.",
                say(Quantity::Time, held.value),
                say(Quantity::Time, limit)
            )
        }));
    }
    let planned = values.number("planned_time").unwrap_or(0.0);
    checks.push(judge(
        evaluation,
        Rule {
            name: "call_after_plan",
            title: "Call-out after the plan",
            subject: Subject::Input("called_out_time"),
            quantity: Quantity::Time,
            bound: Bound::AtLeast,
            limit: planned,
            source: plan(),
            blocking: true,
            reserve: 0.0,
            needs: &["planned_time", "called_out_time"],
        },
        |held| {
            format!(
                "Planned for {} and called out at {} at the latest.",
                say(Quantity::Time, planned),
                say(Quantity::Time, held.value)
            )
        },
    ));
    checks.push(judge(evaluation, Rule::policy(evaluation, "breath", "Breath", Subject::Figure("breath_share"), Bound::AtMost, &["called_out_time", "breath_hold"]),
        |held| {
            format!(
                "The time in flames takes {:.0} % of the rehearsed breath hold; one breath in flames burns \
                 the airway.",
                100.0 * held.value
            )
        },
    ));
    checks
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    let habit = |name: &str| {
        let policy = evaluation.policies.get(name);
        policy.map_or_else(String::new, |policy| say(policy.quantity, policy.value))
    };
    let (for_each, windiest, most) = (habit("safeties"), habit("wind"), habit("burns_today"));
    let safeties = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "safeties",
            "Safeties per person alight",
            Subject::Figure("safeties_per_person"),
            Bound::AtLeast,
            &["safeties"],
        )
        .exact(),
        |held| {
            format!(
                "{} for each performer alight; the limit is {for_each}, the count caller included.",
                say(Quantity::Ratio, held.value)
            )
        },
    );
    let wind = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "wind",
            "Wind",
            Subject::Input("wind_speed"),
            Bound::AtMost,
            &["wind_speed"],
        ),
        |held| {
            format!(
                "The burn may be lit in wind up to {}; the limit is {windiest}, since wind drives flame \
                 under a mask.",
                say(Quantity::Speed, held.value)
            )
        },
    );
    let burns = judge(
        evaluation,
        Rule::policy(
            evaluation,
            "burns_today",
            "Burns on the day",
            Subject::Input("burns_today"),
            Bound::AtMost,
            &["burns_today"],
        )
        .cautionary()
        .exact(),
        |held| {
            format!(
                "{} planned for this performer, rehearsals included; the limit is {most} a day.",
                say(Quantity::Count, held.value)
            )
        },
    );
    vec![safeties, wind, burns]
}
