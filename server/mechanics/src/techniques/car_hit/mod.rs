//! Car hit by lock-off: the car's pass and the performer's pull are shot apart, with the camera locked off,
//! and combined. The performer is never in the place while the car runs.
//!
//! Covers both passes' times and marks, the car's stop, the pull's flight and landing, how the plates fit,
//! and whether the picture is plausible. It knows nothing of the gas behind the pull, which has its own
//! technique, or of light that changes between passes.

mod checks;
mod presentation;
mod tables;
mod two_passes;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        GRAVITY, head, pedestrian,
        stopping::{self, Shape},
        trajectory,
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use two_passes::{Car, Pull};

/// The technique.
pub struct CarHit;

impl Technique for CarHit {
    fn name(&self) -> &'static str {
        "car-hit"
    }

    fn title(&self) -> &'static str {
        "Car hit by lock-off"
    }

    fn summary(&self) -> &'static str {
        "A car's pass and a performer's pull, shot apart under one locked camera and combined. Covers times, marks, \
         the car's stop, flight, landing and a plausible throw; leaves out the pull's gas and changing light. Both \
         live at once is refused."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["friction", "pull_delay", "pad_stop", "double_friction"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/car-hit.json")
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

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let number = |name| values.number(name);
    if let Some(passes) = values.choice("passes") {
        out.set(
            "people_before_car",
            if passes == "both_live" { 1.0 } else { 0.0 },
        );
    }
    out.set_if("time_gap", two_passes::time_gap(values));
    let pull = Pull::read(values);
    let landing = pull.as_ref().and_then(|pull| trajectory::fly(&pull.throw));
    let landed = pull
        .as_ref()
        .zip(landing.as_ref())
        .map(|(pull, landing)| pull.before + landing.distance);
    out.set_if(
        "space_gap",
        number("car_parked")
            .zip(landed)
            .map(|(parked, landed)| parked - landed - two_passes::BODY),
    );
    let car = Car::read(values);
    let contact = car.as_ref().and_then(Car::contact_time);
    out.set_if("contact_time", contact);
    let moves = number("trigger")
        .zip(number("pull_delay"))
        .map(|(trigger, delay)| trigger + delay);
    out.set_if("move_time", moves);
    if let (Some(contact), Some(moves), Some(rate), Some(slipped)) = (
        contact,
        moves,
        number("frame_rate"),
        number("slipped_frames"),
    ) {
        let apart = (contact - moves) * rate;
        out.set("registration", (apart - slipped).abs());
        out.guide("apart", apart - slipped);
        out.set("slip_needed", f64::round(apart));
    }
    let speed = car.as_ref().and_then(Car::contact_speed);
    out.set_if("contact_speed", speed);
    let past = car.as_ref().map(Car::stop_past);
    out.set_if("stop_past", past);
    out.set_if(
        "stop_gap",
        number("camera_distance")
            .zip(past)
            .map(|(room, past)| room - past),
    );
    picture(values, speed, &mut out);
    if let (Some(speed), Some(travel)) = (number("release_speed"), number("pull_travel")) {
        out.set("pull_acceleration", speed * speed / (2.0 * travel));
    }
    out.set_if("landing_distance", landed);
    if let (Some(pull), Some(landing)) = (&pull, &landing) {
        out.set_if(
            "landing_time",
            number("pull_delay").map(|delay| delay + pull.time + landing.time),
        );
        out.set("landing_speed", landing.speed());
        if let Some(distance) = number("pad_stop") {
            let stop = stopping::stop(landing.down, distance, Shape::Haversine);
            out.set("landing_peak", stop.peak + GRAVITY);
            let samples = stopping::samples(&stop, Shape::Haversine, GRAVITY, 61);
            out.set("head_criterion", head::injury_criterion(&samples, 0.015));
        }
    }
    out
}

/// Whether the audience would believe the throw.
fn picture(values: &Values, speed: Option<f64>, out: &mut Computed) -> Option<()> {
    let number = |name| values.number(name);
    let friction = number("double_friction")?;
    let shown = number("thrown_distance");
    if let Some(speed) = speed {
        let common = pedestrian::plastic(number("car_mass")?, speed, number("performer_mass")?);
        let (least, most) = pedestrian::throws(friction, common);
        out.set("common_speed", common);
        out.set("throw_least", least);
        out.set("throw_most", most);
        if let Some(shown) = shown {
            out.guide("too_short", least - shown);
            out.guide("too_far", shown - most);
        }
        out.set_if(
            "throw_miss",
            shown.map(|shown| (least - shown).max(shown - most).max(0.0)),
        );
    }
    out.set("shown_speed", pedestrian::least_speed(friction, shown?));
    Some(())
}
