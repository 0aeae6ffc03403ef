//! The launch itself: gas from a reservoir through a valve into a cylinder that turns an arm about its
//! hinge, and a body that stands on the arm's plate. Knows no limit.
//!
//! The hinge is ahead of the body, so the plate rises and moves forward: at the arm's angle q over the
//! floor the foot at R moves along (sin q, cos q). The cylinder stands on the frame and pushes the arm at
//! r; its length c(q) follows from the triangle, and its push turns the arm with F dc/dq. The body rides
//! upright without turning, so the arm turns its mass as if it were at the foot:
//! (I + m R^2) q'' = F dc/dq - (m R + m_arm L / 2) g cos q. Newton's second law; gas as in [`gas`].

use crate::{
    models::{
        self, STANDARD_ATMOSPHERE, atmosphere,
        gas::{self, Reservoir, Valve},
        trajectory::{self, Landing, Throw},
    },
    reading::Values,
};

/// The body's centre above what it lies on, m (common practice).
const LYING_HEIGHT: f64 = 0.3;

/// Arm and cylinder, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Arm {
    pub start: f64,
    pub end: f64,
    pub length: f64,
    pub mass: f64,
    /// Hinge to the cylinder's pin on the arm.
    pub pin: f64,
    /// The cylinder's foot: back from the hinge, and below it.
    pub back: f64,
    pub below: f64,
}

impl Arm {
    /// Length of the cylinder between its pins at an angle.
    pub(super) fn cylinder(&self, angle: f64) -> f64 {
        models::hypot(
            self.back - self.pin * libm::cos(angle),
            self.pin * libm::sin(angle) + self.below,
        )
    }

    /// How fast that length grows with the angle: the lever of the push, m.
    pub(super) fn lever(&self, angle: f64) -> f64 {
        self.at(angle).lever
    }

    /// All that an angle decides.
    pub(super) fn at(&self, angle: f64) -> Place {
        let (sine, cosine) = libm::sincos(angle);
        let (along, up) = (self.back - self.pin * cosine, self.pin * sine + self.below);
        let cylinder = models::hypot(along, up);
        let over_cylinder = 1.0 / cylinder.max(1e-6);
        Place {
            sine,
            cosine,
            cylinder,
            over_cylinder,
            lever: self.pin * (self.back * sine + self.below * cosine) * over_cylinder,
        }
    }

    /// How fast the lever changes with the angle, m.
    pub(super) fn lever_change(&self, place: &Place) -> f64 {
        let bent = self.pin * (self.back * place.cosine - self.below * place.sine);
        (bent - place.lever * place.lever) * place.over_cylinder
    }

    /// Stroke that the arm asks of its cylinder.
    pub(super) fn stroke(&self) -> f64 {
        self.cylinder(self.end) - self.cylinder(self.start)
    }

    /// Moment of inertia about the hinge, as an even bar.
    pub(super) fn inertia(&self) -> f64 {
        self.mass * self.length * self.length / 3.0
    }
}

/// The arm at an angle: its sine and cosine, the cylinder's length, one over that, and the lever of its push.
pub(super) struct Place {
    pub sine: f64,
    pub cosine: f64,
    pub cylinder: f64,
    pub over_cylinder: f64,
    pub lever: f64,
}

/// Everything the launch depends on, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Setup {
    pub mass: f64,
    pub arm: Arm,
    pub foot: f64,
    pub hinge_height: f64,
    pub centre: f64,
    pub lean: f64,
    pub run_in: f64,
    /// Absolute.
    pub pressure: f64,
    pub reservoir_volume: f64,
    pub area: f64,
    pub dead_volume: f64,
    pub valve: Valve,
    pub opening: f64,
    pub friction: f64,
    pub temperature: f64,
    /// Where the body's centre lands, above the floor.
    pub landing: f64,
    pub drag_area: f64,
}

