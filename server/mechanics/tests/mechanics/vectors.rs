//! Fixed inputs and the exact answers to them, kept in `vectors.json`. The same file is replayed in
//! WebAssembly, which must give the same bytes. A change of any digit fails here until the file is
//! written anew on purpose: `GAGWRIGHT_BLESS=1 cargo test -p gagwright-mechanics --test vectors`.

use crate::common::Generator;
use gagwright_mechanics::{Assessment, Inputs, Status, Technique, techniques};
use serde::{Deserialize, Serialize};

const SETS: usize = 40;
const PATH: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/vectors.json");

/// One set of inputs and its answer.
#[derive(Serialize, Deserialize)]
struct Vector {
    technique: String,
    inputs: Inputs,
    answer: Answer,
}

/// What is compared, digit for digit.
#[derive(Serialize, Deserialize)]
#[serde(untagged)]
enum Answer {
    Given {
        figures: Vec<(String, f64, f64, f64)>,
        checks: Vec<(String, Status)>,
    },
    Refused {
        error: String,
    },
}

fn answer(technique: &dyn Technique, inputs: &Inputs) -> Answer {
    match technique.assess(inputs) {
        Ok(Assessment {
            figures, checks, ..
        }) => Answer::Given {
            figures: figures
                .into_iter()
                .map(|f| (f.name, f.value, f.low, f.high))
                .collect(),
            checks: checks.into_iter().map(|c| (c.name, c.status)).collect(),
        },
        Err(error) => Answer::Refused {
            error: error.to_string(),
        },
    }
}

/// One vector a line, so that a change shows as the lines it touches.
fn written() -> String {
    let mut lines = Vec::new();
    for technique in techniques() {
        let mut generator = Generator::new(2026);
        for set in 0..SETS {
            // Half near plausible inputs, where every figure is given; half anywhere in range.
            let inputs = if set % 2 == 0 {
                generator.near(*technique)
            } else {
                generator.inputs(*technique)
            };
            let answer = answer(*technique, &inputs);
            let vector = Vector {
                technique: technique.name().to_owned(),
                inputs,
                answer,
            };
            lines.push(serde_json::to_string(&vector).unwrap());
        }
    }
    format!("[\n{}\n]\n", lines.join(",\n"))
}

#[test]
fn answers_have_not_moved() {
    let now = written();
    if std::env::var("GAGWRIGHT_BLESS").is_ok_and(|value| value == "1") {
        std::fs::write(PATH, &now).unwrap();
    }
    let kept = std::fs::read_to_string(PATH).unwrap_or_default();
    let first = kept
        .lines()
        .zip(now.lines())
        .position(|(kept, now)| kept != now);
    assert!(
        kept == now,
        "tests/vectors.json is stale from line {}; if the change is meant, write it anew with \
         GAGWRIGHT_BLESS=1 and say why in the commit",
        first.map_or(kept.lines().count().min(now.lines().count()), |line| line) + 1
    );
    replay(&kept);
}

/// What another build reads is the JSON, so the inputs as read back must give the same bytes.
fn replay(kept: &str) {
    let vectors: Vec<Vector> = serde_json::from_str(kept).unwrap();
    assert_eq!(vectors.len(), SETS * techniques().len());
    let mut given = 0;
    for vector in &vectors {
        let technique = gagwright_mechanics::find(&vector.technique).unwrap();
        let again = answer(technique, &vector.inputs);
        assert_eq!(
            serde_json::to_string(&again).unwrap(),
            serde_json::to_string(&vector.answer).unwrap(),
            "{} {:?}",
            vector.technique,
            vector.inputs
        );
        if matches!(vector.answer, Answer::Given { .. }) {
            given += 1;
        }
    }
    // A file of refusals would prove nothing.
    assert!(
        given * 10 >= vectors.len() * 9,
        "{given} of {}",
        vectors.len()
    );
}
