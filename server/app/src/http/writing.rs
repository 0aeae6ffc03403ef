//! Writes as they come in over HTTP: who sends one, under which `Idempotency-Key`, and its body. What is
//! done once and kept is for [`super::once`]. Knows no particular command.

use std::{future::Future, pin::Pin};

use actix_web::{
    FromRequest, HttpRequest,
    dev::Payload,
    error::PayloadError,
    http::header::{self, HeaderValue},
    web::Bytes,
};
use gagwright_store::{Connection, Store};
use jiff::Timestamp;
use serde::de::DeserializeOwned;
use uuid::Uuid;

use super::{
    answer::{Answer, Reply},
    caller::{self, Caller, Place},
    json,
    once::{Asks, Once},
    problem::{Code, Problem},
    state::{self, App},
};
use crate::{clock, commands::CommandError};

/// The header that names a write.
pub const KEY: &str = "idempotency-key";
/// Most bytes of a roster.
pub const MAX_CSV: usize = 2 * 1024 * 1024;

/// What a write's body is read into.
pub trait Body: Sized + Send + 'static {
    /// Most bytes.
    const LIMIT: usize;
    /// The media type, or none for writes that have no body.
    const MEDIA: Option<&'static str>;
    /// Reads it.
    ///
    /// # Errors
    /// A problem that names what is wrong with it.
    fn decode(bytes: Bytes) -> Result<Self, Problem>;
    /// The bytes by which a repeat is known, whatever its spelling.
    fn plain(bytes: &Bytes) -> Bytes {
        bytes.clone()
    }
}

/// A JSON body.
pub struct Json<T>(pub T);

impl<T: DeserializeOwned + Send + 'static> Body for Json<T> {
    const LIMIT: usize = json::MAX_BYTES;
    const MEDIA: Option<&'static str> = Some("application/json");
    fn decode(bytes: Bytes) -> Result<Self, Problem> {
        json::read(&bytes).map(Self)
    }
    fn plain(bytes: &Bytes) -> Bytes {
        json::canonical(bytes).map_or_else(|| bytes.clone(), Bytes::from)
    }
}

/// A CSV body, read by the command that knows its table.
pub struct Csv(pub Bytes);

impl Body for Csv {
    const LIMIT: usize = MAX_CSV;
    const MEDIA: Option<&'static str> = Some("text/csv");
    fn decode(bytes: Bytes) -> Result<Self, Problem> {
        Ok(Self(bytes))
    }
}

/// A photograph. Its first bytes say what it is, so any media type will do.
pub struct Photograph(pub Bytes);

impl Body for Photograph {
    const LIMIT: usize = gagwright_clearance::ink::LARGEST_PHOTOGRAPH;
    const MEDIA: Option<&'static str> = None;
    fn decode(bytes: Bytes) -> Result<Self, Problem> {
        Ok(Self(bytes))
    }
}

/// No body.
pub struct Nothing;

impl Body for Nothing {
    const LIMIT: usize = 1024;
    const MEDIA: Option<&'static str> = None;
    fn decode(_: Bytes) -> Result<Self, Problem> {
        Ok(Self)
    }
}

/// A body outside the writes that are kept: signing in, setting up, asking for an assessment.
pub struct Plain<B>(pub B);

impl<B: Body> FromRequest for Plain<B> {
    type Error = Problem;
    type Future = Pin<Box<dyn Future<Output = Result<Self, Problem>>>>;

    fn from_request(request: &HttpRequest, payload: &mut Payload) -> Self::Future {
        let bytes = body_of::<B>(request, payload);
        Box::pin(async move { B::decode(bytes.await?).map(Self) })
    }
}

/// A write, read and checked as far as it can be without the store.
pub struct Write<B> {
    body: B,
    caller: Option<Caller>,
    place: Place,
    once: Once,
}

impl<B: Body> FromRequest for Write<B> {
    type Error = Problem;
    type Future = Pin<Box<dyn Future<Output = Result<Self, Problem>>>>;

    fn from_request(request: &HttpRequest, payload: &mut Payload) -> Self::Future {
        let caller = caller::known(request);
        let key = key_of(request);
        let bytes = body_of::<B>(request, payload);
        let request = request.clone();
        Box::pin(async move {
            let key = key?;
            let bytes = bytes.await?;
            let once = Once::new(
                caller.map(|caller| caller.account),
                key,
                &asked_by(&request, &B::plain(&bytes)),
            );
            Ok(Self {
                body: B::decode(bytes)?,
                caller,
                place: Place::of(&request),
                once,
            })
        })
    }
}

/// What a command is given besides its own input.
pub struct Desk<'a> {
    /// The transaction.
    pub conn: &'a mut Connection,
    /// The moment of the write.
    pub now: Timestamp,
}

