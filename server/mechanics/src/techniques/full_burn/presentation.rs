//! What is shown beside a burn's figures: plots, ground to keep clear, and cautions.

use super::checks::{LAYERS, at_least};
use super::{flame_time, layers::Stack};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let (Some(stack), Some(flames), Some(strip)) = (
        Stack::of(values),
        flame_time(values),
        values.number("strip_time"),
    ) else {
        return Vec::new();
    };
    let mut heat = Recorder::new();
    let mut damage = Recorder::new();
    let mut face = Recorder::new();
    stack.call_out(flames, strip, |moment| {
        heat.push(moment.time, [moment.skin_surface, moment.epidermis_base]);
        face.push(moment.time, [moment.face]);
        damage.push(
            moment.time,
            [moment.damage.min(super::MOST_DAMAGE), moment.water],
        );
    });
    vec![
        heat.trace(
            "skin_temperature",
            "Skin temperature",
            ("Time from ignition", Quantity::Time),
            [
                ("Skin surface", Quantity::Temperature),
                ("Base of the epidermis", Quantity::Temperature),
            ],
        ),
        face.trace(
            "outer_face",
            "Outer face of the cloth",
            ("Time from ignition", Quantity::Time),
            [("Outer face", Quantity::Temperature)],
        ),
        damage.trace(
            "damage",
            "Damage and water left",
            ("Time from ignition", Quantity::Time),
            [
                ("Second-degree damage", Quantity::Ratio),
                ("Water left", Quantity::ArealDensity),
            ],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(radius), Some((_, travel))) = (
        values.number("clear_radius"),
        values.ends_of("travel_length"),
    ) else {
        return Vec::new();
    };
    vec![Zone {
        name: "burn".to_owned(),
        title: "Burn ground".to_owned(),
        shape: Shape::Ellipse {
            x: 0.5 * travel,
            y: 0.0,
            half_x: 0.5 * travel + radius,
            half_y: radius,
        },
        reason: "Only the performer and the safeties; nothing that burns or hides the performer."
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
    let Some(stack) = Stack::of(values) else {
        let missing = values.missing(LAYERS);
        say_so(
            "not_entered",
            format!(
                "Heat to the skin is not computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
        return cautions;
    };
    let value = |name| evaluation.value(name);
    if let Some(bare) = value("bare_skin_time") {
        say_so(
            "gaps",
            format!(
                "Where gel or cloth is missing, a second-degree burn comes after {}: the figures hold only \
                 where every layer is as thick as entered.",
                at_least(bare)
            ),
        );
    }
    if let Some(whole) = value("time_to_second_degree") {
        let without = stack.without_outer_cloth();
        if without < 0.9 * whole {
            say_so(
                "outer_cloth",
                format!(
                    "The outer cloth is counted as whole to the end. If it burns away at once, a \
                     second-degree burn comes at {} instead of {}.",
                    at_least(without),
                    at_least(whole)
                ),
            );
        }
    }
    if let (Some(left), Some(flames)) = (value("water_left"), value("flame_time")) {
        let started = stack.water();
        if started <= 0.0 {
            say_so(
                "dry",
                "No water is entered in any layer: all the time there is comes from cloth."
                    .to_owned(),
            );
        } else if left < 0.25 * started {
            say_so(
                "drying_out",
                format!(
                    "After {} in flames only {} of {} water is left; once it is gone the skin heats fast.",
                    say(Quantity::Time, flames),
                    say(Quantity::ArealDensity, left),
                    say(Quantity::ArealDensity, started)
                ),
            );
        }
        // Steam under ten grams a square metre is rounding.
        if started - left > 0.01 {
            say_so(
                "steam",
                format!(
                    "{} of steam is taken to leave outward; where a tight layer keeps it in, it condenses on \
                     the skin and burns sooner than computed.",
                    say(Quantity::ArealDensity, started - left)
                ),
            );
        }
    }
    if let (Some(stored), Some(total)) = (value("stored_heat_damage"), value("skin_damage"))
        && total > 0.05
        && stored > 0.2 * total
    {
        say_so(
            "stored_heat",
            format!(
                "{:.0} % of the damage comes after the last flame, from heat in layers that stay on for {}: \
                 strip and soak sooner.",
                100.0 * stored / total,
                say(Quantity::Time, values.number("strip_time").unwrap_or(0.0))
            ),
        );
    }
    cautions
}
