//! Everything about one gag.

use actix_web::get;
use gagwright_clearance::GagId;

use crate::{
    clock,
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, GagPage},
};

/// Read a gag
///
/// Needs `read_production`. The plan, all that bears on it, and the judge's answer, in one request. The
/// ETag is the revision, for `If-Match` when revising.
#[utoipa::path(
    tag = "gags",
    params(("gag" = Uuid, Path, description = "The gag")),
    responses(
        (status = 200, description = "The gag", body = GagPage,
            headers(("ETag" = String, description = "The revision, in quotes"))),
        Refusals,
    )
)]
#[get("/gags/{gag}")]
pub async fn read_gag(app: App, caller: Caller, gag: At<GagId>) -> Answer {
    let page = read(&app, move |conn| {
        let actor = caller.on_gag(conn, *gag, Permission::ReadProduction)?;
        views::gag_page(conn, &actor, clock::now(), *gag)
    })
    .await?;
    answer::tagged(&page, page.plan.revision)
}
