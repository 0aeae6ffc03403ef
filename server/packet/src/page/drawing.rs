//! What can be drawn: text lines and paths, gathered into pieces that never split. Points; y grows
//! downwards from the top of the piece, or of the page once placed.

use std::rc::Rc;

use crate::text::Line;

/// The colours of a packet. They differ in lightness as well as hue, so that a monochrome page
/// says the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ink {
    /// Text.
    Black,
    /// Panels and tape: dark slate.
    Slate,
    /// Labels.
    Grey,
    /// Hairlines.
    Line,
    /// The one warm colour: what asks for attention.
    Tape,
    /// Paper.
    White,
}

impl Ink {
    /// Red, green and blue, 0 to 1.
    pub(crate) fn rgb(self) -> [f32; 3] {
        let [r, g, b] = match self {
            Ink::Black => [0x14, 0x16, 0x18],
            Ink::Slate => [0x2A, 0x30, 0x37],
            Ink::Grey => [0x55, 0x5C, 0x64],
            Ink::Line => [0xB4, 0xB8, 0xBC],
            Ink::Tape => [0xC2, 0x56, 0x1A],
            Ink::White => [0xFF, 0xFF, 0xFF],
        };
        [f32::from(r as u8), f32::from(g as u8), f32::from(b as u8)].map(|part| part / 255.0)
    }
}

/// A step of a path.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Step {
    /// Starts a new outline.
    Move(f32, f32),
    /// A straight line.
    Line(f32, f32),
    /// A cubic curve: two controls and the end.
    Curve([f32; 6]),
    /// Back to the start.
    Close,
}

/// How an outline is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Stroke {
    /// The colour.
    pub(crate) ink: Ink,
    /// Points.
    pub(crate) width: f32,
    /// Lengths of dashes and gaps; empty: solid.
    pub(crate) dash: &'static [f32],
}

impl Stroke {
    /// A solid line.
    pub(crate) const fn solid(ink: Ink, width: f32) -> Stroke {
        Stroke {
            ink,
            width,
            dash: &[],
        }
    }
}

/// A shape.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Path {
    /// The outline.
    pub(crate) steps: Vec<Step>,
    /// What fills it.
    pub(crate) fill: Option<Ink>,
    /// What draws round it.
    pub(crate) stroke: Option<Stroke>,
}

impl Path {
    /// A filled rectangle.
    pub(crate) fn filled(x: f32, y: f32, width: f32, height: f32, ink: Ink) -> Path {
        Path {
            steps: rectangle(x, y, width, height),
            fill: Some(ink),
            stroke: None,
        }
    }

    /// An outlined rectangle.
    pub(crate) fn outlined(x: f32, y: f32, width: f32, height: f32, stroke: Stroke) -> Path {
        Path {
            steps: rectangle(x, y, width, height),
            fill: None,
            stroke: Some(stroke),
        }
    }

    /// A straight line.
    pub(crate) fn line(x0: f32, y0: f32, x1: f32, y1: f32, stroke: Stroke) -> Path {
        Path {
            steps: vec![Step::Move(x0, y0), Step::Line(x1, y1)],
            fill: None,
            stroke: Some(stroke),
        }
    }

    /// A polygon or a polyline through points.
    pub(crate) fn through(
        points: &[(f32, f32)],
        close: bool,
        fill: Option<Ink>,
        stroke: Option<Stroke>,
    ) -> Path {
        let mut steps: Vec<Step> = Vec::with_capacity(points.len() + 1);
        for (index, &(x, y)) in points.iter().enumerate() {
            steps.push(if index == 0 {
                Step::Move(x, y)
            } else {
                Step::Line(x, y)
            });
        }
        if close {
            steps.push(Step::Close);
        }
        Path {
            steps,
            fill,
            stroke,
        }
    }
}

fn rectangle(x: f32, y: f32, width: f32, height: f32) -> Vec<Step> {
    vec![
        Step::Move(x, y),
        Step::Line(x + width, y),
        Step::Line(x + width, y + height),
        Step::Line(x, y + height),
        Step::Close,
    ]
}

/// Something drawn.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Draw {
    /// A line of text.
    Text {
        /// Its left end.
        x: f32,
        /// Its baseline.
        y: f32,
        /// The line.
        line: Line,
        /// The left edge of the cell it must stay in.
        left: f32,
        /// The right edge of that cell.
        right: f32,
    },
    /// A shape.
    Path(Path),
}

impl Draw {
    /// Moves it.
    pub(crate) fn shift(&mut self, by_x: f32, by_y: f32) {
        match self {
            Draw::Text {
                x, y, left, right, ..
            } => {
                *x += by_x;
                *left += by_x;
                *right += by_x;
                *y += by_y;
            }
            Draw::Path(path) => {
                for step in &mut path.steps {
                    match step {
                        Step::Move(x, y) | Step::Line(x, y) => {
                            *x += by_x;
                            *y += by_y;
                        }
                        Step::Curve(points) => {
                            for pair in points.chunks_exact_mut(2) {
                                pair[0] += by_x;
                                pair[1] += by_y;
                            }
                        }
                        Step::Close => {}
                    }
                }
            }
        }
    }
}

/// Something that is never split between pages.
#[derive(Clone, Debug, Default)]
pub(crate) struct Piece {
    /// Space above it, left out at the top of a page.
    pub(crate) before: f32,
    /// Its height.
    pub(crate) height: f32,
    /// It must stand on the same page as the piece after it.
    pub(crate) keep: bool,
    /// What is drawn again above it when it starts a page: a table's head, a card's heading.
    pub(crate) again: Option<Rc<Piece>>,
    /// The entry it makes in the document's outline: depth and title.
    pub(crate) outline: Option<(u8, String)>,
    /// What is drawn.
    pub(crate) draws: Vec<Draw>,
}

impl Piece {
    /// Empty space of a height.
    pub(crate) fn blank(height: f32) -> Piece {
        Piece {
            height,
            ..Piece::default()
        }
    }

    /// A piece of lines, one under the other, in a cell from `left` to `left + width`. Paragraphs
    /// that read right to left stand at the right when they have more than one line.
    pub(crate) fn stack(lines: Vec<Line>, left: f32, width: f32) -> Piece {
        let mut piece = Piece::default();
        piece.put_lines(lines, left, width);
        piece
    }

    /// Adds lines under what is there, and grows.
    pub(crate) fn put_lines(&mut self, lines: Vec<Line>, left: f32, width: f32) {
        let right_to_left = lines.len() > 1 && lines.iter().all(|line| line.rtl);
        for line in lines {
            let x = if right_to_left {
                left + width - line.width
            } else {
                left
            };
            let y = self.height + line.above;
            self.height += line.height();
            self.draws.push(Draw::Text {
                x,
                y,
                line,
                left,
                right: left + width,
            });
        }
    }

    /// Adds a shape without growing.
    pub(crate) fn put_path(&mut self, path: Path) {
        self.draws.push(Draw::Path(path));
    }

    /// Adds another piece's drawing at a place, without growing.
    pub(crate) fn put(&mut self, other: Piece, x: f32, y: f32) {
        for mut draw in other.draws {
            draw.shift(x, y);
            self.draws.push(draw);
        }
    }

    /// The same with space above.
    pub(crate) fn after(mut self, before: f32) -> Piece {
        self.before = before;
        self
    }

    /// The same, kept with the next piece.
    pub(crate) fn kept(mut self) -> Piece {
        self.keep = true;
        self
    }

    /// The same with an entry in the outline.
    pub(crate) fn outlined(mut self, depth: u8, title: &str) -> Piece {
        self.outline = Some((depth, title.to_owned()));
        self
    }
}
