//! Erasing a person.

use actix_web::delete;
use gagwright_casting::{PersonId, ProductionId};

use crate::{
    commands::erasure::{self, ErasedPerson},
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Nothing, Write},
    },
    permissions::Permission,
};

/// Erase a person
///
/// Needs the role `production`. Takes away what the roster says of them, what they wrote, the marks they drew,
/// photographs of paper with their ink or witnessed by them, what a medic found in them, the skills they used, their
/// devices' names, their seat and, where it is no other production's, their account; with the salts of the trail's
/// commitments to it, so that nobody can guess at it. Every leaf, proof and signature stays valid. Plans stay as they
/// are.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("person" = Uuid, Path, description = "The person"),
        WriteHeaders,
    ),
    responses((status = 200, description = "Erased", body = ErasedPerson), WriteRefusals)
)]
#[delete("/productions/{production}/people/{person}")]
pub async fn erase_person(
    app: App,
    caller: Caller,
    address: At<(ProductionId, PersonId)>,
    write: Write<Nothing>,
) -> Answer {
    let (production, person) = address.into_inner();
    write
        .commit(&app, move |desk, Nothing| {
            let actor = caller.on_production(desk.conn, production, Permission::EditPeople)?;
            Reply::ok(&erasure::erase(desk.conn, &actor, desk.now, person)?)
        })
        .await
}
