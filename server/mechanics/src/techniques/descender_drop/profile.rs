//! The speed at which line is paid out: up to the wanted speed, even, and down to nothing, each change of
//! acceleration brought in over the same time. Kinematics only.

use crate::models::long_line::Piece;

/// One change of speed: the acceleration rises in a straight line, stays, and falls again.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Change {
    /// Highest acceleration, m/s2, without sign.
    pub acceleration: f64,
    /// Time to bring it in, s; the same to take it out.
    pub ramp: f64,
    /// Time in which it is steady, s.
    pub hold: f64,
}

impl Change {
    /// The change that gives `speed`. A small one is over before the acceleration is fully in.
    fn to(speed: f64, acceleration: f64, ramp: f64) -> Change {
        if speed >= acceleration * ramp {
            Change {
                acceleration,
                ramp,
                hold: speed / acceleration - ramp,
            }
        } else {
            let ramp = f64::sqrt(speed * ramp / acceleration);
            Change {
                acceleration: speed / ramp,
                ramp,
                hold: 0.0,
            }
        }
    }

    pub(super) fn time(&self) -> f64 {
        self.hold + 2.0 * self.ramp
    }

    /// The pieces, downward for `sign` 1 and braking for -1.
    pub(super) fn pieces(&self, sign: f64) -> [Piece; 3] {
        let full = sign * self.acceleration;
        let piece = |duration, from, to| Piece { duration, from, to };
        [
            piece(self.ramp, 0.0, full),
            piece(self.hold, full, full),
            piece(self.ramp, full, 0.0),
        ]
    }
}

/// The whole run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Profile {
    pub speed: f64,
    pub start: Change,
    pub brake: Change,
    pub start_distance: f64,
    pub cruise_distance: f64,
    pub brake_distance: f64,
}

/// What is asked of the run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Asked {
    pub travel: f64,
    pub speed: f64,
    pub start: f64,
    pub brake: f64,
    pub ramp: f64,
}

impl Profile {
    /// The run of that travel; the wanted speed is not reached when the travel is too short for it.
    pub(super) fn of(asked: &Asked) -> Option<Profile> {
        if asked.travel <= 0.0 {
            return None;
        }
        let at = |speed: f64| {
            let start = Change::to(speed, asked.start, asked.ramp);
            let brake = Change::to(speed, asked.brake, asked.ramp);
            // Each change is the same forward and backward in time, so its mean speed is half.
            let (from, into) = (0.5 * speed * start.time(), 0.5 * speed * brake.time());
            Profile {
                speed,
                start,
                brake,
                start_distance: from,
                cruise_distance: asked.travel - from - into,
                brake_distance: into,
            }
        };
        let whole = at(asked.speed);
        if whole.cruise_distance >= 0.0 {
            return Some(whole);
        }
        let (mut low, mut high) = (0.0, asked.speed);
        // Both distances grow with speed, so halving the bracket always closes on it.
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if at(middle).cruise_distance >= 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        let mut found = at(low.max(1e-6));
        found.cruise_distance = 0.0;
        Some(found)
    }

    pub(super) fn cruise_time(&self) -> f64 {
        self.cruise_distance / self.speed
    }

    pub(super) fn time(&self) -> f64 {
        self.start.time() + self.cruise_time() + self.brake.time()
    }
}
