//! A production and what it asks of its people.

pub mod read;
pub mod today;
