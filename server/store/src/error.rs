//! What can go wrong when keeping things, in sentences that say what to do. Clones, so that one failed
//! commit can be told to everyone who was waiting for it.

use diesel::result::{DatabaseErrorKind, Error as DieselError};

/// Why the store did not do what was asked. Every message ends in what to do.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum StoreError {
    /// The address is not one the store understands.
    #[error("the database address cannot be used: {0}. {advice}", advice = self.advice())]
    Address(String),
    /// Nothing with that id.
    #[error("there is no {what} {id}. {advice}", advice = self.advice())]
    NotFound {
        /// What kind of thing.
        what: &'static str,
        /// Its id as asked for.
        id: String,
    },
    /// Somebody else was there first, or it would clash with what is kept.
    #[error("the {what} clashes with what is kept: {detail}. {advice}", advice = self.advice())]
    Conflict {
        /// What kind of thing.
        what: &'static str,
        /// Which rule it breaks.
        detail: String,
    },
    /// The database cannot be reached or written just now; nothing of this write was kept.
    #[error("the database is not available: {0}. {advice}", advice = self.advice())]
    Unavailable(String),
    /// There is no room for it; nothing of this write was kept.
    #[error("there is no room left to write: {0}. {advice}", advice = self.advice())]
    Full(String),
    /// The database was migrated by a newer version of the program.
    #[error("the database has migrations this version does not know: {0}. {advice}", advice = self.advice())]
    Newer(String),
    /// What is kept cannot be read back.
    #[error("what is kept is damaged: {0}. {advice}", advice = self.advice())]
    Corrupt(String),
    /// The database refused a statement.
    #[error("the database refused: {0}. {advice}", advice = self.advice())]
    Database(String),
    /// A defect in the program; the write was rolled back.
    #[error("the program failed while writing: {0}. {advice}", advice = self.advice())]
    Internal(String),
}

impl StoreError {
    /// What to do about it, in a sentence.
    pub fn advice(&self) -> &'static str {
        match self {
            StoreError::Address(_) => {
                "Give a file path, `sqlite:PATH`, or `postgres://USER@HOST/DATABASE`"
            }
            StoreError::NotFound { .. } => {
                "Check the id, or list what there is and choose from that"
            }
            StoreError::Conflict { .. } => "Read it again and make the change on what is there now",
            StoreError::Unavailable(_) => {
                "Nothing of this request was kept unless a repeat finds it; check that the database \
                 is running, then try again"
            }
            StoreError::Full(_) => {
                "Nothing of this request was kept; make free disk space where the database is, then \
                 send it again"
            }
            StoreError::Newer(_) => {
                "Start the newer version that wrote it, or restore an older backup"
            }
            StoreError::Corrupt(_) => {
                "Stop the server, keep a copy of the database, and restore the last good backup"
            }
            StoreError::Database(_) => {
                "Run `gagwright migrate` if it was not run since the last update; otherwise report \
                 this message"
            }
            StoreError::Internal(_) => {
                "Nothing of this request was kept; report this message with the server's log"
            }
        }
    }

    /// A row that cannot be read back.
    pub(crate) fn unreadable(
        what: &str,
        id: impl std::fmt::Display,
        why: impl std::fmt::Display,
    ) -> Self {
        StoreError::Corrupt(format!("{what} {id} cannot be read: {why}"))
    }
}

impl From<DieselError> for StoreError {
    fn from(error: DieselError) -> Self {
        match error {
            DieselError::NotFound => StoreError::NotFound {
                what: "record",
                id: "as asked for".to_owned(),
            },
            DieselError::DatabaseError(kind, information) => {
                let message = information.message().to_owned();
                match kind {
                    DatabaseErrorKind::UniqueViolation => StoreError::Conflict {
                        what: "record",
                        detail: format!("there is one already ({message})"),
                    },
                    DatabaseErrorKind::ForeignKeyViolation => StoreError::Conflict {
                        what: "record",
                        detail: format!("it refers to something that is not there ({message})"),
                    },
                    DatabaseErrorKind::SerializationFailure
                    | DatabaseErrorKind::ClosedConnection
                    | DatabaseErrorKind::UnableToSendCommand => StoreError::Unavailable(message),
                    _ => from_message(message),
                }
            }
            DieselError::DeserializationError(why) => StoreError::Corrupt(why.to_string()),
            DieselError::BrokenTransactionManager => {
                StoreError::Unavailable("the connection broke inside a transaction".to_owned())
            }
            other => from_message(other.to_string()),
        }
    }
}

/// SQLite was asked for a file that another connection has for itself.
pub(crate) fn is_locked(error: &DieselError) -> bool {
    matches!(error, DieselError::DatabaseError(_, information) if information.message() == "database is locked")
}

/// Neither database gives a kind for these; their words are stable enough to tell them apart.
fn from_message(message: String) -> StoreError {
    const PASSING: [&str; 9] = [
        "database is locked",
        "database table is locked",
        "disk I/O error",
        "unable to open database file",
        "readonly database",
        "lock timeout",
        "terminating connection",
        "server closed the connection",
        "the database system is",
    ];
    // SQLITE_FULL, and what PostgreSQL says with SQLSTATE 53100 (disk_full): the system's words for ENOSPC
    // and EDQUOT.
    const FULL: [&str; 3] = [
        "disk is full",
        "No space left on device",
        "Disk quota exceeded",
    ];
    const DAMAGED: [&str; 3] = [
        "disk image is malformed",
        "file is not a database",
        "invalid page in block",
    ];
    if FULL.iter().any(|words| message.contains(words)) {
        StoreError::Full(message)
    } else if PASSING.iter().any(|words| message.contains(words)) {
        StoreError::Unavailable(message)
    } else if DAMAGED.iter().any(|words| message.contains(words)) {
        StoreError::Corrupt(message)
    } else {
        StoreError::Database(message)
    }
}
