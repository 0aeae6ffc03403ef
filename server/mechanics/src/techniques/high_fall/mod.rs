//! High fall: a body leaves an edge, flies with drag, and is stopped by boxes or a bag.
//!
//! Covers the flight, the stop by energy and pulse shape, the body's dynamic response, and where
//! landings scatter. It knows nothing of the catcher's own strength, seams or air supply.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        self, GRAVITY, atmosphere, head,
        landing::{Catcher, NINETY_NINE, Scatter},
        stopping::{self, Shape, Stop},
        tolerance::{self, Axis},
        trajectory::{self, Landing, Throw},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct HighFall;

impl Technique for HighFall {
    fn name(&self) -> &'static str {
        "high-fall"
    }

    fn title(&self) -> &'static str {
        "High fall"
    }

    fn summary(&self) -> &'static str {
        "A fall from an edge into boxes or an air bag. Covers flight with drag and wind, the stop, what \
         the body feels, and the chance of missing; leaves out the catcher's own strength and air supply."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["exit_speed", "usable_depth", "drag_area"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/high-fall.json")
    }

    fn prepare(&self, stated: &Values) -> Computation {
        let scatter = scatter(stated);
        let stated = stated.clone();
        Computation::new(move |state| compute(&stated, scatter.as_ref(), state))
    }

    fn checks(&self, evaluation: &Evaluation) -> Vec<Check> {
        checks::checks(evaluation)
    }

    fn traces(&self, evaluation: &Evaluation) -> Vec<Trace> {
        presentation::traces(evaluation)
    }

    fn zones(&self, evaluation: &Evaluation) -> Vec<Zone> {
        presentation::zones(evaluation)
    }

    fn cautions(&self, evaluation: &Evaluation) -> Vec<Caution> {
        presentation::cautions(evaluation)
    }
}

/// The throw that leaves the edge, in still air.
fn throw(values: &Values) -> Option<Throw> {
    Some(Throw {
        speed: values.number("exit_speed")?,
        angle: values.number("exit_angle")?,
        height: values.number("drop_height")?,
        mass: values.number("performer_mass")?,
        drag_area: values.number("drag_area")?,
        density: atmosphere::density(values.number("site_elevation")?),
        wind: 0.0,
    })
}

/// How the catcher's push rises and falls.
fn shape(values: &Values) -> Option<Shape> {
    Some(match values.choice("pulse_shape")? {
        "square" => Shape::Square,
        "half_sine" => Shape::HalfSine,
        "triangle" => Shape::Triangle,
        _ => Shape::Haversine,
    })
}

/// The axis of human tolerance that a landing attitude loads.
fn axis(values: &Values) -> Option<Axis> {
    Some(match values.choice("landing_attitude")? {
        "back" => Axis::Forward,
        "front" => Axis::Backward,
        "side" => Axis::Sideways,
        _ => Axis::Headward,
    })
}

/// The stop, from the downward part of the landing speed.
fn stop(values: &Values, landing: &Landing) -> Option<(Stop, Shape, f64)> {
    let distance = values.number("catcher_depth")? * values.number("usable_depth")?;
    let shape = shape(values)?;
    Some((
        stopping::stop(landing.down, distance, shape),
        shape,
        distance,
    ))
}

/// What the body feels during the stop and just after, lying in the catcher.
fn felt(stop: &Stop, shape: Shape) -> Vec<(f64, f64)> {
    let mut samples = stopping::samples(stop, shape, GRAVITY, 81);
    samples.push((stop.time, GRAVITY));
    samples
}

/// The scatter from how exits vary and from wind of any direction. A tolerance counts as two standard
/// deviations. Its width is taken from the stated inputs.
fn scatter(stated: &Values) -> Option<Scatter> {
    let wind = stated.number("wind_speed")?;
    let base = throw(stated)?;
    let middle = trajectory::fly(&base)?;
    let reach = |throw: Throw| trajectory::fly(&throw).map(|landing| landing.distance);
    // Half the difference between the two ends is the shift for one tolerance, two deviations.
    let half = |low: Throw, high: Throw| Some(0.25 * (reach(high)? - reach(low)?));
    let (slow, fast) = stated.ends_of("exit_speed")?;
    let (flat, steep) = stated.ends_of("exit_angle")?;
    let speed = half(
        Throw {
            speed: slow,
            ..base
        },
        Throw {
            speed: fast,
            ..base
        },
    )?;
    let angle = half(
        Throw {
            angle: flat,
            ..base
        },
        Throw {
            angle: steep,
            ..base
        },
    )?;
    let drift = half(
        Throw {
            wind: -wind,
            ..base
        },
        Throw { wind, ..base },
    )?;
    Some(Scatter::turned(
        middle.distance,
        stated.number("exit_direction")?,
        models::hypot(speed, angle),
        0.5 * stated.tolerance("exit_direction")?,
        drift,
    ))
}

