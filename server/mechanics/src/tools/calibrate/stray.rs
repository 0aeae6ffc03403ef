//! By how far single readings stray from the fit, and what that leaves open of the coefficients.

use super::{AssessError, Matrix, Problem, normal_matrix, refused, slopes, squares};

/// How many measurements the stray of all figures together counts as, beside a figure's own.
const LEANING: f64 = 4.0;
/// No gauge or tape on a set is trusted closer than this share of what it reads (common practice).
const FINEST: f64 = 0.005;
/// Standard deviation of a value rounded to whole numbers.
const ROUNDED: f64 = 0.288_675_134_594_812_9;

impl Problem<'_> {
    /// The places of one figure's measurements.
    pub(super) fn of(&self, figure: &str) -> impl Iterator<Item = usize> {
        let places: Vec<usize> = (0..self.measured.len())
            .filter(|at| self.measured[*at].figure.name == figure)
            .collect();
        places.into_iter()
    }

    /// Before anything is known of their stray, figures count by their size.
    pub(super) fn first_weights(&self) -> Vec<f64> {
        self.measured
            .iter()
            .map(|one| {
                let size = self
                    .of(one.figure.name)
                    .fold(0.0_f64, |most, at| most.max(self.measured[at].value.abs()));
                1.0 / size.max(1e-9)
            })
            .collect()
    }

    /// How many shots measured something.
    pub(super) fn measured_shots(&self) -> usize {
        (0..self.shots.len())
            .filter(|shot| self.readings(*shot) > 0)
            .count()
    }

    /// How many figures were read off a shot.
    pub(super) fn readings(&self, shot: usize) -> usize {
        self.measured.iter().filter(|one| one.shot == shot).count()
    }

    /// The least that a figure's readings stray, whatever they say: two that are alike to the last digit
    /// were rounded, not exact.
    pub(super) fn floor(&self, figure: &str) -> f64 {
        let (mut size, mut digits) = (0.0_f64, 0);
        for at in self.of(figure) {
            let value = self.measured[at].value.abs();
            size = size.max(value);
            let whole = |scale: f64| {
                let scaled = value * scale;
                (scaled - f64::round(scaled)).abs() <= 1e-9 * scaled.max(1.0)
            };
            while digits < 6 && !whole(libm::pow(10.0, f64::from(digits))) {
                digits += 1;
            }
        }
        (FINEST * size).max(ROUNDED * libm::pow(0.1, f64::from(digits)))
    }

    /// How far each reading moves with the coefficients, its figure's readings together: what strays of
    /// different figures can be compared by. A figure that stands still goes by its size.
    pub(super) fn moves(&self, guess: &[f64]) -> Result<Vec<f64>, AssessError> {
        let plain = vec![1.0; self.measured.len()];
        let rows = slopes(&self.unknowns, guess, &|guess: &[f64]| {
            self.residuals(guess, &plain)
        });
        self.affordable()?;
        let rows =
            rows.ok_or_else(|| refused("shots", "the model gives no answer near the fit"))?;
        let sizes = self.first_weights();
        Ok(self
            .measured
            .iter()
            .zip(sizes)
            .map(|(one, weight)| {
                let count = self.of(one.figure.name).count() as f64;
                let moved = self.of(one.figure.name).map(|at| squares(&rows[at]));
                let moved = f64::sqrt(moved.sum::<f64>() / count);
                let size = 1.0 / weight;
                if moved > 1e-6 * size { moved } else { size }
            })
            .collect())
    }

    /// By how far each figure strays from the fit. A figure measured a few times knows little of its own
    /// stray, so each leans on that of all figures together, relative to how far they move, as if it had been
    /// seen [`LEANING`] times more; one measured once would else seem exact, since the fit runs through it.
    /// What it strays by itself is never made less by the others.
    pub(super) fn weights(&self, guess: &[f64]) -> Result<Vec<f64>, AssessError> {
        let modelled = self.modelled(guess)?;
        let sizes = self.moves(guess)?;
        let relative: Vec<f64> = modelled
            .iter()
            .zip(&self.measured)
            .zip(&sizes)
            .map(|((modelled, one), size)| (modelled - one.value) / size)
            .collect();
        let left = 1.0 - self.unknowns.len() as f64 / self.measured_shots() as f64;
        let own: Vec<(f64, f64)> = self
            .measured
            .iter()
            .zip(&sizes)
            .map(|(one, size)| {
                let off: Vec<f64> = self.of(one.figure.name).map(|at| relative[at]).collect();
                let seen = off.len() as f64 * left;
                let least = self.floor(one.figure.name) / size;
                (seen, (squares(&off) / seen).max(least * least))
            })
            .collect();
        let together = own.iter().map(|(_, own)| own).sum::<f64>() / own.len() as f64;
        let known = own.iter().zip(&sizes);
        Ok(known
            .map(|((seen, own), size)| {
                let leaned = (LEANING * together + seen * own) / (LEANING + seen);
                1.0 / (size * f64::sqrt(own.max(leaned)))
            })
            .collect())
    }

    /// The coefficients' covariance when a shot's readings stray together as far as they can.
    pub(super) fn covariance(&self, slopes: &[Vec<f64>], inverse: &Matrix) -> Matrix {
        let count = self.unknowns.len();
        let together: Vec<Vec<f64>> = slopes
            .iter()
            .zip(&self.measured)
            .map(|(row, one)| {
                let times = f64::sqrt(self.readings(one.shot) as f64);
                // What a reading of one deviation more moves the coefficients by.
                (0..count)
                    .map(|i| {
                        let moved = inverse[i].iter().zip(row).map(|(a, b)| a * b);
                        times * moved.sum::<f64>()
                    })
                    .collect()
            })
            .collect();
        normal_matrix(&together, count)
    }
}
