//! A car that leaves a one-sided ramp and rolls over sideways, seen from behind: a rigid outline of four corners in
//! its roll plane, which turns about a corner, flies, or strikes with the next one. Rigid-body mechanics; a strike
//! is plastic and does not slip, so that the turning about the struck corner is kept (as in G. W. Housner, The
//! behavior of inverted pendulum structures during earthquakes, 1963). Crush, bounce, slip along the ground and the
//! pull of the forward motion on the roll are left out.

use super::{
    GRAVITY,
    ode::{self, Accuracy, Point},
};
use core::f64::consts::FRAC_PI_2;

/// The car across.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outline {
    /// Between the wheels, m.
    pub track: f64,
    /// Width of the roof at its corners, m.
    pub roof_width: f64,
    /// Height of the roof over the ground, m.
    pub roof_height: f64,
    /// Height of the middle of the mass, m.
    pub middle: f64,
    /// Radius of gyration in roll, m.
    pub radius: f64,
}

/// Roll and motion in the roll plane; sideways is towards the side it rolls to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    /// s.
    pub time: f64,
    /// Rolled so far, rad.
    pub angle: f64,
    /// Roll rate, rad/s.
    pub rate: f64,
    /// Sideways place of the middle, m.
    pub aside: f64,
    /// Height of the middle, m.
    pub height: f64,
    /// Sideways speed, m/s.
    pub out: f64,
    /// Upward speed, m/s.
    pub up: f64,
}

impl State {
    /// The same after flying for a time.
    fn flown(&self, t: f64) -> State {
        State {
            time: self.time + t,
            angle: self.angle + self.rate * t,
            aside: self.aside + self.out * t,
            height: self.height + self.up * t - 0.5 * GRAVITY * t * t,
            up: self.up - GRAVITY * t,
            ..*self
        }
    }
}

/// A corner striking the ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strike {
    /// Which, counted on through whole turns.
    pub corner: i32,
    /// Before it.
    pub before: State,
    /// After it.
    pub after: State,
}

impl Strike {
    /// Whether a corner of the roof struck.
    pub fn is_roof(&self) -> bool {
        self.corner.rem_euclid(4) >= 2
    }

    /// Change of velocity of a point that is carried by the car, m/s, in the car's own frame: sideways and headward.
    /// The point is given in that frame from the middle.
    pub fn change(&self, aside: f64, above: f64) -> (f64, f64) {
        let (s, c) = (libm::sin(self.before.angle), libm::cos(self.before.angle));
        let (y, z) = (aside * c + above * s, above * c - aside * s);
        let turned = self.after.rate - self.before.rate;
        let out = self.after.out - self.before.out + turned * z;
        let up = self.after.up - self.before.up - turned * y;
        (out * c - up * s, out * s + up * c)
    }
}

/// How a roll went.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Tumble {
    /// Quarter turns until it lies.
    pub quarters: i32,
    /// Time in the air, all flights together, s.
    pub air: f64,
    /// First time that the body and not a wheel of the start is on the ground, s.
    pub lands: f64,
    /// Turned by then, rad.
    pub landing_angle: f64,
    /// Time until it lies, s.
    pub time: f64,
    /// Sideways place of the middle at the end, m.
    pub aside: f64,
    /// Highest place of the middle, m.
    pub highest: f64,
    /// Highest roll rate, rad/s.
    pub fastest: f64,
}

/// More strikes than any car of these ranges has before it lies.
const MOST_PHASES: usize = 80;
/// Step in which a flight is looked through for its end, s.
const FLIGHT_STEP: f64 = 0.01;
/// Longer than any flight, s.
const LONGEST_FLIGHT: f64 = 6.0;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-5,
    absolute: 1e-7,
    longest_step: 0.1,
    looks: 1,
    most_steps: 2000,
};

impl Outline {
    fn corner(&self, index: i32) -> (f64, f64) {
        let up = self.roof_height - self.middle;
        match index.rem_euclid(4) {
            0 => (-0.5 * self.track, -self.middle),
            1 => (0.5 * self.track, -self.middle),
            2 => (0.5 * self.roof_width, up),
            _ => (-0.5 * self.roof_width, up),
        }
    }

    /// A corner from the middle, turned with the car: sideways and up.
    fn place(&self, index: i32, angle: f64) -> (f64, f64) {
        let (y, z) = self.corner(index);
        let (s, c) = (libm::sin(angle), libm::cos(angle));
        (y * c + z * s, z * c - y * s)
    }

    /// Which corner is lowest, counted on through whole turns: 1 is the wheels it goes over first.
    fn lowest(&self, angle: f64) -> (i32, f64) {
        let (mut best, mut low) = (0, f64::INFINITY);
        for index in 0..4 {
            let (_, z) = self.place(index, angle);
            if z < low {
                (best, low) = (index, z);
            }
        }
        let whole = f64::round((angle / FRAC_PI_2 - f64::from(best) + 0.5) / 4.0);
        (best + 4 * whole as i32, low)
    }

