//! Changing one's own password.

use actix_web::{HttpResponse, put};
use gagwright_store::{accounts, sessions};
use serde::Deserialize;
use utoipa::ToSchema;

use crate::{
    clock,
    http::{
        agent::SentWith,
        answer::Answer,
        caller::Caller,
        openapi::Refusals,
        problem::{Code, Problem},
        session,
        state::{App, off_thread, read, write},
        writing::{Json, Plain},
    },
    passwords,
};

/// The password that is, and the one that shall be.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ChangePassword {
    /// The password signed in with until now.
    pub current: String,
    /// A password of at least 12 characters.
    pub new: String,
}

/// Change one's own password
///
/// Ends every session of the account and starts a new one in the caller's browser, whose refresh cookie comes
/// with the answer.
#[utoipa::path(
    tag = "accounts",
    request_body = ChangePassword,
    responses(
        (status = 204, description = "Changed"),
        (status = 429, description = "Too many tries"),
        Refusals,
    )
)]
#[put("/me/password")]
pub async fn change_password(
    app: App,
    caller: Caller,
    SentWith(agent): SentWith,
    Plain(Json(change)): Plain<Json<ChangePassword>>,
) -> Answer {
    let account = read(&app, move |conn| Ok(accounts::by_id(conn, caller.account)?))
        .await?
        .ok_or_else(|| Problem::new(Code::NotSignedIn, "The account is gone."))?;
    // Counted as signing in is: a borrowed phone must be no way to guess the password.
    app.limits.sign_in_to(&account.email)?;
    let stored = account.password_hash.clone();
    let password_hash = off_thread(move || hashed(&change, &stored)).await?;
    let keys = app.tokens.clone();
    let now = clock::now();
    let opened = write(&app, move |conn| {
        accounts::set_password(conn, account.id, &password_hash)?;
        sessions::revoke_account(conn, account.id, now)?;
        session::open(conn, &keys, account, None, agent, now)
    })
    .await?;
    Ok(HttpResponse::NoContent()
        .cookie(opened.into_cookie(&app))
        .finish())
}

fn hashed(change: &ChangePassword, stored: &str) -> Result<String, Problem> {
    if !passwords::verify(&change.current, Some(stored)) {
        return Err(Problem::field(
            "/current",
            "is not the password of this account",
            "give the one you sign in with",
        ));
    }
    passwords::fit(&change.new)
        .map_err(|unfit| Problem::field("/new", unfit.to_string(), "choose a longer phrase"))?;
    passwords::hash(&change.new).map_err(Problem::internal)
}
