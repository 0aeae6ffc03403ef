//! The cover: which gag, how it stands, what is still unsigned, what else stands in the way, what
//! happens, and what every reader must know. The answer comes first.

use crate::{
    PacketDocument, PacketError,
    document::{Mark, State},
    fonts::Fonts,
    page::{Draw, Ink, Path, Piece, Stroke},
    parts::{
        Cell, Column, Voice, bullets, code, heading, labelled, paragraph, strip, sub_heading, table,
    },
    spoken::spell,
    text::{Look, Span, fit, lines},
};

/// The caution that no packet is without.
const STANDING_CAUTION: &str = "This packet is a planning aid. Every figure in it carries its \
    source and its tolerance and can be wrong. Local law and licensed people decide, and anyone \
    may call a hold at any time, with no rank and no reason.";

/// Digest characters read over a radio to compare two sheets.
const CHECK_LENGTH: usize = 4;

/// Sets the cover.
pub(crate) fn cover(
    fonts: &Fonts,
    document: &PacketDocument,
    width: f32,
) -> Result<Vec<Piece>, PacketError> {
    let mut pieces = vec![banner(fonts, document, width).outlined(0, "Cover")];
    pieces.extend(slate(fonts, document, width));
    pieces.extend(answer(fonts, document, width)?);
    pieces.extend(unsigned(fonts, document, width));
    pieces.extend(blocks(fonts, document, width));
    let summary = paragraph(fonts, &document.summary, Voice::BODY, width, 0.0);
    if !summary.is_empty() {
        pieces.push(heading(fonts, "What happens", &[], width));
        pieces.extend(summary);
    }
    if !document.revision_note.trim().is_empty() || !document.revision_author.trim().is_empty() {
        pieces.extend(sub_heading(fonts, "About this revision", width));
        let by = [
            document.revision_author.as_str(),
            document.revision_written.as_str(),
        ]
        .into_iter()
        .filter(|part| !part.trim().is_empty())
        .collect::<Vec<_>>()
        .join(", ");
        pieces.extend(paragraph(
            fonts,
            &document.revision_note,
            Voice::BODY,
            width,
            0.0,
        ));
        pieces.extend(paragraph(fonts, &by, Voice::CELL_QUIET, width, 1.0));
    }
    pieces.push(heading(fonts, "Cautions", &[], width));
    let mut cautions = vec![STANDING_CAUTION.to_owned()];
    cautions.extend(
        document
            .cautions
            .iter()
            .filter(|text| !text.trim().is_empty())
            .cloned(),
    );
    pieces.extend(bullets(fonts, &cautions, Voice::BODY, width));
    Ok(pieces)
}

fn banner(fonts: &Fonts, document: &PacketDocument, width: f32) -> Piece {
    let label = fit(fonts, &Span::new("GAG PACKET", Voice::LABEL), width * 0.3);
    let label_width = label.width;
    let name = Span::new(document.production.as_str(), Look::bold(13.0));
    let name_width = width - label_width - 14.0;
    let mut piece = Piece::stack(lines(fonts, &[name], name_width), 0.0, name_width);
    let y = 13.0 * 0.98;
    piece.draws.push(Draw::Text {
        x: width - label_width,
        y,
        line: label,
        left: width - label_width,
        right: width,
    });
    piece.height += 6.0;
    piece.kept()
}

