//! A statement made ready for signing: everything that the plan and the policy fix. The device fills in
//! its own part: the id, itself, the time and the decision.

use gagwright_casting::{PersonId, SlotId};
use gagwright_mechanics::Facet;
use jiff::{SignedDuration, Timestamp};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::{
    canonical::signed_content,
    case::Case,
    delegation,
    ids::{DeviceId, RecordId, SignOffId},
    jws,
    policy::{Attestation, Role},
    signoff::{Decision, SignOffError, Statement},
};

/// A statement made ready, with what its signer is shown beside it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Prepared {
    /// What would be signed.
    pub statement: Statement,
    /// The words that are put a name to.
    pub attestation: Attestation,
    /// The facets covered.
    pub covers: Vec<Facet>,
    /// The sign-off made last under this hat on this gag, whoever made it.
    pub previous: Option<PreviousSignOff>,
}

/// The sign-off one role made last on a gag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct PreviousSignOff {
    /// Which.
    pub signoff: SignOffId,
    /// On which revision.
    pub revision: u32,
    /// When, by the device's clock.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub signed_at: Timestamp,
}

/// Makes a statement ready for somebody to sign under one of their hats. `device` is nil and the decision
/// is to approve until the device says otherwise.
///
/// # Errors
/// Without the hat or, for a performer, the slot; and as [`draft`].
pub fn prepare(
    case: &Case,
    role: Role,
    slot: Option<SlotId>,
    signer: PersonId,
    id: SignOffId,
    now: Timestamp,
) -> Result<Prepared, SignOffError> {
    let (delegation, slot) = hat_of(case, role, slot, signer, now)?;
    let statement = Statement {
        id,
        delegation,
        ..draft(case, role, slot, signer, now)?
    };
    let policy = case.policy.role(role).ok_or_else(|| signs_nothing(role))?;
    let previous = case
        .signoffs
        .iter()
        .rev()
        .filter_map(|one| jws::read_unverified(&one.jws).ok())
        .find(|earlier| earlier.role == role && earlier.slot == slot);
    Ok(Prepared {
        statement,
        attestation: policy.attestation.clone(),
        covers: policy.covers.iter().copied().collect(),
        previous: previous.map(|earlier| PreviousSignOff {
            signoff: earlier.id,
            revision: earlier.revision,
            signed_at: earlier.signed_at,
        }),
    })
}

/// The delegation under which somebody would sign, if they need one, and the slot that a performer signs for.
pub(crate) fn hat_of(
    case: &Case,
    role: Role,
    slot: Option<SlotId>,
    signer: PersonId,
    now: Timestamp,
) -> Result<(Option<RecordId>, Option<SlotId>), SignOffError> {
    let lent = delegation::in_force(case, signer, role, now).filter(|_| slot.is_none());
    match lent {
        Some(lent) => Ok((Some(lent.id), None)),
        None => Ok((None, place_of(case, role, slot, signer)?)),
    }
}

/// The slot a performer signs for: the one named, or the only one they are cast in. Nobody else has one,
/// and they must hold the hat.
fn place_of(
    case: &Case,
    role: Role,
    slot: Option<SlotId>,
    signer: PersonId,
) -> Result<Option<SlotId>, SignOffError> {
    if role == Role::Performer {
        let mut slots = case.plan.facets.cast.slots.iter();
        let own = slots
            .find(|one| one.person == Some(signer) && slot.is_none_or(|wanted| wanted == one.id));
        return own.map(|own| Some(own.id)).ok_or_else(|| {
            SignOffError::NotAllowed(
                "you are not cast in this slot; consent is one's own".to_owned(),
            )
        });
    }
    if slot.is_some() {
        return Err(SignOffError::BadStatement(
            "only a performer signs for a slot; leave slot out".to_owned(),
        ));
    }
    if !delegation::holds(&case.members, signer, role) {
        return Err(SignOffError::NotAllowed(format!(
            "you do not hold the role {} on this production",
            role.name()
        )));
    }
    Ok(None)
}

fn signs_nothing(role: Role) -> SignOffError {
    let name = role.name();
    SignOffError::NotAllowed(format!("the role {name} signs nothing on this production"))
}

/// Drafts a statement for a role. `id` and `device` are nil and the decision is to approve until the
/// device says otherwise; nothing here checks that the signer may sign.
///
/// # Errors
/// When the policy has no such role, or the plan has no canonical form.
pub fn draft(
    case: &Case,
    role: Role,
    slot: Option<SlotId>,
    signer: PersonId,
    now: Timestamp,
) -> Result<Statement, SignOffError> {
    let policy = case.policy.role(role).ok_or_else(|| signs_nothing(role))?;
    let (plan_digest, facets) = signed_content(&case.plan.facets, &policy.covers)?;
    Ok(Statement {
        kind: Statement::KIND.to_owned(),
        id: SignOffId(Uuid::nil()),
        production: case.production,
        gag: case.plan.gag,
        revision: case.plan.revision,
        plan_digest,
        technique: case.plan.technique.clone(),
        facets,
        role,
        slot,
        decision: Decision::Approve,
        conditions: Vec::new(),
        reason: None,
        attestation: policy.attestation.id.clone(),
        language: None,
        delegation: None,
        ink: None,
        signer,
        device: DeviceId(Uuid::nil()),
        signed_at: now,
        good_until: policy.good_for_hours.and_then(|hours| {
            now.checked_add(SignedDuration::from_hours(hours.into()))
                .ok()
        }),
        mark: None,
    })
}

#[cfg(test)]
#[path = "tests/draft.rs"]
mod tests;
