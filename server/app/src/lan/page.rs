//! The page on which a phone learns to trust this machine, and the little server that shows it over
//! plain HTTP. Nothing else is there: no API, no app, and whatever is asked for leads to the page.

use std::{collections::BTreeSet, net::TcpListener, sync::Arc};

use actix_web::{
    App, HttpRequest, HttpResponse, HttpServer,
    dev::Server,
    http::header::{self, HeaderName},
    middleware::DefaultHeaders,
    web,
};
use base64::{Engine, engine::general_purpose::STANDARD};
use uuid::Uuid;

use super::{Https, Local, addresses::Name, authority::Authority};

/// Its own style, font and picture, and the two downloads; nothing runs.
const POLICY: &str = "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; \
    base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/// Files of the app that the page borrows, so that it looks like it.
#[derive(Clone, Debug, Default)]
pub struct Borrowed {
    /// The typeface.
    pub font: Option<Vec<u8>>,
    /// The mark.
    pub icon: Option<Vec<u8>>,
}

/// What the handlers share.
struct Shown {
    https: Arc<Https>,
    borrowed: Borrowed,
}

type Page = web::Data<Shown>;

/// The plain server, for a listener that is there.
///
/// # Errors
/// When the system refuses the listener.
pub fn server(
    https: Arc<Https>,
    borrowed: Borrowed,
    listener: TcpListener,
) -> std::io::Result<Server> {
    let shown = web::Data::new(Shown { https, borrowed });
    let server = HttpServer::new(move || {
        App::new()
            .app_data(shown.clone())
            .route("/", web::get().to(page))
            .route("/", web::head().to(page))
            .route("/trust.css", web::get().to(style))
            .route("/font.woff2", web::get().to(font))
            .route("/icon.svg", web::get().to(icon))
            .route("/gagwright.crt", web::get().to(certificate))
            .route("/gagwright.mobileconfig", web::get().to(profile))
            .default_service(web::to(elsewhere))
            .wrap(
                DefaultHeaders::new()
                    .add((header::CONTENT_SECURITY_POLICY, POLICY))
                    .add((header::X_CONTENT_TYPE_OPTIONS, "nosniff"))
                    .add((header::REFERRER_POLICY, "no-referrer"))
                    .add((header::CACHE_CONTROL, "no-store"))
                    .add((
                        HeaderName::from_static("permissions-policy"),
                        "camera=(), microphone=(), geolocation=(), payment=(), usb=()",
                    )),
            )
    })
    .workers(1)
    .disable_signals()
    .listen(listener)?;
    Ok(server.run())
}

async fn page(request: HttpRequest, shown: Page) -> HttpResponse {
    let Some(local) = shown.https.local() else {
        return elsewhere(request, shown).await;
    };
    let agent = text_of(&request, header::USER_AGENT);
    let language = Language::of(
        request.query_string(),
        text_of(&request, header::ACCEPT_LANGUAGE),
    );
    let app = app_address(&request, &shown.https);
    HttpResponse::Ok()
        .content_type("text/html; charset=utf-8")
        .insert_header((header::VARY, "Accept-Language, User-Agent"))
        .body(written(local, &app, Holding::by(agent), language))
}

async fn style() -> HttpResponse {
    HttpResponse::Ok()
        .content_type("text/css; charset=utf-8")
        .body(include_str!("page/trust.css"))
}

async fn font(request: HttpRequest, shown: Page) -> HttpResponse {
    borrowed(request, "font/woff2", |files| files.font.as_ref(), shown).await
}

async fn icon(request: HttpRequest, shown: Page) -> HttpResponse {
    borrowed(request, "image/svg+xml", |files| files.icon.as_ref(), shown).await
}

async fn borrowed(
    request: HttpRequest,
    media_type: &str,
    which: impl Fn(&Borrowed) -> Option<&Vec<u8>>,
    shown: Page,
) -> HttpResponse {
    match which(&shown.borrowed) {
        Some(bytes) => HttpResponse::Ok()
            .content_type(media_type)
            .body(bytes.clone()),
        None => elsewhere(request, shown).await,
    }
}

