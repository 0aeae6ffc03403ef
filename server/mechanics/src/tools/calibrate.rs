//! What logged test shots teach: a technique's free coefficients by nonlinear least squares, and what the
//! next shot may then do.
//!
//! Figures are weighed by how far they stray from the fit. The next shot's interval is that of a new
//! observation: what the coefficients leave open and the stray of single shots, by Student's t, to first
//! order (D. M. Bates and D. G. Watts, Nonlinear Regression Analysis, 1988, section 2.3).
//!
//! What one shot gives counts once, however many figures are read off it: they may all stray together, as
//! two readings of one tape do. So shots, not readings, say how sure a fit is, and the coefficients' errors
//! are those of readings that stray together within each shot, which no other case exceeds.

use std::{
    cell::{Cell, RefCell},
    collections::BTreeMap,
};

use serde::{Deserialize, Serialize};

mod advice;
mod stray;

use super::{
    described, figures_of,
    least_squares::{Matrix, Unknown, eigen, fit, normal_matrix, slopes, solve, squares},
    numbered, refused, statistics, wording,
};
use crate::{
    reading::{Values, read},
    technique::{AssessError, FigureDescription, Inputs, Parameter, Technique},
    units::Quantity,
};

/// The most shots of one request.
const MOST_SHOTS: usize = 200;
/// The most runs of the model for one request: some seconds of the slowest technique.
const MOST_RUNS: usize = 60_000;
/// Shots whose smallest direction is below this share of the largest cannot tell coefficients apart.
const INDISTINCT: f64 = 1e-7;

/// A logged test shot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[cfg_attr(feature = "openapi", schema(as = MeasuredShot))]
#[serde(deny_unknown_fields)]
pub struct TestShot {
    /// What was set.
    pub inputs: Inputs,
    /// What was measured: figures by name, SI.
    pub measured: BTreeMap<String, f64>,
}

/// What to learn, and for which shot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct CalibrateRequest {
    /// The next shot's inputs.
    pub inputs: Inputs,
    /// The shots so far.
    pub shots: Vec<TestShot>,
    /// Which coefficients to fit; all of the technique's when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub coefficients: Option<Vec<String>>,
    /// How sure the intervals are to be, from 0.5 to 0.999.
    #[serde(default = "usual_confidence")]
    pub confidence: f64,
}

fn usual_confidence() -> f64 {
    0.9
}

/// What was learned.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Calibration {
    /// The technique's name.
    pub technique: String,
    /// How sure the intervals are.
    pub confidence: f64,
    /// The coefficients.
    pub coefficients: Vec<Coefficient>,
    /// Every measurement beside the fit, in the order of the shots.
    pub shots: Vec<ShotRow>,
    /// How far single measurements of a figure stray from the fit (standard deviation).
    pub deviation: Vec<Deviation>,
    /// What the next shot may do, for each figure that was measured.
    pub prediction: Vec<Prediction>,
}

/// A fitted coefficient, SI.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Coefficient {
    /// The parameter's machine name.
    pub name: String,
    /// Its title.
    pub title: String,
    /// Its kind of quantity.
    pub quantity: Quantity,
    /// What the plan states.
    pub stated: f64,
    /// What the shots say.
    pub value: f64,
    /// Its standard error.
    pub error: f64,
    /// Low end of its interval.
    pub low: f64,
    /// High end of its interval.
    pub high: f64,
}

/// One measurement beside the fit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct ShotRow {
    /// Which shot, from 1.
    pub shot: usize,
    /// The figure's name.
    pub figure: String,
    /// What was measured.
    pub measured: f64,
    /// What the fitted model gives.
    pub fitted: f64,
}

/// How far a figure's measurements stray.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Deviation {
    /// The figure's name.
    pub figure: String,
    /// Standard deviation, SI.
    pub value: f64,
}

/// What the next shot may do.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Prediction {
    /// The figure's name.
    pub figure: String,
    /// Its title.
    pub title: String,
    /// Its kind of quantity.
    pub quantity: Quantity,
    /// What the model gives with the coefficients the plan states; none when it gives nothing.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub stated: Option<f64>,
    /// What it gives with the fitted ones.
    pub value: f64,
    /// Low end of the interval for one new shot.
    pub low: f64,
    /// High end.
    pub high: f64,
}

/// One measurement, ready to be compared.
struct Measurement {
    shot: usize,
    figure: &'static FigureDescription,
    value: f64,
}

struct Problem<'a> {
    technique: &'a dyn Technique,
    next: Values,
    shots: Vec<Values>,
    measured: Vec<Measurement>,
    coefficients: Vec<(usize, &'static Parameter)>,
    unknowns: Vec<Unknown>,
    runs: Cell<usize>,
    /// What the model gave for guesses asked before: weights and errors ask where the fit has been.
    given: RefCell<Vec<(Vec<f64>, Vec<f64>)>>,
}

