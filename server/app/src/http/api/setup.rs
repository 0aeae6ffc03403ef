//! Making the first account and production with the one-time link that an empty server prints.

use std::collections::BTreeSet;

use actix_web::{http::StatusCode, middleware::from_fn, post};
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::Role;
use gagwright_store::{
    Connection,
    accounts::{self, Account},
    meta,
};
use jiff::Timestamp;
use serde::Deserialize;
use utoipa::ToSchema;
use uuid::Uuid;

use crate::{
    clock,
    commands::{self, CommandError, FieldProblem, Founder, NewProduction},
    entropy,
    http::{
        agent::SentWith,
        answer::Answer,
        limits,
        openapi::OpenRefusals,
        problem::{Code, Problem},
        server::{SETUP_TOKEN_HASH, setup_hash},
        session::{self, Session},
        state::{App, off_thread, read, write},
        writing::{Json, Plain},
    },
    passwords,
};

/// The first account and production.
#[derive(Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Setup {
    /// What stands after the `#` of the printed link.
    pub token: String,
    /// The first person's name.
    pub name: String,
    /// Their address.
    pub email: String,
    /// Their password, at least 12 characters.
    pub password: String,
    /// The production's name.
    pub production_name: String,
    /// IANA time zone of its call times, for example Europe/Lisbon.
    pub time_zone: String,
}

/// Set the server up
///
/// Works once, with the token of the link that the server prints while nobody has an account.
#[utoipa::path(
    tag = "accounts",
    request_body = Setup,
    responses(
        (status = 201, description = "The first account, signed in as coordinator", body = Session),
        (status = 403, description = "The token is not the printed one, or was used"),
        OpenRefusals,
    ),
    security(())
)]
#[post("/setup", wrap = "from_fn(limits::sign_in)")]
pub async fn set_up(
    app: App,
    SentWith(agent): SentWith,
    Plain(Json(setup)): Plain<Json<Setup>>,
) -> Answer {
    let token_hash = setup_hash(&setup.token);
    let hash = token_hash.clone();
    if !read(&app, move |conn| is_open(conn, &hash)).await? {
        return Err(closed());
    }
    check(&setup)?;
    let password = setup.password.clone();
    let password_hash =
        off_thread(move || passwords::hash(&password).map_err(Problem::internal)).await?;
    let keys = app.tokens.clone();
    let now = clock::now();
    let made = write(&app, move |conn| {
        if !is_open(conn, &token_hash)? {
            return Ok(None);
        }
        let account = found(conn, now, setup, password_hash)?;
        session::open(conn, &keys, account, None, agent, now).map(Some)
    })
    .await?;
    made.ok_or_else(closed)?
        .into_answer(&app, StatusCode::CREATED)
}

fn is_open(conn: &mut Connection, token_hash: &str) -> Result<bool, CommandError> {
    let kept = meta::get(conn, SETUP_TOKEN_HASH)?;
    Ok(kept.as_deref() == Some(token_hash) && accounts::count(conn)? == 0)
}

fn closed() -> Problem {
    Problem::new(
        Code::Forbidden,
        "The set-up link does not work: it was used, or the server was started again since and printed a \
         new one.",
    )
}

fn check(setup: &Setup) -> Result<(), Problem> {
    let mut problems = Vec::new();
    if let Err(unfit) = passwords::fit(&setup.password) {
        problems.push(FieldProblem::new(
            "/password",
            unfit.to_string(),
            "choose a longer phrase",
        ));
    }
    if !is_address(&setup.email) {
        problems.push(FieldProblem::new(
            "/email",
            "is not a mail address",
            "write it as NAME@HOST",
        ));
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(CommandError::Invalid { problems }.into())
    }
}

/// Only what a mail server could do something with; whether it arrives is for mail to show.
fn is_address(text: &str) -> bool {
    text.trim().parse::<lettre::Address>().is_ok()
}

fn found(
    conn: &mut Connection,
    now: Timestamp,
    setup: Setup,
    password_hash: String,
) -> Result<Account, CommandError> {
    let account = Account {
        id: Uuid::now_v7(),
        email: setup.email.trim().into(),
        name: setup.name.trim().into(),
        password_hash,
        created_at: now,
    };
    accounts::insert(conn, &account)?;
    let production = NewProduction {
        id: ProductionId(Uuid::now_v7()),
        name: setup.production_name.trim().into(),
        time_zone: setup.time_zone,
        demo: false,
        founder: Founder {
            person: PersonId(Uuid::now_v7()),
            code: "P01".into(),
            name: account.name.clone(),
            occupation: "coordinator".into(),
            account: Some(account.id),
            email: Some(account.email.clone()),
            roles: BTreeSet::from([Role::Coordinator]),
        },
    };
    let policy = gagwright_clearance::Policy::built_in().clone();
    commands::productions::create(conn, now, production, policy, &mut entropy::system)?;
    meta::remove(conn, SETUP_TOKEN_HASH)?;
    Ok(account)
}
