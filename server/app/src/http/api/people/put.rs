//! Writing a person.

use actix_web::put;
use gagwright_casting::{Person, PersonId, ProductionId};

use crate::{
    commands::{CommandError, people},
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::{At, Version},
        openapi::{WriteHeaders, WriteRefusals},
        problem::ProblemDocument,
        state::App,
        writing::{Json, Write},
    },
    permissions::Permission,
    views::{self, PersonPage},
};

/// Write a person
///
/// Needs `edit_people`, and `If-Match` with the version in hand, or `If-None-Match: *` for somebody new.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("person" = Uuid, Path, description = "The person"),
        ("If-Match" = Option<String>, Header, description = "The version in hand, in quotes"),
        ("If-None-Match" = Option<String>, Header, description = "`*`, for somebody new"),
        WriteHeaders,
    ),
    request_body = Person,
    responses(
        (status = 200, description = "Written", body = PersonPage),
        (status = 201, description = "New on the roster", body = PersonPage),
        (status = 428, description = "Neither condition was sent", body = ProblemDocument,
            content_type = "application/problem+json"),
        WriteRefusals,
    )
)]
#[put("/productions/{production}/people/{person}")]
pub async fn put_person(
    app: App,
    caller: Caller,
    address: At<(ProductionId, PersonId)>,
    Version(expected): Version,
    write: Write<Json<Person>>,
) -> Answer {
    let (production, id) = address.into_inner();
    write
        .commit(&app, move |desk, Json(person)| {
            let actor = caller.on_production(desk.conn, production, Permission::EditPeople)?;
            same(id, person.id)?;
            let put = people::put(
                desk.conn,
                &actor,
                desk.now,
                person,
                expected,
                &mut entropy::system,
            )?;
            let page = views::person(desk.conn, &actor, id)?;
            let reply = if put.created {
                Reply::created(
                    format!("/api/v1/productions/{production}/people/{id}"),
                    &page,
                )?
            } else {
                Reply::ok(&page)?
            };
            Ok(reply.tagged(put.version))
        })
        .await
}

fn same(addressed: PersonId, sent: PersonId) -> Result<(), CommandError> {
    if addressed == sent {
        return Ok(());
    }
    Err(CommandError::invalid(
        "/id",
        "differs from the id in the address",
        format!("send {addressed}, or write to the other person's address"),
    ))
}
