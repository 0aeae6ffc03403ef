//! Shared physics: each model in its own file, with its equation's source.
//!
//! A model takes SI numbers and gives SI numbers. It knows no parameter, check or person. Elementary
//! functions come from `libm`, so that native and WebAssembly builds give the same bytes; the square root and
//! rounding are exact everywhere and a processor's own.

pub mod atmosphere;
pub mod blow;
pub mod bridle;
pub mod camera;
pub mod car_balance;
pub mod cold_water;
pub mod conduction;
pub mod dragging;
pub mod exertion;
pub mod fall;
pub mod gas;
pub mod gimbal;
pub mod glass;
pub mod head;
pub mod head_pulse;
mod hodograph;
pub mod landing;
pub mod line_arrest;
pub mod long_line;
mod margin;
pub mod moving_floor;
pub mod ode;
pub mod peak;
pub mod pedestrian;
pub mod pendulum;
pub mod pool_fire;
pub mod registration;
pub mod risk;
pub mod shackle;
pub mod skin;
pub mod slide;
pub mod slow_swing;
pub mod sound;
pub mod spread;
pub mod sprint;
pub mod stair;
pub mod stoll;
pub mod stopping;
pub mod stride;
mod stride_piece;
pub mod sun;
mod swing;
pub mod tether;
pub mod tolerance;
pub mod trajectory;
pub mod tumble;
pub mod unweighting;
pub mod water_entry;
pub mod weather;
pub mod wet_layers;
pub mod wire;

/// Standard gravity, m/s2 (CGPM 1901).
pub const GRAVITY: f64 = 9.806_65;

/// Absolute zero on the Celsius scale, K.
pub const CELSIUS_ZERO: f64 = 273.15;

/// Standard atmosphere, Pa (CGPM 1954).
pub const STANDARD_ATMOSPHERE: f64 = 101_325.0;

/// One over it, 1/Pa.
pub const PER_ATMOSPHERE: f64 = 1.0 / STANDARD_ATMOSPHERE;

/// The long side of a right triangle. No side that a plan can have is so long or short that its square is lost, so that
/// this is as near as `libm`'s careful form and a fraction of its cost.
pub fn hypot(x: f64, y: f64) -> f64 {
    f64::sqrt(x * x + y * y)
}
