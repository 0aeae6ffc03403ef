//! A server to test, a client that calls it, and a production to call about.

use std::{fs, path::Path, sync::mpsc, thread};

use gagwright::{
    http::{ServeOptions, start},
    tokens::TokenKeys,
};
use gagwright_store::Store;
use serde_json::{Value, json};
use tempfile::TempDir;
use tokio::sync::oneshot;
use ureq::http;
use uuid::Uuid;

/// A running server. It stops when dropped.
pub struct Server {
    pub url: String,
    pub setup_token: String,
    pub store: Store,
    pub tokens: TokenKeys,
    pub folder: TempDir,
    stop: Option<oneshot::Sender<()>>,
    thread: Option<thread::JoinHandle<()>>,
}

impl Server {
    /// Starts one on an empty database.
    pub fn start() -> Self {
        Self::start_in(tempfile::tempdir().unwrap())
    }

    /// Starts one on whatever the folder holds.
    pub fn start_in(folder: TempDir) -> Self {
        let options = ServeOptions {
            database: format!("sqlite:{}", folder.path().join("kept.db").display()),
            listen: "127.0.0.1:0".into(),
            outbox: folder.path().join("outbox"),
            workers: Some(1),
            ..ServeOptions::default()
        };
        let (told, hear) = mpsc::channel();
        let thread = thread::spawn(move || {
            actix_web::rt::System::new().block_on(async move {
                let running = start(options).await.expect("the server starts");
                let (stop, stopped) = oneshot::channel();
                let store = running.shared.store.clone();
                let tokens = running.shared.tokens.clone();
                let link = running.setup_link.clone();
                told.send((running.address, link, store, tokens, stop))
                    .unwrap();
                let _ = stopped.await;
                running.stop().await;
            });
        });
        let (address, link, store, tokens, stop) = hear.recv().unwrap();
        let setup_token = link
            .and_then(|link| link.split_once('#').map(|(_, token)| token.to_owned()))
            .unwrap_or_default();
        Self {
            url: format!("http://{address}"),
            setup_token,
            store,
            tokens,
            folder,
            stop: Some(stop),
            thread: Some(thread),
        }
    }

    /// Stops it, waiting for what is in flight, and gives back its folder.
    pub fn stop(mut self) -> TempDir {
        self.halt();
        std::mem::replace(&mut self.folder, tempfile::tempdir().unwrap())
    }

    fn halt(&mut self) {
        if let Some(stop) = self.stop.take() {
            let _ = stop.send(());
        }
        if let Some(thread) = self.thread.take() {
            thread.join().unwrap();
        }
    }

    /// A call under `/api/v1`.
    pub fn call(&self, method: &str, path: &str) -> Call {
        Call::new(method, &format!("{}/api/v1{path}", self.url))
    }

    /// A call to an address as it stands.
    pub fn plain(&self, method: &str, path: &str) -> Call {
        Call::new(method, &format!("{}{path}", self.url))
    }

    /// Leaves in a production's trail.
    pub fn trail_size(&self, production: Uuid) -> u64 {
        let production = gagwright_casting::ProductionId(production);
        self.store
            .read(|conn| gagwright_store::trail::size(conn, production))
            .unwrap()
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.halt();
    }
}

/// One call being put together.
pub struct Call {
    request: http::request::Builder,
    body: Option<Vec<u8>>,
}

impl Call {
    fn new(method: &str, url: &str) -> Self {
        Self {
            request: http::Request::builder().method(method).uri(url),
            body: None,
        }
    }

    pub fn header(mut self, name: &str, value: &str) -> Self {
        self.request = self.request.header(name, value);
        self
    }

    pub fn token(self, token: &str) -> Self {
        self.header("authorization", &format!("Bearer {token}"))
    }

    pub fn key(self, key: Uuid) -> Self {
        self.header("idempotency-key", &key.to_string())
    }

    /// A fresh idempotency key.
    pub fn once(self) -> Self {
        self.key(Uuid::now_v7())
    }

