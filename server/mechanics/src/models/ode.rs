//! Ordinary differential equations: Dormand and Prince's fifth-order Runge-Kutta pair with step
//! control (J. R. Dormand and P. J. Prince, J. Comp. Appl. Math. 6, 1980; control as in Hairer,
//! Norsett and Wanner, Solving Ordinary Differential Equations I, section II.4).
//!
//! Small on purpose: fixed-size states, no allocation, an observer that may stop at an event. Events
//! are found by taking shortened steps, not by interpolation, so they are as exact as the steps. What
//! is looked at within a step comes from the pair's own continuous extension, of the fourth order, at
//! the price of no further rates (the same book, section II.6).

mod step;

use step::{Abreast, Trial, Within, dormand_prince};

/// How closely to follow the solution.
#[derive(Clone, Copy, Debug)]
pub struct Accuracy {
    /// Allowed error relative to the size of each component, a step.
    pub relative: f64,
    /// Allowed error in each component's own unit, a step.
    pub absolute: f64,
    /// Longest step, in the unit of the independent variable.
    pub longest_step: f64,
    /// How often each step is observed, evenly, its end included. At least once.
    pub looks: u32,
    /// Steps after which to give up, so that nothing can run for ever.
    pub most_steps: usize,
}

/// Fine enough for anything people measure.
pub const FINE: Accuracy = Accuracy {
    relative: 1e-10,
    absolute: 1e-12,
    longest_step: 0.1,
    looks: 1,
    most_steps: 200_000,
};

/// The solution at one point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point<const N: usize> {
    /// The independent variable, usually time.
    pub t: f64,
    /// The state.
    pub y: [f64; N],
}

/// How an integration came to its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum End<const N: usize> {
    /// The end of the interval.
    Finished(Point<N>),
    /// The event function came down through zero here.
    Event(Point<N>),
    /// Step control failed: the state stopped being finite or the steps ran out.
    Failed,
}

impl<const N: usize> End<N> {
    /// The last point, unless the integration failed.
    pub fn point(self) -> Option<Point<N>> {
        match self {
            End::Finished(point) | End::Event(point) => Some(point),
            End::Failed => None,
        }
    }
}

/// What is integrated: a motion's equations, where it is over, and who looks at it.
pub trait Motion<const N: usize> {
    /// The rates of the state.
    fn rate(&self, t: f64, y: &[f64; N]) -> [f64; N];
    /// The motion is over where this falls from above zero to zero or below.
    fn event(&self, at: &Point<N>) -> f64;
    /// Sees the start and the looks of each accepted step.
    fn observe(&mut self, at: &Point<N>);
}

impl<const N: usize, M: Motion<N>> Motion<N> for &mut M {
    fn rate(&self, t: f64, y: &[f64; N]) -> [f64; N] {
        (**self).rate(t, y)
    }

    fn event(&self, at: &Point<N>) -> f64 {
        (**self).event(at)
    }

    fn observe(&mut self, at: &Point<N>) {
        (**self).observe(at);
    }
}

/// A motion told by functions.
struct Told<R, E, O> {
    rate: R,
    event: E,
    observe: O,
}

impl<const N: usize, R, E, O> Motion<N> for Told<R, E, O>
where
    R: Fn(f64, &[f64; N]) -> [f64; N],
    E: Fn(&Point<N>) -> f64,
    O: FnMut(&Point<N>),
{
    #[inline(always)]
    fn rate(&self, t: f64, y: &[f64; N]) -> [f64; N] {
        (self.rate)(t, y)
    }

    #[inline(always)]
    fn event(&self, at: &Point<N>) -> f64 {
        (self.event)(at)
    }

    #[inline(always)]
    fn observe(&mut self, at: &Point<N>) {
        (self.observe)(at);
    }
}

/// Integrates `rate` from `start` to `t_end`, calling `observe` at the start and at the looks of each
/// accepted step, and stopping where `event` falls from above zero to zero or below.
pub fn integrate<const N: usize>(
    rate: impl Fn(f64, &[f64; N]) -> [f64; N],
    start: Point<N>,
    t_end: f64,
    accuracy: Accuracy,
    event: impl Fn(&Point<N>) -> f64,
    observe: impl FnMut(&Point<N>),
) -> End<N> {
    let mut motion = Told {
        rate,
        event,
        observe,
    };
    follow(&mut motion, (start, t_end), accuracy)
}

/// Follows one motion by itself.
fn follow<const N: usize, M: Motion<N>>(
    motion: &mut M,
    start: (Point<N>, f64),
    accuracy: Accuracy,
) -> End<N> {
    let mut lane = Lane::new(motion, start, accuracy);
    while lane.goes_on(accuracy) {
        lane.go_alone(motion, accuracy);
    }
    lane.end()
}

