//! How far figures spread: a Monte Carlo run over the declared tolerances.
//!
//! Each toleranced input is drawn from a normal distribution about its value, its tolerance counting as
//! two standard deviations, cut at the parameter's range; inputs are independent. Draws are made column by
//! column, then states are computed row by row, in parts that a [`Runner`] may share out: the answer has the
//! same bytes whoever runs them.

use core::{cell::Cell, ops::Range};
use std::sync::OnceLock;

use serde::{Deserialize, Serialize};

use super::{random::Stream, refused, statistics};
use crate::{
    assessment::{Bound, Check},
    reading::{Values, read},
    technique::{AssessError, Computation, FigureDescription, Inputs, Technique},
    units::Quantity,
};

/// The fewest draws that say anything of one case in twenty.
const FEWEST: u32 = 100;
/// The most draws of one request.
const MOST: u32 = 100_000;

/// What to draw.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct SpreadRequest {
    /// The plan's inputs.
    pub inputs: Inputs,
    /// How many states to draw, from 100 to 100,000.
    #[serde(default = "usual_draws")]
    pub draws: u32,
    /// The same seed gives the same draws, everywhere.
    #[serde(default = "usual_seed")]
    pub seed: u32,
}

fn usual_draws() -> u32 {
    10_000
}

fn usual_seed() -> u32 {
    1
}

/// How figures spread.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Spread {
    /// The technique's name.
    pub technique: String,
    /// How many states were drawn.
    pub draws: u32,
    /// The seed.
    pub seed: u32,
    /// Each figure over the draws, in the order of the descriptions.
    pub figures: Vec<SpreadFigure>,
    /// Each limit, and how often it was crossed.
    pub crossings: Vec<Crossing>,
}

/// One figure over the draws.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct SpreadFigure {
    /// Machine name.
    pub name: String,
    /// What people read.
    pub title: String,
    /// The kind of quantity.
    pub quantity: Quantity,
    /// The value at the stated inputs, SI.
    pub value: f64,
    /// The mean of the draws.
    pub mean: f64,
    /// Their standard deviation.
    pub deviation: f64,
    /// One draw in twenty is lower.
    pub low: f64,
    /// Half of the draws are lower.
    pub median: f64,
    /// One draw in twenty is higher.
    pub high: f64,
    /// Share of the draws that gave the figure at all.
    pub share: f64,
}

/// How often a limit was crossed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Crossing {
    /// The check's name.
    pub check: String,
    /// The check's title.
    pub title: String,
    /// Whether crossing it stops the gag.
    pub blocking: bool,
    /// Share of the draws that gave a value and lie outside the limit; none when no draw gave one.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub share: Option<f64>,
    /// Share of the draws that gave no value.
    pub unknown: f64,
}

/// Gives the next part of a computation that nobody works on yet, by its number; none once all are dealt.
pub type Dealer<'a> = dyn Fn() -> Option<usize> + 'a;

/// Who works on the parts of a long computation. This crate starts no thread; a server hands in one that does.
pub trait Runner {
    /// Runs `worker` where it is called, on other threads, or both, and returns when all are done. Each is dealt
    /// numbers below `parts`, every one once, until there are none.
    fn run(&self, parts: usize, worker: &(dyn Fn(&Dealer) + Sync));
}

/// Runs everything where it is called.
pub struct InPlace;

impl Runner for InPlace {
    fn run(&self, parts: usize, worker: &(dyn Fn(&Dealer) + Sync)) {
        let next = Cell::new(0);
        worker(&|| (next.get() < parts).then(|| next.replace(next.get() + 1)));
    }
}

/// Draws states and tells how figures spread and how often limits are crossed. A limit that is itself an
/// input stays at its stated value.
///
/// # Errors
/// Names the field and what would be right.
pub fn spread(technique: &dyn Technique, request: &SpreadRequest) -> Result<Spread, AssessError> {
    spread_on(&InPlace, technique, request)
}

/// As [`spread`], with the states shared out by a runner.
///
/// # Errors
/// As [`spread`].
pub fn spread_on(
    runner: &dyn Runner,
    technique: &dyn Technique,
    request: &SpreadRequest,
) -> Result<Spread, AssessError> {
    if !(FEWEST..=MOST).contains(&request.draws) {
        return Err(refused(
            "draws",
            format!(
                "{} is too few or too many; draw from {FEWEST} to {MOST}",
                request.draws
            ),
        ));
    }
    let values = read(technique.name(), technique.parameters(), &request.inputs)?;
    let assessment = technique.assess(&request.inputs)?;
    let drawn = Drawn::new(runner, technique, &values, request);
    let figures = technique
        .figures()
        .iter()
        .zip(&drawn.figures)
        .filter_map(|(description, column)| {
            let mut stated = assessment.figures.iter();
            let value = stated.find(|figure| figure.name == description.name)?.value;
            let summary = statistics::summary(column)?;
            Some(SpreadFigure {
                name: description.name.to_owned(),
                title: description.title.to_owned(),
                quantity: description.quantity,
                value,
                mean: summary.mean,
                deviation: summary.deviation,
                low: summary.low,
                median: summary.median,
                high: summary.high,
                share: summary.count as f64 / f64::from(request.draws),
            })
        })
        .collect();
    let crossings = assessment
        .checks
        .iter()
        .filter_map(|check| drawn.crossing(technique, check))
        .collect();
    Ok(Spread {
        technique: technique.name().to_owned(),
        draws: request.draws,
        seed: request.seed,
        figures,
        crossings,
    })
}

