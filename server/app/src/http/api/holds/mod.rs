//! Stops that anyone may raise.

pub mod agree;
pub mod list;
pub mod raise;
pub mod raise_by_code;
