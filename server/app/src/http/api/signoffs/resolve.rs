//! Resolving a decline in writing.

use actix_web::post;
use gagwright_clearance::{RoleStanding, SignOffId};

use crate::{
    commands::resolutions::{self, NewResolution},
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

/// Resolve a decline in writing
///
/// Needs `sign_off`, and a role that the policy names for it. The decline stays on the record; anyone who
/// holds the role it was made under may sign again.
#[utoipa::path(
    tag = "sign-offs",
    params(("signoff" = Uuid, Path, description = "The decline"), WriteHeaders),
    request_body = NewResolution,
    responses((status = 201, description = "How the role stands now", body = RoleStanding), WriteRefusals)
)]
#[post("/signoffs/{signoff}/resolutions")]
pub async fn resolve_decline(
    app: App,
    caller: Caller,
    signoff: At<SignOffId>,
    write: Write<Json<NewResolution>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_signoff(desk.conn, *signoff, Permission::SignOff)?;
            let entropy = &mut entropy::system;
            let standing =
                resolutions::resolve(desk.conn, &actor, desk.now, *signoff, new, entropy)?;
            Reply::recorded(&standing)
        })
        .await
}
