//! Head injury criterion: max over windows of (t2 - t1) [mean a over the window, in g]^2.5
//! (49 CFR 571.208 S6.2; ASTM F1292 uses it without a cap on the window).

use super::GRAVITY;

/// More than what rounding can add to a bound or take from a step.
const ROUNDING: f64 = 1e-9;

/// Points of the grid.
const POINTS: usize = 400;

/// The criterion for an acceleration given in m/s2 as straight lines between samples
/// `(time, acceleration)` with windows up to `window` seconds.
///
/// Both ends of the window run over a grid of at most 400 points, so the work is bounded; for the
/// smooth pulses of this crate the result is within 0.1 % of the exact one.
pub fn injury_criterion(samples: &[(f64, f64)], window: f64) -> f64 {
    let (Some(first), Some(last)) = (samples.first(), samples.last()) else {
        return 0.0;
    };
    let span = last.0 - first.0;
    if span <= 0.0 {
        return 0.0;
    }
    let step = span / (POINTS - 1) as f64;
    // The longest window seldom ends on the grid, so its end is taken between two points.
    let whole = f64::floor(window / step).min(POINTS as f64) as usize;
    let longest = Longest {
        window,
        whole,
        part: window / step - whole as f64,
    };
    match single_top(samples) {
        Some(top) => f64::sqrt(Rise::new(samples, step).worst(top, &longest)),
        None => f64::sqrt(of_every_window(samples, step, &longest)),
    }
}

/// The longest window: s, and in steps of the grid.
struct Longest {
    window: f64,
    whole: usize,
    part: f64,
}

/// Windows are compared by the square of the criterion, gain^5 / length^3, which needs no root.
fn square(gain: f64, share: f64) -> f64 {
    let gain = gain.max(0.0);
    gain * gain * gain * gain * gain * share
}

fn share(length: f64) -> f64 {
    1.0 / (length * length * length)
}

/// The square of the criterion, whatever the acceleration does.
fn of_every_window(samples: &[(f64, f64)], step: f64, longest: &Longest) -> f64 {
    let first = samples[0];
    let Longest {
        window,
        whole,
        part,
    } = *longest;
    // Speed gained up to each grid point, in g seconds: a mean is then one subtraction.
    let mut gained = Vec::with_capacity(POINTS);
    let mut sum = 0.0;
    let mut i = 0;
    for pair in samples.windows(2) {
        let ((from, value), (to, next)) = (pair[0], pair[1]);
        let bend = 0.5 * (next - value) / (to - from);
        while i < POINTS {
            let into = first.0 + step * i as f64 - from;
            if from + into >= to {
                break;
            }
            gained.push((sum + (value + bend * into) * into) / GRAVITY);
            i += 1;
        }
        sum += 0.5 * (value + next) * (to - from);
    }
    gained.resize(POINTS, sum / GRAVITY);
    let longest = whole.min(POINTS - 1);
    // The longest windows first: they are seldom beaten, and then only by ones nearly as long.
    let mut worst = 0.0_f64;
    let longest_share = share(step * longest as f64);
    let mut take = |one: f64| {
        if one > worst {
            worst = one;
        }
    };
    for (start, end) in gained.iter().zip(&gained[longest..]) {
        take(square(end - start, longest_share));
    }
    let window_share = share(window);
    for (start, ends) in gained.iter().zip(gained.windows(2).skip(whole)) {
        let end = ends[0] + part * (ends[1] - ends[0]);
        take(square(end - start, window_share));
    }
    // No window gains faster than the steepest step, so one of `steps` counts for at most
    // steepest^5 (steps step)^2: those too short to beat the worst so far are left out unseen.
    let steepest = gained
        .windows(2)
        .map(|ends| ends[1] - ends[0])
        .fold(0.0, |most, one| if one > most { one } else { most })
        * (1.0 + ROUNDING);
    let shares: Vec<f64> = (0..=longest)
        .map(|steps| share(step * steps as f64))
        .collect();
    let shortest = (1..longest)
        .find(|&steps| square(steepest * steps as f64, shares[steps]) > worst)
        .unwrap_or(longest);
    // Where all pushes one way, the last of several ends has gained most.
    let rising = gained.windows(2).all(|ends| ends[1] >= ends[0]);
    for (from, start) in gained.iter().enumerate() {
        let to = (from + longest).min(POINTS - 1);
        if from + shortest > to {
            break;
        }
        let ends = &gained[from + shortest..=to];
        let most = if rising {
            gained[to] - start
        } else {
            ends.iter().fold(0.0_f64, |most, end| most.max(end - start))
        };
        if square(most * (1.0 + ROUNDING), shares[shortest]) <= worst {
            continue;
        }
        for (end, share) in ends.iter().zip(&shares[shortest..]) {
            worst = worst.max(square(end - start, *share));
        }
    }
    worst
}

