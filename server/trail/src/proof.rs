//! The proof that one leaf is in a trail: what a packet prints and a file carries, checkable with no
//! server. It knows what an entry is, and nothing of what entries mean.

use serde::{Deserialize, Serialize};

use crate::{
    canonical::CanonicalError,
    checkpoint::{Checkpoint, CheckpointError, VerifyingKey},
    leaf::Entry,
    tree::{Hash, ProofError, inclusion_proof, verify_inclusion},
};

/// One leaf, its path to the root, and the signed checkpoint that names the root.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct LeafProof {
    /// Always [`LeafProof::KIND`].
    pub kind: String,
    /// The leaf.
    pub entry: Entry,
    /// Its hash.
    #[cfg_attr(feature = "openapi", schema(value_type = String))]
    pub leaf: Hash,
    /// Hashes from beside the leaf up to the root.
    #[cfg_attr(feature = "openapi", schema(value_type = Vec<String>))]
    pub path: Vec<Hash>,
    /// The signed checkpoint, as text.
    pub checkpoint: String,
    /// The key it is signed with, `name+hash+base64`.
    pub log_key: String,
}

/// Why a leaf's proof was refused.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LeafProofError {
    /// Another kind of document, or another version.
    #[error("this is a \"{0}\"; a \"gagwright/proof/1\" was expected")]
    OtherKind(String),
    /// The entry has no canonical bytes.
    #[error("the entry: {0}")]
    Entry(#[from] CanonicalError),
    /// The hash printed for the leaf is not the entry's.
    #[error("the entry hashes to {found}, but the proof is for {claimed}: one of them was changed")]
    OtherLeaf {
        /// The entry's hash.
        found: Hash,
        /// The hash in the document.
        claimed: Hash,
    },
    /// The checkpoint does not verify.
    #[error("the checkpoint: {0}")]
    Checkpoint(#[from] CheckpointError),
    /// The path does not lead to the checkpoint's root.
    #[error("the path: {0}")]
    Path(#[from] ProofError),
}

impl LeafProof {
    /// The only kind of proof document there is.
    pub const KIND: &'static str = "gagwright/proof/1";

    /// Makes the proof for an entry in the tree over `leaves`, whose signed checkpoint is given.
    ///
    /// # Errors
    /// When the tree has no leaf at the entry's index, or the entry has no canonical bytes.
    pub fn make(
        entry: Entry,
        leaves: &[Hash],
        checkpoint: String,
        log_key: &VerifyingKey,
    ) -> Result<LeafProof, LeafProofError> {
        Ok(LeafProof {
            kind: LeafProof::KIND.to_owned(),
            leaf: entry.hash()?,
            path: inclusion_proof(leaves, entry.index)?,
            entry,
            checkpoint,
            log_key: log_key.to_string(),
        })
    }

    /// Checks everything in the document against a key that the reader trusts.
    ///
    /// # Errors
    /// Says which part does not hold.
    pub fn verify(&self, trusted: &VerifyingKey) -> Result<Checkpoint, LeafProofError> {
        if self.kind != LeafProof::KIND {
            return Err(LeafProofError::OtherKind(self.kind.clone()));
        }
        let checkpoint = trusted.verify(&self.checkpoint)?;
        let found = self.entry.hash()?;
        if found != self.leaf {
            return Err(LeafProofError::OtherLeaf {
                found,
                claimed: self.leaf,
            });
        }
        verify_inclusion(
            &found,
            self.entry.index,
            checkpoint.size,
            &self.path,
            &checkpoint.root,
        )?;
        Ok(checkpoint)
    }
}
