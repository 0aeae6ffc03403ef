//! Raising a hold with the code printed on the day's brief: no account, no reason.

use actix_web::{middleware::from_fn, post};
use gagwright_clearance::HoldId;
use gagwright_store::{Connection, gags, gags::GagRow, productions, productions::Production};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::{
    commands::{CommandError, NewHold, holds, problems::LONG},
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
    /// The gag's short code; left out, or no code of this production: everything is held.
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
    /// The code of the gag that is held; none: everything is.
    pub gag_code: Option<String>,
}

/// Raise a hold with the code on the brief
///
/// Needs no account and no permission. Nothing that is mistyped stands in the way of it: a gag code that is not
/// known holds everything, and stands in the reason.
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
            let wanted = asked.gag_code.as_deref().unwrap_or_default().trim();
            let gag = gag_of(desk.conn, &production, wanted)?;
            if asked.reason.trim().is_empty()
                && let Some(held) = held_already(desk.conn, &production, gag.as_ref())?
            {
                return Reply::ok(&held);
            }
            let reason = match &gag {
                None if !wanted.is_empty() => naming(wanted, &asked.reason),
                _ => asked.reason,
            };
            let new = NewHold {
                id: asked.id,
                gag: gag.as_ref().map(|gag| gag.id),
                reason: reason.trim().to_owned(),
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
                gag_code: gag.map(|gag| gag.code),
            })
        })
        .await
}

/// The reason with the code that no gag has, so that whoever comes to release everything knows which was meant.
/// What is too long is cut, not refused: nothing stands in the way of a hold.
fn naming(wanted: &str, reason: &str) -> String {
    let wanted = wanted.chars().filter(|one| !one.is_control());
    let wanted: String = wanted.take(40).collect();
    let said: String = reason.chars().take(LONG - 50).collect();
    format!("{said} (\"{wanted}\")")
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
    gag: Option<&GagRow>,
) -> Result<Option<HeldByCode>, CommandError> {
    let held = gagwright_store::holds::list(conn, production.id)?;
    let what = gag.map(|gag| gag.id);
    let mut open = held
        .into_iter()
        .map(|kept| kept.hold)
        .filter(|hold| hold.released_at.is_none() && hold.raised_by.is_none() && hold.gag == what);
    Ok(open.next().map(|hold| HeldByCode {
        id: hold.id,
        raised_at: hold.raised_at,
        gag_code: gag.map(|gag| gag.code.clone()),
    }))
}

/// The gag with that code, in capitals or not.
fn gag_of(
    conn: &mut Connection,
    production: &Production,
    code: &str,
) -> Result<Option<GagRow>, CommandError> {
    if let Some(gag) = gags::by_code(conn, production.id, code)? {
        return Ok(Some(gag));
    }
    Ok(gags::by_code(conn, production.id, &code.to_uppercase())?)
}
