//! A body stopped over a distance: mean and peak from energy and the pulse's shape.
//!
//! For a pulse that is the same forward and backward in time, the body travels v T / 2 while its speed
//! goes from v to nothing in the time T. So T = 2 s / v and the mean deceleration is v^2 / (2 s) for
//! every such shape; shapes differ in their peak. Elementary mechanics.

use std::sync::OnceLock;

/// How the deceleration rises and falls in time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// Constant.
    Square,
    /// Half of a sine wave.
    HalfSine,
    /// One whole raised cosine.
    Haversine,
    /// Straight up, straight down.
    Triangle,
}

impl Shape {
    /// Peak over mean: 1, pi / 2, 2, 2.
    pub fn peak_factor(self) -> f64 {
        match self {
            Shape::Square => 1.0,
            Shape::HalfSine => core::f64::consts::FRAC_PI_2,
            Shape::Haversine | Shape::Triangle => 2.0,
        }
    }

    /// Deceleration over its mean at `share` of the pulse, from 0 to 1.
    pub fn at(self, share: f64) -> f64 {
        use core::f64::consts::PI;
        match self {
            Shape::Square => 1.0,
            Shape::HalfSine => self.peak_factor() * libm::sin(PI * share),
            Shape::Haversine => 1.0 - libm::cos(2.0 * PI * share),
            Shape::Triangle => 2.0 * (1.0 - (2.0 * share - 1.0).abs()),
        }
    }
}

/// A stop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stop {
    /// Mean deceleration, m/s2, without gravity.
    pub mean: f64,
    /// Peak deceleration, m/s2, without gravity.
    pub peak: f64,
    /// Time taken, s.
    pub time: f64,
}

/// Stops `speed` within `distance`.
pub fn stop(speed: f64, distance: f64, shape: Shape) -> Stop {
    let mean = speed * speed / (2.0 * distance);
    let time = if speed > 0.0 {
        2.0 * distance / speed
    } else {
        0.0
    };
    Stop {
        mean,
        peak: mean * shape.peak_factor(),
        time,
    }
}

/// The most points of a pulse that is kept.
const MOST_KEPT: usize = 128;

/// Pulses over their mean at even shares, by the shape and how many points: the same for every stop.
static PULSES: [[OnceLock<Vec<f64>>; MOST_KEPT]; 4] =
    [const { [const { OnceLock::new() }; MOST_KEPT] }; 4];

/// The pulse as samples `(time, acceleration)`, m/s2, with `offset` added (gravity, for what a body
/// feels), from 0 to the stop's time.
pub fn samples(stop: &Stop, shape: Shape, offset: f64, points: usize) -> Vec<(f64, f64)> {
    let share = |i: usize| i as f64 / (points - 1) as f64;
    let sample = |i: usize, over_mean: f64| (share(i) * stop.time, stop.mean * over_mean + offset);
    let mut all = Vec::with_capacity(points + 1);
    if let Some(kept) = PULSES[shape as usize].get(points) {
        let pulse = kept.get_or_init(|| (0..points).map(|i| shape.at(share(i))).collect());
        all.extend(pulse.iter().enumerate().map(|(i, over)| sample(i, *over)));
    } else {
        all.extend((0..points).map(|i| sample(i, shape.at(share(i)))));
    }
    all
}
