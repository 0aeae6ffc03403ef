//! Figures held against limits. One rule for every technique, so that a status always means the same;
//! what the limits are is each technique's own.

use crate::{
    assessment::{Bound, Check, Limit, Source, Standing, Status},
    evaluation::Evaluation,
    units::Quantity,
};

/// Share of a limit that must be left over before a figure counts as within (house policy).
pub const RESERVE: f64 = 0.05;

/// What is held against a limit.
#[derive(Clone, Copy, Debug)]
pub enum Subject {
    /// A computed figure.
    Figure(&'static str),
    /// An input itself, with its tolerance.
    Input(&'static str),
}

/// A limit to hold something against.
pub struct Rule {
    /// Machine name of the check.
    pub name: &'static str,
    /// What people read.
    pub title: &'static str,
    /// What is held against the limit.
    pub subject: Subject,
    /// Its kind of quantity.
    pub quantity: Quantity,
    /// Which side is allowed.
    pub bound: Bound,
    /// The limit, SI.
    pub limit: f64,
    /// Who says so.
    pub source: Source,
    /// Whether exceeding it stops the gag.
    pub blocking: bool,
    /// Share of the limit to keep in hand: [`RESERVE`], or 0 for things that are counted.
    pub reserve: f64,
    /// Parameters it cannot be judged without.
    pub needs: &'static [&'static str],
}

/// A value with its interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Held {
    /// The value.
    pub value: f64,
    /// The low end of its interval.
    pub low: f64,
    /// The high end of its interval.
    pub high: f64,
}

/// Judges one rule. `detail` says, for a person, what was found and what would change it; an unknown
/// says instead which inputs are missing.
pub fn judge(evaluation: &Evaluation, rule: Rule, detail: impl FnOnce(&Held) -> String) -> Check {
    let (held, figure, input, whole) = match rule.subject {
        Subject::Figure(name) => (
            evaluation.figure(name).map(|f| Held {
                value: f.value,
                low: f.low,
                high: f.high,
            }),
            Some(name),
            None,
            evaluation.is_whole(name),
        ),
        Subject::Input(name) => (
            evaluation
                .values
                .number(name)
                .zip(evaluation.values.ends_of(name))
                .map(|(value, (low, high))| Held { value, low, high }),
            None,
            Some(name),
            true,
        ),
    };
    let missing = evaluation.values.missing(rule.needs);
    let limited = rule.limit.is_finite();
    let held = held.filter(|_| missing.is_empty() && limited);
    let (status, detail) = match &held {
        Some(held) => (
            status(rule.bound, held, rule.limit, rule.reserve, whole),
            detail(held),
        ),
        None if !limited => (
            Status::Unknown,
            "No limit is set for this; set one before relying on it.".to_owned(),
        ),
        None if missing.is_empty() => (
            Status::Unknown,
            "The model gives no answer for these inputs; see the cautions.".to_owned(),
        ),
        None => (
            Status::Unknown,
            format!("Not known until entered: {}.", missing.join(", ")),
        ),
    };
    Check {
        name: rule.name.to_owned(),
        title: rule.title.to_owned(),
        figure: figure.map(str::to_owned),
        input: input.map(str::to_owned),
        value: held.map(|held| held.value),
        low: held.map(|held| held.low),
        high: held.map(|held| held.high),
        limit: Limit {
            bound: rule.bound,
            value: if limited { rule.limit } else { 0.0 },
            quantity: rule.quantity,
        },
        source: rule.source,
        status,
        blocking: rule.blocking,
        detail,
    }
}

/// Exceeded when the value itself is outside; within when the whole interval is inside with the
/// reserve to spare; marginal in between, and at best when the interval is not whole.
pub fn status(bound: Bound, held: &Held, limit: f64, reserve: f64, whole: bool) -> Status {
    let spare = reserve * limit.abs();
    let (outside, inside) = match bound {
        Bound::AtMost => (held.value > limit, held.high <= limit - spare),
        Bound::AtLeast => (held.value < limit, held.low >= limit + spare),
    };
    if outside {
        Status::Exceeded
    } else if inside && whole {
        Status::Within
    } else {
        Status::Marginal
    }
}

impl Rule {
    /// A rule whose limit is a number of the plan itself. Blocking, with the usual reserve.
    pub fn planned(
        name: &'static str,
        title: &'static str,
        subject: Subject,
        quantity: Quantity,
        bound: Bound,
        limit: f64,
        needs: &'static [&'static str],
    ) -> Rule {
        Rule {
            name,
            title,
            subject,
            quantity,
            bound,
            limit,
            source: plan(),
            blocking: true,
            reserve: RESERVE,
            needs,
        }
    }

    /// The same limit by who else says so.
    #[must_use]
    pub fn by(self, source: Source) -> Rule {
        Rule { source, ..self }
    }

    /// A rule whose limit is habit or policy: the value and who set it are data, under the check's name.
    /// Blocking, with the usual reserve.
    pub fn policy(
        evaluation: &Evaluation,
        name: &'static str,
        title: &'static str,
        subject: Subject,
        bound: Bound,
        needs: &'static [&'static str],
    ) -> Rule {
        let policy = evaluation.policies.get(name);
        Rule {
            name,
            title,
            subject,
            quantity: policy.map_or(Quantity::Ratio, |policy| policy.quantity),
            bound,
            limit: policy.map_or(f64::NAN, |policy| policy.value),
            source: policy.map_or_else(common_practice, |policy| policy.source.clone()),
            blocking: true,
            reserve: RESERVE,
            needs,
        }
    }

    /// The same, as a caution for those who sign.
    #[must_use]
    pub fn cautionary(self) -> Rule {
        Rule {
            blocking: false,
            ..self
        }
    }

    /// The same where the limit has a tolerance of its own and may be as poor as this: what it may lose is kept in
    /// hand beside the reserve.
    #[must_use]
    pub fn at_poorest(self, poorest: f64) -> Rule {
        // A reserve is a share of the limit, which of nothing would be nothing.
        let limit = if self.limit.abs() < 1e-12 {
            1e-12
        } else {
            self.limit
        };
        Rule {
            limit,
            reserve: self.reserve + (limit - poorest).abs() / limit.abs(),
            ..self
        }
    }

    /// The same for things that are counted or stated exactly: no reserve is asked for.
    #[must_use]
    pub fn exact(self) -> Rule {
        Rule {
            reserve: 0.0,
            ..self
        }
    }
}

/// What the plan itself states.
pub fn plan() -> Source {
    Source {
        document: "the plan".to_owned(),
        standing: Standing::Plan,
        ..common_practice()
    }
}

/// A habit of the trade with no document behind it.
pub fn common_practice() -> Source {
    Source {
        document: "common practice".to_owned(),
        clause: None,
        jurisdiction: None,
        standing: Standing::CommonPractice,
    }
}

/// A published document.
pub fn published(document: &str, clause: &str, jurisdiction: Option<&str>) -> Source {
    Source {
        document: document.to_owned(),
        clause: (!clause.is_empty()).then(|| clause.to_owned()),
        jurisdiction: jurisdiction.map(str::to_owned),
        standing: Standing::Published,
    }
}

/// A published value quoted from memory.
pub fn from_memory(document: &str, clause: &str) -> Source {
    Source {
        standing: Standing::FromMemory,
        ..published(document, clause, None)
    }
}
