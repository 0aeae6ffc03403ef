//! Who is on a production and with what: members with their accounts and invitations, and the devices
//! that sign. For the settings screens of those who look after them.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::PersonId;
use gagwright_clearance::{DeviceId, Role};
use gagwright_store::{Connection, devices, members, people, signoffs};
use jiff::Timestamp;
use serde::Serialize;
use utoipa::ToSchema;
use uuid::Uuid;

use super::PersonRef;
use crate::{
    commands::{self, Actor, CommandError},
    permissions::Permission,
};

/// One member and how they come in.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct MemberAccount {
    /// Who.
    pub person: PersonRef,
    /// What they are called for.
    pub occupation: String,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
    /// Whether they can sign in.
    pub has_account: bool,
    /// Their address on the roster; without one they cannot be invited.
    #[schema(required = true)]
    pub email: Option<String>,
    /// Their invitation, while it can still be accepted.
    #[schema(required = true)]
    pub invitation: Option<OpenInvitation>,
    /// How many of their devices can sign.
    pub devices: u32,
}

/// An invitation that can still be accepted.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct OpenInvitation {
    /// Which.
    pub id: Uuid,
    /// Whom it invites.
    pub person: PersonRef,
    /// Where the letter went.
    pub email: String,
    /// The hats it promises.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
    /// Until when it can be accepted.
    #[schema(value_type = String, format = DateTime)]
    pub expires_at: Timestamp,
}

/// A device that signs, or signed.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct DeviceSummary {
    /// Which.
    pub id: DeviceId,
    /// What its owner calls it.
    pub name: String,
    /// Whose it is.
    pub owner: PersonRef,
    /// When it was registered.
    #[schema(value_type = String, format = DateTime)]
    pub registered_at: Timestamp,
    /// When it was revoked, if it was.
    #[schema(required = true, value_type = Option<String>, format = DateTime)]
    pub revoked_at: Option<Timestamp>,
    /// When the last sign-off made on it was received.
    #[schema(required = true, value_type = Option<String>, format = DateTime)]
    pub last_signed_at: Option<Timestamp>,
}

type Roster = BTreeMap<PersonId, gagwright_casting::Person>;

fn roster(conn: &mut Connection, reader: &Actor) -> Result<Roster, CommandError> {
    let people = people::list(conn, reader.production)?;
    let by_id = |stored: people::StoredPerson| (stored.person.id, stored.person);
    Ok(people.into_iter().map(by_id).collect())
}

fn named(person: &gagwright_casting::Person) -> PersonRef {
    PersonRef {
        id: person.id,
        name: person.name.clone(),
        code: person.code.clone(),
    }
}

/// The invitations that can still be accepted, by the invited person's code.
///
/// # Errors
/// Without [`Permission::ManageMembers`].
pub fn open_invitations(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
) -> Result<Vec<OpenInvitation>, CommandError> {
    let open = commands::members::open_invitations(conn, reader, now)?;
    let roster = roster(conn, reader)?;
    let members = members::list(conn, reader.production)?;
    let roles: BTreeMap<PersonId, BTreeSet<Role>> = members
        .into_iter()
        .map(|member| (member.person, member.roles))
        .collect();
    let mut told: Vec<OpenInvitation> = open
        .into_iter()
        .filter_map(|one| {
            Some(OpenInvitation {
                id: one.id,
                person: named(roster.get(&one.person)?),
                email: one.email,
                roles: roles.get(&one.person).cloned().unwrap_or_default(),
                expires_at: one.expires_at,
            })
        })
        .collect();
    told.sort_by(|one, other| one.person.code.cmp(&other.person.code));
    Ok(told)
}

/// Everyone who has a hat, an account or an invitation, by code.
///
/// # Errors
/// Without [`Permission::ManageMembers`].
pub fn member_accounts(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
) -> Result<Vec<MemberAccount>, CommandError> {
    let mut invitations: BTreeMap<PersonId, OpenInvitation> = open_invitations(conn, reader, now)?
        .into_iter()
        .map(|one| (one.person.id, one))
        .collect();
    let roster = roster(conn, reader)?;
    let devices = devices::list(conn, reader.production)?;
    let able = |person| {
        let own = devices
            .iter()
            .filter(|one| one.person == person && one.revoked_at.is_none());
        u32::try_from(own.count()).unwrap_or(u32::MAX)
    };
    let mut told: Vec<MemberAccount> = members::list(conn, reader.production)?
        .into_iter()
        .filter_map(|member| {
            let person = roster.get(&member.person)?;
            Some(MemberAccount {
                person: named(person),
                occupation: person.occupation.clone(),
                roles: member.roles,
                has_account: member.account.is_some(),
                email: reader
                    .may(Permission::ReadPersonal)
                    .then(|| person.email.clone())
                    .flatten(),
                invitation: invitations.remove(&member.person),
                devices: able(member.person),
            })
        })
        .collect();
    told.sort_by(|one, other| one.person.code.cmp(&other.person.code));
    Ok(told)
}

/// The devices that sign: everybody's for those who manage members, one's own for everyone else. The one
/// registered last comes first.
///
/// # Errors
/// When the reader may not read the production.
pub fn device_list(
    conn: &mut Connection,
    reader: &Actor,
) -> Result<Vec<DeviceSummary>, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let devices = if reader.may(Permission::ManageMembers) {
        devices::list(conn, reader.production)?
    } else {
        devices::for_person(conn, reader.production, reader.person)?
    };
    let roster = roster(conn, reader)?;
    let last = signoffs::last_by_device(conn, reader.production)?;
    let mut told: Vec<DeviceSummary> = devices
        .into_iter()
        .filter_map(|device| {
            Some(DeviceSummary {
                id: device.id,
                owner: named(roster.get(&device.person)?),
                name: device.name,
                registered_at: device.registered_at,
                revoked_at: device.revoked_at,
                last_signed_at: last.get(&device.id).copied(),
            })
        })
        .collect();
    told.sort_by_key(|one| (std::cmp::Reverse(one.registered_at), one.id));
    Ok(told)
}
