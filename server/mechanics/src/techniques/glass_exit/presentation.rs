//! What is shown beside a tempered glass exit's figures.

use super::{
    checks::{LEAD, chance},
    dropped, meeting,
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let (Some(meeting), Some(height), Some(sill)) = (
        meeting(values),
        values.number("pane_height"),
        values.number("sill_height"),
    ) else {
        return Vec::new();
    };
    let contact = meeting.distance / meeting.speed;
    let end = 1.2 * contact.max(meeting.delay) + 0.2;
    let mut run = Recorder::new();
    const POINTS: u32 = 120;
    for i in 0..=POINTS {
        let time = end * f64::from(i) / f64::from(POINTS);
        let before = meeting.distance - meeting.speed * time;
        let edge = (height + sill - dropped(time - meeting.delay)).max(0.0);
        run.push(time, [before, edge]);
    }
    let mut leads = Recorder::new();
    // Six deviations of the lead, to first order, to each side hold all of it that can be seen.
    let rough = models::hypot(
        meeting.delay_deviation,
        models::hypot(
            meeting.distance_deviation,
            contact * meeting.speed_deviation,
        ) / meeting.speed,
    )
    .max(0.001);
    for i in 0..=POINTS {
        let lead = meeting.lead() + rough * (12.0 * f64::from(i) / f64::from(POINTS) - 6.0);
        leads.push(lead, [meeting.sooner_than(lead)]);
    }
    vec![
        run.trace(
            "run",
            "The run and the falling glass",
            ("Time from the cue", Quantity::Time),
            [
                ("Still to the pane", Quantity::Length),
                ("Upper edge of the glass", Quantity::Length),
            ],
        ),
        leads.trace(
            "leads",
            "How leads vary",
            ("Lead", Quantity::Time),
            [("Chance of a shorter one", Quantity::Ratio)],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let Some(radius) = evaluation.values.number("fragment_radius") else {
        return Vec::new();
    };
    vec![Zone {
        name: "fragments".to_owned(),
        title: "Fragments, as given".to_owned(),
        shape: Shape::Ellipse {
            x: 0.0,
            y: 0.0,
            half_x: radius,
            half_y: radius,
        },
        reason: "The licensed operator expects fragments here; nobody without a shield but the performer."
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
    let value = |name| evaluation.value(name);
    if let (Some(whole), Some(energy), Some(stop)) = (
        value("whole_chance"),
        value("body_energy"),
        value("whole_pane_stop"),
    ) {
        say_so(
            "whole_pane",
            format!(
                "The pane is whole at contact in {} of draws; it then meets {} and, if it holds, stops the \
                 body at {} on average.",
                chance(whole),
                say(Quantity::Energy, energy),
                say(Quantity::Acceleration, stop)
            ),
        );
    }
    if let (Some(slow), Some(fast)) = (value("crack_time"), value("crack_time_fast")) {
        say_so(
            "crack_front",
            format!(
                "Two measured crack fronts disagree: this pane is broken across in {} or in {}; chances \
                 take the longer.",
                say(Quantity::Time, slow),
                say(Quantity::Time, fast)
            ),
        );
    }
    if let Some(lead) = value("lead_time")
        && lead <= 0.0
    {
        say_so(
            "body_first",
            format!(
                "On these figures the body reaches the pane {} before the charge; it must never fire on a \
                 body that touches the glass.",
                say(Quantity::Time, -lead)
            ),
        );
    } else if let (Some(share), Some(mass), Some(fall)) = (
        value("cloud_share"),
        value("cloud_mass"),
        value("fragment_fall"),
    ) {
        say_so(
            "falling_glass",
            format!(
                "When the body passes, falling glass still covers {:.0} % of the opening, {} of it; the \
                 last lands no sooner than {} after the charge, so eyes stay shut and covered.",
                100.0 * share,
                say(Quantity::Mass, mass),
                say(Quantity::Time, fall)
            ),
        );
    }
    let missing = evaluation.values.missing(LEAD);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
