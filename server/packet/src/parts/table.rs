//! Tables: columns that share the width, rows that grow with their longest cell and split across
//! pages when they are long, the head drawn again on every page.

use std::rc::Rc;

use super::{Voice, strip_with_word};
use crate::{
    document::State,
    fonts::Fonts,
    page::{Draw, Ink, Path, Piece, Stroke},
    text::{Line, Span, lines},
};

/// A column.
#[derive(Clone, Debug)]
pub(crate) struct Column {
    /// Its title; empty titles print nothing.
    pub(crate) title: String,
    /// Its share of the width.
    pub(crate) share: f32,
}

impl Column {
    /// A column.
    pub(crate) fn new(title: impl Into<String>, share: f32) -> Column {
        Column {
            title: title.into(),
            share,
        }
    }
}

/// A cell.
#[derive(Clone, Debug)]
pub(crate) enum Cell {
    /// Text; each inner list is a paragraph.
    Text(Vec<Vec<Span>>),
    /// A strip and its word.
    State(State),
    /// An empty box to tick in ink.
    Box,
}

impl Cell {
    /// Plain text.
    pub(crate) fn text(text: impl Into<String>) -> Cell {
        Cell::Text(vec![vec![Span::new(text, Voice::CELL)]])
    }

    /// Strong text.
    pub(crate) fn strong(text: impl Into<String>) -> Cell {
        Cell::Text(vec![vec![Span::new(text, Voice::CELL_STRONG)]])
    }

    /// Strong text with plain text under it; either may be empty.
    pub(crate) fn titled_plain(title: &str, under: &str) -> Cell {
        Cell::paragraphs([
            Span::new(title, Voice::CELL_STRONG),
            Span::new(under, Voice::CELL),
        ])
    }

    /// One paragraph for each span that is not blank.
    pub(crate) fn paragraphs(spans: impl IntoIterator<Item = Span>) -> Cell {
        let filled = spans
            .into_iter()
            .filter(|span| !span.text.trim().is_empty());
        Cell::Text(filled.map(|span| vec![span]).collect())
    }
}

const GUTTER: f32 = 9.0;
/// Rows of more lines than this may split.
const WHOLE_ROW_LINES: usize = 12;
/// A split row goes on in slices of this many lines.
const SLICE_LINES: usize = 6;

/// Sets a table. Nothing when it has no rows.
pub(crate) fn table(
    fonts: &Fonts,
    columns: &[Column],
    rows: Vec<Vec<Cell>>,
    width: f32,
) -> Vec<Piece> {
    if rows.is_empty() || columns.is_empty() {
        return Vec::new();
    }
    let edges = edges(columns, width);
    let head = Rc::new(head(fonts, columns, &edges, width));
    let mut pieces = vec![Piece::clone(&head).after(3.0)];
    for row in rows {
        for mut slice in row_slices(fonts, row, &edges, width) {
            slice.again = Some(Rc::clone(&head));
            pieces.push(slice);
        }
    }
    pieces
}

/// Left edge and width of each column.
fn edges(columns: &[Column], width: f32) -> Vec<(f32, f32)> {
    let total: f32 = columns.iter().map(|column| column.share.max(0.01)).sum();
    let free = (width - GUTTER * (columns.len() - 1) as f32).max(1.0);
    let mut left = 0.0;
    columns
        .iter()
        .map(|column| {
            let own = free * column.share.max(0.01) / total;
            let edge = (left, own);
            left += own + GUTTER;
            edge
        })
        .collect()
}

