//! A request handed from phone to phone where there is no network: what its author would have sent to
//! the server, signed with the key of their device so that whoever carries it can check it and nobody
//! can change it. A sign-off needs none of this; it is signed already. This module knows what may travel
//! so and whether a device may have sent it, and nothing of what the request's body must hold.

use gagwright_casting::{GagId, PersonId, ProductionId};
use jiff::Timestamp;
use p256::ecdsa::SigningKey;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

use crate::{
    compact::{self, Parts},
    door::CLOCK_SLACK,
    ids::{DeviceId, HoldId, RecordId},
    signoff::{Device, PublicKey},
    words,
};

/// The `typ` of every handed request's header.
pub const TYPE: &str = "gagwright-handed+jws";

/// Longer ones are refused before they are read: with the JSON around it, one must fit into the largest
/// body that the server takes.
const LONGEST: usize = 1000 * 1024;

/// A request as its author signed it. Its RFC 8785 bytes are the JWS payload.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct HandedRequest {
    /// The production.
    pub production: ProductionId,
    /// Who asks.
    pub person: PersonId,
    /// The device whose key signs.
    pub device: DeviceId,
    /// When, by the device's clock.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub made_at: Timestamp,
    /// The request's Idempotency-Key: the author's own phone sends the same request under the same key.
    pub key: Uuid,
    /// Always `POST`.
    pub method: String,
    /// The address under `/api/v1`.
    pub path: String,
    /// The request's If-Match, as it stands in the header; only with a plan revision.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub if_match: Option<String>,
    /// The request's body.
    pub body: Value,
}

/// What a handed request asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// To raise a hold on the production.
    Hold,
    /// To log a reading.
    Reading(GagId),
    /// To log a rehearsal run.
    Run(GagId),
    /// To log a test shot.
    TestShot(GagId),
    /// To revise a plan that is at this revision.
    Revision(GagId, u32),
    /// To agree to the release of a hold.
    Release(HoldId),
    /// To report a near miss or an incident.
    Incident,
    /// To stand somebody down.
    StandDown,
    /// To set a piece of equipment aside.
    Quarantine(RecordId),
    /// To record a shock load on a piece of equipment.
    ShockLoad(RecordId),
    /// To record a briefing.
    Briefing(GagId),
    /// To hand in a mark for the day, which is signed for itself as well.
    DayMark(GagId),
    /// To call a go.
    Go(GagId),
    /// To record how a take ended.
    TakeEnd(GagId, RecordId),
}

impl Asked {
    /// The gag whose address it goes to.
    pub fn gag(self) -> Option<GagId> {
        match self {
            Asked::Reading(gag)
            | Asked::Run(gag)
            | Asked::TestShot(gag)
            | Asked::Revision(gag, _)
            | Asked::Briefing(gag)
            | Asked::DayMark(gag)
            | Asked::Go(gag)
            | Asked::TakeEnd(gag, _) => Some(gag),
            Asked::Hold
            | Asked::Release(_)
            | Asked::Incident
            | Asked::StandDown
            | Asked::Quarantine(_)
            | Asked::ShockLoad(_) => None,
        }
    }
}

/// Why a handed request was refused.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum HandedError {
    /// Not a compact JWS with the header we ask for.
    #[error("what was handed over is not a compact JWS with alg ES256: {0}")]
    Malformed(String),
    /// The signature does not match the device's key.
    #[error("the signature does not verify with the key registered for this device")]
    BadSignature,
    /// The payload is not a request that may be handed over.
    #[error("the signed request is not valid: {0}")]
    BadRequest(String),
    /// Its author or their device may not ask this.
    #[error("{0}")]
    NotAllowed(String),
}

/// Signs a request with its device's key.
///
/// # Errors
/// When it is not one that may be handed over, or has no canonical form.
pub fn sign(request: &HandedRequest, key: &SigningKey) -> Result<String, HandedError> {
    request.asked()?;
    compact::seal(TYPE, request.device, request, key)
        .map_err(|error| HandedError::BadRequest(error.to_string()))
}

/// Checks a handed request with the key of the device it names, and gives what was signed.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, its signature does not match, or its payload is
/// not, in canonical form, a request that may be handed over.
pub fn verify(jws: &str, key: &PublicKey) -> Result<HandedRequest, HandedError> {
    let parts = open(jws)?;
    let key = compact::verifying_key(key)
        .map_err(|problem| HandedError::Malformed(format!("the device's key: {problem}")))?;
    if !parts.signed_with(&key) {
        return Err(HandedError::BadSignature);
    }
    request(&parts)
}

/// Reads what is claimed without checking its signature: to look up the device's key. Never to act on.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, or its payload is not a request that may be
/// handed over.
pub fn read_unverified(jws: &str) -> Result<HandedRequest, HandedError> {
    request(&open(jws)?)
}

