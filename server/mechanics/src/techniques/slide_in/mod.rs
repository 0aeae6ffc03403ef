//! Slide-in to a mark: a car comes fast, brakes straight, and slides on the hand brake to rest by people.
//!
//! Covers the straight braking, the slide with its turn, how the stop scatters, and the way to the people.
//! It knows nothing of kerbs, ruts, tyres that cool or burst, or how a driver corrects in the slide.

mod checks;
mod presentation;
mod run;
mod tables;

use std::rc::Rc;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{self, slide},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use run::{Run, Runs, Setup, Surface};

/// The technique.
pub struct SlideIn;

impl Technique for SlideIn {
    fn name(&self) -> &'static str {
        "slide-in"
    }

    fn title(&self) -> &'static str {
        "Slide-in to a mark"
    }

    fn summary(&self) -> &'static str {
        "A car brakes straight, slides on the hand brake and rests at a mark near people. Covers braking, slide \
         and turn, the spread of the stop and the chances, wet and dry; leaves out kerbs, ruts, load shift and \
         the driver's corrections."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "friction_dry",
            "friction_wet",
            "brake_share",
            "reaction_time",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/slide-in.json")
    }

    fn prepare(&self, stated: &Values) -> Computation {
        let scatters = [Surface::Dry, Surface::Wet].map(|surface| run::scatter(stated, surface));
        let runs = Rc::new(Runs::default());
        let ahead = Rc::clone(&runs);
        Computation::new(move |moved| compute(moved, &scatters, &runs)).with_look_ahead(
            move |states| {
                let each = states.iter().flat_map(|moved| {
                    [Surface::Dry, Surface::Wet].map(|surface| Setup::read(moved, surface))
                });
                ahead.look_ahead(each.flatten().collect());
            },
        )
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

/// The smallest chance that is claimed: no rehearsal shows how stops scatter further out.
const SMALLEST_CHANCE: f64 = 1e-9;

fn compute(moved: &Values, scatters: &[Option<run::Scatter>; 2], runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let driven = [Surface::Dry, Surface::Wet]
        .map(|surface| Setup::read(moved, surface).and_then(|setup| runs.get(&setup)));
    let size = moved.number("car_length").zip(moved.number("car_width"));
    let mark = moved.number("mark_distance");
    let people = moved.number("people_distance");
    let gap = |run: &Run| Some(mark? + people? - run.nose(size?));
    let shot = run::surface(moved).and_then(|surface| driven[surface as usize].as_ref());
    if let Some(run) = shot {
        out.set_if("gap", gap(run));
        out.set_if("past_mark", mark.map(|mark| run.along - mark));
    }
    for (i, [reach, pass, room, deviation]) in [
        ["reach_dry", "pass_dry", "gap_dry", "spread_dry"],
        ["reach_wet", "pass_wet", "gap_wet", "spread_wet"],
    ]
    .into_iter()
    .enumerate()
    {
        out.set_if(room, driven[i].as_ref().and_then(gap));
        let Some(scatter) = &scatters[i] else {
            continue;
        };
        out.set(deviation, scatter.deviation);
        let Some(mark) = mark else { continue };
        if let Some((people, size)) = people.zip(size) {
            let chance = scatter.reaches(mark + people, |run| run.nose(size));
            out.set(reach, chance.max(SMALLEST_CHANCE));
        }
        out.set_if(
            pass,
            moved.number("mark_allowance").map(|allowed| {
                // The mark is for the car's middle.
                let chance = scatter.reaches(mark + allowed, |run| run.along);
                chance.max(SMALLEST_CHANCE)
            }),
        );
    }
    if let Some(run) = shot {
        out.set("heading", run.heading);
        out.set_if(
            "heading_miss",
            moved
                .number("wanted_heading")
                .map(|wanted| run.heading - wanted),
        );
        out.set("aside", run.aside);
        out.set("brake_distance", run.braked);
        out.set("slide_distance", run.along - run.braked);
        out.set("run_time", run.time);
    }
    if let [Some(dry), Some(wet)] = &driven {
        out.set_if(
            "side_reach",
            // It swings out further than it rests; and however it lies, it reaches no further than half its
            // diagonal from its middle.
            size.map(|(length, width)| {
                dry.furthest_aside.max(wet.furthest_aside) + 0.5 * models::hypot(length, width)
            }),
        );
    }
    out.set_if("abort_distance", run::abort(moved));
    let tipping = || {
        let factor =
            slide::stability_factor(moved.number("track")?, moved.number("centre_height")?);
        let friction = moved
            .number("friction_dry")?
            .max(moved.number("friction_wet")?);
        Some(factor / friction)
    };
    out.set_if("tipping_margin", tipping());
    out
}
