//! Which database an address names. The scheme decides and nothing is guessed: a driver that tries one
//! database after another would turn a PostgreSQL outage into a new, empty SQLite file.

use std::path::PathBuf;

use crate::error::StoreError;

/// A database, by its address.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Address {
    /// A SQLite file.
    Sqlite(PathBuf),
    /// A PostgreSQL connection URL.
    Postgres(String),
}

impl Address {
    /// Reads `PATH`, `sqlite:PATH`, `postgres://...` or `postgresql://...`.
    pub(crate) fn parse(text: &str) -> Result<Address, StoreError> {
        let text = text.trim();
        match scheme(text) {
            Some("sqlite") => {
                let path = &text["sqlite:".len()..];
                sqlite(path.strip_prefix("//").unwrap_or(path))
            }
            Some("postgres" | "postgresql") if text.contains("://") => {
                Ok(Address::Postgres(with_timeout(text)))
            }
            Some(postgres @ ("postgres" | "postgresql")) => Err(StoreError::Address(format!(
                "a PostgreSQL address goes on with two slashes, as in {postgres}://USER@HOST/DATABASE"
            ))),
            Some(other) => Err(StoreError::Address(format!(
                "`{other}:` is not a database this program knows; it knows sqlite and postgres"
            ))),
            None => sqlite(text),
        }
    }

    /// The address without its password, for messages.
    pub(crate) fn shown(&self) -> String {
        match self {
            Address::Sqlite(path) => path.display().to_string(),
            Address::Postgres(url) => without_secrets(url),
        }
    }
}

/// The file that an address names, for what is to be kept beside it; none for a PostgreSQL database or
/// an address that cannot be read.
pub fn sqlite_file(address: &str) -> Option<PathBuf> {
    match Address::parse(address) {
        Ok(Address::Sqlite(file)) => Some(file),
        Ok(Address::Postgres(_)) | Err(_) => None,
    }
}

/// The scheme, when there is one. A single letter is a drive, as in `C:\data`.
fn scheme(text: &str) -> Option<&str> {
    let (scheme, _) = text.split_once(':')?;
    let well_formed = scheme.len() > 1
        && scheme.starts_with(|first: char| first.is_ascii_alphabetic())
        && scheme
            .chars()
            .all(|c| c.is_ascii_alphanumeric() || matches!(c, '+' | '-' | '.'));
    well_formed.then_some(scheme)
}

fn sqlite(path: &str) -> Result<Address, StoreError> {
    if path.is_empty() {
        return Err(StoreError::Address(
            "the path of the database file is empty".to_owned(),
        ));
    }
    if path == ":memory:" {
        return Err(StoreError::Address(
            "a database in memory is lost when the program stops, and each connection would see \
             another one"
                .to_owned(),
        ));
    }
    if path.contains('\0') {
        return Err(StoreError::Address(
            "the path has a zero byte in it".to_owned(),
        ));
    }
    // `host=db user=x` is how libpq's own tools are told; as a file name it is surely a mistake.
    let first_word = path.split_whitespace().next().unwrap_or_default();
    if let Some((key, _)) = first_word.split_once('=')
        && [
            "host", "hostaddr", "user", "dbname", "port", "password", "service",
        ]
        .contains(&key)
    {
        return Err(StoreError::Address(format!(
            "`{key}=...` looks like PostgreSQL keywords, which are not taken"
        )));
    }
    Ok(Address::Sqlite(PathBuf::from(path)))
}

/// Without a limit an unreachable host is waited for as long as the system's TCP stack likes.
fn with_timeout(url: &str) -> String {
    if url.contains("connect_timeout=") {
        return url.to_owned();
    }
    let joint = if url.contains('?') { '&' } else { '?' };
    format!("{url}{joint}connect_timeout=5")
}

fn without_secrets(url: &str) -> String {
    let (scheme, rest) = url.split_once("://").unwrap_or(("postgres", url));
    let (rest, _parameters) = rest.split_once('?').unwrap_or((rest, ""));
    let (authority, path) = rest.split_once('/').unwrap_or((rest, ""));
    let (user, host) = authority.rsplit_once('@').unwrap_or(("", authority));
    let user = user.split(':').next().unwrap_or_default();
    let at = if user.is_empty() { "" } else { "@" };
    format!("{scheme}://{user}{at}{host}/{path}")
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn refusal(text: &str) -> String {
        Address::parse(text).unwrap_err().to_string()
    }

    #[test]
    fn the_scheme_decides() {
        let file = |path: &str| Address::Sqlite(PathBuf::from(path));
        for (text, path) in [
            ("gagwright.db", "gagwright.db"),
            ("/var/lib/gagwright/main.db", "/var/lib/gagwright/main.db"),
            ("sqlite:gagwright.db", "gagwright.db"),
            ("sqlite:/srv/g.db", "/srv/g.db"),
            ("sqlite:///srv/g.db", "/srv/g.db"),
            ("sqlite://g.db", "g.db"),
            (r"C:\data\g.db", r"C:\data\g.db"),
            ("./odd:name.db", "./odd:name.db"),
            ("a=b.db", "a=b.db"),
        ] {
            assert_eq!(Address::parse(text).unwrap(), file(path), "{text}");
        }
        for text in [
            "postgres://ada@db/gags",
            "postgresql://ada@db/gags?sslmode=disable",
        ] {
            assert!(
                matches!(Address::parse(text).unwrap(), Address::Postgres(_)),
                "{text}"
            );
        }
    }

    #[test]
    fn what_is_not_an_address_is_refused_with_a_fix() {
        for (text, words) in [
            ("mysql://db/x", "`mysql:`"),
            ("file:g.db", "`file:`"),
            ("http://db/x", "`http:`"),
            ("postgres:db/x", "two slashes"),
            ("", "empty"),
            ("sqlite:", "empty"),
            (":memory:", "memory"),
            ("sqlite::memory:", "memory"),
            ("host=db user=ada dbname=gags", "keywords"),
            ("a\0b", "zero byte"),
        ] {
            let message = refusal(text);
            assert!(message.contains(words), "{text:?}: {message}");
            assert!(
                message.contains("postgres://USER@HOST/DATABASE"),
                "{text:?}: {message}"
            );
        }
    }

    #[test]
    fn an_address_is_shown_without_its_password() {
        let shown = |text: &str| Address::parse(text).unwrap().shown();
        assert_eq!(
            shown("postgres://ada:s3cret@db:5432/gags"),
            "postgres://ada@db:5432/gags"
        );
        assert_eq!(
            shown("postgres://db/gags?password=s3cret"),
            "postgres://db/gags"
        );
        assert_eq!(
            shown("postgres://ada:a@b@db/gags"),
            "postgres://ada@db/gags"
        );
    }

    #[test]
    fn a_silent_host_is_not_waited_for_without_end() {
        let url = |text: &str| match Address::parse(text).unwrap() {
            Address::Postgres(url) => url,
            Address::Sqlite(_) => String::new(),
        };
        assert_eq!(url("postgres://db/g"), "postgres://db/g?connect_timeout=5");
        assert_eq!(
            url("postgres://db/g?a=b"),
            "postgres://db/g?a=b&connect_timeout=5"
        );
        assert_eq!(
            url("postgres://db/g?connect_timeout=9"),
            "postgres://db/g?connect_timeout=9"
        );
    }
}
