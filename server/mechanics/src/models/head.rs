//! Head injury criterion: max over windows of (t2 - t1) [mean a over the window, in g]^2.5
//! (49 CFR 571.208 S6.2; ASTM F1292 uses it without a cap on the window).

use super::GRAVITY;

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
    const POINTS: usize = 400;
    let step = span / (POINTS - 1) as f64;
    // Speed gained up to each grid point, in g seconds: a mean is then one subtraction.
    let mut gained = Vec::with_capacity(POINTS);
    let mut sum = 0.0;
    let mut piece = 0;
    let mut before = (first.0, first.1);
    gained.push(0.0);
    for i in 1..POINTS {
        let to = first.0 + step * i as f64;
        while piece + 1 < samples.len() && samples[piece + 1].0 <= to {
            let next = samples[piece + 1];
            sum += 0.5 * (before.1 + next.1) * (next.0 - before.0);
            before = next;
            piece += 1;
        }
        if piece + 1 < samples.len() && to > before.0 {
            let end = samples[piece + 1];
            let value = before.1 + (end.1 - before.1) * (to - before.0) / (end.0 - before.0);
            sum += 0.5 * (before.1 + value) * (to - before.0);
            before = (to, value);
        }
        gained.push(sum / GRAVITY);
    }
    // The longest window seldom ends on the grid, so its end is taken between two points.
    let whole = libm::floor(window / step).min(POINTS as f64) as usize;
    let part = window / step - whole as f64;
    // Windows are compared by the square of the criterion, gain^5 / length^3, which needs no root.
    let share = |length: f64| 1.0 / (length * length * length);
    let longest = whole.min(POINTS - 1);
    let shares: Vec<f64> = (0..=longest)
        .map(|steps| share(step * steps as f64))
        .collect();
    let mut worst = 0.0_f64;
    for from in 0..POINTS {
        let to = (from + longest).min(POINTS - 1);
        let start = gained[from];
        for (end, share) in gained[from + 1..=to].iter().zip(&shares[1..]) {
            let gain = (end - start).max(0.0);
            worst = worst.max(gain * gain * gain * gain * gain * share);
        }
        let before = from + whole;
        if before + 1 < POINTS {
            let end = gained[before] + part * (gained[before + 1] - gained[before]);
            let gain = (end - start).max(0.0);
            worst = worst.max(gain * gain * gain * gain * gain * share(window));
        }
    }
    libm::sqrt(worst)
}
