//! The whole trail in one file.

use actix_web::get;
use gagwright_casting::ProductionId;

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    trail_file,
};

/// Export the trail
///
/// Needs `read_trail`. Personal parts stay here: the file carries commitments to them. `gagwright verify`
/// checks it with no server.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production")),
    responses(
        (status = 200, description = "The file", body = String, content_type = "application/jsonl"),
        Refusals,
    )
)]
#[get("/productions/{production}/trail/export")]
pub async fn export_trail(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let text = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        trail_file::export(conn, actor.production)
    })
    .await?;
    Ok(answer::file("application/jsonl", "trail.jsonl", text))
}