async fn certificate(request: HttpRequest, shown: Page) -> HttpResponse {
    let Some(local) = shown.https.local() else {
        return elsewhere(request, shown).await;
    };
    download(
        "application/x-x509-ca-cert",
        "gagwright.crt",
        local.authority.der().to_vec(),
    )
}

async fn profile(request: HttpRequest, shown: Page) -> HttpResponse {
    let Some(local) = shown.https.local() else {
        return elsewhere(request, shown).await;
    };
    download(
        "application/x-apple-aspen-config",
        "gagwright.mobileconfig",
        configuration_profile(&local.authority).into_bytes(),
    )
}

fn download(media_type: &str, name: &str, bytes: Vec<u8>) -> HttpResponse {
    HttpResponse::Ok()
        .content_type(media_type)
        .insert_header((
            header::CONTENT_DISPOSITION,
            format!("attachment; filename=\"{name}\""),
        ))
        .body(bytes)
}

/// Whatever else was asked for: to the page, or with a certificate from elsewhere to the app.
async fn elsewhere(request: HttpRequest, shown: Page) -> HttpResponse {
    let to = match shown.https.local() {
        Some(_) => "/".to_owned(),
        None => app_address(&request, &shown.https),
    };
    HttpResponse::SeeOther()
        .insert_header((header::LOCATION, to))
        .finish()
}

/// The app's address by the name that the phone came by, when the certificate has it: that name works
/// where the phone is.
fn app_address(request: &HttpRequest, https: &Https) -> String {
    let known: BTreeSet<Name> = match https.local() {
        Some(local) => local.names(),
        None => https.hosts.iter().cloned().collect(),
    };
    let came_by = host_of(text_of(request, header::HOST)).filter(|name| known.contains(name));
    match came_by.or_else(|| https.hosts.first().cloned()) {
        Some(host) => format!("{}/", https.address_at(&host)),
        None => "/".to_owned(),
    }
}

fn text_of(request: &HttpRequest, name: HeaderName) -> &str {
    request
        .headers()
        .get(name)
        .and_then(|value| value.to_str().ok())
        .unwrap_or_default()
}

/// The name in a `Host` header, its port left out.
fn host_of(header: &str) -> Option<Name> {
    let host = match header.rsplit_once(':') {
        Some((host, port)) if port.bytes().all(|byte| byte.is_ascii_digit()) => host,
        _ => header,
    };
    host.parse().ok()
}

/// What someone holds, as far as their browser says; only decides which steps are open at first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Holding {
    /// An Apple phone or tablet.
    IPhone,
    /// An Android one.
    Android,
    /// Anything else.
    Computer,
}

impl Holding {
    fn by(agent: &str) -> Self {
        if ["iPhone", "iPad", "iPod"]
            .iter()
            .any(|one| agent.contains(one))
        {
            Holding::IPhone
        } else if agent.contains("Android") {
            Holding::Android
        } else {
            Holding::Computer
        }
    }
}

/// The languages that the page is written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Language {
    English,
    Spanish,
}

impl Language {
    /// The one a link on the page asked for, or the first of a browser's that is there.
    fn of(query: &str, accepted: &str) -> Self {
        let named = |tag: &str| match tag.get(..2).map(str::to_ascii_lowercase)?.as_str() {
            "en" => Some(Language::English),
            "es" => Some(Language::Spanish),
            _ => None,
        };
        query
            .strip_prefix("lang=")
            .and_then(named)
            .or_else(|| accepted.split(',').map(str::trim).find_map(named))
            .unwrap_or(Language::English)
    }

    fn text(self) -> &'static str {
        match self {
            Language::English => include_str!("page/en.html"),
            Language::Spanish => include_str!("page/es.html"),
        }
    }

    /// Goes on after "machines on local networks".
    fn and_for(self, names: &str) -> String {
        match self {
            Language::English => format!(" and for {names}"),
            Language::Spanish => format!(" y por {names}"),
        }
    }
}

