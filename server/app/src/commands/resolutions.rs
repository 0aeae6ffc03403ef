//! Resolving a decline in writing. The decline stays on the record beside what was written.

use gagwright_clearance::{
    Decision, RecordId, Resolution, RoleStanding, SignOffId, judge::standing_of, signoff,
};
use gagwright_store::{Connection, StoreError};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::json;
use utoipa::ToSchema;

use super::{
    Actor, CommandError, Entropy,
    problems::{LONG, Problems},
    record,
};
use crate::{permissions::Permission, views::gathering};

/// What was agreed about a decline.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewResolution {
    /// Which; minted by the device.
    pub id: RecordId,
    /// What was agreed, in words.
    pub text: String,
}

/// Resolves a decline in writing, under a hat that the policy names for it.
///
/// # Errors
/// When it is no decline, the policy lets nobody resolve it, or the actor has none of the hats that may;
/// or when it was resolved before.
pub fn resolve(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: SignOffId,
    new: NewResolution,
    entropy: Entropy<'_>,
) -> Result<RoleStanding, CommandError> {
    actor.require(Permission::SignOff)?;
    let unknown = || CommandError::NotFound {
        what: "sign-off",
        id: id.to_string(),
    };
    let (declined, gag) = gagwright_store::signoffs::get(conn, id)?.ok_or_else(unknown)?;
    let shared = gathering::shared(conn, actor.production)?;
    let (row, mut case) = match gathering::case_with(conn, &shared, gag) {
        Err(CommandError::NotFound { .. }) => return Err(unknown()),
        other => other?,
    };
    let statement = signoff::read_unverified(&declined.jws)?;
    if statement.decision != Decision::Decline {
        return Err(CommandError::Conflict {
            what: "sign-off",
            detail: "it is no decline, so there is nothing to resolve".into(),
        });
    }
    let may = case.policy.settling.get(&statement.role);
    let may = may.map(|one| one.declines.clone()).unwrap_or_default();
    let Some(role) = may.iter().copied().find(|role| actor.roles.contains(role)) else {
        let titles: Vec<&str> = may.iter().map(|role| case.policy.title(*role)).collect();
        return Err(CommandError::Forbidden {
            permission: Permission::SignOff,
            why: Some(if titles.is_empty() {
                "by this production's policy nobody can resolve it; only whoever declined can say \
                 otherwise"
                    .into()
            } else {
                format!(
                    "by this production's policy it is resolved by: {}",
                    titles.join(", ")
                )
            }),
        });
    };
    let mut problems = Problems::default();
    problems.required("/text", &new.text, LONG);
    problems.finish()?;
    let resolution = Resolution {
        id: new.id,
        signoff: id,
        by: actor.person,
        role,
        text: new.text,
        at: now,
    };
    let leaf = record::Leaf::new("decline.resolved", now, Some(actor))
        .about(row.id)
        .fact("code", json!(row.code))
        .fact("resolution", json!(resolution.id))
        .fact("signoff", json!(id))
        .fact("role", json!(role))
        .personal(json!({ "text": resolution.text }), entropy)
        .append(conn)?;
    match gagwright_store::resolutions::insert(conn, actor.production, gag, &resolution, leaf) {
        Err(StoreError::Conflict { .. }) => {
            return Err(CommandError::Conflict {
                what: "resolution",
                detail: "this decline was resolved before".into(),
            });
        }
        other => other?,
    }
    case.resolutions.push(resolution);
    Ok(standing_of(&case, &statement, now))
}
