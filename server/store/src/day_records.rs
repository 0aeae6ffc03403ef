//! What happens on the day, each record whole under its kind. What a kind means, and who may change a
//! record, is not known here.

use diesel::prelude::*;
use gagwright_casting::{GagId, ProductionId};
use gagwright_clearance::RecordId;
use serde::{Serialize, de::DeserializeOwned};

use crate::{
    Connection, StoreError,
    columns::{Id, stored},
    documents, guard,
    schema::day_records,
};

/// What a record is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs)] // the names say it
pub enum Kind {
    Equipment,
    Briefing,
    Mark,
    Take,
    Look,
    StandDown,
    Incident,
    Debrief,
}

impl Kind {
    fn name(self) -> &'static str {
        match self {
            Kind::Equipment => "equipment",
            Kind::Briefing => "briefing",
            Kind::Mark => "mark",
            Kind::Take => "take",
            Kind::Look => "look",
            Kind::StandDown => "stand_down",
            Kind::Incident => "incident",
            Kind::Debrief => "debrief",
        }
    }

    /// What people read.
    fn words(self) -> &'static str {
        match self {
            Kind::Equipment => "piece of equipment",
            Kind::Mark => "mark for the day",
            Kind::StandDown => "stand-down",
            other => other.name(),
        }
    }
}

#[derive(Insertable)]
#[diesel(table_name = day_records)]
struct NewRow<'a> {
    id: Id,
    production: Id,
    gag: Option<Id>,
    kind: &'a str,
    document: &'a str,
    leaf: i64,
}

/// A record and the gag it is about; no gag: the whole production.
pub type Kept<T> = (Option<GagId>, T);

/// Keeps a record.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken, or the gag does not exist.
pub fn insert<T: Serialize>(
    conn: &mut Connection,
    production: ProductionId,
    gag: Option<GagId>,
    kind: Kind,
    id: RecordId,
    record: &T,
    leaf: u64,
) -> Result<(), StoreError> {
    let document = documents::write(kind.words(), record)?;
    let row = NewRow {
        id: Id(id.0),
        production: Id(production.0),
        gag: gag.map(|gag| Id(gag.0)),
        kind: kind.name(),
        document: &document,
        leaf: stored(leaf)?,
    };
    let rule = "one with this id was recorded before";
    guard::insert(conn, kind.words(), rule, |conn| {
        diesel::insert_into(day_records::table)
            .values(&row)
            .execute(conn)
    })
}

/// Writes a record as it is now.
///
/// # Errors
/// [`StoreError::NotFound`] when there is none.
pub fn update<T: Serialize>(
    conn: &mut Connection,
    kind: Kind,
    id: RecordId,
    record: &T,
) -> Result<(), StoreError> {
    let document = documents::write(kind.words(), record)?;
    let changed = diesel::update(
        day_records::table
            .filter(day_records::id.eq(Id(id.0)))
            .filter(day_records::kind.eq(kind.name())),
    )
    .set(day_records::document.eq(document))
    .execute(conn)?;
    guard::found(changed, kind.words(), id)
}

/// One record of a production.
///
/// # Errors
/// When the database cannot be read.
pub fn get<T: DeserializeOwned>(
    conn: &mut Connection,
    production: ProductionId,
    kind: Kind,
    id: RecordId,
) -> Result<Option<Kept<T>>, StoreError> {
    let row: Option<(Id, Option<Id>, String)> = day_records::table
        .filter(day_records::id.eq(Id(id.0)))
        .filter(day_records::production.eq(Id(production.0)))
        .filter(day_records::kind.eq(kind.name()))
        .select((day_records::id, day_records::gag, day_records::document))
        .first(conn)
        .optional()?;
    row.map(|row| kept(kind, row)).transpose()
}

/// One record, whichever production it is of.
///
/// # Errors
/// When the database cannot be read.
pub fn anywhere<T: DeserializeOwned>(
    conn: &mut Connection,
    kind: Kind,
    id: RecordId,
) -> Result<Option<Kept<T>>, StoreError> {
    let row: Option<(Id, Option<Id>, String)> = day_records::table
        .filter(day_records::id.eq(Id(id.0)))
        .filter(day_records::kind.eq(kind.name()))
        .select((day_records::id, day_records::gag, day_records::document))
        .first(conn)
        .optional()?;
    row.map(|row| kept(kind, row)).transpose()
}

/// Every record of a kind on a production, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn list<T: DeserializeOwned>(
    conn: &mut Connection,
    production: ProductionId,
    kind: Kind,
) -> Result<Vec<Kept<T>>, StoreError> {
    let rows: Vec<(Id, Option<Id>, String)> = day_records::table
        .filter(day_records::production.eq(Id(production.0)))
        .filter(day_records::kind.eq(kind.name()))
        .order(day_records::leaf)
        .select((day_records::id, day_records::gag, day_records::document))
        .load(conn)?;
    rows.into_iter().map(|row| kept(kind, row)).collect()
}

fn kept<T: DeserializeOwned>(
    kind: Kind,
    (id, gag, text): (Id, Option<Id>, String),
) -> Result<Kept<T>, StoreError> {
    let record = documents::read(kind.words(), id.0, &text)?;
    Ok((gag.map(|gag| GagId(gag.0)), record))
}
