//! A plot: axes with round ticks, curves told apart by dash and weight, limits as lines across.

use crate::{
    document::Plot,
    fonts::Fonts,
    page::{Draw, Ink, Path, Piece, Stroke},
    text::{Line, Look, Span, lines, width as text_width},
};

const TICK: Look = Look::regular(7.6).in_ink(Ink::Grey);
const NAME: Look = Look::regular(8.0);

/// One style for each curve; after the last they start again.
const CURVES: [(Stroke, &str); 4] = [
    (
        Stroke {
            ink: Ink::Black,
            width: 1.5,
            dash: &[],
        },
        "solid",
    ),
    (
        Stroke {
            ink: Ink::Slate,
            width: 1.2,
            dash: &[5.0, 2.5],
        },
        "dashed",
    ),
    (
        Stroke {
            ink: Ink::Slate,
            width: 1.2,
            dash: &[1.2, 2.0],
        },
        "dotted",
    ),
    (
        Stroke {
            ink: Ink::Grey,
            width: 1.2,
            dash: &[7.0, 2.0, 1.2, 2.0],
        },
        "dash and dot",
    ),
];

const LIMIT: Stroke = Stroke {
    ink: Ink::Tape,
    width: 1.6,
    dash: &[9.0, 3.0],
};

/// Draws a plot; nothing when it has no finite points.
pub(crate) fn plot(fonts: &Fonts, plot: &Plot, width: f32) -> Vec<Piece> {
    let points = || {
        plot.curves
            .iter()
            .flat_map(|curve| plot.x.iter().copied().zip(curve.values.iter().copied()))
    };
    let finite = |&(x, y): &(f64, f64)| x.is_finite() && y.is_finite();
    let Some(x_axis) = Axis::over(points().filter(finite).map(|(x, _)| x), false) else {
        return Vec::new();
    };
    let limits = plot
        .limits
        .iter()
        .map(|limit| limit.value)
        .filter(|value| value.is_finite());
    let Some(y_axis) = Axis::over(points().filter(finite).map(|(_, y)| y).chain(limits), true)
    else {
        return Vec::new();
    };
    let mut piece = Piece::default();
    piece.put_lines(
        lines(
            fonts,
            &[Span::new(plot.title.as_str(), Look::bold(9.5))],
            width,
        ),
        0.0,
        width,
    );
    piece.put_lines(
        lines(fonts, &[Span::new(plot.y_label.as_str(), TICK)], width),
        0.0,
        width,
    );
    piece.height += 4.0;

    let widest = y_axis
        .labels()
        .map(|(_, label)| text_width(fonts, &label, TICK))
        .fold(0.0, f32::max);
    let frame = Area {
        left: widest + 6.0,
        right: width - 8.0,
        top: piece.height,
        bottom: piece.height + 168.0,
        x: &x_axis,
        y: &y_axis,
    };
    draw_axes(fonts, &mut piece, &frame, &plot.x_label);
    for (index, curve) in plot.curves.iter().enumerate() {
        let (stroke, _) = CURVES[index % CURVES.len()];
        let values: Vec<(f64, f64)> = plot
            .x
            .iter()
            .copied()
            .zip(curve.values.iter().copied())
            .collect();
        for part in values.split(|point| !finite(point)) {
            let on_page: Vec<(f32, f32)> = part.iter().map(|&(x, y)| frame.place(x, y)).collect();
            match on_page.as_slice() {
                [] => {}
                // A point alone has no line; it gets a square that can be seen.
                &[(x, y)] => {
                    piece.put_path(Path::filled(x - 1.8, y - 1.8, 3.6, 3.6, stroke.ink));
                }
                line => piece.put_path(Path::through(line, false, None, Some(stroke))),
            }
        }
    }
    for limit in plot.limits.iter().filter(|limit| limit.value.is_finite()) {
        let (_, y) = frame.place(x_axis.from, limit.value);
        piece.put_path(Path::line(frame.left, y, frame.right, y, LIMIT));
    }
    piece.height = frame.bottom + 26.0;
    put_legend(fonts, &mut piece, plot, width);
    let mut pieces = vec![piece.after(12.0)];
    let captions = super::caption(fonts, &plot.caption, width);
    if let (false, Some(last)) = (captions.is_empty(), pieces.last_mut()) {
        last.keep = true;
    }
    pieces.extend(captions);
    pieces
}

