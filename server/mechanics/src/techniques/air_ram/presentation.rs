//! What is shown beside an air ram's figures: plots, ground to keep clear, and cautions.

use super::checks::LAUNCH;
use super::{launch::Setup, launching};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::{STANDARD_ATMOSPHERE, trajectory::NEVER_UP},
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(setup) = Setup::of(&evaluation.values).filter(Setup::turns) else {
        return Vec::new();
    };
    let mut push = Recorder::new();
    let mut gas = Recorder::new();
    let Some(done) = launching::run_and_watch(&setup, |m| {
        push.push(m.time, [m.felt, m.speed]);
        gas.push(m.time, [m.cylinder - STANDARD_ATMOSPHERE, m.angle]);
    }) else {
        return Vec::new();
    };
    let mut traces = vec![
        push.trace(
            "push",
            "Push of the plate",
            ("Time from trigger", Quantity::Time),
            [
                ("Through the legs", Quantity::Acceleration),
                ("Speed of the feet", Quantity::Speed),
            ],
        ),
        gas.trace(
            "cylinder",
            "Cylinder and arm",
            ("Time from trigger", Quantity::Time),
            [
                ("Gauge pressure", Quantity::Pressure),
                ("Angle of the arm", Quantity::Angle),
            ],
        ),
    ];
    if done.finished {
        let carried = setup.carried(&done);
        let mut flight = Recorder::new();
        let landed = setup.fly_and_sample(&done, 0.0, |s| {
            flight.push(
                s.time,
                [s.height + setup.landing, carried + s.along, s.speed],
            );
        });
        if landed.is_some() {
            traces.push(flight.trace(
                "flight",
                "The flight",
                ("Time from leaving the plate", Quantity::Time),
                [
                    ("Height of the body's centre", Quantity::Length),
                    ("Distance along", Quantity::Length),
                    ("Speed", Quantity::Speed),
                ],
            ));
        }
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let mut zones = Vec::new();
    let value = |name| evaluation.value(name);
    if let (Some(x), Some(half_x), Some(half_y)) = (
        value("landing_distance"),
        value("landing_half_length"),
        value("landing_half_width"),
    ) {
        let direction = evaluation.values.number("launch_direction").unwrap_or(0.0);
        zones.push(Zone {
            name: "landing".to_owned(),
            title: "Landing ellipse, 99 %".to_owned(),
            shape: Shape::Ellipse {
                x: x * libm::cos(direction),
                y: x * libm::sin(direction),
                half_x,
                half_y,
            },
            reason: "99 of 100 bodies come down inside it; nothing hard and nobody stands here."
                .to_owned(),
        });
    }
    if let Some((arm, landing)) = evaluation
        .values
        .number("arm_length")
        .zip(evaluation.figure("landing_distance"))
    {
        zones.push(Zone {
            name: "ram".to_owned(),
            title: "Ram and flight".to_owned(),
            // An arm's length around the plate, and two metres past the furthest landing.
            shape: Shape::Rectangle {
                x0: -arm - 1.0,
                x1: landing.high + 2.0,
                y0: -2.0,
                y1: 2.0,
            },
            reason: "Pressurised, the plate may go at any moment; only the performer steps in here, on the \
                     word. Measured from the marked feet."
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
    let Some(setup) = Setup::of(values) else {
        let missing = values.missing(LAUNCH);
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
        return cautions;
    };
    let length = |v| say(Quantity::Length, v);
    let pressure = say(Quantity::Pressure, setup.pressure - STANDARD_ATMOSPHERE);
    if !setup.turns() {
        say_so(
            "arm_cannot_turn",
            format!(
                "From {} to {} the cylinder does not push this arm upward all along: check the angles and \
                 where its pins are.",
                say(Quantity::Angle, setup.arm.start),
                say(Quantity::Angle, setup.arm.end)
            ),
        );
        return cautions;
    }
    let Some(launch) = launching::run(&setup) else {
        say_so(
            "no_solution",
            "The launch could not be followed with these inputs: check the arm's mass and the cylinder."
                .to_owned(),
        );
        return cautions;
    };
    if !launch.finished {
        say_so(
            "stalls",
            format!(
                "At {pressure} the arm stops at {}: the body is lifted and not thrown.",
                say(Quantity::Angle, launch.angle)
            ),
        );
        return cautions;
    }
    if setup.fly(&launch, 0.0).is_none() {
        say_so("never_up", NEVER_UP.to_owned());
    }
    if launch.angle < setup.arm.end - 1e-6 {
        say_so(
            "leaves_early",
            format!(
                "The feet leave the plate at {}, before the arm's stop at {}: the rest of the stroke throws \
                 nobody.",
                say(Quantity::Angle, launch.angle),
                say(Quantity::Angle, setup.arm.end)
            ),
        );
    }
    if setup.foot > setup.arm.length {
        say_so(
            "feet_off_the_plate",
            format!(
                "The feet are marked {} from the hinge on an arm of {}.",
                length(setup.foot),
                length(setup.arm.length)
            ),
        );
    }
    // Where a step short or long of the mark would land: the lever decides the speed.
    if let Some((near, far)) = super::feet(values) {
        let at = |foot| super::range(&Setup { foot, ..setup });
        if let (Some(near_place), Some(far_place)) = (at(near), at(far))
            && far > near
        {
            say_so(
                "foot_placement",
                format!(
                    "Feet at {} from the hinge land the body at {}, at {} they land it at {}: the operator \
                     fires only on feet that are on the mark.",
                    length(near),
                    length(near_place),
                    length(far),
                    length(far_place)
                ),
            );
        }
    }
    say_so(
        "never_pressurised_with_a_body",
        format!(
            "{} stay in the reservoir after the launch: vent it, and never fill it again while anybody \
             stands on the plate.",
            say(
                Quantity::Pressure,
                launch.pressure_left - STANDARD_ATMOSPHERE
            )
        ),
    );
    say_so(
        "ladder",
        format!(
            "Start with weight bags well under {pressure} and work up; the body is gone from the plate {} \
             after the trigger.",
            say(Quantity::Time, launch.time)
        ),
    );
    cautions
}
