//! A whole trail in one file, checkable with no server. JSON Lines: a header, one line for each leaf,
//! and the signed checkpoint. It knows what an entry is, but not what entries mean, except that a
//! fact named `jws` is a sign-off, that facts named `device` and `key` register a signing key, and that
//! one named `witness_key` names a witness.

mod reading;
mod witnessed;

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::{
    canonical::{CanonicalError, canonical_bytes, from_canonical_bytes},
    checkpoint::VerifyingKey,
    cosignature::WitnessKey,
    leaf::Entry,
    tree::{Hash, hex, root},
};
use reading::Reading;
pub use witnessed::Witnessed;

/// The first line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExportHeader {
    /// Always [`ExportHeader::KIND`].
    pub kind: String,
    /// The production's id, which every leaf must carry.
    pub production: String,
    /// The log's name in its checkpoint.
    pub origin: String,
    /// The log's key, `name+hash+base64`.
    pub log_key: String,
    /// Keys of devices, for those that no leaf registers.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub devices: Vec<ExportDevice>,
}

impl ExportHeader {
    /// The only kind of export there is.
    pub const KIND: &'static str = "gagwright/trail/1";
}

/// A device's public key, as a JWK.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExportDevice {
    /// The device's id, as in the JWS header's `kid`.
    pub id: String,
    /// The JWK.
    pub key: Value,
}

/// One leaf's line. It may carry the parts kept beside the leaf; whoever writes the export decides, and
/// one without them proves everything but what they said.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExportedLeaf {
    /// The leaf.
    pub entry: Entry,
    /// The parts, by name; those that were erased or left out are absent.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub parts: BTreeMap<String, ExportedPart>,
}

/// One part kept beside a leaf, with what opens the leaf's commitment to it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExportedPart {
    /// 32 random bytes, hex.
    pub salt: String,
    /// What was committed to.
    pub said: Value,
}

impl ExportedPart {
    /// A part with its salt.
    pub fn new(salt: &[u8; 32], said: Value) -> ExportedPart {
        ExportedPart {
            salt: hex(salt),
            said,
        }
    }
}

impl ExportedLeaf {
    /// A leaf's line with none of its parts.
    pub fn bare(entry: Entry) -> ExportedLeaf {
        ExportedLeaf {
            entry,
            parts: BTreeMap::new(),
        }
    }

    /// The leaf's line. The hash of the entry is in it so that a damaged line names itself; it proves
    /// nothing, which the signed root does.
    fn line(&self) -> Result<Vec<u8>, CanonicalError> {
        canonical_bytes(&Line {
            entry: self.entry.clone(),
            hash: self.entry.hash()?.to_hex(),
            parts: self.parts.clone(),
        })
    }

    /// What its parts said, by name.
    pub fn said(&self) -> BTreeMap<String, Value> {
        let said = |(name, part): (&String, &ExportedPart)| (name.clone(), part.said.clone());
        self.parts.iter().map(said).collect()
    }
}

/// A leaf's line as it is written.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Line {
    entry: Entry,
    hash: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    parts: BTreeMap<String, ExportedPart>,
}

/// The last line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Closing {
    checkpoint: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    cosigned: Vec<String>,
}

/// An export to be written.
#[derive(Clone, Debug, PartialEq)]
pub struct Export {
    /// The first line.
    pub header: ExportHeader,
    /// The leaves in order.
    pub leaves: Vec<ExportedLeaf>,
    /// The signed checkpoint over exactly these leaves, with the cosignatures of it.
    pub checkpoint: String,
    /// Checkpoints of smaller trees that witnesses cosigned, smallest first.
    pub cosigned: Vec<String>,
}

impl Export {
    /// The file's text.
    ///
    /// # Errors
    /// When a value has no canonical form.
    pub fn to_jsonl(&self) -> Result<String, CanonicalError> {
        let mut lines = vec![canonical_bytes(&self.header)?];
        for leaf in &self.leaves {
            lines.push(leaf.line()?);
        }
        lines.push(canonical_bytes(&Closing {
            checkpoint: self.checkpoint.clone(),
            cosigned: self.cosigned.clone(),
        })?);
        // Canonical JSON escapes every control character, so no line holds a line end of its own.
        let mut text = String::new();
        for line in lines {
            text.push_str(&String::from_utf8_lossy(&line));
            text.push('\n');
        }
        Ok(text)
    }
}

/// What is wrong with an exported trail, and on which line.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("line {line}: {problem}")]
pub struct ExportError {
    /// Counted from 1.
    pub line: usize,
    /// What is wrong, in a sentence.
    pub problem: String,
}

/// A sign-off found in a trail, for whoever can check its signature.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FoundSignOff {
    /// Its leaf.
    pub leaf: u64,
    /// When the server accepted it.
    pub at: String,
    /// The compact JWS.
    pub jws: String,
    /// The device its header names; none when the header cannot be read.
    pub device: Option<String>,
    /// That device's JWK, where the trail or the header gives one.
    pub key: Option<Value>,
    /// Whether the key comes from an earlier leaf, and so cannot have been swapped since.
    pub key_in_trail: bool,
}

