//! A mark for the day: the same role's attestation as on the plan, for a place, a date, the equipment by
//! serial, the people cast and the readings leaned on, as a JWS (RFC 7515, ES256) over a
//! [`DayStatement`]. It goes through the same door as a plan sign-off, and any JOSE library verifies it.

mod door;
mod draft;

use std::collections::BTreeMap;

use gagwright_casting::{GagId, PersonId, ProductionId, SlotId};
use jiff::{Timestamp, civil::Date};
use p256::ecdsa::SigningKey;
use serde::{Deserialize, Serialize};

pub use door::accept;
pub use draft::{DayPrepared, prepare};

use crate::{
    case::{Case, DayLog, ReadingKind},
    compact::{self, Parts},
    delegation::Hat,
    ids::{DeviceId, RecordId, SignOffId},
    ink::{self, Ink},
    jws,
    plan::{FacetHashes, Plan},
    policy::Role,
    signoff::{Decision, PublicKey, SignOffError},
    words,
};

/// The `typ` of every day mark's header.
pub const TYPE: &str = "gagwright-day-signoff+jws";

/// Longer ones are refused before they are read.
const LONGEST: usize = 64 * 1024;

/// What is signed for a day. Its RFC 8785 bytes are the JWS payload.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct DayStatement {
    /// [`DayStatement::KIND`] or, with `ink`, [`DayStatement::INK`].
    pub kind: String,
    /// This mark; minted by the device, so a replay is seen.
    pub id: SignOffId,
    /// The production.
    pub production: ProductionId,
    /// The gag.
    pub gag: GagId,
    /// The revision that will be performed.
    pub revision: u32,
    /// RFC 6962 root over its facets in table order, hex.
    pub plan_digest: String,
    /// Hashes of the facets the role answers for.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<gagwright_mechanics::Facet, String>))]
    pub facets: FacetHashes,
    /// The hat it is signed under.
    pub role: Role,
    /// The performer's slot; only with [`Role::Performer`].
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub slot: Option<SlotId>,
    /// The delegation under which a delegate signs; none: the signer holds the hat themselves.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub delegation: Option<RecordId>,
    /// Yes or no; a day is never approved with conditions, and nobody has to say why not.
    pub decision: Decision,
    /// Id of the attestation text shown.
    pub attestation: String,
    /// The day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// The place: see [`place_hash`]. It may be somebody's address, so it is not signed in the clear.
    pub place: String,
    /// Serial numbers of the equipment, sorted.
    pub serials: Vec<String>,
    /// Who is cast in which slot.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<String, PersonId>))]
    pub cast: BTreeMap<SlotId, PersonId>,
    /// The readings that were shown.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub readings: Vec<LeanedOn>,
    /// Who signs.
    pub signer: PersonId,
    /// The device whose key signs.
    pub device: DeviceId,
    /// When, by the device's clock: shown, never trusted for order.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub signed_at: Timestamp,
    /// Until when it counts.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub good_until: Timestamp,
    /// SHA-256, lower-case hex, of the mark the signer drew; none: they only confirmed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub mark: Option<String>,
    /// Who saw it signed on paper; only with [`DayStatement::INK`], and then `device` is theirs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub ink: Option<Ink>,
}

impl DayStatement {
    /// A statement about a day that its signer's own device signs.
    pub const KIND: &'static str = "gagwright/day-signoff/1";
    /// A statement about a day that was signed on paper; the witness's device signs.
    pub const INK: &'static str = "gagwright/ink-day-signoff/1";

    /// Whose device signs: the signer's or, for ink, the witness's.
    pub fn hand(&self) -> PersonId {
        self.ink.as_ref().map_or(self.signer, |ink| ink.witness)
    }

    /// Under whose hat it is said.
    pub(crate) fn hat(&self) -> Hat {
        Hat {
            role: self.role,
            signer: self.signer,
            delegation: self.delegation,
        }
    }

    /// What is wrong with its ink by itself; none: nothing.
    pub(crate) fn ink_problem(&self) -> Option<&'static str> {
        ink::wrong(self.ink.as_ref()?, self.signer, self.mark.is_some())
    }
}

/// A reading as the signer saw it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct LeanedOn {
    /// Which.
    pub id: RecordId,
    /// Of what.
    pub kind: ReadingKind,
    /// The value, SI.
    pub value: f64,
}

/// Signs a statement about a day with a device's key.
///
/// # Errors
/// When the statement has no canonical form.
pub fn sign(statement: &DayStatement, key: &SigningKey) -> Result<String, SignOffError> {
    compact::seal(TYPE, statement.device, statement, key)
        .map_err(|error| SignOffError::BadStatement(error.to_string()))
}

