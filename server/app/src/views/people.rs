//! The roster as one reader may see it.

use gagwright_casting::PersonId;
use gagwright_store::Connection;
use jiff::Timestamp;

use super::{PersonPage, PersonSummary, SkillLevel, reader};
use crate::{
    commands::{Actor, CommandError, record},
    permissions::Permission,
    words,
};

/// Everyone on the roster, by code.
///
/// # Errors
/// When the reader may not read the production.
pub fn people(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
) -> Result<Vec<PersonSummary>, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let production =
        gagwright_store::productions::get(conn, reader.production)?.ok_or_else(|| {
            CommandError::NotFound {
                what: "production",
                id: reader.production.to_string(),
            }
        })?;
    let today = now.to_zoned(words::zone(&production.time_zone)).date();
    let members = gagwright_store::members::list(conn, reader.production)?;
    let roles = |person: PersonId| {
        members
            .iter()
            .find(|member| member.person == person)
            .map(|member| member.roles.clone())
            .unwrap_or_default()
    };
    Ok(gagwright_store::people::list(conn, reader.production)?
        .into_iter()
        .map(|stored| stored.person)
        .map(|person| PersonSummary {
            roles: roles(person.id),
            skills: person
                .skills
                .iter()
                .map(|skill| SkillLevel {
                    name: skill.name.clone(),
                    level: skill.level,
                })
                .collect(),
            certificates: u32::try_from(person.certificates.len()).unwrap_or(u32::MAX),
            next_expiry: person
                .certificates
                .iter()
                .filter_map(|one| one.expires)
                .filter(|expires| *expires >= today)
                .min(),
            id: person.id,
            code: person.code,
            name: person.name,
            occupation: person.occupation,
            performs: person.performs,
        })
        .collect())
}

/// One person.
///
/// # Errors
/// When nobody of that id is on the reader's roster.
pub fn person(
    conn: &mut Connection,
    reader: &Actor,
    id: PersonId,
) -> Result<PersonPage, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let stored = record::person(conn, reader.production, id)?;
    let roles = gagwright_store::members::get(conn, reader.production, id)?
        .map(|member| member.roles)
        .unwrap_or_default();
    Ok(PersonPage {
        visible: reader::visible(reader, &stored.person),
        person: reader::on_roster(reader, &stored.person),
        version: stored.version,
        roles,
        devices: gagwright_store::devices::for_person(conn, reader.production, id)?,
    })
}
