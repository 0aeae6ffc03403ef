//! Bringing what somebody else asked, from a phone that has no signal.

use actix_web::post;
use gagwright_clearance::{
    GagId, HoldId, RecordId,
    handed::{self, Asked},
};
use gagwright_trail::canonical_bytes;
use serde::{Deserialize, de::DeserializeOwned};
use utoipa::ToSchema;

use crate::{
    clock,
    commands::{
        self, Actor, CommandError, NewHold, NewReading, NewRevision, NewRun, NewTestShot,
        on_the_day::{
            NewBriefing, NewGo, NewIncident, NewOutcome, NewShockLoad, NewStandDown, SetAside,
            briefings, equipment, incidents, marks, stand_downs, takes,
        },
    },
    entropy,
    http::{
        answer::{Answer, Reply},
        api::{
            day::{reading, run, test_shot},
            gags::revise,
            holds::{agree, raise},
            on_the_day::marks::SignedDay,
        },
        caller::Caller,
        json,
        once::{Asks, Once},
        openapi::WriteRefusals,
        problem::Problem,
        state::{App, read, write},
        writing::{Desk, Json, Plain},
    },
    permissions::Permission,
    views,
};

/// A request as its author signed it.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Handed {
    /// Compact JWS with header `{"alg":"ES256","typ":"gagwright-handed+jws","kid":"<device id>"}` over
    /// the RFC 8785 bytes of a `HandedRequest`.
    pub jws: String,
}

/// Bring what somebody else asked
///
/// Needs to be a member of the production. A hold, an agreement to release, a reading, a rehearsal run, a test shot, a
/// plan revision, an incident, a stand-down, a piece of equipment set aside or shock-loaded, a briefing, a mark for the
/// day, a go or how a take ended, that its author signed with their device, travels from phone to phone, and whoever has
/// signal first brings it. It is done as the author, under their account and their key, so that it is
/// done once whoever brings it and whether or not the author's own phone sends it too; no Idempotency-Key
/// is needed here. The answer is that of the request itself, as the carrier may read it. Refused with
/// `handed_refused` unless the signature verifies, the device is not revoked and the author may still ask
/// it, and otherwise as the request itself would be.
#[utoipa::path(
    tag = "day",
    request_body = Handed,
    responses(
        (status = 201, description = "Done, now or before: what the request's own address answers",
            body = serde_json::Value),
        WriteRefusals,
    )
)]
#[post("/handed")]
pub async fn bring_handed(app: App, caller: Caller, body: Plain<Json<Handed>>) -> Answer {
    let Plain(Json(Handed { jws })) = body;
    let request = handed::read_unverified(&jws).map_err(CommandError::from)?;
    let asked = request.asked().map_err(CommandError::from)?;
    let (account, request) = read(&app, move |conn| {
        let carrier = caller.on_production(conn, request.production, Permission::ReadProduction)?;
        let account = commands::handed::verify(conn, &carrier, &request, &jws)?;
        Ok((account, request))
    })
    .await?;
    let body = canonical_bytes(&request.body).map_err(Problem::internal)?;
    let errand = Errand::of(asked, &body)?;
    let once = Once::new(
        Some(account),
        request.key,
        &Asks {
            method: &request.method,
            address: &format!("/api/v1{}", request.path),
            if_match: request.if_match.as_deref().unwrap_or_default().as_bytes(),
            if_none_match: &[],
            body: &body,
        },
    );
    let now = clock::now();
    let settled = write(&app, move |conn| {
        let carrier = caller.on_production(conn, request.production, Permission::ReadProduction)?;
        let settled = once.settle(
            conn,
            now,
            |_| Ok(()),
            |conn| {
                let done = commands::handed::author(conn, &carrier, &request, now)
                    .and_then(|author| errand.run(&mut Desk { conn, now }, &author));
                commands::handed::told_to_carrier(conn, &request, done)
            },
        )?;
        settled.map(|reply| match asked {
            // A plan's page shows each reader what they may see of people, and the carrier is another.
            Asked::Revision(gag, _) => reply.showing(&views::gag_page(conn, &carrier, now, gag)?),
            _ => Ok(reply),
        })
    })
    .await?;
    settled.answer(&app)
}

