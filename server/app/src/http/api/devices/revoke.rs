//! Revoking a device, lost or sold.

use actix_web::delete;
use gagwright_casting::ProductionId;
use gagwright_clearance::DeviceId;

use crate::{
    commands::devices,
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

/// Revoke a device
///
/// Needs `read_production` for one's own device and `manage_members` for anyone else's. What it signed
/// before stays good. Revoked by somebody else, its owner's sessions end too.
#[utoipa::path(
    tag = "people",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("device" = Uuid, Path, description = "The device"),
        WriteHeaders,
    ),
    responses((status = 204, description = "Revoked"), WriteRefusals)
)]
#[delete("/productions/{production}/devices/{device}")]
pub async fn revoke_device(
    app: App,
    caller: Caller,
    address: At<(ProductionId, DeviceId)>,
    write: Write<Nothing>,
) -> Answer {
    let (production, device) = address.into_inner();
    write
        .commit(&app, move |desk, Nothing| {
            let actor = caller.on_production(desk.conn, production, Permission::ReadProduction)?;
            devices::revoke(desk.conn, &actor, desk.now, device)?;
            Ok(Reply::done())
        })
        .await
}
