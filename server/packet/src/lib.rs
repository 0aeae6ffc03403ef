//! Printed documents: values in, PDF bytes out.
//!
//! Knows nothing of how plans are judged, kept or served; reads no clock and draws no random
//! numbers, so the same document gives the same bytes.

pub mod document;
mod error;

pub use document::PacketDocument;
pub use error::PacketError;

use serde::{Deserialize, Serialize};

/// The paper to print on, portrait.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Paper {
    /// ISO A4, 210 by 297 mm.
    #[default]
    A4,
    /// US Letter, 8.5 by 11 inches.
    Letter,
}

/// Makes the packet.
///
/// # Errors
/// When a field cannot be used: the error names it and says what would put it right.
pub fn render(document: &PacketDocument, paper: Paper) -> Result<Vec<u8>, PacketError> {
    let _ = (document, paper);
    Err(PacketError::Layout("not written yet".into()))
}
