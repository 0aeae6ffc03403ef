//! Techniques and the tools that work on them, bound to WebAssembly: a package of its own, so that the
//! rules of who signs what stay small and the two load side by side.
//!
//! Every function takes and returns JSON text. An error is thrown as an `Error` whose message says what is
//! wrong and what would be right. Nothing is computed here: each function decodes, makes one call, encodes.
#![allow(unsafe_code)] // Only for what `#[wasm_bindgen]` expands to.

use std::fmt::Display;

use gagwright_mechanics::{
    AssessError, Facet, Inputs, ParameterKind, Quantity, SetLimit, Technique, tools,
};
use serde::{Serialize, de::DeserializeOwned};
use wasm_bindgen::prelude::*;

type Answer<T> = Result<T, JsError>;

/// Every technique with its parameters and figures.
#[wasm_bindgen]
pub fn techniques() -> Answer<String> {
    write(&gagwright_mechanics::descriptions())
}

/// Figures, checks, traces, zones and cautions for a technique's inputs.
#[wasm_bindgen]
pub fn assess(technique: &str, inputs: &str) -> Answer<String> {
    let inputs: Inputs = read(inputs)?;
    write(&find(technique)?.assess(&inputs).map_err(thrown)?)
}

/// As [`assess`] with the limits that a production set, for the judge in the other package: the answer or
/// the refusal, as one document.
#[wasm_bindgen]
pub fn assess_for_judge(technique: &str, inputs: &str, own: &str) -> Answer<String> {
    let inputs: Inputs = read(inputs)?;
    let own: Vec<SetLimit> = read(own)?;
    write(&find(technique)?.assess_set(&inputs, &own))
}

/// What the judge must know of a technique besides its answers.
#[derive(Serialize)]
struct Outline {
    name: &'static str,
    title: &'static str,
    parameters: Vec<(&'static str, &'static str, Facet, Option<Quantity>)>,
}

/// The outlines of all techniques.
#[wasm_bindgen]
pub fn outlines() -> Answer<String> {
    let outline = |technique: &&'static dyn Technique| Outline {
        name: technique.name(),
        title: technique.title(),
        parameters: technique
            .parameters()
            .iter()
            .map(|one| {
                let quantity = match one.kind {
                    ParameterKind::Number { quantity, .. } => Some(quantity),
                    ParameterKind::Choice { .. } => None,
                };
                (one.name, one.title, one.facet, quantity)
            })
            .collect(),
    };
    let all: Vec<_> = gagwright_mechanics::techniques()
        .iter()
        .map(outline)
        .collect();
    write(&all)
}

/// How figures spread over the declared tolerances.
#[wasm_bindgen]
pub fn spread(technique: &str, request: &str) -> Answer<String> {
    tool(tools::spread, technique, request)
}

/// What moves a figure, ranked.
#[wasm_bindgen]
pub fn sensitivity(technique: &str, request: &str) -> Answer<String> {
    tool(tools::sensitivity, technique, request)
}

/// Which values of an input give a wanted figure.
#[wasm_bindgen]
pub fn solve_for(technique: &str, request: &str) -> Answer<String> {
    tool(tools::solve_for, technique, request)
}

/// What logged test shots teach, and what the next may do.
#[wasm_bindgen]
pub fn calibrate(technique: &str, request: &str) -> Answer<String> {
    tool(tools::calibrate, technique, request)
}

/// What a change of plan changes.
#[wasm_bindgen]
pub fn compare(technique: &str, request: &str) -> Answer<String> {
    tool(tools::compare, technique, request)
}

fn tool<Request: DeserializeOwned, Found: Serialize>(
    tool: fn(&dyn Technique, &Request) -> Result<Found, AssessError>,
    technique: &str,
    request: &str,
) -> Answer<String> {
    let request: Request = read(request)?;
    write(&tool(find(technique)?, &request).map_err(thrown)?)
}

fn find(technique: &str) -> Answer<&'static dyn Technique> {
    gagwright_mechanics::find(technique)
        .ok_or_else(|| JsError::new(&format!("there is no technique \"{technique}\"")))
}

fn read<T: DeserializeOwned>(text: &str) -> Answer<T> {
    serde_json::from_str(text).map_err(thrown)
}

fn write<T: Serialize>(value: &T) -> Answer<String> {
    serde_json::to_string(value).map_err(thrown)
}

fn thrown(error: impl Display) -> JsError {
    JsError::new(&error.to_string())
}
