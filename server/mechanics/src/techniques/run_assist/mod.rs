//! Run assist: a counterweight overhead takes part of a runner's weight.
//!
//! Covers relief, the push that the legs must give and the speed that this allows, the counterweight's
//! inertia at every stride, the catch after a stumble, line and overhead loads, and the travel. It knows
//! nothing of sway across the run, of how a harness sits, or of a line that runs out of true.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, Memory},
    models::{
        GRAVITY,
        unweighting::{Assist, Bounce, Gait},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct RunAssist;

impl Technique for RunAssist {
    fn name(&self) -> &'static str {
        "run-assist"
    }

    fn title(&self) -> &'static str {
        "Counterweighted run assist"
    }

    fn summary(&self) -> &'static str {
        "A counterweight overhead takes part of a runner's weight. Covers relief, reachable speed, the \
         counterweight's inertia at every stride, the catch, loads and travel; leaves out sway across the run \
         and how the harness sits."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "pulley_inertia",
            "pulley_loss",
            "line_stiffness",
            "line_damping",
            "contact_length",
            "step_time",
            "shoe_friction",
            "rolling",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/run-assist.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        // Many tolerances do not touch the stride, so strides are kept and used again.
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

/// The rig as entered.
fn assist(values: &Values) -> Option<Assist> {
    let number = |name| values.number(name);
    Some(Assist {
        mass: number("performer_mass")?,
        weight: number("counterweight_mass")?,
        ratio: number("counterweight_ratio")?,
        pulleys: number("pulley_inertia")?,
        loss: number("pulley_loss")?,
        stiffness: number("line_stiffness")?,
        damping: number("line_damping")?,
    })
}

/// The steps as entered. They are a run only while the foot is off the ground in between.
fn gait(values: &Values) -> Option<Gait> {
    Some(Gait {
        step: values.number("step_time")?,
        contact: values.number("contact_length")? / values.number("run_speed")?,
    })
}

fn is_run(gait: &Gait) -> bool {
    gait.contact < gait.step
}

/// Strides already followed in this assessment.
type Runs = Memory<(Assist, Gait), Option<Bounce>>;

fn compute(values: &Values, runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let number = |name| values.number(name);
    let (Some(mass), Some(weight), Some(ratio)) = (
        number("performer_mass"),
        number("counterweight_mass"),
        number("counterweight_ratio"),
    ) else {
        return out;
    };
    out.set("relief", weight / (ratio * mass));
    let Some(assist) = assist(values) else {
        return out;
    };
    out.set("line_pull", assist.pull());
    out.set("line_period", assist.line_period());
    // A performer who floats does not run.
    if assist.left() <= 0.0 {
        return out;
    }
    let left = assist.left() / (mass * GRAVITY);
    out.set("fall_acceleration", assist.fall());
    out.set("falling_tension", assist.falling_tension());
    out.set_if(
        "reachable_speed",
        number("own_top_speed").map(|speed| speed / left),
    );
    let mut highest = assist.falling_tension();
    let gait = gait(values).filter(is_run);
    let mut bounce = None;
    if let Some(gait) = gait {
        out.set("needed_push", left * gait.step / gait.contact);
        out.set("ground_peak", assist.ground_peak(gait));
        out.set("contact_time", gait.contact);
        out.set("flight_time", gait.step - gait.contact);
        out.set("swing_time", 2.0 * gait.step - gait.contact);
        bounce = runs.get(&(assist, gait), |(assist, gait)| {
            assist.bounce(*gait, |_| {})
        });
    }
    if let Some(bounce) = bounce {
        out.set("stride_peak", bounce.most);
        out.set("stride_least", bounce.least / assist.pull());
        out.set("bounce", bounce.height);
        highest = highest.max(bounce.most);
    }
    if let Some((travel, height)) = number("counterweight_travel").zip(number("harness_height")) {
        let drop = ratio * travel;
        let catch = assist.catch(drop);
        out.set("catch_height", height - drop - catch.stretch);
        out.set("catch_speed", catch.speed);
        out.set("catch_force", catch.force);
        highest = highest.max(catch.force);
        if bounce.is_some() {
            loads(values, ratio, highest, &mut out);
        }
    }
    along(values, &assist, &mut out);
    out
}

fn loads(values: &Values, ratio: f64, highest: f64, out: &mut Computed) {
    let number = |name| values.number(name);
    out.set_if("line_factor", number("line_strength").map(|s| s / highest));
    let Some(trolley) = number("trolley_mass") else {
        return;
    };
    // The performer's part and the counterweight's both hang from the structure.
    let load = (1.0 + ratio) * highest + trolley * GRAVITY;
    out.set("overhead_load", load);
    out.set_if(
        "overhead_factor",
        number("overhead_strength").map(|s| s / load),
    );
}

/// Along the track: speeds are changed evenly, so distances are exact.
fn along(values: &Values, assist: &Assist, out: &mut Computed) {
    let number = |name| values.number(name);
    let (Some(speed), Some(gather), Some(slow), Some(answer)) = (
        number("run_speed"),
        number("gather_acceleration"),
        number("stop_deceleration"),
        number("reaction_time"),
    ) else {
        return;
    };
    let stop = speed * answer + speed * speed / (2.0 * slow);
    out.set("stop_distance", stop);
    out.set_if(
        "travel",
        number("shot_time").map(|shot| speed * speed / (2.0 * gather) + speed * shot + stop),
    );
    // All of the runner's energy against what the line leaves of the weight.
    let share = 1.0 - assist.relief();
    out.set("end_rise", speed * speed / (2.0 * GRAVITY * share));
    let (Some(trolley), Some(place), Some(rolling), Some(friction)) = (
        number("trolley_mass"),
        values.choice("counterweight_place"),
        number("rolling"),
        number("shoe_friction"),
    ) else {
        return;
    };
    let towed = if place == "on_trolley" {
        trolley + assist.weight
    } else {
        trolley
    };
    let drag = rolling * (trolley * GRAVITY + (1.0 + assist.ratio) * assist.pull());
    let moving = assist.mass + towed;
    let push = (moving * gather + drag).max(moving * slow - drag);
    out.set("grip", push / (friction * assist.left()));
    out.set(
        "lag_angle",
        libm::atan2(towed * gather + drag, assist.pull()),
    );
}
