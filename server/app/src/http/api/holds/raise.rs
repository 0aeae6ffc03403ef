//! Raising a hold from an account.

use actix_web::post;
use gagwright_casting::ProductionId;
use gagwright_clearance::Hold;

use crate::{
    commands::{Actor, CommandError, NewHold, holds},
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Desk, Json, Write},
    },
    permissions::Permission,
};

/// Raise a hold
///
/// Needs `raise_hold`, which every member has. Nobody has to say why.
#[utoipa::path(
    tag = "holds",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewHold,
    responses((status = 201, description = "Held", body = Hold), WriteRefusals)
)]
#[post("/productions/{production}/holds")]
pub async fn raise_hold(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewHold>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, *production, Permission::RaiseHold)?;
            raise(desk, &actor, new)
        })
        .await
}

/// Raises it, whoever brought the request.
pub(in crate::http::api) fn raise(
    desk: &mut Desk<'_>,
    actor: &Actor,
    new: NewHold,
) -> Result<Reply, CommandError> {
    let production = actor.production;
    Reply::recorded(&holds::raise(
        desk.conn,
        Some(actor),
        production,
        desk.now,
        new,
        &mut entropy::system,
    )?)
}
