//! Figures with their intervals, checks against limits with their sources, plots, hazards and the
//! ground that must be clear.

use crate::{
    PacketDocument,
    document::{CheckRow, FigureRow},
    fonts::Fonts,
    page::Piece,
    parts::{Cell, Column, Voice, bullets, caption, ground, heading, paragraph, plot, table},
    text::{Look, Span},
};

/// Sets the section.
pub(super) fn figures(fonts: &Fonts, document: &PacketDocument, width: f32) -> Vec<Piece> {
    let mut pieces = Vec::new();
    let missing = &document.figures_missing;
    if document.figures.is_empty() {
        let text = if missing.trim().is_empty() {
            "There are no figures."
        } else {
            missing
        };
        pieces.extend(paragraph(fonts, text, Voice::BODY, width, 0.0));
    } else {
        pieces.extend(paragraph(fonts, missing, Voice::BODY, width, 0.0));
        pieces.push(heading(fonts, "Figures", &[], width));
        pieces.extend(figure_table(fonts, &document.figures, width));
        pieces.extend(caption(
            fonts,
            "The interval is what the tolerances of the inputs span. It is not a promise about the day.",
            width,
        ));
    }
    if !document.checks.is_empty() {
        pieces.push(heading(fonts, "Held against limits", &[], width));
        pieces.extend(check_table(fonts, &document.checks, width));
        pieces.extend(caption(
            fonts,
            "Marginal: the interval straddles the limit, or the margin is under the reserve. \
             Unknown: an input is missing, so nothing can be said. Missing evidence never counts as within.",
            width,
        ));
    }
    for curves in &document.plots {
        pieces.extend(plot(fonts, curves, width));
    }
    if !document.hazards.is_empty() {
        pieces.push(heading(fonts, "Hazards present", &[], width));
        pieces.extend(bullets(fonts, &document.hazards, Voice::BODY, width));
    }
    if !document.zones.is_empty() {
        pieces.push(heading(fonts, "Ground that must be clear", &[], width));
        let columns = [
            Column::new("", 0.35),
            Column::new("Zone", 2.6),
            Column::new("Extent", 3.2),
            Column::new("Why", 3.4),
        ];
        let rows = document
            .zones
            .iter()
            .enumerate()
            .map(|(index, zone)| {
                vec![
                    Cell::strong((index + 1).to_string()),
                    Cell::strong(zone.title.as_str()),
                    Cell::text(zone.extent.as_str()),
                    Cell::text(zone.reason.as_str()),
                ]
            })
            .collect();
        pieces.extend(table(fonts, &columns, rows, width));
        pieces.extend(ground(fonts, &document.zones, width).map(|map| map.after(6.0)));
    }
    if !document.figure_cautions.is_empty() {
        pieces.push(heading(fonts, "Cautions about these figures", &[], width));
        pieces.extend(bullets(
            fonts,
            &document.figure_cautions,
            Voice::BODY,
            width,
        ));
    }
    pieces
}

fn figure_table(fonts: &Fonts, figures: &[FigureRow], width: f32) -> Vec<Piece> {
    let columns = [
        Column::new("Figure", 3.0),
        Column::new("Metric", 1.7),
        Column::new("Interval", 2.4),
        Column::new("Imperial", 1.7),
        Column::new("Interval", 2.4),
    ];
    let rows = figures
        .iter()
        .map(|figure| {
            vec![
                Cell::text(figure.title.as_str()),
                Cell::strong(figure.metric.as_str()),
                Cell::text(figure.interval_metric.as_str()),
                Cell::text(figure.imperial.as_str()),
                Cell::text(figure.interval_imperial.as_str()),
            ]
        })
        .collect();
    table(fonts, &columns, rows, width)
}

fn check_table(fonts: &Fonts, checks: &[CheckRow], width: f32) -> Vec<Piece> {
    let columns = [
        Column::new("Check", 3.7),
        Column::new("Found", 1.75),
        Column::new("Limit", 1.75),
        Column::new("Stands", 1.9),
        Column::new("Source of the limit", 2.5),
    ];
    let rows = checks
        .iter()
        .map(|check| {
            let value = if check.value.trim().is_empty() {
                "not known"
            } else {
                &check.value
            };
            let weight = if check.blocking {
                "Stops the gag when exceeded."
            } else {
                "A caution."
            };
            vec![
                Cell::paragraphs([
                    Span::new(check.title.as_str(), Voice::CELL_STRONG),
                    Span::new(check.detail.as_str(), Voice::CELL),
                    Span::new(weight, Voice::CELL_QUIET),
                ]),
                value_cell(value),
                value_cell(&check.limit),
                Cell::State(check.state.clone()),
                source_cell(&check.source, &check.standing),
            ]
        })
        .collect();
    table(fonts, &columns, rows, width)
}

/// Who says so, with how far it can be leaned on under it unless that has just been said: a limit
/// of common practice has no other source.
fn source_cell(source: &str, standing: &str) -> Cell {
    let opening = source.split([':', ',', ';']).next().unwrap_or_default();
    let said = opening.trim().to_lowercase() == standing.trim().to_lowercase();
    let source = Span::new(source, Look::regular(8.0));
    if said {
        Cell::paragraphs([source])
    } else {
        Cell::paragraphs([source, Span::new(standing, Voice::CELL_QUIET)])
    }
}

/// A value with what stands in brackets after it, its interval or its imperial form, on a line of
/// its own.
fn value_cell(value: &str) -> Cell {
    match value.split_once(" (") {
        Some((value, bracket)) => Cell::paragraphs([
            Span::new(value, Voice::CELL),
            Span::new(format!("({bracket}"), Voice::CELL),
        ]),
        None => Cell::text(value),
    }
}
