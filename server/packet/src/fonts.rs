//! The fonts a packet is set in: read once, kept for the life of the program, and asked which of
//! them can show a given piece of text. Knows nothing of lines or pages.

use std::{
    cell::RefCell,
    collections::HashMap,
    rc::Rc,
    sync::{Arc, Mutex, OnceLock},
};

use printpdf::ParsedFont;
use rustybuzz::{
    BufferFlags, Direction, Face, Script, ShapePlan, UnicodeBuffer, ttf_parser::GlyphId,
};

use crate::PacketError;

/// The three voices of a packet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Style {
    /// Running text.
    Regular,
    /// Headings, names, answers.
    Bold,
    /// Hashes and keys.
    Mono,
}

/// Which face, by its place in [`FILES`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub(crate) struct FaceId(pub(crate) usize);

macro_rules! font {
    ($name:literal) => {
        (
            $name,
            include_bytes!(concat!("../fonts/", $name, ".ttf")).as_slice(),
        )
    };
}

/// Every face, with the three primary ones first and the rest in the order they are tried.
/// DejaVu comes after the Noto faces because it also has Arabic and Hebrew, less well drawn, and
/// before the East Asian face, whose Latin and symbols are coarse.
static FILES: [(&str, &[u8]); 16] = [
    font!("NotoSans-Regular"),
    font!("NotoSans-Bold"),
    font!("DejaVuSansMono"),
    font!("NotoSansArabic-Regular"),
    font!("NotoSansHebrew-Regular"),
    font!("NotoSansDevanagari-Regular"),
    font!("NotoSansBengali-Regular"),
    font!("NotoSansGurmukhi-Regular"),
    font!("NotoSansGujarati-Regular"),
    font!("NotoSansTamil-Regular"),
    font!("NotoSansTelugu-Regular"),
    font!("NotoSansKannada-Regular"),
    font!("NotoSansMalayalam-Regular"),
    font!("NotoSansThai-Regular"),
    font!("DejaVuSans"),
    font!("DroidSansFallback"),
];

const REGULAR: FaceId = FaceId(0);
const BOLD: FaceId = FaceId(1);
const MONO: FaceId = FaceId(2);
const FIRST_FALLBACK: usize = 3;

/// One face and what is asked of it often.
pub(crate) struct Font {
    /// Its PostScript name.
    pub(crate) name: &'static str,
    bytes: &'static [u8],
    embeddable: OnceLock<Option<ParsedFont>>,
    /// The parsed face.
    pub(crate) face: Face<'static>,
    plans: Mutex<HashMap<(Script, bool), Arc<ShapePlan>>>,
}

impl Font {
    /// Points for one font unit at a size.
    pub(crate) fn scale(&self, size: f32) -> f32 {
        size / self.face.units_per_em() as f32
    }

    /// The glyph's outline box in font units: left, bottom, right, top. None for blanks.
    pub(crate) fn outline_box(&self, glyph: u16) -> Option<(f32, f32, f32, f32)> {
        // Read from the glyph's head; walking the outline for it would cost as much as shaping.
        let bounds = self.face.tables().glyf?.bbox(GlyphId(glyph))?;
        Some((
            f32::from(bounds.x_min),
            f32::from(bounds.y_min),
            f32::from(bounds.x_max),
            f32::from(bounds.y_max),
        ))
    }

    /// The face as a file takes it in. Reading it again takes some milliseconds, so it is read for
    /// the first packet that uses it and kept.
    pub(crate) fn embeddable(&self) -> Option<&ParsedFont> {
        let read = || {
            let mut parsed = ParsedFont::from_bytes(self.bytes, 0, &mut Vec::new())?;
            parsed.font_name = Some(self.name.to_owned());
            Some(parsed)
        };
        self.embeddable.get_or_init(read).as_ref()
    }

    /// The plan for shaping a script in a direction. Making one walks the font's tables, which
    /// costs more than shaping a line, so plans are kept.
    fn plan(&self, script: Script, rtl: bool) -> Arc<ShapePlan> {
        let make = || {
            let direction = if rtl {
                Direction::RightToLeft
            } else {
                Direction::LeftToRight
            };
            Arc::new(ShapePlan::new(
                &self.face,
                direction,
                Some(script),
                None,
                &[],
            ))
        };
        match self.plans.lock() {
            Ok(mut plans) => plans.entry((script, rtl)).or_insert_with(make).clone(),
            // Another thread stopped while it held the lock; its half-made entry was never stored.
            Err(_) => make(),
        }
    }

