//! Faces in the file: which glyphs each needs, and the text each glyph stands for.

use std::{
    cmp::Reverse,
    collections::{BTreeMap, HashMap},
};

use printpdf::FontId;
use rustybuzz::ttf_parser::GlyphId;
use sha2::{Digest, Sha256};

use crate::{
    fonts::{FaceId, Font, Fonts},
    page::{Draw, Flow},
};

/// What is used of one face.
pub(super) struct Used {
    /// Its name in the file, which is also the tag of the subset.
    pub(super) name: FontId,
    /// The glyphs with the text that each stands for and its width in thousandths of the size.
    glyphs: BTreeMap<u16, (String, f32)>,
}

impl Used {
    /// The text that a reader is given for a glyph; empty when it never stands for any.
    pub(super) fn text(&self, glyph: u16) -> &str {
        self.glyphs.get(&glyph).map_or("", |(text, _)| text)
    }

    /// The glyph's width in thousandths of the size.
    pub(super) fn width(&self, glyph: u16) -> f32 {
        self.glyphs.get(&glyph).map_or(0.0, |&(_, width)| width)
    }
}

/// The faces that the pages use. In the file a glyph has one text, so it gets the one it has most
/// often; where it stands for another, that one is spelled out beside it.
pub(super) fn used(fonts: &Fonts, flow: &Flow) -> BTreeMap<FaceId, Used> {
    let mut counts: HashMap<FaceId, HashMap<(u16, &str), usize>> = HashMap::new();
    let lines = flow
        .pages
        .iter()
        .flat_map(|page| &page.draws)
        .filter_map(|draw| match draw {
            Draw::Text { line, .. } => Some(line),
            Draw::Path(_) => None,
        });
    for run in lines.flat_map(|line| &line.runs) {
        let face = counts.entry(run.face).or_default();
        for glyph in &run.glyphs {
            *face.entry((glyph.id, glyph.text.as_str())).or_default() += 1;
        }
    }
    counts
        .into_iter()
        .map(|(id, counts)| {
            let font = fonts.face(id);
            // Of two as frequent, the lesser text: the order of a hash map must not decide.
            let mut best: BTreeMap<u16, (usize, Reverse<&str>)> = BTreeMap::new();
            for ((glyph, text), count) in counts {
                let found = (if text.is_empty() { 0 } else { count }, Reverse(text));
                let known = best.entry(glyph).or_insert(found);
                *known = (*known).max(found);
            }
            let glyphs = best
                .into_iter()
                .map(|(glyph, (_, Reverse(text)))| (glyph, (text.to_owned(), width(font, glyph))))
                .collect();
            let name = FontId(tag(id, &glyphs));
            (id, Used { name, glyphs })
        })
        .collect()
}

/// Thousandths of the size, cut off to a whole number as printpdf writes them, so that the pen is
/// where the file says it is.
fn width(font: &Font, glyph: u16) -> f32 {
    let advance = font.face.glyph_hor_advance(GlyphId(glyph)).unwrap_or(0);
    (f32::from(advance) * font.scale(1000.0)).trunc()
}

/// Six capital letters that differ when the glyphs differ, as the standard asks of a subset; the
/// last is the face's own, so that no two faces of a file can meet.
fn tag(id: FaceId, glyphs: &BTreeMap<u16, (String, f32)>) -> String {
    let mut hash = Sha256::new();
    for (glyph, (text, _)) in glyphs {
        hash.update(glyph.to_be_bytes());
        hash.update(text.as_bytes());
        hash.update([0]);
    }
    hash.finalize()
        .iter()
        .take(5)
        .map(|byte| byte % 26)
        .chain([(id.0 % 26) as u8])
        .map(|letter| char::from(b'A' + letter))
        .collect()
}
