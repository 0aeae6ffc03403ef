//! Body burn: a performer partly or wholly alight over gel-wet layers.
//!
//! Covers heat through outer cloth, wet layer and under-layer into the skin, the time to a burn, the
//! heat that is stored when the flames are out, breath and safeties. It knows nothing of the fuel's make
//! or amount, of smoke, or of how gel is laid on; it judges by the flux and the layers it is given.

mod checks;
mod layers;
mod presentation;
mod tables;

use layers::{Runs, Stack};

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Ends, Evaluation, over_tolerances_and},
    reading::Values,
    technique::{AssessError, Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct FullBurn;

impl Technique for FullBurn {
    fn name(&self) -> &'static str {
        "full-burn"
    }

    fn title(&self) -> &'static str {
        "Body burn"
    }

    fn summary(&self) -> &'static str {
        "A performer alight over gel-wet layers. Covers heat to the skin, time to a second-degree burn, \
         stored heat, breath and safeties; leaves out smoke, steam within the layers, gaps in the gel and \
         the fuel itself."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &["flame_flux"]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/full-burn.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        let runs = Runs::default();
        Computation::new(move |state| compute(state, &runs))
    }

    fn evaluate(&self, values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        over_tolerances_and(values, self.figures(), &[LEAST_WET], &compute)
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

/// Damage grows without bound in a hot skin; past this a larger number says nothing more.
const MOST_DAMAGE: f64 = 1000.0;

/// The state in which the gel boils dry soonest. As long as water is left, more gel and thicker cloth only
/// store more heat and seem to harm; once it is gone, it is their lack that burns.
const LEAST_WET: &Ends = &[
    ("planned_time", 1),
    ("called_out_time", 1),
    ("extinguish_time", 1),
    ("strip_time", 1),
    ("flame_flux", 1),
    ("flame_temperature", 1),
    ("outer_mass", -1),
    ("outer_thickness", -1),
    ("gel_mass", -1),
    ("gel_water_share", -1),
    ("under_mass", -1),
    ("under_thickness", -1),
    ("under_water", -1),
    ("layer_temperature", 1),
];

/// Seconds in flames when called out at the latest.
fn flame_time(values: &Values) -> Option<f64> {
    Some(values.number("called_out_time")? + values.number("extinguish_time")?)
}

fn compute(values: &Values, runs: &Runs) -> Computed {
    let mut out = Computed::new();
    let flames = flame_time(values);
    out.set_if("flame_time", flames);
    out.set_if(
        "breath_share",
        flames
            .zip(values.number("breath_hold"))
            .map(|(flames, breath)| flames / breath),
    );
    out.set_if(
        "safeties_per_person",
        values
            .number("safeties")
            .zip(values.number("persons_alight"))
            .map(|(s, p)| s / p),
    );
    let Some(stack) = Stack::of(values) else {
        return out;
    };
    let times = flames.zip(values.number("strip_time"));
    let (burn_on, called_out) = match times {
        Some(times) => {
            let (burn_on, outcome) = runs.both(&stack, times);
            (burn_on, Some(outcome))
        }
        None => (runs.burn_on(&stack), None),
    };
    out.set("time_to_second_degree", burn_on.second_degree);
    out.set("longest_planned_time", 0.5 * burn_on.second_degree);
    out.set_if(
        "time_margin",
        values
            .number("planned_time")
            .map(|planned| burn_on.second_degree / planned),
    );
    out.set("time_to_pain", burn_on.pain);
    out.set("dry_time", burn_on.dry_time);
    out.set("bare_skin_time", runs.bare(&stack));
    if let Some(outcome) = called_out {
        let damage = outcome.damage.min(MOST_DAMAGE);
        out.set("skin_damage", damage);
        out.set("deep_damage", outcome.deep_damage.min(MOST_DAMAGE));
        out.set("peak_skin_temperature", outcome.peak_temperature);
        out.set(
            "stored_heat_damage",
            damage - outcome.damage_at_out.min(damage),
        );
        out.set("water_left", outcome.water_left);
        out.set("peak_skin_flux", outcome.peak_flux);
    }
    out
}
