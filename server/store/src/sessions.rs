//! Refresh tokens: each gives one next token. An answer may be lost on its way, so a used token is good
//! again as long as what followed it was never used; two copies that both live give themselves away, and
//! then the sign-in ends. The store keeps a token's hash and never the token.

use std::collections::BTreeMap;

use diesel::prelude::*;
use jiff::Timestamp;
use uuid::Uuid;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, time_of},
    guard,
    schema::sessions,
};

/// One refresh token that was given out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Session {
    /// Which.
    pub id: Uuid,
    /// The sign-in it descends from.
    pub family: Uuid,
    /// Whose.
    pub account: Uuid,
    /// SHA-256 of the token.
    pub token_hash: Vec<u8>,
    /// When it was given out.
    pub issued_at: Timestamp,
    /// Until when it is good.
    pub expires_at: Timestamp,
    /// When it was used, if it was.
    pub used_at: Option<Timestamp>,
    /// When it was revoked, if it was.
    pub revoked_at: Option<Timestamp>,
    /// What it was asked for with.
    pub agent: Agent,
}

/// The browser and the system a sign-in is used from, as far as they say so.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Agent {
    /// The browser's name.
    pub browser: Option<String>,
    /// The system's name.
    pub system: Option<String>,
}

/// One sign-in that still counts: a family of refresh tokens.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SignIn {
    /// Which.
    pub family: Uuid,
    /// When its first token still kept was given out.
    pub started_at: Timestamp,
    /// When its last token was given out.
    pub last_used_at: Timestamp,
    /// Until when it lasts if it is not used again.
    pub expires_at: Timestamp,
    /// What it was last used with.
    pub agent: Agent,
}

/// What became of a token that was presented.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Taken {
    /// Good, and used from now on: give out the next of its family. What followed an earlier use and was
    /// lost on its way is revoked.
    Fresh(Session),
    /// Two copies of the sign-in are about. Its whole family has been revoked here; let that stand by ending
    /// the write with `Ok`.
    Reused(Session),
    /// It has run out, or its whole family was revoked.
    Expired,
    /// No such token was ever given out.
    Unknown,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = sessions)]
struct Row {
    id: Id,
    family: Id,
    account: Id,
    token_hash: Vec<u8>,
    issued_at: Moment,
    expires_at: Moment,
    used_at: Option<Moment>,
    revoked_at: Option<Moment>,
    browser: Option<String>,
    system: Option<String>,
}

impl Row {
    fn session(self) -> Result<Session, StoreError> {
        Ok(Session {
            id: self.id.0,
            family: self.family.0,
            account: self.account.0,
            token_hash: self.token_hash,
            issued_at: self.issued_at.time()?,
            expires_at: self.expires_at.time()?,
            used_at: time_of(self.used_at)?,
            revoked_at: time_of(self.revoked_at)?,
            agent: Agent {
                browser: self.browser,
                system: self.system,
            },
        })
    }
}

