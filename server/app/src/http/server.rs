//! Starting and stopping the server. Nothing heavy happens before it listens: the database is opened
//! and its keys read, and everything else waits for the first request that needs it.

use std::{
    io::{self, IsTerminal},
    net::{SocketAddr, TcpListener},
    sync::Arc,
    time::Duration,
};

use actix_web::{
    App as Application, HttpServer,
    dev::{Server, ServerHandle},
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
    clock,
    config::ServeOptions,
    lan::{Https, LanError, addresses::Machine, announce, page},
    mail::{Mail, MailError},
    tokens::{self, TokenKeys},
    trail_file,
};

/// How long requests in flight may take when the server stops, in seconds.
const PATIENCE: u64 = 10;
/// How long a phone at the edge of the network may take to agree on HTTPS.
const HANDSHAKE: Duration = Duration::from_secs(10);
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
    /// HTTPS.
    #[error(transparent)]
    Lan(#[from] LanError),
    /// Another program listens there.
    #[error(
        "{listen} is taken by another program. Stop that one, or choose another port, for example \
         {option} {}",
        listen.rsplit_once(':').map_or("127.0.0.1:8081".to_owned(), |(host, _)| format!("{host}:8081"))
    )]
    Taken {
        /// Which option says so.
        option: &'static str,
        /// What was asked for.
        listen: String,
    },
    /// Not an address of this machine, or not allowed.
    #[error(
        "cannot listen on {listen}: {why}. Write {option} as ADDRESS:PORT, for example 127.0.0.1:8080"
    )]
    Listen {
        /// Which option says so.
        option: &'static str,
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
    /// HTTPS, when this server speaks it itself.
    pub https: Option<Arc<Https>>,
    /// Where the page about trusting is, on a set's own network.
    pub page: Option<SocketAddr>,
    /// What the handlers share, for whoever started it in the same process.
    pub shared: App,
    handles: Vec<ServerHandle>,
    tasks: Vec<JoinHandle<io::Result<()>>>,
}

impl Running {
    /// Lets requests in flight finish, hangs up on event streams, and comes back when all is closed.
    pub async fn stop(self) {
        self.shared.feed.close();
        for handle in self.handles {
            handle.stop(true).await;
        }
        for task in self.tasks {
            let _ = task.await;
        }
    }

    /// The address of the page about trusting, as a phone opens it.
    pub fn page_address(&self) -> Option<String> {
        let port = self.page?.port();
        let host = self.https.as_ref()?.best_host()?.in_url();
        Some(match port {
            80 => format!("http://{host}"),
            port => format!("http://{host}:{port}"),
        })
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

    let (listener, address) = listen("--listen", &options.listen)?;
    let machine = Machine::look().map_err(LanError::Interfaces)?;
    let https = Https::prepare(&options, address, &machine, clock::now())?;
    let plain = if options.lan {
        Some(listen("--lan-page", &options.lan_page)?)
    } else {
        None
    };
    let public_url = public_url.unwrap_or_else(|| match &https {
        Some(https) => https.best_address(),
        None => format!("http://{address}"),
    });
    let setup_link = setup_token(&store)?.map(|token| format!("{public_url}/setup#{token}"));

    let shared = web::Data::new(Shared {
        store,
        tokens,
        feed: Feed::default(),
        mail,
        limits: Limits::default(),
        secure: public_url.starts_with("https://") || https.is_some(),
        only_https: public_url.starts_with("https://") && https.is_none(),
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
    .tls_handshake_timeout(HANDSHAKE)
    .disable_signals();
    if let Some(workers) = options.workers {
        server = server.workers(workers.max(1));
    }
    let refused = |error: io::Error| cannot("--listen", &options.listen, &error);
    let server = match &https {
        Some(https) => server.listen_rustls_0_23(listener, https.config()?),
        None => server.listen(listener),
    }
    .map_err(refused)?
    .run();
    let mut servers = vec![server];
    let mut page_at = None;
    if let (Some(https), Some((listener, address))) = (&https, plain) {
        let borrowed = assets::borrowed();
        let server = page::server(Arc::clone(https), borrowed, listener)
            .map_err(|error| cannot("--lan-page", &options.lan_page, &error))?;
        servers.push(server);
        page_at = Some(address);
    }
    if let Some(https) = &https {
        actix_web::rt::spawn(Arc::clone(https).watch());
    }
    actix_web::rt::spawn(tidy(shared.clone()));
    Ok(Running {
        address,
        public_url,
        setup_link,
        https,
        page: page_at,
        shared,
        handles: servers.iter().map(Server::handle).collect(),
        tasks: servers.into_iter().map(actix_web::rt::spawn).collect(),
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
        if let Some(https) = &running.https {
            let page = running.page_address();
            let colours = io::stdout().is_terminal();
            println!("\n{}", announce::text(https, page.as_deref(), colours));
        }
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

/// A listener, and where it ended up when the port was left to the system.
fn listen(option: &'static str, asked: &str) -> Result<(TcpListener, SocketAddr), ServeError> {
    TcpListener::bind(asked)
        .and_then(|listener| listener.local_addr().map(|address| (listener, address)))
        .map_err(|error| cannot(option, asked, &error))
}

fn cannot(option: &'static str, listen: &str, error: &io::Error) -> ServeError {
    let listen = listen.to_owned();
    match error.kind() {
        io::ErrorKind::AddrInUse => ServeError::Taken { option, listen },
        _ => ServeError::Listen {
            option,
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
