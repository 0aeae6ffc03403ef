//! Puts the sections one after the other and the running head and foot on every page.

mod furniture;

use crate::{
    PacketDocument, PacketError, Paper,
    fonts::Fonts,
    page::{Flow, Frame},
    sections,
};

/// Lays out the whole packet.
pub(crate) fn lay_out(
    fonts: &Fonts,
    document: &PacketDocument,
    paper: Paper,
) -> Result<Flow, PacketError> {
    let mut flow = Flow::new(Frame::of(paper));
    let width = flow.frame.width;
    flow.add(sections::cover(fonts, document, width)?);
    let mut number = 0;
    for section in sections::after_cover(fonts, document, width) {
        let mut pieces = section.pieces;
        let Some(first) = pieces.first_mut() else {
            continue;
        };
        first.before = 0.0;
        number += 1;
        // The cover keeps its first page to itself; what is handed out to be signed starts a page.
        if section.own_page || flow.pages.len() == 1 {
            flow.new_page();
        } else {
            flow.new_page_unless_free(0.42);
        }
        pieces.insert(
            0,
            crate::parts::section(fonts, number, section.title, width).after(26.0),
        );
        flow.add(pieces);
    }
    furniture::furnish(fonts, document, &mut flow);
    Ok(flow)
}
