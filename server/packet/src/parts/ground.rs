//! The ground plan: zones drawn to one scale, seen from above, with the direction of the action.

use crate::{
    document::{ZoneRow, ZoneShape},
    fonts::Fonts,
    page::{Draw, Ink, Path, Piece, Step, Stroke},
    text::{Look, Span, lines},
};

const SMALL: Look = Look::regular(7.6).in_ink(Ink::Grey);
const OUTLINES: [Stroke; 4] = [
    Stroke {
        ink: Ink::Black,
        width: 1.4,
        dash: &[],
    },
    Stroke {
        ink: Ink::Tape,
        width: 1.4,
        dash: &[6.0, 2.5],
    },
    Stroke {
        ink: Ink::Slate,
        width: 1.2,
        dash: &[1.4, 2.0],
    },
    Stroke {
        ink: Ink::Grey,
        width: 1.2,
        dash: &[8.0, 2.0, 1.4, 2.0],
    },
];

/// Draws the zones that have a shape; nothing when none has. Each carries its number in the list.
pub(crate) fn ground(fonts: &Fonts, zones: &[ZoneRow], width: f32) -> Option<Piece> {
    let shapes: Vec<(usize, Bounds, ZoneShape)> = zones
        .iter()
        .enumerate()
        .filter_map(|(index, zone)| {
            let shape = zone.shape?;
            Some((index, Bounds::of(&shape)?, shape))
        })
        .collect();
    // The action starts at the origin, so the origin is always on the map.
    let all = shapes.iter().fold(
        Bounds {
            x0: 0.0,
            x1: 0.0,
            y0: 0.0,
            y1: 0.0,
        },
        |all, (_, b, _)| all.with(b),
    );
    let (long, wide) = (all.x1 - all.x0, all.y1 - all.y0);
    if shapes.is_empty() || !long.is_finite() || !wide.is_finite() || long.max(wide) <= 0.0 {
        return None;
    }
    let (room_x, room_y) = (f64::from(width) - 30.0, 165.0);
    let scale = (room_x / long.max(1e-9)).min(room_y / wide.max(1e-9));
    let drawn_width = (long * scale) as f32;
    let drawn_height = (wide * scale) as f32;
    let left = (width - drawn_width) / 2.0;
    let mut piece = Piece::blank(14.0);
    let top = piece.height;
    let place = |x: f64, y: f64| {
        (
            left + ((x - all.x0) * scale) as f32,
            top + ((y - all.y0) * scale) as f32,
        )
    };
    // A light grid of whole metres, coarse enough to read.
    let step = grid_step(long.max(wide));
    for index in grid(all.x0, all.x1, step) {
        let (x, _) = place(index, 0.0);
        piece.put_path(Path::line(
            x,
            top,
            x,
            top + drawn_height,
            Stroke::solid(Ink::Line, 0.35),
        ));
    }
    for index in grid(all.y0, all.y1, step) {
        let (_, y) = place(0.0, index);
        piece.put_path(Path::line(
            left,
            y,
            left + drawn_width,
            y,
            Stroke::solid(Ink::Line, 0.35),
        ));
    }
    let mut labels: Vec<(f32, f32)> = Vec::new();
    for (order, (index, _, shape)) in shapes.iter().enumerate() {
        let stroke = OUTLINES[order % OUTLINES.len()];
        let (path, (x, mut y)) = outline(shape, stroke, &place);
        piece.put_path(path);
        // Numbers of zones that start at one place stand one under the other.
        while labels
            .iter()
            .any(|&(lx, ly)| (lx - x).abs() < 14.0 && (ly - y).abs() < 12.0)
        {
            y += 12.0;
        }
        labels.push((x, y));
        put_number(fonts, &mut piece, index + 1, x, y);
    }
    let (x, y) = place(0.0, 0.0);
    put_arrow(&mut piece, x, y);
    let lowest = labels
        .iter()
        .map(|&(_, y)| y + 8.0)
        .fold(top + drawn_height, f32::max);
    piece.height = lowest + 6.0;
    let note = format!(
        "Seen from above, to scale; one square is {step} m ({:.1} ft). The arrow is the direction of \
         the action, from its start.",
        step / 0.3048
    );
    piece.put_lines(lines(fonts, &[Span::new(note, SMALL)], width), 0.0, width);
    Some(piece)
}

#[derive(Clone, Copy)]
struct Bounds {
    x0: f64,
    x1: f64,
    y0: f64,
    y1: f64,
}

