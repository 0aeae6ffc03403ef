//! Each production's append-only record: one leaf for each accepted command, in the command's own
//! transaction, so the record and what it records are kept or lost together. Indexes have no gaps
//! because the one writer gives them out. Beside the leaves lie the hashes of complete subtrees, so a
//! root or a proof is a few rows however long the record is. Must not know what an entry says.

mod ranges;

use std::collections::HashMap;

use diesel::prelude::*;
use gagwright_casting::{GagId, PersonId, ProductionId};
use gagwright_trail::{Entry, Hash, commitment, leaf_hash};
use jiff::Timestamp;
use serde_json::{Map, Value};

use self::ranges::{Node, Range, consistency, inclusion, parent};
use crate::{
    Connection, StoreError,
    columns::{Digest, Id, count, stored},
    documents, guard,
    schema::{trail_entries, trail_nodes},
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
    /// What may not, with the 32 random bytes that salt the commitment to it. It is kept beside the
    /// leaf and can be erased.
    pub personal: Option<([u8; 32], Value)>,
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
    /// The personal part, until it is erased.
    pub personal: Option<Value>,
    /// The salt of the commitment to it, until it is erased.
    pub salt: Option<[u8; 32]>,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = trail_entries)]
struct Row {
    production: Id,
    position: i64,
    bytes: String,
    salt: Option<Digest>,
    personal: Option<String>,
}

impl Row {
    fn entry(self) -> Result<StoredEntry, StoreError> {
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
        let personal = self
            .personal
            .map(|text| documents::read("the personal part of trail entry", position, &text))
            .transpose()?;
        Ok(StoredEntry {
            entry,
            hash: leaf_hash(&bytes),
            bytes,
            personal,
            salt: self.salt.map(|salt| salt.0),
        })
    }
}

#[derive(Insertable)]
#[diesel(table_name = trail_nodes)]
struct NewNode {
    production: Id,
    level: i64,
    position: i64,
    hash: Digest,
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
    let commitment = match &new.personal {
        Some((salt, personal)) => Some(commitment(salt, personal).map_err(no_form)?),
        None => None,
    };
    let entry = Entry {
        index,
        at: new.at.to_string(),
        kind: new.kind.clone(),
        production: new.production.to_string(),
        gag: new.gag.map(|gag| gag.to_string()),
        actor: new.actor.map(|actor| actor.to_string()),
        facts: new.facts.clone(),
        commitment,
    };
    let bytes = entry.bytes().map_err(no_form)?;
    let hash = leaf_hash(&bytes);
    let (salt, personal) = match &new.personal {
        Some((salt, personal)) => (
            Some(Digest(*salt)),
            Some(documents::write("the personal part", personal)?),
        ),
        None => (None, None),
    };
    let row = Row {
        production: Id(new.production.0),
        position: stored(index)?,
        bytes: String::from_utf8(bytes)
            .map_err(|error| StoreError::Internal(format!("the entry is not text: {error}")))?,
        salt,
        personal,
    };
    guard::insert(conn, "trail entry", "its place is taken", |conn| {
        diesel::insert_into(trail_entries::table)
            .values(&row)
            .execute(conn)
    })?;
    grow(conn, new.production, index, hash)?;
    Ok(entry)
}

/// Stores a new leaf's hash and that of every subtree it completes.
fn grow(
    conn: &mut Connection,
    production: ProductionId,
    index: u64,
    leaf: Hash,
) -> Result<(), StoreError> {
    // A leaf at an odd index completes a pair, one at 3 modulo 4 also four leaves, and so on: as many
    // levels as the index ends in ones.
    let completed = index.trailing_ones();
    let left_of = |level: u32| Node {
        level,
        position: (index >> level) - 1,
    };
    let left: Vec<Node> = (0..completed).map(left_of).collect();
    let known = fetch(conn, production, &left)?;
    let mut hash = leaf;
    for level in 0..=completed {
        if level > 0 {
            let left = known
                .get(&left_of(level - 1))
                .ok_or_else(|| missing(production))?;
            hash = parent(left, &hash);
        }
        let row = NewNode {
            production: Id(production.0),
            level: i64::from(level),
            position: stored(index >> level)?,
            hash: hash.into(),
        };
        diesel::insert_into(trail_nodes::table)
            .values(&row)
            .execute(conn)?;
    }
    Ok(())
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
    trail_entries::table
        .filter(trail_entries::production.eq(Id(production.0)))
        .filter(trail_entries::position.ge(after))
        .order(trail_entries::position)
        .limit(i64::from(limit))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::entry)
        .collect()
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
    trail_entries::table
        .filter(trail_entries::production.eq(Id(production.0)))
        .filter(trail_entries::position.lt(before))
        .order(trail_entries::position.desc())
        .limit(i64::from(limit))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::entry)
        .collect()
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
    trail_entries::table
        .find((Id(production.0), position))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::entry)
        .transpose()
}

