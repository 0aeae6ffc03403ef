//! Who performs, slot by slot: the verdict in a word, then every finding with its reason.

use crate::{
    document::CastSlot,
    fonts::Fonts,
    page::Piece,
    parts::{Cell, Column, Voice, heading, paragraph, strip_with_word, table},
    text::{Look, Span, lines},
};

/// Sets the section.
pub(super) fn cast(fonts: &Fonts, slots: &[CastSlot], width: f32) -> Vec<Piece> {
    // The same columns for every slot, so that the eye can run down the section.
    let findings = || slots.iter().flat_map(|slot| &slot.findings);
    let with_cures = findings().any(|finding| !finding.cure.trim().is_empty());
    slots
        .iter()
        .flat_map(|slot| one(fonts, slot, with_cures, width))
        .collect()
}

fn one(fonts: &Fonts, slot: &CastSlot, with_cures: bool, width: f32) -> Vec<Piece> {
    let mut pieces = vec![heading(fonts, &slot.slot, &[], width)];
    let name = if slot.person.trim().is_empty() {
        "Nobody cast"
    } else {
        slot.person.as_str()
    };
    let (name_width, state_left) = (width * 0.62, width * 0.66);
    let mut who = Piece::default();
    who.put_lines(
        lines(fonts, &[Span::new(name, Look::bold(14.0))], name_width),
        0.0,
        name_width,
    );
    if !slot.remark.trim().is_empty() {
        let remark = Span::new(slot.remark.as_str(), Voice::CELL_QUIET);
        who.put_lines(lines(fonts, &[remark], name_width), 0.0, name_width);
    }
    let outcome = strip_with_word(fonts, &slot.outcome, 11.5, width - state_left);
    who.height = who.height.max(outcome.height + 3.0);
    who.put(outcome, state_left, 2.5);
    who.height += 2.0;
    who.keep = !slot.findings.is_empty();
    pieces.push(who);
    if slot.findings.is_empty() {
        let text = "No requirement was judged for this slot.";
        pieces.extend(paragraph(fonts, text, Voice::CELL_QUIET, width, 0.0));
        return pieces;
    }
    let columns = [
        Column::new("It needs", 2.6),
        Column::new("Found", 1.9),
        Column::new("Why", 3.6),
        Column::new("What would cure it", 2.4),
    ];
    let columns = if with_cures {
        &columns[..]
    } else {
        &columns[..3]
    };
    let rows = slot
        .findings
        .iter()
        .map(|finding| {
            vec![
                Cell::text(finding.requirement.as_str()),
                Cell::State(finding.state.clone()),
                Cell::text(finding.reason.as_str()),
                Cell::text(finding.cure.as_str()),
            ]
        })
        .collect();
    pieces.extend(table(fonts, columns, rows, width));
    pieces
}
