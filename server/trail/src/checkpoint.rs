//! Signed checkpoints in the public C2SP forms: a *signed note* (text, blank line, signature lines)
//! whose text is a *tlog-checkpoint* (origin, size, root). Signatures are Ed25519 (RFC 8032). This
//! module knows nothing of leaves.

use std::{fmt, str::FromStr};

use base64::{Engine, engine::general_purpose::STANDARD};
use ed25519_dalek::{Signature, Signer, SigningKey};
use sha2::{Digest, Sha256};

use crate::tree::Hash;

/// C2SP signed-note: the byte that stands for Ed25519.
const ED25519: u8 = 1;

/// Larger notes are refused before they are parsed; a checkpoint with dozens of cosignatures is a few
/// kilobytes.
const LARGEST_NOTE: usize = 64 * 1024;

/// What a checkpoint says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Checkpoint {
    /// Whose tree it is.
    pub origin: String,
    /// Leaves in it.
    pub size: u64,
    /// Its root.
    pub root: Hash,
    /// Lines after the root that other software may add; ours has none.
    pub extensions: Vec<String>,
}

/// Why a checkpoint or a key was refused.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CheckpointError {
    /// Not a signed note, or its text is not a checkpoint.
    #[error("this is not a signed checkpoint: {0}")]
    Malformed(String),
    /// Not a verifying key in note form.
    #[error("this is not a verifying key of the form name+hash+base64: {0}")]
    BadKey(String),
    /// An origin that cannot be a key's name.
    #[error(
        "the origin \"{0}\" cannot be used: it must not be empty nor hold white space or \"+\""
    )]
    BadOrigin(String),
    /// No signature by the key asked for.
    #[error("the checkpoint carries no signature by {0}")]
    NotSigned(String),
    /// A signature that claims to be by the key, and is not.
    #[error("the checkpoint's signature by {0} does not verify: it was changed or forged")]
    BadSignature(String),
    /// Signed by the key, for another tree.
    #[error("the checkpoint is for \"{found}\", not for \"{expected}\"")]
    OtherOrigin {
        /// The origin in the text.
        found: String,
        /// The key's name.
        expected: String,
    },
}

/// The log's signing key.
pub struct LogKey(SigningKey);

impl LogKey {
    /// The key that a 32-byte seed stands for (RFC 8032, section 5.1.5). The seed is the secret.
    pub fn from_seed(seed: [u8; 32]) -> LogKey {
        LogKey(SigningKey::from_bytes(&seed))
    }

    /// The public half, under the name it signs with.
    ///
    /// # Errors
    /// When the origin is empty or holds white space or `+`.
    pub fn verifying_key(&self, origin: &str) -> Result<VerifyingKey, CheckpointError> {
        Ok(VerifyingKey {
            name: checked_name(origin)?,
            key: self.0.verifying_key(),
        })
    }

    /// Signs a checkpoint for that origin, size and root.
    ///
    /// # Errors
    /// When the origin is empty or holds white space or `+`.
    pub fn sign_checkpoint(
        &self,
        origin: &str,
        size: u64,
        root: &Hash,
    ) -> Result<String, CheckpointError> {
        let public = self.verifying_key(origin)?;
        let text = format!("{origin}\n{size}\n{}\n", STANDARD.encode(root.0));
        let mut signature = public.id().to_vec();
        signature.extend_from_slice(&self.0.sign(text.as_bytes()).to_bytes());
        Ok(format!(
            "{text}\n\u{2014} {origin} {}\n",
            STANDARD.encode(signature)
        ))
    }
}

impl fmt::Debug for LogKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("LogKey(secret)")
    }
}

/// A log's public key with its name; written `name+hash+base64`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct VerifyingKey {
    name: String,
    key: ed25519_dalek::VerifyingKey,
}

impl VerifyingKey {
    /// The name it signs under, which is the origin of its checkpoints.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// First four bytes of SHA-256 over name, newline, algorithm and key (C2SP signed-note).
    fn id(&self) -> [u8; 4] {
        key_id(&self.name, ED25519, &self.key)
    }

