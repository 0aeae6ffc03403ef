//! The flight itself: up, swinging, down. What the body feels along its wires at each moment, and what
//! that makes the wires carry. Knows geometry and forces; no limits.

use crate::{
    models::{
        GRAVITY, atmosphere,
        pendulum::{Moment, Pendulum},
        wire,
    },
    reading::Values,
};

/// A part of the flight where the wires carry most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Place {
    LiftStart,
    SwingBottom,
    LoweringStop,
}

impl Place {
    pub(super) fn words(self) -> &'static str {
        match self {
            Place::LiftStart => "as the lift starts",
            Place::SwingBottom => "at the bottom of the swing",
            Place::LoweringStop => "as the lowering stops",
        }
    }
}

/// Where the wires carry most in planned flight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Worst {
    pub place: Place,
    pub time: f64,
    /// What the body feels along the wires, m/s2.
    pub felt: f64,
    /// Tension at the wire's most loaded end over tension at the body.
    pub sheave_gain: f64,
}

/// How a load divides between the two hip wires.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Shares {
    pub left: f64,
    pub right: f64,
    /// Angle of each wire from the vertical seen from the front, rad.
    pub lean: f64,
}

impl Shares {
    /// By moments about the picks; a wire cannot push, so the lighter side is never below nothing.
    pub(super) fn of(values: &Values) -> Option<Shares> {
        let width = values.number("hip_width")?;
        let aside = values.number("side_offset")?;
        let right = (0.5 + aside / width).clamp(0.0, 1.0);
        let length = values.number("wire_length")?;
        let spread = values.number("overhead_spread")?;
        // Wires that would have to lean past the horizontal are not a rig.
        let sine = (0.5 * (spread - width).abs() / length).min(0.98);
        Some(Shares {
            left: 1.0 - right,
            right,
            lean: libm::asin(sine),
        })
    }

    pub(super) fn heavier(&self) -> f64 {
        self.left.max(self.right)
    }

    /// Tensions of the left and right wire for a load along the middle of the two, N.
    pub(super) fn tensions(&self, load: f64) -> (f64, f64) {
        let stretch = load / libm::cos(self.lean);
        (self.left * stretch, self.right * stretch)
    }
}

/// The timing of a lift or a lowering: trapezoid, or triangle when the height is too small.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Ramp {
    /// Time of speeding up, and of slowing down, s.
    pub ramp: f64,
    /// Time at speed, s.
    pub cruise: f64,
    pub acceleration: f64,
}

impl Ramp {
    pub(super) fn of(values: &Values) -> Option<Ramp> {
        let height = values.number("lift_height")?;
        let speed = values.number("lift_speed")?;
        let acceleration = values.number("lift_acceleration")?;
        let reached = speed.min(f64::sqrt(height * acceleration));
        let ramp = reached / acceleration;
        let cruise = if reached > 0.0 {
            ((height - reached * ramp) / reached).max(0.0)
        } else {
            0.0
        };
        Some(Ramp {
            ramp,
            cruise,
            acceleration,
        })
    }

    pub(super) fn duration(&self) -> f64 {
        2.0 * self.ramp + self.cruise
    }
}

/// The swing as a pendulum about the line between the overhead points.
pub(super) fn pendulum(values: &Values) -> Option<Pendulum> {
    let shares = Shares::of(values)?;
    let length = values.number("wire_length")? * libm::cos(shares.lean)
        + values.number("balance_depth")?.max(0.0);
    Some(Pendulum {
        length,
        release_angle: values.number("swing_angle")?,
        mass: values.number("performer_mass")?,
        drag_area: values.number("drag_area")?,
        density: atmosphere::density(0.0),
    })
}

/// Out and back at the release angle, without drag: the arithmetic-geometric mean gives it exactly.
pub(super) fn period(pendulum: &Pendulum) -> f64 {
    let (mut a, mut b) = (1.0, libm::cos(0.5 * pendulum.release_angle));
    // Each round doubles the digits; eight are more than a double holds.
    for _ in 0..8 {
        (a, b) = (0.5 * (a + b), f64::sqrt(a * b));
    }
    pendulum.small_period() / a
}

/// The bottom of the first swing, where a swing loads most: drag only lowers the later ones.
pub(super) fn swing_bottom(pendulum: &Pendulum) -> Option<Moment> {
    if pendulum.release_angle <= 0.0 {
        return Some(Moment {
            time: 0.0,
            angle: 0.0,
            speed: 0.0,
            felt: GRAVITY,
        });
    }
    pendulum.most_felt()
}

