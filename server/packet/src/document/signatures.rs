//! Cast, sign-offs and the trail's proof.

use serde::{Deserialize, Serialize};

use super::State;

/// One performer's place and the verdict on who is cast in it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct CastSlot {
    /// What people call it, for example "Double for Ines".
    pub slot: String,
    /// Who is cast; empty: nobody.
    pub person: String,
    /// A remark beside the name: kit mass, whom they double. May be empty.
    pub remark: String,
    /// Qualified, conditional, not qualified; or "Nobody cast".
    pub outcome: State,
    /// One for each requirement.
    pub findings: Vec<FindingRow>,
}

/// What was found for one requirement.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct FindingRow {
    /// The requirement in words.
    pub requirement: String,
    /// Met, curable or not met.
    pub state: State,
    /// One sentence with the margin.
    pub reason: String,
    /// What would cure it and by when. May be empty.
    pub cure: String,
}

/// One role that must sign, and how its sign-off stands.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct SignOffPart {
    /// The role, for example "Stunt coordinator".
    pub role: String,
    /// Why it must sign: "every gag", "fire".
    pub because: String,
    /// Standing, conditional, missing, lapsed or declined.
    pub state: State,
    /// Whether the signature counts now. Where it does not, the packet prints a box for ink.
    pub stands: bool,
    /// Who signed; or, where nobody did, who is expected to, if that is known. May be empty.
    pub name: String,
    /// Approved, approved with conditions, declined. Empty: never signed.
    pub decision: String,
    /// The mark the signer drew: strokes, each x, y, x, y ... from the top left, in any one scale. Empty: they
    /// only confirmed.
    pub drawing: Vec<Vec<u16>>,
    /// When it was signed, by the device's clock, as people read it. May be empty.
    pub signed_at: String,
    /// When the server received it, as people read it. May be empty.
    pub received_at: String,
    /// The revision signed, where one was.
    pub revision: Option<u32>,
    /// The facets it covers.
    pub covers: Vec<String>,
    /// The device. May be empty.
    pub device: String,
    /// SHA-256 fingerprint of the device's public key (RFC 7638 thumbprint), as text. May be empty.
    pub key_fingerprint: String,
    /// The leaf it became in the trail, where it did.
    pub leaf: Option<u64>,
    /// For a signature made on paper: who witnessed it. Empty: signed on a device.
    pub ink_witness: String,
    /// The text that was signed, or is to be signed.
    pub attestation: String,
    /// Why it does not stand, or what else is to be known.
    pub sentences: Vec<String>,
    /// Conditions that were set and are not met yet.
    pub conditions: Vec<String>,
}

/// The proof that this revision is in the trail.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct TrailProof {
    /// The log's name.
    pub log: String,
    /// The leaf's index.
    pub leaf_index: u64,
    /// What the leaf records, in a sentence.
    pub leaf_records: String,
    /// The leaf's hash, hex or base64.
    pub leaf_hash: String,
    /// The tree's size when the packet was made.
    pub tree_size: u64,
    /// The root at that size.
    pub root: String,
    /// The inclusion path (RFC 6962), from the leaf up.
    pub path: Vec<String>,
    /// The signed checkpoint, exactly.
    pub checkpoint: String,
    /// The log's public key. May be empty.
    pub log_key: String,
    /// How to check it, step by step; empty: the packet's own words are printed.
    pub how_to_verify: Vec<String>,
}
