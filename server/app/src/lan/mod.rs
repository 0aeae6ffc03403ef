//! HTTPS without anyone's help, on a set's own network: a local certificate authority, the certificate
//! it signs for this machine, and the page on which phones learn to trust it; or a certificate brought
//! from elsewhere. Knows certificates and addresses; nothing of what is served.

pub mod addresses;
pub mod announce;
pub mod authority;
mod error;
pub mod leaf;
pub mod own;
pub mod page;

use std::{
    collections::BTreeSet,
    net::SocketAddr,
    path::Path,
    sync::{Arc, Mutex, PoisonError, RwLock},
    time::Duration,
};

use jiff::Timestamp;
use rustls::{
    ServerConfig,
    crypto::aws_lc_rs::default_provider,
    server::{ClientHello, ResolvesServerCert},
    sign::CertifiedKey,
};

pub use self::error::LanError;
use self::{
    addresses::{Machine, Name},
    authority::{Authority, Origin},
    leaf::Leaf,
    own::Own,
};
use crate::{clock, config::ServeOptions};

/// How often the machine's addresses and the certificate's time are looked at.
const EVERY: Duration = Duration::from_secs(30);

/// The certificate shown to whoever connects; it can change while the server runs.
#[derive(Debug)]
struct Shown(RwLock<Arc<CertifiedKey>>);

impl Shown {
    fn set(&self, certified: Arc<CertifiedKey>) {
        *self.0.write().unwrap_or_else(PoisonError::into_inner) = certified;
    }
}

impl ResolvesServerCert for Shown {
    fn resolve(&self, _: ClientHello<'_>) -> Option<Arc<CertifiedKey>> {
        Some(Arc::clone(
            &self.0.read().unwrap_or_else(PoisonError::into_inner),
        ))
    }
}

/// Where the certificate comes from.
#[derive(Debug)]
enum Source {
    /// From this machine's own authority.
    Local(Box<Local>),
    /// From two files.
    Own(Own),
}

/// This machine's own authority and what it last signed.
#[derive(Debug)]
pub struct Local {
    /// The authority.
    pub authority: Authority,
    /// How it came to be there.
    pub origin: Origin,
    asked: Vec<Name>,
    leaf: Mutex<Leaf>,
}

impl Local {
    /// Opens or makes the authority, and makes a certificate for the machine.
    ///
    /// # Errors
    /// When the authority cannot be used or may not speak for what was asked.
    pub fn open(
        folder: &Path,
        asked: Vec<Name>,
        anew: bool,
        machine: &Machine,
        now: Timestamp,
    ) -> Result<Self, LanError> {
        let (authority, origin) = Authority::open(folder, &asked, anew, now)?;
        if let Some(name) = asked.iter().find(|name| !authority.may_speak_for(name)) {
            return Err(LanError::NotPermitted {
                name: name.clone(),
                folder: folder.into(),
            });
        }
        let names = machine.names(&asked, |name| authority.may_speak_for(name));
        let leaf = Mutex::new(Leaf::make(&authority, names, now)?);
        Ok(Self {
            authority,
            origin,
            asked,
            leaf,
        })
    }

    /// What the certificate names at present.
    pub fn names(&self) -> BTreeSet<Name> {
        self.leaf().names.clone()
    }

    /// The certificate and key at present.
    pub fn certified(&self) -> Arc<CertifiedKey> {
        Arc::clone(&self.leaf().certified)
    }

    /// Makes another certificate when the machine has other addresses or the time runs low. Gives
    /// back what is to be shown from now on.
    ///
    /// # Errors
    /// When it cannot be made; the one before stays.
    pub fn look_again(
        &self,
        machine: &Machine,
        now: Timestamp,
    ) -> Result<Option<Arc<CertifiedKey>>, LanError> {
        let names = machine.names(&self.asked, |name| self.authority.may_speak_for(name));
        let mut leaf = self.leaf();
        if names == leaf.names && !leaf.runs_low(&self.authority, now) {
            return Ok(None);
        }
        *leaf = Leaf::make(&self.authority, names, now)?;
        Ok(Some(Arc::clone(&leaf.certified)))
    }

