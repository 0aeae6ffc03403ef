//! Horse fall and drag: a rider comes off at speed onto a prepared bed, with or without the horse, and is
//! drawn behind it on a line that a hand lets go.
//!
//! Covers the rider's flight, stop and slide, where landings scatter, the horse's run, the line and the
//! rubbing. It knows nothing of what a horse decides, of stirrups that hold, or of stones in the bed.

mod checks;
mod presentation;
mod ride;
mod tables;

use core::cell::RefCell;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, keep},
    models::{
        GRAVITY, dragging, head, spread,
        stopping::{Shape, Stop},
        tolerance::{self, Axis},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use ride::{Drag, Fall};

/// The technique.
pub struct HorseFall;

impl Technique for HorseFall {
    fn name(&self) -> &'static str {
        "horse-fall"
    }

    fn title(&self) -> &'static str {
        "Horse fall and drag"
    }

    fn summary(&self) -> &'static str {
        "A rider comes off at speed onto a soft bed, or is drawn behind the horse. Covers flight, stop, slide \
         and scatter, the horse's run, line, release and heat; leaves out what a horse decides and stirrups \
         that hold."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "bed_usable",
            "bed_friction",
            "heat_share",
            "ground_friction",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/horse-fall.json")
    }

    fn prepare(&self, stated: &Values) -> Computation {
        let stated = stated.clone();
        let stops = RefCell::new(Vec::new());
        Computation::new(move |values| compute(values, &stated, &stops))
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

/// What stops do to a body, kept because most inputs do not move the stop: the stop, then the dynamic
/// response in g and the head injury criterion.
type Stops = RefCell<Vec<((Stop, Shape, Axis), [f64; 2])>>;

fn answers(fall: &Fall, stops: &Stops) -> [f64; 2] {
    let key = (fall.stop, fall.shape, fall.axis);
    let known = stops
        .borrow()
        .iter()
        .find(|(before, _)| *before == key)
        .map(|(_, answers)| *answers);
    known.unwrap_or_else(|| {
        let samples = fall.felt();
        let answers = [
            tolerance::dynamic_response(fall.axis, &samples),
            head::injury_criterion(&samples, 0.015),
        ];
        keep(stops, (key, answers));
        answers
    })
}

fn compute(values: &Values, stated: &Values, stops: &Stops) -> Computed {
    let mut out = Computed::new();
    if let Some(fall) = Fall::read(values) {
        let [response, criterion] = answers(&fall, stops);
        out.set("dynamic_response", GRAVITY * response);
        out.set("head_criterion", criterion);
        let scatter = ride::scatter(stated, values, &fall.landing);
        fall_figures(values, &fall, scatter, &mut out);
    }
    if let Some(drag) = Drag::read(values) {
        drag_figures(values, &drag, &mut out);
    }
    out
}

fn fall_figures(values: &Values, fall: &Fall, scatter: Option<[f64; 2]>, out: &mut Computed) {
    let n = |name| values.number(name);
    out.set("fall_speed", fall.landing.down);
    out.set("landing_speed", fall.landing.speed());
    out.set("landing_distance", fall.landing.distance);
    out.set("slide", fall.slide);
    out.set("mean_felt", fall.stop.mean + GRAVITY);
    out.set("rest_gap", fall.rest_gap);
    if let (Some([along, across]), Some(margin), Some(accepted)) =
        (scatter, n("landing_margin"), n("accepted_miss"))
    {
        let deviations = spread::two_sided_quantile(0.5 * accepted);
        out.set(
            "bed_length_needed",
            2.0 * (margin + deviations * along) + fall.slide,
        );
        out.set("bed_width_needed", 2.0 * (margin + deviations * across));
        if let (Some(length), Some(width)) = (n("bed_length"), n("bed_width")) {
            let half = 0.5 * (length - fall.slide) - margin;
            let miss_along = spread::normal_outside(-half, half, 0.0, along);
            let half = 0.5 * width - margin;
            let miss_across = spread::normal_outside(-half, half, 0.0, across);
            let miss = miss_along + miss_across - miss_along * miss_across;
            // No rehearsal shows how landings scatter further out than this.
            out.set("miss_probability", miss.max(1e-9));
        }
    }
    out.set("horse_run", fall.horse_run);
    out.set("peak_felt", fall.stop.peak + GRAVITY);
    out.set_if(
        "horse_room",
        n("horse_ground").map(|ground| ground - fall.horse_run),
    );
}

fn drag_figures(values: &Values, drag: &Drag, out: &mut Computed) {
    let n = |name| values.number(name);
    let peak = drag.pull.peak();
    out.set("drag_tension", drag.pull.steady());
    out.set("peak_tension", peak);
    out.set_if(
        "line_factor",
        n("line_strength").map(|strength| strength / peak),
    );
    out.set_if(
        "release_factor",
        n("release_rating").map(|rating| rating / peak),
    );
    if let (Some(reaction), Some(opening)) = (n("release_reaction"), n("release_time")) {
        let after =
            drag.speed * (reaction + opening) + dragging::slide(drag.speed, drag.pull.friction);
        out.set("release_distance", after);
        out.set_if("ground_left", n("clear_ground").map(|clear| clear - after));
    }
    out.set("drag_heat", drag.pull.rubbing() * drag.distance);
    out.set_if("pad_temperature", drag.pad_after(drag.time()));
    out.set("drag_time", drag.time());
}