    /// The way once round its corners, m: what it covers in a turn that it rolls.
    pub fn around(&self) -> f64 {
        let side = super::hypot(0.5 * (self.track - self.roof_width), self.roof_height);
        self.track + self.roof_width + 2.0 * side
    }

    /// Square of the radius of gyration about a corner.
    fn about(&self, (y, z): (f64, f64)) -> f64 {
        self.radius * self.radius + y * y + z * z
    }

    /// On the ramp's end: rolled by an angle about the wheels on the ground, at a rate.
    pub fn on_ramp(&self, angle: f64, rate: f64) -> State {
        let p = self.place(1, angle);
        State {
            time: 0.0,
            angle,
            rate,
            aside: 0.5 * self.track - p.0,
            height: -p.1,
            out: -rate * p.1,
            up: rate * p.0,
        }
    }

    /// Energy of the turning about the wheels over what it takes to stand on them, from the ramp's end.
    pub fn over(&self, start: &State) -> f64 {
        let p = self.place(1, start.angle);
        let turning = 0.5 * self.about(p) * start.rate * start.rate;
        let rise = GRAVITY * (super::hypot(p.0, p.1) - start.height).max(0.0);
        // Past the balance nothing more is needed.
        if p.0 <= 0.0 || rise <= 1e-9 {
            1e3
        } else {
            (turning / rise).min(1e3)
        }
    }

    /// Rolls until it lies. `strikes` gets every strike, `watch` every step.
    pub fn roll(
        &self,
        start: State,
        mut strikes: impl FnMut(&Strike),
        mut watch: impl FnMut(&State),
    ) -> Option<Tumble> {
        let mut now = start;
        let mut told = Tumble {
            highest: start.height,
            fastest: start.rate,
            ..Tumble::default()
        };
        let mut landed = false;
        // Wheels that are on the ground and do not rise turn about it, whether or not they press on it for long.
        let foot = self.place(1, start.angle);
        let down = start.height + foot.1 <= 1e-9 && start.up <= start.rate * foot.0 + 1e-9;
        let mut on = down.then(|| {
            self.strike(1, &mut now);
            1
        });
        watch(&now);
        for _ in 0..MOST_PHASES {
            let next = match on {
                Some(corner) if self.presses(corner, &now) || !self.clears(&now) => {
                    let mut turned = self.turn(corner, false, &mut now, &mut told, &mut watch)?;
                    if turned == Turned::Lifts && !self.clears(&now) {
                        turned = self.turn(corner, true, &mut now, &mut told, &mut watch)?;
                    }
                    match turned {
                        Turned::Back => {
                            strikes(&self.falls_back(corner, &now));
                            told.quarters = corner - 1;
                            return Some(self.at_rest(told, &now, landed));
                        }
                        Turned::Lifts => None,
                        Turned::Next => Some(corner + 1),
                    }
                }
                _ => None,
            };
            let struck = match next {
                Some(corner) => corner,
                None => self.fly(&mut now, &mut told, &mut watch)?,
            };
            let before = now;
            self.strike(struck, &mut now);
            strikes(&Strike {
                corner: struck,
                before,
                after: now,
            });
            watch(&now);
            if struck >= 2 && !landed {
                landed = true;
                told.lands = now.time;
                told.landing_angle = now.angle;
            }
            if now.rate <= 1e-6 {
                // Thrown back by the strike: it lies on the side that it came from.
                strikes(&self.falls_back(struck, &now));
                told.quarters = struck - 1;
                return Some(self.at_rest(told, &now, landed));
            }
            on = Some(struck);
        }
        None
    }

    /// Falling back about a corner until the one before it strikes, with all the energy of the fall.
    fn falls_back(&self, corner: i32, now: &State) -> Strike {
        let (from, to) = (self.corner(corner - 1), self.corner(corner));
        let level = libm::atan2(to.1 - from.1, to.0 - from.0);
        let whole = 4.0 * FRAC_PI_2;
        let angle = level + whole * f64::round((now.angle - level) / whole);
        let p = self.place(corner, angle);
        let fallen = 2.0 * GRAVITY * (now.height + p.1).max(0.0) / self.about(p);
        let rate = -f64::sqrt(now.rate * now.rate + fallen);
        let before = State {
            angle,
            rate,
            aside: now.aside + self.place(corner, now.angle).0 - p.0,
            height: -p.1,
            out: -rate * p.1,
            up: rate * p.0,
            ..*now
        };
        let mut after = before;
        self.strike(corner - 1, &mut after);
        Strike {
            corner: corner - 1,
            before,
            after,
        }
    }

