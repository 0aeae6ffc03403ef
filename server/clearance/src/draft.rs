//! A statement made ready for signing: everything that the plan and the policy fix. The device fills in
//! its own part: the id, itself, the time and the decision.

use gagwright_casting::{PersonId, SlotId};
use jiff::{SignedDuration, Timestamp};
use uuid::Uuid;

use crate::{
    canonical::{facet_hashes, plan_digest},
    case::Case,
    ids::{DeviceId, SignOffId},
    policy::Role,
    signoff::{Decision, SignOffError, Statement},
};

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
    let refused = |error: crate::canonical::CanonicalError| {
        SignOffError::BadStatement(format!("the plan: {error}"))
    };
    let policy = case.policy.role(role).ok_or_else(|| {
        let name = role.name();
        SignOffError::NotAllowed(format!("the role {name} signs nothing on this production"))
    })?;
    let mut facets = facet_hashes(&case.plan.facets).map_err(refused)?;
    facets.retain(|facet, _| policy.covers.contains(facet));
    Ok(Statement {
        kind: Statement::KIND.to_owned(),
        id: SignOffId(Uuid::nil()),
        production: case.production,
        gag: case.plan.gag,
        revision: case.plan.revision,
        plan_digest: plan_digest(&case.plan.facets).map_err(refused)?,
        facets,
        role,
        slot,
        decision: Decision::Approve,
        conditions: Vec::new(),
        reason: None,
        attestation: policy.attestation.id.clone(),
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
