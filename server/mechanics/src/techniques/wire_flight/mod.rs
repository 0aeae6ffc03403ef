//! Wire flight: a body on two hip wires is lifted, swings, and is lowered.
//!
//! Covers what each wire carries through the flight, the strength of the wire as rigged, what happens
//! when one wire fails, balance on the picks and the reach of the swing. It knows nothing of the winch's
//! controls, the structure above the anchors, or fatigue.

mod checks;
mod flight;
mod presentation;
mod tables;

use flight::{Shares, swing_bottom};

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        GRAVITY,
        pendulum::Moment,
        wire::{self, Material},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct WireFlight;

impl Technique for WireFlight {
    fn name(&self) -> &'static str {
        "wire-flight"
    }

    fn title(&self) -> &'static str {
        "Wire flight, two hip wires"
    }

    fn summary(&self) -> &'static str {
        "A body flown on two hip wires: lift, swing, lowering. Covers each wire's tension and design \
         factor, balance, an emergency stop and the failure of one wire; leaves out winch controls, the \
         structure above and fatigue."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["balance_depth"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/wire-flight.json")
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

/// Breaking strength of one wire as rigged, N. End and bend losses both count: where they are on a rig
/// changes, and the lower figure is the one to plan by.
fn strength(values: &Values) -> Option<f64> {
    let material = match values.choice("wire_material")? {
        "stainless" => Material::Stainless,
        _ => Material::Galvanised,
    };
    let breaking = wire::find(values.choice("wire_size")?)?.breaking_strength(material);
    let termination = wire::termination_share(values.choice("termination")?)?;
    let bend = wire::bend_share(values.number("sheave_ratio")?);
    Some(wire::cautious_strength(breaking, termination, bend))
}

/// Highest tension in the wire that is left when the other lets go while the body feels `felt`, N.
///
/// Two things load it: the load arrives at once, so the wire overshoots the new rest by as much as it
/// was below it (an undamped spring, 2 T_new - T_old); and the body, no longer under its point, swings
/// in under it through the lean (3 - 2 cos lean). They come one after the other, so the higher counts.
fn one_wire_left(mass: f64, felt: f64, shares: &Shares) -> f64 {
    let alone = mass * felt;
    let (left, right) = shares.tensions(alone);
    let sudden = 2.0 * alone - left.min(right);
    let swung = alone * (3.0 - 2.0 * libm::cos(shares.lean));
    sudden.max(swung).max(alone)
}

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let strength = strength(values);
    out.set_if("wire_strength", strength);
    if let Some((forward, below)) = values
        .number("forward_offset")
        .zip(values.number("balance_depth"))
    {
        out.set("hang_angle", libm::atan2(forward.abs(), below));
    }
    let shares = Shares::of(values);
    out.set_if("heavier_side", shares.map(|shares| shares.heavier()));
    let bottom = swing(values, &mut out);
    let (Some(mass), Some(shares)) = (values.number("performer_mass"), shares) else {
        return out;
    };
    let (left, right) = shares.tensions(mass * GRAVITY);
    out.set("static_tension", left.max(right));
    let mut highest = left.max(right);
    if let Some(places) = bottom.and_then(|bottom| flight::places(values, &bottom)) {
        let worst = flight::most_loaded(&places);
        let (left, right) = shares.tensions(mass * worst.felt * worst.sheave_gain);
        let peak = left.max(right);
        out.set("peak_tension_left", left);
        out.set("peak_tension_right", right);
        out.set("peak_felt", flight::most_felt(&places).felt);
        out.set("lowest_factor_time", worst.time);
        // All of it grows with what is felt, so the place that loads two wires most loads the one most too.
        let alone = worst.sheave_gain * one_wire_left(mass, worst.felt, &shares);
        highest = highest.max(peak).max(alone);
        out.set("one_wire_tension", alone);
        if let Some(strength) = strength {
            out.set("lowest_factor", strength / peak);
            out.set("one_wire_factor", strength / alone);
        }
    }
    if let Some(stopping) = values.number("emergency_stop") {
        let force = mass * (GRAVITY + stopping);
        let (left, right) = shares.tensions(force);
        let tension = left.max(right);
        out.set("emergency_body_force", force);
        out.set("emergency_tension", tension);
        out.set_if(
            "emergency_factor",
            strength.map(|strength| strength / tension),
        );
        // The factor is claimed only when every planned load on the anchor is known too.
        if out.get("peak_felt").is_some()
            && let Some(anchor) = values.number("anchor_strength")
        {
            // A wire that turns over a sheave pulls on its point twice, in the worst direction.
            let parts = if values.number("sheaves").is_some_and(|count| count < 0.5) {
                1.0
            } else {
                2.0
            };
            out.set("anchor_factor", anchor / (parts * highest.max(tension)));
        }
    }
    out
}

/// The swing's own figures, which need no more than lengths and the angle; gives its bottom.
fn swing(values: &Values, out: &mut Computed) -> Option<Moment> {
    let pendulum = flight::pendulum(values)?;
    out.set("swing_period", flight::period(&pendulum));
    let bottom = swing_bottom(&pendulum)?;
    out.set("swing_speed", bottom.speed.abs());
    out.set_if(
        "swing_reach",
        values
            .number("body_reach")
            .map(|reach| pendulum.length * libm::sin(pendulum.release_angle) + reach),
    );
    Some(bottom)
}
