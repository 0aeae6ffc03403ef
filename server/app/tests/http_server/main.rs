//! The server as its callers meet it: a real one on a port of its own, a database in a temporary folder,
//! driven over HTTP. Nothing here reaches behind the API except to look at what was stored.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod accounts;
mod converging;
mod documents;
mod gags;
mod handed;
mod holds;
mod lan;
mod lan_authority;
mod lan_brought;
mod lan_support;
mod live;
mod past;
mod refusals;
mod roster;
mod rules;
mod seen;
mod settings;
mod signing;
mod starting;
mod support;
mod test_shots;
mod the_day;
mod tools;
mod witnesses;
mod witnesses_offline;
mod writes;
