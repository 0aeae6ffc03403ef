//! Passwords: what is asked of a new one, and argon2id hashes. Slow on purpose: callers run these off
//! the threads that answer requests. Knows nothing of accounts.

use std::sync::LazyLock;

use argon2::{Algorithm, Argon2, Params, PasswordHasher, PasswordVerifier, Version};

/// Fewest characters of a new password. NIST SP 800-63B asks for at least 8; a password that guards
/// people's medical dates and their signatures' devices gets a few more.
pub const MIN_CHARACTERS: usize = 12;
/// Most bytes of a password: longer ones only cost the server time.
pub const MAX_BYTES: usize = 1024;

/// Memory in KiB, passes and lanes, as the OWASP Password Storage Cheat Sheet lists for argon2id.
const MEMORY_KIB: u32 = 19_456;
const PASSES: u32 = 2;
const LANES: u32 = 1;

/// Why a password could not be hashed or checked.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PasswordError {
    /// Too short, too long or one character over and over.
    #[error("{0}")]
    Unfit(&'static str),
    /// The hashing itself failed.
    #[error("the password could not be hashed: {0}")]
    Hashing(String),
}

fn hasher() -> Result<Argon2<'static>, PasswordError> {
    let params = Params::new(MEMORY_KIB, PASSES, LANES, None)
        .map_err(|error| PasswordError::Hashing(error.to_string()))?;
    Ok(Argon2::new(Algorithm::Argon2id, Version::V0x13, params))
}

/// Says whether a new password may be used.
///
/// # Errors
/// When it is too short, too long, or a single character repeated. What it is made of otherwise is the
/// owner's business: rules about digits and punctuation make passwords worse, not better.
pub fn fit(password: &str) -> Result<(), PasswordError> {
    if password.chars().count() < MIN_CHARACTERS {
        return Err(PasswordError::Unfit("is shorter than 12 characters"));
    }
    if password.len() > MAX_BYTES {
        return Err(PasswordError::Unfit("is longer than 1024 bytes"));
    }
    let mut characters = password.chars();
    let first = characters.next();
    if characters.all(|character| Some(character) == first) {
        return Err(PasswordError::Unfit("is one character over and over"));
    }
    Ok(())
}

/// Hashes a password with a fresh salt, to the PHC string that is stored.
///
/// # Errors
/// When the system gives no random salt or no memory.
pub fn hash(password: &str) -> Result<String, PasswordError> {
    hasher()?
        .hash_password(password.as_bytes())
        .map(|hash| hash.to_string())
        .map_err(|error| PasswordError::Hashing(error.to_string()))
}

/// Whether the password is the one that was hashed. With no hash (nobody has that address) the same
/// work is done against a decoy, so that the answer takes as long and tells nothing.
pub fn verify(password: &str, stored: Option<&str>) -> bool {
    static DECOY: LazyLock<Option<String>> =
        LazyLock::new(|| hash("nobody has this password").ok());
    if password.len() > MAX_BYTES {
        return false;
    }
    let Ok(hasher) = hasher() else { return false };
    let checked = |hash: &str| hasher.verify_password(password.as_bytes(), hash).is_ok();
    match stored {
        Some(hash) => checked(hash),
        None => {
            if let Some(decoy) = DECOY.as_deref() {
                checked(decoy);
            }
            false
        }
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn a_hash_names_its_parameters_and_verifies_only_its_password() {
        let stored = hash("salt flats at dawn").unwrap();
        assert!(
            stored.starts_with("$argon2id$v=19$m=19456,t=2,p=1$"),
            "{stored}"
        );
        assert!(verify("salt flats at dawn", Some(&stored)));
        assert!(!verify("salt flats at dusk", Some(&stored)));
        assert!(!verify("nobody has this password", None));
        assert!(!verify("salt flats at dawn", Some("not a hash")));
    }

    #[test]
    fn unfit_passwords_are_named() {
        assert!(fit("eleven char").is_err());
        assert!(fit("ĉirkaŭ dek du").is_ok());
        assert!(fit("zzzzzzzzzzzzzzzz").is_err());
        assert!(fit(&"ab".repeat(600)).is_err());
    }
}
