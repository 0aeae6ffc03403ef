//! Techniques as the judge sees them: names, titles, where parameters belong, and answers, all asked of the
//! package that computes them.

use std::cell::RefCell;

use gagwright_mechanics::{
    AssessError, Assessment, Facet, FigureDescription, Inputs, Parameter, ParameterKind, Quantity,
    SetLimit, Technique,
};
use serde::Deserialize;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(raw_module = "../lookup.js")]
extern "C" {
    #[wasm_bindgen(catch)]
    fn outlines() -> Result<String, JsValue>;
    #[wasm_bindgen(catch)]
    fn assess_for_judge(technique: &str, inputs: &str, own: &str) -> Result<String, JsValue>;
}

#[derive(Deserialize)]
struct Outline {
    name: String,
    title: String,
    parameters: Vec<(String, String, Facet, Option<Quantity>)>,
}

/// A technique of the other package.
struct Elsewhere {
    name: &'static str,
    title: &'static str,
    parameters: &'static [Parameter],
}

thread_local! {
    /// Kept for as long as the page lives, as the registry's own are.
    static KNOWN: RefCell<Vec<&'static Elsewhere>> = const { RefCell::new(Vec::new()) };
}

/// The technique of that name.
pub fn find(name: &str) -> Option<&'static dyn Technique> {
    KNOWN.with_borrow_mut(|known| {
        if known.is_empty() {
            let outlines: Vec<Outline> = crate::parsed(&outlines().ok()?).ok()?;
            known.extend(
                outlines
                    .into_iter()
                    .map(|one| &*Box::leak(Box::new(elsewhere(one)))),
            );
        }
        let found = known.iter().find(|technique| technique.name == name);
        found.map(|technique| *technique as &dyn Technique)
    })
}

fn elsewhere(outline: Outline) -> Elsewhere {
    let parameters = outline.parameters.into_iter();
    let parameters = parameters.map(|(name, title, facet, quantity)| Parameter {
        name: name.leak(),
        title: title.leak(),
        facet,
        // What may be entered is judged where it is computed.
        kind: match quantity {
            Some(quantity) => ParameterKind::Number {
                quantity,
                default: None,
                min: f64::MIN,
                max: f64::MAX,
                tolerance: 0.0,
            },
            None => ParameterKind::Choice {
                options: &[],
                default: None,
            },
        },
        help: "",
    });
    Elsewhere {
        name: outline.name.leak(),
        title: outline.title.leak(),
        parameters: parameters.collect::<Vec<_>>().leak(),
    }
}

impl Technique for Elsewhere {
    fn name(&self) -> &'static str {
        self.name
    }

    fn title(&self) -> &'static str {
        self.title
    }

    fn summary(&self) -> &'static str {
        ""
    }

    fn parameters(&self) -> &'static [Parameter] {
        self.parameters
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &[]
    }

    fn assess(&self, inputs: &Inputs) -> Result<Assessment, AssessError> {
        self.assess_set(inputs, &[])
    }

    fn assess_set(&self, inputs: &Inputs, own: &[SetLimit]) -> Result<Assessment, AssessError> {
        let silent = |problem: String| AssessError::BadValue {
            name: "technique".to_owned(),
            problem,
        };
        let inputs = serde_json::to_string(inputs).map_err(|error| silent(error.to_string()))?;
        let own = serde_json::to_string(own).map_err(|error| silent(error.to_string()))?;
        let answer = assess_for_judge(self.name, &inputs, &own)
            .map_err(|_| silent("its computation did not answer; load the app again".to_owned()))?;
        crate::parsed::<Result<Assessment, AssessError>>(&answer)
            .map_err(|error| silent(error.to_string()))?
    }
}
