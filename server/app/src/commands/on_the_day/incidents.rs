//! Near misses and incidents: anyone reports one, which freezes the plan; who must be told is ticked off;
//! the coordinator and the production put their names to what was done about it.

use gagwright_casting::ProductionId;
use gagwright_clearance::{
    Policy, RecordId,
    case::{Closing, Incident, Told},
    judge::{is_open, missing_closings},
    signoff::Member,
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::Timestamp;
use serde_json::json;

use super::{NewClosing, NewIncident, NewTold, kept};
use crate::{
    commands::{
        Actor, CommandError, Entropy,
        problems::{LONG, Problems, SHORT},
        record,
    },
    permissions::{Permission, role_name},
};

/// Reports a near miss or an incident.
///
/// # Errors
/// When the gag is not on this production, a text is too long, or the id is taken.
pub fn report(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: NewIncident,
    entropy: Entropy<'_>,
) -> Result<Incident, CommandError> {
    actor.require(Permission::RaiseHold)?;
    let mut problems = Problems::default();
    problems.text("/what", &new.what, LONG);
    problems.finish()?;
    let incident = Incident {
        id: new.id,
        kind: new.kind,
        gag: new.gag,
        at: new.at.min(now),
        by: actor.person,
        what: new.what,
        told: Vec::new(),
        closings: Vec::new(),
        closed_at: None,
    };
    let leaf = leaf("incident.reported", conn, actor, now, &incident)?
        .fact("kind", json!(incident.kind))
        .happened("at", new.at)
        .personal(json!({ "what": incident.what }), entropy)
        .append(conn)?;
    let (production, gag) = (actor.production, incident.gag);
    day_records::insert(
        conn,
        production,
        gag,
        Kind::Incident,
        incident.id,
        &incident,
        leaf,
    )?;
    Ok(incident)
}

/// Records that somebody was told.
///
/// # Errors
/// Without [`Permission::LogDay`], when they were told before, or when the incident is closed.
pub fn tell(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
    new: NewTold,
    entropy: Entropy<'_>,
) -> Result<Incident, CommandError> {
    actor.require(Permission::LogDay)?;
    let mut incident = open(conn, actor, id)?;
    let mut problems = Problems::default();
    problems.required("/who", &new.who, SHORT);
    problems.finish()?;
    if incident.told.iter().any(|told| told.who == new.who) {
        return Err(CommandError::Conflict {
            what: "incident",
            detail: format!("{} was told already", new.who),
        });
    }
    let policy = record::policy(conn, actor.production)?;
    // Who the policy names may stand in the clear; anybody else is a name.
    let named = policy.to_tell(incident.kind).contains(&new.who);
    let fact = named.then_some(&new.who);
    incident.told.push(Told {
        who: new.who.clone(),
        at: new.at.min(now),
        by: actor.person,
    });
    let hats = hats(conn, actor.production)?;
    settle(&policy, &hats, now, &mut incident);
    leaf("incident.told", conn, actor, now, &incident)?
        .fact("who", json!(fact))
        .happened("at", new.at)
        .fact("closed", json!(incident.closed_at.is_some()))
        .personal(json!({ "who": new.who }), entropy)
        .append(conn)?;
    day_records::update(conn, Kind::Incident, id, &incident)?;
    Ok(incident)
}

/// Puts a name to what was done about it.
///
/// # Errors
/// Without the hat, when that hat is not asked or has closed already, or with nothing said.
pub fn close(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
    new: NewClosing,
    entropy: Entropy<'_>,
) -> Result<Incident, CommandError> {
    actor.require_role(new.role, Permission::ReleaseHold)?;
    let mut incident = open(conn, actor, id)?;
    let mut problems = Problems::default();
    problems.required("/action", &new.action, LONG);
    problems.finish()?;
    let policy = record::policy(conn, actor.production)?;
    let hats = hats(conn, actor.production)?;
    let wanted = missing_closings(&incident, &policy, &hats);
    if !wanted.contains(&new.role) {
        return Err(CommandError::Conflict {
            what: "incident",
            detail: format!("{} is not asked to close it", role_name(new.role)),
        });
    }
    incident.closings.push(Closing {
        role: new.role,
        person: actor.person,
        at: now,
        action: new.action.clone(),
    });
    settle(&policy, &hats, now, &mut incident);
    leaf("incident.closed_by", conn, actor, now, &incident)?
        .fact("role", json!(new.role))
        .fact("closed", json!(incident.closed_at.is_some()))
        .personal(json!({ "action": new.action }), entropy)
        .append(conn)?;
    day_records::update(conn, Kind::Incident, id, &incident)?;
    Ok(incident)
}

fn leaf(
    kind: &'static str,
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    incident: &Incident,
) -> Result<record::Leaf, CommandError> {
    let leaf = record::Leaf::new(kind, now, Some(actor)).fact("incident", json!(incident.id));
    Ok(match incident.gag {
        Some(gag) => {
            let code = record::gag(conn, actor.production, gag)?.code;
            leaf.about(gag).fact("code", json!(code))
        }
        None => leaf,
    })
}

fn open(conn: &mut Connection, actor: &Actor, id: RecordId) -> Result<Incident, CommandError> {
    let (_, incident): (_, Incident) = kept(conn, actor, Kind::Incident, "incident", id)?;
    if incident.closed_at.is_some() {
        return Err(CommandError::Conflict {
            what: "incident",
            detail: "it is closed; what happened since is another one".to_owned(),
        });
    }
    Ok(incident)
}

/// Closes it once everybody was told and both names are under it.
fn settle(policy: &Policy, hats: &[Member], now: Timestamp, incident: &mut Incident) {
    incident.closed_at = (!is_open(incident, policy, hats)).then_some(now);
}

/// Who holds which hats, as the judge wants them.
fn hats(conn: &mut Connection, production: ProductionId) -> Result<Vec<Member>, CommandError> {
    let members = gagwright_store::members::list(conn, production)?;
    let hats = members.into_iter().map(|member| Member {
        person: member.person,
        name: String::new(),
        roles: member.roles,
        certificates: Vec::new(),
    });
    Ok(hats.collect())
}
