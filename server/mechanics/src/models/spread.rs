//! The normal distribution, for how landings scatter.

/// Probability that a standard normal variable is below `x`.
pub fn normal_below(x: f64) -> f64 {
    0.5 * libm::erfc(-x * core::f64::consts::FRAC_1_SQRT_2)
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

/// How many deviations to each side leave `outside` probability in the two tails together.
pub fn two_sided_quantile(outside: f64) -> f64 {
    if outside >= 1.0 {
        return 0.0;
    }
    let wanted = libm::log(outside);
    // Newton on the logarithm, which is concave, from a bound that is past the root (erfc x <= exp -x^2):
    // each round comes nearer from that side. Chances too small for a double end at the bound.
    let mut at = libm::sqrt(-2.0 * wanted).min(38.0);
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
    use super::two_sided_quantile;

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
