//! Hats.

pub mod put;
