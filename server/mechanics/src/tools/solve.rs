//! Which input gives a wanted figure: every root in a range, by looking along it and closing in on each
//! change of sign with Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973).

use serde::{Deserialize, Serialize};

use super::{described, figures_of, numbered, refused, wording};
use crate::{
    reading::{Values, read},
    technique::{AssessError, Inputs, Parameter, Technique},
    units::{Quantity, say, say_range},
};

/// Places looked at along the range. Two roots closer together than one step may be missed, unless the
/// figure turns between them in plain sight.
const PLACES: usize = 160;
/// A root counts when the figure is this close to what was wanted, relative; to nothing, relative to how far
/// the figure goes over the range.
const CLOSE: f64 = 1e-6;

/// What is wanted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct SolveRequest {
    /// The plan's inputs.
    pub inputs: Inputs,
    /// The input that may move.
    pub parameter: String,
    /// The figure that is wanted.
    pub figure: String,
    /// Its wanted value, SI.
    pub wanted: f64,
    /// The least the input may be; its own least when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub from: Option<f64>,
    /// The most the input may be; its own most when left out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub to: Option<f64>,
}

/// The inputs that give it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Solution {
    /// The technique's name.
    pub technique: String,
    /// The input that moved.
    pub parameter: String,
    /// The figure.
    pub figure: String,
    /// Its wanted value, SI.
    pub wanted: f64,
    /// The start of the range that was searched.
    pub from: f64,
    /// Its end.
    pub to: f64,
    /// Every value of the input in the range that gives the wanted figure, ascending.
    pub roots: Vec<f64>,
    /// The least that the figure was over the range; none when it was never given.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub lowest: Option<f64>,
    /// The most.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub highest: Option<f64>,
    /// Why there is no root; empty when there is one.
    pub note: String,
}

/// Solves for an input.
///
/// # Errors
/// Names the field and what would be right.
pub fn solve_for(
    technique: &dyn Technique,
    request: &SolveRequest,
) -> Result<Solution, AssessError> {
    let figure = described(technique, &request.figure)?;
    let (index, parameter, (min, max)) = numbered(technique, "parameter", &request.parameter)?;
    let (from, to) = (request.from.unwrap_or(min), request.to.unwrap_or(max));
    if !request.wanted.is_finite() {
        return Err(refused(
            "wanted",
            "is not a finite number; give the figure you want",
        ));
    }
    let quantity = parameter.quantity();
    if !(from.is_finite() && to.is_finite() && min <= from && from < to && to <= max) {
        return Err(refused(
            "from",
            format!(
                "give a range that rises, within {}",
                say_range(quantity, min, max)
            ),
        ));
    }
    let mut values = read(technique.name(), technique.parameters(), &request.inputs)?;
    values.make_known(index, from);
    let mut search = Search {
        technique,
        values,
        index,
        figure: figure.name,
        wanted: request.wanted,
        least: 0.0,
    };
    let places = places(quantity, from, to);
    let mut seen: Vec<(f64, Option<f64>)> = places.iter().map(|x| (*x, search.off(*x))).collect();
    if quantity != Quantity::Count {
        seen = search.with_edges(&seen);
    }
    let given = || {
        seen.iter()
            .filter_map(|(_, off)| off.map(|off| off + request.wanted))
    };
    let lowest = given().reduce(f64::min);
    let highest = given().reduce(f64::max);
    let span = lowest
        .zip(highest)
        .map_or(0.0, |(lowest, highest)| highest - lowest);
    let size = if request.wanted == 0.0 {
        span
    } else {
        1e-6 * span
    };
    search.least = CLOSE * size.max(request.wanted.abs());
    let roots = if span == 0.0 {
        // What does not move cannot be moved to anything.
        Vec::new()
    } else if quantity == Quantity::Count {
        let hits = seen
            .iter()
            .filter(|(_, off)| off.is_some_and(|off| search.close(off)));
        hits.map(|(x, _)| *x).collect()
    } else {
        search.roots(&seen)
    };
    let note = match (roots.is_empty(), lowest, highest) {
        (false, _, _) => String::new(),
        (true, Some(lowest), Some(_)) if span == 0.0 => format!(
            "{} is {} for any {} from {} to {}.",
            wording::first_large(figure.title),
            say(figure.quantity, lowest),
            wording::first_small(parameter.title),
            say(quantity, from),
            say(quantity, to)
        ),
        (true, Some(lowest), Some(highest)) => format!(
            "{} does not become {} for {} from {} to {}: it goes from {} to {}.",
            wording::first_large(figure.title),
            say(figure.quantity, request.wanted),
            wording::first_small(parameter.title),
            say(quantity, from),
            say(quantity, to),
            say(figure.quantity, lowest),
            say(figure.quantity, highest)
        ),
        (true, _, _) => never_given(&search, parameter, figure.title),
    };
    Ok(Solution {
        technique: technique.name().to_owned(),
        parameter: parameter.name.to_owned(),
        figure: figure.name.to_owned(),
        wanted: request.wanted,
        from,
        to,
        roots,
        lowest,
        highest,
        note,
    })
}