/// Hashes of the first `size` leaves.
///
/// # Errors
/// [`StoreError::NotFound`] when the tree is smaller.
pub fn hashes(
    conn: &mut Connection,
    production: ProductionId,
    size: u64,
) -> Result<Vec<Hash>, StoreError> {
    within(conn, production, size)?;
    let hashes: Vec<Digest> = trail_nodes::table
        .filter(trail_nodes::production.eq(Id(production.0)))
        .filter(trail_nodes::level.eq(0))
        .filter(trail_nodes::position.lt(stored(size)?))
        .order(trail_nodes::position)
        .select(trail_nodes::hash)
        .load(conn)?;
    if hashes.len() as u64 != size {
        return Err(missing(production));
    }
    Ok(hashes.into_iter().map(Hash::from).collect())
}

/// Root of the tree's first `size` leaves.
///
/// # Errors
/// [`StoreError::NotFound`] when the tree is smaller.
pub fn root(
    conn: &mut Connection,
    production: ProductionId,
    size: u64,
) -> Result<Hash, StoreError> {
    within(conn, production, size)?;
    let mut hashes = resolve(conn, production, &[Range::tree(size)])?;
    hashes.pop().ok_or_else(|| missing(production))
}

/// The path from a leaf to the root of the first `size` leaves (RFC 6962, section 2.1.1).
///
/// # Errors
/// [`StoreError::NotFound`] when the tree is smaller, or has no such leaf.
pub fn inclusion_path(
    conn: &mut Connection,
    production: ProductionId,
    index: u64,
    size: u64,
) -> Result<Vec<Hash>, StoreError> {
    within(conn, production, size)?;
    if index >= size {
        return Err(StoreError::NotFound {
            what: "leaf",
            id: format!("{index} in a tree of {size}"),
        });
    }
    resolve(conn, production, &inclusion(index, size))
}

/// The path that shows the tree of `old` leaves to be the start of that of `new` (RFC 6962, section
/// 2.1.2). Every tree continues the empty one, which needs no path.
///
/// # Errors
/// [`StoreError::NotFound`] when the tree is smaller than `new`, or `new` than `old`.
pub fn consistency_path(
    conn: &mut Connection,
    production: ProductionId,
    old: u64,
    new: u64,
) -> Result<Vec<Hash>, StoreError> {
    within(conn, production, new)?;
    if old > new {
        return Err(StoreError::NotFound {
            what: "tree",
            id: format!("of {old} leaves inside one of {new}"),
        });
    }
    if old == 0 {
        return Ok(Vec::new());
    }
    resolve(conn, production, &consistency(old, new))
}

/// Erases the personal part of an entry, and the salt without which nobody can guess it. The leaf, its
/// commitment and every proof stay as they are. True when there was one.
///
/// # Errors
/// When the database cannot be written.
pub fn erase_personal(
    conn: &mut Connection,
    production: ProductionId,
    index: u64,
) -> Result<bool, StoreError> {
    let changed = diesel::update(
        trail_entries::table
            .filter(trail_entries::production.eq(Id(production.0)))
            .filter(trail_entries::position.eq(stored(index)?))
            .filter(trail_entries::salt.is_not_null()),
    )
    .set((
        trail_entries::salt.eq(None::<Digest>),
        trail_entries::personal.eq(None::<String>),
    ))
    .execute(conn)?;
    Ok(changed > 0)
}

fn within(conn: &mut Connection, production: ProductionId, wanted: u64) -> Result<(), StoreError> {
    let size = size(conn, production)?;
    if wanted > size {
        return Err(StoreError::NotFound {
            what: "tree",
            id: format!("of {wanted} leaves; this one has {size}"),
        });
    }
    Ok(())
}

/// Hashes of ranges, all their nodes read in one query.
fn resolve(
    conn: &mut Connection,
    production: ProductionId,
    ranges: &[Range],
) -> Result<Vec<Hash>, StoreError> {
    let nodes: Vec<Node> = ranges.iter().flat_map(|range| range.nodes()).collect();
    let known = fetch(conn, production, &nodes)?;
    ranges
        .iter()
        .map(|range| range.hash(&known).ok_or_else(|| missing(production)))
        .collect()
}

/// The hashes of some nodes, in one query.
fn fetch(
    conn: &mut Connection,
    production: ProductionId,
    nodes: &[Node],
) -> Result<HashMap<Node, Hash>, StoreError> {
    if nodes.is_empty() {
        return Ok(HashMap::new());
    }
    let mut query = trail_nodes::table
        .select((trail_nodes::level, trail_nodes::position, trail_nodes::hash))
        .into_boxed();
    for node in nodes {
        query = query.or_filter(
            trail_nodes::production
                .eq(Id(production.0))
                .and(trail_nodes::level.eq(i64::from(node.level)))
                .and(trail_nodes::position.eq(stored(node.position)?)),
        );
    }
    let rows: Vec<(i64, i64, Digest)> = query.load(conn)?;
    rows.into_iter()
        .map(|(level, position, hash)| {
            let level = u32::try_from(level).map_err(|_| missing(production))?;
            Ok((
                Node {
                    level,
                    position: count(position)?,
                },
                hash.into(),
            ))
        })
        .collect()
}

fn missing(production: ProductionId) -> StoreError {
    StoreError::unreadable(
        "the trail of production",
        production,
        "a hash of its tree is missing",
    )
}
