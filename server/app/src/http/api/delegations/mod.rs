//! Who may sign in whose stead.

use actix_web::{get, post};
use gagwright_casting::ProductionId;
use gagwright_clearance::{Delegation, RecordId};

use crate::{
    commands::delegations::{self, NewDelegation},
    entropy,
    http::{
        answer::{self, Answer, Items, Reply},
        caller::Caller,
        extract::At,
        openapi::{Refusals, WriteHeaders, WriteRefusals},
        state::{App, read},
        writing::{Json, Nothing, Write},
    },
    permissions::Permission,
};

/// List delegations
///
/// Needs `read_production`. Newest first, those that have ended or run out included.
#[utoipa::path(
    tag = "policy",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The delegations", body = Items<Delegation>), Refusals)
)]
#[get("/productions/{production}/delegations")]
pub async fn list_delegations(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let items = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        delegations::list(conn, &actor)
    })
    .await?;
    answer::items(items)
}

/// Let somebody sign in your stead
///
/// Needs `sign_off`, and the role itself: a delegate cannot hand on what was lent to them. The policy says
/// which roles may, and for how long at most.
#[utoipa::path(
    tag = "policy",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewDelegation,
    responses((status = 201, description = "The delegation", body = Delegation), WriteRefusals)
)]
#[post("/productions/{production}/delegations")]
pub async fn make_delegation(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewDelegation>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, *production, Permission::SignOff)?;
            let entropy = &mut entropy::system;
            let made = delegations::make(desk.conn, &actor, desk.now, new, entropy)?;
            Reply::recorded(&made)
        })
        .await
}

/// End a delegation
///
/// Needs `sign_off`; for whoever made it, and the coordinator. What was signed under it lapses, saying so.
#[utoipa::path(
    tag = "policy",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("delegation" = Uuid, Path, description = "The delegation"),
        WriteHeaders,
    ),
    responses((status = 200, description = "The delegation, ended", body = Delegation), WriteRefusals)
)]
#[post("/productions/{production}/delegations/{delegation}/end")]
pub async fn end_delegation(
    app: App,
    caller: Caller,
    address: At<(ProductionId, RecordId)>,
    write: Write<Nothing>,
) -> Answer {
    let (production, delegation) = address.into_inner();
    write
        .commit(&app, move |desk, Nothing| {
            let actor = caller.on_production(desk.conn, production, Permission::SignOff)?;
            let ended = delegations::end(desk.conn, &actor, desk.now, delegation)?;
            Reply::ok(&ended)
        })
        .await
}