/// Checks a mark with the key of the device it names, and gives what was signed.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, its signature does not match, or its payload is
/// not a statement about a day in canonical form.
pub fn verify(text: &str, key: &PublicKey) -> Result<DayStatement, SignOffError> {
    let parts = open(text)?;
    if !parts.signed_with(&jws::check_key(key)?) {
        return Err(SignOffError::BadSignature);
    }
    statement(&parts)
}

/// Reads what a mark claims without checking its signature. Never to decide by.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, or its payload is not a statement about a day.
pub fn read_unverified(text: &str) -> Result<DayStatement, SignOffError> {
    statement(&open(text)?)
}

fn open(text: &str) -> Result<Parts<'_>, SignOffError> {
    compact::open(text, TYPE, LONGEST).map_err(SignOffError::Malformed)
}

fn statement(parts: &Parts<'_>) -> Result<DayStatement, SignOffError> {
    let bad = |problem: String| SignOffError::BadStatement(problem);
    let statement: DayStatement = parts.payload().map_err(bad)?;
    let kind = match statement.ink {
        Some(_) => DayStatement::INK,
        None => DayStatement::KIND,
    };
    if statement.kind != kind {
        return Err(bad(format!("kind must be \"{kind}\"")));
    }
    if statement.device != parts.device {
        return Err(bad("device must be the kid of the header".to_owned()));
    }
    Ok(statement)
}

/// Serial numbers of a plan's equipment, sorted, each once.
pub fn serials(case: &Case) -> Vec<String> {
    let listed = case.plan.facets.rigging.equipment.iter();
    let mut serials: Vec<String> = listed.map(|item| item.serial.clone()).collect();
    serials.sort();
    serials.dedup();
    serials
}

/// Who is cast in which slot.
pub fn cast(case: &Case) -> BTreeMap<SlotId, PersonId> {
    cast_of(&case.plan)
}

/// Who is cast in which slot of a revision.
pub fn cast_of(plan: &Plan) -> BTreeMap<SlotId, PersonId> {
    let slots = plan.facets.cast.slots.iter();
    slots
        .filter_map(|slot| Some((slot.id, slot.person?)))
        .collect()
}

/// Whose devices signed the day.
pub fn hands(log: &DayLog) -> impl Iterator<Item = PersonId> {
    let signoffs = log.signoffs.iter();
    signoffs
        .filter_map(|one| read_unverified(&one.jws).ok())
        .map(|statement| statement.hand())
}

/// A place or a serial number in its plain spelling: its words, one space between them, in lower case.
pub fn plain(text: &str) -> String {
    let words: Vec<&str> = text.split_whitespace().collect();
    words.join(" ").to_lowercase()
}

/// Two spellings of one place.
pub(crate) fn same_place(one: &str, other: &str) -> bool {
    plain(one) == plain(other)
}

/// SHA-256 of a place's plain spelling in UTF-8, lower-case hex.
pub fn place_hash(place: &str) -> String {
    gagwright_trail::tree::Hash::of(plain(place).as_bytes()).to_hex()
}

/// From when until when it can be that day for somebody at work: the world's zones run from 14 hours
/// ahead of UTC to 12 behind, and a night that begins on a day is shot to its end.
pub fn span(day: Date) -> (Timestamp, Timestamp) {
    use jiff::{SignedDuration, tz::Offset};
    let midnight = Offset::UTC
        .to_timestamp(day.to_datetime(jiff::civil::Time::midnight()))
        .unwrap_or(Timestamp::MAX);
    let moved = |hours: i64, otherwise: Timestamp| {
        midnight
            .checked_add(SignedDuration::from_hours(hours))
            .unwrap_or(otherwise)
    };
    (
        moved(-14, Timestamp::MIN),
        moved(24 + 12 + 6, Timestamp::MAX),
    )
}

/// The day and the place that a case is about at a moment: the latest briefing for a day that it can be
/// now; the plan's day while it is to come or is now; or else today.
pub fn day_and_place(case: &Case, now: Timestamp) -> (Date, String) {
    let is_now = |day: Date| {
        let (from, until) = span(day);
        from <= now && now < until
    };
    let setting = &case.plan.facets.setting;
    let briefings = case.day.briefings.iter();
    let briefed = briefings
        .filter(|one| is_now(one.day))
        .max_by_key(|one| (one.at, one.id));
    if let Some(briefing) = briefed {
        return (briefing.day, briefing.place.clone());
    }
    let planned = setting.day.filter(|day| now < span(*day).1);
    let day = planned.unwrap_or_else(|| words::day_of(now));
    (day, setting.location.clone())
}

/// Whether the day that a case is about is one that people have named, in the plan or at a briefing, and
/// it can be that day now.
pub fn is_today(case: &Case, now: Timestamp) -> bool {
    let (day, _) = day_and_place(case, now);
    let (from, until) = span(day);
    let named = case.plan.facets.setting.day == Some(day)
        || case.day.briefings.iter().any(|one| one.day == day);
    named && from <= now && now < until
}

#[cfg(test)]
#[path = "tests/day_mark.rs"]
mod tests;
