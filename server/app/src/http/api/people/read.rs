//! One person, as far as the caller may see.

use actix_web::get;
use gagwright_casting::{PersonId, ProductionId};

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, PersonPage},
};

/// Read a person
///
/// Needs `read_production`; personal data needs `read_personal`, medical data `read_medical`, and
/// everyone may read all of themselves. The ETag is the version, for `If-Match` when writing.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("person" = Uuid, Path, description = "The person"),
    ),
    responses(
        (status = 200, description = "The person", body = PersonPage,
            headers(("ETag" = String, description = "The version, in quotes"))),
        Refusals,
    )
)]
#[get("/productions/{production}/people/{person}")]
pub async fn read_person(
    app: App,
    caller: Caller,
    address: At<(ProductionId, PersonId)>,
) -> Answer {
    let (production, person) = address.into_inner();
    let page = read(&app, move |conn| {
        let actor = caller.on_production(conn, production, Permission::ReadProduction)?;
        views::person(conn, &actor, person)
    })
    .await?;
    answer::tagged(&page, page.version)
}
