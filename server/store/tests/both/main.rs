//! One story told to both databases: what is kept comes back, what clashes is refused, what fails
//! leaves nothing, and what was answered is there.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../support/mod.rs"]
mod support;

mod access;
mod day;
mod keeping;
mod opening;
mod queries;
mod record;
mod rules;
mod sign_ins;
mod stamps;
mod witnesses;
mod writing;