/// Whether the device it names may have made it: it is the author's own, is not revoked, and its clock
/// said something possible.
///
/// # Errors
/// Says what is wrong and, where something can be done, what.
pub fn check_device(
    request: &HandedRequest,
    device: &Device,
    now: Timestamp,
) -> Result<(), HandedError> {
    let refused = |why: String| Err(HandedError::NotAllowed(why));
    let name = &device.name;
    if device.id != request.device || device.person != request.person {
        return refused(format!("the device \"{name}\" belongs to someone else"));
    }
    if let Some(revoked) = device.revoked_at {
        return refused(format!(
            "the device \"{name}\" was revoked on {}; its owner must send this themselves",
            words::minute(revoked)
        ));
    }
    let made = request.made_at;
    if made.duration_since(now) > CLOCK_SLACK {
        return refused(format!(
            "made_at is {}, more than a day ahead; set the clock of \"{name}\" and hand it over again",
            words::minute(made)
        ));
    }
    if device.registered_at.duration_since(made) > CLOCK_SLACK {
        return refused(format!(
            "made_at is {}, more than a day before \"{name}\" was registered; set its clock and hand it \
             over again",
            words::minute(made)
        ));
    }
    Ok(())
}

impl HandedRequest {
    /// What it asks for.
    ///
    /// # Errors
    /// When it is not one of the requests that may be handed over, all its parts agreeing.
    pub fn asked(&self) -> Result<Asked, HandedError> {
        let bad = |problem: &str| Err(HandedError::BadRequest(problem.to_owned()));
        if self.method != "POST" {
            return bad("method must be \"POST\"");
        }
        let steps: Vec<&str> = self.path.split('/').collect();
        let ["", thing, id, rest @ ..] = steps.as_slice() else {
            return bad(NOT_HANDED);
        };
        let asked = match (*thing, rest) {
            ("productions", ["holds"]) => self.of_own(id, Asked::Hold)?,
            ("productions", ["incidents"]) => self.of_own(id, Asked::Incident)?,
            ("productions", ["stand-downs"]) => self.of_own(id, Asked::StandDown)?,
            ("productions", ["equipment", item, "quarantine"]) => {
                self.of_own(id, Asked::Quarantine(RecordId(id_in(item)?)))?
            }
            ("productions", ["equipment", item, "shock-loads"]) => {
                self.of_own(id, Asked::ShockLoad(RecordId(id_in(item)?)))?
            }
            ("gags", ["readings"]) => Asked::Reading(GagId(id_in(id)?)),
            ("gags", ["runs"]) => Asked::Run(GagId(id_in(id)?)),
            ("gags", ["test-shots"]) => Asked::TestShot(GagId(id_in(id)?)),
            ("gags", ["plans"]) => Asked::Revision(GagId(id_in(id)?), self.expected()?),
            ("gags", ["briefings"]) => Asked::Briefing(GagId(id_in(id)?)),
            ("gags", ["day-signoffs"]) => Asked::DayMark(GagId(id_in(id)?)),
            ("gags", ["takes"]) => Asked::Go(GagId(id_in(id)?)),
            ("gags", ["takes", take, "outcome"]) => {
                Asked::TakeEnd(GagId(id_in(id)?), RecordId(id_in(take)?))
            }
            ("holds", ["agreements"]) => Asked::Release(HoldId(id_in(id)?)),
            _ => return bad(NOT_HANDED),
        };
        if self.if_match.is_some() && !matches!(asked, Asked::Revision(..)) {
            return bad("only a plan revision has if_match; leave it out");
        }
        Ok(asked)
    }

    /// What is asked of the production it is signed for, and of no other.
    fn of_own(&self, id: &str, asked: Asked) -> Result<Asked, HandedError> {
        if id_in(id)? == self.production.0 {
            return Ok(asked);
        }
        let problem = "its path names another production";
        Err(HandedError::BadRequest(problem.to_owned()))
    }

    /// The revision that the author had in hand.
    fn expected(&self) -> Result<u32, HandedError> {
        self.if_match
            .as_deref()
            .and_then(|sent| sent.strip_prefix('"')?.strip_suffix('"'))
            .and_then(|number| number.parse().ok())
            .filter(|revision| *revision > 0)
            .ok_or_else(|| {
                HandedError::BadRequest(
                    "a plan revision needs if_match, the revision in hand in quotes".to_owned(),
                )
            })
    }
}

/// The medic's looks stay off other people's phones, so they are not among them.
const NOT_HANDED: &str = "its path is not one that may be handed over: holds, agreements to release, readings, \
                          rehearsal runs, test shots, plan revisions, incidents, stand-downs, equipment set aside \
                          or shock-loaded, briefings, marks for the day, goes and how takes ended may";

/// One spelling of an id, so that a repeat is seen as one.
fn id_in(step: &str) -> Result<Uuid, HandedError> {
    Uuid::try_parse(step)
        .ok()
        .filter(|parsed| parsed.to_string() == step)
        .ok_or_else(|| {
            HandedError::BadRequest("an id in its path must be a UUID in lower case".to_owned())
        })
}

fn open(jws: &str) -> Result<Parts<'_>, HandedError> {
    compact::open(jws, TYPE, LONGEST).map_err(HandedError::Malformed)
}

fn request(parts: &Parts<'_>) -> Result<HandedRequest, HandedError> {
    let request: HandedRequest = parts.payload().map_err(HandedError::BadRequest)?;
    if request.device != parts.device {
        let problem = "device must be the kid of the header";
        return Err(HandedError::BadRequest(problem.to_owned()));
    }
    request.asked()?;
    Ok(request)
}

#[cfg(test)]
#[path = "tests/handed.rs"]
mod tests;
