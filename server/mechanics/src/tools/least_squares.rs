//! Nonlinear least squares of a few unknowns: Levenberg and Marquardt's method (D. W. Marquardt, J. Soc.
//! Indust. Appl. Math. 11, 1963) on unknowns scaled to be near one, kept inside their ranges; and the
//! eigenvalues of small symmetric matrices by Jacobi's rotations.

/// A square matrix, row by row.
pub(super) type Matrix = Vec<Vec<f64>>;

/// One unknown: where it starts, its range, and the size that counts as one.
#[derive(Clone, Copy, Debug)]
pub(super) struct Unknown {
    pub start: f64,
    pub range: (f64, f64),
    pub scale: f64,
}

/// Residuals of a guess; none where the model gives no answer.
pub(super) type Residuals<'a> = dyn Fn(&[f64]) -> Option<Vec<f64>> + 'a;

/// How far a slope is looked for, in an unknown's own scale. A model that steps through time is rough in
/// its last digits, so the steps are wide, and four of them keep the slope exact.
const LOOK: f64 = 0.02;

/// A step shorter than this, in an unknown's own scale, is no step: a rough model would else be searched bump
/// by bump.
const STILL: f64 = 1e-7;

/// The slopes of the residuals by each unknown in its own scale: one row for each residual. Four points,
/// exact to the fourth order (M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 25.3.6);
/// two where the range leaves no room for four.
pub(super) fn slopes(
    unknowns: &[Unknown],
    at: &[f64],
    residuals: &Residuals<'_>,
) -> Option<Vec<Vec<f64>>> {
    let mut columns = Vec::with_capacity(unknowns.len());
    for (index, unknown) in unknowns.iter().enumerate() {
        let step = LOOK * unknown.scale;
        let (least, most) = unknown.range;
        let moved = |by: f64| {
            let mut guess = at.to_vec();
            guess[index] = (guess[index] + by).clamp(least, most);
            residuals(&guess)
        };
        let (below, above) = (moved(-step)?, moved(step)?);
        let room = at[index] - 2.0 * step >= least && at[index] + 2.0 * step <= most;
        let far = if room {
            moved(-2.0 * step).zip(moved(2.0 * step))
        } else {
            None
        };
        let near = above.iter().zip(&below).map(|(above, below)| above - below);
        columns.push(match far {
            Some((low, high)) => {
                let far = high.iter().zip(&low).map(|(high, low)| high - low);
                near.zip(far)
                    .map(|(near, far)| (8.0 * near - far) / (12.0 * LOOK))
                    .collect::<Vec<_>>()
            }
            None => {
                let from = (at[index] - step).clamp(least, most);
                let to = (at[index] + step).clamp(least, most);
                let width = (to - from) / unknown.scale;
                near.map(|near| near / width).collect()
            }
        });
    }
    let rows = columns.first().map_or(0, Vec::len);
    Some(
        (0..rows)
            .map(|row| columns.iter().map(|column| column[row]).collect())
            .collect(),
    )
}

/// The slopes' matrix times itself.
pub(super) fn normal_matrix(slopes: &[Vec<f64>], unknowns: usize) -> Matrix {
    let mut matrix = vec![vec![0.0; unknowns]; unknowns];
    for row in slopes {
        for i in 0..unknowns {
            for j in 0..unknowns {
                matrix[i][j] += row[i] * row[j];
            }
        }
    }
    matrix
}

/// The guess with the least sum of squares near the start.
pub(super) fn fit(
    unknowns: &[Unknown],
    start: &[f64],
    residuals: &Residuals<'_>,
) -> Option<Vec<f64>> {
    let count = unknowns.len();
    let mut at = start.to_vec();
    let mut found = residuals(&at)?;
    let mut sum = squares(&found);
    let mut damping = 1e-3;
    for _ in 0..200 {
        let slopes = slopes(unknowns, &at, residuals)?;
        let normal = normal_matrix(&slopes, count);
        let mut downhill = vec![0.0; count];
        for (row, residual) in slopes.iter().zip(&found) {
            for (index, slope) in row.iter().enumerate() {
                downhill[index] -= slope * residual;
            }
        }
        let mut moved = false;
        while damping < 1e12 {
            let mut damped = normal.clone();
            for (index, row) in damped.iter_mut().enumerate() {
                row[index] += damping * row[index].max(1e-12);
            }
            let Some(step) = solve(&damped, &downhill) else {
                damping *= 10.0;
                continue;
            };
            if step.iter().all(|one| one.abs() < STILL) {
                break;
            }
            let guess: Vec<f64> = at
                .iter()
                .zip(unknowns)
                .zip(&step)
                .map(|((at, unknown), step)| {
                    (at + step * unknown.scale).clamp(unknown.range.0, unknown.range.1)
                })
                .collect();
            match residuals(&guess) {
                Some(next) if squares(&next) < sum => {
                    let gained = sum - squares(&next);
                    sum = squares(&next);
                    found = next;
                    at = guess;
                    damping = (damping * 0.2).max(1e-12);
                    moved = gained > 1e-12 * sum;
                    break;
                }
                _ => damping *= 5.0,
            }
        }
        if !moved {
            break;
        }
        damping = damping.min(1e6);
    }
    Some(at)
}

pub(super) fn squares(residuals: &[f64]) -> f64 {
    residuals.iter().map(|one| one * one).sum()
}

