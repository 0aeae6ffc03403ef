//! A body struck by a car, for what a picture of it should look like: the plastic impact (conservation of
//! momentum) and the throw distance of J. A. Searle and A. Searle, The Trajectories of Pedestrians,
//! Motorcycles, Motorcyclists, etc., Following a Road Accident, SAE 831622 (1983).

use super::GRAVITY;

/// Common speed of a car and a body that stays with it, m/s.
pub fn plastic(car_mass: f64, car_speed: f64, body_mass: f64) -> f64 {
    car_mass * car_speed / (car_mass + body_mass)
}

/// Speed of a throw that ends after a distance, for a known angle of projection, m/s.
pub fn speed_at(friction: f64, distance: f64, angle: f64) -> f64 {
    f64::sqrt(2.0 * friction * GRAVITY * distance)
        / (libm::cos(angle) + friction * libm::sin(angle))
}

/// The least speed that throws a body so far, at its best angle, m/s.
pub fn least_speed(friction: f64, distance: f64) -> f64 {
    f64::sqrt(2.0 * friction * GRAVITY * distance / (1.0 + friction * friction))
}

/// The speed at which a body that slides all the way goes so far, m/s.
pub fn most_speed(friction: f64, distance: f64) -> f64 {
    f64::sqrt(2.0 * friction * GRAVITY * distance)
}

/// Distances that a throw of a speed may end at: sliding all the way, and at its best angle, m.
pub fn throws(friction: f64, speed: f64) -> (f64, f64) {
    let slid = speed * speed / (2.0 * friction * GRAVITY);
    (slid, slid * (1.0 + friction * friction))
}
