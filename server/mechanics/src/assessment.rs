//! What a technique answers: figures, checks, traces, zones and cautions. Values only; no physics.

use serde::{Deserialize, Serialize};

use crate::units::Quantity;

/// Everything a technique has to say about one set of inputs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Assessment {
    /// The technique's name, for example `high-fall`.
    pub technique: String,
    /// Computed numbers, the most telling first.
    pub figures: Vec<Figure>,
    /// Figures held against limits.
    pub checks: Vec<Check>,
    /// Time series for plotting.
    pub traces: Vec<Trace>,
    /// Ground that must be clear.
    pub zones: Vec<Zone>,
    /// What a reader must know about this very result.
    pub cautions: Vec<Caution>,
}

/// One computed number with its interval.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Figure {
    /// Machine name, unique in the assessment, for example `impact_speed`.
    pub name: String,
    /// What people read, for example "Impact speed".
    pub title: String,
    /// What kind of quantity, which fixes the SI unit of the numbers.
    pub quantity: Quantity,
    /// The value, SI.
    pub value: f64,
    /// Lower end of the interval that the inputs' tolerances span, SI.
    pub low: f64,
    /// Upper end of that interval, SI.
    pub high: f64,
}

/// A limit held against a figure.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Check {
    /// Machine name, unique in the assessment.
    pub name: String,
    /// What people read: what is being held against what.
    pub title: String,
    /// The figure's name, where the check is about one figure.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub figure: Option<String>,
    /// The parameter's name, where the check is about an input itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub input: Option<String>,
    /// The figure's value when it was checked, SI; none when an input it needs is unknown.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub value: Option<f64>,
    /// Low end of the figure's interval, SI.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub low: Option<f64>,
    /// High end of the figure's interval, SI.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub high: Option<f64>,
    /// The limit.
    pub limit: Limit,
    /// Who says so.
    pub source: Source,
    /// The outcome.
    pub status: Status,
    /// Whether exceeding it stops the gag (true) or is a caution for those who sign (false).
    pub blocking: bool,
    /// One sentence for a person: what was found, and what would change it.
    pub detail: String,
}

/// A bound on a quantity, SI.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Limit {
    /// Which side is allowed.
    pub bound: Bound,
    /// The limit's value, SI.
    pub value: f64,
    /// The kind of quantity.
    pub quantity: Quantity,
}

/// Which side of a limit is allowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Bound {
    /// The figure may be at most the limit.
    AtMost,
    /// The figure must be at least the limit.
    AtLeast,
}

/// Where a limit comes from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Source {
    /// The document, or "common practice".
    pub document: String,
    /// Clause, table or section, where one is known.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub clause: Option<String>,
    /// Where it applies, if anywhere in particular.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub jurisdiction: Option<String>,
    /// How far the value can be leaned on.
    pub standing: Standing,
}

/// How far a limit's value can be leaned on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// Read in a public text of the document named.
    Published,
    /// A published value quoted from memory: read it again before relying on it.
    FromMemory,
    /// A habit of the trade with no document behind it, as it comes with the program.
    CommonPractice,
    /// What the production set in place of the habit.
    Production,
    /// What the plan itself states: a person's measurement, mark or choice.
    Plan,
}

/// The outcome of a check. Missing evidence is never `Within`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Status {
    /// The whole interval is inside the limit with the reserve to spare.
    Within,
    /// The interval straddles the limit, or the margin is under the reserve.
    Marginal,
    /// An input is not known, so nothing can be said.
    Unknown,
    /// The value is outside the limit.
    Exceeded,
}

/// Curves over one axis, for plotting.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Trace {
    /// Machine name.
    pub name: String,
    /// What people read.
    pub title: String,
    /// The axis, usually time or distance.
    pub x: Series,
    /// One or more curves, each as long as `x`.
    pub y: Vec<Series>,
}

/// A named run of numbers.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Series {
    /// What people read.
    pub title: String,
    /// The kind of quantity of the numbers.
    pub quantity: Quantity,
    /// The numbers, SI. At most 400 points, so that a phone can plot and keep them.
    pub values: Vec<f64>,
}

/// Ground that must be clear. Metres, in the plane of the ground; x points along the action.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Zone {
    /// Machine name.
    pub name: String,
    /// What people read, for example "Landing ellipse, 99 %".
    pub title: String,
    /// The outline.
    pub shape: Shape,
    /// Why it must be clear.
    pub reason: String,
}

/// An outline on the ground, metres.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Shape {
    /// An ellipse with axes along x and y.
    Ellipse {
        /// Centre, along the action.
        x: f64,
        /// Centre, across it.
        y: f64,
        /// Half axis along.
        half_x: f64,
        /// Half axis across.
        half_y: f64,
    },
    /// A rectangle with sides along x and y.
    Rectangle {
        /// Near edge.
        x0: f64,
        /// Far edge.
        x1: f64,
        /// Left edge.
        y0: f64,
        /// Right edge.
        y1: f64,
    },
}

/// A sentence a reader must see beside this result.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Caution {
    /// Machine name.
    pub name: String,
    /// The sentence, specific to the result.
    pub text: String,
}
