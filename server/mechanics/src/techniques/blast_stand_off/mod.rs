//! Stand-off from an effect: a performer runs past or away from a fireball, a burst or a mortar.
//!
//! The stand-off and the debris zone are given by the licensed operator, never worked out here: only times
//! and distances are held against them. It knows nothing of what makes the effect or how strong it is.

mod checks;
mod presentation;
mod run;
mod tables;

use core::cell::RefCell;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, keep},
    models::{self, sound},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use run::{Plume, Scene};

/// The technique.
pub struct BlastStandOff;

impl Technique for BlastStandOff {
    fn name(&self) -> &'static str {
        "blast-stand-off"
    }

    fn title(&self) -> &'static str {
        "Stand-off from an effect"
    }

    fn summary(&self) -> &'static str {
        "A performer runs near one effect whose stand-off and debris zone the licensed operator gives. Covers \
         where the runner is when it goes, goes late or is held, the chances, crew distances, wind and sound; \
         leaves out falls on the run and everything about the effect's own strength."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "run_speed",
            "rise_time",
            "start_reaction",
            "operator_reaction",
            "firing_delay",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/blast-stand-off.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        let known = Known::default();
        Computation::new(move |values| compute(values, &known))
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

/// The smallest chance that is claimed: no rehearsal shows how runs scatter further out.
const SMALLEST_CHANCE: f64 = 1e-9;

/// How far wind carries light debris while it is in the air, along and across.
fn drift(values: &Values) -> Option<[f64; 2]> {
    let carried = values.number("wind_speed")? * values.number("debris_time")?;
    let (sin, cos) = libm::sincos(values.number("wind_towards")?);
    Some([carried * cos, carried * sin])
}

fn place(values: &Values, along: &str, across: &str) -> Option<[f64; 2]> {
    Some([values.number(along)?, values.number(across)?])
}

/// Distance from the middle of the debris, anywhere from where it falls in still air to as far as the wind
/// carries what stays up longest.
fn from_debris(place: [f64; 2], drift: [f64; 2]) -> f64 {
    let square = drift[0] * drift[0] + drift[1] * drift[1];
    let share = if square > 0.0 {
        ((place[0] * drift[0] + place[1] * drift[1]) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    models::hypot(place[0] - share * drift[0], place[1] - share * drift[1])
}

/// Chances found already: most tolerances move nothing of the run, and a chance is a sum over many speeds.
#[derive(Default)]
struct Known(RefCell<Vec<Kept>>);

/// A run, the stand-off and the late shot's delay, and what was found.
type Kept = (Scene, [f64; 2], Option<[f64; 2]>);

impl Known {
    fn of(&self, scene: &Scene, radius: f64, late: f64) -> Option<[f64; 2]> {
        let key = [radius, late];
        let kept = self
            .0
            .borrow()
            .iter()
            .find_map(|(run, given, found)| (run == scene && *given == key).then_some(*found));
        kept.unwrap_or_else(|| {
            let found = scene.chances(radius, late);
            keep(&self.0, (*scene, key, found));
            found
        })
    }
}

fn compute(values: &Values, known: &Known) -> Computed {
    let mut out = Computed::new();
    let crew = place(values, "crew_along", "crew_across");
    let radius = values.number("zone_radius");
    if let Some(scene) = Scene::read(values) {
        run_past(&mut out, values, &scene, radius, known);
    }
    if let Some((crew, drift)) = crew.zip(drift(values)) {
        out.set("crew_distance", from_debris(crew, drift));
    }
    if let (Some(away), Some(wind), Some(time)) = (
        values.number("bystander_distance"),
        values.number("wind_speed"),
        values.number("debris_time"),
    ) {
        out.set("bystander_debris", (away - wind * time).max(0.0));
    }
    if values
        .choice("camera_cover")
        .is_some_and(|cover| cover != "unmanned")
    {
        out.set_if(
            "camera_distance",
            place(values, "camera_along", "camera_across")
                .zip(drift(values))
                .map(|(camera, drift)| from_debris(camera, drift)),
        );
    }
    if let Some(plume) = Plume::read(values) {
        out.set("smoke_reach", plume.reach);
        out.set_if("smoke_clearance", crew.map(|crew| plume.clearance(crew)));
    }
    if let Some(speed) = values.number("air_temperature").map(sound::speed) {
        out.set_if(
            "sound_delay_crew",
            crew.map(|crew| models::hypot(crew[0], crew[1]) / speed),
        );
        out.set_if(
            "sound_delay",
            out.get("runner_distance").map(|distance| distance / speed),
        );
    }
    out
}

/// Everything about the runner.
fn run_past(
    out: &mut Computed,
    values: &Values,
    scene: &Scene,
    radius: Option<f64>,
    known: &Known,
) {
    let length = scene.sprint.length;
    out.set("closest_approach", scene.nearest(0.0, length));
    out.set("end_distance", scene.distance(length));
    let Some(fired) = scene.fire_time() else {
        return;
    };
    let at = scene.sprint.place(fired);
    out.set("runner_distance", scene.distance(at));
    out.set("fire_time", scene.after_cue(fired));
    out.set("runner_speed", scene.sprint.speed(fired));
    out.set_if("place_spread", scene.place_deviation());
    let late = values.number("late_delay");
    out.set_if(
        "late_distance",
        late.map(|late| scene.nearest(at, scene.sprint.place(fired + late))),
    );
    out.set("after_distance", scene.nearest(at, length));
    let Some(radius) = radius else { return };
    let margin = scene.time_in_hand(radius);
    out.set_if("time_margin", margin);
    out.set_if(
        "decision_margin",
        margin.map(|margin| margin - scene.decision_delay),
    );
    let chances = known.of(scene, radius, late.unwrap_or(0.0));
    out.set_if(
        "inside_chance",
        chances.map(|found| found[0].max(SMALLEST_CHANCE)),
    );
    if late.is_some() {
        out.set_if(
            "late_chance",
            chances.map(|found| found[1].max(SMALLEST_CHANCE)),
        );
    }
}
