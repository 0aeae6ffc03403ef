//! The signed checkpoint.

use actix_web::{HttpResponse, get};
use gagwright_casting::ProductionId;

use crate::{
    http::{
        answer::Answer,
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    trail_file,
};

/// Read the signed checkpoint
///
/// Needs `read_trail`. A C2SP signed note over the trail's size and root, with the lines of the witnesses that
/// cosigned it; keep it, and a later trail can be proved to contain all of today's.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production")),
    responses(
        (status = 200, description = "The note", body = String, content_type = "text/plain"),
        Refusals,
    )
)]
#[get("/productions/{production}/trail/checkpoint")]
pub async fn read_checkpoint(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let note = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        trail_file::checkpoint(conn, actor.production)
    })
    .await?;
    Ok(HttpResponse::Ok()
        .content_type("text/plain; charset=utf-8")
        .body(note))
}
