//! The trail as files: the log's key, signed checkpoints, proofs and the export that anyone can check
//! with no server.

use gagwright_casting::ProductionId;
use gagwright_store::{
    Connection, Store, StoreError, meta, trail,
    witnesses::{self, Cosignature},
};
use gagwright_trail::{
    Entry, Export, Hash, LogKey, VerifyingKey,
    export::{ExportHeader, ExportedLeaf, ExportedPart},
};
use serde::{Deserialize, Serialize};

use crate::commands::{CommandError, Entropy};

/// Where the log's secret seed is kept.
const LOG_SEED: &str = "log_seed";

/// Makes the log's key on the first start. Must run in a write.
///
/// # Errors
/// When the store fails.
pub fn ensure_log_key(conn: &mut Connection, entropy: Entropy<'_>) -> Result<(), StoreError> {
    if meta::get(conn, LOG_SEED)?.is_none() {
        let mut seed = [0u8; 32];
        entropy(&mut seed);
        meta::set(conn, LOG_SEED, &Hash(seed).to_hex())?;
    }
    Ok(())
}

/// As [`ensure_log_key`], as a write of its own with the system's random bytes.
///
/// # Errors
/// When the store fails.
pub fn ensure_log_key_in(store: &Store) -> Result<(), StoreError> {
    store.write(|conn| ensure_log_key(conn, &mut crate::entropy::system))
}

fn log_key(conn: &mut Connection) -> Result<LogKey, CommandError> {
    let seed = meta::get(conn, LOG_SEED)?
        .as_deref()
        .and_then(Hash::from_hex)
        .ok_or_else(|| {
            StoreError::Corrupt("the log's key is missing; start the server once to make it".into())
        })?;
    Ok(LogKey::from_seed(seed.0))
}

/// The log's name for one production.
pub fn origin(production: ProductionId) -> String {
    format!("gagwright/{production}")
}

fn signing(error: gagwright_trail::CheckpointError) -> CommandError {
    StoreError::Internal(format!("the log's key cannot sign: {error}")).into()
}

/// The log's public key for one production.
///
/// # Errors
/// When the key is missing.
pub fn verifying_key(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<VerifyingKey, CommandError> {
    log_key(conn)?
        .verifying_key(&origin(production))
        .map_err(signing)
}

/// A signed note over the first so many leaves: the same bytes whenever it is asked for.
///
/// # Errors
/// When the tree is smaller, the store fails or the key is missing.
pub fn checkpoint_at(
    conn: &mut Connection,
    production: ProductionId,
    size: u64,
) -> Result<String, CommandError> {
    let root = trail::root(conn, production, size)?;
    log_key(conn)?
        .sign_checkpoint(&origin(production), size, &root)
        .map_err(signing)
}

/// A signed note over the whole tree as it is now, with the lines of the witnesses that cosigned it.
///
/// # Errors
/// When the store fails or the key is missing.
pub fn checkpoint(conn: &mut Connection, production: ProductionId) -> Result<String, CommandError> {
    let size = trail::size(conn, production)?;
    let lines = witnesses::cosignatures_of(conn, production, size)?;
    Ok(noted(checkpoint_at(conn, production, size)?, &lines))
}

fn noted(mut note: String, lines: &[Cosignature]) -> String {
    for one in lines {
        note.push_str(&one.line);
        note.push('\n');
    }
    note
}

/// The notes of smaller trees that witnesses cosigned, smallest first, with their lines.
fn cosigned_before(
    conn: &mut Connection,
    production: ProductionId,
    size: u64,
) -> Result<Vec<String>, CommandError> {
    let all = witnesses::cosignatures(conn, production)?;
    all.chunk_by(|one, next| one.size == next.size)
        .filter_map(|lines| lines.first().map(|first| (first.size, lines)))
        .filter(|(of, _)| *of < size)
        .map(|(of, lines)| Ok(noted(checkpoint_at(conn, production, of)?, lines)))
        .collect()
}

/// That one leaf is in the tree, with the signed checkpoint: all a reader needs to check it offline.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, utoipa::ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LeafProof {
    /// Always [`LeafProof::KIND`].
    pub kind: String,
    /// The leaf.
    pub entry: Entry,
    /// Its hash, hex.
    pub leaf_hash: String,
    /// Leaves in the tree.
    pub tree_size: u64,
    /// The tree's root, hex.
    pub root: String,
    /// The path from the leaf up, hex.
    pub path: Vec<String>,
    /// The signed note over size and root.
    pub checkpoint: String,
    /// The log's public key, `name+hash+key`.
    pub log_key: String,
}

impl LeafProof {
    /// The only kind of leaf proof there is.
    pub const KIND: &'static str = "gagwright/leaf-proof/1";
}

/// The proof for one leaf.
///
/// # Errors
/// When there is no such leaf.
pub fn leaf_proof(
    conn: &mut Connection,
    production: ProductionId,
    leaf: u64,
) -> Result<LeafProof, CommandError> {
    let size = trail::size(conn, production)?;
    let stored = trail::entry(conn, production, leaf)?.ok_or_else(|| CommandError::NotFound {
        what: "leaf",
        id: leaf.to_string(),
    })?;
    let path = trail::inclusion_path(conn, production, leaf, size)?;
    Ok(LeafProof {
        kind: LeafProof::KIND.into(),
        leaf_hash: stored.hash.to_hex(),
        entry: stored.entry,
        tree_size: size,
        root: trail::root(conn, production, size)?.to_hex(),
        path: path.iter().map(Hash::to_hex).collect(),
        checkpoint: checkpoint(conn, production)?,
        log_key: verifying_key(conn, production)?.to_string(),
    })
}

/// Whether an export carries the parts kept beside the leaves, or only the salted commitments to them; every
/// proof is just as good without.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Parts {
    /// They stay at home.
    Left,
    /// They go with it, so that any gag can be rebuilt at any moment with no server.
    Taken,
}

/// The whole trail as JSON Lines: header, leaves, signed checkpoint; and every checkpoint that was cosigned.
///
/// # Errors
/// When the store fails or the key is missing.
pub fn export(
    conn: &mut Connection,
    production: ProductionId,
    parts: Parts,
) -> Result<String, CommandError> {
    const AT_ONCE: u32 = 1_000;
    let size = trail::size(conn, production)?;
    let mut leaves = Vec::new();
    while (leaves.len() as u64) < size {
        let stored = trail::entries(conn, production, leaves.len() as u64, AT_ONCE)?;
        if stored.is_empty() {
            return Err(StoreError::Corrupt("leaves of the trail are missing".into()).into());
        }
        leaves.extend(stored.into_iter().map(|one| {
            let mut leaf = ExportedLeaf::bare(one.entry);
            if parts == Parts::Taken {
                leaf.parts = one
                    .parts
                    .into_iter()
                    .map(|(name, part)| (name, ExportedPart::new(&part.salt, part.said)))
                    .collect();
            }
            leaf
        }));
    }
    let header = ExportHeader {
        kind: ExportHeader::KIND.into(),
        production: production.to_string(),
        origin: origin(production),
        log_key: verifying_key(conn, production)?.to_string(),
        devices: Vec::new(),
    };
    let export = Export {
        header,
        leaves,
        checkpoint: checkpoint(conn, production)?,
        cosigned: cosigned_before(conn, production, size)?,
    };
    export
        .to_jsonl()
        .map_err(|error| StoreError::Internal(error.to_string()).into())
}
