//! Witnesses of the trail, and what they cosigned.

use actix_web::{get, post};
use gagwright_casting::ProductionId;

use crate::{
    commands::witnesses::{self, NewCosignature, NewWitness},
    http::{
        answer::{self, Answer, Items, Reply},
        caller::Caller,
        extract::At,
        openapi::{Refusals, WriteHeaders, WriteRefusals},
        state::{App, read},
        writing::Nothing,
        writing::{Json, Write},
    },
    permissions::Permission,
    views::{self, CosignedView, WitnessView, Witnesses},
};

/// List witnesses
///
/// Needs `read_trail`. In the order they were added, those that were removed included, each with the sizes of the
/// trail that it cosigned.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production")),
    responses((status = 200, description = "The witnesses", body = Witnesses), Refusals)
)]
#[get("/productions/{production}/trail/witnesses")]
pub async fn list_witnesses(app: App, caller: Caller, production: At<ProductionId>) -> Answer {
    let found = read(&app, move |conn| {
        let actor = caller.on_production(conn, *production, Permission::ReadTrail)?;
        views::witnesses(conn, &actor)
    })
    .await?;
    answer::ok(&found)
}

/// Add a witness
///
/// Needs `change_policy`. A witness is somebody outside who looks at the trail's checkpoints from time to time and
/// signs that each continues the last one it saw. Its key is of the C2SP form for cosignatures.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewWitness,
    responses((status = 201, description = "The witness", body = WitnessView), WriteRefusals)
)]
#[post("/productions/{production}/trail/witnesses")]
pub async fn add_witness(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewWitness>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, *production, Permission::ChangePolicy)?;
            let added = witnesses::add(desk.conn, &actor, desk.now, &new)?;
            Reply::recorded(&views::witness_view(added, &[]))
        })
        .await
}

/// Remove a witness
///
/// Needs `change_policy`. What it cosigned stays and is exported as before; what it cosigns from now on is refused.
#[utoipa::path(
    tag = "trail",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("witness" = u64, Path, description = "The entry that added it"),
        WriteHeaders,
    ),
    responses((status = 200, description = "The witness, removed", body = WitnessView), WriteRefusals)
)]
#[post("/productions/{production}/trail/witnesses/{witness}/remove")]
pub async fn remove_witness(
    app: App,
    caller: Caller,
    address: At<(ProductionId, u64)>,
    write: Write<Nothing>,
) -> Answer {
    let (production, witness) = address.into_inner();
    write
        .commit(&app, move |desk, Nothing| {
            let actor = caller.on_production(desk.conn, production, Permission::ChangePolicy)?;
            let removed = witnesses::remove(desk.conn, &actor, desk.now, witness)?;
            let cosigned = gagwright_store::witnesses::cosignatures(desk.conn, production)?;
            Reply::ok(&views::witness_view(removed, &cosigned))
        })
        .await
}

/// Bring a cosignature
///
/// Needs `read_trail`: it proves itself, whoever brings it. It is checked against the keys of this production's
/// witnesses and against the checkpoint that this server signs for that size. It appends no entry, which would grow
/// the very tree that was cosigned; the checkpoint and the export carry it. Bringing it again changes nothing.
#[utoipa::path(
    tag = "trail",
    params(("production" = Uuid, Path, description = "The production"), WriteHeaders),
    request_body = NewCosignature,
    responses((status = 201, description = "What was taken in", body = Items<CosignedView>), WriteRefusals)
)]
#[post("/productions/{production}/trail/cosignatures")]
pub async fn bring_cosignature(
    app: App,
    caller: Caller,
    production: At<ProductionId>,
    write: Write<Json<NewCosignature>>,
) -> Answer {
    write
        .commit(&app, move |desk, Json(new)| {
            let actor = caller.on_production(desk.conn, *production, Permission::ReadTrail)?;
            let taken = witnesses::receive(desk.conn, &actor, desk.now, &new)?;
            Reply::recorded(&Items {
                items: taken.into_iter().map(CosignedView::from).collect(),
            })
        })
        .await
}
