//! One revision as it was written.

use actix_web::get;
use gagwright_clearance::{GagId, Plan};
use gagwright_store::plans;

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
};

/// Read one revision of a plan
///
/// Needs `read_production`.
#[utoipa::path(
    tag = "gags",
    params(
        ("gag" = Uuid, Path, description = "The gag"),
        ("revision" = u32, Path, description = "The revision, from 1"),
    ),
    responses((status = 200, description = "The plan", body = Plan), Refusals)
)]
#[get("/gags/{gag}/plans/{revision}")]
pub async fn read_plan(app: App, caller: Caller, address: At<(GagId, u32)>) -> Answer {
    let (gag, revision) = address.into_inner();
    let plan = read(&app, move |conn| {
        caller.on_gag(conn, gag, Permission::ReadProduction)?;
        Ok(plans::get(conn, gag, revision)?)
    })
    .await?;
    answer::ok(&plan)
}
