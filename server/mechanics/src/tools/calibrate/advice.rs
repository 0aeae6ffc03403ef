//! When shots cannot settle a coefficient: which one, and which shot would.

use super::{
    AssessError, INDISTINCT, Matrix, Problem, eigen, figures_of, normal_matrix, refused, slopes,
    wording,
};
use crate::{plan_part::Facet, units::say};

/// Another shot that could be made.
struct Proposal {
    input: &'static str,
    at: String,
    figure: &'static str,
    gain: f64,
}

impl Problem<'_> {
    /// There must be more shots than coefficients: what is left over is all that says how sure the fit is.
    /// Readings of one shot may all be the same reading, so they count once.
    pub(super) fn enough(&self) -> Result<(), AssessError> {
        let (have, need) = (self.measured_shots(), self.unknowns.len() + 1);
        if have >= need {
            return Ok(());
        }
        let fitted: Vec<f64> = self.unknowns.iter().map(|one| one.start).collect();
        let advice = self.advice(&fitted, &self.first_weights());
        Err(refused(
            "shots",
            format!(
                "{have} measured shots cannot settle {} coefficients and show how sure they are: log at \
                 least {} more, or fit fewer coefficients. {advice}",
                self.unknowns.len(),
                need - have
            ),
        ))
    }

    /// Every direction among the coefficients must show in the shots.
    pub(super) fn settled(
        &self,
        normal: &Matrix,
        fitted: &[f64],
        weights: &[f64],
    ) -> Result<(), AssessError> {
        if let Some(at) = (0..self.unknowns.len()).find(|at| normal[*at][*at] <= 0.0) {
            return Err(self.refusal(at, fitted, weights));
        }
        let pairs = eigen(&correlated(normal));
        let most = pairs.last().map_or(0.0, |pair| pair.0);
        match pairs.first() {
            Some((least, vector)) if *least <= INDISTINCT * most => {
                Err(self.refusal(largest(vector), fitted, weights))
            }
            _ => Ok(()),
        }
    }

    pub(super) fn refusal(&self, at: usize, fitted: &[f64], weights: &[f64]) -> AssessError {
        let (_, parameter) = self.coefficients[at];
        let advice = self.advice(fitted, weights);
        refused(
            parameter.name,
            format!(
                "these shots cannot settle {}: what they measure does not depend on it apart from the other \
                 coefficients. {advice}",
                wording::first_small(parameter.title)
            ),
        )
    }

    /// Which one more shot would tell the coefficients apart best.
    fn advice(&self, fitted: &[f64], weights: &[f64]) -> String {
        match self.best_proposal(fitted, weights) {
            Some(best) => format!(
                "A shot with {} at {}, measuring {}, would tell most.",
                wording::first_small(best.input),
                best.at,
                wording::first_small(best.figure)
            ),
            None => {
                "No single shot of this technique would tell: enter what is missing first, or fit \
                     fewer coefficients."
                    .to_owned()
            }
        }
    }

    fn best_proposal(&self, fitted: &[f64], weights: &[f64]) -> Option<Proposal> {
        let count = self.unknowns.len();
        let known = slopes(&self.unknowns, fitted, &|guess: &[f64]| {
            self.residuals(guess, weights)
        })
        .unwrap_or_default();
        let mut best: Option<Proposal> = None;
        for (index, parameter) in self.technique.parameters().iter().enumerate() {
            let is_coefficient = self.coefficients.iter().any(|(one, _)| *one == index);
            let settable = matches!(
                parameter.facet,
                Facet::Action | Facet::Rigging | Facet::Effects | Facet::Vehicles | Facet::Cast
            );
            let (Some((min, max)), Some(value)) =
                (parameter.range(), self.next.number(parameter.name))
            else {
                continue;
            };
            if is_coefficient || !settable || self.next.toleranced(index).is_none() {
                continue;
            }
            for factor in [0.6, 1.4] {
                let at = (value * factor).clamp(min, max);
                if at == value {
                    continue;
                }
                let mut inputs = self.next.clone();
                inputs.set(index, at);
                let figures = |guess: &[f64]| {
                    let computed = figures_of(self.technique, &self.with(&inputs, guess));
                    let all = self.technique.figures().iter();
                    Some(
                        all.map(|figure| computed.get(figure.name).unwrap_or(0.0))
                            .collect::<Vec<_>>(),
                    )
                };
                let (Some(sizes), Some(rows)) =
                    (figures(fitted), slopes(&self.unknowns, fitted, &figures))
                else {
                    continue;
                };
                for ((figure, size), row) in self.technique.figures().iter().zip(sizes).zip(rows) {
                    // Any instrument reads to about a fiftieth of what it reads.
                    let stray = 0.02 * size.abs();
                    if stray <= 0.0 || row.iter().any(|slope| !slope.is_finite()) {
                        continue;
                    }
                    let mut all = known.clone();
                    all.push(row.iter().map(|slope| slope / stray).collect());
                    let gain = eigen(&normal_matrix(&all, count))
                        .first()
                        .map_or(0.0, |pair| pair.0);
                    if gain > best.as_ref().map_or(1e-9, |best| best.gain) {
                        best = Some(Proposal {
                            input: parameter.title,
                            at: say(parameter.quantity(), at),
                            figure: figure.title,
                            gain,
                        });
                    }
                }
            }
        }
        best
    }
}

/// The same directions with every coefficient counting alike.
fn correlated(normal: &Matrix) -> Matrix {
    let size = |at: usize| f64::sqrt(normal[at][at]);
    let count = normal.len();
    (0..count)
        .map(|i| {
            (0..count)
                .map(|j| normal[i][j] / (size(i) * size(j)))
                .collect()
        })
        .collect()
}

fn largest(vector: &[f64]) -> usize {
    (0..vector.len())
        .max_by(|a, b| vector[*a].abs().total_cmp(&vector[*b].abs()))
        .unwrap_or(0)
}
