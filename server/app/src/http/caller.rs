//! Who is calling, and what they may touch. A handler turns its [`Caller`] into an [`Actor`] on one
//! production by naming the permission it needs; whoever is not a member learns nothing, not even that
//! the production or the gag exists.

use std::future::{Ready, ready};

use actix_web::{FromRequest, HttpRequest, dev::Payload, http::header};
use gagwright_casting::ProductionId;
use gagwright_clearance::{GagId, HoldId, RecordId, SignOffId, case::DaySignOff};
use gagwright_store::{Connection, day_records, day_records::Kind, gags, holds, members, signoffs};
use jiff::Timestamp;
use serde::Deserialize;
use uuid::Uuid;

use super::{
    problem::{Code, Problem},
    state::App,
};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
    tokens::{Claims, TokenError},
};

/// Somebody with a good access token.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Caller {
    /// Their account.
    pub account: Uuid,
}

impl Caller {
    /// The caller's hats on a production, if they are a member and carry the permission.
    ///
    /// # Errors
    /// `NotFound` for those who are no members, `Forbidden` for those whose hats do not carry it.
    pub fn on_production(
        self,
        conn: &mut Connection,
        production: ProductionId,
        permission: Permission,
    ) -> Result<Actor, CommandError> {
        let unknown = || missing("production", production);
        self.member_of(conn, production, permission)?
            .ok_or_else(unknown)?
    }

    /// As [`Caller::on_production`], for the production a gag belongs to.
    ///
    /// # Errors
    /// As [`Caller::on_production`].
    pub fn on_gag(
        self,
        conn: &mut Connection,
        gag: GagId,
        permission: Permission,
    ) -> Result<Actor, CommandError> {
        let unknown = || missing("gag", gag);
        let row = gags::get(conn, gag)?.ok_or_else(unknown)?;
        self.member_of(conn, row.production, permission)?
            .ok_or_else(unknown)?
    }

    /// As [`Caller::on_production`], for the production a sign-off belongs to.
    ///
    /// # Errors
    /// As [`Caller::on_production`].
    pub fn on_signoff(
        self,
        conn: &mut Connection,
        signoff: SignOffId,
        permission: Permission,
    ) -> Result<Actor, CommandError> {
        let unknown = || missing("sign-off", signoff);
        let gag = match signoffs::get(conn, signoff)? {
            Some((_, gag)) => gag,
            // A mark for the day has its photograph under its own id as well.
            None => {
                let mark: Option<day_records::Kept<DaySignOff>> =
                    day_records::anywhere(conn, Kind::Mark, RecordId(signoff.0))?;
                mark.and_then(|(gag, _)| gag).ok_or_else(unknown)?
            }
        };
        let row = gags::get(conn, gag)?.ok_or_else(unknown)?;
        self.member_of(conn, row.production, permission)?
            .ok_or_else(unknown)?
    }

    /// As [`Caller::on_production`], for the production a hold belongs to.
    ///
    /// # Errors
    /// As [`Caller::on_production`].
    pub fn on_hold(
        self,
        conn: &mut Connection,
        hold: HoldId,
        permission: Permission,
    ) -> Result<Actor, CommandError> {
        let unknown = || missing("hold", hold);
        let stored = holds::get(conn, hold)?.ok_or_else(unknown)?;
        self.member_of(conn, stored.production, permission)?
            .ok_or_else(unknown)?
    }

    /// Demands that the caller is still on the production that an address is under, by the ids in it. An
    /// address that names none is for anyone signed in.
    ///
    /// # Errors
    /// As [`Caller::on_production`].
    pub fn still_at(self, conn: &mut Connection, place: Place) -> Result<(), CommandError> {
        let permission = Permission::ReadProduction;
        match place {
            Place::Production(id) => self.on_production(conn, id, permission).map(drop),
            Place::Gag(id) => self.on_gag(conn, id, permission).map(drop),
            Place::SignOff(id) => self.on_signoff(conn, id, permission).map(drop),
            Place::Hold(id) => self.on_hold(conn, id, permission).map(drop),
            Place::Anywhere => Ok(()),
        }
    }

