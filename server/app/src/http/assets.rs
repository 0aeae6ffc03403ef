//! The web app's files, built into the program. Hashed files are kept for ever by browsers, the rest
//! is asked for again each time by its ETag; compressed forms made by the web build are sent to those
//! who take them. Only a navigation falls back to the app's page: a script that is missing is a 404.

use std::borrow::Cow;

use actix_web::{
    HttpRequest, HttpResponse,
    http::{Method, header},
};
use rust_embed::EmbeddedFile;

use super::{
    answer::Answer,
    problem::{Code, Problem},
};

// Declares `Bundle` over the folder that the build script found or made.
include!(concat!(env!("OUT_DIR"), "/bundle.rs"));

/// The forms a file may be kept in, the smallest first.
const FORMS: [(&str, &str); 2] = [("br", ".br"), ("gzip", ".gz")];

/// The files that the page about trusting borrows from the app.
pub fn borrowed() -> crate::lan::page::Borrowed {
    let bytes = |name: &str| Bundle::get(name).map(|file| file.data.into_owned());
    let font = Bundle::iter()
        .find(|name| name.contains("-latin-wght-normal-") && name.ends_with(".woff2"))
        .and_then(|name| bytes(&name));
    crate::lan::page::Borrowed {
        font,
        icon: bytes("icon.svg"),
    }
}

/// Answers every address that is not the API's.
pub async fn serve(request: HttpRequest) -> Answer {
    if !matches!(*request.method(), Method::GET | Method::HEAD) {
        return Err(Problem::new(
            Code::MethodNotAllowed,
            "The app's files are only read; writes go to the API under /api/v1.",
        )
        .with_header(header::ALLOW, "GET, HEAD"));
    }
    let name = request.path().trim_start_matches('/');
    if let Some(answer) = file(&request, if name.is_empty() { "index.html" } else { name }) {
        return Ok(answer);
    }
    let page = is_navigation(&request)
        .then(|| file(&request, "index.html"))
        .flatten();
    page.ok_or_else(|| {
        Problem::new(
            Code::NoSuchRoute,
            format!("There is nothing at {}.", request.path()),
        )
    })
}

/// A person opening an address, rather than a page asking for one of its parts.
fn is_navigation(request: &HttpRequest) -> bool {
    let header = |name: &str| {
        request
            .headers()
            .get(name)
            .and_then(|value| value.to_str().ok())
    };
    match header("sec-fetch-mode") {
        Some(mode) => mode == "navigate",
        None => {
            let last = request.path().rsplit('/').next().unwrap_or_default();
            !last.contains('.')
                && header("accept").is_some_and(|accept| accept.contains("text/html"))
        }
    }
}

fn file(request: &HttpRequest, name: &str) -> Option<HttpResponse> {
    if FORMS.iter().any(|(_, suffix)| name.ends_with(suffix)) {
        return None;
    }
    let (encoding, stored) = best_form(request, name)?;
    let tag = etag(&stored, encoding);
    let mut response = HttpResponse::Ok();
    response
        .content_type(media_type(name))
        .insert_header((header::ETAG, tag.clone()))
        .insert_header((header::VARY, "Accept-Encoding"))
        .insert_header((header::CACHE_CONTROL, keeping(name)));
    // Naming even the plain form keeps the compressor off bytes that were chosen here.
    response.insert_header((header::CONTENT_ENCODING, encoding));
    if has_already(request, &tag) {
        response.status(actix_web::http::StatusCode::NOT_MODIFIED);
        return Some(response.finish());
    }
    Some(match stored.data {
        Cow::Borrowed(bytes) => response.body(bytes),
        Cow::Owned(bytes) => response.body(bytes),
    })
}

fn best_form(request: &HttpRequest, name: &str) -> Option<(&'static str, EmbeddedFile)> {
    let accepted = request
        .headers()
        .get(header::ACCEPT_ENCODING)
        .and_then(|value| value.to_str().ok())
        .unwrap_or_default();
    FORMS
        .iter()
        .filter(|(encoding, _)| accepts(accepted, encoding))
        .find_map(|(encoding, suffix)| {
            Bundle::get(&format!("{name}{suffix}")).map(|stored| (*encoding, stored))
        })
        .or_else(|| Bundle::get(name).map(|stored| ("identity", stored)))
}

/// Whether an `Accept-Encoding` takes an encoding: named, and not with weight nought.
fn accepts(header: &str, encoding: &str) -> bool {
    header.split(',').any(|choice| {
        let mut parts = choice.split(';').map(str::trim);
        let named = parts
            .next()
            .is_some_and(|name| name.eq_ignore_ascii_case(encoding));
        let refused = parts.any(|part| {
            part.strip_prefix("q=")
                .and_then(|q| q.parse::<f32>().ok())
                .is_some_and(|q| q <= 0.0)
        });
        named && !refused
    })
}

fn etag(stored: &EmbeddedFile, encoding: &str) -> String {
    let hash = stored.metadata.sha256_hash();
    let short: String = hash
        .iter()
        .take(12)
        .map(|byte| format!("{byte:02x}"))
        .collect();
    format!("\"{short}-{encoding}\"")
}

fn has_already(request: &HttpRequest, tag: &str) -> bool {
    request
        .headers()
        .get(header::IF_NONE_MATCH)
        .and_then(|value| value.to_str().ok())
        .is_some_and(|known| {
            known
                .split(',')
                .any(|one| one.trim().trim_start_matches("W/") == tag)
        })
}

/// The web build puts a hash of the content in the name of everything under `assets/`.
fn keeping(name: &str) -> &'static str {
    if name.starts_with("assets/") {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    }
}

fn media_type(name: &str) -> &'static str {
    match name.rsplit('.').next().unwrap_or_default() {
        "html" => "text/html; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "json" | "map" => "application/json",
        "webmanifest" => "application/manifest+json",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "ico" => "image/x-icon",
        "webp" => "image/webp",
        "woff2" => "font/woff2",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn encodings_are_taken_only_where_named_and_wanted() {
        assert!(accepts("gzip, deflate, br", "br"));
        assert!(accepts("GZIP;q=0.5", "gzip"));
        assert!(!accepts("br;q=0, gzip", "br"));
        assert!(!accepts("", "gzip"));
    }

    #[test]
    fn only_hashed_files_are_kept_for_ever() {
        assert!(keeping("assets/index-abc.js").contains("immutable"));
        assert_eq!(keeping("index.html"), "no-cache");
        assert_eq!(keeping("worker.js"), "no-cache");
        assert_eq!(media_type("app.webmanifest"), "application/manifest+json");
        assert_eq!(media_type("assets/core_bg.wasm"), "application/wasm");
    }
}
