//! Hats and invitations: who may do what, and how somebody on the roster comes by an account.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::PersonId;
use gagwright_clearance::Role;
use gagwright_store::{Connection, accounts::Account, invitations::Invitation, members::MemberRow};
use jiff::Timestamp;
use serde_json::json;
use uuid::Uuid;

use super::{
    Actor, CommandError, Entropy,
    problems::{Problems, SHORT},
    record,
};
use crate::permissions::{Permission, of_roles};

/// Refuses a hat that somebody gives to themselves: a second person has to trust them with it. Setting a
/// server up gives its first hats without coming here.
fn for_somebody_else(
    actor: &Actor,
    person: PersonId,
    held: &BTreeSet<Role>,
    wanted: &BTreeSet<Role>,
) -> Result<(), CommandError> {
    let Some(added) = wanted
        .difference(held)
        .next()
        .filter(|_| person == actor.person)
    else {
        return Ok(());
    };
    Err(CommandError::Forbidden {
        permission: Permission::ManageMembers,
        why: Some(format!(
            "nobody gives themselves the role {}; ask somebody else with the role coordinator or \
             production",
            added.name()
        )),
    })
}

/// Gives a person exactly these hats.
///
/// # Errors
/// Without [`Permission::ManageMembers`], when nobody of that id is on the roster, when the actor would
/// give themselves a hat, or when nobody would be left who could give hats.
pub fn set_roles(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    person: PersonId,
    roles: BTreeSet<Role>,
) -> Result<MemberRow, CommandError> {
    actor.require(Permission::ManageMembers)?;
    record::person(conn, actor.production, person)?;
    let member = gagwright_store::members::get(conn, actor.production, person)?;
    let account = member.as_ref().and_then(|member| member.account);
    let held = member.map(|member| member.roles).unwrap_or_default();
    for_somebody_else(actor, person, &held, &roles)?;
    let manages = |roles: &BTreeSet<Role>| of_roles(roles).contains(&Permission::ManageMembers);
    let able: BTreeSet<PersonId> = gagwright_store::members::list(conn, actor.production)?
        .into_iter()
        .filter(|one| one.account.is_some() && manages(&one.roles))
        .map(|one| one.person)
        .collect();
    // Taking the last such hat away would lock the production for good.
    if able.len() == 1 && able.contains(&person) && !manages(&roles) {
        return Err(CommandError::Conflict {
            what: "roles",
            detail: "nobody with an account would be left who may give roles; give someone else \
                     the role coordinator or production first"
                .into(),
        });
    }
    let row = MemberRow {
        production: actor.production,
        person,
        account,
        roles,
    };
    record::Leaf::new("member.changed", now, Some(actor))
        .fact("person", json!(person))
        .fact("roles", json!(row.roles))
        .append(conn)?;
    gagwright_store::members::upsert(conn, &row)?;
    Ok(row)
}

/// Who is invited. The token itself is made at the edge and goes out by mail; only its hash is kept.
#[derive(Clone, Debug)]
pub struct NewInvitation {
    /// Minted by the caller.
    pub id: Uuid,
    /// Somebody on the roster, with an address.
    pub person: PersonId,
    /// The hats they are to have.
    pub roles: BTreeSet<Role>,
    /// SHA-256 of the token in the mail.
    pub token_hash: Vec<u8>,
    /// Until when it can be accepted.
    pub expires_at: Timestamp,
}

