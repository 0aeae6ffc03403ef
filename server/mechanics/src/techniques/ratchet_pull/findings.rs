//! What a ratchet pull's figures mean: checks against limits, plots, ground to keep clear, cautions.

use super::{
    Runs, axis,
    pull::{self, Setup},
};
use crate::{
    assessment::{Bound, Caution, Check, Shape, Source, Trace, Zone},
    evaluation::Evaluation,
    judging::{Held, RESERVE, Rule, Subject, common_practice, from_memory, judge, published},
    models::{
        GRAVITY, STANDARD_ATMOSPHERE,
        tolerance::{self, Axis},
    },
    plotting::Recorder,
    units::{Quantity, say},
};

const PULL: &[&str] = &[
    "performer_mass",
    "reservoir_pressure",
    "reservoir_volume",
    "bore",
    "stroke",
    "purchase",
    "valve_conductance",
    "line_modulus",
    "line_length",
];

/// What the pull needs, and one thing more.
macro_rules! pull_and {
    ($extra:literal) => {
        &[
            "performer_mass",
            "reservoir_pressure",
            "reservoir_volume",
            "bore",
            "stroke",
            "purchase",
            "valve_conductance",
            "line_modulus",
            "line_length",
            $extra,
        ]
    };
}

struct Line {
    name: &'static str,
    title: &'static str,
    subject: Subject,
    quantity: Quantity,
    bound: Bound,
    limit: f64,
    source: Source,
    blocking: bool,
    needs: &'static [&'static str],
}

