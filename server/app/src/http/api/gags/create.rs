//! A new gag.

use actix_web::post;
use gagwright_casting::ProductionId;

use crate::{
    commands::{NewGag, gags},
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Json, Write},
    },
    permissions::Permission,
    views::{self, GagPage},
};

/// Create a gag
///
/// Needs `edit_plans`. Facets that are left out start from the policy's defaults for the technique.
#[utoipa::path(
    tag = "gags",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewGag,
    responses((status = 201, description = "The new gag", body = GagPage), WriteRefusals)
)]
#[post("/productions/{production}/gags")]
pub async fn create_gag(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewGag>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, *production, Permission::EditPlans)?;
            let plan = gags::create(desk.conn, &actor, desk.now, new, &mut entropy::system)?;
            let page = views::gag_page(desk.conn, &actor, desk.now, plan.gag)?;
            let reply = Reply::created(format!("/api/v1/gags/{}", plan.gag), &page)?;
            Ok(reply.tagged(plan.revision))
        })
        .await
}
