//! The stack over the skin and the two courses it is put through: burning on until injury, and being
//! called out. Knows materials; no limit.

use core::cell::RefCell;
use std::sync::LazyLock;

use crate::{
    evaluation::keep,
    models::{
        conduction::Outside,
        skin::{self, Depth},
        wet_layers::{self, Course, Layer, Moment, Outcome},
    },
    reading::Values,
};

/// How long to look for an injury, s. Longer than twice any full burn the trade does.
pub(super) const HORIZON: f64 = 60.0;
/// Heat exchange of skin under running or poured water, W/(m2 K) (handbook order of magnitude for slow
/// water over a surface; from memory).
const WATER_EXCHANGE: f64 = 500.0;
/// Temperature of that water, K: from a tap or a tub on a mild day.
const WATER_TEMPERATURE: f64 = 293.15;
/// Running or poured water on the stripped skin.
const COLD_WATER: Outside = Outside {
    flux: 0.0,
    exchange: WATER_EXCHANGE,
    surroundings: WATER_TEMPERATURE,
};
/// How long the stripped skin is followed, s; its own heat is gone long before.
const COOLING: f64 = 15.0;
/// Temperature of a cold surface to which a flux is stated, K.
const COLD_FACE: f64 = skin::SURFACE_TEMPERATURE;
/// Heat exchange with still air and surroundings once the flames are out, W/(m2 K) (handbook value for
/// a warm upright surface, radiation included; from memory).
const AIR_EXCHANGE: f64 = 15.0;
/// Temperature of the air afterwards, K.
const AIR_TEMPERATURE: f64 = 293.15;
/// Conductivity of water gel, W/(m K) (that of water near 20 C, 0.6, less a little for the gelling agent).
const GEL_CONDUCTIVITY: f64 = 0.55;
/// Conductivity given to dried gel: so high that it counts for nothing, since a dried gel cracks.
const NO_CREDIT: f64 = 10.0;
/// Specific heat of what is left of a dried gel, J/(kg K).
const GEL_SOLIDS_HEAT: f64 = 1500.0;
/// Density of gel, kg/m3.
const GEL_DENSITY: f64 = 1000.0;
/// Conductivity of a cloth pressed between gel and skin, W/(m K): that of soaked cloth, whether or not
/// it is put on dry, because it soaks up gel. So water in it can only help.
const PRESSED_CLOTH: f64 = 0.25;

/// Conductivity, W/(m K), and specific heat, J/(kg K), of dry cloth in flame (handbook values from
/// memory; they differ little between fibres). At room temperature cloth has 0.047 to 0.060 W/(m K),
/// most of it the air's; air at 1000 K conducts 2.6 times as well, so that is what is counted.
fn cloth(name: &str) -> (f64, f64) {
    match name {
        "wool" => (0.130, 1360.0),
        "cotton" => (0.156, 1300.0),
        _ => (0.122, 1200.0),
    }
}

/// What the layers and the flame are, as numbers that can be compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Stack {
    layers: [Layer; 3],
    flux: f64,
    flame_temperature: f64,
}

impl Stack {
    pub(super) fn of(values: &Values) -> Option<Stack> {
        let number = |name| values.number(name);
        let temperature = number("layer_temperature")?;
        let (conductivity, heat) = cloth(values.choice("outer_cloth")?);
        let outer = Layer {
            thickness: number("outer_thickness")?,
            conductivity,
            dry_conductivity: conductivity,
            dry_capacity: number("outer_mass")? * heat,
            water: 0.0,
            temperature,
            cells: 4,
        };
        let mass = number("gel_mass")?;
        let share = number("gel_water_share")?;
        let gel = Layer {
            thickness: mass / GEL_DENSITY,
            conductivity: GEL_CONDUCTIVITY,
            dry_conductivity: NO_CREDIT,
            dry_capacity: mass * (1.0 - share) * GEL_SOLIDS_HEAT,
            water: mass * share,
            temperature,
            cells: 10,
        };
        let (_, heat) = cloth(values.choice("under_cloth")?);
        let under = Layer {
            thickness: number("under_thickness")?,
            conductivity: PRESSED_CLOTH,
            dry_conductivity: PRESSED_CLOTH,
            dry_capacity: number("under_mass")? * heat,
            water: number("under_water")?,
            temperature,
            cells: 4,
        };
        Some(Stack {
            layers: [outer, gel, under],
            flux: number("flame_flux")?,
            flame_temperature: number("flame_temperature")?,
        })
    }

