//! Figures, checks, curves and zones, as strings to print and numbers to draw.

use serde::{Deserialize, Serialize};

use super::State;

/// One computed number.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct FigureRow {
    /// What it is, for example "Impact speed".
    pub title: String,
    /// The value in metric units, for example "16.6 m/s".
    pub metric: String,
    /// The interval that the inputs' tolerances span, metric.
    pub interval_metric: String,
    /// The value in imperial units.
    pub imperial: String,
    /// The interval, imperial.
    pub interval_imperial: String,
}

/// A figure held against a limit.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct CheckRow {
    /// What is held against what.
    pub title: String,
    /// The value found, with its interval; empty when it is not known.
    pub value: String,
    /// The limit, for example "at most 8 m/s (26 ft/s)".
    pub limit: String,
    /// Who says so: document, clause and jurisdiction, or "common practice".
    pub source: String,
    /// How far the limit can be leaned on: "published", "from memory", "common practice".
    pub standing: String,
    /// Within, marginal, unknown or exceeded.
    pub state: State,
    /// Whether exceeding it stops the gag.
    pub blocking: bool,
    /// One sentence: what was found and what would change it.
    pub detail: String,
}

/// Curves over one axis, in the units of the labels.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Plot {
    /// What it shows.
    pub title: String,
    /// The axis below, with its unit: "Time (s)".
    pub x_label: String,
    /// The axis at the side, with its unit: "Speed (m/s)".
    pub y_label: String,
    /// Positions on the axis below.
    pub x: Vec<f64>,
    /// The curves. Each is drawn with its own dash, so that they differ in monochrome too.
    pub curves: Vec<Curve>,
    /// Limits, drawn as lines across.
    pub limits: Vec<PlotLimit>,
    /// A sentence under the plot.
    pub caption: String,
}

/// One curve.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Curve {
    /// What it is.
    pub label: String,
    /// Its values, one for each position; a value that is not finite leaves a gap.
    pub values: Vec<f64>,
}

/// A line across a plot.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct PlotLimit {
    /// What it is, with its value.
    pub label: String,
    /// Where.
    pub value: f64,
}

/// Ground that must be clear.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ZoneRow {
    /// What it is.
    pub title: String,
    /// How large, in words, metric and imperial.
    pub extent: String,
    /// Why it must be clear.
    pub reason: String,
    /// The outline for the map; none: it is listed and not drawn.
    pub shape: Option<ZoneShape>,
}

/// An outline on the ground, metres; x along the action, y across it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ZoneShape {
    /// An ellipse with axes along x and y.
    Ellipse {
        /// Centre, along.
        x: f64,
        /// Centre, across.
        y: f64,
        /// Half axis along.
        half_x: f64,
        /// Half axis across.
        half_y: f64,
    },
    /// A rectangle.
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
