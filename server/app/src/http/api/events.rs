//! Live changes.

use actix_web::{HttpRequest, HttpResponse, get, http::header};
use gagwright_casting::ProductionId;
use gagwright_store::trail;

use crate::{
    http::{
        answer::Answer,
        caller::StreamCaller,
        extract::At,
        feed,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
};

/// Listen for changes
///
/// Needs `read_production`. Server-Sent Events: `event: change` with a `ChangeItem`, as the feed of changes
/// gives it, for each leaf from now on, or after `Last-Event-ID`. A hold says which gag and who raised it, so
/// that a phone can make itself heard before it has read anything more. The access token may stand in the
/// query here, and only here, because a browser's event stream sends no headers. The stream ends with the
/// token's life, when one connects again with the next one, and when the listener may not read the production
/// any more.
#[utoipa::path(
    tag = "trail",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("access_token" = Option<String>, Query, description = "In place of the Authorization header"),
        ("Last-Event-ID" = Option<u64>, Header, description = "Index of the last change heard"),
    ),
    responses(
        (status = 200, description = "The stream", body = String, content_type = "text/event-stream"),
        Refusals,
    )
)]
#[get("/productions/{production}/events")]
pub async fn listen(
    app: App,
    caller: StreamCaller,
    production: At<ProductionId>,
    request: HttpRequest,
) -> Answer {
    let production = production.into_inner();
    let StreamCaller { caller, until } = caller;
    let size = read(&app, move |conn| {
        caller.on_production(conn, production, Permission::ReadProduction)?;
        Ok(trail::size(conn, production)?)
    })
    .await?;
    let next = last_heard(&request).map_or(size, |index| index.saturating_add(1));
    Ok(HttpResponse::Ok()
        .content_type("text/event-stream")
        .insert_header((header::CONTENT_ENCODING, "identity"))
        .streaming(feed::listen(app, caller, production, next, until)))
}

fn last_heard(request: &HttpRequest) -> Option<u64> {
    request
        .headers()
        .get("last-event-id")?
        .to_str()
        .ok()?
        .trim()
        .parse()
        .ok()
}
