//! What one person asks and another brings: whether it is as its author signed it, and whether they may
//! still ask it. What is then done is each command's own, exactly as if the author had sent it.

use gagwright_clearance::handed::{self, Asked, HandedError, HandedRequest};
use gagwright_store::{Connection, devices, members, people};
use jiff::Timestamp;
use uuid::Uuid;

use super::{Actor, CommandError, record};
use crate::permissions::Permission;

/// Checks that what was brought is what its author signed, with the key of a device of the carrier's
/// production, and asks something of that production alone, so that no answer kept from another one is
/// given here; gives the author's account, under which it is done once.
///
/// # Errors
/// [`CommandError::Handed`] with what is wrong, or that the production has no such gag or hold.
pub fn verify(
    conn: &mut Connection,
    carrier: &Actor,
    claimed: &HandedRequest,
    jws: &str,
) -> Result<Uuid, CommandError> {
    carrier.require(Permission::ReadProduction)?;
    let device = devices::get(conn, carrier.production, claimed.device)?.ok_or_else(|| {
        HandedError::NotAllowed(format!(
            "the device {} is not registered on this production; its owner must send this themselves",
            claimed.device
        ))
    })?;
    handed::verify(jws, &device.key)?;
    if device.person != claimed.person {
        let name = device.name;
        let why = format!("the device \"{name}\" belongs to someone else");
        return Err(HandedError::NotAllowed(why).into());
    }
    let asked = claimed.asked()?;
    if let Some(gag) = asked.gag() {
        record::gag(conn, carrier.production, gag)?;
    }
    if let Asked::Release(hold) = asked {
        record::hold(conn, carrier.production, hold)?;
    }
    let member = members::get(conn, carrier.production, claimed.person)?;
    let account = member.and_then(|member| member.account).ok_or_else(|| {
        HandedError::NotAllowed(
            "its author has no account on this production any more; someone who is on it must do this"
                .to_owned(),
        )
    })?;
    Ok(account)
}

/// The author of what was brought, if they and their device may ask it now.
///
/// # Errors
/// [`CommandError::Handed`] with what is wrong.
pub fn author(
    conn: &mut Connection,
    carrier: &Actor,
    request: &HandedRequest,
    now: Timestamp,
) -> Result<Actor, CommandError> {
    let gone = || HandedError::NotAllowed("its author is not on this production any more".into());
    let device = devices::get(conn, carrier.production, request.device)?.ok_or_else(gone)?;
    handed::check_device(request, &device, now)?;
    let member = members::get(conn, carrier.production, request.person)?.ok_or_else(gone)?;
    let author = Actor {
        account: member.account,
        production: carrier.production,
        person: member.person,
        roles: member.roles,
        // Whoever brings their own request late carries it for nobody else.
        carried_by: Some(carrier.person).filter(|carrier| *carrier != member.person),
    };
    author.require(permission(request.asked()?))?;
    Ok(author)
}

/// What a request needs its author to be allowed.
fn permission(asked: Asked) -> Permission {
    match asked {
        Asked::Hold | Asked::Incident | Asked::StandDown => Permission::RaiseHold,
        Asked::Reading(_)
        | Asked::Run(_)
        | Asked::TestShot(_)
        | Asked::Quarantine(_)
        | Asked::ShockLoad(_)
        | Asked::Briefing(_)
        | Asked::TakeEnd(..) => Permission::LogDay,
        Asked::Revision(..) => Permission::EditPlans,
        Asked::Release(_) => Permission::ReleaseHold,
        // Who may sign and who may call a go is asked of their hats.
        Asked::DayMark(_) | Asked::Go(_) => Permission::ReadProduction,
    }
}

/// A refusal for what the author may not do, told to the carrier of whom it speaks.
///
/// # Errors
/// The refusal; or that the store cannot be read.
pub fn told_to_carrier<T>(
    conn: &mut Connection,
    request: &HandedRequest,
    outcome: Result<T, CommandError>,
) -> Result<T, CommandError> {
    let Err(CommandError::Forbidden { permission, why }) = outcome else {
        return outcome;
    };
    let author = people::get(conn, request.production, request.person)?;
    let name = author.map_or_else(|| "Its author".to_owned(), |stored| stored.person.name);
    let why = match why {
        Some(why) => format!("{name}, who made this, may not: {why}; someone who may must do it"),
        None => format!(
            "{name}, who made this, may not {} as it asks; someone who may must do it",
            permission.sentence()
        ),
    };
    Err(HandedError::NotAllowed(why).into())
}
