//! Headings, paragraphs, lists and labelled values.

use crate::{
    fonts::Fonts,
    page::{Ink, Path, Piece, Stroke},
    text::{Line, Look, Span, lines},
};

/// Sizes used everywhere, so that a packet has one voice.
pub(crate) struct Voice;

impl Voice {
    /// Running text.
    pub(crate) const BODY: Look = Look::regular(9.5);
    /// Text in tables.
    pub(crate) const CELL: Look = Look::regular(8.6);
    /// Strong text in tables.
    pub(crate) const CELL_STRONG: Look = Look::bold(8.6);
    /// Quiet text in tables.
    pub(crate) const CELL_QUIET: Look = Look::regular(8.0).in_ink(Ink::Grey);
    /// Labels over values and heads of tables.
    pub(crate) const LABEL: Look = Look::bold(7.2).in_ink(Ink::Grey);
    /// Hashes.
    pub(crate) const HASH: Look = Look::mono(7.6);
}

/// Lines as pieces of their own, so that a paragraph can run over pages. Its first two and last
/// two lines stay together.
pub(crate) fn pieces_of_lines(all: Vec<Line>, left: f32, width: f32) -> Vec<Piece> {
    let count = all.len();
    let right_to_left = count > 1 && all.iter().all(|line| line.rtl);
    all.into_iter()
        .enumerate()
        .map(|(index, line)| {
            let shift = if right_to_left {
                width - line.width
            } else {
                0.0
            };
            let mut piece = Piece::stack(vec![line], left + shift, width - shift);
            piece.keep = count > 1 && (index == 0 || index + 2 == count);
            piece
        })
        .collect()
}

/// A paragraph. Nothing when the text is blank.
pub(crate) fn paragraph(
    fonts: &Fonts,
    text: &str,
    look: Look,
    width: f32,
    before: f32,
) -> Vec<Piece> {
    if text.trim().is_empty() {
        return Vec::new();
    }
    let mut pieces = pieces_of_lines(lines(fonts, &[Span::new(text, look)], width), 0.0, width);
    if let Some(first) = pieces.first_mut() {
        first.before = before;
    }
    pieces
}

/// Small grey text under something.
pub(crate) fn caption(fonts: &Fonts, text: &str, width: f32) -> Vec<Piece> {
    paragraph(fonts, text, Voice::CELL_QUIET, width, 3.0)
}

/// The heading of a section: its number on a strip of tape, its title, a rule.
pub(crate) fn section(fonts: &Fonts, number: usize, title: &str, width: f32) -> Piece {
    let mut piece = Piece::default();
    let tag = lines(
        fonts,
        &[Span::new(
            number.to_string(),
            Look::bold(15.0).in_ink(Ink::White),
        )],
        width,
    );
    let tag_width = 30.0;
    let mut words = lines(
        fonts,
        &[Span::new(title, Look::bold(19.0))],
        width - tag_width - 10.0,
    );
    let tape = super::strip(crate::document::Mark::Whole, tag_width, 22.0);
    piece.put(tape, 0.0, 2.0);
    if let Some(mut line) = tag.into_iter().next() {
        let x = (tag_width - line.width) / 2.0;
        line.rtl = false;
        let mut label = Piece::default();
        label.draws.push(crate::page::Draw::Text {
            x,
            y: 18.4,
            line,
            left: 0.0,
            right: tag_width,
        });
        piece.put(label, 0.0, 0.0);
    }
    piece.put_lines(
        std::mem::take(&mut words),
        tag_width + 10.0,
        width - tag_width - 10.0,
    );
    piece.height = piece.height.max(26.0) + 5.0;
    let rule = Path::line(
        0.0,
        piece.height,
        width,
        piece.height,
        Stroke::solid(Ink::Black, 1.4),
    );
    piece.put_path(rule);
    piece.height += 9.0;
    piece.kept().outlined(0, title)
}

