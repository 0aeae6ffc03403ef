//! One page's drawing as PDF operators. Points from the top become points from the bottom here and
//! nowhere else.

use std::collections::BTreeMap;

use pdf_writer::{Content, Name, Str, TextStr, types::TextRenderingMode};

use super::face::Embedded;
use crate::{
    fonts::{FaceId, Fonts},
    page::{Draw, Frame, Ink, Page, Path, Step, Stroke},
    text::{Line, Run},
};

/// The name a face has in a page's resources.
pub(super) fn font_name(id: FaceId) -> String {
    format!("F{}", id.0)
}

/// Three decimals: a fortieth of a hair, and shorter files.
fn short(value: f32) -> f32 {
    (value * 1000.0).round() / 1000.0
}

struct Writer<'a> {
    content: Content,
    height: f32,
    fill: Option<Ink>,
    stroke: Option<Stroke>,
    fonts: &'a Fonts,
    faces: &'a mut BTreeMap<FaceId, Embedded>,
}

/// The page's operators.
pub(super) fn content(
    fonts: &Fonts,
    frame: &Frame,
    page: &Page,
    faces: &mut BTreeMap<FaceId, Embedded>,
) -> Vec<u8> {
    let mut writer = Writer {
        content: Content::new(),
        height: frame.page_height,
        fill: None,
        stroke: None,
        fonts,
        faces,
    };
    for draw in &page.draws {
        match draw {
            Draw::Text { x, y, line, .. } => writer.line(*x, *y, line),
            Draw::Path(path) => writer.path(path),
        }
    }
    writer.content.finish().to_vec()
}

impl Writer<'_> {
    fn set_fill(&mut self, ink: Ink) {
        if self.fill != Some(ink) {
            let [r, g, b] = ink.rgb().map(short);
            self.content.set_fill_rgb(r, g, b);
            self.fill = Some(ink);
        }
    }

    fn set_stroke(&mut self, stroke: Stroke) {
        if self.stroke != Some(stroke) {
            let [r, g, b] = stroke.ink.rgb().map(short);
            self.content.set_stroke_rgb(r, g, b);
            self.content.set_line_width(stroke.width);
            self.content
                .set_dash_pattern(stroke.dash.iter().copied(), 0.0);
            self.stroke = Some(stroke);
        }
    }

    fn path(&mut self, path: &Path) {
        if path.steps.is_empty() {
            return;
        }
        if let Some(ink) = path.fill {
            self.set_fill(ink);
        }
        if let Some(stroke) = path.stroke {
            self.set_stroke(stroke);
        }
        let up = |y: f32| short(self.height - y);
        for step in &path.steps {
            match *step {
                Step::Move(x, y) => self.content.move_to(short(x), up(y)),
                Step::Line(x, y) => self.content.line_to(short(x), up(y)),
                Step::Curve([ax, ay, bx, by, x, y]) => {
                    self.content
                        .cubic_to(short(ax), up(ay), short(bx), up(by), short(x), up(y))
                }
                Step::Close => self.content.close_path(),
            };
        }
        match (path.fill, path.stroke) {
            (Some(_), Some(_)) => self.content.fill_nonzero_and_stroke(),
            (Some(_), None) => self.content.fill_nonzero(),
            (None, Some(_)) => self.content.stroke(),
            (None, None) => self.content.end_path(),
        };
    }

    fn line(&mut self, x: f32, y: f32, line: &Line) {
        for run in &line.runs {
            // Where several glyphs make one cluster, no glyph alone has a text; a reader is then
            // given the text of the whole run.
            let spelled = run.glyphs.iter().any(|glyph| glyph.text.is_empty());
            if spelled {
                let text: String = run
                    .text
                    .chars()
                    .filter(|c| !matches!(c, '\u{2066}'..='\u{2069}'))
                    .collect();
                self.content
                    .begin_marked_content_with_properties(Name(b"Span"))
                    .properties()
                    .actual_text(TextStr(&text));
            }
            self.run(x + run.x, y, run);
            if spelled {
                self.content.end_marked_content();
            }
        }
    }

    fn run(&mut self, x: f32, y: f32, run: &Run) {
        if run.glyphs.is_empty() {
            return;
        }
        self.set_fill(run.look.ink);
        if run.thicken {
            self.set_stroke(Stroke::solid(run.look.ink, run.look.size * 0.032));
        }
        let size = run.look.size;
        self.content.begin_text();
        self.content
            .set_font(Name(font_name(run.face).as_bytes()), size);
        if run.thicken {
            self.content
                .set_text_rendering_mode(TextRenderingMode::FillStroke);
        }
        self.content
            .set_text_matrix([1.0, 0.0, 0.0, 1.0, short(x), short(self.height - y)]);
        let font = self.fonts.face(run.face);
        let embedded = self.faces.entry(run.face).or_default();
        // `pen` is where the glyphs belong, `shown` where the widths in the file put them.
        let (mut pen, mut shown, mut rise) = (0.0_f32, 0.0_f32, 0.0_f32);
        let mut rest = run.glyphs.as_slice();
        while let Some(next) = rest.first() {
            if (next.dy - rise).abs() > 0.001 {
                rise = next.dy;
                self.content.set_rise(short(rise));
            }
            let level = rest
                .iter()
                .take_while(|glyph| (glyph.dy - rise).abs() <= 0.001)
                .count()
                .max(1);
            let (now, later) = rest.split_at(level);
            rest = later;
            let mut positioned = self.content.show_positioned();
            let mut items = positioned.items();
            let mut codes: Vec<u8> = Vec::new();
            for glyph in now {
                let adjust = (shown - pen - glyph.dx) / size * 1000.0;
                if adjust.abs() >= 1.0 {
                    if !codes.is_empty() {
                        items.show(Str(&codes));
                        codes.clear();
                    }
                    let adjust = adjust.round();
                    items.adjust(adjust);
                    shown -= adjust * size / 1000.0;
                }
                let (code, width) = embedded.code(font, glyph);
                codes.extend(code.to_be_bytes());
                shown += width * size / 1000.0;
                pen += glyph.advance;
            }
            if !codes.is_empty() {
                items.show(Str(&codes));
            }
        }
        if rise != 0.0 {
            self.content.set_rise(0.0);
        }
        if run.thicken {
            self.content
                .set_text_rendering_mode(TextRenderingMode::Fill);
        }
        self.content.end_text();
    }
}
