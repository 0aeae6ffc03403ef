//! Accepting an invitation.

use actix_web::{http::StatusCode, middleware::from_fn, post};
use gagwright_store::{accounts, invitations};
use serde::Deserialize;
use utoipa::ToSchema;
use uuid::Uuid;

use crate::{
    clock,
    commands::{
        CommandError,
        members::{self, NewAccount},
    },
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
    passwords, tokens,
};

/// The link's token, and the account to make.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Accept {
    /// What stands after the `#` of the link.
    pub token: String,
    /// Name.
    pub name: String,
    /// A password of at least 12 characters; where the address has an account already, its password.
    pub password: String,
}

/// Accept an invitation
///
/// Makes the account, or adds the production to the one the address has, whose password is then asked
/// for. Works once per link; a repeat says to sign in.
#[utoipa::path(
    tag = "accounts",
    request_body = Accept,
    responses(
        (status = 200, description = "Signed in", body = Session),
        (status = 401, description = "The address has an account with another password"),
        OpenRefusals,
    ),
    security(())
)]
#[post("/invitations/accept", wrap = "from_fn(limits::sign_in)")]
pub async fn accept_invitation(
    app: App,
    SentWith(agent): SentWith,
    Plain(Json(accept)): Plain<Json<Accept>>,
) -> Answer {
    let token_hash = tokens::secret_hash(&accept.token);
    let account = read(&app, move |conn| {
        let unknown = || CommandError::NotFound {
            what: "invitation",
            id: "with this token".into(),
        };
        let invitation = invitations::by_token_hash(conn, &token_hash)?.ok_or_else(unknown)?;
        Ok(accounts::by_email(conn, &invitation.email)?)
    })
    .await?;
    let Accept { name, password, .. } = accept;
    let stored = account.map(|account| account.password_hash);
    let password_hash = off_thread(move || proven(&password, stored)).await?;
    let keys = app.tokens.clone();
    let now = clock::now();
    write(&app, move |conn| {
        let new = NewAccount {
            id: Uuid::now_v7(),
            name,
            password_hash,
        };
        let (account, _) = members::accept(conn, now, &token_hash, new)?;
        session::open(conn, &keys, account, None, agent, now)
    })
    .await
    .inspect(|_| app.feed.wrote())?
    .into_answer(&app, StatusCode::OK)
}

/// The hash to keep: of a fit new password, or the one the account has when its password was given. An
/// invitation proves a mailbox; it is no way around an account's password.
fn proven(password: &str, stored: Option<String>) -> Result<String, Problem> {
    match stored {
        Some(hash) if passwords::verify(password, Some(&hash)) => Ok(hash),
        Some(_) => Err(Problem::new(
            Code::NotSignedIn,
            "This address has an account already; give that account's password to add the production.",
        )),
        None => {
            passwords::fit(password).map_err(|unfit| {
                Problem::field("/password", unfit.to_string(), "choose a longer phrase")
            })?;
            passwords::hash(password).map_err(Problem::internal)
        }
    }
}
