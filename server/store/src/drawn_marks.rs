//! Marks drawn beside sign-offs. Personal, so each can be deleted; must not know who may see one.

use std::collections::BTreeMap;

use diesel::prelude::*;
use gagwright_clearance::{Drawing, GagId, SignOffId};

use crate::{
    Connection, StoreError,
    columns::Id,
    documents, guard,
    schema::{drawn_marks, signoffs},
};

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = drawn_marks)]
struct Row {
    signoff: Id,
    drawing: String,
}

impl Row {
    fn drawing(self) -> Result<(SignOffId, Drawing), StoreError> {
        let drawing = documents::read("the mark on sign-off", self.signoff.0, &self.drawing)?;
        Ok((SignOffId(self.signoff.0), drawing))
    }
}

/// Keeps the mark of a sign-off. One that is kept already stays: it has the same hash.
///
/// # Errors
/// [`StoreError::Conflict`] when there is no such sign-off.
pub fn keep(conn: &mut Connection, id: SignOffId, drawing: &Drawing) -> Result<(), StoreError> {
    let row = Row {
        signoff: Id(id.0),
        drawing: documents::write("the mark", drawing)?,
    };
    let known: i64 = drawn_marks::table
        .filter(drawn_marks::signoff.eq(Id(id.0)))
        .count()
        .get_result(conn)?;
    if known > 0 {
        return Ok(());
    }
    guard::insert(conn, "mark", "this sign-off has one already", |conn| {
        diesel::insert_into(drawn_marks::table)
            .values(&row)
            .execute(conn)
    })
}

/// The marks on a gag's sign-offs.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gag(
    conn: &mut Connection,
    gag: GagId,
) -> Result<BTreeMap<SignOffId, Drawing>, StoreError> {
    let rows: Vec<Row> = drawn_marks::table
        .inner_join(signoffs::table)
        .filter(signoffs::gag.eq(Id(gag.0)))
        .select(Row::as_select())
        .load(conn)?;
    rows.into_iter().map(Row::drawing).collect()
}
