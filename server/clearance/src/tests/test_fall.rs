//! The tests' own technique, so that what is judged is clearance and not physics.

use gagwright_mechanics::{
    AssessError, Assessment, Bound, Check, Facet, FigureDescription, InputValue, Inputs, Limit,
    Parameter, ParameterKind, Quantity, Source, Standing, Status, Technique,
};

/// A fall whose one check depends on its height alone: within to 10 m, marginal to 12 m, exceeded above,
/// unknown when the height is left out. What stands at the anchor is in the rigging.
pub struct TestFall;

const PARAMETERS: [Parameter; 2] = [
    Parameter {
        name: "height",
        title: "Height",
        facet: Facet::Action,
        kind: ParameterKind::Number {
            quantity: Quantity::Length,
            default: None,
            min: 0.0,
            max: 100.0,
            tolerance: 0.1,
        },
        help: "From lip to catcher.",
    },
    Parameter {
        name: "anchor_load",
        title: "Anchor load",
        facet: Facet::Rigging,
        kind: ParameterKind::Number {
            quantity: Quantity::Force,
            default: Some(1000.0),
            min: 0.0,
            max: 1e6,
            tolerance: 0.0,
        },
        help: "At the anchor.",
    },
];

impl Technique for TestFall {
    fn name(&self) -> &'static str {
        "test-fall"
    }
    fn title(&self) -> &'static str {
        "Test fall"
    }
    fn summary(&self) -> &'static str {
        "For tests."
    }
    fn parameters(&self) -> &'static [Parameter] {
        &PARAMETERS
    }
    fn figures(&self) -> &'static [FigureDescription] {
        &[]
    }
    fn assess(&self, inputs: &Inputs) -> Result<Assessment, AssessError> {
        let height = match inputs.0.get("height") {
            Some(InputValue::Number { value, .. }) if (0.0..=100.0).contains(value) => Some(*value),
            None => None,
            Some(_) => {
                return Err(AssessError::BadValue {
                    name: "height".to_owned(),
                    problem: "give metres from 0 to 100".to_owned(),
                });
            }
        };
        let status = match height {
            None => Status::Unknown,
            Some(height) if height <= 10.0 => Status::Within,
            Some(height) if height <= 12.0 => Status::Marginal,
            Some(_) => Status::Exceeded,
        };
        let limit = Limit {
            bound: Bound::AtMost,
            value: 12.0,
            quantity: Quantity::Length,
        };
        let source = Source {
            document: "a test".to_owned(),
            clause: None,
            jurisdiction: None,
            standing: Standing::CommonPractice,
        };
        Ok(Assessment {
            technique: "test-fall".to_owned(),
            figures: Vec::new(),
            checks: vec![Check {
                name: "height_limit".to_owned(),
                title: "Height".to_owned(),
                figure: None,
                input: Some("height".to_owned()),
                value: height,
                low: height,
                high: height,
                limit,
                source,
                status,
                blocking: true,
                detail: "the catcher is rated to 12 m".to_owned(),
            }],
            traces: Vec::new(),
            zones: Vec::new(),
            cautions: Vec::new(),
        })
    }
}

pub fn find(name: &str) -> Option<&'static dyn Technique> {
    (name == "test-fall").then_some(&TestFall as &dyn Technique)
}
