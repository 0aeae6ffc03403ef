//! The devices that sign.

use actix_web::get;
use gagwright_casting::ProductionId;

use crate::{
    http::{
        answer::{self, Answer, Items},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, DeviceSummary},
};

/// List devices
///
/// Needs `read_production` for one's own devices; those with `manage_members` get everybody's, for they may
/// revoke them.
#[utoipa::path(
    tag = "people",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The devices", body = Items<DeviceSummary>), Refusals)
)]
#[get("/productions/{production}/devices")]
pub async fn list_devices(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let items = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        views::device_list(conn, &actor)
    })
    .await?;
    answer::items(items)
}
