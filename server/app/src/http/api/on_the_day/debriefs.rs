//! Debriefs, after the takes of a day.

use actix_web::post;
use gagwright_casting::GagId;
use gagwright_clearance::case::Debrief;

use crate::{
    commands::on_the_day::{NewDebrief, debriefs},
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

/// Record a debrief
///
/// Needs `log_day`. What went as planned and what did not, what changes next time, and which skills each performer used: these count as recent practice.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = NewDebrief,
    responses(
        (status = 201, description = "Recorded", body = Debrief),
        (status = 200, description = "Recorded before", body = Debrief),
        WriteRefusals,
    )
)]
#[post("/gags/{gag}/debriefs")]
pub async fn hold_debrief(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<NewDebrief>>,
) -> Answer {
    let gag = *gag;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, gag, Permission::LogDay)?;
            let now = desk.now;
            let taken = debriefs::debrief(desk.conn, &actor, now, gag, new, &mut entropy::system)?;
            if taken.before {
                Reply::ok(&taken.debrief)
            } else {
                Reply::recorded(&taken.debrief)
            }
        })
        .await
}
