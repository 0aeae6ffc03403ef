//! Tempered glass: pendulum classes, crack fronts, falling fragments, and whether a body comes too soon.

use std::sync::LazyLock;

use super::{GRAVITY, spread::normal_below_near};

/// Mass of the twin-tyre pendulum of EN 12600, kg.
const PENDULUM_MASS: f64 = 50.0;

/// Drop heights of EN 12600's classes 3, 2 and 1, m.
pub const CLASS_HEIGHTS: [f64; 3] = [0.19, 0.45, 1.2];

/// Energy of the pendulum of EN 12600 from a drop height, J.
pub fn pendulum_energy(height: f64) -> f64 {
    PENDULUM_MASS * GRAVITY * height
}

/// Energy of the bag of 16 CFR 1201 from a drop height, J: 100 lb.
pub fn bag_energy(height: f64) -> f64 {
    45.359_237 * GRAVITY * height
}

/// Drop heights of 16 CFR 1201 categories I and II, m: 18 and 48 inches.
pub const CATEGORY_HEIGHTS: [f64; 2] = [0.4572, 1.2192];

/// Speed of the front along which a pane breaks up, m/s: read from high-speed film.
pub const SLOW_FRONT: f64 = 1458.0;

/// The same as measured in toughened drops of glass. The two do not agree; a result is given for both.
pub const FAST_FRONT: f64 = 1700.0;

/// Mass of a cubic metre of glass, kg (EN 572-1).
pub const DENSITY: f64 = 2500.0;

/// A body running at a pane that is fired on a cue. Each thing that varies is normal and on its own.
#[derive(Clone, Copy, Debug)]
pub struct Meeting {
    /// From the cue to the pane, m.
    pub distance: f64,
    /// How far the place of the cue varies, one standard deviation, m.
    pub distance_deviation: f64,
    /// Speed of the run, m/s.
    pub speed: f64,
    /// How far it varies.
    pub speed_deviation: f64,
    /// From the cue to the charge, s.
    pub delay: f64,
    /// How far it varies.
    pub delay_deviation: f64,
}

/// Points to each side of the middle of the speeds, and how many deviations they reach.
const HALF_POINTS: i32 = 40;
const REACH: f64 = 6.0;

/// The points and their weights, which are the same for every meeting.
static SPEEDS: LazyLock<Vec<(f64, f64)>> = LazyLock::new(|| {
    (-HALF_POINTS..=HALF_POINTS)
        .map(|i| {
            let x = REACH * f64::from(i) / f64::from(HALF_POINTS);
            (x, libm::exp(-0.5 * x * x))
        })
        .collect()
});

impl Meeting {
    /// Time from the charge to contact at the middle of everything, s.
    pub fn lead(&self) -> f64 {
        self.distance / self.speed - self.delay
    }

    /// Chance that contact comes less than `after` seconds after the charge. At a given speed the rest is
    /// normal and its chance exact; speeds are summed by the trapezium rule, those that never arrive count
    /// as late.
    pub fn sooner_than(&self, after: f64) -> f64 {
        let at = |speed: f64| {
            if speed <= 0.0 {
                return 0.0;
            }
            let over = self.distance / speed - self.delay - after;
            let place = self.distance_deviation / speed;
            let deviation = super::hypot(self.delay_deviation, place);
            if deviation > 0.0 {
                normal_below_near(-over / deviation)
            } else if over < 0.0 {
                1.0
            } else {
                0.0
            }
        };
        if self.speed_deviation <= 0.0 {
            return at(self.speed);
        }
        let (mut sum, mut weights) = (0.0, 0.0);
        for (x, weight) in &*SPEEDS {
            sum += weight * at(self.speed + x * self.speed_deviation);
            weights += weight;
        }
        sum / weights
    }
}
