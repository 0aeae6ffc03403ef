//! A body under layers in a flame: heat through named layers, wet or dry, into the three-layer skin,
//! until the flames are out and while the stored heat still soaks in.
//!
//! Built from [`super::conduction`] and [`super::skin`]. Left out, and so for the reader to be told:
//! steam that condenses nearer the skin, gaps of air, stretch and damage of the cloth, and gel running
//! off. Water gets no credit below its boiling point beyond its sensible heat, and none once it is gone.

use super::{
    conduction::{Cell, Deep, Ledger, Outside, Stack},
    skin::{self, Depth},
};

/// A layer over the skin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// Thickness, m; a layer under a thousandth of a millimetre is left out.
    pub thickness: f64,
    /// Conductivity, W/(m K), wet if it has water.
    pub conductivity: f64,
    /// Conductivity once dry.
    pub dry_conductivity: f64,
    /// Dry heat capacity by area, J/(m2 K).
    pub dry_capacity: f64,
    /// Water, kg/m2.
    pub water: f64,
    /// Temperature at the start, K.
    pub temperature: f64,
    /// Cells to cut it into.
    pub cells: usize,
}

/// How long and how closely to look.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Course {
    /// What acts on the outer face while it burns.
    pub burning: Outside,
    /// Seconds of flame.
    pub flame_time: f64,
    /// What acts on the outer face afterwards.
    pub after: Outside,
    /// Seconds to follow the stored heat after the flames are out.
    pub soak_time: f64,
    /// Stop as soon as the second-degree damage reaches 1.
    pub stop_at_injury: bool,
    /// Shortest step, s, used right after a change.
    pub first_step: f64,
    /// Longest step, s.
    pub longest_step: f64,
}

/// What came of it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Outcome {
    /// When the base of the epidermis passed 44 C, s.
    pub pain: Option<f64>,
    /// When second-degree damage reached 1, s.
    pub second_degree: Option<f64>,
    /// When third-degree damage reached 1, s.
    pub third_degree: Option<f64>,
    /// Second-degree damage at the end.
    pub damage: f64,
    /// Second-degree damage when the flames went out.
    pub damage_at_out: f64,
    /// Third-degree damage at the end.
    pub deep_damage: f64,
    /// Highest temperature at the base of the epidermis, K.
    pub peak_temperature: f64,
    /// Water left when the flames went out, kg/m2.
    pub water_left: f64,
    /// Highest flux into the skin, W/m2.
    pub peak_flux: f64,
    /// Where the heat went.
    pub ledger: Ledger,
    /// Heat held at the end less heat held at the start, J/m2.
    pub gained: f64,
}

impl Outcome {
    /// What the books are out by, over what came in.
    pub fn imbalance(&self) -> f64 {
        let accounted =
            self.gained + self.ledger.boiled + self.ledger.carried_off + self.ledger.left_inward;
        let size = self.ledger.entered.abs().max(1.0);
        (self.ledger.entered - accounted).abs() / size
    }
}

/// A moment, for plotting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time since ignition, s.
    pub time: f64,
    /// Outer face, K.
    pub face: f64,
    /// Where the layers meet the skin, K.
    pub skin_surface: f64,
    /// Base of the epidermis, K.
    pub epidermis_base: f64,
    /// Second-degree damage so far.
    pub damage: f64,
    /// Water left, kg/m2.
    pub water: f64,
}

/// Runs a course, giving each step to `observe`.
pub fn run(layers: &[Layer], course: &Course, observe: impl FnMut(Moment)) -> Outcome {
    follow(layers, course, None, observe)
}

/// Runs a course and then takes the layers off the skin and lets `cold` act on it for `seconds`. The
/// damage that the skin's own heat still does is counted; the ledger ends where the layers come off.
pub fn run_and_strip(
    layers: &[Layer],
    course: &Course,
    cold: Outside,
    seconds: f64,
    observe: impl FnMut(Moment),
) -> Outcome {
    follow(layers, course, Some((cold, seconds)), observe)
}

