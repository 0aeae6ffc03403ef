//! The most that a quantity comes to, from looks at it one after another.

/// The highest of a smooth quantity that was looked at now and then: where the middle of three looks is the
/// highest, the top of the parabola through them. At twenty looks a swing that is within two parts in ten thousand of
/// the swing, where the highest look itself may be a hundredth short.
#[derive(Clone, Copy, Debug)]
pub struct Peak {
    most: f64,
    looks: [Option<(f64, f64)>; 2],
}

/// A parabola through looks about a kink would reach too far: no further than this share past the look itself.
const FURTHEST: f64 = 0.01;

impl Peak {
    /// Of a quantity that is never less.
    pub fn over(least: f64) -> Peak {
        Peak {
            most: least,
            looks: [None; 2],
        }
    }

    /// The value at a time. Two at one time are a jump, over which nothing is drawn.
    pub fn see(&mut self, time: f64, value: f64) {
        self.most = self.most.max(value);
        let [first, middle] = self.looks;
        if let (Some((t0, v0)), Some((t1, v1))) = (first, middle)
            && v1 > v0
            && v1 > value
            && v1 + FURTHEST * v1.abs() > self.most
            && are_neighbours(t1 - t0, time - t1)
        {
            let (up, down) = ((v1 - v0) / (t1 - t0), (value - v1) / (time - t1));
            let bend = (down - up) / (time - t0);
            let top = 0.5 * (t0 + t1) - 0.5 * up / bend;
            let found = v0 + (top - t0) * (up + bend * (top - t1));
            self.most = self.most.max(found.min(v1 + FURTHEST * v1.abs()));
        }
        let follows = middle.is_some_and(|(t1, _)| time > t1);
        self.looks = [middle.filter(|_| follows), Some((time, value))];
    }

    /// The most so far.
    pub fn most(&self) -> f64 {
        self.most
    }
}

/// Whether two looks on either side of one belong to one motion: a longer gap, or none, lies between two.
fn are_neighbours(before: f64, after: f64) -> bool {
    after > 0.0 && after < UNLIKE * before && before < UNLIKE * after
}

/// Steps grow at most fivefold.
const UNLIKE: f64 = 6.0;

/// The highest of a quantity that was looked at now and then, each time with how fast it changes: between a look at
/// which it rises and one at which it falls, the top of the cubic through both (C. Hermite). At ten looks a swing that
/// is within four parts in ten thousand of the swing, at twenty-four within two in a hundred thousand, however uneven
/// the looks. A kink is looked at from both sides.
#[derive(Clone, Copy, Debug)]
pub struct Crest {
    most: f64,
    last: Option<[f64; 3]>,
}

impl Crest {
    /// Of a quantity not yet looked at.
    pub fn new() -> Crest {
        Crest {
            most: f64::NEG_INFINITY,
            last: None,
        }
    }

    /// The value at a time, and its change in a second.
    pub fn see(&mut self, time: f64, value: f64, change: f64) {
        self.most = self.most.max(value);
        if let Some([before, first, rising]) = self.last
            && time > before
            && rising > 0.0
            && change < 0.0
        {
            let step = time - before;
            let (slope, end_slope, gained) = (rising * step, change * step, value - first);
            let square = 3.0 * gained - 2.0 * slope - end_slope;
            let cube = slope + end_slope - 2.0 * gained;
            let root = f64::sqrt((square * square - 3.0 * cube * slope).max(0.0));
            let top = slope / (root - square);
            let found = first + top * (slope + top * (square + top * cube));
            self.most = self.most.max(found);
        }
        self.last = Some([time, value, change]);
    }

    /// The most so far.
    pub fn most(&self) -> f64 {
        self.most
    }
}

impl Default for Crest {
    fn default() -> Self {
        Crest::new()
    }
}

#[cfg(test)]
mod tests {
    use super::{Crest, Peak};

    #[test]
    fn a_crest_lies_between_uneven_looks() {
        for (looks, close) in [(10.0, 4e-4), (24.0, 2e-5)] {
            for shift in 0..40 {
                let mut crest = Crest::new();
                for look in 0..60 {
                    // Now and then there is one more, close before the next.
                    let parts: &[f64] = if look % 3 == 0 { &[0.0, 0.95] } else { &[0.0] };
                    for part in parts {
                        let time = (f64::from(look) + part) / looks + f64::from(shift) / 960.0;
                        let (s, c) = libm::sincos(core::f64::consts::TAU * time);
                        crest.see(time, 1.0 + s, core::f64::consts::TAU * c);
                    }
                }
                assert!((crest.most() - 2.0).abs() < close, "{}", crest.most());
            }
        }
    }

    #[test]
    fn a_crest_is_no_higher_than_its_kink() {
        let mut kink = Crest::new();
        for (time, value, change) in [
            (0.0, 0.9, 0.1),
            (1.0, 1.0, 0.1),
            (1.0, 1.0, -1.0),
            (2.0, 0.0, -1.0),
        ] {
            kink.see(time, value, change);
        }
        assert_eq!(kink.most(), 1.0);
    }

    #[test]
    fn the_top_between_two_looks_is_found() {
        for shift in 0..40 {
            let mut peak = Peak::over(0.0);
            for look in 0..60 {
                let time = f64::from(look) / 24.0 + f64::from(shift) / 960.0;
                peak.see(time, 1.0 + libm::sin(core::f64::consts::TAU * time));
            }
            assert!((peak.most() - 2.0).abs() < 2e-4, "{}", peak.most());
        }
    }

    #[test]
    fn the_bottom_is_the_top_of_the_negative() {
        for shift in 0..40 {
            let mut trough = Peak::over(f64::NEG_INFINITY);
            for look in 0..60 {
                let time = f64::from(look) / 24.0 + f64::from(shift) / 960.0;
                trough.see(time, -(3.0 + libm::sin(core::f64::consts::TAU * time)));
            }
            assert!((trough.most() + 2.0).abs() < 2e-4, "{}", trough.most());
        }
    }

    #[test]
    fn two_motions_are_not_drawn_as_one() {
        let mut peak = Peak::over(0.0);
        for (time, value) in [(0.0, 1.0), (0.1, 2.0), (5.0, 1.0)] {
            peak.see(time, value);
        }
        assert_eq!(peak.most(), 2.0);
    }

    #[test]
    fn jumps_and_kinks_are_not_rounded_up() {
        let mut jump = Peak::over(0.0);
        for (time, value) in [(0.0, 1.0), (1.0, 5.0), (1.0, 2.0), (2.0, 1.0)] {
            jump.see(time, value);
        }
        assert_eq!(jump.most(), 5.0);
        let mut kink = Peak::over(0.0);
        for (time, value) in [(0.0, 0.9), (1.0, 1.0), (2.0, 0.0)] {
            kink.see(time, value);
        }
        assert!(kink.most() <= 1.01);
    }
}
