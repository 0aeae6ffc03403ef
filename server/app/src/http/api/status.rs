//! What the server is, for whoever asks.

use actix_web::get;
use gagwright_store::{accounts, meta};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use utoipa::ToSchema;

use crate::{
    clock,
    http::{
        answer::{self, Answer},
        openapi::OpenRefusals,
        state::{App, read},
    },
};

/// What the server is.
#[derive(Serialize, ToSchema)]
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
    #[schema(value_type = Option<Vec<DemoSignIn>>)]
    pub demo_sign_ins: Option<Value>,
}

/// One invented person to sign in as.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
pub struct DemoSignIn {
    /// Address.
    pub email: String,
    /// Password, which everybody knows.
    pub password: String,
    /// Name.
    pub name: String,
    /// What they are called for.
    pub occupation: String,
    /// Their hats.
    pub roles: Vec<gagwright_clearance::Role>,
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
        let demo = meta::get(conn, "demo")?;
        Ok(Status {
            version: env!("CARGO_PKG_VERSION").into(),
            demo: demo.is_some(),
            needs_setup: accounts::count(conn)? == 0,
            now: clock::now(),
            database,
            demo_sign_ins: demo
                .and_then(|text| serde_json::from_str(&text).ok())
                .filter(Value::is_array),
        })
    })
    .await?;
    answer::ok(&status)
}
