//! The pull itself: gas from a reservoir through a valve into a cylinder, a piston, a springy line with
//! a purchase, and a body that is then thrown. Knows no limit.

use super::pulling;
use crate::{
    models::{
        GRAVITY, STANDARD_ATMOSPHERE, atmosphere,
        gas::{self, Reservoir, Valve},
        trajectory::{self, Landing, Throw},
    },
    reading::Values,
};

/// Share of critical damping in a loaded line (common practice; rope and cable are lightly damped).
const LINE_DAMPING: f64 = 0.1;
/// The body's centre above what it lies on, m (common practice).
const LYING_HEIGHT: f64 = 0.3;

/// Everything the pull depends on, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Setup {
    pub mass: f64,
    pub angle: f64,
    pub pick_height: f64,
    pub landing_height: f64,
    /// Absolute.
    pub pressure: f64,
    pub reservoir_volume: f64,
    pub area: f64,
    pub stroke: f64,
    pub purchase: f64,
    pub line_share: f64,
    pub dead_volume: f64,
    pub valve: Valve,
    pub opening: f64,
    pub moving_mass: f64,
    pub friction: f64,
    pub stiffness: f64,
    pub temperature: f64,
}

impl Setup {
    pub(super) fn of(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        let length = number("line_length")?;
        Some(Setup {
            mass: number("performer_mass")?,
            angle: number("pull_angle")?,
            pick_height: number("pick_height")?,
            landing_height: number("landing_height")? + LYING_HEIGHT,
            pressure: number("reservoir_pressure")? + STANDARD_ATMOSPHERE,
            reservoir_volume: number("reservoir_volume")?,
            // A rod as thick as its bore leaves nothing to push on.
            area: gas::piston_area(number("bore")?, number("rod")?.min(0.9 * number("bore")?)),
            stroke: number("stroke")?,
            purchase: number("purchase")?,
            line_share: number("line_share")?,
            dead_volume: number("dead_volume")?,
            valve: Valve {
                conductance: number("valve_conductance")?,
                critical_ratio: number("valve_critical_ratio")?,
            },
            opening: number("valve_opening_time")?,
            moving_mass: number("moving_mass")?,
            friction: number("seal_friction")?,
            stiffness: number("line_modulus")? / length,
            temperature: number("air_temperature")?,
        })
    }

    pub(super) fn reservoir(&self) -> Reservoir {
        Reservoir::new(
            self.reservoir_volume,
            self.pressure,
            self.temperature,
            self.valve,
        )
    }

    /// Damping of the line against the motion it couples: body on one end, piston seen through the
    /// purchase on the other, by their reduced mass.
    pub(super) fn damping(&self) -> f64 {
        let reduced = 1.0 / (1.0 / self.mass + self.purchase * self.purchase / self.moving_mass);
        2.0 * LINE_DAMPING * f64::sqrt(self.stiffness * reduced)
    }

    /// What holds the body back along the line: the part of its weight against the pull.
    pub(super) fn weight_along(&self) -> f64 {
        self.mass * GRAVITY * libm::sin(self.angle)
    }
}

/// A moment of the pull.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Moment {
    pub time: f64,
    pub tension: f64,
    pub speed: f64,
    pub travel: f64,
    pub cylinder: f64,
}

/// What a pull came to.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Pull {
    /// Whether the stroke was finished and the body let go.
    pub finished: bool,
    pub time: f64,
    pub first_moved: f64,
    pub speed: f64,
    pub travel: f64,
    pub peak_tension: f64,
    /// Absolute, Pa.
    pub pressure_left: f64,
    /// `(time, acceleration along the line)`, what the line does to the body.
    pub samples: Vec<(f64, f64)>,
    pub landing: Option<Landing>,
}

impl Pull {
    /// Along the ground from standing to landing; none for a pull that stalls.
    pub(super) fn distance(&self, setup: &Setup) -> Option<f64> {
        let landing = self.landing.as_ref()?;
        Some(self.travel * libm::cos(setup.angle) + landing.distance)
    }

