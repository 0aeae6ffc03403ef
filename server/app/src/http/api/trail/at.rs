//! A gag as it stood at a past moment.

use actix_web::{get, web::Query};
use gagwright_casting::ProductionId;
use gagwright_clearance::GagId;
use jiff::Timestamp;
use serde::Deserialize;
use utoipa::IntoParams;

use crate::{
    commands::CommandError,
    http::{
        answer::{self, Answer},
        caller::Caller,
        extract::At,
        openapi::Refusals,
        state::{App, read},
    },
    permissions::Permission,
    views::{self, GagThen, Moment},
};

/// Which moment: give one of the two.
#[derive(Deserialize, IntoParams)]
#[serde(deny_unknown_fields)]
#[into_params(parameter_in = Query)]
pub struct When {
    /// After this leaf, judged when it was received.
    leaf: Option<u64>,
    /// At this moment, RFC 3339: after the last leaf received by then.
    #[param(value_type = Option<String>, format = DateTime)]
    at: Option<Timestamp>,
}

/// Read a gag as it stood
///
/// Needs `read_trail`. Rebuilt from the trail alone, using no leaf that came later: the answer then, who had signed
/// what they had read, readings, runs and holds; and which leaves about it came after. Where something was erased since,
/// it says what cannot be known any more, and `certain` is false when the answer depends on it.
#[utoipa::path(
    tag = "trail",
    params(
        ("production" = Uuid, Path, description = "The production"),
        ("gag" = Uuid, Path, description = "The gag"),
        When,
    ),
    responses((status = 200, description = "The gag then", body = GagThen), Refusals)
)]
#[get("/productions/{production}/gags/{gag}/at")]
pub async fn read_gag_at(
    app: App,
    caller: Caller,
    address: At<(ProductionId, GagId)>,
    asked: Query<When>,
) -> Answer {
    let (production, gag) = address.into_inner();
    let moment = match (asked.leaf, asked.at) {
        (Some(leaf), None) => Moment::Leaf(leaf),
        (None, Some(at)) => Moment::At(at),
        _ => {
            return Err(CommandError::invalid(
                "/leaf",
                "a moment is a leaf or a time",
                "give leaf or at, one of the two",
            )
            .into());
        }
    };
    let then = read(&app, move |conn| {
        let actor = caller.on_production(conn, production, Permission::ReadTrail)?;
        views::gag_then(conn, &actor, gag, moment)
    })
    .await?;
    answer::ok(&then)
}
