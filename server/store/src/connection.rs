//! One connection to either database, opened so that it keeps what it acknowledges. Must not know what
//! the tables mean.

use std::{path::Path, thread, time::Duration};

use diesel::{
    Connection as _, PgConnection, QueryResult, RunQueryDsl, SqliteConnection,
    connection::{AnsiTransactionManager, SimpleConnection, TransactionManager},
    r2d2::ManageConnection,
};

use crate::{
    address::Address,
    error::{StoreError, is_locked},
};

/// A connection to SQLite or PostgreSQL. Queries are written once and run on both.
//
// The crate exports it as `Connection`; under that name here it would clash with diesel's trait inside
// the derived code.
#[derive(diesel::MultiConnection)]
pub enum AnyConnection {
    /// SQLite.
    Sqlite(SqliteConnection),
    /// PostgreSQL.
    Postgres(PgConnection),
}

/// What a connection is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Purpose {
    /// Snapshots; the database refuses writes on it.
    Reading,
    /// The writer's own, and migrations.
    Writing,
}

/// How long SQLite waits for another process that is writing, in milliseconds.
const WAIT_FOR_OTHERS_MS: u32 = 5_000;

/// How long to stand back before asking for the write-ahead log again, in milliseconds.
const ASK_AGAIN_MS: u32 = 10;

/// The advisory lock that makes one writer of all processes on a PostgreSQL database ("gagwrite" in
/// ASCII). Trail indexes have no gaps because only its holder appends.
const WRITER_LOCK: i64 = 0x6761_6777_7269_7465;

/// Makes the database file if there is none. Done once, when the store is opened: a connection opened
/// later must not quietly start an empty file in the place of one that was moved away.
pub(crate) fn create(address: &Address) -> Result<(), StoreError> {
    match address {
        Address::Sqlite(path) => create_private(path),
        Address::Postgres(_) => Ok(()),
    }
}

/// Opens a connection to a database that is there.
pub(crate) fn open(address: &Address, purpose: Purpose) -> Result<AnyConnection, StoreError> {
    let unavailable = |why: String| StoreError::Unavailable(format!("{}: {why}", address.shown()));
    match address {
        Address::Sqlite(path) => {
            if !path.exists() {
                return Err(unavailable("the file is gone".to_owned()));
            }
            let text = path
                .to_str()
                .ok_or_else(|| StoreError::Address("the path is not UTF-8".to_owned()))?;
            // SQLite gives a leading `:` or `file:` a meaning of its own; a path with a folder has none.
            let text = if path.is_absolute() || text.starts_with('.') {
                text.to_owned()
            } else {
                format!("./{text}")
            };
            let mut connection = SqliteConnection::establish(&text)
                .map_err(|error| unavailable(error.to_string()))?;
            prepare_sqlite(&mut connection, purpose).map_err(|error| {
                match StoreError::from(error) {
                    StoreError::Database(why) => unavailable(why),
                    other => other,
                }
            })?;
            Ok(AnyConnection::Sqlite(connection))
        }
        Address::Postgres(url) => {
            let mut connection =
                PgConnection::establish(url).map_err(|error| unavailable(error.to_string()))?;
            // A server may be set up to acknowledge before the commit is on disk; this session is not.
            connection
                .batch_execute("SET synchronous_commit = on; SET lock_timeout = '10s'")
                .map_err(StoreError::from)?;
            Ok(AnyConnection::Postgres(connection))
        }
    }
}

