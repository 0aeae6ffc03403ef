//! A car braked straight and then slid on the hand brake, seen from above: Newton's second law for a rigid
//! car on two axles with Coulomb friction, as in the planar model of any vehicle dynamics text (for example
//! M. Abe, Vehicle Handling Dynamics, chapter 3). The front wheels roll and only push sideways; the rear
//! wheels are locked and rub against their motion. The weight on each axle stays as it stands: pitching and
//! leaning are left out.

use super::{
    GRAVITY,
    ode::{self, Accuracy, End, Point},
};

/// Deceleration of a straight stop, m/s2: friction, and what the road's rise adds (a fall is negative).
pub fn deceleration(friction: f64, rise: f64) -> f64 {
    GRAVITY * (friction * libm::cos(rise) + libm::sin(rise))
}

/// Distance in which a speed falls to a lower one; none when it does not fall.
pub fn braking_distance(from: f64, to: f64, deceleration: f64) -> Option<f64> {
    (deceleration > 0.0).then(|| (from * from - to * to).max(0.0) / (2.0 * deceleration))
}

/// Distance from a signal to a standstill, with the driver's reaction time.
pub fn stopping_distance(speed: f64, reaction: f64, deceleration: f64) -> Option<f64> {
    Some(speed * reaction + braking_distance(speed, 0.0, deceleration)?)
}

/// The AASHTO stopping sight distance, ft, of a speed in miles an hour: 1.47 V t + 1.075 V^2 / a with t 2.5 s
/// and a 11.2 ft/s2 (A Policy on Geometric Design of Highways and Streets, equation 3-2).
pub fn sight_distance_feet(miles_an_hour: f64) -> f64 {
    1.47 * miles_an_hour * 2.5 + 1.075 * miles_an_hour * miles_an_hour / 11.2
}

/// Static stability factor: the sideways pull in g at which a rigid car tips (NHTSA).
pub fn stability_factor(track: f64, height: f64) -> f64 {
    track / (2.0 * height)
}

/// A hand-brake slide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slide {
    /// Speed when the rear wheels lock, m/s.
    pub speed: f64,
    /// Angle of the car to its motion at that moment, rad.
    pub heading: f64,
    /// Steering of the front wheels during the slide, rad.
    pub steer: f64,
    /// Friction between tyres and ground.
    pub friction: f64,
    /// Rise of the road along the approach, rad.
    pub rise: f64,
    /// Between the axles, m.
    pub wheelbase: f64,
    /// Share of the weight on the front axle.
    pub front_share: f64,
    /// Radius of gyration in yaw, m.
    pub yaw_radius: f64,
}

/// Where the car comes to rest, from where its rear wheels locked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rest {
    /// Along the approach, m.
    pub along: f64,
    /// Aside, m.
    pub aside: f64,
    /// How far it has turned, rad.
    pub heading: f64,
    /// Time of the slide, s.
    pub time: f64,
    /// Highest turn rate, rad/s.
    pub turn_rate: f64,
}

/// A moment of a slide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time since the rear locked, s.
    pub time: f64,
    /// Along the approach, m.
    pub along: f64,
    /// Aside, m.
    pub aside: f64,
    /// Speed, m/s.
    pub speed: f64,
    /// How far it has turned, rad.
    pub heading: f64,
}

/// Slip at which a rolling tyre pushes sideways with most of its grip: about 7 degrees.
const FULL_SLIP: f64 = 0.12;
/// Below this speed friction fades, so that the stop is smooth, m/s.
const CREEP: f64 = 0.05;
/// Slower than this the car stands, m/s.
const STANDING: f64 = 0.1;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-4,
    absolute: 1e-5,
    longest_step: 0.5,
    looks: 2,
    most_steps: 4000,
};

/// Slides to rest; none when the road falls more steeply than friction holds.
pub fn slide(given: &Slide) -> Option<Rest> {
    slide_and_watch(given, |_| {})
}

/// As [`slide`], giving each step to `watch`.
pub fn slide_and_watch(given: &Slide, mut watch: impl FnMut(Moment)) -> Option<Rest> {
    let front_arm = given.wheelbase * (1.0 - given.front_share);
    let rear_arm = given.wheelbase * given.front_share;
    let grip = given.friction * GRAVITY * libm::cos(given.rise);
    let (front, rear) = (grip * given.front_share, grip * (1.0 - given.front_share));
    let inertia = given.yaw_radius * given.yaw_radius;
    let (steer_s, steer_c) = libm::sincos(given.steer);
    let downhill = GRAVITY * libm::sin(given.rise);
    let rate = |_: f64, y: &[f64; 6]| {
        let [_, _, vx, vy, heading, turn] = *y;
        let (s, c) = libm::sincos(heading);
        let (ws, wc) = (s * steer_c + c * steer_s, c * steer_c - s * steer_s);
        let (fx, fy) = (vx - turn * front_arm * s, vy + turn * front_arm * c);
        let (rx, ry) = (vx + turn * rear_arm * s, vy - turn * rear_arm * c);
        let across = fy * wc - fx * ws;
        let rolling = FULL_SLIP * (fx * wc + fy * ws);
        let push = -front * across / f64::sqrt(across * across + rolling * rolling + CREEP * CREEP);
        let rub = -rear / f64::sqrt(rx * rx + ry * ry + CREEP * CREEP);
        let (front_x, front_y) = (-push * ws, push * wc);
        let (rear_x, rear_y) = (rub * rx, rub * ry);
        let turning =
            front_arm * (front_y * c - front_x * s) - rear_arm * (rear_y * c - rear_x * s);
        [
            vx,
            vy,
            front_x + rear_x - downhill,
            front_y + rear_y,
            turn,
            turning / inertia,
        ]
    };
    let start = Point {
        t: 0.0,
        y: [0.0, 0.0, given.speed, 0.0, given.heading, 0.0],
    };
    let mut turn_rate = 0.0_f64;
    let end = ode::integrate(
        rate,
        start,
        60.0,
        ACCURACY,
        |point| {
            let [_, _, vx, vy, _, turn] = point.y;
            f64::sqrt(vx * vx + vy * vy + inertia * turn * turn) - STANDING
        },
        |point| {
            turn_rate = turn_rate.max(point.y[5].abs());
            watch(Moment {
                time: point.t,
                along: point.y[0],
                aside: point.y[1],
                speed: super::hypot(point.y[2], point.y[3]),
                heading: point.y[4],
            });
        },
    );
    match end {
        End::Event(point) => Some(Rest {
            along: point.y[0],
            aside: point.y[1],
            heading: point.y[4],
            time: point.t,
            turn_rate,
        }),
        _ => None,
    }
}

/// Half of what a car at an angle to the approach covers along it, m.
pub fn half_extent(length: f64, width: f64, heading: f64) -> f64 {
    0.5 * (length * libm::cos(heading).abs() + width * libm::sin(heading).abs())
}
