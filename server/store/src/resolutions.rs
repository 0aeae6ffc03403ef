//! Declines resolved in writing. Only ever added.

use std::collections::BTreeMap;

use diesel::prelude::*;
use gagwright_casting::{GagId, ProductionId};
use gagwright_clearance::Resolution;

use crate::{
    Connection, StoreError,
    columns::{Id, stored},
    documents, guard,
    schema::resolutions,
};

#[derive(Insertable)]
#[diesel(table_name = resolutions)]
struct NewRow<'a> {
    id: Id,
    production: Id,
    gag: Id,
    signoff: Id,
    document: &'a str,
    leaf: i64,
}

/// Keeps what was written to resolve a decline.
///
/// # Errors
/// [`StoreError::Conflict`] when it was resolved before, or the id is taken.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    gag: GagId,
    resolution: &Resolution,
    leaf: u64,
) -> Result<(), StoreError> {
    let document = documents::write("the resolution", resolution)?;
    let row = NewRow {
        id: Id(resolution.id.0),
        production: Id(production.0),
        gag: Id(gag.0),
        signoff: Id(resolution.signoff.0),
        document: &document,
        leaf: stored(leaf)?,
    };
    guard::insert(
        conn,
        "resolution",
        "this decline was resolved before",
        |conn| {
            diesel::insert_into(resolutions::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// Every resolution of a production by gag, each gag's in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_production(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<BTreeMap<GagId, Vec<Resolution>>, StoreError> {
    let texts: Vec<(Id, Id, String)> = resolutions::table
        .filter(resolutions::production.eq(Id(production.0)))
        .order(resolutions::leaf)
        .select((resolutions::id, resolutions::gag, resolutions::document))
        .load(conn)?;
    let mut by_gag: BTreeMap<GagId, Vec<Resolution>> = BTreeMap::new();
    for (id, gag, text) in texts {
        let resolution = documents::read("resolution", id.0, &text)?;
        by_gag.entry(GagId(gag.0)).or_default().push(resolution);
    }
    Ok(by_gag)
}
