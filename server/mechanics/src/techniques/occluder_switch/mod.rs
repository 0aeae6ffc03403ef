//! Switch behind an occluder: an actor walks out of sight, a double walks on, and a moving camera must
//! see neither while they change places.
//!
//! Covers sight lines past a box, paths at steady speeds and the frame. It knows nothing of light,
//! shadows, reflections or how alike two people look.

mod checks;
mod passing;
mod presentation;
mod scene;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, over_tolerances},
    reading::Values,
    technique::{AssessError, Computation, FigureDescription, Parameter, Technique},
};
use scene::Scene;

/// The technique.
pub struct OccluderSwitch;

impl Technique for OccluderSwitch {
    fn name(&self) -> &'static str {
        "occluder-switch"
    }

    fn title(&self) -> &'static str {
        "Switch behind an occluder"
    }

    fn summary(&self) -> &'static str {
        "An actor goes behind something and a double comes out, in one shot. Covers when both are wholly \
         hidden from a moving camera, the frame, and the room to stop and to pass; leaves out shadows, \
         reflections and the match itself."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["actor_speed", "double_speed", "stopping_rate"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/occluder-switch.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(compute)
    }

    fn evaluate(&self, values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        let mut evaluation = over_tolerances(values, self.figures(), &compute)?;
        // The two may meet at a time inside the tolerances and be far apart at all their ends.
        let least = passing::least(&evaluation.values);
        let figures = evaluation.figures.iter_mut();
        for (figure, least) in figures
            .filter(|figure| figure.name == "closest_approach")
            .zip(least)
        {
            figure.low = figure.low.min(least);
        }
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

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let Some(scene) = Scene::read(values) else {
        return out;
    };
    let window = scene.window();
    let length = window.map_or(0.0, |(from, to)| to - from);
    out.set("hidden_window", length);
    if let Some((from, to)) = window {
        out.set("window_start", from);
        out.set("window_end", to);
    }
    out.set_if(
        "exchange_margin",
        values
            .number("rehearsed_exchange")
            .map(|exchange| length - exchange),
    );
    if let Some((from, to)) = window {
        out.set("hidden_share", scene.hidden_share(from, to));
        out.set("actor_edge_speed", scene.edge_speed(&scene.actor, from));
        out.set("double_edge_speed", scene.edge_speed(&scene.double, to));
        out.set("stray_time", scene.stray_time(from, to));
        out.set_if("frame_margin", scene.frame_margin(from, to));
    }
    out.set("closest_approach", scene.closest_approach());
    out.set_if("clearance_behind", scene.clearance_behind());
    if let (Some((from, _)), Some(rate)) = (window, values.number("stopping_rate")) {
        out.set("stop_room", scene.stop_room(from, rate));
    }
    out
}
