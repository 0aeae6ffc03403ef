//! A sign-off as a compact JWS. This module knows that a payload is a [`Statement`] and nothing of who
//! may make one; that is for [`crate::door`].

use p256::ecdsa::{SigningKey, VerifyingKey};

use crate::{
    compact::{self, Parts},
    signoff::{PublicKey, SignOffError, Statement},
};

/// The `typ` of every sign-off's header.
pub const TYPE: &str = "gagwright-signoff+jws";

/// Longer sign-offs are refused before they are read. A statement with fifty conditions of a paragraph
/// each is shorter.
const LONGEST: usize = 64 * 1024;

/// Signs a statement with a device's key.
///
/// # Errors
/// When the statement has no canonical form.
pub fn sign(statement: &Statement, key: &SigningKey) -> Result<String, SignOffError> {
    compact::seal(TYPE, statement.device, statement, key)
        .map_err(|error| SignOffError::BadStatement(error.to_string()))
}

/// Checks a sign-off with the key of the device it names, and gives what was signed.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, its signature does not match, or its payload
/// is not a statement in canonical form.
pub fn verify(jws: &str, key: &PublicKey) -> Result<Statement, SignOffError> {
    let parts = open(jws)?;
    if !parts.signed_with(&check_key(key)?) {
        return Err(SignOffError::BadSignature);
    }
    statement(&parts)
}

/// Reads what a sign-off claims without checking its signature: to look up the device's key, and to
/// show what was refused. Never to decide by.
///
/// # Errors
/// When it is not a compact JWS with exactly our header, or its payload is not a statement.
pub fn read_unverified(jws: &str) -> Result<Statement, SignOffError> {
    statement(&open(jws)?)
}

/// Checks that a public key is a P-256 JWK, and a point of the curve.
///
/// # Errors
/// Says which member is wrong.
pub fn check_key(key: &PublicKey) -> Result<VerifyingKey, SignOffError> {
    compact::verifying_key(key)
        .map_err(|problem| SignOffError::Malformed(format!("the device's key: {problem}")))
}

fn open(jws: &str) -> Result<Parts<'_>, SignOffError> {
    compact::open(jws, TYPE, LONGEST).map_err(SignOffError::Malformed)
}

fn statement(parts: &Parts<'_>) -> Result<Statement, SignOffError> {
    let bad = |problem: String| SignOffError::BadStatement(problem);
    let statement: Statement = parts.payload().map_err(bad)?;
    let kind = match statement.ink {
        Some(_) => Statement::INK,
        None => Statement::KIND,
    };
    if statement.kind != kind {
        return Err(bad(format!("kind must be \"{kind}\"")));
    }
    if statement.device != parts.device {
        return Err(bad("device must be the kid of the header".to_owned()));
    }
    Ok(statement)
}

#[cfg(test)]
#[path = "jws_tests.rs"]
mod tests;