    /// All water at the start, kg/m2.
    pub(super) fn water(&self) -> f64 {
        self.layers.iter().map(|layer| layer.water).sum()
    }

    /// Time to a second-degree burn once the outer cloth has burnt away.
    pub(super) fn without_outer_cloth(&self) -> f64 {
        let mut bare = *self;
        bare.layers[0].thickness = 0.0;
        bare.burn_on().second_degree
    }

    /// The flame as exchange with a hot gas: a cold face takes up the stated flux, a hot one less.
    fn flame(&self) -> Outside {
        Outside {
            flux: 0.0,
            exchange: self.flux / (self.flame_temperature - COLD_FACE),
            surroundings: self.flame_temperature,
        }
    }

    fn course(&self, flame_time: f64, soak_time: f64, stop_at_injury: bool) -> Course {
        Course {
            burning: self.flame(),
            flame_time,
            after: Outside {
                flux: 0.0,
                exchange: AIR_EXCHANGE,
                surroundings: AIR_TEMPERATURE,
            },
            soak_time,
            stop_at_injury,
            first_step: 0.005,
            longest_step: 0.25,
        }
    }

    /// Burns on until a second-degree burn or the horizon.
    fn burn_on(&self) -> BurnOn {
        let nearly_dry = 0.1 * self.water();
        let mut dry_time = None;
        let course = self.course(HORIZON, 0.0, true);
        let outcome = wet_layers::run(&self.layers, &course, |moment| {
            if dry_time.is_none() && moment.water <= nearly_dry {
                dry_time = Some(moment.time);
            }
        });
        BurnOn {
            second_degree: outcome.second_degree.unwrap_or(HORIZON),
            pain: outcome.pain.unwrap_or(HORIZON),
            dry_time: dry_time.unwrap_or(HORIZON),
        }
    }

    /// Burns for `flame_time`, lets the stored heat soak in for `strip_time`, then takes the layers off
    /// and cools the skin with water.
    pub(super) fn call_out(
        &self,
        flame_time: f64,
        strip_time: f64,
        observe: impl FnMut(Moment),
    ) -> Outcome {
        let course = self.course(flame_time, strip_time, false);
        wet_layers::run_and_strip(&self.layers, &course, COLD_WATER, COOLING, observe)
    }

    /// Both courses at once: burning on, and being called out after `times`.
    fn both(&self, times: (f64, f64)) -> (BurnOn, Outcome) {
        let (burnt, outcome) = wet_layers::burn_on_and_strip(
            &self.layers,
            &self.course(times.0, times.1, false),
            (HORIZON, 0.1 * self.water()),
            (COLD_WATER, COOLING),
        );
        let burn_on = BurnOn {
            second_degree: burnt.second_degree.unwrap_or(HORIZON),
            pain: burnt.pain.unwrap_or(HORIZON),
            dry_time: burnt.dry.unwrap_or(HORIZON),
        };
        (burn_on, outcome)
    }

    /// Time to a second-degree burn of bare skin that takes up the whole flux.
    fn bare(&self) -> f64 {
        let (mut time, mut rate, mut damage) = (0.0, 0.0, 0.0);
        for at in &*BARE_SKIN {
            let step = at.time - time;
            let now = Depth::EpidermisBase.damage_rate(at.unheated + self.flux * at.for_flux);
            let more = 0.5 * (rate + now) * step;
            if damage + more >= 1.0 && more > 0.0 {
                return time + step * (1.0 - damage) / more;
            }
            (time, rate, damage) = (at.time, now, damage + more);
        }
        HORIZON
    }
}