/// Fits the coefficients and predicts the next shot.
///
/// # Errors
/// Names the field and what would be right; when the shots cannot settle a coefficient, says which one
/// and which shot would.
pub fn calibrate(
    technique: &dyn Technique,
    request: &CalibrateRequest,
) -> Result<Calibration, AssessError> {
    if !(0.5..=0.999).contains(&request.confidence) {
        return Err(refused(
            "confidence",
            "give how sure you want to be, from 0.5 to 0.999",
        ));
    }
    let problem = Problem::read(technique, request)?;
    problem.enough()?;
    let mut weights = problem.first_weights();
    let stated: Vec<f64> = problem.unknowns.iter().map(|one| one.start).collect();
    let mut fitted = problem.fit(&stated, &weights)?;
    weights = problem.weights(&fitted)?;
    if problem.figures().len() > 1 {
        // Each figure's own stray is known only after a fit, and the fit leans on it.
        for _ in 0..3 {
            fitted = problem.fit(&fitted, &weights)?;
            weights = problem.weights(&fitted)?;
        }
    }
    problem.answer(&fitted, &weights, request.confidence)
}

impl Problem<'_> {
    fn read<'a>(
        technique: &'a dyn Technique,
        request: &CalibrateRequest,
    ) -> Result<Problem<'a>, AssessError> {
        let parameters = technique.parameters();
        let next = read(technique.name(), parameters, &request.inputs)?;
        if request.shots.len() > MOST_SHOTS {
            return Err(refused("shots", format!("give at most {MOST_SHOTS} shots")));
        }
        let names: Vec<&str> = match &request.coefficients {
            Some(names) => names.iter().map(String::as_str).collect(),
            None => technique.coefficients().to_vec(),
        };
        if names.is_empty() {
            return Err(refused(
                "coefficients",
                "there is nothing in this technique for test shots to settle",
            ));
        }
        let mut coefficients = Vec::new();
        let mut unknowns = Vec::new();
        for name in names {
            let (index, parameter, range) = numbered(technique, "coefficients", name)?;
            if coefficients.iter().any(|(known, _)| *known == index) {
                return Err(refused(
                    "coefficients",
                    format!("names {name} twice; once is enough"),
                ));
            }
            let Some(start) = next.number(name) else {
                return Err(refused(
                    name,
                    "is where the fit starts; enter your best guess of it",
                ));
            };
            let tolerance = next.tolerance(name).unwrap_or(0.0);
            let scale = start.abs().max(tolerance).max(1e-3 * (range.1 - range.0));
            coefficients.push((index, parameter));
            unknowns.push(Unknown {
                start,
                range,
                scale,
            });
        }
        let mut shots = Vec::new();
        let mut measured = Vec::new();
        for (shot, logged) in request.shots.iter().enumerate() {
            shots.push(read(technique.name(), parameters, &logged.inputs)?);
            for (figure, value) in &logged.measured {
                if !value.is_finite() {
                    return Err(refused(
                        figure,
                        format!(
                            "shot {} measured something that is not a finite number",
                            shot + 1
                        ),
                    ));
                }
                let figure = described(technique, figure)?;
                measured.push(Measurement {
                    shot,
                    figure,
                    value: *value,
                });
            }
        }
        Ok(Problem {
            technique,
            next,
            shots,
            measured,
            coefficients,
            unknowns,
            runs: Cell::new(0),
            given: RefCell::default(),
        })
    }

    /// A set of inputs with the coefficients as guessed.
    fn with(&self, inputs: &Values, guess: &[f64]) -> Values {
        let mut values = inputs.clone();
        for ((index, _), value) in self.coefficients.iter().zip(guess) {
            values.make_known(*index, *value);
        }
        values
    }

    /// What the model gives where something was measured.
    fn modelled(&self, guess: &[f64]) -> Result<Vec<f64>, AssessError> {
        let before = self.given.borrow();
        if let Some((_, given)) = before.iter().find(|(asked, _)| asked == guess) {
            return Ok(given.clone());
        }
        drop(before);
        self.runs.set(self.runs.get() + self.shots.len());
        self.affordable()?;
        let figures: Vec<_> = self
            .shots
            .iter()
            .map(|shot| figures_of(self.technique, &self.with(shot, guess)))
            .collect();
        let given: Vec<f64> = self
            .measured
            .iter()
            .map(|one| {
                let value = figures[one.shot].get(one.figure.name);
                value.filter(|value| value.is_finite()).ok_or_else(|| {
                    refused(
                        one.figure.name,
                        format!(
                            "the model gives no such figure for the inputs of shot {}; see that they are whole",
                            one.shot + 1
                        ),
                    )
                })
            })
            .collect::<Result<_, AssessError>>()?;
        self.given
            .borrow_mut()
            .push((guess.to_vec(), given.clone()));
        Ok(given)
    }

    fn affordable(&self) -> Result<(), AssessError> {
        if self.runs.get() <= MOST_RUNS {
            return Ok(());
        }
        Err(refused(
            "shots",
            "these are too many shots for so many coefficients; fit fewer coefficients, or the newest shots",
        ))
    }

    fn residuals(&self, guess: &[f64], weights: &[f64]) -> Option<Vec<f64>> {
        let modelled = self.modelled(guess).ok()?;
        let off = modelled.iter().zip(&self.measured).zip(weights);
        Some(
            off.map(|((modelled, one), weight)| (modelled - one.value) * weight)
                .collect(),
        )
    }

    fn fit(&self, start: &[f64], weights: &[f64]) -> Result<Vec<f64>, AssessError> {
        self.modelled(start)?;
        let found = fit(&self.unknowns, start, &|guess: &[f64]| {
            self.residuals(guess, weights)
        });
        self.affordable()?;
        found.ok_or_else(|| {
            refused(
                "shots",
                "the model gives no answer near these shots; see that their inputs are whole",
            )
        })
    }

    fn answer(
        &self,
        fitted: &[f64],
        weights: &[f64],
        confidence: f64,
    ) -> Result<Calibration, AssessError> {
        let count = self.unknowns.len();
        let slopes = slopes(&self.unknowns, fitted, &|guess: &[f64]| {
            self.residuals(guess, weights)
        })
        .ok_or_else(|| refused("shots", "the model gives no answer near the fit"))?;
        let normal = normal_matrix(&slopes, count);
        self.settled(&normal, fitted, weights)?;
        let freedom = (self.measured_shots() - count) as f64;
        let t = statistics::student_t(confidence, freedom);
        let inverse = inverse(&normal).ok_or_else(|| self.refusal(0, fitted, weights))?;
        // In deviations, since figures are weighed by their own stray.
        let covariance = self.covariance(&slopes, &inverse);
        let modelled = self.modelled(fitted)?;
        let coefficients = self
            .coefficients
            .iter()
            .enumerate()
            .map(|(at, (_, parameter))| {
                let unknown = self.unknowns[at];
                let error = f64::sqrt(covariance[at][at]) * unknown.scale;
                Coefficient {
                    name: parameter.name.to_owned(),
                    title: parameter.title.to_owned(),
                    quantity: parameter.quantity(),
                    stated: unknown.start,
                    value: fitted[at],
                    error,
                    low: (fitted[at] - t * error).max(unknown.range.0),
                    high: (fitted[at] + t * error).min(unknown.range.1),
                }
            })
            .collect();
        let rows = self.measured.iter().zip(&modelled);
        Ok(Calibration {
            technique: self.technique.name().to_owned(),
            confidence,
            coefficients,
            shots: rows
                .map(|(one, fitted)| ShotRow {
                    shot: one.shot + 1,
                    figure: one.figure.name.to_owned(),
                    measured: one.value,
                    fitted: *fitted,
                })
                .collect(),
            deviation: self.deviations(weights),
            prediction: self.predictions(fitted, weights, &covariance, t),
        })
    }

    /// Every figure that was measured, once, with one of its places.
    fn figures(&self) -> Vec<(&'static FigureDescription, usize)> {
        let known = self.technique.figures().iter();
        known
            .filter_map(|figure| self.of(figure.name).next().map(|at| (figure, at)))
            .collect()
    }

    fn deviations(&self, weights: &[f64]) -> Vec<Deviation> {
        let rows = self.figures().into_iter();
        rows.map(|(figure, at)| Deviation {
            figure: figure.name.to_owned(),
            value: 1.0 / weights[at],
        })
        .collect()
    }

    fn predictions(
        &self,
        fitted: &[f64],
        weights: &[f64],
        covariance: &Matrix,
        t: f64,
    ) -> Vec<Prediction> {
        let stated = figures_of(self.technique, &self.next);
        let at = |guess: &[f64], figure: &str| {
            let found = figures_of(self.technique, &self.with(&self.next, guess)).get(figure);
            found.filter(|value| value.is_finite())
        };
        let mut predictions = Vec::new();
        for (figure, place) in self.figures() {
            let Some(value) = at(fitted, figure.name) else {
                continue;
            };
            let one = |guess: &[f64]| at(guess, figure.name).map(|value| vec![value]);
            let Some(gradient) = slopes(&self.unknowns, fitted, &one) else {
                continue;
            };
            let mut open = 0.0;
            for (i, row) in covariance.iter().enumerate() {
                for (j, entry) in row.iter().enumerate() {
                    open += gradient[0][i] * entry * gradient[0][j];
                }
            }
            let stray = 1.0 / (weights[place] * weights[place]);
            let half = t * f64::sqrt(open + stray);
            predictions.push(Prediction {
                figure: figure.name.to_owned(),
                title: figure.title.to_owned(),
                quantity: figure.quantity,
                stated: stated.get(figure.name).filter(|value| value.is_finite()),
                value,
                low: value - half,
                high: value + half,
            });
        }
        predictions
    }
}

fn inverse(matrix: &Matrix) -> Option<Matrix> {
    let count = matrix.len();
    let column = |at: usize| {
        let unit: Vec<f64> = (0..count)
            .map(|i| if i == at { 1.0 } else { 0.0 })
            .collect();
        solve(matrix, &unit)
    };
    // Symmetric, so its columns are its rows.
    (0..count).map(column).collect()
}
