//! The roster: one person put, or a whole table imported, all or nothing.

use std::collections::BTreeMap;

use gagwright_casting::{
    Person, PersonId,
    roster::{self, RosterErrors, RosterTable},
};
use gagwright_store::{Connection, people::StoredPerson};
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CellProblem, CommandError, Entropy,
    problems::{Problems, SHORT},
    record,
};
use crate::{permissions::Permission, views::ImportReport};

/// What putting a person did.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PersonPut {
    /// The version to give back when writing again.
    pub version: i64,
    /// Whether they are new on the roster.
    pub created: bool,
}

/// Adds a person to the roster (`expected` none) or replaces what it says about them (`expected` the
/// version in hand).
///
/// # Errors
/// Without [`Permission::EditPeople`], for fields that are not valid, when the code is someone else's,
/// or when the version in hand is no longer current.
pub fn put(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    person: Person,
    expected: Option<i64>,
    entropy: Entropy<'_>,
) -> Result<PersonPut, CommandError> {
    actor.require(Permission::EditPeople)?;
    check(&person, now)?;
    if let Some(other) = gagwright_store::people::by_code(conn, actor.production, &person.code)?
        && other.person.id != person.id
    {
        return Err(CommandError::Conflict {
            what: "code",
            detail: format!(
                "{} is {}'s; choose another code",
                person.code, other.person.name
            ),
        });
    }
    let stored = gagwright_store::people::get(conn, actor.production, person.id)?;
    let version = match (&stored, expected) {
        (None, None) => 1,
        (None, Some(_)) => {
            return Err(CommandError::NotFound {
                what: "person",
                id: person.id.to_string(),
            });
        }
        (Some(stored), Some(expected)) if stored.version == expected => expected + 1,
        (Some(stored), expected) => {
            let hand = expected.map_or("none".to_owned(), |one| one.to_string());
            return Err(CommandError::Conflict {
                what: "person",
                detail: format!(
                    "what the roster says about {} is at version {}, you had {hand} in hand; read \
                     it again and repeat your change",
                    stored.person.name, stored.version
                ),
            });
        }
    };
    record::Leaf::new("person.put", now, Some(actor))
        .fact("person", json!(person.id))
        .fact("version", json!(version))
        .fact("created", json!(stored.is_none()))
        .person(&person, entropy)
        .append(conn)?;
    let created = stored.is_none();
    write(conn, actor, person, expected.filter(|_| !created), created)?;
    Ok(PersonPut { version, created })
}

fn write(
    conn: &mut Connection,
    actor: &Actor,
    person: Person,
    expected: Option<i64>,
    created: bool,
) -> Result<(), CommandError> {
    if created {
        let stored = StoredPerson {
            person,
            production: actor.production,
            version: 1,
        };
        gagwright_store::people::insert(conn, &stored)?;
    } else {
        gagwright_store::people::update(conn, actor.production, &person, expected)?;
    }
    Ok(())
}

fn check(person: &Person, now: Timestamp) -> Result<(), CommandError> {
    let mut problems = Problems::default();
    problems.required("/code", &person.code, 24);
    problems.required("/name", &person.name, SHORT);
    problems.text("/occupation", &person.occupation, SHORT);
    if let Some(email) = &person.email {
        problems.text("/email", email, SHORT);
        let whole = email.split_once('@').is_some_and(|(name, host)| {
            !name.is_empty() && host.contains('.') && !email.contains(char::is_whitespace)
        });
        if !whole {
            problems.add(
                "/email",
                "is not an address",
                "write it as name@example.org",
            );
        }
    }
    for (measurement, measured) in &person.measurements {
        let name = crate::words::named(measurement).replace(' ', "_");
        let (least, most) = match measurement {
            gagwright_casting::Measurement::Mass => (10.0, 250.0),
            gagwright_casting::Measurement::Shoe => (20.0, 60.0),
            gagwright_casting::Measurement::Height => (0.5, 2.6),
            _ => (0.05, 2.5),
        };
        problems.number(
            &format!("/measurements/{name}/value"),
            measured.value,
            least,
            most,
            "(metres, kilograms, EU size)",
        );
    }
    let today = now.to_zoned(jiff::tz::TimeZone::UTC).date();
    if person
        .born
        .is_some_and(|born| born > today || born.year() < 1900)
    {
        problems.add(
            "/born",
            "is not a birthday of anyone alive",
            "check the year",
        );
    }
    for (at, certificate) in person.certificates.iter().enumerate() {
        let pointer = format!("/certificates/{at}");
        problems.required(&format!("{pointer}/kind"), &certificate.kind, SHORT);
        if certificate
            .expires
            .is_some_and(|expires| expires < certificate.issued)
        {
            problems.add(
                format!("{pointer}/expires"),
                "lies before the day it was issued",
                "check both dates",
            );
        }
    }
    for (at, skill) in person.skills.iter().enumerate() {
        let pointer = format!("/skills/{at}");
        problems.required(&format!("{pointer}/name"), &skill.name, SHORT);
        problems.number(
            &format!("{pointer}/level"),
            f64::from(skill.level),
            0.0,
            5.0,
            "",
        );
    }
    for (at, span) in person.availability.iter().enumerate() {
        if span.to < span.from {
            problems.add(
                format!("/availability/{at}/to"),
                "lies before its first day",
                "give the later day as to",
            );
        }
    }
    problems.finish()
}

/// Imports a roster table. Either every row is good and all of it is stored, or nothing is.
///
/// # Errors
/// Without [`Permission::EditPeople`], or as [`CommandError::Roster`] with every wrong cell.
pub fn import(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    table: RosterTable,
    bytes: &[u8],
    entropy: Entropy<'_>,
) -> Result<ImportReport, CommandError> {
    actor.require(Permission::EditPeople)?;
    let before: BTreeMap<PersonId, Person> = gagwright_store::people::list(conn, actor.production)?
        .into_iter()
        .map(|stored| (stored.person.id, stored.person))
        .collect();
    let existing: Vec<Person> = before.values().cloned().collect();
    let today = gagwright_clearance::words::day_of(now);
    let applied = roster::import(table, bytes, &existing, today, &mut || {
        record::mint(now, entropy)
    })?;
    let report = ImportReport {
        table: table.name().into(),
        created: count(applied.created),
        updated: count(applied.updated),
        unchanged: count(applied.unchanged),
        removed: count(applied.removed),
    };
    let touched: Vec<PersonId> = applied.people.iter().map(|person| person.id).collect();
    let mut leaf = record::Leaf::new("roster.imported", now, Some(actor))
        .fact("table", json!(report.table))
        .fact("created", json!(report.created))
        .fact("updated", json!(report.updated))
        .fact("unchanged", json!(report.unchanged))
        .fact("removed", json!(report.removed))
        .fact("people", json!(touched));
    for person in &applied.people {
        leaf = leaf.person(person, entropy);
    }
    leaf.append(conn)?;
    for person in applied.people {
        let created = !before.contains_key(&person.id);
        write(conn, actor, person, None, created)?;
    }
    Ok(report)
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

impl From<RosterErrors> for CommandError {
    fn from(errors: RosterErrors) -> Self {
        let problems = errors
            .errors
            .into_iter()
            .map(|one| CellProblem {
                row: one.row as u64,
                column: one.column,
                problem: one.problem,
                fix: one.fix,
            })
            .collect();
        CommandError::Roster { problems }
    }
}
