//! Where landings scatter and whether a catcher is under them: a two-dimensional normal distribution, its
//! parts along and across taken as independent.

use super::spread;

/// Landings around their middle, m.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scatter {
    /// Middle along the action.
    pub along: f64,
    /// Middle to the side.
    pub aside: f64,
    /// Standard deviation along.
    pub deviation_along: f64,
    /// Standard deviation across.
    pub deviation_across: f64,
}

/// A catcher on the ground, m.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Catcher {
    /// Its middle along the action.
    pub distance: f64,
    /// Length along.
    pub length: f64,
    /// Width across.
    pub width: f64,
    /// How far inside its edge a landing must be.
    pub margin: f64,
}

/// Half axes over deviations of the ellipse that holds 99 of 100 landings: sqrt(-2 ln 0.01).
pub const NINETY_NINE: f64 = 3.034_854_258_770_293;

/// The smallest chance that is claimed: no rehearsal shows how landings scatter further out.
pub const SMALLEST_CHANCE: f64 = 1e-9;

impl Scatter {
    /// Landings of a throw that comes down `range` from where it began, at an angle to the side of the line
    /// along. `deviation` is the range's own, `turn` the direction's (rad), and `drift` the wind's, which may
    /// come from anywhere.
    pub fn turned(range: f64, direction: f64, deviation: f64, turn: f64, drift: f64) -> Scatter {
        let (sine, cosine) = libm::sincos(direction);
        let swung = range * libm::tan(turn);
        let together = |a: f64, b: f64| super::hypot(super::hypot(a, b), drift);
        Scatter {
            along: range * cosine,
            aside: range * sine,
            deviation_along: together(deviation * cosine, swung * sine),
            deviation_across: together(swung * cosine, deviation * sine),
        }
    }

    /// The same scatter about the middle of another range.
    #[must_use]
    pub fn about(self, range: f64, direction: f64) -> Scatter {
        let (sine, cosine) = libm::sincos(direction);
        Scatter {
            along: range * cosine,
            aside: range * sine,
            ..self
        }
    }

    /// Chance of coming down outside the catcher less its margin.
    pub fn miss(&self, catcher: &Catcher) -> f64 {
        let (half_length, half_width) = (
            0.5 * catcher.length - catcher.margin,
            0.5 * catcher.width - catcher.margin,
        );
        let short = self.along - catcher.distance;
        let along = spread::normal_outside(-half_length, half_length, short, self.deviation_along);
        let across =
            spread::normal_outside(-half_width, half_width, self.aside, self.deviation_across);
        (along + across - along * across).max(SMALLEST_CHANCE)
    }

    /// Length and width that bring the chance of missing to `wanted`, at that distance with that margin;
    /// half of it is given to each direction.
    pub fn needed(&self, distance: f64, margin: f64, wanted: f64) -> (f64, f64) {
        let deviations = spread::two_sided_quantile(0.5 * wanted);
        let side = |off: f64, deviation: f64| 2.0 * (off.abs() + margin + deviations * deviation);
        (
            side(self.along - distance, self.deviation_along),
            side(self.aside, self.deviation_across),
        )
    }
}
