//! Starting and stopping the server. Nothing heavy happens before it listens: the database is opened
//! and its keys read, and everything else waits for the first request that needs it.

use std::{io, net::SocketAddr, time::Duration};

use actix_web::{
    App as Application, HttpServer,
    dev::ServerHandle,
    middleware::{Compress, Logger, from_fn},
    rt::task::JoinHandle,
    web,
};
use gagwright_store::{Store, StoreError, accounts, meta};
use tracing_subscriber::EnvFilter;

use super::{
    assets, extract,
    feed::Feed,
    headers,
    limits::Limits,
    routes,
    state::{App, Shared},
};
use crate::{
    config::ServeOptions,
    mail::{Mail, MailError},
    tokens::{self, TokenKeys},
    trail_file,
};

/// How long requests in flight may take when the server stops, in seconds.
const PATIENCE: u64 = 10;
/// Where the hash of the one-time set-up token is kept.
pub(super) const SETUP_TOKEN_HASH: &str = "setup_token_hash";
const TOKEN_SECRET: &str = "token_secret";

/// Why the server did not start.
#[derive(Debug, thiserror::Error)]
pub enum ServeError {
    /// The database.
    #[error(transparent)]
    Store(#[from] StoreError),
    /// The mail options.
    #[error(transparent)]
    Mail(#[from] MailError),
    /// Another program listens there.
    #[error(
        "{listen} is taken by another program. Stop that one, or choose another port, for example \
         --listen 127.0.0.1:8081"
    )]
    Taken {
        /// What was asked for.
        listen: String,
    },
    /// Not an address of this machine, or not allowed.
    #[error(
        "cannot listen on {listen}: {why}. Write it as ADDRESS:PORT, for example 127.0.0.1:8080"
    )]
    Listen {
        /// What was asked for.
        listen: String,
        /// The system's words.
        why: String,
    },
    /// A public address that is none.
    #[error("--public-url is {0:?}; write it as https://HOST or http://HOST:PORT")]
    PublicUrl(String),
    /// It ran and broke.
    #[error("the server stopped: {0}")]
    Stopped(String),
}

/// A server that listens.
pub struct Running {
    /// Where.
    pub address: SocketAddr,
    /// What people type.
    pub public_url: String,
    /// The one-time link with which the first account is made, when there is none yet.
    pub setup_link: Option<String>,
    /// What the handlers share, for whoever started it in the same process.
    pub shared: App,
    handle: ServerHandle,
    task: JoinHandle<io::Result<()>>,
}

impl Running {
    /// Lets requests in flight finish, hangs up on event streams, and comes back when all is closed.
    pub async fn stop(self) {
        self.shared.feed.close();
        self.handle.stop(true).await;
        let _ = self.task.await;
    }
}

/// Opens the database and listens. Comes back at once; the server runs until it is stopped.
///
/// # Errors
/// When the database cannot be opened, the address is taken, or an option is not valid.
pub async fn start(options: ServeOptions) -> Result<Running, ServeError> {
    let store = Store::open(&options.database)?;
    store.migrate()?;
    trail_file::ensure_log_key_in(&store)?;
    let mail = Mail::new(&options)?;
    let tokens = TokenKeys::new(&token_secret(&store)?);
    let public_url = options.public_url.as_deref().map(checked_url).transpose()?;

    let listener =
        std::net::TcpListener::bind(&options.listen).map_err(|error| cannot(&options, &error))?;
    let address = listener
        .local_addr()
        .map_err(|error| cannot(&options, &error))?;
    let public_url = public_url.unwrap_or_else(|| format!("http://{address}"));
    let setup_link = setup_token(&store)?.map(|token| format!("{public_url}/setup#{token}"));

    let shared = web::Data::new(Shared {
        store,
        tokens,
        feed: Feed::default(),
        mail,
        limits: Limits::default(),
        secure: public_url.starts_with("https://"),
        public_url: public_url.clone(),
        behind_proxy: options.behind_proxy,
    });
    let for_workers = shared.clone();
    let mut server = HttpServer::new(move || {
        Application::new()
            .app_data(for_workers.clone())
            .configure(extract::configure)
            .configure(routes::configure)
            .default_service(web::to(assets::serve))
            .wrap(Compress::default())
            .wrap(from_fn(headers::secure))
            // The path alone: a query may hold a token.
            .wrap(
                Logger::new("%s %{method}xi %U %Dms")
                    .custom_request_replace("method", |request| request.method().to_string()),
            )
    })
    .shutdown_timeout(PATIENCE)
    .keep_alive(Duration::from_secs(60))
    .disable_signals();
    if let Some(workers) = options.workers {
        server = server.workers(workers.max(1));
    }
    let server = server
        .listen(listener)
        .map_err(|error| cannot(&options, &error))?
        .run();
    let handle = server.handle();
    let task = actix_web::rt::spawn(server);
    actix_web::rt::spawn(tidy(shared.clone()));
    Ok(Running {
        address,
        public_url,
        setup_link,
        shared,
        handle,
        task,
    })
}

