//! A whole trail in one file, checkable with no server. JSON Lines: a header, one line for each leaf,
//! and the signed checkpoint. It knows what an entry is, but not what entries mean, except that a
//! fact named `jws` is a sign-off and that facts named `device` and `key` register a signing key.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::{
    canonical::{CanonicalError, canonical_bytes, from_canonical_bytes},
    checkpoint::VerifyingKey,
    leaf::{Entry, commitment},
    tree::{Hash, bytes_from_hex, hex, root},
};

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

/// One leaf's line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExportedLeaf {
    /// The leaf.
    pub entry: Entry,
    /// The salt of its commitment, hex; gone when the personal part was erased.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub salt: Option<String>,
    /// The personal part; gone when it was erased.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub personal: Option<Value>,
}

impl ExportedLeaf {
    /// A leaf's line; salt and personal part where they are still kept.
    pub fn new(entry: Entry, kept: Option<(&[u8; 32], Value)>) -> ExportedLeaf {
        let (salt, personal) = kept.map_or((None, None), |(salt, personal)| {
            (Some(hex(salt)), Some(personal))
        });
        ExportedLeaf {
            entry,
            salt,
            personal,
        }
    }
}

/// The last line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Closing {
    checkpoint: String,
}

/// An export to be written.
#[derive(Clone, Debug, PartialEq)]
pub struct Export {
    /// The first line.
    pub header: ExportHeader,
    /// The leaves in order.
    pub leaves: Vec<ExportedLeaf>,
    /// The signed checkpoint over exactly these leaves.
    pub checkpoint: String,
}