/// Where the curves are drawn.
struct Area<'a> {
    left: f32,
    right: f32,
    top: f32,
    bottom: f32,
    x: &'a Axis,
    y: &'a Axis,
}

impl Area<'_> {
    fn place(&self, x: f64, y: f64) -> (f32, f32) {
        (
            self.left + self.x.part(x) * (self.right - self.left),
            self.bottom - self.y.part(y) * (self.bottom - self.top),
        )
    }
}

fn draw_axes(fonts: &Fonts, piece: &mut Piece, area: &Area<'_>, x_label: &str) {
    for (value, label) in area.y.labels() {
        let (_, y) = area.place(area.x.from, value);
        let hair = Stroke::solid(Ink::Line, 0.4);
        piece.put_path(Path::line(area.left, y, area.right, y, hair));
        let wide = text_width(fonts, &label, TICK);
        put_text(
            fonts,
            piece,
            &label,
            area.left - 5.0 - wide,
            y + TICK.size * 0.34,
        );
    }
    let mut free_from = f32::MIN;
    for (value, label) in area.x.labels() {
        let (x, _) = area.place(value, area.y.from);
        let tick = Stroke::solid(Ink::Black, 0.8);
        piece.put_path(Path::line(x, area.bottom, x, area.bottom + 3.0, tick));
        let wide = text_width(fonts, &label, TICK);
        let left = (x - wide / 2.0).min(area.right + 7.0 - wide);
        if left > free_from {
            put_text(fonts, piece, &label, left, area.bottom + 11.5);
            free_from = left + wide + 4.0;
        }
    }
    let axis = Stroke::solid(Ink::Black, 0.9);
    piece.put_path(Path::line(
        area.left,
        area.bottom,
        area.right,
        area.bottom,
        axis,
    ));
    piece.put_path(Path::line(
        area.left,
        area.top,
        area.left,
        area.bottom,
        axis,
    ));
    let room = area.right - area.left;
    let label = crate::text::fit(fonts, &Span::new(x_label, TICK), room);
    let x = area.right - label.width;
    put_line(piece, label, x, area.bottom + 21.5);
}

fn put_text(fonts: &Fonts, piece: &mut Piece, text: &str, x: f32, y: f32) {
    for line in lines(fonts, &[Span::new(text, TICK)], f32::INFINITY) {
        put_line(piece, line, x, y);
    }
}

fn put_line(piece: &mut Piece, line: Line, x: f32, y: f32) {
    let right = x + line.width;
    piece.draws.push(Draw::Text {
        x,
        y,
        line,
        left: x,
        right,
    });
}

/// What each line is, under the plot; long names wrap.
fn put_legend(fonts: &Fonts, piece: &mut Piece, plot: &Plot, width: f32) {
    let curves = plot
        .curves
        .iter()
        .enumerate()
        .map(|(index, curve)| (CURVES[index % CURVES.len()].0, curve.label.as_str()));
    let limits = plot
        .limits
        .iter()
        .filter(|limit| limit.value.is_finite())
        .map(|limit| (LIMIT, limit.label.as_str()));
    let sample = 26.0;
    let column = (width - 12.0) / 2.0;
    let entries: Vec<Piece> = curves
        .chain(limits)
        .map(|(stroke, label)| {
            let room = column - sample - 6.0;
            let set = lines(fonts, &[Span::new(label, NAME)], room);
            let middle = set.first().map_or(0.0, |line| line.above) - NAME.size * 0.3;
            let mut entry = Piece::stack(set, sample + 6.0, room);
            entry.put_path(Path::line(0.0, middle, sample, middle, stroke));
            entry
        })
        .collect();
    let mut entries = entries.into_iter();
    while let Some(left) = entries.next() {
        let right = entries.next();
        let height = left
            .height
            .max(right.as_ref().map_or(0.0, |entry| entry.height));
        let top = piece.height;
        piece.put(left, 0.0, top);
        if let Some(right) = right {
            piece.put(right, column + 12.0, top);
        }
        piece.height += height;
    }
}