/// Where the acceleration is highest, if it rises up to there and falls after it, as every pulse with one top does.
fn single_top(samples: &[(f64, f64)]) -> Option<usize> {
    let mut top = 0;
    for (at, sample) in samples.iter().enumerate() {
        if sample.1 > samples[top].1 {
            top = at;
        }
    }
    let hair = ROUNDING * samples[top].1.abs();
    let rises = |pair: &[(f64, f64)]| pair[1].1 >= pair[0].1 - hair;
    let falls = |pair: &[(f64, f64)]| pair[1].1 <= pair[0].1 + hair;
    let one = samples[..=top].windows(2).all(rises) && samples[top..].windows(2).all(falls);
    one.then_some(top)
}

/// Speed gained up to points of the grid, worked out where it is asked for.
struct Rise<'a> {
    samples: &'a [(f64, f64)],
    step: f64,
    /// Gained up to each sample, m/s.
    sums: Vec<f64>,
}

impl Rise<'_> {
    fn new(samples: &[(f64, f64)], step: f64) -> Rise<'_> {
        let mut sums = Vec::with_capacity(samples.len());
        let mut sum = 0.0;
        sums.push(sum);
        for pair in samples.windows(2) {
            sum += 0.5 * (pair[0].1 + pair[1].1) * (pair[1].0 - pair[0].0);
            sums.push(sum);
        }
        Rise {
            samples,
            step,
            sums,
        }
    }

    /// In g seconds, up to a point; `piece` is where the search for its straight piece begins and ends.
    fn at(&self, point: usize, piece: &mut usize) -> f64 {
        let time = self.samples[0].0 + self.step * point as f64;
        while *piece > 0 && time < self.samples[*piece].0 {
            *piece -= 1;
        }
        while *piece + 1 < self.samples.len() && time >= self.samples[*piece + 1].0 {
            *piece += 1;
        }
        let (from, value) = self.samples[*piece];
        let Some((to, next)) = self.samples.get(*piece + 1) else {
            return self.sums[*piece] / GRAVITY;
        };
        let into = time - from;
        let bend = 0.5 * (next - value) / (to - from);
        (self.sums[*piece] + (value + bend * into) * into) / GRAVITY
    }

    /// The square of the criterion where the acceleration has one top. Of all windows of so many steps, the one that
    /// gains most grows, from the steepest step on, by the steeper of its two neighbours; one of the full length lies
    /// within a step of it.
    fn worst(&self, top: usize, longest: &Longest) -> f64 {
        let Longest {
            window,
            whole,
            part,
        } = *longest;
        let last = POINTS - 1;
        let there = f64::floor((self.samples[top].0 - self.samples[0].0) / self.step) as usize;
        let (mut low, mut high) = (top, top);
        let mut steepest = (f64::NEG_INFINITY, 0);
        for point in there.saturating_sub(1)..=(there + 1).min(last - 1) {
            let gain = self.at(point + 1, &mut high) - self.at(point, &mut low);
            if gain > steepest.0 {
                steepest = (gain, point);
            }
        }
        let (mut from, mut to) = (steepest.1, steepest.1 + 1);
        let before = |from: usize, low: &mut usize| match from {
            0 => f64::NEG_INFINITY,
            from => self.at(from - 1, low),
        };
        let after = |to: usize, high: &mut usize| match to {
            to if to == last => f64::NEG_INFINITY,
            to => self.at(to + 1, high),
        };
        let (mut start, mut end) = (self.at(from, &mut low), self.at(to, &mut high));
        let (mut outside, mut beyond) = (before(from, &mut low), after(to, &mut high));
        let mut worst = 0.0_f64;
        let most = whole.min(last);
        for steps in 1..=most {
            worst = worst.max(square(end - start, share(self.step * steps as f64)));
            if steps == most {
                break;
            }
            // What lies outside the grid gains nothing at all.
            let left = if outside.is_finite() {
                start - outside
            } else {
                outside
            };
            if left >= beyond - end {
                (from, start) = (from - 1, outside);
                outside = before(from, &mut low);
            } else {
                (to, end) = (to + 1, beyond);
                beyond = after(to, &mut high);
            }
        }
        for point in from.saturating_sub(1)..=from + 1 {
            if point + whole < last {
                let gained = self.at(point, &mut low);
                let ends = [0, 1].map(|one| self.at(point + whole + one, &mut high));
                let gain = ends[0] + part * (ends[1] - ends[0]) - gained;
                worst = worst.max(square(gain, share(window)));
            }
        }
        worst
    }
}

