//! A body thrown in a vertical plane, with quadratic drag and a steady wind along the plane: Newton's
//! second law with drag 1/2 rho CdA |u| u against the air, integrated by [`super::ode`].

use super::{
    GRAVITY,
    ode::{self, Accuracy, End, Point},
};

/// A throw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Throw {
    /// Speed at the start, m/s.
    pub speed: f64,
    /// Angle of the start above the horizontal, rad.
    pub angle: f64,
    /// Height of the start above the landing surface, m; negative where the body must rise to it.
    pub height: f64,
    /// Mass, kg.
    pub mass: f64,
    /// Drag coefficient times area, m2; 0 for no drag.
    pub drag_area: f64,
    /// Air density, kg/m3.
    pub density: f64,
    /// Wind along the throw, m/s, positive when it pushes forward.
    pub wind: f64,
}

/// Where and how a throw lands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Landing {
    /// Distance along, m.
    pub distance: f64,
    /// Time in the air, s.
    pub time: f64,
    /// Speed along, m/s.
    pub along: f64,
    /// Speed downward, m/s.
    pub down: f64,
    /// Highest point above the landing surface, m.
    pub apex: f64,
}

impl Landing {
    /// Speed at landing, m/s.
    pub fn speed(&self) -> f64 {
        libm::hypot(self.along, self.down)
    }
}

/// A point on the way: time, distance along, height above the landing surface, and the two speeds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Time, s.
    pub time: f64,
    /// Distance along, m.
    pub along: f64,
    /// Height above the landing surface, m.
    pub height: f64,
    /// Speed, m/s.
    pub speed: f64,
}

/// What is said of a throw that has no landing for that reason.
pub const NEVER_UP: &str = "The body does not rise to what it should land on: lower the landing, or throw it higher or steeper.";

/// Longer than any fall or throw of a person.
const LONGEST_FLIGHT: f64 = 120.0;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-9,
    absolute: 1e-10,
    longest_step: 0.25,
    most_steps: 20_000,
};

/// Flies until the landing surface; none when it is not reached within two minutes or lies above the top
/// of the flight.
pub fn fly(throw: &Throw) -> Option<Landing> {
    fly_and_sample(throw, |_| {})
}

/// As [`fly`], giving each step to `observe`.
pub fn fly_and_sample(throw: &Throw, observe: impl FnMut(Sample)) -> Option<Landing> {
    let rises = throw.speed * libm::sin(throw.angle) > 0.0;
    if throw.height < 0.0 && !rises {
        return None;
    }
    // A body whose top is still under the surface does not come down onto it.
    fly_over(throw, |_| 0.0, observe).filter(|landing| landing.apex >= 0.0)
}

/// As [`fly_and_sample`], onto ground whose height at each distance is given.
pub fn fly_over(
    throw: &Throw,
    ground: impl Fn(f64) -> f64,
    observe: impl FnMut(Sample),
) -> Option<Landing> {
    fly_until(throw, |point| over(point, &ground), observe)
}

/// As [`fly_and_sample`], until level ground or an upright plane this far along, whichever is met first.
pub fn fly_to_plane(throw: &Throw, plane: f64, observe: impl FnMut(Sample)) -> Option<Landing> {
    fly_until(
        throw,
        |point| over(point, &|_| 0.0).min(plane - point.y[0]),
        observe,
    )
}

/// What counts as the height over the ground while a body rises, m.
const RISING: f64 = 1.0;

/// Height over the ground. The start itself lies on the surface when the height is nothing and the throw
/// rises, so only a falling body can land.
fn over(point: &Point<4>, ground: &impl Fn(f64) -> f64) -> f64 {
    if point.y[3] > 0.0 {
        RISING
    } else {
        point.y[1] - ground(point.y[0]) + tiny(point)
    }
}

fn fly_until(
    throw: &Throw,
    event: impl Fn(&Point<4>) -> f64,
    mut observe: impl FnMut(Sample),
) -> Option<Landing> {
    let factor = 0.5 * throw.density * throw.drag_area / throw.mass;
    let rate = |_: f64, y: &[f64; 4]| {
        let (u, w) = (y[2] - throw.wind, y[3]);
        let drag = factor * libm::sqrt(u * u + w * w);
        [y[2], y[3], -drag * u, -GRAVITY - drag * w]
    };
    let start = Point {
        t: 0.0,
        y: [
            0.0,
            throw.height,
            throw.speed * libm::cos(throw.angle),
            throw.speed * libm::sin(throw.angle),
        ],
    };
    let mut apex = throw.height;
    let mut last = start;
    let end = ode::integrate(rate, start, LONGEST_FLIGHT, ACCURACY, event, |point| {
        apex = apex.max(apex_between(&last, point));
        last = *point;
        observe(Sample {
            time: point.t,
            along: point.y[0],
            height: point.y[1].max(0.0),
            speed: libm::hypot(point.y[2], point.y[3]),
        });
    });
    match end {
        End::Event(point) => Some(Landing {
            distance: point.y[0],
            time: point.t,
            along: point.y[2],
            down: -point.y[3],
            apex,
        }),
        _ => None,
    }
}

/// Lets a throw that starts level on the surface begin above zero, so that its fall is an event.
fn tiny(point: &Point<4>) -> f64 {
    if point.t == 0.0 { 1e-12 } else { 0.0 }
}

/// The highest point of a step, from the cubic through its ends; exact to the step's own accuracy
/// because the top is flat.
fn apex_between(from: &Point<4>, to: &Point<4>) -> f64 {
    let (rise, fall) = (from.y[3], to.y[3]);
    if rise > 0.0 && fall < 0.0 {
        let step = to.t - from.t;
        let share = rise / (rise - fall);
        let (s, r) = (share, 1.0 - share);
        // Cubic Hermite polynomial.
        from.y[1] * (1.0 + 2.0 * s) * r * r
            + rise * step * s * r * r
            + to.y[1] * s * s * (3.0 - 2.0 * s)
            - fall * step * s * s * r
    } else {
        from.y[1].max(to.y[1])
    }
}
