//! What every module's writes lean on: an insert that may clash leaves its transaction usable, and a
//! change to something that is not there is an error.

use diesel::{Connection as _, QueryResult};

use crate::{Connection, StoreError};

/// Runs one insert in a savepoint. PostgreSQL refuses every statement after a failed one until a
/// rollback, so without it a caller could not read what it clashed with.
pub(crate) fn insert(
    conn: &mut Connection,
    what: &'static str,
    rule: &str,
    statement: impl FnOnce(&mut Connection) -> QueryResult<usize>,
) -> Result<(), StoreError> {
    let unique = |error: diesel::result::Error| match error {
        diesel::result::Error::DatabaseError(
            diesel::result::DatabaseErrorKind::UniqueViolation,
            _,
        ) => StoreError::Conflict {
            what,
            detail: rule.to_owned(),
        },
        other => match StoreError::from(other) {
            StoreError::Conflict { detail, .. } => StoreError::Conflict { what, detail },
            other => other,
        },
    };
    conn.transaction(statement).map(|_| ()).map_err(unique)
}

/// Errs when a change changed nothing.
pub(crate) fn found(
    changed: usize,
    what: &'static str,
    id: impl std::fmt::Display,
) -> Result<(), StoreError> {
    if changed == 0 {
        Err(StoreError::NotFound {
            what,
            id: id.to_string(),
        })
    } else {
        Ok(())
    }
}
