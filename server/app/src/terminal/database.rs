//! Opening the database a subcommand works on, and finding the production and the person to act as.
//! Whoever can open the file may do anything with it; the leaf still says who is answerable.

use std::path::Path;

use gagwright_clearance::Role;
use gagwright_store::{Connection, Store, productions::Production};

use super::{arguments::Place, fault::Fault};
use crate::commands::{Actor, CommandError};

/// The demo's database.
pub(crate) const DEMO: &str = "gagwright-data/demo.db";
const OWN: &str = "gagwright.db";

/// Opens the database that was named, or the one that is there.
pub(crate) fn open(place: &Place) -> Result<Store, Fault> {
    let address = match &place.database {
        Some(address) => address.clone(),
        None if Path::new(OWN).exists() => OWN.to_owned(),
        None if Path::new(DEMO).exists() => DEMO.to_owned(),
        None => {
            return Err(Fault::failed(format!(
                "there is no database here ({OWN} or {DEMO}); say which with --database, or start \
                 gagwright once with no subcommand to make the demo's"
            )));
        }
    };
    if let Some(path) = sqlite_path(&address)
        && !Path::new(path).exists()
    {
        return Err(Fault::failed(format!(
            "there is no database {path}; check the path, or make it with: gagwright migrate \
             --database {address}"
        )));
    }
    let store = Store::open(&address)?;
    let pending = store.pending_migrations()?;
    if !pending.is_empty() {
        return Err(Fault::failed(format!(
            "the database {} is older than this program; run: gagwright migrate --database {address}",
            store.place()
        )));
    }
    Ok(store)
}

/// The file of an SQLite address; none for a server's.
fn sqlite_path(address: &str) -> Option<&str> {
    match address.split_once(':') {
        Some(("sqlite", path)) => Some(path.trim_start_matches("//")),
        Some((scheme, _)) if scheme.starts_with("postgres") => None,
        _ => Some(address),
    }
}

/// The production meant.
pub(crate) fn production(conn: &mut Connection, place: &Place) -> Result<Production, Fault> {
    let mut all = gagwright_store::productions::list(conn)?;
    let names = |all: &[Production]| {
        all.iter()
            .map(|one| one.name.as_str())
            .collect::<Vec<_>>()
            .join(", ")
    };
    match &place.production {
        Some(wanted) => {
            let known = names(&all);
            all.into_iter()
                .find(|one| one.name == *wanted || one.id.to_string() == *wanted)
                .ok_or_else(|| {
                    Fault::failed(format!(
                        "there is no production \"{wanted}\"; there is: {known}"
                    ))
                })
        }
        None if all.len() == 1 => Ok(all.remove(0)),
        None if all.is_empty() => Err(Fault::failed(
            "the database has no production yet; start the server and open its set-up link",
        )),
        None => Err(Fault::usage(format!(
            "the database has several productions; say which with --production: {}",
            names(&all)
        ))),
    }
}

/// The person to act as: the one named by code, or the production's coordinator.
pub(crate) fn actor(
    conn: &mut Connection,
    production: &Production,
    place: &Place,
) -> Result<Actor, Fault> {
    let members = gagwright_store::members::list(conn, production.id)?;
    let person = match &place.acting {
        Some(code) => Some(
            gagwright_store::people::by_code(conn, production.id, code)?
                .ok_or_else(|| {
                    Fault::failed(format!(
                        "nobody on the roster of {} has the code {code}",
                        production.name
                    ))
                })?
                .person
                .id,
        ),
        None => None,
    };
    let member = members.into_iter().find(|member| match person {
        Some(person) => member.person == person,
        None => member.roles.contains(&Role::Coordinator),
    });
    let member = member.ok_or_else(|| {
        Fault::failed(match &place.acting {
            Some(code) => format!(
                "{code} holds no role on {}; give them one first",
                production.name
            ),
            None => format!(
                "{} has no coordinator; name someone with --as CODE",
                production.name
            ),
        })
    })?;
    Ok(Actor {
        account: member.account,
        production: production.id,
        person: member.person,
        roles: member.roles,
        carried_by: None,
    })
}

/// The gag with a code.
pub(crate) fn gag(
    conn: &mut Connection,
    production: &Production,
    code: &str,
) -> Result<gagwright_store::gags::GagRow, Fault> {
    if let Some(row) = gagwright_store::gags::by_code(conn, production.id, code)? {
        return Ok(row);
    }
    let known: Vec<String> = gagwright_store::gags::list(conn, production.id)?
        .into_iter()
        .map(|row| row.code)
        .collect();
    Err(CommandError::NotFound {
        what: "gag",
        id: format!("{code} ({})", known.join(", ")),
    }
    .into())
}
