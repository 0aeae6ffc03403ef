//! The roster.

pub mod erase;
pub mod export;
pub mod import;
pub mod list;
pub mod put;
pub mod read;
