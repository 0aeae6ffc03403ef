//! The HTTP side: one route table, handlers that decode, make one call and encode, and what they share.
//! This side knows HTTP, accounts and sessions; every rule of the trade lives behind the commands and
//! views that it calls.

pub mod agent;
pub mod answer;
pub mod api;
mod assets;
pub mod caller;
pub mod extract;
mod feed;
mod headers;
mod json;
mod limits;
pub mod once;
pub mod openapi;
pub mod problem;
mod routes;
mod server;
pub mod session;
pub mod state;
pub mod writing;

pub use routes::described;
pub use server::{Running, ServeError, serve, start};

pub use crate::config::ServeOptions;
