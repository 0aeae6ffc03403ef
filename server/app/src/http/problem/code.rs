//! The codes that refusals have, each with its status and its summary. Knows no particular refusal.

use actix_web::http::StatusCode;
use serde::Serialize;
use utoipa::ToSchema;

/// Every code the API refuses with. Clients switch on these, so they never change meaning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Code {
    /// The body is not JSON.
    MalformedJson,
    /// A field, header or query value is not valid.
    InvalidInput,
    /// There is no such thing, or the caller may not know of it.
    UnknownId,
    /// There is no such address.
    NoSuchRoute,
    /// The address answers other methods.
    MethodNotAllowed,
    /// No access token, or not one of this server's, or wrong address and password.
    NotSignedIn,
    /// The access token was good once.
    TokenExpired,
    /// The caller's roles do not allow it.
    Forbidden,
    /// The plan moved on since the caller read it.
    StalePlan,
    /// The write needs an `If-Match`.
    PreconditionRequired,
    /// It collides with what is there.
    Conflict,
    /// The idempotency key was used for another request.
    KeyReused,
    /// The sign-off was refused at the door.
    SignOffRefused,
    /// What was handed over is not as its author signed it, or they may not ask it.
    HandedRefused,
    /// The body is larger than the address takes.
    BodyTooLarge,
    /// The body is of a kind the address does not take.
    UnsupportedMedia,
    /// The roster has errors; nothing of it was imported.
    RosterRefused,
    /// Too many attempts.
    RateLimited,
    /// The store cannot be reached just now.
    Unavailable,
    /// There is no room left where things are kept; nothing was stored.
    StorageFull,
    /// The server failed; the answer carries an id to report.
    Internal,
}

impl Code {
    /// Every code.
    pub const ALL: [Code; 21] = [
        Code::MalformedJson,
        Code::InvalidInput,
        Code::UnknownId,
        Code::NoSuchRoute,
        Code::MethodNotAllowed,
        Code::NotSignedIn,
        Code::TokenExpired,
        Code::Forbidden,
        Code::StalePlan,
        Code::PreconditionRequired,
        Code::Conflict,
        Code::KeyReused,
        Code::SignOffRefused,
        Code::HandedRefused,
        Code::BodyTooLarge,
        Code::UnsupportedMedia,
        Code::RosterRefused,
        Code::RateLimited,
        Code::Unavailable,
        Code::StorageFull,
        Code::Internal,
    ];

    /// The code as it stands in the document.
    pub fn name(self) -> &'static str {
        self.facts().0
    }

    /// The status it is sent with.
    pub fn status(self) -> StatusCode {
        self.facts().1
    }

    /// A short summary that is the same for every occurrence.
    pub fn title(self) -> &'static str {
        self.facts().2
    }

    fn facts(self) -> (&'static str, StatusCode, &'static str) {
        use StatusCode as S;
        match self {
            Code::MalformedJson => ("malformed_json", S::BAD_REQUEST, "The body is not JSON"),
            Code::InvalidInput => (
                "invalid_input",
                S::UNPROCESSABLE_ENTITY,
                "Something in the request is not valid",
            ),
            Code::UnknownId => ("unknown_id", S::NOT_FOUND, "There is no such thing"),
            Code::NoSuchRoute => ("no_such_route", S::NOT_FOUND, "There is no such address"),
            Code::MethodNotAllowed => (
                "method_not_allowed",
                S::METHOD_NOT_ALLOWED,
                "The address answers other methods",
            ),
            Code::NotSignedIn => ("not_signed_in", S::UNAUTHORIZED, "You are not signed in"),
            Code::TokenExpired => (
                "token_expired",
                S::UNAUTHORIZED,
                "The access token has expired",
            ),
            Code::Forbidden => ("forbidden", S::FORBIDDEN, "Your roles do not allow this"),
            Code::StalePlan => ("stale_plan", S::CONFLICT, "The plan has moved on"),
            Code::PreconditionRequired => (
                "precondition_required",
                S::PRECONDITION_REQUIRED,
                "Say which revision you have in hand",
            ),
            Code::Conflict => ("conflict", S::CONFLICT, "It collides with what is there"),
            Code::KeyReused => (
                "key_reused",
                S::UNPROCESSABLE_ENTITY,
                "The idempotency key was used for another request",
            ),
            Code::SignOffRefused => (
                "sign_off_refused",
                S::UNPROCESSABLE_ENTITY,
                "The sign-off was refused",
            ),
            Code::HandedRefused => (
                "handed_refused",
                S::UNPROCESSABLE_ENTITY,
                "What was handed over was refused",
            ),
            Code::BodyTooLarge => (
                "body_too_large",
                S::PAYLOAD_TOO_LARGE,
                "The body is too large",
            ),
            Code::UnsupportedMedia => (
                "unsupported_media",
                S::UNSUPPORTED_MEDIA_TYPE,
                "The body is of a kind this address does not take",
            ),
            Code::RosterRefused => (
                "roster_refused",
                S::UNPROCESSABLE_ENTITY,
                "The roster was refused",
            ),
            Code::RateLimited => ("rate_limited", S::TOO_MANY_REQUESTS, "Too many attempts"),
            Code::Unavailable => (
                "unavailable",
                S::SERVICE_UNAVAILABLE,
                "The store cannot be reached just now",
            ),
            Code::StorageFull => (
                "storage_full",
                S::INSUFFICIENT_STORAGE,
                "The server has no room left",
            ),
            Code::Internal => ("internal", S::INTERNAL_SERVER_ERROR, "The server failed"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_code_has_its_own_name_as_serialised() {
        let mut names = std::collections::BTreeSet::new();
        for code in Code::ALL {
            assert_eq!(serde_json::to_value(code).unwrap(), code.name());
            assert!(names.insert(code.name()));
            assert!(code.status().is_client_error() || code.status().is_server_error());
        }
    }
}
