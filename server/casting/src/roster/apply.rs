//! Checked rows over the people on record, with every check that needs the record or the day. The
//! people table is here; the tables of what people have are in `belongings`.

use std::collections::BTreeMap;

use jiff::{Timestamp, civil::Date, tz::TimeZone};
use uuid::Uuid;

use super::{
    Applied, belongings,
    columns::MEASUREMENTS,
    error::{Report, Wrong},
    rows::{Content, PersonRow, Rows},
};
use crate::{
    ids::PersonId,
    person::{Measured, Person},
};

/// What an import is doing to the record.
pub(super) struct Desk<'a> {
    /// Everyone, by code in lower case, as the rows so far leave them.
    pub(super) people: BTreeMap<String, Person>,
    pub(super) today: Date,
    pub(super) mint: &'a mut dyn FnMut() -> Uuid,
    pub(super) created: usize,
    pub(super) updated: usize,
    pub(super) unchanged: usize,
    pub(super) removed: usize,
}

impl Desk<'_> {
    /// Refuses a fact dated after today. A day's grace, for the desk and the set may lie either
    /// side of midnight.
    pub(super) fn not_future(&self, row: usize, column: &str, day: Date, report: &mut Report) {
        if day > self.today.tomorrow().unwrap_or(Date::MAX) {
            let problem = format!("{day} is after today, {}", self.today);
            report.add(
                row,
                column,
                Wrong::new(problem, "write the day it really was"),
            );
        }
    }

    /// Counts a row that changed something already there, or did not.
    pub(super) fn count(&mut self, changed: bool) {
        if changed {
            self.updated += 1;
        } else {
            self.unchanged += 1;
        }
    }
}

pub(super) fn apply(
    rows: &Rows,
    existing: &[Person],
    today: Date,
    mint: &mut dyn FnMut() -> Uuid,
    report: &mut Report,
) -> Applied {
    let mut desk = Desk {
        people: existing
            .iter()
            .map(|p| (p.code.to_lowercase(), p.clone()))
            .collect(),
        today,
        mint,
        created: 0,
        updated: 0,
        unchanged: 0,
        removed: 0,
    };
    match &rows.content {
        Content::People(content) => people(content, &rows.columns, &mut desk, report),
        Content::Certificates(rows) => belongings::certificates(rows, &mut desk, report),
        Content::Skills(rows) => belongings::skills(rows, &mut desk, report),
        Content::Availability(rows) => belongings::availability(rows, &mut desk, report),
    }
    let Desk {
        people,
        created,
        updated,
        unchanged,
        removed,
        ..
    } = desk;
    let before: BTreeMap<PersonId, &Person> = existing.iter().map(|p| (p.id, p)).collect();
    let changed = |person: &Person| {
        before
            .get(&person.id)
            .is_none_or(|before| *before != person)
    };
    let people = people.into_values().filter(changed).collect();
    Applied {
        people,
        created,
        updated,
        unchanged,
        removed,
    }
}

fn people(rows: &[PersonRow], columns: &[&str], desk: &mut Desk<'_>, report: &mut Report) {
    for row in rows {
        let key = row.code.to_lowercase();
        match desk.people.get(&key).cloned() {
            Some(before) => {
                let after = fill(before.clone(), row, desk, report);
                desk.count(after != before);
                desk.people.insert(key, after);
            }
            None => {
                if let Some(blank) = newcomer(row, columns, desk, report) {
                    let person = fill(blank, row, desk, report);
                    desk.created += 1;
                    desk.people.insert(key, person);
                }
            }
        }
    }
    one_address_each(rows, desk, report);
}

/// A person with nothing but what a new one must have, or nothing once the report says what is
/// missing.
fn newcomer(
    row: &PersonRow,
    columns: &[&str],
    desk: &mut Desk<'_>,
    report: &mut Report,
) -> Option<Person> {
    let mut must = |column: &str, there: bool| {
        if !there {
            let problem = format!("{} is new and needs a cell `{column}`", row.code);
            let fix = if columns.contains(&column) {
                "fill it in, or check the code"
            } else {
                "add the column, or check the code"
            };
            report.add(row.row, column, Wrong::new(problem, fix));
        }
    };
    must("name", row.name.is_some());
    must("occupation", row.occupation.is_some());
    must("performs", row.performs.is_some());
    let (name, occupation, performs) = (row.name.clone()?, row.occupation.clone()?, row.performs?);
    Some(Person {
        occupation,
        performs,
        ..Person::named(PersonId((desk.mint)()), row.code.clone(), name)
    })
}

/// The person with the row's cells put over them; blank cells keep what is there.
fn fill(mut person: Person, row: &PersonRow, desk: &Desk<'_>, report: &mut Report) -> Person {
    let facts = [
        ("born", row.born),
        ("measured_on", row.measured_on),
        ("last_wrap", row.last_wrap.map(utc_day)),
    ];
    for (column, day) in facts {
        if let Some(day) = day {
            desk.not_future(row.row, column, day, report);
        }
    }
    if let Some(name) = &row.name {
        person.name.clone_from(name);
    }
    if let Some(occupation) = &row.occupation {
        person.occupation.clone_from(occupation);
    }
    person.performs = row.performs.unwrap_or(person.performs);
    person.email = row.email.clone().or(person.email);
    person.born = row.born.or(person.born);
    person.medically_clear_until = row.medically_clear_until.or(person.medically_clear_until);
    person.last_wrap = row.last_wrap.or(person.last_wrap);
    for (of, column) in MEASUREMENTS {
        let Some(cell) = row.measurements.get(&of) else {
            continue;
        };
        let before = person
            .measurements
            .get(&of)
            .filter(|before| before.value == cell.value);
        let (on, by) = match &cell.taken {
            Some((on, by)) => {
                desk.not_future(row.row, column, *on, report);
                (Some(*on), by.clone())
            }
            None => (row.measured_on, row.measured_by.clone()),
        };
        let Some(on) = on.or(before.map(|before| before.on)) else {
            let problem = format!("nothing says when {column} was measured");
            let fix = "fill in `measured_on`, or write the day in the cell: 62 kg on 2026-10-02";
            report.add(row.row, column, Wrong::new(problem, fix));
            continue;
        };
        // The same value taken the same day keeps its witness when the cell names none.
        let witness = before
            .filter(|before| before.on == on)
            .and_then(|before| before.by.clone());
        let measured = Measured {
            value: cell.value,
            on,
            by: by.or(witness),
        };
        person.measurements.insert(of, measured);
    }
    person
}

fn utc_day(at: Timestamp) -> Date {
    at.to_zoned(TimeZone::UTC).date()
}

/// An invitation goes to one person: no two may have one address.
fn one_address_each(rows: &[PersonRow], desk: &Desk<'_>, report: &mut Report) {
    let mut by_address: BTreeMap<String, Vec<&String>> = BTreeMap::new();
    for (key, person) in &desk.people {
        if let Some(email) = &person.email {
            by_address
                .entry(email.to_lowercase())
                .or_default()
                .push(key);
        }
    }
    for row in rows {
        let Some(email) = &row.email else { continue };
        let key = row.code.to_lowercase();
        let holders = by_address.get(&email.to_lowercase());
        let other = holders
            .into_iter()
            .flatten()
            .find(|holder| ***holder != key);
        if let Some(other) = other.and_then(|holder| desk.people.get(*holder)) {
            let problem = format!("{} has the same address", other.code);
            let fix = "give each person their own, or none";
            report.add(row.row, "email", Wrong::new(problem, fix));
        }
    }
}
