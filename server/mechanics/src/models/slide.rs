//! A car braked straight and then slid on the hand brake, seen from above: Newton's second law for a rigid
//! car on two axles with Coulomb friction, as in the planar model of any vehicle dynamics text (for example
//! M. Abe, Vehicle Handling Dynamics, chapter 3). The front wheels roll and only push sideways; the rear
//! wheels are locked and rub against their motion. The weight on each axle stays as it stands: pitching and
//! leaning are left out.

use super::{
    GRAVITY,
    ode::{self, Accuracy, End, Motion, Point},
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
    /// Furthest along on the way there, m.
    pub furthest: f64,
    /// Aside, m.
    pub aside: f64,
    /// Furthest aside on the way there, either way, m.
    pub furthest_aside: f64,
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
/// From this speed on, turning counted in, the car is brought to rest as evenly as it slows down then, m/s: under
/// Coulomb friction its speeds all die at once and nearly evenly, and the front tyres' push would be followed in ever
/// shorter steps for some centimetres. Chosen here, as are the two numbers below.
const LAST: f64 = 0.3;
/// Where the locked wheels alone do not hold the car on the road's rise, with so much to spare, it might slide on from
/// there, however it lies.
const TO_SPARE: f64 = 1.2;
/// Such a car is followed until it is slower than this, and stands then, m/s.
const STANDING: f64 = 0.1;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-4,
    absolute: 1e-5,
    longest_step: 0.5,
    looks: 2,
    most_steps: 4000,
};

/// A slide on its way, and who watches it.
struct Sliding<'a> {
    given: Slide,
    front_arm: f64,
    rear_arm: f64,
    /// Most push of the front wheels and rub of the rear on a unit of mass, m/s2.
    front: f64,
    rear: f64,
    /// Radius of gyration squared, and one over it.
    inertia: f64,
    over_inertia: f64,
    /// Sine and cosine of the steering.
    steer: (f64, f64),
    downhill: f64,
    /// Whether the locked wheels alone hold the car.
    holds: bool,
    turn_rate: f64,
    furthest: f64,
    furthest_aside: f64,
    watch: Watch<'a>,
}

/// Who watches, if anybody.
type Watch<'a> = Option<&'a mut dyn FnMut(Moment)>;

