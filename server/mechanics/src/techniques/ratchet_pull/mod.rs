//! Ratchet pull: compressed air drives a piston that pulls a body off its feet by a line.
//!
//! Covers the gas, the piston, the line's stretch, what the body feels, the flight after the line goes
//! slack and the landing. It knows nothing of whiplash of the head and neck apart from the body's own
//! motion, of the valve's interlock, or of how a body turns in the air.

mod checks;
mod presentation;
mod pull;
mod pulling;
mod tables;

use std::rc::Rc;

use pull::{Pull, Setup};

use crate::{
    assessment::{Caution, Check, Figure, Trace, Zone},
    evaluation::{Computed, Evaluation, Memory, over_tolerances},
    models::{
        GRAVITY, STANDARD_ATMOSPHERE,
        tolerance::{self, Axis},
    },
    reading::Values,
    technique::{AssessError, Computation, FigureDescription, Parameter, Technique},
    units::Quantity,
};

/// The technique.
pub struct RatchetPull;

impl Technique for RatchetPull {
    fn name(&self) -> &'static str {
        "ratchet-pull"
    }

    fn title(&self) -> &'static str {
        "Ratchet pull"
    }

    fn summary(&self) -> &'static str {
        "A gas-driven pull by a line on the harness. Covers gas, piston, line, what the body feels, the \
         flight and the landing; leaves out neck whiplash, the valve's interlock and how the body turns."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "seal_friction",
            "valve_conductance",
            "line_modulus",
            "dead_volume",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/ratchet-pull.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        // Many tolerances touch only what the pull is held against, so runs are kept and used again.
        let runs = Rc::new(Runs::default());
        let ahead = Rc::clone(&runs);
        Computation::new(move |state| compute(state, &runs)).with_look_ahead(move |states| {
            ahead.look_ahead(
                states.iter().filter_map(Setup::of).collect(),
                pulling::run_all,
            );
        })
    }

    fn evaluate(&self, values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        let mut evaluation = over_tolerances(values, self.figures(), &compute)?;
        add_pressure_needed(self.figures(), &mut evaluation);
        Ok(evaluation)
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

/// Pulls already run in this assessment.
type Runs = Memory<Setup, Option<Pull>>;

/// The axis of human tolerance that a pull loads.
fn axis(values: &Values) -> Option<Axis> {
    Some(match values.choice("pull_direction")? {
        "backward" => Axis::Backward,
        "forward" => Axis::Forward,
        "sideways" => Axis::Sideways,
        _ => Axis::Headward,
    })
}

/// How far a body may slide past where it lands, m: habit, on mats or bare ground.
const SLIDE: f64 = 2.0;

fn compute(values: &Values, runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let Some(setup) = Setup::of(values) else {
        return out;
    };
    let Some(pull) = runs.get(&setup, pulling::run) else {
        return out;
    };
    let peak = pull.peak_tension;
    // What the blocks take of the piston's push, the line carries at the piston's end of them.
    let line_peak = peak / setup.line_share;
    out.set("peak_acceleration", peak / setup.mass);
    out.set("body_force", peak);
    out.set("line_peak", line_peak);
    if line_peak > 0.0 {
        out.set_if(
            "line_factor",
            values
                .number("line_strength")
                .map(|strength| strength / line_peak),
        );
    }
    if let Some(turn) = values.number("redirect_angle") {
        // At which block the loss falls is not known, so both sides are taken to carry the greater.
        let load = 2.0 * line_peak * libm::sin(0.5 * turn);
        out.set("anchor_load", load);
        // A line that does not turn puts nothing on the block, and no factor can be given.
        if load > 1.0 {
            out.set_if(
                "anchor_factor",
                values.number("anchor_strength").map(|s| s / load),
            );
        }
    }
    out.set_if(
        "dynamic_response",
        axis(values).map(|axis| GRAVITY * tolerance::dynamic_response(axis, &pull.samples)),
    );
    out.set_if("rise_time", pull.rise_time());
    if !pull.finished {
        return out;
    }
    out.set("release_speed", pull.speed);
    out.set("pull_time", pull.time);
    out.set("pull_travel", pull.travel);
    out.set("pressure_left", pull.pressure_left - STANDARD_ATMOSPHERE);
    let moving = pull.time - pull.first_moved;
    if moving > 0.0 {
        out.set("mean_acceleration", pull.speed / moving);
    }
    if let Some(landing) = &pull.landing {
        let distance = pull.distance(&setup);
        out.set_if("total_distance", distance);
        out.set_if("corridor_needed", distance.map(|distance| distance + SLIDE));
        out.set("flight_time", landing.time);
        out.set("landing_speed", landing.speed());
    }
    out
}

/// The pressure that gives the wanted distance. Its interval is the distance's own interval seen the
/// other way: each end of the distance, over how far the distance moves with pressure. That is linear,
/// and right while the tolerances are small.
fn add_pressure_needed(descriptions: &'static [FigureDescription], evaluation: &mut Evaluation) {
    let values = &evaluation.values;
    let Some((setup, wanted)) = Setup::of(values).zip(values.number("wanted_distance")) else {
        return;
    };
    let Some((pressure, slope)) = pull::pressure_for(&setup, wanted) else {
        return;
    };
    if slope <= 0.0 {
        return;
    }
    let value = pressure - STANDARD_ATMOSPHERE;
    let spread = evaluation.figure("total_distance").map_or((0.0, 0.0), |f| {
        ((f.high - f.value) / slope, (f.value - f.low) / slope)
    });
    let at = descriptions
        .iter()
        .take_while(|d| d.name != "pressure_needed")
        .count();
    let before = descriptions[..at]
        .iter()
        .filter(|d| evaluation.figure(d.name).is_some())
        .count();
    let title = descriptions.get(at).map_or("", |d| d.title);
    evaluation.figures.insert(
        before,
        Figure {
            name: "pressure_needed".to_owned(),
            title: title.to_owned(),
            quantity: Quantity::Pressure,
            value,
            low: (value - spread.0).max(0.0),
            high: value + spread.1,
        },
    );
}
