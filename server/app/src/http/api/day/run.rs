//! Logging a run on the rehearsal ladder.

use actix_web::post;
use gagwright_clearance::{GagId, RehearsalRun};

use crate::{
    commands::{Actor, CommandError, NewRun, day},
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

/// Log a rehearsal run
///
/// Needs `log_day`. It counts while the action, rigging, effects and vehicles rehearsed are unchanged.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewRun,
    responses((status = 201, description = "Logged", body = RehearsalRun), WriteRefusals)
)]
#[post("/gags/{gag}/runs")]
pub async fn log_run(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewRun>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, *gag, Permission::LogDay)?;
            log(desk, &actor, *gag, new)
        })
        .await
}

/// Logs it, whoever brought the request.
pub(in crate::http::api) fn log(
    desk: &mut Desk<'_>,
    actor: &Actor,
    gag: GagId,
    new: NewRun,
) -> Result<Reply, CommandError> {
    Reply::recorded(&day::log_run(
        desk.conn,
        actor,
        desk.now,
        gag,
        new,
        &mut entropy::system,
    )?)
}
