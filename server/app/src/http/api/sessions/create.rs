//! Signing in.

use actix_web::{http::StatusCode, middleware::from_fn, post};
use gagwright_store::accounts;
use serde::Deserialize;
use utoipa::ToSchema;

use crate::{
    clock,
    http::{
        agent::SentWith,
        answer::Answer,
        limits,
        openapi::OpenRefusals,
        problem::{Code, Problem},
        session::{self, Session},
        state::{App, off_thread, read, write},
        writing::{Json, Plain},
    },
    passwords,
};

/// Who signs in.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SignIn {
    /// Address.
    pub email: String,
    /// Password.
    pub password: String,
}

/// Sign in
///
/// Answers an access token for 15 minutes and sets the cookie `gagwright_refresh`, which is good once.
#[utoipa::path(
    tag = "accounts",
    request_body = SignIn,
    responses(
        (status = 200, description = "Signed in", body = Session),
        (status = 401, description = "Wrong address or password"),
        OpenRefusals,
    ),
    security(())
)]
#[post("/sessions", wrap = "from_fn(limits::sign_in)")]
pub async fn sign_in(
    app: App,
    SentWith(agent): SentWith,
    Plain(Json(who)): Plain<Json<SignIn>>,
) -> Answer {
    app.limits.sign_in_to(&who.email)?;
    let email = who.email.trim().to_owned();
    let account = read(&app, move |conn| Ok(accounts::by_email(conn, &email)?)).await?;
    let checked = off_thread(move || {
        let stored = account
            .as_ref()
            .map(|account| account.password_hash.as_str());
        let good = passwords::verify(&who.password, stored);
        account.filter(|_| good).ok_or_else(wrong)
    })
    .await?;
    let keys = app.tokens.clone();
    let now = clock::now();
    write(&app, move |conn| {
        session::open(conn, &keys, checked, None, agent, now)
    })
    .await?
    .into_answer(&app, StatusCode::OK)
}

/// The same words whether the address or the password is wrong.
fn wrong() -> Problem {
    Problem::new(
        Code::NotSignedIn,
        "The address and the password do not belong together; check both and try again.",
    )
}
