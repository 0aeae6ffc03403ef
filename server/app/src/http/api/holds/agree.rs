//! Agreeing to release a hold.

use actix_web::post;
use gagwright_clearance::{Hold, HoldId, Role};
use serde::Deserialize;
use utoipa::ToSchema;

use crate::{
    commands::{Actor, CommandError, holds},
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

/// Under which hat, and what was the cause.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Agree {
    /// The hat.
    pub role: Role,
    /// The cause and what was done about it.
    pub cause: String,
}

/// Agree to release a hold
///
/// Needs `release_hold`, and the hat itself. Released once the coordinator and the hazard's owner agree.
#[utoipa::path(
    tag = "holds",
    params(("hold" = Uuid, Path, description = "The hold"), WriteHeaders),
    request_body = Agree,
    responses((status = 201, description = "The hold now", body = Hold), WriteRefusals)
)]
#[post("/holds/{hold}/agreements")]
pub async fn agree_to_release(
    app: App,
    caller: Caller,
    hold: At<HoldId>,
    write: Write<Json<Agree>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(agreement)| {
            let actor = caller.on_hold(desk.conn, *hold, Permission::ReleaseHold)?;
            agree(desk, &actor, *hold, agreement)
        })
        .await
}

/// Agrees, whoever brought the request.
pub(in crate::http::api) fn agree(
    desk: &mut Desk<'_>,
    actor: &Actor,
    hold: HoldId,
    Agree { role, cause }: Agree,
) -> Result<Reply, CommandError> {
    Reply::recorded(&holds::agree(
        desk.conn,
        actor,
        desk.now,
        hold,
        role,
        cause,
        &mut entropy::system,
    )?)
}