/// The heading of a part, with something quiet at its right: a hash, a remark. Entered in the
/// outline.
pub(crate) fn heading(fonts: &Fonts, title: &str, remark: &[Span], width: f32) -> Piece {
    let remark_lines = if remark.iter().all(|span| span.text.is_empty()) {
        Vec::new()
    } else {
        lines(fonts, remark, width * 0.45)
    };
    let remark_width = remark_lines
        .iter()
        .fold(0.0_f32, |widest, line| widest.max(line.width));
    let title_width = width
        - if remark_width > 0.0 {
            remark_width + 14.0
        } else {
            0.0
        };
    let title_lines = lines(fonts, &[Span::new(title, Look::bold(12.5))], title_width);
    let baseline = title_lines.first().map_or(0.0, |line| line.above);
    let mut piece = Piece::stack(title_lines, 0.0, title_width);
    // The remark stands on the title's first baseline, at the right edge.
    let mut side = Piece::default();
    if let Some(first) = remark_lines.first() {
        side.height = (baseline - first.above).max(0.0);
    }
    for line in remark_lines {
        let left = width - line.width;
        let line_width = line.width;
        side.put_lines(vec![line], left, line_width);
    }
    let side_height = side.height;
    piece.put(side, 0.0, 0.0);
    piece.height = piece.height.max(side_height) + 2.0;
    let rule = Path::line(
        0.0,
        piece.height,
        width,
        piece.height,
        Stroke::solid(Ink::Black, 0.7),
    );
    piece.put_path(rule);
    piece.height += 5.0;
    piece.after(16.0).kept().outlined(1, title)
}

/// A small heading inside a part. Nothing when it is blank.
pub(crate) fn sub_heading(fonts: &Fonts, title: &str, width: f32) -> Vec<Piece> {
    if title.trim().is_empty() {
        return Vec::new();
    }
    let set = lines(fonts, &[Span::new(title, Look::bold(9.5))], width);
    let mut piece = Piece::stack(set, 0.0, width).after(8.0).kept();
    piece.height += 1.5;
    vec![piece]
}

/// A list with a dash before each item.
pub(crate) fn bullets(fonts: &Fonts, items: &[String], look: Look, width: f32) -> Vec<Piece> {
    let indent = 12.0;
    items
        .iter()
        .flat_map(|item| {
            let set = lines(fonts, &[Span::new(item.as_str(), look)], width - indent);
            let middle = set.first().map_or(0.0, |line| line.above) - look.size * 0.3;
            let mut pieces = pieces_of_lines(set, indent, width - indent);
            if let Some(first) = pieces.first_mut() {
                first.before = 2.0;
                let dash = Path::filled(1.0, middle - 0.9, 5.5, 1.8, Ink::Tape);
                first.put_path(dash);
            }
            pieces
        })
        .collect()
}

/// Numbered steps.
pub(crate) fn steps(fonts: &Fonts, items: &[String], width: f32) -> Vec<Piece> {
    let look = Voice::BODY;
    let indent = 8.0 + crate::text::width(fonts, &items.len().to_string(), Look::bold(look.size));
    let indent = indent.max(18.0);
    items
        .iter()
        .enumerate()
        .flat_map(|(index, item)| {
            let set = lines(fonts, &[Span::new(item.as_str(), look)], width - indent);
            let mut pieces = pieces_of_lines(set, indent, width - indent);
            if let Some(first) = pieces.first_mut() {
                first.before = 2.5;
                let number = Span::new((index + 1).to_string(), Look::bold(look.size));
                let number = Piece::stack(lines(fonts, &[number], indent - 4.0), 0.0, indent - 4.0);
                first.put(number, 0.0, 0.0);
            }
            pieces
        })
        .collect()
}

/// A label over a value, in a box `width` wide.
pub(crate) fn labelled(fonts: &Fonts, label: &str, value: &str, look: Look, width: f32) -> Piece {
    let value = if value.trim().is_empty() {
        "—"
    } else {
        value
    };
    let mut piece = Piece::default();
    piece.put_lines(
        lines(fonts, &[Span::new(label, Voice::LABEL)], width),
        0.0,
        width,
    );
    piece.put_lines(lines(fonts, &[Span::new(value, look)], width), 0.0, width);
    piece
}
