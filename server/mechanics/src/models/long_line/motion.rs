//! How a load on a long line moves while line is paid out.
//!
//! Taut, the stretch is a swing that changes slowly ([`slow_swing`]), taken a good part of a swing at a time; where the
//! line goes slack, which bends the motion, by Runge-Kutta until it is taut again.

use core::f64::consts::PI;

use super::{Even, LongLine, Moment, Piece};
use crate::models::{
    GRAVITY,
    ode::{self, Accuracy, Point},
    slow_swing::{self, State, Swing, Within},
};

/// A load that swings by no more than this under a steady acceleration is taken to hang still, m/s2. Chosen here, as is
/// every number of this solver: half a thousandth of gravity.
const STILL: f64 = 5e-3;
/// Looks at a load from there on.
const SETTLED_LOOKS: u32 = 8;

/// How close looks are at a taut line's swing, as an angle of the swing: enough for its peaks, which are looked at
/// beside. What is felt comes out within a thousandth of its swing, and the pull of a heavy and much damped line, which
/// grows as it is paid out, within two.
pub const FOR_PEAKS: f64 = 0.42 * PI;
/// Enough to draw it.
pub const FOR_PLOTS: f64 = 0.1 * PI;

/// Looks may be so much wider where the load swings by less than [`SMALL`]: what lies within a step is some thirty times
/// as far out then, as a share of a swing that is at most a thirtieth of gravity.
const WIDER: f64 = 1.75;
/// A small swing, m/s2.
const SMALL: f64 = 0.3;

/// The most of its length that is paid out in a step.
const MOST_CHANGE: f64 = 0.1;
/// Steps on a taut line after which to give up, so that nothing can run for ever: a light load on a long stiff line that
/// is not damped swings some ten thousand times.
const MOST_STEPS: usize = 200_000;
/// The same where steps are tried, and for how often a line may go slack.
const MOST_TRIED: usize = 20_000;

impl LongLine {
    /// Follows the load from an even motion through the pieces, with looks so close. None when the solver failed.
    pub fn follow(
        &self,
        start: Even,
        pieces: &[Piece],
        closeness: f64,
        mut observe: impl FnMut(Moment),
    ) -> Option<()> {
        let paid = (start.length, start.speed);
        let stretch = self.even(start);
        self.follow_on(0.0, paid, stretch, pieces, closeness, &mut observe)
    }

    /// Follows the load on from a moment of a motion, its bounce kept. None when the solver failed.
    pub fn follow_from(
        &self,
        moment: &Moment,
        pieces: &[Piece],
        closeness: f64,
        mut observe: impl FnMut(Moment),
    ) -> Option<()> {
        let stretch = [
            moment.depth - moment.length,
            moment.speed - moment.pay_speed,
        ];
        let paid = (moment.length, moment.pay_speed);
        self.follow_on(moment.time, paid, stretch, pieces, closeness, &mut observe)
    }

    /// From a time on, with the line paid out and how fast, and the stretch and how fast that grows.
    fn follow_on(
        &self,
        mut time: f64,
        (mut length, mut speed): (f64, f64),
        mut stretch: [f64; 2],
        pieces: &[Piece],
        closeness: f64,
        observe: &mut dyn FnMut(Moment),
    ) -> Option<()> {
        for piece in pieces {
            if piece.duration <= 0.0 {
                continue;
            }
            let paying = Paying {
                length,
                speed,
                acceleration: piece.from,
                slope: (piece.to - piece.from) / piece.duration,
            };
            let mut look = |t: f64, at: &At| {
                observe(self.moment(time + t, &at.paid, &at.state));
            };
            stretch = self.piece(&paying, stretch, piece.duration, closeness, &mut look)?;
            let paid = paying.at(piece.duration);
            (length, speed) = (paid.length, paid.speed);
            time += piece.duration;
        }
        Some(())
    }

    /// Follows the stretch and its rate through a piece, whether the line is taut or slack, to its end.
    fn piece(
        &self,
        paying: &Paying,
        stretch: [f64; 2],
        duration: f64,
        closeness: f64,
        look: &mut dyn FnMut(f64, &At),
    ) -> Option<[f64; 2]> {
        let mut now = Point { t: 0.0, y: stretch };
        for _ in 0..MOST_TRIED {
            match self.taut(paying, now, duration, closeness, look) {
                Taut::Throughout(end) => return Some(end),
                Taut::Failed => return None,
                Taut::Settled(since) => {
                    for share in 1..=SETTLED_LOOKS {
                        let share = f64::from(share) / f64::from(SETTLED_LOOKS);
                        let time = (since + share * (duration - since)).min(duration);
                        let paid = paying.at(time);
                        look(time, &self.at(paid, self.even(paid)));
                    }
                    return Some(self.even(paying.at(duration)));
                }
                Taut::Until(point) => {
                    now = self.slack(paying, point, duration, look)?;
                }
            }
            if now.t >= duration {
                return Some(now.y);
            }
        }
        None
    }

