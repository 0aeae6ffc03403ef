//! Witnesses of the trail: adding one, removing one, and taking in what one cosigned. A cosignature that comes
//! in appends no leaf, which would grow the very tree that was cosigned.

use gagwright_casting::ProductionId;
use gagwright_store::{
    Connection, StoreError, trail,
    witnesses::{self, Cosignature, Witness},
};
use gagwright_trail::{Checkpoint, Claimed, WitnessKey, claimed};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::json;
use utoipa::ToSchema;

use super::{Actor, CommandError, problems::SHORT, record};
use crate::{permissions::Permission, trail_file};

/// Most witnesses at a time: every one makes the note longer that each of them is given.
const MOST: usize = 16;

/// How far a witness's clock may be from the server's, in seconds.
const SKEW: i64 = 300;

const COSIGNED: &str = "/cosigned";

/// A witness to be added.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewWitness {
    /// Its public key, `name+hash+base64`, as `gagwright witness key` prints it (C2SP tlog-cosignature). The name
    /// stands in the trail for ever: an organisation's or a machine's, not a person's.
    pub key: String,
}

/// What a witness cosigned, as it came in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewCosignature {
    /// The checkpoint with the witness's line in it, or the line alone.
    pub cosigned: String,
    /// With a line alone: how many entries the checkpoint had. Left out: as many as the trail has now.
    #[serde(default)]
    pub size: Option<u64>,
}

/// Adds a witness.
///
/// # Errors
/// Without [`Permission::ChangePolicy`]; when the key is malformed, or it or its name is there already.
pub fn add(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: &NewWitness,
) -> Result<Witness, CommandError> {
    actor.require(Permission::ChangePolicy)?;
    let refuse = |problem: String, fix: &str| Err(CommandError::invalid("/key", problem, fix));
    let key: WitnessKey = match new.key.trim().parse() {
        Ok(key) => key,
        Err(error) => {
            let fix = "paste the whole line that `gagwright witness key` printed";
            return refuse(error.to_string(), fix);
        }
    };
    let length = key.name().chars().count();
    if length > SHORT {
        return refuse(
            format!("the name has {length} characters"),
            "let the witness make a key under a shorter name",
        );
    }
    let there = current(conn, actor.production)?;
    if there.len() >= MOST {
        return refuse(
            format!("there are {MOST} witnesses already"),
            "remove one that does not cosign any more",
        );
    }
    for (one, known) in &there {
        if known.same_key(&key) {
            return refuse(
                format!("this key is there already, as {}", one.name),
                "nothing is left to do, or let the witness make a key of its own",
            );
        }
        if one.name == key.name() {
            return refuse(
                format!("a witness named {} is there with another key", one.name),
                "remove that one first, or let this one use another name",
            );
        }
    }
    let leaf = leaf("witness.added", actor, now, key.name(), &key.to_string()).append(conn)?;
    let witness = Witness {
        leaf,
        name: key.name().to_owned(),
        key: key.to_string(),
        added_at: now,
        removed_at: None,
    };
    witnesses::insert(conn, actor.production, &witness)?;
    Ok(witness)
}

/// Removes a witness. What it cosigned stays.
///
/// # Errors
/// Without [`Permission::ChangePolicy`]; when there is no such witness, or it was removed before.
pub fn remove(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    added_by: u64,
) -> Result<Witness, CommandError> {
    actor.require(Permission::ChangePolicy)?;
    let all = witnesses::list(conn, actor.production)?;
    let found = all.into_iter().find(|one| one.leaf == added_by);
    let mut found = found.ok_or_else(|| CommandError::NotFound {
        what: "witness",
        id: added_by.to_string(),
    })?;
    if found.removed_at.is_some() {
        return Err(CommandError::Conflict {
            what: "witness",
            detail: "it was removed before; nothing is left to do".into(),
        });
    }
    leaf("witness.removed", actor, now, &found.name, &found.key).append(conn)?;
    witnesses::remove(conn, actor.production, &found.name, now)?;
    found.removed_at = Some(now);
    Ok(found)
}

