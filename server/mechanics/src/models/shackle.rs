//! Forged shackles: what one may carry by its size, and what is left when it is pulled from the side.

/// One size of forged carbon-steel bow or dee shackle.
pub struct Shackle {
    /// Machine name, from the nominal body diameter in inches.
    pub name: &'static str,
    /// Working load limit in line, kg.
    pub working_load: f64,
}

const fn shackle(name: &'static str, tonnes: f64) -> Shackle {
    Shackle {
        name,
        working_load: tonnes * 1000.0,
    }
}

/// Working load limits in line of grade A shackles, tonnes: Federal Specification RR-C-271. From memory.
pub static SHACKLES: [Shackle; 4] = [
    shackle("3/8", 1.0),
    shackle("1/2", 2.0),
    shackle("5/8", 3.25),
    shackle("3/4", 4.75),
];

/// Breaking strength over working load limit, carbon steel: RR-C-271. From memory.
pub const CARBON_FACTOR: f64 = 6.0;

/// Breaking strength over working load limit, alloy steel: RR-C-271. From memory.
pub const ALLOY_FACTOR: f64 = 5.0;

/// The size of that machine name.
pub fn find(name: &str) -> Option<&'static Shackle> {
    SHACKLES.iter().find(|shackle| shackle.name == name)
}

/// Share of the working load limit left when the load is off the line by up to this angle, degrees;
/// none past square. A shackle is not pulled across its pin at all. Makers' tables, from memory; the
/// next worse row is taken between rows, never a line between them.
pub fn side_share(angle: f64) -> Option<f64> {
    match angle.abs() {
        0.0 => Some(1.0),
        angle if angle <= 45.0 => Some(0.7),
        angle if angle <= 90.0 => Some(0.5),
        _ => None,
    }
}
