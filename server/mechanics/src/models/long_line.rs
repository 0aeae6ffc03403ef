//! A load on a long line that is paid out: the line's own weight, its stretch, and how the load bounces
//! when the head changes its speed.
//!
//! Statics: a hanging bar under its own weight, stretch (M + w l / 2) g l / EA (any text on strength of
//! materials). Motion: the line stretches in a straight line from nothing at the head to `u` at the load,
//! which is Rayleigh's approximation: a third of the line's mass moves with the load (Rayleigh, The
//! Theory of Sound, section 156). With the head paying out at the acceleration a, Lagrange's equation is
//! (M + w l / 3) u'' = (M + w l / 2)(g - a) - (EA / l) u - c u', where the line runs with the head; where
//! only the load runs, down a line that hangs still, the a acts on M alone.

use super::{
    GRAVITY,
    ode::{self, Accuracy, Point},
};

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

/// A ring that has gone on for so many periods under a steady acceleration is taken to have died away.
const LONGEST_RING: f64 = 12.0;

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
        2.0 * core::f64::consts::PI * f64::sqrt(self.bouncing_mass(length) / self.stiffness(length))
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
        let frequency = 2.0 * core::f64::consts::PI / self.period(length);
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

    /// Follows the load from an even motion through the pieces. False when the solver failed.
    pub fn follow(&self, start: Even, pieces: &[Piece], observe: impl FnMut(Moment)) -> bool {
        self.follow_on(
            0.0,
            (start.length, start.speed),
            self.even(start),
            pieces,
            observe,
        )
    }

    /// Follows the load on from a moment of a motion, its bounce kept. False when the solver failed.
    pub fn follow_from(
        &self,
        moment: &Moment,
        pieces: &[Piece],
        observe: impl FnMut(Moment),
    ) -> bool {
        let stretch = [
            moment.depth - moment.length,
            moment.speed - moment.pay_speed,
        ];
        let paid = (moment.length, moment.pay_speed);
        self.follow_on(moment.time, paid, stretch, pieces, observe)
    }

    /// From a time on, with the line paid out and how fast, and the stretch and how fast that grows.
    fn follow_on(
        &self,
        mut time: f64,
        (mut length, mut speed): (f64, f64),
        mut stretch: [f64; 2],
        pieces: &[Piece],
        mut observe: impl FnMut(Moment),
    ) -> bool {
        for piece in pieces {
            if piece.duration <= 0.0 {
                continue;
            }
            let paying = Paying {
                length,
                speed,
                acceleration: piece.from,
                slope: (piece.to - piece.from) / piece.duration,
            };
            let period = self.period(length);
            // Only where nothing changes can a ring be taken to be over.
            let settles = piece.from == piece.to && piece.duration > (LONGEST_RING + 1.0) * period;
            let until = if settles {
                LONGEST_RING * period
            } else {
                piece.duration
            };
            let accuracy = Accuracy {
                relative: 1e-5,
                absolute: 1e-5,
                longest_step: period / 6.0,
                looks: 3,
                most_steps: 20_000,
            };
            let Some(end) = ode::integrate(
                |t, y: &[f64; 2]| [y[1], self.bounce(&paying.at(t), y)],
                Point { t: 0.0, y: stretch },
                until,
                accuracy,
                |_| 1.0,
                |point| observe(self.moment(time, &paying.at(point.t), point)),
            )
            .point() else {
                return false;
            };
            let paid = paying.at(piece.duration);
            stretch = if settles { self.even(paid) } else { end.y };
            (length, speed) = (paid.length, paid.speed);
            time += piece.duration;
        }
        true
    }

    /// Stretch and its rate with no bounce.
    fn even(&self, even: Even) -> [f64; 2] {
        let pull = self.pull_at(even.length, even.acceleration);
        let growth = self.pull_at(2.0 * even.length, even.acceleration) / self.modulus * even.speed;
        [(pull / self.stiffness(even.length)).max(0.0), growth]
    }

    /// How the stretch accelerates.
    fn bounce(&self, paid: &Even, [stretch, growth]: &[f64; 2]) -> f64 {
        let length = paid.length;
        // One over the mass that bounces, and the square of its frequency: neither asks for the state, so the
        // divisions and the root of several stages go side by side.
        let shared = 1.0 / (self.bouncing_mass(length) * length);
        let square = self.modulus * shared;
        let damping = 2.0 * self.damping * f64::sqrt(square);
        let pull = self.pull_at(length, paid.acceleration) * (shared * length);
        if *stretch <= 0.0 {
            return pull;
        }
        pull - (square * stretch + damping * growth).max(0.0)
    }

    fn moment(&self, since: f64, paid: &Even, point: &Point<2>) -> Moment {
        let [stretch, growth] = point.y;
        let bounce = self.bounce(paid, &point.y);
        let line = self.line_mass * paid.length;
        let felt = (GRAVITY - paid.acceleration - bounce).max(0.0);
        let run = if self.runs { paid.acceleration } else { 0.0 };
        Moment {
            time: since + point.t,
            length: paid.length,
            pay_speed: paid.speed,
            depth: paid.length + stretch,
            speed: paid.speed + growth,
            felt,
            head_tension: (self.load * felt + line * (GRAVITY - run - 0.5 * bounce)).max(0.0),
        }
    }
}

/// How the line is paid out within a piece.
struct Paying {
    length: f64,
    speed: f64,
    acceleration: f64,
    slope: f64,
}

impl Paying {
    fn at(&self, t: f64) -> Even {
        Even {
            length: self.length
                + t * (self.speed + t * (0.5 * self.acceleration + t * self.slope / 6.0)),
            speed: self.speed + t * (self.acceleration + 0.5 * t * self.slope),
            acceleration: self.acceleration + t * self.slope,
        }
    }
}
