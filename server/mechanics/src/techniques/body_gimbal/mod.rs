//! Body gimbal: a performer turned head over heels between two prongs.
//!
//! Covers the turn up to speed, what head and feet feel, balance, the stop, and whether the stand tips.
//! It knows nothing of how the drive is controlled or of the bending of the prongs.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{self, GRAVITY, gimbal::Rotor},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct BodyGimbal;

impl Technique for BodyGimbal {
    fn name(&self) -> &'static str {
        "body-gimbal"
    }

    fn title(&self) -> &'static str {
        "Body gimbal"
    }

    fn summary(&self) -> &'static str {
        "A performer turned head over heels between two prongs. Covers the turn up to speed, what head and \
         feet feel, balance, the stop and tipping; leaves out how the drive is controlled, a body that \
         moves and bending prongs."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["mass_offset", "body_gyration", "pivot_friction"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/body-gimbal.json")
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

/// What turns and how fast, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Setup {
    rotor: Rotor,
    mass: f64,
    /// The performer's first moment about the axis, kg m.
    moment: f64,
    /// What is left of it over the counterweight's, by sign, kg m.
    unbalance: f64,
    arm: f64,
    rate: f64,
}

impl Setup {
    fn of(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        let body = number("performer_mass")?;
        let offset = number("mass_offset")?;
        let gyration = number("body_gyration")?;
        let cradle = number("cradle_mass")?;
        let cradle_gyration = number("cradle_gyration")?;
        let weight = number("counterweight")?;
        let arm = number("counterweight_arm")?;
        let moment = body * offset;
        let unbalance = moment - weight * arm;
        Some(Setup {
            rotor: Rotor {
                inertia: body * (gyration * gyration + offset * offset)
                    + cradle * cradle_gyration * cradle_gyration
                    + weight * arm * arm,
                unbalance: unbalance.abs(),
                friction: number("pivot_friction")?,
            },
            mass: body + cradle + weight,
            moment,
            unbalance,
            arm,
            rate: number("turn_rate")?,
        })
    }

    /// What the head feels head down, towards the axis: the turn and its own weight.
    fn head_down(&self, radius: f64) -> f64 {
        self.rate * self.rate * radius + GRAVITY
    }
}

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let number = |name| values.number(name);
    let (Some(setup), Some(head), Some(feet)) = (
        Setup::of(values),
        number("head_radius"),
        number("feet_radius"),
    ) else {
        return out;
    };
    let rotor = setup.rotor;
    // Near balance both ends of every mass raise the offset; by its sign they are told apart.
    out.guide("unbalance", setup.unbalance);
    let square = setup.rate * setup.rate;
    out.set("head_turning", square * head);
    out.set("feet_turning", square * feet);
    out.set("head_down", setup.head_down(head));
    out.set("offset_torque", rotor.offset_torque());
    out.set("counterweight_wanted", setup.moment / setup.arm);
    let drive = number("drive_torque");
    let brake = number("brake_torque");
    if let Some(drive) = drive {
        out.set(
            "drive_factor",
            drive / (rotor.offset_torque() + rotor.friction),
        );
    }
    let spin = drive.and_then(|drive| rotor.spin_up(drive, setup.rate, |_, _, _| {}));
    let stop = brake.and_then(|brake| rotor.stop(brake, setup.rate));
    out.set_if("spin_up_time", spin.map(|spin| spin.time));
    out.set_if("spin_up_angle", spin.map(|spin| spin.angle));
    if let Some(brake) = brake {
        out.set(
            "brake_factor",
            brake / rotor.offset_torque().max(rotor.friction),
        );
    }
    if let Some(stop) = stop {
        out.set("stop_time", stop.time);
        out.set("stop_angle", stop.angle);
        out.set(
            "head_stopping",
            models::hypot(setup.head_down(head), stop.hardest * head),
        );
    }
    if let (Some(spin), Some(stop), Some(time), Some(borne)) =
        (spin, stop, number("turn_time"), number("borne_rate"))
    {
        let whole = spin.time + time + stop.time;
        out.set("time_turning", if setup.rate > borne { whole } else { 0.0 });
    }
    let Some((drive, brake)) = drive.zip(brake) else {
        return out;
    };
    // The offset's own inertia force, with the hardest change of rate that drive or brake can make.
    let change = (drive.max(brake) + rotor.friction + rotor.offset_torque()) / rotor.inertia;
    let swing = rotor.unbalance * models::hypot(square, change);
    if let Some(share) = number("prong_share") {
        let load = share * (setup.mass * GRAVITY + swing);
        out.set("prong_load", load);
        out.set_if("prong_factor", number("prong_strength").map(|s| s / load));
    }
    if let (Some(stand), Some(height), Some(edge)) = (
        number("stand_mass"),
        number("pivot_height"),
        number("tipping_edge"),
    ) {
        // The torque reaches the stand through drive or brake; gravity on the offset is part of it.
        let over = swing * models::hypot(height, edge) + drive.max(brake);
        out.set("overturning", over);
        out.set(
            "tipping_factor",
            (setup.mass + stand) * GRAVITY * edge / over,
        );
    }
    if let Some(height) = number("pivot_height") {
        out.set("floor_gap", height - head.max(feet).max(setup.arm));
    }
    out
}
