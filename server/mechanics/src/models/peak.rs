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

#[cfg(test)]
mod tests {
    use super::Peak;

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
