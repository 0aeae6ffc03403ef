//! A demo server on a port of its own, and a client that speaks to it as any program would. Knows
//! nothing of the rules: what comes back is JSON.

use std::{sync::mpsc, thread};

use gagwright::{
    clock, demo, entropy,
    http::{ServeOptions, start},
};
use gagwright_store::Store;
use serde_json::{Value, json};
use tokio::sync::oneshot;
use uuid::Uuid;

/// What went wrong before a test could ask its question.
pub type Trouble = Box<dyn std::error::Error>;

/// A running server over the demo production. It stops when dropped.
pub struct DemoServer {
    url: String,
    stop: Option<oneshot::Sender<()>>,
    thread: Option<thread::JoinHandle<()>>,
}

impl DemoServer {
    /// Seeds the demo into a database and serves it.
    ///
    /// # Errors
    /// When the database cannot be opened or seeded, or the server does not start.
    pub fn start(database: &str) -> Result<Self, Trouble> {
        let store = Store::open(database)?;
        store.migrate()?;
        demo::seed(&store, clock::now(), entropy::system)?;
        drop(store);
        let options = ServeOptions {
            database: database.to_owned(),
            listen: "127.0.0.1:0".into(),
            workers: Some(1),
            ..ServeOptions::default()
        };
        let (told, hear) = mpsc::channel();
        let thread = thread::spawn(move || {
            actix_web::rt::System::new().block_on(async move {
                let (stop, stopped) = oneshot::channel();
                match start(options).await {
                    Ok(running) => {
                        // A listener that is gone means that the test has ended already.
                        let _ = told.send(Ok((running.address, stop)));
                        let _ = stopped.await;
                        running.stop().await;
                    }
                    Err(error) => {
                        let _ = told.send(Err(error.to_string()));
                    }
                }
            });
        });
        let (address, stop) = hear.recv()??;
        Ok(Self {
            url: format!("http://{address}/api/v1"),
            stop: Some(stop),
            thread: Some(thread),
        })
    }

    /// Signs in as one of the demo's people, by the local part of their address.
    ///
    /// # Errors
    /// When the server refuses.
    pub fn sign_in(&self, who: &str) -> Result<Client, Trouble> {
        let body = json!({
            "email": format!("{who}@salt-meridian.example"),
            "password": demo::PASSWORD,
        });
        let (status, session) = call("POST", &format!("{}/sessions", self.url), None, Some(&body))?;
        if status != 200 {
            return Err(format!("signing in as {who}: {status} {session}").into());
        }
        Ok(Client {
            url: self.url.clone(),
            token: text(&session, "/access_token"),
            production: text(&session, "/memberships/0/production/id"),
        })
    }
}

impl Drop for DemoServer {
    fn drop(&mut self) {
        if let Some(stop) = self.stop.take() {
            let _ = stop.send(());
        }
        if let Some(thread) = self.thread.take() {
            let _ = thread.join();
        }
    }
}

/// Someone signed in.
pub struct Client {
    url: String,
    token: String,
    /// The production they are on.
    pub production: String,
}

impl Client {
    /// Asks for JSON; gives the status and the answer.
    ///
    /// # Errors
    /// When the server cannot be reached.
    pub fn get(&self, path: &str) -> Result<(u16, Value), Trouble> {
        call(
            "GET",
            &format!("{}{path}", self.url),
            Some(&self.token),
            None,
        )
    }

    /// Asks for bytes.
    ///
    /// # Errors
    /// When the server cannot be reached or does not answer 200.
    pub fn bytes(&self, path: &str) -> Result<Vec<u8>, Trouble> {
        let mut answer = agent()
            .get(format!("{}{path}", self.url))
            .header("authorization", format!("Bearer {}", self.token))
            .call()?;
        let body = answer
            .body_mut()
            .with_config()
            .limit(64 << 20)
            .read_to_vec()?;
        if answer.status() != 200 {
            return Err(format!("{path}: {}", answer.status()).into());
        }
        Ok(body)
    }

    /// Sends a write under a fresh idempotency key.
    ///
    /// # Errors
    /// When the server cannot be reached.
    pub fn post(&self, path: &str, body: &Value) -> Result<(u16, Value), Trouble> {
        call(
            "POST",
            &format!("{}{path}", self.url),
            Some(&self.token),
            Some(body),
        )
    }
}

fn agent() -> ureq::Agent {
    ureq::Agent::config_builder()
        .http_status_as_error(false)
        .build()
        .into()
}

fn call(
    method: &str,
    url: &str,
    token: Option<&str>,
    body: Option<&Value>,
) -> Result<(u16, Value), Trouble> {
    let mut request = ureq::http::Request::builder()
        .method(method)
        .uri(url)
        .header("idempotency-key", Uuid::now_v7().to_string());
    if let Some(token) = token {
        request = request.header("authorization", format!("Bearer {token}"));
    }
    let mut answer = match body {
        Some(body) => agent().run(
            request
                .header("content-type", "application/json")
                .body(body.to_string())?,
        )?,
        None => agent().run(request.body(())?)?,
    };
    let bytes = answer
        .body_mut()
        .with_config()
        .limit(64 << 20)
        .read_to_vec()?;
    Ok((answer.status().as_u16(), serde_json::from_slice(&bytes)?))
}

/// The string at a JSON pointer, empty when there is none.
pub fn text(value: &Value, pointer: &str) -> String {
    value
        .pointer(pointer)
        .and_then(Value::as_str)
        .unwrap_or_default()
        .to_owned()
}
