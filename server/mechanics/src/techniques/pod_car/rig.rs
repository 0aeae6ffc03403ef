//! The car with its pod as one: where its mass lies, how it leans and brakes, and swerves already worked out.

use core::cell::RefCell;

use crate::{
    evaluation::keep,
    models::{
        GRAVITY,
        car_balance::{self, Lean, Part},
    },
    reading::Values,
};

/// Car and pod.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Rig {
    pub car: Part,
    pub pod: Part,
    pub whole: Part,
    pub wheelbase: f64,
    own_share: f64,
}

/// A car rolls as if its mass sat this share of the track from the middle (measured cars: about 0.38).
const ROLL_SHARE: f64 = 0.38;

/// Pod and hidden driver, kg.
pub(super) fn pod_mass(values: &Values) -> Option<f64> {
    Some(values.number("pod_mass")? + values.number("performer_mass")?)
}

impl Rig {
    pub fn read(values: &Values) -> Option<Rig> {
        let number = |name| values.number(name);
        let wheelbase = number("wheelbase")?;
        let own_share = number("front_share")?;
        let car = Part {
            mass: number("car_mass")?,
            height: number("centre_height")?,
            along: own_share * wheelbase,
        };
        let pod = Part {
            mass: pod_mass(values)?,
            height: number("pod_centre_height")?,
            along: number("pod_place")?,
        };
        Some(Rig {
            car,
            pod,
            whole: car_balance::together(car, pod),
            wheelbase,
            own_share,
        })
    }

    pub fn front_share(&self) -> f64 {
        self.whole.along / self.wheelbase
    }

    /// Pull in g that tips it on the level.
    pub fn tipping(&self, values: &Values) -> Option<f64> {
        Some(car_balance::tipping_pull(
            values.number("track")?,
            self.whole.height,
            values.number("roll_centre")?,
            values.number("lean_per_g")?,
        ))
    }

    pub fn lean(&self, values: &Values) -> Option<Lean> {
        let track = values.number("track")?;
        let roll_centre = values.number("roll_centre")?;
        Some(Lean {
            track,
            roll_centre,
            arm: self.whole.height - roll_centre,
            per_g: values.number("lean_per_g")?,
            radius: car_balance::roll_radius(self.car, self.pod, ROLL_SHARE * track),
            damping: values.number("lean_damping")?,
        })
    }

    /// Full braking with the pod on, m/s2: the brakes give the force they gave without it.
    pub fn braking(&self, values: &Values) -> Option<f64> {
        let brakes = values.number("brakes_alone")? * self.car.mass / self.whole.mass;
        let locks = car_balance::locking(
            values.number("friction")?,
            self.front_share(),
            values.number("front_brake_share")?,
            self.whole.height,
            self.wheelbase,
        )?;
        Some(brakes.min(locks))
    }

    /// Full braking of the car by itself on the same road.
    pub fn braking_alone(&self, values: &Values) -> Option<f64> {
        let locks = car_balance::locking(
            values.number("friction")?,
            self.own_share,
            values.number("front_brake_share")?,
            self.car.height,
            self.wheelbase,
        )?;
        Some(values.number("brakes_alone")?.min(locks))
    }
}

/// Working load limits that count, over the weight: half of those that end on the pod or on the side they began
/// (49 CFR 393.106(d); the halving from memory).
pub(super) fn tie_down_share(values: &Values, pod: f64) -> Option<f64> {
    let counted = match values.choice("tie_down_run")? {
        "over" => 1.0,
        _ => 0.5,
    };
    let limits = values.number("tie_downs")? * values.number("tie_down_limit")?;
    Some(counted * limits / (pod * GRAVITY))
}

/// The swerve that must be possible.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Swerve {
    pub pull: f64,
    pub time: f64,
}

impl Swerve {
    pub fn read(values: &Values) -> Option<Swerve> {
        let time = values.number("swerve_length")? / values.number("top_speed")?;
        Some(Swerve {
            pull: car_balance::swerve_pull(values.number("swerve_aside")?, time),
            time,
        })
    }
}

type Known = (Lean, f64, f64, Option<f64>);

/// Swerves already worked out: most tolerances do not move them.
#[derive(Default)]
pub(super) struct Swerves(RefCell<Vec<Known>>);

impl Swerves {
    pub fn get(&self, lean: &Lean, pull: f64, time: f64) -> Option<f64> {
        let found = self
            .0
            .borrow()
            .iter()
            .find(|known| known.0 == *lean && known.1 == pull && known.2 == time)
            .map(|known| known.3);
        found.unwrap_or_else(|| {
            let most = lean.swerve(pull, time, |_| {});
            keep(&self.0, (*lean, pull, time, most));
            most
        })
    }
}