/// An axis with round ticks.
#[derive(Debug)]
struct Axis {
    from: f64,
    to: f64,
    step: f64,
}

impl Axis {
    /// The axis that holds all values; none when there are none. `round` lets it reach past them
    /// to whole ticks, and to zero where zero is near.
    fn over(values: impl Iterator<Item = f64>, round: bool) -> Option<Axis> {
        let mut values = values.peekable();
        values.peek()?;
        let (mut low, mut high) = values
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| {
                (low.min(v), high.max(v))
            });
        // Numbers so large that their difference is not finite cannot be drawn to scale.
        if !(high - low).is_finite() {
            return None;
        }
        if round && low > 0.0 && low < high * 0.6 {
            low = 0.0;
        }
        if round && high < 0.0 && high > low * 0.6 {
            high = 0.0;
        }
        if high - low <= f64::EPSILON * high.abs().max(low.abs()).max(1e-300) {
            let widen = if high == 0.0 { 1.0 } else { high.abs() * 0.5 };
            low -= widen;
            high += widen;
        }
        let step = round_step((high - low) / 5.0);
        if round {
            low = (low / step).floor() * step;
            high = (high / step).ceil() * step;
        }
        Some(Axis {
            from: low,
            to: high,
            step,
        })
    }

    fn part(&self, value: f64) -> f32 {
        (((value - self.from) / (self.to - self.from)).clamp(0.0, 1.0)) as f32
    }

    fn labels(&self) -> impl Iterator<Item = (f64, String)> {
        let first = (self.from / self.step - 1e-6).ceil();
        let count = ((self.to / self.step + 1e-6).floor() - first).clamp(0.0, 20.0) as usize;
        let step = self.step;
        let decimals = (-step.log10().floor()).clamp(0.0, 9.0) as usize;
        (0..=count).map(move |index| {
            let value = (first + index as f64) * step;
            let label = if step.abs() >= 1e7 || step.abs() < 1e-6 {
                format!("{value:.1e}")
            } else {
                format!("{value:.decimals$}")
            };
            let label = if value.abs() < step * 1e-6 {
                "0".to_owned()
            } else {
                label.replace('-', "−")
            };
            (value, label)
        })
    }
}

/// The smallest of 1, 2, 5 times a power of ten that is at least `rough`.
fn round_step(rough: f64) -> f64 {
    let power = 10f64.powf(rough.log10().floor());
    let part = rough / power;
    let factor = if part <= 1.0 {
        1.0
    } else if part <= 2.0 {
        2.0
    } else if part <= 5.0 {
        5.0
    } else {
        10.0
    };
    factor * power
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_are_round_and_hold_all_values() {
        for (low, high) in [
            (0.0, 16.6),
            (3.2, 3.4),
            (-2.0, 7.0),
            (1e-5, 4e-5),
            (293.0, 293.0),
        ] {
            let axis = Axis::over([low, high].into_iter(), true).unwrap();
            assert!(axis.from <= low && axis.to >= high, "{axis:?}");
            let count = axis.labels().count();
            assert!((2..=12).contains(&count), "{axis:?} has {count} ticks");
        }
    }

    #[test]
    fn labels_have_the_decimals_they_need() {
        let axis = Axis::over([0.0, 1.0].into_iter(), true).unwrap();
        let labels: Vec<String> = axis.labels().map(|(_, label)| label).collect();
        assert_eq!(labels, ["0", "0.2", "0.4", "0.6", "0.8", "1.0"]);
    }

    #[test]
    fn nothing_to_draw_is_no_axis() {
        assert!(Axis::over(std::iter::empty(), true).is_none());
        assert!(Axis::over([f64::MAX, f64::MIN].into_iter(), true).is_none());
    }
}