fn leaf(kind: &'static str, actor: &Actor, now: Timestamp, name: &str, key: &str) -> record::Leaf {
    record::Leaf::new(kind, now, Some(actor))
        .fact("name", json!(name))
        .fact("witness_key", json!(key))
}

/// Takes in what witnesses cosigned: whoever brings it, it is checked against the keys of the production's
/// witnesses and against the tree as it was at that size. Bringing it again changes nothing, nor does a later word
/// of the same witness on the same size.
///
/// # Errors
/// Without [`Permission::ReadTrail`]; when it is malformed, over another checkpoint, by no witness of this
/// production, not by that witness's key, or at a time that cannot be.
pub fn receive(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: &NewCosignature,
) -> Result<Vec<Cosignature>, CommandError> {
    actor.require(Permission::ReadTrail)?;
    let production = actor.production;
    let Pasted { note, whole } = pasted(conn, production, new)?;
    let checkpoint = Checkpoint::parse_unverified(&note).map_err(malformed)?;
    let claims = claimed(&note).map_err(malformed)?;
    let there = current(conn, production)?;
    let known: Vec<&(Witness, WitnessKey)> = there
        .iter()
        .filter(|(_, key)| claims.iter().any(|claim| key.is_named_by(claim)))
        .collect();
    if known.is_empty() {
        return Err(unknown(&claims, &there));
    }
    let kept = witnesses::cosignatures_of(conn, production, checkpoint.size)?;
    let alone = new.size.is_none() && !whole;
    let mut taken = Vec::new();
    for (witness, key) in known {
        let cosignature = verified(&note, &claims, witness, key, checkpoint.size, now, alone)?;
        in_time(conn, production, &cosignature, now)?;
        // Its word on this size once more says nothing new: the first stays.
        if let Some(same) = kept.iter().find(|one| one.key == cosignature.key) {
            taken.push(same.clone());
        } else {
            witnesses::insert_cosignature(conn, production, &cosignature)?;
            taken.push(cosignature);
        }
    }
    Ok(taken)
}

