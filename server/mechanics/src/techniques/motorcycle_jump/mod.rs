//! Motorcycle jump, with or without a flip: a ramp, a gap and a landing.
//!
//! Covers the in-run, the flight with drag, the window in speed, the landing's hardness, drift and turning.
//! It knows nothing of the motorcycle's suspension on the ramp, of gusts, or of how a rider corrects.

mod checks;
mod jump;
mod presentation;
mod tables;

use core::cell::RefCell;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, keep},
    models::{GRAVITY, spread},
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use jump::{Jump, Met, Scatter};

/// The technique.
pub struct MotorcycleJump;

impl Technique for MotorcycleJump {
    fn name(&self) -> &'static str {
        "motorcycle-jump"
    }

    fn title(&self) -> &'static str {
        "Motorcycle jump"
    }

    fn summary(&self) -> &'static str {
        "A motorcycle jumps a gap, with or without a flip. Covers in-run, flight with drag, the window in speed, the \
         landing, crosswind drift and turning; leaves out suspension on the ramp, gusts and the rider's corrections."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "drag_area",
            "takeoff_angle",
            "in_run_acceleration",
            "rider_turn_rate",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/motorcycle-jump.json")
    }

    fn prepare(&self, stated: &Values) -> Computation {
        let scatter = jump::scatter(stated);
        let windows = Windows::default();
        Computation::new(move |moved| compute(moved, scatter, &windows))
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

type Window = (Option<f64>, Option<f64>);

/// Windows already found: most tolerances do not move them.
#[derive(Default)]
struct Windows(RefCell<Vec<(Jump, f64, Window)>>);

impl Windows {
    fn get(&self, jump: &Jump, margin: f64) -> Window {
        // The window does not depend on the speed that is planned.
        let mut key = *jump;
        key.throw.speed = 0.0;
        let found = self
            .0
            .borrow()
            .iter()
            .find(|(known, at, _)| *known == key && *at == margin)
            .map(|kept| kept.2);
        found.unwrap_or_else(|| {
            let window = (jump.slowest(margin), jump.speed_for(jump.end() - margin));
            keep(&self.0, (key, margin, window));
            window
        })
    }
}

/// The smallest chance that is claimed: no rehearsal shows how landings scatter further out.
const SMALLEST_CHANCE: f64 = 1e-9;

fn compute(moved: &Values, scatter: Option<Scatter>, windows: &Windows) -> Computed {
    let mut out = Computed::new();
    let number = |name| moved.number(name);
    let jump = Jump::read(moved);
    let margin = number("edge_margin");
    let met = jump.as_ref().and_then(|jump| jump.fly(None));
    let landing = met.map(|met| met.landing);
    if let Some(landing) = &landing {
        out.set("landing_distance", landing.distance);
    }
    if let Some((jump, margin)) = jump.as_ref().zip(margin) {
        let (low, high) = windows.get(jump, margin);
        out.set_if("speed_low", low);
        out.set_if("speed_high", high);
        out.set_if("speed_window", high.zip(low).map(|(high, low)| high - low));
        if let Some(scatter) = scatter {
            out.set(
                "miss_probability",
                spread::normal_outside(
                    jump.gap + margin,
                    jump.end() - margin,
                    scatter.along,
                    scatter.deviation,
                )
                .max(SMALLEST_CHANCE),
            );
            out.set("landing_spread", scatter.deviation);
        }
    }
    if let (Some(jump), Some(met)) = (&jump, &met) {
        landed(moved, jump, met, &mut out);
    }
    if let (Some(speed), Some(acceleration), Some(steady)) = (
        number("takeoff_speed"),
        number("in_run_acceleration"),
        number("steady_time"),
    ) {
        out.set(
            "in_run_needed",
            speed * speed / (2.0 * acceleration) + speed * steady,
        );
    }
    out.set_if(
        "run_out_needed",
        landing
            .as_ref()
            .zip(number("braking"))
            .map(|(landing, braking)| landing.speed() * landing.speed() / (2.0 * braking)),
    );
    out
}

fn landed(values: &Values, jump: &Jump, met: &Met, out: &mut Computed) {
    let landing = &met.landing;
    let number = |name| values.number(name);
    let placed = jump.placed(met);
    out.set("near_spare", placed - jump.gap);
    out.set("far_spare", jump.end() - placed);
    out.set("air_time", landing.time);
    out.set("apex", landing.apex);
    out.set("landing_speed", landing.speed());
    let across = jump.across(met);
    out.set("across_speed", across);
    let fall = across * across / (2.0 * GRAVITY);
    out.set("equivalent_fall", fall);
    out.set_if(
        "landing_felt",
        number("suspension_travel").map(|travel| GRAVITY * (1.0 + fall / travel)),
    );
    let speed = jump.throw.speed;
    let ramp = number("ramp_radius").map(|radius| speed / radius);
    out.set_if(
        "ramp_felt",
        ramp.map(|rate| speed * rate + GRAVITY * libm::cos(jump.throw.angle)),
    );
    out.set_if(
        "drift",
        number("crosswind")
            .zip(number("side_drag_area"))
            .map(|(wind, area)| jump::drift(&jump.throw, area, wind, landing.time)),
    );
    let Some(flips) = number("flips") else { return };
    // Nose up at the lip and nose down on the slope: without a flip it tips forward by both.
    let turn = 2.0 * core::f64::consts::PI * flips - jump.throw.angle - jump.slope;
    out.set("turn_needed", turn);
    if landing.time > 0.0 {
        out.set("turn_rate_needed", turn / landing.time);
    }
    out.set_if("ramp_turn_rate", ramp);
    let given = ramp
        .zip(number("rider_turn_rate"))
        .map(|(ramp, rider)| (ramp + rider) * landing.time);
    out.set_if("turn_given", given);
    out.set_if("turn_off", given.map(|given| given - turn));
}
