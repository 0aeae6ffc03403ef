//! A camera as a pinhole, and what stands behind what: similar triangles along straight sight lines
//! (any text on optics or projective geometry; the thin lens is Gauss's).
//!
//! Plan coordinates: x across the shot to the right, y away from the camera, z up, metres.

/// Half of the field of view across, rad.
pub fn half_field(focal_length: f64, sensor_width: f64) -> f64 {
    libm::atan2(0.5 * sensor_width, focal_length)
}

/// Width seen at a distance, m.
pub fn width_at(focal_length: f64, sensor_width: f64, distance: f64) -> f64 {
    sensor_width * distance / focal_length
}

/// Focal length in picture elements.
pub fn focal_pixels(focal_length: f64, sensor_width: f64, pixels: f64) -> f64 {
    focal_length * pixels / sensor_width
}

/// Height of the image of something on the sensor, by a pinhole, m.
pub fn image(focal_length: f64, size: f64, distance: f64) -> f64 {
    focal_length * size / distance
}

/// The same by a thin lens focused on it: the image lies further back than the focal length. None for
/// anything nearer than the focal length.
pub fn image_in_focus(focal_length: f64, size: f64, distance: f64) -> Option<f64> {
    (distance > focal_length).then(|| focal_length * size / (distance - focal_length))
}

/// A point or a direction in plan.
pub type Plan = [f64; 2];

/// Twice the area from `a` to `b`: positive when `b` lies to the left of `a`.
fn cross(a: Plan, b: Plan) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

/// Something that hides: a box with its sides along x and y.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Occluder {
    /// Left and right side.
    pub across: (f64, f64),
    /// Front and back.
    pub away: (f64, f64),
    /// Bottom edge and top edge.
    pub up: (f64, f64),
}

/// Somebody as an upright cylinder.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Body {
    /// The middle, in plan.
    pub at: Plan,
    /// Half the width, arms included.
    pub radius: f64,
    /// Height.
    pub height: f64,
}

/// How far inside the occluder's cover a body is, seen from `eye` at `height`: metres at the body,
/// the least over both sides, the top, the foot and the front. Positive is wholly hidden.
///
/// On one bearing the nearer of two things hides the other, so a body before the front is never hidden.
pub fn cover(occluder: &Occluder, eye: Plan, height: f64, body: &Body) -> f64 {
    Sight::new(occluder, eye).cover(height, body)
}

/// What an occluder hides from an eye, whoever stands behind it.
pub struct Sight {
    occluder: Occluder,
    eye: Plan,
    /// From the eye to the front.
    front: f64,
    /// Directions of the edges furthest left and right as seen, of length 1.
    left: Plan,
    right: Plan,
}

impl Sight {
    /// From an eye.
    pub fn new(occluder: &Occluder, eye: Plan) -> Sight {
        // Of the four corners, those furthest left and right as seen bound the cover.
        let corner = |x: f64, y: f64| [x - eye[0], y - eye[1]];
        let outermost = |x: f64, left: bool| {
            let (near, far) = (corner(x, occluder.away.0), corner(x, occluder.away.1));
            let far_is_left = cross(near, far) > 0.0;
            let [x, y] = if far_is_left == left { far } else { near };
            let length = super::hypot(x, y);
            [x / length, y / length]
        };
        Sight {
            occluder: *occluder,
            eye,
            front: occluder.away.0 - eye[1],
            left: outermost(occluder.across.0, true),
            right: outermost(occluder.across.1, false),
        }
    }

    /// As [`cover`], from a height.
    pub fn cover(&self, height: f64, body: &Body) -> f64 {
        let Sight {
            occluder,
            eye,
            front,
            ..
        } = self;
        let to = [body.at[0] - eye[0], body.at[1] - eye[1]];
        if *front <= 1e-6 {
            // A camera beside or past the front sees round it.
            return -super::hypot(to[0], to[1]).max(1e-6);
        }
        let behind = body.at[1] - body.radius - occluder.away.0;
        let sides = (-cross(self.left, to)).min(cross(self.right, to)) - body.radius;
        // Above and below, by how much further off the body is than the front, on the same bearing.
        let over = 1.0 / front;
        let ratio = |y: f64| (y - eye[1]) * over;
        let (near, far) = (
            ratio(body.at[1] - body.radius),
            ratio(body.at[1] + body.radius),
        );
        let line = |edge: f64, ratio: f64| height + (edge - height) * ratio;
        let (top, foot) = (occluder.up.1, occluder.up.0);
        let above = line(top, near).min(line(top, far)) - body.height;
        // Standing on the ground there is nothing to show under it.
        let below = if foot > 0.0 {
            -line(foot, near).max(line(foot, far))
        } else {
            f64::INFINITY
        };
        sides.min(behind).min(above).min(below)
    }
}

/// How far inside the picture a body is, as a share of the picture's width: the lesser of both sides.
/// Negative when it is cut by the frame; none when it is not before the lens at all.
pub fn framing(eye: Plan, bearing: f64, half_field: f64, body: &Body) -> Option<f64> {
    let to = [body.at[0] - eye[0], body.at[1] - eye[1]];
    let (sine, cosine) = (libm::sin(bearing), libm::cos(bearing));
    let ahead = to[0] * sine + to[1] * cosine;
    let aside = to[0] * cosine - to[1] * sine;
    let nearest = ahead - body.radius;
    let slope = 2.0 * libm::tan(half_field);
    (nearest > 1e-6).then(|| 0.5 - (aside.abs() + body.radius) / (slope * nearest))
}

