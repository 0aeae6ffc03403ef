//! Faces in the file: only the glyphs used, with the text each stands for.
//!
//! A code in the file is a glyph together with its text, so that one glyph that stands for two
//! texts still copies out as the right one each time.

use std::collections::HashMap;

use pdf_writer::{
    Filter, Finish, Name, Pdf, Rect, Ref, Str,
    types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap},
};
use rustybuzz::ttf_parser::GlyphId;
use sha2::{Digest, Sha256};
use subsetter::GlyphRemapper;

use super::{Numbers, compress};
use crate::{PacketError, fonts::Font, text::Glyph};

const IDENTITY: SystemInfo<'static> = SystemInfo {
    registry: Str(b"Adobe"),
    ordering: Str(b"Identity"),
    supplement: 0,
};

/// What is used of one face.
#[derive(Default)]
pub(crate) struct Embedded {
    /// Glyph, text and width of each code; code 0 is the box for a missing glyph.
    codes: Vec<(u16, String, f32)>,
    /// Codes by glyph and text, for the common case of one character and for all others.
    single: HashMap<(u16, char), u16>,
    other: HashMap<(u16, String), u16>,
}

impl Embedded {
    /// The code for a glyph, made on first use, and its width in thousandths of the size.
    pub(super) fn code(&mut self, font: &Font, glyph: &Glyph) -> (u16, f32) {
        let mut characters = glyph.text.chars();
        let single = characters.next().filter(|_| characters.next().is_none());
        let known = match single {
            Some(c) => self.single.get(&(glyph.id, c)).copied(),
            None => self.other.get(&(glyph.id, glyph.text.clone())).copied(),
        };
        if let Some(code) = known
            && let Some((_, _, width)) = self.codes.get(usize::from(code))
        {
            return (code, *width);
        }
        if self.codes.is_empty() {
            self.codes.push((0, String::new(), width(font, 0)));
        }
        let Ok(code) = u16::try_from(self.codes.len()) else {
            // More than 65 535 different glyphs and texts of one face: the rest show as boxes.
            return (0, width(font, 0));
        };
        let width = width(font, glyph.id);
        self.codes.push((glyph.id, glyph.text.clone(), width));
        match single {
            Some(c) => self.single.insert((glyph.id, c), code),
            None => self.other.insert((glyph.id, glyph.text.clone()), code),
        };
        (code, width)
    }
}

fn width(font: &Font, glyph: u16) -> f32 {
    let advance = font.face.glyph_hor_advance(GlyphId(glyph)).unwrap_or(0);
    (f32::from(advance) * font.scale(1000.0) * 10.0).round() / 10.0
}

/// Writes a face and everything it needs under the number `font`.
pub(super) fn embed(
    pdf: &mut Pdf,
    numbers: &mut Numbers,
    font_ref: Ref,
    font: &Font,
    embedded: &Embedded,
) -> Result<(), PacketError> {
    let mut remapper = GlyphRemapper::new();
    let new_glyphs: Vec<u16> = embedded
        .codes
        .iter()
        .map(|&(glyph, _, _)| remapper.remap(glyph))
        .collect();
    let subset =
        subsetter::subset(font.bytes, 0, &remapper).map_err(|_| PacketError::Font(font.name))?;
    let name = format!("{}+{}", tag(embedded), font.name);
    let base = Name(name.as_bytes());
    let (descendant, descriptor, file, to_unicode, map) = (
        numbers.next(),
        numbers.next(),
        numbers.next(),
        numbers.next(),
        numbers.next(),
    );

    pdf.type0_font(font_ref)
        .base_font(base)
        .encoding_predefined(Name(b"Identity-H"))
        .descendant_font(descendant)
        .to_unicode(to_unicode);
    let mut cid = pdf.cid_font(descendant);
    cid.subtype(CidFontType::Type2)
        .base_font(base)
        .system_info(IDENTITY)
        .font_descriptor(descriptor)
        .default_width(0.0)
        .cid_to_gid_map_stream(map);
    cid.widths()
        .consecutive(0, embedded.codes.iter().map(|&(_, _, width)| width));
    cid.finish();

    let scale = font.scale(1000.0);
    let bounds = font.face.global_bounding_box();
    let bbox = Rect::new(
        f32::from(bounds.x_min) * scale,
        f32::from(bounds.y_min) * scale,
        f32::from(bounds.x_max) * scale,
        f32::from(bounds.y_max) * scale,
    );
    let mut flags = FontFlags::SYMBOLIC;
    if font.face.is_monospaced() {
        flags |= FontFlags::FIXED_PITCH;
    }
    let ascent = f32::from(font.face.ascender()) * scale;
    let cap = font
        .face
        .capital_height()
        .map_or(ascent * 0.7, |height| f32::from(height) * scale);
    pdf.font_descriptor(descriptor)
        .name(base)
        .flags(flags)
        .bbox(bbox)
        .italic_angle(0.0)
        .ascent(ascent)
        .descent(f32::from(font.face.descender()) * scale)
        .cap_height(cap)
        .stem_v(if font.name.ends_with("Bold") {
            140.0
        } else {
            80.0
        })
        .font_file2(file);

    let packed = compress(&subset);
    let mut stream = pdf.stream(file, &packed);
    stream.filter(Filter::FlateDecode);
    stream.pair(
        Name(b"Length1"),
        i32::try_from(subset.len()).unwrap_or(i32::MAX),
    );
    stream.finish();

    let glyph_map: Vec<u8> = new_glyphs
        .iter()
        .flat_map(|glyph| glyph.to_be_bytes())
        .collect();
    pdf.stream(map, &compress(&glyph_map))
        .filter(Filter::FlateDecode);

    let mut cmap: UnicodeCmap<u16> = UnicodeCmap::new(Name(b"Gagwright-UCS"), IDENTITY);
    for (code, (_, text, _)) in embedded.codes.iter().enumerate() {
        if !text.is_empty()
            && let Ok(code) = u16::try_from(code)
        {
            cmap.pair_with_multiple(code, text.chars());
        }
    }
    let cmap = cmap.finish();
    pdf.cmap(to_unicode, &compress(cmap.as_slice()))
        .filter(Filter::FlateDecode);
    Ok(())
}

/// Six capital letters that differ when the glyphs differ, as the standard asks of a subset.
fn tag(embedded: &Embedded) -> String {
    let mut hash = Sha256::new();
    for (glyph, text, _) in &embedded.codes {
        hash.update(glyph.to_be_bytes());
        hash.update(text.as_bytes());
        hash.update([0]);
    }
    hash.finalize()
        .iter()
        .take(6)
        .map(|byte| char::from(b'A' + byte % 26))
        .collect()
}