    /// Checks a signed note by this key and reads the checkpoint in it. Signatures by other keys are
    /// let be, so that witnesses may add theirs.
    ///
    /// # Errors
    /// When the note is malformed, unsigned by this key, wrongly signed, or for another origin.
    pub fn verify(&self, note: &str) -> Result<Checkpoint, CheckpointError> {
        let (text, signatures) = split_note(note)?;
        let mut signed = false;
        for (name, blob) in signatures {
            let Some((id, signature)) = blob.split_first_chunk::<4>() else {
                continue;
            };
            if name != self.name || *id != self.id() {
                continue;
            }
            let signature = Signature::from_slice(signature)
                .map_err(|_| CheckpointError::BadSignature(self.name.clone()))?;
            self.key
                .verify_strict(text.as_bytes(), &signature)
                .map_err(|_| CheckpointError::BadSignature(self.name.clone()))?;
            signed = true;
        }
        if !signed {
            return Err(CheckpointError::NotSigned(self.name.clone()));
        }
        let checkpoint = Checkpoint::from_text(text)?;
        if checkpoint.origin != self.name {
            return Err(CheckpointError::OtherOrigin {
                found: checkpoint.origin,
                expected: self.name.clone(),
            });
        }
        Ok(checkpoint)
    }
}

impl fmt::Display for VerifyingKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&key_text(&self.name, ED25519, &self.key))
    }
}

impl FromStr for VerifyingKey {
    type Err = CheckpointError;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let (name, key) = key_from_text(text, ED25519)?;
        Ok(VerifyingKey { name, key })
    }
}

/// First four bytes of SHA-256 over name, newline, algorithm and key (C2SP signed-note).
pub(crate) fn key_id(name: &str, algorithm: u8, key: &ed25519_dalek::VerifyingKey) -> [u8; 4] {
    let hash: [u8; 32] = Sha256::new()
        .chain_update(name.as_bytes())
        .chain_update([b'\n', algorithm])
        .chain_update(key.as_bytes())
        .finalize()
        .into();
    [hash[0], hash[1], hash[2], hash[3]]
}

/// A key as it is written: name, hash and base64, joined by "+".
pub(crate) fn key_text(name: &str, algorithm: u8, key: &ed25519_dalek::VerifyingKey) -> String {
    let mut blob = vec![algorithm];
    blob.extend_from_slice(key.as_bytes());
    let id = u32::from_be_bytes(key_id(name, algorithm, key));
    format!("{name}+{id:08x}+{}", STANDARD.encode(blob))
}

/// Reads a key as it is written, of that algorithm and no other.
pub(crate) fn key_from_text(
    text: &str,
    algorithm: u8,
) -> Result<(String, ed25519_dalek::VerifyingKey), CheckpointError> {
    let bad = |problem: &str| CheckpointError::BadKey(problem.to_owned());
    // Base64 may hold "+", so only the first two separate.
    let mut parts = text.splitn(3, '+');
    let (Some(name), Some(id), Some(blob)) = (parts.next(), parts.next(), parts.next()) else {
        return Err(bad("it needs a name, a hash and a key, joined by \"+\""));
    };
    let name = checked_name(name).map_err(|error| bad(&error.to_string()))?;
    let blob = STANDARD
        .decode(blob)
        .map_err(|_| bad("the key is not base64"))?;
    let bytes = match blob.split_first() {
        Some((found, key)) if *found == algorithm => <[u8; 32]>::try_from(key),
        _ if algorithm == ED25519 => return Err(bad("the key is not Ed25519")),
        _ => return Err(bad("the key is not a witness's Ed25519 key")),
    };
    let bytes = bytes.map_err(|_| bad("an Ed25519 key is 32 bytes"))?;
    let key = ed25519_dalek::VerifyingKey::from_bytes(&bytes)
        .map_err(|_| bad("the key is not a point of the curve"))?;
    if format!("{:08x}", u32::from_be_bytes(key_id(&name, algorithm, &key))) != id {
        return Err(bad("the hash does not belong to this name and key"));
    }
    Ok((name, key))
}

