//! Figures with their intervals: a technique's computation run over its inputs' tolerances.
//!
//! The method, the same for every technique: the computation runs once at the stated values, then with
//! each toleranced input at each end of its tolerance, which shows what moves which figure and which
//! way. Then, for each figure, once with every input at the end that raises it and once with every
//! input at the end that lowers it. The interval is the span of all values seen. It is exact where a
//! figure rises or falls steadily with each input over its tolerance, and it is worst case: it does
//! not assume that errors cancel. Nothing here is random.

use core::cell::RefCell;

use crate::{
    assessment::Figure,
    limits::Policies,
    reading::Values,
    technique::{AssessError, FigureDescription},
};

/// The figures of one run. A figure that is not set is unknown.
#[derive(Clone, Debug, Default)]
pub struct Computed(Vec<(&'static str, f64)>);

impl Computed {
    /// No figures yet.
    pub fn new() -> Computed {
        Computed::default()
    }

    /// Sets a figure.
    pub fn set(&mut self, name: &'static str, value: f64) {
        self.0.push((name, value));
    }

    /// Sets a figure when it could be computed.
    pub fn set_if(&mut self, name: &'static str, value: Option<f64>) {
        if let Some(value) = value {
            self.set(name, value);
        }
    }

    /// The figures that were set, in the order they were.
    pub fn iter(&self) -> impl Iterator<Item = (&'static str, f64)> {
        self.0.iter().copied()
    }

    /// A figure's value.
    pub fn get(&self, name: &str) -> Option<f64> {
        self.0
            .iter()
            .find(|(set, _)| *set == name)
            .map(|(_, value)| *value)
    }
}

/// Checked inputs and the figures they give.
pub struct Evaluation {
    /// The inputs.
    pub values: Values,
    /// The figures that could be computed, in the order of the descriptions.
    pub figures: Vec<Figure>,
    /// The limits of habit or policy that these figures are held against.
    pub policies: Policies,
    /// Figures that some state within the tolerances does not give: their interval is not whole.
    open: Vec<&'static str>,
}

impl Evaluation {
    /// A figure by name.
    pub fn figure(&self, name: &str) -> Option<&Figure> {
        self.figures.iter().find(|figure| figure.name == name)
    }

    /// A figure's value by name.
    pub fn value(&self, name: &str) -> Option<f64> {
        self.figure(name).map(|figure| figure.value)
    }

    /// Whether a figure's interval covers every state within the tolerances.
    pub fn is_whole(&self, name: &str) -> bool {
        !self.open.contains(&name)
    }
}

/// Runs kept by a technique whose states share them. Over tolerances there are some dozens; where there
/// are thousands, none is like another, and looking through them all would cost more than it saves.
const MOST_KEPT: usize = 128;

/// Keeps a run for states to come.
pub(crate) fn keep<T>(kept: &RefCell<Vec<T>>, run: T) {
    let mut kept = kept.borrow_mut();
    if kept.len() < MOST_KEPT {
        kept.push(run);
    }
}

/// The most corner states looked at, so that the work is bounded whatever the number of figures. The
/// first figures are the most telling, so theirs come first; a figure past the bound gets the sum of
/// its single moves, which is the same where it is a straight line.
const MOST_CORNERS: usize = 32;

/// Runs `compute` over the tolerances.
///
/// # Errors
/// When the inputs together give a figure that is not a finite number.
pub fn over_tolerances(
    values: Values,
    descriptions: &'static [FigureDescription],
    compute: impl Fn(&Values) -> Computed,
) -> Result<Evaluation, AssessError> {
    let centre = compute(&values);
    let moving: Vec<(usize, f64, f64)> = (0..values.count())
        .filter_map(|index| values.ends(index).map(|(low, high)| (index, low, high)))
        .collect();
    let single: Vec<[Computed; 2]> = moving
        .iter()
        .map(|&(index, low, high)| {
            [low, high].map(|end| {
                let mut moved = values.clone();
                moved.set(index, end);
                compute(&moved)
            })
        })
        .collect();
    let mut corners: Vec<(Vec<i8>, Computed)> = Vec::new();
    let mut figures = Vec::new();
    let mut open = Vec::new();
    for description in descriptions {
        let name = description.name;
        let Some(value) = centre.get(name) else {
            continue;
        };
        if !value.is_finite() {
            return Err(AssessError::BadValue {
                name: name.to_owned(),
                problem: "these inputs together give no finite value for this figure; check the \
                          largest and smallest of them"
                    .to_owned(),
            });
        }
        let mut span = Span {
            low: value,
            high: value,
            whole: true,
        };
        for pair in &single {
            span.take(pair[0].get(name));
            span.take(pair[1].get(name));
        }
        for raise in [true, false] {
            let pattern = pattern(name, value, &single, raise);
            if pattern.iter().filter(|end| **end != 0).count() < 2 {
                // One input alone was seen already.
                continue;
            }
            let known = corners.iter().position(|(seen, _)| *seen == pattern);
            let at = match known {
                Some(at) => at,
                None if corners.len() < MOST_CORNERS => {
                    let mut moved = values.clone();
                    for (end, &(index, low, high)) in pattern.iter().zip(&moving) {
                        match end {
                            0 => {}
                            -1 => moved.set(index, low),
                            _ => moved.set(index, high),
                        }
                    }
                    corners.push((pattern, compute(&moved)));
                    corners.len() - 1
                }
                None => {
                    span.take(Some(summed(name, value, &single, raise)));
                    continue;
                }
            };
            span.take(corners[at].1.get(name));
        }
        if !span.whole {
            open.push(name);
        }
        figures.push(Figure {
            name: name.to_owned(),
            title: description.title.to_owned(),
            quantity: description.quantity,
            value,
            low: span.low,
            high: span.high,
        });
    }
    Ok(Evaluation {
        values,
        figures,
        policies: Policies::default(),
        open,
    })
}

struct Span {
    low: f64,
    high: f64,
    whole: bool,
}

impl Span {
    fn take(&mut self, value: Option<f64>) {
        match value {
            Some(value) if value.is_finite() => {
                self.low = self.low.min(value);
                self.high = self.high.max(value);
            }
            _ => self.whole = false,
        }
    }
}

/// Which end of each input raises (or lowers) a figure: -1 the low end, 1 the high end, 0 neither.
fn pattern(name: &str, value: f64, single: &[[Computed; 2]], raise: bool) -> Vec<i8> {
    // Moves below the rounding of the computation show nothing.
    let least = 1e-12 * value.abs();
    single
        .iter()
        .map(|pair| {
            let towards = |end: usize| {
                let moved = pair[end].get(name).unwrap_or(value) - value;
                if raise { moved } else { -moved }
            };
            let (low, high) = (towards(0), towards(1));
            if low <= least && high <= least {
                0
            } else if low > high {
                -1
            } else {
                1
            }
        })
        .collect()
}

fn summed(name: &str, value: f64, single: &[[Computed; 2]], raise: bool) -> f64 {
    let mut sum = value;
    for pair in single {
        let moves = pair
            .each_ref()
            .map(|end| end.get(name).unwrap_or(value) - value);
        sum += if raise {
            moves[0].max(moves[1]).max(0.0)
        } else {
            moves[0].min(moves[1]).min(0.0)
        };
    }
    sum
}
