//! Each production's append-only record: one leaf for each accepted command, in the command's own
//! transaction, so the record and what it records are kept or lost together. Indexes have no gaps
//! because the one writer gives them out. Must not know what an entry says.

mod parts;
mod ranges;
mod tree;

use std::collections::BTreeMap;

use diesel::prelude::*;
use gagwright_casting::{GagId, PersonId, ProductionId};
use gagwright_trail::{Entry, Hash, commitment, leaf_hash};
use jiff::Timestamp;
use serde_json::{Map, Value};

pub use parts::{Part, erase_about};
pub use tree::{consistency_path, hashes, inclusion_path, root};

use crate::{
    Connection, StoreError,
    columns::{Id, count, stored},
    guard,
    schema::trail_entries,
};

/// An entry before it has its place.
#[derive(Clone, Debug, PartialEq)]
pub struct NewEntry {
    /// When the command was accepted.
    pub at: Timestamp,
    /// What kind of command: `gag.created`, `plan.revised` ...
    pub kind: String,
    /// The production whose record it goes into.
    pub production: ProductionId,
    /// The gag, where it is about one.
    pub gag: Option<GagId>,
    /// Who did it; none when nobody was signed in.
    pub actor: Option<PersonId>,
    /// Facts that may stand in the clear for ever.
    pub facts: Map<String, Value>,
    /// What may not, by name. It is kept beside the leaf and can be erased.
    pub parts: BTreeMap<String, Part>,
}

/// An entry as kept.
#[derive(Clone, Debug, PartialEq)]
pub struct StoredEntry {
    /// The entry.
    pub entry: Entry,
    /// The leaf's bytes.
    pub bytes: Vec<u8>,
    /// The leaf's hash, made from those bytes.
    pub hash: Hash,
    /// The parts kept beside it, by name; those that were erased are absent.
    pub parts: BTreeMap<String, Part>,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = trail_entries)]
struct Row {
    production: Id,
    position: i64,
    bytes: String,
}

impl Row {
    fn entry(self, parts: BTreeMap<String, Part>) -> Result<StoredEntry, StoreError> {
        let position = self.position;
        let bytes = self.bytes.into_bytes();
        let entry = Entry::from_bytes(&bytes)
            .map_err(|error| StoreError::unreadable("trail entry", position, error))?;
        if entry.index != count(position)? || entry.production != self.production.0.to_string() {
            return Err(StoreError::unreadable(
                "trail entry",
                position,
                format!(
                    "it says it is entry {} of production {}",
                    entry.index, entry.production
                ),
            ));
        }
        Ok(StoredEntry {
            entry,
            hash: leaf_hash(&bytes),
            bytes,
            parts,
        })
    }
}

/// Rows that follow each other, with their parts.
fn whole(
    conn: &mut Connection,
    production: ProductionId,
    rows: Vec<Row>,
) -> Result<Vec<StoredEntry>, StoreError> {
    let positions = rows.iter().map(|row| row.position);
    let (Some(first), Some(last)) = (positions.clone().min(), positions.max()) else {
        return Ok(Vec::new());
    };
    let mut parts = parts::between(conn, production, first, last)?;
    rows.into_iter()
        .map(|row| {
            let mine = parts.remove(&row.position).unwrap_or_default();
            row.entry(mine)
        })
        .collect()
}

/// Appends an entry and gives it back with its index. Must run in a write.
///
/// # Errors
/// When a fact or the personal part has no canonical form (an integer beyond 2^53, nested too deep),
/// or the database cannot be written.
pub fn append(conn: &mut Connection, new: NewEntry) -> Result<Entry, StoreError> {
    let index = size(conn, new.production)?;
    let no_form = |error: gagwright_trail::CanonicalError| {
        StoreError::Internal(format!(
            "the trail entry `{}` cannot be written: {error}",
            new.kind
        ))
    };
    let commitments = new
        .parts
        .iter()
        .map(|(name, part)| {
            Ok((
                name.clone(),
                commitment(&part.salt, &part.said).map_err(no_form)?,
            ))
        })
        .collect::<Result<_, StoreError>>()?;
    let entry = Entry {
        index,
        at: new.at.to_string(),
        kind: new.kind.clone(),
        production: new.production.to_string(),
        gag: new.gag.map(|gag| gag.to_string()),
        actor: new.actor.map(|actor| actor.to_string()),
        facts: new.facts.clone(),
        commitments,
    };
    let bytes = entry.bytes().map_err(no_form)?;
    let hash = leaf_hash(&bytes);
    let row = Row {
        production: Id(new.production.0),
        position: stored(index)?,
        bytes: String::from_utf8(bytes)
            .map_err(|error| StoreError::Internal(format!("the entry is not text: {error}")))?,
    };
    guard::insert(conn, "trail entry", "its place is taken", |conn| {
        diesel::insert_into(trail_entries::table)
            .values(&row)
            .execute(conn)
    })?;
    parts::insert(conn, new.production, index, new.parts)?;
    tree::grow(conn, new.production, index, hash)?;
    Ok(entry)
}

/// How many leaves the production's tree has.
///
/// # Errors
/// When the database cannot be read.
pub fn size(conn: &mut Connection, production: ProductionId) -> Result<u64, StoreError> {
    let last: Option<i64> = trail_entries::table
        .filter(trail_entries::production.eq(Id(production.0)))
        .select(diesel::dsl::max(trail_entries::position))
        .first(conn)?;
    last.map_or(Ok(0), |last| Ok(count(last)? + 1))
}

/// Entries in order, to whoever has the first `after` of them: from index `after` on.
///
/// # Errors
/// When the database cannot be read, or an entry is not what was written.
pub fn entries(
    conn: &mut Connection,
    production: ProductionId,
    after: u64,
    limit: u32,
) -> Result<Vec<StoredEntry>, StoreError> {
    // Beyond every index there is, rather than an error, for a number no trail can reach.
    let after = i64::try_from(after).unwrap_or(i64::MAX);
    let rows = trail_entries::table
        .filter(trail_entries::production.eq(Id(production.0)))
        .filter(trail_entries::position.ge(after))
        .order(trail_entries::position)
        .limit(i64::from(limit))
        .select(Row::as_select())
        .load(conn)?;
    whole(conn, production, rows)
}

/// Entries newest first: those with an index below `before`.
///
/// # Errors
/// When the database cannot be read, or an entry is not what was written.
pub fn entries_before(
    conn: &mut Connection,
    production: ProductionId,
    before: u64,
    limit: u32,
) -> Result<Vec<StoredEntry>, StoreError> {
    let before = i64::try_from(before).unwrap_or(i64::MAX);
    let rows = trail_entries::table
        .filter(trail_entries::production.eq(Id(production.0)))
        .filter(trail_entries::position.lt(before))
        .order(trail_entries::position.desc())
        .limit(i64::from(limit))
        .select(Row::as_select())
        .load(conn)?;
    whole(conn, production, rows)
}

/// One entry.
///
/// # Errors
/// When the database cannot be read, or the entry is not what was written.
pub fn entry(
    conn: &mut Connection,
    production: ProductionId,
    index: u64,
) -> Result<Option<StoredEntry>, StoreError> {
    let Ok(position) = i64::try_from(index) else {
        return Ok(None);
    };
    let row: Option<Row> = trail_entries::table
        .find((Id(production.0), position))
        .select(Row::as_select())
        .first(conn)
        .optional()?;
    Ok(whole(conn, production, row.into_iter().collect())?.pop())
}
