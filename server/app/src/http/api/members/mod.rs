//! Hats.

pub mod list;
pub mod put;