    fn covers(&self, c: char) -> bool {
        self.face.glyph_index(c).is_some()
    }
}

/// A face chosen for some text.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Choice {
    /// The face.
    pub(crate) face: FaceId,
    /// Bold was asked for and this face has none: it is drawn with thickened outlines.
    pub(crate) thicken: bool,
}

/// One glyph as shaping gives it, in font units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct ShapedGlyph {
    /// Its number in the face.
    pub(crate) id: u16,
    /// Where in the text its cluster starts, in bytes.
    pub(crate) cluster: usize,
    /// How far the pen moves.
    pub(crate) advance: i32,
    /// Where it is drawn from the pen, rightwards.
    pub(crate) dx: i32,
    /// Where it is drawn from the pen, upwards.
    pub(crate) dy: i32,
}

/// Texts already shaped in one face, script and direction.
type Shaped = HashMap<(FaceId, Script, bool), HashMap<String, Rc<[ShapedGlyph]>>>;

/// All faces, with what has been shaped while one packet is made: the same words come again and
/// again, in heads, feet, labels and answers.
pub(crate) struct Fonts {
    faces: &'static [Font],
    shaped: RefCell<Shaped>,
}

impl Fonts {
    /// The fonts, read on first use in the life of the program.
    pub(crate) fn get() -> Result<Fonts, PacketError> {
        static FACES: OnceLock<Result<Vec<Font>, PacketError>> = OnceLock::new();
        let faces = FACES.get_or_init(read).as_ref().map_err(Clone::clone)?;
        Ok(Fonts {
            faces,
            shaped: RefCell::default(),
        })
    }

    /// A face by its id.
    pub(crate) fn face(&self, id: FaceId) -> &'static Font {
        &self.faces[id.0]
    }

    /// Shapes a text of one script and direction in one face. Glyphs come left to right as drawn.
    pub(crate) fn shape(
        &self,
        id: FaceId,
        script: Script,
        rtl: bool,
        text: &str,
    ) -> Rc<[ShapedGlyph]> {
        let mut shaped = self.shaped.borrow_mut();
        let known = shaped.entry((id, script, rtl)).or_default();
        if let Some(glyphs) = known.get(text) {
            return Rc::clone(glyphs);
        }
        let font = self.face(id);
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(text);
        buffer.set_script(script);
        buffer.set_direction(if rtl {
            Direction::RightToLeft
        } else {
            Direction::LeftToRight
        });
        buffer.set_flags(BufferFlags::REMOVE_DEFAULT_IGNORABLES);
        let made = rustybuzz::shape_with_plan(&font.face, &font.plan(script, rtl), buffer);
        let glyphs: Rc<[ShapedGlyph]> = made
            .glyph_infos()
            .iter()
            .zip(made.glyph_positions())
            .map(|(info, position)| ShapedGlyph {
                id: u16::try_from(info.glyph_id).unwrap_or(0),
                cluster: info.cluster as usize,
                advance: position.x_advance,
                dx: position.x_offset,
                dy: position.y_offset,
            })
            .collect();
        known.insert(text.to_owned(), Rc::clone(&glyphs));
        glyphs
    }

    /// The first face that shows a whole grapheme cluster; else the first that shows its base;
    /// else the primary face, whose box for a missing glyph is then drawn.
    pub(crate) fn choose(&self, style: Style, cluster: &str, before: Option<Choice>) -> Choice {
        let (primary, bold) = match style {
            Style::Regular => (REGULAR, false),
            Style::Bold => (BOLD, true),
            Style::Mono => (MONO, false),
        };
        // Every primary face has all of ASCII.
        if cluster.is_ascii() && !(before.is_some() && cluster == " ") {
            return Choice {
                face: primary,
                thicken: false,
            };
        }
        let visible = |c: &char| !is_ignorable(*c);
        let whole = |id: FaceId| {
            cluster
                .chars()
                .filter(visible)
                .all(|c| self.face(id).covers(c))
        };
        // A space between two words of one script stays with them, so that they shape as one run.
        if let Some(choice) = before
            && cluster.chars().all(char::is_whitespace)
            && whole(choice.face)
        {
            return choice;
        }
        // A lone joiner belongs to whatever it joins.
        if let Some(choice) = before
            && cluster.chars().all(is_ignorable)
        {
            return choice;
        }
        if whole(primary) {
            return Choice {
                face: primary,
                thicken: false,
            };
        }
        let fallbacks =
            || std::iter::once(REGULAR).chain((FIRST_FALLBACK..self.faces.len()).map(FaceId));
        if let Some(face) = fallbacks().find(|&id| whole(id)) {
            return Choice {
                face,
                thicken: bold,
            };
        }
        let base = cluster.chars().find(visible);
        let face = base
            .and_then(|c| {
                std::iter::once(primary)
                    .chain(fallbacks())
                    .find(|&id| self.face(id).covers(c))
            })
            .unwrap_or(primary);
        Choice {
            face,
            thicken: bold && face != primary,
        }
    }
}

