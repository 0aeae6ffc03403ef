//! How long our models and techniques take, in nanoseconds, as one JSON document: what `tests/bench` sets
//! beside SciPy and beside the WebAssembly build.

#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

#[path = "../tests/mechanics/common/mod.rs"]
mod common;

use std::{collections::BTreeMap, hint::black_box, time::Instant};

use gagwright_mechanics::{
    models::{
        GRAVITY,
        conduction::Outside,
        line_arrest::stop_damped,
        pendulum::Pendulum,
        tolerance::{Axis, dynamic_response_of},
        trajectory::{Throw, fly},
        wet_layers::{Course, run},
    },
    techniques,
    tools::{SpreadRequest, spread},
};

/// The median of eleven runs, each of as many calls as take some milliseconds.
fn median<T>(mut call: impl FnMut() -> T) -> f64 {
    let start = Instant::now();
    black_box(call());
    let once = start.elapsed().as_nanos().max(1);
    let calls = (3_000_000 / once).clamp(1, 100_000);
    let mut runs: Vec<f64> = (0..11)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..calls {
                black_box(call());
            }
            start.elapsed().as_nanos() as f64 / calls as f64
        })
        .collect();
    runs.sort_by(f64::total_cmp);
    runs[5]
}

/// The same problems as the first case of each table in tests/reference/make_fixtures.py.
fn models() -> BTreeMap<&'static str, f64> {
    let throw = Throw {
        speed: 3.0,
        angle: 0.0,
        height: 30.0,
        mass: 80.0,
        drag_area: 0.5,
        density: 1.225,
        wind: 0.0,
    };
    let pulse = |time: f64| {
        if time <= 0.05 {
            20.0 * GRAVITY * libm::sin(core::f64::consts::PI * time / 0.05)
        } else {
            0.0
        }
    };
    let nothing = Outside {
        flux: 0.0,
        exchange: 0.0,
        surroundings: 0.0,
    };
    let course = Course {
        burning: Outside {
            flux: 3935.0,
            ..nothing
        },
        flame_time: 400.0,
        after: nothing,
        soak_time: 0.0,
        stop_at_injury: true,
        first_step: 0.001,
        longest_step: 0.05,
    };
    let pendulum = Pendulum {
        length: 9.0,
        release_angle: 1.0,
        mass: 80.0,
        drag_area: 0.6,
        density: 1.225,
    };
    BTreeMap::from([
        ("trajectory", median(|| fly(black_box(&throw)))),
        (
            "stop",
            median(|| stop_damped(black_box(80.0), 6.0, 2200.0, 0.0, 0.0)),
        ),
        (
            "response",
            median(|| dynamic_response_of(Axis::Headward, black_box(0.45), pulse)),
        ),
        ("skin", median(|| run(&[], black_box(&course), |_| {}))),
        (
            "pendulum",
            median(|| pendulum.swing(black_box(8.0), |_| {})),
        ),
    ])
}

fn main() {
    let mut assessments = BTreeMap::new();
    let mut spreads = BTreeMap::new();
    for technique in techniques() {
        let inputs = common::plausible(technique.name());
        // Text in, text out, as the WebAssembly package has it.
        let text = serde_json::to_string(&inputs).unwrap();
        let assess = || {
            let inputs = serde_json::from_str(black_box(&text)).unwrap();
            serde_json::to_string(&technique.assess(&inputs).unwrap()).unwrap()
        };
        assessments.insert(technique.name(), median(assess));
        let request = SpreadRequest {
            inputs: inputs.clone(),
            draws: 10_000,
            seed: 1,
        };
        // The least of three: what else the machine does can only add.
        let least = (0..3)
            .map(|_| {
                let start = Instant::now();
                let _ = black_box(spread(*technique, &request));
                start.elapsed().as_nanos() as f64
            })
            .fold(f64::INFINITY, f64::min);
        spreads.insert(technique.name(), least);
    }
    let all = serde_json::json!({ "models": models(), "assess": assessments, "spread": spreads });
    println!("{all}");
}
