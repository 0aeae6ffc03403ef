//! The API's description (OpenAPI 3.1), made from the handlers themselves, and its offline viewer.

use std::{collections::BTreeMap, sync::OnceLock};

use actix_web::{HttpRequest, HttpResponse, dev::ResourceDef, get, http::header, web};
use utoipa::{
    IntoParams, IntoResponses, OpenApi, ToSchema,
    openapi::{
        self, ContentBuilder, RefOr, Response, ResponseBuilder,
        security::{ApiKey, ApiKeyValue, HttpAuthScheme, HttpBuilder, SecurityScheme},
    },
};
use utoipa_swagger_ui::{Config, SwaggerUi};
use uuid::Uuid;

use super::{
    answer::Answer,
    problem::{Code, Problem, ProblemDocument},
    routes,
};

#[derive(OpenApi)]
#[openapi(
    info(
        title = "Gagwright",
        description = "Plan film stunts, have the very plan signed that will be shot, and keep the \
            record. Times are RFC 3339 in UTC, days are YYYY-MM-DD, numbers are SI. A planning aid: \
            local law and licensed people decide.",
        license(name = "Apache-2.0", identifier = "Apache-2.0")
    ),
    // Besides what its addresses use: what problems are, what travels between phones, and what the app's own
    // core says.
    components(schemas(
        ProblemDocument,
        Code,
        gagwright_clearance::handed::HandedRequest,
        gagwright_casting::roster::RosterTable,
        gagwright_casting::CertificateKind,
        gagwright_casting::SkillKind,
        gagwright_clearance::handed::HandedRequest,
        gagwright_clearance::Owed,
        gagwright_clearance::draft::Prepared,
    )),
    security(("access_token" = [])),
    tags(
        (name = "accounts", description = "Setting up, signing in, inviting"),
        (name = "techniques", description = "How a gag is done, and what that does to bodies and gear"),
        (name = "productions", description = "A production and what it asks of its people today"),
        (name = "gags", description = "Gags, their plans and their clearance"),
        (name = "sign-offs", description = "A role's attestation of the very content it answers for"),
        (name = "holds", description = "Stops that anyone may raise"),
        (name = "day", description = "What is logged while working"),
        (name = "people", description = "The roster, its import and its devices"),
        (name = "trail", description = "The append-only record and its proofs")
    )
)]
struct Description;

/// Headers that every write takes.
#[derive(IntoParams)]
#[into_params(parameter_in = Header)]
#[allow(dead_code)] // described here, read by the extractor
pub struct WriteHeaders {
    /// A fresh UUID for each write, and the same one when that write is sent again. The first answer is
    /// kept and given again with `Idempotency-Replayed: true`.
    #[param(rename = "Idempotency-Key")]
    pub idempotency_key: Uuid,
}

/// The refusals any reading address may give.
pub struct Refusals;
/// The refusals any writing address may give.
pub struct WriteRefusals;
/// The refusals of addresses that ask for no token.
pub struct OpenRefusals;

impl IntoResponses for Refusals {
    fn responses() -> BTreeMap<String, RefOr<Response>> {
        refusals(&[
            Code::InvalidInput,
            Code::NotSignedIn,
            Code::Forbidden,
            Code::UnknownId,
            Code::Unavailable,
            Code::Internal,
        ])
    }
}

impl IntoResponses for WriteRefusals {
    fn responses() -> BTreeMap<String, RefOr<Response>> {
        refusals(&[
            Code::MalformedJson,
            Code::InvalidInput,
            Code::NotSignedIn,
            Code::Forbidden,
            Code::UnknownId,
            Code::Conflict,
            Code::BodyTooLarge,
            Code::UnsupportedMedia,
            Code::Unavailable,
            Code::StorageFull,
            Code::Internal,
        ])
    }
}

impl IntoResponses for OpenRefusals {
    fn responses() -> BTreeMap<String, RefOr<Response>> {
        refusals(&[
            Code::MalformedJson,
            Code::InvalidInput,
            Code::UnknownId,
            Code::Conflict,
            Code::BodyTooLarge,
            Code::UnsupportedMedia,
            Code::RateLimited,
            Code::Unavailable,
            Code::StorageFull,
            Code::Internal,
        ])
    }
}