/// The scatter about the middle of one state. Exits make its width, so they must not move its middle too,
/// or they would count twice; all else that may be off, such as height, mass and drag, moves it.
fn about(stated: &Values, moved: &Values, scatter: &Scatter, landing: &Landing) -> Option<Scatter> {
    let (here, planned) = (throw(moved)?, throw(stated)?);
    let middle = Throw {
        speed: planned.speed,
        angle: planned.angle,
        ..here
    };
    let range = if middle == here {
        landing.distance
    } else {
        trajectory::fly(&middle)?.distance
    };
    Some(scatter.about(range, stated.number("exit_direction")?))
}

/// Chance of missing, and the size needed for the accepted chance.
fn catch(moved: &Values, scatter: &Scatter, out: &mut Computed) -> Option<()> {
    let number = |name| moved.number(name);
    let (distance, margin) = (number("catcher_distance")?, number("landing_margin")?);
    let wanted = number("wanted_miss_probability")?;
    let (length, width) = scatter.needed(distance, margin, wanted);
    out.set("catcher_length_needed", length);
    out.set("catcher_width_needed", width);
    out.set(
        "miss_probability",
        scatter.miss(&Catcher {
            distance,
            length: number("catcher_length")?,
            width: number("catcher_width")?,
            margin,
        }),
    );
    Some(())
}

fn compute(stated: &Values, scatter: Option<&Scatter>, moved: &Values) -> Computed {
    let mut out = Computed::new();
    let landing = throw(moved).and_then(|throw| trajectory::fly(&throw));
    if let Some(landing) = &landing {
        out.set("impact_speed", landing.speed());
        out.set("fall_time", landing.time);
        out.set("landing_distance", landing.distance);
        if let Some((stop, shape, distance)) = stop(moved, landing) {
            out.set("stopping_distance", distance);
            out.set("mean_felt", stop.mean + GRAVITY);
            out.set("peak_felt", stop.peak + GRAVITY);
            out.set("stop_time", stop.time);
            let samples = felt(&stop, shape);
            out.set_if(
                "dynamic_response",
                axis(moved).map(|axis| GRAVITY * tolerance::dynamic_response(axis, &samples)),
            );
            out.set("head_criterion", head::injury_criterion(&samples, 0.015));
            out.set_if(
                "impact_energy",
                moved.number("performer_mass").map(|mass| {
                    mass * (0.5 * landing.speed() * landing.speed() + GRAVITY * distance)
                }),
            );
        }
    } else if let Some((depth, share)) = moved
        .number("catcher_depth")
        .zip(moved.number("usable_depth"))
    {
        out.set("stopping_distance", depth * share);
    }
    if let Some(scatter) = scatter {
        out.set("landing_half_length", NINETY_NINE * scatter.deviation_along);
        out.set("landing_half_width", NINETY_NINE * scatter.deviation_across);
        // Each figure is set as far as its own inputs are known.
        if let Some(scatter) = landing.and_then(|landing| about(stated, moved, scatter, &landing)) {
            let _ = catch(moved, &scatter, &mut out);
        }
    }
    out
}

/// How much further and how much less far than planned the middle of the landings may lie, by height, mass
/// and drag at the ends of their tolerances. Less drag flies further, and so does a longer fall.
fn middle_off(values: &Values) -> Option<f64> {
    let planned = throw(values)?;
    let distance = trajectory::fly(&planned)?.distance;
    let (low, high) = values.ends_of("drop_height")?;
    let (light, heavy) = values.ends_of("performer_mass")?;
    let (slim, wide) = values.ends_of("drag_area")?;
    let mut most = 0.0_f64;
    for height in [low, high] {
        for (mass, drag_area) in [(light, wide), (heavy, slim)] {
            let moved = Throw {
                height,
                mass,
                drag_area,
                ..planned
            };
            most = most.max((trajectory::fly(&moved)?.distance - distance).abs());
        }
    }
    Some(most)
}

/// The figures' own computation, shared with what is drawn.
fn landing(evaluation: &Evaluation) -> Option<Landing> {
    throw(&evaluation.values).and_then(|throw| trajectory::fly(&throw))
}
