//! What is kept beside a leaf, part by part, with the salts of the leaf's commitments. Erasing a person
//! takes away the parts about them; leaves, commitments and proofs stay as they are. Must not know what a
//! part says.

use std::collections::BTreeMap;

use diesel::prelude::*;
use gagwright_casting::{PersonId, ProductionId};
use serde_json::Value;

use crate::{
    Connection, StoreError,
    columns::{Digest, Id, stored},
    documents,
    schema::trail_parts,
};

/// A part kept beside a leaf.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// The person it is about, whose erasure takes it away; none: it stays.
    pub about: Option<PersonId>,
    /// The 32 random bytes that salt the commitment to it.
    pub salt: [u8; 32],
    /// What it says.
    pub said: Value,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = trail_parts)]
struct Row {
    production: Id,
    position: i64,
    name: String,
    about: Option<Id>,
    salt: Digest,
    said: String,
}

pub(super) fn insert(
    conn: &mut Connection,
    production: ProductionId,
    index: u64,
    parts: BTreeMap<String, Part>,
) -> Result<(), StoreError> {
    let position = stored(index)?;
    for (name, part) in parts {
        let row = Row {
            production: Id(production.0),
            position,
            about: part.about.map(|person| Id(person.0)),
            salt: Digest(part.salt),
            said: documents::write("the part of a trail entry", &part.said)?,
            name,
        };
        diesel::insert_into(trail_parts::table)
            .values(&row)
            .execute(conn)?;
    }
    Ok(())
}

/// The parts of the leaves between two positions, both included.
pub(super) fn between(
    conn: &mut Connection,
    production: ProductionId,
    first: i64,
    last: i64,
) -> Result<BTreeMap<i64, BTreeMap<String, Part>>, StoreError> {
    let rows: Vec<Row> = trail_parts::table
        .filter(trail_parts::production.eq(Id(production.0)))
        .filter(trail_parts::position.between(first, last))
        .select(Row::as_select())
        .load(conn)?;
    let mut found: BTreeMap<i64, BTreeMap<String, Part>> = BTreeMap::new();
    for row in rows {
        let said = documents::read("a part of trail entry", row.position, &row.said)?;
        let part = Part {
            about: row.about.map(|person| PersonId(person.0)),
            salt: row.salt.0,
            said,
        };
        found
            .entry(row.position)
            .or_default()
            .insert(row.name, part);
    }
    Ok(found)
}

/// Erases every part about a person with its salt, without which nobody can guess what was committed to.
/// Gives how many there were.
///
/// # Errors
/// When the database cannot be written.
pub fn erase_about(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
) -> Result<usize, StoreError> {
    Ok(diesel::delete(
        trail_parts::table
            .filter(trail_parts::production.eq(Id(production.0)))
            .filter(trail_parts::about.eq(Id(person.0))),
    )
    .execute(conn)?)
}