    /// None for those who are no members; then whether their hats carry the permission.
    fn member_of(
        self,
        conn: &mut Connection,
        production: ProductionId,
        permission: Permission,
    ) -> Result<Option<Result<Actor, CommandError>>, CommandError> {
        let Some(member) = members::by_account(conn, production, self.account)? else {
            return Ok(None);
        };
        let actor = Actor {
            account: Some(self.account),
            production,
            person: member.person,
            roles: member.roles,
            carried_by: None,
        };
        Ok(Some(actor.require(permission).map(|()| actor)))
    }
}

/// What an address is under.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// A production.
    Production(ProductionId),
    /// A gag.
    Gag(GagId),
    /// A sign-off.
    SignOff(SignOffId),
    /// A hold.
    Hold(HoldId),
    /// Nothing that belongs to a production.
    Anywhere,
}

impl Place {
    /// The place a request's address names.
    pub fn of(request: &HttpRequest) -> Self {
        let id = |name| -> Option<Uuid> { request.match_info().get(name)?.parse().ok() };
        let production = || id("production").map(|id| Place::Production(ProductionId(id)));
        let gag = || id("gag").map(|id| Place::Gag(GagId(id)));
        let signoff = || id("signoff").map(|id| Place::SignOff(SignOffId(id)));
        let hold = || id("hold").map(|id| Place::Hold(HoldId(id)));
        production()
            .or_else(gag)
            .or_else(signoff)
            .or_else(hold)
            .unwrap_or(Place::Anywhere)
    }
}

fn missing(what: &'static str, id: impl ToString) -> CommandError {
    CommandError::NotFound {
        what,
        id: id.to_string(),
    }
}

impl FromRequest for Caller {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        ready(bearer(request).and_then(|token| signed_in(request, token)))
    }
}

/// A caller whose token may stand in the address, because a browser's event stream sends no headers.
/// Accepted by the event stream alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StreamCaller {
    /// Who.
    pub caller: Caller,
    /// Until when the token is good, and so how long they may listen.
    pub until: Timestamp,
}

#[derive(Deserialize)]
struct StreamQuery {
    access_token: Option<String>,
}

impl FromRequest for StreamCaller {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        let query = actix_web::web::Query::<StreamQuery>::from_query(request.query_string());
        let claims = match query.ok().and_then(|query| query.into_inner().access_token) {
            Some(token) => claims_of(request, &token),
            None => bearer(request).and_then(|token| claims_of(request, token)),
        };
        ready(claims.and_then(|claims| {
            Ok(StreamCaller {
                caller: Caller {
                    account: claims.sub,
                },
                until: Timestamp::from_second(claims.exp).map_err(Problem::internal)?,
            })
        }))
    }
}

/// The caller, if a good token was sent. A bad one is refused by whoever asks for a [`Caller`]; where
/// nobody does, as for holds by code, it must not stand in the way.
pub fn known(request: &HttpRequest) -> Option<Caller> {
    bearer(request)
        .and_then(|token| signed_in(request, token))
        .ok()
}

fn bearer(request: &HttpRequest) -> Result<&str, Problem> {
    let sent = request
        .headers()
        .get(header::AUTHORIZATION)
        .and_then(|value| value.to_str().ok());
    let token = sent.and_then(|value| {
        let (scheme, token) = value.split_once(' ')?;
        scheme.eq_ignore_ascii_case("bearer").then(|| token.trim())
    });
    token.ok_or_else(|| {
        Problem::new(
            Code::NotSignedIn,
            "This address needs an access token: sign in at /api/v1/sessions and send \
             Authorization: Bearer TOKEN.",
        )
    })
}

fn signed_in(request: &HttpRequest, token: &str) -> Result<Caller, Problem> {
    claims_of(request, token).map(|claims| Caller {
        account: claims.sub,
    })
}

fn claims_of(request: &HttpRequest, token: &str) -> Result<Claims, Problem> {
    let Some(app) = request.app_data::<App>() else {
        return Err(Problem::internal("the shared state is missing"));
    };
    match app.tokens.read(token) {
        Ok(claims) => Ok(claims),
        Err(TokenError::Expired) => Err(Problem::new(
            Code::TokenExpired,
            "The access token has expired; get a new one at /api/v1/sessions/refresh.",
        )),
        Err(TokenError::Invalid) => Err(Problem::new(
            Code::NotSignedIn,
            "The access token is not one of this server's; sign in at /api/v1/sessions.",
        )),
    }
}