    /// Follows the swing of a line that stays taut, from a point until a time of the piece.
    fn taut(
        &self,
        paying: &Paying,
        from: Point<2>,
        until: f64,
        closeness: f64,
        look: &mut dyn FnMut(f64, &At),
    ) -> Taut {
        let mut now = self.at(paying.at(from.t), from.y);
        let (mut t, mut angle) = (from.t, closeness);
        for _ in 0..MOST_STEPS {
            let here = Point {
                t,
                y: [now.state[0], now.state[1]],
            };
            if now.is_slack() {
                return Taut::Until(here);
            }
            look(t, &now);
            let left = until - t;
            if left <= 0.0 {
                return Taut::Throughout(here.y);
            }
            let usual = now.step(angle);
            let last = usual >= left;
            let (step, next_time) = if last {
                (left, until)
            } else {
                (usual, t + usual)
            };
            let [first, second] = slow_swing::MOMENTS;
            let first = self.swing(&paying.at(t + first * step));
            let second = self.swing(&paying.at(t + second * step));
            let Some(moved) = slow_swing::step(&first, &second, step, here.y) else {
                return Taut::Until(here);
            };
            angle = if moved.swing < SMALL * SMALL {
                WIDER * closeness
            } else {
                closeness
            };
            let next = self.at(paying.at(next_time), moved.to);
            if next.is_slack() {
                return Taut::Until(here);
            }
            let within = Within::new(&now.state, &next.state, step);
            if !self.look_inside(paying, [t, next_time], [&now, &next], &within, look) {
                return Taut::Until(here);
            }
            if paying.slope == 0.0 && moved.swing < STILL * STILL {
                return Taut::Settled(next_time);
            }
            (t, now) = (next_time, next);
        }
        Taut::Failed
    }

    /// Looks at where a step from `t` turns. False where the line is slack there.
    fn look_inside(
        &self,
        paying: &Paying,
        [t, next_time]: [f64; 2],
        [now, next]: [&At; 2],
        within: &Within,
        look: &mut dyn FnMut(f64, &At),
    ) -> bool {
        let felt = within.turn(paying.slope);
        // While paying out changes, the line's own weight has the pull turn at another time than what the load feels.
        let pulled = if paying.slope == 0.0 {
            None
        } else {
            within.turn(paying.slope * self.weighed(now.paid.length))
        };
        let speeds = [now, next].map(|at| at.paid.speed + at.state[1]);
        let mut shares = [felt, pulled, lowest(paying, t, within, speeds)];
        if shares == [None; 3] {
            return true;
        }
        shares.sort_by(|a, b| a.unwrap_or(1.0).total_cmp(&b.unwrap_or(1.0)));
        let look_at = |share: f64| {
            let time = (t + share * within.step()).min(next_time);
            (time, self.at(paying.at(time), within.at(share)))
        };
        let [first, second, third] = shares;
        let inside = [first.map(look_at), second.map(look_at), third.map(look_at)];
        if inside.iter().flatten().any(|(_, at)| at.is_slack()) {
            return false;
        }
        for (time, at) in inside.iter().flatten() {
            look(*time, at);
        }
        true
    }

    /// How much more than the load's acceleration that of paying out weighs in the pull at the head.
    fn weighed(&self, length: f64) -> f64 {
        let line = self.line_mass * length;
        let paid = if self.runs {
            self.load + line
        } else {
            self.load
        };
        paid / (self.load + 0.5 * line)
    }

    /// Follows a load where steps must be tried, since a slack line lets it go, which bends the motion, or the line
    /// changes as fast as it swings: until a slack line is taut again, or until a time of the piece.
    #[cold]
    #[inline(never)]
    fn slack(
        &self,
        paying: &Paying,
        from: Point<2>,
        until: f64,
        look: &mut dyn FnMut(f64, &At),
    ) -> Option<Point<2>> {
        let accuracy = Accuracy {
            relative: 1e-5,
            absolute: 1e-5,
            longest_step: self.period(paying.length) / 6.0,
            // Nobody asks where it turns here.
            looks: 8,
            most_steps: MOST_TRIED,
        };
        let at = |point: &Point<2>| self.at(paying.at(point.t), point.y);
        let rate = |t: f64, y: &[f64; 2]| [y[1], self.at(paying.at(t), *y).state[2]];
        // Above nothing while the line is slack.
        let slack = |point: &Point<2>| {
            let at = at(point);
            if at.state[0] > 0.0 {
                -at.pull
            } else {
                -at.swing.square * at.state[0]
            }
        };
        let end = ode::integrate(rate, from, until, accuracy, slack, |point| {
            look(point.t, &at(point));
        });
        end.point()
    }

