//! The production's register of equipment: entering a piece, setting it aside, taking it back after an
//! inspection, and shock loads, which set it aside by themselves.

use gagwright_clearance::{
    RecordId,
    case::{RegisteredItem, ShockLoad},
    day_mark::plain,
    who_may,
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::Timestamp;
use serde_json::json;

use super::{BackInUse, NewShockLoad, PutItem, SetAside, kept};
use crate::{
    commands::{
        Actor, CommandError, Entropy,
        problems::{LONG, Problems, SHORT},
        record::Leaf,
    },
    permissions::Permission,
};

/// Enters a piece of equipment, or changes its entry. What befell it stays.
///
/// # Errors
/// Without [`Permission::LogDay`], for fields that are not valid, or when another piece has the serial.
pub fn put(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: PutItem,
    entropy: Entropy<'_>,
) -> Result<RegisteredItem, CommandError> {
    actor.require(Permission::LogDay)?;
    let mut problems = Problems::default();
    problems.required("/serial", &new.serial, SHORT);
    problems.required("/name", &new.name, SHORT);
    problems.text("/rating", &new.rating, SHORT);
    if let Some(load) = new.working_load {
        problems.number("/working_load", load, 0.0, 1e9, "N");
    }
    problems.finish()?;
    let all: Vec<(_, RegisteredItem)> = day_records::list(conn, actor.production, Kind::Equipment)?;
    if let Some((_, other)) = all
        .iter()
        .find(|(_, one)| plain(&one.serial) == plain(&new.serial) && one.id != new.id)
    {
        return Err(CommandError::Conflict {
            what: "serial",
            detail: format!("{} is on the register as {}", other.serial, other.name),
        });
    }
    let before = all
        .into_iter()
        .map(|(_, one)| one)
        .find(|one| one.id == new.id);
    if let Some(before) = &before {
        same_piece(before, &new, actor)?;
    }
    let created = before.is_none();
    let (quarantined, shock_loads) =
        before.map_or((None, Vec::new()), |one| (one.quarantined, one.shock_loads));
    let item = RegisteredItem {
        id: new.id,
        serial: new.serial,
        name: new.name,
        working_load: new.working_load,
        rating: new.rating,
        inspected_until: new.inspected_until,
        quarantined,
        shock_loads,
    };
    let leaf = Leaf::new("equipment.put", now, Some(actor))
        .fact("item", json!(item.id))
        .fact("serial", json!(item.serial))
        .fact("created", json!(created))
        .fact("working_load", json!(item.working_load))
        .fact("inspected_until", json!(item.inspected_until))
        // The production's record, as a plan is: it stays when whoever entered it is erased.
        .part(
            "item",
            None,
            json!({ "name": item.name, "rating": item.rating }),
            entropy,
        )
        .append(conn)?;
    if created {
        let production = actor.production;
        day_records::insert(
            conn,
            production,
            None,
            Kind::Equipment,
            item.id,
            &item,
            leaf,
        )?;
    } else {
        day_records::update(conn, Kind::Equipment, item.id, &item)?;
    }
    Ok(item)
}

/// That a change of an entry hides nothing: what befell a piece stays with its serial, and only those who
/// examine say that an inspection counts longer.
fn same_piece(before: &RegisteredItem, new: &PutItem, actor: &Actor) -> Result<(), CommandError> {
    let befallen = before.quarantined.is_some() || !before.shock_loads.is_empty();
    if befallen && plain(&before.serial) != plain(&new.serial) {
        return Err(CommandError::Conflict {
            what: "serial",
            detail: format!(
                "{} was set aside or took a shock load; what is told of it stays under that serial",
                before.serial
            ),
        });
    }
    if new.inspected_until > before.inspected_until && !who_may::take_back_into_use(&actor.roles) {
        return Err(CommandError::Forbidden {
            permission: Permission::LogDay,
            why: Some(
                "only those who build with it, or the engineer, say that an inspection counts longer"
                    .to_owned(),
            ),
        });
    }
    Ok(())
}

/// Sets a piece aside. Where it is already, what another saw is recorded as well, and the earliest is told.
///
/// # Errors
/// Without [`Permission::LogDay`], or with no reason.
pub fn quarantine(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
    new: SetAside,
    entropy: Entropy<'_>,
) -> Result<RegisteredItem, CommandError> {
    actor.require(Permission::LogDay)?;
    let mut item = find(conn, actor, id)?;
    let mut problems = Problems::default();
    problems.required("/reason", &new.reason, LONG);
    problems.finish()?;
    let since = new.at.min(now);
    item.set_aside(since, new.reason.clone(), actor.person);
    Leaf::new("equipment.quarantined", now, Some(actor))
        .fact("item", json!(id))
        .fact("serial", json!(item.serial))
        .happened("since", new.at)
        .personal(json!({ "reason": new.reason }), entropy)
        .append(conn)?;
    day_records::update(conn, Kind::Equipment, id, &item)?;
    Ok(item)
}

/// Takes a piece back into use after an inspection.
///
/// # Errors
/// Without a hat of those who examine, when it is not set aside, or without what was found.
pub fn release(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
    new: BackInUse,
    entropy: Entropy<'_>,
) -> Result<RegisteredItem, CommandError> {
    actor.require(Permission::LogDay)?;
    if !who_may::take_back_into_use(&actor.roles) {
        return Err(CommandError::Forbidden {
            permission: Permission::LogDay,
            why: Some("only those who build with it, or the engineer, take it back".to_owned()),
        });
    }
    let mut item = find(conn, actor, id)?;
    let mut problems = Problems::default();
    problems.required("/found", &new.found, LONG);
    problems.not_in_future("/at", new.at, now);
    problems.finish()?;
    if item.quarantined.is_none() {
        return Err(CommandError::Conflict {
            what: "release",
            detail: format!("{} is not in quarantine", item.serial),
        });
    }
    if !item.taken_back(new.at) {
        return Err(CommandError::Conflict {
            what: "release",
            detail: format!(
                "something befell {} after it was inspected; have it inspected again",
                item.serial
            ),
        });
    }
    item.inspected_until = Some(new.inspected_until);
    Leaf::new("equipment.released", now, Some(actor))
        .fact("item", json!(id))
        .fact("serial", json!(item.serial))
        .fact("inspected_until", json!(new.inspected_until))
        .fact("inspected_at", json!(new.at))
        .personal(json!({ "found": new.found }), entropy)
        .append(conn)?;
    day_records::update(conn, Kind::Equipment, id, &item)?;
    Ok(item)
}

/// Records a shock load, which sets the piece aside.
///
/// # Errors
/// Without [`Permission::LogDay`], for fields that are not valid, or when it was recorded before.
pub fn shock_load(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: RecordId,
    new: NewShockLoad,
    entropy: Entropy<'_>,
) -> Result<RegisteredItem, CommandError> {
    actor.require(Permission::LogDay)?;
    let mut item = find(conn, actor, id)?;
    let mut problems = Problems::default();
    problems.required("/what", &new.what, LONG);
    problems.finish()?;
    let at = new.at.min(now);
    if item.shock_loads.iter().any(|one| one.id == new.id) {
        return Err(CommandError::Conflict {
            what: "shock load",
            detail: "it was recorded before".to_owned(),
        });
    }
    Leaf::new("equipment.shock_loaded", now, Some(actor))
        .fact("item", json!(id))
        .fact("serial", json!(item.serial))
        .fact("shock_load", json!(new.id))
        .happened("at", new.at)
        .personal(json!({ "what": new.what }), entropy)
        .append(conn)?;
    item.shocked(ShockLoad {
        id: new.id,
        at,
        what: new.what,
        by: actor.person,
    });
    day_records::update(conn, Kind::Equipment, id, &item)?;
    Ok(item)
}

fn find(
    conn: &mut Connection,
    actor: &Actor,
    id: RecordId,
) -> Result<RegisteredItem, CommandError> {
    let (_, item) = kept(conn, actor, Kind::Equipment, "piece of equipment", id)?;
    Ok(item)
}
