//! A fire over spilled fuel: U.S. NRC, NUREG-1805, Fire Dynamics Tools, chapters 3 to 5. Heat released by the
//! burning rate, flame height by Heskestad, radiant heat from a single point. Still air and a round pool; the fuel
//! constants are those of its tables.

/// What burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fuel {
    /// Mass burned over area and time by a wide pool, kg/(m2 s).
    pub rate: f64,
    /// Heat of combustion, J/kg.
    pub heat: f64,
    /// How fast the rate comes up to that with the pool's width, 1/m.
    pub widening: f64,
    /// kg/m3.
    pub density: f64,
}

/// Petrol.
pub const PETROL: Fuel = Fuel {
    rate: 0.055,
    heat: 43.7e6,
    widening: 2.1,
    density: 740.0,
};
/// Ethanol. Density from memory.
pub const ETHANOL: Fuel = Fuel {
    rate: 0.015,
    heat: 26.8e6,
    widening: 100.0,
    density: 794.0,
};
/// Diesel. Density from memory, the table's high one: it burns longest.
pub const DIESEL: Fuel = Fuel {
    rate: 0.045,
    heat: 44.4e6,
    widening: 2.1,
    density: 918.0,
};

/// Width of a round pool of that area, m.
pub fn width(area: f64) -> f64 {
    f64::sqrt(4.0 * area / core::f64::consts::PI)
}

fn burning(fuel: &Fuel, area: f64) -> f64 {
    fuel.rate * (1.0 - libm::exp(-fuel.widening * width(area)))
}

/// Heat released, W: Q = m'' H (1 - exp(-k D)) A.
pub fn heat_released(fuel: &Fuel, area: f64) -> f64 {
    burning(fuel, area) * fuel.heat * area
}

/// Flame height over the pool, m: 0.235 Q^0.4 - 1.02 D, Q in kW (Heskestad). A flame is never below the pool.
pub fn flame_height(heat: f64, width: f64) -> f64 {
    (0.235 * libm::pow(heat / 1000.0, 0.4) - 1.02 * width).max(0.0)
}

/// Radiant heat at a distance from the pool's middle, W/m2: share x Q / 4 pi R2.
pub fn radiant_heat(heat: f64, share: f64, distance: f64) -> f64 {
    share * heat / (4.0 * core::f64::consts::PI * distance * distance)
}

/// Distance from the pool's middle at which radiant heat falls to `flux`, m.
pub fn distance_for(heat: f64, share: f64, flux: f64) -> f64 {
    f64::sqrt(share * heat / (4.0 * core::f64::consts::PI * flux))
}

/// Time that a layer of fuel burns, s.
pub fn burning_time(fuel: &Fuel, area: f64, depth: f64) -> f64 {
    fuel.density * depth / burning(fuel, area)
}
