//! The append-only record and its proofs.

pub mod at;
pub mod changes;
pub mod checkpoint;
pub mod consistency;
pub mod export;
pub mod page;
pub mod proof;
pub mod witnesses;
