//! `match`: everyone on the roster held against a gag's slots, best first, every reason listed.

use gagwright_casting::Slot;

use super::{
    arguments::MatchArguments,
    database,
    fault::Fault,
    say, say_json,
    table::{Align, Table, WIDTH, paragraph},
};
use crate::{
    clock,
    views::{self, Matches},
    words,
};

pub(crate) fn run(arguments: &MatchArguments) -> Result<(), Fault> {
    let store = database::open(&arguments.place)?;
    let found = store.read(|conn| {
        let production = database::production(conn, &arguments.place)?;
        let actor = database::actor(conn, &production, &arguments.place)?;
        let row = database::gag(conn, &production, &arguments.gag)?;
        let plan = gagwright_store::plans::current(conn, row.id)?;
        let slots = &plan.facets.cast.slots;
        let wanted: Vec<&Slot> = match &arguments.slot {
            None => slots.iter().collect(),
            Some(name) => vec![pick(slots, name)?],
        };
        wanted
            .into_iter()
            .map(|slot| Ok(views::matches(conn, &actor, clock::now(), row.id, slot.id)?))
            .collect::<Result<Vec<Matches>, Fault>>()
    })?;
    if arguments.json {
        return say_json(&found);
    }
    if found.is_empty() {
        return say(format!("{} has no slots yet.", arguments.gag));
    }
    let told: Vec<String> = found.iter().map(report).collect();
    say(told.join("\n"))
}

fn pick<'a>(slots: &'a [Slot], wanted: &str) -> Result<&'a Slot, Fault> {
    let by_number = wanted
        .parse::<usize>()
        .ok()
        .and_then(|number| slots.get(number.checked_sub(1)?));
    by_number
        .or_else(|| {
            slots
                .iter()
                .find(|slot| slot.name == wanted || slot.id.to_string() == wanted)
        })
        .ok_or_else(|| {
            let known: Vec<String> = slots
                .iter()
                .enumerate()
                .map(|(at, slot)| format!("{} \"{}\"", at + 1, slot.name))
                .collect();
            Fault::failed(format!(
                "there is no slot \"{wanted}\"; there is: {}",
                known.join(", ")
            ))
        })
}

/// One slot's candidates: a table of verdicts, then what is wrong with each.
pub(crate) fn report(found: &Matches) -> String {
    let day = found.day.map(words::day).unwrap_or_default();
    let mut text = format!("{}, {day}\n\n", found.slot.name);
    let mut table = Table::new(&[
        ("Code", Align::Left),
        ("Name", Align::Left),
        ("Verdict", Align::Left),
        ("Fit", Align::Right),
        ("Met", Align::Right),
    ]);
    for candidate in &found.items {
        let verdict = &candidate.verdict;
        let met = verdict
            .findings
            .iter()
            .filter(|one| one.standing == gagwright_casting::FindingStanding::Met)
            .count();
        let cast = if found.slot.person == Some(candidate.person.id) {
            " (cast)"
        } else {
            ""
        };
        table.row([
            candidate.person.code.clone(),
            format!("{}{cast}", candidate.person.name),
            words::outcome(verdict.outcome).into(),
            format!("{:.0} %", verdict.fit * 100.0),
            format!("{met}/{}", verdict.findings.len()),
        ]);
    }
    text.push_str(&table.render(WIDTH));
    for candidate in &found.items {
        text.push_str(&format!(
            "\n{} {}\n",
            candidate.person.code, candidate.person.name
        ));
        for finding in &candidate.verdict.findings {
            let mut sentence = format!(
                "{}: {}. {}",
                words::finding(finding.standing),
                words::requirement(&finding.requirement),
                finding.reason
            );
            if let Some(cure) = &finding.cure {
                sentence.push_str(&format!(" Cure: {} by {}.", cure.what, words::day(cure.by)));
            }
            text.push_str(&paragraph("  ", 4, &sentence));
        }
    }
    text
}
