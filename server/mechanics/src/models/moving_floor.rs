//! A floor that is set moving and stopped under a person: its motion, and the base that balance needs.
//!
//! Motion: the acceleration rises evenly, holds and falls evenly, with no dwell where the speed is reached
//! before it is full. Elementary kinematics; such a profile covers half its top speed times its time.
//!
//! Balance: a stiff inverted pendulum over the foot (A. L. Hof, M. G. J. Gazendam and W. E. Sinke, "The
//! condition for dynamic stability", J. Biomechanics 38, 2005). With w^2 = g / h, the point x + x'/w runs
//! away from the centre of pressure p as r' = w (r - p) + a(t) / w. Balance is kept when p may go as far as
//! the integral of a(t) exp(-w (t - reaction)) / w over the whole pulse; that is exact when p stays in the
//! middle until the reaction and then goes to the edge of the base.

use super::GRAVITY;

/// A change of speed with a rising and a falling ramp of acceleration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change {
    /// Speed gained or lost, m/s.
    pub speed: f64,
    /// Highest acceleration that is reached, m/s2.
    pub peak: f64,
    /// How long each ramp takes, s.
    pub ramp: f64,
    /// Whole time, s.
    pub time: f64,
}

impl Change {
    /// Changes by `speed` with at most `acceleration`, which would take `ramp` to build up.
    pub fn of(speed: f64, acceleration: f64, ramp: f64) -> Change {
        let (peak, ramp) = if acceleration * ramp > speed {
            let share = f64::sqrt(speed / (acceleration * ramp));
            (acceleration * share, ramp * share)
        } else {
            (acceleration, ramp)
        };
        let time = if peak > 0.0 { speed / peak + ramp } else { 0.0 };
        Change {
            speed,
            peak,
            ramp,
            time,
        }
    }

    /// Distance covered between rest and that speed, m.
    pub fn distance(&self) -> f64 {
        0.5 * self.speed * self.time
    }

    /// Acceleration, speed gained and distance covered from rest, at a time since the start.
    pub fn at(&self, time: f64) -> (f64, f64, f64) {
        if time <= 0.0 {
            return (0.0, 0.0, 0.0);
        }
        if time >= self.time {
            let beyond = time - self.time;
            return (0.0, self.speed, self.distance() + self.speed * beyond);
        }
        if time > 0.5 * self.time {
            // The second half is the first one turned about its middle.
            let (a, v, x) = self.at(self.time - time);
            return (
                a,
                self.speed - v,
                self.distance() - self.speed * (self.time - time) + x,
            );
        }
        if time < self.ramp {
            let jerk = self.peak / self.ramp;
            return (
                jerk * time,
                0.5 * jerk * time * time,
                jerk * time * time * time / 6.0,
            );
        }
        let (v, x) = (
            0.5 * self.peak * self.ramp,
            self.peak * self.ramp * self.ramp / 6.0,
        );
        let held = time - self.ramp;
        (
            self.peak,
            v + self.peak * held,
            x + v * held + 0.5 * self.peak * held * held,
        )
    }

    /// How far from the middle of the base the feet must be able to push, m, for a body whose weight is
    /// `height` up and that answers after `reaction`.
    pub fn base_needed(&self, height: f64, reaction: f64) -> f64 {
        if self.time <= 0.0 {
            return 0.0;
        }
        let w = f64::sqrt(GRAVITY / height);
        let plain = |time: f64| -libm::expm1(-w * time) / w;
        // The trapezium is a box of the peak smeared over the ramp, so its transform is their product.
        let smear = if self.ramp > 0.0 {
            plain(self.ramp) / self.ramp
        } else {
            1.0
        };
        let box_time = self.time - self.ramp;
        libm::exp(w * reaction) * self.peak * plain(box_time) * smear / w
    }
}

/// The shortest stop that friction allows, m: v^2 / (2 mu g).
pub fn friction_stop(speed: f64, friction: f64) -> f64 {
    speed * speed / (2.0 * friction * GRAVITY)
}