fn never_given(search: &Search<'_>, moved: &Parameter, figure: &str) -> String {
    let missing: Vec<&str> = search
        .technique
        .parameters()
        .iter()
        .filter(|one| one.name != moved.name && !search.values.knows(one.name))
        .map(|one| one.title)
        .collect();
    if missing.is_empty() {
        format!(
            "{} is not given anywhere in this range.",
            wording::first_large(figure)
        )
    } else {
        format!(
            "{} is not given anywhere in this range; not entered: {}.",
            wording::first_large(figure),
            missing.join(", ")
        )
    }
}

/// The places to look at: evenly over the range, or by equal factors where it spans several sizes; every
/// whole number of a count, as far as they are few.
fn places(quantity: Quantity, from: f64, to: f64) -> Vec<f64> {
    if quantity == Quantity::Count {
        let first = f64::ceil(from);
        let count = (f64::floor(to) - first).clamp(0.0, 1000.0) as usize;
        return (0..=count).map(|step| first + step as f64).collect();
    }
    let steps = PLACES as f64;
    let mut places: Vec<f64> = (0..=PLACES)
        .map(|step| {
            let share = step as f64 / steps;
            if from > 0.0 && to / from > 50.0 {
                from * libm::pow(to / from, share)
            } else {
                from + (to - from) * share
            }
        })
        .collect();
    // The ends are the ends, whatever rounding says.
    places[0] = from;
    places[PLACES] = to;
    places
}

struct Search<'a> {
    technique: &'a dyn Technique,
    values: Values,
    index: usize,
    figure: &'static str,
    wanted: f64,
    /// How near counts as there.
    least: f64,
}

