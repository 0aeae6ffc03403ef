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

/// A section after the cover.
pub(crate) struct Section {
    /// Its title.
    pub(crate) title: &'static str,
    /// It starts a page even where there is room before it, because it is handed out by itself.
    pub(crate) own_page: bool,
    /// What it prints; empty: the section is left out.
    pub(crate) pieces: Vec<Piece>,
}

/// Every section after the cover, in order.
pub(crate) fn after_cover(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Section> {
    let section = |title, pieces| Section {
        title,
        own_page: false,
        pieces,
    };
    let signatures = signatures::signatures(fonts, document, width);
    vec![
        section("Plan", plan::plan(fonts, &document.facets, width)),
        Section {
            title: "Risks",
            own_page: true,
            pieces: plan::plan(fonts, &document.risks, width),
        },
        section(
            "Figures and limits",
            figures::figures(fonts, document, width),
        ),
        section("Cast", cast::cast(fonts, &document.cast, width)),
        Section {
            title: "Sign-offs",
            own_page: true,
            pieces: signatures,
        },
        Section {
            title: "The day",
            own_page: true,
            pieces: plan::records(fonts, &document.on_the_day, width),
        },
        section(
            "Logged beside the plan",
            plan::records(fonts, &document.records, width),
        ),
        section("Proof", trail::trail(fonts, document, width)),
    ]
}
