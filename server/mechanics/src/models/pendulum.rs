//! A person swinging on a line: the plain pendulum at any amplitude, with quadratic drag. Newton's
//! second law along the arc; the line's pull from the balance across it. Any text on mechanics.

use super::{
    GRAVITY,
    ode::{self, Accuracy, Point},
};

/// A pendulum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pendulum {
    /// Length from the pivot to the body's centre, m.
    pub length: f64,
    /// Angle from the vertical at release, rad.
    pub release_angle: f64,
    /// Mass, kg.
    pub mass: f64,
    /// Drag coefficient times area, m2.
    pub drag_area: f64,
    /// Air density, kg/m3.
    pub density: f64,
}

/// A moment of the swing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time since release, s.
    pub time: f64,
    /// Angle from the vertical, rad.
    pub angle: f64,
    /// Speed along the arc, m/s, signed like the angle.
    pub speed: f64,
    /// What the body feels along the line, m/s2: g cos(angle) + v^2 / L.
    pub felt: f64,
}

impl Pendulum {
    /// Period of small swings, s.
    pub fn small_period(&self) -> f64 {
        2.0 * core::f64::consts::PI * libm::sqrt(self.length / GRAVITY)
    }

    fn moment(&self, point: &Point<2>) -> Moment {
        let [angle, turning] = point.y;
        let speed = turning * self.length;
        Moment {
            time: point.t,
            angle,
            speed,
            felt: GRAVITY * libm::cos(angle) + turning * turning * self.length,
        }
    }

    /// Swings for `duration` seconds, giving each step to `observe`. False when the solver failed.
    pub fn swing(&self, duration: f64, observe: impl FnMut(Moment)) -> bool {
        self.swing_until(duration, f64::NEG_INFINITY, observe)
    }

    /// As [`Pendulum::swing`], but no further than to an angle that it falls to.
    pub fn swing_until(&self, duration: f64, angle: f64, mut observe: impl FnMut(Moment)) -> bool {
        let factor = 0.5 * self.density * self.drag_area * self.length / self.mass;
        let accuracy = Accuracy {
            relative: 1e-9,
            absolute: 1e-11,
            longest_step: self.small_period() / 60.0,
            most_steps: 50_000,
        };
        ode::integrate(
            |_, y: &[f64; 2]| {
                [
                    y[1],
                    -GRAVITY / self.length * libm::sin(y[0]) - factor * y[1] * y[1].abs(),
                ]
            },
            Point {
                t: 0.0,
                y: [self.release_angle, 0.0],
            },
            duration,
            accuracy,
            |point| point.y[0] - angle,
            |point| observe(self.moment(point)),
        )
        .point()
        .is_some()
    }
}
