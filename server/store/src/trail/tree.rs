//! The RFC 6962 tree beside a production's entries: the hashes of its complete subtrees, and the roots
//! and proofs made from them. Each is two queries however long the record is. Must not know what a leaf
//! says.

use std::collections::HashMap;

use diesel::prelude::*;
use gagwright_casting::ProductionId;
use gagwright_trail::Hash;

use super::{
    ranges::{Node, Range, consistency, inclusion, parent},
    size,
};
use crate::{
    Connection, StoreError,
    columns::{Digest, Id, count, stored},
    schema::trail_nodes,
};

#[derive(Insertable)]
#[diesel(table_name = trail_nodes)]
struct NewNode {
    production: Id,
    level: i64,
    position: i64,
    hash: Digest,
}

/// Stores a new leaf's hash and that of every subtree it completes.
pub(super) fn grow(
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
