//! A mass on a line that pulls as spring and damper, under a steady force and the half sine of a push, in closed form:
//! x'' = steady - push sin(turn t) - 2 decay x' - square x (S. P. Timoshenko, Vibration Problems in Engineering).
//! Without a line the same is a throw.
//!
//! It knows nothing of what hangs on the line or of when it is slack.

use core::f64::consts::TAU;

/// A swing, or a throw.
#[derive(Clone, Copy, Debug)]
pub(super) struct Swing {
    square: f64,
    decay: f64,
    /// Of the damped swing, rad/s; not used in a throw.
    frequency: f64,
    /// How fast the push's sine turns, rad/s, or nothing without a push.
    turn: f64,
    /// Parts of the stretch that go with the sine and the cosine of the push.
    answer: [f64; 2],
}

/// What a time does to a swing and to the push.
#[derive(Clone, Copy, Debug)]
pub(super) struct Passage {
    pub(super) time: f64,
    /// Stretch from stretch, from stretching and from a steady force.
    pub(super) stretch: [f64; 3],
    /// Stretching from the same.
    pub(super) stretching: [f64; 3],
    pub(super) sine: f64,
    pub(super) cosine: f64,
}

/// A line, and the mass that swings on it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Line {
    /// N/m.
    pub(super) stiffness: f64,
    /// N s/m.
    pub(super) damping: f64,
    /// kg.
    pub(super) mass: f64,
}

impl Swing {
    /// On a line or on none, under a push that is told at its highest, as an acceleration, and by how fast its sine
    /// turns. None where a line damps too much to swing.
    pub(super) fn new(line: Option<Line>, push: f64, turn: f64) -> Option<Swing> {
        let (square, decay) = match line {
            Some(line) => (line.stiffness / line.mass, 0.5 * line.damping / line.mass),
            None => (0.0, 0.0),
        };
        let left = square - decay * decay;
        if line.is_some() && !(left > 0.0 && left.is_finite()) {
            return None;
        }
        let answer = if push == 0.0 {
            [0.0, 0.0]
        } else {
            let (with, against) = (square - turn * turn, 2.0 * decay * turn);
            let share = push / (with * with + against * against);
            [-with * share, against * share]
        };
        Some(Swing {
            square,
            decay,
            frequency: f64::sqrt(left.max(0.0)),
            turn,
            answer,
        })
    }

    /// Time of an undamped swing, s.
    pub(super) fn period(&self) -> f64 {
        TAU / f64::sqrt(self.square)
    }

    /// Stretch and stretching that answer to the push, at its sine and cosine.
    pub(super) fn answer(&self, sine: f64, cosine: f64) -> (f64, f64) {
        let [with, after] = self.answer;
        (
            with * sine + after * cosine,
            self.turn * (with * cosine - after * sine),
        )
    }

    /// What the line takes off the acceleration, m/s2.
    pub(super) fn pulls(&self, stretch: f64, stretching: f64) -> f64 {
        2.0 * self.decay * stretching + self.square * stretch
    }

    pub(super) fn passage(&self, time: f64) -> Passage {
        let (sine, cosine) = if self.turn > 0.0 {
            libm::sincos(self.turn * time)
        } else {
            (0.0, 1.0)
        };
        let (stretch, stretching) = if self.square > 0.0 {
            let (s, c) = libm::sincos(self.frequency * time);
            let left = libm::exp(-self.decay * time);
            let from_speed = left * s / self.frequency;
            let (swung, kept) = (left * c, self.decay * from_speed);
            (
                [swung + kept, from_speed, (1.0 - swung - kept) / self.square],
                [-self.square * from_speed, swung - kept, from_speed],
            )
        } else {
            ([1.0, time, 0.5 * time * time], [0.0, 1.0, time])
        };
        Passage {
            time,
            stretch,
            stretching,
            sine,
            cosine,
        }
    }
}
