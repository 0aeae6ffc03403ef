//! Pain and blister under a steady heat flux: Stoll and Chianta 1969. The curve of heat taken up until
//! a second-degree burn, Q (cal/cm2) = 1.1991 t^0.2901, holds from about 1 s to 30 s.

/// Joules per square metre in a calorie per square centimetre.
const CALORIE_PER_CM2: f64 = 41_840.0;

/// Heat per area that just makes a second-degree burn when it arrives evenly over `time`, J/m2.
pub fn heat_to_blister(time: f64) -> f64 {
    CALORIE_PER_CM2 * 1.1991 * libm::pow(time, 0.2901)
}

/// Time to a second-degree burn under a steady absorbed flux, s, for the flux in W/m2.
pub fn time_to_blister(flux: f64) -> f64 {
    // Q = q t, so q t = c t^0.2901 and t = (c / q)^(1 / (1 - 0.2901)).
    libm::pow(CALORIE_PER_CM2 * 1.1991 / flux, 1.0 / (1.0 - 0.2901))
}
