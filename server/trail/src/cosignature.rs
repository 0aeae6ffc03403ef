//! Cosignatures of witnesses in the public C2SP form *tlog-cosignature*, version `cosignature/v1`: Ed25519
//! over a time and a checkpoint's text, kept as one more line of the signed note. A witness says that it saw
//! that tree of that size at that time, consistent with all it saw before, and nothing of what is in it.

use std::{fmt, str::FromStr};

use base64::{Engine, engine::general_purpose::STANDARD};
use ed25519_dalek::{Signature, Signer, SigningKey};

use crate::checkpoint::{
    Checkpoint, CheckpointError, VerifyingKey, checked_name, key_from_text, key_id, key_text,
    split_note,
};

/// C2SP tlog-cosignature: the byte that stands for a timestamped Ed25519 cosignature.
const COSIGNATURE: u8 = 4;

/// Key id, time and signature.
const BLOB: usize = 4 + 8 + 64;

/// A witness's public key with its name; written `name+hash+base64`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WitnessKey {
    name: String,
    key: ed25519_dalek::VerifyingKey,
}

/// What a witness signed for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cosigned {
    /// The checkpoint it saw.
    pub checkpoint: Checkpoint,
    /// When, in seconds since 1970 by the witness's clock.
    pub seconds: u64,
}

/// A line of a note that has the form of a cosignature; who made it is not checked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Claimed {
    /// The name on the line.
    pub name: String,
    /// When it says that it was made, in seconds since 1970.
    pub seconds: u64,
    /// The line, without its line end.
    pub line: String,
    /// The key's hash, as the line gives it.
    id: [u8; 4],
}

/// The text that is signed: two lines before the checkpoint's own.
fn message(seconds: u64, text: &str) -> Vec<u8> {
    format!("cosignature/v1\ntime {seconds}\n{text}").into_bytes()
}

fn taken_apart(blob: &[u8]) -> Option<([u8; 4], u64, Signature)> {
    let (id, rest) = blob.split_first_chunk::<4>()?;
    let (seconds, signature) = rest.split_first_chunk::<8>()?;
    let seconds = u64::from_be_bytes(*seconds);
    // C2SP tlog-cosignature: the time must not exceed 2^63 - 1.
    i64::try_from(seconds).ok()?;
    Some((*id, seconds, Signature::from_slice(signature).ok()?))
}

impl WitnessKey {
    /// The name it signs under.
    pub fn name(&self) -> &str {
        &self.name
    }

    fn id(&self) -> [u8; 4] {
        key_id(&self.name, COSIGNATURE, &self.key)
    }

    /// Whether a line says that it is by this key; that it is, [`WitnessKey::verify`] says.
    pub fn is_named_by(&self, claim: &Claimed) -> bool {
        claim.name == self.name && claim.id == self.id()
    }

    /// Whether it is the same key, whatever the name. The signed text does not hold the name, so that one
    /// signature would do for both.
    pub fn same_key(&self, other: &WitnessKey) -> bool {
        self.key == other.key
    }

    /// Checks this witness's cosignature of a note; the latest where there are several, and every one of them
    /// must be good. That the log signed the note too is for [`VerifyingKey::verify`].
    ///
    /// # Errors
    /// When the note is malformed, not cosigned by this key, or wrongly so.
    pub fn verify(&self, note: &str) -> Result<Cosigned, CheckpointError> {
        let (text, signatures) = split_note(note)?;
        let bad = || CheckpointError::BadSignature(self.name.clone());
        let mut latest = None;
        for (name, blob) in signatures {
            if name != self.name || !blob.starts_with(&self.id()) {
                continue;
            }
            let (_, seconds, signature) = taken_apart(&blob).ok_or_else(bad)?;
            self.key
                .verify_strict(&message(seconds, text), &signature)
                .map_err(|_| bad())?;
            latest = latest.max(Some(seconds));
        }
        let seconds = latest.ok_or_else(|| CheckpointError::NotSigned(self.name.clone()))?;
        let checkpoint = Checkpoint::from_text(text)?;
        Ok(Cosigned {
            checkpoint,
            seconds,
        })
    }
}

impl fmt::Display for WitnessKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&key_text(&self.name, COSIGNATURE, &self.key))
    }
}

impl FromStr for WitnessKey {
    type Err = CheckpointError;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let (name, key) = key_from_text(text, COSIGNATURE)?;
        Ok(WitnessKey { name, key })
    }
}

/// A witness's signing key.
pub struct Witness {
    name: String,
    key: SigningKey,
}

impl Witness {
    /// The witness of that name whose key a 32-byte seed stands for (RFC 8032, section 5.1.5). The seed is the
    /// secret. A key must not be used under two names: the signed text does not hold the name.
    ///
    /// # Errors
    /// When the name is empty or holds white space or `+`.
    pub fn from_seed(name: &str, seed: [u8; 32]) -> Result<Witness, CheckpointError> {
        Ok(Witness {
            name: checked_name(name)?,
            key: SigningKey::from_bytes(&seed),
        })
    }

    /// The public half.
    pub fn key(&self) -> WitnessKey {
        WitnessKey {
            name: self.name.clone(),
            key: self.key.verifying_key(),
        }
    }

    /// The line that cosigns a note which this log signed. Whether the tree is consistent with what the witness
    /// saw before must be known by then.
    ///
    /// # Errors
    /// When the log did not sign the note, or the time is beyond 2^63 - 1.
    pub fn cosign(
        &self,
        note: &str,
        log: &VerifyingKey,
        seconds: u64,
    ) -> Result<String, CheckpointError> {
        log.verify(note)?;
        if i64::try_from(seconds).is_err() {
            return Err(CheckpointError::Malformed(
                "the time of a cosignature must not exceed 2^63 - 1 seconds".to_owned(),
            ));
        }
        let (text, _) = split_note(note)?;
        let mut blob = self.key().id().to_vec();
        blob.extend_from_slice(&seconds.to_be_bytes());
        blob.extend_from_slice(&self.key.sign(&message(seconds, text)).to_bytes());
        Ok(format!("\u{2014} {} {}", self.name, STANDARD.encode(blob)))
    }
}

impl fmt::Debug for Witness {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Witness({}, secret)", self.name)
    }
}

/// Every line of a note that has the form of a cosignature, unchecked: to look up keys to check with, and to
/// show what is claimed.
///
/// # Errors
/// When the note is malformed.
pub fn claimed(note: &str) -> Result<Vec<Claimed>, CheckpointError> {
    let (_, signatures) = split_note(note)?;
    let of_form = signatures
        .into_iter()
        .filter(|(_, blob)| blob.len() == BLOB);
    Ok(of_form
        .filter_map(|(name, blob)| {
            let (id, seconds, _) = taken_apart(&blob)?;
            Some(Claimed {
                id,
                name: name.to_owned(),
                seconds,
                line: format!("\u{2014} {name} {}", STANDARD.encode(&blob)),
            })
        })
        .collect())
}

#[cfg(test)]
#[path = "cosignature_tests.rs"]
mod tests;
