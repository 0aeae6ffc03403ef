//! Strips of gaffer tape, which say how something stands without colour: whole, broken into
//! pieces, torn across, crossed by a second strip, or only the outline where one would go.

use crate::{
    document::{Mark, State},
    fonts::Fonts,
    page::{Ink, Path, Piece, Stroke},
    text::{Look, Span, lines},
};

/// Draws a strip in a box of the given size, its top left corner at 0, 0.
pub(crate) fn strip(mark: Mark, width: f32, height: f32) -> Piece {
    let mut piece = Piece::blank(height);
    let tooth = (height * 0.14).min(3.0);
    match mark {
        Mark::Whole => {
            tape(&mut piece, (0.0, width), (0.0, height), tooth, Ink::Slate);
        }
        Mark::Broken => {
            // Three pieces of one strip with bare ground between them.
            let gap = width * 0.09;
            let part = (width - 2.0 * gap) / 3.0;
            for index in 0..3 {
                let start = index as f32 * (part + gap);
                tape(
                    &mut piece,
                    (start, start + part),
                    (0.0, height),
                    tooth,
                    Ink::Tape,
                );
            }
        }
        Mark::Torn => torn(&mut piece, width, height, tooth),
        Mark::Crossed => crossed(&mut piece, width, height),
        Mark::None => {
            let stroke = Stroke {
                ink: Ink::Grey,
                width: 0.8,
                dash: &[2.2, 2.0],
            };
            piece.put_path(Path::outlined(
                0.4,
                height * 0.12,
                width - 0.8,
                height * 0.76,
                stroke,
            ));
        }
    }
    piece
}

/// A strip of full width with its ends cut by the serrated edge tape is torn on.
fn tape(piece: &mut Piece, across: (f32, f32), down: (f32, f32), tooth: f32, ink: Ink) {
    let ((left, right), (top, bottom)) = (across, down);
    let teeth = 4;
    let step = (bottom - top) / teeth as f32;
    let mut points = vec![(left, top), (right, top)];
    for index in 0..teeth {
        let y = top + step * index as f32;
        points.push((right - tooth, y + step / 2.0));
        points.push((right, y + step));
    }
    points.push((left, bottom));
    for index in (0..teeth).rev() {
        let y = top + step * index as f32;
        points.push((left + tooth, y + step / 2.0));
        points.push((left, y));
    }
    piece.put_path(Path::through(&points, true, Some(ink), None));
    // The weave shows on strips large enough to have one.
    if bottom - top > 23.0 {
        for index in 1..5 {
            let y = top + (bottom - top) * index as f32 / 5.0;
            let thread = if ink == Ink::Slate {
                Ink::Grey
            } else {
                Ink::White
            };
            let stroke = Stroke {
                ink: thread,
                width: 0.25,
                dash: &[1.2, 2.4],
            };
            piece.put_path(Path::line(left + tooth, y, right - tooth, y, stroke));
        }
    }
}

/// Two halves that have come apart along a jagged tear, one slipped down.
fn torn(piece: &mut Piece, width: f32, height: f32, tooth: f32) {
    let slip = height * 0.2;
    let body = height - slip;
    let middle = width * 0.5;
    let lean = height * 0.3;
    let jag = height * 0.16;
    let tear = |side: f32, top: f32| -> Vec<(f32, f32)> {
        (0..=4)
            .map(|index| {
                let along = index as f32 / 4.0;
                let zig = if index % 2 == 0 { jag } else { -jag };
                (
                    middle + side + lean * (0.5 - along) * 2.0 + zig,
                    top + body * along,
                )
            })
            .collect()
    };
    let gap = width * 0.055;
    let mut left_half = vec![(0.0, 0.0)];
    left_half.extend(tear(-gap, 0.0));
    left_half.push((0.0, body));
    left_half.push((tooth, body * 0.75));
    left_half.push((0.0, body * 0.5));
    left_half.push((tooth, body * 0.25));
    piece.put_path(Path::through(&left_half, true, Some(Ink::Tape), None));
    let mut right_half = vec![(width, slip), (width - tooth, slip + body * 0.25)];
    right_half.push((width, slip + body * 0.5));
    right_half.push((width - tooth, slip + body * 0.75));
    right_half.push((width, slip + body));
    right_half.extend(tear(gap, slip).into_iter().rev());
    piece.put_path(Path::through(&right_half, true, Some(Ink::Tape), None));
}

/// Two strips laid across each other from corner to corner.
fn crossed(piece: &mut Piece, width: f32, height: f32) {
    // Steeper than the box is: two flat strips would read as one.
    let across = width.min(height * 2.6);
    let thick = height * 0.40;
    let (left, right) = (0.0, across);
    let (top, bottom) = (-height * 0.12, height * 1.12);
    for (from, to) in [
        ((left, top), (right, bottom)),
        ((left, bottom), (right, top)),
    ] {
        let (dx, dy): (f32, f32) = (to.0 - from.0, to.1 - from.1);
        let length = dx.hypot(dy);
        // Half a thickness across the strip, and the ends pulled in so that corners stay inside.
        let (nx, ny) = (-dy / length * thick / 2.0, dx / length * thick / 2.0);
        let inset = thick * 0.3;
        let (ax, ay) = (from.0 + dx / length * inset, from.1 + dy / length * inset);
        let (bx, by) = (to.0 - dx / length * inset, to.1 - dy / length * inset);
        let points = [
            (ax + nx, ay + ny),
            (bx + nx, by + ny),
            (bx - nx, by - ny),
            (ax - nx, ay - ny),
        ];
        let halo = Stroke::solid(Ink::White, 0.7);
        piece.put_path(Path::through(&points, true, Some(Ink::Black), Some(halo)));
    }
}

/// A small strip with its word beside it, as it stands in tables.
pub(crate) fn strip_with_word(fonts: &Fonts, state: &State, size: f32, width: f32) -> Piece {
    let (tape_width, tape_height) = (size * 2.5, size * 0.85);
    let indent = tape_width + size * 0.55;
    let word = Span::new(state.word.as_str(), Look::bold(size));
    let word_lines = lines(fonts, &[word], width - indent);
    let middle = word_lines.first().map_or(size, |line| line.above) - size * 0.36;
    let mut piece = Piece::stack(word_lines, indent, width - indent);
    piece.put(
        strip(state.mark, tape_width, tape_height),
        0.0,
        middle - tape_height / 2.0,
    );
    piece
}
