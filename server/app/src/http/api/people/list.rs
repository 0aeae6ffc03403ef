//! Everyone on the roster.

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
    views::{self, PersonSummary},
};

/// List people
///
/// Needs `read_production`.
#[utoipa::path(
    tag = "people",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The roster", body = Items<PersonSummary>), Refusals)
)]
#[get("/productions/{production}/people")]
pub async fn list_people(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let people = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        views::people(conn, &actor, clock::now())
    })
    .await?;
    answer::items(people)
}