/// Pull at the winch over pull at the body while lifting past the sheaves.
pub(super) fn sheave_gain(values: &Values) -> Option<f64> {
    Some(libm::pow(wire::SHEAVE_SHARE, -values.number("sheaves")?))
}

/// Where planned flight loads the wires most.
pub(super) fn worst(values: &Values) -> Option<Worst> {
    let bottom = swing_bottom(&pendulum(values)?)?;
    Some(most_loaded(&places(values, &bottom)?))
}

/// Where the wires carry most, counted at their most loaded end.
pub(super) fn most_loaded(places: &[Worst; 3]) -> Worst {
    most(places, |place| place.felt * place.sheave_gain)
}

/// Where the body feels most: what the sheaves take, it does not feel.
pub(super) fn most_felt(places: &[Worst; 3]) -> Worst {
    most(places, |place| place.felt)
}

fn most(places: &[Worst; 3], by: impl Fn(&Worst) -> f64) -> Worst {
    let mut most = places[0];
    for other in &places[1..] {
        if by(other) > by(&most) {
            most = *other;
        }
    }
    most
}

/// The places of planned flight where most can come on the wires, with the bottom of the swing.
pub(super) fn places(values: &Values, bottom: &Moment) -> Option<[Worst; 3]> {
    let ramp = Ramp::of(values)?;
    let gain = sheave_gain(values)?;
    let pendulum = pendulum(values)?;
    let swinging = swing_time(values, &pendulum)?;
    let moves = ramp.ramp > 0.0;
    let start = Worst {
        place: Place::LiftStart,
        time: 0.0,
        felt: GRAVITY + if moves { ramp.acceleration } else { 0.0 },
        sheave_gain: gain,
    };
    let swing = Worst {
        place: Place::SwingBottom,
        time: ramp.duration() + bottom.time,
        felt: bottom.felt,
        sheave_gain: 1.0,
    };
    let lowered = Worst {
        place: Place::LoweringStop,
        time: ramp.duration() + swinging + ramp.ramp + ramp.cruise,
        felt: start.felt,
        sheave_gain: 1.0,
    };
    Some([start, swing, lowered])
}

/// Seconds of swinging.
pub(super) fn swing_time(values: &Values, pendulum: &Pendulum) -> Option<f64> {
    if pendulum.release_angle <= 0.0 {
        return Some(0.0);
    }
    Some(values.number("swing_count")? * period(pendulum))
}

/// What the body feels from start to end, for plotting: time, felt, speed, sheave gain.
pub(super) fn course(values: &Values, mut observe: impl FnMut(f64, f64, f64, f64)) -> Option<()> {
    let ramp = Ramp::of(values)?;
    let gain = sheave_gain(values)?;
    let pendulum = pendulum(values)?;
    let reached = ramp.acceleration * ramp.ramp;
    let mut time = 0.0;
    // Each piece of steady acceleration needs only its two ends.
    let mut leg = |time: &mut f64, length: f64, felt: f64, speeds: (f64, f64), gain: f64| {
        if length > 0.0 {
            observe(*time, felt, speeds.0, gain);
            *time += length;
            observe(*time, felt, speeds.1, gain);
        }
    };
    let (up, down) = (
        GRAVITY + ramp.acceleration,
        (GRAVITY - ramp.acceleration).max(0.0),
    );
    leg(&mut time, ramp.ramp, up, (0.0, reached), gain);
    leg(&mut time, ramp.cruise, GRAVITY, (reached, reached), gain);
    leg(&mut time, ramp.ramp, down, (reached, 0.0), gain);
    let swinging = swing_time(values, &pendulum)?;
    if swinging > 0.0 {
        let start = time;
        pendulum.swing(swinging, |moment| {
            leg_point(
                &mut observe,
                start + moment.time,
                moment.felt,
                moment.speed.abs(),
            );
        });
        time = start + swinging;
    }
    let mut leg = |time: &mut f64, length: f64, felt: f64, speeds: (f64, f64)| {
        if length > 0.0 {
            observe(*time, felt, speeds.0, 1.0);
            *time += length;
            observe(*time, felt, speeds.1, 1.0);
        }
    };
    leg(&mut time, ramp.ramp, down, (0.0, reached));
    leg(&mut time, ramp.cruise, GRAVITY, (reached, reached));
    leg(&mut time, ramp.ramp, up, (reached, 0.0));
    Some(())
}

fn leg_point(observe: &mut impl FnMut(f64, f64, f64, f64), time: f64, felt: f64, speed: f64) {
    // On the way of a swing the wires run over no sheave.
    observe(time, felt.max(0.0), speed, 1.0);
}