/// The witnesses that were not removed, with their keys.
fn current(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<(Witness, WitnessKey)>, CommandError> {
    let all = witnesses::list(conn, production)?;
    all.into_iter()
        .filter(|one| one.removed_at.is_none())
        .map(|one| {
            let key = one.key.parse().map_err(|error| {
                StoreError::Corrupt(format!("the key of witness {}: {error}", one.name))
            })?;
            Ok((one, key))
        })
        .collect()
}

fn malformed(error: impl ToString) -> CommandError {
    CommandError::invalid(
        COSIGNED,
        error.to_string(),
        "paste the whole note that `gagwright witness sign` printed, or the witness's line alone",
    )
}

/// What was pasted, read.
struct Pasted {
    /// The note that was cosigned: the checkpoint's words, and the lines under them.
    note: String,
    /// It came with its own words in it, and not as a witness's line alone.
    whole: bool,
}

/// Reads what was pasted. The note must be word for word what this server signs for that size.
fn pasted(
    conn: &mut Connection,
    production: ProductionId,
    new: &NewCosignature,
) -> Result<Pasted, CommandError> {
    // What is pasted may have lost or gained line ends.
    let text = new.cosigned.replace("\r\n", "\n");
    let text = text.trim();
    if text.is_empty() {
        return Err(malformed("it is empty"));
    }
    let whole = text.contains("\n\n");
    let size = if whole {
        let found = Checkpoint::parse_unverified(&format!("{text}\n")).map_err(malformed)?;
        if new.size.is_some_and(|size| size != found.size) {
            return Err(CommandError::invalid(
                "/size",
                format!("the checkpoint has {} entries", found.size),
                "leave the size out: the checkpoint says it",
            ));
        }
        found.size
    } else {
        match new.size {
            Some(size) => size,
            None => trail::size(conn, production)?,
        }
    };
    let there = trail::size(conn, production)?;
    if size == 0 || size > there {
        let pointer = if whole { COSIGNED } else { "/size" };
        return Err(CommandError::invalid(
            pointer,
            format!("the checkpoint has {size} entries, and this trail has {there}"),
            "take the checkpoint from this production; if it is from here, entries were lost: compare an \
             earlier export before anything else is entered",
        ));
    }
    let ours = trail_file::checkpoint_at(conn, production, size)?;
    if !whole {
        let note = format!("{ours}{text}\n");
        return Ok(Pasted { note, whole });
    }
    let note = format!("{text}\n");
    let own_words = |note: &str| note.split_once("\n\n").map(|(words, _)| words.to_owned());
    if own_words(&note) != own_words(&ours) {
        return Err(CommandError::invalid(
            COSIGNED,
            format!("this is not the checkpoint that this server signs for {size} entries"),
            "take the checkpoint from this production's trail and let the witness cosign that",
        ));
    }
    let log = trail_file::verifying_key(conn, production)?;
    log.verify(&note).map_err(malformed)?;
    Ok(Pasted { note, whole })
}

fn unknown(claims: &[Claimed], there: &[(Witness, WitnessKey)]) -> CommandError {
    let Some(claim) = claims.first() else {
        return malformed("it holds no cosignature");
    };
    if there.iter().any(|(one, _)| one.name == claim.name) {
        return CommandError::invalid(
            COSIGNED,
            format!(
                "it is signed as {} with another key than the one added",
                claim.name
            ),
            "let the witness use the key that was added, or remove it and add the new key",
        );
    }
    CommandError::invalid(
        COSIGNED,
        format!("{} is no witness of this production", claim.name),
        "add the witness with its key first, or take the cosignature of one that was added",
    )
}

fn verified(
    note: &str,
    claims: &[Claimed],
    witness: &Witness,
    key: &WitnessKey,
    size: u64,
    now: Timestamp,
    alone: bool,
) -> Result<Cosignature, CommandError> {
    let bad = |problem: String| {
        let fix = match alone {
            true => {
                "paste the whole note, or give the size: the trail may have grown since the witness saw it, and a \
                 line alone does not say how long it was"
            }
            false => "paste it again, whole; if it stays, let the witness cosign once more",
        };
        CommandError::invalid(COSIGNED, problem, fix)
    };
    let seen = key.verify(note).map_err(|error| bad(error.to_string()))?;
    let latest = |claim: &&Claimed| key.is_named_by(claim) && claim.seconds == seen.seconds;
    let claim = claims.iter().find(latest);
    let claim = claim.ok_or_else(|| bad("its line cannot be found again".to_owned()))?;
    Ok(Cosignature {
        size,
        key: witness.key.clone(),
        name: witness.name.clone(),
        line: claim.line.clone(),
        seconds: seen.seconds,
        received_at: now,
    })
}

/// Neither still to come, nor before the last entry that it says it saw.
fn in_time(
    conn: &mut Connection,
    production: ProductionId,
    cosignature: &Cosignature,
    now: Timestamp,
) -> Result<(), CommandError> {
    let fix = "set the witness's clock and let it cosign once more";
    let refuse = |problem: String| Err(CommandError::invalid(COSIGNED, problem, fix));
    let at = i64::try_from(cosignature.seconds)
        .ok()
        .and_then(|seconds| Timestamp::from_second(seconds).ok());
    let Some(at) = at.filter(|at| at.as_second() <= now.as_second() + SKEW) else {
        return refuse(match at {
            Some(at) => format!("it is dated {at}, which is still to come"),
            None => "it is dated thousands of years ahead".to_owned(),
        });
    };
    let last = trail::entry(conn, production, cosignature.size.saturating_sub(1))?;
    let last = last.and_then(|one| one.entry.at.parse::<Timestamp>().ok());
    match last.filter(|last| at.as_second() + SKEW < last.as_second()) {
        Some(last) => refuse(format!(
            "it is dated {at}, and the last entry it is about was made at {last}"
        )),
        None => Ok(()),
    }
}
