//! HTTPS on a set's own network: the app for those who trust the authority, the page about trusting for
//! those who do not yet, and nothing of the API without HTTPS.

use std::{
    fs,
    io::{BufRead, BufReader, Write},
    path::PathBuf,
    time::Duration,
};

use base64::{Engine, engine::general_purpose::STANDARD};
use gagwright::{
    http::ServeOptions,
    lan::{Https, addresses::Machine},
};
use serde_json::{Value, json};

use crate::{
    lan_support::{LanServer, at, get, openssl_says, options},
    support::Server,
};

fn on_a_set() -> LanServer {
    let folder = tempfile::tempdir().unwrap();
    let options = ServeOptions {
        lan: true,
        lan_names: vec!["Slate.Local".into()],
        ..options(folder.path())
    };
    LanServer::start(folder, options).expect("it starts")
}

impl LanServer {
    fn authority(&self) -> PathBuf {
        self.folder.path().join("gagwright-lan/authority.crt")
    }
}

/// Gives an empty server its first account over HTTPS; what it answered.
fn found(server: &LanServer, token: &str) -> String {
    let body = json!({
        "token": token, "name": "Ailbhe Varga", "email": "ailbhe@salt-meridian.example",
        "password": "a long enough password", "production_name": "Salt Meridian", "time_zone": "Europe/Lisbon",
    })
    .to_string();
    let request = format!(
        "POST /api/v1/setup HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n\
         Content-Length: {}\r\nConnection: close\r\n\r\n{body}",
        body.len()
    );
    server
        .call(&server.authority(), "localhost", &request)
        .unwrap()
}

#[test]
fn the_app_is_there_for_whoever_trusts_the_authority() {
    let server = on_a_set();
    assert_eq!(
        server.public_url,
        format!("https://slate.local:{}", server.port)
    );
    for name in ["localhost", "127.0.0.1", "slate.local"] {
        let answer = server
            .call(&server.authority(), name, &get("/api/v1/status"))
            .unwrap();
        assert!(answer.starts_with("HTTP/1.1 200"), "{answer}");
        // The host may be another machine tomorrow, and its plain port has the page about trusting.
        assert!(
            !answer.to_lowercase().contains("strict-transport"),
            "{answer}"
        );
    }
    let elsewhere = server.call(&server.authority(), "bank.example", &get("/"));
    assert!(
        elsewhere.as_ref().is_err_and(|why| why.contains("NotValidForName")
            || why.contains("not valid for name")),
        "{elsewhere:?}"
    );
    let stranger = on_a_set();
    let refused = server.call(&stranger.authority(), "localhost", &get("/"));
    assert!(
        refused
            .as_ref()
            .is_err_and(|why| why.contains("UnknownIssuer") || why.contains("BadSignature")),
        "{refused:?}"
    );
}

#[test]
fn signing_in_and_live_changes_work_over_https() {
    let folder = tempfile::tempdir().unwrap();
    let options = ServeOptions {
        lan: true,
        ..options(folder.path())
    };
    let server = LanServer::start(folder, options).unwrap();
    let token = server.setup_token.clone();
    let answer = found(&server, &token);
    assert!(answer.starts_with("HTTP/1.1 201"), "{answer}");
    let cookie = answer
        .lines()
        .find(|line| line.to_lowercase().starts_with("set-cookie:"))
        .unwrap();
    assert!(
        cookie.contains("; Secure") && cookie.contains("; HttpOnly"),
        "{cookie}"
    );

    let session: Value = serde_json::from_str(answer.split_once("\r\n\r\n").unwrap().1).unwrap();
    let access = session["access_token"].as_str().unwrap();
    let production = session["memberships"][0]["production"]["id"]
        .as_str()
        .unwrap();
    let mut stream = server.connect(&server.authority(), "127.0.0.1").unwrap();
    stream
        .sock
        .set_read_timeout(Some(Duration::from_secs(10)))
        .unwrap();
    write!(
        stream,
        "GET /api/v1/productions/{production}/events?access_token={access} HTTP/1.1\r\nHost: localhost\r\n\r\n"
    )
    .unwrap();
    let mut phone = BufReader::new(stream);
    let mut line = || {
        let mut line = String::new();
        phone
            .read_line(&mut line)
            .expect("something within ten seconds");
        assert!(!line.is_empty(), "the server hung up");
        line
    };
    assert!(line().contains("200"));
    while !line().contains("connected") {}

    let hold = json!({ "id": uuid::Uuid::now_v7(), "reason": "wind" }).to_string();
    let raised = server
        .call(
            &server.authority(),
            "localhost",
            &format!(
                "POST /api/v1/productions/{production}/holds HTTP/1.1\r\nHost: localhost\r\n\
                 Authorization: Bearer {access}\r\nIdempotency-Key: {}\r\nContent-Type: application/json\r\n\
                 Content-Length: {}\r\nConnection: close\r\n\r\n{hold}",
                uuid::Uuid::now_v7(),
                hold.len()
            ),
        )
        .unwrap();
    assert!(raised.starts_with("HTTP/1.1 201"), "{raised}");
    let heard = loop {
        let line = line();
        if let Some(data) = line.strip_prefix("data: ") {
            break serde_json::from_str::<Value>(data).unwrap();
        }
    };
    assert_eq!(heard["kind"], "hold.raised", "{heard}");
}

