//! Marks for the day: drafting one and handing one in.

use actix_web::{get, post, web::Query};
use gagwright_casting::{GagId, PersonId, SlotId};
use gagwright_clearance::{Role, RoleStanding, day_mark::DayPrepared};
use serde::Deserialize;
use utoipa::{IntoParams, ToSchema};

use crate::{
    clock,
    commands::on_the_day::marks,
    http::{
        answer::{self, Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{Refusals, WriteHeaders, WriteRefusals},
        state::{App, read},
        writing::{Json, Write},
    },
    permissions::Permission,
};

/// Under which hat.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct UnderForDay {
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

/// A signed statement about a day.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SignedDay {
    /// Compact JWS with header `{"alg":"ES256","typ":"gagwright-day-signoff+jws","kid":"<device id>"}`
    /// over the statement's RFC 8785 bytes.
    pub jws: String,
}

/// Draft a mark for the day
///
/// Needs `sign_off`, and the hat itself or a delegation from somebody who holds it. A witness of a mark on paper names
/// its `signer`, and adds `ink` and its `kind`. The device fills in `id`, `device`, `signed_at` and the
/// decision, then signs the statement's RFC 8785 bytes.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), UnderForDay),
    responses((status = 200, description = "The draft", body = DayPrepared), Refusals)
)]
#[get("/gags/{gag}/day-signoff-draft")]
pub async fn draft_day_signoff(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    asked: Query<UnderForDay>,
) -> Answer {
    let UnderForDay { role, slot, signer } = asked.into_inner();
    let draft = read(&app, move |conn| {
        let actor = caller.on_gag(conn, *gag, Permission::SignOff)?;
        marks::draft(conn, &actor, clock::now(), *gag, role, slot, signer)
    })
    .await?;
    answer::ok(&draft)
}

/// Hand in a mark for the day
///
/// Needs to be a member of the production: the device's key says who signed, so anyone on it may carry one
/// here. Refused with `sign_off_refused` unless the signature verifies with that key, the signer holds the
/// hat, and the statement is for what the gag is now. One that was taken before counts once.
#[utoipa::path(
    tag = "day",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = SignedDay,
    responses(
        (status = 201, description = "Taken", body = RoleStanding),
        (status = 200, description = "Taken before; how the role stands now", body = RoleStanding),
        WriteRefusals,
    )
)]
#[post("/gags/{gag}/day-signoffs")]
pub async fn submit_day_signoff(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<SignedDay>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(signed)| {
            let actor = caller.on_gag(desk.conn, *gag, Permission::ReadProduction)?;
            let taken = marks::submit(desk.conn, &actor, desk.now, *gag, &signed.jws)?;
            if taken.before {
                Reply::ok(&taken.standing)
            } else {
                Reply::recorded(&taken.standing)
            }
        })
        .await
}