impl Setup {
    pub(super) fn of(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        Some(Setup {
            mass: number("performer_mass")?,
            arm: Arm {
                start: number("arm_start")?,
                end: number("arm_end")?,
                length: number("arm_length")?,
                mass: number("arm_mass")?,
                pin: number("cylinder_pin")?,
                back: number("cylinder_back")?,
                below: number("cylinder_below")?,
            },
            foot: number("foot_distance")?,
            hinge_height: number("hinge_height")?,
            centre: number("centre_height")?,
            lean: number("body_lean")?,
            run_in: number("run_in_speed")?,
            pressure: number("reservoir_pressure")? + STANDARD_ATMOSPHERE,
            reservoir_volume: number("reservoir_volume")?,
            area: gas::piston_area(number("bore")?, 0.0),
            dead_volume: number("dead_volume")?,
            valve: Valve {
                conductance: number("valve_conductance")?,
                critical_ratio: number("valve_critical_ratio")?,
            },
            opening: number("valve_opening_time")?,
            friction: number("seal_friction")?,
            temperature: number("air_temperature")?,
            landing: number("landing_height")? + LYING_HEIGHT,
            drag_area: number("drag_area")?,
        })
    }

    /// Whether the arm goes up at all and its cylinder pushes it that way all along.
    pub(super) fn turns(&self) -> bool {
        let arm = &self.arm;
        arm.end > arm.start
            && (0..=8).all(|i| {
                let angle = arm.start + (arm.end - arm.start) * f64::from(i) / 8.0;
                arm.lever(angle) > 1e-3
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

    /// The flight of the body's centre after the launch, in a steady wind along; none where nobody was thrown.
    pub(super) fn fly(&self, launch: &Launch, wind: f64) -> Option<Landing> {
        self.fly_and_sample(launch, wind, |_| {})
    }

    pub(super) fn fly_and_sample(
        &self,
        launch: &Launch,
        wind: f64,
        observe: impl FnMut(trajectory::Sample),
    ) -> Option<Landing> {
        if !launch.finished {
            return None;
        }
        let height = self.hinge_height
            + self.foot * libm::sin(launch.angle)
            + self.centre * libm::cos(self.lean)
            - self.landing;
        let (along, up) = launch.velocity(self);
        let throw = Throw {
            speed: models::hypot(along, up),
            angle: libm::atan2(up, along),
            height,
            mass: self.mass,
            drag_area: self.drag_area,
            density: atmosphere::density(0.0),
            wind,
        };
        trajectory::fly_and_sample(&throw, observe)
    }

    /// How far the body's centre is ahead of the first footprint when it leaves the plate, m.
    pub(super) fn carried(&self, launch: &Launch) -> f64 {
        self.foot * (libm::cos(self.arm.start) - libm::cos(launch.angle))
            + self.centre * libm::sin(self.lean)
    }
}

/// A moment of the launch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Moment {
    pub time: f64,
    /// Arm's angle over the floor, rad.
    pub angle: f64,
    /// Speed of the foot along its circle, m/s.
    pub speed: f64,
    /// What the legs feel along the body, m/s2.
    pub felt: f64,
    /// Push of the plate on the feet, N.
    pub push: f64,
    /// Absolute, Pa.
    pub cylinder: f64,
}

/// What a launch came to.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Launch {
    /// Whether the body was thrown.
    pub finished: bool,
    pub time: f64,
    pub first_moved: f64,
    /// Where the body left the plate.
    pub angle: f64,
    /// Speed of the foot there.
    pub speed: f64,
    pub peak_felt: f64,
    pub peak_push: f64,
    /// Absolute, Pa.
    pub pressure_left: f64,
    /// `(time, acceleration)` along the legs, gravity included.
    pub samples: Vec<(f64, f64)>,
}

impl Launch {
    /// Speeds of the body along and up as it leaves.
    pub(super) fn velocity(&self, setup: &Setup) -> (f64, f64) {
        (
            self.speed * libm::sin(self.angle) + setup.run_in,
            self.speed * libm::cos(self.angle),
        )
    }

    /// From a tenth to nine tenths of the way from standing to the peak, s.
    pub(super) fn rise_time(&self) -> Option<f64> {
        let stood = self.samples.first()?.1;
        let first = |share: f64| {
            let level = stood + share * (self.peak_felt - stood);
            let at = self.samples.iter().position(|sample| sample.1 >= level)?;
            let (t1, a1) = self.samples[at];
            if at == 0 {
                return Some(t1);
            }
            let (t0, a0) = self.samples[at - 1];
            Some(t0 + (t1 - t0) * (level - a0) / (a1 - a0))
        };
        (self.peak_felt > stood).then_some(())?;
        Some(first(0.9)? - first(0.1)?)
    }
}
