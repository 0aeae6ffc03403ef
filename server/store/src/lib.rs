//! What is kept, in SQLite or PostgreSQL, behind one set of typed queries.
//!
//! [`Store`] opens a database by its address, hands out read snapshots from a pool, and queues writes
//! to one thread that commits them in groups. Each module beside it is the functions of one kind of
//! thing, taking a [`Connection`]. This crate knows SQL; it must not know HTTP, passwords, who may do
//! what, or any rule of the trade: those live in the app and the pure crates. It reads no clock: every
//! time is an argument.

mod address;
mod columns;
mod connection;
mod documents;
mod error;
mod guard;
mod migrations;
mod schema;
mod store;
mod writer;

pub mod accounts;
pub mod day_records;
pub mod delegations;
pub mod devices;
pub mod drawn_marks;
pub mod erasing;
pub mod gags;
pub mod holds;
pub mod idempotency;
pub mod invitations;
pub mod members;
pub mod meta;
pub mod people;
pub mod photographs;
pub mod plans;
pub mod policies;
pub mod productions;
pub mod readings;
pub mod resolutions;
pub mod runs;
pub mod sessions;
pub mod signoffs;
pub mod stamp;
pub mod test_shots;
pub mod trail;
pub mod witnesses;

pub use address::sqlite_file;
pub use connection::AnyConnection as Connection;
pub use error::StoreError;
pub use store::Store;
