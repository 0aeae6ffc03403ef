//! What a tempered glass exit's figures are held against.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge, plan, published},
    models::glass,
    units::{Quantity, say},
};

pub(super) const LEAD: &[&str] = &["cue_distance", "run_speed", "reaction_time", "firing_delay"];
const SHORT: &[&str] = &[
    "cue_distance",
    "run_speed",
    "reaction_time",
    "firing_delay",
    "least_lead",
];
const LONG: &[&str] = &[
    "cue_distance",
    "run_speed",
    "reaction_time",
    "firing_delay",
    "most_lead",
];
const WHOLE: &[&str] = &[
    "cue_distance",
    "run_speed",
    "speed_deviation",
    "reaction_time",
    "reaction_deviation",
    "firing_delay",
    "firing_deviation",
    "misfire_chance",
    "pane_width",
    "pane_height",
    "charge_place",
];
const SPREAD_SHORT: &[&str] = &[
    "cue_distance",
    "run_speed",
    "speed_deviation",
    "reaction_time",
    "reaction_deviation",
    "firing_delay",
    "firing_deviation",
    "misfire_chance",
    "least_lead",
];
const SPREAD_LONG: &[&str] = &[
    "cue_distance",
    "run_speed",
    "speed_deviation",
    "reaction_time",
    "reaction_deviation",
    "firing_delay",
    "firing_deviation",
    "misfire_chance",
    "most_lead",
];
const ENERGY: &[&str] = &["performer_mass", "run_speed"];

/// A chance as people say it.
pub(super) fn chance(probability: f64) -> String {
    if probability < 1e-6 {
        "under 1 in a million".to_owned()
    } else if probability < 0.02 {
        format!("1 in {:.0}", 1.0 / probability)
    } else {
        format!("{:.0} %", 100.0 * probability)
    }
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = lead(evaluation);
    checks.extend(chances(evaluation));
    checks.extend(whole(evaluation));
    checks.extend(thickness(evaluation));
    checks.extend(glass_and_people(evaluation));
    checks
}

/// An input that is a limit, and the share of it to keep in hand: `usual`, and what its own tolerance takes
/// off it. A limit of nothing has no share to keep, so its worst end stands for it.
fn given(evaluation: &Evaluation, name: &str, bound: Bound, usual: f64) -> (f64, f64) {
    let limit = evaluation.values.number(name).unwrap_or(0.0);
    let (low, high) = evaluation.values.ends_of(name).unwrap_or((limit, limit));
    let worst = match bound {
        Bound::AtLeast => high,
        Bound::AtMost => low,
    };
    if limit == 0.0 {
        (worst, usual)
    } else {
        (limit, usual + ((worst - limit) / limit).abs())
    }
}

fn lead(evaluation: &Evaluation) -> Vec<Check> {
    let rule = |name, title, bound, (limit, reserve), blocking, needs| Rule {
        name,
        title,
        subject: Subject::Figure("lead_time"),
        quantity: Quantity::Time,
        bound,
        limit,
        source: plan(),
        blocking,
        reserve,
        needs,
    };
    let least = given(evaluation, "least_lead", Bound::AtLeast, RESERVE);
    let most = given(evaluation, "most_lead", Bound::AtMost, RESERVE);
    vec![
        judge(
            evaluation,
            rule(
                "least_lead",
                "Lead against the least given",
                Bound::AtLeast,
                least,
                true,
                SHORT,
            ),
            |held| {
                format!(
                    "Contact comes {} after the charge at the least; the licensed operator allows no less \
                     than {}. Move the cue mark away from the pane to gain lead.",
                    say(Quantity::Time, held.low),
                    say(Quantity::Time, least.0)
                )
            },
        ),
        judge(
            evaluation,
            rule(
                "most_lead",
                "Lead against the longest wanted",
                Bound::AtMost,
                most,
                false,
                LONG,
            ),
            |held| {
                format!(
                    "Contact comes {} after the charge at the most; past {} the shot no longer works. \
                     Move the cue mark towards the pane.",
                    say(Quantity::Time, held.high),
                    say(Quantity::Time, most.0)
                )
            },
        ),
    ]
}

fn chances(evaluation: &Evaluation) -> Vec<Check> {
    let rule = |name, title, needs| {
        Rule::policy(
            evaluation,
            name,
            title,
            Subject::Figure(name),
            Bound::AtMost,
            needs,
        )
    };
    let limit = |name: &str| {
        evaluation
            .policies
            .get(name)
            .map_or_else(String::new, |policy| chance(policy.value))
    };
    let misfire = evaluation
        .values
        .number("misfire_chance")
        .map_or_else(String::new, chance);
    vec![
        judge(
            evaluation,
            rule("whole_chance", "Chance of a whole pane", WHOLE),
            |held| {
                format!(
                    "The pane is whole at contact in {} of all runs, in {} because nothing fires; the \
                     limit is {}. A longer cue distance, a light gate or a steadier run lowers it.",
                    chance(held.value),
                    misfire,
                    limit("whole_chance")
                )
            },
        ),
        judge(
            evaluation,
            rule("short_lead_chance", "Chance of a short lead", SPREAD_SHORT).cautionary(),
            |held| {
                format!(
                    "The lead is shorter than the operator allows in {} of runs; the limit is {}.",
                    chance(held.value),
                    limit("short_lead_chance")
                )
            },
        ),
        judge(
            evaluation,
            rule("long_lead_chance", "Chance of a long lead", SPREAD_LONG).cautionary(),
            |held| {
                format!(
                    "The lead is longer than the shot can use in {} of runs; the limit is {}.",
                    chance(held.value),
                    limit("long_lead_chance")
                )
            },
        ),
    ]
}

