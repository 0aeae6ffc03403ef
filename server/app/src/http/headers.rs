//! Headers that every answer carries: what a browser may load, send and show. Knows the three kinds of
//! address (API, its documentation, the app); not what is answered.

use actix_web::{
    Error,
    body::MessageBody,
    dev::{ServiceRequest, ServiceResponse},
    http::header::{self, HeaderName, HeaderValue},
    middleware::Next,
    web,
};

use super::{problem::Problem, state::Shared};

/// The app: its own scripts and WebAssembly, nothing inline, nothing from elsewhere, and no way to
/// put text where a script is expected.
const APP: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    font-src 'self'; img-src 'self' data: blob:; media-src 'self' blob:; connect-src 'self'; \
    manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'; \
    frame-ancestors 'none'; require-trusted-types-for 'script'; \
    trusted-types svelte-trusted-html app-worker";
/// The API documentation's viewer sets styles on elements and draws with data images.
const DOCS: &str = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; \
    font-src 'self' data:; img-src 'self' data:; connect-src 'self'; base-uri 'none'; \
    form-action 'none'; frame-ancestors 'none'";
/// The API answers data, which loads nothing.
const API: &str = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'";

/// Adds the headers.
///
/// # Errors
/// None of its own.
pub async fn secure(
    request: ServiceRequest,
    next: Next<impl MessageBody + 'static>,
) -> Result<ServiceResponse<impl MessageBody>, Error> {
    let path = request.path();
    let docs = path == "/api/docs" || path.starts_with("/api/docs/");
    let api = path.starts_with("/api/");
    let only_https = request
        .app_data::<web::Data<Shared>>()
        .is_some_and(|shared| shared.only_https);
    // Refusals are answers by now; an error that gets here is a failure, whose text stays inside.
    let mut response = match next.call(request).await {
        Ok(response) => response.map_into_boxed_body(),
        Err(error) if error.as_error::<Problem>().is_some() => return Err(error),
        Err(error) => return Err(Problem::internal(error).into()),
    };
    let headers = response.headers_mut();
    // "identity" kept the compressor off; on the wire it is no encoding (RFC 9110 section 8.4.1).
    if headers
        .get(header::CONTENT_ENCODING)
        .is_some_and(|encoding| encoding == "identity")
    {
        headers.remove(header::CONTENT_ENCODING);
    }
    let policy = if docs {
        DOCS
    } else if api {
        API
    } else {
        APP
    };
    set(headers, header::CONTENT_SECURITY_POLICY, policy);
    set(headers, header::X_CONTENT_TYPE_OPTIONS, "nosniff");
    set(headers, header::REFERRER_POLICY, "no-referrer");
    set(
        headers,
        HeaderName::from_static("permissions-policy"),
        "camera=(self), microphone=(), geolocation=(), payment=(), usb=()",
    );
    set(
        headers,
        HeaderName::from_static("cross-origin-opener-policy"),
        "same-origin",
    );
    set(
        headers,
        HeaderName::from_static("cross-origin-resource-policy"),
        "same-origin",
    );
    if only_https {
        set(
            headers,
            header::STRICT_TRANSPORT_SECURITY,
            "max-age=31536000",
        );
    }
    if api && !docs {
        set(headers, header::CACHE_CONTROL, "no-store");
    }
    Ok(response)
}

fn set(headers: &mut header::HeaderMap, name: HeaderName, value: &'static str) {
    headers.insert(name, HeaderValue::from_static(value));
}
