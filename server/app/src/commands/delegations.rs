//! Letting somebody sign in one's stead, and ending it. The rules are clearance's; whoever holds a role
//! hands on nothing but their own.

use gagwright_casting::PersonId;
use gagwright_clearance::{Delegation, GagId, RecordId, Role, delegation};
use gagwright_store::Connection;
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

/// Most gags that one delegation names; more are all of them.
const MOST: usize = 200;

/// A delegation to be made.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewDelegation {
    /// Which; minted by the device.
    pub id: RecordId,
    /// Who signs in the caller's stead.
    pub to: PersonId,
    /// The role, which the caller holds.
    pub role: Role,
    /// The gags it is for; empty: all of them.
    #[serde(default)]
    #[schema(value_type = Vec<uuid::Uuid>)]
    pub gags: Vec<GagId>,
    /// From when, by the server's clock: what arrives before does not count, whenever it was signed.
    #[schema(value_type = String, format = DateTime)]
    pub starts: Timestamp,
    /// Until when.
    #[schema(value_type = String, format = DateTime)]
    pub until: Timestamp,
    /// Its limits in words.
    #[serde(default)]
    pub limits: String,
}

/// Makes a delegation of a role that the actor holds.
///
/// # Errors
/// When the policy does not allow it, for fields that are not valid, or when the id is taken.
pub fn make(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: NewDelegation,
    entropy: Entropy<'_>,
) -> Result<Delegation, CommandError> {
    actor.require(Permission::SignOff)?;
    let shared = gathering::shared(conn, actor.production)?;
    let made = Delegation {
        id: new.id,
        from: actor.person,
        to: new.to,
        role: new.role,
        gags: new.gags,
        starts: new.starts,
        until: new.until,
        limits: new.limits,
        made_at: now,
        ended_at: None,
    };
    let mut problems = Problems::default();
    problems.text("/limits", &made.limits, LONG);
    if made.gags.len() > MOST {
        problems.add("/gags", "are too many", "leave gags empty for all of them");
    }
    for (at, gag) in made.gags.iter().enumerate() {
        if record::gag(conn, actor.production, *gag).is_err() {
            let fix = "name gags of this production, or leave gags empty for all of them";
            problems.add(format!("/gags/{at}"), "is no gag of this production", fix);
        }
    }
    let policy = &shared.production.policy;
    for (field, problem, fix) in delegation::problems(&made, policy, &shared.hats(), now) {
        problems.add(field, problem, fix);
    }
    problems.finish()?;
    let leaf = record::Leaf::new("delegation.made", now, Some(actor))
        .fact("delegation", json!(made.id))
        .fact("to", json!(made.to))
        .fact("role", json!(made.role))
        .fact("gags", json!(made.gags))
        .fact("starts", json!(made.starts))
        .fact("until", json!(made.until))
        .personal(json!({ "limits": made.limits }), entropy)
        .append(conn)?;
    gagwright_store::delegations::insert(conn, actor.production, &made, leaf)?;
    Ok(made)
}

/// Ends a delegation before its time. Whoever made it may, and the coordinator.
///
/// # Errors
/// For anyone else, or when it has ended.
pub fn end(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
) -> Result<Delegation, CommandError> {
    actor.require(Permission::SignOff)?;
    let found = gagwright_store::delegations::get(conn, actor.production, id)?;
    let mut ended = found.ok_or_else(|| CommandError::NotFound {
        what: "delegation",
        id: id.to_string(),
    })?;
    if ended.from != actor.person && !actor.roles.contains(&Role::Coordinator) {
        return Err(CommandError::Forbidden {
            permission: Permission::SignOff,
            why: Some("only whoever made a delegation, or the coordinator, ends it".into()),
        });
    }
    if ended.ended_at.is_some() {
        return Err(CommandError::Conflict {
            what: "delegation",
            detail: "it was ended before; nothing is left to do".into(),
        });
    }
    ended.ended_at = Some(now);
    record::Leaf::new("delegation.ended", now, Some(actor))
        .fact("delegation", json!(id))
        .fact("role", json!(ended.role))
        .append(conn)?;
    gagwright_store::delegations::update(conn, &ended)?;
    Ok(ended)
}

/// Every delegation of the production, the newest first.
///
/// # Errors
/// Without [`Permission::ReadProduction`].
pub fn list(conn: &mut Connection, actor: &Actor) -> Result<Vec<Delegation>, CommandError> {
    actor.require(Permission::ReadProduction)?;
    let mut all = gagwright_store::delegations::list(conn, actor.production)?;
    all.reverse();
    Ok(all)
}