    pub fn json(self, body: &Value) -> Self {
        self.body("application/json", body.to_string())
    }

    pub fn body(mut self, media: &str, body: impl Into<Vec<u8>>) -> Self {
        self.body = Some(body.into());
        self.header("content-type", media)
    }

    pub fn send(self) -> Got {
        let agent: ureq::Agent = ureq::Agent::config_builder()
            .http_status_as_error(false)
            .max_redirects(0)
            .build()
            .into();
        let answer = match self.body {
            Some(body) => agent.run(self.request.body(body).unwrap()),
            None => agent.run(self.request.body(()).unwrap()),
        };
        let mut answer = answer.expect("the server answers");
        let body = answer
            .body_mut()
            .with_config()
            .limit(64 << 20)
            .read_to_vec()
            .unwrap();
        Got {
            status: answer.status().as_u16(),
            headers: answer.headers().clone(),
            body,
        }
    }
}

/// An answer.
pub struct Got {
    pub status: u16,
    pub headers: http::HeaderMap,
    pub body: Vec<u8>,
}

impl Got {
    pub fn header(&self, name: &str) -> &str {
        self.headers
            .get(name)
            .map(|value| value.to_str().unwrap())
            .unwrap_or_default()
    }

    pub fn text(&self) -> &str {
        std::str::from_utf8(&self.body).unwrap()
    }

    pub fn json(&self) -> Value {
        serde_json::from_slice(&self.body).unwrap_or_else(|_| panic!("no JSON: {}", self.text()))
    }

    /// The body, when the status is the expected one.
    #[track_caller]
    pub fn expect(self, status: u16) -> Value {
        assert_eq!(self.status, status, "{}", self.text());
        if self.body.is_empty() {
            Value::Null
        } else {
            self.json()
        }
    }

    /// The problem document, when its code and status are the expected ones.
    #[track_caller]
    pub fn refused(self, status: u16, code: &str) -> Value {
        assert_eq!(self.status, status, "{}", self.text());
        assert_eq!(self.header("content-type"), "application/problem+json");
        let document = self.json();
        assert_eq!(document["code"], code, "{document}");
        assert_eq!(document["status"], status);
        assert_eq!(document["type"], format!("/problems/{code}"));
        assert!(
            document["detail"]
                .as_str()
                .is_some_and(|detail| detail.len() > 10),
            "{document}"
        );
        document
    }

    /// The refresh cookie that the answer sets, as it is sent back.
    pub fn cookie(&self) -> String {
        self.header("set-cookie")
            .split(';')
            .next()
            .unwrap()
            .to_owned()
    }
}

/// A production with its coordinator signed in.
pub struct World {
    pub server: Server,
    pub production: Uuid,
    pub coordinator: String,
    pub person: Uuid,
}

pub const PASSWORD: &str = "salt flats at dawn";

impl World {
    /// Sets an empty server up as its owner would, through the printed link.
    pub fn new() -> Self {
        let server = Server::start();
        let session = server
            .call("POST", "/setup")
            .json(&json!({
                "token": server.setup_token,
                "name": "Thandeka Mbeki",
                "email": "thandeka@example.test",
                "password": PASSWORD,
                "production_name": "Salt Meridian",
                "time_zone": "Africa/Windhoek",
            }))
            .send()
            .expect(201);
        let id = |pointer: &str| id_at(&session, pointer);
        let (production, person) = (
            id("/memberships/0/production/id"),
            id("/memberships/0/person/id"),
        );
        let coordinator = session["access_token"].as_str().unwrap().to_owned();
        Self {
            server,
            production,
            coordinator,
            person,
        }
    }

    /// An address under the production.
    pub fn at(&self, path: &str) -> String {
        format!("/productions/{}{path}", self.production)
    }

    /// A call by the coordinator.
    pub fn call(&self, method: &str, path: &str) -> Call {
        self.server.call(method, path).token(&self.coordinator)
    }

