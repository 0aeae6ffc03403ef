//! The append-only record: an RFC 6962 tree over leaves, checkpoints, proofs, exports.
//!
//! This crate is pure. It knows no clock, file, network, database or random source, and nothing of
//! gags: leaves are bytes. It compiles to WebAssembly.

pub mod checkpoint;
pub mod export;
pub mod leaf;
pub mod tree;

pub use checkpoint::{Checkpoint, CheckpointError, LogKey, VerifyingKey};
pub use export::{Export, ExportError, Verified, verify_export};
pub use leaf::{Entry, commitment};
pub use tree::{Hash, ProofError, consistency_proof, inclusion_proof, leaf_hash, root, verify_consistency, verify_inclusion};
