//! The rider's fall and drag as numbers, read from the inputs. Knows no check and no limit.

use crate::{
    models::{
        self, GRAVITY, STANDARD_ATMOSPHERE, atmosphere,
        dragging::{self, Pull},
        stopping::{self, Shape, Stop},
        tolerance::Axis,
        trajectory::{self, Landing, Throw},
    },
    reading::Values,
};

/// Half a horse's width and half a rider's, m: what lies between their middles when they touch.
const BESIDE: f64 = 0.65;
/// From the middle of a lying horse to its feet, and half a rider, m.
const LYING: f64 = 1.6;
/// Friction of a lying horse on dirt (from memory).
const HORSE_FRICTION: f64 = 0.7;
/// Drag area of a rider in the air, m2; at these speeds it hardly matters.
const DRAG_AREA: f64 = 0.5;

/// Whether an action holds a part; none when it is not known.
fn holds(values: &Values, part: &str) -> Option<bool> {
    let action = values.choice("action")?;
    Some(action == part || action == "both")
}

/// A fall from the saddle.
pub(super) struct Fall {
    pub throw: Throw,
    pub landing: Landing,
    pub slide: f64,
    pub stop: Stop,
    pub axis: Axis,
    pub rest_gap: f64,
    pub horse_run: f64,
    pub shape: Shape,
}

impl Fall {
    pub fn read(values: &Values) -> Option<Fall> {
        if !holds(values, "fall")? {
            return None;
        }
        let n = |name| values.number(name);
        let speed = n("ride_speed")?;
        let throw = throw(values)?;
        let landing = trajectory::fly(&throw)?;
        let slide = dragging::slide(landing.along, n("bed_friction")?);
        let shape = match values.choice("pulse_shape")? {
            "square" => Shape::Square,
            "half_sine" => Shape::HalfSine,
            "triangle" => Shape::Triangle,
            _ => Shape::Haversine,
        };
        let aside = n("side_speed")? * landing.time;
        let falls = values.choice("horse")? == "falls";
        let (horse_run, rest_gap) = if falls {
            let run = dragging::slide(speed, HORSE_FRICTION);
            let ahead = landing.distance + slide - run;
            (run, models::hypot(ahead, aside) - LYING)
        } else {
            let braking = n("horse_braking")?;
            let run = speed * n("horse_reaction")? + speed * speed / (2.0 * braking);
            (run, aside - BESIDE)
        };
        Some(Fall {
            throw,
            landing,
            slide,
            stop: stopping::stop(landing.down, n("bed_depth")? * n("bed_usable")?, shape),
            axis: match values.choice("landing_attitude")? {
                "back" => Axis::Forward,
                "front" => Axis::Backward,
                "side" => Axis::Sideways,
                _ => Axis::Headward,
            },
            rest_gap,
            horse_run,
            shape,
        })
    }

    /// What the body feels, up and down, lying in the bed afterwards.
    pub fn felt(&self) -> Vec<(f64, f64)> {
        let mut samples = stopping::samples(&self.stop, self.shape, GRAVITY, 61);
        samples.push((self.stop.time, GRAVITY));
        samples
    }
}

fn throw(values: &Values) -> Option<Throw> {
    let n = |name| values.number(name);
    Some(Throw {
        speed: n("ride_speed")?,
        angle: 0.0,
        // A bed that stands as high as the saddle leaves nothing to fall.
        height: (n("saddle_height")? - n("bed_height")?).max(0.1),
        mass: n("performer_mass")?,
        drag_area: DRAG_AREA,
        density: STANDARD_ATMOSPHERE / (atmosphere::GAS_CONSTANT * 288.15),
        wind: 0.0,
    })
}

/// Deviations of the landing along and across. The cue's and the direction's scatter, and the tolerances
/// of speed and side push, count as two deviations. Only the tolerances are the plan's whatever the state;
/// what the scatter of cue and direction comes to grows with the speed and the height of the state itself.
pub(super) fn scatter(stated: &Values, moved: &Values, landing: &Landing) -> Option<[f64; 2]> {
    let n = |name| moved.number(name);
    let cue = 0.5 * n("ride_speed")? * n("cue_scatter")?;
    let speed = 0.5 * stated.tolerance("ride_speed")? * landing.time;
    let turn = landing.distance * libm::tan(0.5 * n("direction_scatter")?);
    let push = 0.5 * stated.tolerance("side_speed")? * landing.time;
    Some([models::hypot(cue, speed), models::hypot(turn, push)])
}

/// A drag behind the horse.
pub(super) struct Drag {
    pub pull: Pull,
    pub speed: f64,
    pub distance: f64,
    /// Flux into the padding, W/m2, its temperature at first, K, and its effusivity.
    pad: Option<(f64, f64, f64)>,
}

impl Drag {
    pub fn read(values: &Values) -> Option<Drag> {
        if !holds(values, "drag")? {
            return None;
        }
        let n = |name| values.number(name);
        let pull = Pull {
            mass: n("performer_mass")?,
            friction: n("ground_friction")?,
            acceleration: n("drag_acceleration")?,
            stiffness: n("line_stiffness")?,
            slack_speed: n("slack_speed")?,
        };
        let speed = n("drag_speed")?;
        let pad = || {
            let flux = n("heat_share")? * pull.rubbing() * speed / n("pad_area")?;
            Some((flux, n("ground_temperature")?, EFFUSIVITY))
        };
        Some(Drag {
            pad: pad(),
            speed,
            distance: n("drag_distance")?,
            pull,
        })
    }

    pub fn time(&self) -> f64 {
        self.distance / self.speed
    }

    /// The padding's face after a time, K.
    pub fn pad_after(&self, time: f64) -> Option<f64> {
        let (flux, start, effusivity) = self.pad?;
        Some(start + dragging::face_rise(flux, time, effusivity))
    }
}

/// Effusivity of leather and of solid plastic, W s^0.5/(m2 K) (from memory).
const EFFUSIVITY: f64 = 500.0;