impl Search<'_> {
    /// How far the figure is from what is wanted.
    fn off(&self, x: f64) -> Option<f64> {
        let mut values = self.values.clone();
        values.set(self.index, x);
        let figure = figures_of(self.technique, &values).get(self.figure)?;
        Some(figure - self.wanted).filter(|off| off.is_finite())
    }

    fn close(&self, off: f64) -> bool {
        off.abs() <= self.least
    }

    /// The places with the last one that is given beside each one that is not: what the figure comes to there
    /// lies between two of them.
    fn with_edges(&self, seen: &[(f64, Option<f64>)]) -> Vec<(f64, Option<f64>)> {
        let mut all = Vec::with_capacity(seen.len());
        for (at, one) in seen.iter().enumerate() {
            all.push(*one);
            let Some(next) = seen.get(at + 1) else {
                continue;
            };
            let edge = match (one.1, next.1) {
                (Some(off), None) => self.edge((one.0, off), next.0),
                (None, Some(off)) => self.edge((next.0, off), one.0),
                _ => continue,
            };
            if edge.0 != one.0 && edge.0 != next.0 {
                all.push((edge.0, Some(edge.1)));
            }
        }
        all
    }

    /// The last place from `given` towards `none` at which the figure is given, by bisection.
    fn edge(&self, given: (f64, f64), none: f64) -> (f64, f64) {
        let (mut found, mut beyond) = (given, none);
        for _ in 0..50 {
            let middle = 0.5 * (found.0 + beyond);
            if middle == found.0 || middle == beyond {
                break;
            }
            match self.off(middle) {
                Some(off) => found = (middle, off),
                None => beyond = middle,
            }
        }
        found
    }

    fn roots(&self, seen: &[(f64, Option<f64>)]) -> Vec<f64> {
        let mut roots: Vec<f64> = Vec::new();
        let mut keep = |root: f64| {
            let apart = |known: &f64| (known - root).abs() > 1e-9 * root.abs().max(1e-9);
            if roots.iter().all(apart) {
                roots.push(root);
            }
        };
        for pair in seen.windows(2) {
            let [(a, Some(at_a)), (b, Some(at_b))] = *pair else {
                continue;
            };
            if at_a == 0.0 {
                keep(a);
            } else if at_b != 0.0
                && (at_a < 0.0) != (at_b < 0.0)
                && let Some(root) = self.between((a, at_a), (b, at_b))
            {
                keep(root);
            }
        }
        if let Some((x, Some(off))) = seen.last()
            && *off == 0.0
        {
            keep(*x);
        }
        for three in seen.windows(3) {
            let [(a, Some(at_a)), (b, Some(at_b)), (c, Some(at_c))] = *three else {
                continue;
            };
            let turns = at_b.abs() < at_a.abs() && at_b.abs() < at_c.abs();
            let one_side = (at_a < 0.0) == (at_c < 0.0) && (at_a < 0.0) == (at_b < 0.0);
            if !turns || !one_side || at_b == 0.0 {
                continue;
            }
            let Some((low, at_low)) = self.turn(a, b, c, at_b < 0.0) else {
                continue;
            };
            if (at_low < 0.0) != (at_b < 0.0) {
                // The figure dips through between two places: a root on either side of the dip.
                for (from, to) in [((a, at_a), (low, at_low)), ((low, at_low), (c, at_c))] {
                    if let Some(root) = self.between(from, to) {
                        keep(root);
                    }
                }
            } else if self.close(at_low) {
                keep(low);
            }
        }
        roots.sort_by(f64::total_cmp);
        roots
    }

    /// Where the figure comes nearest between `a` and `c`, by golden section.
    fn turn(&self, a: f64, b: f64, c: f64, below: bool) -> Option<(f64, f64)> {
        const GOLDEN: f64 = 0.381_966_011_250_105_1;
        let height = |off: f64| if below { -off } else { off };
        let (mut low, mut middle, mut high) = (a, b, c);
        let mut at = self.off(middle)?;
        for _ in 0..60 {
            let right = high - middle > middle - low;
            let next = if right {
                middle + GOLDEN * (high - middle)
            } else {
                middle - GOLDEN * (middle - low)
            };
            let found = self.off(next)?;
            if height(found) < height(at) {
                if right {
                    low = middle;
                } else {
                    high = middle;
                }
                (middle, at) = (next, found);
                if height(at) < 0.0 {
                    break;
                }
            } else if right {
                high = next;
            } else {
                low = next;
            }
        }
        Some((middle, at))
    }

    /// The root between two places on either side of it; none where the figure jumps over it.
    fn between(&self, one: (f64, f64), other: (f64, f64)) -> Option<f64> {
        let (mut a, mut at_a) = one;
        let (mut b, mut at_b) = other;
        if at_a.abs() < at_b.abs() {
            core::mem::swap(&mut a, &mut b);
            core::mem::swap(&mut at_a, &mut at_b);
        }
        let (mut c, mut at_c) = (a, at_a);
        let mut d = b - a;
        let mut halved = true;
        for _ in 0..200 {
            let least = 4.0 * f64::EPSILON * b.abs().max(f64::MIN_POSITIVE);
            if at_b == 0.0 || (b - a).abs() <= least {
                break;
            }
            let mut next = if at_a != at_c && at_b != at_c {
                a * at_b * at_c / ((at_a - at_b) * (at_a - at_c))
                    + b * at_a * at_c / ((at_b - at_a) * (at_b - at_c))
                    + c * at_a * at_b / ((at_c - at_a) * (at_c - at_b))
            } else {
                b - at_b * (b - a) / (at_b - at_a)
            };
            let quarter = 0.25 * (3.0 * a + b);
            let inside = (next - quarter) * (next - b) < 0.0;
            let before = if halved { b - c } else { c - d };
            if !inside || (next - b).abs() >= 0.5 * before.abs() || before.abs() < least {
                next = 0.5 * (a + b);
                halved = true;
            } else {
                halved = false;
            }
            let at_next = self.off(next)?;
            d = c;
            (c, at_c) = (b, at_b);
            if (at_a < 0.0) == (at_next < 0.0) {
                (a, at_a) = (next, at_next);
            } else {
                (b, at_b) = (next, at_next);
            }
            if at_a.abs() < at_b.abs() {
                core::mem::swap(&mut a, &mut b);
                core::mem::swap(&mut at_a, &mut at_b);
            }
        }
        self.close(at_b).then_some(b)
    }
}
