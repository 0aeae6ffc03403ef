//! The photograph of a sign-off made on paper.

use actix_web::{HttpResponse, get, put};
use gagwright_clearance::SignOffId;

use crate::{
    commands::photographs,
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{Refusals, WriteHeaders, WriteRefusals},
        state::{App, read},
        writing::{Photograph, Write},
    },
    permissions::Permission,
};

/// Keep the photograph of a sign-off on paper
///
/// Needs to be a member of the production: its witness signed for its SHA-256, so anyone on it may bring it.
/// A JPEG or PNG of at most 4 MiB. None is kept once its signer or its witness was erased.
#[utoipa::path(
    tag = "sign-offs",
    params(("signoff" = Uuid, Path, description = "The sign-off"), WriteHeaders),
    request_body(content = Vec<u8>, content_type = "application/octet-stream"),
    responses((status = 204, description = "Kept"), WriteRefusals)
)]
#[put("/signoffs/{signoff}/photograph")]
pub async fn keep_photograph(
    app: App,
    caller: Caller,
    signoff: At<SignOffId>,
    write: Write<Photograph>,
) -> Answer {
    write
        .commit(&app, move |desk, Photograph(bytes)| {
            let actor = caller.on_signoff(desk.conn, *signoff, Permission::ReadProduction)?;
            let entropy = &mut entropy::system;
            photographs::keep(
                desk.conn,
                &actor,
                desk.now,
                *signoff,
                bytes.to_vec(),
                entropy,
            )?;
            Ok(Reply::done())
        })
        .await
}

/// See the photograph of a sign-off on paper
///
/// For its signer, its witness, and those with `read_personal`.
#[utoipa::path(
    tag = "sign-offs",
    params(("signoff" = Uuid, Path, description = "The sign-off")),
    responses(
        (status = 200, description = "The photograph, JPEG or PNG", content_type = "image/jpeg"),
        Refusals,
    )
)]
#[get("/signoffs/{signoff}/photograph")]
pub async fn read_photograph(app: App, caller: Caller, signoff: At<SignOffId>) -> Answer {
    let found = read(&app, move |conn| {
        let actor = caller.on_signoff(conn, *signoff, Permission::ReadProduction)?;
        photographs::read(conn, &actor, *signoff)
    })
    .await?;
    Ok(HttpResponse::Ok()
        .content_type(found.media_type)
        .body(found.bytes))
}
