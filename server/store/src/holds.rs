//! Holds and the agreements to release them. When a hold is released is a rule of the trade: whoever
//! knows it says so when updating, and the store only keeps the moment.

use diesel::prelude::*;
use gagwright_casting::{GagId, ProductionId};
use gagwright_clearance::{Hold, HoldId};
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, count, stored, time_of},
    documents, guard,
    schema::holds,
};

/// A hold as kept.
#[derive(Clone, Debug, PartialEq)]
pub struct StoredHold {
    /// The hold with its agreements.
    pub hold: Hold,
    /// The production.
    pub production: ProductionId,
    /// When it was released, if it was.
    pub released_at: Option<Timestamp>,
    /// Its leaf in the trail.
    pub leaf: u64,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = holds)]
struct Row {
    id: Id,
    production: Id,
    gag: Option<Id>,
    document: String,
    raised_at: Moment,
    released_at: Option<Moment>,
    leaf: i64,
}

impl Row {
    fn hold(self) -> Result<Hold, StoreError> {
        documents::read("hold", self.id.0, &self.document)
    }

    fn kept(self) -> Result<StoredHold, StoreError> {
        Ok(StoredHold {
            production: ProductionId(self.production.0),
            released_at: time_of(self.released_at)?,
            leaf: count(self.leaf)?,
            hold: self.hold()?,
        })
    }
}

/// Keeps a hold that was raised.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken, or the gag does not exist.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    hold: &Hold,
    leaf: u64,
) -> Result<(), StoreError> {
    let row = Row {
        id: Id(hold.id.0),
        production: Id(production.0),
        gag: hold.gag.map(|gag| Id(gag.0)),
        document: documents::write("the hold", hold)?,
        raised_at: hold.raised_at.into(),
        released_at: None,
        leaf: stored(leaf)?,
    };
    guard::insert(conn, "hold", "one with this id was raised before", |conn| {
        diesel::insert_into(holds::table).values(&row).execute(conn)
    })
}

/// Replaces a hold after an agreement, saying since when it is released: none while it still holds.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such hold.
pub fn update(
    conn: &mut Connection,
    hold: &Hold,
    released_at: Option<Timestamp>,
) -> Result<(), StoreError> {
    let text = documents::write("the hold", hold)?;
    let changed = diesel::update(holds::table.find(Id(hold.id.0)))
        .set((
            holds::document.eq(text),
            holds::released_at.eq(released_at.map(Moment::from)),
        ))
        .execute(conn)?;
    guard::found(changed, "hold", hold.id)
}

/// One hold of any production: the caller compares the production before telling anyone of it.
///
/// # Errors
/// When the database cannot be read.
pub fn get(conn: &mut Connection, id: HoldId) -> Result<Option<StoredHold>, StoreError> {
    holds::table
        .find(Id(id.0))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::kept)
        .transpose()
}

/// Holds on a gag and on its whole production, released ones too, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gag(
    conn: &mut Connection,
    production: ProductionId,
    gag: GagId,
) -> Result<Vec<Hold>, StoreError> {
    holds::table
        .filter(holds::production.eq(Id(production.0)))
        .filter(holds::gag.eq(Id(gag.0)).or(holds::gag.is_null()))
        .order(holds::leaf)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::hold)
        .collect()
}

/// Holds of a production that are not released, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn open(conn: &mut Connection, production: ProductionId) -> Result<Vec<Hold>, StoreError> {
    holds::table
        .filter(holds::production.eq(Id(production.0)))
        .filter(holds::released_at.is_null())
        .order(holds::leaf)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::hold)
        .collect()
}

/// Every hold of a production, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn list(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<StoredHold>, StoreError> {
    holds::table
        .filter(holds::production.eq(Id(production.0)))
        .order(holds::leaf)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::kept)
        .collect()
}
