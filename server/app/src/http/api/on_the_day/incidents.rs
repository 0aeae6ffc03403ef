//! Near misses and incidents.

use actix_web::post;
use gagwright_casting::ProductionId;
use gagwright_clearance::{RecordId, case::Incident};

use crate::{
    commands::on_the_day::{NewClosing, NewIncident, NewTold, incidents},
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

/// Report a near miss or an incident
///
/// Needs `raise_hold`, which every member has. Freezes the gag named, or everything, until it is closed.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewIncident,
    responses((status = 201, description = "Recorded", body = Incident), WriteRefusals)
)]
#[post("/productions/{production}/incidents")]
pub async fn report_incident(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewIncident>>,
) -> Answer {
    let production = *production;
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::RaiseHold)?;
            Reply::recorded(&incidents::report(
                desk.conn,
                &actor,
                desk.now,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Record that somebody was told
///
/// Needs `log_day`.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), ("incident" = Uuid, Path, description = "The incident"), WriteHeaders),
    request_body = NewTold,
    responses((status = 201, description = "Recorded", body = Incident), WriteRefusals)
)]
#[post("/productions/{production}/incidents/{incident}/told")]
pub async fn tell_of_incident(
    app: App,
    caller: Caller,
    place: At<(ProductionId, RecordId)>,
    write: Write<Json<NewTold>>,
) -> Answer {
    let (production, incident) = place.into_inner();
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::LogDay)?;
            Reply::recorded(&incidents::tell(
                desk.conn,
                &actor,
                desk.now,
                incident,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}

/// Say what was done about an incident
///
/// Needs `release_hold`, and the hat of the coordinator or the production. Closed once both have, by two people, and everybody was told.
#[utoipa::path(
    tag = "day",
    params(("production" = Uuid, Path, description = "The production"), ("incident" = Uuid, Path, description = "The incident"), WriteHeaders),
    request_body = NewClosing,
    responses((status = 201, description = "Recorded", body = Incident), WriteRefusals)
)]
#[post("/productions/{production}/incidents/{incident}/closings")]
pub async fn close_incident(
    app: App,
    caller: Caller,
    place: At<(ProductionId, RecordId)>,
    write: Write<Json<NewClosing>>,
) -> Answer {
    let (production, incident) = place.into_inner();
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, production, Permission::ReleaseHold)?;
            Reply::recorded(&incidents::close(
                desk.conn,
                &actor,
                desk.now,
                incident,
                new,
                &mut entropy::system,
            )?)
        })
        .await
}
