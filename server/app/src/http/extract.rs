//! What handlers take from the address, the query and the conditions of a request, each refused as a
//! problem that names what is wrong. Knows nothing of what is done with it.

use std::future::{Ready, ready};

use actix_web::{
    FromRequest, HttpRequest,
    dev::Payload,
    http::header::{self, HeaderName},
    web,
};

use super::{
    problem::{Code, Problem},
    writing::header_problem,
};

/// Ids in the address.
pub type At<T> = web::Path<T>;

/// The plan revision the caller has in hand, from `If-Match: "<revision>"`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Revision(pub u32);

impl FromRequest for Revision {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        ready(match version_of(request, header::IF_MATCH) {
            None => Err(Problem::new(
                Code::PreconditionRequired,
                "Send If-Match with the revision you have in hand, in quotes, for example If-Match: \"3\"; \
                 it is the ETag of the gag's page.",
            )),
            Some(Sent::Version(number)) if (1..=i64::from(u32::MAX)).contains(&number) => {
                Ok(Self(u32::try_from(number).unwrap_or(u32::MAX)))
            }
            Some(_) => Err(bad_condition("If-Match", "revision")),
        })
    }
}

/// What the caller believes is there: a version in hand (`If-Match`), or nothing yet
/// (`If-None-Match: *`).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Version(pub Option<i64>);

impl FromRequest for Version {
    type Error = Problem;
    type Future = Ready<Result<Self, Problem>>;

    fn from_request(request: &HttpRequest, _: &mut Payload) -> Self::Future {
        let known = version_of(request, header::IF_MATCH);
        let absent = version_of(request, header::IF_NONE_MATCH);
        ready(match (known, absent) {
            (Some(Sent::Version(version)), None) if version > 0 => Ok(Self(Some(version))),
            (None, Some(Sent::Any)) => Ok(Self(None)),
            (None, None) => Err(Problem::new(
                Code::PreconditionRequired,
                "Send If-Match with the version you have in hand, in quotes, or If-None-Match: * for \
                 somebody new.",
            )),
            (_, Some(_)) => Err(bad_condition("If-None-Match", "*")),
            (Some(_), None) => Err(bad_condition("If-Match", "version")),
        })
    }
}

enum Sent {
    Any,
    Version(i64),
    Other,
}

fn version_of(request: &HttpRequest, name: HeaderName) -> Option<Sent> {
    let sent = request
        .headers()
        .get(name)?
        .to_str()
        .unwrap_or_default()
        .trim();
    if sent == "*" {
        return Some(Sent::Any);
    }
    // A proxy that compresses may have weakened the tag on its way out.
    let quoted = sent.strip_prefix("W/").unwrap_or(sent);
    let inner = quoted
        .strip_prefix('"')
        .and_then(|rest| rest.strip_suffix('"'));
    Some(match inner.and_then(|number| number.parse().ok()) {
        Some(version) => Sent::Version(version),
        None => Sent::Other,
    })
}

fn bad_condition(name: &str, what: &str) -> Problem {
    header_problem(
        name,
        &format!(
            "The header {name} is not valid; it takes the {what} in quotes as the ETag gave it, or * for \
             If-None-Match."
        ),
    )
}

/// Refusals of actix's own extractors, as problems.
pub fn configure(config: &mut web::ServiceConfig) {
    config
        .app_data(web::PathConfig::default().error_handler(|_, request| {
            Problem::new(
                Code::UnknownId,
                format!(
                    "There is nothing at {}; ids are UUIDs and revisions are whole numbers.",
                    request.path()
                ),
            )
            .into()
        }))
        .app_data(web::QueryConfig::default().error_handler(|error, _| {
            let told = error.to_string();
            let told = told
                .split_once(": ")
                .map_or(told.as_str(), |(_, rest)| rest);
            Problem::new(
                Code::InvalidInput,
                format!("The query after ? is not valid: {told}."),
            )
            .with("in", "query".into())
            .into()
        }))
        .app_data(web::PayloadConfig::new(super::writing::MAX_CSV));
}
