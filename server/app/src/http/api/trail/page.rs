//! The trail, told in words.

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
    views::{self, TrailPage},
};

/// Which page.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct Page {
    /// Leaves below this index; left out: the newest.
    before: Option<u64>,
    /// How many, at most 500; 50 unless given.
    limit: Option<u32>,
}

/// Read the trail
///
/// Needs `read_trail`. Newest first, each leaf with its hash and told in a sentence.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), Page),
    responses((status = 200, description = "The page", body = TrailPage), Refusals)
)]
#[get("/productions/{production}/trail")]
pub async fn read_trail(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    asked: Query<Page>,
) -> Answer {
    let page = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        views::trail_page(conn, &actor, asked.before, asked.limit.unwrap_or(50))
    })
    .await?;
    answer::ok(&page)
}
