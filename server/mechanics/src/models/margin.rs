//! When something that must last is gone: the first fall to nothing between two looks at it, each with how fast it
//! changes. Newton's method from the cubic through both looks (C. Hermite), kept between what is known.
//!
//! It knows nothing of what lasts or why.

/// What is left, above nothing while it lasts, and its change in a second.
#[derive(Clone, Copy, Debug)]
pub(super) struct Margin {
    pub(super) left: f64,
    pub(super) change: f64,
}

impl Margin {
    /// Of what must stay above nothing.
    pub(super) fn of([left, change]: [f64; 2]) -> Margin {
        Margin { left, change }
    }

    /// Of what must stay below nothing.
    pub(super) fn under([over, change]: [f64; 2]) -> Margin {
        Margin {
            left: -over,
            change: -change,
        }
    }
}

/// The way from one look to the next, short against the time in which the margin swings.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ahead {
    pub(super) first: Margin,
    pub(super) last: Margin,
    /// Between the looks, s.
    pub(super) time: f64,
    /// How long it lasts at least, s.
    pub(super) lasts: f64,
}

/// Trials for where it is gone. Halving alone comes close enough in as many.
const MOST_TRIALS: usize = 40;
/// Known when the next trial is within this share of the way from the last.
const CLOSE: f64 = 1e-7;

impl Ahead {
    /// When it is gone, and what else is found there. None where it lasts.
    pub(super) fn gone<T>(&self, at: impl Fn(f64) -> (T, Margin)) -> Option<(f64, T)> {
        let (until, last) = self.gone_by(&at)?;
        let (mut low, mut high) = (self.lasts, until);
        let mut time = cubic_zero(self.first, last, until).clamp(low, high);
        let (mut there, mut margin) = at(time);
        for _ in 0..MOST_TRIALS {
            if margin.left > 0.0 {
                low = time;
            } else {
                high = time;
            }
            let newton = time - margin.left / margin.change;
            let next = if newton >= low && newton <= high {
                newton
            } else {
                0.5 * (low + high)
            };
            if (next - time).abs() <= CLOSE * self.time {
                break;
            }
            time = next;
            (there, margin) = at(time);
        }
        Some((time, there))
    }

    /// A time by which it is gone, with what is left of it then. It may be gone and back between the looks.
    fn gone_by<T>(&self, at: impl Fn(f64) -> (T, Margin)) -> Option<(f64, Margin)> {
        let (first, last) = (self.first, self.last);
        if last.left < 0.0 {
            return Some((self.time, last));
        }
        if !(first.change < 0.0 && last.change > 0.0) {
            return None;
        }
        // It bends up in between, so that it lies above where its two tangents meet.
        let bend = last.change - first.change;
        let meet = (first.left - last.left + last.change * self.time) / bend;
        if first.left + first.change * meet > 0.0 {
            return None;
        }
        let lowest = -first.change * self.time / bend;
        if lowest < self.lasts {
            return None;
        }
        let (_, found) = at(lowest);
        (found.left < 0.0).then_some((lowest, found))
    }
}

/// Nearly where a margin falls to nothing, from what is left of it at both ends of a time.
fn cubic_zero(first: Margin, last: Margin, time: f64) -> f64 {
    let (slope, end_slope) = (first.change * time, last.change * time);
    let rise = last.left - first.left;
    let square = 3.0 * rise - 2.0 * slope - end_slope;
    let cube = slope + end_slope - 2.0 * rise;
    let mut zero = if rise < 0.0 { -first.left / rise } else { 1.0 };
    for _ in 0..3 {
        let value = first.left + zero * (slope + zero * (square + zero * cube));
        let change = slope + zero * (2.0 * square + 3.0 * zero * cube);
        let next = zero - value / change;
        if !(0.0..=1.0).contains(&next) {
            break;
        }
        zero = next;
    }
    zero * time
}

#[cfg(test)]
mod tests {
    use super::{Ahead, Margin};

    /// A sine about a level, looked at from one time on.
    fn gone(level: f64, from: f64, time: f64, lasts: f64) -> Option<f64> {
        let at = |t: f64| {
            let (s, c) = libm::sincos(from + t);
            (from + t, Margin::of([level + s, c]))
        };
        let (first, last) = (at(0.0).1, at(time).1);
        let ahead = Ahead {
            first,
            last,
            time,
            lasts,
        };
        ahead.gone(at).map(|(found, there)| {
            assert_eq!(there, from + found);
            there
        })
    }

    #[test]
    fn a_fall_is_found_wherever_it_lies() {
        let zero = core::f64::consts::PI;
        for part in 1..40 {
            let from = zero - 0.6 * f64::from(part) / 40.0;
            assert!((gone(0.0, from, 0.6, 0.0).unwrap() - zero).abs() < 1e-7);
        }
        assert_eq!(gone(0.0, zero - 0.7, 0.6, 0.0), None);
    }

    #[test]
    fn gone_and_back_between_two_looks_is_found() {
        // Lowest at 3 pi / 2.
        let lowest = 1.5 * core::f64::consts::PI;
        for dip in [1e-9, 1e-4, 1e-2] {
            for part in 5..15 {
                let from = lowest - 0.6 * f64::from(part) / 20.0;
                let half = libm::acos(1.0 - dip);
                if half < lowest - from && half < from + 0.6 - lowest {
                    let found = gone(1.0 - dip, from, 0.6, 0.0);
                    if dip > 1e-5 {
                        assert!((found.unwrap() - (lowest - half)).abs() < 1e-6);
                    }
                    assert_eq!(gone(1.0 + dip, from, 0.6, 0.0), None);
                }
            }
        }
    }

    #[test]
    fn what_begins_at_nothing_lasts_a_little() {
        let zero = core::f64::consts::PI;
        // Rises from nothing and is gone half a turn later.
        let found = gone(0.0, 0.0, 3.3, 1e-3).unwrap();
        assert!((found - zero).abs() < 1e-6);
        // Rounding may have it fall from nothing: it comes on by what it lasts.
        assert!((gone(0.0, zero, 0.6, 1e-3).unwrap() - zero - 1e-3).abs() < 1e-6);
    }
}