/// States that a computation is shown at once.
const TOGETHER: usize = 32;
/// Draws in a part of the work.
const PART: usize = 128;

/// Works out draws, some rows at a time, with one computation made ready.
struct Worker<'a> {
    descriptions: &'static [FigureDescription],
    columns: &'a [(usize, Vec<f64>)],
    compute: Computation,
    states: Vec<Values>,
}

impl<'a> Worker<'a> {
    fn new(
        technique: &dyn Technique,
        values: &Values,
        columns: &'a [(usize, Vec<f64>)],
    ) -> Worker<'a> {
        Worker {
            descriptions: technique.figures(),
            columns,
            compute: technique.prepare(values),
            states: vec![values.clone(); TOGETHER],
        }
    }

    /// The figures of some of the rows, as columns.
    fn figures(&mut self, rows: Range<usize>) -> Vec<Vec<f64>> {
        let mut figures = vec![vec![f64::NAN; rows.len()]; self.descriptions.len()];
        let mut first = rows.start;
        while first < rows.end {
            let together = TOGETHER.min(rows.end - first);
            let states = &mut self.states[..together];
            for (draw, state) in (first..).zip(states.iter_mut()) {
                for (index, column) in self.columns {
                    state.set(*index, column[draw]);
                }
            }
            self.compute.look_ahead(states);
            for (draw, state) in (first..).zip(states.iter()) {
                for (figure, value) in (self.compute)(state).placed(self.descriptions) {
                    figures[figure][draw - rows.start] = value;
                }
            }
            first += together;
        }
        figures
    }
}

/// The draws: columns of the inputs that move, and of every figure. A figure that a state does not give
/// is not a number there.
struct Drawn {
    inputs: Vec<(&'static str, Vec<f64>)>,
    figures: Vec<Vec<f64>>,
    values: Values,
    draws: usize,
}

impl Drawn {
    fn new(
        runner: &dyn Runner,
        technique: &dyn Technique,
        values: &Values,
        request: &SpreadRequest,
    ) -> Drawn {
        let draws = request.draws as usize;
        let parameters = technique.parameters();
        let mut columns: Vec<(usize, Vec<f64>)> = Vec::new();
        for (index, parameter) in parameters.iter().enumerate() {
            let Some((value, tolerance)) = values.toleranced(index) else {
                continue;
            };
            let Some((min, max)) = parameter.range() else {
                continue;
            };
            let mut column = Stream::new(request.seed, parameter.name).normals(draws);
            for draw in &mut column {
                *draw = (value + 0.5 * tolerance * *draw).clamp(min, max);
            }
            columns.push((index, column));
        }
        let descriptions = technique.figures();
        let parts = draws.div_ceil(PART);
        let rows = |part: usize| part * PART..((part + 1) * PART).min(draws);
        let found: Vec<OnceLock<Vec<Vec<f64>>>> = (0..parts).map(|_| OnceLock::new()).collect();
        runner.run(parts, &|next| {
            let mut worker = Worker::new(technique, values, &columns);
            while let Some(part) = next() {
                // A part that is worked on again comes to the same again.
                let _ = found[part].set(worker.figures(rows(part)));
            }
        });
        let mut figures = vec![Vec::with_capacity(draws); descriptions.len()];
        for (part, found) in found.into_iter().enumerate() {
            let part = found
                .into_inner()
                .unwrap_or_else(|| Worker::new(technique, values, &columns).figures(rows(part)));
            for (whole, part) in figures.iter_mut().zip(part) {
                whole.extend(part);
            }
        }
        Drawn {
            inputs: columns
                .into_iter()
                .map(|(index, column)| (parameters[index].name, column))
                .collect(),
            figures,
            values: values.clone(),
            draws,
        }
    }

    fn crossing(&self, technique: &dyn Technique, check: &Check) -> Option<Crossing> {
        // A check that needs an input nobody entered says nothing, drawn or not.
        check.value?;
        let limit = check.limit.value;
        let outside = |value: f64| match check.limit.bound {
            Bound::AtMost => value > limit,
            Bound::AtLeast => value < limit,
        };
        let count = |column: &[f64]| {
            let given = column.iter().filter(|value| value.is_finite()).count();
            let crossed = column
                .iter()
                .filter(|value| value.is_finite() && outside(**value))
                .count();
            (given, crossed)
        };
        let (given, crossed) = match (&check.figure, &check.input) {
            (Some(figure), _) => {
                let at = technique
                    .figures()
                    .iter()
                    .position(|description| description.name == figure)?;
                count(&self.figures[at])
            }
            (None, Some(input)) => match self.inputs.iter().find(|(name, _)| name == input) {
                Some((_, column)) => count(column),
                // An exact input is the same in every draw.
                None => {
                    let value = self.values.number(input)?;
                    (self.draws, if outside(value) { self.draws } else { 0 })
                }
            },
            (None, None) => return None,
        };
        let draws = self.draws as f64;
        Some(Crossing {
            check: check.name.clone(),
            title: check.title.clone(),
            blocking: check.blocking,
            share: (given > 0).then(|| crossed as f64 / given as f64),
            unknown: (self.draws - given) as f64 / draws,
        })
    }
}
