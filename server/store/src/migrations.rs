//! Brings a database's tables up to this version. The same names in both folders; see
//! `migrations/README.md` for how they are written.

use diesel::{
    RunQueryDsl, SqliteConnection, connection::TransactionManager, migration::MigrationSource,
};
use diesel_migrations::{EmbeddedMigrations, MigrationHarness, embed_migrations};

use crate::{
    connection::{AnyConnection, begin_writing},
    error::StoreError,
};

const SQLITE: EmbeddedMigrations = embed_migrations!("../../migrations/sqlite");
const POSTGRES: EmbeddedMigrations = embed_migrations!("../../migrations/postgres");

type Failure = Box<dyn std::error::Error + Send + Sync>;

/// Runs what is pending, all in one transaction that keeps every other process from writing, so two
/// servers started together do not both create the tables.
pub(crate) fn run(connection: &mut AnyConnection) -> Result<Vec<String>, StoreError> {
    begin_writing(connection)?;
    match refuse_unknown(connection).and_then(|()| run_pending(connection).map_err(failed)) {
        Ok(names) => {
            AnyConnection::commit_transaction(connection)?;
            Ok(names)
        }
        Err(error) => {
            AnyConnection::rollback_transaction(connection)?;
            Err(error)
        }
    }
}

/// Names of what is pending.
pub(crate) fn pending(connection: &mut AnyConnection) -> Result<Vec<String>, StoreError> {
    refuse_unknown(connection)?;
    fn names<DB: diesel::backend::Backend>(
        connection: &mut impl MigrationHarness<DB>,
        source: EmbeddedMigrations,
    ) -> Result<Vec<String>, Failure>
    where
        EmbeddedMigrations: MigrationSource<DB>,
    {
        let pending = connection.pending_migrations(source)?;
        Ok(pending
            .iter()
            .map(|migration| migration.name().to_string())
            .collect())
    }
    match connection {
        AnyConnection::Sqlite(connection) => names(connection, SQLITE),
        AnyConnection::Postgres(connection) => names(connection, POSTGRES),
    }
    .map_err(failed)
}

fn run_pending(connection: &mut AnyConnection) -> Result<Vec<String>, Failure> {
    fn apply<DB: diesel::backend::Backend>(
        connection: &mut impl MigrationHarness<DB>,
        source: EmbeddedMigrations,
    ) -> Result<Vec<String>, Failure>
    where
        EmbeddedMigrations: MigrationSource<DB>,
    {
        let mut names = Vec::new();
        for migration in connection.pending_migrations(source)? {
            connection.run_migration(&*migration)?;
            names.push(migration.name().to_string());
        }
        Ok(names)
    }
    match connection {
        AnyConnection::Sqlite(connection) => apply(connection, SQLITE),
        AnyConnection::Postgres(connection) => apply(connection, POSTGRES),
    }
}

/// A mistyped path may lead to another program's file, which must not be given tables of ours.
fn refuse_foreign(connection: &mut SqliteConnection) -> Result<(), StoreError> {
    let tables: Vec<TableName> = diesel::sql_query(
        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'",
    )
    .load(connection)?;
    let ours = tables
        .iter()
        .any(|table| table.name == "__diesel_schema_migrations");
    match tables.first() {
        Some(table) if !ours => Err(StoreError::Address(format!(
            "the file is another program's: it has a table `{}`",
            table.name
        ))),
        _ => Ok(()),
    }
}

#[derive(diesel::QueryableByName)]
struct TableName {
    #[diesel(sql_type = diesel::sql_types::Text)]
    name: String,
}

/// An older program must not write into tables whose meaning it does not know.
fn refuse_unknown(connection: &mut AnyConnection) -> Result<(), StoreError> {
    fn unknown<DB: diesel::backend::Backend>(
        connection: &mut impl MigrationHarness<DB>,
        source: EmbeddedMigrations,
    ) -> Result<Vec<String>, Failure>
    where
        EmbeddedMigrations: MigrationSource<DB>,
    {
        let known: Vec<String> = source
            .migrations()?
            .iter()
            .map(|migration| migration.name().version().to_string())
            .collect();
        let applied = connection.applied_migrations()?;
        Ok(applied
            .iter()
            .map(ToString::to_string)
            .filter(|name| !known.contains(name))
            .collect())
    }
    let unknown = match connection {
        AnyConnection::Sqlite(connection) => {
            refuse_foreign(connection)?;
            unknown(connection, SQLITE)
        }
        AnyConnection::Postgres(connection) => unknown(connection, POSTGRES),
    }
    .map_err(failed)?;
    if unknown.is_empty() {
        Ok(())
    } else {
        Err(StoreError::Newer(unknown.join(", ")))
    }
}

fn failed(error: Failure) -> StoreError {
    match error.downcast::<diesel::result::Error>() {
        Ok(error) => StoreError::from(*error),
        Err(other) => StoreError::Database(format!("a migration failed: {other}")),
    }
}
