//! What an acceleration does to a body: the dynamic response model, x'' + 2 z w x' + w^2 x = a(t),
//! response = w^2 x_max / g (Stech and Payne 1969; J. W. Brinkley's extension to all axes, AGARD-CP-472).

use super::{
    GRAVITY,
    ode::{self, Point},
};

/// Headward dynamic response, in g, with at most 5 % of spinal injury: the criterion for ejection seats.
/// A judgement made with it is never mixed with [`VEHICLE_RESPONSE`].
pub const EJECTION_RESPONSE: f64 = 18.0;

/// Headward dynamic response, in g, with 10 % of spinal injury: the criterion for the floor of a vehicle
/// over a mine (STANAG 4569; read on a secondary page).
pub const VEHICLE_RESPONSE: f64 = 17.7;

/// The same criterion as the model's spring is pressed together, m (read on a secondary page, as about
/// 62 mm).
pub const VEHICLE_COMPRESSION: f64 = 0.062;

/// The way the body is accelerated, by the aviation sign rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// Pushed forward: pressed onto the back.
    Forward,
    /// Pushed backward: hung in the front of the harness, or landing face down.
    Backward,
    /// Pushed sideways.
    Sideways,
    /// Pushed headward: sitting or standing.
    Headward,
    /// Pushed footward: hung head down.
    Footward,
}

/// The model's constants for one axis.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Response {
    /// Natural frequency w, rad/s.
    pub frequency: f64,
    /// Damping share z.
    pub damping: f64,
    /// Limits of the response for low, medium and high risk, in g.
    pub limits: [f64; 3],
}

/// The constants of an axis. From memory, except the headward frequency and damping, which were read
/// in a public text.
pub fn response(axis: Axis) -> Response {
    let (frequency, damping, limits) = match axis {
        Axis::Forward => (62.8, 0.2, [35.0, 40.0, 46.0]),
        Axis::Backward => (60.8, 0.04, [28.0, 35.0, 46.0]),
        Axis::Sideways => (58.0, 0.07, [14.0, 17.0, 22.0]),
        Axis::Headward => (52.9, 0.224, [15.2, 18.0, 22.8]),
        Axis::Footward => (47.1, 0.24, [13.4, 16.5, 20.4]),
    };
    Response {
        frequency,
        damping,
        limits,
    }
}

/// Longest piece that is stepped over at once, in radians of the model's own swing: within it the response
/// turns once at most, or by so little more that three parts in ten thousand of the peak are not hidden.
const LONGEST_TURN: f64 = 0.2;

/// The dynamic response, in g, to an acceleration given in m/s2 as straight lines between samples
/// `(time, acceleration)`. Starts from rest and follows the body for two of its own periods after the
/// last sample, at that sample's value.
///
/// Each straight piece has an exact solution, and that is what is stepped through: no step control,
/// the same work for the same samples. Where the speed turns within a piece, the peak is found on it.
pub fn dynamic_response(axis: Axis, samples: &[(f64, f64)]) -> f64 {
    let constants = response(axis);
    let spring = Spring::new(constants.damping);
    let mut state = [0.0, 0.0];
    let mut peak = 0.0_f64;
    for pair in samples.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let span = (to.0 - from.0) * constants.frequency;
        if span <= 0.0 {
            continue;
        }
        let (pieces, turn) = if span <= LONGEST_TURN {
            (1, span)
        } else {
            let pieces = f64::ceil(span / LONGEST_TURN).min(MOST_PIECES);
            (pieces as usize, span / pieces)
        };
        let step = spring.step(turn);
        let slope = (to.1 - from.1) / span;
        for i in 0..pieces {
            let a = from.1 + slope * turn * i as f64;
            let next = step.from(state, a, slope);
            peak = peak.max(next[0].abs());
            let hidden = turn * state[1].abs().max(next[1].abs());
            if state[1] * next[1] < 0.0 && state[0].abs().max(next[0].abs()) + hidden > peak {
                let top = spring.turning_point(turn, (state, next), (a, slope));
                peak = peak.max(top.abs());
            }
            state = next;
        }
    }
    if let Some(&(_, value)) = samples.last() {
        peak = peak.max(spring.swings_out(state, value));
    }
    peak / GRAVITY
}

/// More than any samples ask for, so that nothing can run for ever.
const MOST_PIECES: f64 = 1e6;

/// Terms of the series of a step: the next would be a part in 1e9 of the first at the longest.
const TERMS: usize = 6;

/// The model in its own time, w t, and by w^2 times its place: y'' + 2 z y' + y = a. A state is that place and its speed,
/// both m/s2.
struct Spring {
    damping: f64,
    /// Coefficients of what a ramp of slope 1 comes to, from the third power on, by the recurrence that the
    /// equation gives; and of its rate.
    ramp: [[f64; 2]; TERMS],
}

