//! What one leaf says. Personal data never enters a leaf in the clear: where it matters, the leaf
//! carries a salted commitment to each part of it, so that erasing a person leaves every proof valid and
//! every other person's part readable.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use crate::{
    canonical::{CanonicalError, canonical_bytes, from_canonical_bytes},
    tree::{Hash, hex, leaf_hash},
};

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
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub gag: Option<String>,
    /// Id of the person who did it; none when nobody was signed in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub actor: Option<String>,
    /// Facts that may stand in the clear: ids, revisions, hashes, roles, the JWS of a sign-off.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<String, serde_json::Value>))]
    pub facts: serde_json::Map<String, serde_json::Value>,
    /// `SHA-256(salt || canonical bytes)` of each part kept beside the leaf, hex, by the part's name.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub commitments: BTreeMap<String, String>,
}

impl Entry {
    /// The leaf's bytes: the entry's RFC 8785 form.
    ///
    /// # Errors
    /// When a fact holds an integer beyond 2^53 or is nested too deep.
    pub fn bytes(&self) -> Result<Vec<u8>, CanonicalError> {
        canonical_bytes(self)
    }

    /// The RFC 6962 hash of the leaf.
    ///
    /// # Errors
    /// As [`Entry::bytes`].
    pub fn hash(&self) -> Result<Hash, CanonicalError> {
        Ok(leaf_hash(&self.bytes()?))
    }

    /// Reads an entry from a leaf's bytes.
    ///
    /// # Errors
    /// When the bytes are not an entry in RFC 8785 form: one entry has one spelling.
    pub fn from_bytes(bytes: &[u8]) -> Result<Entry, CanonicalError> {
        from_canonical_bytes(bytes)
    }
}

/// The salted commitment to a part kept beside a leaf: `SHA-256(salt || RFC 8785 bytes)`, lower-case hex. The
/// salt is 32 random bytes kept beside that part and erased with it, so that nobody can later
/// guess what was committed to.
///
/// # Errors
/// When the personal part holds an integer beyond 2^53 or is nested too deep.
pub fn commitment(salt: &[u8; 32], personal: &serde_json::Value) -> Result<String, CanonicalError> {
    let bytes = canonical_bytes(personal)?;
    Ok(hex(&Sha256::new()
        .chain_update(salt)
        .chain_update(bytes)
        .finalize()))
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn entry() -> Entry {
        let facts = json!({"revision": 3, "digest": "ab"});
        Entry {
            index: 4,
            at: "2026-03-02T07:15:00Z".to_owned(),
            kind: "plan.revised".to_owned(),
            production: "01".to_owned(),
            gag: Some("02".to_owned()),
            actor: None,
            facts: facts.as_object().unwrap().clone(),
            commitments: BTreeMap::new(),
        }
    }

    #[test]
    fn an_entry_has_one_spelling_and_comes_back_from_it() {
        let bytes = entry().bytes().unwrap();
        assert_eq!(
            String::from_utf8(bytes.clone()).unwrap(),
            r#"{"at":"2026-03-02T07:15:00Z","facts":{"digest":"ab","revision":3},"gag":"02","index":4,"kind":"plan.revised","production":"01"}"#
        );
        assert_eq!(Entry::from_bytes(&bytes).unwrap(), entry());
        let spaced = String::from_utf8(bytes).unwrap().replace(",", ", ");
        assert_eq!(
            Entry::from_bytes(spaced.as_bytes()),
            Err(CanonicalError::NotCanonical)
        );
    }

    #[test]
    fn an_unknown_field_or_a_null_in_place_of_nothing_is_refused() {
        let text = r#"{"at":"t","extra":1,"facts":{},"index":0,"kind":"k","production":"p"}"#;
        assert!(matches!(
            Entry::from_bytes(text.as_bytes()),
            Err(CanonicalError::NotExpected(_))
        ));
        let text = r#"{"at":"t","facts":{},"gag":null,"index":0,"kind":"k","production":"p"}"#;
        assert_eq!(
            Entry::from_bytes(text.as_bytes()),
            Err(CanonicalError::NotCanonical)
        );
    }

    #[test]
    fn an_index_or_a_fact_beyond_two_to_the_53_is_refused() {
        let mut large = entry();
        large.index = (1 << 53) + 1;
        assert!(large.bytes().is_err());
        let mut large = entry();
        large.facts.insert("n".to_owned(), json!(u64::MAX));
        assert!(large.bytes().unwrap_err().to_string().contains("/facts/n"));
    }

    #[test]
    fn a_commitment_depends_on_salt_and_content_and_not_on_key_order() {
        let personal: serde_json::Value = serde_json::from_str(r#"{"b":1,"a":"x"}"#).unwrap();
        let same: serde_json::Value = serde_json::from_str(r#"{"a":"x","b":1}"#).unwrap();
        let salt = [7; 32];
        // SHA-256 of 32 bytes of 7 followed by {"a":"x","b":1}, computed with another program.
        assert_eq!(
            commitment(&salt, &personal).unwrap(),
            "39f26ed812e796750b39a64596a9a0189d75569bc468b5dd0fdfb623eaddfdb4"
        );
        assert_eq!(commitment(&salt, &personal), commitment(&salt, &same));
        assert_ne!(
            commitment(&salt, &personal),
            commitment(&[8; 32], &personal)
        );
        assert_ne!(
            commitment(&salt, &personal),
            commitment(&salt, &json!({"a": "y", "b": 1}))
        );
    }
}
