//! The sign-ins of one account.

use actix_web::{HttpRequest, get};
use gagwright_store::sessions;
use jiff::Timestamp;
use serde::Serialize;
use utoipa::ToSchema;
use uuid::Uuid;

use crate::{
    clock,
    http::{
        answer::{self, Answer, Items},
        caller::Caller,
        openapi::Refusals,
        session::COOKIE,
        state::{App, read},
    },
    tokens::secret_hash,
};

/// One sign-in that still counts.
#[derive(Serialize, ToSchema)]
#[schema(as = OwnSignIn)]
pub struct SignIn {
    /// Which.
    pub id: Uuid,
    /// Whether it is the one that asks.
    pub current: bool,
    /// When it began, as far back as is kept.
    #[schema(value_type = String, format = DateTime)]
    pub started_at: Timestamp,
    /// When it was last renewed; one that is in use is renewed every quarter of an hour.
    #[schema(value_type = String, format = DateTime)]
    pub last_used_at: Timestamp,
    /// Until when it lasts if it is not used again.
    #[schema(value_type = String, format = DateTime)]
    pub expires_at: Timestamp,
    /// The browser it was last used with; none where it did not say.
    #[schema(required = true)]
    pub browser: Option<String>,
    /// The system it was last used on; none where it did not say.
    #[schema(required = true)]
    pub system: Option<String>,
}

/// List one's own sign-ins
///
/// The one used last comes first. The refresh cookie, where it is sent along, tells which one is asking.
#[utoipa::path(
    tag = "accounts",
    responses((status = 200, description = "The sign-ins", body = Items<SignIn>), Refusals)
)]
#[get("/sessions")]
pub async fn list_sign_ins(app: App, caller: Caller, request: HttpRequest) -> Answer {
    let hash = request
        .cookie(COOKIE)
        .map(|cookie| secret_hash(cookie.value()));
    let items = read(&app, move |conn| {
        let asking = match hash {
            Some(hash) => sessions::family_of(conn, &hash)?,
            None => None,
        };
        let found = sessions::sign_ins(conn, caller.account, clock::now())?;
        let told = found.into_iter().map(|one| SignIn {
            id: one.family,
            current: Some(one.family) == asking,
            started_at: one.started_at,
            last_used_at: one.last_used_at,
            expires_at: one.expires_at,
            browser: one.agent.browser,
            system: one.agent.system,
        });
        Ok(told.collect())
    })
    .await?;
    answer::items(items)
}
