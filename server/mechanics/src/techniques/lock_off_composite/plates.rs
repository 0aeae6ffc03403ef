//! The two things a composite rests on, as numbers: the picture's points in both passes, and the sun.

use crate::{
    models::{
        self, camera,
        registration::{self, Change, Pair},
        sun::{self, Moment, Sun},
    },
    reading::Values,
};

/// The picture in both passes.
pub(super) struct Plates {
    pub change: Change,
    pub focal: f64,
    pub half: [f64; 2],
    pub near: f64,
    pub far: f64,
}

impl Plates {
    pub fn read(values: &Values) -> Option<Plates> {
        let n = |name| values.number(name);
        let pixels = n("picture_width")?;
        let near = n("near_distance")?;
        let change = Change {
            pan: n("pan_drift")?,
            tilt: n("tilt_drift")?,
            roll: n("roll_drift")?,
            shift: [n("shift_across")?, n("shift_up")?, n("shift_forward")?],
            zoom: n("focal_change")?,
        };
        Some(Plates {
            change: change.about_axes(n("pupil_offset")?),
            focal: camera::focal_pixels(n("focal_length")?, n("sensor_width")?, pixels),
            half: [0.5 * pixels, 0.5 * n("picture_height")?],
            near,
            far: n("far_distance")?.max(near),
        })
    }

    /// The corners and the middle.
    fn places(&self) -> [[f64; 2]; 5] {
        let [x, y] = self.half;
        [[-x, -y], [x, -y], [-x, y], [x, y], [0.0, 0.0]]
    }

    fn pairs(&self, change: &Change) -> Option<Vec<Pair>> {
        let mut pairs = Vec::with_capacity(10);
        for depth in [self.near, self.far] {
            for at in self.places() {
                pairs.push((at, registration::moved(change, self.focal, at, depth)?));
            }
        }
        Some(pairs)
    }

    /// The furthest that any of those points moves, near or far.
    pub fn worst(&self, change: &Change) -> Option<f64> {
        let far = |(from, to): &Pair| models::hypot(to[0] - from[0], to[1] - from[1]);
        Some(self.pairs(change)?.iter().map(far).fold(0.0, f64::max))
    }

    /// The move of one point of the middle row, `across` from the middle.
    pub fn drift_at(&self, across: f64, depth: f64) -> Option<f64> {
        let to = registration::moved(&self.change, self.focal, [across, 0.0], depth)?;
        Some(models::hypot(to[0] - across, to[1]))
    }

    pub fn left_after_alignment(&self) -> Option<f64> {
        Some(registration::left_after_alignment(
            &self.pairs(&self.change)?,
        ))
    }

    /// How much further the nearest thing moves than the furthest, by the pupil's shift across and up.
    pub fn parallax(&self) -> f64 {
        let [x, y, _] = self.change.shift;
        self.focal * models::hypot(x, y) * (1.0 / self.near - 1.0 / self.far)
    }
}

/// The sun at the first and the last pass.
pub(super) struct Shadows {
    pub first: Sun,
    pub last: Sun,
    pub skyline: f64,
    pub height: f64,
    start: Moment,
    between: f64,
}

impl Shadows {
    /// None under cloud or lamps, where the sun casts nothing.
    pub fn read(values: &Values) -> Option<Shadows> {
        let n = |name| values.number(name);
        if values.choice("light")? != "sun" {
            return None;
        }
        let start = Moment {
            latitude: n("latitude")?,
            longitude: n("longitude")?,
            year: n("year")?,
            day: n("day_of_year")?,
            seconds: n("first_pass")?,
        };
        let between = n("between_passes")?;
        let last = Moment {
            seconds: start.seconds + between,
            ..start
        };
        Some(Shadows {
            first: sun::position(&start),
            last: sun::position(&last),
            skyline: n("skyline")?,
            height: n("shadow_height")?,
            start,
            between,
        })
    }

    /// The sun at a share of the time between the passes, and that time.
    pub fn during(&self, share: f64) -> (f64, Sun) {
        let time = self.between * share;
        let moment = Moment {
            seconds: self.start.seconds + time,
            ..self.start
        };
        (time, sun::position(&moment))
    }

    pub fn lowest(&self) -> f64 {
        self.first.seen.min(self.last.seen)
    }

    /// Angle between the two shadows.
    pub fn turn(&self) -> f64 {
        let apart = (self.last.azimuth - self.first.azimuth).abs();
        apart.min(2.0 * core::f64::consts::PI - apart)
    }

    /// How far the tip of the shadow moves, m.
    pub fn tip(&self) -> Option<f64> {
        let (a, b) = (sun::shadow(&self.first)?, sun::shadow(&self.last)?);
        Some(self.height * models::hypot(b[0] - a[0], b[1] - a[1]))
    }

    /// Change of direct sunlight, in stops.
    pub fn stops(&self) -> Option<f64> {
        let (a, b) = (
            sun::direct_share(&self.first)?,
            sun::direct_share(&self.last)?,
        );
        Some(libm::log2(b / a).abs())
    }
}