#[cfg(test)]
mod tests {
    use super::{GRAVITY, injury_criterion};

    /// The definition with nothing left out: every window between the grid's points and of the full length.
    fn by_every_window(samples: &[(f64, f64)], window: f64) -> f64 {
        let (first, last) = (samples[0].0, samples[samples.len() - 1].0);
        let step = (last - first) / 399.0;
        let gained = |to: f64| {
            let area = |pair: &[(f64, f64)]| {
                let ((t0, a0), (t1, a1)) = (pair[0], pair[1]);
                let end = to.clamp(t0, t1);
                let there = if t1 > t0 {
                    a0 + (a1 - a0) * (end - t0) / (t1 - t0)
                } else {
                    a0
                };
                0.5 * (a0 + there) * (end - t0)
            };
            samples.windows(2).map(area).sum::<f64>() / GRAVITY
        };
        let of = |gain: f64, length: f64| libm::pow(gain.max(0.0), 2.5) / libm::pow(length, 1.5);
        let mut worst = 0.0_f64;
        for from in 0..400_u32 {
            let start = first + step * f64::from(from);
            for to in from + 1..400 {
                let end = first + step * f64::from(to);
                if end - start <= window * (1.0 + 1e-12) {
                    worst = worst.max(of(gained(end) - gained(start), end - start));
                }
            }
            if start + window <= last {
                worst = worst.max(of(gained(start + window) - gained(start), window));
            }
        }
        worst
    }

    /// Pulses that are wide, narrow, two-humped, spiked and partly negative: what is left out unseen never
    /// counted. Between two points the grid's own straight line is all that differs.
    #[test]
    fn no_window_that_counts_is_left_out() {
        let wave = |duration: f64, a: f64, b: f64| -> Vec<(f64, f64)> {
            (0..=40)
                .map(|i| {
                    let share = f64::from(i) / 40.0;
                    let phase = core::f64::consts::PI * share;
                    let value = a * libm::sin(phase) + b * libm::sin(5.0 * phase);
                    (duration * share, value)
                })
                .collect()
        };
        let spike = vec![
            (0.0, 0.0),
            (0.05, 20.0),
            (0.051, 900.0),
            (0.052, 10.0),
            (0.1, 0.0),
        ];
        let level = vec![(0.0, 200.0), (0.04, 200.0)];
        for samples in [
            wave(0.2, 300.0, 0.0),
            wave(0.012, 900.0, 100.0),
            wave(0.03, 500.0, 700.0),
            wave(0.1, 100.0, -400.0),
            wave(0.015, 400.0, 0.0),
            spike,
            level,
        ] {
            for window in [0.015, 0.036] {
                let expected = by_every_window(&samples, window);
                let found = injury_criterion(&samples, window);
                assert!(
                    (found - expected).abs() < 1e-4 * expected,
                    "{found} {expected} {samples:?}"
                );
            }
        }
    }
}