impl<'a> Sliding<'a> {
    fn new(given: &Slide, watch: Watch<'a>) -> Sliding<'a> {
        let grip = given.friction * GRAVITY * libm::cos(given.rise);
        let rear = grip * (1.0 - given.front_share);
        let downhill = GRAVITY * libm::sin(given.rise);
        Sliding {
            given: *given,
            front_arm: given.wheelbase * (1.0 - given.front_share),
            rear_arm: given.wheelbase * given.front_share,
            front: grip * given.front_share,
            rear,
            inertia: given.yaw_radius * given.yaw_radius,
            over_inertia: 1.0 / (given.yaw_radius * given.yaw_radius),
            steer: libm::sincos(given.steer),
            downhill,
            holds: rear > TO_SPARE * downhill.abs(),
            turn_rate: 0.0,
            furthest: 0.0,
            furthest_aside: 0.0,
            watch,
        }
    }

    /// Where it begins, and when it is given up.
    fn from(&self) -> (Point<6>, f64) {
        let y = [0.0, 0.0, self.given.speed, 0.0, self.given.heading, 0.0];
        (Point { t: 0.0, y }, 60.0)
    }

    fn rest(&mut self, end: End<6>) -> Option<Rest> {
        let End::Event(slow) = end else {
            return None;
        };
        let last = if self.holds { self.slowed(&slow) } else { slow };
        if last.t > slow.t {
            self.observe(&last);
        }
        let [along, aside, _, _, heading, _] = last.y;
        Some(Rest {
            along,
            furthest: self.furthest,
            aside,
            furthest_aside: self.furthest_aside,
            heading,
            time: last.t,
            turn_rate: self.turn_rate,
        })
    }

    /// Where it comes to rest from a moment on, slowing down as evenly as it does then.
    fn slowed(&self, from: &Point<6>) -> Point<6> {
        let [along, aside, vx, vy, heading, turn] = from.y;
        let [_, _, ax, ay, _, turning] = self.rate(from.t, &from.y);
        let square = vx * vx + vy * vy + self.inertia * turn * turn;
        // Half of it falls by so much a second.
        let falls = -(vx * ax + vy * ay + self.inertia * turn * turning);
        let left = if falls > 0.0 { square / falls } else { 0.0 };
        let half = 0.5 * left;
        let (along, aside) = (along + half * vx, aside + half * vy);
        Point {
            t: from.t + left,
            y: [along, aside, 0.0, 0.0, heading + half * turn, 0.0],
        }
    }
}

impl Motion<6> for Sliding<'_> {
    fn rate(&self, _: f64, y: &[f64; 6]) -> [f64; 6] {
        let [_, _, vx, vy, heading, turn] = *y;
        let (front_arm, rear_arm) = (self.front_arm, self.rear_arm);
        let (steer_s, steer_c) = self.steer;
        let (s, c) = libm::sincos(heading);
        let (ws, wc) = (s * steer_c + c * steer_s, c * steer_c - s * steer_s);
        let (fx, fy) = (vx - turn * front_arm * s, vy + turn * front_arm * c);
        let (rx, ry) = (vx + turn * rear_arm * s, vy - turn * rear_arm * c);
        let across = fy * wc - fx * ws;
        let rolling = FULL_SLIP * (fx * wc + fy * ws);
        let push =
            -self.front * across / f64::sqrt(across * across + rolling * rolling + CREEP * CREEP);
        let rub = -self.rear / f64::sqrt(rx * rx + ry * ry + CREEP * CREEP);
        let (front_x, front_y) = (-push * ws, push * wc);
        let (rear_x, rear_y) = (rub * rx, rub * ry);
        // Across the car the front wheels' push is what steering leaves of it.
        let turning = front_arm * push * steer_c - rear_arm * rub * (ry * c - rx * s);
        [
            vx,
            vy,
            front_x + rear_x - self.downhill,
            front_y + rear_y,
            turn,
            turning * self.over_inertia,
        ]
    }

    fn event(&self, at: &Point<6>) -> f64 {
        let [_, _, vx, vy, _, turn] = at.y;
        f64::sqrt(vx * vx + vy * vy + self.inertia * turn * turn)
            - if self.holds { LAST } else { STANDING }
    }

    fn observe(&mut self, at: &Point<6>) {
        let [along, aside, vx, vy, heading, turn] = at.y;
        self.turn_rate = self.turn_rate.max(turn.abs());
        self.furthest = self.furthest.max(along);
        self.furthest_aside = self.furthest_aside.max(aside.abs());
        if let Some(watch) = &mut self.watch {
            watch(Moment {
                time: at.t,
                along,
                aside,
                speed: super::hypot(vx, vy),
                heading,
            });
        }
    }
}

/// Slides to rest; none when the road falls more steeply than friction holds.
pub fn slide(given: &Slide) -> Option<Rest> {
    slide_each(&mut [Sliding::new(given, None)]).pop()?
}

/// As [`slide`], giving each step to `watch`.
pub fn slide_and_watch(given: &Slide, mut watch: impl FnMut(Moment)) -> Option<Rest> {
    slide_each(&mut [Sliding::new(given, Some(&mut watch))]).pop()?
}

/// As [`slide`], for slides of any number.
pub fn slide_all(given: &[Slide]) -> Vec<Option<Rest>> {
    let mut all: Vec<_> = given
        .iter()
        .map(|given| Sliding::new(given, None))
        .collect();
    slide_each(&mut all)
}

fn slide_each(all: &mut [Sliding]) -> Vec<Option<Rest>> {
    let ends = ode::integrate_all(all, Sliding::from, ACCURACY);
    let rests = all.iter_mut().zip(ends);
    rests.map(|(sliding, end)| sliding.rest(end)).collect()
}

/// Half of what a car at an angle to the approach covers along it, m.
pub fn half_extent(length: f64, width: f64, heading: f64) -> f64 {
    0.5 * (length * libm::cos(heading).abs() + width * libm::sin(heading).abs())
}
