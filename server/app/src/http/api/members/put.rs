//! Giving and taking hats.

use std::collections::BTreeSet;

use actix_web::put;
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::Role;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::{
    commands::members,
    http::{
        answer::{Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{WriteHeaders, WriteRefusals},
        state::App,
        writing::{Json, Write},
    },
    permissions::Permission,
};

/// A person's hats, all of them.
#[derive(Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Hats {
    /// The hats.
    #[schema(value_type = Vec<Role>)]
    pub roles: BTreeSet<Role>,
}

/// Set a person's roles
///
/// Needs `manage_members`. What they signed under a hat they lose lapses.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("person" = Uuid, Path, description = "The person"),
        WriteHeaders,
    ),
    request_body = Hats,
    responses((status = 200, description = "Their roles now", body = Hats), WriteRefusals)
)]
#[put("/productions/{production}/members/{person}")]
pub async fn set_roles(
    app: App,
    caller: Caller,
    address: At<(ProductionId, PersonId)>,
    write: Write<Json<Hats>>,
) -> Answer {
    let (production, person) = address.into_inner();
    write
        .commit(&app, move |desk, Json(Hats { roles })| {
            let actor = caller.on_production(desk.conn, production, Permission::ManageMembers)?;
            let member = members::set_roles(desk.conn, &actor, desk.now, person, roles)?;
            Reply::ok(&Hats {
                roles: member.roles,
            })
        })
        .await
}
