//! A step by the pair: its stages, its error, and the solution within it.

use super::{Accuracy, Motion, Point};

/// One step's outcome.
#[derive(Clone, Copy)]
pub(super) struct Trial<const N: usize> {
    pub(super) y: [f64; N],
    difference: [f64; N],
    pub(super) last_slope: [f64; N],
    /// What the continuous extension has over the cubic through both ends.
    bend: [f64; N],
}

impl<const N: usize> Trial<N> {
    const NONE: Trial<N> = Trial {
        y: [0.0; N],
        difference: [0.0; N],
        last_slope: [0.0; N],
        bend: [0.0; N],
    };

    /// Error over allowance: at most 1 is accepted.
    pub(super) fn error(&self, before: &[f64; N], accuracy: Accuracy) -> f64 {
        let shares: [f64; N] = each(|i| {
            let size = before[i].abs().max(self.y[i].abs());
            self.difference[i].abs() / (accuracy.absolute + accuracy.relative * size)
        });
        // What is no number is in the sum, where the greatest would leave it out.
        if !shares.iter().sum::<f64>().is_finite() {
            return f64::NAN;
        }
        shares.into_iter().fold(0.0, f64::max)
    }
}

/// The inside of an accepted step: the pair's continuous extension.
pub(super) struct Within<'a, const N: usize> {
    pub(super) from: &'a Point<N>,
    pub(super) slope: &'a [f64; N],
    pub(super) step: f64,
    /// The coefficients after the start's value.
    rise: [f64; N],
    first: [f64; N],
    last: [f64; N],
    bend: &'a [f64; N],
}

impl<'a, const N: usize> Within<'a, N> {
    pub(super) fn new(
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
    pub(super) fn at(&self, s: f64) -> Point<N> {
        let r = 1.0 - s;
        let within =
            |i: usize| self.rise[i] + r * (self.first[i] + s * (self.last[i] + r * self.bend[i]));
        Point {
            t: self.from.t + s * self.step,
            y: each(|i| self.from.y[i] + s * within(i)),
        }
    }

    /// Shows the solution at all looks but the last, which is the step's end.
    pub(super) fn look(&self, looks: u32, mut observe: impl FnMut(&Point<N>)) {
        for look in 1..looks {
            observe(&self.at(f64::from(look) / f64::from(looks)));
        }
    }
}

/// An array's components one by one, the first of them written out: what builds small keeps a loop, and its arrays
/// in memory.
#[inline(always)]
fn each<const N: usize>(component: impl Fn(usize) -> f64) -> [f64; N] {
    let mut all = [0.0; N];
    macro_rules! write_out {
        ($($i:literal)*) => {
            $(if $i < N { all[$i] = component($i); })*
        };
    }
    write_out!(0 1 2 3 4 5);
    for (i, one) in all.iter_mut().enumerate().skip(6) {
        *one = component(i);
    }
    all
}

/// Motions abreast, from where they are, each in a step of its own.
pub(super) struct Abreast<'a, const L: usize, const N: usize, M> {
    pub(super) motions: [&'a M; L],
    pub(super) from: [&'a Point<N>; L],
    pub(super) slopes: [&'a [f64; N]; L],
    pub(super) steps: [f64; L],
}

impl<const L: usize, const N: usize, M: Motion<N>> Abreast<'_, L, N, M> {
    /// The rates so far into the step, where the slope of the way there is given by motion and
    /// component.
    #[inline(always)]
    fn stage(
        &self,
        into: impl Fn(f64) -> f64,
        slope: impl Fn(usize, usize) -> f64,
    ) -> [[f64; N]; L] {
        let mut rates = [[0.0; N]; L];
        for (lane, rates) in rates.iter_mut().enumerate() {
            let (from, step) = (self.from[lane], self.steps[lane]);
            let y = each(|i| from.y[i] + step * slope(lane, i));
            *rates = self.motions[lane].rate(from.t + into(step), &y);
        }
        rates
    }
}

/// The tableau's single step of each motion, stage by stage. The last stage is the next step's first.
pub(super) fn dormand_prince<const L: usize, const N: usize, M: Motion<N>>(
    abreast: &Abreast<L, N, M>,
) -> [Trial<N>; L] {
    let k1 = abreast.slopes;
    // Written out, and not looped over a table, so that the compiler takes components side by side.
    let k2 = abreast.stage(|h| h / 5.0, |l, i| 1.0 / 5.0 * k1[l][i]);
    let k3 = abreast.stage(
        |h| h * 3.0 / 10.0,
        |l, i| 3.0 / 40.0 * k1[l][i] + 9.0 / 40.0 * k2[l][i],
    );
    let k4 = abreast.stage(
        |h| h * 4.0 / 5.0,
        |l, i| 44.0 / 45.0 * k1[l][i] + -56.0 / 15.0 * k2[l][i] + 32.0 / 9.0 * k3[l][i],
    );
    let k5 = abreast.stage(
        |h| h * 8.0 / 9.0,
        |l, i| {
            19372.0 / 6561.0 * k1[l][i]
                + -25360.0 / 2187.0 * k2[l][i]
                + 64448.0 / 6561.0 * k3[l][i]
                + -212.0 / 729.0 * k4[l][i]
        },
    );
    let k6 = abreast.stage(
        |h| h,
        |l, i| {
            9017.0 / 3168.0 * k1[l][i]
                + -355.0 / 33.0 * k2[l][i]
                + 46732.0 / 5247.0 * k3[l][i]
                + 49.0 / 176.0 * k4[l][i]
                + -5103.0 / 18656.0 * k5[l][i]
        },
    );
    let rise = |l: usize, i: usize| {
        35.0 / 384.0 * k1[l][i]
            + 500.0 / 1113.0 * k3[l][i]
            + 125.0 / 192.0 * k4[l][i]
            + -2187.0 / 6784.0 * k5[l][i]
            + 11.0 / 84.0 * k6[l][i]
    };
    let k7 = abreast.stage(|h| h, rise);
    let mut trials = [Trial::NONE; L];
    for (l, trial) in trials.iter_mut().enumerate() {
        let (h, from) = (abreast.steps[l], abreast.from[l]);
        *trial = Trial {
            y: each(|i| from.y[i] + h * rise(l, i)),
            difference: each(|i| {
                h * (71.0 / 57600.0 * k1[l][i] - 71.0 / 16695.0 * k3[l][i]
                    + 71.0 / 1920.0 * k4[l][i]
                    - 17253.0 / 339_200.0 * k5[l][i]
                    + 22.0 / 525.0 * k6[l][i]
                    - 1.0 / 40.0 * k7[l][i])
            }),
            last_slope: k7[l],
            bend: each(|i| {
                h * (-12_715_105_075.0 / 11_282_082_432.0 * k1[l][i]
                    + 87_487_479_700.0 / 32_700_410_799.0 * k3[l][i]
                    - 10_690_763_975.0 / 1_880_347_072.0 * k4[l][i]
                    + 701_980_252_875.0 / 199_316_789_632.0 * k5[l][i]
                    - 1_453_857_185.0 / 822_651_844.0 * k6[l][i]
                    + 69_997_945.0 / 29_380_423.0 * k7[l][i])
            }),
        };
    }
    trials
}
