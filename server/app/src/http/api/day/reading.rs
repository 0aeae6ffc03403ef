//! Logging a reading of the conditions.

use actix_web::post;
use gagwright_clearance::{GagId, Reading};

use crate::{
    commands::{Actor, CommandError, NewReading, day},
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

/// Log a reading
///
/// Needs `log_day`.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewReading,
    responses((status = 201, description = "Logged", body = Reading), WriteRefusals)
)]
#[post("/gags/{gag}/readings")]
pub async fn log_reading(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewReading>>,
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
    new: NewReading,
) -> Result<Reply, CommandError> {
    Reply::recorded(&day::log_reading(
        desk.conn,
        actor,
        desk.now,
        gag,
        new,
        &mut entropy::system,
    )?)
}
