//! Readings of the conditions. Only ever added.

use diesel::prelude::*;
use gagwright_casting::{GagId, ProductionId};
use gagwright_clearance::Reading;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, stored},
    documents, guard,
    schema::readings,
};

#[derive(Insertable)]
#[diesel(table_name = readings)]
struct NewRow<'a> {
    id: Id,
    production: Id,
    gag: Option<Id>,
    document: &'a str,
    at: Moment,
    leaf: i64,
}

/// Keeps a reading; with no gag it counts for every gag of the production.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken, or the gag does not exist.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    gag: Option<GagId>,
    reading: &Reading,
    leaf: u64,
) -> Result<(), StoreError> {
    let document = documents::write("the reading", reading)?;
    let row = NewRow {
        id: Id(reading.id.0),
        production: Id(production.0),
        gag: gag.map(|gag| Id(gag.0)),
        document: &document,
        at: reading.at.into(),
        leaf: stored(leaf)?,
    };
    guard::insert(
        conn,
        "reading",
        "one with this id was logged before",
        |conn| {
            diesel::insert_into(readings::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// Readings that count for a gag, those for every gag included, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gag(
    conn: &mut Connection,
    production: ProductionId,
    gag: GagId,
) -> Result<Vec<Reading>, StoreError> {
    let texts: Vec<(Id, String)> = readings::table
        .filter(readings::production.eq(Id(production.0)))
        .filter(readings::gag.eq(Id(gag.0)).or(readings::gag.is_null()))
        .order(readings::leaf)
        .select((readings::id, readings::document))
        .load(conn)?;
    texts
        .iter()
        .map(|(id, text)| documents::read("reading", id.0, text))
        .collect()
}

/// Every reading of a production with the gag it is for, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_production(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<(Option<GagId>, Reading)>, StoreError> {
    let rows: Vec<(Id, Option<Id>, String)> = readings::table
        .filter(readings::production.eq(Id(production.0)))
        .order(readings::leaf)
        .select((readings::id, readings::gag, readings::document))
        .load(conn)?;
    rows.iter()
        .map(|(id, gag, text)| {
            Ok((
                gag.map(|gag| GagId(gag.0)),
                documents::read("reading", id.0, text)?,
            ))
        })
        .collect()
}
