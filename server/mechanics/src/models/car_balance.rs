//! A loaded car as a body on four wheels: where its mass lies, what tips it, how it leans in a swerve, and what
//! each axle can brake. Quasi-static balances and one degree of freedom in roll, after T. D. Gillespie,
//! Fundamentals of Vehicle Dynamics (SAE 1992), chapters 1, 3 and 9. Tyres, springs and axles are taken alike on
//! both sides; pitch, yaw and the tyres' own give are left out.

use super::{
    GRAVITY,
    ode::{self, Accuracy, Point},
};

/// A mass and where it lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// kg.
    pub mass: f64,
    /// Height over the ground, m.
    pub height: f64,
    /// Forward of the rear axle, m.
    pub along: f64,
}

/// Two parts as one: their masses added, their middles weighed.
pub fn together(one: Part, other: Part) -> Part {
    let mass = one.mass + other.mass;
    Part {
        mass,
        height: (one.mass * one.height + other.mass * other.height) / mass,
        along: (one.mass * one.along + other.mass * other.along) / mass,
    }
}

/// Radius of gyration in roll about the common middle, m: the first part's own, and the height between the two
/// (the parallel axis theorem); the second part's own is left out, which makes the lean quicker.
pub fn roll_radius(one: Part, other: Part, own: f64) -> f64 {
    let mass = one.mass + other.mass;
    let apart = one.height - other.height;
    let share = one.mass * other.mass / (mass * mass);
    libm::sqrt(one.mass / mass * own * own + share * apart * apart)
}

/// Sideways pull, in g, that tips a car which leans on its springs: T / 2H for a rigid one, less because the
/// middle moves outward as it leans (Gillespie, equation 9-6).
pub fn tipping_pull(track: f64, height: f64, roll_centre: f64, lean_per_g: f64) -> f64 {
    track / (2.0 * (height + lean_per_g * (height - roll_centre)))
}

/// The same on a road that falls away outward by an angle; negative when it is banked inward.
pub fn on_bank(pull: f64, fall: f64) -> f64 {
    libm::tan(libm::atan(pull) - fall)
}

/// How a car leans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lean {
    /// Between the wheels of an axle, m.
    pub track: f64,
    /// Height of the axis it leans about, m.
    pub roll_centre: f64,
    /// Height of the middle over that axis, m.
    pub arm: f64,
    /// Lean under a steady sideways pull of 1 g, rad.
    pub per_g: f64,
    /// Radius of gyration in roll, m.
    pub radius: f64,
    /// Damping as a share of critical.
    pub damping: f64,
}

/// A moment of a swerve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// s.
    pub time: f64,
    /// Sideways pull, m/s2.
    pub pull: f64,
    /// Lean, rad.
    pub lean: f64,
    /// Share of the inner wheels' load that has gone to the outer ones: at 1 they lift.
    pub moved: f64,
}

impl Lean {
    /// Natural frequency in roll, rad/s: what the springs hold beyond the weight's own pull, over the inertia.
    pub fn frequency(&self) -> f64 {
        let inertia = self.radius * self.radius + self.arm * self.arm;
        libm::sqrt(GRAVITY * self.arm / (self.per_g * inertia))
    }

    /// Swerves aside and back: one whole sine of sideways pull over a time. Gives the largest share of load moved.
    pub fn swerve(&self, peak: f64, time: f64, mut observe: impl FnMut(Moment)) -> Option<f64> {
        use core::f64::consts::PI;
        let frequency = self.frequency();
        let turn = 2.0 * PI / time;
        let pull = |t: f64| {
            if t < time {
                peak * libm::sin(turn * t)
            } else {
                0.0
            }
        };
        // Moments that the springs and dampers hand to the wheels, over the weight.
        let spring = self.arm * (1.0 + 1.0 / self.per_g);
        let damper = 2.0 * self.damping * self.arm / (self.per_g * frequency);
        let mut most = 0.0_f64;
        let end = ode::integrate(
            |t, y: &[f64; 2]| {
                [
                    y[1],
                    frequency * frequency * (self.per_g * pull(t) / GRAVITY - y[0])
                        - 2.0 * self.damping * frequency * y[1],
                ]
            },
            Point {
                t: 0.0,
                y: [0.0, 0.0],
            },
            time + PI / frequency,
            Accuracy {
                relative: 1e-5,
                absolute: 1e-7,
                // Peaks are read at the steps: sixty to a swing miss no more than a thousandth; a long swerve
                // hardly swings.
                longest_step: (time.min(2.0 * PI / frequency) / 60.0).max(time / 1000.0),
                most_steps: 4000,
            },
            |_| 1.0,
            |point| {
                let pull = pull(point.t);
                let moment =
                    self.roll_centre * pull / GRAVITY + spring * point.y[0] + damper * point.y[1];
                let moved = 2.0 * moment / self.track;
                most = most.max(moved.abs());
                observe(Moment {
                    time: point.t,
                    pull,
                    lean: point.y[0],
                    moved,
                });
            },
        );
        end.point().map(|_| most)
    }
}

/// The pull that moves a car aside over a time in one whole sine, m/s2: y = A t^2 / 2 pi.
pub fn swerve_pull(aside: f64, time: f64) -> f64 {
    2.0 * core::f64::consts::PI * aside / (time * time)
}

/// Deceleration at which the first axle locks, m/s2, for a front share of weight and of braking (Gillespie,
/// chapter 3: load moves forward by a H / L). None when an axle carries nothing.
pub fn locking(
    friction: f64,
    front_share: f64,
    front_brake: f64,
    height: f64,
    wheelbase: f64,
) -> Option<f64> {
    if !(front_share > 0.0 && front_share < 1.0) {
        return None;
    }
    let shift = friction * height / wheelbase;
    let rear = friction * GRAVITY * (1.0 - front_share) / (1.0 - front_brake + shift);
    let left = front_brake - shift;
    // Where load arrives faster than braking, the front never locks.
    let front = if left > 0.0 {
        friction * GRAVITY * front_share / left
    } else {
        f64::INFINITY
    };
    Some(front.min(rear))
}

/// Road hidden in front of an eye by an edge ahead and below it, measured from under the eye, m: similar
/// triangles. None when the edge is not below the eye.
pub fn hidden_ahead(eye: f64, edge: f64, distance: f64) -> Option<f64> {
    (eye - edge > 1e-3).then(|| distance * eye / (eye - edge))
}

/// Load on the worst of `mounts` under a pull along a base, N: its share of the push, and of the weight and the
/// overturning on the loaded side (statics; the middle lies over the middle of the base).
pub fn mount_load(mass: f64, pull: f64, height: f64, base: f64, mounts: f64) -> f64 {
    let upright = 2.0 * (pull * height / base + 0.5 * GRAVITY);
    mass * libm::hypot(pull, upright) / mounts
}

/// The pull, m/s2, at which that load comes to a strength; nothing when the weight alone does.
pub fn mount_pull(mass: f64, strength: f64, height: f64, base: f64, mounts: f64) -> f64 {
    let slope = 2.0 * height / base;
    let most = strength * mounts / mass;
    let square = 1.0 + slope * slope;
    let half = slope * GRAVITY;
    let room = half * half - square * (GRAVITY * GRAVITY - most * most);
    if room <= 0.0 {
        return 0.0;
    }
    ((libm::sqrt(room) - half) / square).max(0.0)
}
