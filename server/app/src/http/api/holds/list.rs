//! Every hold of a production.

use actix_web::get;
use gagwright_casting::ProductionId;
use gagwright_clearance::Hold;
use gagwright_store::holds;

use crate::{
    http::{
        answer::{self, Answer, Items},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
};

/// List holds
///
/// Needs `read_production`. Released ones too, in the order they were raised.
#[utoipa::path(
    tag = "holds",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The holds", body = Items<Hold>), Refusals)
)]
#[get("/productions/{production}/holds")]
pub async fn list_holds(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let holds = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        Ok(holds::list(conn, actor.production)?)
    })
    .await?;
    answer::items(holds.into_iter().map(|stored| stored.hold).collect())
}