fn read() -> Result<Vec<Font>, PacketError> {
    FILES
        .iter()
        .map(|&(name, bytes)| {
            let face = Face::from_slice(bytes, 0).ok_or(PacketError::Font(name))?;
            Ok(Font {
                name,
                bytes,
                embeddable: OnceLock::new(),
                face,
                plans: Mutex::default(),
            })
        })
        .collect()
}

/// Characters that steer shaping and have no shape of their own: joiners, direction marks,
/// variation selectors, the soft hyphen.
pub(crate) fn is_ignorable(c: char) -> bool {
    matches!(
        c,
        '\u{00AD}'
            | '\u{034F}'
            | '\u{061C}'
            | '\u{180B}'..='\u{180F}'
            | '\u{200B}'..='\u{200F}'
            | '\u{202A}'..='\u{202E}'
            | '\u{2060}'..='\u{206F}'
            | '\u{FE00}'..='\u{FE0F}'
            | '\u{FEFF}'
            | '\u{E0000}'..='\u{E0FFF}'
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn face_for(style: Style, cluster: &str) -> &'static str {
        let fonts = Fonts::get().unwrap();
        fonts.face(fonts.choose(style, cluster, None).face).name
    }

    #[test]
    fn each_script_has_its_face() {
        for (cluster, name) in [
            ("Ž", "NotoSans-Regular"),
            ("Ω", "NotoSans-Regular"),
            ("Щ", "NotoSans-Regular"),
            ("ظ", "NotoSansArabic-Regular"),
            ("ש", "NotoSansHebrew-Regular"),
            ("ष्पा", "NotoSansDevanagari-Regular"),
            ("ก", "NotoSansThai-Regular"),
            ("汐", "DroidSansFallback"),
            ("맹", "DroidSansFallback"),
            ("☐", "DejaVuSans"),
        ] {
            assert_eq!(face_for(Style::Regular, cluster), name, "{cluster}");
        }
        assert_eq!(face_for(Style::Bold, "Đ"), "NotoSans-Bold");
        assert_eq!(face_for(Style::Mono, "a"), "DejaVuSansMono");
    }

    #[test]
    fn primary_faces_have_all_of_ascii() {
        let fonts = Fonts::get().unwrap();
        for face in [REGULAR, BOLD, MONO] {
            for c in ' '..='~' {
                assert!(
                    fonts.face(face).covers(c),
                    "{} lacks {c}",
                    fonts.face(face).name
                );
            }
        }
    }

    #[test]
    fn bold_is_thickened_where_a_face_has_none() {
        let fonts = Fonts::get().unwrap();
        assert!(fonts.choose(Style::Bold, "汐", None).thicken);
        assert!(!fonts.choose(Style::Bold, "a", None).thicken);
        assert!(!fonts.choose(Style::Regular, "汐", None).thicken);
    }

    #[test]
    fn the_box_for_a_missing_glyph_has_an_outline() {
        let fonts = Fonts::get().unwrap();
        for style in [Style::Regular, Style::Bold, Style::Mono] {
            // An Egyptian hieroglyph: no face here has it.
            let choice = fonts.choose(style, "\u{13080}", None);
            assert!(fonts.face(choice.face).outline_box(0).is_some());
        }
    }
}
