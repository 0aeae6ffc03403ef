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
    let (w, z) = (constants.frequency, constants.damping);
    let mut state = [0.0, 0.0];
    let mut peak = 0.0_f64;
    let longest = LONGEST_TURN / w;
    // Even samples share one step's sines and exponentials.
    let mut known: Option<Even> = None;
    let mut last_step = 0.0;
    for pair in samples.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let span = to.0 - from.0;
        if span <= 0.0 {
            continue;
        }
        let pieces = if span <= longest {
            1.0
        } else {
            f64::ceil(span / longest).min(20_000.0)
        };
        let step = span / pieces;
        let near = |other: f64| (other - step).abs() <= 1e-12 * step;
        let even = match known {
            Some(one) if near(one.step) => Some(one),
            // One that comes alone is not worth its eight numbers.
            _ if pieces > 1.0 || near(last_step) => Some(Even::new(w, z, step)),
            _ => None,
        };
        last_step = step;
        known = even.or(known);
        let rise = (to.1 - from.1) / pieces;
        for i in 0..pieces as usize {
            let a = from.1 + rise * i as f64;
            let next = match &even {
                Some(even) => even.piece(state, a, rise),
                None => Advance::new(w, z, step).piece(state, a, a + rise),
            };
            peak = peak.max(next[0].abs());
            let hidden = step * state[1].abs().max(next[1].abs());
            if state[1] * next[1] < 0.0 && state[0].abs().max(next[0].abs()) + hidden > peak {
                peak = peak.max(turning_point(w, z, step, (state, next), (a, rise)).abs());
            }
            state = next;
        }
    }
    if let Some(&(_, value)) = samples.last() {
        peak = peak.max(swings_out(w, z, state, value));
    }
    peak * w * w / GRAVITY
}

/// The place within a piece where the speed turns: a secant and then Newton's method on the exact motion. At a
/// turning point the place is flat, so that it is exact long before the time is.
fn turning_point(
    w: f64,
    z: f64,
    step: f64,
    (from, to): ([f64; 2], [f64; 2]),
    (a, rise): (f64, f64),
) -> f64 {
    let mut time = step * from[1] / (from[1] - to[1]);
    let mut place = from[0];
    for _ in 0..3 {
        let now = a + rise * time / step;
        let [x, v] = Advance::new(w, z, time).piece(from, a, now);
        place = x;
        let slope = now - 2.0 * z * w * v - w * w * x;
        // What is left of the way to the top, which would be passed by half of speed times time.
        let more = -v / slope;
        if !more.is_finite() || (v * more).abs() <= 1e-12 * x.abs() {
            break;
        }
        time = (time + more).clamp(1e-3 * step, step);
    }
    place
}

/// The furthest that the model swings from a state on under a steady acceleration, in its first two turns: all
/// later ones are less.
fn swings_out(w: f64, z: f64, [x, v]: [f64; 2], steady: f64) -> f64 {
    let damped = w * f64::sqrt(1.0 - z * z);
    let rest = steady / (w * w);
    let x0 = x - rest;
    let b = (v + z * w * x0) / damped;
    let turn = libm::atan2(v, damped * x0 + z * w * b);
    let first = if turn > 0.0 {
        turn
    } else {
        turn + core::f64::consts::PI
    };
    let (sine, cosine) = libm::sincos(first);
    let away = libm::exp(-z * w * first / damped) * (x0 * cosine + b * sine);
    let back = -away * libm::exp(-z * w * core::f64::consts::PI / damped);
    (rest + away).abs().max((rest + back).abs())
}

/// What one step of a length does, linear in each of: the state, an even input of 1, and a ramp from 0 to 1.
#[derive(Clone, Copy)]
struct Even {
    step: f64,
    free: [[f64; 2]; 2],
    level: [f64; 2],
    ramp: [f64; 2],
}

impl Even {
    fn new(w: f64, z: f64, step: f64) -> Even {
        let one = Advance::new(w, z, step);
        Even {
            step,
            free: [[1.0, 0.0], [0.0, 1.0]].map(|state| one.piece(state, 0.0, 0.0)),
            level: one.piece([0.0, 0.0], 1.0, 1.0),
            ramp: one.piece([0.0, 0.0], 0.0, 1.0),
        }
    }

    fn piece(&self, [x, v]: [f64; 2], from: f64, rise: f64) -> [f64; 2] {
        let part = |i: usize| {
            (self.free[0][i] * x + self.free[1][i] * v)
                + (self.level[i] * from + self.ramp[i] * rise)
        };
        [part(0), part(1)]
    }
}

/// One exact step of the damped oscillator under a straight-line input.
#[derive(Clone, Copy)]
struct Advance {
    w: f64,
    z: f64,
    step: f64,
    damped: f64,
    decay: f64,
    sine: f64,
    cosine: f64,
}

impl Advance {
    fn new(w: f64, z: f64, step: f64) -> Advance {
        let damped = w * f64::sqrt(1.0 - z * z);
        Advance {
            w,
            z,
            step,
            damped,
            decay: libm::exp(-z * w * step),
            sine: libm::sin(damped * step),
            cosine: libm::cos(damped * step),
        }
    }

    fn piece(&self, [x, v]: [f64; 2], from: f64, to: f64) -> [f64; 2] {
        let (w, z) = (self.w, self.z);
        let slope = (to - from) / self.step;
        // The particular solution p + q t of a ramp, then the free motion of what is left.
        let q = slope / (w * w);
        let p = from / (w * w) - 2.0 * z * slope / (w * w * w);
        let (x0, v0) = (x - p, v - q);
        let b = (v0 + z * w * x0) / self.damped;
        let free = self.decay * (x0 * self.cosine + b * self.sine);
        let speed = self.decay
            * ((b * self.damped - z * w * x0) * self.cosine
                - (x0 * self.damped + z * w * b) * self.sine);
        [free + p + q * self.step, speed + q]
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
