//! Ordinary differential equations: Dormand and Prince's fifth-order Runge-Kutta pair with step
//! control (J. R. Dormand and P. J. Prince, J. Comp. Appl. Math. 6, 1980; control as in Hairer,
//! Norsett and Wanner, Solving Ordinary Differential Equations I, section II.4).
//!
//! Small on purpose: fixed-size states, no allocation, an observer that may stop at an event. Events
//! are found by taking shortened steps, not by interpolation, so they are as exact as the steps. What
//! is looked at within a step comes from the pair's own continuous extension, of the fourth order, at
//! the price of no further rates (the same book, section II.6).

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

/// Integrates `rate` from `start` to `t_end`, calling `observe` at the start and at the looks of each
/// accepted step, and stopping where `event` falls from above zero to zero or below.
pub fn integrate<const N: usize>(
    rate: impl Fn(f64, &[f64; N]) -> [f64; N],
    start: Point<N>,
    t_end: f64,
    accuracy: Accuracy,
    event: impl Fn(&Point<N>) -> f64,
    mut observe: impl FnMut(&Point<N>),
) -> End<N> {
    let mut now = start;
    let mut slope = rate(now.t, &now.y);
    let mut step = (accuracy.longest_step * 0.01).min(t_end - start.t);
    let mut value = event(&now);
    observe(&now);
    for _ in 0..accuracy.most_steps {
        let left = t_end - now.t;
        if left <= 0.0 {
            return End::Finished(now);
        }
        let last = step >= left;
        let taken = if last { left } else { step };
        let trial = dormand_prince(&rate, &now, &slope, taken);
        let error = trial.error(&now.y, accuracy);
        if !error.is_finite() {
            // A step too long for a stiff start: shorten hard, and give up once it is meaningless.
            step = taken * 0.1;
            if step < 1e-14 * (1.0 + now.t.abs()) {
                return End::Failed;
            }
            continue;
        }
        // The usual controller: aim under the allowed error, change by at most fivefold.
        let factor = (0.8 / nearly_fifth_root(error.max(1e-10))).clamp(0.2, 5.0);
        if error > 1.0 {
            step = taken * factor.min(1.0);
            if step < 1e-14 * (1.0 + now.t.abs()) {
                return End::Failed;
            }
            continue;
        }
        let next = Point {
            t: if last { t_end } else { now.t + taken },
            y: trial.y,
        };
        let next_value = event(&next);
        if value > 0.0 && next_value <= 0.0 {
            let within = Within::new(&now, &slope, &trial, taken);
            let hair = (1e-5 * accuracy.relative).max(1e-13) * taken;
            let ends = (value, next_value);
            let found = locate(&rate, &within, &next, ends, &event, hair);
            within.look(accuracy.looks, |point| {
                if point.t < found.t {
                    observe(point);
                }
            });
            observe(&found);
            return End::Event(found);
        }
        if accuracy.looks > 1 {
            Within::new(&now, &slope, &trial, taken).look(accuracy.looks, &mut observe);
        }
        now = next;
        slope = trial.last_slope;
        value = next_value;
        observe(&now);
        step = (taken * factor).min(accuracy.longest_step);
    }
    End::Failed
}

/// error^(3/16), close enough to the fifth root for choosing a step, and a fraction of a power's cost.
fn nearly_fifth_root(error: f64) -> f64 {
    let eighth = f64::sqrt(f64::sqrt(f64::sqrt(error)));
    eighth * f64::sqrt(eighth)
}

