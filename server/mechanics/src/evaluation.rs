//! Figures with their intervals: a technique's computation run over its inputs' tolerances.
//!
//! The method, the same for every technique: the computation runs once at the stated values, then with
//! each toleranced input at each end of its tolerance, which shows what moves which figure and which
//! way. Then, for each figure, once with every input at the end that raises it and once with every
//! input at the end that lowers it. The interval is the span of all values seen, in whichever state and
//! for whichever figure it was looked at. It is exact where a figure rises or falls steadily with each
//! input over its tolerance, and it is worst case: it does not assume that errors cancel. A technique whose
//! figures turn within the tolerances names the states to look at besides; one with a figure that is the size
//! of a difference gives the difference itself as a guide, by which inputs that seem to do the same are told
//! apart. Nothing here is random.

use core::cell::RefCell;

use crate::{
    assessment::Figure,
    limits::Policies,
    reading::Values,
    technique::{AssessError, Computation, FigureDescription},
};

/// The figures of one run. A figure that is not set is unknown.
#[derive(Clone, Debug, Default)]
pub struct Computed {
    figures: Vec<(&'static str, f64)>,
    guides: Vec<(&'static str, f64)>,
}

impl Computed {
    /// No figures yet.
    pub fn new() -> Computed {
        Computed::default()
    }

    /// Sets a figure.
    pub fn set(&mut self, name: &'static str, value: f64) {
        self.figures.push((name, value));
    }

    /// Sets a guide: a quantity that is no figure but by whose sign figures turn. At balance both ends of
    /// every input raise |a - b| alike, and only a - b tells which of them do so together.
    pub fn guide(&mut self, name: &'static str, value: f64) {
        self.guides.push((name, value));
    }

    /// Sets a figure when it could be computed.
    pub fn set_if(&mut self, name: &'static str, value: Option<f64>) {
        if let Some(value) = value {
            self.set(name, value);
        }
    }

    /// A figure's value.
    pub fn get(&self, name: &str) -> Option<f64> {
        found(&self.figures, name)
    }

    /// Each figure that was set, with its place among the descriptions. A technique sets its figures in the same
    /// order nearly every time, so each is looked for after the one before.
    pub(crate) fn placed(
        &self,
        descriptions: &[FigureDescription],
    ) -> impl Iterator<Item = (usize, f64)> {
        let mut next = 0;
        self.figures.iter().filter_map(move |(name, value)| {
            let is = |at: &usize| descriptions.get(*at).is_some_and(|one| one.name == *name);
            let at = Some(next)
                .filter(is)
                .or_else(|| (0..descriptions.len()).find(is))?;
            next = at + 1;
            Some((at, *value))
        })
    }
}

/// One state's run, its figures in the order of the descriptions.
struct State {
    figures: Vec<Option<f64>>,
    guides: Vec<(&'static str, f64)>,
}

impl State {
    fn of(computed: Computed, descriptions: &[FigureDescription]) -> State {
        let mut figures = vec![None; descriptions.len()];
        for (at, value) in computed.placed(descriptions) {
            figures[at] = Some(value);
        }
        State {
            figures,
            guides: computed.guides,
        }
    }
}

fn found(among: &[(&'static str, f64)], name: &str) -> Option<f64> {
    among
        .iter()
        .find(|(set, _)| *set == name)
        .map(|(_, value)| *value)
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

/// Runs of a technique, each worked out once.
pub(crate) struct Memory<K, V> {
    kept: RefCell<Vec<(K, V)>>,
    /// What was worked out ahead when no more is kept, until the next look ahead.
    ahead: RefCell<Vec<(K, V)>>,
}

impl<K, V> Default for Memory<K, V> {
    fn default() -> Self {
        Memory {
            kept: RefCell::default(),
            ahead: RefCell::default(),
        }
    }
}

impl<K: Clone + PartialEq, V: Clone> Memory<K, V> {
    /// What a setup comes to, worked out unless it was.
    pub(crate) fn get(&self, setup: &K, run: impl FnOnce(&K) -> V) -> V {
        self.find(setup).unwrap_or_else(|| {
            let found = run(setup);
            keep(&self.kept, (setup.clone(), found.clone()));
            found
        })
    }

    /// Works out at once what is asked for next.
    pub(crate) fn look_ahead(&self, setups: Vec<K>, run: impl FnOnce(&[K]) -> Vec<V>) {
        let mut new: Vec<K> = Vec::with_capacity(setups.len());
        for setup in setups {
            if self.find(&setup).is_none() && !new.contains(&setup) {
                new.push(setup);
            }
        }
        let found = run(&new);
        let mut ahead = self.ahead.borrow_mut();
        ahead.clear();
        for found in new.into_iter().zip(found) {
            if self.kept.borrow().len() < MOST_KEPT {
                keep(&self.kept, found);
            } else {
                ahead.push(found);
            }
        }
    }

    fn find(&self, setup: &K) -> Option<V> {
        let find = |among: &RefCell<Vec<(K, V)>>| {
            let among = among.borrow();
            let found = among.iter().find(|(known, _)| known == setup);
            found.map(|(_, found)| found.clone())
        };
        find(&self.ahead).or_else(|| find(&self.kept))
    }
}

/// A state that a technique knows to be telling: which end each named input is at, -1 the low, 1 the high.
pub type Ends = [(&'static str, i8)];

/// Runs a computation over the tolerances.
///
/// # Errors
/// When the inputs together give a figure that is not a finite number.
pub fn over_tolerances(
    values: Values,
    descriptions: &'static [FigureDescription],
    compute: &Computation,
) -> Result<Evaluation, AssessError> {
    over_tolerances_and(values, descriptions, &[], compute)
}

/// The same, looking besides at states that the technique names: where a figure turns within the tolerances,
/// single moves from the plan lead the search the wrong way.
///
/// # Errors
/// When the inputs together give a figure that is not a finite number.
pub fn over_tolerances_and(
    values: Values,
    descriptions: &'static [FigureDescription],
    named: &[&Ends],
    computation: &Computation,
) -> Result<Evaluation, AssessError> {
    let compute = |values: &Values| State::of(computation(values), descriptions);
    let centre = compute(&values);
    let moving: Vec<(usize, f64, f64)> = (0..values.count())
        .filter_map(|index| values.ends(index).map(|(low, high)| (index, low, high)))
        .collect();
    let single: Vec<[State; 2]> = moving
        .iter()
        .map(|&(index, low, high)| {
            let ends = [low, high].map(|end| {
                let mut moved = values.clone();
                moved.set(index, end);
                moved
            });
            computation.look_ahead(&ends);
            [compute(&ends[0]), compute(&ends[1])]
        })
        .collect();
    let corner = |pattern: &[i8]| {
        let mut moved = values.clone();
        for (end, &(index, low, high)) in pattern.iter().zip(&moving) {
            match end {
                0 => {}
                -1 => moved.set(index, low),
                _ => moved.set(index, high),
            }
        }
        compute(&moved)
    };
    let is_new = |pattern: &Vec<i8>, corners: &[(Vec<i8>, State)]| {
        // One input alone was seen already.
        pattern.iter().filter(|end| **end != 0).count() > 1
            && corners.iter().all(|(seen, _)| seen != pattern)
    };
    let mut corners: Vec<(Vec<i8>, State)> = Vec::new();
    for ends in named {
        let pattern: Vec<i8> = moving
            .iter()
            .map(|(moved, _, _)| {
                let at = |name: &str| values.index_of(name) == Some(*moved);
                let known = ends.iter().find(|(name, _)| at(name));
                known.map_or(0, |(_, end)| *end)
            })
            .collect();
        if is_new(&pattern, &corners) {
            let state = corner(&pattern);
            corners.push((pattern, state));
        }
    }
    let guides = guides(&centre, &single);
    for guide in &guides {
        for pattern in [guide.clone(), guide.iter().map(|end| -end).collect()] {
            if is_new(&pattern, &corners) {
                let state = corner(&pattern);
                corners.push((pattern, state));
            }
        }
    }
    let told = corners.len();
    let mut spans = Vec::new();
    for (figure, description) in descriptions.iter().enumerate() {
        let Some(value) = centre.figures[figure] else {
            continue;
        };
        if !value.is_finite() {
            return Err(AssessError::BadValue {
                name: description.name.to_owned(),
                problem: "these inputs together give no finite value for this figure; check the \
                          largest and smallest of them"
                    .to_owned(),
            });
        }
        let span = Span {
            low: value,
            high: value,
            whole: true,
        };
        let moved = |state: &State| state.figures[figure] != Some(value);
        let guided = corners[..told].iter().any(|(_, state)| moved(state));
        for raise in [true, false] {
            let (plain, told_apart) = pattern(figure, value, &single, raise);
            let mut patterns = Vec::new();
            for guide in guides.iter().filter(|_| guided) {
                patterns.extend(turned(&plain, &told_apart, guide));
            }
            patterns.push(plain);
            for pattern in patterns {
                if is_new(&pattern, &corners) {
                    let state = corner(&pattern);
                    corners.push((pattern, state));
                }
            }
        }
        spans.push((figure, value, span));
    }
    let mut figures = Vec::new();
    let mut open = Vec::new();
    for (figure, value, mut span) in spans {
        let description = &descriptions[figure];
        let states = single.iter().flatten();
        for state in states.chain(corners.iter().map(|(_, state)| state)) {
            span.take(state.figures[figure]);
        }
        if !span.whole {
            open.push(description.name);
        }
        figures.push(Figure {
            name: description.name.to_owned(),
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

/// Which end of each input raises (or lowers) a figure, -1 the low end, 1 the high end, 0 neither; and
/// whether that tells the ends apart: not where neither moves it or both move it the same way.
fn pattern(figure: usize, value: f64, single: &[[State; 2]], raise: bool) -> (Vec<i8>, Vec<bool>) {
    // Moves below the rounding of the computation show nothing.
    let least = 1e-12 * value.abs();
    single
        .iter()
        .map(|pair| {
            let towards = |end: usize| {
                let moved = pair[end].figures[figure].unwrap_or(value) - value;
                if raise { moved } else { -moved }
            };
            let (low, high) = (towards(0), towards(1));
            if low <= least && high <= least {
                (0, low.abs() > least || high.abs() > least)
            } else {
                (if low > high { -1 } else { 1 }, low.min(high) <= 0.0)
            }
        })
        .unzip()
}

/// Which end of each input raises each guide.
fn guides(centre: &State, single: &[[State; 2]]) -> Vec<Vec<i8>> {
    let of = |state: &State, name: &str| found(&state.guides, name);
    let guide = |&(name, value): &(&str, f64)| {
        let ends = single.iter().map(|pair| {
            let [low, high] = pair
                .each_ref()
                .map(|end| of(end, name).unwrap_or(value) - value);
            match high.total_cmp(&low) {
                _ if high == low => 0,
                core::cmp::Ordering::Greater => 1,
                _ => -1,
            }
        });
        ends.collect()
    };
    centre.guides.iter().map(guide).collect()
}

/// The pattern with the inputs that it does not tell apart moved as the guide goes, one way and the other.
/// None where the pattern tells apart all that move the guide.
fn turned(plain: &[i8], told_apart: &[bool], guide: &[i8]) -> Vec<Vec<i8>> {
    let open = |at: usize| !told_apart[at] && guide[at] != 0;
    if !(0..plain.len()).any(open) {
        return Vec::new();
    }
    [1, -1]
        .map(|way| {
            let end = |at: usize| if open(at) { way * guide[at] } else { plain[at] };
            (0..plain.len()).map(end).collect()
        })
        .to_vec()
}
