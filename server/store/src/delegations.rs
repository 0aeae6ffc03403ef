//! Delegations: who may sign in whose stead. Must not know whether one counts.

use diesel::prelude::*;
use gagwright_casting::ProductionId;
use gagwright_clearance::{Delegation, RecordId};

use crate::{
    Connection, StoreError,
    columns::{Id, stored},
    documents, guard,
    schema::delegations,
};

#[derive(Insertable)]
#[diesel(table_name = delegations)]
struct NewRow<'a> {
    id: Id,
    production: Id,
    document: &'a str,
    leaf: i64,
}

/// Keeps a delegation.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    delegation: &Delegation,
    leaf: u64,
) -> Result<(), StoreError> {
    let document = documents::write("the delegation", delegation)?;
    let row = NewRow {
        id: Id(delegation.id.0),
        production: Id(production.0),
        document: &document,
        leaf: stored(leaf)?,
    };
    guard::insert(
        conn,
        "delegation",
        "one with this id was made before",
        |conn| {
            diesel::insert_into(delegations::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// Keeps when a delegation was ended.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such delegation.
pub fn update(conn: &mut Connection, delegation: &Delegation) -> Result<(), StoreError> {
    let document = documents::write("the delegation", delegation)?;
    let changed = diesel::update(delegations::table.find(Id(delegation.id.0)))
        .set(delegations::document.eq(document))
        .execute(conn)?;
    guard::found(changed, "delegation", delegation.id)
}

/// Every delegation of a production, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn list(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<Delegation>, StoreError> {
    let texts: Vec<(Id, String)> = delegations::table
        .filter(delegations::production.eq(Id(production.0)))
        .order(delegations::leaf)
        .select((delegations::id, delegations::document))
        .load(conn)?;
    texts
        .iter()
        .map(|(id, text)| documents::read("delegation", id.0, text))
        .collect()
}

/// One delegation of a production.
///
/// # Errors
/// When the database cannot be read.
pub fn get(
    conn: &mut Connection,
    production: ProductionId,
    id: RecordId,
) -> Result<Option<Delegation>, StoreError> {
    delegations::table
        .filter(delegations::production.eq(Id(production.0)))
        .filter(delegations::id.eq(Id(id.0)))
        .select(delegations::document)
        .first::<String>(conn)
        .optional()?
        .map(|text| documents::read("delegation", id.0, &text))
        .transpose()
}
