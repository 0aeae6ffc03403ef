//! Weather and the body: heat, cold, wind and lightning.
//!
//! Wet-bulb globe temperature by ISO 7243, its limits as recalled from the 2017 edition; heat index and
//! wind chill as the United States National Weather Service works them out; the Beaufort scale's lower
//! bounds as the World Meteorological Organization prints them. Temperatures are in kelvin.

use super::{CELSIUS_ZERO, sound};

/// Metres per second in a mile an hour.
const MILE_PER_HOUR: f64 = 0.447_04;

fn fahrenheit(kelvin: f64) -> f64 {
    (kelvin - CELSIUS_ZERO) * 1.8 + 32.0
}

fn from_fahrenheit(degrees: f64) -> f64 {
    (degrees - 32.0) / 1.8 + CELSIUS_ZERO
}

/// Wet-bulb globe temperature, K (ISO 7243). With the sun on people `air` counts; in shade or indoors it
/// does not and is none.
pub fn wet_bulb_globe(natural_wet_bulb: f64, globe: f64, air: Option<f64>) -> f64 {
    match air {
        Some(air) => 0.7 * natural_wet_bulb + 0.2 * globe + 0.1 * air,
        None => 0.7 * natural_wet_bulb + 0.3 * globe,
    }
}

/// How hard a body works (ISO 7243, table of metabolic rates).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Work {
    /// Class 0, sitting still.
    Resting,
    /// Class 1, walking about.
    Low,
    /// Class 2, steady work with arms and legs.
    Moderate,
    /// Class 3, intense work.
    High,
    /// Class 4, as hard as one can.
    VeryHigh,
}

impl Work {
    /// Heat made by a body at this work, W (ISO 7243:2017, from memory).
    pub fn metabolic_rate(self) -> f64 {
        match self {
            Work::Resting => 115.0,
            Work::Low => 180.0,
            Work::Moderate => 295.0,
            Work::High => 415.0,
            Work::VeryHigh => 520.0,
        }
    }

    /// Wet-bulb globe temperature up to which this work goes on without rests, K (ISO 7243:2017, from
    /// memory).
    pub fn wet_bulb_globe_limit(self, acclimatised: bool) -> f64 {
        let (used, unused) = match self {
            Work::Resting => (33.0, 32.0),
            Work::Low => (30.0, 29.0),
            Work::Moderate => (28.0, 26.0),
            Work::High => (26.0, 23.0),
            Work::VeryHigh => (25.0, 20.0),
        };
        CELSIUS_ZERO + if acclimatised { used } else { unused }
    }
}

/// Share of each hour that a body may work at `rate` watts and rest for the remainder, from 0 to 1.
///
/// The mean rate over the hour stays at the most that the curves allow at this wet-bulb globe temperature:
/// 56.7 - 11.5 log10(M) used to the heat, 59.9 - 14.1 log10(M) not (NIOSH 2016-106, from memory; ISO 7243
/// draws the same curves). A rest counts as class 0 in the same place.
pub fn work_share(wet_bulb_globe: f64, rate: f64, acclimatised: bool) -> f64 {
    let celsius = wet_bulb_globe - CELSIUS_ZERO;
    let allowed = if acclimatised {
        libm::exp10((56.7 - celsius) / 11.5)
    } else {
        libm::exp10((59.9 - celsius) / 14.1)
    };
    let rest = Work::Resting.metabolic_rate();
    if rate <= rest {
        return if allowed >= rate { 1.0 } else { 0.0 };
    }
    ((allowed - rest) / (rate - rest)).clamp(0.0, 1.0)
}

/// Heat index, K, for a relative humidity from 0 to 1: L. P. Rothfusz's regression with the National
/// Weather Service's two adjustments, and its simple form where that stays below 80 degrees Fahrenheit.
pub fn heat_index(air: f64, humidity: f64) -> f64 {
    let t = fahrenheit(air);
    let r = 100.0 * humidity;
    let simple = 0.5 * (t + 61.0 + 1.2 * (t - 68.0) + 0.094 * r);
    let averaged = 0.5 * (simple + t);
    if averaged < 80.0 {
        return from_fahrenheit(averaged);
    }
    let mut index = -42.379 + 2.049_015_23 * t + 10.143_331_27 * r
        - 0.224_755_41 * t * r
        - 6.837_83e-3 * t * t
        - 5.481_717e-2 * r * r
        + 1.228_74e-3 * t * t * r
        + 8.528_2e-4 * t * r * r
        - 1.99e-6 * t * t * r * r;
    if r < 13.0 && (80.0..=112.0).contains(&t) {
        index -= 0.25 * (13.0 - r) * f64::sqrt((17.0 - (t - 95.0).abs()).max(0.0) / 17.0);
    } else if r > 85.0 && (80.0..=87.0).contains(&t) {
        index += 0.1 * (r - 85.0) * 0.2 * (87.0 - t);
    }
    from_fahrenheit(index)
}

/// Wind chill, K, for the wind at 10 m in the open (National Weather Service, 2001). Above 50 degrees
/// Fahrenheit or below 3 miles an hour there is none, and the air's own temperature stands.
pub fn wind_chill(air: f64, wind: f64) -> f64 {
    let t = fahrenheit(air);
    let v = wind / MILE_PER_HOUR;
    if t > 50.0 || v < 3.0 {
        return air;
    }
    let power = libm::pow(v, 0.16);
    from_fahrenheit(35.74 + 0.6215 * t - 35.75 * power + 0.4275 * t * power)
}

/// Lower bounds of Beaufort 1 to 12, m/s.
const BEAUFORT: [f64; 12] = [
    0.3, 1.6, 3.5, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7,
];

/// Beaufort's number for a mean wind, 0 to 12.
pub fn beaufort(wind: f64) -> u8 {
    BEAUFORT.iter().map(|bound| u8::from(wind >= *bound)).sum()
}

/// How far away lightning struck, m, by the seconds from flash to thunder.
pub fn lightning_distance(flash_to_bang: f64, air: f64) -> f64 {
    sound::speed(air) * flash_to_bang
}

/// Thunder this soon after the flash sends everyone to shelter, s (30-30 rule).
pub const SHELTER_WITHIN: f64 = 30.0;

/// Work goes on this long after the last thunder, s (30-30 rule).
pub const RESUME_AFTER: f64 = 1800.0;

/// Whether to shelter: thunder followed the flash too soon, or the last thunder is too fresh. Only half an hour
/// without thunder says no; a flash far off says nothing of earlier ones, and what is not known is none.
pub fn shelter(flash_to_bang: Option<f64>, since_last_thunder: Option<f64>) -> Option<bool> {
    if flash_to_bang.is_some_and(|seconds| seconds <= SHELTER_WITHIN) {
        return Some(true);
    }
    since_last_thunder.map(|seconds| seconds < RESUME_AFTER)
}
