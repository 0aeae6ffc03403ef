//! A session: an access token for a quarter of an hour and, in a cookie that scripts cannot read, a
//! refresh token that is good once. Knows how a session starts and goes on; not how passwords are
//! checked.

use std::collections::BTreeSet;

use actix_web::{
    HttpResponse,
    cookie::{Cookie, SameSite, time::Duration},
    http::StatusCode,
};
use gagwright_casting::ProductionId;
use gagwright_clearance::Role;
use gagwright_store::{
    Connection, StoreError, accounts::Account, members, people, productions, sessions,
};
use jiff::Timestamp;
use serde::Serialize;
use utoipa::ToSchema;
use uuid::Uuid;

use super::{
    answer::Answer,
    problem::Problem,
    state::{App, Shared},
};
use crate::{commands::CommandError, tokens, views::PersonRef};

/// The refresh token's cookie.
pub const COOKIE: &str = "gagwright_refresh";
const COOKIE_PATH: &str = "/api/v1/sessions";

/// What signing in answers.
#[derive(Serialize, ToSchema)]
pub struct Session {
    /// For `Authorization: Bearer`.
    pub access_token: String,
    /// When the access token stops being good.
    #[schema(value_type = String, format = DateTime)]
    pub expires_at: Timestamp,
    /// Who signed in.
    pub account: AccountRef,
    /// The productions they are on, and as whom.
    pub memberships: Vec<Membership>,
}

/// An account by its names.
#[derive(Serialize, ToSchema)]
pub struct AccountRef {
    /// Which.
    pub id: Uuid,
    /// Name.
    pub name: String,
    /// Address.
    pub email: String,
}

/// A place on a production.
#[derive(Serialize, ToSchema)]
pub struct Membership {
    /// The production.
    pub production: ProductionRef,
    /// The person on its roster.
    pub person: PersonRef,
    /// Their hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
}

/// A production by its name.
#[derive(Serialize, ToSchema)]
pub struct ProductionRef {
    /// Which.
    pub id: ProductionId,
    /// Its name.
    pub name: String,
    /// Whether it is the demo, with invented people and public passwords.
    pub demo: bool,
    /// IANA time zone of its call times.
    pub time_zone: String,
}

/// A session just started or carried on, with the secret for its cookie.
pub struct Opened {
    session: Session,
    refresh: String,
}

/// Starts a session for an account, or carries on a family of refresh tokens. The access token is
/// signed by the caller's keys and nothing of it is stored.
///
/// # Errors
/// When the store fails.
pub fn open(
    conn: &mut Connection,
    keys: &tokens::TokenKeys,
    account: Account,
    family: Option<Uuid>,
    agent: sessions::Agent,
    now: Timestamp,
) -> Result<Opened, CommandError> {
    let refresh = tokens::secret();
    sessions::insert(
        conn,
        &sessions::Session {
            id: Uuid::now_v7(),
            family: family.unwrap_or_else(Uuid::now_v7),
            account: account.id,
            token_hash: tokens::secret_hash(&refresh).to_vec(),
            issued_at: now,
            expires_at: now + tokens::REFRESH_LIFE,
            used_at: None,
            revoked_at: None,
            agent,
        },
    )?;
    let memberships = memberships(conn, account.id)?;
    let (access_token, expires_at) = keys
        .issue(account.id, now)
        .map_err(|error| StoreError::Internal(format!("no access token could be made: {error}")))?;
    let account = AccountRef {
        id: account.id,
        name: account.name,
        email: account.email,
    };
    Ok(Opened {
        session: Session {
            access_token,
            expires_at,
            account,
            memberships,
        },
        refresh,
    })
}

fn memberships(conn: &mut Connection, account: Uuid) -> Result<Vec<Membership>, CommandError> {
    let mut told = Vec::new();
    for member in members::memberships(conn, account)? {
        let production = productions::get(conn, member.production)?;
        let person = people::get(conn, member.production, member.person)?;
        let (Some(production), Some(person)) = (production, person) else {
            continue;
        };
        told.push(Membership {
            production: ProductionRef {
                id: production.id,
                name: production.name,
                demo: production.demo,
                time_zone: production.time_zone,
            },
            person: PersonRef {
                id: person.person.id,
                name: person.person.name,
                code: person.person.code,
            },
            roles: member.roles,
        });
    }
    Ok(told)
}

impl Opened {
    /// The cookie alone, for an answer that says nothing else.
    pub fn into_cookie(self, app: &Shared) -> Cookie<'static> {
        cookie(app, self.refresh, refresh_life())
    }

    /// The answer, with the cookie.
    ///
    /// # Errors
    /// When it can't be written as JSON, which is a defect.
    pub fn into_answer(self, app: &App, status: StatusCode) -> Answer {
        let body = serde_json::to_vec(&self.session).map_err(Problem::internal)?;
        Ok(HttpResponse::build(status)
            .cookie(cookie(app, self.refresh, refresh_life()))
            .content_type("application/json")
            .body(body))
    }
}

fn refresh_life() -> Duration {
    Duration::seconds(tokens::REFRESH_LIFE.as_secs())
}

/// A cookie that makes the browser forget the refresh token.
pub fn forgotten(app: &Shared) -> Cookie<'static> {
    cookie(app, String::new(), Duration::ZERO)
}

fn cookie(app: &Shared, value: String, life: Duration) -> Cookie<'static> {
    Cookie::build(COOKIE, value)
        .path(COOKIE_PATH)
        .http_only(true)
        .secure(app.secure)
        .same_site(SameSite::Strict)
        .max_age(life)
        .finish()
}