/// The roster is personal data: the file is made readable by its owner alone. SQLite gives its journal
/// files the same permissions.
fn create_private(path: &Path) -> Result<(), StoreError> {
    let mut options = std::fs::OpenOptions::new();
    options.write(true).create_new(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    match options.open(path) {
        Ok(_) => Ok(()),
        Err(error) if error.kind() == std::io::ErrorKind::AlreadyExists => {
            if path.is_dir() {
                return Err(StoreError::Address(format!(
                    "{} is a folder, not a database file",
                    path.display()
                )));
            }
            Ok(())
        }
        Err(error) => {
            let folder = path
                .parent()
                .filter(|folder| !folder.as_os_str().is_empty());
            let why = match folder {
                Some(folder) if !folder.exists() => {
                    format!(
                        "its folder {} does not exist; make it first",
                        folder.display()
                    )
                }
                _ => error.to_string(),
            };
            Err(StoreError::Address(format!(
                "{} cannot be created: {why}",
                path.display()
            )))
        }
    }
}

fn prepare_sqlite(connection: &mut SqliteConnection, purpose: Purpose) -> QueryResult<()> {
    // WAL lets readers work beside the writer; FULL makes each commit wait until it is on disk.
    switch_to_wal(connection)?;
    connection.batch_execute(&format!(
        "PRAGMA busy_timeout = {WAIT_FOR_OTHERS_MS}; PRAGMA synchronous = FULL; \
         PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON; PRAGMA trusted_schema = OFF"
    ))?;
    if purpose == Purpose::Reading {
        connection.batch_execute("PRAGMA query_only = ON")?;
    }
    Ok(())
}

/// Two connections that switch a fresh file to WAL together both read it and both want it for
/// themselves. SQLite then refuses one at once, whatever its busy timeout, because neither would let go
/// while waiting. The refused one has let go and may ask again, within the time it would have waited.
fn switch_to_wal(connection: &mut SqliteConnection) -> QueryResult<()> {
    // All of the waiting is done here, so that the two ways of waiting do not multiply.
    connection.batch_execute("PRAGMA busy_timeout = 0")?;
    for _ in 0..WAIT_FOR_OTHERS_MS / ASK_AGAIN_MS {
        match connection.batch_execute("PRAGMA journal_mode = WAL") {
            Err(error) if is_locked(&error) => {
                thread::sleep(Duration::from_millis(u64::from(ASK_AGAIN_MS)));
            }
            done => return done,
        }
    }
    connection.batch_execute("PRAGMA journal_mode = WAL")
}

/// Begins a transaction in which nothing moves: every query sees the database as it was at the first.
pub(crate) fn begin_snapshot(connection: &mut AnyConnection) -> QueryResult<()> {
    match connection {
        AnyConnection::Sqlite(connection) => {
            AnsiTransactionManager::begin_transaction_sql(connection, "BEGIN DEFERRED")
        }
        AnyConnection::Postgres(connection) => AnsiTransactionManager::begin_transaction_sql(
            connection,
            "BEGIN TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY",
        ),
    }
}

/// Begins a transaction that is the only writing one on this database, in any process.
pub(crate) fn begin_writing(connection: &mut AnyConnection) -> QueryResult<()> {
    match connection {
        AnyConnection::Sqlite(connection) => {
            AnsiTransactionManager::begin_transaction_sql(connection, "BEGIN IMMEDIATE")
        }
        AnyConnection::Postgres(connection) => {
            AnsiTransactionManager::begin_transaction_sql(connection, "BEGIN")?;
            // Taken before the first query, so that everything read afterwards includes what the
            // holder before us committed.
            diesel::sql_query(format!("SELECT pg_advisory_xact_lock({WRITER_LOCK})"))
                .execute(connection)
                .map(|_| ())
        }
    }
}

/// How many transactions and savepoints are open; none when the connection cannot be trusted any more.
pub(crate) fn depth(connection: &mut AnyConnection) -> Option<u32> {
    AnyConnection::transaction_manager_status_mut(connection)
        .transaction_depth()
        .ok()
        .map(|depth| depth.map_or(0, std::num::NonZeroU32::get))
}

/// Opens read connections for the pool.
#[derive(Debug)]
pub(crate) struct Readers(pub(crate) Address);

impl ManageConnection for Readers {
    type Connection = AnyConnection;
    type Error = StoreError;

    fn connect(&self) -> Result<AnyConnection, StoreError> {
        open(&self.0, Purpose::Reading)
    }

    fn is_valid(&self, connection: &mut AnyConnection) -> Result<(), StoreError> {
        match connection {
            // The file cannot go away while it is open.
            AnyConnection::Sqlite(_) => Ok(()),
            AnyConnection::Postgres(connection) => connection
                .batch_execute("SELECT 1")
                .map_err(StoreError::from),
        }
    }

    fn has_broken(&self, connection: &mut AnyConnection) -> bool {
        // A reader that failed half-way may leave its snapshot open; such a connection is thrown away.
        depth(connection) != Some(0)
    }
}