    /// The line at a moment of the motion.
    #[inline]
    fn at(&self, paid: Even, [stretch, growth]: [f64; 2]) -> At {
        let swing = self.swing(&paid);
        let pull = swing.square * stretch + swing.damping * growth;
        let held = if stretch > 0.0 { pull.max(0.0) } else { 0.0 };
        At {
            paid,
            state: [stretch, growth, swing.push - held],
            swing,
            pull,
        }
    }

    /// What makes the load swing on a taut line.
    #[inline]
    fn swing(&self, paid: &Even) -> Swing {
        let length = paid.length;
        // One over the mass that bounces, and the square of its frequency: neither asks for the state, so the
        // divisions and the root of several stages go side by side.
        let shared = 1.0 / (self.bouncing_mass(length) * length);
        let square = self.modulus * shared;
        Swing {
            square,
            damping: 2.0 * self.damping * f64::sqrt(square),
            push: self.pull_at(length, paid.acceleration) * (shared * length),
        }
    }

    /// Stretch and its rate with no bounce: the stretch goes with what it carries, and the damper holds it back by what
    /// it takes to grow.
    fn even(&self, even: Even) -> [f64; 2] {
        let growth = self.pull_at(2.0 * even.length, even.acceleration) / self.modulus * even.speed;
        let swing = self.swing(&even);
        let stretch = (swing.push - swing.damping * growth) / swing.square;
        [stretch.max(0.0), growth]
    }

    /// What people see of it.
    #[inline]
    fn moment(&self, time: f64, paid: &Even, [stretch, growth, bounce]: &State) -> Moment {
        let line = self.line_mass * paid.length;
        let felt = (GRAVITY - paid.acceleration - bounce).max(0.0);
        let run = if self.runs { paid.acceleration } else { 0.0 };
        Moment {
            time,
            length: paid.length,
            pay_speed: paid.speed,
            depth: paid.length + stretch,
            speed: paid.speed + growth,
            felt,
            head_tension: (self.load * felt + line * (GRAVITY - run - 0.5 * bounce)).max(0.0),
        }
    }
}

/// The line at a moment.
struct At {
    paid: Even,
    swing: Swing,
    state: State,
    /// Of the line on a unit of the mass that bounces.
    pull: f64,
}

impl At {
    /// Whether the line would push, which it cannot. Also where it is no number.
    #[inline]
    fn is_slack(&self) -> bool {
        !(self.pull > 0.0 && self.state[0] > 0.0)
    }

    /// A step of an angle of the swing, or shorter where much of the line's length is paid out in it.
    #[inline]
    fn step(&self, angle: f64) -> f64 {
        let frequency = f64::sqrt(self.swing.square);
        let (paid, most) = (self.paid.speed.abs(), MOST_CHANGE * self.paid.length);
        if angle * paid <= most * frequency {
            angle / frequency
        } else {
            most / paid
        }
    }
}

/// The share of a step from `t` of a piece where the load turns, up or down, between two speeds: three steps of false
/// position on how fast it goes.
#[inline]
fn lowest(paying: &Paying, t: f64, within: &Within, [first, last]: [f64; 2]) -> Option<f64> {
    if first * last >= 0.0 {
        return None;
    }
    let speed = |share: f64| paying.at(t + share * within.step()).speed + within.at(share)[1];
    let (mut low, mut high) = ((0.0, first), (1.0, last));
    let mut share = 0.5;
    for _ in 0..3 {
        share = low.0 + (high.0 - low.0) * low.1 / (low.1 - high.1);
        let now = (share, speed(share));
        if now.1 * low.1 > 0.0 {
            low = now;
        } else {
            high = now;
        }
    }
    Some(share)
}

/// How far a swing was followed on a taut line.
enum Taut {
    /// To the end, where stretch and its rate are these.
    Throughout([f64; 2]),
    /// To a time from which it hardly swings under a steady acceleration.
    Settled(f64),
    /// To here: within the next step the line hangs slack, or it changes as fast as it swings.
    Until(Point<2>),
    /// Not in so many steps.
    Failed,
}

/// How the line is paid out within a piece.
struct Paying {
    length: f64,
    speed: f64,
    acceleration: f64,
    slope: f64,
}

impl Paying {
    #[inline]
    fn at(&self, t: f64) -> Even {
        Even {
            length: self.length
                + t * (self.speed + t * (0.5 * self.acceleration + t * self.slope / 6.0)),
            speed: self.speed + t * (self.acceleration + 0.5 * t * self.slope),
            acceleration: self.acceleration + t * self.slope,
        }
    }
}
