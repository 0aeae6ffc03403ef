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
        GRAVITY, atmosphere, head, spread,
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
        Box::new(move |state| compute(&stated, scatter.as_ref(), state))
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

/// Where landings scatter: deviations along and across.
struct Scatter {
    mean: f64,
    along: f64,
    across: f64,
}

/// The scatter from how exits vary and from wind of any direction. A tolerance counts as two standard
/// deviations. It is taken from the stated inputs: a tolerance that makes the scatter must not also
/// move its middle, or it would count twice.
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
    let turn = 0.5 * stated.tolerance("exit_direction")?;
    let aside = middle.distance * libm::tan(turn);
    Some(Scatter {
        mean: middle.distance,
        along: libm::sqrt(speed * speed + angle * angle + drift * drift),
        across: libm::hypot(aside, drift),
    })
}

/// Chance of missing, and the size needed for the accepted chance.
fn catch(stated: &Values, moved: &Values, out: &mut Computed, scatter: &Scatter) -> Option<()> {
    let distance = moved.number("catcher_distance")?;
    let margin = moved.number("landing_margin")?;
    let aim = scatter.mean * libm::tan(stated.number("exit_direction")?);
    let short = scatter.mean - distance;
    let wanted = moved.number("wanted_miss_probability")?;
    // Half of the accepted chance is given to each direction.
    let deviations = spread::two_sided_quantile(0.5 * wanted);
    out.set(
        "catcher_length_needed",
        2.0 * (short.abs() + margin + deviations * scatter.along),
    );
    out.set(
        "catcher_width_needed",
        2.0 * (aim.abs() + margin + deviations * scatter.across),
    );
    let half_length = 0.5 * moved.number("catcher_length")? - margin;
    let half_width = 0.5 * moved.number("catcher_width")? - margin;
    let along = spread::normal_outside(-half_length, half_length, short, scatter.along);
    let across = spread::normal_outside(-half_width, half_width, aim, scatter.across);
    out.set(
        "miss_probability",
        (along + across - along * across).max(SMALLEST_CHANCE),
    );
    Some(())
}

/// The smallest chance that is claimed: no rehearsal shows how landings scatter further out.
const SMALLEST_CHANCE: f64 = 1e-9;

/// Half axes of the ellipse that holds 99 of 100 of a two-dimensional normal: sqrt(-2 ln 0.01).
const NINETY_NINE: f64 = 3.034_854_258_770_293;

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
                moved
                    .number("performer_mass")
                    .map(|mass| mass * (0.5 * landing.down * landing.down + GRAVITY * distance)),
            );
        }
    } else if let Some((depth, share)) = moved
        .number("catcher_depth")
        .zip(moved.number("usable_depth"))
    {
        out.set("stopping_distance", depth * share);
    }
    if let Some(scatter) = scatter {
        out.set("landing_half_length", NINETY_NINE * scatter.along);
        out.set("landing_half_width", NINETY_NINE * scatter.across);
        // Each figure is set as far as its own inputs are known.
        let _ = catch(stated, moved, &mut out, scatter);
    }
    out
}

/// The figures' own computation, shared with what is drawn.
fn landing(evaluation: &Evaluation) -> Option<Landing> {
    throw(&evaluation.values).and_then(|throw| trajectory::fly(&throw))
}
