//! A body that falls into water: Newton's second law with the water's added mass, drag and lift, each
//! growing with the share of the body that is wet.
//!
//! d/dt [(m + M s) v] = m g - rho V g s - 1/2 rho CdA s v |v|, where s runs from 0 to 1 over the body's
//! length along the fall and M is the added mass of the whole body. While s grows the change of momentum
//! of the added mass is the slam (T. von Karman, NACA Technical Note 321, 1929; added masses of a rod
//! along and across, H. Lamb, Hydrodynamics, from memory). Drag coefficients are from memory. No air is
//! carried down and nobody swims: a body that spreads its arms stops sooner. So it is followed until it
//! stands still, and one that does not float never does.

use super::{
    GRAVITY,
    ode::{self, Accuracy, End, Point},
};

/// How a body meets the water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shape {
    /// Length along the fall, m.
    pub length: f64,
    /// Drag coefficient times area under water, m2.
    pub drag_area: f64,
    /// Added mass over the mass of the water that the body displaces.
    pub added: f64,
}

/// An entry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// Kitted mass, kg.
    pub mass: f64,
    /// Speed at the surface, m/s.
    pub speed: f64,
    /// Upward force on the whole body under water less its weight, N.
    pub float: f64,
    /// Density of the water, kg/m3.
    pub density: f64,
    /// The body.
    pub shape: Shape,
}

/// What becomes of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plunge {
    /// Greatest depth of the lowest point, m.
    pub depth: f64,
    /// Time to there, s.
    pub time: f64,
    /// Most felt, m/s2: the water's push over the body's mass.
    pub most_felt: f64,
}

/// How long a body that floats is followed, s. The last newton of float takes a quarter of a minute to turn
/// it; what takes longer has no depth to rely on.
const LONGEST: f64 = 60.0;
/// How long a body that sinks on is shown, s.
const SHOWN: f64 = 8.0;

/// Follows the body down, giving each step as time, depth, speed and what is felt. None when it sinks on.
pub fn plunge(entry: &Entry, mut observe: impl FnMut(f64, f64, f64, f64)) -> Option<Plunge> {
    let shape = entry.shape;
    let lift = entry.mass * GRAVITY + entry.float;
    let added = shape.added * lift / GRAVITY;
    let drag = 0.5 * entry.density * shape.drag_area;
    let accelerate = |y: &[f64; 2], slams: bool| {
        let [depth, speed] = *y;
        let wet = (depth / shape.length).clamp(0.0, 1.0);
        let slam = if slams && speed > 0.0 {
            added / shape.length * speed * speed
        } else {
            0.0
        };
        (entry.mass * GRAVITY - wet * (lift + drag * speed * speed.abs()) - slam)
            / (entry.mass + added * wet)
    };
    let mut most_felt = 0.0_f64;
    let mut seen = |point: &Point<2>, slams: bool| {
        let felt = GRAVITY - accelerate(&point.y, slams);
        most_felt = most_felt.max(felt);
        observe(point.t, point.y[0], point.y[1], felt);
    };
    let accuracy = Accuracy {
        relative: 1e-6,
        absolute: 1e-8,
        longest_step: (0.05 * shape.length / entry.speed.max(0.5)).min(0.02),
        most_steps: 20_000,
    };
    // Until it is wet all over, and after that: the two have different forces, so no step crosses over.
    let start = Point {
        t: 0.0,
        y: [0.0, entry.speed.max(1e-3)],
    };
    let End::Event(entered) = ode::integrate(
        |_, y| [y[1], accelerate(y, true)],
        start,
        LONGEST,
        accuracy,
        // A light body may stop before it is wet all over.
        |point| (shape.length - point.y[0]).min(point.y[1]),
        |point| seen(point, true),
    ) else {
        return None;
    };
    let mut end = entered;
    if entered.y[1] > 0.0 {
        let End::Event(turned) = ode::integrate(
            |_, y| [y[1], accelerate(y, false)],
            entered,
            if entry.float > 0.0 { LONGEST } else { SHOWN },
            Accuracy {
                longest_step: 0.1,
                ..accuracy
            },
            |point| point.y[1],
            |point| seen(point, false),
        ) else {
            return None;
        };
        end = turned;
    }
    Some(Plunge {
        depth: end.y[0],
        time: end.t,
        most_felt,
    })
}
