//! What columns of numbers come to, and Student's t. Written here and not taken from a library, because
//! these must give the same bytes on the server and in the browser.

/// A column in a few numbers.
pub(super) struct Summary {
    pub count: usize,
    pub mean: f64,
    pub deviation: f64,
    pub low: f64,
    pub median: f64,
    pub high: f64,
}

/// The finite numbers of a column, summed up; none when there are none.
pub(super) fn summary(column: &[f64]) -> Option<Summary> {
    let mut given: Vec<f64> = column
        .iter()
        .copied()
        .filter(|value| value.is_finite())
        .collect();
    let count = given.len();
    // A shift by the first value keeps a column of equal numbers exact.
    let shift = *given.first()?;
    let mean_shift = given.iter().map(|value| value - shift).sum::<f64>() / count as f64;
    let squares: f64 = given
        .iter()
        .map(|value| {
            let off = value - shift - mean_shift;
            off * off
        })
        .sum();
    // Three quantiles need three places in order, not all of them.
    let [low, median, high] = [0.05, 0.5, 0.95].map(|share| quantile(&mut given, share));
    Some(Summary {
        count,
        mean: shift + mean_shift,
        deviation: f64::sqrt(squares / (count.max(2) - 1) as f64),
        low,
        median,
        high,
    })
}

/// A quantile of numbers, in a straight line between neighbours (type 7 of R. J. Hyndman and Y. Fan, The
/// American Statistician 50, 1996). Puts the numbers partly in order.
fn quantile(given: &mut [f64], share: f64) -> f64 {
    let place = share * (given.len() - 1) as f64;
    let below = f64::floor(place) as usize;
    let (_, low, above) = given.select_nth_unstable_by(below, f64::total_cmp);
    let low = *low;
    let high = above.iter().copied().min_by(f64::total_cmp).unwrap_or(low);
    low + (high - low) * (place - below as f64)
}

/// The t that `confidence` of Student's distribution lies within, either side: by bisection of its
/// distribution function.
pub(super) fn student_t(confidence: f64, freedom: f64) -> f64 {
    let wanted = 0.5 * (1.0 - confidence);
    let (mut low, mut high) = (0.0_f64, 1.0_f64);
    while student_tail(high, freedom) > wanted && high < 1e9 {
        high *= 2.0;
    }
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if student_tail(middle, freedom) > wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

/// Chance of more than `t`: half the regularised incomplete beta function (Abramowitz and Stegun,
/// 26.7.1).
fn student_tail(t: f64, freedom: f64) -> f64 {
    0.5 * incomplete_beta(0.5 * freedom, 0.5, freedom / (freedom + t * t))
}

/// The regularised incomplete beta function by its continued fraction (Abramowitz and Stegun, 26.5.8),
/// evaluated by Lentz's method.
fn incomplete_beta(a: f64, b: f64, x: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    // The fraction converges fast on one side only.
    if x > (a + 1.0) / (a + b + 2.0) {
        return 1.0 - incomplete_beta(b, a, 1.0 - x);
    }
    let front = libm::exp(
        libm::lgamma(a + b) - libm::lgamma(a) - libm::lgamma(b)
            + a * libm::log(x)
            + b * libm::log(1.0 - x),
    ) / a;
    let tiny = 1e-300;
    let away = |value: f64| if value.abs() < tiny { tiny } else { value };
    let mut c = 1.0;
    let mut d = 1.0 / away(1.0 - (a + b) * x / (a + 1.0));
    let mut fraction = d;
    for step in 1..300 {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / away(1.0 + even * d);
        c = away(1.0 + even / c);
        fraction *= d * c;
        d = 1.0 / away(1.0 + odd * d);
        c = away(1.0 + odd / c);
        let change = d * c;
        fraction *= change;
        if (change - 1.0).abs() < 1e-15 {
            break;
        }
    }
    front * fraction
}

#[cfg(test)]
mod tests {
    use super::student_t;

    /// Two-sided 90, 95 and 99 % points: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
    #[test]
    fn student_t_is_the_handbooks() {
        for (freedom, confidence, expected) in [
            (1.0, 0.90, 6.314),
            (1.0, 0.99, 63.657),
            (2.0, 0.95, 4.303),
            (5.0, 0.90, 2.015),
            (10.0, 0.95, 2.228),
            (30.0, 0.99, 2.750),
            (100.0, 0.90, 1.660),
        ] {
            let found = student_t(confidence, freedom);
            assert!(
                (found - expected).abs() < 6e-4,
                "{freedom} {confidence}: {found}"
            );
        }
    }
}
