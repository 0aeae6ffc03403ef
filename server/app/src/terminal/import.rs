//! `import`: a roster table from a CSV file.

use std::fs;

use gagwright_casting::roster::RosterTable;
use serde_json::json;

use super::{
    arguments::{ImportArguments, Table},
    database,
    fault::Fault,
    say, say_json,
};
use crate::{
    clock,
    commands::{self, CommandError},
    entropy,
};

/// A roster of thousands of people is far smaller; a larger file is not one.
const LARGEST: u64 = 32 << 20;

pub(crate) fn run(arguments: &ImportArguments) -> Result<(), Fault> {
    let table = match arguments.table {
        Table::People => RosterTable::People,
        Table::Certificates => RosterTable::Certificates,
        Table::Skills => RosterTable::Skills,
        Table::Availability => RosterTable::Availability,
    };
    let name = arguments.file.display().to_string();
    let unreadable = |error: std::io::Error| {
        Fault::failed(format!("cannot read {name}: {error}; check the path"))
    };
    if fs::metadata(&arguments.file).map_err(unreadable)?.len() > LARGEST {
        return Err(Fault::failed(format!(
            "{name} is larger than 32 MiB; give a roster table"
        )));
    }
    let bytes = fs::read(&arguments.file).map_err(unreadable)?;
    let store = database::open(&arguments.place)?;
    let (production, actor) = store.read(|conn| {
        let production = database::production(conn, &arguments.place)?;
        let actor = database::actor(conn, &production, &arguments.place)?;
        Ok::<_, Fault>((production, actor))
    })?;
    let now = clock::now();
    let imported = store.write(move |conn| {
        commands::people::import(conn, &actor, now, table, &bytes, &mut entropy::system)
    });
    match imported {
        Ok(report) if arguments.json => say_json(&report),
        Ok(report) => say(format!(
            "Imported {name} into {} on {}: {} new, {} changed, {} as before, {} taken off.",
            report.table,
            production.name,
            report.created,
            report.updated,
            report.unchanged,
            report.removed
        )),
        Err(CommandError::Roster { problems }) if arguments.json => {
            say_json(&json!({ "refused": problems }))?;
            Err(Fault::Quiet)
        }
        Err(error) => Err(error.into()),
    }
}
