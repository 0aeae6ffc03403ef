//! Briefings on the spot.

use actix_web::post;
use gagwright_casting::GagId;
use gagwright_clearance::case::Briefing;

use crate::{
    commands::on_the_day::{NewBriefing, briefings},
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

/// Record a briefing
///
/// Needs `log_day`. Absentees are briefed by another one, for the same day and place.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewBriefing,
    responses((status = 201, description = "Recorded", body = Briefing), WriteRefusals)
)]
#[post("/gags/{gag}/briefings")]
pub async fn hold_briefing(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewBriefing>>,
) -> Answer {
    let gag = *gag;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, gag, Permission::LogDay)?;
            Reply::recorded(&briefings::brief(
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
