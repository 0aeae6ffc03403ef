//! `migrate`: brings a database up to date, or lists what that would do.

use gagwright_store::Store;
use serde_json::json;

use super::{arguments::MigrateArguments, fault::Fault, say, say_json};
use crate::trail_file;

pub(crate) fn run(arguments: &MigrateArguments) -> Result<(), Fault> {
    let store = Store::open(&arguments.database)?;
    let names = if arguments.dry_run {
        store.pending_migrations()?
    } else {
        let applied = store.migrate()?;
        trail_file::ensure_log_key_in(&store)?;
        applied
    };
    if arguments.json {
        return say_json(&json!({
            "database": store.kind(),
            "place": store.place(),
            "applied": !arguments.dry_run,
            "migrations": names,
        }));
    }
    let place = format!("{} at {}", store.kind(), store.place());
    match (names.is_empty(), arguments.dry_run) {
        (true, _) => say(format!("{place} is up to date.")),
        (false, true) => say(format!("{place} would get: {}", names.join(", "))),
        (false, false) => say(format!("{place} got: {}", names.join(", "))),
    }
}