/// The base of the epidermis of bare skin after a time.
struct Bare {
    time: f64,
    /// Its temperature with no flux, K.
    unheated: f64,
    /// What each W/m2 adds, K.
    for_flux: f64,
}

/// Bare skin conducts and holds heat alike at any temperature, so it warms by as much for each W/m2: two runs
/// do for every flux.
static BARE_SKIN: LazyLock<Vec<Bare>> = LazyLock::new(|| {
    let outside = |flux| Outside {
        flux,
        exchange: 0.0,
        surroundings: 0.0,
    };
    let temperatures = |flux| {
        let mut found = Vec::new();
        let course = Course {
            burning: outside(flux),
            flame_time: HORIZON,
            after: outside(0.0),
            soak_time: 0.0,
            stop_at_injury: false,
            first_step: 0.001,
            longest_step: 0.05,
        };
        wet_layers::run(&[], &course, |moment| {
            found.push((moment.time, moment.epidermis_base));
        });
        found
    };
    let flux = 1000.0;
    temperatures(0.0)
        .into_iter()
        .zip(temperatures(flux))
        .map(|((time, unheated), (_, heated))| Bare {
            time,
            unheated,
            for_flux: (heated - unheated) / flux,
        })
        .collect()
});

/// What burning on comes to; the horizon stands for "not within it".
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct BurnOn {
    pub second_degree: f64,
    pub pain: f64,
    pub dry_time: f64,
}

/// One run of being called out.
struct CalledOut {
    stack: Stack,
    times: (f64, f64),
    outcome: Outcome,
}

/// Runs already made in this assessment: most tolerances touch only one of the courses, or none.
#[derive(Default)]
pub(super) struct Runs {
    burn_on: RefCell<Vec<(Stack, BurnOn)>>,
    call_out: RefCell<Vec<CalledOut>>,
    bare: RefCell<Vec<(f64, f64)>>,
}

impl Runs {
    /// Both courses, run together where neither is known; `times` as for [`Runs::call_out`].
    pub(super) fn both(&self, stack: &Stack, times: (f64, f64)) -> (BurnOn, Outcome) {
        let same = |known: &Stack| known == stack;
        let known = self.burn_on.borrow().iter().any(|(known, _)| same(known))
            || self.call_out.borrow().iter().any(|run| same(&run.stack));
        if known {
            return (self.burn_on(stack), self.call_out(stack, times));
        }
        let (burn_on, outcome) = stack.both(times);
        keep(&self.burn_on, (*stack, burn_on));
        let run = CalledOut {
            stack: *stack,
            times,
            outcome,
        };
        keep(&self.call_out, run);
        (burn_on, outcome)
    }

    pub(super) fn burn_on(&self, stack: &Stack) -> BurnOn {
        if let Some((_, known)) = self
            .burn_on
            .borrow()
            .iter()
            .find(|(known, _)| known == stack)
        {
            return *known;
        }
        let found = stack.burn_on();
        keep(&self.burn_on, (*stack, found));
        found
    }

    /// `times` are the seconds of flame and from the last flame until stripped.
    pub(super) fn call_out(&self, stack: &Stack, times: (f64, f64)) -> Outcome {
        let known = self.call_out.borrow();
        if let Some(same) = known
            .iter()
            .find(|run| run.stack == *stack && run.times == times)
        {
            return same.outcome;
        }
        drop(known);
        let outcome = stack.call_out(times.0, times.1, |_| {});
        let run = CalledOut {
            stack: *stack,
            times,
            outcome,
        };
        keep(&self.call_out, run);
        outcome
    }

    pub(super) fn bare(&self, stack: &Stack) -> f64 {
        if let Some((_, known)) = self
            .bare
            .borrow()
            .iter()
            .find(|(flux, _)| *flux == stack.flux)
        {
            return *known;
        }
        let found = stack.bare();
        keep(&self.bare, (stack.flux, found));
        found
    }
}
