//! What a technique is: a name, described parameters, and one pure function from inputs to an
//! [`Assessment`]. Forms, tables, plots and the command line are all drawn from the descriptions, so a
//! new technique needs no new screen.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::{
    assessment::{Assessment, Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation, over_tolerances},
    limits::{Limits, SetLimit},
    plan_part::Facet,
    reading::{Values, read},
    units::Quantity,
};

/// How a gag is done, and what that does to a body and to gear.
///
/// A technique describes itself, computes its figures from one state, and holds them against limits;
/// intervals and the assessment itself are the same for all. Something that only stands for a technique,
/// such as one that remembers its answers, needs no more than the descriptions and `assess`.
pub trait Technique: Send + Sync {
    /// Machine name in kebab case, for example `high-fall`.
    fn name(&self) -> &'static str;
    /// What people read, for example "High fall".
    fn title(&self) -> &'static str;
    /// One or two sentences: what the technique is and what the model covers and leaves out.
    fn summary(&self) -> &'static str;
    /// The inputs, in the order a person would fill them in.
    fn parameters(&self) -> &'static [Parameter];
    /// The figures that `assess` gives, the most telling first.
    fn figures(&self) -> &'static [FigureDescription];
    /// Parameters that logged test shots can settle: what a maker's sheet does not say and a measurement
    /// does. Numbers only.
    fn coefficients(&self) -> &'static [&'static str] {
        &[]
    }
    /// The limits that are habit or policy, as the JSON of `seed-data/catalogue/limits`.
    fn policy(&self) -> &'static str {
        "[]"
    }
    /// The computation of the figures of one state, made ready for many. `stated` is the plan itself, the
    /// same for every state: a scatter that the tolerances make is taken from it, so that it does not
    /// count twice, and work that states share is kept in between.
    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(|_| Computed::new())
    }
    /// The figures with their intervals. A technique with a figure that comes of the others'
    /// intervals says so here.
    ///
    /// # Errors
    /// When the inputs together give a figure that is not a finite number.
    fn evaluate(&self, values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        over_tolerances(values, self.figures(), &compute)
    }
    /// Figures and inputs held against limits.
    fn checks(&self, _: &Evaluation) -> Vec<Check> {
        Vec::new()
    }
    /// Time series for plotting.
    fn traces(&self, _: &Evaluation) -> Vec<Trace> {
        Vec::new()
    }
    /// Ground that must be clear.
    fn zones(&self, _: &Evaluation) -> Vec<Zone> {
        Vec::new()
    }
    /// What a reader must know about this very result.
    fn cautions(&self, _: &Evaluation) -> Vec<Caution> {
        Vec::new()
    }

    /// Figures, checks, traces, zones and cautions, under the limits that come with the program.
    ///
    /// Inputs that are left out take their parameter's default, except where the parameter has none:
    /// then whatever needs it is `unknown`.
    ///
    /// # Errors
    /// Names the parameter and says what is wrong, for values that are not finite, out of range, of
    /// the wrong kind, or not a parameter of this technique.
    fn assess(&self, inputs: &Inputs) -> Result<Assessment, AssessError> {
        self.assess_under(inputs, Limits::built_in())
    }

    /// As [`Technique::assess`], with some limits set by a production. What keeps or computes answers
    /// elsewhere answers this one too.
    ///
    /// # Errors
    /// As [`Technique::assess`].
    fn assess_set(&self, inputs: &Inputs, own: &[SetLimit]) -> Result<Assessment, AssessError> {
        match own {
            [] => self.assess(inputs),
            own => self.assess_under(inputs, &Limits::set(self.name(), own)),
        }
    }

    /// As [`Technique::assess`], under a production's own limits.
    ///
    /// # Errors
    /// As [`Technique::assess`].
    fn assess_under(&self, inputs: &Inputs, limits: &Limits) -> Result<Assessment, AssessError> {
        let values = read(self.name(), self.parameters(), inputs)?;
        let mut evaluation = self.evaluate(values)?;
        evaluation.policies = limits.of(self.name());
        Ok(Assessment {
            technique: self.name().to_owned(),
            checks: self.checks(&evaluation),
            traces: self.traces(&evaluation),
            zones: self.zones(&evaluation),
            cautions: self.cautions(&evaluation),
            figures: evaluation.figures,
        })
    }
}

/// From the values of one state to its figures; called like a function.
pub struct Computation {
    figures: Box<dyn Fn(&Values) -> Computed>,
    look_ahead: Box<LookAhead>,
}

