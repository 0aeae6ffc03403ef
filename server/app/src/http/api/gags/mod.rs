//! Gags, their plans and what comes of them.

pub mod create;
pub mod list;
pub mod matches;
pub mod packet;
pub mod plan;
pub mod read;
pub mod revise;
