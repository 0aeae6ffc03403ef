//! The feed of changes.

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
    views::{self, Changes},
};

/// Where to go on.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct From {
    /// How many leaves the caller has: the `size` of the last answer; 0 to begin with.
    #[serde(default)]
    after: u64,
}

/// Read what changed
///
/// Needs `read_production`. At most 500 leaves, oldest first; ask again until `size` is reached.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), From),
    responses((status = 200, description = "What changed", body = Changes), Refusals)
)]
#[get("/productions/{production}/changes")]
pub async fn read_changes(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    asked: Query<From>,
) -> Answer {
    let changes = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        views::feed(conn, &actor, asked.after, 500)
    })
    .await?;
    answer::ok(&changes)
}