fn refusals(codes: &[Code]) -> BTreeMap<String, RefOr<Response>> {
    codes
        .iter()
        .map(|code| {
            (
                code.status().as_str().to_owned(),
                RefOr::T(problem_response(code.title())),
            )
        })
        .collect()
}

fn problem_response(description: &str) -> Response {
    let schema = openapi::Ref::from_schema_name(ProblemDocument::name());
    ResponseBuilder::new()
        .description(description)
        .content(
            "application/problem+json",
            ContentBuilder::new().schema(Some(schema)).build(),
        )
        .build()
}

/// The description, made once when somebody first asks.
pub fn document() -> &'static openapi::OpenApi {
    static DOCUMENT: OnceLock<openapi::OpenApi> = OnceLock::new();
    DOCUMENT.get_or_init(|| {
        let mut document = Description::openapi();
        document.info.version = env!("CARGO_PKG_VERSION").into();
        document.merge(routes::described());
        let components = document.components.get_or_insert_default();
        components.add_security_scheme(
            "access_token",
            SecurityScheme::Http(
                HttpBuilder::new()
                    .scheme(HttpAuthScheme::Bearer)
                    .bearer_format("JWT")
                    .description(Some("From POST /api/v1/sessions; good for 15 minutes."))
                    .build(),
            ),
        );
        components.add_security_scheme(
            "refresh_cookie",
            SecurityScheme::ApiKey(ApiKey::Cookie(ApiKeyValue::new(
                super::session::COOKIE.to_owned(),
            ))),
        );
        document
    })
}

/// The description of this API (OpenAPI 3.1).
#[get("/api/v1/openapi.json")]
pub async fn openapi_json() -> Result<HttpResponse, Problem> {
    let text = document().to_json().map_err(Problem::internal)?;
    Ok(HttpResponse::Ok()
        .content_type("application/json")
        .body(text))
}

/// Sends people who leave out the slash to the viewer's page.
#[get("/api/docs")]
pub async fn docs_without_slash() -> HttpResponse {
    HttpResponse::PermanentRedirect()
        .insert_header((header::LOCATION, "/api/docs/"))
        .finish()
}

/// The viewer, whose files are built into the program.
pub fn viewer() -> SwaggerUi {
    SwaggerUi::new("/api/docs/{_:.*}").config(
        Config::from("/api/v1/openapi.json")
            .try_it_out_enabled(true)
            .validator_url("none")
            .display_request_duration(true),
    )
}

/// Answers what no route of the API took: an address that takes other methods, or none at all.
pub async fn fallback(request: HttpRequest) -> Answer {
    let allowed = methods_at(request.path());
    if allowed.is_empty() {
        return Err(Problem::new(
            Code::NoSuchRoute,
            format!(
                "The API has nothing at {}; see /api/docs/ for what it has.",
                request.path()
            ),
        ));
    }
    let detail = format!(
        "{} does not take {}; it takes {allowed}.",
        request.path(),
        request.method()
    );
    Err(Problem::new(Code::MethodNotAllowed, detail).with_header(header::ALLOW, allowed))
}

/// The methods that the described address takes, comma separated.
fn methods_at(path: &str) -> String {
    static PATTERNS: OnceLock<Vec<(ResourceDef, String)>> = OnceLock::new();
    let patterns = PATTERNS.get_or_init(|| {
        let describe = |(path, item): (&String, &openapi::PathItem)| {
            (ResourceDef::new(path.as_str()), methods_of(item).join(", "))
        };
        document().paths.paths.iter().map(describe).collect()
    });
    let found = patterns.iter().find(|(pattern, _)| pattern.is_match(path));
    found
        .map(|(_, methods)| methods.clone())
        .unwrap_or_default()
}

/// The methods of one described address.
pub fn methods_of(item: &openapi::PathItem) -> Vec<&'static str> {
    let described = [
        ("GET", item.get.is_some()),
        ("POST", item.post.is_some()),
        ("PUT", item.put.is_some()),
        ("DELETE", item.delete.is_some()),
    ];
    described
        .into_iter()
        .filter(|(_, there)| *there)
        .map(|(name, _)| name)
        .collect()
}

/// Registers the description and the viewer.
pub fn configure(config: &mut web::ServiceConfig) {
    config
        .service(openapi_json)
        .service(docs_without_slash)
        .service(viewer());
}
