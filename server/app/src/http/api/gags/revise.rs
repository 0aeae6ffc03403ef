//! The next revision of a plan.

use actix_web::post;
use gagwright_clearance::GagId;

use crate::{
    commands::{Actor, CommandError, NewRevision, plans},
    entropy,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::{At, Revision},
        openapi::{WriteHeaders, WriteRefusals},
        problem::ProblemDocument,
        state::App,
        writing::{Desk, Json, Write},
    },
    permissions::Permission,
    views::{self, GagPage},
};

/// Revise a plan
///
/// Needs `edit_plans`, and `If-Match` with the revision in hand. When the plan has moved on, the refusal
/// shows both sides by facet and nothing is merged.
#[utoipa::path(
    tag = "gags",
    params(
        ("gag" = Uuid, Path, description = "The gag"),
        ("If-Match" = String, Header, description = "The revision in hand, in quotes"),
        WriteHeaders,
    ),
    request_body = NewRevision,
    responses(
        (status = 201, description = "The gag with its new revision", body = GagPage),
        (status = 428, description = "If-Match is missing", body = ProblemDocument,
            content_type = "application/problem+json"),
        WriteRefusals,
    )
)]
#[post("/gags/{gag}/plans")]
pub async fn revise_plan(
    app: App,
    caller: Caller,
    gag: At<GagId>,
    Revision(expected): Revision,
    write: Write<Json<NewRevision>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_gag(desk.conn, *gag, Permission::EditPlans)?;
            revise(desk, &actor, *gag, expected, new)
        })
        .await
}

/// Writes it, whoever brought the request.
pub(in crate::http::api) fn revise(
    desk: &mut Desk<'_>,
    actor: &Actor,
    gag: GagId,
    expected: u32,
    new: NewRevision,
) -> Result<Reply, CommandError> {
    let plan = plans::revise(
        desk.conn,
        actor,
        desk.now,
        gag,
        expected,
        new,
        &mut entropy::system,
    )?;
    let page = views::gag_page(desk.conn, actor, desk.now, gag)?;
    let location = format!("/api/v1/gags/{gag}/plans/{}", plan.revision);
    Ok(Reply::created(location, &page)?.tagged(plan.revision))
}