    fn leaf(&self) -> std::sync::MutexGuard<'_, Leaf> {
        self.leaf.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// HTTPS as this server speaks it.
#[derive(Debug)]
pub struct Https {
    shown: Arc<Shown>,
    source: Source,
    /// The names and addresses that phones can use, the best first. Never empty.
    hosts: Vec<Name>,
    port: u16,
}

impl Https {
    /// Sets HTTPS up for a listener, when the options ask for it.
    ///
    /// # Errors
    /// When something that it needs is missing or wrong.
    pub fn prepare(
        options: &ServeOptions,
        listen: SocketAddr,
        machine: &Machine,
        now: Timestamp,
    ) -> Result<Option<Arc<Self>>, LanError> {
        let asked = options
            .lan_names
            .iter()
            .map(|given| {
                given.parse().map_err(|why| LanError::Name {
                    given: given.clone(),
                    why,
                })
            })
            .collect::<Result<Vec<Name>, _>>()?;
        let mut hosts = asked.clone();
        hosts.extend(machine.reachable(listen).into_iter().map(Name::Ip));
        if hosts.is_empty() && (options.lan || options.tls_cert.is_some()) {
            if options.lan {
                return Err(LanError::NoAddress {
                    listen,
                    found: machine.addresses.clone(),
                });
            }
            hosts.push(Name::Ip(listen.ip()));
        }
        let (source, first) = match (&options.tls_cert, &options.tls_key) {
            (Some(certificate), Some(key)) => {
                let (own, first) = Own::open(certificate, key)?;
                (Source::Own(own), first)
            }
            _ if options.lan => {
                let folder = options.lan_folder();
                let local = Local::open(&folder, asked, options.lan_new_authority, machine, now)?;
                let first = local.certified();
                (Source::Local(Box::new(local)), first)
            }
            _ => return Ok(None),
        };
        Ok(Some(Arc::new(Self {
            shown: Arc::new(Shown(RwLock::new(first))),
            source,
            hosts,
            port: listen.port(),
        })))
    }

    /// What the listener is given.
    ///
    /// # Errors
    /// When the cryptography and the protocol versions do not go together, which would be a mistake
    /// in how this program was built.
    pub fn config(&self) -> Result<ServerConfig, LanError> {
        let shown: Arc<dyn ResolvesServerCert> = Arc::clone(&self.shown) as _;
        Ok(
            ServerConfig::builder_with_provider(Arc::new(default_provider()))
                .with_safe_default_protocol_versions()
                .map_err(LanError::make)?
                .with_no_client_auth()
                .with_cert_resolver(shown),
        )
    }

    /// This machine's own authority, unless the certificate was brought.
    pub fn local(&self) -> Option<&Local> {
        match &self.source {
            Source::Local(local) => Some(local),
            Source::Own(_) => None,
        }
    }

    /// The addresses that phones can open, the best first.
    pub fn addresses(&self) -> Vec<String> {
        self.hosts
            .iter()
            .map(|host| self.address_at(host))
            .collect()
    }

    /// The name or address most phones can use.
    pub fn best_host(&self) -> Option<&Name> {
        self.hosts.first()
    }

    /// The address most phones can open.
    pub fn best_address(&self) -> String {
        self.addresses().into_iter().next().unwrap_or_default()
    }

    /// The address to open at a host.
    pub fn address_at(&self, host: &Name) -> String {
        match self.port {
            443 => format!("https://{}", host.in_url()),
            port => format!("https://{}:{port}", host.in_url()),
        }
    }

    /// Shows another certificate when this machine's addresses or the files changed, or time runs low.
    /// Whether it did.
    ///
    /// # Errors
    /// When there is none to show; the one before stays.
    pub fn look_again(&self, machine: &Machine, now: Timestamp) -> Result<bool, LanError> {
        let fresh = match &self.source {
            Source::Local(local) => local.look_again(machine, now)?,
            Source::Own(own) => own.look_again()?,
        };
        Ok(fresh.map(|fresh| self.shown.set(fresh)).is_some())
    }

    /// Keeps looking, until the server stops.
    pub async fn watch(self: Arc<Self>) {
        loop {
            actix_web::rt::time::sleep(EVERY).await;
            let looked = Machine::look()
                .map_err(LanError::Interfaces)
                .and_then(|machine| self.look_again(&machine, clock::now()));
            match looked {
                Ok(false) => {}
                Ok(true) => tracing::info!(
                    "the certificate was made or read again{}",
                    self.local().map_or_else(String::new, |local| {
                        let names: Vec<String> =
                            local.names().iter().map(Name::to_string).collect();
                        format!("; it is for {}", names.join(", "))
                    })
                ),
                Err(error) => tracing::warn!(%error, "the certificate stays as it was"),
            }
        }
    }
}
