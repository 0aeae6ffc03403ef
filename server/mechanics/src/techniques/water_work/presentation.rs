//! What is shown beside water work's figures: the plunge, the cooling, water to keep clear, and cautions.

use super::{checks::ENTRY, entry};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::{cold_water, water_entry},
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let mut traces = Vec::new();
    let values = &evaluation.values;
    let n = |name| values.number(name);
    if let Some((entry, _)) = entry(values) {
        let mut recorder = Recorder::new();
        let _ = water_entry::plunge(&entry, |time, depth, speed, felt| {
            recorder.push(time, [depth, speed, felt]);
        });
        traces.push(recorder.trace(
            "plunge",
            "The plunge",
            ("Time from the water", Quantity::Time),
            [
                ("Depth", Quantity::Length),
                ("Speed", Quantity::Speed),
                ("Felt", Quantity::Acceleration),
            ],
        ));
    }
    if let (Some(mass), Some(water), Some(suit), Some(heat), Some(planned)) = (
        n("performer_mass"),
        n("water_temperature"),
        n("suit_thickness"),
        n("work_heat"),
        n("planned_immersion"),
    ) {
        let body = cold_water::cooling(mass, water, suit, heat);
        let mut recorder = Recorder::new();
        for i in 0..=100 {
            let time = 1.5 * planned * f64::from(i) / 100.0;
            recorder.push(time, [body.after(time)]);
        }
        traces.push(recorder.trace(
            "cooling",
            "Cooling in the water",
            ("Time in the water", Quantity::Time),
            [("Body", Quantity::Temperature)],
        ));
    }
    traces.retain(|trace| trace.x.values.len() >= 2);
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let mut zones = Vec::new();
    if let Some(clear) = evaluation.values.number("clear_radius") {
        zones.push(Zone {
            name: "entry".to_owned(),
            title: "Entry water".to_owned(),
            shape: Shape::Ellipse {
                x: 0.0,
                y: 0.0,
                half_x: clear,
                half_y: clear,
            },
            reason: "Nobody and nothing floats here while somebody is above it or under it."
                .to_owned(),
        });
    }
    if let Some(drift) = evaluation.value("drift")
        && drift > 0.0
    {
        zones.push(Zone {
            name: "downstream".to_owned(),
            title: "Downstream catch".to_owned(),
            shape: Shape::Rectangle {
                x0: 0.0,
                x1: drift + 5.0,
                y0: -5.0,
                y1: 5.0,
            },
            reason: "Whoever cannot swim comes through here: a boat or a line waits at its lower end, and no \
                     strainers or propellers turn in it."
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
    let value = |name| evaluation.value(name);
    let input = |name| evaluation.values.number(name);
    if let (Some(depth), Some(peak)) = (value("depth_reached"), value("peak_felt")) {
        say_so(
            "limp_body",
            format!(
                "The depth of {} and the peak of {} are those of a body that holds its shape; one that opens stops \
                 sooner and is hit harder, so film a test entry from half the height.",
                say(Quantity::Length, depth),
                say(Quantity::Acceleration, peak)
            ),
        );
    }
    if let (Some(available), Some(rehearsed)) =
        (value("breath_available"), input("rehearsed_breath"))
        && available < rehearsed
    {
        say_so(
            "cold_breath",
            format!(
                "Colder water cuts the rehearsed breath hold of {} to {}; rehearse again in this water before \
                 relying on either.",
                say(Quantity::Time, rehearsed),
                say(Quantity::Time, available)
            ),
        );
    }
    if let Some(planned) = input("planned_submerged")
        && planned > 0.0
    {
        say_so(
            "no_overbreathing",
            format!(
                "For {} on one breath nobody breathes hard beforehand: it hides the urge to breathe and people black \
                 out without warning.",
                say(Quantity::Time, planned)
            ),
        );
    }
    if let Some(float) = input("float_force")
        && float < 0.0
    {
        say_so(
            "sinks",
            format!(
                "Costume and body sink with {}: fit a release that one hand finds blind, and a float for the wait.",
                say(Quantity::Force, -float)
            ),
        );
    }
    let missing = evaluation.values.missing(ENTRY);
    if missing.is_empty() {
        say_so(
            "guideline",
            "Read the local guideline for work in and under water beside this, such as the Ontario film guideline \
             30, underwater."
                .to_owned(),
        );
    } else {
        say_so(
            "not_entered",
            format!(
                "Not everything is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
