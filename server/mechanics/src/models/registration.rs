//! How far a picture's points move when the camera has moved a little between two passes: a pinhole
//! turned about its pan, tilt and roll axes, shifted, and with another focal length (projective
//! geometry, exact; no lens distortion).

/// What changed between the passes.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Change {
    /// Turned to the right, rad.
    pub pan: f64,
    /// Turned up, rad.
    pub tilt: f64,
    /// Turned clockwise about the lens, rad.
    pub roll: f64,
    /// The entrance pupil moved right, up and forward, m.
    pub shift: [f64; 3],
    /// Focal length grown by this share.
    pub zoom: f64,
}

impl Change {
    /// The same, with the pupil carried round by the turn: it sits `ahead` of the pan and tilt axes, m.
    #[must_use]
    pub fn about_axes(self, ahead: f64) -> Change {
        let [x, y, z] = self.shift;
        let (sin_pan, cos_pan) = (libm::sin(self.pan), libm::cos(self.pan));
        let (sin_tilt, cos_tilt) = (libm::sin(self.tilt), libm::cos(self.tilt));
        Change {
            shift: [
                x + ahead * sin_pan * cos_tilt,
                y + ahead * sin_tilt,
                z + ahead * (cos_pan * cos_tilt - 1.0),
            ],
            ..self
        }
    }
}

/// Where the point seen at `at` (picture elements right and up of the middle) and `depth` metres off is
/// seen after the change. `focal` is the focal length in picture elements. None when it is behind.
pub fn moved(change: &Change, focal: f64, at: [f64; 2], depth: f64) -> Option<[f64; 2]> {
    let x = at[0] / focal * depth - change.shift[0];
    let y = at[1] / focal * depth - change.shift[1];
    let z = depth - change.shift[2];
    let (sine, cosine) = (libm::sin(change.pan), libm::cos(change.pan));
    let (x, z) = (x * cosine - z * sine, x * sine + z * cosine);
    let (sine, cosine) = (libm::sin(change.tilt), libm::cos(change.tilt));
    let (y, z) = (y * cosine - z * sine, y * sine + z * cosine);
    let (sine, cosine) = (libm::sin(change.roll), libm::cos(change.roll));
    let (x, y) = (x * cosine - y * sine, x * sine + y * cosine);
    let scale = focal * (1.0 + change.zoom) / z;
    (z > 1e-9).then_some([x * scale, y * scale])
}

/// A point before and after.
pub type Pair = ([f64; 2], [f64; 2]);

/// What is left of the moves of points, the largest, once the second picture is moved, turned and scaled
/// as a whole onto the first: the least-squares similarity, in closed form.
pub fn left_after_alignment(pairs: &[Pair]) -> f64 {
    let count = pairs.len() as f64;
    if pairs.len() < 2 {
        return 0.0;
    }
    let mean = |pick: fn(&Pair) -> [f64; 2]| {
        let sum = pairs
            .iter()
            .map(pick)
            .fold([0.0, 0.0], |sum, p| [sum[0] + p[0], sum[1] + p[1]]);
        [sum[0] / count, sum[1] / count]
    };
    let (from, to) = (mean(|pair| pair.1), mean(|pair| pair.0));
    let (mut real, mut imaginary, mut size) = (0.0, 0.0, 0.0);
    let centred = |pair: &Pair| {
        let w = [pair.0[0] - to[0], pair.0[1] - to[1]];
        let z = [pair.1[0] - from[0], pair.1[1] - from[1]];
        (w, z)
    };
    for pair in pairs {
        let (w, z) = centred(pair);
        real += z[0] * w[0] + z[1] * w[1];
        imaginary += z[0] * w[1] - z[1] * w[0];
        size += z[0] * z[0] + z[1] * z[1];
    }
    if size <= 0.0 {
        return 0.0;
    }
    let (a, b) = (real / size, imaginary / size);
    let mut worst = 0.0_f64;
    for pair in pairs {
        let (w, z) = centred(pair);
        let left = [w[0] - (a * z[0] - b * z[1]), w[1] - (a * z[1] + b * z[0])];
        worst = worst.max(super::hypot(left[0], left[1]));
    }
    worst
}
