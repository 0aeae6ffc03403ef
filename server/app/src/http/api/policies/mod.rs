//! The policy: who must sign what, a production's own.

pub mod preview;
pub mod put;
pub mod read;
