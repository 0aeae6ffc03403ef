//! A roster table to keep.

use actix_web::get;
use gagwright_casting::{
    ProductionId,
    roster::{self, RosterTable},
};
use gagwright_store::people;

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
};

/// Export a roster table
///
/// Needs `edit_people`, which carries the right to read all of it. CSV whose cells no spreadsheet takes
/// for formulas; importing it again changes nothing.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("table" = RosterTable, Path, description = "Which table"),
    ),
    responses(
        (status = 200, description = "The table", body = String, content_type = "text/csv"),
        Refusals,
    )
)]
#[get("/productions/{production}/roster/{table}")]
pub async fn export_roster(
    app: App,
    caller: Caller,
    address: At<(ProductionId, RosterTable)>,
) -> Answer {
    let (production, table) = address.into_inner();
    let people = read(&app, move |conn| {
        let actor = caller.on_production(conn, production, Permission::EditPeople)?;
        Ok(people::list(conn, actor.production)?)
    })
    .await?;
    let people: Vec<_> = people.into_iter().map(|stored| stored.person).collect();
    let text = roster::export(table, &people);
    Ok(answer::file(
        "text/csv; charset=utf-8",
        &format!("{table}.csv"),
        text,
    ))
}