    /// From a tenth to nine tenths of the peak, s.
    pub(super) fn rise_time(&self) -> Option<f64> {
        let peak = self
            .samples
            .iter()
            .fold(0.0_f64, |most, sample| most.max(sample.1));
        let first = |share: f64| {
            let at = self
                .samples
                .iter()
                .position(|sample| sample.1 >= share * peak)?;
            let (t1, a1) = self.samples[at];
            if at == 0 {
                return Some(t1);
            }
            let (t0, a0) = self.samples[at - 1];
            Some(t0 + (t1 - t0) * (share * peak - a0) / (a1 - a0))
        };
        if peak > 0.0 {
            Some(first(0.9)? - first(0.1)?)
        } else {
            None
        }
    }
}

/// The flight after the line goes slack, with the drag of an adult body (0.5 m2).
pub(super) fn fly(setup: &Setup, speed: f64, travel: f64) -> Option<Landing> {
    let height = setup.pick_height + travel * libm::sin(setup.angle) - setup.landing_height;
    trajectory::fly(&Throw {
        speed,
        angle: setup.angle,
        height,
        mass: setup.mass,
        drag_area: 0.5,
        density: atmosphere::density(0.0),
        wind: 0.0,
    })
}

/// The lowest and highest gauge pressure looked at for a wanted distance, Pa.
const PRESSURES: (f64, f64) = (0.1e5, 40.0e5);

/// The absolute pressure that gives a distance, and how far the distance moves for each pascal there.
/// None when no pressure in reach gives it. False position with the Illinois weighting, to a tenth of
/// a millimetre.
pub(super) fn pressure_for(setup: &Setup, wanted: f64) -> Option<(f64, f64)> {
    let miss = |gauge: f64| {
        let tried = Setup {
            pressure: gauge + STANDARD_ATMOSPHERE,
            ..*setup
        };
        let pull = pulling::run(&tried)?;
        Some(pull.distance(&tried).unwrap_or(0.0) - wanted)
    };
    // A bracket around the stated pressure first, since that is usually near.
    let stated = (setup.pressure - STANDARD_ATMOSPHERE).clamp(PRESSURES.0, PRESSURES.1);
    let at_stated = miss(stated)?;
    let (mut low, mut high) = ((stated, at_stated), (stated, at_stated));
    while low.1 > 0.0 {
        if low.0 <= PRESSURES.0 {
            return None;
        }
        let gauge = (low.0 * 0.7).max(PRESSURES.0);
        high = low;
        low = (gauge, miss(gauge)?);
    }
    while high.1 < 0.0 {
        if high.0 >= PRESSURES.1 {
            return None;
        }
        let gauge = (high.0 * 1.4).min(PRESSURES.1);
        low = high;
        high = (gauge, miss(gauge)?);
    }
    let (mut weight_low, mut weight_high) = (low.1, high.1);
    let mut found = low;
    for _ in 0..60 {
        if high.0 - low.0 < 1.0 || weight_high == weight_low {
            break;
        }
        let gauge = (low.0 * weight_high - high.0 * weight_low) / (weight_high - weight_low);
        found = (gauge, miss(gauge)?);
        if found.1.abs() < 1e-4 {
            break;
        }
        if found.1 < 0.0 {
            low = found;
            weight_low = found.1;
            weight_high *= 0.5;
        } else {
            high = found;
            weight_high = found.1;
            weight_low *= 0.5;
        }
    }
    // A jump in the distance, where pulls begin to finish, is not an answer.
    if found.1.abs() > 0.01 {
        return None;
    }
    let nudged = found.0 * 1.01;
    let slope = (miss(nudged)? - found.1) / (nudged - found.0);
    Some((found.0 + STANDARD_ATMOSPHERE, slope))
}
