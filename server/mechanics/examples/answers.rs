//! A thousand sets of inputs for each technique and the SHA-256 of each answer, one JSON document a line:
//! what the WebAssembly build is held to (tests/wasm).
//!
//! One set in ten has tolerances and so many states behind it; the others are single states, so that many
//! places are visited in little time.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/mechanics/common/mod.rs"]
mod common;

use std::io::Write;

use common::Generator;
use gagwright_mechanics::{InputValue, Inputs, Technique, techniques};
use sha2::{Digest, Sha256};

const SETS: usize = 1000;

fn without_tolerances(technique: &dyn Technique, inputs: &mut Inputs) {
    for parameter in technique.parameters() {
        let Some((min, max)) = parameter.range() else {
            continue;
        };
        // What is left out takes its default, tolerance and all, so it is entered.
        let value = inputs.0.remove(parameter.name);
        let value = match value {
            Some(InputValue::Number { value, .. }) => value,
            _ => 0.5 * (min + max),
        };
        let exact = InputValue::Number {
            value,
            tolerance: Some(0.0),
        };
        inputs.0.insert(parameter.name.to_owned(), exact);
    }
}

fn main() -> std::io::Result<()> {
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for technique in techniques() {
        let mut generator = Generator::new(1000);
        for set in 0..SETS {
            let mut inputs = if set % 2 == 0 {
                generator.near(*technique)
            } else {
                generator.inputs(*technique)
            };
            if set % 10 > 1 {
                without_tolerances(*technique, &mut inputs);
            }
            // The inputs as another reader gets them.
            let text = serde_json::to_string(&inputs)?;
            let answer = match technique.assess(&serde_json::from_str(&text)?) {
                Ok(assessment) => serde_json::to_string(&assessment)?,
                Err(error) => error.to_string(),
            };
            let digest = Sha256::digest(answer.as_bytes());
            let digest: String = digest.iter().map(|byte| format!("{byte:02x}")).collect();
            let name = technique.name();
            writeln!(
                out,
                r#"{{"technique":"{name}","inputs":{text},"sha256":"{digest}"}}"#
            )?;
        }
    }
    out.flush()
}
