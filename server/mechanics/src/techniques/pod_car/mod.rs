//! Pod car: a hidden driver in a pod on the roof or behind drives the car while an actor sits at its wheel.
//!
//! Covers the raised middle, tipping in a bend and in a swerve, loads on the axles, stopping, sight, mounts and
//! tie-downs. It knows nothing of the frame's own strength, of kerbs and ruts, of wind, or of how the car handles.

mod checks;
mod presentation;
mod rig;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{GRAVITY, car_balance, slide},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use rig::{Rig, Swerve, Swerves};

/// The technique.
pub struct PodCar;

impl Technique for PodCar {
    fn name(&self) -> &'static str {
        "pod-car"
    }

    fn title(&self) -> &'static str {
        "Pod car"
    }

    fn summary(&self) -> &'static str {
        "A hidden driver in a pod drives while an actor sits at the wheel. Covers tipping in a bend and a swerve, axle \
         loads, stopping, sight, mounts and tie-downs; leaves out the frame's own strength, kerbs and ruts, wind and \
         how the car handles."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["friction", "lean_per_g", "lean_damping", "reaction_time"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/pod-car.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        let swerves = Swerves::default();
        Computation::new(move |moved| compute(moved, &swerves))
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

fn compute(moved: &Values, swerves: &Swerves) -> Computed {
    let mut out = Computed::new();
    let rig = Rig::read(moved);
    if let Some(rig) = &rig {
        tipping(moved, rig, &mut out);
        axles(moved, rig, &mut out);
    }
    if let Some(swerve) = Swerve::read(moved) {
        let grip = moved.number("friction").map(|friction| friction * GRAVITY);
        out.set("swerve_pull", swerve.pull);
        out.set_if("swerve_grip", grip.map(|grip| swerve.pull / grip));
        // The tyres give no more than the road's grip, however hard the wheel is turned.
        let lift = rig.zip(grip).and_then(|(rig, grip)| {
            swerves.get(&rig.lean(moved)?, swerve.pull.min(grip), swerve.time)
        });
        out.set_if("swerve_lift", lift);
    }
    if let Some(speed) = moved.number("top_speed") {
        out.set("road_sight", road_sight(speed));
    }
    let number = |name| moved.number(name);
    let hidden = || {
        let from_eye = car_balance::hidden_ahead(
            number("eye_height")?,
            number("edge_height")?,
            number("edge_distance")?,
        )?;
        Some((from_eye - number("eye_to_nose")?).max(0.0))
    };
    out.set_if("hidden_ahead", hidden());
    if let Some(pod) = rig::pod_mass(moved) {
        out.set_if("tie_down_share", rig::tie_down_share(moved, pod));
        mounts(moved, pod, &mut out);
    }
    out.set_if(
        "drivers",
        moved
            .choice("actor_controls")
            .map(|state| if state == "live" { 2.0 } else { 1.0 }),
    );
    out
}

const MILE_AN_HOUR: f64 = 0.447_04;
const FOOT: f64 = 0.3048;

/// AASHTO's distance, m, at a speed in m/s.
fn road_sight(speed: f64) -> f64 {
    FOOT * slide::sight_distance_feet(speed / MILE_AN_HOUR)
}

fn tipping(values: &Values, rig: &Rig, out: &mut Computed) {
    let whole = rig.whole;
    out.set("total_mass", whole.mass);
    out.set("whole_height", whole.height);
    let Some(track) = values.number("track") else {
        return;
    };
    out.set(
        "stability_factor",
        slide::stability_factor(track, whole.height),
    );
    let Some(level) = rig.tipping(values) else {
        return;
    };
    let friction = values.number("friction");
    out.set_if("slide_margin", friction.map(|friction| level / friction));
    let (Some(fall), Some(radius)) = (values.number("bend_fall"), values.number("bend_radius"))
    else {
        return;
    };
    let tips = GRAVITY * car_balance::on_bank(level, fall);
    out.set("tipping_pull", tips);
    out.set("tipping_speed", f64::sqrt((tips * radius).max(0.0)));
    if let Some(speed) = values.number("bend_speed") {
        let pull = speed * speed / radius;
        out.set("bend_pull", pull);
        out.set("rollover_margin", tips / pull);
        // What the road can give there, with the same fall.
        out.set_if(
            "bend_grip",
            friction.and_then(|friction| {
                let grip = GRAVITY * car_balance::on_bank(friction, fall);
                (grip > 0.0).then(|| pull / grip)
            }),
        );
    }
}

fn axles(values: &Values, rig: &Rig, out: &mut Computed) {
    let whole = rig.whole;
    let share = rig.front_share();
    out.set("front_share_loaded", share);
    out.set("front_load", whole.mass * share);
    out.set("rear_load", whole.mass * (1.0 - share));
    let Some(braking) = rig.braking(values) else {
        return;
    };
    out.set("braking", braking);
    out.set(
        "front_load_braking",
        whole.mass * (share + braking / GRAVITY * whole.height / rig.wheelbase),
    );
    if let (Some(speed), Some(reaction)) =
        (values.number("top_speed"), values.number("reaction_time"))
    {
        out.set_if(
            "stop_distance",
            slide::stopping_distance(speed, reaction, braking),
        );
        out.set_if(
            "pod_costs",
            rig.braking_alone(values).and_then(|alone| {
                Some(
                    slide::braking_distance(speed, 0.0, braking)?
                        - slide::braking_distance(speed, 0.0, alone)?,
                )
            }),
        );
    }
}

/// Pulls that cargo must stand on United States roads, m/s2: forward, and sideways or rearward (49 CFR 393.102).
const RULE_FORWARD: f64 = 0.8 * GRAVITY;
const RULE_SIDE: f64 = 0.5 * GRAVITY;

fn mounts(values: &Values, pod: f64, out: &mut Computed) {
    let number = |name| values.number(name);
    let (Some(strength), Some(height), Some(count), Some(length), Some(width)) = (
        number("mount_strength"),
        number("mount_height"),
        number("mounts"),
        number("mount_length"),
        number("mount_width"),
    ) else {
        return;
    };
    let holds = |base| car_balance::mount_pull(pod, strength, height, base, count);
    out.set("mount_forward", holds(length));
    out.set("mount_side", holds(width));
    let (Some(braking), Some(bend), Some(swerve)) = (
        out.get("braking"),
        out.get("bend_pull"),
        out.get("swerve_pull"),
    ) else {
        return;
    };
    let grip = number("friction").map_or(f64::INFINITY, |friction| friction * GRAVITY);
    let side = RULE_SIDE.max(bend.max(swerve).min(grip));
    let load = |pull, base| car_balance::mount_load(pod, pull, height, base, count);
    let worst = load(RULE_FORWARD.max(braking), length).max(load(side, width));
    out.set("mount_factor", strength / worst);
}
