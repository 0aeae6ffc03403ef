//! Standing somebody down, and bringing them back. Anybody stands themselves down; the coordinator, the
//! medic, production and a guardian stand anybody down. Nobody says why, here or in the trail.

use gagwright_clearance::{
    RecordId,
    case::{Returned, StandDown},
    who_may,
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::Timestamp;
use serde_json::json;

use super::{NewStandDown, kept};
use crate::{
    commands::{Actor, CommandError, problems::Problems, record},
    permissions::Permission,
};

/// Stands somebody down.
///
/// # Errors
/// For somebody else without the coordinator's, the medic's, the production's or a guardian's hat; for nobody on the roster; or when
/// the id is taken.
pub fn stand_down(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: NewStandDown,
) -> Result<StandDown, CommandError> {
    actor.require(Permission::RaiseHold)?;
    if !who_may::stand_down(actor.person, &actor.roles, new.person) {
        return Err(CommandError::Forbidden {
            permission: Permission::LogDay,
            why: Some(
                "you may stand yourself down; the coordinator, the medic, production or a guardian, others"
                    .into(),
            ),
        });
    }
    record::person(conn, actor.production, new.person)?;
    let mut problems = Problems::default();
    if new.until.is_some_and(|until| until <= new.from) {
        problems.add(
            "/until",
            "is before from",
            "give a later moment, or leave it out",
        );
    }
    problems.finish()?;
    let down = StandDown {
        id: new.id,
        person: new.person,
        from: new.from.min(now),
        until: new.until,
        by: actor.person,
        returned: None,
        after_look: false,
    };
    let leaf = record::Leaf::new("person.stood_down", now, Some(actor))
        .fact("stand_down", json!(down.id))
        .fact("person", json!(down.person))
        .happened("from", new.from)
        .fact("until", json!(down.until))
        .append(conn)?;
    day_records::insert(
        conn,
        actor.production,
        None,
        Kind::StandDown,
        down.id,
        &down,
        leaf,
    )?;
    Ok(down)
}

/// Brings somebody back: the medic, or whoever stood them down.
///
/// # Errors
/// For anybody else, or when they are back already.
pub fn bring_back(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
) -> Result<StandDown, CommandError> {
    actor.require(Permission::RaiseHold)?;
    let (_, mut down): (_, StandDown) = kept(conn, actor, Kind::StandDown, "stand-down", id)?;
    if !who_may::bring_back(actor.person, &actor.roles, &down) {
        return Err(CommandError::Forbidden {
            permission: Permission::LogDay,
            why: Some("only the medic, or whoever stood them down, brings them back".into()),
        });
    }
    if down.returned.is_some() {
        return Err(CommandError::Conflict {
            what: "stand-down",
            detail: "it has ended already".to_owned(),
        });
    }
    record::Leaf::new("person.returned", now, Some(actor))
        .fact("stand_down", json!(id))
        .fact("person", json!(down.person))
        .append(conn)?;
    down.returned = Some(Returned {
        at: now,
        by: actor.person,
    });
    day_records::update(conn, Kind::StandDown, id, &down)?;
    Ok(down)
}
