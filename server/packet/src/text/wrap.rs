//! From a paragraph to lines of at most a given width: breaks at word boundaries, between East
//! Asian characters, and inside a word only when the word alone is wider than the line. Knows
//! nothing of pages.

use std::ops::Range;

use unicode_bidi::BidiInfo;
use unicode_linebreak::linebreaks;

use super::{
    Line, Run, Span, glyph_box,
    shape::{Item, Paragraph, ShapedItem, paragraphs},
};
use crate::fonts::Fonts;

/// Sets spans in lines no wider than `width`. A single glyph wider than that gets its own line.
pub(crate) fn lines(fonts: &Fonts, spans: &[Span], width: f32) -> Vec<Line> {
    paragraphs(spans).iter().flat_map(|paragraph| set(fonts, paragraph, width)).collect()
}

/// Sets a span on one line, cutting its end with an ellipsis when it is too wide. Line breaks
/// become spaces.
pub(crate) fn fit(fonts: &Fonts, span: &Span, width: f32) -> Line {
    let one_line = Span::new(span.text.replace(['\n', '\r'], " "), span.look);
    let whole = lines(fonts, std::slice::from_ref(&one_line), f32::INFINITY);
    if let [line] = whole.as_slice()
        && line.width <= width
    {
        return line.clone();
    }
    let starts: Vec<usize> =
        unicode_segmentation::UnicodeSegmentation::grapheme_indices(one_line.text.as_str(), true)
            .map(|(start, _)| start)
            .collect();
    let cut = |count: usize| {
        let end = starts.get(count).copied().unwrap_or(one_line.text.len());
        let text = format!("{}…", one_line.text[..end].trim_end());
        lines(fonts, &[Span::new(text, span.look)], f32::INFINITY).into_iter().next()
    };
    // The longest start that fits, by halving.
    let (mut fits, mut too_long) = (0, starts.len());
    while too_long - fits > 1 {
        let middle = usize::midpoint(fits, too_long);
        if cut(middle).is_some_and(|line| line.width <= width) {
            fits = middle;
        } else {
            too_long = middle;
        }
    }
    cut(fits).unwrap_or_default()
}

fn set(fonts: &Fonts, paragraph: &Paragraph, width: f32) -> Vec<Line> {
    let (items, rtl) = paragraph.items(fonts);
    if items.is_empty() {
        let look = paragraph.looks.last().map_or(super::Look::regular(9.0), |&(_, look)| look);
        return vec![Line { above: look.above(), below: look.below(), ..Line::default() }];
    }
    let shaped: Vec<ShapedItem> =
        items.iter().map(|item| paragraph.shape(fonts, item, item.range.clone())).collect();
    let clusters: Vec<(usize, f32)> =
        shaped.iter().flat_map(|item| item.clusters.iter().copied()).collect();
    let breaks: Vec<usize> = linebreaks(&paragraph.text)
        .map(|(at, _)| at)
        .filter(|&at| !parts_number_from_unit(&paragraph.text, at))
        .collect();

    let mut done = Vec::new();
    let mut start = 0;
    while start < paragraph.text.len() {
        let mut room = width;
        // Shaping a part alone may give other widths than inside the whole, by a kern or a joined
        // form; so the line is set, measured, and if need be set again a little shorter.
        let line = loop {
            let end = line_end(&paragraph.text, &clusters, &breaks, start, room);
            let line = build(fonts, paragraph, &items, &shaped, start..end, rtl);
            if line.width <= width + 0.01 || room <= width * 0.5 {
                start = end;
                break line;
            }
            room -= (line.width - width).max(0.25);
        };
        done.push(line);
    }
    done
}

/// Units that stay on the line of their number.
const UNITS: [&str; 34] = [
    "m", "mm", "cm", "km", "ft", "in", "yd", "mi", "m/s", "km/h", "ft/s", "mph", "kt", "g", "kg",
    "lb", "lbf", "N", "kN", "J", "kJ", "W", "kW", "kW/m²", "Pa", "kPa", "bar", "psi", "s", "ms",
    "min", "h", "%", "lx",
];

fn parts_number_from_unit(text: &str, at: usize) -> bool {
    let (before, after) = text.split_at(at);
    let Some(number) = before.strip_suffix(' ') else { return false };
    let word = after.split(' ').next().unwrap_or_default();
    let word = word.trim_end_matches([')', ',', ';', '.', ':', ']']);
    number.ends_with(|c: char| c.is_ascii_digit())
        && (UNITS.contains(&word) || word.starts_with('°'))
}

/// Where the line that starts at `start` ends.
fn line_end(
    text: &str,
    clusters: &[(usize, f32)],
    breaks: &[usize],
    start: usize,
    room: f32,
) -> usize {
    let first = clusters.partition_point(|&(at, _)| at < start);
    let mut used = 0.0;
    let mut overflow = text.len();
    for &(at, advance) in &clusters[first..] {
        let blank = text[at..].chars().next().is_some_and(char::is_whitespace);
        used += advance;
        // Blanks at the end of a line are not set, so they may hang over.
        if used > room && !blank {
            overflow = at;
            break;
        }
    }
    if overflow == text.len() {
        return overflow;
    }
    let candidate = breaks.partition_point(|&at| at <= overflow);
    match candidate.checked_sub(1).and_then(|index| breaks.get(index)) {
        Some(&at) if at > start => at,
        // One word alone is wider than the line: cut it between clusters, at least one to a line.
        _ if overflow > start => overflow,
        _ => clusters.get(first + 1).map_or(text.len(), |&(at, _)| at),
    }
}

fn build(
    fonts: &Fonts,
    paragraph: &Paragraph,
    items: &[Item],
    shaped: &[ShapedItem],
    range: Range<usize>,
    rtl: bool,
) -> Line {
    let text = &paragraph.text[range.clone()];
    let invisible = |c: char| c.is_whitespace() || matches!(c, '\u{2068}' | '\u{2069}');
    let range = range.start..range.start + text.trim_end_matches(invisible).len();
    let mut runs: Vec<Run> = Vec::new();
    let mut levels = Vec::new();
    for (item, whole) in items.iter().zip(shaped) {
        let part = item.range.start.max(range.start)..item.range.end.min(range.end);
        if part.is_empty() {
            continue;
        }
        let run = if part == item.range {
            whole.run.clone()
        } else {
            paragraph.shape(fonts, item, part).run
        };
        runs.push(run);
        levels.push(item.level);
    }
    let look = paragraph.looks.first().map_or(super::Look::regular(9.0), |&(_, look)| look);
    let mut line = Line { above: look.above(), below: look.below(), rtl, ..Line::default() };
    for index in BidiInfo::reorder_visual(&levels) {
        let mut run = runs[index].clone();
        run.x = line.width;
        line.width += run.advance;
        line.above = line.above.max(run.look.above());
        line.below = line.below.max(run.look.below());
        for glyph in &run.glyphs {
            if let Some((_, bottom, _, top)) = glyph_box(fonts, &run, glyph) {
                line.above = line.above.max(top + glyph.dy);
                line.below = line.below.max(-(bottom + glyph.dy));
            }
        }
        line.runs.push(run);
    }
    line
}