/// Integrates motions of one kind, each in its own steps and to the same numbers as alone. Two abreast take little more
/// than half the time, since a processor works on one motion's stage while it waits for the other's.
pub fn integrate_all<const N: usize, M: Motion<N>>(
    motions: &mut [M],
    from: impl Fn(&M) -> (Point<N>, f64),
    accuracy: Accuracy,
) -> Vec<End<N>> {
    // What builds small keeps both lanes' arrays in memory, and is faster with one.
    if cfg!(target_arch = "wasm32") {
        let alone = motions.iter_mut().map(|motion| {
            let start = from(motion);
            follow(motion, start, accuracy)
        });
        return alone.collect();
    }
    let mut ends = vec![End::Failed; motions.len()];
    let mut waiting = 0..motions.len();
    // The next motion that has a step to try.
    let mut begin = |motions: &mut [M], ends: &mut [End<N>]| {
        waiting.find_map(|which| {
            let start = from(&motions[which]);
            let mut lane = Lane::new(&mut motions[which], start, accuracy);
            let goes_on = lane.goes_on(accuracy);
            ends[which] = lane.end();
            goes_on.then_some((which, lane))
        })
    };
    let mut lanes = [begin(motions, &mut ends), begin(motions, &mut ends)];
    while let [Some((first, one)), Some((second, other))] = &lanes {
        let trials = dormand_prince(&Abreast {
            motions: [&motions[*first], &motions[*second]],
            from: [&one.now, &other.now],
            slopes: [&one.slope, &other.slope],
            steps: [one.taken, other.taken],
        });
        for (slot, trial) in lanes.iter_mut().zip(&trials) {
            let Some((which, lane)) = slot else { continue };
            lane.settle(&mut motions[*which], trial, accuracy);
            if !lane.goes_on(accuracy) {
                ends[*which] = lane.end();
                *slot = begin(motions, &mut ends);
            }
        }
    }
    // The last alone.
    for (which, lane) in lanes.iter_mut().flatten() {
        lane.go_alone(&mut motions[*which], accuracy);
        while lane.goes_on(accuracy) {
            lane.go_alone(&mut motions[*which], accuracy);
        }
        ends[*which] = lane.end();
    }
    ends
}

/// One motion on its way.
struct Lane<const N: usize> {
    now: Point<N>,
    slope: [f64; N],
    /// The next step, and the one that is tried.
    step: f64,
    taken: f64,
    t_end: f64,
    /// Of the event.
    value: f64,
    was_short: bool,
    steps: usize,
    end: Option<End<N>>,
}

impl<const N: usize> Lane<N> {
    fn new(
        motion: &mut impl Motion<N>,
        (start, t_end): (Point<N>, f64),
        accuracy: Accuracy,
    ) -> Lane<N> {
        let lane = Lane {
            now: start,
            slope: motion.rate(start.t, &start.y),
            step: (accuracy.longest_step * 0.01).min(t_end - start.t),
            taken: 0.0,
            t_end,
            value: motion.event(&start),
            was_short: false,
            steps: 0,
            end: None,
        };
        motion.observe(&lane.now);
        lane
    }

    /// Whether there is a step to try.
    fn goes_on(&mut self, accuracy: Accuracy) -> bool {
        if self.end.is_some() {
            return false;
        }
        let left = self.t_end - self.now.t;
        if left <= 0.0 {
            self.end = Some(End::Finished(self.now));
        } else if self.steps == accuracy.most_steps {
            self.end = Some(End::Failed);
        }
        self.steps += 1;
        self.taken = self.step.min(left);
        self.end.is_none()
    }

    /// Where it came to, once it goes on no more.
    fn end(&self) -> End<N> {
        self.end.unwrap_or(End::Failed)
    }

    /// Tries a step by itself.
    fn go_alone<M: Motion<N>>(&mut self, motion: &mut M, accuracy: Accuracy) {
        let [trial] = dormand_prince(&Abreast {
            motions: [&*motion],
            from: [&self.now],
            slopes: [&self.slope],
            steps: [self.taken],
        });
        self.settle(motion, &trial, accuracy);
    }

    /// Shortens the step, and gives up once it is meaningless.
    fn shorten(&mut self, factor: f64) {
        self.was_short = true;
        self.step = self.taken * factor;
        if self.step < 1e-14 * (1.0 + self.now.t.abs()) {
            self.end = Some(End::Failed);
        }
    }

