//! Witnesses of a production's trail, and the cosignatures that came from them. Must not know whether one
//! verifies.

use diesel::prelude::*;
use gagwright_casting::ProductionId;
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, count, stored, time_of},
    guard,
    schema::{cosignatures, witnesses},
};

/// A witness of a production.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Witness {
    /// The leaf that added it.
    pub leaf: u64,
    /// The name it signs under.
    pub name: String,
    /// Its key, `name+hash+base64`.
    pub key: String,
    /// Since when it is asked.
    pub added_at: Timestamp,
    /// Since when it is not asked any more.
    pub removed_at: Option<Timestamp>,
}

/// A cosignature as it came in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cosignature {
    /// Leaves in the tree that was cosigned.
    pub size: u64,
    /// The key it verifies with.
    pub key: String,
    /// The witness's name.
    pub name: String,
    /// The signature line, without its line end.
    pub line: String,
    /// When, in seconds since 1970 by the witness's clock.
    pub seconds: u64,
    /// When it came here.
    pub received_at: Timestamp,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = witnesses)]
struct WitnessRow {
    production: Id,
    leaf: i64,
    name: String,
    key: String,
    added_at: Moment,
    removed_at: Option<Moment>,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = cosignatures)]
struct CosignatureRow {
    production: Id,
    tree_size: i64,
    key: String,
    name: String,
    line: String,
    seconds: i64,
    received_at: Moment,
}

/// Keeps a new witness.
///
/// # Errors
/// [`StoreError::Conflict`] when one of this name is there and was not removed.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    witness: &Witness,
) -> Result<(), StoreError> {
    let row = WitnessRow {
        production: Id(production.0),
        leaf: stored(witness.leaf)?,
        name: witness.name.clone(),
        key: witness.key.clone(),
        added_at: witness.added_at.into(),
        removed_at: witness.removed_at.map(Moment::from),
    };
    guard::insert(conn, "witness", "one of this name is there", |conn| {
        diesel::insert_into(witnesses::table)
            .values(&row)
            .execute(conn)
    })
}

/// Keeps when a witness was removed.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such witness, or it was removed before.
pub fn remove(
    conn: &mut Connection,
    production: ProductionId,
    name: &str,
    at: Timestamp,
) -> Result<(), StoreError> {
    let changed = diesel::update(
        witnesses::table
            .filter(witnesses::production.eq(Id(production.0)))
            .filter(witnesses::name.eq(name))
            .filter(witnesses::removed_at.is_null()),
    )
    .set(witnesses::removed_at.eq(Some(Moment::from(at))))
    .execute(conn)?;
    guard::found(changed, "witness", name)
}

/// Every witness of a production in trail order, those that were removed included.
///
/// # Errors
/// When the database cannot be read.
pub fn list(conn: &mut Connection, production: ProductionId) -> Result<Vec<Witness>, StoreError> {
    let rows: Vec<WitnessRow> = witnesses::table
        .filter(witnesses::production.eq(Id(production.0)))
        .order(witnesses::leaf)
        .select(WitnessRow::as_select())
        .load(conn)?;
    rows.into_iter()
        .map(|row| {
            Ok(Witness {
                leaf: count(row.leaf)?,
                name: row.name,
                key: row.key,
                added_at: row.added_at.time()?,
                removed_at: time_of(row.removed_at)?,
            })
        })
        .collect()
}

/// Keeps a cosignature.
///
/// # Errors
/// [`StoreError::Conflict`] when this key's cosignature of this size is kept.
pub fn insert_cosignature(
    conn: &mut Connection,
    production: ProductionId,
    cosignature: &Cosignature,
) -> Result<(), StoreError> {
    let row = CosignatureRow {
        production: Id(production.0),
        tree_size: stored(cosignature.size)?,
        key: cosignature.key.clone(),
        name: cosignature.name.clone(),
        line: cosignature.line.clone(),
        seconds: stored(cosignature.seconds)?,
        received_at: cosignature.received_at.into(),
    };
    let rule = "this witness cosigned this size before";
    guard::insert(conn, "cosignature", rule, |conn| {
        diesel::insert_into(cosignatures::table)
            .values(&row)
            .execute(conn)
    })
}

/// Every cosignature of a production's trail, the smallest tree first.
///
/// # Errors
/// When the database cannot be read.
pub fn cosignatures(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<Cosignature>, StoreError> {
    let rows = cosignatures::table
        .filter(cosignatures::production.eq(Id(production.0)))
        .order((
            cosignatures::tree_size,
            cosignatures::received_at,
            cosignatures::key,
        ))
        .select(CosignatureRow::as_select())
        .load(conn)?;
    rows.into_iter().map(read).collect()
}

/// The cosignatures of one size of a production's trail.
///
/// # Errors
/// When the database cannot be read.
pub fn cosignatures_of(
    conn: &mut Connection,
    production: ProductionId,
    size: u64,
) -> Result<Vec<Cosignature>, StoreError> {
    let rows = cosignatures::table
        .filter(cosignatures::production.eq(Id(production.0)))
        .filter(cosignatures::tree_size.eq(stored(size)?))
        .order((cosignatures::received_at, cosignatures::key))
        .select(CosignatureRow::as_select())
        .load(conn)?;
    rows.into_iter().map(read).collect()
}

fn read(row: CosignatureRow) -> Result<Cosignature, StoreError> {
    Ok(Cosignature {
        size: count(row.tree_size)?,
        key: row.key,
        name: row.name,
        line: row.line,
        seconds: count(row.seconds)?,
        received_at: row.received_at.time()?,
    })
}
