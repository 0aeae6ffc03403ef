//! Devices that sign. A device makes its key itself and shows only the public half; a revoked device
//! signs nothing more, and what it signed before stands.

use gagwright_clearance::{Device, DeviceId};
use gagwright_store::Connection;
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CommandError, Entropy, NewDevice,
    problems::{Problems, SHORT},
    record,
};
use crate::permissions::Permission;

/// Registers a device for the person acting.
///
/// # Errors
/// Without [`Permission::SignOff`], when the key is not a P-256 public key, or when the id is taken.
pub fn register(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: NewDevice,
    entropy: Entropy<'_>,
) -> Result<Device, CommandError> {
    actor.require(Permission::SignOff)?;
    let mut problems = Problems::default();
    problems.required("/name", &new.name, SHORT);
    if let Err(problem) = gagwright_clearance::signoff::check_key(&new.key) {
        problems.add(
            "/key",
            problem.to_string(),
            "send the device's P-256 public key as a JWK with kty, crv, x and y",
        );
    }
    problems.finish()?;
    if gagwright_store::devices::get(conn, actor.production, new.id)?.is_some() {
        return Err(CommandError::Conflict {
            what: "device",
            detail: format!("{} is registered already; a new key needs a new id", new.id),
        });
    }
    let device = Device {
        id: new.id,
        person: actor.person,
        name: new.name,
        key: new.key,
        registered_at: now,
        revoked_at: None,
    };
    record::Leaf::new("device.registered", now, Some(actor))
        .fact("device", json!(device.id))
        .fact("person", json!(device.person))
        .fact("key", json!(device.key))
        .personal(json!({ "name": device.name }), entropy)
        .append(conn)?;
    gagwright_store::devices::insert(conn, actor.production, &device)?;
    Ok(device)
}

/// Revokes a device: one's own, or anyone's for those who manage members. When somebody else does it, the
/// phone is out of its owner's hands, so the owner's sessions end as well, on it and everywhere.
///
/// # Errors
/// When there is no such device, it belongs to someone else, or it was revoked before.
pub fn revoke(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: DeviceId,
) -> Result<(), CommandError> {
    let device = gagwright_store::devices::get(conn, actor.production, id)?.ok_or_else(|| {
        CommandError::NotFound {
            what: "device",
            id: id.to_string(),
        }
    })?;
    if device.person != actor.person {
        actor.require(Permission::ManageMembers)?;
    }
    if let Some(at) = device.revoked_at {
        return Err(CommandError::Conflict {
            what: "device",
            detail: format!("it was revoked at {at} already; nothing is left to do"),
        });
    }
    record::Leaf::new("device.revoked", now, Some(actor))
        .fact("device", json!(id))
        .fact("person", json!(device.person))
        .append(conn)?;
    gagwright_store::devices::revoke(conn, actor.production, id, now)?;
    if device.person != actor.person {
        let owner = gagwright_store::members::get(conn, actor.production, device.person)?;
        if let Some(account) = owner.and_then(|member| member.account) {
            gagwright_store::sessions::revoke_account(conn, account, now)?;
        }
    }
    Ok(())
}
