//! Whether what the cases of a production share is still what it was. The database replaces a random mark
//! whenever anything of it is written (the migration `0014_stamps` names the tables), so whoever remembers
//! what they read asks for the mark alone, and two equal marks mean equal contents. A command is judged by
//! what is kept, and never by what merely was.

use diesel::prelude::*;

use crate::{Connection, StoreError, schema::stamps};

/// The mark of one state. Never two alike: an undone write gives back the mark of what it gives back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stamp(Vec<u8>);

/// The mark of what is kept now, as this transaction sees it.
///
/// # Errors
/// When the database cannot be read.
pub fn now(conn: &mut Connection) -> Result<Stamp, StoreError> {
    Ok(Stamp(stamps::table.select(stamps::mark).first(conn)?))
}
