//! Who may fill a slot.

use actix_web::{get, web::Query};
use gagwright_casting::SlotId;
use gagwright_clearance::GagId;
use serde::Deserialize;
use utoipa::IntoParams;

use crate::{
    clock,
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, Matches},
};

/// Which slot.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct Slot {
    /// The slot, as the plan's cast facet has it.
    #[param(value_type = Uuid)]
    slot: SlotId,
}

/// Match people to a slot
///
/// Needs `read_production`. Everyone who performs, ranked, with the reasons. Reasons that tell of a body or
/// of health need `read_personal` or `read_medical`, and are withheld from others.
#[utoipa::path(
    tag = "gags",
    params(("gag" = Uuid, Path, description = "The gag"), Slot),
    responses((status = 200, description = "The candidates, best first", body = Matches), Refusals)
)]
#[get("/gags/{gag}/matches")]
pub async fn match_slot(app: App, caller: Caller, gag: At<GagId>, asked: Query<Slot>) -> Answer {
    let slot = asked.into_inner().slot;
    let matches = read(&app, move |conn| {
        let actor = caller.on_gag(conn, *gag, Permission::ReadProduction)?;
        views::matches(conn, &actor, clock::now(), *gag, slot)
    })
    .await?;
    answer::ok(&matches)
}