/// When a body that burns on is hurt, where it is, and when its layers are nearly dry, s.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BurntOn {
    /// As in [`Outcome`].
    pub second_degree: Option<f64>,
    /// As in [`Outcome`].
    pub pain: Option<f64>,
    /// When no more than the asked water was left.
    pub dry: Option<f64>,
}

/// The same flames twice over, burning on for `horizon` seconds until injury, and the course of
/// [`run_and_strip`] with nobody watching. Step for step what two runs give; the steps that both begin with
/// are taken once, and none where the skin is too cool to add anything.
pub fn burn_on_and_strip(
    layers: &[Layer],
    course: &Course,
    (horizon, nearly_dry): (f64, f64),
    (cold, seconds): (Outside, f64),
) -> (BurntOn, Outcome) {
    let mut run = Run::new(layers);
    let held = run.stack.held();
    let mut dry = None;
    let mut step = course.first_step;
    let both = course.flame_time.min(horizon);
    while both - run.time >= 2.0 * step && run.outcome.second_degree.is_none() {
        run.step_on(step, &course.burning, both);
        if dry.is_none() && run.stack.water() <= nearly_dry {
            dry = Some(run.time);
        }
        step = (step * 1.1).min(course.longest_step);
    }
    let on = Course {
        stop_at_injury: true,
        ..*course
    };
    let mut burning = run.clone();
    burning.phase_from(step, &on, &course.burning, horizon, &mut |moment| {
        if dry.is_none() && moment.water <= nearly_dry {
            dry = Some(moment.time);
        }
    });
    let burnt = BurntOn {
        second_degree: burning.outcome.second_degree,
        pain: burning.outcome.pain,
        dry,
    };
    run.phase_from(
        step,
        course,
        &course.burning,
        course.flame_time,
        &mut |_| {},
    );
    run.soak(course, held, &mut |_| {});
    run.strip();
    let mut step = course.first_step;
    let end = run.time + seconds;
    while run.time < end && !run.is_over(&cold) {
        run.step_on(step, &cold, end);
        step = (step * 1.1).min(course.longest_step);
    }
    (burnt, run.outcome)
}

fn follow(
    layers: &[Layer],
    course: &Course,
    stripped: Option<(Outside, f64)>,
    mut observe: impl FnMut(Moment),
) -> Outcome {
    let mut run = Run::new(layers);
    let held = run.stack.held();
    observe(run.moment(&course.burning));
    run.phase(course, &course.burning, course.flame_time, &mut observe);
    run.soak(course, held, &mut observe);
    if let Some((cold, seconds)) = stripped
        && !run.stopped(course)
    {
        run.strip();
        run.phase(course, &cold, run.time + seconds, &mut observe);
    }
    run.outcome
}

#[derive(Clone)]
struct Run {
    stack: Stack,
    first_skin: usize,
    time: f64,
    rates: (f64, f64),
    outcome: Outcome,
}

impl Run {
    fn new(layers: &[Layer]) -> Run {
        let mut cells = Vec::new();
        for layer in layers {
            if layer.thickness < 1e-6 {
                continue;
            }
            let share = 1.0 / layer.cells as f64;
            for _ in 0..layer.cells {
                cells.push(Cell {
                    thickness: layer.thickness * share,
                    conductivity: layer.conductivity,
                    heat_capacity: layer.dry_capacity / layer.thickness,
                    water: layer.water * share,
                    dry_conductivity: layer.dry_conductivity,
                    temperature: layer.temperature,
                });
            }
        }
        let first_skin = cells.len();
        cells.extend(skin::cells());
        Run {
            stack: Stack::new(cells, Deep::Held(skin::DEEP_TEMPERATURE)),
            first_skin,
            time: 0.0,
            rates: (0.0, 0.0),
            outcome: Outcome {
                peak_temperature: skin::SURFACE_TEMPERATURE,
                ..Outcome::default()
            },
        }
    }

    fn stopped(&self, course: &Course) -> bool {
        course.stop_at_injury && self.outcome.second_degree.is_some()
    }