/// Serves until the process is told to stop (Ctrl-C or SIGTERM).
///
/// # Errors
/// As [`start`].
pub fn serve(options: ServeOptions) -> Result<(), ServeError> {
    log_to_standard_error();
    actix_web::rt::System::new().block_on(async move {
        let running = start(options).await?;
        println!("Gagwright listens on {}", running.public_url);
        if let Some(link) = &running.setup_link {
            println!(
                "Nobody has an account yet. Open this link once to make the first one:\n  {link}"
            );
        }
        told_to_stop()
            .await
            .map_err(|error| ServeError::Stopped(error.to_string()))?;
        running.stop().await;
        Ok(())
    })
}

/// What goes wrong, and with `RUST_LOG=info` every request, to standard error.
fn log_to_standard_error() {
    let filter =
        EnvFilter::try_from_default_env().unwrap_or_else(|_| EnvFilter::new("warn,gagwright=info"));
    // Whoever embeds the server may have set a log up already; theirs stays.
    let _ = tracing_subscriber::fmt()
        .with_env_filter(filter)
        .with_writer(io::stderr)
        .try_init();
}

#[cfg(unix)]
async fn told_to_stop() -> io::Result<()> {
    use actix_web::rt::signal::unix::{SignalKind, signal};
    let mut terminate = signal(SignalKind::terminate())?;
    let mut interrupt = signal(SignalKind::interrupt())?;
    futures_util::future::select(Box::pin(terminate.recv()), Box::pin(interrupt.recv())).await;
    Ok(())
}

#[cfg(not(unix))]
async fn told_to_stop() -> io::Result<()> {
    actix_web::rt::signal::ctrl_c().await
}

/// Now and then forgets callers who went quiet, answers too old to be asked for again and sessions that
/// ended long ago.
async fn tidy(app: App) {
    /// A phone that was off for a month has been given up.
    const KEEP_ANSWERS: jiff::SignedDuration = jiff::SignedDuration::from_hours(24 * 35);
    loop {
        actix_web::rt::time::sleep(Duration::from_secs(3600)).await;
        app.limits.forget_the_quiet();
        let before = crate::clock::now() - KEEP_ANSWERS;
        let purged = super::state::write(&app, move |conn| {
            gagwright_store::idempotency::purge_before(conn, before)?;
            gagwright_store::sessions::purge_before(conn, before)?;
            Ok(())
        })
        .await;
        if let Err(error) = purged {
            tracing::warn!(%error, "old answers and sessions were not cleared away");
        }
    }
}

fn cannot(options: &ServeOptions, error: &io::Error) -> ServeError {
    let listen = options.listen.clone();
    match error.kind() {
        io::ErrorKind::AddrInUse => ServeError::Taken { listen },
        _ => ServeError::Listen {
            listen,
            why: error.to_string(),
        },
    }
}

fn checked_url(given: &str) -> Result<String, ServeError> {
    let trimmed = given.trim_end_matches('/');
    let host = trimmed
        .strip_prefix("https://")
        .or_else(|| trimmed.strip_prefix("http://"));
    match host {
        Some(host) if !host.is_empty() && !host.contains(['/', '?', '#', ' ']) => {
            Ok(trimmed.into())
        }
        _ => Err(ServeError::PublicUrl(given.into())),
    }
}

/// The secret that signs access tokens, made on the first start.
fn token_secret(store: &Store) -> Result<Vec<u8>, StoreError> {
    let fresh = tokens::secret();
    store.write(move |conn| {
        if let Some(secret) = meta::get(conn, TOKEN_SECRET)? {
            return Ok(secret.into_bytes());
        }
        meta::set(conn, TOKEN_SECRET, &fresh)?;
        Ok(fresh.into_bytes())
    })
}

/// A fresh set-up token while nobody has an account. Only its hash is kept, so each start prints a new
/// one and the one before stops working.
fn setup_token(store: &Store) -> Result<Option<String>, StoreError> {
    let token = tokens::secret();
    store.write(move |conn| {
        if accounts::count(conn)? > 0 {
            return Ok(None);
        }
        meta::set(conn, SETUP_TOKEN_HASH, &setup_hash(&token))?;
        Ok(Some(token))
    })
}

/// What is kept of a set-up token.
pub(super) fn setup_hash(token: &str) -> String {
    tokens::secret_hash(token)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}
