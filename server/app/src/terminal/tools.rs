//! `spread`, `sensitivity` and `solve`: questions about a plan, from quantities as people write them.

use gagwright_mechanics::{
    AssessError, FigureDescription, Parameter, ParameterKind, Quantity, Technique,
    tools::{self, SensitivityRequest, SolveRequest, SpreadRequest},
    units,
};

use super::{
    arguments::{SensitivityArguments, SolveArguments, SpreadArguments},
    assess::{parameter, read, technique},
    fault::Fault,
    say, say_json,
    table::{Align, Table, WIDTH, paragraph},
};
use crate::{threads::AllCores, words};

pub(crate) fn spread(arguments: &SpreadArguments) -> Result<(), Fault> {
    let technique = technique(&arguments.technique)?;
    let request = SpreadRequest {
        inputs: read(technique, &arguments.inputs)?,
        draws: arguments.draws,
        seed: arguments.seed,
    };
    let found = tools::spread_on(&AllCores, technique, &request)
        .map_err(|error| refusal(technique, &error))?;
    if arguments.json {
        return say_json(&found);
    }
    let mut figures = Table::new(&[
        ("Figure", Align::Left),
        ("Stated", Align::Right),
        ("Middle", Align::Right),
        ("90 % of draws", Align::Left),
    ]);
    for one in &found.figures {
        let say = |si| words::metric(one.quantity, si);
        let interval = words::interval(one.low, one.high, say);
        figures.row([one.title.clone(), say(one.value), say(one.median), interval]);
    }
    let mut crossings = Table::new(&[
        ("Limit", Align::Left),
        ("Crossed", Align::Right),
        ("Unknown", Align::Right),
        ("", Align::Left),
    ]);
    for one in &found.crossings {
        crossings.row([
            one.title.clone(),
            one.share.map_or_else(String::new, percent),
            percent(one.unknown),
            if one.blocking { "stops the gag" } else { "" }.to_owned(),
        ]);
    }
    say(format!(
        "{}, {} draws within the inputs' tolerances (seed {})\n\n{}\n{}",
        technique.title(),
        found.draws,
        found.seed,
        figures.render(WIDTH),
        crossings.render(WIDTH)
    ))
}

/// A share in per cent; what is rare is not told as never.
fn percent(share: f64) -> String {
    if share > 0.0 && share < 0.001 {
        "under 0.1 %".to_owned()
    } else {
        format!("{:.1} %", share * 100.0)
    }
}

pub(crate) fn sensitivity(arguments: &SensitivityArguments) -> Result<(), Fault> {
    let technique = technique(&arguments.technique)?;
    let figure = figure(technique, &arguments.figure)?;
    let request = SensitivityRequest {
        inputs: read(technique, &arguments.inputs)?,
        figure: figure.name.to_owned(),
    };
    let found =
        tools::sensitivity(technique, &request).map_err(|error| refusal(technique, &error))?;
    if arguments.json {
        return say_json(&found);
    }
    let written = |si: f64| words::metric(figure.quantity, si);
    let Some(value) = found.value else {
        return Err(Fault::failed(format!(
            "{} is not known for these inputs; see what is missing with: gagwright assess {}",
            figure.title,
            technique.name()
        )));
    };
    let mut bars = Table::new(&[
        ("Input", Align::Left),
        ("At its low end", Align::Right),
        ("At its high end", Align::Right),
        ("Share", Align::Right),
    ]);
    let ends = |end: Option<f64>| end.map_or_else(|| "not given".to_owned(), written);
    for one in found.bars.iter().filter(|one| one.swing > 0.0) {
        bars.row([
            one.title.clone(),
            ends(one.at_low),
            ends(one.at_high),
            percent(one.share),
        ]);
    }
    say(format!(
        "{}: {} {}\n\n{}\n{}",
        technique.title(),
        figure.title.to_lowercase(),
        words::both(figure.quantity, value),
        bars.render(WIDTH),
        paragraph(
            "",
            0,
            "Each input alone at the ends of its tolerance; share is its part of what they do together."
        )
    ))
}

pub(crate) fn solve(arguments: &SolveArguments) -> Result<(), Fault> {
    let technique = technique(&arguments.technique)?;
    let moves = parameter(technique, &arguments.input)?;
    let quantity = quantity_of(moves)?;
    let (name, wanted) = arguments.wanted.split_once('=').ok_or_else(|| {
        Fault::usage(format!(
            "\"{}\" has no =; write the figure you want as name=value, such as impact_speed=12m/s",
            arguments.wanted
        ))
    })?;
    let figure = figure(technique, name.trim())?;
    let quantities = |what: &str, quantity: Quantity, text: &str| {
        units::parse(quantity, text)
            .map(|measured| measured.value)
            .map_err(|error| Fault::usage(format!("{what}: {error}")))
    };
    let end = |what: &str, text: &Option<String>| {
        text.as_deref()
            .map(|text| quantities(what, quantity, text))
            .transpose()
    };
    let request = SolveRequest {
        inputs: read(technique, &arguments.inputs)?,
        parameter: moves.name.to_owned(),
        figure: figure.name.to_owned(),
        wanted: quantities(figure.name, figure.quantity, wanted)?,
        from: end("--from", &arguments.from)?,
        to: end("--to", &arguments.to)?,
    };
    let found =
        tools::solve_for(technique, &request).map_err(|error| refusal(technique, &error))?;
    if arguments.json {
        return say_json(&found);
    }
    if found.roots.is_empty() {
        return Err(Fault::failed(found.note));
    }
    let each: Vec<String> = found
        .roots
        .iter()
        .map(|root| words::both(quantity, *root))
        .collect();
    say(paragraph(
        "",
        0,
        &format!(
            "{}: {} is {} with {} at {}.",
            technique.title(),
            figure.title.to_lowercase(),
            words::both(figure.quantity, found.wanted),
            moves.title.to_lowercase(),
            each.join(" or at ")
        ),
    ))
}

fn quantity_of(parameter: &Parameter) -> Result<Quantity, Fault> {
    match parameter.kind {
        ParameterKind::Number { quantity, .. } => Ok(quantity),
        ParameterKind::Choice { .. } => Err(Fault::usage(format!(
            "{} is a choice and not a number; name an input that is one",
            parameter.name
        ))),
    }
}

fn figure(technique: &dyn Technique, name: &str) -> Result<&'static FigureDescription, Fault> {
    let figures = technique.figures();
    figures.iter().find(|one| one.name == name).ok_or_else(|| {
        let known: Vec<&str> = figures.iter().map(|one| one.name).collect();
        Fault::usage(format!(
            "{} gives no figure \"{name}\"; it gives: {}",
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
