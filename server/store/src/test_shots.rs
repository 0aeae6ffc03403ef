//! Test shots of a gag. Only ever added.

use diesel::prelude::*;
use gagwright_casting::GagId;
use gagwright_clearance::TestShot;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, stored},
    documents, guard,
    schema::test_shots,
};

#[derive(Insertable)]
#[diesel(table_name = test_shots)]
struct NewRow<'a> {
    id: Id,
    gag: Id,
    document: &'a str,
    at: Moment,
    leaf: i64,
}

/// Keeps a test shot.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken, or the gag does not exist.
pub fn insert(conn: &mut Connection, shot: &TestShot, leaf: u64) -> Result<(), StoreError> {
    let document = documents::write("the test shot", shot)?;
    let row = NewRow {
        id: Id(shot.id.0),
        gag: Id(shot.gag.0),
        document: &document,
        at: shot.shot_at.into(),
        leaf: stored(leaf)?,
    };
    guard::insert(
        conn,
        "test shot",
        "one with this id was logged before",
        |conn| {
            diesel::insert_into(test_shots::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// Test shots logged on a gag, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gag(conn: &mut Connection, gag: GagId) -> Result<Vec<TestShot>, StoreError> {
    let texts: Vec<(Id, String)> = test_shots::table
        .filter(test_shots::gag.eq(Id(gag.0)))
        .order(test_shots::leaf)
        .select((test_shots::id, test_shots::document))
        .load(conn)?;
    texts
        .iter()
        .map(|(id, text)| documents::read("test shot", id.0, text))
        .collect()
}
