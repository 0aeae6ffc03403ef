//! A load on a long line that is paid out: the line's own weight, its stretch, and how the load bounces
//! when the head changes its speed.
//!
//! Statics: a hanging bar under its own weight, stretch (M + w l / 2) g l / EA (any text on strength of
//! materials). Motion: the line stretches in a straight line from nothing at the head to `u` at the load,
//! which is Rayleigh's approximation: a third of the line's mass moves with the load (Rayleigh, The
//! Theory of Sound, section 156). With the head paying out at the acceleration a, Lagrange's equation is
//! (M + w l / 3) u'' = (M + w l / 2)(g - a) - (EA / l) u - c u', where the line runs with the head; where
//! only the load runs, down a line that hangs still, the a acts on M alone.

use core::f64::consts::PI;

use super::GRAVITY;

mod motion;

pub use motion::{FOR_PEAKS, FOR_PLOTS};

/// A line and what hangs on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LongLine {
    /// Mass at the end, kg.
    pub load: f64,
    /// Mass of the line for each metre, kg/m.
    pub line_mass: f64,
    /// Force per unit strain (EA), N.
    pub modulus: f64,
    /// Share of critical damping.
    pub damping: f64,
    /// Whether the line itself runs, paid out at the head; otherwise the load runs down it.
    pub runs: bool,
}

/// A stretch of time in which the acceleration of paying out goes in a straight line, m/s2 downward.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// How long, s.
    pub duration: f64,
    /// Acceleration at its start.
    pub from: f64,
    /// Acceleration at its end.
    pub to: f64,
}

/// A moment of the motion.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time, s.
    pub time: f64,
    /// Line paid out, unstretched, m.
    pub length: f64,
    /// Speed of paying out, m/s.
    pub pay_speed: f64,
    /// Depth of the load below the head, m.
    pub depth: f64,
    /// Speed of the load downward, m/s.
    pub speed: f64,
    /// What the load feels, m/s2: the line's pull on it over its mass.
    pub felt: f64,
    /// Tension at the head, N.
    pub head_tension: f64,
}

/// How far a swing can go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Furthest {
    /// Deepest below the head, m.
    pub depth: f64,
    /// The least felt, m/s2.
    pub least_felt: f64,
    /// The most felt, m/s2.
    pub most_felt: f64,
    /// Highest tension at the head, N.
    pub head_tension: f64,
}

/// How the line is paid out; as even motion, what was before anything changes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Even {
    /// Line paid out, unstretched, m.
    pub length: f64,
    /// Speed of paying out, m/s.
    pub speed: f64,
    /// Its acceleration, m/s2.
    pub acceleration: f64,
}

impl LongLine {
    /// Stiffness at a length, N/m.
    pub fn stiffness(&self, length: f64) -> f64 {
        self.modulus / length
    }

    /// Stretch at rest, m.
    pub fn stretch(&self, length: f64) -> f64 {
        self.pull_at(length, 0.0) / self.stiffness(length)
    }

    /// Tension at the head at rest, N.
    pub fn weight(&self, length: f64) -> f64 {
        (self.load + self.line_mass * length) * GRAVITY
    }

    /// The mass that bounces at a length, kg.
    pub fn bouncing_mass(&self, length: f64) -> f64 {
        self.load + self.line_mass * length / 3.0
    }

    /// Period of the bounce at a length, s.
    pub fn period(&self, length: f64) -> f64 {
        2.0 * PI / self.frequency(length)
    }

    /// How fast the bounce turns at a length, rad/s.
    pub fn frequency(&self, length: f64) -> f64 {
        f64::sqrt(self.modulus / (self.bouncing_mass(length) * length))
    }

    /// What the stretch must carry, N: load and half the line, against gravity less what is let go.
    fn pull_at(&self, length: f64, acceleration: f64) -> f64 {
        let half = 0.5 * self.line_mass * length;
        if self.runs {
            (self.load + half) * (GRAVITY - acceleration)
        } else {
            self.load * (GRAVITY - acceleration) + half * GRAVITY
        }
    }

    /// The furthest that the load can swing past rest, m, after a braking `change` of acceleration that is
    /// brought in and taken out over `ramp` and is `steady` in between. A ramp makes a ring smaller by
    /// sin(x) / x with x half the ramp's angle of swing, at most 1 / x; what is left of the first ring and
    /// the second are added as if they met at their worst.
    pub fn furthest_swing(&self, length: f64, change: f64, ramp: f64, steady: f64) -> f64 {
        let frequency = self.frequency(length);
        let pulled = if self.runs {
            self.load + 0.5 * self.line_mass * length
        } else {
            self.load
        };
        let sudden = change * pulled / self.bouncing_mass(length) / (frequency * frequency);
        let softened = sudden * (2.0 / (frequency * ramp)).min(1.0);
        softened * (1.0 + libm::exp(-self.damping * frequency * steady))
    }

    /// Sideways drift of the load, m, in a steady wind whose push is `on_load`, N, and `on_line`, N/m: the
    /// line leans at each height by the push below over the weight below.
    pub fn drift(&self, length: f64, on_load: f64, on_line: f64) -> f64 {
        let ratio = self.line_mass * length / self.load;
        if ratio < 1e-6 {
            return (on_load + 0.5 * on_line * length) * length / (self.load * GRAVITY);
        }
        let line_weight = self.line_mass * GRAVITY;
        on_line * length / line_weight
            + (on_load - on_line * self.load / self.line_mass) * libm::log1p(ratio) / line_weight
    }

    /// The furthest that a load on a standing line can still come to, as it moves at a moment: what moves in it only
    /// gets less, so no swing is wider than the one that this motion would begin without damping.
    pub fn still_to_come(&self, moment: &Moment) -> Furthest {
        let length = moment.length;
        let frequency = self.frequency(length);
        let (stretch, rate) = (moment.depth - length, moment.speed - moment.pay_speed);
        let rest = self.stretch(length);
        let swing = super::hypot(stretch - rest, rate / frequency);
        let doubled = 2.0 * self.damping;
        let bounce = frequency * frequency * swing * f64::sqrt(1.0 + doubled * doubled);
        let felt = GRAVITY + bounce;
        Furthest {
            depth: length + rest + swing,
            least_felt: GRAVITY - bounce,
            most_felt: felt,
            head_tension: self.load * felt + self.line_mass * length * (GRAVITY + 0.5 * bounce),
        }
    }
}
