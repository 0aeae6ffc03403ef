//! Water work: falling or going in, staying under on one breath, and the cold in and after it.
//!
//! Covers the entry as far as the body stops, breath against what was rehearsed, cooling, current and
//! the reach of a safety diver. It knows nothing of waves, entrapment, breathing gear or water quality.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Ends, Evaluation, over_tolerances_and},
    models::{
        GRAVITY, STANDARD_ATMOSPHERE, atmosphere, cold_water, fall,
        tolerance::{self, Axis},
        water_entry::{self, Entry, Plunge, Shape},
        weather,
    },
    reading::Values,
    technique::{AssessError, Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct WaterWork;

impl Technique for WaterWork {
    fn name(&self) -> &'static str {
        "water-work"
    }

    fn title(&self) -> &'static str {
        "Water work"
    }

    fn summary(&self) -> &'static str {
        "Going into water and staying under on one breath. Covers the entry until the body stops, breath, \
         cold, current and a diver's reach; leaves out waves, entrapment, breathing gear and water quality."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["drag_factor", "float_force", "work_heat", "diver_speed"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/water-work.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(compute)
    }

    fn evaluate(&self, values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        over_tolerances_and(values, self.figures(), &[COLDEST], &compute)
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

/// Where air is just too warm for any wind to chill, wind alone moves nothing, and colder air with it does.
const COLDEST: &Ends = &[("air_temperature", -1), ("wind_speed", 1)];

/// Length along the fall, drag area and added mass of each attitude, and the axis it loads. Drag areas
/// and added masses are from memory: a rod along its axis 0.06, across 1, a curled body between.
fn attitude(values: &Values) -> Option<(Shape, Axis)> {
    let (length, drag_area, added, axis) = match values.choice("entry_attitude")? {
        "feet" => (1.75, 0.12, 0.06, Axis::Headward),
        "head" => (2.1, 0.06, 0.05, Axis::Footward),
        "curled" => (0.9, 0.30, 0.50, Axis::Headward),
        "back" => (0.25, 0.70, 1.0, Axis::Forward),
        _ => (0.25, 0.70, 1.0, Axis::Backward),
    };
    let shape = Shape {
        length,
        drag_area: drag_area * values.number("drag_factor")?,
        added,
    };
    Some((shape, axis))
}

/// The entry, from a fall with air drag.
fn entry(values: &Values) -> Option<(Entry, Axis)> {
    let mass = values.number("performer_mass")?;
    let terminal = fall::terminal_speed(
        mass,
        values.number("drag_area")?,
        STANDARD_ATMOSPHERE / (atmosphere::GAS_CONSTANT * 288.15),
    );
    let (shape, axis) = attitude(values)?;
    let entry = Entry {
        mass,
        speed: fall::with_drag(values.number("entry_height")?, terminal).speed,
        float: values.number("float_force")?,
        density: if values.choice("water")? == "salt" {
            1025.0
        } else {
            1000.0
        },
        shape,
    };
    Some((entry, axis))
}

/// The plunge with what is felt, for as long as a body answers to it: a second after the surface the water
/// does little more than carry.
fn plunge(entry: &Entry) -> Option<(Plunge, Vec<(f64, f64)>)> {
    let mut felt = Vec::new();
    let plunge = water_entry::plunge(entry, |time, _, _, value| {
        if time < 0.4 {
            felt.push((time, value));
        }
    })?;
    felt.push((plunge.time.clamp(0.4, 1.0), GRAVITY));
    Some((plunge, felt))
}

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let n = |name| values.number(name);
    if let Some((entry, axis)) = entry(values) {
        out.set("entry_speed", entry.speed);
        if let Some((plunge, felt)) = plunge(&entry) {
            out.set("depth_reached", plunge.depth);
            out.set_if(
                "bottom_clearance",
                n("water_depth").map(|depth| depth - plunge.depth),
            );
            out.set(
                "mean_slowing",
                entry.speed * entry.speed / (2.0 * plunge.depth.max(1e-3)),
            );
            out.set("peak_felt", plunge.most_felt);
            let response = tolerance::dynamic_response(axis, &felt);
            out.set("dynamic_response", GRAVITY * response);
        }
    }
    let _ = breath(values, &mut out);
    let _ = cold(values, &mut out);
    if let (Some(air), Some(wind)) = (n("air_temperature"), n("wind_speed")) {
        out.set("wind_chill", weather::wind_chill(air, wind));
    }
    if let (Some(current), Some(swim)) = (n("current_speed"), n("swim_speed")) {
        out.set("current_share", current / swim);
    }
    if let (Some(divers), Some(performers)) = (n("safety_divers"), n("performers_in_water")) {
        out.set("divers_each", divers / performers);
    }
    out
}

/// Breath against what was rehearsed, and the diver's air against what is left of it.
fn breath(values: &Values, out: &mut Computed) -> Option<()> {
    let n = |name| values.number(name);
    let share = cold_water::breath_share(n("water_temperature")?, n("rehearsal_temperature")?);
    let available = n("rehearsed_breath")? * share;
    out.set("breath_available", available);
    let planned = n("planned_submerged")?;
    out.set("breath_share", planned / available);
    let reach = n("diver_reaction")? + n("diver_distance")? / n("diver_speed")?;
    out.set("air_time", reach);
    out.set("air_margin", available - planned - reach);
    out.set("drift", n("current_speed")? * (planned + reach));
    Some(())
}

/// Cooling in the water, and the wind on wet skin after it.
fn cold(values: &Values, out: &mut Computed) -> Option<()> {
    let n = |name| values.number(name);
    let (water, suit, planned) = (
        n("water_temperature")?,
        n("suit_thickness")?,
        n("planned_immersion")?,
    );
    let warmer = cold_water::resistance(suit) / cold_water::resistance(0.0);
    let useful = cold_water::exhaustion_time(water) * warmer;
    out.set("useful_time", useful);
    // Where nothing is left of the time, any stay is far past it, and is said to be.
    out.set("immersion_share", planned / useful.max(1.0));
    let body = cold_water::cooling(n("performer_mass")?, water, suit, n("work_heat")?);
    out.set("body_after", body.after(planned));
    out.set("chill_time", body.time_to_lose(1.0));
    Some(())
}
