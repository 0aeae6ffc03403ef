//! Skin under heat: the three layers and the Henriques damage integral of ASTM F1930 and ISO 13506.
//!
//! Omega = integral of P exp(-E / T) while the temperature is above 44 C; injury at 1. The constants are
//! those of Weaver and Stoll at the base of the epidermis and of Takata at the base of the dermis. The
//! layer thicknesses and constants are from memory; the test table they reproduce is in the tests.

use super::{
    CELSIUS_ZERO,
    conduction::{Cell, Stack},
};

/// A layer of skin: thickness m, conductivity W/(m K), heat capacity J/(m3 K), cells.
const LAYERS: [(f64, f64, f64, usize); 3] = [
    (75e-6, 0.6280, 4.40e6, 3),
    (1125e-6, 0.5902, 4.186e6, 9),
    (3885e-6, 0.2930, 2.60e6, 8),
];

/// Depth of the base of the epidermis, m, where a second-degree burn is judged.
pub const EPIDERMIS_BASE: f64 = 75e-6;
/// Depth of the base of the dermis, m, where a third-degree burn is judged.
pub const DERMIS_BASE: f64 = 1200e-6;
/// Number of skin cells.
pub const CELLS: usize = 3 + 9 + 8;
/// Temperature of the surface before exposure, K (ASTM F1930).
pub const SURFACE_TEMPERATURE: f64 = CELSIUS_ZERO + 32.5;
/// Temperature at depth, held, K (ASTM F1930).
pub const DEEP_TEMPERATURE: f64 = CELSIUS_ZERO + 33.5;
/// Temperature above which damage counts and pain is felt, K.
pub const PAIN_TEMPERATURE: f64 = CELSIUS_ZERO + 44.0;

/// The skin's cells from the surface inward, at rest.
pub fn cells() -> Vec<Cell> {
    let depth: f64 = LAYERS.iter().map(|layer| layer.0).sum();
    let mut all = Vec::with_capacity(CELLS);
    let mut top = 0.0;
    for (thickness, conductivity, heat_capacity, count) in LAYERS {
        // Cells widen inward in the lower layers, where the temperature bends less.
        let widening: f64 = if thickness > 1e-4 { 1.25 } else { 1.0 };
        let mut parts = Vec::with_capacity(count);
        let mut part = 1.0;
        for _ in 0..count {
            parts.push(part);
            part *= widening;
        }
        let whole: f64 = parts.iter().sum();
        for part in parts {
            let width = thickness * part / whole;
            let share = (top + 0.5 * width) / depth;
            all.push(Cell {
                thickness: width,
                conductivity,
                heat_capacity,
                water: 0.0,
                dry_conductivity: conductivity,
                temperature: SURFACE_TEMPERATURE + share * (DEEP_TEMPERATURE - SURFACE_TEMPERATURE),
            });
            top += width;
        }
    }
    all
}

/// Where damage is judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Depth {
    /// Base of the epidermis: second-degree burn.
    EpidermisBase,
    /// Base of the dermis: third-degree burn.
    DermisBase,
}

impl Depth {
    /// Temperature there, K, in a stack whose skin starts at cell `first`.
    pub fn temperature(self, stack: &Stack, first: usize) -> f64 {
        let cells = match self {
            Depth::EpidermisBase => LAYERS[0].3,
            Depth::DermisBase => LAYERS[0].3 + LAYERS[1].3,
        };
        stack.face_temperature(first + cells - 1)
    }

    /// Damage a second, 1/s, at a temperature, K. The two branches differ by 16 % where they meet; at
    /// exactly 50 C the lower one holds.
    pub fn damage_rate(self, temperature: f64) -> f64 {
        if temperature <= PAIN_TEMPERATURE {
            return 0.0;
        }
        let below_fifty = temperature <= CELSIUS_ZERO + 50.0;
        let (factor, activation) = match (self, below_fifty) {
            (Depth::EpidermisBase, true) => (2.185e124, 93534.9),
            (Depth::EpidermisBase, false) => (1.823e51, 39109.8),
            (Depth::DermisBase, true) => (4.322e64, 50000.0),
            (Depth::DermisBase, false) => (9.389e104, 80000.0),
        };
        factor * libm::exp(-activation / temperature)
    }
}

/// Henriques' own constants, kept to check the form of the integral: P 3.1e98 1/s, E/R 75000 K.
pub fn henriques_rate(temperature: f64) -> f64 {
    3.1e98 * libm::exp(-75000.0 / temperature)
}
