//! Bridles: the tension of two legs that hold one load, by statics.

/// Tension of each of two equal legs, N, with the whole angle between them, rad:
/// W / (2 cos(half the angle)).
pub fn equal_legs(load: f64, included_angle: f64) -> f64 {
    load / (2.0 * libm::cos(0.5 * included_angle))
}

/// Tensions of two legs that leave the load at `left` and `right` radians from the vertical, N, from
/// the balance of forces: T_left sin(left) = T_right sin(right), and the uprights carry the load.
/// None when both hang on the same side or the legs cannot hold it.
pub fn unequal_legs(load: f64, left: f64, right: f64) -> Option<(f64, f64)> {
    let whole = libm::sin(left + right);
    let (from_left, from_right) = (libm::sin(right), libm::sin(left));
    if whole <= 1e-12 || from_left < 0.0 || from_right < 0.0 {
        return None;
    }
    Some((load * from_left / whole, load * from_right / whole))
}

/// Tensions for a load hung between two points at `heights` above it and `distances` to each side.
pub fn unequal_heights(
    load: f64,
    heights: (f64, f64),
    distances: (f64, f64),
) -> Option<(f64, f64)> {
    unequal_legs(
        load,
        libm::atan2(distances.0, heights.0),
        libm::atan2(distances.1, heights.1),
    )
}
