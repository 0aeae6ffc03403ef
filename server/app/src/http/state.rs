//! What every handler shares: the store, the keys, the feed, the mail. Knows how work is moved off the
//! threads that answer; nothing of any one address.

use actix_web::web;
use gagwright_store::{Connection, Store};

use super::{feed::Feed, limits::Limits, problem::Problem};
use crate::{commands::CommandError, mail::Mail, tokens::TokenKeys};

/// Shared by all workers.
pub struct Shared {
    /// What is kept.
    pub store: Store,
    /// What signs access tokens.
    pub tokens: TokenKeys,
    /// Who is told of changes.
    pub feed: Feed,
    /// The way out for letters.
    pub mail: Mail,
    /// How often one caller may try.
    pub limits: Limits,
    /// The address people type, without a slash at its end.
    pub public_url: String,
    /// Whether that address is HTTPS.
    pub secure: bool,
    /// Whether browsers are told to never use that host without HTTPS again. Not on a set's own network:
    /// there the host has a plain page beside the app, and may be another machine tomorrow.
    pub only_https: bool,
    /// Whether callers' addresses come from a proxy's header.
    pub behind_proxy: bool,
}

/// As handlers ask for it.
pub type App = web::Data<Shared>;

/// Reads from one snapshot, off the threads that answer.
///
/// # Errors
/// What the work refuses with.
pub async fn read<T, F>(app: &App, work: F) -> Result<T, Problem>
where
    T: Send + 'static,
    F: FnOnce(&mut Connection) -> Result<T, CommandError> + Send + 'static,
{
    let store = app.store.clone();
    off_thread(move || store.read(work)).await
}

/// Writes in one transaction, off the threads that answer; comes back after the commit.
///
/// # Errors
/// What the work refuses with; then nothing is stored.
pub async fn write<T, F>(app: &App, work: F) -> Result<T, Problem>
where
    T: Send + 'static,
    F: FnOnce(&mut Connection) -> Result<T, CommandError> + Send + 'static,
{
    let store = app.store.clone();
    off_thread(move || store.write(work)).await
}

/// Runs slow work off the threads that answer.
///
/// # Errors
/// What the work refuses with; `internal` when it broke off.
pub async fn off_thread<T, E, F>(work: F) -> Result<T, Problem>
where
    T: Send + 'static,
    E: Into<Problem> + Send + 'static,
    F: FnOnce() -> Result<T, E> + Send + 'static,
{
    match web::block(work).await {
        Ok(outcome) => outcome.map_err(Into::into),
        Err(broken) => Err(Problem::internal(broken)),
    }
}
