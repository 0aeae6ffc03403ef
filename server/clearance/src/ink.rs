//! A sign-off made on paper: who saw it signed, and the photograph of the page. The witness's device
//! signs the statement; the paper holds the signer's own hand.

use gagwright_casting::PersonId;
use serde::{Deserialize, Serialize};

use crate::{drawing, signoff::Statement};

/// The largest photograph kept, bytes.
pub const LARGEST_PHOTOGRAPH: usize = 4 * 1024 * 1024;

/// What a witness signs for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Ink {
    /// Who saw it signed.
    pub witness: PersonId,
    /// SHA-256 of the photograph of the page, lower-case hex.
    pub photograph: String,
}

/// What a photograph may be, by its first bytes: whatever a browser would show as something else is
/// refused.
pub fn media_type(photograph: &[u8]) -> Option<&'static str> {
    match photograph {
        [0xff, 0xd8, 0xff, ..] => Some("image/jpeg"),
        [0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a, ..] => Some("image/png"),
        _ => None,
    }
}

/// What is wrong with the ink of a statement by itself; none: nothing.
pub(crate) fn problem(statement: &Statement) -> Option<&'static str> {
    wrong(
        statement.ink.as_ref()?,
        statement.signer,
        statement.mark.is_some(),
    )
}

/// The same of any ink: who signed on the paper, and whether the statement has a drawn mark as well.
pub(crate) fn wrong(ink: &Ink, signer: PersonId, drawn: bool) -> Option<&'static str> {
    if ink.witness == signer {
        return Some("the witness must be somebody else than the signer");
    }
    if !drawing::is_hash(&ink.photograph) {
        return Some("ink.photograph must be the SHA-256 of the photograph, in lower-case hex");
    }
    if drawn {
        return Some("a sign-off on paper has no drawn mark; leave mark out");
    }
    None
}

#[cfg(test)]
#[path = "tests/ink.rs"]
mod tests;