/// Invites somebody on the roster to an account. Their earlier invitations are void from now on.
///
/// # Errors
/// Without [`Permission::ManageMembers`], when the person has no address, has an account already, or is the
/// actor, who would give themselves a hat.
pub fn invite(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: NewInvitation,
    entropy: Entropy<'_>,
) -> Result<Invitation, CommandError> {
    actor.require(Permission::ManageMembers)?;
    let person = record::person(conn, actor.production, new.person)?.person;
    let Some(email) = person
        .email
        .clone()
        .filter(|email| !email.trim().is_empty())
    else {
        return Err(CommandError::invalid(
            "/person",
            format!("{} has no address on the roster", person.name),
            "write their email on the roster, then invite them",
        ));
    };
    let member = gagwright_store::members::get(conn, actor.production, new.person)?;
    if member
        .as_ref()
        .is_some_and(|member| member.account.is_some())
    {
        return Err(CommandError::Conflict {
            what: "invitation",
            detail: format!(
                "{} has an account already; change their roles instead",
                person.name
            ),
        });
    }
    let held = member.map(|member| member.roles).unwrap_or_default();
    for_somebody_else(actor, new.person, &held, &new.roles)?;
    let invitation = Invitation {
        id: new.id,
        production: actor.production,
        person: new.person,
        email: email.clone(),
        token_hash: new.token_hash,
        expires_at: new.expires_at,
        accepted_at: None,
        withdrawn_at: None,
    };
    record::Leaf::new("invitation.made", now, Some(actor))
        .fact("invitation", json!(invitation.id))
        .fact("person", json!(invitation.person))
        .fact("roles", json!(new.roles))
        .fact("expires_at", json!(invitation.expires_at))
        .personal(json!({ "email": email }), entropy)
        .append(conn)?;
    gagwright_store::members::upsert(
        conn,
        &MemberRow {
            production: actor.production,
            person: new.person,
            account: None,
            roles: new.roles,
        },
    )?;
    gagwright_store::invitations::insert(conn, &invitation)?;
    Ok(invitation)
}

/// The invitations that can still be accepted: of several to one person only the newest is good.
///
/// # Errors
/// When the store fails.
pub fn open_invitations(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
) -> Result<Vec<Invitation>, CommandError> {
    actor.require(Permission::ManageMembers)?;
    let mut newest: BTreeMap<PersonId, Invitation> = BTreeMap::new();
    for one in gagwright_store::invitations::list(conn, actor.production)? {
        if one.accepted_at.is_none() {
            // The list has the one that runs out last first.
            newest.entry(one.person).or_insert(one);
        }
    }
    let mut open = Vec::new();
    for one in newest.into_values() {
        let member = gagwright_store::members::get(conn, actor.production, one.person)?;
        let seated = member.is_some_and(|member| member.account.is_some());
        if one.withdrawn_at.is_none() && one.expires_at > now && !seated {
            open.push(one);
        }
    }
    Ok(open)
}

/// Withdraws an invitation: its letter is void from now on. The hats it promised stay with the person on the
/// roster, who has no account to use them with.
///
/// # Errors
/// Without [`Permission::ManageMembers`], when the production has no such invitation, or when it can no longer
/// be accepted anyway.
pub fn withdraw_invitation(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    id: Uuid,
) -> Result<(), CommandError> {
    let open = open_invitations(conn, actor, now)?;
    let Some(invitation) = open.iter().find(|one| one.id == id) else {
        return Err(
            match gagwright_store::invitations::get(conn, actor.production, id)? {
                Some(_) => CommandError::Conflict {
                    what: "invitation",
                    detail: "it was accepted, withdrawn, followed by a newer one or has run out; nothing \
                             is left to withdraw"
                        .into(),
                },
                None => CommandError::NotFound {
                    what: "invitation",
                    id: id.to_string(),
                },
            },
        );
    };
    record::Leaf::new("invitation.withdrawn", now, Some(actor))
        .fact("invitation", json!(invitation.id))
        .fact("person", json!(invitation.person))
        .append(conn)?;
    gagwright_store::invitations::withdraw(conn, id, now)?;
    Ok(())
}

/// The account that accepts an invitation.
#[derive(Clone, Debug)]
pub struct NewAccount {
    /// Minted by the caller; not used when the address has an account already.
    pub id: Uuid,
    /// Name.
    pub name: String,
    /// argon2id, made at the edge.
    pub password_hash: String,
}

