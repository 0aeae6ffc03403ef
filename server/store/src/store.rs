//! The store: reads from a pool of snapshots, writes through the one writer. Must not know what is
//! read or written.

use std::{sync::Arc, time::Duration};

use diesel::{
    connection::TransactionManager,
    r2d2::{NopErrorHandler, Pool},
};

use crate::{
    address::Address,
    connection::{self, AnyConnection, Purpose, Readers},
    error::StoreError,
    migrations,
    writer::Writer,
};

/// Most reads at one time; more wait for one to finish.
const READERS: u32 = 8;

/// How long a read waits for its turn, or for a PostgreSQL server that is coming back.
const WAIT_FOR_READER: Duration = Duration::from_secs(10);

/// An open database. Clones share it; it closes when the last clone is dropped.
#[derive(Clone)]
pub struct Store {
    inner: Arc<Inner>,
}

struct Inner {
    address: Address,
    readers: Pool<Readers>,
    writer: Writer,
}

impl std::fmt::Debug for Store {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Store({})", self.inner.address.shown())
    }
}

impl Store {
    /// Opens `PATH`, `sqlite:PATH`, `postgres://...` or `postgresql://...`. A SQLite file is created
    /// when missing, readable by its owner alone. No migration is run.
    ///
    /// # Errors
    /// [`StoreError::Address`] when the address makes no sense or the file cannot be made, and
    /// [`StoreError::Unavailable`] with the driver's own words when the database cannot be reached.
    pub fn open(url: &str) -> Result<Store, StoreError> {
        let address = Address::parse(url)?;
        connection::create(&address)?;
        // Opened here rather than in the pool, which would retry and then hide the cause.
        let connection = connection::open(&address, Purpose::Writing)?;
        let readers = Pool::builder()
            .max_size(READERS)
            .min_idle(Some(0))
            .test_on_check_out(matches!(address, Address::Postgres(_)))
            .connection_timeout(WAIT_FOR_READER)
            .error_handler(Box::new(NopErrorHandler))
            .build_unchecked(Readers(address.clone()));
        let writer = Writer::start(address.clone(), connection)?;
        Ok(Store {
            inner: Arc::new(Inner {
                address,
                readers,
                writer,
            }),
        })
    }

    /// Applies the migrations that were not applied yet, all or none, and gives their names. Running
    /// it again applies nothing.
    ///
    /// # Errors
    /// [`StoreError::Newer`] when the database has migrations this version does not know.
    pub fn migrate(&self) -> Result<Vec<String>, StoreError> {
        migrations::run(&mut connection::open(
            &self.inner.address,
            Purpose::Writing,
        )?)
    }

    /// Names of the migrations that [`Store::migrate`] would apply.
    ///
    /// # Errors
    /// [`StoreError::Newer`] when the database has migrations this version does not know.
    pub fn pending_migrations(&self) -> Result<Vec<String>, StoreError> {
        migrations::pending(&mut connection::open(
            &self.inner.address,
            Purpose::Writing,
        )?)
    }

    /// Reads a snapshot: every query in `f` sees the same moment. Writing in it is refused.
    ///
    /// # Errors
    /// Whatever `f` gives, or a [`StoreError`] when no snapshot could be had.
    pub fn read<T, E: From<StoreError>>(
        &self,
        f: impl FnOnce(&mut AnyConnection) -> Result<T, E>,
    ) -> Result<T, E> {
        let mut pooled = self
            .inner
            .readers
            .get()
            .map_err(|error| StoreError::Unavailable(error.to_string()))?;
        let connection = &mut *pooled;
        connection::begin_snapshot(connection).map_err(StoreError::from)?;
        let answer = f(connection);
        // There is nothing to commit. Should the rollback fail, the answer is still what was read, and
        // the pool throws the connection away.
        if let Err(error) = AnyConnection::rollback_transaction(connection) {
            tracing::warn!(%error, "a read connection could not end its snapshot");
        }
        answer
    }

    /// Queues a write. `f` runs on the writer's thread inside a savepoint of its own; several writes
    /// share one commit, and the answer comes only after that commit. When `f` fails or panics, what
    /// it wrote is undone and nothing else.
    ///
    /// # Errors
    /// Whatever `f` gives; [`StoreError::Internal`] when it panicked; another [`StoreError`] when the
    /// commit failed, in which case nothing of it was kept.
    pub fn write<T, E>(
        &self,
        f: impl FnOnce(&mut AnyConnection) -> Result<T, E> + Send + 'static,
    ) -> Result<T, E>
    where
        T: Send + 'static,
        E: From<StoreError> + Send + 'static,
    {
        self.inner.writer.write(f)
    }

    /// Which database it is: "SQLite" or "PostgreSQL".
    pub fn kind(&self) -> &'static str {
        match self.inner.address {
            Address::Sqlite(_) => "SQLite",
            Address::Postgres(_) => "PostgreSQL",
        }
    }

    /// Where it is, without a password: for messages and the status page.
    pub fn place(&self) -> String {
        self.inner.address.shown()
    }
}