    /// The flames are out: notes how things stand and lets the stored heat soak in.
    fn soak(&mut self, course: &Course, held: f64, observe: &mut impl FnMut(Moment)) {
        self.outcome.damage_at_out = self.outcome.damage;
        self.outcome.water_left = self.stack.water();
        if !self.stopped(course) {
            let end = course.flame_time + course.soak_time;
            self.phase(course, &course.after, end, observe);
        }
        self.outcome.ledger = self.stack.ledger();
        self.outcome.gained = self.stack.held() - held;
    }

    fn strip(&mut self) {
        self.stack.strip(self.first_skin);
        self.first_skin = 0;
    }

    /// Whether nothing can add to damage or to the highest temperature any more: heat flows only downhill.
    fn is_over(&self, outside: &Outside) -> bool {
        let highest = self.stack.highest(outside);
        self.rates == (0.0, 0.0)
            && highest <= skin::PAIN_TEMPERATURE
            && highest <= self.outcome.peak_temperature
    }

    /// Goes on under one condition until `end`. Steps start short, where temperatures change fast, and
    /// lengthen by a tenth each.
    fn phase(
        &mut self,
        course: &Course,
        outside: &Outside,
        end: f64,
        observe: &mut impl FnMut(Moment),
    ) {
        self.phase_from(course.first_step, course, outside, end, observe);
    }

    /// As [`Run::phase`], with the length of the next step.
    fn phase_from(
        &mut self,
        mut step: f64,
        course: &Course,
        outside: &Outside,
        end: f64,
        observe: &mut impl FnMut(Moment),
    ) {
        while self.time < end && !self.stopped(course) {
            self.step_on(step, outside, end);
            observe(self.moment(outside));
            step = (step * 1.1).min(course.longest_step);
        }
    }

    /// One step of that length, or what the end leaves of it.
    fn step_on(&mut self, step: f64, outside: &Outside, end: f64) {
        let left = end - self.time;
        // The last two steps share what is left, so that none is a sliver.
        let taken = if left <= step {
            left
        } else if left < 2.0 * step {
            0.5 * left
        } else {
            step
        };
        self.stack.advance(taken, outside);
        self.time = if taken == left {
            end
        } else {
            self.time + taken
        };
        self.count_damage(taken);
    }

    fn count_damage(&mut self, step: f64) {
        let shallow = Depth::EpidermisBase.temperature(&self.stack, self.first_skin);
        let deep = Depth::DermisBase.temperature(&self.stack, self.first_skin);
        let now = (
            Depth::EpidermisBase.damage_rate(shallow),
            Depth::DermisBase.damage_rate(deep),
        );
        let start = self.time - step;
        let out = &mut self.outcome;
        if shallow > skin::PAIN_TEMPERATURE && out.pain.is_none() {
            out.pain = Some(self.time);
        }
        out.peak_temperature = out.peak_temperature.max(shallow);
        let inward = if self.first_skin > 0 {
            self.stack.flux_inward(self.first_skin - 1)
        } else {
            0.0
        };
        out.peak_flux = out.peak_flux.max(inward);
        add(
            &mut out.damage,
            &mut out.second_degree,
            start,
            step,
            self.rates.0,
            now.0,
        );
        add(
            &mut out.deep_damage,
            &mut out.third_degree,
            start,
            step,
            self.rates.1,
            now.1,
        );
        self.rates = now;
    }

    fn moment(&self, outside: &Outside) -> Moment {
        let skin_surface = if self.first_skin > 0 {
            self.stack.face_temperature(self.first_skin - 1)
        } else {
            self.stack.surface_temperature(outside)
        };
        Moment {
            time: self.time,
            face: self.stack.surface_temperature(outside),
            skin_surface,
            epidermis_base: Depth::EpidermisBase.temperature(&self.stack, self.first_skin),
            damage: self.outcome.damage,
            water: self.stack.water(),
        }
    }
}

/// Adds a step's damage by the trapezoid rule and notes when it passed 1.
fn add(total: &mut f64, passed: &mut Option<f64>, start: f64, step: f64, before: f64, after: f64) {
    let more = 0.5 * (before + after) * step;
    if passed.is_none() && *total + more >= 1.0 && more > 0.0 {
        *passed = Some(start + step * (1.0 - *total) / more);
    }
    *total += more;
}