/// Works out at once what states that come next need.
type LookAhead = dyn Fn(&[Values]);

impl Computation {
    /// Of a function.
    pub fn new(figures: impl Fn(&Values) -> Computed + 'static) -> Computation {
        Computation {
            figures: Box::new(figures),
            look_ahead: Box::new(|_| {}),
        }
    }

    /// The same where what states need is quicker to work out for some at once: `look_ahead` is shown states that come
    /// next, and keeps what it finds. Figures are the same without it.
    #[must_use]
    pub fn with_look_ahead(mut self, look_ahead: impl Fn(&[Values]) + 'static) -> Computation {
        self.look_ahead = Box::new(look_ahead);
        self
    }

    /// Shows it states that come next.
    pub fn look_ahead(&self, states: &[Values]) {
        (self.look_ahead)(states);
    }
}

impl core::ops::Deref for Computation {
    type Target = dyn Fn(&Values) -> Computed;

    fn deref(&self) -> &Self::Target {
        &*self.figures
    }
}

/// One input of a technique.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Parameter {
    /// Machine name in snake case, for example `drop_height`.
    pub name: &'static str,
    /// What people read.
    pub title: &'static str,
    /// The part of the plan it belongs to: who must sign again when it changes follows from this.
    pub facet: Facet,
    /// What may be entered.
    pub kind: ParameterKind,
    /// What to measure and how, in a sentence or two.
    pub help: &'static str,
}

impl Parameter {
    /// The smallest and largest number accepted; none for a choice.
    pub fn range(&self) -> Option<(f64, f64)> {
        match self.kind {
            ParameterKind::Number { min, max, .. } => Some((min, max)),
            ParameterKind::Choice { .. } => None,
        }
    }

    /// The kind of quantity; a choice has none and counts as a pure number.
    pub fn quantity(&self) -> Quantity {
        match self.kind {
            ParameterKind::Number { quantity, .. } => quantity,
            ParameterKind::Choice { .. } => Quantity::Ratio,
        }
    }
}

/// What may be entered for a parameter. All numbers SI.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ParameterKind {
    /// A number with a unit.
    Number {
        /// The kind of quantity.
        quantity: Quantity,
        /// The default; none where guessing would be dangerous.
        #[cfg_attr(feature = "openapi", schema(required = true))]
        default: Option<f64>,
        /// Smallest value accepted.
        min: f64,
        /// Largest value accepted.
        max: f64,
        /// Default tolerance, plus or minus, same unit.
        tolerance: f64,
    },
    /// One of a few named options.
    Choice {
        /// The options.
        options: &'static [Choice],
        /// The default's name; none where guessing would be dangerous.
        #[cfg_attr(feature = "openapi", schema(required = true))]
        default: Option<&'static str>,
    },
}

/// One option of a choice parameter.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Choice {
    /// Machine name.
    pub name: &'static str,
    /// What people read.
    pub title: &'static str,
}

/// What one figure is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct FigureDescription {
    /// Machine name.
    pub name: &'static str,
    /// What people read.
    pub title: &'static str,
    /// The kind of quantity.
    pub quantity: Quantity,
    /// What it means, in a sentence.
    pub help: &'static str,
}

/// Named inputs, SI.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(transparent)]
pub struct Inputs(pub BTreeMap<String, InputValue>);

/// One entered value: `{"value": 30.0, "tolerance": 0.2}` or the name of an option.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(untagged)]
pub enum InputValue {
    /// A number, SI.
    Number {
        /// The value.
        value: f64,
        /// Plus or minus; the parameter's own default when left out.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[cfg_attr(feature = "openapi", schema(nullable = false))]
        tolerance: Option<f64>,
    },
    /// An option's machine name.
    Choice(String),
}

/// Why inputs were refused. Every variant names the parameter and how to put it right.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, thiserror::Error)]
pub enum AssessError {
    /// No such parameter.
    #[error("{technique} has no parameter \"{name}\"; it has: {known}")]
    UnknownParameter {
        /// The technique's name.
        technique: String,
        /// What was given.
        name: String,
        /// The parameters there are, comma separated.
        known: String,
    },
    /// Not finite, out of range, or of the wrong kind.
    #[error("{name}: {problem}")]
    BadValue {
        /// The parameter.
        name: String,
        /// What is wrong, and what would be right.
        problem: String,
    },
}
