//! What is shown beside the figures of a car hit: both passes on one clock, ground to keep clear, cautions.

use super::two_passes::{BODY, Car, Pull};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::trajectory::{self, NEVER_UP},
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let mut traces = Vec::new();
    let time = ("Time", Quantity::Time);
    if let Some(car) = Car::read(&evaluation.values) {
        let mut way = Recorder::new();
        for i in 0..=200 {
            let now = car.rest_time() * f64::from(i) / 200.0;
            way.push(now, [car.at(now)]);
        }
        traces.push(way.trace(
            "car",
            "The car's pass",
            time,
            [("Nose past the contact mark", Quantity::Length)],
        ));
    }
    let start = evaluation.value("move_time");
    if let (Some(pull), Some(start)) = (Pull::read(&evaluation.values), start) {
        let mut way = Recorder::new();
        for i in 0..=40 {
            let share = f64::from(i) / 40.0;
            way.push(start + share * pull.time, [pull.before * share * share]);
        }
        trajectory::fly_and_sample(&pull.throw, |sample| {
            way.push(
                start + pull.time + sample.time,
                [pull.before + sample.along],
            );
        });
        traces.push(way.trace(
            "performer",
            "The performer's pass",
            time,
            [("Performer past the mark", Quantity::Length)],
        ));
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let mut zones = Vec::new();
    if let Some(past) = evaluation.figure("stop_past") {
        zones.push(Zone {
            name: "car".to_owned(),
            title: "The car's pass".to_owned(),
            shape: Shape::Rectangle {
                x0: -evaluation.values.number("run_in").unwrap_or(0.0),
                x1: past.high.max(0.0) + 3.0,
                y0: -3.0,
                y1: 3.0,
            },
            reason: "The car runs here in its own pass: nobody at all is inside, the performer least of all."
                .to_owned(),
        });
    }
    if let Some(landing) = evaluation.figure("landing_distance") {
        zones.push(Zone {
            name: "pull".to_owned(),
            title: "The performer's pass".to_owned(),
            shape: Shape::Rectangle {
                x0: -1.0,
                x1: landing.high + BODY,
                y0: -1.5,
                y1: 1.5,
            },
            reason: "The performer flies and lands here with the car parked away and its key out."
                .to_owned(),
        });
    }
    zones
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    let values = &evaluation.values;
    if let Some(common) = evaluation.value("common_speed") {
        say_so(
            "real_impact",
            format!(
                "A real impact would bring the performer to {} within centimetres: the passes stay apart even at \
                 rehearsal.",
                say(Quantity::Speed, common)
            ),
        );
    }
    if Pull::read(values).is_some_and(|pull| trajectory::fly(&pull.throw).is_none()) {
        say_so("never_up", NEVER_UP.to_owned());
    }
    if values.choice("passes") == Some("both_live") {
        say_so(
            "refused",
            "Car and performer together is not this technique and is not computed as one."
                .to_owned(),
        );
    }
    if let Some(gap) = evaluation.value("time_gap")
        && gap <= 0.0
    {
        say_so(
            "overlap",
            format!(
                "The passes overlap by {} on the clock of the day.",
                say(Quantity::Time, -gap)
            ),
        );
    }
    if let Some(past) = evaluation.value("stop_past")
        && past <= 0.0
    {
        say_so(
            "short",
            format!(
                "The car rests {} before the contact mark: brake later or come faster.",
                say(Quantity::Length, -past)
            ),
        );
    }
    if let Some(registration) = evaluation.figure("registration") {
        say_so(
            "frames",
            format!(
                "Timing alone puts contact out by up to {} frames from take to take: shoot the pass with the freer \
                 timing first and set the other to it.",
                say(Quantity::Ratio, registration.high)
            ),
        );
    }
    let needed = [
        "approach_speed",
        "run_in",
        "friction",
        "release_speed",
        "pull_travel",
        "performer_mass",
    ];
    let missing = values.missing(&needed);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Not all can be computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