    /// Somebody new on the roster.
    pub fn person(&self, code: &str, name: &str, email: &str) -> Uuid {
        let id = Uuid::now_v7();
        self.call("PUT", &self.at(&format!("/people/{id}")))
            .once()
            .header("if-none-match", "*")
            .json(&json!({
                "id": id, "code": code, "name": name, "occupation": "performer", "performs": true,
                "email": email,
            }))
            .send()
            .expect(201);
        id
    }

    /// Somebody new with an account and these hats, invited by mail; their access token.
    pub fn member(&self, code: &str, name: &str, email: &str, roles: &[&str]) -> (Uuid, String) {
        let person = self.person(code, name, email);
        self.call("POST", &self.at("/invitations"))
            .once()
            .json(&json!({ "person": person, "roles": roles }))
            .send()
            .expect(201);
        let token = self.invitation_to(email);
        let session = self
            .server
            .call("POST", "/invitations/accept")
            .json(&json!({ "token": token, "name": name, "password": PASSWORD }))
            .send()
            .expect(200);
        (person, session["access_token"].as_str().unwrap().to_owned())
    }

    /// A medic with the certificate that the policy asks of one; their access token.
    pub fn medic(&self) -> String {
        let (person, token) = self.member(
            "P02",
            "Mirembe Achterberg",
            "mirembe@example.test",
            &["medic"],
        );
        let path = self.at(&format!("/people/{person}"));
        let mut known = self.call("GET", &path).send().expect(200)["person"].clone();
        known["certificates"] = json!([{
            "id": Uuid::now_v7(), "kind": "paramedic", "issued": "2025-01-01", "expires": "2099-12-31",
            "checked": { "by": "Thandeka Mbeki", "on": "2025-06-01", "method": "sight of original" },
        }]);
        self.call("PUT", &path)
            .once()
            .header("if-match", "\"1\"")
            .json(&known)
            .send()
            .expect(200);
        token
    }

    /// The token in the letter that waits in the outbox for an address.
    pub fn invitation_to(&self, email: &str) -> String {
        let outbox = self.server.folder.path().join("outbox");
        for _ in 0..100 {
            if let Some(token) = letter_to(&outbox, email) {
                return token;
            }
            thread::sleep(std::time::Duration::from_millis(20));
        }
        panic!("no letter to {email}");
    }

    /// A new high fall with nothing but the defaults.
    pub fn gag(&self, code: &str) -> (Uuid, Value) {
        let id = Uuid::now_v7();
        let page = self
            .call("POST", &self.at("/gags"))
            .once()
            .json(&json!({
                "id": id, "code": code, "title": "Off the water tower", "technique": "high-fall",
            }))
            .send()
            .expect(201);
        (id, page)
    }

    pub fn trail_size(&self) -> u64 {
        self.server.trail_size(self.production)
    }
}

fn letter_to(outbox: &Path, email: &str) -> Option<String> {
    for file in fs::read_dir(outbox).ok()? {
        let letter = fs::read_to_string(file.ok()?.path()).ok()?;
        if !letter.contains(email) {
            continue;
        }
        // Quoted-printable breaks long lines with "=" and the line's end.
        let whole = letter.replace("=\r\n", "").replace("=\n", "");
        let token = whole.split("/invitation#").nth(1)?;
        return Some(
            token
                .chars()
                .take_while(|one| !one.is_whitespace())
                .collect(),
        );
    }
    None
}

pub fn id_at(value: &Value, pointer: &str) -> Uuid {
    let text = value.pointer(pointer).and_then(Value::as_str);
    text.unwrap_or_else(|| panic!("no {pointer} in {value}"))
        .parse()
        .unwrap()
}

/// All text of a PDF, without its blanks: a reader may put them anywhere.
pub fn text_of(packet: &[u8]) -> String {
    let pdf = lopdf::Document::load_mem(packet).unwrap();
    let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
    let text = pdf.extract_text(&pages).unwrap();
    text.chars().filter(|one| !one.is_whitespace()).collect()
}
