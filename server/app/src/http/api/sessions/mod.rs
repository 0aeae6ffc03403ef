//! Signing in, staying signed in, signing out.

pub mod create;
pub mod end;
pub mod end_one;
pub mod list;
pub mod refresh;
