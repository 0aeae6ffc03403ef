//! Towed surface: a performer runs on a mat that is itself towed, so that the ground passes faster.
//!
//! Covers the mat's take-up, even run and stop, the surface that the runner uses up, what friction and
//! balance must give, and the ways beyond the ends. It knows nothing of wrinkles, wind under the hem, the
//! rise and fall of the stride, or the towing vehicle's own stop.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        GRAVITY,
        moving_floor::{Change, friction_stop},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct TowedSurface;

impl Technique for TowedSurface {
    fn name(&self) -> &'static str {
        "towed-surface"
    }

    fn title(&self) -> &'static str {
        "Towed running surface"
    }

    fn summary(&self) -> &'static str {
        "A performer runs on a mat that is towed along the ground. Covers the speeds, the mat used up, \
         take-up and stop by friction and balance, and the run-out; leaves out wrinkles, wind under the mat \
         and the push of the stride itself."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "runner_acceleration",
            "runner_stop",
            "foot_friction",
            "ground_friction",
            "reaction_time",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/towed-surface.json")
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

/// The motion of mat and runner, SI. The runner's part is relative to the mat.
#[derive(Clone, Copy, Debug)]
struct Plan {
    take_up: Change,
    tow_stop: Change,
    tow: f64,
    run: f64,
    gather: f64,
    ease: f64,
    /// 1 along the tow, -1 against it.
    way: f64,
    /// Whether the runner gathers speed while the mat does.
    together: bool,
    call: f64,
}

impl Plan {
    fn of(values: &Values) -> Option<Plan> {
        let number = |name| values.number(name);
        let (tow, ramp) = (number("tow_speed")?, number("ramp_time")?);
        Some(Plan {
            take_up: Change::of(tow, number("tow_acceleration")?, ramp),
            tow_stop: Change::of(tow, number("tow_stop")?, ramp),
            tow,
            run: number("run_speed")?,
            gather: number("runner_acceleration")?,
            ease: number("runner_stop")?,
            way: if values.choice("direction")? == "against" {
                -1.0
            } else {
                1.0
            },
            together: values.choice("order")? == "together",
            call: number("call_time")?,
        })
    }

    /// When the runner starts, after the tow has.
    fn start(&self) -> f64 {
        if self.together {
            0.0
        } else {
            self.take_up.time
        }
    }

    /// When both are at speed, after the tow's start.
    fn at_speed(&self) -> f64 {
        (self.start() + self.run / self.gather).max(self.take_up.time)
    }

    /// Mat that the runner has used when both are at speed, m.
    fn used_to_gather(&self) -> f64 {
        let gathering = self.run / self.gather;
        0.5 * self.run * gathering + self.run * (self.at_speed() - self.start() - gathering)
    }

    /// Mat that the runner uses after the shot, m: tow and runner slow together after the call.
    fn used_to_stop(&self) -> f64 {
        self.run * self.call + self.run * self.run / (2.0 * self.ease)
    }

    /// Way of the mat over the ground for a shot, m.
    fn tow_distance(&self, shot: f64) -> f64 {
        self.take_up.distance()
            + self.tow * (self.at_speed() - self.take_up.time + shot + self.call)
            + self.tow_stop.distance()
    }

    /// The runner's greatest acceleration over the ground at take-up and at the stop, m/s2.
    fn demands(&self) -> (f64, f64) {
        let most = |floor: f64, own: f64| floor.max(own).max((floor + self.way * own).abs());
        let take_up = if self.together {
            most(self.take_up.peak, self.gather)
        } else {
            self.take_up.peak.max(self.gather)
        };
        (take_up, most(self.tow_stop.peak, self.ease))
    }

    /// What the runner's own slowing asks of balance on top of the mat's, m: nothing against the tow. It is
    /// the runner's own doing, so it waits for no answer.
    fn own_base(&self, height: f64) -> Option<f64> {
        (self.way > 0.0).then(|| Change::of(self.run, self.ease, 0.0).base_needed(height, 0.0))
    }

