//! The plan facet by facet, and what has been logged beside it.

use crate::{
    document::{Content, Part, Row},
    fonts::Fonts,
    page::Piece,
    parts::{Cell, Column, Voice, bullets, caption, heading, paragraph, steps, sub_heading, table},
    text::{Span, width as text_width},
};

/// Characters of a hash printed beside a heading; the whole hash is in the trail.
const SHORT_HASH: usize = 12;

/// Sets the plan.
pub(super) fn plan(fonts: &Fonts, facets: &[Part], width: f32) -> Vec<Piece> {
    facets
        .iter()
        .flat_map(|facet| part(fonts, facet, width))
        .collect()
}

/// Sets what has been logged.
pub(super) fn records(fonts: &Fonts, records: &[Part], width: f32) -> Vec<Piece> {
    records
        .iter()
        .flat_map(|record| part(fonts, record, width))
        .collect()
}

fn part(fonts: &Fonts, part: &Part, width: f32) -> Vec<Piece> {
    let short: String = part.hash.chars().take(SHORT_HASH).collect();
    let mut remark = Vec::new();
    if !part.remark.trim().is_empty() {
        remark.push(Span::new(format!("{}   ", part.remark), Voice::CELL_QUIET));
    }
    if !short.is_empty() {
        remark.push(Span::new(short, Voice::HASH));
    }
    let mut pieces = vec![heading(fonts, &part.title, &remark, width)];
    let content: Vec<Piece> = part
        .content
        .iter()
        .flat_map(|content| set(fonts, content, width))
        .collect();
    if content.is_empty() {
        pieces.extend(paragraph(
            fonts,
            "Nothing is written here.",
            Voice::CELL_QUIET,
            width,
            0.0,
        ));
    } else {
        pieces.extend(content);
    }
    pieces
}

fn set(fonts: &Fonts, content: &Content, width: f32) -> Vec<Piece> {
    let (title, body) = match content {
        Content::Paragraph { heading, text } => {
            (heading, paragraph(fonts, text, Voice::BODY, width, 2.0))
        }
        Content::Rows { heading, rows } => (heading, pairs(fonts, rows, width)),
        Content::List { heading, items } => (heading, bullets(fonts, items, Voice::BODY, width)),
        Content::Steps { heading, items } => (heading, steps(fonts, items, width)),
        Content::Table {
            heading,
            columns,
            rows,
            note,
        } => {
            let mut body = grid(fonts, columns, rows, width);
            body.extend(caption(fonts, note, width));
            (heading, body)
        }
    };
    if body.is_empty() {
        return Vec::new();
    }
    let mut pieces = sub_heading(fonts, title, width);
    pieces.extend(body);
    pieces
}

/// Names and values, ruled lightly, with no head.
fn pairs(fonts: &Fonts, rows: &[Row], width: f32) -> Vec<Piece> {
    let with_other = rows.iter().any(|row| !row.other.trim().is_empty());
    let columns = if with_other {
        vec![
            Column::new("", 2.6),
            Column::new("", 4.4),
            Column::new("", 2.6),
        ]
    } else {
        vec![Column::new("", 2.6), Column::new("", 7.15)]
    };
    let cells = rows
        .iter()
        .map(|row| {
            let value = if row.value.trim().is_empty() {
                "—"
            } else {
                row.value.as_str()
            };
            vec![
                Cell::Text(vec![vec![Span::new(row.label.as_str(), Voice::CELL_QUIET)]]),
                Cell::text(value),
                Cell::Text(vec![vec![Span::new(row.other.as_str(), Voice::CELL_QUIET)]]),
            ]
        })
        .collect();
    table(fonts, &columns, cells, width)
}

/// A table whose columns share the width by how much they have to say, each at least as wide as
/// its longest word where that is possible.
fn grid(fonts: &Fonts, columns: &[String], rows: &[Vec<String>], width: f32) -> Vec<Piece> {
    let cell = |row: &Vec<String>, index: usize| row.get(index).cloned().unwrap_or_default();
    let share = |index: usize| -> f32 {
        let longest = rows
            .iter()
            .map(|row| cell(row, index).chars().count())
            .max()
            .unwrap_or(0);
        let most = longest.max(columns[index].chars().count()) as f32;
        // The square root keeps one long column from squeezing the others to nothing.
        most.clamp(4.0, 120.0).sqrt()
    };
    let total: f32 = (0..columns.len()).map(share).sum();
    let longest_word = |text: &str, look| {
        text.split_whitespace()
            .map(|word| text_width(fonts, word, look))
            .fold(0.0, f32::max)
    };
    let shares: Vec<f32> = (0..columns.len())
        .map(|index| {
            let look = if index == 0 {
                Voice::CELL_STRONG
            } else {
                Voice::CELL
            };
            let in_rows = rows.iter().map(|row| longest_word(&cell(row, index), look));
            let words = in_rows.fold(longest_word(&columns[index], Voice::LABEL), f32::max);
            // A word longer than a quarter of the page is broken rather than given its way.
            (width * share(index) / total).max(words.min(width * 0.25) + 1.0)
        })
        .collect();
    let set: Vec<Column> = columns
        .iter()
        .zip(&shares)
        .map(|(title, &share)| Column::new(title.as_str(), share))
        .collect();
    let cells = rows
        .iter()
        .map(|row| {
            (0..columns.len())
                .map(|index| {
                    let text = row.get(index).map_or("", String::as_str);
                    if index == 0 {
                        Cell::strong(text)
                    } else {
                        Cell::text(text)
                    }
                })
                .collect()
        })
        .collect();
    table(fonts, &set, cells, width)
}
