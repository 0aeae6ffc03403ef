//! What the server is, for whoever asks.

use actix_web::get;
use gagwright_store::accounts;
use jiff::Timestamp;
use serde::Serialize;
use utoipa::ToSchema;

use crate::{
    clock,
    demo::{SignIn, sign_ins},
    http::{
        answer::{self, Answer},
        openapi::OpenRefusals,
        state::{App, read},
    },
};

/// What the server is.
#[derive(Serialize, ToSchema)]
#[schema(as = ServerStatus)]
pub struct Status {
    /// Version of the program.
    pub version: String,
    /// Whether the database is the demo, with invented people and public passwords.
    pub demo: bool,
    /// Whether nobody has an account yet.
    pub needs_setup: bool,
    /// The server's clock.
    #[schema(value_type = String, format = DateTime)]
    pub now: Timestamp,
    /// What it keeps its data in: SQLite or PostgreSQL.
    pub database: String,
    /// How to sign in to the demo; only in a database marked as demo.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub demo_sign_ins: Option<Vec<SignIn>>,
}

/// What the server is
#[utoipa::path(
    tag = "accounts",
    responses((status = 200, description = "What the server is", body = Status), OpenRefusals),
    security(())
)]
#[get("/status")]
pub async fn read_status(app: App) -> Answer {
    let database = app.store.kind().to_owned();
    let status = read(&app, move |conn| {
        let demo_sign_ins = sign_ins(conn)?;
        Ok(Status {
            version: env!("CARGO_PKG_VERSION").into(),
            demo: demo_sign_ins.is_some(),
            needs_setup: accounts::count(conn)? == 0,
            now: clock::now(),
            database,
            demo_sign_ins,
        })
    })
    .await?;
    answer::ok(&status)
}
