//! A statement about a day made ready for signing: everything that the plan, the policy and the day fix.
//! The device fills in its own part: the id, itself, the time and the decision.

use std::collections::BTreeMap;

use gagwright_casting::{PersonId, SlotId};
use jiff::{SignedDuration, Timestamp};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{DayStatement, LeanedOn, cast, day_and_place, place_hash, serials, span};
use crate::{
    canonical::signed_content,
    case::{Case, Reading, ReadingKind},
    draft::hat_of,
    ids::{DeviceId, SignOffId},
    policy::{Attestation, Role},
    signoff::{Decision, SignOffError},
};

/// A statement about a day made ready, with the words its signer is shown.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct DayPrepared {
    /// What would be signed.
    pub statement: DayStatement,
    /// The words that are put a name to.
    pub attestation: Attestation,
    /// The place as people call it.
    pub place: String,
}

/// Makes a statement ready for somebody to sign the day under one of their hats, or as somebody else signs it on
/// paper: the witness's device adds the ink. `device` is nil and the
/// decision is to approve until the device says otherwise.
///
/// # Errors
/// Without the hat or, for a performer, the slot; and when the role does not sign the day.
pub fn prepare(
    case: &Case,
    role: Role,
    slot: Option<SlotId>,
    signer: PersonId,
    id: SignOffId,
    now: Timestamp,
) -> Result<DayPrepared, SignOffError> {
    let (delegation, slot) = hat_of(case, role, slot, signer, now)?;
    let policy = case.policy.role(role);
    let attestation = case.policy.day_attestation(role);
    let (Some(policy), Some(attestation)) = (policy, attestation) else {
        return Err(super::door::not_asked(role));
    };
    let (plan_digest, facets) = signed_content(&case.plan.facets, &policy.covers)?;
    let (day, place) = day_and_place(case, now);
    let hours = SignedDuration::from_hours(case.policy.day.good_for_hours.into());
    let good_until = now.checked_add(hours).unwrap_or(Timestamp::MAX);
    Ok(DayPrepared {
        statement: DayStatement {
            kind: DayStatement::KIND.to_owned(),
            id,
            production: case.production,
            gag: case.plan.gag,
            revision: case.plan.revision,
            plan_digest,
            facets,
            role,
            slot,
            delegation,
            decision: Decision::Approve,
            attestation: attestation.id.clone(),
            day,
            place: place_hash(&place),
            serials: serials(case),
            cast: cast(case),
            readings: latest(case, now),
            signer,
            device: DeviceId(Uuid::nil()),
            signed_at: now,
            good_until: good_until.min(span(day).1),
            mark: None,
            ink: None,
        },
        attestation: attestation.clone(),
        place,
    })
}

/// The latest reading of each kind, by kind.
fn latest(case: &Case, now: Timestamp) -> Vec<LeanedOn> {
    let mut latest: BTreeMap<ReadingKind, &Reading> = BTreeMap::new();
    let counts =
        |reading: &&Reading| reading.value.is_finite() && crate::judge::is_past(reading, now);
    for reading in case.readings.iter().filter(counts) {
        let kept = latest.entry(reading.kind).or_insert(reading);
        if (reading.at, reading.id) > (kept.at, kept.id) {
            *kept = reading;
        }
    }
    latest
        .into_values()
        .map(|reading| LeanedOn {
            id: reading.id,
            kind: reading.kind,
            value: reading.value,
        })
        .collect()
}