/// Keeps a token that is being given out.
///
/// # Errors
/// [`StoreError::Conflict`] when the token or the id was given out before.
pub fn insert(conn: &mut Connection, session: &Session) -> Result<(), StoreError> {
    let row = Row {
        id: Id(session.id),
        family: Id(session.family),
        account: Id(session.account),
        token_hash: session.token_hash.clone(),
        issued_at: session.issued_at.into(),
        expires_at: session.expires_at.into(),
        used_at: session.used_at.map(Moment::from),
        revoked_at: session.revoked_at.map(Moment::from),
        browser: session.agent.browser.clone(),
        system: session.agent.system.clone(),
    };
    guard::insert(
        conn,
        "session",
        "the token or the id was given out before",
        |conn| {
            diesel::insert_into(sessions::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// Takes a presented token, by its hash. Must run in a write: it marks the token used.
///
/// A used token whose successors were never used is good again, for the answer that carried them may have
/// been lost; they are revoked, so one token of a family lives at a time. A revoked token of a family that
/// lives on, and a used token with a used successor, are in the hands of a second holder: the family is
/// revoked.
///
/// # Errors
/// When the database cannot be written.
pub fn take(conn: &mut Connection, hash: &[u8], now: Timestamp) -> Result<Taken, StoreError> {
    let row = sessions::table
        .filter(sessions::token_hash.eq(hash))
        .select(Row::as_select())
        .first(conn)
        .optional()?;
    let Some(row) = row else {
        return Ok(Taken::Unknown);
    };
    let mut session = row.session()?;
    let family = family(conn, session.family)?;
    if session.revoked_at.is_some() {
        let lives = family
            .iter()
            .any(|one| one.used_at.is_none() && one.revoked_at.is_none() && one.expires_at > now);
        return if lives {
            revoke_family(conn, session.family, now)?;
            Ok(Taken::Reused(session))
        } else {
            Ok(Taken::Expired)
        };
    }
    if let Some(used_at) = session.used_at {
        let mut successors = family
            .iter()
            .filter(|one| one.id != session.id && one.issued_at >= used_at);
        if successors.any(|one| one.used_at.is_some()) {
            revoke_family(conn, session.family, now)?;
            return Ok(Taken::Reused(session));
        }
        if session.expires_at <= now {
            return Ok(Taken::Expired);
        }
        diesel::update(
            sessions::table
                .filter(sessions::family.eq(Id(session.family)))
                .filter(sessions::id.ne(Id(session.id)))
                .filter(sessions::issued_at.ge(Moment::from(used_at)))
                .filter(sessions::revoked_at.is_null()),
        )
        .set(sessions::revoked_at.eq(Some(Moment::from(now))))
        .execute(conn)?;
        return Ok(Taken::Fresh(session));
    }
    if session.expires_at <= now {
        return Ok(Taken::Expired);
    }
    diesel::update(sessions::table.find(Id(session.id)))
        .set(sessions::used_at.eq(Some(Moment::from(now))))
        .execute(conn)?;
    session.used_at = Some(now);
    Ok(Taken::Fresh(session))
}

fn family(conn: &mut Connection, family: Uuid) -> Result<Vec<Session>, StoreError> {
    sessions::table
        .filter(sessions::family.eq(Id(family)))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::session)
        .collect()
}

/// The family a presented token belongs to, by its hash, whatever became of the token.
///
/// # Errors
/// When the database cannot be read.
pub fn family_of(conn: &mut Connection, hash: &[u8]) -> Result<Option<Uuid>, StoreError> {
    let family: Option<Id> = sessions::table
        .filter(sessions::token_hash.eq(hash))
        .select(sessions::family)
        .first(conn)
        .optional()?;
    Ok(family.map(|id| id.0))
}

/// Whose sign-in a family of tokens is.
///
/// # Errors
/// When the database cannot be read.
pub fn account_of(conn: &mut Connection, family: Uuid) -> Result<Option<Uuid>, StoreError> {
    let account: Option<Id> = sessions::table
        .filter(sessions::family.eq(Id(family)))
        .select(sessions::account)
        .first(conn)
        .optional()?;
    Ok(account.map(|id| id.0))
}

/// The sign-ins of an account that still count, the one used last first.
///
/// # Errors
/// When the database cannot be read.
pub fn sign_ins(
    conn: &mut Connection,
    account: Uuid,
    now: Timestamp,
) -> Result<Vec<SignIn>, StoreError> {
    let rows: Vec<Row> = sessions::table
        .filter(sessions::account.eq(Id(account)))
        .order((sessions::issued_at, sessions::id))
        .select(Row::as_select())
        .load(conn)?;
    let mut families: BTreeMap<Uuid, (SignIn, bool)> = BTreeMap::new();
    for row in rows {
        let token = row.session()?;
        let lives = token.revoked_at.is_none() && token.expires_at > now;
        let (sign_in, living) = families.entry(token.family).or_insert_with(|| {
            let first = SignIn {
                family: token.family,
                started_at: token.issued_at,
                last_used_at: token.issued_at,
                expires_at: token.expires_at,
                agent: Agent::default(),
            };
            (first, false)
        });
        sign_in.last_used_at = token.issued_at;
        sign_in.expires_at = token.expires_at;
        sign_in.agent = token.agent;
        *living |= lives;
    }
    let mut counted: Vec<SignIn> = families
        .into_values()
        .filter_map(|(sign_in, living)| living.then_some(sign_in))
        .collect();
    counted.sort_by_key(|one| (std::cmp::Reverse(one.last_used_at), one.family));
    Ok(counted)
}

/// Revokes every token of one sign-in; gives how many were still good.
///
/// # Errors
/// When the database cannot be written.
pub fn revoke_family(
    conn: &mut Connection,
    family: Uuid,
    now: Timestamp,
) -> Result<usize, StoreError> {
    Ok(diesel::update(
        sessions::table
            .filter(sessions::family.eq(Id(family)))
            .filter(sessions::revoked_at.is_null()),
    )
    .set(sessions::revoked_at.eq(Some(Moment::from(now))))
    .execute(conn)?)
}

/// Revokes every token of an account; gives how many were still good.
///
/// # Errors
/// When the database cannot be written.
pub fn revoke_account(
    conn: &mut Connection,
    account: Uuid,
    now: Timestamp,
) -> Result<usize, StoreError> {
    Ok(diesel::update(
        sessions::table
            .filter(sessions::account.eq(Id(account)))
            .filter(sessions::revoked_at.is_null()),
    )
    .set(sessions::revoked_at.eq(Some(Moment::from(now))))
    .execute(conn)?)
}

/// Forgets tokens that ran out before a moment; gives how many.
///
/// # Errors
/// When the database cannot be written.
pub fn purge_before(conn: &mut Connection, moment: Timestamp) -> Result<usize, StoreError> {
    Ok(
        diesel::delete(sessions::table.filter(sessions::expires_at.lt(Moment::from(moment))))
            .execute(conn)?,
    )
}
