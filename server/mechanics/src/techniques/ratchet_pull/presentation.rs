//! What is shown beside a ratchet pull's figures: plots, ground to keep clear, and cautions.

use super::checks::PULL;
use super::{pull::Setup, pulling};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::{STANDARD_ATMOSPHERE, trajectory::NEVER_UP},
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(setup) = Setup::of(&evaluation.values) else {
        return Vec::new();
    };
    let mut forces = Recorder::new();
    let mut motion = Recorder::new();
    let done = pulling::run_and_watch(&setup, |m| {
        forces.push(m.time, [m.tension / setup.mass, m.speed]);
        motion.push(m.time, [m.cylinder - STANDARD_ATMOSPHERE]);
    });
    if done.is_none() {
        return Vec::new();
    }
    vec![
        forces.trace(
            "pull",
            "Pull on the body",
            ("Time from trigger", Quantity::Time),
            [
                ("Line pull", Quantity::Acceleration),
                ("Speed", Quantity::Speed),
            ],
        ),
        motion.trace(
            "cylinder",
            "Cylinder pressure",
            ("Time from trigger", Quantity::Time),
            [("Gauge pressure", Quantity::Pressure)],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let Some(needed) = evaluation.figure("corridor_needed") else {
        return Vec::new();
    };
    vec![Zone {
        name: "corridor".to_owned(),
        title: "Line and landing corridor".to_owned(),
        // As far as the body may slide, and a body's length to each side.
        shape: Shape::Rectangle {
            x0: -1.0,
            x1: needed.high,
            y0: -2.0,
            y1: 2.0,
        },
        reason: "The line whips and the body slides; nobody stands or steps in here.".to_owned(),
    }]
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
    let Some(setup) = Setup::of(values) else {
        let missing = values.missing(PULL);
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
        return cautions;
    };
    match pulling::run(&setup) {
        None => say_so(
            "no_solution",
            "The pull could not be followed with these inputs: check the line's modulus and the moving mass."
                .to_owned(),
        ),
        Some(pull) if !pull.finished => say_so(
            "stalls",
            format!(
                "At {} the piston does not finish its stroke: the body is moved {} and not thrown.",
                say(Quantity::Pressure, setup.pressure - STANDARD_ATMOSPHERE),
                say(Quantity::Length, pull.travel)
            ),
        ),
        Some(pull) if pull.landing.is_none() => say_so("never_up", NEVER_UP.to_owned()),
        Some(_) => {}
    }
    if let Some(wanted) = values.number("wanted_distance") {
        match evaluation.figure("pressure_needed") {
            None => say_so(
                "distance_out_of_reach",
                format!(
                    "No pressure from 0.1 to 40 bar gives {}: change the stroke, the purchase or the valve.",
                    say(Quantity::Length, wanted)
                ),
            ),
            Some(needed) => {
                if let Some(distance) = evaluation.value("total_distance")
                    && (distance - wanted).abs() > 0.1
                {
                    say_so(
                        "distance",
                        format!(
                            "{} gives {}, not the wanted {}; that takes {}.",
                            say(Quantity::Pressure, setup.pressure - STANDARD_ATMOSPHERE),
                            say(Quantity::Length, distance),
                            say(Quantity::Length, wanted),
                            say(Quantity::Pressure, needed.value)
                        ),
                    );
                }
                if needed.high > values.number("rated_pressure").unwrap_or(f64::INFINITY) {
                    say_so(
                        "pressure_needed_over_rating",
                        format!(
                            "The wanted distance may take {}, more than the equipment is marked for.",
                            say(Quantity::Pressure, needed.high)
                        ),
                    );
                }
            }
        }
    }
    if let Some(speed) = evaluation.value("landing_speed") {
        say_so(
            "ladder",
            format!(
                "The body lands at {}. Valve and seal friction differ from one rig to the next: start with \
                 weight bags well under this pressure and work up.",
                say(Quantity::Speed, speed)
            ),
        );
    }
    cautions
}
