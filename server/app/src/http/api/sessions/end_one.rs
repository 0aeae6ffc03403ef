//! Ending sign-ins of one's own from afar.

use actix_web::{HttpRequest, HttpResponse, delete};
use gagwright_store::{Connection, sessions};
use uuid::Uuid;

use crate::{
    clock,
    commands::CommandError,
    http::{
        answer::Answer,
        caller::Caller,
        extract::At,
        openapi::Refusals,
        problem::{Code, Problem},
        session::COOKIE,
        state::{App, write},
    },
    tokens::secret_hash,
};

/// End one of one's own sign-ins
///
/// It is asked for its password again within a quarter of an hour, when its access token runs out. One that has
/// ended already is no failure.
#[utoipa::path(
    tag = "accounts",
    params(("session" = Uuid, Path, description = "The sign-in")),
    responses((status = 204, description = "Ended"), Refusals)
)]
#[delete("/sessions/{session}")]
pub async fn end_sign_in(app: App, caller: Caller, session: At<Uuid>) -> Answer {
    write(&app, move |conn| {
        let now = clock::now();
        if sessions::account_of(conn, *session)? != Some(caller.account) {
            return Err(CommandError::NotFound {
                what: "sign-in",
                id: session.to_string(),
            });
        }
        sessions::revoke_family(conn, *session, now)?;
        Ok(())
    })
    .await?;
    Ok(HttpResponse::NoContent().finish())
}

/// End all of one's other sign-ins
///
/// Takes the refresh cookie, which tells the one that stays.
#[utoipa::path(
    tag = "accounts",
    responses((status = 204, description = "Ended"), Refusals),
    security(("access_token" = [], "refresh_cookie" = []))
)]
#[delete("/sessions/others")]
pub async fn end_other_sign_ins(app: App, caller: Caller, request: HttpRequest) -> Answer {
    let Some(cookie) = request.cookie(COOKIE) else {
        return Err(which());
    };
    let hash = secret_hash(cookie.value());
    let kept = write(&app, move |conn| end_others(conn, caller, &hash)).await?;
    if kept {
        Ok(HttpResponse::NoContent().finish())
    } else {
        Err(which())
    }
}

/// False, with nothing ended, when the cookie is none of the caller's: then nobody can say which one stays.
fn end_others(conn: &mut Connection, caller: Caller, hash: &[u8]) -> Result<bool, CommandError> {
    let now = clock::now();
    let sign_ins = sessions::sign_ins(conn, caller.account, now)?;
    let asking = sessions::family_of(conn, hash)?;
    if !sign_ins.iter().any(|one| Some(one.family) == asking) {
        return Ok(false);
    }
    for one in sign_ins {
        if Some(one.family) != asking {
            sessions::revoke_family(conn, one.family, now)?;
        }
    }
    Ok(true)
}

fn which() -> Problem {
    Problem::new(
        Code::NotSignedIn,
        "The refresh cookie that tells which sign-in stays was not sent, or has ended; sign in again.",
    )
}