/// The panel in the manner of a camera slate: code and title large, the facts in ruled boxes.
fn slate(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Piece> {
    let pad = 9.0;
    // The code in chalk on slate.
    let code_room = width * 0.36;
    let code_lines = {
        let look = Look::bold(38.0).in_ink(Ink::White);
        let whole = lines(
            fonts,
            &[Span::new(document.gag_code.as_str(), look)],
            f32::INFINITY,
        );
        if whole.iter().all(|line| line.width <= code_room) {
            whole
        } else {
            let look = Look::bold(17.0).in_ink(Ink::White);
            lines(
                fonts,
                &[Span::new(document.gag_code.as_str(), look)],
                code_room,
            )
        }
    };
    let code_width = code_lines
        .iter()
        .fold(66.0_f32, |widest, line| widest.max(line.width))
        + 2.0 * pad;
    let mut code_cell = Piece::default();
    code_cell.put_lines(code_lines, pad, code_width - pad);

    let title_left = code_width + 12.0;
    let title_width = width - title_left - pad;
    let long = document.gag_title.chars().count() > 60;
    let title_look = Look::bold(if long { 14.0 } else { 20.0 });
    let mut title_cell = Piece::blank(pad);
    let title = Span::new(document.gag_title.as_str(), title_look);
    title_cell.put_lines(lines(fonts, &[title], title_width), title_left, title_width);
    let technique = Span::new(
        document.technique.as_str(),
        Look::regular(10.5).in_ink(Ink::Grey),
    );
    title_cell.put_lines(
        lines(fonts, &[technique], title_width),
        title_left,
        title_width,
    );
    title_cell.height += pad;

    let height = (code_cell.height + 12.0).max(title_cell.height).max(58.0);
    let mut top = Piece::blank(height);
    top.put_path(Path::filled(0.0, 0.0, code_width, height, Ink::Slate));
    let down = (height - code_cell.height) / 2.0;
    top.put(code_cell, 0.0, down);
    let down = (height - title_cell.height) / 2.0;
    top.put(title_cell, 0.0, down);
    frame_sides(&mut top, width);
    let edge = Stroke::solid(Ink::Slate, 1.8);
    top.put_path(Path::line(0.0, 0.0, width, 0.0, edge));
    let mut pieces = vec![top.kept()];

    let revision = document.revision.to_string();
    let facts = boxes(
        fonts,
        &[
            ("REVISION", revision.as_str(), 0.8),
            ("SCENE", document.scene.as_str(), 1.0),
            ("SHOOTING DAY", document.day.as_str(), 1.6),
            ("CALL", document.call.as_str(), 1.1),
            ("UNIT", document.unit.as_str(), 1.2),
        ],
        Look::bold(11.0),
        width,
    );
    let place = boxes(
        fonts,
        &[
            ("LOCATION", document.location.as_str(), 2.2),
            ("LIGHT", document.light.as_str(), 1.0),
        ],
        Look::regular(10.0),
        width,
    );
    pieces.push(facts.kept());
    let mut place = place;
    let bottom = place.height;
    place.put_path(Path::line(0.0, bottom, width, bottom, edge));
    pieces.push(place.kept());
    pieces
}

fn frame_sides(piece: &mut Piece, width: f32) {
    let edge = Stroke::solid(Ink::Slate, 1.8);
    let height = piece.height;
    for x in [0.0, width] {
        piece.put_path(Path::line(x, -0.9, x, height + 0.9, edge));
    }
}

/// A ruled row of labelled values sharing the width.
fn boxes(fonts: &Fonts, cells: &[(&str, &str, f32)], look: Look, width: f32) -> Piece {
    let pad = 8.0;
    let total: f32 = cells.iter().map(|&(_, _, share)| share).sum();
    let mut row = Piece::default();
    let mut left = 0.0;
    let mut dividers = Vec::new();
    for &(label, value, share) in cells {
        let own = width * share / total;
        let cell = labelled(fonts, label, value, look, own - 2.0 * pad);
        row.height = row.height.max(cell.height + 9.0);
        row.put(cell, left + pad, 4.0);
        left += own;
        dividers.push(left);
    }
    dividers.pop();
    let height = row.height;
    row.put_path(Path::line(
        0.0,
        0.0,
        width,
        0.0,
        Stroke::solid(Ink::Slate, 0.8),
    ));
    for x in dividers {
        row.put_path(Path::line(
            x,
            0.0,
            x,
            height,
            Stroke::solid(Ink::Slate, 0.8),
        ));
    }
    frame_sides(&mut row, width);
    row
}

/// How the gag stands, as a strip and a word, with what identifies the sheet beside it.
fn answer(fonts: &Fonts, document: &PacketDocument, width: f32) -> Result<Vec<Piece>, PacketError> {
    let code_side = 92.0;
    let beside = !document.verify_data.is_empty() && document.verify_data.len() <= 180;
    let inner = width - if beside { code_side + 14.0 } else { 0.0 };
    let mut left = Piece::blank(2.0);
    let (tape_width, tape_height) = (104.0, 25.0);
    let word_left = tape_width + 14.0;
    let word_room = inner - word_left;
    let word = Span::new(document.state.word.as_str(), Look::bold(25.0));
    let word_lines = lines(fonts, &[word], word_room);
    let middle = 2.0 + word_lines.first().map_or(0.0, |line| line.above) - 25.0 * 0.36;
    left.put(
        strip(document.state.mark, tape_width, tape_height),
        0.0,
        middle - tape_height / 2.0,
    );
    left.put_lines(word_lines, word_left, word_room);
    left.height += 3.0;
    let sentence = Span::new(document.state_sentence.as_str(), Look::regular(11.0));
    if !document.state_sentence.trim().is_empty() {
        left.put_lines(lines(fonts, &[sentence], inner), 0.0, inner);
    }
    left.height += 6.0;
    left.put_lines(lines(fonts, &on_the_radio(document), inner), 0.0, inner);
    let digest = [
        Span::new("Plan digest  ", Voice::LABEL),
        Span::new(document.plan_digest.as_str(), Look::mono(7.0)),
    ];
    left.put_lines(lines(fonts, &digest, inner), 0.0, inner);

    let mut piece = left;
    let caption = Span::new(
        document.verify_caption.as_str(),
        Look::regular(7.0).in_ink(Ink::Grey),
    );
    if beside {
        let mut side = code(&document.verify_data, code_side)?;
        side.put_lines(lines(fonts, &[caption], code_side), 0.0, code_side);
        piece.height = piece.height.max(side.height);
        piece.put(side, width - code_side, 0.0);
        return Ok(vec![piece.after(13.0)]);
    }
    let mut pieces = vec![piece.after(13.0)];
    if !document.verify_data.is_empty() {
        // Long data needs a larger code, which stands by itself so that it still scans.
        let side = 190.0;
        let mut alone = code(&document.verify_data, side)?;
        let room = width - side - 12.0;
        alone.put(
            Piece::stack(lines(fonts, &[caption], room), 0.0, room),
            side + 12.0,
            20.0,
        );
        pieces.push(alone.after(8.0));
    }
    Ok(pieces)
}

/// What two people read to each other to be sure they hold the same sheet.
fn on_the_radio(document: &PacketDocument) -> Vec<Span> {
    let check: String = document
        .plan_digest
        .chars()
        .filter(char::is_ascii_hexdigit)
        .take(CHECK_LENGTH)
        .collect();
    let mut said = format!(
        "{}, revision {}",
        spell(&document.gag_code),
        spell(&document.revision.to_string())
    );
    if check.len() == CHECK_LENGTH {
        said = format!("{said}, check {}", spell(&check));
    }
    vec![
        Span::new("On the radio  ", Voice::LABEL),
        Span::new(said, Look::bold(9.5)),
    ]
}

/// The signatures that are missing, with a box to tick when they come.
fn unsigned(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Piece> {
    let open: Vec<_> = document
        .signoffs
        .iter()
        .filter(|part| !part.stands)
        .collect();
    let title = match open.len() {
        0 => "Still unsigned: nothing".to_owned(),
        count => format!("Still unsigned: {count} of {}", document.signoffs.len()),
    };
    let mut pieces = vec![heading(fonts, &title, &[], width)];
    if open.is_empty() {
        let text = if document.signoffs.is_empty() {
            "No role has been asked to sign."
        } else {
            "Every role that must sign has signed this very content."
        };
        pieces.extend(paragraph(fonts, text, Voice::BODY, width, 0.0));
        return pieces;
    }
    let columns = [
        Column::new("", 0.32),
        Column::new("Role", 2.4),
        Column::new("Who", 2.4),
        Column::new("Stands", 1.9),
        Column::new("Why it must sign", 2.4),
    ];
    let rows = open
        .iter()
        .map(|part| {
            let who = if part.name.trim().is_empty() {
                "—"
            } else {
                part.name.as_str()
            };
            vec![
                Cell::Box,
                Cell::strong(part.role.as_str()),
                Cell::text(who),
                Cell::State(part.state.clone()),
                Cell::text(part.because.as_str()),
            ]
        })
        .collect();
    pieces.extend(table(fonts, &columns, rows, width));
    pieces
}

fn blocks(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Piece> {
    if document.blocks.is_empty() {
        return Vec::new();
    }
    let columns = [
        Column::new("", 1.9),
        Column::new("What", 4.2),
        Column::new("What would put it right", 3.4),
    ];
    let rows = document
        .blocks
        .iter()
        .map(|block| {
            let mark = if block.mark == Mark::None {
                Mark::Crossed
            } else {
                block.mark
            };
            vec![
                Cell::State(State::new(block.kind.as_str(), mark)),
                Cell::titled_plain(&block.about, &block.reason),
                Cell::text(block.remedy.as_str()),
            ]
        })
        .collect();
    let mut pieces = vec![heading(fonts, "What else stands in the way", &[], width)];
    pieces.extend(table(fonts, &columns, rows, width));
    pieces
}
