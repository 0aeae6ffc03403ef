//! Access tokens (JWT, RFC 7519) and the opaque secrets that refresh, invite and set up. Knows the
//! shape and life of a token; not where sessions are kept.

use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
use jiff::{SignedDuration, Timestamp};
use jsonwebtoken::{Algorithm, DecodingKey, EncodingKey, Header, Validation, errors::ErrorKind};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use uuid::Uuid;

/// How long an access token is good for.
pub const ACCESS_LIFE: SignedDuration = SignedDuration::from_mins(15);
/// How long a refresh token is good for when it is not used.
pub const REFRESH_LIFE: SignedDuration = SignedDuration::from_hours(24 * 30);

const ISSUER: &str = "gagwright";
const AUDIENCE: &str = "gagwright-api";

/// What an access token says.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Claims {
    /// Who made it: always this server's name.
    pub iss: String,
    /// Whom it is for: always this API.
    pub aud: String,
    /// The account.
    pub sub: Uuid,
    /// The token itself.
    pub jti: Uuid,
    /// Made at, seconds since 1970.
    pub iat: i64,
    /// Good until, seconds since 1970.
    pub exp: i64,
}

/// Why a token was refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum TokenError {
    /// It was good once.
    #[error("the access token has expired")]
    Expired,
    /// It was never good here.
    #[error("the access token is not one of this server's")]
    Invalid,
}

/// The key that signs access tokens. It never leaves the server's database.
#[derive(Clone)]
pub struct TokenKeys {
    encoding: EncodingKey,
    decoding: DecodingKey,
    validation: Validation,
}

impl TokenKeys {
    /// Keys from the stored secret.
    pub fn new(secret: &[u8]) -> Self {
        let mut validation = Validation::new(Algorithm::HS256);
        validation.leeway = 0;
        validation.set_issuer(&[ISSUER]);
        validation.set_audience(&[AUDIENCE]);
        validation.set_required_spec_claims(&["exp", "iss", "aud", "sub"]);
        Self {
            encoding: EncodingKey::from_secret(secret),
            decoding: DecodingKey::from_secret(secret),
            validation,
        }
    }

    /// A token for an account, and when it stops being good.
    ///
    /// # Errors
    /// When signing fails, which only a broken build does.
    pub fn issue(&self, account: Uuid, now: Timestamp) -> Result<(String, Timestamp), TokenError> {
        // A token speaks in whole seconds, so the expiry told to the caller is cut to the same.
        let expires = (now + ACCESS_LIFE).as_second();
        let claims = Claims {
            iss: ISSUER.into(),
            aud: AUDIENCE.into(),
            sub: account,
            jti: Uuid::new_v4(),
            iat: now.as_second(),
            exp: expires,
        };
        let token = jsonwebtoken::encode(&Header::new(Algorithm::HS256), &claims, &self.encoding)
            .map_err(|_| TokenError::Invalid)?;
        let expires = Timestamp::from_second(expires).map_err(|_| TokenError::Invalid)?;
        Ok((token, expires))
    }

    /// Reads a token.
    ///
    /// # Errors
    /// [`TokenError::Expired`] for one that was good, [`TokenError::Invalid`] for anything else.
    pub fn read(&self, token: &str) -> Result<Claims, TokenError> {
        jsonwebtoken::decode::<Claims>(token, &self.decoding, &self.validation)
            .map(|data| data.claims)
            .map_err(|error| match error.kind() {
                ErrorKind::ExpiredSignature => TokenError::Expired,
                _ => TokenError::Invalid,
            })
    }
}

/// 32 random bytes in URL-safe text, for a link or a cookie; only its hash is stored.
pub fn secret() -> String {
    URL_SAFE_NO_PAD.encode(random_bytes())
}

/// 32 random bytes from the operating system.
pub fn random_bytes() -> [u8; 32] {
    rand::random()
}

/// What is stored of a secret.
pub fn secret_hash(secret: &str) -> [u8; 32] {
    Sha256::digest(secret.as_bytes()).into()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::clock;

    #[test]
    fn a_token_is_good_for_a_quarter_of_an_hour_and_only_here() {
        let keys = TokenKeys::new(&[7; 32]);
        let account = Uuid::new_v4();
        let now = clock::now();
        let (token, expires) = keys.issue(account, now).unwrap();
        assert_eq!(keys.read(&token).unwrap().sub, account);
        assert_eq!(expires.as_second() - now.as_second(), 900);

        let (old, _) = keys
            .issue(account, now - SignedDuration::from_mins(16))
            .unwrap();
        assert_eq!(keys.read(&old), Err(TokenError::Expired));
        assert_eq!(
            TokenKeys::new(&[8; 32]).read(&token),
            Err(TokenError::Invalid)
        );
        assert_eq!(
            keys.read("eyJhbGciOiJub25lIn0.e30."),
            Err(TokenError::Invalid)
        );
    }

    #[test]
    fn a_token_without_a_signature_is_refused() {
        let keys = TokenKeys::new(&[7; 32]);
        let (token, _) = keys.issue(Uuid::new_v4(), clock::now()).unwrap();
        let payload = token.split('.').nth(1).unwrap();
        let header = URL_SAFE_NO_PAD.encode(br#"{"alg":"none","typ":"JWT"}"#);
        assert_eq!(
            keys.read(&format!("{header}.{payload}.")),
            Err(TokenError::Invalid)
        );
    }

    #[test]
    fn secrets_differ_and_are_hashed() {
        let (one, two) = (secret(), secret());
        assert_ne!(one, two);
        assert_eq!(one.len(), 43);
        assert_ne!(secret_hash(&one), secret_hash(&two));
    }
}
