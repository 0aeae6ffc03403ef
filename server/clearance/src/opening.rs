//! What a signer wrote in their own words, conditions and a reason for declining, and the salted
//! commitments that stand for it in what is signed. A text can be erased; its commitment stands for ever.
//! It draws no random numbers: the salt comes from the device.

use gagwright_trail::tree::{Hash, bytes_from_hex};
use serde::{Deserialize, Serialize};

/// A text and the salt of its commitment. It travels beside the sign-off, never in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Opening {
    /// 32 random bytes of the device, lower-case hex.
    pub salt: String,
    /// The text, as its signer wrote it.
    pub text: String,
}

impl Opening {
    /// A text with its salt.
    pub fn new(salt: &[u8; 32], text: impl Into<String>) -> Opening {
        Opening {
            salt: Hash(*salt).to_hex(),
            text: text.into(),
        }
    }

    /// `SHA-256(salt || text)`, the text in UTF-8, lower-case hex; none when the salt is not 32 bytes.
    pub fn commitment(&self) -> Option<String> {
        let salt = bytes_from_hex(&self.salt)?;
        let mut bytes = salt.to_vec();
        bytes.extend_from_slice(self.text.as_bytes());
        Some(Hash::of(&bytes).to_hex())
    }
}

/// Whether this has the form of a commitment: 64 lower-case hex digits.
pub fn is_commitment(text: &str) -> bool {
    bytes_from_hex(text).is_some()
}

/// The text that a commitment stands for, while it is kept.
pub fn text_of<'a>(commitment: &str, openings: &'a [Opening]) -> Option<&'a str> {
    openings
        .iter()
        .find(|one| one.commitment().as_deref() == Some(commitment))
        .map(|one| one.text.as_str())
}

/// The text that a commitment stands for, or what is to be said in its place.
pub fn told(commitment: &str, openings: &[Opening]) -> String {
    match text_of(commitment, openings) {
        Some(text) => text.to_owned(),
        None => {
            let short: String = commitment.chars().take(8).collect();
            format!("the text was erased; its commitment stands ({short})")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_commitment_is_the_hash_of_salt_and_text() {
        // printf '\x07%.0s' {1..32}; printf 'Zoë: no cover' | sha256sum, with another program (coreutils).
        let opening = Opening::new(&[7; 32], "Zoë: no cover");
        assert_eq!(
            opening.commitment().as_deref(),
            Some("e252139444b8517bba3426687e32ec25a931f250e21b26cb16b0a5f5ef598c5d")
        );
        let other = Opening::new(&[8; 32], "Zoë: no cover");
        assert_ne!(opening.commitment(), other.commitment());
        let commitment = opening.commitment().unwrap();
        assert!(is_commitment(&commitment));
        assert_eq!(told(&commitment, &[other, opening]), "Zoë: no cover");
        assert!(told(&commitment, &[]).starts_with("the text was erased; its commitment stands"));
    }

    #[test]
    fn a_salt_that_is_not_thirty_two_bytes_commits_to_nothing() {
        for salt in [
            "",
            "07",
            &"0G".repeat(32),
            &"0A".repeat(32),
            &"07".repeat(33),
        ] {
            let opening = Opening {
                salt: salt.to_owned(),
                text: "x".to_owned(),
            };
            assert_eq!(opening.commitment(), None, "{salt}");
        }
    }
}