    fn at_rest(&self, mut told: Tumble, now: &State, landed: bool) -> Tumble {
        told.time = now.time;
        told.aside = now.aside;
        if !landed {
            told.lands = now.time;
            told.landing_angle = now.angle;
        }
        told
    }

    /// How a corner in free flight would be drawn to the ground, m/s2: at nothing it comes clear. (It may slip a
    /// little before, which is left out.)
    fn press(&self, (_, z): (f64, f64), rate: f64) -> f64 {
        GRAVITY + rate * rate * z
    }

    fn presses(&self, corner: i32, now: &State) -> bool {
        self.press(self.place(corner, now.angle), now.rate) > 0.0
    }

    /// Turns about a corner until it falls back, lifts, or the next corner is down. Held, it does not lift.
    fn turn(
        &self,
        corner: i32,
        held: bool,
        now: &mut State,
        told: &mut Tumble,
        watch: &mut impl FnMut(&State),
    ) -> Option<Turned> {
        let foot = now.aside + self.place(corner, now.angle).0;
        let at = |time: f64, y: &[f64; 2]| {
            let p = self.place(corner, y[0]);
            State {
                time,
                angle: y[0],
                rate: y[1],
                aside: foot - p.0,
                height: -p.1,
                out: -y[1] * p.1,
                up: y[1] * p.0,
            }
        };
        let left = |y: &[f64; 2]| {
            let here = self.place(corner, y[0]);
            let gap = self.place(corner + 1, y[0]).1 - here.1;
            let press = if held {
                f64::INFINITY
            } else {
                self.press(here, y[1])
            };
            [gap, y[1], press]
        };
        let start = Point {
            t: now.time,
            y: [now.angle, now.rate],
        };
        let [gap, _, press] = left(&start.y);
        if gap <= 1e-9 {
            return Some(Turned::Next);
        }
        if press <= 0.0 {
            return Some(Turned::Lifts);
        }
        let end = ode::integrate(
            |_, y: &[f64; 2]| {
                let p = self.place(corner, y[0]);
                [y[1], -GRAVITY * p.0 / self.about(p)]
            },
            start,
            now.time + 20.0,
            ACCURACY,
            |point| left(&point.y).into_iter().fold(f64::INFINITY, f64::min),
            |point| {
                let state = at(point.t, &point.y);
                told.highest = told.highest.max(state.height);
                told.fastest = told.fastest.max(state.rate);
                watch(&state);
            },
        )
        .point()?;
        *now = at(end.t, &end.y);
        let [gap, rate, press] = left(&end.y);
        // Balanced on a corner to the end of the time, it is taken to fall back.
        Some(if gap <= rate && gap <= press {
            Turned::Next
        } else if press <= rate {
            Turned::Lifts
        } else {
            Turned::Back
        })
    }

    /// Height of the lowest corner after flying for a time.
    fn clear(&self, start: &State, time: f64) -> f64 {
        let state = start.flown(time);
        state.height + self.lowest(state.angle).1
    }

    /// Whether what no longer presses also comes clear of the ground: near the next corner it does not.
    fn clears(&self, now: &State) -> bool {
        self.clear(now, FLIGHT_STEP) > 0.0
    }

    /// Flies until a corner is down, and says which.
    fn fly(
        &self,
        now: &mut State,
        told: &mut Tumble,
        watch: &mut impl FnMut(&State),
    ) -> Option<i32> {
        let start = *now;
        let clear = |t: f64| self.clear(&start, t);
        told.highest = told
            .highest
            .max(start.height + 0.5 * start.up.max(0.0) * start.up / GRAVITY);
        let mut from = 0.0;
        let mut to = FLIGHT_STEP;
        while clear(to) > 0.0 {
            watch(&start.flown(to));
            from = to;
            to += FLIGHT_STEP;
            if to > LONGEST_FLIGHT {
                return None;
            }
        }
        for _ in 0..40 {
            let middle = 0.5 * (from + to);
            if clear(middle) > 0.0 {
                from = middle;
            } else {
                to = middle;
            }
        }
        *now = start.flown(to);
        told.air += to;
        Some(self.lowest(now.angle).0)
    }

    /// The struck corner stops; what turned about it goes on turning.
    fn strike(&self, corner: i32, now: &mut State) {
        let p = self.place(corner, now.angle);
        let kept = self.radius * self.radius * now.rate - p.1 * now.out + p.0 * now.up;
        now.rate = kept / self.about(p);
        now.out = -now.rate * p.1;
        now.up = now.rate * p.0;
    }
}

#[derive(PartialEq)]
enum Turned {
    Back,
    Lifts,
    Next,
}
