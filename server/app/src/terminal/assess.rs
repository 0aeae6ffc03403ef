//! `assess`: a technique's figures and checks from quantities as people write them.

use std::collections::BTreeMap;

use gagwright_mechanics::{
    AssessError, Assessment, InputValue, Inputs, Parameter, ParameterKind, Technique, find,
    techniques, units,
};
use serde_json::json;

use super::{
    arguments::AssessArguments,
    fault::Fault,
    say, say_json,
    table::{Align, Table, WIDTH, paragraph},
};
use crate::{packets, words};

pub(crate) fn run(arguments: &AssessArguments) -> Result<(), Fault> {
    let Some(name) = &arguments.technique else {
        return list(arguments.json);
    };
    let technique = technique(name)?;
    if arguments.describe {
        return describe(technique, arguments.json);
    }
    let inputs = read(technique, &arguments.inputs)?;
    let assessment = technique
        .assess(&inputs)
        .map_err(|error| refusal(technique, &error))?;
    if arguments.json {
        return say_json(&assessment);
    }
    say(report(technique, &assessment, &inputs))
}

/// The technique of that name.
pub(crate) fn technique(name: &str) -> Result<&'static dyn Technique, Fault> {
    find(name).ok_or_else(|| {
        let known: Vec<&str> = techniques().iter().map(|one| one.name()).collect();
        Fault::usage(format!(
            "there is no technique \"{name}\"; use one of: {}",
            known.join(", ")
        ))
    })
}

fn list(json: bool) -> Result<(), Fault> {
    if json {
        let items: Vec<_> = techniques()
            .iter()
            .map(
                |one| json!({ "name": one.name(), "title": one.title(), "summary": one.summary() }),
            )
            .collect();
        return say_json(&items);
    }
    let mut table = Table::new(&[("Technique", Align::Left), ("What it covers", Align::Left)]);
    for technique in techniques() {
        table.row([technique.name(), technique.summary()]);
    }
    say(format!(
        "{}\nTo see what one wants to know: gagwright assess TECHNIQUE --describe\n",
        table.render(WIDTH)
    ))
}

fn describe(technique: &dyn Technique, json: bool) -> Result<(), Fault> {
    if json {
        return say_json(&json!({
            "name": technique.name(),
            "title": technique.title(),
            "summary": technique.summary(),
            "parameters": technique.parameters(),
            "figures": technique.figures(),
        }));
    }
    let mut text = format!("{}\n", technique.title());
    text.push_str(&paragraph("", 0, technique.summary()));
    text.push('\n');
    let mut table = Table::new(&[
        ("Input", Align::Left),
        ("Range", Align::Left),
        ("Usually", Align::Left),
        ("Part", Align::Left),
    ]);
    for parameter in technique.parameters() {
        let (range, usual) = match &parameter.kind {
            ParameterKind::Number {
                quantity,
                default,
                min,
                max,
                tolerance,
            } => (
                units::say_range(*quantity, *min, *max),
                default.map_or("must be given".to_owned(), |value| {
                    packets::with_tolerance(*quantity, value, *tolerance, words::metric)
                }),
            ),
            ParameterKind::Choice { options, default } => (
                options
                    .iter()
                    .map(|one| one.name)
                    .collect::<Vec<_>>()
                    .join(", "),
                default.map_or("must be given".to_owned(), str::to_owned),
            ),
        };
        table.row([parameter.name, &range, &usual, parameter.facet.name()]);
    }
    text.push_str(&table.render(WIDTH));
    text.push('\n');
    for parameter in technique.parameters() {
        text.push_str(&paragraph(
            "",
            2,
            &format!("{}: {}", parameter.name, parameter.help),
        ));
    }
    say(text)
}

/// Reads name=value pairs as quantities of the technique's parameters.
pub(crate) fn read(technique: &dyn Technique, given: &[String]) -> Result<Inputs, Fault> {
    let mut inputs = BTreeMap::new();
    for pair in given {
        let (name, value) = pair.split_once('=').ok_or_else(|| {
            Fault::usage(format!(
                "\"{pair}\" has no =; write an input as name=value, such as drop_height=30m"
            ))
        })?;
        let name = name.trim();
        let parameter = parameter(technique, name)?;
        let value = match &parameter.kind {
            ParameterKind::Number { quantity, .. } => {
                let measured = units::parse(*quantity, value)
                    .map_err(|error| Fault::usage(format!("{name}: {error}")))?;
                InputValue::Number {
                    value: measured.value,
                    tolerance: measured.tolerance,
                }
            }
            ParameterKind::Choice { .. } => InputValue::Choice(value.trim().to_owned()),
        };
        if inputs.insert(name.to_owned(), value).is_some() {
            return Err(Fault::usage(format!(
                "{name} is given twice; give each input once"
            )));
        }
    }
    Ok(Inputs(inputs))
}

