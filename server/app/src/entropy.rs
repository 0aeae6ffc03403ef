//! Random bytes from the operating system: the edge's counterpart to the clock. Everything further in
//! is handed its randomness as an argument.

use rand::Rng;

/// Fills bytes from the system's generator.
pub fn system(bytes: &mut [u8]) {
    rand::rng().fill_bytes(bytes);
}
