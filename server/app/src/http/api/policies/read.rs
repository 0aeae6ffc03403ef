//! The policy in force, and those before it.

use actix_web::get;
use gagwright_casting::ProductionId;
use gagwright_clearance::Policy;

use crate::{
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{PolicyPage, rules},
};

/// Read the policy in force
///
/// Needs `read_production`. The ETag is the version, for `If-Match` when putting another in force.
#[utoipa::path(
    tag = "policy",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The policy", body = PolicyPage), Refusals)
)]
#[get("/productions/{production}/policy")]
pub async fn read_policy(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let page = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        rules::policy_page(conn, &actor)
    })
    .await?;
    answer::tagged(&page, &page.policy.version)
}

/// Read a policy that was in force
///
/// Needs `read_production`.
#[utoipa::path(
    tag = "policy",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("version" = String, Path, description = "The policy's version"),
    ),
    responses((status = 200, description = "The policy", body = Policy), Refusals)
)]
#[get("/productions/{production}/policies/{version}")]
pub async fn read_policy_version(
    app: App,
    caller: Caller,
    address: At<(ProductionId, String)>,
) -> Answer {
    let (production, version) = address.into_inner();
    let policy = read(&app, move |conn| {
        let actor = caller.on_production(conn, production, Permission::ReadProduction)?;
        rules::policy_of_version(conn, &actor, &version)
    })
    .await?;
    answer::ok(&policy)
}