pub(crate) fn parameter(
    technique: &dyn Technique,
    name: &str,
) -> Result<&'static Parameter, Fault> {
    technique
        .parameters()
        .iter()
        .find(|one| one.name == name)
        .ok_or_else(|| {
            let known: Vec<&str> = technique.parameters().iter().map(|one| one.name).collect();
            Fault::usage(format!(
                "{} has no input \"{name}\"; it has: {}",
                technique.name(),
                known.join(", ")
            ))
        })
}

fn refusal(technique: &dyn Technique, error: &AssessError) -> Fault {
    Fault::usage(format!(
        "{error}\nSee the ranges with: gagwright assess {} --describe",
        technique.name()
    ))
}

fn report(technique: &dyn Technique, assessment: &Assessment, inputs: &Inputs) -> String {
    let mut text = format!("{}\n\n", technique.title());
    text.push_str(&used(technique, inputs));
    text.push('\n');
    text.push_str(&figures(assessment));
    text.push('\n');
    text.push_str(&checks(assessment));
    for zone in &assessment.zones {
        text.push_str(&paragraph(
            "",
            2,
            &format!(
                "Clear ground: {}: {}. {}",
                zone.title,
                packets::extent(&zone.shape),
                zone.reason
            ),
        ));
    }
    for caution in &assessment.cautions {
        text.push_str(&paragraph("", 2, &format!("Caution: {}", caution.text)));
    }
    text.push_str(&paragraph(
        "",
        2,
        "A planning aid: local law and licensed people decide.",
    ));
    text
}

/// The inputs the figures rest on, those left out included, so that nothing is assumed unseen.
fn used(technique: &dyn Technique, inputs: &Inputs) -> String {
    let mut table = Table::new(&[
        ("Input", Align::Left),
        ("Metric", Align::Right),
        ("Imperial", Align::Right),
        ("", Align::Left),
    ]);
    for parameter in technique.parameters() {
        let given = inputs.0.get(parameter.name);
        let from = if given.is_some() {
            "given"
        } else {
            "usual value"
        };
        match (&parameter.kind, given) {
            (
                ParameterKind::Number {
                    quantity,
                    default,
                    tolerance,
                    ..
                },
                given,
            ) => {
                let (value, spread) = match given {
                    Some(InputValue::Number {
                        value,
                        tolerance: own,
                    }) => (Some(*value), own.unwrap_or(*tolerance)),
                    _ => (*default, *tolerance),
                };
                let Some(value) = value else {
                    table.row([parameter.title, "not given", "", "unknown"]);
                    continue;
                };
                let metric = packets::with_tolerance(*quantity, value, spread, words::metric);
                let imperial = packets::with_tolerance(*quantity, value, spread, words::imperial);
                let imperial = if imperial == metric {
                    String::new()
                } else {
                    imperial
                };
                table.row([parameter.title, &metric, &imperial, from]);
            }
            (ParameterKind::Choice { options, default }, given) => {
                let name = match given {
                    Some(InputValue::Choice(name)) => Some(name.as_str()),
                    _ => *default,
                };
                let chosen = options.iter().find(|one| Some(one.name) == name);
                match chosen {
                    Some(option) => table.row([parameter.title, option.title, "", from]),
                    None => table.row([parameter.title, "not given", "", "unknown"]),
                }
            }
        }
    }
    table.render(WIDTH)
}

fn figures(assessment: &Assessment) -> String {
    let mut table = Table::new(&[
        ("Figure", Align::Left),
        ("Metric", Align::Right),
        ("Imperial", Align::Right),
        ("Interval", Align::Left),
    ]);
    for figure in &assessment.figures {
        let metric = words::metric(figure.quantity, figure.value);
        let imperial = words::imperial(figure.quantity, figure.value);
        let imperial = if imperial == metric {
            String::new()
        } else {
            imperial
        };
        table.row([
            &figure.title,
            &metric,
            &imperial,
            &words::figure_interval(figure),
        ]);
    }
    table.render(WIDTH)
}

fn checks(assessment: &Assessment) -> String {
    let mut table = Table::new(&[("Outcome", Align::Left), ("Check", Align::Left)]);
    for check in &assessment.checks {
        let weight = if check.blocking {
            "stops the gag"
        } else {
            "for those who sign"
        };
        table.row([
            words::status(check.status).to_owned(),
            format!(
                "{}\n{}\nLimit {} ({}); {weight}",
                check.title,
                check.detail,
                words::limit(check),
                words::source_and_standing(&check.source)
            ),
        ]);
    }
    if table.is_empty() {
        String::new()
    } else {
        format!("{}\n", table.render(WIDTH))
    }
}
