//! Logging test shots of a gag, and reading them.

use actix_web::{get, post};
use gagwright_clearance::{GagId, TestShot};

use crate::{
    commands::{Actor, CommandError, NewTestShot, test_shots},
    entropy,
    http::{
        answer::{self, Answer, Items, Reply},
        caller::Caller,
        extract::At,
        openapi::{Refusals, WriteHeaders, WriteRefusals},
        state::{App, read},
        writing::{Desk, Json, Write},
    },
    permissions::Permission,
};

/// List a gag's test shots
///
/// Needs `read_production`. In the order they were logged; the gag's page has them as well.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag")),
    responses((status = 200, description = "All of them", body = Items<TestShot>), Refusals)
)]
#[get("/gags/{gag}/test-shots")]
pub async fn list_test_shots(app: App, caller: Caller, gag: At<GagId>) -> Answer {
    let shots = read(&app, move |conn| {
        caller.on_gag(conn, *gag, Permission::ReadProduction)?;
        Ok(gagwright_store::test_shots::for_gag(conn, *gag)?)
    })
    .await?;
    answer::items(shots)
}

/// Log a test shot
///
/// Needs `log_day`. What a rig did with a bag or a person at given settings: what the calibration of the
/// technique's coefficients is made from.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewTestShot,
    responses((status = 201, description = "Logged", body = TestShot), WriteRefusals)
)]
#[post("/gags/{gag}/test-shots")]
pub async fn log_test_shot(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewTestShot>>,
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
    new: NewTestShot,
) -> Result<Reply, CommandError> {
    Reply::recorded(&test_shots::log_test_shot(
        desk.conn,
        actor,
        desk.now,
        gag,
        new,
        &mut entropy::system,
    )?)
}
