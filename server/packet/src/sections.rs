//! The sections of a packet, in the order they are read. Each turns its part of the document into
//! pieces; none knows pages.

mod cast;
mod cover;
mod figures;
mod plan;
mod signatures;
mod trail;

use crate::{PacketDocument, fonts::Fonts, page::Piece};

pub(crate) use cover::cover;

/// Every section after the cover with its title. Sections with nothing to say are empty.
pub(crate) fn after_cover(
    fonts: &Fonts,
    document: &PacketDocument,
    width: f32,
) -> Vec<(&'static str, Vec<Piece>)> {
    vec![
        ("Plan", plan::plan(fonts, &document.facets, width)),
        ("Figures and limits", figures::figures(fonts, document, width)),
        ("Cast", cast::cast(fonts, &document.cast, width)),
        ("Sign-offs", signatures::signatures(fonts, document, width)),
        ("Logged beside the plan", plan::records(fonts, &document.records, width)),
        ("Proof", trail::trail(fonts, document, width)),
    ]
}
