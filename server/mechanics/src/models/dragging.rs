//! A body drawn over the ground on a line: dry friction (Coulomb), a line that takes up slack, and the
//! heat of rubbing on a padding that the ground passes under.
//!
//! Taking up slack: m x'' + k x = F with x' = u at first, so the tension peaks at F + sqrt(F^2 + k m u^2)
//! (elementary mechanics; the rope equation with friction in the place of weight). Heat: a thick solid
//! under a steady flux q warms at its face by 2 q sqrt(t / pi) / e, e its effusivity (H. S. Carslaw and
//! J. C. Jaeger, Conduction of Heat in Solids, section 2.9).

use super::GRAVITY;

/// A pull.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pull {
    /// Mass drawn, kg.
    pub mass: f64,
    /// Friction of clothing on the ground.
    pub friction: f64,
    /// How hard the pull speeds up, m/s2.
    pub acceleration: f64,
    /// Stiffness of the line, N/m.
    pub stiffness: f64,
    /// Speed at which the line's end runs away when the slack is out, m/s.
    pub slack_speed: f64,
}

impl Pull {
    /// Friction on level ground, N.
    pub fn rubbing(&self) -> f64 {
        self.friction * self.mass * GRAVITY
    }

    /// Tension while speeding up, N.
    pub fn steady(&self) -> f64 {
        self.rubbing() + self.mass * self.acceleration
    }

    /// Tension when the slack has run out, N.
    pub fn peak(&self) -> f64 {
        let steady = self.steady();
        let slack = self.stiffness * self.mass * self.slack_speed * self.slack_speed;
        steady + f64::sqrt(steady * steady + slack)
    }

    /// Tension at a time after the slack is out, N; a line does not push.
    pub fn tension(&self, time: f64) -> f64 {
        let w = f64::sqrt(self.stiffness / self.mass);
        let speed = self.slack_speed * f64::sqrt(self.stiffness * self.mass);
        (self.steady() * (1.0 - libm::cos(w * time)) + speed * libm::sin(w * time)).max(0.0)
    }

    /// Time in which the line stretches and comes back, s.
    pub fn period(&self) -> f64 {
        2.0 * core::f64::consts::PI * f64::sqrt(self.mass / self.stiffness)
    }
}

/// Distance in which friction stops a body, m.
pub fn slide(speed: f64, friction: f64) -> f64 {
    speed * speed / (2.0 * friction * GRAVITY)
}

/// How much a steady flux warms the face of a thick solid, K.
pub fn face_rise(flux: f64, time: f64, effusivity: f64) -> f64 {
    2.0 * flux * f64::sqrt(time / core::f64::consts::PI) / effusivity
}
