//! Printed documents: values in, PDF bytes out.
//!
//! Knows nothing of how plans are judged, kept or served; reads no clock and draws no random
//! numbers, so the same document gives the same bytes.
//!
//! ```
//! use gagwright_packet::{PacketDocument, Paper, render};
//!
//! let document = PacketDocument {
//!     gag_code: "G07".into(),
//!     gag_title: "Descent into the silo".into(),
//!     revision: 4,
//!     generated_at: "2026-03-14T09:26:53Z".into(),
//!     ..PacketDocument::default()
//! };
//! let pdf = render(&document, Paper::A4)?;
//! assert!(pdf.starts_with(b"%PDF-"));
//! # Ok::<(), gagwright_packet::PacketError>(())
//! ```

mod carried;
pub mod document;
mod error;
mod fonts;
mod layout;
mod page;
mod parts;
mod pdf;
mod printed;
mod sections;
mod spoken;
mod text;

pub use carried::attachments;
pub use document::PacketDocument;
pub use error::PacketError;
pub use printed::{printed, whole};

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

/// Makes the packet. The same document gives the same bytes.
///
/// # Errors
/// When a field cannot be used: the error names it and says what would put it right.
pub fn render(document: &PacketDocument, paper: Paper) -> Result<Vec<u8>, PacketError> {
    let fonts = fonts::Fonts::get()?;
    let made = moment(document)?;
    let flow = layout::lay_out(&fonts, document, paper)?;
    if cfg!(debug_assertions)
        && let Some(fault) = page::faults(&fonts, &flow.frame, &flow.pages)
            .into_iter()
            .next()
    {
        return Err(PacketError::Layout(fault));
    }
    let about = pdf::About {
        title: format!(
            "{} {}, revision {}",
            document.gag_code, document.gag_title, document.revision
        ),
        subject: format!("Gag packet, {}", document.production),
        made,
        attachments: &document.attachments,
    };
    pdf::write(&fonts, &flow, &about)
}

/// Everything in the finished layout that left its cell or its page, or is printed over other
/// text: one sentence for each. Empty for every document, or there is a fault in this crate.
///
/// # Errors
/// As [`render`].
pub fn layout_faults(document: &PacketDocument, paper: Paper) -> Result<Vec<String>, PacketError> {
    let fonts = fonts::Fonts::get()?;
    let flow = layout::lay_out(&fonts, document, paper)?;
    Ok(page::faults(&fonts, &flow.frame, &flow.pages))
}

fn moment(document: &PacketDocument) -> Result<jiff::Timestamp, PacketError> {
    document
        .generated_at
        .parse()
        .map_err(|_| PacketError::BadField {
            field: "generated_at".into(),
            problem: format!(
                "\"{}\" is not a moment in RFC 3339 form",
                document.generated_at
            ),
            fix: "write it like 2026-03-14T09:26:53Z".into(),
        })
}
