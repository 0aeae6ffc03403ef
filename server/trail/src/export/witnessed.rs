//! The cosignatures in an export: on its last checkpoint, and on earlier ones that the same leaves lead to.
//! It knows which keys may be asked for, and not whom to trust.

use std::collections::BTreeSet;

use serde::Serialize;

use super::{Closing, ExportError, wrong};
use crate::{
    checkpoint::VerifyingKey,
    cosignature::{WitnessKey, claimed},
    tree::{Hash, roots_at},
};

/// A cosignature that was checked and is good.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Witnessed {
    /// The witness's name.
    pub name: String,
    /// Its key, `name+hash+base64`.
    pub key: String,
    /// How many of the leaves it saw: the first so many.
    pub size: u64,
    /// When, in seconds since 1970 by the witness's clock.
    pub seconds: u64,
    /// Whether the reader gave the key, and not only the trail itself.
    pub key_was_given: bool,
}

/// Keys to check with.
#[derive(Clone, Copy, Debug)]
pub(super) struct Keys<'a> {
    /// The log's.
    pub(super) log: &'a VerifyingKey,
    /// Those that leaves name.
    pub(super) named: &'a [WitnessKey],
    /// Those that the reader gave, each of which must have cosigned.
    pub(super) given: &'a [WitnessKey],
}

/// Checks every cosignature of a known key, and counts those of others.
pub(super) fn check(
    line: usize,
    closing: &Closing,
    hashes: &[Hash],
    keys: Keys<'_>,
) -> Result<(Vec<Witnessed>, u64), ExportError> {
    earlier(line, closing, hashes, keys.log)?;
    let known: Vec<(&WitnessKey, bool)> = keys
        .given
        .iter()
        .map(|key| (key, true))
        .chain((keys.named.iter().filter(|key| !keys.given.contains(key))).map(|key| (key, false)))
        .collect();
    let mut good = Vec::new();
    let mut unchecked = 0;
    for note in closing.cosigned.iter().chain([&closing.checkpoint]) {
        let claims = claimed(note).map_err(|error| wrong(line, error.to_string()))?;
        let by = |key: &WitnessKey| claims.iter().any(|claim| key.is_named_by(claim));
        for (key, key_was_given) in known.iter().filter(|(key, _)| by(key)) {
            let seen = key
                .verify(note)
                .map_err(|error| wrong(line, error.to_string()))?;
            good.push(Witnessed {
                name: key.name().to_owned(),
                key: key.to_string(),
                size: seen.checkpoint.size,
                seconds: seen.seconds,
                key_was_given: *key_was_given,
            });
        }
        let stranger = |claim: &&_| !known.iter().any(|(key, _)| key.is_named_by(claim));
        unchecked += claims.iter().filter(stranger).count() as u64;
    }
    for key in keys.given {
        if !good.iter().any(|one| one.key == key.to_string()) {
            let problem = format!(
                "no checkpoint in this file is cosigned by the witness {key}: it never saw this trail, \
                 or its cosignature was taken out"
            );
            return Err(wrong(line, problem));
        }
    }
    Ok((good, unchecked))
}

/// Every earlier checkpoint must be the log's own, in order, and over the first leaves of this very file.
fn earlier(
    line: usize,
    closing: &Closing,
    hashes: &[Hash],
    log: &VerifyingKey,
) -> Result<(), ExportError> {
    let mut checkpoints = Vec::new();
    for note in &closing.cosigned {
        let seen = log
            .verify(note)
            .map_err(|error| wrong(line, format!("an earlier checkpoint: {error}")))?;
        checkpoints.push(seen);
    }
    let sizes: BTreeSet<u64> = checkpoints.iter().map(|seen| seen.size).collect();
    let in_order = checkpoints.is_sorted_by(|one, next| one.size < next.size);
    if !in_order
        || checkpoints
            .last()
            .is_some_and(|seen| seen.size >= hashes.len() as u64)
    {
        let problem =
            "the earlier checkpoints must stand in order of size, each once and before the last";
        return Err(wrong(line, problem));
    }
    let roots = roots_at(hashes, &sizes);
    for seen in checkpoints {
        if roots.get(&seen.size) != Some(&seen.root) {
            let problem = format!(
                "the checkpoint of the first {} leaves is over root {}, which these leaves do not lead to: \
                 this is another trail than the one that was cosigned",
                seen.size, seen.root
            );
            return Err(wrong(line, problem));
        }
    }
    Ok(())
}
