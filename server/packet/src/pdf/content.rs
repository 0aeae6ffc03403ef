//! One page's drawing as PDF operators. Points from the top become points from the bottom here and
//! nowhere else.

use std::collections::BTreeMap;

use printpdf::{
    Codepoint, Color, DictItem, LineDashPattern, LinePoint, Op, PaintMode, PdfFontHandle, Point,
    Polygon, PolygonRing, Pt, Rgb, TextItem, TextRenderingMode, WindingOrder,
};

use super::face::Used;
use crate::{
    fonts::FaceId,
    page::{Draw, Frame, Ink, Page, Path, Step, Stroke},
    text::{Glyph, Line, Run},
};

/// Three decimals: a fortieth of a hair, and shorter files.
fn short(value: f32) -> f32 {
    (value * 1000.0).round() / 1000.0
}

fn colour(ink: Ink) -> Color {
    let [r, g, b] = ink.rgb().map(short);
    Color::Rgb(Rgb::new(r, g, b, None))
}

struct Writer<'a> {
    ops: Vec<Op>,
    height: f32,
    fill: Option<Ink>,
    stroke: Option<Stroke>,
    faces: &'a BTreeMap<FaceId, Used>,
}

/// The page's operators.
pub(super) fn content(frame: &Frame, page: &Page, faces: &BTreeMap<FaceId, Used>) -> Vec<Op> {
    let mut writer = Writer {
        ops: Vec::new(),
        height: frame.page_height,
        fill: None,
        stroke: None,
        faces,
    };
    for draw in &page.draws {
        match draw {
            Draw::Text { x, y, line, .. } => writer.line(*x, *y, line),
            Draw::Path(path) => writer.path(path),
        }
    }
    writer.ops
}

/// One outline of a path, and whether it returns to its start.
#[derive(Default)]
struct Outline {
    points: Vec<LinePoint>,
    closed: bool,
}