/// What a pane that stays whole would do.
fn whole(evaluation: &Evaluation) -> Vec<Check> {
    let energy = |name, title, limit, source, needs| Rule {
        name,
        title,
        subject: Subject::Figure("body_energy"),
        quantity: Quantity::Energy,
        bound: Bound::AtMost,
        limit,
        source,
        blocking: false,
        reserve: RESERVE,
        needs,
    };
    let height = match evaluation.values.choice("pane_class") {
        Some("class_1") => glass::CLASS_HEIGHTS[2],
        Some("class_2") => glass::CLASS_HEIGHTS[1],
        Some("class_3") => glass::CLASS_HEIGHTS[0],
        // A pane of no class has no limit that could be held against it.
        Some(_) => f64::NAN,
        None => 0.0,
    };
    let class = glass::pendulum_energy(height);
    let category = glass::bag_energy(glass::CATEGORY_HEIGHTS[1]);
    vec![
        judge(
            evaluation,
            energy(
                "pane_class",
                "Body against the pane's class",
                class,
                from_memory("EN 12600", "pendulum classes"),
                &["performer_mass", "run_speed", "pane_class"],
            ),
            |held| {
                format!(
                    "The body brings {} and the pendulum showed how this pane behaves up to {}; past that \
                     nothing says how a whole pane breaks.",
                    say(Quantity::Energy, held.value),
                    say(Quantity::Energy, class)
                )
            },
        ),
        judge(
            evaluation,
            energy(
                "safety_glazing",
                "Body against safety glazing",
                category,
                published("16 CFR 1201", "category II, 48 in", Some("United States")),
                ENERGY,
            ),
            |held| {
                format!(
                    "The body brings {}; safety glazing is tested with up to {}, so the label says nothing \
                     about this run into a whole pane.",
                    say(Quantity::Energy, held.value),
                    say(Quantity::Energy, category)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "whole_pane_head",
                title: "Head on a whole pane, 15 ms",
                subject: Subject::Figure("whole_pane_head"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit: 700.0,
                source: published("49 CFR 571.208", "S6.2, 15 ms", Some("United States")),
                blocking: false,
                reserve: RESERVE,
                needs: &["run_speed"],
            },
            |held| {
                format!(
                    "If nothing fires and the pane holds, HIC is {} at this speed; lead with arms and \
                     shoulder, and stop the run on a call.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
    ]
}

/// The fragment count's standard covers panes from 4 to 12 mm.
fn thickness(evaluation: &Evaluation) -> [Check; 2] {
    let rule = |name, title, bound, limit| Rule {
        name,
        title,
        subject: Subject::Input("pane_thickness"),
        quantity: Quantity::Length,
        bound,
        limit,
        source: from_memory("EN 12150-1", "40 fragments from 4 to 12 mm"),
        blocking: false,
        reserve: 0.0,
        needs: &["pane_thickness"],
    };
    [
        judge(
            evaluation,
            rule(
                "pane_thickness",
                "Thickness the count holds for",
                Bound::AtMost,
                0.012,
            ),
            |held| {
                format!(
                    "The pane is {} thick; thicker ones than the standard's break coarser and fall heavier.",
                    say(Quantity::Length, held.value)
                )
            },
        ),
        judge(
            evaluation,
            rule(
                "pane_thinness",
                "Thinnest the count holds for",
                Bound::AtLeast,
                0.004,
            ),
            |held| {
                format!(
                    "The pane is {} thick; for thinner ones than the standard's its count of fragments says \
                     nothing.",
                    say(Quantity::Length, held.value)
                )
            },
        ),
    ]
}

fn glass_and_people(evaluation: &Evaluation) -> Vec<Check> {
    let (radius, reserve) = given(evaluation, "fragment_radius", Bound::AtLeast, 0.0);
    vec![
        judge(
            evaluation,
            Rule {
                name: "fragments",
                title: "Fragments of a test pane",
                subject: Subject::Input("fragment_count"),
                quantity: Quantity::Count,
                bound: Bound::AtLeast,
                limit: 40.0,
                source: from_memory("EN 12150-1", "fragments in 50 by 50 mm"),
                blocking: true,
                reserve: 0.0,
                needs: &["fragment_count"],
            },
            |held| {
                format!(
                    "{} fragments in the coarsest 50 by 50 mm of a test pane; fewer means long splinters: \
                     refuse the batch.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "test_panes",
                "Test panes fired",
                Subject::Input("test_panes"),
                Bound::AtLeast,
                &["test_panes"],
            )
            .exact(),
            |held| {
                format!(
                    "{} panes of this batch were fired with nobody near; each shows delay, break and where \
                     fragments land.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "people_clear",
                title: "People clear of fragments",
                subject: Subject::Input("people_distance"),
                quantity: Quantity::Length,
                bound: Bound::AtLeast,
                limit: radius,
                source: plan(),
                blocking: true,
                reserve,
                needs: &["people_distance", "fragment_radius"],
            },
            |held| {
                format!(
                    "The nearest person without a shield is {} from the pane; the operator gives {} for \
                     fragments.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, radius)
                )
            },
        ),
    ]
}
