//! Goes, how their takes ended, and the medic's looks.

use actix_web::post;
use gagwright_casting::GagId;
use gagwright_clearance::{
    RecordId,
    case::{Look, Take},
};

use crate::{
    commands::on_the_day::{NewGo, NewLook, NewOutcome, takes},
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Json, Write},
    },
    permissions::Permission,
};

/// Call a go
///
/// Needs a hat that the policy lets call one. Good for one take, and recorded whenever it arrives, with whether it stood.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewGo,
    responses((status = 201, description = "Recorded", body = Take), WriteRefusals)
)]
#[post("/gags/{gag}/takes")]
pub async fn call_go(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewGo>>,
) -> Answer {
    let gag = *gag;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, gag, Permission::ReadProduction)?;
            Reply::recorded(&takes::go(
                desk.conn,
                &actor,
                desk.now,
                gag,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Record how a take ended
///
/// Needs `log_day`.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), ("take" = Uuid, Path, description = "The take"), WriteHeaders),
    request_body = NewOutcome,
    responses((status = 201, description = "Recorded", body = Take), WriteRefusals)
)]
#[post("/gags/{gag}/takes/{take}/outcome")]
pub async fn end_take(
    app: App,
    caller: Caller,
    place: At<(GagId, RecordId)>,
    write: Write<Json<NewOutcome>>,
) -> Answer {
    let (gag, take) = place.into_inner();
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, gag, Permission::LogDay)?;
            Reply::recorded(&takes::end(
                desk.conn,
                &actor,
                desk.now,
                gag,
                take,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Record the medic's look
///
/// Needs the hat of the medic. Says fit, unfit or limits, and never why.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewLook,
    responses((status = 201, description = "Recorded", body = Look), WriteRefusals)
)]
#[post("/gags/{gag}/looks")]
pub async fn record_look(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewLook>>,
) -> Answer {
    let gag = *gag;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, gag, Permission::LogDay)?;
            Reply::recorded(&takes::look(
                desk.conn,
                &actor,
                desk.now,
                gag,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}