fn hold(evaluation: &Evaluation, line: Line, detail: impl FnOnce(&Held) -> String) -> Check {
    let rule = Rule {
        name: line.name,
        title: line.title,
        subject: line.subject,
        quantity: line.quantity,
        bound: line.bound,
        limit: line.limit,
        source: line.source,
        blocking: line.blocking,
        reserve: if line.quantity == Quantity::Count {
            0.0
        } else {
            RESERVE
        },
        needs: line.needs,
    };
    judge(evaluation, rule, detail)
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = body(evaluation);
    checks.extend(rig(evaluation));
    checks
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let alarm = evaluation
        .values
        .number("peak_alarm")
        .unwrap_or(4.0 * GRAVITY);
    let rise = evaluation.value("rise_time").map_or_else(
        || "no rise at all".to_owned(),
        |v| format!("a rise of {}", say(Quantity::Time, v)),
    );
    let limits = tolerance::response(axis(&evaluation.values).unwrap_or(Axis::Headward)).limits;
    let peak = hold(
        evaluation,
        Line {
            name: "peak_acceleration",
            title: "Peak on the body",
            subject: Subject::Figure("peak_acceleration"),
            quantity: Quantity::Acceleration,
            bound: Bound::AtMost,
            limit: alarm,
            source: common_practice(),
            blocking: true,
            needs: PULL,
        },
        |held| {
            format!(
                "The line pulls with up to {} after {rise}; less pressure or a slower valve \
                 brings it down.",
                say(Quantity::Acceleration, held.value)
            )
        },
    );
    let response = |name, title, risk, limit: f64, blocking| {
        hold(
            evaluation,
            Line {
                name,
                title,
                subject: Subject::Figure("dynamic_response"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: limit * GRAVITY,
                source: from_memory("J. W. Brinkley, dynamic response limits", risk),
                blocking,
                needs: pull_and!("pull_direction"),
            },
            |held| {
                format!(
                    "The jerk, {rise}, gives a dynamic response of {}; a slower valve lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
    let force = hold(
        evaluation,
        Line {
            name: "harness_force",
            title: "Force on the body",
            subject: Subject::Figure("line_peak"),
            quantity: Quantity::Force,
            bound: Bound::AtMost,
            limit: 8000.0,
            source: published(
                "29 CFR 1926.502",
                "(d)(16): 1,800 lbf (8 kN) in a full-body harness",
                Some("United States"),
            ),
            blocking: true,
            needs: PULL,
        },
        |held| {
            format!(
                "The harness takes up to {}.",
                say(Quantity::Force, held.value)
            )
        },
    );
    let pulls = hold(
        evaluation,
        Line {
            name: "pulls_today",
            title: "Hard pulls on the day",
            subject: Subject::Input("pulls_today"),
            quantity: Quantity::Count,
            bound: Bound::AtMost,
            limit: 3.0,
            source: common_practice(),
            blocking: false,
            needs: &["pulls_today"],
        },
        |held| {
            format!(
                "{} planned for this performer, rehearsals included; 3 hard pulls a day are the habit.",
                say(Quantity::Count, held.value)
            )
        },
    );
    vec![
        peak,
        response(
            "response_low",
            "Dynamic response, low risk",
            "low risk",
            limits[0],
            false,
        ),
        response(
            "response_medium",
            "Dynamic response, medium risk",
            "medium risk",
            limits[1],
            true,
        ),
        force,
        pulls,
    ]
}

fn rig(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let peak = evaluation
        .value("line_peak")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    let load = evaluation
        .value("anchor_load")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    let corridor = hold(
        evaluation,
        Line {
            name: "corridor",
            title: "Distance in the corridor",
            subject: Subject::Figure("total_distance"),
            quantity: Quantity::Length,
            bound: Bound::AtMost,
            limit: input("corridor_length"),
            source: common_practice(),
            blocking: true,
            needs: pull_and!("corridor_length"),
        },
        |held| {
            format!(
                "The body lands {} from where it stood, up to {} within the tolerances, in a corridor of {}.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, held.high),
                say(Quantity::Length, input("corridor_length"))
            )
        },
    );
    let pressure = hold(
        evaluation,
        Line {
            name: "rated_pressure",
            title: "Pressure against the rating",
            subject: Subject::Input("reservoir_pressure"),
            quantity: Quantity::Pressure,
            bound: Bound::AtMost,
            limit: input("rated_pressure"),
            source: Source {
                document: "the marking on the equipment".to_owned(),
                ..common_practice()
            },
            blocking: true,
            needs: &["reservoir_pressure", "rated_pressure"],
        },
        |held| {
            format!(
                "{} in equipment marked for {}.",
                say(Quantity::Pressure, held.value),
                say(Quantity::Pressure, input("rated_pressure"))
            )
        },
    );
    let line = hold(
        evaluation,
        Line {
            name: "line_factor",
            title: "Line factor at the peak",
            subject: Subject::Figure("line_factor"),
            quantity: Quantity::Ratio,
            bound: Bound::AtLeast,
            limit: 5.0,
            source: common_practice(),
            blocking: true,
            needs: pull_and!("line_strength"),
        },
        |held| {
            format!(
                "{}: the line peaks at {peak}; a stronger line or a softer pull raises it.",
                say(Quantity::Ratio, held.value)
            )
        },
    );
    let anchor = hold(
        evaluation,
        Line {
            name: "anchor_factor",
            title: "Anchor factor",
            subject: Subject::Figure("anchor_factor"),
            quantity: Quantity::Ratio,
            bound: Bound::AtLeast,
            limit: 2.0,
            source: from_memory(
                "29 CFR 1926.502",
                "(d)(15): factor 2 designed by a qualified person",
            ),
            blocking: true,
            needs: pull_and!("anchor_strength"),
        },
        |held| {
            format!(
                "{}: the redirect's anchor takes up to {load} for the line's turn there.",
                say(Quantity::Ratio, held.value)
            )
        },
    );
    vec![corridor, pressure, line, anchor]
}

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(setup) = Setup::of(&evaluation.values) else {
        return Vec::new();
    };
    let mut forces = Recorder::new();
    let mut motion = Recorder::new();
    let done = pull::run(&setup, |m| {
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
    let Some(distance) = evaluation.figure("total_distance") else {
        return Vec::new();
    };
    vec![Zone {
        name: "corridor".to_owned(),
        title: "Line and landing corridor".to_owned(),
        // Two metres past the furthest landing for the slide, and a body's length to each side.
        shape: Shape::Rectangle {
            x0: -1.0,
            x1: distance.high + 2.0,
            y0: -2.0,
            y1: 2.0,
        },
        reason: "The line whips and the body slides; nobody stands or steps in here.".to_owned(),
    }]
}

pub(super) fn cautions(evaluation: &Evaluation, runs: &Runs) -> Vec<Caution> {
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
    match runs.get(&setup) {
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