impl<B: Body> Write<B> {
    /// Does the work once and keeps its answer with it; a repeat gets the kept answer.
    ///
    /// # Errors
    /// What the work refuses with, and `key_reused` when the key named another request.
    pub async fn commit<F>(self, app: &App, work: F) -> Answer
    where
        F: FnOnce(&mut Desk<'_>, B) -> Result<Reply, CommandError> + Send + 'static,
    {
        self.commit_after(app, |_, _| Ok(()), work).await
    }

    /// As [`Write::commit`], after a look at what is sent that need not wait for its turn to be written.
    /// What the look meets decides nothing; the work does.
    ///
    /// # Errors
    /// As [`Write::commit`].
    pub async fn commit_after<L, F>(self, app: &App, look: L, work: F) -> Answer
    where
        L: FnOnce(&Store, &B) -> Result<(), CommandError> + Send + 'static,
        F: FnOnce(&mut Desk<'_>, B) -> Result<Reply, CommandError> + Send + 'static,
    {
        let Self {
            body,
            caller,
            place,
            once,
        } = self;
        let now = clock::now();
        let store = app.store.clone();
        let settled = state::off_thread(move || {
            if let Err(error) = look(&store, &body) {
                tracing::warn!(%error, "what is to be written could not be looked at before");
            }
            store.write(move |conn| {
                once.settle(
                    conn,
                    now,
                    // Whoever was taken off the production since reads nothing of it any more.
                    |conn| caller.map_or(Ok(()), |caller| caller.still_at(conn, place)),
                    |conn| work(&mut Desk { conn, now }, body),
                )
            })
        })
        .await?;
        settled.answer(app)
    }
}

fn key_of(request: &HttpRequest) -> Result<Uuid, Problem> {
    let Some(sent) = request.headers().get(KEY) else {
        return Err(header_problem(
            "Idempotency-Key",
            "The header Idempotency-Key is missing; send a fresh UUID with each write, and the same one \
             when you send that write again.",
        ));
    };
    sent.to_str()
        .ok()
        .and_then(|text| Uuid::try_parse(text.trim()).ok())
        .ok_or_else(|| {
            header_problem(
                "Idempotency-Key",
                "The header Idempotency-Key is not a UUID; send a fresh one.",
            )
        })
}

/// A header that is not valid.
pub fn header_problem(name: &str, detail: &str) -> Problem {
    Problem::new(Code::InvalidInput, detail).with("header", name.into())
}

/// What a request asks, for telling a repeat from another request under the same key.
fn asked_by<'a>(request: &'a HttpRequest, body: &'a [u8]) -> Asks<'a> {
    let condition = |name| {
        let value = request.headers().get(name);
        value.map(HeaderValue::as_bytes).unwrap_or_default()
    };
    Asks {
        method: request.method().as_str(),
        // Over HTTP/2 the address names the host as well, which is the same request all the same.
        address: request
            .uri()
            .path_and_query()
            .map_or("", |address| address.as_str()),
        if_match: condition(header::IF_MATCH),
        if_none_match: condition(header::IF_NONE_MATCH),
        body,
    }
}

fn body_of<B: Body>(
    request: &HttpRequest,
    payload: &mut Payload,
) -> impl Future<Output = Result<Bytes, Problem>> + use<B> {
    let media = check_media::<B>(request);
    let bytes = Bytes::from_request(request, payload);
    async move {
        media?;
        match bytes.await {
            Ok(bytes) if bytes.len() <= B::LIMIT => Ok(bytes),
            Ok(_) => Err(too_large(B::LIMIT)),
            Err(error) => Err(match error.as_error::<PayloadError>() {
                Some(PayloadError::Overflow) => too_large(B::LIMIT),
                _ => Problem::new(
                    Code::InvalidInput,
                    "The body could not be read whole; send it again.",
                ),
            }),
        }
    }
}

fn too_large(limit: usize) -> Problem {
    Problem::new(
        Code::BodyTooLarge,
        format!(
            "The body is larger than {} KiB, the most this address takes.",
            limit / 1024
        ),
    )
    .with("limit_bytes", limit.into())
}

fn check_media<B: Body>(request: &HttpRequest) -> Result<(), Problem> {
    let Some(wanted) = B::MEDIA else {
        return Ok(());
    };
    let sent = request
        .headers()
        .get(header::CONTENT_TYPE)
        .and_then(|value| value.to_str().ok());
    let essence = sent.unwrap_or("").split(';').next().unwrap_or("").trim();
    if essence.eq_ignore_ascii_case(wanted) {
        return Ok(());
    }
    let told = if essence.is_empty() { "none" } else { essence };
    Err(Problem::new(
        Code::UnsupportedMedia,
        format!("This address takes Content-Type {wanted}; what was sent is {told}."),
    ))
}