/// What is to be done, its body read.
enum Errand {
    Hold(NewHold),
    Reading(GagId, NewReading),
    Run(GagId, NewRun),
    TestShot(GagId, Box<NewTestShot>),
    Revision(GagId, u32, Box<NewRevision>),
    Release(HoldId, agree::Agree),
    Incident(NewIncident),
    StandDown(NewStandDown),
    Quarantine(RecordId, SetAside),
    ShockLoad(RecordId, NewShockLoad),
    Briefing(GagId, Box<NewBriefing>),
    DayMark(GagId, SignedDay),
    Go(GagId, NewGo),
    TakeEnd(GagId, RecordId, NewOutcome),
}

impl Errand {
    fn of(asked: Asked, body: &[u8]) -> Result<Self, Problem> {
        fn new<T: DeserializeOwned>(body: &[u8]) -> Result<T, Problem> {
            json::read(body)
        }
        Ok(match asked {
            Asked::Hold => Errand::Hold(new(body)?),
            Asked::Reading(gag) => Errand::Reading(gag, new(body)?),
            Asked::Run(gag) => Errand::Run(gag, new(body)?),
            Asked::TestShot(gag) => Errand::TestShot(gag, Box::new(new(body)?)),
            Asked::Revision(gag, expected) => Errand::Revision(gag, expected, Box::new(new(body)?)),
            Asked::Release(hold) => Errand::Release(hold, new(body)?),
            Asked::Incident => Errand::Incident(new(body)?),
            Asked::StandDown => Errand::StandDown(new(body)?),
            Asked::Quarantine(item) => Errand::Quarantine(item, new(body)?),
            Asked::ShockLoad(item) => Errand::ShockLoad(item, new(body)?),
            Asked::Briefing(gag) => Errand::Briefing(gag, Box::new(new(body)?)),
            Asked::DayMark(gag) => Errand::DayMark(gag, new(body)?),
            Asked::Go(gag) => Errand::Go(gag, new(body)?),
            Asked::TakeEnd(gag, take) => Errand::TakeEnd(gag, take, new(body)?),
        })
    }

    /// Does it exactly as the request's own address would.
    fn run(self, desk: &mut Desk<'_>, author: &Actor) -> Result<Reply, CommandError> {
        let (now, random) = (desk.now, &mut entropy::system);
        match self {
            Errand::Hold(new) => raise::raise(desk, author, new),
            Errand::Reading(gag, new) => reading::log(desk, author, gag, new),
            Errand::Run(gag, new) => run::log(desk, author, gag, new),
            Errand::TestShot(gag, new) => test_shot::log(desk, author, gag, *new),
            Errand::Revision(gag, expected, new) => {
                revise::revise(desk, author, gag, expected, *new)
            }
            Errand::Release(hold, agree) => agree::agree(desk, author, hold, agree),
            Errand::Incident(new) => {
                Reply::recorded(&incidents::report(desk.conn, author, now, new, random)?)
            }
            Errand::StandDown(new) => {
                Reply::recorded(&stand_downs::stand_down(desk.conn, author, now, new)?)
            }
            Errand::Quarantine(item, new) => {
                let kept = equipment::quarantine(desk.conn, author, now, item, new, random)?;
                Reply::recorded(&kept)
            }
            Errand::ShockLoad(item, new) => {
                let kept = equipment::shock_load(desk.conn, author, now, item, new, random)?;
                Reply::recorded(&kept)
            }
            Errand::Briefing(gag, new) => {
                let kept = briefings::brief(desk.conn, author, now, gag, *new, random)?;
                Reply::recorded(&kept)
            }
            Errand::DayMark(gag, signed) => {
                let taken = marks::submit(desk.conn, author, now, gag, &signed.jws)?;
                if taken.before {
                    Reply::ok(&taken.standing)
                } else {
                    Reply::recorded(&taken.standing)
                }
            }
            Errand::Go(gag, new) => {
                Reply::recorded(&takes::go(desk.conn, author, now, gag, new, random)?)
            }
            Errand::TakeEnd(gag, take, new) => {
                let kept = takes::end(desk.conn, author, now, gag, take, new, random)?;
                Reply::recorded(&kept)
            }
        }
    }
}
