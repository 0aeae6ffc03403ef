//! Importing a roster table.

use actix_web::post;
use gagwright_casting::{ProductionId, roster::RosterTable};

use crate::{
    commands::people,
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Csv, Write},
    },
    permissions::Permission,
    views::ImportReport,
};

/// Import a roster table
///
/// Needs `edit_people`. CSV, UTF-8, at most 2 MiB. All rows or none: `roster_refused` lists every wrong
/// cell by row and column with its fix. Importing again updates.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("table" = RosterTable, Path, description = "Which table"),
        WriteHeaders,
    ),
    request_body(content = String, content_type = "text/csv"),
    responses((status = 200, description = "What it did", body = ImportReport), WriteRefusals)
)]
#[post("/productions/{production}/roster/{table}")]
pub async fn import_roster(
    app: App,
    caller: Caller,
    address: At<(ProductionId, RosterTable)>,
    write: Write<Csv>,
) -> Answer {
    let (production, table) = address.into_inner();
    write
        .commit(&app, move |desk, Csv(text)| {
            let actor = caller.on_production(desk.conn, production, Permission::EditPeople)?;
            let report = people::import(
                desk.conn,
                &actor,
                desk.now,
                table,
                &text,
                &mut entropy::system,
            )?;
            Reply::ok(&report)
        })
        .await
}
