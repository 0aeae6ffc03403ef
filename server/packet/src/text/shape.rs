//! From text to glyphs: cuts a paragraph into items of one direction, script, face and look, and
//! shapes each. Knows nothing of line width.

use std::ops::Range;

use rustybuzz::{Script, ttf_parser::Tag};
use unicode_bidi::{BidiInfo, Level};
use unicode_script::UnicodeScript;
use unicode_segmentation::UnicodeSegmentation;

use super::{Glyph, Look, Run, Span};
use crate::fonts::{Choice, Fonts};

/// One paragraph as it is shaped: its text, and the looks of its stretches.
pub(super) struct Paragraph {
    /// The cleaned text.
    pub(super) text: String,
    /// Where each look starts, ascending from 0.
    pub(super) looks: Vec<(usize, Look)>,
}

/// A stretch of a paragraph that shapes as one.
#[derive(Clone, Debug)]
pub(super) struct Item {
    /// Its bytes in the paragraph.
    pub(super) range: Range<usize>,
    /// Its direction level.
    pub(super) level: Level,
    script: Script,
    choice: Choice,
    look: Look,
}

/// Splits spans at line breaks into paragraphs, cleaning what cannot be printed.
///
/// Control characters become the replacement character, so that they show. Direction overrides,
/// embeddings and isolates are left out: they have no shape, and a name must not be able to turn
/// round the sentence it stands in. Where there are several spans, each is isolated from the next.
pub(super) fn paragraphs(spans: &[Span]) -> Vec<Paragraph> {
    let mut all = vec![Paragraph {
        text: String::new(),
        looks: Vec::new(),
    }];
    for span in spans {
        let isolate = spans.len() > 1 && !is_plain(&span.text);
        for (number, piece) in split_lines(&span.text).enumerate() {
            if number > 0 {
                all.push(Paragraph {
                    text: String::new(),
                    looks: Vec::new(),
                });
            }
            let Some(paragraph) = all.last_mut() else {
                continue;
            };
            paragraph.looks.push((paragraph.text.len(), span.look));
            if isolate {
                paragraph.text.push('\u{2068}');
            }
            paragraph.text.extend(piece.chars().filter_map(clean));
            if isolate {
                paragraph.text.push('\u{2069}');
            }
        }
    }
    all
}

fn split_lines(text: &str) -> impl Iterator<Item = &str> {
    text.split([
        '\n', '\u{2028}', '\u{2029}', '\u{000B}', '\u{000C}', '\u{0085}',
    ])
    .map(|line| line.strip_suffix('\r').unwrap_or(line))
}

fn clean(c: char) -> Option<char> {
    match c {
        '\t' | '\r' => Some(' '),
        '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' => None,
        c if c.is_control() => Some('\u{FFFD}'),
        c => Some(c),
    }
}

/// Left-to-right text without joiners or marks that steer direction.
pub(super) fn is_plain(text: &str) -> bool {
    text.chars()
        .all(|c| c < '\u{0590}' || ('\u{1E00}'..'\u{200B}').contains(&c))
}

impl Paragraph {
    fn look_at(&self, byte: usize) -> Look {
        let after = self.looks.partition_point(|&(start, _)| start <= byte);
        self.looks
            .get(after.saturating_sub(1))
            .map_or(Look::regular(9.0), |&(_, look)| look)
    }

    /// Cuts the paragraph into items, and says whether it reads right to left.
    pub(super) fn items(&self, fonts: &Fonts) -> (Vec<Item>, bool) {
        let bidi = (!is_plain(&self.text))
            .then(|| BidiInfo::new(&self.text, Some(base_direction(&self.text))));
        let level_at = |byte: usize| {
            bidi.as_ref()
                .and_then(|b| b.levels.get(byte).copied())
                .unwrap_or(Level::ltr())
        };
        let rtl = bidi
            .as_ref()
            .and_then(|b| b.paragraphs.first())
            .is_some_and(|paragraph| paragraph.level.is_rtl());
        let mut items: Vec<Item> = Vec::new();
        let mut script = first_script(&self.text);
        let mut before: Option<(Choice, Look)> = None;
        for (start, cluster) in self.text.grapheme_indices(true) {
            let end = start + cluster.len();
            let look = self.look_at(start);
            let level = level_at(start);
            script = cluster.chars().find_map(own_script).unwrap_or(script);
            let same_voice = before
                .filter(|(_, last)| last.style == look.style)
                .map(|(c, _)| c);
            let choice = fonts.choose(look.style, cluster, same_voice);
            before = Some((choice, look));
            match items.last_mut() {
                Some(item)
                    if item.level == level
                        && item.script == script
                        && item.choice == choice
                        && item.look == look =>
                {
                    item.range.end = end;
                }
                _ => items.push(Item {
                    range: start..end,
                    level,
                    script,
                    choice,
                    look,
                }),
            }
        }
        (items, rtl)
    }

