//! The whole trail in one file.

use actix_web::{get, web::Query};
use gagwright_casting::ProductionId;
use serde::Deserialize;
use utoipa::IntoParams;

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    trail_file::{self, Parts},
};

/// What goes into the file.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct What {
    /// Whether the personal parts go with it; they stay here unless asked for.
    #[serde(default)]
    parts: bool,
}

/// Export the trail
///
/// Needs `read_trail`. Personal parts stay here: the file carries commitments to them. With `parts=true`, which
/// needs `read_personal` and `read_medical` too, they go with it, and `gagwright audit` rebuilds any gag at any
/// moment from the file. `gagwright verify` checks it with no server.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), What),
    responses(
        (status = 200, description = "The file", body = String, content_type = "application/jsonl"),
        Refusals,
    )
)]
#[get("/productions/{production}/trail/export")]
pub async fn export_trail(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    asked: Query<What>,
) -> Answer {
    let text = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        let parts = if asked.parts {
            actor.require(Permission::ReadPersonal)?;
            actor.require(Permission::ReadMedical)?;
            Parts::Taken
        } else {
            Parts::Left
        };
        trail_file::export(conn, actor.production, parts)
    })
    .await?;
    Ok(answer::file("application/jsonl", "trail.jsonl", text))
}
