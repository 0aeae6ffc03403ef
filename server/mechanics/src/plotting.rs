//! Time series cut down to what a phone can plot and keep.

use crate::{
    assessment::{Series, Trace},
    units::Quantity,
};

/// The most points of a trace.
pub(crate) const MOST_POINTS: usize = 400;

/// Samples of several curves over one axis, thinned as they are turned into a trace.
pub(crate) struct Recorder<const N: usize> {
    rows: Vec<(f64, [f64; N])>,
}

impl<const N: usize> Recorder<N> {
    pub fn new() -> Recorder<N> {
        Recorder { rows: Vec::new() }
    }

    pub fn push(&mut self, x: f64, y: [f64; N]) {
        self.rows.push((x, y));
    }

    pub fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// The trace. When there are too many samples, each run of neighbours gives the one that strays
    /// furthest from the run's first, so that a short peak is never lost.
    pub fn trace(
        &self,
        name: &str,
        title: &str,
        x: (&str, Quantity),
        curves: [(&str, Quantity); N],
    ) -> Trace {
        let rows = self.thinned();
        let series = |title: &str, quantity, values| Series {
            title: title.to_owned(),
            quantity,
            values,
        };
        Trace {
            name: name.to_owned(),
            title: title.to_owned(),
            x: series(x.0, x.1, rows.iter().map(|row| row.0).collect()),
            y: curves
                .iter()
                .enumerate()
                .map(|(i, (title, quantity))| {
                    series(title, *quantity, rows.iter().map(|row| row.1[i]).collect())
                })
                .collect(),
        }
    }

    fn thinned(&self) -> Vec<(f64, [f64; N])> {
        let count = self.rows.len();
        if count <= MOST_POINTS {
            return self.rows.clone();
        }
        // First and last always stay; between them every bucket gives one row.
        let buckets = MOST_POINTS - 2;
        let inner = count - 2;
        let mut kept = vec![self.rows[0]];
        let spans: [f64; N] = core::array::from_fn(|i| {
            let values = self.rows.iter().map(|row| row.1[i]);
            let (low, high) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| {
                (l.min(v), h.max(v))
            });
            (high - low).max(1e-300)
        });
        for bucket in 0..buckets {
            let from = 1 + bucket * inner / buckets;
            let to = 1 + (bucket + 1) * inner / buckets;
            let base = kept[kept.len() - 1].1;
            let stray = |row: &(f64, [f64; N])| {
                (0..N)
                    .map(|i| (row.1[i] - base[i]).abs() / spans[i])
                    .fold(0.0_f64, f64::max)
            };
            let mut chosen = self.rows[from];
            for row in &self.rows[from..to] {
                if stray(row) > stray(&chosen) {
                    chosen = *row;
                }
            }
            kept.push(chosen);
        }
        kept.push(self.rows[count - 1]);
        kept
    }
}
