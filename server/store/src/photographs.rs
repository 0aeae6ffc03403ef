//! Photographs of sign-offs made on paper. Personal, so each can be deleted; must not know who may see one.

use diesel::prelude::*;
use gagwright_clearance::SignOffId;

use crate::{
    Connection, StoreError,
    columns::Id,
    guard,
    schema::{day_records, photographs, signoffs},
};

/// A photograph of a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photograph {
    /// `image/jpeg` or `image/png`.
    pub media_type: String,
    /// The file.
    pub bytes: Vec<u8>,
}

#[derive(Insertable)]
#[diesel(table_name = photographs)]
struct NewRow<'a> {
    signoff: Id,
    media_type: &'a str,
    bytes: &'a [u8],
}

/// Whether a sign-off's photograph is kept.
///
/// # Errors
/// When the database cannot be read.
pub fn is_kept(conn: &mut Connection, id: SignOffId) -> Result<bool, StoreError> {
    let known: i64 = photographs::table
        .filter(photographs::signoff.eq(Id(id.0)))
        .count()
        .get_result(conn)?;
    Ok(known > 0)
}

/// Keeps the photograph of a sign-off, or of a mark for the day.
///
/// # Errors
/// [`StoreError::Conflict`] when it has one, [`StoreError::NotFound`] when there is neither.
pub fn insert(
    conn: &mut Connection,
    id: SignOffId,
    photograph: &Photograph,
) -> Result<(), StoreError> {
    let signoffs: i64 = signoffs::table.find(Id(id.0)).count().get_result(conn)?;
    let marks: i64 = day_records::table.find(Id(id.0)).count().get_result(conn)?;
    guard::found(usize::from(signoffs + marks > 0), "sign-off", id)?;
    let row = NewRow {
        signoff: Id(id.0),
        media_type: &photograph.media_type,
        bytes: &photograph.bytes,
    };
    guard::insert(
        conn,
        "photograph",
        "this sign-off has one already",
        |conn| {
            diesel::insert_into(photographs::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// The photograph of a sign-off.
///
/// # Errors
/// When the database cannot be read.
pub fn get(conn: &mut Connection, id: SignOffId) -> Result<Option<Photograph>, StoreError> {
    let found: Option<(String, Vec<u8>)> = photographs::table
        .find(Id(id.0))
        .select((photographs::media_type, photographs::bytes))
        .first(conn)
        .optional()?;
    Ok(found.map(|(media_type, bytes)| Photograph { media_type, bytes }))
}