/// Accepts an invitation: makes the account, or links the one that the address already has, and ties
/// it to the person on the roster.
///
/// An account that exists keeps its password: holding an invitation proves the mailbox, and is not a
/// way to take over an account.
///
/// # Errors
/// When the token is unknown, was used before, has expired or was followed by a newer one; when the person has
/// an account by now; or when the roster has another address for them than the letter went to.
pub fn accept(
    conn: &mut Connection,
    now: Timestamp,
    token_hash: &[u8],
    new: NewAccount,
) -> Result<(Account, MemberRow), CommandError> {
    let mut problems = Problems::default();
    problems.required("/name", &new.name, SHORT);
    problems.finish()?;
    let invitation = gagwright_store::invitations::by_token_hash(conn, token_hash)?.ok_or(
        CommandError::NotFound {
            what: "invitation",
            id: "with this token".into(),
        },
    )?;
    if invitation.accepted_at.is_some() {
        return Err(CommandError::Conflict {
            what: "invitation",
            detail: "it was accepted already; sign in instead".into(),
        });
    }
    if invitation.withdrawn_at.is_some() {
        return Err(CommandError::Conflict {
            what: "invitation",
            detail: "it was withdrawn; ask for a new one".into(),
        });
    }
    if invitation.expires_at <= now {
        return Err(CommandError::Conflict {
            what: "invitation",
            detail: format!("it ran out at {}; ask for a new one", invitation.expires_at),
        });
    }
    let member = gagwright_store::members::get(conn, invitation.production, invitation.person)?
        .ok_or_else(|| CommandError::NotFound {
            what: "member",
            id: invitation.person.to_string(),
        })?;
    still_meant(conn, &invitation, &member)?;
    let account = match gagwright_store::accounts::by_email(conn, &invitation.email)? {
        Some(account) => account,
        None => {
            let account = Account {
                id: new.id,
                email: invitation.email.clone(),
                name: new.name,
                password_hash: new.password_hash,
                created_at: now,
            };
            gagwright_store::accounts::insert(conn, &account)?;
            account
        }
    };
    let member = MemberRow {
        account: Some(account.id),
        ..member
    };
    let actor = Actor {
        account: Some(account.id),
        production: invitation.production,
        person: invitation.person,
        roles: member.roles.clone(),
        carried_by: None,
    };
    record::Leaf::new("invitation.accepted", now, Some(&actor))
        .fact("invitation", json!(invitation.id))
        .fact("person", json!(invitation.person))
        .append(conn)?;
    gagwright_store::members::upsert(conn, &member)?;
    gagwright_store::invitations::accept(conn, invitation.id, now)?;
    Ok((account, member))
}

/// A letter may lie about for days, and what it was sent for may have passed: the seat may be taken, the
/// roster corrected, or a newer letter sent because this one went astray.
fn still_meant(
    conn: &mut Connection,
    invitation: &Invitation,
    member: &MemberRow,
) -> Result<(), CommandError> {
    let refused = |detail: &str| CommandError::Conflict {
        what: "invitation",
        detail: detail.into(),
    };
    if member.account.is_some() {
        return Err(refused(
            "this person has an account on the production already; sign in instead",
        ));
    }
    let person = record::person(conn, invitation.production, invitation.person)?.person;
    let same = |one: &str| one.trim().eq_ignore_ascii_case(invitation.email.trim());
    if !person.email.as_deref().is_some_and(same) {
        return Err(refused(
            "the roster has another address for this person since the letter was sent; ask for a new \
             invitation",
        ));
    }
    let newest = gagwright_store::invitations::list(conn, invitation.production)?
        .into_iter()
        .filter(|one| one.person == invitation.person && one.accepted_at.is_none())
        .max_by_key(|one| (one.expires_at, one.id));
    if newest.is_some_and(|newest| newest.id != invitation.id) {
        return Err(refused(
            "a newer invitation was sent, which made this one void; use the link in the newest letter",
        ));
    }
    Ok(())
}
