//! Saying that a condition is met.

use actix_web::post;
use gagwright_clearance::{RoleStanding, SignOffId};
use serde::Deserialize;
use utoipa::ToSchema;

use crate::{
    commands::signoffs,
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

/// Which condition.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Met {
    /// The condition's text, as signed.
    pub condition: String,
}

/// Say that a condition is met
///
/// Needs `sign_off`, and the hat that set the condition.
#[utoipa::path(
    tag = "sign-offs",
    params(("signoff" = Uuid, Path, description = "The sign-off that set it"), WriteHeaders),
    request_body = Met,
    responses((status = 201, description = "How the role stands now", body = RoleStanding), WriteRefusals)
)]
#[post("/signoffs/{signoff}/conditions-met")]
pub async fn meet_condition(
    app: App,
    caller: Caller,
    signoff: At<SignOffId>,
    write: Write<Json<Met>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(met)| {
            let actor = caller.on_signoff(desk.conn, *signoff, Permission::SignOff)?;
            let standing =
                signoffs::meet_condition(desk.conn, &actor, desk.now, *signoff, met.condition)?;
            Reply::recorded(&standing)
        })
        .await
}
