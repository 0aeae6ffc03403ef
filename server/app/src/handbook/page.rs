//! One technique's page.

use std::{collections::BTreeMap, fmt::Write};

use gagwright_mechanics::{
    Check, InputValue, Inputs, Limits, Parameter, ParameterKind, Standing, Technique, units,
};

use super::table;
use crate::{packets::with_tolerance, words};

/// Everything the technique's description says, as Markdown.
pub fn page(technique: &dyn Technique) -> String {
    let mut text = format!(
        "# {}\n\n{}\n\n[All techniques](README.md). In the terminal: `gagwright assess {} --describe`.\n",
        technique.title(),
        technique.summary(),
        technique.name()
    );
    inputs(&mut text, technique);
    figures(&mut text, technique);
    checks(&mut text, technique);
    shots(&mut text, technique);
    text
}

fn inputs(text: &mut String, technique: &dyn Technique) {
    text.push_str(
        "\n## What it asks for\n\nWhat is left out takes its usual value; where there is none, whatever \
         needs it is unknown.\n\n",
    );
    table(
        text,
        &[
            "Input",
            "What to give",
            "Usual value",
            "Range",
            "Part of the plan",
        ],
        technique.parameters().iter().map(|one| {
            let (usual, range) = accepted(one);
            vec![
                format!("**{}** `{}`", one.title, one.name),
                one.help.to_owned(),
                usual,
                range,
                one.facet.name().to_owned(),
            ]
        }),
    );
}

/// The usual value and what is accepted, in metric and imperial.
fn accepted(parameter: &Parameter) -> (String, String) {
    match &parameter.kind {
        ParameterKind::Number {
            quantity,
            default,
            min,
            max,
            tolerance,
        } => {
            let told = |value: f64, say: fn(_, f64) -> String| {
                with_tolerance(*quantity, value, *tolerance, say)
            };
            let usual = match default {
                Some(value) => {
                    let metric = told(*value, words::metric);
                    let imperial = told(*value, words::imperial);
                    if metric == imperial {
                        metric
                    } else {
                        format!("{metric} ({imperial})")
                    }
                }
                None if *tolerance > 0.0 => {
                    format!("must be given; {}", spread(*quantity, *tolerance))
                }
                None => "must be given".to_owned(),
            };
            (usual, units::say_range(*quantity, *min, *max))
        }
        ParameterKind::Choice { options, default } => {
            let title = |name: &str| {
                options
                    .iter()
                    .find(|one| one.name == name)
                    .map_or("", |one| one.title)
            };
            let usual = default.map_or("must be given", title).to_owned();
            let each: Vec<String> = options
                .iter()
                .map(|one| format!("{} `{}`", one.title, one.name))
                .collect();
            (usual, each.join("; "))
        }
    }
}

/// A tolerance alone. A difference of temperatures is not a temperature, so it is said in kelvin.
fn spread(quantity: gagwright_mechanics::Quantity, tolerance: f64) -> String {
    if quantity == gagwright_mechanics::Quantity::Temperature {
        format!("± {tolerance} K")
    } else {
        format!("± {}", words::both(quantity, tolerance))
    }
}

fn figures(text: &mut String, technique: &dyn Technique) {
    text.push_str(
        "\n## What it gives\n\nEach with the interval that the inputs' tolerances span.\n\n",
    );
    table(
        text,
        &["Figure", "What it is"],
        technique.figures().iter().map(|one| {
            vec![
                format!("**{}** `{}`", one.title, one.name),
                one.help.to_owned(),
            ]
        }),
    );
}

/// Every check the technique can make, under whichever options, by name in order of appearance.
fn all_checks(technique: &dyn Technique) -> Vec<Check> {
    let mut asked = vec![Inputs::default()];
    for parameter in technique.parameters() {
        if let ParameterKind::Choice { options, .. } = &parameter.kind {
            asked.extend(options.iter().map(|option| {
                Inputs(BTreeMap::from([(
                    parameter.name.to_owned(),
                    InputValue::Choice(option.name.to_owned()),
                )]))
            }));
        }
    }
    let mut found: Vec<Check> = Vec::new();
    for assessment in asked.iter().filter_map(|one| technique.assess(one).ok()) {
        for check in assessment.checks {
            if found.iter().all(|one| one.name != check.name) {
                found.push(check);
            }
        }
    }
    found
}

fn checks(text: &mut String, technique: &dyn Technique) {
    let checks = all_checks(technique);
    if checks.is_empty() {
        return;
    }
    let policies = Limits::built_in().of(technique.name());
    text.push_str("\n## What it is held against\n\n");
    table(
        text,
        &["Check", "Weight", "Where the limit comes from"],
        checks.iter().map(|check| {
            let source = match check.source.standing {
                Standing::Plan => "the plan itself".to_owned(),
                _ => words::source_and_standing(&check.source),
            };
            vec![
                check.title.clone(),
                if check.blocking {
                    "stops the gag"
                } else {
                    "for those who sign"
                }
                .to_owned(),
                source,
            ]
        }),
    );
    if policies.is_empty() {
        return;
    }
    text.push_str(
        "\n### Limits of habit\n\nThese are habits of the trade, neither physics nor law. A production sets \
         its own.\n\n",
    );
    table(
        text,
        &["Check", "Limit", "Why"],
        policies.values().map(|policy| {
            let check = checks.iter().find(|check| check.name == policy.name);
            let value = words::both(policy.quantity, policy.value);
            let limit = check.map_or(value, |check| {
                let mut shown = check.clone();
                shown.limit.value = policy.value;
                shown.limit.quantity = policy.quantity;
                words::limit(&shown)
            });
            let title =
                check.map_or_else(|| policy.name.replace('_', " "), |one| one.title.clone());
            vec![title, limit, policy.why.clone()]
        }),
    );
}

fn shots(text: &mut String, technique: &dyn Technique) {
    let names = technique.coefficients();
    if names.is_empty() {
        return;
    }
    text.push_str(
        "\n## What test shots settle\n\nNo sheet says these for the rig as it stands; shots with a weight \
         bag do ([worked](../weight-bag-ladder.md)). Log the settings and what was measured, and the calibration gives each with its interval, \
         or says which shot is missing.\n\n",
    );
    for parameter in technique
        .parameters()
        .iter()
        .filter(|one| names.contains(&one.name))
    {
        // Writing to a string cannot fail.
        let _ = writeln!(text, "- **{}**: {}", parameter.title, parameter.help);
    }
}