/// What a good export showed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Verified {
    /// The production's id.
    pub production: String,
    /// The log's name.
    pub origin: String,
    /// The key the checkpoint is signed with.
    pub log_key: String,
    /// Leaves.
    pub size: u64,
    /// The root.
    pub root: Hash,
    /// Leaves of each kind.
    pub kinds: BTreeMap<String, u64>,
    /// When the first leaf was accepted.
    pub first_at: Option<String>,
    /// When the last leaf was accepted.
    pub last_at: Option<String>,
    /// Personal parts that are here and match their commitments.
    pub personal_kept: u64,
    /// Personal parts that are not here: erased, or left out of the export.
    pub personal_erased: u64,
    /// Every sign-off, in order. Their signatures are not checked here.
    pub signoffs: Vec<FoundSignOff>,
    /// Whether the key was given by the reader, not only by the file itself.
    pub key_was_given: bool,
    /// Good cosignatures of witnesses whose keys are known, the smallest tree first.
    pub witnessed: Vec<Witnessed>,
    /// Cosignatures by keys that neither the trail nor the reader named: not checked.
    pub cosignatures_unchecked: u64,
    /// What this shows, in sentences.
    pub proves: Vec<String>,
    /// What it cannot show, in sentences.
    pub does_not_prove: Vec<String>,
}

/// Checks an exported trail by the key in its own header.
///
/// # Errors
/// Names the line and what is wrong.
pub fn verify_export(text: &str) -> Result<Verified, ExportError> {
    verify(text, None, &[])
}

/// Checks an exported trail by a key the reader already trusts.
///
/// # Errors
/// Names the line and what is wrong.
pub fn verify_export_against(text: &str, trusted: &VerifyingKey) -> Result<Verified, ExportError> {
    verify(text, Some(trusted), &[])
}

/// Checks an exported trail by the keys the reader has: the log's, where there is one, and those of witnesses,
/// each of which must have cosigned these leaves or the first of them.
///
/// # Errors
/// Names the line and what is wrong.
pub fn verify_export_with(
    text: &str,
    trusted: Option<&VerifyingKey>,
    witnesses: &[WitnessKey],
) -> Result<Verified, ExportError> {
    verify(text, trusted, witnesses)
}

/// The leaves of an export that was verified, with the parts that are in it.
///
/// # Errors
/// Names the line that cannot be read.
pub fn read_leaves(text: &str) -> Result<Vec<ExportedLeaf>, ExportError> {
    let lines: Vec<&str> = text.lines().collect();
    let [_, leaves @ .., _] = lines.as_slice() else {
        return Err(wrong(1, "lines are missing"));
    };
    leaves
        .iter()
        .enumerate()
        .map(|(index, line)| {
            let Line { entry, parts, .. } = read(index + 2, line, "a leaf")?;
            Ok(ExportedLeaf { entry, parts })
        })
        .collect()
}

/// The signed checkpoint at the end of an export, unchecked.
///
/// # Errors
/// Names the line that cannot be read.
pub fn read_checkpoint(text: &str) -> Result<String, ExportError> {
    let last = text.lines().enumerate().last();
    let (index, last) = last.ok_or_else(|| wrong(1, "lines are missing"))?;
    Ok(read::<Closing>(index + 1, last, "the checkpoint")?.checkpoint)
}

fn verify(
    text: &str,
    trusted: Option<&VerifyingKey>,
    witnesses: &[WitnessKey],
) -> Result<Verified, ExportError> {
    let lines: Vec<&str> = text.lines().collect();
    let [first, leaves @ .., last] = lines.as_slice() else {
        return Err(wrong(
            1,
            "an export has a header, its leaves and a checkpoint; lines are missing",
        ));
    };
    let header: ExportHeader = read(1, first, "the header")?;
    if header.kind != ExportHeader::KIND {
        let problem = format!(
            "the kind is \"{}\"; it should be {}",
            header.kind,
            ExportHeader::KIND
        );
        return Err(wrong(1, problem));
    }
    let own_key: VerifyingKey = header
        .log_key
        .parse()
        .map_err(|error| wrong(1, format!("log_key: {error}")))?;
    let key = trusted.unwrap_or(&own_key);
    if *key != own_key {
        return Err(wrong(
            1,
            format!("the file is signed with {own_key}, not with the key given, {key}"),
        ));
    }
    if key.name() != header.origin {
        let problem = format!(
            "the origin \"{}\" is not the key's, \"{}\"",
            header.origin,
            key.name()
        );
        return Err(wrong(1, problem));
    }
    let mut reading = Reading::new(&header);
    for (index, line) in leaves.iter().enumerate() {
        reading.leaf(index, line)?;
    }
    let end = lines.len();
    let closing: Closing = read(end, last, "the checkpoint")?;
    let checkpoint = key
        .verify(&closing.checkpoint)
        .map_err(|error| wrong(end, error.to_string()))?;
    let size = reading.hashes.len() as u64;
    if checkpoint.size != size {
        let problem = format!(
            "the checkpoint covers {} leaves, but the file has {size}",
            checkpoint.size
        );
        return Err(wrong(end, problem));
    }
    let found = root(&reading.hashes);
    if found != checkpoint.root {
        let problem = format!(
            "the leaves lead to root {found}, but the checkpoint was signed over {}: a leaf was \
             changed, removed, added or moved",
            checkpoint.root
        );
        return Err(wrong(end, problem));
    }
    let keys = witnessed::Keys {
        log: key,
        named: &reading.witnesses,
        given: witnesses,
    };
    let (good, unchecked) = witnessed::check(end, &closing, &reading.hashes, keys)?;
    let mut verified = reading.finish(&header, size, found, trusted.is_some());
    verified.witnessed = good;
    verified.cosignatures_unchecked = unchecked;
    Ok(verified)
}

fn read<T: Serialize + serde::de::DeserializeOwned>(
    line: usize,
    text: &str,
    what: &str,
) -> Result<T, ExportError> {
    from_canonical_bytes(text.as_bytes()).map_err(|error| wrong(line, format!("{what}: {error}")))
}

fn wrong(line: usize, problem: impl Into<String>) -> ExportError {
    ExportError {
        line,
        problem: problem.into(),
    }
}

#[cfg(test)]
#[path = "export_tests.rs"]
mod tests;
