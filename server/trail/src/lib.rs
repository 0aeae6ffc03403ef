//! The append-only record: an RFC 6962 tree over leaves, checkpoints, proofs, exports.
//!
//! This crate is pure. It knows no clock, file, network, database or random source, and nothing of
//! gags: leaves are bytes. It compiles to WebAssembly.

pub mod canonical;
pub mod checkpoint;
pub mod cosignature;
pub mod export;
mod guard;
pub mod leaf;
pub mod proof;
pub mod tree;

pub use canonical::{CanonicalError, canonical_bytes, from_canonical_bytes};
pub use checkpoint::{Checkpoint, CheckpointError, LogKey, VerifyingKey};
pub use cosignature::{Claimed, Cosigned, Witness, WitnessKey, claimed};
pub use export::{
    Export, ExportDevice, ExportError, ExportHeader, ExportedLeaf, ExportedPart, FoundSignOff,
    Verified, Witnessed, verify_export, verify_export_against, verify_export_with,
};
pub use leaf::{Entry, commitment};
pub use proof::{LeafProof, LeafProofError};
pub use tree::{
    Hash, ProofError, consistency_proof, inclusion_proof, leaf_hash, root, roots_at,
    verify_consistency, verify_inclusion,
};