    /// Takes what a trial came to, or shortens the step.
    #[inline(always)]
    fn settle(&mut self, motion: &mut impl Motion<N>, trial: &Trial<N>, accuracy: Accuracy) {
        let error = trial.error(&self.now.y, accuracy);
        if !error.is_finite() {
            // A step too long for a stiff start.
            self.shorten(0.1);
            return;
        }
        // The usual controller: aim under the allowed error, change by at most fivefold.
        let factor = (0.8 / nearly_fifth_root(error.max(1e-10))).clamp(0.2, 5.0);
        if error > 1.0 {
            self.shorten(factor.min(1.0));
            return;
        }
        let taken = self.taken;
        let next = Point {
            t: if taken >= self.t_end - self.now.t {
                self.t_end
            } else {
                self.now.t + taken
            },
            y: trial.y,
        };
        let next_value = motion.event(&next);
        if self.value > 0.0 && next_value <= 0.0 {
            let within = Within::new(&self.now, &self.slope, trial, taken);
            let hair = (1e-5 * accuracy.relative).max(1e-13) * taken;
            let (length, trial) = locate(motion, &within, trial, (self.value, next_value), hair);
            // What lies past the event may bend the motion, so that looks are taken up to it.
            let within = Within::new(&self.now, &self.slope, &trial, length);
            within.look(accuracy.looks, |point| motion.observe(point));
            let found = Point {
                t: if length < taken {
                    self.now.t + length
                } else {
                    next.t
                },
                y: trial.y,
            };
            motion.observe(&found);
            self.end = Some(End::Event(found));
            return;
        }
        if accuracy.looks > 1 {
            let within = Within::new(&self.now, &self.slope, trial, taken);
            within.look(accuracy.looks, |point| motion.observe(point));
        }
        self.now = next;
        self.slope = trial.last_slope;
        self.value = next_value;
        motion.observe(&self.now);
        let factor = if self.was_short {
            factor.min(1.0)
        } else {
            factor
        };
        self.was_short = false;
        self.step = (taken * factor).min(accuracy.longest_step);
    }
}

/// error^(3/16), close enough to the fifth root for choosing a step, and a fraction of a power's cost.
fn nearly_fifth_root(error: f64) -> f64 {
    let eighth = f64::sqrt(f64::sqrt(f64::sqrt(error)));
    eighth * f64::sqrt(eighth)
}

/// The part of a step, known with the event's values at both ends, until the event falls to zero. The
/// continuous extension says nearly where, since it costs no rates; from there on true shortened steps by
/// secants, and by halving where those are slow, until within a hair.
fn locate<const N: usize, M: Motion<N>>(
    motion: &M,
    within: &Within<N>,
    whole: &Trial<N>,
    (at_start, at_end): (f64, f64),
    hair: f64,
) -> (f64, Trial<N>) {
    let (from, step) = (within.from, within.step);
    let at = |length: f64| {
        let [trial] = dormand_prince(&Abreast {
            motions: [motion],
            from: [from],
            slopes: [within.slope],
            steps: [length],
        });
        trial
    };
    let event = |at: &Point<N>| motion.event(at);
    let nearly = |length: f64| event(&within.at(length / step));
    let ends = ((0.0, at_start), (step, at_end));
    let guess = near_root(&nearly, ends, 1e-7 * step);
    let (mut low, mut high) = ends;
    let mut found = (step, *whole);
    let (mut before, mut length) = (low, guess);
    for tried in 0..60 {
        let width = high.0 - low.0;
        if high.1 == 0.0 || width <= 1e-15 * (step + from.t.abs()) {
            break;
        }
        if !(length > low.0 && length < high.0) || tried % 6 == 5 {
            length = low.0 + 0.5 * width;
        }
        let trial = at(length);
        let point = Point {
            t: from.t + length,
            y: trial.y,
        };
        let now = (length, event(&point));
        if now.1 > 0.0 {
            low = now;
        } else {
            high = now;
            found = (length, trial);
        }
        // From the first true value the end that it lies beside is far; the extension's own slope is near.
        let moved = if tried == 0 {
            let aside = 1e-4 * step;
            let fall = nearly(length + aside) - nearly(length - aside);
            -now.1 * 2.0 * aside / fall
        } else {
            -now.1 * (now.0 - before.0) / (now.1 - before.1)
        };
        if moved.abs() <= hair {
            if now.1 <= 0.0 {
                break;
            }
            // So close above the zero that the next hair is past it.
            length += 2.0 * hair;
        } else {
            length += moved;
        }
        before = now;
    }
    found
}

/// Where a function that costs little falls to zero between two ends, by false position with the Illinois
/// weighting.
fn near_root(
    value: &impl Fn(f64) -> f64,
    (mut low, mut high): ((f64, f64), (f64, f64)),
    close: f64,
) -> f64 {
    let mut last_was_low = None;
    for tried in 0..40 {
        let width = high.0 - low.0;
        if width <= close || high.1 == 0.0 {
            break;
        }
        let secant = low.0 + width * low.1 / (low.1 - high.1);
        let inside = secant > low.0 && secant < high.0 && tried % 8 != 7;
        let length = if inside { secant } else { low.0 + 0.5 * width };
        let now = value(length);
        if now > 0.0 {
            let stayed = (length - low.0).abs() <= close;
            low = (length, now);
            if stayed {
                break;
            }
            if last_was_low == Some(true) {
                high.1 *= 0.5;
            }
            last_was_low = Some(true);
        } else {
            let stayed = (high.0 - length).abs() <= close;
            high = (length, now);
            if stayed {
                break;
            }
            if last_was_low == Some(false) {
                low.1 *= 0.5;
            }
            last_was_low = Some(false);
        }
    }
    if last_was_low == Some(true) {
        low.0
    } else {
        high.0
    }
}
