//! Air ram: a plate on a hinged arm, driven by compressed air, throws a body up and forward.
//!
//! Covers the gas, the arm's geometry, what legs and spine feel, the flight, where landings scatter and
//! how the mat stops the body. It knows nothing of the performer's own jump, of how a body turns in the
//! air, of ankles and knees by themselves, or of the valve's interlock.

mod checks;
mod figures;
mod launch;
mod launching;
mod presentation;
mod tables;

use std::rc::Rc;

use launch::{Launch, Setup};

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, Memory, over_tolerances},
    models::{
        self, GRAVITY, STANDARD_ATMOSPHERE,
        landing::{Catcher, NINETY_NINE, Scatter},
        stopping::{self, Shape},
        tolerance::{self, Axis},
        trajectory::Landing,
    },
    reading::Values,
    technique::{AssessError, Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct AirRam;

impl Technique for AirRam {
    fn name(&self) -> &'static str {
        "air-ram"
    }

    fn title(&self) -> &'static str {
        "Air ram"
    }

    fn summary(&self) -> &'static str {
        "A plate on a hinged arm, driven by compressed air, throws a body up and forward. Covers gas, arm, \
         what legs and spine feel, flight, scatter and mat; leaves out the body's own jump, turns and ankles."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &figures::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "seal_friction",
            "valve_conductance",
            "dead_volume",
            "run_in_speed",
            "usable_depth",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/air-ram.json")
    }

    fn prepare(&self, stated: &Values) -> Computation {
        // Many tolerances touch only what the launch is held against, so runs are kept and used again.
        let runs = Rc::new(Runs::default());
        let planned = Rc::new(Planned::of(stated));
        let (runs_ahead, planned_ahead) = (Rc::clone(&runs), Rc::clone(&planned));
        Computation::new(move |state| compute(planned.as_ref().as_ref(), state, &runs))
            .with_look_ahead(move |states| {
                let each = states
                    .iter()
                    .filter_map(|state| Some((state, Setup::of(state)?)));
                let each: Vec<_> = each.filter(|(_, setup)| setup.turns()).collect();
                let setups = each.iter().map(|(_, setup)| *setup).collect();
                runs_ahead.flown.look_ahead(setups, flown_all);
                if let Some(planned) = planned_ahead.as_ref() {
                    let middles = each
                        .iter()
                        .filter_map(|(state, setup)| planned.middle(state, setup))
                        .filter(|middle| !middle.launches_as_now)
                        .map(|middle| middle.setup);
                    runs_ahead.ranges.look_ahead(middles.collect(), ranges);
                }
            })
    }

    fn evaluate(&self, mut values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        // A shot that the plan itself expects is borne by body and gear too: what varies from shot to shot
        // comes on top of what is not known of the rig.
        for (moved, by) in SPREADS {
            let spread = values.number(by).unwrap_or(0.0);
            values.widen(moved, spread);
        }
        over_tolerances(values, self.figures(), &compute)
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

/// What varies from shot to shot, and the input that says by how much.
const SPREADS: [(&str, &str); 2] = [
    ("foot_distance", "foot_spread"),
    ("reservoir_pressure", "pressure_spread"),
];

/// A launch and its flight in still air.
#[derive(Clone, Debug, PartialEq)]
struct Flown {
    launch: Launch,
    response: f64,
    landing: Option<Landing>,
}

fn flown(setup: &Setup) -> Option<Flown> {
    if !setup.turns() {
        return None;
    }
    Some(fly(setup, launching::run(setup)?))
}

/// As [`flown`], for setups of any number.
fn flown_all(setups: &[Setup]) -> Vec<Option<Rc<Flown>>> {
    let launches = launching::run_all(setups);
    let each = setups.iter().zip(launches);
    each.map(|(setup, launch)| Some(Rc::new(fly(setup, launch?))))
        .collect()
}

fn fly(setup: &Setup, launch: Launch) -> Flown {
    // A body that stands already bears 1 g: only what comes on top shakes it, and the two add up.
    let shaken: Vec<(f64, f64)> = launch
        .samples
        .iter()
        .map(|(time, felt)| (*time, felt - GRAVITY))
        .collect();
    let response = GRAVITY * (1.0 + tolerance::dynamic_response(Axis::Headward, &shaken));
    let landing = setup.fly(&launch, 0.0);
    Flown {
        launch,
        response,
        landing,
    }
}

/// Where the body's centre lands, along the floor from the marked feet.
fn place(setup: &Setup, launch: &Launch, landing: &Landing) -> f64 {
    setup.carried(launch) + landing.distance
}

/// Where a launch of its own lands, with nothing that body or gear feels.
fn range(setup: &Setup) -> Option<f64> {
    landed(setup, &launching::run(setup)?)
}

/// As [`range`], for setups of any number.
fn ranges(setups: &[Setup]) -> Vec<Option<f64>> {
    let launches = launching::run_all(setups);
    let each = setups.iter().zip(launches);
    each.map(|(setup, launch)| landed(setup, &launch?))
        .collect()
}

fn landed(setup: &Setup, launch: &Launch) -> Option<f64> {
    Some(place(setup, launch, &setup.fly(launch, 0.0)?))
}

/// Feet as near to the hinge and as far from it as they land.
fn feet(values: &Values) -> Option<(f64, f64)> {
    let (mark, spread) = (
        values.number("foot_distance")?,
        values.number("foot_spread")?,
    );
    Some(((mark - spread).max(0.05), mark + spread))
}

/// The scatter from how launches vary and from wind of any direction. A spread or a tolerance counts as two
/// standard deviations. Its width is taken from the stated inputs.
fn scatter(stated: &Values) -> Option<Scatter> {
    let wind = stated.number("wind_speed")?;
    let base = Setup::of(stated)?;
    let middle = flown(&base)?;
    let along = place(&base, &middle.launch, middle.landing.as_ref()?);
    let mut sum = 0.0;
    let mut add = |ends: [Option<f64>; 2]| {
        // Half the difference between the two ends is the shift for one tolerance, two deviations. An end
        // that throws nobody is a shift as far as the middle itself.
        let [low, high] = ends.map(|end| end.unwrap_or(0.0));
        let shift = 0.25 * (high - low);
        sum += shift * shift;
    };
    let both = |name| stated.ends_of(name).map(|(low, high)| [low, high]);
    let spread = stated.number("pressure_spread")?;
    // A spread wider than the pressure itself leaves an empty reservoir.
    let pressed = |more: f64| (base.pressure + more).max(STANDARD_ATMOSPHERE);
    add([-spread, spread].map(|more| {
        range(&Setup {
            pressure: pressed(more),
            ..base
        })
    }));
    let (near, far) = feet(stated)?;
    add([near, far].map(|foot| range(&Setup { foot, ..base })));
    // Neither the run-in nor the lean changes what the arm does.
    add(both("run_in_speed")?.map(|run_in| landed(&Setup { run_in, ..base }, &middle.launch)));
    add(both("body_lean")?.map(|lean| landed(&Setup { lean, ..base }, &middle.launch)));
    let blown = |wind| {
        base.fly(&middle.launch, wind)
            .map(|landing| landing.distance)
    };
    let drift = 0.25 * (blown(wind)? - blown(-wind)?);
    Some(Scatter::turned(
        along,
        stated.number("launch_direction")?,
        f64::sqrt(sum),
        0.5 * stated.tolerance("launch_direction")?,
        drift,
    ))
}

/// The plan as stated, and how it scatters.
struct Planned {
    values: Values,
    setup: Setup,
    scatter: Scatter,
}

impl Planned {
    fn of(stated: &Values) -> Option<Planned> {
        Some(Planned {
            setup: Setup::of(stated)?,
            scatter: scatter(stated)?,
            values: stated.clone(),
        })
    }

    /// One state with what makes the scatter's width put back as planned: it must not move the middle too, or it
    /// would count twice. All else that may be off moves it, also what is not known of the mark and the gauge.
    fn middle(&self, moved: &Values, setup: &Setup) -> Option<Middle> {
        // The ends of a state lie at tolerance and spread together, of which the tolerance is bias.
        let biased = |name, now: f64, planned: f64| {
            let off = moved.number(name)? - self.values.number(name)?;
            let tolerance = self.values.tolerance(name)?;
            let within = off.abs() <= tolerance;
            Some(if within {
                now
            } else {
                planned + off.clamp(-tolerance, tolerance)
            })
        };
        let planned = &self.setup;
        let middle = Setup {
            foot: biased("foot_distance", setup.foot, planned.foot)?,
            pressure: biased("reservoir_pressure", setup.pressure, planned.pressure)?,
            run_in: planned.run_in,
            lean: planned.lean,
            ..*setup
        };
        Some(Middle {
            setup: middle,
            launches_as_now: middle.foot == setup.foot && middle.pressure == setup.pressure,
        })
    }
}

/// Where the scatter lies about in one state.
struct Middle {
    setup: Setup,
    /// Whether the arm does what it does in that state itself: neither the run-in nor the lean changes that.
    launches_as_now: bool,
}

/// Launches and ranges already computed in this assessment.
#[derive(Default)]
struct Runs {
    flown: Memory<Setup, Option<Rc<Flown>>>,
    ranges: Memory<Setup, Option<f64>>,
}

fn compute(planned: Option<&Planned>, values: &Values, runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let number = |name| values.number(name);
    let Some(setup) = Setup::of(values) else {
        return out;
    };
    let Some(found) = runs.flown.get(&setup, |setup| flown(setup).map(Rc::new)) else {
        return out;
    };
    let launch = &found.launch;
    out.set("stroke_needed", setup.arm.stroke());
    out.set("peak_felt", launch.peak_felt);
    out.set("dynamic_response", found.response);
    out.set_if("rise_time", launch.rise_time());
    out.set("plate_force", launch.peak_push);
    out.set_if(
        "plate_factor",
        number("plate_strength").map(|strength| strength / launch.peak_push),
    );
    if !launch.finished {
        return out;
    }
    let (along, up) = launch.velocity(&setup);
    out.set("launch_speed", models::hypot(along, up));
    out.set("launch_angle", libm::atan2(up, along));
    out.set("push_time", launch.time - launch.first_moved);
    out.set("trigger_time", launch.time);
    out.set("pressure_left", launch.pressure_left - STANDARD_ATMOSPHERE);
    let turn = launch.speed / setup.foot;
    out.set("stop_energy", 0.5 * setup.arm.inertia() * turn * turn);
    let Some(landing) = &found.landing else {
        return out;
    };
    let apex = landing.apex + setup.landing;
    out.set("apex", apex);
    out.set_if("headroom", number("clear_height").map(|clear| clear - apex));
    out.set("landing_distance", place(&setup, launch, landing));
    out.set("flight_time", landing.time);
    out.set("landing_speed", landing.speed());
    out.set_if(
        "landing_mean",
        number("mat_depth")
            .zip(number("usable_depth"))
            .map(|(depth, share)| {
                stopping::stop(landing.down, depth * share, Shape::Square).mean + GRAVITY
            }),
    );
    if let Some(planned) = planned {
        let scatter = &planned.scatter;
        out.set("landing_half_length", NINETY_NINE * scatter.deviation_along);
        out.set("landing_half_width", NINETY_NINE * scatter.deviation_across);
        // Each figure is set as far as its own inputs are known.
        let about = planned.middle(values, &setup).and_then(|middle| {
            let range = if middle.launches_as_now {
                landed(&middle.setup, launch)?
            } else {
                runs.ranges.get(&middle.setup, range)?
            };
            Some(scatter.about(range, planned.values.number("launch_direction")?))
        });
        if let Some(scatter) = about {
            let _ = catch(values, &scatter, &mut out);
        }
    }
    out
}

/// Chance of missing, and the size needed for the accepted chance.
fn catch(values: &Values, scatter: &Scatter, out: &mut Computed) -> Option<()> {
    let number = |name| values.number(name);
    let (distance, margin) = (number("mat_distance")?, number("landing_margin")?);
    let wanted = number("wanted_miss_probability")?;
    let (length, width) = scatter.needed(distance, margin, wanted);
    out.set("mat_length_needed", length);
    out.set("mat_width_needed", width);
    out.set(
        "miss_probability",
        scatter.miss(&Catcher {
            distance,
            length: number("mat_length")?,
            width: number("mat_width")?,
            margin,
        }),
    );
    Some(())
}