/// The point within a step, known with the event's values at both ends, where the event falls to zero. The
/// continuous extension says nearly where, since it costs no rates; from there on true shortened steps by
/// secants, and by halving where those are slow, until within a hair.
fn locate<const N: usize>(
    rate: &impl Fn(f64, &[f64; N]) -> [f64; N],
    within: &Within<N>,
    to: &Point<N>,
    (at_start, at_end): (f64, f64),
    event: &impl Fn(&Point<N>) -> f64,
    hair: f64,
) -> Point<N> {
    let (from, step) = (within.from, within.step);
    let at = |length: f64| Point {
        t: from.t + length,
        y: dormand_prince(rate, from, within.slope, length).y,
    };
    let nearly = |length: f64| event(&within.at(length / step));
    let ends = ((0.0, at_start), (step, at_end));
    let guess = near_root(&nearly, ends, 1e-7 * step);
    let (mut low, mut high) = ends;
    let mut found = *to;
    let (mut before, mut length) = (low, guess);
    for tried in 0..60 {
        let width = high.0 - low.0;
        if high.1 == 0.0 || width <= 1e-15 * (step + from.t.abs()) {
            break;
        }
        if !(length > low.0 && length < high.0) || tried % 6 == 5 {
            length = low.0 + 0.5 * width;
        }
        let point = at(length);
        let now = (length, event(&point));
        if now.1 > 0.0 {
            low = now;
        } else {
            high = now;
            found = point;
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

/// One step's outcome.
struct Trial<const N: usize> {
    y: [f64; N],
    difference: [f64; N],
    last_slope: [f64; N],
    /// What the continuous extension has over the cubic through both ends.
    bend: [f64; N],
}

impl<const N: usize> Trial<N> {
    /// Error over allowance: at most 1 is accepted.
    fn error(&self, before: &[f64; N], accuracy: Accuracy) -> f64 {
        let mut worst = 0.0_f64;
        for ((before, after), difference) in before.iter().zip(&self.y).zip(&self.difference) {
            let size = before.abs().max(after.abs());
            let share = difference.abs() / (accuracy.absolute + accuracy.relative * size);
            if !share.is_finite() {
                return f64::NAN;
            }
            worst = worst.max(share);
        }
        worst
    }
}

/// The inside of an accepted step: the pair's continuous extension.
struct Within<'a, const N: usize> {
    from: &'a Point<N>,
    slope: &'a [f64; N],
    step: f64,
    /// The coefficients after the start's value.
    rise: [f64; N],
    first: [f64; N],
    last: [f64; N],
    bend: &'a [f64; N],
}

impl<'a, const N: usize> Within<'a, N> {
    fn new(
        from: &'a Point<N>,
        slope: &'a [f64; N],
        trial: &'a Trial<N>,
        step: f64,
    ) -> Within<'a, N> {
        let rise = each(|i| trial.y[i] - from.y[i]);
        let first = each(|i| step * slope[i] - rise[i]);
        Within {
            from,
            slope,
            step,
            rise,
            first,
            last: each(|i| rise[i] - step * trial.last_slope[i] - first[i]),
            bend: &trial.bend,
        }
    }

    /// The solution at a share of the step.
    fn at(&self, s: f64) -> Point<N> {
        let r = 1.0 - s;
        let within =
            |i: usize| self.rise[i] + r * (self.first[i] + s * (self.last[i] + r * self.bend[i]));
        Point {
            t: self.from.t + s * self.step,
            y: each(|i| self.from.y[i] + s * within(i)),
        }
    }

    /// Shows the solution at all looks but the last, which is the step's end.
    fn look(&self, looks: u32, mut observe: impl FnMut(&Point<N>)) {
        for look in 1..looks {
            observe(&self.at(f64::from(look) / f64::from(looks)));
        }
    }
}

/// An array's components one by one. What builds small makes a call of each component of `from_fn`, and a plain loop
/// of this.
#[inline(always)]
fn each<const N: usize>(component: impl Fn(usize) -> f64) -> [f64; N] {
    let mut all = [0.0; N];
    for (i, one) in all.iter_mut().enumerate() {
        *one = component(i);
    }
    all
}

/// The tableau's single step. The last stage is the next step's first.
fn dormand_prince<const N: usize>(
    rate: &impl Fn(f64, &[f64; N]) -> [f64; N],
    from: &Point<N>,
    k1: &[f64; N],
    h: f64,
) -> Trial<N> {
    let (t, y) = (from.t, &from.y);
    // Written out, and not looped over a table, so that the compiler takes components side by side.
    let k2 = rate(t + h / 5.0, &each(|i| y[i] + h * (1.0 / 5.0 * k1[i])));
    let k3 = rate(
        t + h * 3.0 / 10.0,
        &each(|i| y[i] + h * (3.0 / 40.0 * k1[i] + 9.0 / 40.0 * k2[i])),
    );
    let k4 = rate(
        t + h * 4.0 / 5.0,
        &each(|i| y[i] + h * (44.0 / 45.0 * k1[i] + -56.0 / 15.0 * k2[i] + 32.0 / 9.0 * k3[i])),
    );
    let k5 = rate(
        t + h * 8.0 / 9.0,
        &each(|i| {
            y[i] + h
                * (19372.0 / 6561.0 * k1[i]
                    + -25360.0 / 2187.0 * k2[i]
                    + 64448.0 / 6561.0 * k3[i]
                    + -212.0 / 729.0 * k4[i])
        }),
    );
    let k6 = rate(
        t + h,
        &each(|i| {
            y[i] + h
                * (9017.0 / 3168.0 * k1[i]
                    + -355.0 / 33.0 * k2[i]
                    + 46732.0 / 5247.0 * k3[i]
                    + 49.0 / 176.0 * k4[i]
                    + -5103.0 / 18656.0 * k5[i])
        }),
    );
    let end = each(|i| {
        y[i] + h
            * (35.0 / 384.0 * k1[i]
                + 500.0 / 1113.0 * k3[i]
                + 125.0 / 192.0 * k4[i]
                + -2187.0 / 6784.0 * k5[i]
                + 11.0 / 84.0 * k6[i])
    });
    let k7 = rate(t + h, &end);
    let difference = each(|i| {
        h * (71.0 / 57600.0 * k1[i] - 71.0 / 16695.0 * k3[i] + 71.0 / 1920.0 * k4[i]
            - 17253.0 / 339_200.0 * k5[i]
            + 22.0 / 525.0 * k6[i]
            - 1.0 / 40.0 * k7[i])
    });
    let bend = each(|i| {
        h * (-12_715_105_075.0 / 11_282_082_432.0 * k1[i]
            + 87_487_479_700.0 / 32_700_410_799.0 * k3[i]
            - 10_690_763_975.0 / 1_880_347_072.0 * k4[i]
            + 701_980_252_875.0 / 199_316_789_632.0 * k5[i]
            - 1_453_857_185.0 / 822_651_844.0 * k6[i]
            + 69_997_945.0 / 29_380_423.0 * k7[i])
    });
    Trial {
        y: end,
        difference,
        last_slope: k7,
        bend,
    }
}
