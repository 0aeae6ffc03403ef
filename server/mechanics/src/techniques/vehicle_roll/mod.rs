//! Vehicle roll: a car is thrown over by a pipe or one-sided ramp, or by a roller whose effect was measured.
//!
//! Covers take-off, the turns, the way to rest, what the driver takes, belt and cage, and a fire of spilled fuel. It
//! knows nothing of a charge: that is the licensed operator's. It leaves out how the body crushes and bounces.

mod checks;
mod presentation;
mod roll;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        self,
        pool_fire::{self, DIESEL, ETHANOL, PETROL},
        stopping::{self, Shape},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};
use roll::{Roll, Rolls, Setup, Strike};

/// The technique.
pub struct VehicleRoll;

impl Technique for VehicleRoll {
    fn name(&self) -> &'static str {
        "vehicle-roll"
    }

    fn title(&self) -> &'static str {
        "Vehicle roll"
    }

    fn summary(&self) -> &'static str {
        "A car is thrown over by a one-sided ramp, or by a roller as measured. Covers take-off, turns, the way to rest, \
         what the driver takes, belt and cage, and a fire of spilled fuel; leaves out crush, bounce and any charge, \
         which is the licensed operator's."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "rate_share",
            "tumble_share",
            "slide_share",
            "stop_length",
            "cage_give",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/vehicle-roll.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        let rolls = Rolls::default();
        Computation::new(move |moved| compute(moved, &rolls))
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

fn compute(moved: &Values, rolls: &Rolls) -> Computed {
    let mut out = Computed::new();
    if moved.choice("method") == Some("ramp") {
        out.set_if("ramp_rise", roll::rise(moved));
    }
    if let Some(setup) = Setup::read(moved) {
        rolled(moved, &setup, rolls, &mut out);
    }
    out.set_if(
        "belt_straps",
        moved.choice("belt").map(|belt| match belt {
            "none" => 0.0,
            "lap" => 2.0,
            "three" => 3.0,
            "four" => 4.0,
            _ => 5.0,
        }),
    );
    out.set_if(
        "cage_signed",
        moved.choice("cage").map(|cage| match cage {
            "none" => 0.0,
            "built" => 1.0,
            _ => 2.0,
        }),
    );
    fire(moved, &mut out);
    out
}

fn rolled(values: &Values, setup: &Setup, rolls: &Rolls, out: &mut Computed) {
    let number = |name| values.number(name);
    out.set("takeoff_speed", setup.speed);
    out.set("takeoff_roll", setup.start.angle);
    out.set("roll_rate", setup.start.rate);
    out.set("tip_margin", setup.outline.over(&setup.start));
    let Some(roll) = rolls.get(setup) else {
        return;
    };
    let tumble = &roll.tumble;
    out.set("turns", 0.25 * f64::from(tumble.quarters));
    out.set("air_time", tumble.air);
    out.set("landing_roll", tumble.landing_angle);
    out.set("highest", tumble.highest);
    out.set("roll_time", tumble.time);
    if let (Some(tumbling), Some(sliding)) = (number("tumble_share"), number("slide_share")) {
        let along = roll::along(setup.speed, tumble, tumbling, sliding);
        let rolling = (along.rests - along.lands) / setup.outline.around();
        let turned = tumble.landing_angle / (2.0 * core::f64::consts::PI);
        let least = 0.25 * f64::from(tumble.quarters);
        out.set("turns_most", (turned + rolling).max(least));
        out.set("landing_distance", along.lands);
        out.set("rest_distance", along.rests);
        out.set("rest_time", along.time);
        // On its wheels it may roll or drive on, as far as nobody knows.
        if tumble.quarters % 4 != 0
            && let (Some(length), Some(veer)) = (number("car_length"), number("veer"))
        {
            // However it lies, it reaches no further than half its length and half its height.
            let half = 0.5 * models::hypot(length, setup.outline.roof_height);
            // Its middle is up to half its length past the ramp's end as its last wheels leave it.
            out.set("rest_reach", along.rests + 0.5 * length + half);
            out.set(
                "side_reach",
                tumble.aside.abs() + along.rests * libm::tan(veer) + half,
            );
        }
    }
    driver(values, &roll, out);
    cage(values, &roll, out);
}

fn driver(values: &Values, roll: &Roll, out: &mut Computed) {
    let (Some(change), Some(give)) = (roll.most(Strike::change), values.number("stop_length"))
    else {
        return;
    };
    let stop = stopping::stop(change, give, Shape::HalfSine);
    out.set("landing_change", change);
    out.set("driver_mean", stop.mean);
    out.set("driver_peak", stop.peak);
    out.set_if("driver_side", roll.most(|strike| strike.sideways(give)));
    out.set_if("driver_risk", roll.most_risk(give));
}

/// The whole car stops on one corner of the roof, over what the metal gives; seat and belt do not help it.
fn cage(values: &Values, roll: &Roll, out: &mut Computed) {
    let number = |name| values.number(name);
    let (Some(change), Some(give)) = (roll.roof, number("cage_give")) else {
        return;
    };
    let Some(mass) = number("car_mass")
        .zip(number("performer_mass"))
        .map(|(car, driver)| car + driver)
    else {
        return;
    };
    let load = mass * stopping::stop(change, give, Shape::HalfSine).peak;
    out.set("cage_load", load);
    // A car that strikes nothing loads nothing; a factor past a thousand tells no more.
    out.set_if(
        "cage_factor",
        number("cage_proof").map(|proof| (proof / load.max(1e-3 * proof)).min(1e3)),
    );
}

fn fire(values: &Values, out: &mut Computed) {
    let number = |name| values.number(name);
    let fuel = match values.choice("fuel") {
        Some("petrol") => PETROL,
        Some("diesel") => DIESEL,
        Some(_) => ETHANOL,
        None => return,
    };
    let (Some(volume), Some(depth), Some(share)) = (
        number("fuel_volume"),
        number("spill_depth"),
        number("radiant_share"),
    ) else {
        return;
    };
    let area = volume / depth;
    let width = pool_fire::width(area);
    let heat = pool_fire::heat_released(&fuel, area);
    out.set("pool_width", width);
    out.set("heat_release", heat);
    out.set("flame_height", pool_fire::flame_height(heat, width));
    out.set("burn_time", pool_fire::burning_time(&fuel, area, depth));
    out.set_if(
        "people_flux",
        number("people_distance").map(|distance| pool_fire::radiant_heat(heat, share, distance)),
    );
    out.set_if(
        "safe_distance",
        // Nearer than that, heat from a single point tells too little.
        number("accepted_flux")
            .map(|flux| pool_fire::distance_for(heat, share, flux).max(2.5 * width)),
    );
}