impl Spring {
    fn new(damping: f64) -> Spring {
        let mut ramp = [[0.0; 2]; TERMS];
        let (mut before, mut last) = (0.0, 1.0 / 6.0);
        for (n, term) in (3..).zip(&mut ramp) {
            let n = f64::from(n);
            *term = [last, n * last];
            let next = -(2.0 * damping * n * last + before) / (n * (n + 1.0));
            (before, last) = (last, next);
        }
        Spring { damping, ramp }
    }

    /// What a step does.
    #[inline]
    fn step(&self, turn: f64) -> Step {
        let square = turn * turn;
        // In pairs of terms, which do not wait for each other.
        let sum = |part: usize| {
            let pair = |n: usize| self.ramp[n][part] + self.ramp[n + 1][part] * turn;
            pair(0) + square * (pair(2) + square * pair(4))
        };
        let (ramp, level) = (square * turn * sum(0), square * sum(1));
        // The rates follow from the equation itself.
        let kick = turn - 2.0 * self.damping * level - ramp;
        Step {
            ramp,
            level,
            kick,
            kept: 1.0 - 2.0 * self.damping * kick - level,
        }
    }

    /// The place within a piece where the speed turns: a secant and then Newton's method on the exact motion. At a
    /// turning point the place is flat, so that it is exact long before the time is.
    fn turning_point(
        &self,
        turn: f64,
        (from, to): ([f64; 2], [f64; 2]),
        (a, slope): (f64, f64),
    ) -> f64 {
        let mut into = turn * from[1] / (from[1] - to[1]);
        let mut place = from[0];
        for _ in 0..3 {
            let [y, speed] = self.step(into).from(from, a, slope);
            place = y;
            let change = a + slope * into - 2.0 * self.damping * speed - y;
            // What is left of the way to the top, which would be passed by half of speed times time.
            let more = -speed / change;
            if !more.is_finite() || (speed * more).abs() <= 1e-12 * y.abs() {
                break;
            }
            into = (into + more).clamp(1e-3 * turn, turn);
        }
        place
    }

    /// The furthest that the model swings from a state on under a steady acceleration, in its first two turns: all
    /// later ones are less.
    fn swings_out(&self, [y, speed]: [f64; 2], steady: f64) -> f64 {
        let z = self.damping;
        let damped = f64::sqrt(1.0 - z * z);
        let away = y - steady;
        let b = (speed + z * away) / damped;
        let turn = libm::atan2(speed, damped * away + z * b);
        let first = if turn > 0.0 {
            turn
        } else {
            turn + core::f64::consts::PI
        };
        let (sine, cosine) = libm::sincos(first);
        let out = libm::exp(-z * first / damped) * (away * cosine + b * sine);
        let back = -out * libm::exp(-z * core::f64::consts::PI / damped);
        (steady + out).abs().max((steady + back).abs())
    }
}

/// What a step comes to from rest at its end: under a ramp of slope 1, under a level input of 1, and after a kick to a
/// speed of 1, with the speed that is kept of it. Each is the rate of the one before.
struct Step {
    ramp: f64,
    level: f64,
    kick: f64,
    kept: f64,
}

impl Step {
    /// The state at its end, under an input that starts at `a` and changes by `slope`.
    #[inline]
    fn from(&self, [y, speed]: [f64; 2], a: f64, slope: f64) -> [f64; 2] {
        [
            y + (a - y) * self.level + speed * self.kick + slope * self.ramp,
            speed * self.kept + (a - y) * self.kick + slope * self.level,
        ]
    }
}

/// The response to a smooth acceleration given as a function, m/s2, over `duration`: by the ODE
/// solver, as an independent road to the same answer and for inputs that are not samples.
pub fn dynamic_response_of(
    axis: Axis,
    duration: f64,
    acceleration: impl Fn(f64) -> f64,
) -> Option<f64> {
    let constants = response(axis);
    let (w, z) = (constants.frequency, constants.damping);
    let mut peak = 0.0_f64;
    let accuracy = ode::Accuracy {
        longest_step: 0.02 / w,
        ..ode::FINE
    };
    ode::integrate(
        |t, y: &[f64; 2]| [y[1], acceleration(t) - 2.0 * z * w * y[1] - w * w * y[0]],
        Point {
            t: 0.0,
            y: [0.0, 0.0],
        },
        duration,
        accuracy,
        |_| 1.0,
        |point| peak = peak.max(point.y[0].abs()),
    )
    .point()?;
    Some(peak * w * w / GRAVITY)
}

/// Injury risk beta of responses along three axes against their limits; at most 1 is inside.
pub fn combined_risk(pairs: &[(f64, f64)]) -> f64 {
    let mut sum = 0.0;
    for (value, limit) in pairs {
        sum += (value / limit) * (value / limit);
    }
    f64::sqrt(sum)
}
