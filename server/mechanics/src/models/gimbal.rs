//! A body turned about a level axis: rigid-body rotation with an offset mass (elementary mechanics).
//!
//! I w' = T - f - M g sin(angle), the angle from where the offset hangs lowest. M is the first moment of
//! mass about the axis, kg m. Knows no performer, limit or stand.

use super::{
    GRAVITY,
    ode::{Accuracy, Point, integrate},
};

/// What turns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rotor {
    /// About the axis, kg m2.
    pub inertia: f64,
    /// Mass times its distance from the axis, kg m, never negative.
    pub unbalance: f64,
    /// Friction of the pivots, N m.
    pub friction: f64,
}

/// A turn up to speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpinUp {
    /// From rest to the wanted rate, s.
    pub time: f64,
    /// Turned by then, rad.
    pub angle: f64,
}

/// A stop from a rate, bounded over wherever the offset stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stop {
    /// Longest time, s.
    pub time: f64,
    /// Furthest angle, rad.
    pub angle: f64,
    /// Hardest angular deceleration, rad/s2.
    pub hardest: f64,
}

/// Half a minute of pushing is more than any rig gets.
const LONGEST: f64 = 30.0;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-6,
    absolute: 1e-8,
    longest_step: 0.5,
    looks: 1,
    most_steps: 5_000,
};

impl Rotor {
    /// Gravity's largest torque on the offset, N m.
    pub fn offset_torque(&self) -> f64 {
        self.unbalance * GRAVITY
    }

    /// Turns from rest, the offset hanging, under a steady torque until `rate`. None when it swings back
    /// or does not get there in time.
    pub fn spin_up(
        &self,
        torque: f64,
        rate: f64,
        mut observe: impl FnMut(f64, f64, f64),
    ) -> Option<SpinUp> {
        let push = (torque - self.friction) / self.inertia;
        let pull = self.offset_torque() / self.inertia;
        if push <= 0.0 || rate <= 0.0 {
            return None;
        }
        // A rate below this has turned back: friction is then no longer the same, and the push has failed.
        let back = 1e-6;
        let end = integrate(
            |_, y: &[f64; 2]| [y[1], push - pull * libm::sin(y[0])],
            Point {
                t: 0.0,
                y: [0.0, 0.0],
            },
            LONGEST,
            ACCURACY,
            |p| (rate - p.y[1]).min(p.y[1] + back),
            |p| observe(p.t, p.y[0], p.y[1]),
        );
        let last = end.point()?;
        (last.y[1] >= rate * (1.0 - 1e-6)).then_some(SpinUp {
            time: last.t,
            angle: last.y[0],
        })
    }

    /// Stops from `rate`. For time and angle the offset works against the brake all the way, for the
    /// deceleration with it. None when the brake may not stop it.
    pub fn stop(&self, brake: f64, rate: f64) -> Option<Stop> {
        let least = (brake + self.friction - self.offset_torque()) / self.inertia;
        (least > 0.0).then(|| Stop {
            time: rate / least,
            angle: rate * rate / (2.0 * least),
            hardest: (brake + self.friction + self.offset_torque()) / self.inertia,
        })
    }
}
