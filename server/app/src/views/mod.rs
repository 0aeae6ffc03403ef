//! What people read: the answers of the API and the terminal, put together from the store and judged by
//! the pure crates. Views write nothing; they must not know HTTP, a terminal or a clock.

pub mod types;

pub use types::*;