impl Checkpoint {
    /// Reads a checkpoint without checking who signed it; only for showing what is claimed.
    ///
    /// # Errors
    /// When the note or its text is malformed.
    pub fn parse_unverified(note: &str) -> Result<Checkpoint, CheckpointError> {
        Checkpoint::from_text(split_note(note)?.0)
    }

    pub(crate) fn from_text(text: &str) -> Result<Checkpoint, CheckpointError> {
        let bad = |problem: &str| CheckpointError::Malformed(problem.to_owned());
        let mut lines = text.strip_suffix('\n').unwrap_or(text).split('\n');
        let origin = lines.next().filter(|line| !line.is_empty());
        let origin = origin.ok_or_else(|| bad("the first line, the origin, is missing"))?;
        let size = lines
            .next()
            .ok_or_else(|| bad("the second line, the size, is missing"))?;
        let digits = size.bytes().all(|byte| byte.is_ascii_digit());
        if !digits || (size.len() > 1 && size.starts_with('0')) {
            return Err(bad("the size must be a plain decimal number"));
        }
        let size = size
            .parse()
            .map_err(|_| bad("the size must be a plain decimal number"))?;
        let root = lines
            .next()
            .ok_or_else(|| bad("the third line, the root, is missing"))?;
        let root = STANDARD
            .decode(root)
            .ok()
            .and_then(|bytes| bytes.try_into().ok());
        let root = Hash(root.ok_or_else(|| bad("the root must be 32 bytes in base64"))?);
        let extensions: Vec<String> = lines.map(str::to_owned).collect();
        if extensions.iter().any(String::is_empty) {
            return Err(bad("an extension line is empty"));
        }
        Ok(Checkpoint {
            origin: origin.to_owned(),
            size,
            root,
            extensions,
        })
    }
}

/// A note's text with its final newline, and its signatures as name and bytes.
pub(crate) type SplitNote<'a> = (&'a str, Vec<(&'a str, Vec<u8>)>);

pub(crate) fn split_note(note: &str) -> Result<SplitNote<'_>, CheckpointError> {
    let bad = |problem: &str| CheckpointError::Malformed(problem.to_owned());
    if note.len() > LARGEST_NOTE {
        return Err(bad("it is larger than 64 KiB"));
    }
    if note
        .chars()
        .any(|character| character < ' ' && character != '\n')
    {
        return Err(bad("it holds control characters"));
    }
    let split = note
        .rfind("\n\n")
        .ok_or_else(|| bad("there is no blank line before signatures"))?;
    let (text, signatures) = (&note[..=split], &note[split + 2..]);
    let signatures = signatures
        .strip_suffix('\n')
        .ok_or_else(|| bad("the last line has no line end"))?;
    let mut found = Vec::new();
    for line in signatures.split('\n') {
        let line = line
            .strip_prefix("\u{2014} ")
            .ok_or_else(|| bad("a signature line must start with a long dash and a space"))?;
        let (name, blob) = line
            .split_once(' ')
            .ok_or_else(|| bad("a signature line needs a name and base64"))?;
        let blob = STANDARD
            .decode(blob)
            .map_err(|_| bad("a signature is not base64"))?;
        if checked_name(name).is_err() || blob.len() < 5 {
            return Err(bad(
                "a signature line needs a name, a key hash and a signature",
            ));
        }
        found.push((name, blob));
    }
    Ok((text, found))
}

pub(crate) fn checked_name(name: &str) -> Result<String, CheckpointError> {
    let refused =
        |character: char| character.is_whitespace() || character.is_control() || character == '+';
    if name.is_empty() || name.chars().any(refused) {
        return Err(CheckpointError::BadOrigin(name.to_owned()));
    }
    Ok(name.to_owned())
}

#[cfg(test)]
#[path = "checkpoint_tests.rs"]
mod tests;
