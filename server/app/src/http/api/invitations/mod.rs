//! How somebody on the roster comes by an account.

pub mod accept;
pub mod create;
pub mod list;
pub mod withdraw;
