//! Raising a hold with the code printed on the day's brief: no account, no reason.

use actix_web::{middleware::from_fn, post};
use gagwright_clearance::{GagId, HoldId};
use gagwright_store::{Connection, gags, productions, productions::Production};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::{
    commands::{CommandError, NewHold, holds},
    entropy,
    http::{
        answer::{Answer, Reply},
        extract::At,
        limits,
        openapi::{OpenRefusals, WriteHeaders},
        state::App,
        writing::{Json, Write},
    },
};

/// What is held.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HoldByCode {
    /// Minted by whoever raises it (UUIDv7).
    #[schema(value_type = Uuid)]
    pub id: HoldId,
    /// The gag's short code; left out: everything on the production.
    #[serde(default)]
    pub gag_code: Option<String>,
    /// Why, if they care to say.
    #[serde(default)]
    pub reason: String,
}

/// That it is held, and nothing else about the production.
#[derive(Serialize, ToSchema)]
pub struct HeldByCode {
    /// The hold.
    #[schema(value_type = Uuid)]
    pub id: HoldId,
    /// When.
    #[schema(value_type = String, format = DateTime)]
    pub raised_at: Timestamp,
}

/// Raise a hold with the code on the brief
///
/// Needs no account and no permission.
#[utoipa::path(
    tag = "holds",
    params(("code" = String, Path, description = "The code printed on the day's brief"), WriteHeaders),
    request_body = HoldByCode,
    responses(
        (status = 201, description = "Held", body = HeldByCode),
        (status = 200, description = "Held already, by this code and with no more to say", body = HeldByCode),
        OpenRefusals,
    ),
    security(())
)]
#[post("/hold-codes/{code}/holds", wrap = "from_fn(limits::hold_codes)")]
pub async fn raise_hold_by_code(
    app: App,
    code: At<String>,
    write: Write<Json<HoldByCode>>,
) -> Answer {
    let code = code.into_inner();
    write
        .commit(&app, move |desk, Json(asked)| {
            let production = production_of(desk.conn, &code)?;
            let gag = gag_of(desk.conn, &production, asked.gag_code.as_deref())?;
            if asked.reason.trim().is_empty()
                && let Some(held) = held_already(desk.conn, &production, gag)?
            {
                return Reply::ok(&held);
            }
            let new = NewHold {
                id: asked.id,
                gag,
                reason: asked.reason,
                hazard: None,
            };
            let hold = holds::raise(
                desk.conn,
                None,
                production.id,
                desk.now,
                new,
                &mut entropy::system,
            )?;
            Reply::recorded(&HeldByCode {
                id: hold.id,
                raised_at: hold.raised_at,
            })
        })
        .await
}

/// The code as people copy it: any case, with the dashes and spaces that make it readable.
fn production_of(conn: &mut Connection, code: &str) -> Result<Production, CommandError> {
    let plain: String = code.chars().filter(char::is_ascii_alphanumeric).collect();
    productions::by_hold_code(conn, &plain.to_ascii_uppercase())?.ok_or_else(|| {
        CommandError::NotFound {
            what: "hold code",
            id: code.into(),
        }
    })
}

/// The open hold that this code raised on the same thing: whoever taps again in a hurry is told that it is
/// held. Somebody who gives a reason is always written down.
fn held_already(
    conn: &mut Connection,
    production: &Production,
    gag: Option<GagId>,
) -> Result<Option<HeldByCode>, CommandError> {
    let held = gagwright_store::holds::list(conn, production.id)?;
    let mut open = held
        .into_iter()
        .map(|kept| kept.hold)
        .filter(|hold| hold.released_at.is_none() && hold.raised_by.is_none() && hold.gag == gag);
    Ok(open.next().map(|hold| HeldByCode {
        id: hold.id,
        raised_at: hold.raised_at,
    }))
}

fn gag_of(
    conn: &mut Connection,
    production: &Production,
    code: Option<&str>,
) -> Result<Option<GagId>, CommandError> {
    let Some(code) = code.map(str::trim).filter(|code| !code.is_empty()) else {
        return Ok(None);
    };
    let gag = gags::by_code(conn, production.id, code)?;
    gag.map(|gag| Some(gag.id)).ok_or_else(|| {
        CommandError::invalid(
            "/gag_code",
            format!("\"{code}\" is no gag of this production"),
            "check the code, or leave it out to hold everything",
        )
    })
}
