//! The normal distribution, for how landings scatter.

use std::sync::LazyLock;

/// Probability that a standard normal variable is below `x`.
pub fn normal_below(x: f64) -> f64 {
    0.5 * libm::erfc(-x * core::f64::consts::FRAC_1_SQRT_2)
}

/// Density of a standard normal variable at `x`.
pub fn normal_density(x: f64) -> f64 {
    ROOT_TAU_INVERSE * libm::exp(-0.5 * x * x)
}

/// Parts of one deviation between the points of the table, and where it begins and ends.
const TABLE_PARTS: f64 = 32.0;
const TABLE_ENDS: (f64, f64) = (-10.0, 8.5);

/// The chance below each point and the density there.
static TABLE: LazyLock<Vec<(f64, f64)>> = LazyLock::new(|| {
    (0..=((TABLE_ENDS.1 - TABLE_ENDS.0) * TABLE_PARTS) as usize)
        .map(|i| {
            let at = TABLE_ENDS.0 + i as f64 / TABLE_PARTS;
            (normal_below(at), normal_density(at))
        })
        .collect()
});

/// As [`normal_below`] to within 1e-7 of itself, for sums of very many: five terms of Taylor's series about
/// the nearest point of a table. Chances under 1e-23 count as none.
pub fn normal_below_near(x: f64) -> f64 {
    if x >= TABLE_ENDS.1 {
        return 1.0;
    }
    let place = (x - TABLE_ENDS.0) * TABLE_PARTS + 0.5;
    let near = (place >= 0.0).then(|| TABLE.get(place as usize)).flatten();
    let Some(&(below, density)) = near else {
        return if x.is_nan() { x } else { 0.0 };
    };
    let at = TABLE_ENDS.0 + (place as usize) as f64 / TABLE_PARTS;
    let (d, square) = (x - at, at * at);
    let series = 1.0
        + d * (-0.5 * at
            + d * ((square - 1.0) / 6.0
                + d * (at * (3.0 - square) / 24.0
                    + d * ((square * square - 6.0 * square + 3.0) / 120.0))));
    below + density * d * series
}

/// Probability that a normal variable lies outside two bounds, exact to its last digits however small:
/// the tails are added, not taken from one. A deviation of nothing puts all of it at the mean.
pub fn normal_outside(low: f64, high: f64, mean: f64, deviation: f64) -> f64 {
    if low > high {
        return 1.0;
    }
    if deviation <= 0.0 {
        return if low <= mean && mean <= high {
            0.0
        } else {
            1.0
        };
    }
    (normal_below((low - mean) / deviation) + normal_below((mean - high) / deviation)).min(1.0)
}

/// Probability that a normal variable lies between two bounds, which may be infinite. Taken from the nearer
/// tail, so that a small one keeps its digits.
pub fn normal_inside(low: f64, high: f64, mean: f64, deviation: f64) -> f64 {
    if low >= high {
        return 0.0;
    }
    if deviation <= 0.0 {
        return if low <= mean && mean <= high {
            1.0
        } else {
            0.0
        };
    }
    let (a, b) = ((low - mean) / deviation, (high - mean) / deviation);
    if a > 0.0 {
        normal_below(-a) - normal_below(-b)
    } else {
        normal_below(b) - normal_below(a)
    }
}

/// The same for several lower bounds under one upper bound: what they share is found once.
pub fn normal_inside_each<const N: usize>(
    lows: [f64; N],
    high: f64,
    mean: f64,
    deviation: f64,
) -> [f64; N] {
    let b = (high - mean) / deviation;
    let mut upper = [None; 2];
    lows.map(|low| {
        if low >= high || deviation <= 0.0 {
            return normal_inside(low, high, mean, deviation);
        }
        let a = (low - mean) / deviation;
        let right = a > 0.0;
        let sign = if right { -1.0 } else { 1.0 };
        let end = *upper[usize::from(right)].get_or_insert_with(|| normal_below(sign * b));
        sign * (end - normal_below(sign * a))
    })
}

/// How many deviations to each side leave `outside` probability in the two tails together.
pub fn two_sided_quantile(outside: f64) -> f64 {
    if outside >= 1.0 {
        return 0.0;
    }
    let wanted = libm::log(outside);
    // Newton on the logarithm, which is concave, from a bound that is past the root (erfc x <= exp -x^2):
    // each round comes nearer from that side. Chances too small for a double end at the bound.
    let mut at = f64::sqrt(-2.0 * wanted).min(38.0);
    for _ in 0..40 {
        let tails = libm::erfc(at * core::f64::consts::FRAC_1_SQRT_2);
        let density = 2.0 * ROOT_TAU_INVERSE * libm::exp(-0.5 * at * at);
        let past = (wanted - libm::log(tails)) * tails / density;
        if !past.is_finite() {
            break;
        }
        at = (at - past).max(0.0);
        if past.abs() <= 1e-15 * at {
            break;
        }
    }
    at
}

/// One over the root of two pi.
const ROOT_TAU_INVERSE: f64 = 0.398_942_280_401_432_7;

#[cfg(test)]
mod tests {
    use super::{normal_below, normal_below_near, two_sided_quantile};

    /// The table keeps its promise from end to end and past both.
    #[test]
    fn the_table_is_near() {
        for i in -120_000..100_000 {
            let x = f64::from(i) * 1e-4 + 3e-5;
            let (near, exact) = (normal_below_near(x), normal_below(x));
            let off = (near - exact).abs();
            assert!(off <= 1e-7 * exact || exact < 1e-23, "{x}: {near} {exact}");
        }
    }

    /// The quantile leaves in the tails what was asked for, and is the table's where tables go (two-sided
    /// points of the standard normal distribution, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1).
    #[test]
    fn the_quantile_leaves_what_was_asked_for() {
        for (outside, expected) in [(0.05, 1.959_964), (0.01, 2.575_829), (0.001, 3.290_527)] {
            assert!((two_sided_quantile(outside) - expected).abs() < 1e-6);
        }
        for power in 0..300 {
            for share in [0.999_999, 0.5, 0.2] {
                let outside = share * libm::pow(10.0, f64::from(-power));
                let left = libm::erfc(two_sided_quantile(outside) / core::f64::consts::SQRT_2);
                assert!((left / outside - 1.0).abs() < 1e-11, "{outside}: {left}");
            }
        }
        assert_eq!(two_sided_quantile(1.0), 0.0);
    }
}
