//! Work that is done once. Every write has a key; its answer is kept in the transaction that did the work,
//! so a phone that never heard the answer sends the same request and gets the same answer, whatever
//! happened to the server in between and whoever brought it first. Refusals are not kept: what was refused
//! may be put right and sent under the same key. Knows no particular command.

use actix_web::http::header::{HeaderName, HeaderValue};
use gagwright_store::{Connection, idempotency};
use jiff::Timestamp;
use sha2::{Digest, Sha256};
use uuid::Uuid;

use super::{
    answer::{Answer, Reply},
    problem::{Code, Problem},
    state::App,
};
use crate::commands::CommandError;

/// The header that marks an answer as the kept one.
const REPLAYED: HeaderName = HeaderName::from_static("idempotency-replayed");

/// What a request asks: two are the same when they ask the same of the same address.
pub struct Asks<'a> {
    /// The method.
    pub method: &'a str,
    /// Path and query.
    pub address: &'a str,
    /// The header If-Match, empty when there is none.
    pub if_match: &'a [u8],
    /// The header If-None-Match, empty when there is none.
    pub if_none_match: &'a [u8],
    /// The body: of JSON its canonical form, so that order and spacing of its keys do not matter.
    pub body: &'a [u8],
}

/// What names one write: whose it is, its key, and what it asks.
pub struct Once {
    scope: String,
    key: Uuid,
    fingerprint: [u8; 32],
}

impl Once {
    /// Names a write of an account, or of nobody in particular.
    pub fn new(account: Option<Uuid>, key: Uuid, asks: &Asks<'_>) -> Self {
        let mut hasher = Sha256::new();
        for part in [
            asks.method.as_bytes(),
            asks.address.as_bytes(),
            asks.if_match,
            asks.if_none_match,
            asks.body,
        ] {
            hasher.update((part.len() as u64).to_be_bytes());
            hasher.update(part);
        }
        Self {
            scope: account.map_or_else(|| "anonymous".into(), |account| account.to_string()),
            key,
            fingerprint: hasher.finalize().into(),
        }
    }

    /// Does the work and keeps its answer with it, or finds the answer kept before, which is given after
    /// `again` has let it pass.
    ///
    /// # Errors
    /// What the work or `again` refuses with; then nothing is stored.
    pub fn settle(
        &self,
        conn: &mut Connection,
        now: Timestamp,
        again: impl FnOnce(&mut Connection) -> Result<(), CommandError>,
        work: impl FnOnce(&mut Connection) -> Result<Reply, CommandError>,
    ) -> Result<Settled, CommandError> {
        if let Some(kept) = idempotency::find(conn, &self.scope, self.key)? {
            again(conn)?;
            return Ok(if kept.request_hash == self.fingerprint {
                Settled::Replayed(reply_of(kept))
            } else {
                Settled::KeyReused(self.key)
            });
        }
        let reply = work(conn)?;
        let kept = kept_of(&reply, self.fingerprint, now);
        idempotency::save(conn, &self.scope, self.key, &kept)?;
        Ok(Settled::Done(reply))
    }
}

/// What came of a write.
pub enum Settled {
    /// Done now.
    Done(Reply),
    /// Done before; the answer given then.
    Replayed(Reply),
    /// The key named another request.
    KeyReused(Uuid),
}

impl Settled {
    /// The same with another answer.
    ///
    /// # Errors
    /// As the change.
    pub fn map(
        self,
        change: impl FnOnce(Reply) -> Result<Reply, CommandError>,
    ) -> Result<Self, CommandError> {
        Ok(match self {
            Settled::Done(reply) => Settled::Done(change(reply)?),
            Settled::Replayed(reply) => Settled::Replayed(change(reply)?),
            Settled::KeyReused(key) => Settled::KeyReused(key),
        })
    }

    /// As it goes out; those who listen are told of what is new.
    ///
    /// # Errors
    /// `key_reused` when the key named another request.
    pub fn answer(self, app: &App) -> Answer {
        match self {
            Settled::Done(reply) => {
                app.feed.wrote();
                Ok(reply.into_response())
            }
            Settled::Replayed(reply) => {
                let mut response = reply.into_response();
                response
                    .headers_mut()
                    .insert(REPLAYED, HeaderValue::from_static("true"));
                Ok(response)
            }
            Settled::KeyReused(key) => Err(Problem::new(
                Code::KeyReused,
                format!(
                    "The Idempotency-Key {key} was used for another request; send this one under a fresh \
                     key."
                ),
            )),
        }
    }
}

fn reply_of(kept: idempotency::Stored) -> Reply {
    Reply {
        status: kept.status,
        content_type: kept.content_type,
        body: kept.body,
        location: kept.location,
        etag: kept.etag,
    }
}

fn kept_of(reply: &Reply, request_hash: [u8; 32], now: Timestamp) -> idempotency::Stored {
    idempotency::Stored {
        request_hash: request_hash.to_vec(),
        status: reply.status,
        content_type: reply.content_type.clone(),
        body: reply.body.clone(),
        created_at: now,
        location: reply.location.clone(),
        etag: reply.etag.clone(),
    }
}
