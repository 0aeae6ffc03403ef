//! A gag at a past moment, rebuilt from the trail alone: the answer then, who had signed what they had read, what
//! was known, and what came after. Reads leaves and their parts and nothing else.

use std::collections::BTreeMap;

use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{
    Clearance, Decision, Facet, GagId, Hold, Reading, RehearsalRun, Role, SignOffId, SlotId,
    case::{Briefing, Debrief, Take},
    opening,
    replay::{Rebuilt, Replay, ReplayError},
    signoff,
};
use gagwright_store::{Connection, StoreError, trail};
use gagwright_trail::Entry;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use utoipa::ToSchema;

use super::{sentences, withheld};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
    remembered::clearance,
};

/// Which moment of a trail.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Moment {
    /// After a leaf, judged when it was received.
    Leaf(u64),
    /// After the last leaf received by then, judged then.
    At(Timestamp),
}

/// A gag as it stood.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct GagThen {
    /// The gag.
    pub gag: GagId,
    /// Its code.
    pub code: String,
    /// Its title; none when it cannot be known any more.
    #[schema(required = true)]
    pub title: Option<String>,
    /// The last leaf that was used.
    pub leaf: u64,
    /// When that leaf was received.
    #[schema(value_type = String, format = DateTime)]
    pub received_at: Timestamp,
    /// The moment it was judged for.
    #[schema(value_type = String, format = DateTime)]
    pub judged_at: Timestamp,
    /// The revision of the plan that was current.
    pub revision: u32,
    /// Whether everything that the answer depends on is known still.
    pub certain: bool,
    /// What cannot be known any more, in sentences.
    pub unknown: Vec<String>,
    /// The answer then; none when the plan or the policy cannot be known any more. Unless it is certain, it says how
    /// each mark, reading and piece stood, and not what stopped it: that would be said of what is missing since.
    #[schema(required = true)]
    pub clearance: Option<Clearance>,
    /// Everyone who had signed, in the order of the leaves.
    pub signed: Vec<SignedThen>,
    /// What had been read of the conditions, in the order of the leaves.
    pub readings: Vec<Reading>,
    /// Runs logged, in the order of the leaves.
    pub runs: Vec<RehearsalRun>,
    /// Holds on it or on the whole production, in the order of the leaves.
    pub holds: Vec<Hold>,
    /// Briefings held, in the order of the leaves.
    pub briefings: Vec<Briefing>,
    /// Takes, in the order of the leaves, each as it had ended by then.
    pub takes: Vec<Take>,
    /// Debriefs after its takes, in the order of the leaves.
    pub debriefs: Vec<Debrief>,
    /// Leaves about it or about the whole production that came after, oldest first; at most 200.
    pub after: Vec<AfterThen>,
    /// Names of the people in it.
    #[schema(value_type = BTreeMap<String, String>)]
    pub names: BTreeMap<PersonId, String>,
}

/// A sign-off as it had been received, and what its signer had read.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct SignedThen {
    /// Which.
    pub signoff: SignOffId,
    /// Its leaf, which alone says what came before what.
    pub leaf: u64,
    /// When it was received, by the server's clock.
    #[schema(value_type = String, format = DateTime)]
    pub received_at: Timestamp,
    /// When it was made, by the device's clock.
    #[schema(value_type = String, format = DateTime)]
    pub signed_at: Timestamp,
    /// Seconds that the device's clock was ahead of the server's when the sign-off was received; none when it was
    /// behind, because a sign-off made with no signal waits, and that is no fault of a clock.
    #[schema(required = true)]
    pub ahead_seconds: Option<i64>,
    /// Who signed.
    pub signer: PersonId,
    /// Under which hat.
    pub role: Role,
    /// For which slot.
    #[schema(required = true)]
    pub slot: Option<SlotId>,
    /// What they decided.
    pub decision: Decision,
    /// The revision they had read.
    pub revision: u32,
    /// The facets of it that they signed for.
    pub covers: Vec<Facet>,
    /// Conditions and a reason in their own words, while these are kept.
    pub texts: Vec<String>,
}

/// A leaf that came after.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct AfterThen {
    /// Which.
    pub leaf: u64,
    /// When it was received.
    pub at: String,
    /// What it says happened.
    pub sentence: String,
}

/// Most leaves told of what came after.
const MOST_AFTER: usize = 200;

/// A leaf with the parts kept beside it.
pub type LeafWithParts = (Entry, BTreeMap<String, Value>);