fn head(fonts: &Fonts, columns: &[Column], edges: &[(f32, f32)], width: f32) -> Piece {
    let mut piece = Piece::default();
    if columns.iter().all(|column| column.title.is_empty()) {
        return piece.kept();
    }
    let set: Vec<Vec<Line>> = columns
        .iter()
        .zip(edges)
        .map(|(column, &(_, own))| {
            if column.title.is_empty() {
                Vec::new()
            } else {
                lines(
                    fonts,
                    &[Span::new(column.title.as_str(), Voice::LABEL)],
                    own,
                )
            }
        })
        .collect();
    let height_of = |cell: &[Line]| cell.iter().map(Line::height).sum::<f32>();
    let tallest = set.iter().map(|cell| height_of(cell)).fold(0.0, f32::max);
    for (cell, &(left, own)) in set.into_iter().zip(edges) {
        // Titles of different heights stand on the rule, not under the top.
        let down = tallest - height_of(&cell);
        piece.put(Piece::stack(cell, left, own), 0.0, down);
    }
    piece.height = tallest + 2.0;
    let rule = Path::line(
        0.0,
        piece.height,
        width,
        piece.height,
        Stroke::solid(Ink::Black, 1.0),
    );
    piece.put_path(rule);
    piece.height += 1.0;
    piece.kept()
}

/// What a cell needs: lines that may split, or a drawing that may not.
enum Set {
    Lines(Vec<Line>),
    Whole(Piece),
}

fn row_slices(fonts: &Fonts, row: Vec<Cell>, edges: &[(f32, f32)], width: f32) -> Vec<Piece> {
    let mut cells: Vec<Set> = row
        .into_iter()
        .zip(edges)
        .map(|(cell, &(_, own))| match cell {
            Cell::Text(paragraphs) => Set::Lines(
                paragraphs
                    .iter()
                    .flat_map(|spans| lines(fonts, spans, own))
                    .collect(),
            ),
            Cell::State(state) => Set::Whole(strip_with_word(fonts, &state, 8.6, own)),
            Cell::Box => {
                let mut tick = Piece::blank(12.0);
                let stroke = Stroke::solid(Ink::Black, 0.9);
                tick.put_path(Path::outlined(0.5, 1.6, 9.5, 9.5, stroke));
                Set::Whole(tick)
            }
        })
        .collect();
    let longest = cells
        .iter()
        .map(|cell| match cell {
            Set::Lines(set) => set.len(),
            Set::Whole(_) => 1,
        })
        .max()
        .unwrap_or(0);
    let per_slice = if longest <= WHOLE_ROW_LINES {
        longest.max(1)
    } else {
        SLICE_LINES
    };
    let mut slices = Vec::new();
    let mut left_over = longest.max(1);
    while left_over > 0 {
        let first = slices.is_empty();
        // A last slice of one or two lines would look lost; it goes with the one before.
        let take = if left_over <= per_slice + 2 {
            left_over
        } else {
            per_slice
        };
        let mut slice = Piece::default();
        let above = if first { 3.0 } else { 0.0 };
        let mut parts = Vec::new();
        for (cell, &(left, own)) in cells.iter_mut().zip(edges) {
            let part = match cell {
                Set::Lines(set) => {
                    let rest = set.split_off(take.min(set.len()));
                    Piece::stack(std::mem::replace(set, rest), left, own)
                }
                Set::Whole(piece) => {
                    let mut moved = Piece::blank(piece.height);
                    moved.put(std::mem::take(piece), left, 0.0);
                    moved
                }
            };
            parts.push(part);
        }
        // First lines share a baseline, whatever their sizes.
        let baseline = parts.iter().filter_map(first_baseline).fold(0.0, f32::max);
        for part in parts {
            let down = first_baseline(&part).map_or(0.0, |own| baseline - own);
            slice.height = slice.height.max(part.height + down);
            slice.put(part, 0.0, above + down);
        }
        slice.height += above;
        left_over -= take;
        if left_over == 0 {
            slice.height += 3.5;
            let y = slice.height;
            slice.put_path(Path::line(0.0, y, width, y, Stroke::solid(Ink::Line, 0.5)));
        }
        slices.push(slice);
    }
    slices
}

/// The baseline of a piece's first line.
fn first_baseline(piece: &Piece) -> Option<f32> {
    piece.draws.iter().find_map(|draw| match draw {
        Draw::Text { y, .. } => Some(*y),
        Draw::Path(_) => None,
    })
}
