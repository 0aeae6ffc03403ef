//! Dead-man line: a runner comes to the end of a slack line and is jerked off the feet.
//!
//! Covers the run up, the stop by line and absorber, what the body feels, the swing to the ground and the
//! pads. It knows nothing of the head and neck apart from the body's own motion, of how a body turns, or
//! of the anchor's ground.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, Memory},
    models::{
        self, GRAVITY,
        tether::{self, Absorber, Legs, Outcome, Tether},
        tolerance::{self, Axis},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct DeadManLine;

impl Technique for DeadManLine {
    fn name(&self) -> &'static str {
        "dead-man-line"
    }

    fn title(&self) -> &'static str {
        "Dead-man line"
    }

    fn summary(&self) -> &'static str {
        "A runner comes to the end of a slack line. Covers the run up, the stop by line and absorber, what \
         the body feels and the swing to the ground; leaves out neck whiplash and how the body turns."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "top_speed",
            "build_up",
            "line_modulus",
            "line_damping",
            "harness_give",
            "absorber_force",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/dead-man-line.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        // Many tolerances touch only what the stop is held against, so runs are kept and used again.
        let runs = Runs::default();
        Computation::new(move |state| compute(state, &runs))
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

/// The harness point above what the body lies on, m (common practice).
const LYING_HEIGHT: f64 = 0.2;

/// Everything the stop depends on, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Setup {
    tether: Tether,
    speed: f64,
    run_time: f64,
    /// From the harness point down to where it lies, m.
    fall: f64,
}

impl Setup {
    fn of(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        let length = number("line_length")?;
        let absorber = match values.choice("absorber")? {
            "tearing" => Some(Absorber {
                force: number("absorber_force")?,
                stroke: number("absorber_stroke")?,
            }),
            _ => None,
        };
        let (speed, run_time) =
            tether::run_up(number("top_speed")?, number("build_up")?, number("slack")?);
        // Line and harness give one after the other under the same force.
        let give = length / number("line_modulus")? + number("harness_give")? / 1000.0;
        let pick = number("pick_height")?;
        Some(Setup {
            tether: Tether {
                mass: number("performer_mass")?,
                stiffness: 1.0 / give,
                damping: number("line_damping")?,
                length,
                rise: number("anchor_height")? - pick,
                absorber,
            },
            speed,
            run_time,
            fall: pick - number("landing_height")? - LYING_HEIGHT,
        })
    }
}

/// What a stop came to.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Stop {
    carried: Outcome,
    /// The most of both ways down: under a high anchor a swept body loads the line more.
    peak: f64,
    torn: f64,
    response: f64,
    swept: Option<Swept>,
}

/// A body whose legs are swept.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Swept {
    outcome: Outcome,
    furthest: f64,
}

/// The axis of human tolerance that the stop loads.
fn axis(values: &Values) -> Option<Axis> {
    Some(match values.choice("pull_direction")? {
        "backward" => Axis::Backward,
        "forward" => Axis::Forward,
        _ => Axis::Sideways,
    })
}

fn stop(setup: &Setup, axis: Axis) -> Option<Stop> {
    let response = |mut samples: Vec<(f64, f64)>, outcome: &Outcome| {
        samples.push((outcome.last.time, 0.0));
        GRAVITY * tolerance::dynamic_response(axis, &samples)
    };
    let mut samples = Vec::new();
    let carried = setup.tether.stop(setup.speed, Legs::Carry, |moment| {
        samples.push((moment.time, moment.tension / setup.tether.mass));
    })?;
    let mut most = Stop {
        peak: carried.peak,
        torn: carried.last.torn,
        response: response(samples, &carried),
        carried,
        swept: None,
    };
    if setup.fall > 0.0 {
        let mut furthest = 0.0_f64;
        let mut samples = Vec::new();
        let outcome = setup
            .tether
            .stop(setup.speed, Legs::Swept(setup.fall), |moment| {
                furthest = furthest.max(moment.along);
                samples.push((moment.time, moment.tension / setup.tether.mass));
            })?;
        most.peak = most.peak.max(outcome.peak);
        most.torn = most.torn.max(outcome.last.torn);
        most.response = most.response.max(response(samples, &outcome));
        most.swept = Some(Swept { outcome, furthest });
    }
    Some(most)
}

/// Stops already run in this assessment.
type Runs = Memory<Setup, Option<Stop>>;

fn compute(values: &Values, runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let Some((setup, axis)) = Setup::of(values).zip(axis(values)) else {
        return out;
    };
    let found = runs.get(&setup, |setup| stop(setup, axis));
    let mass = setup.tether.mass;
    out.set("run_speed", setup.speed);
    out.set("run_time", setup.run_time);
    out.set("run_energy", 0.5 * mass * setup.speed * setup.speed);
    out.set("fall_equal", setup.speed * setup.speed / (2.0 * GRAVITY));
    out.set("line_stiffness", setup.tether.stiffness);
    let Some(found) = found else {
        return out;
    };
    let peak = found.peak;
    out.set("peak_force", peak);
    out.set("peak_acceleration", peak / mass);
    out.set("dynamic_response", found.response);
    out.set("absorber_travel", found.torn);
    out.set_if(
        "line_factor",
        values.number("line_strength").map(|s| s / peak),
    );
    out.set_if(
        "anchor_factor",
        values.number("anchor_strength").map(|s| s / peak),
    );
    if let Some(still) = found.carried.still {
        out.set("stopping_distance", still.along);
        out.set("stop_time", still.time);
        out.set("rebound_speed", (-found.carried.last.speed).max(0.0));
        let swept = found.swept.map_or(0.0, |swept| swept.furthest);
        out.set("furthest_ahead", still.along.max(swept));
    }
    if let Some(swept) = found.swept
        && swept.outcome.ended
    {
        let last = swept.outcome.last;
        out.set("landing_place", last.along);
        out.set("landing_time", last.time);
        out.set("landing_speed", models::hypot(last.speed, last.fall_speed));
        if let Some((ahead, behind)) = values.number("pad_ahead").zip(values.number("pad_behind")) {
            out.set("pad_margin", (ahead - last.along).min(behind + last.along));
        }
    }
    out
}