impl Export {
    /// The file's text.
    ///
    /// # Errors
    /// When a value has no canonical form.
    pub fn to_jsonl(&self) -> Result<String, CanonicalError> {
        let mut lines = vec![canonical_bytes(&self.header)?];
        for leaf in &self.leaves {
            lines.push(canonical_bytes(leaf)?);
        }
        lines.push(canonical_bytes(&Closing {
            checkpoint: self.checkpoint.clone(),
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
    /// Leaves whose personal part is here and matches its commitment.
    pub personal_kept: u64,
    /// Leaves whose personal part was erased.
    pub personal_erased: u64,
    /// Every sign-off, in order. Their signatures are not checked here.
    pub signoffs: Vec<FoundSignOff>,
    /// Whether the key was given by the reader, not only by the file itself.
    pub key_was_given: bool,
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
    verify(text, None)
}

/// Checks an exported trail by a key the reader already trusts.
///
/// # Errors
/// Names the line and what is wrong.
pub fn verify_export_against(text: &str, trusted: &VerifyingKey) -> Result<Verified, ExportError> {
    verify(text, Some(trusted))
}

fn verify(text: &str, trusted: Option<&VerifyingKey>) -> Result<Verified, ExportError> {
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
    Ok(reading.finish(&header, size, found, trusted.is_some()))
}

/// What has been read so far.
struct Reading<'a> {
    production: &'a str,
    hashes: Vec<Hash>,
    kinds: BTreeMap<String, u64>,
    first_at: Option<String>,
    last_at: Option<String>,
    kept: u64,
    erased: u64,
    signoffs: Vec<FoundSignOff>,
    keys_in_trail: BTreeMap<String, Value>,
    keys_in_header: BTreeMap<&'a str, &'a Value>,
}

impl<'a> Reading<'a> {
    fn new(header: &'a ExportHeader) -> Reading<'a> {
        Reading {
            production: &header.production,
            hashes: Vec::new(),
            kinds: BTreeMap::new(),
            first_at: None,
            last_at: None,
            kept: 0,
            erased: 0,
            signoffs: Vec::new(),
            keys_in_trail: BTreeMap::new(),
            keys_in_header: header
                .devices
                .iter()
                .map(|d| (d.id.as_str(), &d.key))
                .collect(),
        }
    }

    fn leaf(&mut self, index: usize, text: &str) -> Result<(), ExportError> {
        let line = index + 2;
        let ExportedLeaf {
            entry,
            salt,
            personal,
        } = read(line, text, "a leaf")?;
        if entry.index != index as u64 {
            let problem = format!(
                "leaf {index} is expected here, but this one says it is {}",
                entry.index
            );
            return Err(wrong(line, problem));
        }
        if entry.production != self.production {
            return Err(wrong(line, "this leaf belongs to another production"));
        }
        self.personal(line, &entry, salt.as_deref(), personal.as_ref())?;
        self.hashes.push(
            entry
                .hash()
                .map_err(|error| wrong(line, error.to_string()))?,
        );
        self.facts(&entry);
        *self.kinds.entry(entry.kind).or_default() += 1;
        if self.first_at.is_none() {
            self.first_at = Some(entry.at.clone());
        }
        self.last_at = Some(entry.at);
        Ok(())
    }

    fn personal(
        &mut self,
        line: usize,
        entry: &Entry,
        salt: Option<&str>,
        personal: Option<&Value>,
    ) -> Result<(), ExportError> {
        match (&entry.commitment, salt, personal) {
            (None, None, None) => Ok(()),
            (None, ..) => Err(wrong(
                line,
                "there is personal data that the leaf does not commit to",
            )),
            (Some(_), _, None) => {
                self.erased += 1;
                Ok(())
            }
            (Some(_), None, Some(_)) => {
                Err(wrong(line, "the salt for the personal data is missing"))
            }
            (Some(committed), Some(salt), Some(personal)) => {
                let salt = bytes_from_hex(salt)
                    .ok_or_else(|| wrong(line, "the salt must be 64 lower-case hex digits"))?;
                let found = commitment(&salt, personal)
                    .map_err(|error| wrong(line, format!("personal: {error}")))?;
                if found != *committed {
                    return Err(wrong(
                        line,
                        "the personal data is not what the leaf commits to",
                    ));
                }
                self.kept += 1;
                Ok(())
            }
        }
    }

    fn facts(&mut self, entry: &Entry) {
        if let Some(jws) = entry.facts.get("jws").and_then(Value::as_str) {
            let device = key_id(jws);
            let in_trail = device.as_deref().and_then(|id| self.keys_in_trail.get(id));
            let in_header = device
                .as_deref()
                .and_then(|id| self.keys_in_header.get(id).copied());
            self.signoffs.push(FoundSignOff {
                leaf: entry.index,
                at: entry.at.clone(),
                jws: jws.to_owned(),
                key_in_trail: in_trail.is_some(),
                key: in_trail.or(in_header).cloned(),
                device,
            });
        }
        let device = entry.facts.get("device").and_then(Value::as_str);
        if let (Some(device), Some(key @ Value::Object(_))) = (device, entry.facts.get("key")) {
            // The first registration counts: a later leaf must not change what earlier ones meant.
            self.keys_in_trail
                .entry(device.to_owned())
                .or_insert_with(|| key.clone());
        }
    }

    fn finish(self, header: &ExportHeader, size: u64, root: Hash, key_was_given: bool) -> Verified {
        let mut does_not_prove = vec![
            "That what was entered was true: only that it was entered, and has not changed since."
                .to_owned(),
            "The times: they are the server's word.".to_owned(),
            "That nothing was added after this export.".to_owned(),
        ];
        if !key_was_given {
            does_not_prove.insert(
                0,
                "Whose trail this is: the key came with the file. Compare it with a key you have \
                 from elsewhere, such as a printed packet."
                    .to_owned(),
            );
        }
        if self.erased > 0 {
            does_not_prove.push(format!("What {} erased personal parts said.", self.erased));
        }
        Verified {
            production: header.production.clone(),
            origin: header.origin.clone(),
            log_key: header.log_key.clone(),
            size,
            root,
            kinds: self.kinds,
            first_at: self.first_at,
            last_at: self.last_at,
            personal_kept: self.kept,
            personal_erased: self.erased,
            signoffs: self.signoffs,
            key_was_given,
            proves: vec![
                format!(
                    "The holder of {} signed for exactly these {size} entries in this order.",
                    header.log_key
                ),
                format!(
                    "The {} personal parts in this file are the ones entered at the time.",
                    self.kept
                ),
            ],
            does_not_prove,
        }
    }
}

/// The `kid` in a compact JWS's header, unchecked: only used to look up a key to check with.
fn key_id(jws: &str) -> Option<String> {
    use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
    let header = URL_SAFE_NO_PAD.decode(jws.split('.').next()?).ok()?;
    let header: Value = serde_json::from_slice(&header).ok()?;
    header.get("kid")?.as_str().map(str::to_owned)
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
