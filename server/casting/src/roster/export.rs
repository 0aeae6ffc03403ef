//! The record as a table, safe to open in a spreadsheet and the same when read back.

use std::collections::BTreeMap;

use jiff::civil::Date;

use super::{RosterTable, cell::escaped, columns::MEASUREMENTS, measure::write};
use crate::person::{Measured, Person};

/// One of the four tables as comma-separated text (RFC 4180: CRLF, quotes where needed), people by
/// code.
///
/// Text that a spreadsheet would run as a formula gets an apostrophe before it; [`super::parse`]
/// takes it off again. Write the bytes EF BB BF before the text for a spreadsheet that would
/// otherwise guess an encoding; they are read back too.
#[must_use]
pub fn export(table: RosterTable, people: &[Person]) -> String {
    let mut people: Vec<&Person> = people.iter().collect();
    people.sort_by(|a, b| a.code.cmp(&b.code));
    let mut text = String::new();
    line(&mut text, table.columns().map(String::from));
    for person in people {
        for cells in rows(table, person) {
            line(&mut text, cells.into_iter());
        }
    }
    text
}

fn line(text: &mut String, cells: impl Iterator<Item = String>) {
    for (place, cell) in cells.enumerate() {
        if place > 0 {
            text.push(',');
        }
        if cell.contains([',', '"', '\r', '\n', ';', '\t']) {
            text.push('"');
            text.push_str(&cell.replace('"', "\"\""));
            text.push('"');
        } else {
            text.push_str(&cell);
        }
    }
    text.push_str("\r\n");
}

/// A person's rows in a table, in the order of its columns.
fn rows(table: RosterTable, person: &Person) -> Vec<Vec<String>> {
    let code = || escaped(&person.code);
    match table {
        RosterTable::People => vec![person_row(person)],
        RosterTable::Certificates => person
            .certificates
            .iter()
            .map(|held| {
                let check = held.checked.as_ref();
                vec![
                    code(),
                    escaped(&held.kind),
                    words(held.category.as_ref()),
                    words(held.number.as_ref()),
                    words(held.issuer.as_ref()),
                    held.issued.to_string(),
                    day(held.expires),
                    day(held.last_used),
                    words(check.map(|check| &check.by)),
                    day(check.map(|check| check.on)),
                    words(check.map(|check| &check.method)),
                    day(held.withdrawn),
                ]
            })
            .collect(),
        RosterTable::Skills => person
            .skills
            .iter()
            .map(|held| {
                vec![
                    code(),
                    escaped(&held.name),
                    held.level.to_string(),
                    words(held.assessed_by.as_ref()),
                    day(held.assessed_on),
                    day(held.last_used),
                ]
            })
            .collect(),
        RosterTable::Availability => person
            .availability
            .iter()
            .map(|run| {
                vec![
                    code(),
                    run.from.to_string(),
                    run.to.to_string(),
                    yes_no(run.available),
                ]
            })
            .collect(),
    }
}

fn person_row(person: &Person) -> Vec<String> {
    let usual = usual(person);
    let mut cells = vec![
        escaped(&person.code),
        escaped(&person.name),
        escaped(&person.occupation),
        yes_no(person.performs),
        words(person.email.as_ref()),
        day(person.born),
    ];
    for (of, _) in MEASUREMENTS {
        cells.push(
            person
                .measurements
                .get(&of)
                .map_or_else(String::new, |measured| {
                    let value = write(of, measured.value);
                    if usual == Some((measured.on, measured.by.as_deref())) {
                        value
                    } else {
                        match &measured.by {
                            None => format!("{value} on {}", measured.on),
                            Some(by) => format!("{value} on {} by {}", measured.on, escaped(by)),
                        }
                    }
                }),
        );
    }
    cells.push(day(usual.map(|(on, _)| on)));
    cells.push(
        usual
            .and_then(|(_, by)| by)
            .map_or_else(String::new, escaped),
    );
    cells.push(day(person.medically_clear_until));
    cells.push(
        person
            .last_wrap
            .map_or_else(String::new, |at| at.to_string()),
    );
    cells
}

/// The day and witness that most of a person's measurements share, for the row's own columns; the
/// others say theirs in the cell.
fn usual(person: &Person) -> Option<(Date, Option<&str>)> {
    let mut counts: BTreeMap<(Date, Option<&str>), usize> = BTreeMap::new();
    for Measured { on, by, .. } in person.measurements.values() {
        *counts.entry((*on, by.as_deref())).or_default() += 1;
    }
    counts
        .into_iter()
        .max_by_key(|(_, count)| *count)
        .map(|(taken, _)| taken)
}

fn words(text: Option<&String>) -> String {
    text.map_or_else(String::new, |text| escaped(text))
}

fn day(date: Option<Date>) -> String {
    date.map_or_else(String::new, |date| date.to_string())
}

fn yes_no(yes: bool) -> String {
    if yes { "yes".into() } else { "no".into() }
}
