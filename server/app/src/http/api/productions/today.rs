//! What one person has to know today.

use actix_web::get;
use gagwright_casting::ProductionId;

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
    views::{self, Today},
};

/// Read today
///
/// Needs `read_production`. What the caller is asked to sign, what is held, what comes next and which
/// certificates lapse too early.
#[utoipa::path(
    tag = "productions",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "Today", body = Today), Refusals)
)]
#[get("/productions/{production}/today")]
pub async fn read_today(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let today = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        views::today(conn, &actor, clock::now())
    })
    .await?;
    answer::ok(&today)
}
