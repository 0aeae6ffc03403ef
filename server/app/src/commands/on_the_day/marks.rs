//! Drafting and receiving marks for the day. Like a plan sign-off, one proves itself: anyone on the
//! production may carry it here from a phone that has no signal.

use gagwright_casting::{GagId, PersonId, SlotId};
use gagwright_clearance::{
    RecordId, Role, SignOffError, SignOffId,
    case::{DaySignOff, RoleStanding},
    day_mark::{self, DayPrepared},
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::Timestamp;
use serde_json::json;

use crate::{
    commands::{Actor, CommandError, record},
    permissions::Permission,
    remembered::clearance,
    views::gathering,
};

/// Makes a statement about the day ready for the actor to sign under one of their hats, or, for a witness, as somebody
/// else signs it on paper: the witness's device adds the ink.
///
/// # Errors
/// Without the hat (or, for a performer, the slot), or when the role does not sign the day.
pub fn draft(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    role: Role,
    slot: Option<SlotId>,
    signer: Option<PersonId>,
) -> Result<DayPrepared, CommandError> {
    actor.require(Permission::SignOff)?;
    let signer = signer.unwrap_or(actor.person);
    let case = gathering::case(conn, actor.production, gag)?;
    let id = SignOffId(uuid::Uuid::nil());
    day_mark::prepare(&case, role, slot, signer, id, now).map_err(|error| match error {
        SignOffError::NotAllowed(why) => CommandError::Forbidden {
            permission: Permission::SignOff,
            why: Some(why),
        },
        other => other.into(),
    })
}

/// How the mark stands, and whether it was recorded just now.
pub struct Taken {
    /// How the role stands for the day.
    pub standing: RoleStanding,
    /// Whether it was recorded before.
    pub before: bool,
}

/// Receives a mark for the day.
///
/// # Errors
/// [`CommandError::SignOff`] with the reason it was refused at the door, or [`CommandError::Conflict`]
/// when its id is another's.
pub fn submit(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    jws: &str,
) -> Result<Taken, CommandError> {
    actor.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, actor.production)?;
    let (row, mut case) = gathering::case_with(conn, &shared, gag)?;
    let claimed = day_mark::read_unverified(jws)?;
    // The signer may never have signed this gag before, so their devices are not in its case yet.
    case.devices = shared.devices.clone();
    let id = RecordId(claimed.id.0);
    let before = case.day.signoffs.iter().any(|one| one.jws == jws);
    if !before {
        let statement = day_mark::accept(jws, &case, now)?;
        let leaf = record::Leaf::new("day.signed", now, Some(actor))
            .about(gag)
            .fact("code", json!(row.code))
            .fact("signoff", json!(statement.id))
            .fact("signer", json!(statement.signer))
            .fact(
                "witness",
                json!(statement.ink.as_ref().map(|ink| ink.witness)),
            )
            .fact("device_id", json!(statement.device))
            .fact("role", json!(statement.role))
            .fact("slot", json!(statement.slot))
            .fact("delegation", json!(statement.delegation))
            .fact("decision", json!(statement.decision))
            .fact("revision", json!(statement.revision))
            .fact("day", json!(statement.day))
            .fact("policy", json!(case.policy.version))
            .fact("jws", json!(jws))
            .append(conn)?;
        let signoff = DaySignOff {
            jws: jws.to_owned(),
            received_at: now,
            leaf,
        };
        day_records::insert(
            conn,
            actor.production,
            Some(gag),
            Kind::Mark,
            id,
            &signoff,
            leaf,
        )?;
        case.day.signoffs.push(signoff);
    }
    let marks = clearance(&case, now).day.marks;
    let found = marks
        .into_iter()
        .find(|one| one.role == claimed.role && one.slot == claimed.slot);
    let standing = found.ok_or_else(|| CommandError::Conflict {
        what: "role",
        detail: format!(
            "this gag does not ask {} to sign the day; nothing was recorded",
            claimed.role.name()
        ),
    })?;
    Ok(Taken { standing, before })
}