    /// Mat's speed, runner's speed over the ground and place on the mat, at a time, for a shot.
    fn at(&self, time: f64, shot: f64) -> (f64, f64, f64) {
        let slowing = self.at_speed() + shot + self.call;
        let floor = if time < slowing {
            self.take_up.at(time).1
        } else {
            self.tow - self.tow_stop.at(time - slowing).1
        };
        let gathering = self.run / self.gather;
        let (own, place) = if time < slowing {
            let since = (time - self.start()).clamp(0.0, gathering);
            let beyond = (time - self.start() - gathering).max(0.0);
            (
                self.gather * since,
                0.5 * self.gather * since * since + self.run * beyond,
            )
        } else {
            let easing = (time - slowing).min(self.run / self.ease);
            let before = self.used_to_gather() + self.run * (shot + self.call);
            (
                self.run - self.ease * easing,
                before + (self.run - 0.5 * self.ease * easing) * easing,
            )
        };
        (floor, own + self.way * floor, place)
    }

    /// When all is still, for a shot.
    fn end(&self, shot: f64) -> f64 {
        self.at_speed() + shot + self.call + self.tow_stop.time.max(self.run / self.ease)
    }
}

/// What slows a mat whose tow has parted, m/s2. Until the runner answers, the feet press it down with all of
/// the body's weight and push it no way along.
fn let_go_slowing(values: &Values) -> Option<f64> {
    let mat = values.number("surface_mass")?;
    let load = mat + values.number("performer_mass")?;
    Some(values.number("ground_friction")? * GRAVITY * load / mat)
}

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let number = |name| values.number(name);
    let Some(plan) = Plan::of(values) else {
        return out;
    };
    let over_ground = plan.run + plan.way * plan.tow;
    let (used_first, used_last) = (plan.used_to_gather(), plan.used_to_stop());
    // What is left between the ends; negative when there is no shot in it at all.
    let spare = number("surface_length")
        .zip(number("start_margin"))
        .zip(number("end_margin"))
        .map(|((length, start), end)| length - start - end - used_first - used_last);
    out.set_if("longest_shot", spare.map(|spare| spare / plan.run));
    out.set("ground_speed", over_ground);
    out.set("take_up_time", plan.take_up.time);
    out.set("take_up_distance", plan.take_up.distance());
    out.set("time_to_speed", plan.at_speed());
    out.set("surface_to_gather", used_first);
    out.set("surface_to_stop", used_last);
    out.set("tow_stop_distance", plan.tow_stop.distance());
    if let Some(shot) = number("shot_time") {
        out.set("surface_used", used_first + plan.run * shot + used_last);
        out.set("time_on_surface", plan.end(shot) - plan.start());
        out.set("tow_distance", plan.tow_distance(shot));
    }
    if let Some((height, reaction)) = number("weight_height").zip(number("reaction_time")) {
        out.set("take_up_base", plan.take_up.base_needed(height, reaction));
        out.set("stop_base", plan.tow_stop.base_needed(height, reaction));
        out.set_if(
            "let_go_base",
            let_go_slowing(values)
                .map(|slowing| Change::of(plan.tow, slowing, 0.0).base_needed(height, reaction)),
        );
    }
    if let Some(friction) = number("foot_friction") {
        let (take_up, stop) = plan.demands();
        out.set("grip_take_up", take_up / (friction * GRAVITY));
        out.set("grip_stop", stop / (friction * GRAVITY));
        out.set("friction_stop", friction_stop(over_ground, friction));
    }
    out.set("run_off_speed", over_ground.abs());
    out.set_if(
        "run_off",
        number("run_off_slowing").map(|slowing| {
            over_ground.abs() * plan.call + over_ground * over_ground / (2.0 * slowing)
        }),
    );
    if let (Some(mat), Some(body), Some(friction)) = (
        number("surface_mass"),
        number("performer_mass"),
        number("ground_friction"),
    ) {
        // A runner who speeds up along the tow pushes the mat back, and so does one who slows against it.
        let along = plan.way > 0.0;
        let dragging = (mat + body) * friction * GRAVITY;
        let own = body * if along { plan.gather } else { plan.ease };
        let taking_up = dragging + (mat + body) * plan.take_up.peak;
        let force = if plan.together && along {
            taking_up + own
        } else {
            taking_up.max(dragging + own)
        };
        out.set("tow_force", force);
        out.set_if("tow_factor", number("tow_strength").map(|s| s / force));
    }
    out
}
