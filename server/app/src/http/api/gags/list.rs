//! All gags of a production.

use actix_web::get;
use gagwright_casting::ProductionId;

use crate::{
    clock,
    http::{
        answer::{self, Answer, Items},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, GagSummary},
};

/// List gags
///
/// Needs `read_production`. Each with its answer in a word and the first thing that stops it.
#[utoipa::path(
    tag = "gags",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The gags", body = Items<GagSummary>), Refusals)
)]
#[get("/productions/{production}/gags")]
pub async fn list_gags(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let gags = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        views::gag_list(conn, &actor, clock::now())
    })
    .await?;
    answer::items(gags)
}
