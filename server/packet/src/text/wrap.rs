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
    paragraphs(spans)
        .iter()
        .flat_map(|paragraph| set(fonts, paragraph, width))
        .collect()
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
        lines(fonts, &[Span::new(text, span.look)], f32::INFINITY)
            .into_iter()
            .next()
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
        let look = paragraph
            .looks
            .last()
            .map_or(super::Look::regular(9.0), |&(_, look)| look);
        return vec![Line {
            above: look.above(),
            below: look.below(),
            ..Line::default()
        }];
    }
    let shaped: Vec<ShapedItem> = items
        .iter()
        .map(|item| paragraph.shape(fonts, item, item.range.clone()))
        .collect();
    let clusters: Vec<(usize, f32)> = shaped
        .iter()
        .flat_map(|item| item.clusters.iter().copied())
        .collect();
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
    let Some(number) = before.strip_suffix(' ') else {
        return false;
    };
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
    let mut runs: Vec<Option<Run>> = Vec::new();
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
        runs.push(Some(run));
        levels.push(item.level);
    }
    let look = paragraph
        .looks
        .first()
        .map_or(super::Look::regular(9.0), |&(_, look)| look);
    let mut line = Line {
        above: look.above(),
        below: look.below(),
        rtl,
        ..Line::default()
    };
    for index in BidiInfo::reorder_visual(&levels) {
        let Some(mut run) = runs.get_mut(index).and_then(Option::take) else {
            continue;
        };
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{page::Ink, text::Look};

    const LOOK: Look = Look::regular(10.0);

    fn set(text: &str, width: f32) -> Vec<Line> {
        lines(&Fonts::get().unwrap(), &[Span::new(text, LOOK)], width)
    }

    fn words(line: &Line) -> String {
        line.runs.iter().map(|run| run.text.as_str()).collect()
    }

    fn glyphs(text: &str) -> Vec<u16> {
        let all = set(text, f32::INFINITY);
        all[0]
            .runs
            .iter()
            .flat_map(|run| run.glyphs.iter().map(|glyph| glyph.id))
            .collect()
    }

    #[test]
    fn lines_break_between_words_and_lose_nothing() {
        let text = "The Texas switch happens as the hook crosses the lens";
        let all = set(text, 90.0);
        assert!(all.len() > 2);
        assert!(all.iter().all(|line| line.width <= 90.01));
        assert_eq!(all.iter().map(words).collect::<Vec<_>>().join(" "), text);
    }

    #[test]
    fn a_word_wider_than_the_line_is_cut_and_loses_nothing() {
        for text in [
            "Unteilbarkeitsprüfung".repeat(20),
            "汐里".repeat(200),
            "स्था".repeat(90),
        ] {
            let all = set(&text, 61.0);
            assert!(all.iter().all(|line| line.width <= 61.01), "{text}");
            assert_eq!(all.iter().map(words).collect::<String>(), text);
        }
    }

    #[test]
    fn a_line_narrower_than_one_glyph_still_ends() {
        assert_eq!(set("WWW", 0.5).len(), 3);
    }

    #[test]
    fn a_number_keeps_its_unit() {
        for width in 60..140 {
            for line in set("a fall of 14.0 m in 1.7 s (45.9 ft)", width as f32) {
                let line = words(&line);
                assert!(
                    !line.starts_with("m ") && !line.starts_with("ft)"),
                    "{line}"
                );
            }
        }
    }

    #[test]
    fn arabic_letters_join() {
        // Alone each letter has its isolated form; in these words every letter joins.
        for word in ["ليلى", "كتب"] {
            let alone: Vec<u16> = word.chars().flat_map(|c| glyphs(&c.to_string())).collect();
            assert!(!glyphs(word).is_empty());
            assert!(
                glyphs(word).iter().all(|glyph| !alone.contains(glyph)),
                "{word}"
            );
        }
    }

    #[test]
    fn devanagari_conjuncts_form() {
        // The virama joins the two consonants of "ष्प": fewer glyphs than characters.
        assert!(glyphs("पुष्पा").len() < "पुष्पा".chars().count());
        assert!(!glyphs("पुष्पा खळदकर").contains(&0));
    }

    #[test]
    fn right_to_left_words_stand_in_reading_order() {
        let line = &set("د. ليلى at the bag", f32::INFINITY)[0];
        assert!(!line.rtl, "most letters are Latin");
        assert!(words(line).ends_with("at the bag"));
        let name = &set("ليلى الدرعاوي", f32::INFINITY)[0];
        assert!(name.rtl);
        // The second word is drawn to the left of the first: its text is last, its glyphs first.
        let first_drawn = &name.runs[0].glyphs[0];
        assert_eq!(first_drawn.text, "ي");
    }

    #[test]
    fn an_override_in_a_name_turns_nothing_round() {
        assert_eq!(glyphs("\u{202e}abc"), glyphs("abc"));
        let spans = [
            Span::new("د. ليلى", LOOK),
            Span::new(" approved, revision 4", LOOK.in_ink(Ink::Grey)),
        ];
        let line = &lines(&Fonts::get().unwrap(), &spans, f32::INFINITY)[0];
        let last = line.runs.last().unwrap();
        assert!(last.text.contains("revision 4"), "{:?}", last.text);
    }

    #[test]
    fn control_characters_show() {
        assert_eq!(words(&set("a\u{7}b", f32::INFINITY)[0]), "a\u{FFFD}b");
    }

    #[test]
    fn missing_glyphs_are_boxes_with_their_text() {
        let line = &set("\u{13080}", f32::INFINITY)[0];
        let glyph = &line.runs[0].glyphs[0];
        assert_eq!((glyph.id, glyph.text.as_str()), (0, "\u{13080}"));
        assert!(line.ink_box(&Fonts::get().unwrap()).is_some());
    }

    #[test]
    fn fitting_cuts_with_an_ellipsis() {
        let fonts = Fonts::get().unwrap();
        let long = Span::new("Descent through the silo window", LOOK);
        let cut = fit(&fonts, &long, 80.0);
        assert!(cut.width <= 80.0 && words(&cut).ends_with('…'));
        assert!(words(&cut).starts_with("Descent"));
        assert_eq!(words(&fit(&fonts, &long, 900.0)), long.text);
    }

    #[test]
    fn line_breaks_in_the_text_are_kept() {
        let all: Vec<String> = set("one\n\ntwo\r\nthree", 400.0)
            .iter()
            .map(words)
            .collect();
        assert_eq!(all, ["one", "", "two", "three"]);
    }
}
