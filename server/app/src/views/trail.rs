//! The trail as people read it: the feed of changes and pages of leaves told in words.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;
use gagwright_store::{Connection, people, people::StoredPerson, trail::StoredEntry};

use super::{ChangeItem, Changes, TrailItem, TrailPage, sentences};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
};

/// The most leaves one page or one answer of the feed holds.
pub const MOST: u32 = 500;

type Names = std::collections::BTreeMap<PersonId, String>;

fn names(people: Vec<StoredPerson>) -> Names {
    people
        .into_iter()
        .map(|stored| (stored.person.id, stored.person.name))
        .collect()
}

fn actor(stored: &StoredEntry) -> Option<PersonId> {
    stored.entry.actor.as_deref()?.parse().ok()
}

fn actor_name(stored: &StoredEntry, names: &Names) -> Option<String> {
    names.get(&actor(stored)?).cloned()
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
    Ok(Changes {
        items: heard(conn, reader, after, limit)?,
        size: gagwright_store::trail::size(conn, reader.production)?,
    })
}

/// The leaves after a position. Every phone on the set asks at every change, so only the people named are
/// read, not the roster.
///
/// # Errors
/// When the reader may not read the production.
pub fn heard(
    conn: &mut Connection,
    reader: &Actor,
    after: u64,
    limit: u32,
) -> Result<Vec<ChangeItem>, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let production = reader.production;
    let stored = gagwright_store::trail::entries(conn, production, after, limit.clamp(1, MOST))?;
    let actors: BTreeSet<PersonId> = stored.iter().filter_map(actor).collect();
    let actors: Vec<PersonId> = actors.into_iter().collect();
    let names = if actors.is_empty() {
        Names::new()
    } else {
        names(people::get_many(conn, production, &actors)?)
    };
    let fact = |one: &StoredEntry, name| one.entry.facts.get(name)?.as_str().map(str::to_owned);
    Ok(stored
        .into_iter()
        .map(|one| ChangeItem {
            actor_name: actor_name(&one, &names),
            hold: fact(&one, "hold"),
            incident: fact(&one, "incident"),
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
    let names = names(people::list(conn, reader.production)?);
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
