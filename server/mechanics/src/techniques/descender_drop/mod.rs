//! Descender or winch drop: one or two people let down fast on a long line and braked above the ground.
//!
//! Covers the profile of the run, the line's weight, stretch and bounce, heat in the brake, an emergency
//! stop and drift in the wind. It knows nothing of swing, spin, or the controller that keeps the profile.

mod checks;
mod drop;
mod figures;
mod presentation;
mod profile;
mod tables;

use drop::{Run, Setup};

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, Memory},
    models::{GRAVITY, atmosphere, wire},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct DescenderDrop;

impl Technique for DescenderDrop {
    fn name(&self) -> &'static str {
        "descender-drop"
    }

    fn title(&self) -> &'static str {
        "Descender or winch drop"
    }

    fn summary(&self) -> &'static str {
        "One or two people let down fast on a long line and braked above the ground. Covers speed, stretch, \
         bounce, the brake's heat, emergency stops and drift; leaves out swing, spin and the controller."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &figures::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "line_modulus",
            "line_damping",
            "brake_lateness",
            "emergency_stop",
            "brake_share",
            "cooling_time",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/descender-drop.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        // Many tolerances touch only what the drop is held against, so runs are kept and used again.
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

/// Drops already run in this assessment.
type Runs = Memory<Setup, Option<Run>>;

/// Drag coefficient of a round line across the wind (any handbook of fluid mechanics).
const LINE_DRAG: f64 = 1.2;

fn compute(values: &Values, runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let strength = rigged_strength(values);
    out.set_if("rigged_strength", strength);
    let Some(setup) = Setup::of(values) else {
        return out;
    };
    let Some(run) = runs.get(&setup, drop::run) else {
        return out;
    };
    let (line, end) = (&setup.line, setup.end_length);
    let profile = &run.profile;
    out.set("drop_time", profile.time());
    out.set("speed_reached", profile.speed);
    out.set("start_distance", profile.start_distance);
    out.set("cruise_distance", profile.cruise_distance);
    out.set("brake_distance", profile.brake_distance);
    out.set("start_felt", GRAVITY - profile.start.acceleration);
    out.set("brake_felt", GRAVITY + profile.brake.acceleration);
    out.set("least_felt", run.least_felt);
    out.set("peak_felt", run.most_felt);
    let (stretch, tension) = (line.stretch(end), line.weight(end));
    out.set("static_stretch", stretch);
    out.set("bounce_period", line.period(end));
    out.set("bounce", run.bounce);
    out.set("static_tension", tension);
    out.set("peak_tension", run.peak_tension);
    out.set("emergency_felt", run.emergency_felt);
    out.set("emergency_tension", run.emergency_tension);
    out.set("emergency_force", heavier(values) * run.emergency_felt);
    out.set("brake_power", run.peak_power);
    let highest = run.peak_tension.max(run.emergency_tension);
    if let Some(strength) = strength {
        out.set("line_factor", strength / tension);
        out.set("emergency_factor", strength / highest);
    }
    if let Some(turn) = values.choice("head").map(head_share) {
        out.set("anchor_load", turn * highest);
        out.set_if(
            "anchor_factor",
            values
                .number("anchor_strength")
                .map(|strength| strength / (turn * highest)),
        );
    }
    if let Some(height) = values.number("head_height") {
        let braking = end - profile.brake_distance;
        out.set("brake_height", height - braking - line.stretch(braking));
        out.set_if(
            "clearance",
            values
                .number("body_below")
                .zip(values.number("brake_lateness"))
                .map(|(body, late)| height - run.deepest - profile.speed * late - body),
        );
    }
    // Each group is set as far as its own inputs are known.
    let _ = heat(values, &setup, &run, &mut out);
    let _ = drift(values, &setup, &mut out);
    out
}

/// Mass of the heavier body, kg.
fn heavier(values: &Values) -> f64 {
    let mass = |name| values.number(name).unwrap_or(0.0);
    if values.choice("people") == Some("two") {
        mass("performer_mass").max(mass("second_mass"))
    } else {
        mass("performer_mass")
    }
}

/// Strength of the line with its end and its smallest bend.
fn rigged_strength(values: &Values) -> Option<f64> {
    let end = match values.choice("line_end")? {
        "as_rigged" => 1.0,
        other => wire::termination_share(other)?,
    };
    let bend = wire::bend_share(values.number("bend_ratio")?);
    Some(wire::governing_strength(
        values.number("line_strength")?,
        end,
        bend,
    ))
}

/// What the anchor takes for each newton in the line: 2 sin of half its turn.
fn head_share(head: &str) -> f64 {
    match head {
        "level" => core::f64::consts::SQRT_2,
        "below" => 2.0,
        _ => 1.0,
    }
}

fn heat(values: &Values, setup: &Setup, run: &Run, out: &mut Computed) -> Option<()> {
    let number = |name| values.number(name);
    let cycle = run.profile.time()
        + number("changeover_time")?
        + setup.asked.travel / number("rewind_speed")?;
    let energy = drop::brake_energy(setup);
    out.set("brake_energy", energy);
    out.set("cycle_time", cycle);
    // Specific heat near room temperature, J/(kg K): engineering tables, common practice.
    let specific = match values.choice("brake_material")? {
        "aluminium" => 900.0,
        _ => 465.0,
    };
    let rise = energy * number("brake_share")? / (number("brake_mass")? * specific);
    let air = number("air_temperature")?;
    out.set("brake_temperature", air + rise);
    out.set(
        "last_temperature",
        drop::last_temperature(air, rise, number("drops")?, cycle, number("cooling_time")?),
    );
    Some(())
}

fn drift(values: &Values, setup: &Setup, out: &mut Computed) -> Option<()> {
    let number = |name| values.number(name);
    let wind = number("wind_speed")?;
    let push = 0.5 * atmosphere::density(0.0) * wind * wind;
    let bodies = if values.choice("people")? == "two" {
        2.0
    } else {
        1.0
    };
    let drift = setup.line.drift(
        setup.end_length,
        push * bodies * number("drag_area")?,
        push * LINE_DRAG * number("line_diameter")?,
    );
    out.set("wind_drift", drift);
    out.set("side_reach", drift + number("body_reach")?);
    Some(())
}
