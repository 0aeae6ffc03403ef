//! Rehearsal runs. Only ever added.

use std::collections::BTreeMap;

use diesel::prelude::*;
use gagwright_casting::{GagId, ProductionId};
use gagwright_clearance::RehearsalRun;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, stored},
    documents, guard,
    schema::{gags, runs},
};

#[derive(Insertable)]
#[diesel(table_name = runs)]
struct NewRow<'a> {
    id: Id,
    gag: Id,
    document: &'a str,
    at: Moment,
    leaf: i64,
}

/// Keeps a run.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken, or the gag does not exist.
pub fn insert(
    conn: &mut Connection,
    gag: GagId,
    run: &RehearsalRun,
    leaf: u64,
) -> Result<(), StoreError> {
    let document = documents::write("the run", run)?;
    let row = NewRow {
        id: Id(run.id.0),
        gag: Id(gag.0),
        document: &document,
        at: run.at.into(),
        leaf: stored(leaf)?,
    };
    guard::insert(conn, "run", "one with this id was logged before", |conn| {
        diesel::insert_into(runs::table).values(&row).execute(conn)
    })
}

/// Runs logged on a gag, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gag(conn: &mut Connection, gag: GagId) -> Result<Vec<RehearsalRun>, StoreError> {
    let texts: Vec<(Id, String)> = runs::table
        .filter(runs::gag.eq(Id(gag.0)))
        .order(runs::leaf)
        .select((runs::id, runs::document))
        .load(conn)?;
    texts
        .iter()
        .map(|(id, text)| documents::read("run", id.0, text))
        .collect()
}

/// Every run of a production by gag, each gag's in trail order, in one query.
///
/// # Errors
/// When the database cannot be read.
pub fn for_production(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<BTreeMap<GagId, Vec<RehearsalRun>>, StoreError> {
    let rows: Vec<(Id, Id, String)> = runs::table
        .inner_join(gags::table)
        .filter(gags::production.eq(Id(production.0)))
        .order(runs::leaf)
        .select((runs::id, runs::gag, runs::document))
        .load(conn)?;
    let mut by_gag: BTreeMap<GagId, Vec<RehearsalRun>> = BTreeMap::new();
    for (id, gag, text) in rows {
        by_gag
            .entry(GagId(gag.0))
            .or_default()
            .push(documents::read("run", id.0, &text)?);
    }
    Ok(by_gag)
}
