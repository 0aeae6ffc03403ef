//! Withdrawing an invitation.

use actix_web::delete;
use gagwright_casting::ProductionId;
use uuid::Uuid;

use crate::{
    commands::members,
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

/// Withdraw an invitation
///
/// Needs `manage_members`. The link in its letter no longer works.
#[utoipa::path(
    tag = "accounts",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("invitation" = Uuid, Path, description = "The invitation"),
        WriteHeaders,
    ),
    responses((status = 204, description = "Withdrawn"), WriteRefusals)
)]
#[delete("/productions/{production}/invitations/{invitation}")]
pub async fn withdraw_invitation(
    app: App,
    caller: Caller,
    address: At<(ProductionId, Uuid)>,
    write: Write<Nothing>,
) -> Answer {
    let (production, invitation) = address.into_inner();
    write
        .commit(&app, move |desk, Nothing| {
            let actor = caller.on_production(desk.conn, production, Permission::ManageMembers)?;
            members::withdraw_invitation(desk.conn, &actor, desk.now, invitation)?;
            Ok(Reply::done())
        })
        .await
}
