//! Stopping and starting again. Anyone may raise a hold, with no account and no reason; only the
//! coordinator together with the owner of the hazard releases it, each saying the cause.

use gagwright_casting::ProductionId;
use gagwright_clearance::{
    Agreement, Hold, HoldId, Role,
    judge::{agreements_needed, missing_agreements},
    signoff::Member,
};
use gagwright_store::Connection;
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CommandError, Entropy, NewHold,
    problems::{LONG, Problems},
    record,
};
use crate::permissions::{Permission, role_name};

/// Raises a hold. With no actor it came by the code printed on the brief, and the caller has checked
/// that the code is this production's.
///
/// # Errors
/// When the gag is not on this production, a text is too long, or the id is taken.
pub fn raise(
    conn: &mut Connection,
    actor: Option<&Actor>,
    production: ProductionId,
    now: Timestamp,
    new: NewHold,
    entropy: Entropy<'_>,
) -> Result<Hold, CommandError> {
    if let Some(actor) = actor {
        actor.require(Permission::RaiseHold)?;
        if actor.production != production {
            return Err(CommandError::NotFound {
                what: "production",
                id: production.to_string(),
            });
        }
    }
    let mut problems = Problems::default();
    problems.text("/reason", &new.reason, LONG);
    problems.finish()?;
    let code = match new.gag {
        Some(gag) => Some(record::gag(conn, production, gag)?.code),
        None => None,
    };
    if gagwright_store::holds::get(conn, new.id)?.is_some() {
        return Err(CommandError::Conflict {
            what: "hold",
            detail: format!(
                "{} was raised already; it still stops the work it named",
                new.id
            ),
        });
    }
    let hold = Hold {
        id: new.id,
        gag: new.gag,
        raised_at: now,
        raised_by: actor.map(|actor| actor.person),
        reason: new.reason,
        hazard: new.hazard,
        agreements: Vec::new(),
        released_at: None,
    };
    let mut leaf = record::Leaf::for_production("hold.raised", now, production, actor)
        .fact("hold", json!(hold.id))
        .fact("hazard", json!(hold.hazard));
    if let (Some(gag), Some(code)) = (hold.gag, code) {
        leaf = leaf.about(gag).fact("code", json!(code));
    }
    let leaf = leaf
        .personal(json!({ "reason": hold.reason }), entropy)
        .append(conn)?;
    gagwright_store::holds::insert(conn, production, &hold, leaf)?;
    Ok(hold)
}

/// Who holds which hats, as the judge wants them.
fn hats(conn: &mut Connection, production: ProductionId) -> Result<Vec<Member>, CommandError> {
    Ok(gagwright_store::members::list(conn, production)?
        .into_iter()
        .map(|member| Member {
            person: member.person,
            name: String::new(),
            roles: member.roles,
            certificates: Vec::new(),
        })
        .collect())
}

/// Agrees, under one hat, that a hold may be released.
///
/// # Errors
/// Without the hat, when that hat is not asked or has agreed already, or with no cause given.
pub fn agree(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: HoldId,
    role: Role,
    cause: String,
    entropy: Entropy<'_>,
) -> Result<Hold, CommandError> {
    actor.require(Permission::ReleaseHold)?;
    let mut hold = record::hold(conn, actor.production, id)?;
    actor.require_role(role, Permission::ReleaseHold)?;
    let mut problems = Problems::default();
    problems.required("/cause", &cause, LONG);
    let policy = record::policy(conn, actor.production)?;
    let wanted = agreements_needed(&hold, &policy);
    if !wanted.contains(&role) {
        let names: Vec<&str> = wanted.iter().copied().map(role_name).collect();
        problems.add(
            "/role",
            format!("{} is not asked to release this hold", role_name(role)),
            format!("it needs: {}", names.join(", ")),
        );
    }
    problems.finish()?;
    let hats = hats(conn, actor.production)?;
    if !missing_agreements(&hold, &policy, &hats).contains(&role) {
        return Err(CommandError::Conflict {
            what: "agreement",
            detail: format!("{} has agreed already", role_name(role)),
        });
    }
    hold.agreements.push(Agreement {
        role,
        person: actor.person,
        at: now,
        cause: cause.clone(),
    });
    let released = missing_agreements(&hold, &policy, &hats).is_empty();
    hold.released_at = released.then_some(now);
    let mut leaf = record::Leaf::new("hold.agreed", now, Some(actor))
        .fact("hold", json!(id))
        .fact("role", json!(role))
        .fact("released", json!(released));
    if let Some(gag) = hold.gag {
        let code = record::gag(conn, actor.production, gag)?.code;
        leaf = leaf.about(gag).fact("code", json!(code));
    }
    leaf.personal(json!({ "cause": cause }), entropy)
        .append(conn)?;
    gagwright_store::holds::update(conn, &hold, hold.released_at)?;
    Ok(hold)
}
