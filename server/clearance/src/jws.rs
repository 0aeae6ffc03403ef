//! Compact JWS (RFC 7515) with ES256 (RFC 7518, section 3.4), and nothing wider: one algorithm, one
//! header, one spelling. This module knows that a payload is a [`Statement`] and nothing of who may
//! make one; that is for [`crate::door`].

use base64::{Engine, engine::general_purpose::URL_SAFE_NO_PAD};
use p256::ecdsa::{
    Signature, SigningKey, VerifyingKey,
    signature::{Signer, Verifier},
};
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::{
    canonical::canonical_bytes,
    ids::DeviceId,
    signoff::{PublicKey, SignOffError, Statement},
};

/// The `typ` of every sign-off's header.
pub const TYPE: &str = "gagwright-signoff+jws";

/// Longer sign-offs are refused before they are read. A statement with fifty conditions of a paragraph
/// each is shorter.
const LONGEST: usize = 64 * 1024;

/// The protected header, exactly these three.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Header {
    alg: String,
    kid: DeviceId,
    typ: String,
}

/// Signs a statement with a device's key.
///
/// # Errors
/// When the statement has no canonical form.
pub fn sign(statement: &Statement, key: &SigningKey) -> Result<String, SignOffError> {
    let encode = |bytes: Result<Vec<u8>, crate::canonical::CanonicalError>| {
        bytes
            .map(|bytes| URL_SAFE_NO_PAD.encode(bytes))
            .map_err(|error| SignOffError::BadStatement(error.to_string()))
    };
    let header = Header {
        alg: "ES256".to_owned(),
        kid: statement.device,
        typ: TYPE.to_owned(),
    };
    let text = format!(
        "{}.{}",
        encode(canonical_bytes(&header))?,
        encode(canonical_bytes(statement))?
    );
    let signature: Signature = key.sign(text.as_bytes());
    Ok(format!(
        "{text}.{}",
        URL_SAFE_NO_PAD.encode(signature.to_bytes())
    ))
}

/// Checks a sign-off with the key of the device it names, and gives what was signed.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, its signature does not match, or its payload
/// is not a statement in canonical form.
pub fn verify(jws: &str, key: &PublicKey) -> Result<Statement, SignOffError> {
    let parts = split(jws)?;
    let key = check_key(key)?;
    key.verify(parts.signed.as_bytes(), &parts.signature)
        .map_err(|_| SignOffError::BadSignature)?;
    statement(&parts)
}

/// Reads what a sign-off claims without checking its signature: to look up the device's key, and to
/// show what was refused. Never to decide by.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, or its payload is not a statement.
pub fn read_unverified(jws: &str) -> Result<Statement, SignOffError> {
    statement(&split(jws)?)
}

/// Checks that a public key is a P-256 JWK, and a point of the curve.
///
/// # Errors
/// Says which member is wrong.
pub fn check_key(key: &PublicKey) -> Result<VerifyingKey, SignOffError> {
    let bad = |problem: &str| SignOffError::Malformed(format!("the device's key: {problem}"));
    if key.kty != "EC" || key.crv != "P-256" {
        return Err(bad("kty must be \"EC\" and crv \"P-256\""));
    }
    let coordinate = |text: &str| {
        URL_SAFE_NO_PAD
            .decode(text)
            .ok()
            .and_then(|bytes| <[u8; 32]>::try_from(bytes).ok())
    };
    let (Some(x), Some(y)) = (coordinate(&key.x), coordinate(&key.y)) else {
        return Err(bad(
            "x and y must each be 32 bytes in base64url without padding",
        ));
    };
    // SEC 1, section 2.3.4: 04 marks an uncompressed point.
    let mut point = [4u8; 65];
    point[1..33].copy_from_slice(&x);
    point[33..].copy_from_slice(&y);
    VerifyingKey::from_sec1_bytes(&point).map_err(|_| bad("x and y are not a point of the curve"))
}

impl From<&VerifyingKey> for PublicKey {
    fn from(key: &VerifyingKey) -> PublicKey {
        let point = key.to_sec1_point(false);
        let coordinate = |bytes: Option<&[u8]>| URL_SAFE_NO_PAD.encode(bytes.unwrap_or_default());
        PublicKey {
            kty: "EC".to_owned(),
            crv: "P-256".to_owned(),
            x: coordinate(point.x().map(|x| x.as_slice())),
            y: coordinate(point.y().map(|y| y.as_slice())),
        }
    }
}

struct Parts<'a> {
    /// Header and payload as they were signed.
    signed: &'a str,
    header: Header,
    payload: Vec<u8>,
    signature: Signature,
}

fn split(jws: &str) -> Result<Parts<'_>, SignOffError> {
    let bad = |problem: &str| SignOffError::Malformed(problem.to_owned());
    if jws.len() > LONGEST {
        return Err(bad("it is longer than 64 KiB"));
    }
    let parts: Vec<&str> = jws.split('.').collect();
    let [header, payload, signature] = parts.as_slice() else {
        return Err(bad("it must have three parts joined by dots"));
    };
    let decode = |text: &str, what: &str| {
        URL_SAFE_NO_PAD
            .decode(text)
            .map_err(|_| bad(&format!("its {what} is not base64url without padding")))
    };
    let header = decode(header, "header")?;
    let header: Header = serde_json::from_slice(&header).map_err(|error| {
        bad(&format!(
            "its header must hold exactly alg, typ and kid, the device's id: {error}"
        ))
    })?;
    if header.alg != "ES256" {
        return Err(bad(&format!("its alg is \"{}\"", printable(&header.alg))));
    }
    if header.typ != TYPE {
        return Err(bad(&format!("its typ must be \"{TYPE}\"")));
    }
    let payload = decode(payload, "payload")?;
    let signature = decode(signature, "signature")?;
    // RFC 7518, section 3.4: r and s, 32 bytes each; never the ASN.1 form.
    let signature = Signature::from_slice(&signature)
        .map_err(|_| bad("its signature must be the 64 bytes r and s"))?;
    let signed = jws.rsplit_once('.').map_or("", |(signed, _)| signed);
    Ok(Parts {
        signed,
        header,
        payload,
        signature,
    })
}

fn statement(parts: &Parts<'_>) -> Result<Statement, SignOffError> {
    let bad = |problem: String| SignOffError::BadStatement(problem);
    // The payload is held to canonical form as JSON, not as a statement: a device may spell a time with
    // more digits than we would, and that is still one spelling of that JSON.
    let value: Value =
        serde_json::from_slice(&parts.payload).map_err(|error| bad(error.to_string()))?;
    let canonical = canonical_bytes(&value).map_err(|error| bad(error.to_string()))?;
    if canonical != parts.payload {
        return Err(bad(
            "the payload is not in RFC 8785 canonical form".to_owned()
        ));
    }
    let statement: Statement =
        serde_json::from_value(value).map_err(|error| bad(error.to_string()))?;
    if statement.kind != Statement::KIND {
        return Err(bad(format!("kind must be \"{}\"", Statement::KIND)));
    }
    if statement.device != parts.header.kid {
        return Err(bad("device must be the kid of the header".to_owned()));
    }
    Ok(statement)
}

/// At most a few plain characters of something hostile, for an error message.
fn printable(text: &str) -> String {
    text.chars()
        .filter(char::is_ascii_graphic)
        .take(16)
        .collect()
}

#[cfg(test)]
#[path = "jws_tests.rs"]
mod tests;