impl Writer<'_> {
    fn set_fill(&mut self, ink: Ink) {
        if self.fill != Some(ink) {
            self.ops.push(Op::SetFillColor { col: colour(ink) });
            self.fill = Some(ink);
        }
    }

    fn set_stroke(&mut self, stroke: Stroke) {
        if self.stroke != Some(stroke) {
            self.ops.extend([
                Op::SetOutlineColor {
                    col: colour(stroke.ink),
                },
                Op::SetOutlineThickness {
                    pt: Pt(short(stroke.width)),
                },
                Op::SetLineDashPattern {
                    dash: LineDashPattern::new(0.0, stroke.dash),
                },
            ]);
            self.stroke = Some(stroke);
        }
    }

    fn point(&self, x: f32, y: f32) -> Point {
        Point {
            x: Pt(short(x)),
            y: Pt(short(self.height - y)),
        }
    }

    fn outlines(&self, path: &Path) -> Vec<Outline> {
        let mut outlines: Vec<Outline> = Vec::new();
        for step in &path.steps {
            if matches!(step, Step::Move(..)) || outlines.is_empty() {
                outlines.push(Outline::default());
            }
            let Some(last) = outlines.last_mut() else {
                continue;
            };
            let mut put = |x, y, bezier| {
                let p = self.point(x, y);
                last.points.push(LinePoint { p, bezier });
            };
            match *step {
                Step::Move(x, y) | Step::Line(x, y) => put(x, y, false),
                Step::Curve([ax, ay, bx, by, x, y]) => {
                    put(ax, ay, true);
                    put(bx, by, true);
                    put(x, y, false);
                }
                Step::Close => last.closed = true,
            }
        }
        outlines
    }

    fn path(&mut self, path: &Path) {
        let outlines = self.outlines(path);
        if outlines.is_empty() {
            return;
        }
        if let Some(ink) = path.fill {
            self.set_fill(ink);
            let rings = outlines.iter().map(|outline| PolygonRing {
                points: outline.points.clone(),
            });
            self.ops.push(Op::DrawPolygon {
                polygon: Polygon {
                    rings: rings.collect(),
                    mode: PaintMode::Fill,
                    winding_order: WindingOrder::NonZero,
                },
            });
        }
        // printpdf closes every polygon it strokes, so outlines are drawn one by one.
        if let Some(stroke) = path.stroke {
            self.set_stroke(stroke);
            self.ops
                .extend(outlines.into_iter().map(|outline| Op::DrawLine {
                    line: printpdf::Line {
                        points: outline.points,
                        is_closed: outline.closed,
                    },
                }));
        }
    }

    fn line(&mut self, x: f32, y: f32, line: &Line) {
        for run in &line.runs {
            let Some(face) = self.faces.get(&run.face) else {
                continue;
            };
            // Where several glyphs make one cluster, no glyph alone has a text; a reader is then
            // given the text of the whole run.
            let spelled = run.glyphs.iter().any(|glyph| glyph.text.is_empty());
            if spelled {
                self.begin_spelled(&run.text);
            }
            self.run(x + run.x, y, run, face, spelled);
            if spelled {
                self.ops.push(Op::EndMarkedContent);
            }
        }
    }

    /// What follows is to be read as this text.
    fn begin_spelled(&mut self, text: &str) {
        self.ops.push(Op::BeginMarkedContentWithProperties {
            tag: "Span".to_owned(),
            properties: actual_text(text),
        });
    }

    /// Shows what has been gathered, if anything has.
    fn show(&mut self, items: &mut Vec<TextItem>) {
        if !items.is_empty() {
            let items = std::mem::take(items);
            self.ops.push(Op::ShowText { items });
        }
    }

    fn run(&mut self, x: f32, y: f32, run: &Run, face: &Used, spelled: bool) {
        if run.glyphs.is_empty() {
            return;
        }
        self.set_fill(run.look.ink);
        if run.thicken {
            self.set_stroke(Stroke::solid(run.look.ink, run.look.size * 0.032));
        }
        let size = run.look.size;
        self.ops.push(Op::StartTextSection);
        self.ops.push(Op::SetFont {
            font: PdfFontHandle::External(face.name.clone()),
            size: Pt(size),
        });
        if run.thicken {
            self.ops.push(Op::SetTextRenderingMode {
                mode: TextRenderingMode::FillStroke,
            });
        }
        self.ops.push(Op::SetTextCursor {
            pos: self.point(x, y),
        });
        // `pen` is where the glyphs belong, `shown` where the widths in the file put them.
        let (mut pen, mut shown, mut rise) = (0.0_f32, 0.0_f32, 0.0_f32);
        let level = |a: &Glyph, b: &Glyph| (a.dy - b.dy).abs() <= 0.001;
        for glyphs in run.glyphs.chunk_by(level) {
            let dy = glyphs.first().map_or(0.0, |glyph| glyph.dy);
            if (dy - rise).abs() > 0.001 {
                rise = dy;
                self.ops.push(Op::SetLineOffset {
                    multiplier: short(rise),
                });
            }
            let mut items: Vec<TextItem> = Vec::new();
            for glyph in glyphs {
                let adjust = (shown - pen - glyph.dx) / size * 1000.0;
                if adjust.abs() >= 1.0 {
                    let adjust = adjust.round();
                    items.push(TextItem::Offset(adjust));
                    shown -= adjust * size / 1000.0;
                }
                let usual = face.text(glyph.id);
                let code = Codepoint::with_cid(glyph.id, 0.0, usual.to_owned());
                if spelled || glyph.text == usual {
                    match items.last_mut() {
                        Some(TextItem::GlyphIds(codes)) => codes.push(code),
                        _ => items.push(TextItem::GlyphIds(vec![code])),
                    }
                } else {
                    // Alone, so that the rest of the run keeps its text glyph by glyph: a reader
                    // that puts right-to-left text in order does so between glyphs only.
                    self.show(&mut items);
                    self.begin_spelled(&glyph.text);
                    self.show(&mut vec![TextItem::GlyphIds(vec![code])]);
                    self.ops.push(Op::EndMarkedContent);
                }
                shown += face.width(glyph.id) * size / 1000.0;
                pen += glyph.advance;
            }
            self.show(&mut items);
        }
        if rise != 0.0 {
            self.ops.push(Op::SetLineOffset { multiplier: 0.0 });
        }
        if run.thicken {
            self.ops.push(Op::SetTextRenderingMode {
                mode: TextRenderingMode::Fill,
            });
        }
        self.ops.push(Op::EndTextSection);
    }
}

/// What a reader is given in place of the glyphs. Marks that only steer direction are left out.
fn actual_text(text: &str) -> DictItem {
    let text: String = text
        .chars()
        .filter(|c| !matches!(c, '\u{2066}'..='\u{2069}'))
        .collect();
    let mut data = Vec::new();
    lopdf::encode_utf16_be(&text, &mut data);
    let text = DictItem::String {
        data,
        literal: false,
    };
    DictItem::Dict {
        map: BTreeMap::from([("ActualText".to_owned(), text)]),
    }
}
