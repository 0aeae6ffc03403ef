//! What cold water does to breath and warmth.
//!
//! Breath: J. S. Hayward and others, J. Appl. Physiol. 56, 1984: after a sudden dip people held 15.01 +
//! 0.92 T seconds in water of T degrees Celsius. Limits of useful time: the table of times to exhaustion
//! or unconsciousness that North American rescue services publish. Cooling: one warm body behind layers,
//! heat stored 3,470 J/(kg K), surface 1.9 m2 at 75 kg, skin and fat 0.08 m2 K/W when the vessels close,
//! water 0.005, foam rubber 0.05 W/(m K) (all from memory).

use super::CELSIUS_ZERO;

/// Share of a breath hold that is left in water of one temperature when it was rehearsed in another, K.
/// Warmer water gives nothing extra.
pub fn breath_share(water: f64, rehearsed: f64) -> f64 {
    let seconds = |kelvin: f64| 15.01 + 0.92 * (kelvin - CELSIUS_ZERO).max(0.0);
    (seconds(water) / seconds(rehearsed)).min(1.0)
}

/// Rows of the table: temperature, degrees Fahrenheit, and the least of the times given from there up, s.
/// Under 32.5 the table says only "under 15 minutes": straight down to nothing where sea water freezes.
const USEFUL: [(f64, f64); 7] = [
    (28.4, 0.0),
    (32.5, 900.0),
    (40.0, 1800.0),
    (50.0, 3600.0),
    (60.0, 7200.0),
    (70.0, 10_800.0),
    (80.0, 10_800.0),
];

/// Time to exhaustion or unconsciousness without a suit, s: the least of the table's band at the band's
/// cold end, straight between. Nothing is claimed beyond the last row's.
pub fn exhaustion_time(water: f64) -> f64 {
    let fahrenheit = (water - CELSIUS_ZERO) * 1.8 + 32.0;
    let mut time = USEFUL[0].1;
    for pair in USEFUL.windows(2) {
        let ((low, least), (high, most)) = (pair[0], pair[1]);
        if fahrenheit >= low {
            let share = ((fahrenheit - low) / (high - low)).min(1.0);
            time = least + (most - least) * share;
        }
    }
    time
}

const TISSUE: f64 = 0.08;
const WATER: f64 = 0.005;
const RUBBER: f64 = 0.05;
const STORED: f64 = 3470.0;
/// Mean temperature of a warm body, K.
pub const WARM: f64 = 309.65;

/// Resistance to heat from the body to the water, m2 K/W, in a suit of that thickness, m.
pub fn resistance(suit: f64) -> f64 {
    TISSUE + WATER + suit / RUBBER
}

/// How a body cools.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cooling {
    /// Where it would settle, K.
    pub settles: f64,
    /// One over its time constant, 1/s.
    pub rate: f64,
}

/// A body of a mass, kg, in water, K, with a suit, m, making heat, W.
pub fn cooling(mass: f64, water: f64, suit: f64, heat: f64) -> Cooling {
    // Like bodies: the surface goes with the two-thirds power of the mass.
    let root = libm::cbrt(mass / 75.0);
    let exchange = 1.9 * root * root / resistance(suit);
    Cooling {
        settles: water + heat / exchange,
        rate: exchange / (STORED * mass),
    }
}

impl Cooling {
    /// Mean temperature after a time, K; a warm body sheds what it need not keep.
    pub fn after(&self, time: f64) -> f64 {
        (self.settles + (WARM - self.settles) * libm::exp(-self.rate * time)).min(WARM)
    }

    /// Time until it has lost so many kelvin, s; a day at most.
    pub fn time_to_lose(&self, kelvin: f64) -> f64 {
        const DAY: f64 = 86_400.0;
        let span = WARM - self.settles;
        if span <= kelvin {
            return DAY;
        }
        (-libm::log1p(-kelvin / span) / self.rate).min(DAY)
    }
}