impl Bounds {
    /// The bounds of a shape; none when a number in it is not finite.
    fn of(shape: &ZoneShape) -> Option<Bounds> {
        let bounds = match *shape {
            ZoneShape::Ellipse {
                x,
                y,
                half_x,
                half_y,
            } => {
                let (half_x, half_y) = (half_x.abs(), half_y.abs());
                Bounds {
                    x0: x - half_x,
                    x1: x + half_x,
                    y0: y - half_y,
                    y1: y + half_y,
                }
            }
            ZoneShape::Rectangle { x0, x1, y0, y1 } => Bounds {
                x0: x0.min(x1),
                x1: x0.max(x1),
                y0: y0.min(y1),
                y1: y0.max(y1),
            },
        };
        [bounds.x0, bounds.x1, bounds.y0, bounds.y1]
            .iter()
            .all(|v| v.is_finite())
            .then_some(bounds)
    }

    fn with(self, other: &Bounds) -> Bounds {
        Bounds {
            x0: self.x0.min(other.x0),
            x1: self.x1.max(other.x1),
            y0: self.y0.min(other.y0),
            y1: self.y1.max(other.y1),
        }
    }
}

/// The outline on the page, and where its number stands: at its left end.
fn outline(
    shape: &ZoneShape,
    stroke: Stroke,
    place: &impl Fn(f64, f64) -> (f32, f32),
) -> (Path, (f32, f32)) {
    match *shape {
        ZoneShape::Rectangle { x0, x1, y0, y1 } => {
            let points = [place(x0, y0), place(x1, y0), place(x1, y1), place(x0, y1)];
            let corner = place(x0.min(x1), y0.min(y1));
            (
                Path::through(&points, true, None, Some(stroke)),
                (corner.0 + 9.0, corner.1 + 9.0),
            )
        }
        ZoneShape::Ellipse {
            x,
            y,
            half_x,
            half_y,
        } => {
            // Four cubic curves; the factor makes each pass within 0.03 % of the ellipse.
            let k = 0.552_284_75;
            let at = |dx: f64, dy: f64| place(x + dx * half_x, y + dy * half_y);
            let curve = |a: (f32, f32), b: (f32, f32), c: (f32, f32)| {
                Step::Curve([a.0, a.1, b.0, b.1, c.0, c.1])
            };
            let start = at(1.0, 0.0);
            let steps = vec![
                Step::Move(start.0, start.1),
                curve(at(1.0, k), at(k, 1.0), at(0.0, 1.0)),
                curve(at(-k, 1.0), at(-1.0, k), at(-1.0, 0.0)),
                curve(at(-1.0, -k), at(-k, -1.0), at(0.0, -1.0)),
                curve(at(k, -1.0), at(1.0, -k), start),
                Step::Close,
            ];
            (
                Path {
                    steps,
                    fill: None,
                    stroke: Some(stroke),
                },
                at(0.0, -1.0),
            )
        }
    }
}

fn put_number(fonts: &Fonts, piece: &mut Piece, number: usize, x: f32, y: f32) {
    let look = Look::bold(7.6).in_ink(Ink::White);
    for line in lines(fonts, &[Span::new(number.to_string(), look)], f32::INFINITY) {
        let half = (line.width / 2.0 + 3.0).max(6.0);
        piece.put_path(Path::filled(
            x - half,
            y - 5.5,
            half * 2.0,
            11.0,
            Ink::Slate,
        ));
        let (text_x, right) = (x - line.width / 2.0, x + line.width / 2.0);
        piece.draws.push(Draw::Text {
            x: text_x,
            y: y + 2.8,
            line,
            left: text_x,
            right,
        });
    }
}

fn put_arrow(piece: &mut Piece, x: f32, y: f32) {
    let stroke = Stroke::solid(Ink::Black, 1.6);
    piece.put_path(Path::line(x, y, x + 20.0, y, stroke));
    let tip = [(x + 26.0, y), (x + 19.0, y - 3.6), (x + 19.0, y + 3.6)];
    piece.put_path(Path::through(&tip, true, Some(Ink::Black), None));
    piece.put_path(Path::filled(x - 2.2, y - 2.2, 4.4, 4.4, Ink::Black));
}

fn grid_step(extent: f64) -> f64 {
    [
        0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0,
    ]
    .into_iter()
    .find(|step| extent / step <= 14.0)
    .unwrap_or_else(|| (extent / 14.0).max(1.0).ceil())
}

fn grid(from: f64, to: f64, step: f64) -> impl Iterator<Item = f64> {
    let first = (from / step).ceil();
    let count = ((to / step).floor() - first).clamp(-1.0, 60.0) as i64;
    (0..=count).map(move |index| (first + index as f64) * step)
}
