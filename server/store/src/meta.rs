//! Settings of the database itself, by key: whether it is a demo, secrets made on first start.

use diesel::prelude::*;

use crate::{Connection, StoreError, schema::meta};

/// The value under a key.
///
/// # Errors
/// When the database cannot be read.
pub fn get(conn: &mut Connection, key: &str) -> Result<Option<String>, StoreError> {
    Ok(meta::table
        .find(key)
        .select(meta::value)
        .first(conn)
        .optional()?)
}

/// Sets the value under a key, whether or not it had one.
///
/// # Errors
/// When the database cannot be written.
pub fn set(conn: &mut Connection, key: &str, value: &str) -> Result<(), StoreError> {
    let changed = diesel::update(meta::table.find(key))
        .set(meta::value.eq(value))
        .execute(conn)?;
    if changed == 0 {
        diesel::insert_into(meta::table)
            .values((meta::key.eq(key), meta::value.eq(value)))
            .execute(conn)?;
    }
    Ok(())
}

/// Removes a key; true when it was there. Of two who try, one is told true: a key can serve as a
/// token that works once.
///
/// # Errors
/// When the database cannot be written.
pub fn remove(conn: &mut Connection, key: &str) -> Result<bool, StoreError> {
    Ok(diesel::delete(meta::table.find(key)).execute(conn)? > 0)
}