    /// Shapes part of an item. `range` lies inside the item.
    pub(super) fn shape(&self, fonts: &Fonts, item: &Item, range: Range<usize>) -> ShapedItem {
        let text = &self.text[range.clone()];
        let shaped = fonts.shape(item.choice.face, item.script, item.level.is_rtl(), text);
        let scale = fonts.face(item.choice.face).scale(item.look.size);
        let mut starts: Vec<usize> = shaped.iter().map(|glyph| glyph.cluster).collect();
        starts.sort_unstable();
        starts.dedup();
        let cluster_text = |start: usize| {
            let next = starts.partition_point(|&s| s <= start);
            let end = starts.get(next).copied().unwrap_or(text.len());
            // The first cluster also stands for anything invisible before it.
            let start = if next == 1 { 0 } else { start };
            text.get(start..end).unwrap_or_default()
        };
        let mut glyphs = Vec::with_capacity(shaped.len());
        let mut clusters: Vec<(usize, f32)> = Vec::with_capacity(shaped.len());
        let mut advance = 0.0;
        let mut last = None;
        for one in shaped.iter() {
            let cluster = one.cluster;
            let stands_for = if last == Some(cluster) {
                ""
            } else {
                cluster_text(cluster)
            };
            last = Some(cluster);
            let glyph = Glyph {
                id: one.id,
                advance: one.advance as f32 * scale,
                dx: one.dx as f32 * scale,
                dy: one.dy as f32 * scale,
                text: stands_for.to_owned(),
            };
            advance += glyph.advance;
            match clusters.last_mut() {
                Some((start, width)) if *start == range.start + cluster => *width += glyph.advance,
                _ => clusters.push((range.start + cluster, glyph.advance)),
            }
            glyphs.push(glyph);
        }
        clusters.sort_by_key(|&(start, _)| start);
        let run = Run {
            x: 0.0,
            face: item.choice.face,
            thicken: item.choice.thicken,
            look: item.look,
            glyphs,
            text: text.to_owned(),
            advance,
        };
        ShapedItem { run, clusters }
    }
}

/// An item's glyphs, and the width of each of its clusters in reading order.
pub(super) struct ShapedItem {
    /// The glyphs.
    pub(super) run: Run,
    /// Where each cluster starts in the paragraph, and its width.
    pub(super) clusters: Vec<(usize, f32)>,
}

/// Right to left when the first letter and most letters are. A packet's sentences read left to
/// right, and one that begins with an Arabic name must not be turned round by it.
fn base_direction(text: &str) -> Level {
    use unicode_bidi::{BidiClass, bidi_class};
    let (mut left_to_right, mut right_to_left) = (0_usize, 0_usize);
    for c in text.chars() {
        match bidi_class(c) {
            BidiClass::L if right_to_left == 0 => return Level::ltr(),
            BidiClass::L => left_to_right += 1,
            BidiClass::R | BidiClass::AL => right_to_left += 1,
            _ => {}
        }
    }
    if right_to_left > left_to_right {
        Level::rtl()
    } else {
        Level::ltr()
    }
}

fn own_script(c: char) -> Option<Script> {
    use unicode_script::Script as S;
    if c.is_ascii() {
        return c.is_ascii_alphabetic().then_some(rustybuzz::script::LATIN);
    }
    match c.script() {
        S::Common | S::Inherited | S::Unknown => None,
        script => Script::from_iso15924_tag(Tag::from_bytes_lossy(script.short_name().as_bytes())),
    }
}

fn first_script(text: &str) -> Script {
    text.chars()
        .find_map(own_script)
        .unwrap_or(rustybuzz::script::LATIN)
}
