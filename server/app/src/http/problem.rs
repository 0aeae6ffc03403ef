//! Problem documents (RFC 9457): the one shape in which the API refuses. Every refusal has a stable
//! code, says what is wrong and what to do. Knows how each rule's error looks on the wire; never lets
//! a database message, a path or a stack trace out: those are logged under an id that the caller gets.

mod code;

use std::fmt;

use actix_web::{
    HttpResponse, ResponseError,
    http::{StatusCode, header},
};
use gagwright_clearance::{Facet, Facets, Plan};
use gagwright_mechanics::AssessError;
use gagwright_store::StoreError;
use serde::Serialize;
use serde_json::{Map, Value, json};
use utoipa::ToSchema;
use uuid::Uuid;

pub use self::code::Code;
use crate::{
    commands::{CellProblem, CommandError, FieldProblem, StalePlan},
    permissions::Permission,
};

/// A refusal on its way out.
#[derive(Clone, Debug)]
pub struct Problem {
    code: Code,
    detail: String,
    errors: Vec<Value>,
    extensions: Map<String, Value>,
    headers: Vec<(header::HeaderName, String)>,
}

impl Problem {
    /// A refusal with one sentence that says what is wrong and what to do.
    pub fn new(code: Code, detail: impl Into<String>) -> Self {
        Self {
            code,
            detail: detail.into(),
            errors: Vec::new(),
            extensions: Map::new(),
            headers: Vec::new(),
        }
    }

    /// One field that is not valid.
    pub fn field(
        pointer: impl Into<String>,
        problem: impl Into<String>,
        fix: impl Into<String>,
    ) -> Self {
        CommandError::invalid(pointer, problem, fix).into()
    }

    /// A failure of the server's own. The cause goes to the log under an id; the caller gets the id.
    pub fn internal(cause: impl fmt::Display) -> Self {
        let incident = Uuid::new_v4();
        tracing::error!(%incident, %cause, "a request failed");
        Self::new(
            Code::Internal,
            "The server failed, and nothing was stored. Try again; if it stays, report the incident id.",
        )
        .with("incident", json!(incident))
    }

    /// Adds an extension member.
    #[must_use]
    pub fn with(mut self, name: &str, value: Value) -> Self {
        self.extensions.insert(name.into(), value);
        self
    }

    /// Adds a header to the answer.
    #[must_use]
    pub fn with_header(mut self, name: header::HeaderName, value: impl Into<String>) -> Self {
        self.headers.push((name, value.into()));
        self
    }

    /// Its code.
    pub fn code(&self) -> Code {
        self.code
    }

    fn with_errors<T: Serialize>(mut self, errors: &[T]) -> Self {
        self.errors = errors
            .iter()
            .filter_map(|one| serde_json::to_value(one).ok())
            .collect();
        self
    }

    /// The document.
    pub fn document(&self) -> Value {
        let mut document = Map::new();
        document.insert(
            "type".into(),
            json!(format!("/problems/{}", self.code.name())),
        );
        document.insert("title".into(), json!(self.code.title()));
        document.insert("status".into(), json!(self.code.status().as_u16()));
        document.insert("detail".into(), json!(self.detail));
        document.insert("code".into(), json!(self.code.name()));
        if !self.errors.is_empty() {
            document.insert("errors".into(), json!(self.errors));
        }
        document.extend(self.extensions.clone());
        Value::Object(document)
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.code.name(), self.detail)
    }
}

impl ResponseError for Problem {
    fn status_code(&self) -> StatusCode {
        self.code.status()
    }

    fn error_response(&self) -> HttpResponse {
        let mut response = HttpResponse::build(self.code.status());
        response.content_type("application/problem+json");
        if self.code.status() == StatusCode::UNAUTHORIZED {
            response.insert_header((header::WWW_AUTHENTICATE, "Bearer"));
        }
        for (name, value) in &self.headers {
            response.insert_header((name.clone(), value.as_str()));
        }
        response.body(self.document().to_string())
    }
}

impl From<CommandError> for Problem {
    fn from(error: CommandError) -> Self {
        let detail = error.to_string();
        match error {
            CommandError::NotFound { .. } => Problem::new(Code::UnknownId, detail),
            CommandError::Forbidden { permission, .. } => {
                Problem::new(Code::Forbidden, detail).with("permission", json!(permission))
            }
            CommandError::Invalid { problems } => invalid(&problems),
            CommandError::StalePlan(stale) => stale_plan(&stale, detail),
            CommandError::Conflict { .. } => Problem::new(Code::Conflict, detail),
            CommandError::SignOff(_) => Problem::new(Code::SignOffRefused, detail),
            CommandError::Handed(_) => Problem::new(Code::HandedRefused, detail),
            CommandError::Roster { problems } => roster(&problems, detail),
            CommandError::Store(error) => error.into(),
        }
    }
}

