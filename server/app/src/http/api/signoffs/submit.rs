//! Handing in a sign-off.

use actix_web::post;
use gagwright_clearance::{Drawing, GagId, Opening};
use serde::Deserialize;
use utoipa::ToSchema;

use crate::{
    commands::{
        marks,
        signoffs::{self, Taken},
    },
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
    views::SignOffReceipt,
};

/// A signed statement.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Signed {
    /// Compact JWS with header `{"alg":"ES256","typ":"gagwright-signoff+jws","kid":"<device id>"}` over
    /// the statement's RFC 8785 bytes.
    pub jws: String,
    /// The texts it commits to, conditions and a reason, each with its salt: they travel beside the sign-off
    /// and can be erased.
    #[serde(default)]
    pub openings: Vec<Opening>,
    /// The mark the signer drew, whose hash the statement has in its `mark`. A sign-off that was carried here
    /// without it counts all the same; the drawing may follow with the same sign-off.
    #[serde(default)]
    #[schema(nullable = false)]
    pub mark: Option<Drawing>,
}

/// Hand in a sign-off
///
/// Needs to be a member of the production: the device's key says who signed, so anyone on it may carry one
/// here. Refused with `sign_off_refused` unless the signature verifies with that key, the signer holds the
/// hat and the statement is for the gag's current content. One that was taken before counts once.
#[utoipa::path(
    tag = "sign-offs",
    params(("gag" = Uuid, Path, description = "The gag"), WriteHeaders),
    request_body = Signed,
    responses(
        (status = 201, description = "Taken", body = SignOffReceipt),
        (status = 200, description = "Taken before; how the role stands now", body = SignOffReceipt),
        WriteRefusals,
    )
)]
#[post("/gags/{gag}/signoffs")]
pub async fn submit_signoff(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    write: Write<Json<Signed>>,
) -> Answer {
    write
        .commit_after(
            &app,
            |store, Json(signed)| store.read(|conn| signoffs::foresee(conn, &signed.jws)),
            move |desk, Json(signed)| {
                let actor = caller.on_gag(desk.conn, *gag, Permission::ReadProduction)?;
                let taken = signoffs::submit(
                    desk.conn,
                    &actor,
                    desk.now,
                    *gag,
                    &signed.jws,
                    signed.openings,
                    &mut entropy::system,
                )?;
                if let Some(mark) = &signed.mark {
                    marks::keep(desk.conn, &actor, &signed.jws, mark)?;
                }
                match taken {
                    Taken::Now(receipt) => Reply::recorded(&receipt),
                    Taken::Before(receipt) => Reply::ok(&receipt),
                }
            },
        )
        .await
}