/// The page's text, with what this authority and this phone put in.
fn written(local: &Local, app: &str, holding: Holding, language: Language) -> String {
    let authority = &local.authority;
    let open = |which| if holding == which { " open" } else { "" };
    let asked: Vec<String> = local.asked.iter().map(Name::to_string).collect();
    let scope = match asked.as_slice() {
        [] => String::new(),
        names => language.and_for(&names.join(", ")),
    };
    let ends = authority.ends_at().strftime("%Y-%m-%d").to_string();
    let fingerprint = in_groups(&authority.fingerprint());
    let mut text = language.text().to_owned();
    for (place, value) in [
        ("{iphone}", open(Holding::IPhone).to_owned()),
        ("{android}", open(Holding::Android).to_owned()),
        ("{computer}", open(Holding::Computer).to_owned()),
        ("{fingerprint}", fingerprint),
        ("{app}", escaped(app)),
        ("{name}", escaped(authority.name())),
        ("{scope}", escaped(&scope)),
        ("{ends}", ends),
    ] {
        text = text.replace(place, &value);
    }
    text
}

/// Four pairs to a group, so that an eye keeps its place while comparing.
fn in_groups(fingerprint: &str) -> String {
    let pairs: Vec<&str> = fingerprint.split(':').collect();
    let groups: Vec<String> = pairs
        .chunks(4)
        .map(|group| format!("<span>{}</span>", group.join(" ")))
        .collect();
    groups.join(" ")
}

/// Text as it may stand in HTML and XML.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
        .replace('"', "&quot;")
}

/// What Apple's phones take an authority as: a configuration profile with one certificate in it. Its
/// identifiers come from the certificate, so that installing it again replaces it.
fn configuration_profile(authority: &Authority) -> String {
    let digest = authority.digest();
    let identifier = |from: usize| {
        let mut bytes = [0; 16];
        bytes.copy_from_slice(&digest[from..from + 16]);
        uuid::Builder::from_random_bytes(bytes).into_uuid()
    };
    let (outer, inner): (Uuid, Uuid) = (identifier(0), identifier(16));
    include_str!("page/profile.xml")
        .replace("{name}", &escaped(authority.name()))
        .replace("{certificate}", &STANDARD.encode(authority.der()))
        .replace("{outer}", &outer.to_string().to_uppercase())
        .replace("{inner}", &inner.to_string().to_uppercase())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_host_is_read_with_and_without_a_port() {
        let name = |text: &str| Some(text.parse::<Name>().unwrap());
        assert_eq!(host_of("slate.local:8080"), name("slate.local"));
        assert_eq!(host_of("10.0.0.7"), name("10.0.0.7"));
        assert_eq!(host_of("[fd00::2]:8080"), name("fd00::2"));
        assert_eq!(host_of("[fd00::2]"), name("fd00::2"));
        assert_eq!(host_of("\"><script>"), None);
    }

    #[test]
    fn the_language_is_the_one_asked_for_or_the_browsers() {
        let of = Language::of;
        assert_eq!(of("", "es-MX,es;q=0.9,en;q=0.8"), Language::Spanish);
        assert_eq!(of("", "fr-FR, en-GB;q=0.7, es;q=0.5"), Language::English);
        assert_eq!(of("lang=en", "es"), Language::English);
        assert_eq!(of("lang=xx", ""), Language::English);
    }

    #[test]
    fn both_languages_have_the_same_places_and_links() {
        let parts = |text: &str, opening: char, closing: char| -> Vec<String> {
            let mut found: Vec<String> = text
                .split(opening)
                .skip(1)
                .filter_map(|rest| rest.split_once(closing).map(|(part, _)| part.to_owned()))
                .collect();
            found.sort();
            found
        };
        let (english, spanish) = (Language::English.text(), Language::Spanish.text());
        assert_eq!(parts(english, '{', '}'), parts(spanish, '{', '}'));
        let steps = |text: &str| {
            ["<li>", "<b>", "<section>", "class=\"button"].map(|part| text.matches(part).count())
        };
        assert_eq!(steps(english), steps(spanish));
    }

    #[test]
    fn the_steps_that_are_open_are_those_of_what_is_held() {
        let by = Holding::by;
        assert_eq!(
            by("Mozilla/5.0 (iPhone; CPU iPhone OS 17_5 like Mac OS X)"),
            Holding::IPhone
        );
        assert_eq!(by("Mozilla/5.0 (Linux; Android 14; K)"), Holding::Android);
        assert_eq!(by("Mozilla/5.0 (X11; Linux x86_64)"), Holding::Computer);
        assert_eq!(by(""), Holding::Computer);
    }
}
