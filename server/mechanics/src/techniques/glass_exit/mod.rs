//! Tempered glass exit: a performer runs through a pane that the licensed operator breaks just before.
//!
//! Covers timing and distance only: lead between charge and contact and its spread, the crack's way across
//! the pane, falling glass, and what a whole pane would do. The charge, its place and its delay are taken
//! as the licensed operator gives them.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        self, GRAVITY, fall,
        glass::{self, Meeting},
        head_pulse,
        stopping::{self, Shape},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct GlassExit;

impl Technique for GlassExit {
    fn name(&self) -> &'static str {
        "glass-exit"
    }

    fn title(&self) -> &'static str {
        "Tempered glass exit"
    }

    fn summary(&self) -> &'static str {
        "A run through a tempered pane that is broken by a charge on cue. Covers lead time and its spread, \
         the crack, falling glass and a pane that stays whole; takes charge, delay and fragment radius as \
         the licensed operator gives them and leaves out cuts and the landing."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["reaction_time", "firing_delay", "pane_give"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/glass-exit.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(compute)
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

/// The run and the firing, with how far each varies.
fn meeting(values: &Values) -> Option<Meeting> {
    Some(Meeting {
        distance: values.number("cue_distance")?,
        distance_deviation: values.number("cue_deviation")?,
        speed: values.number("run_speed")?,
        speed_deviation: values.number("speed_deviation")?,
        delay: values.number("reaction_time")? + values.number("firing_delay")?,
        delay_deviation: models::hypot(
            values.number("reaction_deviation")?,
            values.number("firing_deviation")?,
        ),
    })
}

/// From the charge to the farthest corner, m.
fn crack_distance(values: &Values) -> Option<f64> {
    let width = values.number("pane_width")?;
    let height = values.number("pane_height")?;
    Some(match values.choice("charge_place")? {
        "corner" => models::hypot(width, height),
        "edge" => models::hypot(0.5 * width, height),
        _ => 0.5 * models::hypot(width, height),
    })
}

/// How far the upper edge of the falling glass has dropped a time after the charge, m.
fn dropped(after: f64) -> f64 {
    0.5 * GRAVITY * after.max(0.0) * after.max(0.0)
}

/// Longest window of the head injury criterion, s.
const WINDOW: f64 = 0.015;

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let number = |name| values.number(name);
    let crack = crack_distance(values);
    let slow = crack.map(|distance| distance / glass::SLOW_FRONT);
    out.set_if("crack_time", slow);
    out.set_if(
        "crack_time_fast",
        crack.map(|distance| distance / glass::FAST_FRONT),
    );
    if let Some(speed) = number("run_speed") {
        let per_mass = 0.5 * speed * speed;
        out.set("pendulum_height", per_mass / GRAVITY);
        out.set_if(
            "body_energy",
            number("performer_mass").map(|mass| mass * per_mass),
        );
        if let Some(give) = number("pane_give") {
            let stop = stopping::stop(speed, give, Shape::HalfSine);
            out.set("whole_pane_stop", stop.mean);
            out.set(
                "whole_pane_head",
                head_pulse::half_sine_criterion(&stop, WINDOW),
            );
        }
        out.set_if(
            "contact_time",
            number("cue_distance").map(|distance| distance / speed),
        );
    }
    out.set_if(
        "fire_time",
        number("reaction_time")
            .zip(number("firing_delay"))
            .map(|(button, charge)| button + charge),
    );
    let height = number("pane_height");
    out.set_if(
        "fragment_fall",
        height
            .zip(number("sill_height"))
            .map(|(height, sill)| fall::in_vacuum(height + sill).time),
    );
    if let Some(meeting) = meeting(values) {
        let lead = meeting.lead();
        out.set("lead_time", lead);
        out.set("cloud_drop", dropped(lead));
        if let Some(height) = height {
            let share = (1.0 - dropped(lead) / height).clamp(0.0, 1.0);
            out.set("cloud_share", share);
            out.set_if(
                "cloud_mass",
                number("pane_width")
                    .zip(number("pane_thickness"))
                    .map(|(width, thickness)| glass::DENSITY * width * thickness * height * share),
            );
        }
        if let Some(misfire) = number("misfire_chance") {
            // A pane that is never fired is whole whatever the lead.
            let or_misfire = |chance: f64| misfire + (1.0 - misfire) * chance;
            out.set_if(
                "whole_chance",
                slow.map(|time| or_misfire(meeting.sooner_than(time))),
            );
            out.set_if(
                "short_lead_chance",
                number("least_lead").map(|least| or_misfire(meeting.sooner_than(least))),
            );
            out.set_if(
                "long_lead_chance",
                number("most_lead").map(|most| (1.0 - misfire) * (1.0 - meeting.sooner_than(most))),
            );
        }
    }
    out
}
