//! Tells connected phones that something changed. The trail is the feed: a listener remembers how far
//! it has read and asks for what came after, woken by each write of this server and, for writes of
//! other processes on the same database, every two seconds. So nothing is told before it is committed
//! and nothing is missed when a listener is slow.

use std::{
    convert::Infallible,
    sync::{
        Arc,
        atomic::{AtomicBool, Ordering},
    },
    time::Duration,
};

use actix_web::{rt::time::timeout, web::Bytes};
use futures_util::{Stream, stream};
use gagwright_casting::ProductionId;
use jiff::Timestamp;
use tokio::sync::broadcast;

use super::{
    caller::Caller,
    problem::Problem,
    state::{App, read},
};
use crate::{clock, permissions::Permission, views};

/// How often a listener looks for itself.
const LOOK_EVERY: Duration = Duration::from_secs(2);
/// Quiet looks between two signs of life, so that proxies and phones keep the connection: 14 s.
const QUIET_LOOKS: u32 = 7;
/// Most changes told at once; the rest follows at once.
const AT_ONCE: u32 = 200;

/// Wakes listeners. Clones share it.
#[derive(Clone)]
pub struct Feed {
    writes: broadcast::Sender<()>,
    closing: Arc<AtomicBool>,
}

impl Default for Feed {
    fn default() -> Self {
        Self {
            writes: broadcast::channel(16).0,
            closing: Arc::default(),
        }
    }
}

impl Feed {
    /// Something was committed.
    pub fn wrote(&self) {
        // Nobody listening is no failure.
        let _ = self.writes.send(());
    }

    /// Ends every listener, so that a stopping server does not wait for phones to hang up.
    pub fn close(&self) {
        self.closing.store(true, Ordering::SeqCst);
        self.wrote();
    }
}

struct Listener {
    app: App,
    caller: Caller,
    production: ProductionId,
    next: u64,
    until: Timestamp,
    writes: broadcast::Receiver<()>,
    quiet: u32,
    greeted: bool,
}

/// The event stream of one production from a trail position on, for as long as the listener's token is good
/// and they may read the production.
pub fn listen(
    app: App,
    caller: Caller,
    production: ProductionId,
    next: u64,
    until: Timestamp,
) -> impl Stream<Item = Result<Bytes, Infallible>> {
    let writes = app.feed.writes.subscribe();
    let listener = Listener {
        app,
        caller,
        production,
        next,
        until,
        writes,
        quiet: 0,
        greeted: false,
    };
    stream::unfold(listener, |mut listener| async move {
        let told = listener.hear().await?;
        Some((Ok(told), listener))
    })
}

impl Listener {
    /// The next thing to send; none when the server closes, the listener's token has run out, they may not
    /// read the production any more or the store fails, and then the browser connects again with the last
    /// event's id.
    async fn hear(&mut self) -> Option<Bytes> {
        if !self.greeted {
            self.greeted = true;
            return Some(Bytes::from_static(b"retry: 2000\n: connected\n\n"));
        }
        loop {
            if self.app.feed.closing.load(Ordering::SeqCst) || clock::now() >= self.until {
                return None;
            }
            let told = self.look().await.ok()?;
            if !told.is_empty() {
                self.quiet = 0;
                return Some(Bytes::from(told));
            }
            // Woken, out of patience or lagging behind: in each case the answer is to look again.
            let _ = timeout(LOOK_EVERY, self.writes.recv()).await;
            self.quiet += 1;
            if self.quiet >= QUIET_LOOKS {
                self.quiet = 0;
                return Some(Bytes::from_static(b": still here\n\n"));
            }
        }
    }

    async fn look(&mut self) -> Result<String, Problem> {
        let (caller, production, next) = (self.caller, self.production, self.next);
        let items = read(&self.app, move |conn| {
            let reader = caller.on_production(conn, production, Permission::ReadProduction)?;
            views::heard(conn, &reader, next, AT_ONCE)
        })
        .await?;
        let mut told = String::new();
        for item in items {
            let data = serde_json::to_string(&item).map_err(Problem::internal)?;
            told.push_str(&format!(
                "id: {}\nevent: change\ndata: {data}\n\n",
                item.index
            ));
            self.next = item.index + 1;
        }
        Ok(told)
    }
}
