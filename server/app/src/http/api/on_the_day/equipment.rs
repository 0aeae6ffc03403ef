//! The production's register of equipment.

use actix_web::{get, post};
use gagwright_casting::ProductionId;
use gagwright_clearance::{RecordId, case::RegisteredItem};

use crate::{
    clock,
    commands::on_the_day::{BackInUse, NewShockLoad, PutItem, SetAside, equipment},
    entropy,
    http::{
        answer::{self, Answer, Reply},
        caller::Caller,
        extract::At,
        openapi::{Refusals, WriteHeaders, WriteRefusals},
        state::{App, read},
        writing::{Json, Write},
    },
    permissions::Permission,
    views::{DayBook, day_book},
};

/// Read the day at a glance
///
/// Needs `read_production`. The register of equipment, who is stood down, near misses and incidents.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The day", body = DayBook), Refusals)
)]
#[get("/productions/{production}/day")]
pub async fn read_day(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let book = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadProduction)?;
        day_book(conn, &actor, clock::now())
    })
    .await?;
    answer::ok(&book)
}

/// Enter a piece of equipment
///
/// Needs `log_day`. The same id again changes the entry; what befell the piece stays.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = PutItem,
    responses((status = 201, description = "Recorded", body = RegisteredItem), WriteRefusals)
)]
#[post("/productions/{production}/equipment")]
pub async fn put_equipment(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<PutItem>>,
) -> Answer {
    let production = *production;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::LogDay)?;
            Reply::recorded(&equipment::put(
                desk.conn,
                &actor,
                desk.now,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Set a piece of equipment aside
///
/// Needs `log_day`. Nothing that uses it may be performed until it is released.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), ("item" = Uuid, Path, description = "The piece"), WriteHeaders),
    request_body = SetAside,
    responses((status = 201, description = "Recorded", body = RegisteredItem), WriteRefusals)
)]
#[post("/productions/{production}/equipment/{item}/quarantine")]
pub async fn quarantine_equipment(
    app: App,
    caller: Caller,
    place: At<(ProductionId, RecordId)>,
    write: Write<Json<SetAside>>,
) -> Answer {
    let (production, item) = place.into_inner();
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::LogDay)?;
            Reply::recorded(&equipment::quarantine(
                desk.conn,
                &actor,
                desk.now,
                item,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Take a piece of equipment back into use
///
/// Needs `log_day` and a hat of those who build with it, or the engineer's; after an inspection.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), ("item" = Uuid, Path, description = "The piece"), WriteHeaders),
    request_body = BackInUse,
    responses((status = 201, description = "Recorded", body = RegisteredItem), WriteRefusals)
)]
#[post("/productions/{production}/equipment/{item}/release")]
pub async fn release_equipment(
    app: App,
    caller: Caller,
    place: At<(ProductionId, RecordId)>,
    write: Write<Json<BackInUse>>,
) -> Answer {
    let (production, item) = place.into_inner();
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::LogDay)?;
            Reply::recorded(&equipment::release(
                desk.conn,
                &actor,
                desk.now,
                item,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Record a shock load
///
/// Needs `log_day`. Sets the piece aside, and lapses what the policy says.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), ("item" = Uuid, Path, description = "The piece"), WriteHeaders),
    request_body = NewShockLoad,
    responses((status = 201, description = "Recorded", body = RegisteredItem), WriteRefusals)
)]
#[post("/productions/{production}/equipment/{item}/shock-loads")]
pub async fn record_shock_load(
    app: App,
    caller: Caller,
    place: At<(ProductionId, RecordId)>,
    write: Write<Json<NewShockLoad>>,
) -> Answer {
    let (production, item) = place.into_inner();
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::LogDay)?;
            Reply::recorded(&equipment::shock_load(
                desk.conn,
                &actor,
                desk.now,
                item,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}
