//! Why HTTPS could not be set up: each sentence names the option or the file, and the way out.

use std::{
    io,
    net::{IpAddr, SocketAddr},
    path::{Path, PathBuf},
};

use jiff::Timestamp;

use super::addresses::Name;

/// Why HTTPS could not be set up.
#[derive(Debug, thiserror::Error)]
pub enum LanError {
    /// `--lan-name` is no name.
    #[error("--lan-name {given:?}: {why}")]
    Name {
        /// As typed.
        given: String,
        /// What is wrong and how to write it.
        why: String,
    },
    /// The authority was made without a name that is now asked for.
    #[error(
        "--lan-name {name}: the authority in {} was made to speak for other names only, and cannot. Leave \
         the name out, or start once with --lan-new-authority to make a new one, which every phone then \
         has to trust",
        folder.display()
    )]
    NotPermitted {
        /// The name.
        name: Name,
        /// Where the authority is.
        folder: PathBuf,
    },
    /// Nobody could reach this machine.
    #[error(
        "this machine has no private address that phones could reach at {listen} ({}). Join the set's \
         network and start again, say with --lan-name which name or address phones will use, or take IPv6 \
         in with --listen '[::]:8443'",
        others(found)
    )]
    NoAddress {
        /// Where it listens.
        listen: SocketAddr,
        /// The addresses that will not do.
        found: Vec<IpAddr>,
    },
    /// The interfaces could not be listed.
    #[error("the system does not tell this machine's addresses: {0}")]
    Interfaces(io::Error),
    /// A file of the authority.
    #[error(
        "cannot {doing} {}: {why}. Start it as the user who owns that folder, or name another with \
         --lan-folder",
        file.display()
    )]
    File {
        /// Which.
        file: PathBuf,
        /// What was tried.
        doing: &'static str,
        /// The system's words.
        why: String,
    },
    /// Others can read the authority's key.
    #[error(
        "{} holds the authority's key, and others on this machine may read it. If nobody has: chmod 600 {}. \
         Otherwise start once with --lan-new-authority, and remove the old one from the phones that trust it",
        file.display(), file.display()
    )]
    KeyOpen {
        /// Which.
        file: PathBuf,
    },
    /// The authority's file was damaged.
    #[error(
        "{} is damaged: {why}. Put it back from a copy, or start once with --lan-new-authority, which \
         every phone then has to trust",
        file.display()
    )]
    Broken {
        /// Which.
        file: PathBuf,
        /// What is wrong.
        why: String,
    },
    /// The parts of the authority do not fit.
    #[error(
        "the authority in {} does not hold together: {why}. Put authority.json back from a copy, or start \
         once with --lan-new-authority, which every phone then has to trust",
        folder.display()
    )]
    Unsound {
        /// Where it is.
        folder: PathBuf,
        /// What a phone would say.
        why: String,
    },
    /// The clock is behind.
    #[error(
        "this machine's clock says {now}, which is before its authority was made ({made}). Set the clock; \
         phones would refuse what is signed by the wrong time"
    )]
    Clock {
        /// By the clock.
        now: Timestamp,
        /// By the authority.
        made: Timestamp,
    },
    /// A certificate or key that was brought.
    #[error("{option} {}: {why}. It takes a file in PEM form", file.display())]
    Given {
        /// Which option.
        option: &'static str,
        /// The file.
        file: PathBuf,
        /// What is wrong.
        why: String,
    },
    /// Making a certificate failed.
    #[error("a certificate could not be made: {0}")]
    Make(String),
}

impl LanError {
    pub(super) fn make(error: impl std::fmt::Display) -> Self {
        LanError::Make(error.to_string())
    }

    pub(super) fn file(file: &Path, doing: &'static str, error: &io::Error) -> Self {
        LanError::File {
            file: file.into(),
            doing,
            why: error.to_string(),
        }
    }
}

fn others(found: &[IpAddr]) -> String {
    if found.is_empty() {
        return "it has no address at all".to_owned();
    }
    let found: Vec<String> = found.iter().map(ToString::to_string).collect();
    format!("it has {}", found.join(", "))
}
