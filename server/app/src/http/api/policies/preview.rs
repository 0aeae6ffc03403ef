//! What another policy would change, before it does.

use actix_web::post;
use gagwright_casting::ProductionId;
use gagwright_clearance::Policy;

use crate::{
    clock,
    commands::policies,
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
        writing::{Json, Plain},
    },
    permissions::Permission,
    views::PolicyPreview,
};

/// Preview a policy
///
/// Needs `read_production`. Stores nothing: every problem of the policy sent, and what it would change now on
/// every gag.
#[utoipa::path(
    tag = "policy",
    params(("production" = Uuid, Path, description = "The production")),
    request_body = Policy,
    responses((status = 200, description = "What it would change", body = PolicyPreview), Refusals)
)]
#[post("/productions/{production}/policy-preview")]
pub async fn preview_policy(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    Plain(Json(policy)): Plain<Json<Policy>>,
) -> Answer {
    let found = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        policies::preview(conn, &actor, clock::now(), &policy)
    })
    .await?;
    answer::ok(&PolicyPreview::from(found))
}
