//! What the store's tests share: both databases, fresh for each test, and things to put in them.
//! Everyone and everything in it is invented.

#![allow(dead_code)] // each test binary uses its own part

pub mod build;
pub mod postgres;

use std::sync::{
    OnceLock,
    atomic::{AtomicU32, Ordering},
};

use gagwright_store::{Connection, Store, StoreError};
use postgres::Cluster;

/// An empty database that goes away with the test.
pub struct TestDatabase {
    /// Which kind, for messages.
    pub name: &'static str,
    /// Its address.
    pub url: String,
    _folder: Option<tempfile::TempDir>,
}

impl TestDatabase {
    /// A new SQLite file.
    pub fn sqlite() -> TestDatabase {
        let folder = tempfile::tempdir().expect("a folder for the database");
        let url = format!("sqlite:{}", folder.path().join("gagwright.db").display());
        TestDatabase {
            name: "SQLite",
            url,
            _folder: Some(folder),
        }
    }

    /// A new database in this process's PostgreSQL cluster.
    pub fn postgres() -> TestDatabase {
        static CLUSTER: OnceLock<Cluster> = OnceLock::new();
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let cluster = CLUSTER.get_or_init(|| Cluster::start(&["fsync=off"]));
        let name = format!("story_{}", COUNT.fetch_add(1, Ordering::Relaxed));
        cluster.create_database(&name);
        TestDatabase {
            name: "PostgreSQL",
            url: cluster.url(&name),
            _folder: None,
        }
    }

    /// Opens it.
    pub fn open(&self) -> Store {
        Store::open(&self.url).unwrap_or_else(|error| panic!("{}: {error}", self.name))
    }

    /// Opens it and makes its tables.
    pub fn ready(&self) -> Store {
        let store = self.open();
        store
            .migrate()
            .unwrap_or_else(|error| panic!("{}: {error}", self.name));
        store
    }
}

/// One of each database the store runs on: every story is told to both.
pub fn databases() -> Vec<TestDatabase> {
    vec![TestDatabase::sqlite(), TestDatabase::postgres()]
}

/// Runs a write whose error type is the store's.
pub fn write<T: Send + 'static>(
    store: &Store,
    f: impl FnOnce(&mut Connection) -> Result<T, StoreError> + Send + 'static,
) -> Result<T, StoreError> {
    store.write(f)
}

/// Checks that something was refused as clashing, and in which words.
pub fn assert_conflict<T: std::fmt::Debug>(result: Result<T, StoreError>, what: &str, words: &str) {
    match result {
        Err(StoreError::Conflict { what: kind, detail }) => {
            assert_eq!(kind, what);
            assert!(detail.contains(words), "{detail}");
        }
        other => panic!("expected a conflict about a {what}, got {other:?}"),
    }
}
