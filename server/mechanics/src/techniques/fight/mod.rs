//! Fight: performers strike at each other unarmed, with training weapons or with props made to break.
//!
//! Covers the distance that reach, step and reaction need, the chance that a strike lands as they tire, what a hit
//! by mistake does, and effort in the heat. It knows nothing of eyes and teeth, of throws and falls, or of what a
//! performer who is angry does.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        blow, dragging,
        exertion::{Day, Stamina},
        head_pulse, spread,
        weather::{self, Work},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct Fight;

impl Technique for Fight {
    fn name(&self) -> &'static str {
        "fight"
    }

    fn title(&self) -> &'static str {
        "Fight"
    }

    fn summary(&self) -> &'static str {
        "Performers strike at each other unarmed, with blunt weapons or breakaway props. Covers distance, the \
         chance and force of a hit by mistake, tiring over takes and effort in heat; leaves out eyes and teeth, \
         throws, falls and tempers."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "mark_scatter",
            "spent_scatter",
            "reaction_time",
            "shoe_friction",
            "pull_distance",
            "strike_mass",
            "pad_usable",
            "full_effort_time",
            "recovery_time",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/fight.json")
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

fn stamina(values: &Values) -> Option<Stamina> {
    Some(Stamina {
        full_effort: values.number("full_effort_time")?,
        recovery: values.number("recovery_time")?,
    })
}

fn day(values: &Values) -> Option<Day> {
    Some(Day {
        takes: values.number("takes")? as usize,
        take: values.number("take_time")?,
        rest: values.number("rest_time")?,
    })
}

/// Scatter of the gap with so much reserve left, m.
fn scatter(values: &Values, reserve: f64) -> Option<f64> {
    Some(values.number("mark_scatter")? * (1.0 + values.number("spent_scatter")? * (1.0 - reserve)))
}

/// Way that a step goes on, m.
fn run_on(values: &Values) -> Option<f64> {
    let speed = values.number("closing_speed")?;
    let friction = values.number("shoe_friction")?;
    Some(speed * values.number("reaction_time")? + dragging::slide(speed, friction))
}

/// What the costume adds to the wet-bulb globe temperature, K (ISO 7243:2017, clothing adjustment, from memory).
fn costume_adds(values: &Values) -> Option<f64> {
    Some(match values.choice("costume")? {
        "single" => 0.0,
        "double" => 3.0,
        _ => 11.0,
    })
}

/// The smallest chance that is claimed: no rehearsal shows how strikes scatter further out.
const SMALLEST_CHANCE: f64 = 1e-9;

/// Windows of the criterion, s (49 CFR 571.208 S6.2).
const WINDOW: f64 = 0.015;

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let n = |name| values.number(name);
    let gap = n("distance")
        .zip(n("reach"))
        .map(|(distance, reach)| distance - reach);
    out.set_if("strike_gap", gap);
    if let Some(on) = run_on(values) {
        out.set("run_on", on);
        out.set_if("standoff_left", gap.map(|gap| gap - on));
        out.set_if("standoff_needed", n("reach").map(|reach| reach + on));
        let crew = || Some(n("crew_distance")? - n("step_error")? - n("reach")? - on);
        out.set_if("crew_gap", crew());
    }
    let day = day(values);
    out.set_if("day_time", day.map(|day| day.length()));
    if let Some((day, stamina)) = day.zip(stamina(values)) {
        tiring(values, gap, &day, &stamina, &mut out);
    }
    landed(values, &mut out);
    heat(values, day.as_ref(), &mut out);
    out
}

fn tiring(values: &Values, gap: Option<f64>, day: &Day, stamina: &Stamina, out: &mut Computed) {
    let lands = |reserve| {
        let deviation = scatter(values, reserve)?;
        Some(spread::normal_below(-gap? / deviation))
    };
    // The logarithm of the chance that none lands adds up over strikes.
    let (mut none, mut first) = (Some(0.0), None);
    let last = stamina.through(day, |_, reserve| {
        let chance = lands(reserve);
        none = none
            .zip(chance)
            .map(|(sum, chance): (f64, f64)| sum + libm::log1p(-chance));
        first = first.or(chance);
    });
    if let Some((none, strikes)) = none.zip(values.number("strikes")) {
        out.set(
            "chance_day",
            (-libm::expm1(strikes * none)).max(SMALLEST_CHANCE),
        );
    }
    out.set_if("chance_first", first.map(|c| c.max(SMALLEST_CHANCE)));
    out.set_if("chance_last", lands(last).map(|c| c.max(SMALLEST_CHANCE)));
    out.set_if("scatter_last", scatter(values, last));
    out.set("reserve_end", last);
}

fn landed(values: &Values, out: &mut Computed) {
    let n = |name| values.number(name);
    let hit = || {
        let early = n("reach")? + n("step_error")? - n("distance")?;
        let struck = blow::speed_when_met(n("strike_speed")?, n("pull_distance")?, early);
        let closing = n("closing_speed")?;
        // A partner who is met runs onto the strike as well.
        let speed = if early > 0.0 { struck + closing } else { 0.0 };
        let give = n("face_give")? + n("pad_usable")? * n("strike_padding")?;
        let head = blow::HEAD_SHARE * n("performer_mass")?;
        let breaks_at = match values.choice("weapon")? {
            "breakaway" => Some(n("break_force")?),
            _ => None,
        };
        let blow = blow::land(speed, n("strike_mass")?, head, give, breaks_at);
        Some((speed, blow))
    };
    let Some((speed, blow)) = hit() else {
        return;
    };
    out.set("contact_speed", speed);
    out.set("hit_energy", blow.energy);
    out.set("peak_force", blow.force);
    out.set("head_peak", blow.felt.peak);
    out.set(
        "head_criterion",
        head_pulse::half_sine_criterion(&blow.felt, WINDOW),
    );
}

fn heat(values: &Values, day: Option<&Day>, out: &mut Computed) {
    let n = |name| values.number(name);
    let globe = || {
        let air = n("air_temperature")?;
        let sun = values.choice("place")? == "sun";
        let plain = weather::wet_bulb_globe(n("wet_bulb")?, n("globe")?, sun.then_some(air));
        Some(plain + costume_adds(values)?)
    };
    let globe = globe();
    let allowed = globe
        .zip(values.choice("used_to_heat"))
        .map(|(globe, used)| {
            weather::work_share(globe, Work::VeryHigh.metabolic_rate(), used == "yes")
        });
    let planned = day.map(Day::working_share);
    out.set_if(
        "heat_margin",
        allowed
            .zip(planned)
            .map(|(allowed, planned)| allowed - planned),
    );
    out.set_if("work_allowed", allowed);
    out.set_if("work_planned", planned);
    out.set_if("wet_bulb_globe", globe);
    out.set_if(
        "heat_index",
        n("air_temperature")
            .zip(n("humidity"))
            .map(|(air, humidity)| weather::heat_index(air, humidity)),
    );
}
