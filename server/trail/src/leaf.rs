//! What one leaf says. Personal data never enters a leaf in the clear: where it matters, the leaf
//! carries a salted commitment, so that erasing a person leaves every proof valid.

use serde::{Deserialize, Serialize};

/// One accepted command, as the tree records it. The leaf's bytes are the entry's RFC 8785 form.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Position in the tree, from 0; as a number below 2^53.
    pub index: u64,
    /// When the server accepted it, RFC 3339 UTC.
    pub at: String,
    /// What kind of command: `gag.created`, `plan.revised`, `signoff.made`, `hold.raised` ...
    pub kind: String,
    /// The production.
    pub production: String,
    /// The gag, where it is about one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gag: Option<String>,
    /// Id of the person who did it; none when nobody was signed in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub actor: Option<String>,
    /// Facts that may stand in the clear: ids, revisions, hashes, roles, the JWS of a sign-off.
    #[cfg_attr(feature = "openapi", schema(value_type = Object))]
    pub facts: serde_json::Map<String, serde_json::Value>,
    /// `SHA-256(salt || canonical bytes)` of the personal part, hex; none when there is none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub commitment: Option<String>,
}

/// The salted commitment to a personal part.
pub fn commitment(_salt: &[u8; 32], _personal: &serde_json::Value) -> String {
    todo!()
}