#[test]
fn the_plain_port_has_the_page_about_trusting_and_nothing_else() {
    let server = on_a_set();
    let crt = fs::read_to_string(server.authority()).unwrap();
    let der = pem::parse(&crt).unwrap().into_contents();
    let print = openssl_says(
        server.folder.path(),
        &[
            "x509",
            "-in",
            "gagwright-lan/authority.crt",
            "-noout",
            "-fingerprint",
            "-sha256",
        ],
    );
    let print = print.trim().rsplit('=').next().unwrap().to_owned();

    let (status, head, body) = server.plain("GET", "/");
    let body = String::from_utf8(body).unwrap();
    assert_eq!(status, 200);
    assert!(
        head.contains("content-security-policy: default-src 'none'"),
        "{head}"
    );
    assert!(!body.contains("<script") && !body.contains('{'), "{body}");
    let shown = body.split_once("class=\"print\">").unwrap().1;
    let shown = shown.split_once("</p>").unwrap().0;
    let shown = shown.replace("<span>", "").replace("</span>", "");
    assert_eq!(shown.replace(' ', ":"), print);
    // The phone came by the address, so that is where it is sent on to.
    assert!(
        body.contains(&format!("href=\"https://127.0.0.1:{}/\"", server.port)),
        "{body}"
    );

    let (status, head, body) = server.plain("GET", "/gagwright.crt");
    assert_eq!((status, body == der), (200, true));
    assert!(
        head.contains("content-type: application/x-x509-ca-cert"),
        "{head}"
    );
    let (status, head, body) = server.plain("GET", "/gagwright.mobileconfig");
    assert_eq!(status, 200);
    assert!(
        head.contains("content-type: application/x-apple-aspen-config"),
        "{head}"
    );
    let profile = String::from_utf8(body).unwrap();
    assert!(profile.contains("com.apple.security.root") && !profile.contains('{'));
    assert!(profile.contains(&STANDARD.encode(&der)), "{profile}");
    assert_eq!(server.plain("GET", "/trust.css").0, 200);

    for (method, path) in [
        ("GET", "/api/v1/status"),
        ("POST", "/api/v1/sessions"),
        ("GET", "/api/docs/"),
        ("GET", "/index.html"),
        ("GET", "/worker.js"),
        ("PUT", "/"),
        ("GET", "/gagwright-lan/authority.json"),
        ("GET", "/..%2fgagwright-lan/authority.json"),
    ] {
        let (status, head, body) = server.plain(method, path);
        assert_eq!(status, 303, "{method} {path}: {head}");
        assert!(head.contains("location: /\r\n"), "{method} {path}: {head}");
        assert!(
            body.is_empty() && !head.contains("set-cookie"),
            "{method} {path}"
        );
    }
}

#[test]
fn the_terminal_tells_the_addresses_and_the_fingerprint() {
    let server = on_a_set();
    let told = &server.announced;
    assert!(told.contains(&server.public_url), "{told}");
    assert!(
        told.contains(&format!("https://127.0.0.1:{}", server.port)),
        "{told}"
    );
    assert!(told.contains(server.page.as_ref().unwrap()), "{told}");
    let print = openssl_says(
        server.folder.path(),
        &[
            "x509",
            "-in",
            "gagwright-lan/authority.crt",
            "-noout",
            "-fingerprint",
            "-sha256",
        ],
    );
    let print = print.trim().rsplit('=').next().unwrap().to_owned();
    let joined: String = told.split_whitespace().collect();
    assert!(joined.contains(&print), "{told}");
}

#[test]
fn the_same_authority_serves_after_a_restart() {
    let server = on_a_set();
    let before = fs::read(server.authority()).unwrap();
    let folder = server.stop();
    let options = ServeOptions {
        lan: true,
        ..options(folder.path())
    };
    let again = LanServer::start(folder, options).unwrap();
    assert_eq!(before, fs::read(again.authority()).unwrap());
    let answer = again
        .call(&again.authority(), "localhost", &get("/"))
        .unwrap();
    assert!(answer.starts_with("HTTP/1.1 200"), "{answer}");
}

#[test]
fn options_for_the_set_that_will_not_do_are_named() {
    let told = |change: &dyn Fn(&mut ServeOptions)| {
        let folder = tempfile::tempdir().unwrap();
        let mut options = ServeOptions {
            lan: true,
            ..options(folder.path())
        };
        change(&mut options);
        LanServer::start(folder, options)
            .err()
            .expect("it does not start")
    };
    let name = told(&|options| options.lan_names = vec!["https://slate".into()]);
    assert!(
        name.contains("--lan-name") && name.contains("slate.local"),
        "{name}"
    );

    // A machine with an address that is nobody's own, on a listener for every address.
    let machine = Machine {
        addresses: vec!["203.0.113.9".parse().unwrap()],
        ..Machine::default()
    };
    let folder = tempfile::tempdir().unwrap();
    let asked = ServeOptions {
        lan: true,
        ..options(folder.path())
    };
    let listen = "0.0.0.0:8443".parse().unwrap();
    let now = at("2026-03-02T06:00:00Z");
    let nobody = Https::prepare(&asked, listen, &machine, now)
        .unwrap_err()
        .to_string();
    for part in ["203.0.113.9", "--lan-name", "--listen", "network"] {
        assert!(nobody.contains(part), "{nobody}");
    }
    let asked = ServeOptions {
        lan_names: vec!["203.0.113.9".into()],
        ..asked
    };
    let https = Https::prepare(&asked, listen, &machine, now)
        .unwrap()
        .unwrap();
    assert_eq!(https.addresses(), ["https://203.0.113.9:8443"]);

    let taken = Server::start();
    let address = taken.url.trim_start_matches("http://").to_owned();
    let port = told(&|options| options.lan_page.clone_from(&address));
    assert!(
        port.contains(&address) && port.contains("--lan-page"),
        "{port}"
    );
}