/// How far outside the picture a body is, m: positive when nothing of it is in the frame.
pub fn outside(eye: Plan, bearing: f64, half_field: f64, body: &Body) -> f64 {
    outside_by(eye, libm::sincos(bearing), libm::sincos(half_field), body)
}

/// The same by the sines and cosines of both angles.
pub fn outside_by(eye: Plan, bearing: (f64, f64), half_field: (f64, f64), body: &Body) -> f64 {
    let to = [body.at[0] - eye[0], body.at[1] - eye[1]];
    let (sine, cosine) = bearing;
    let ahead = to[0] * sine + to[1] * cosine;
    let aside = to[0] * cosine - to[1] * sine;
    let wide = half_field.1 * aside.abs() - half_field.0 * ahead;
    wide.max(-ahead) - body.radius
}

/// The spans of time in which a steady function of time is above nothing: looked at between the given
/// times at most `step` apart, ends found by halving. A dip or a rise between two looks is searched for
/// where the looks lean towards one.
pub fn spans(f: impl Fn(f64) -> f64, times: &[f64], step: f64) -> Vec<(f64, f64)> {
    let looks = looks(times, step);
    let looks = looks.into_iter().map(|at| (at, f(at))).collect();
    spans_of(f, looks)
}

/// When to look between the given times.
pub fn looks(times: &[f64], step: f64) -> Vec<f64> {
    let mut looks: Vec<f64> = Vec::new();
    for pair in times.windows(2) {
        let span = pair[1] - pair[0];
        if span <= 0.0 {
            continue;
        }
        let pieces = f64::ceil(span / step).clamp(2.0, 400.0);
        for i in 0..=pieces as usize {
            let at = pair[0] + span * i as f64 / pieces;
            if looks.last().is_none_or(|last| at > *last) {
                looks.push(at);
            }
        }
    }
    looks
}

/// As [`spans`], where the looks have been taken: a time and the value there.
pub fn spans_of(f: impl Fn(f64) -> f64, mut looks: Vec<(f64, f64)>) -> Vec<(f64, f64)> {
    let mut between = Vec::new();
    for three in looks.windows(3) {
        let [a, b, c] = [three[0], three[1], three[2]];
        let sign = if b.1 > 0.0 { 1.0 } else { -1.0 };
        let leans = sign * b.1 <= sign * a.1 && sign * b.1 <= sign * c.1;
        let same = sign * a.1 > 0.0 && sign * c.1 > 0.0;
        let bend = (a.1 - b.1).abs().max((c.1 - b.1).abs());
        if leans && same && sign * b.1 <= 2.0 * bend {
            let found = least(|t| sign * f(t), a.0, c.0);
            if sign * f(found) <= 0.0 {
                between.push((found, f(found)));
            }
        }
    }
    if !between.is_empty() {
        looks.extend(between);
        looks.sort_by(|a, b| a.0.total_cmp(&b.0));
    }
    let mut found = Vec::new();
    let mut began = looks.first().filter(|look| look.1 > 0.0).map(|look| look.0);
    for pair in looks.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        if (from.1 > 0.0) == (to.1 > 0.0) {
            continue;
        }
        let (low, high) = edge(&f, from, to);
        match began.take() {
            Some(start) => found.push((start, low)),
            None => began = Some(high),
        }
    }
    if let (Some(start), Some(last)) = (began, looks.last()) {
        found.push((start, last.0));
    }
    found
}

/// Either side of where a function changes its sign between two looks, as near together as halving forty
/// times would bring them: by false position with the Illinois weighting, and halving where that is slow.
fn edge(f: impl Fn(f64) -> f64, from: (f64, f64), to: (f64, f64)) -> (f64, f64) {
    let positive = from.1 > 0.0;
    let close = 1e-12 * (to.0 - from.0);
    let (mut low, mut high) = (from, to);
    let mut last_was_low = None;
    for tried in 0..60 {
        let width = high.0 - low.0;
        if width <= close {
            break;
        }
        // Aimed a hair to the far side of the secant, so that both ends close in.
        let secant = low.0 + width * low.1 / (low.1 - high.1);
        let hair = match last_was_low {
            Some(true) => 0.4 * close,
            Some(false) => -0.4 * close,
            None => 0.0,
        };
        let aimed = secant + hair;
        let middle = if aimed > low.0 && aimed < high.0 && tried % 5 != 4 {
            aimed
        } else {
            low.0 + 0.5 * width
        };
        let value = f(middle);
        let is_low = (value > 0.0) == positive;
        if is_low {
            low = (middle, value);
            if last_was_low == Some(true) {
                high.1 *= 0.5;
            }
        } else {
            high = (middle, value);
            if last_was_low == Some(false) {
                low.1 *= 0.5;
            }
        }
        last_was_low = Some(is_low);
    }
    (low.0, high.0)
}

/// Where a function that dips once is least, by thirds.
fn least(f: impl Fn(f64) -> f64, mut low: f64, mut high: f64) -> f64 {
    for _ in 0..30 {
        let third = (high - low) / 3.0;
        if f(low + third) < f(high - third) {
            high -= third;
        } else {
            low += third;
        }
    }
    0.5 * (low + high)
}
