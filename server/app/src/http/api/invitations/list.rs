//! The invitations that wait for an answer.

use actix_web::get;
use gagwright_casting::ProductionId;

use crate::{
    clock,
    http::{
        answer::{self, Answer, Items},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, OpenInvitation},
};

/// List open invitations
///
/// Needs `manage_members`. Those that can still be accepted; of several to one person only the newest is
/// good.
#[utoipa::path(
    tag = "accounts",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The open invitations", body = Items<OpenInvitation>), Refusals)
)]
#[get("/productions/{production}/invitations")]
pub async fn list_invitations(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let items = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ManageMembers)?;
        views::open_invitations(conn, &actor, clock::now())
    })
    .await?;
    answer::items(items)
}
