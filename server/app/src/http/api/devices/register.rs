//! Registering a device's public key.

use actix_web::post;
use gagwright_casting::ProductionId;
use gagwright_clearance::Device;

use crate::{
    commands::{NewDevice, devices},
    entropy,
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

/// Register a device
///
/// Needs `sign_off`. The key was made on the device and its private half never leaves it.
#[utoipa::path(
    tag = "people",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewDevice,
    responses((status = 201, description = "Registered", body = Device), WriteRefusals)
)]
#[post("/productions/{production}/devices")]
pub async fn register_device(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewDevice>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, *production, Permission::SignOff)?;
            Reply::recorded(&devices::register(
                desk.conn,
                &actor,
                desk.now,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}
