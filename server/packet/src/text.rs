//! Text as lines of placed glyphs. Knows fonts, scripts and widths; knows nothing of pages.

mod shape;
mod wrap;

use crate::{
    fonts::{FaceId, Fonts, Style},
    page::Ink,
};

pub(crate) use wrap::{fit, lines};

/// How text looks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Look {
    /// The voice.
    pub(crate) style: Style,
    /// Points.
    pub(crate) size: f32,
    /// The colour.
    pub(crate) ink: Ink,
}

impl Look {
    /// Running text.
    pub(crate) const fn regular(size: f32) -> Look {
        Look {
            style: Style::Regular,
            size,
            ink: Ink::Black,
        }
    }

    /// Strong text.
    pub(crate) const fn bold(size: f32) -> Look {
        Look {
            style: Style::Bold,
            size,
            ink: Ink::Black,
        }
    }

    /// Hashes and keys.
    pub(crate) const fn mono(size: f32) -> Look {
        Look {
            style: Style::Mono,
            size,
            ink: Ink::Black,
        }
    }

    /// The same in another colour.
    pub(crate) const fn in_ink(self, ink: Ink) -> Look {
        Look { ink, ..self }
    }

    /// Height of a line above its baseline.
    fn above(self) -> f32 {
        self.size * 0.98
    }

    /// Depth of a line below its baseline.
    fn below(self) -> f32 {
        self.size * 0.36
    }
}

/// Some text in one look.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Span {
    /// The text.
    pub(crate) text: String,
    /// How it looks.
    pub(crate) look: Look,
}

impl Span {
    /// Some text in one look.
    pub(crate) fn new(text: impl Into<String>, look: Look) -> Span {
        Span {
            text: text.into(),
            look,
        }
    }
}

/// One glyph, in points.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Glyph {
    /// Its number in the face.
    pub(crate) id: u16,
    /// How far the pen moves.
    pub(crate) advance: f32,
    /// Where it is drawn from the pen, rightwards.
    pub(crate) dx: f32,
    /// Where it is drawn from the pen, upwards.
    pub(crate) dy: f32,
    /// The text it stands for. The first glyph of a cluster stands for all of it and the others
    /// for nothing.
    pub(crate) text: String,
}

/// Glyphs of one face in one look, left to right as drawn.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Run {
    /// Where the run starts, from the line's left end.
    pub(crate) x: f32,
    /// The face.
    pub(crate) face: FaceId,
    /// Drawn with thickened outlines.
    pub(crate) thicken: bool,
    /// Size and colour.
    pub(crate) look: Look,
    /// The glyphs.
    pub(crate) glyphs: Vec<Glyph>,
    /// The text in reading order.
    pub(crate) text: String,
    /// Width.
    pub(crate) advance: f32,
}

/// One line of text.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Line {
    /// Left to right.
    pub(crate) runs: Vec<Run>,
    /// Width by pen movement.
    pub(crate) width: f32,
    /// Height above the baseline: the look's own, or more where a glyph needs it.
    pub(crate) above: f32,
    /// Depth below the baseline.
    pub(crate) below: f32,
    /// The paragraph reads right to left.
    pub(crate) rtl: bool,
}

impl Line {
    /// Height of the line.
    pub(crate) fn height(&self) -> f32 {
        self.above + self.below
    }

    /// The box that ink touches, from the line's left end and baseline, upwards: left, bottom,
    /// right, top. None when nothing is drawn.
    pub(crate) fn ink_box(&self, fonts: &Fonts) -> Option<(f32, f32, f32, f32)> {
        let mut all: Option<(f32, f32, f32, f32)> = None;
        for run in &self.runs {
            let mut pen = run.x;
            for glyph in &run.glyphs {
                if let Some((left, bottom, right, top)) = glyph_box(fonts, run, glyph) {
                    let at = pen + glyph.dx;
                    let this = (at + left, bottom + glyph.dy, at + right, top + glyph.dy);
                    all = Some(all.map_or(this, |a| {
                        (
                            a.0.min(this.0),
                            a.1.min(this.1),
                            a.2.max(this.2),
                            a.3.max(this.3),
                        )
                    }));
                }
                pen += glyph.advance;
            }
        }
        all
    }
}

fn glyph_box(fonts: &Fonts, run: &Run, glyph: &Glyph) -> Option<(f32, f32, f32, f32)> {
    let font = fonts.face(run.face);
    let scale = font.scale(run.look.size);
    font.outline_box(glyph.id)
        .map(|(left, bottom, right, top)| {
            (left * scale, bottom * scale, right * scale, top * scale)
        })
}

/// Width of some text on one line.
pub(crate) fn width(fonts: &Fonts, text: &str, look: Look) -> f32 {
    lines(fonts, &[Span::new(text, look)], f32::INFINITY)
        .iter()
        .fold(0.0, |widest, line| line.width.max(widest))
}