/// A gag at a moment, by a trail's leaves.
///
/// # Errors
/// When there was no such gag yet, or a leaf cannot be read.
pub fn rebuild(
    leaves: &[LeafWithParts],
    wanted: impl Fn(&Replay) -> Option<GagId>,
    moment: Moment,
) -> Result<GagThen, NotRebuilt> {
    let mut replay = Replay::new();
    let mut used = 0;
    for (entry, said) in leaves {
        let later = match moment {
            Moment::Leaf(leaf) => entry.index > leaf,
            Moment::At(at) => entry.at.parse::<Timestamp>().is_ok_and(|then| then > at),
        };
        if later {
            break;
        }
        replay.add(entry, said)?;
        used += 1;
    }
    let (Some(last), Some(received_at)) = (leaves[..used].last(), replay.at()) else {
        return Err(NotRebuilt::TooEarly);
    };
    let gag = wanted(&replay).ok_or(NotRebuilt::NoGag)?;
    let (Some(kept), Some(rebuilt)) = (replay.gag(gag), replay.case(gag)) else {
        return Err(NotRebuilt::NoGag);
    };
    let judged_at = match moment {
        Moment::Leaf(_) => received_at,
        Moment::At(at) => at,
    };
    let Rebuilt {
        case,
        certain,
        unknown,
    } = rebuilt;
    let names = replay.names();
    let about = gag.to_string();
    Ok(GagThen {
        gag,
        code: kept.code.clone(),
        title: kept.title.known().cloned(),
        leaf: last.0.index,
        received_at,
        judged_at,
        revision: kept.revision,
        certain,
        unknown,
        clearance: case.as_ref().map(|case| {
            let judged = clearance(case, judged_at);
            if certain { judged } else { unstopped(judged) }
        }),
        briefings: replay.briefings(gag),
        takes: replay.takes(gag),
        debriefs: replay.debriefs(gag),
        signed: signed(&kept.signoffs),
        readings: kept.readings.clone(),
        runs: kept.runs.clone(),
        holds: replay.holds(gag),
        after: leaves[used..]
            .iter()
            .map(|(entry, _)| entry)
            .filter(|entry| entry.gag.as_ref().is_none_or(|gag| *gag == about))
            .take(MOST_AFTER)
            .map(|entry| AfterThen {
                leaf: entry.index,
                at: entry.at.clone(),
                sentence: sentences::sentence(entry, &names),
            })
            .collect(),
        names,
    })
}

/// Why a gag cannot be shown at a moment.
#[derive(Debug, thiserror::Error)]
pub enum NotRebuilt {
    /// Before the first leaf.
    #[error("the trail had not begun by then")]
    TooEarly,
    /// No leaf had created it.
    #[error("there was no such gag yet by then")]
    NoGag,
    /// A leaf that cannot have been written.
    #[error(transparent)]
    Leaf(#[from] ReplayError),
}

fn signed(signoffs: &[gagwright_clearance::SignOff]) -> Vec<SignedThen> {
    let told = |one: &gagwright_clearance::SignOff| {
        let statement = signoff::read_unverified(&one.jws).ok()?;
        let ahead = statement
            .signed_at
            .duration_since(one.received_at)
            .as_secs();
        let texts = statement.conditions.iter().chain(&statement.reason);
        Some(SignedThen {
            signoff: statement.id,
            leaf: one.leaf,
            received_at: one.received_at,
            signed_at: statement.signed_at,
            ahead_seconds: (ahead > 0).then_some(ahead),
            signer: statement.signer,
            role: statement.role,
            slot: statement.slot,
            decision: statement.decision,
            revision: statement.revision,
            covers: statement.facets.keys().copied().collect(),
            texts: texts
                .map(|commitment| opening::told(commitment, &one.openings))
                .collect(),
        })
    };
    signoffs.iter().filter_map(told).collect()
}

/// Every leaf of a production's trail with what is kept beside it.
///
/// # Errors
/// When the store fails.
pub fn leaves(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<LeafWithParts>, StoreError> {
    const AT_ONCE: u32 = 1_000;
    let mut leaves: Vec<LeafWithParts> = Vec::new();
    loop {
        let some = trail::entries(conn, production, leaves.len() as u64, AT_ONCE)?;
        if some.is_empty() {
            return Ok(leaves);
        }
        leaves.extend(some.into_iter().map(|one| {
            let said = one.parts.into_iter().map(|(name, part)| (name, part.said));
            (one.entry, said.collect())
        }));
    }
}

/// Without what the judge holds against a case that is no longer whole.
fn unstopped(mut judged: Clearance) -> Clearance {
    judged.blocks.clear();
    judged.day.blocks.clear();
    judged.go.why_not.clear();
    judged.go.may = false;
    judged
}

/// A gag of the reader's production at a moment.
///
/// # Errors
/// Without [`Permission::ReadTrail`], or when there was no such gag yet.
pub fn gag_then(
    conn: &mut Connection,
    reader: &Actor,
    gag: GagId,
    moment: Moment,
) -> Result<GagThen, CommandError> {
    reader.require(Permission::ReadTrail)?;
    crate::commands::record::gag(conn, reader.production, gag)?;
    let leaves = leaves(conn, reader.production)?;
    let mut then = rebuild(&leaves, |_| Some(gag), moment).map_err(|error| match error {
        NotRebuilt::Leaf(error) => StoreError::Corrupt(error.to_string()).into(),
        other => CommandError::invalid(
            match moment {
                Moment::Leaf(_) => "/leaf",
                Moment::At(_) => "/at",
            },
            other.to_string(),
            "choose a later moment",
        ),
    })?;
    if let Some(judged) = &mut then.clearance {
        withheld::in_clearance(reader, judged);
    }
    Ok(then)
}
