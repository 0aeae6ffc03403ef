//! What is shown beside a fight's figures: tiring over the takes, ground to keep clear, and cautions.

use super::{
    checks::{CHANCE, HEAT, HIT, STANDOFF},
    day, scatter, stamina,
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    plotting::Recorder,
    units::{Quantity, say},
};

/// Points along each rest.
const REST_POINTS: i32 = 6;

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let (Some(day), Some(stamina)) = (day(values), stamina(values)) else {
        return Vec::new();
    };
    let mut curve = Recorder::new();
    let mut push = |time: f64, reserve: f64| {
        if let Some(scatter) = scatter(values, reserve) {
            curve.push(time, [reserve, scatter]);
        }
    };
    push(0.0, 1.0);
    let mut before: Option<(f64, f64)> = None;
    stamina.through(&day, |time, reserve| {
        if let Some((ended, left)) = before {
            for i in 1..=REST_POINTS {
                let rest = day.rest * f64::from(i) / f64::from(REST_POINTS);
                push((ended + rest).min(time), stamina.rested(left, rest));
            }
        }
        push(time, reserve);
        before = Some((time, reserve));
    });
    if curve.is_empty() {
        return Vec::new();
    }
    vec![curve.trace(
        "tiring",
        "Tiring over the takes",
        ("Time from the first beat", Quantity::Time),
        [
            ("Reserve", Quantity::Ratio),
            ("Scatter of the distance", Quantity::Length),
        ],
    )]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(distance), Some(reach), Some(step), Some(on)) = (
        values.number("distance"),
        values.number("reach"),
        values.number("step_error"),
        evaluation.figure("run_on"),
    ) else {
        return Vec::new();
    };
    let around = reach + step + on.high;
    vec![Zone {
        name: "fight".to_owned(),
        title: "Reach of the fight".to_owned(),
        shape: Shape::Ellipse {
            x: 0.0,
            y: 0.0,
            half_x: 0.5 * distance + around,
            half_y: around,
        },
        reason: "Round the two fighters wherever they move: nobody else, no stand and no cable within a wrong step and \
                 a strike of them."
            .to_owned(),
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
    let value = |name| evaluation.value(name);
    let ratio = |value| say(Quantity::Ratio, value);
    let length = |value| say(Quantity::Length, value);
    let needed: Vec<&str> = [STANDOFF, CHANCE, HIT, HEAT].concat();
    let missing = values.missing(&needed);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Not everything is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    if let (Some(first), Some(last)) = (value("chance_first"), value("chance_last"))
        && last > 2.0 * first
    {
        say_so(
            "tired",
            format!(
                "A strike in the last take is {} times as likely to land as in the first: shoot the closest beats \
                 first.",
                ratio(last / first)
            ),
        );
    }
    if let (Some(gap), Some(scatter)) = (value("strike_gap"), value("scatter_last")) {
        say_so(
            "marks",
            format!(
                "The gap of {} is {} times the scatter at the end: a forgotten move or a changed order is not in that \
                 scatter.",
                length(gap),
                ratio(gap / scatter)
            ),
        );
    }
    if let (Some(speed), Some(force)) = (value("contact_speed"), value("peak_force")) {
        let text = if speed > 0.0 {
            format!(
                "A partner a step too near is met at {} with {}: an eye or a tooth is hurt by far less than breaks \
                 bone.",
                say(Quantity::Speed, speed),
                say(Quantity::Force, force)
            )
        } else {
            format!(
                "A partner wrong by {} is not yet in reach; a larger mistake would be met at up to the strike's whole \
                 speed and that of the step in.",
                length(values.number("step_error").unwrap_or(0.0))
            )
        };
        say_so("met", text);
    }
    if let (Some("breakaway"), Some(force)) =
        (values.choice("weapon"), values.number("break_force"))
    {
        say_so(
            "breakaway",
            format!(
                "The prop breaks at {}: one that is old, cold or wet does not, so break one of the same batch on the \
                 day; its pieces fly and the eyes are turned away.",
                say(Quantity::Force, force)
            ),
        );
    }
    if let (Some(globe), Some(allowed)) = (value("wet_bulb_globe"), value("work_allowed"))
        && allowed < 1.0
    {
        say_so(
            "heat",
            format!(
                "At {} of wet-bulb globe temperature the body cannot fight on without rests, however it feels: water, \
                 shade and a watch over both performers.",
                say(Quantity::Temperature, globe)
            ),
        );
    }
    cautions
}
