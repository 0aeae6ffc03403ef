//! Reading an export leaf by leaf: what each must hold, and what is counted and found on the way.

use std::collections::BTreeMap;

use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
use serde_json::Value;

use super::{ExportError, ExportHeader, ExportedPart, FoundSignOff, Line, Verified, read, wrong};
use crate::{
    cosignature::WitnessKey,
    leaf::{Entry, commitment},
    tree::{Hash, bytes_from_hex},
};

/// What has been read so far.
pub(super) struct Reading<'a> {
    production: &'a str,
    pub(super) hashes: Vec<Hash>,
    kinds: BTreeMap<String, u64>,
    first_at: Option<String>,
    last_at: Option<String>,
    kept: u64,
    erased: u64,
    signoffs: Vec<FoundSignOff>,
    keys_in_trail: BTreeMap<String, Value>,
    keys_in_header: BTreeMap<&'a str, &'a Value>,
    pub(super) witnesses: Vec<WitnessKey>,
}

impl<'a> Reading<'a> {
    pub(super) fn new(header: &'a ExportHeader) -> Reading<'a> {
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
            witnesses: Vec::new(),
            keys_in_header: header
                .devices
                .iter()
                .map(|d| (d.id.as_str(), &d.key))
                .collect(),
        }
    }

    pub(super) fn leaf(&mut self, index: usize, text: &str) -> Result<(), ExportError> {
        let line = index + 2;
        let Line { entry, hash, parts } = read(line, text, "a leaf")?;
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
        let found = entry
            .hash()
            .map_err(|error| wrong(line, error.to_string()))?;
        if found.to_hex() != hash {
            let problem = format!("leaf {index} was changed: it does not have the hash beside it");
            return Err(wrong(line, problem));
        }
        self.parts(line, &entry, &parts)?;
        self.hashes.push(found);
        self.facts(&entry);
        self.witness(line, &entry)?;
        *self.kinds.entry(entry.kind).or_default() += 1;
        if self.first_at.is_none() {
            self.first_at = Some(entry.at.clone());
        }
        self.last_at = Some(entry.at);
        Ok(())
    }

    fn parts(
        &mut self,
        line: usize,
        entry: &Entry,
        parts: &BTreeMap<String, ExportedPart>,
    ) -> Result<(), ExportError> {
        for (name, part) in parts {
            let Some(committed) = entry.commitments.get(name) else {
                let problem =
                    format!("there is personal data, \"{name}\", that the leaf does not commit to");
                return Err(wrong(line, problem));
            };
            let salt = bytes_from_hex(&part.salt).ok_or_else(|| {
                wrong(
                    line,
                    format!("the salt of \"{name}\" must be 64 lower-case hex digits"),
                )
            })?;
            let found = commitment(&salt, &part.said)
                .map_err(|error| wrong(line, format!("\"{name}\": {error}")))?;
            if found != *committed {
                let problem = format!(
                    "the personal data \"{name}\", or its salt, is not what the leaf commits to"
                );
                return Err(wrong(line, problem));
            }
        }
        let kept = parts.len() as u64;
        self.kept += kept;
        self.erased += (entry.commitments.len() as u64).saturating_sub(kept);
        Ok(())
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

    fn witness(&mut self, line: usize, entry: &Entry) -> Result<(), ExportError> {
        let Some(text) = entry.facts.get("witness_key").and_then(Value::as_str) else {
            return Ok(());
        };
        let key: WitnessKey = text
            .parse()
            .map_err(|error| wrong(line, format!("the key of a witness: {error}")))?;
        if !self.witnesses.contains(&key) {
            self.witnesses.push(key);
        }
        Ok(())
    }

    pub(super) fn finish(
        self,
        header: &ExportHeader,
        size: u64,
        root: Hash,
        key_was_given: bool,
    ) -> Verified {
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
            does_not_prove.push(match self.erased {
                1 => "What the one personal part that is not in this file said.".to_owned(),
                more => format!("What the {more} personal parts that are not in this file said."),
            });
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
            witnessed: Vec::new(),
            cosignatures_unchecked: 0,
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
    let header = URL_SAFE_NO_PAD.decode(jws.split('.').next()?).ok()?;
    let header: Value = serde_json::from_slice(&header).ok()?;
    header.get("kid")?.as_str().map(str::to_owned)
}
