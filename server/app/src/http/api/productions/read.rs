//! One production.

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
    views::{self, ProductionPage},
};

/// Read a production
///
/// Needs `read_production`. Its rules, its members and what the caller may do on it.
#[utoipa::path(
    tag = "productions",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The production", body = ProductionPage), Refusals)
)]
#[get("/productions/{production}")]
pub async fn read_production(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let page = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        views::production_page(conn, &actor)
    })
    .await?;
    answer::ok(&page)
}
