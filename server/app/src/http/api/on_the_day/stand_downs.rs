//! Standing people down, and bringing them back.

use actix_web::post;
use gagwright_casting::ProductionId;
use gagwright_clearance::{RecordId, case::StandDown};

use crate::{
    commands::on_the_day::{NewStandDown, stand_downs},
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Json, Nothing, Write},
    },
    permissions::Permission,
};

/// Stand somebody down
///
/// Needs `raise_hold` for oneself, and the hat of the coordinator, the medic, the production or the guardian for others. Nobody says why.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewStandDown,
    responses((status = 201, description = "Recorded", body = StandDown), WriteRefusals)
)]
#[post("/productions/{production}/stand-downs")]
pub async fn stand_down(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewStandDown>>,
) -> Answer {
    let production = *production;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::RaiseHold)?;
            Reply::recorded(&stand_downs::stand_down(desk.conn, &actor, desk.now, new)?)
        })
        .await
}

/// Bring somebody back
///
/// Needs to be the medic, or whoever stood them down.
#[utoipa::path(
    tag = "day",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("stand_down" = Uuid, Path, description = "The stand-down"),
        WriteHeaders,
    ),
    responses((status = 201, description = "Back", body = StandDown), WriteRefusals)
)]
#[post("/productions/{production}/stand-downs/{stand_down}/return")]
pub async fn bring_back(
    app: App,
    caller: Caller,
    place: At<(ProductionId, RecordId)>,
    write: Write<Nothing>,
) -> Answer {
    let (production, id) = place.into_inner();
    write
        .commit(&app, move |desk, Nothing| {
            let actor = caller.on_production(desk.conn, production, Permission::RaiseHold)?;
            Reply::recorded(&stand_downs::bring_back(desk.conn, &actor, desk.now, id)?)
        })
        .await
}
