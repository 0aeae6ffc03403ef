//! Handlers, one verb a file: decode, one call to a command or a view, encode.

pub mod day;
pub mod delegations;
pub mod devices;
pub mod events;
pub mod gags;
pub mod handed;
pub mod holds;
pub mod invitations;
pub mod me;
pub mod members;
pub mod on_the_day;
pub mod people;
pub mod policies;
pub mod productions;
pub mod sessions;
pub mod setup;
pub mod signoffs;
pub mod status;
pub mod techniques;
pub mod trail;
