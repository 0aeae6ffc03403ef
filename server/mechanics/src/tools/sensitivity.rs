//! What moves a figure: each input taken alone to both ends of its tolerance, ranked.

use serde::{Deserialize, Serialize};

use super::described;
use crate::{
    reading::read,
    technique::{AssessError, Inputs, Technique},
    units::Quantity,
};

/// Which figure to explain.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct SensitivityRequest {
    /// The plan's inputs.
    pub inputs: Inputs,
    /// The figure's machine name.
    pub figure: String,
}

/// What moves a figure, most first.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Sensitivity {
    /// The technique's name.
    pub technique: String,
    /// The figure's name.
    pub figure: String,
    /// The figure's title.
    pub title: String,
    /// Its kind of quantity.
    pub quantity: Quantity,
    /// Its value at the stated inputs, SI; none when they do not give it.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub value: Option<f64>,
    /// One bar for each input that moves it, the longest first.
    pub bars: Vec<Bar>,
}

/// How far one input's tolerance moves a figure.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Bar {
    /// The input's machine name.
    pub parameter: String,
    /// The input's title.
    pub title: String,
    /// The figure with the input at the low end of its tolerance; none when it is not given there.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub at_low: Option<f64>,
    /// The figure with the input at the high end.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub at_high: Option<f64>,
    /// From the lowest to the highest of these and the stated value.
    pub swing: f64,
    /// Its part in the sum of all squared swings.
    pub share: f64,
}

/// Explains a figure.
///
/// # Errors
/// Names the field and what would be right.
pub fn sensitivity(
    technique: &dyn Technique,
    request: &SensitivityRequest,
) -> Result<Sensitivity, AssessError> {
    let figure = described(technique, &request.figure)?;
    let values = read(technique.name(), technique.parameters(), &request.inputs)?;
    let compute = technique.prepare(&values);
    let given = |value: Option<f64>| value.filter(|value| value.is_finite());
    let value = given(compute(&values).get(figure.name));
    let mut bars = Vec::new();
    for (index, parameter) in technique.parameters().iter().enumerate() {
        let (Some(value), Some((low, high))) = (value, values.ends(index)) else {
            continue;
        };
        let at = |end: f64| {
            let mut moved = values.clone();
            moved.set(index, end);
            given(compute(&moved).get(figure.name))
        };
        let (at_low, at_high) = (at(low), at(high));
        let seen = [Some(value), at_low, at_high];
        let (least, most) = seen
            .iter()
            .flatten()
            .fold((value, value), |(least, most), one| {
                (least.min(*one), most.max(*one))
            });
        let swing = most - least;
        if swing > 1e-12 * value.abs() || at_low.is_none() || at_high.is_none() {
            bars.push(Bar {
                parameter: parameter.name.to_owned(),
                title: parameter.title.to_owned(),
                at_low,
                at_high,
                swing,
                share: 0.0,
            });
        }
    }
    let total: f64 = bars.iter().map(|bar| bar.swing * bar.swing).sum();
    if total > 0.0 {
        for bar in &mut bars {
            bar.share = bar.swing * bar.swing / total;
        }
    }
    // A stable sort: inputs that move it alike stay in the order of the form.
    bars.sort_by(|one, other| other.swing.total_cmp(&one.swing));
    Ok(Sensitivity {
        technique: technique.name().to_owned(),
        figure: figure.name.to_owned(),
        title: figure.title.to_owned(),
        quantity: figure.quantity,
        value,
        bars,
    })
}