fn invalid(problems: &[FieldProblem]) -> Problem {
    let detail = match problems {
        [one] if one.pointer.is_empty() => format!("{}; {}.", one.problem, one.fix),
        [one] => format!("{} {}; {}.", one.pointer, one.problem, one.fix),
        many => format!(
            "{} fields are not valid; each is listed with its fix.",
            many.len()
        ),
    };
    Problem::new(Code::InvalidInput, detail).with_errors(problems)
}

fn stale_plan(stale: &StalePlan, detail: String) -> Problem {
    Problem::new(Code::StalePlan, detail)
        .with("expected", json!(stale.expected))
        .with("current", json!(stale.current))
        .with("yours", json!(stale.yours))
        .with("changed_theirs", json!(stale.changed_theirs))
        .with("changed_yours", json!(stale.changed_yours))
}

fn roster(problems: &[CellProblem], detail: String) -> Problem {
    Problem::new(Code::RosterRefused, detail).with_errors(problems)
}

impl From<StoreError> for Problem {
    fn from(error: StoreError) -> Self {
        match error {
            StoreError::NotFound { .. } => Problem::new(Code::UnknownId, error.to_string()),
            StoreError::Conflict { what, ref detail } => {
                // The database's own words, where the store adds them, stand in brackets at the end.
                let plain = detail.split(" (").next().unwrap_or_default();
                let advice = error.advice();
                Problem::new(
                    Code::Conflict,
                    format!("The {what} clashes with what is kept: {plain}. {advice}."),
                )
            }
            StoreError::Unavailable(cause) => {
                tracing::error!(%cause, "the store cannot be reached");
                Problem::new(
                    Code::Unavailable,
                    "The store cannot be reached just now and nothing was stored; the same request may \
                     be sent again.",
                )
                .with_header(header::RETRY_AFTER, "2")
            }
            StoreError::Full(cause) => {
                tracing::error!(%cause, "the disk of the store is full");
                Problem::new(
                    Code::StorageFull,
                    "There is no room left on the server's disk and nothing was stored; reading goes on, \
                     and the same request may be sent again once whoever runs the server has made room.",
                )
                .with_header(header::RETRY_AFTER, "60")
            }
            other => Problem::internal(other),
        }
    }
}

impl From<AssessError> for Problem {
    fn from(error: AssessError) -> Self {
        let detail = error.to_string();
        match error {
            AssessError::UnknownParameter { name, known, .. } => Problem::field(
                format!("/inputs/{}", escape(&name)),
                "is not a parameter of this technique",
                format!("leave it out, or use one of: {known}"),
            ),
            AssessError::BadValue { name, problem } => {
                let field = FieldProblem::new(
                    format!("/inputs/{}", escape(&name)),
                    problem,
                    "give a value as the technique describes it",
                );
                Problem::new(Code::InvalidInput, detail).with_errors(&[field])
            }
        }
    }
}

/// One step of a JSON pointer (RFC 6901 section 3).
pub fn escape(step: &str) -> String {
    step.replace('~', "~0").replace('/', "~1")
}

/// The document's shape, for the API's description.
#[derive(Serialize, ToSchema)]
#[schema(as = Problem)]
pub struct ProblemDocument {
    /// `/problems/` and the code.
    #[serde(rename = "type")]
    pub kind: String,
    /// The same for every occurrence of the code.
    pub title: String,
    /// The HTTP status.
    pub status: u16,
    /// What is wrong this time, and what to do.
    pub detail: String,
    /// The stable code.
    pub code: Code,
    /// Each field that is wrong, with its fix. Rosters give `row` and `column` instead of `pointer`.
    #[schema(nullable = false)]
    pub errors: Option<Vec<ProblemError>>,
    /// With `forbidden`: the permission that is needed.
    #[schema(nullable = false)]
    pub permission: Option<Permission>,
    /// With `internal`: what the log has the cause under.
    #[schema(nullable = false)]
    pub incident: Option<Uuid>,
    /// With `stale_plan`: the revision the change was made from.
    #[schema(nullable = false)]
    pub expected: Option<u32>,
    /// With `stale_plan`: the plan as it is now.
    #[schema(nullable = false)]
    pub current: Option<Plan>,
    /// With `stale_plan`: the contents that were refused.
    #[schema(nullable = false)]
    pub yours: Option<Facets>,
    /// With `stale_plan`: the facets that others changed since.
    #[schema(nullable = false)]
    pub changed_theirs: Option<Vec<Facet>>,
    /// With `stale_plan`: the facets that the refused change changes.
    #[schema(nullable = false)]
    pub changed_yours: Option<Vec<Facet>>,
}

/// One thing wrong inside the request.
#[derive(Serialize, ToSchema)]
#[serde(untagged)]
#[allow(missing_docs)] // the two types say what they are
pub enum ProblemError {
    Field(FieldProblem),
    Cell(CellProblem),
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_server_failure_tells_the_caller_an_id_and_not_the_cause() {
        let problem = Problem::from(StoreError::Database(
            "no such table: gags in /var/x.db".into(),
        ));
        let document = problem.document();
        assert_eq!(document["status"], 500);
        assert!(document["incident"].is_string());
        assert!(!document.to_string().contains("gags in"), "{document}");
    }
}