/// Solves a small linear system by elimination with pivots; none when it is singular.
#[allow(
    clippy::needless_range_loop,
    reason = "rows and columns by their numbers"
)]
pub(super) fn solve(matrix: &Matrix, right: &[f64]) -> Option<Vec<f64>> {
    let count = right.len();
    let mut rows: Vec<Vec<f64>> = matrix
        .iter()
        .zip(right)
        .map(|(row, right)| row.iter().copied().chain([*right]).collect())
        .collect();
    for column in 0..count {
        let pivot = (column..count)
            .max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs()))?;
        if rows[pivot][column] == 0.0 || !rows[pivot][column].is_finite() {
            return None;
        }
        rows.swap(column, pivot);
        for row in 0..count {
            if row == column {
                continue;
            }
            let factor = rows[row][column] / rows[column][column];
            for at in column..=count {
                let take = factor * rows[column][at];
                rows[row][at] -= take;
            }
        }
    }
    Some(
        (0..count)
            .map(|row| rows[row][count] / rows[row][row])
            .collect(),
    )
}

/// Eigenvalues, ascending, each with its vector, of a small symmetric matrix.
#[allow(
    clippy::needless_range_loop,
    reason = "rows and columns by their numbers"
)]
pub(super) fn eigen(matrix: &Matrix) -> Vec<(f64, Vec<f64>)> {
    let count = matrix.len();
    let mut a = matrix.clone();
    let mut vectors: Matrix = (0..count)
        .map(|i| (0..count).map(|j| if i == j { 1.0 } else { 0.0 }).collect())
        .collect();
    for _ in 0..100 {
        let mut off = 0.0;
        for i in 0..count {
            for j in i + 1..count {
                off += a[i][j] * a[i][j];
            }
        }
        let size: f64 = (0..count).map(|i| a[i][i] * a[i][i]).sum();
        if off <= 1e-30 * size {
            break;
        }
        for p in 0..count {
            for q in p + 1..count {
                if a[p][q] == 0.0 {
                    continue;
                }
                let theta = 0.5 * libm::atan2(2.0 * a[p][q], a[q][q] - a[p][p]);
                let (sine, cosine) = libm::sincos(theta);
                for row in &mut a {
                    let (x, y) = (row[p], row[q]);
                    row[p] = cosine * x - sine * y;
                    row[q] = sine * x + cosine * y;
                }
                for k in 0..count {
                    let (x, y) = (a[p][k], a[q][k]);
                    a[p][k] = cosine * x - sine * y;
                    a[q][k] = sine * x + cosine * y;
                }
                for row in &mut vectors {
                    let (x, y) = (row[p], row[q]);
                    row[p] = cosine * x - sine * y;
                    row[q] = sine * x + cosine * y;
                }
            }
        }
    }
    let mut pairs: Vec<(f64, Vec<f64>)> = (0..count)
        .map(|i| (a[i][i], vectors.iter().map(|row| row[i]).collect()))
        .collect();
    pairs.sort_by(|one, other| one.0.total_cmp(&other.0));
    pairs
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn eigenvalues_put_the_matrix_together_again() {
        let matrix = vec![
            vec![4.0, 1.0, -2.0],
            vec![1.0, 3.0, 0.5],
            vec![-2.0, 0.5, 1.5],
        ];
        let pairs = eigen(&matrix);
        assert!(pairs.windows(2).all(|pair| pair[0].0 <= pair[1].0));
        for i in 0..3 {
            for j in 0..3 {
                let sum: f64 = pairs.iter().map(|(value, v)| value * v[i] * v[j]).sum();
                assert!((sum - matrix[i][j]).abs() < 1e-12);
            }
        }
    }

    /// A model that steps through time is rough in its last digits; the fit must not stop at the first
    /// bump. The truth is 330, and the bumps are many times steeper than the slope.
    #[test]
    fn a_rough_model_is_fitted_all_the_same() {
        let model = |friction: f64, pressure: f64| {
            pressure * libm::exp(-friction / 2e3) + 3e-5 * libm::sin(3e3 * friction + pressure)
        };
        let unknowns = [Unknown {
            start: 100.0,
            range: (0.0, 3000.0),
            scale: 100.0,
        }];
        let fitted = fit(&unknowns, &[100.0], &|guess| {
            let at = |pressure| model(guess[0], pressure) - pressure * libm::exp(-330.0 / 2e3);
            Some([3.0, 3.5, 4.0, 4.5, 5.0].map(at).to_vec())
        })
        .unwrap();
        assert!((fitted[0] - 330.0).abs() < 0.5, "{fitted:?}");
    }

    /// Misra1a of the NIST Statistical Reference Datasets (nonlinear regression): certified values.
    #[test]
    fn a_reference_dataset_of_nist_is_fitted() {
        let data = [
            (10.07, 77.6),
            (14.73, 114.9),
            (17.94, 141.1),
            (23.93, 190.8),
            (29.61, 239.9),
            (35.18, 289.0),
            (40.02, 332.8),
            (44.82, 378.4),
            (50.76, 434.8),
            (55.05, 477.3),
            (61.01, 536.8),
            (66.40, 593.1),
            (75.47, 689.1),
            (81.78, 760.0),
        ];
        let unknowns = [
            Unknown {
                start: 500.0,
                range: (1.0, 1e4),
                scale: 500.0,
            },
            Unknown {
                start: 1e-4,
                range: (1e-9, 1.0),
                scale: 1e-4,
            },
        ];
        let fitted = fit(&unknowns, &[500.0, 1e-4], &|b| {
            Some(
                data.iter()
                    .map(|(y, x)| b[0] * (1.0 - libm::exp(-b[1] * x)) - y)
                    .collect(),
            )
        })
        .unwrap();
        assert!(
            (fitted[0] / 238.942_129_18 - 1.0).abs() < 1e-6,
            "{fitted:?}"
        );
        assert!(
            (fitted[1] / 5.501_564_318_1e-4 - 1.0).abs() < 1e-6,
            "{fitted:?}"
        );
    }
}
