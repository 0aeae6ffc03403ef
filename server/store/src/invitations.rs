//! Invitations sent by mail. The store keeps a token's hash and never the token.

use diesel::prelude::*;
use gagwright_casting::{PersonId, ProductionId};
use jiff::Timestamp;
use uuid::Uuid;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, time_of},
    guard,
    schema::invitations,
};

/// An invitation.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Invitation {
    /// Which.
    pub id: Uuid,
    /// The production.
    pub production: ProductionId,
    /// Whom on its roster.
    pub person: PersonId,
    /// Where it was sent.
    pub email: String,
    /// SHA-256 of the token.
    pub token_hash: Vec<u8>,
    /// Until when it is good.
    pub expires_at: Timestamp,
    /// When it was accepted, if it was.
    pub accepted_at: Option<Timestamp>,
    /// When it was withdrawn, if it was.
    pub withdrawn_at: Option<Timestamp>,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = invitations)]
struct Row {
    id: Id,
    production: Id,
    person: Id,
    email: String,
    token_hash: Vec<u8>,
    expires_at: Moment,
    accepted_at: Option<Moment>,
    withdrawn_at: Option<Moment>,
}

impl Row {
    fn invitation(self) -> Result<Invitation, StoreError> {
        Ok(Invitation {
            id: self.id.0,
            production: ProductionId(self.production.0),
            person: PersonId(self.person.0),
            email: self.email,
            token_hash: self.token_hash,
            expires_at: self.expires_at.time()?,
            accepted_at: time_of(self.accepted_at)?,
            withdrawn_at: time_of(self.withdrawn_at)?,
        })
    }
}

/// Keeps an invitation that is being sent.
///
/// # Errors
/// [`StoreError::Conflict`] when the id or the token was used before.
pub fn insert(conn: &mut Connection, invitation: &Invitation) -> Result<(), StoreError> {
    let row = Row {
        id: Id(invitation.id),
        production: Id(invitation.production.0),
        person: Id(invitation.person.0),
        email: invitation.email.clone(),
        token_hash: invitation.token_hash.clone(),
        expires_at: invitation.expires_at.into(),
        accepted_at: invitation.accepted_at.map(Moment::from),
        withdrawn_at: invitation.withdrawn_at.map(Moment::from),
    };
    guard::insert(
        conn,
        "invitation",
        "the id or the token was used before",
        |conn| {
            diesel::insert_into(invitations::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// The invitation a token belongs to, accepted or not, run out or not.
///
/// # Errors
/// When the database cannot be read.
pub fn by_token_hash(conn: &mut Connection, hash: &[u8]) -> Result<Option<Invitation>, StoreError> {
    invitations::table
        .filter(invitations::token_hash.eq(hash))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::invitation)
        .transpose()
}

/// Marks an invitation accepted. It can be accepted once.
///
/// # Errors
/// [`StoreError::Conflict`] when it was accepted before or was never made.
pub fn accept(conn: &mut Connection, id: Uuid, at: Timestamp) -> Result<(), StoreError> {
    let changed = diesel::update(
        invitations::table
            .filter(invitations::id.eq(Id(id)))
            .filter(invitations::accepted_at.is_null()),
    )
    .set(invitations::accepted_at.eq(Some(Moment::from(at))))
    .execute(conn)?;
    if changed == 0 {
        return Err(StoreError::Conflict {
            what: "invitation",
            detail: "it was accepted before, or was never made".to_owned(),
        });
    }
    Ok(())
}

/// One invitation of a production, accepted or not, run out or not.
///
/// # Errors
/// When the database cannot be read.
pub fn get(
    conn: &mut Connection,
    production: ProductionId,
    id: Uuid,
) -> Result<Option<Invitation>, StoreError> {
    invitations::table
        .find(Id(id))
        .filter(invitations::production.eq(Id(production.0)))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::invitation)
        .transpose()
}

/// Marks an invitation withdrawn. One withdrawn before keeps the earlier moment.
///
/// # Errors
/// When the database cannot be written.
pub fn withdraw(conn: &mut Connection, id: Uuid, at: Timestamp) -> Result<(), StoreError> {
    diesel::update(
        invitations::table
            .filter(invitations::id.eq(Id(id)))
            .filter(invitations::withdrawn_at.is_null()),
    )
    .set(invitations::withdrawn_at.eq(Some(Moment::from(at))))
    .execute(conn)?;
    Ok(())
}

/// Every invitation of a production, the one that runs out last first.
///
/// # Errors
/// When the database cannot be read.
pub fn list(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<Invitation>, StoreError> {
    invitations::table
        .filter(invitations::production.eq(Id(production.0)))
        .order((invitations::expires_at.desc(), invitations::id))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::invitation)
        .collect()
}
