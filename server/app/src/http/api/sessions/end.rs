//! Signing out.

use actix_web::{HttpRequest, HttpResponse, delete};
use gagwright_store::sessions::{self, Taken};

use crate::{
    clock,
    http::{
        answer::Answer,
        openapi::OpenRefusals,
        session::{self, COOKIE},
        state::{App, write},
    },
    tokens::secret_hash,
};

/// Sign out
///
/// Revokes the cookie's whole family and makes the browser forget it. Signing out twice is no failure.
#[utoipa::path(
    tag = "accounts",
    responses((status = 204, description = "Signed out"), OpenRefusals),
    security(("refresh_cookie" = []))
)]
#[delete("/sessions")]
pub async fn sign_out(app: App, request: HttpRequest) -> Answer {
    if let Some(cookie) = request.cookie(COOKIE) {
        let hash = secret_hash(cookie.value());
        let now = clock::now();
        write(&app, move |conn| {
            if let Taken::Fresh(session) = sessions::take(conn, &hash, now)? {
                sessions::revoke_family(conn, session.family, now)?;
            }
            Ok(())
        })
        .await?;
    }
    Ok(HttpResponse::NoContent()
        .cookie(session::forgotten(&app))
        .finish())
}
