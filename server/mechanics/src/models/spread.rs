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
    let (mut low, mut high) = (0.0, 40.0);
    // erfc falls strictly, so halving the bracket always closes on the root.
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if libm::erfc(middle * core::f64::consts::FRAC_1_SQRT_2) > outside {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
