//! The trail as people read it: the feed of changes and pages of leaves told in words.

use gagwright_casting::ProductionId;
use gagwright_store::{Connection, trail::StoredEntry};

use super::{ChangeItem, Changes, TrailItem, TrailPage, sentences};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
};

/// The most leaves one page or one answer of the feed holds.
pub const MOST: u32 = 500;

type Names = std::collections::BTreeMap<gagwright_casting::PersonId, String>;

fn names(conn: &mut Connection, production: ProductionId) -> Result<Names, CommandError> {
    Ok(gagwright_store::people::list(conn, production)?
        .into_iter()
        .map(|stored| (stored.person.id, stored.person.name))
        .collect())
}

fn actor_name(stored: &StoredEntry, names: &Names) -> Option<String> {
    stored
        .entry
        .actor
        .as_deref()?
        .parse()
        .ok()
        .and_then(|id| names.get(&id).cloned())
}

/// What happened since the reader had `after` leaves.
///
/// # Errors
/// When the reader may not read the production.
pub fn changes(
    conn: &mut Connection,
    reader: &Actor,
    after: u64,
    limit: u32,
) -> Result<Changes, CommandError> {
    reader.require(Permission::ReadProduction)?;
    Ok(Changes {
        items: heard(conn, reader.production, after, limit)?,
        size: gagwright_store::trail::size(conn, reader.production)?,
    })
}

/// The leaves after a position, for somebody who may read the production.
///
/// # Errors
/// When the store fails.
pub fn heard(
    conn: &mut Connection,
    production: ProductionId,
    after: u64,
    limit: u32,
) -> Result<Vec<ChangeItem>, CommandError> {
    let stored = gagwright_store::trail::entries(conn, production, after, limit.clamp(1, MOST))?;
    if stored.is_empty() {
        return Ok(Vec::new());
    }
    let names = names(conn, production)?;
    let fact = |one: &StoredEntry, name| one.entry.facts.get(name)?.as_str().map(str::to_owned);
    Ok(stored
        .into_iter()
        .map(|one| ChangeItem {
            actor_name: actor_name(&one, &names),
            hold: fact(&one, "hold"),
            code: fact(&one, "code"),
            index: one.entry.index,
            at: one.entry.at,
            kind: one.entry.kind,
            gag: one.entry.gag,
            actor: one.entry.actor,
        })
        .collect())
}

/// A page of the trail, newest first: leaves before an index, or the newest.
///
/// # Errors
/// Without [`Permission::ReadTrail`].
pub fn trail_page(
    conn: &mut Connection,
    reader: &Actor,
    before: Option<u64>,
    limit: u32,
) -> Result<TrailPage, CommandError> {
    reader.require(Permission::ReadTrail)?;
    let names = names(conn, reader.production)?;
    let size = gagwright_store::trail::size(conn, reader.production)?;
    let before = before.unwrap_or(size).min(size);
    let stored = gagwright_store::trail::entries_before(
        conn,
        reader.production,
        before,
        limit.clamp(1, MOST),
    )?;
    let items = stored
        .into_iter()
        .map(|one| TrailItem {
            actor_name: actor_name(&one, &names),
            sentence: sentences::sentence(&one.entry, &names),
            hash: one.hash.to_hex(),
            entry: one.entry,
        })
        .collect();
    let root = gagwright_store::trail::root(conn, reader.production, size)?.to_hex();
    Ok(TrailPage { size, root, items })
}
