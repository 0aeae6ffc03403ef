//! Sign-offs: for each role how it stands, who signed what and when with which key; and where no
//! signature counts, a box for ink large enough for a gloved hand.

use crate::{
    PacketDocument,
    document::SignOffPart,
    fonts::Fonts,
    page::{Draw, Ink, Path, Piece, Stroke},
    parts::{Voice, bullets, heading, labelled, paragraph, strip_with_word},
    text::{Look, Span, fit, lines},
};

/// 24 mm: a signature by a gloved hand.
const INK_HEIGHT: f32 = 68.0;

/// The place of a drawn mark: half a line's width and three lines.
const MARK_WIDTH: f32 = 150.0;
const MARK_HEIGHT: f32 = 36.0;

/// Sets the section.
pub(super) fn signatures(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Piece> {
    let mut pieces = Vec::new();
    if document.signoffs.iter().any(|part| !part.stands) {
        let text = "A signature in ink counts once a named witness has recorded it with its \
                    photograph. Sign only the revision printed beside the box.";
        pieces.extend(paragraph(fonts, text, Voice::BODY, width, 0.0));
    }
    for part in &document.signoffs {
        pieces.extend(one(fonts, document, part, width));
    }
    pieces
}

fn one(fonts: &Fonts, document: &PacketDocument, part: &SignOffPart, width: f32) -> Vec<Piece> {
    let mut pieces = vec![heading(
        fonts,
        &part.role,
        &[Span::new(because(&part.because), Voice::CELL_QUIET)],
        width,
    )];
    let state_width = width * 0.3;
    let name_left = state_width + 10.0;
    let mut first = strip_with_word(fonts, &part.state, 11.0, state_width);
    let said = signed_line(part);
    let name_room = width - name_left;
    let mut beside = Piece::default();
    beside.put_lines(lines(fonts, &said, name_room), 0.0, name_room);
    if let Some(mark) = drawn(&part.drawing) {
        let top = beside.height + 3.0;
        beside.height = top + mark.height;
        beside.put(mark, 0.0, top);
    }
    first.height = first.height.max(beside.height);
    first.put(beside, name_left, 0.0);
    first.height += 2.0;
    pieces.push(first.kept());

    pieces.extend(facts(fonts, part, width).map(Piece::kept));
    if !part.attestation.trim().is_empty() {
        let quoted = format!("“{}”", part.attestation.trim());
        pieces.extend(paragraph(fonts, &quoted, Look::regular(9.0), width, 4.0));
    }
    if !part.sentences.is_empty() {
        pieces.extend(bullets(fonts, &part.sentences, Voice::CELL, width));
    }
    if !part.conditions.is_empty() {
        let label = Span::new("Conditions not met yet", Voice::CELL_STRONG);
        pieces.push(
            Piece::stack(lines(fonts, &[label], width), 0.0, width)
                .after(4.0)
                .kept(),
        );
        pieces.extend(bullets(fonts, &part.conditions, Voice::CELL, width));
    }
    if !part.stands {
        pieces.push(ink_box(fonts, document, part, width).after(6.0));
    }
    // A card stays on one page, so that what is signed is above the signature.
    let last = pieces.len() - 1;
    for piece in &mut pieces[..last] {
        piece.keep = true;
    }
    pieces
}

/// The mark the signer drew, as large as its place allows. Nothing where nothing was drawn.
fn drawn(strokes: &[Vec<u16>]) -> Option<Piece> {
    let points = |stroke: &[u16]| -> Vec<(f32, f32)> {
        let pair = |pair: &[u16]| (f32::from(pair[0]), f32::from(pair[1]));
        stroke.chunks_exact(2).map(pair).collect()
    };
    let strokes: Vec<Vec<(f32, f32)>> = strokes.iter().map(|one| points(one)).collect();
    let all = || strokes.iter().flatten();
    let first = *all().next()?;
    let (low, high) = all().fold((first, first), |(low, high), point| {
        (
            (low.0.min(point.0), low.1.min(point.1)),
            (high.0.max(point.0), high.1.max(point.1)),
        )
    });
    let across = MARK_WIDTH / (high.0 - low.0).max(1.0);
    let down = MARK_HEIGHT / (high.1 - low.1).max(1.0);
    // One point, or one straight line, must not be blown up to fill the place.
    let scale = across.min(down).min(0.3);
    let mut piece = Piece::blank((high.1 - low.1) * scale);
    let pen = Stroke::solid(Ink::Black, 1.0);
    for stroke in strokes {
        let placed: Vec<(f32, f32)> = stroke
            .iter()
            .map(|(x, y)| ((x - low.0) * scale, (y - low.1) * scale))
            .collect();
        match placed.as_slice() {
            [] => {}
            [(x, y)] => piece.put_path(Path::filled(x - 0.7, y - 0.7, 1.4, 1.4, Ink::Black)),
            line => piece.put_path(Path::through(line, false, None, Some(pen))),
        }
    }
    Some(piece)
}

fn because(text: &str) -> String {
    if text.trim().is_empty() {
        String::new()
    } else {
        format!("asked because: {text}")
    }
}

/// Who, and what they decided.
fn signed_line(part: &SignOffPart) -> Vec<Span> {
    let name = if part.name.trim().is_empty() {
        "nobody yet"
    } else {
        part.name.as_str()
    };
    let mut said = vec![Span::new(name, Look::bold(11.0))];
    if !part.decision.trim().is_empty() {
        let mut text = format!("   {}", part.decision);
        if let Some(revision) = part.revision {
            text = format!("{text}, revision {revision}");
        }
        said.push(Span::new(text, Look::regular(9.5)));
    } else if !part.name.trim().is_empty() {
        said.push(Span::new(
            "   has not signed",
            Look::regular(9.5).in_ink(Ink::Grey),
        ));
    }
    said
}

/// When, where, with which key and over what, as labelled values. Nothing when nothing is known.
fn facts(fonts: &Fonts, part: &SignOffPart, width: f32) -> impl Iterator<Item = Piece> {
    let leaf = part.leaf.map(|leaf| leaf.to_string()).unwrap_or_default();
    let covers = part.covers.join(", ");
    let small = Voice::CELL;
    let rows: [&[(&str, &str, Look, f32)]; 3] = [
        &[
            ("Signed", &part.signed_at, small, 0.27),
            ("Received", &part.received_at, small, 0.27),
            ("Leaf in the trail", &leaf, small, 0.16),
            ("Device", &part.device, small, 0.3),
        ],
        &[
            (
                "Key, SHA-256 of the public key",
                &part.key_fingerprint,
                Voice::HASH,
                0.54,
            ),
            ("In ink, witnessed by", &part.ink_witness, small, 0.46),
        ],
        &[("Covers", &covers, small, 1.0)],
    ];
    rows.map(|row| value_row(fonts, row, width))
        .into_iter()
        .flatten()
}

/// Labelled values side by side, each in its share of the width; blank ones leave no gap.
fn value_row(fonts: &Fonts, cells: &[(&str, &str, Look, f32)], width: f32) -> Option<Piece> {
    let filled: Vec<_> = cells
        .iter()
        .filter(|cell| !cell.1.trim().is_empty())
        .collect();
    if filled.is_empty() {
        return None;
    }
    let total: f32 = filled.iter().map(|cell| cell.3).sum::<f32>().max(0.54);
    let mut row = Piece::default();
    let mut left = 0.0;
    for &&(label, value, look, share) in &filled {
        let own = width * share / total;
        let cell = labelled(fonts, label, value, look, own - 10.0);
        row.height = row.height.max(cell.height);
        row.put(cell, left, 0.0);
        left += own;
    }
    Some(row.after(2.5))
}

/// The box for ink: decision, signature, name, date and time, witness; bound to the revision.
fn ink_box(fonts: &Fonts, document: &PacketDocument, part: &SignOffPart, width: f32) -> Piece {
    let digest: String = document.plan_digest.chars().take(8).collect();
    let mut piece = Piece::blank(0.0);
    let pad = 7.0;
    let small = Look::regular(7.6).in_ink(Ink::Grey);
    let bound = format!(
        "{}, revision {}{}",
        document.gag_code,
        document.revision,
        if digest.is_empty() {
            String::new()
        } else {
            format!(", digest {digest}")
        }
    );
    // First row: the decision, as boxes to tick, and what is being signed.
    let choices = ["Approve", "Approve with conditions", "Decline"];
    let mut x = pad;
    for choice in choices {
        let stroke = Stroke::solid(Ink::Black, 1.0);
        piece.put_path(Path::outlined(x, 6.0, 13.0, 13.0, stroke));
        let line = fit(fonts, &Span::new(choice, Look::regular(9.0)), 130.0);
        let text_left = x + 18.0;
        x = text_left + line.width + 16.0;
        let right = text_left + line.width;
        piece.draws.push(Draw::Text {
            x: text_left,
            y: 15.8,
            line,
            left: text_left,
            right,
        });
    }
    let room = (width - x - pad).max(40.0);
    let bound = fit(fonts, &Span::new(bound, Look::bold(8.2)), room);
    let left = width - pad - bound.width;
    let right = width - pad;
    piece.draws.push(Draw::Text {
        x: left,
        y: 15.8,
        line: bound,
        left,
        right,
    });
    let top = 25.0;
    // Second row: the signature, and lines for name, date and time, witness.
    let split = width * 0.54;
    let put_label = |piece: &mut Piece, text: &str, x: f32, y: f32, room: f32| {
        let line = fit(fonts, &Span::new(text, small), room);
        piece.draws.push(Draw::Text {
            x,
            y,
            line,
            left: x,
            right: x + room,
        });
    };
    let signature = format!("Signature: {}", part.role);
    put_label(&mut piece, &signature, pad, top + 10.0, split - 2.0 * pad);
    let row_height = INK_HEIGHT / 3.0;
    for (index, label) in ["Name in capitals", "Date and time", "Witness"]
        .into_iter()
        .enumerate()
    {
        let y = top + row_height * index as f32;
        put_label(
            &mut piece,
            label,
            split + pad,
            y + 10.0,
            width - split - 2.0 * pad,
        );
        if index > 0 {
            let hair = Stroke::solid(Ink::Grey, 0.5);
            piece.put_path(Path::line(split, y, width, y, hair));
        }
    }
    let height = top + INK_HEIGHT;
    let thin = Stroke::solid(Ink::Black, 0.6);
    piece.put_path(Path::line(0.0, top, width, top, thin));
    piece.put_path(Path::line(split, top, split, height, thin));
    piece.put_path(Path::outlined(
        0.0,
        0.0,
        width,
        height,
        Stroke::solid(Ink::Black, 1.3),
    ));
    piece.height = height + 2.0;
    piece
}
