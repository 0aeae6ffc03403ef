//! A statement made ready for signing.

use actix_web::{get, web::Query};
use gagwright_casting::{PersonId, SlotId};
use gagwright_clearance::{GagId, Role};
use serde::Deserialize;
use utoipa::IntoParams;

use crate::{
    clock,
    commands::signoffs,
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::Draft,
};

/// Under which hat.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct Under {
    /// The hat.
    #[param(inline)]
    role: Role,
    /// The performer's slot; only with `performer`.
    #[param(value_type = Option<Uuid>)]
    slot: Option<SlotId>,
    /// Who signs on paper, when the caller is their witness.
    #[param(value_type = Option<Uuid>)]
    signer: Option<PersonId>,
}

/// Draft a sign-off
///
/// Needs `sign_off`, and the hat itself or a delegation from somebody who holds it. A witness of a sign-off on
/// paper names its `signer`, and adds `ink` and its `kind`. The device fills in `id`, `device`, `signed_at` and the
/// decision, then signs the statement's RFC 8785 bytes.
#[utoipa::path(
    tag = "sign-offs",
    params(("gag" = Uuid, Path, description = "The gag"), Under),
    responses((status = 200, description = "The draft", body = Draft), Refusals)
)]
#[get("/gags/{gag}/signoff-draft")]
pub async fn draft_signoff(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    asked: Query<Under>,
) -> Answer {
    let Under { role, slot, signer } = asked.into_inner();
    let draft = read(&app, move |conn| {
        let actor = caller.on_gag(conn, *gag, Permission::SignOff)?;
        signoffs::draft(conn, &actor, clock::now(), *gag, role, slot, signer)
    })
    .await?;
    answer::ok(&draft)
}
