//! Staying signed in.

use actix_web::{HttpRequest, http::StatusCode, middleware::from_fn, post};
use gagwright_store::{Connection, accounts, sessions};
use jiff::Timestamp;

use crate::{
    clock,
    commands::CommandError,
    http::{
        agent::SentWith,
        answer::Answer,
        limits,
        openapi::OpenRefusals,
        problem::{Code, Problem},
        session::{self, COOKIE, Opened, Session},
        state::{App, write},
    },
    tokens::{TokenKeys, secret_hash},
};

/// Get the next access token
///
/// Takes the cookie `gagwright_refresh` and sets the next one. If that answer was lost, the same cookie may
/// be sent again, as long as nothing was done with what followed. Two copies of a session that are both
/// used give themselves away: the whole family is revoked, and signing in is needed.
#[utoipa::path(
    tag = "accounts",
    responses(
        (status = 200, description = "Still signed in", body = Session),
        (status = 401, description = "The cookie is missing, used, expired or revoked"),
        OpenRefusals,
    ),
    security(("refresh_cookie" = []))
)]
#[post("/sessions/refresh", wrap = "from_fn(limits::sign_in)")]
pub async fn refresh_session(app: App, SentWith(agent): SentWith, request: HttpRequest) -> Answer {
    let Some(cookie) = request.cookie(COOKIE) else {
        return Err(over("No refresh cookie was sent; sign in."));
    };
    let hash = secret_hash(cookie.value());
    let keys = app.tokens.clone();
    let now = clock::now();
    match write(&app, move |conn| carry_on(conn, &keys, &hash, agent, now)).await? {
        Ok(opened) => opened.into_answer(&app, StatusCode::OK),
        Err(why) => Err(over(why)),
    }
}

/// The outer result is the store's, so that a revoked family stays revoked; the inner one is the answer.
fn carry_on(
    conn: &mut Connection,
    keys: &TokenKeys,
    hash: &[u8],
    agent: sessions::Agent,
    now: Timestamp,
) -> Result<Result<Opened, &'static str>, CommandError> {
    Ok(match sessions::take(conn, hash, now)? {
        sessions::Taken::Fresh(taken) => match accounts::by_id(conn, taken.account)? {
            Some(account) => Ok(session::open(
                conn,
                keys,
                account,
                Some(taken.family),
                agent,
                now,
            )?),
            None => Err("The account is gone."),
        },
        sessions::Taken::Reused(taken) => {
            tracing::warn!(account = %taken.account, "two copies of a session were used; its family is revoked");
            Err(
                "This session was used from two places, so it has been ended for both; sign in again.",
            )
        }
        sessions::Taken::Expired | sessions::Taken::Unknown => {
            Err("The session has ended; sign in again.")
        }
    })
}

fn over(why: &str) -> Problem {
    Problem::new(Code::NotSignedIn, why)
}
