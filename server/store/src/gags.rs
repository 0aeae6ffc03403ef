//! Gags by their names, and which revision of the plan is current. What a plan says is in `plans`.

use diesel::prelude::*;
use gagwright_casting::{GagId, ProductionId};
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, revision},
    guard,
    schema::gags,
};

/// A gag.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GagRow {
    /// Which.
    pub id: GagId,
    /// The production.
    pub production: ProductionId,
    /// Short code, unique in the production, for example `G07`.
    pub code: String,
    /// Title.
    pub title: String,
    /// The revision that counts. Moved by [`crate::plans::insert`]; 0 before the first plan.
    pub current_revision: u32,
    /// When it was made.
    pub created_at: Timestamp,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = gags)]
struct Row {
    id: Id,
    production: Id,
    code: String,
    title: String,
    current_revision: i64,
    created_at: Moment,
}

impl Row {
    fn gag(self) -> Result<GagRow, StoreError> {
        Ok(GagRow {
            id: GagId(self.id.0),
            production: ProductionId(self.production.0),
            code: self.code,
            title: self.title,
            current_revision: revision(self.current_revision)?,
            created_at: self.created_at.time()?,
        })
    }
}

/// Adds a gag.
///
/// # Errors
/// [`StoreError::Conflict`] when the id, or the code within the production, is taken.
pub fn insert(conn: &mut Connection, gag: &GagRow) -> Result<(), StoreError> {
    let row = Row {
        id: Id(gag.id.0),
        production: Id(gag.production.0),
        code: gag.code.clone(),
        title: gag.title.clone(),
        current_revision: i64::from(gag.current_revision),
        created_at: gag.created_at.into(),
    };
    guard::insert(conn, "gag", "the id or the code is another gag's", |conn| {
        diesel::insert_into(gags::table).values(&row).execute(conn)
    })
}

/// One gag of any production: the caller compares the production before telling anyone of it.
///
/// # Errors
/// When the database cannot be read.
pub fn get(conn: &mut Connection, id: GagId) -> Result<Option<GagRow>, StoreError> {
    gags::table
        .find(Id(id.0))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::gag)
        .transpose()
}

/// The gag with a code.
///
/// # Errors
/// When the database cannot be read.
pub fn by_code(
    conn: &mut Connection,
    production: ProductionId,
    code: &str,
) -> Result<Option<GagRow>, StoreError> {
    gags::table
        .filter(gags::production.eq(Id(production.0)))
        .filter(gags::code.eq(code))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::gag)
        .transpose()
}

/// Every gag of a production, by code.
///
/// # Errors
/// When the database cannot be read.
pub fn list(conn: &mut Connection, production: ProductionId) -> Result<Vec<GagRow>, StoreError> {
    gags::table
        .filter(gags::production.eq(Id(production.0)))
        .order(gags::code)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::gag)
        .collect()
}
