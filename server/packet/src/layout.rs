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
    for (title, pieces) in sections::after_cover(fonts, document, width) {
        if pieces.is_empty() {
            continue;
        }
        number += 1;
        flow.new_page();
        flow.add(vec![crate::parts::section(fonts, number, title, width)]);
        flow.add(pieces);
    }
    furniture::furnish(fonts, document, &mut flow);
    Ok(flow)
}
