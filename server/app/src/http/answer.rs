//! Answers of the API: JSON, files, and the reply to a write in the form that is kept for repeats.

use actix_web::{
    HttpResponse,
    http::{StatusCode, header},
};
use gagwright_store::StoreError;
use serde::Serialize;
use utoipa::ToSchema;

use super::problem::Problem;
use crate::commands::CommandError;

/// What every handler gives back.
pub type Answer = Result<HttpResponse, Problem>;

const JSON: &str = "application/json";

/// A list, always in an object so that members can be added beside it later.
#[derive(Serialize, ToSchema)]
pub struct Items<T> {
    /// The list.
    pub items: Vec<T>,
}

/// 200 with a JSON body.
///
/// # Errors
/// When the value can't be written as JSON, which is a defect.
pub fn ok<T: Serialize>(value: &T) -> Answer {
    Ok(HttpResponse::Ok().content_type(JSON).body(bytes_of(value)?))
}

/// 200 with a list in an object.
///
/// # Errors
/// As [`ok`].
pub fn items<T: Serialize>(items: Vec<T>) -> Answer {
    ok(&Items { items })
}

/// 200 with a JSON body and the revision or version to give back in `If-Match`.
///
/// # Errors
/// As [`ok`].
pub fn tagged<T: Serialize>(value: &T, version: impl std::fmt::Display) -> Answer {
    Ok(HttpResponse::Ok()
        .content_type(JSON)
        .insert_header((header::ETAG, format!("\"{version}\"")))
        .body(bytes_of(value)?))
}

/// 200 with a file to keep.
pub fn file(content_type: &'static str, name: &str, bytes: impl Into<Vec<u8>>) -> HttpResponse {
    HttpResponse::Ok()
        .content_type(content_type)
        .insert_header((
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{name}\""),
        ))
        .body(bytes.into())
}

fn bytes_of<T: Serialize>(value: &T) -> Result<Vec<u8>, Problem> {
    serde_json::to_vec(value).map_err(Problem::internal)
}

/// The answer to a write, kept with it so that a repeat gets the same.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reply {
    /// HTTP status.
    pub status: u16,
    /// Media type of the body; empty when there is none.
    pub content_type: String,
    /// The body.
    pub body: Vec<u8>,
    /// Where the new thing is.
    pub location: Option<String>,
    /// The revision or version to give back in `If-Match`, in quotes.
    pub etag: Option<String>,
}

impl Reply {
    /// 200.
    ///
    /// # Errors
    /// When the value can't be written as JSON, which is a defect; the write is then undone.
    pub fn ok<T: Serialize>(value: &T) -> Result<Self, CommandError> {
        Self::json(StatusCode::OK, value)
    }

    /// 201, and where the new thing is.
    ///
    /// # Errors
    /// As [`Reply::ok`].
    pub fn created<T: Serialize>(
        location: impl Into<String>,
        value: &T,
    ) -> Result<Self, CommandError> {
        Ok(Self {
            location: Some(location.into()),
            ..Self::json(StatusCode::CREATED, value)?
        })
    }

    /// 201 for what has no address of its own.
    ///
    /// # Errors
    /// As [`Reply::ok`].
    pub fn recorded<T: Serialize>(value: &T) -> Result<Self, CommandError> {
        Self::json(StatusCode::CREATED, value)
    }

    /// 204.
    pub fn done() -> Self {
        Self {
            status: 204,
            content_type: String::new(),
            body: Vec::new(),
            location: None,
            etag: None,
        }
    }

    /// The same with another JSON body.
    ///
    /// # Errors
    /// As [`Reply::ok`].
    pub fn showing<T: Serialize>(mut self, value: &T) -> Result<Self, CommandError> {
        self.body = Self::bytes(value)?;
        Ok(self)
    }

    fn bytes<T: Serialize>(value: &T) -> Result<Vec<u8>, CommandError> {
        let written = serde_json::to_vec(value);
        Ok(written.map_err(|error| {
            StoreError::Internal(format!("an answer can't be written: {error}"))
        })?)
    }

    fn json<T: Serialize>(status: StatusCode, value: &T) -> Result<Self, CommandError> {
        Ok(Self {
            status: status.as_u16(),
            content_type: JSON.into(),
            body: Self::bytes(value)?,
            location: None,
            etag: None,
        })
    }

    /// The same, with the revision or version to give back in `If-Match`.
    #[must_use]
    pub fn tagged(mut self, version: impl std::fmt::Display) -> Self {
        self.etag = Some(format!("\"{version}\""));
        self
    }

    /// As it goes out.
    pub fn into_response(self) -> HttpResponse {
        let status = StatusCode::from_u16(self.status).unwrap_or(StatusCode::OK);
        let mut response = HttpResponse::build(status);
        if let Some(location) = &self.location {
            response.insert_header((header::LOCATION, location.as_str()));
        }
        if let Some(etag) = &self.etag {
            response.insert_header((header::ETAG, etag.as_str()));
        }
        if self.content_type.is_empty() {
            return response.finish();
        }
        response
            .content_type(self.content_type.as_str())
            .body(self.body)
    }
}
