//! Everyone on a production, and how they come in.

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
    views::{self, MemberAccount},
};

/// List members
///
/// Needs `manage_members`. Everyone who has a hat, an account or an invitation.
#[utoipa::path(
    tag = "accounts",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The members", body = Items<MemberAccount>), Refusals)
)]
#[get("/productions/{production}/members")]
pub async fn list_members(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let items = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ManageMembers)?;
        views::member_accounts(conn, &actor, clock::now())
    })
    .await?;
    answer::items(items)
}
