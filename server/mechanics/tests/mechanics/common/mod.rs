//! Plausible inputs for each technique, and short ways to build inputs and compare numbers.

#![allow(dead_code, reason = "each test file uses its own part of this")]
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gagwright_mechanics::{
    Assessment, Check, Figure, InputValue, Inputs, ParameterKind, Quantity, Status, Technique, find,
};
use serde_json::Value;

pub const GRAVITY: f64 = 9.806_65;
pub const POUND_FORCE: f64 = 4.448_221_615_260_5;

/// Inputs from rows of `name=number` or `name=option`.
pub fn inputs(rows: &[(&str, Given)]) -> Inputs {
    Inputs(
        rows.iter()
            .map(|(name, given)| ((*name).to_owned(), given.clone().into()))
            .collect(),
    )
}

#[derive(Clone, Debug)]
pub enum Given {
    /// A number with its parameter's own tolerance.
    Number(f64),
    /// A number with no tolerance.
    Exact(f64),
    /// A number with a tolerance of its own.
    Within(f64, f64),
    Option(&'static str),
}

impl From<Given> for InputValue {
    fn from(given: Given) -> InputValue {
        match given {
            Given::Number(value) => InputValue::Number {
                value,
                tolerance: None,
            },
            Given::Exact(value) => InputValue::Number {
                value,
                tolerance: Some(0.0),
            },
            Given::Within(value, tolerance) => InputValue::Number {
                value,
                tolerance: Some(tolerance),
            },
            Given::Option(name) => InputValue::Choice(name.to_owned()),
        }
    }
}

use Given::{Number, Option};

pub fn high_fall() -> Inputs {
    inputs(&[
        ("drop_height", Number(14.0)),
        ("performer_mass", Number(64.0)),
        ("landing_attitude", Option("back")),
        ("catcher", Option("air_bag")),
        ("catcher_depth", Number(3.0)),
        ("catcher_length", Number(9.0)),
        ("catcher_width", Number(7.0)),
        ("catcher_distance", Number(1.7)),
        ("wind_speed", Number(5.0)),
        ("spotters", Number(4.0)),
        ("emergency_providers", Number(2.0)),
        ("falls_today", Number(1.0)),
        ("ambulances", Number(1.0)),
    ])
}

pub fn ratchet_pull() -> Inputs {
    inputs(&[
        ("performer_mass", Number(72.0)),
        ("pull_direction", Option("backward")),
        ("wanted_distance", Number(6.0)),
        ("reservoir_pressure", Number(6.0e5)),
        ("rated_pressure", Number(16.0e5)),
        ("reservoir_volume", Number(0.02)),
        ("bore", Number(0.1)),
        ("stroke", Number(0.6)),
        ("purchase", Number(2.0)),
        ("valve_conductance", Number(12.0e-8)),
        ("line_modulus", Number(60.0e3)),
        ("line_length", Number(8.0)),
        ("line_strength", Number(22.0e3)),
        ("anchor_strength", Number(30.0e3)),
        ("corridor_length", Number(9.0)),
        ("redirect_angle", Number(core::f64::consts::FRAC_PI_2)),
        ("pulls_today", Number(1.0)),
    ])
}

pub fn wire_flight() -> Inputs {
    inputs(&[
        ("performer_mass", Number(61.0)),
        ("balance_depth", Number(0.06)),
        ("lift_height", Number(4.0)),
        ("lift_speed", Number(1.5)),
        ("lift_acceleration", Number(0.3 * GRAVITY)),
        ("swing_angle", Number(35.0 * core::f64::consts::PI / 180.0)),
        ("wire_length", Number(9.0)),
        ("overhead_spread", Number(1.2)),
        ("wire_size", Option("3/16")),
        ("wire_material", Option("galvanised")),
        ("termination", Option("swaged_sleeve")),
        ("sheave_ratio", Number(30.0)),
        ("emergency_stop", Number(1.2 * GRAVITY)),
        ("anchor_strength", Number(22.2e3)),
        ("proof_load", Number(3.0e3)),
        ("operators", Number(2.0)),
        ("rescue_time", Number(220.0)),
        ("clear_distance", Number(9.0)),
    ])
}

pub fn full_burn() -> Inputs {
    inputs(&[
        ("coverage", Option("full")),
        ("planned_time", Number(12.0)),
        ("called_out_time", Number(15.0)),
        ("outer_cloth", Option("wool")),
        ("outer_mass", Number(0.5)),
        ("outer_thickness", Number(2.0e-3)),
        ("gel_mass", Number(4.0)),
        ("under_cloth", Option("cotton")),
        ("under_mass", Number(0.3)),
        ("under_thickness", Number(1.5e-3)),
        ("breath_hold", Number(40.0)),
        ("safeties", Number(6.0)),
        ("burns_today", Number(1.0)),
        ("wind_speed", Number(3.0)),
    ])
}

/// The plausible inputs of a technique by name.
pub fn plausible(technique: &str) -> Inputs {
    match technique {
        "high-fall" => high_fall(),
        "ratchet-pull" => ratchet_pull(),
        "wire-flight" => wire_flight(),
        "full-burn" => full_burn(),
        other => {
            let path = format!(
                "{}/tests/plausible/{other}.json",
                env!("CARGO_MANIFEST_DIR")
            );
            let text = std::fs::read_to_string(&path).unwrap_or_else(|error| {
                panic!("a technique needs plausible inputs in {path}: {error}")
            });
            serde_json::from_str(&text).expect("plausible inputs are inputs")
        }
    }
}

/// Asserts closeness by a share of the expected value.
#[track_caller]
pub fn close(found: f64, expected: f64, share: f64) {
    assert!(
        (found - expected).abs() <= share * expected.abs(),
        "found {found}, expected {expected} within {share} of it"
    );
}

/// A linear congruential generator (Knuth's MMIX constants): the same inputs for the same seed on any
/// machine, for ever.
pub struct Generator(u64);

impl Generator {
    pub fn new(seed: u64) -> Generator {
        Generator(seed ^ 0x9E37_79B9_7F4A_7C15)
    }

    fn next(&mut self) -> u64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        // The high bits are the random ones.
        self.0 >> 33
    }

    /// From 0 up to but not 1.
    pub fn share(&mut self) -> f64 {
        self.next() as f64 / (1_u64 << 31) as f64
    }

    pub fn below(&mut self, count: usize) -> usize {
        ((self.share() * count as f64) as usize).min(count - 1)
    }

    pub fn chance(&mut self, probability: f64) -> bool {
        self.share() < probability
    }

    /// Inputs anywhere in a technique's ranges, ends included; now and then one is left out.
    pub fn inputs(&mut self, technique: &dyn Technique) -> Inputs {
        let mut given = Inputs::default();
        for parameter in technique.parameters() {
            if self.chance(0.04) {
                continue;
            }
            let value = match &parameter.kind {
                ParameterKind::Number {
                    quantity,
                    min,
                    max,
                    tolerance,
                    ..
                } => {
                    let value = match self.below(12) {
                        0 => *min,
                        1 => *max,
                        _ => min + (max - min) * self.share(),
                    };
                    let value = if *quantity == Quantity::Count {
                        value.floor()
                    } else {
                        value
                    };
                    let tolerance = match self.below(4) {
                        0 => Some(0.0),
                        1 => Some(tolerance * 3.0 * self.share()),
                        _ => None,
                    };
                    InputValue::Number { value, tolerance }
                }
                ParameterKind::Choice { options, .. } => {
                    InputValue::Choice(options[self.below(options.len())].name.to_owned())
                }
            };
            given.0.insert(parameter.name.to_owned(), value);
        }
        given
    }

    /// Inputs near a plausible set, so that every figure is exercised.
    pub fn near(&mut self, technique: &dyn Technique) -> Inputs {
        let mut given = plausible(technique.name());
        for parameter in technique.parameters() {
            let Some(InputValue::Number { value, .. }) = given.0.get(parameter.name).cloned()
            else {
                continue;
            };
            if let ParameterKind::Number {
                quantity, min, max, ..
            } = &parameter.kind
                && *quantity != Quantity::Count
            {
                let value = (value * (0.7 + 0.6 * self.share())).clamp(*min, *max);
                given.0.insert(
                    parameter.name.to_owned(),
                    InputValue::Number {
                        value,
                        tolerance: None,
                    },
                );
            }
        }
        given
    }
}

/// A check of an assessment by its name.
pub fn check<'a>(assessment: &'a Assessment, name: &str) -> &'a Check {
    let found = assessment.checks.iter().find(|check| check.name == name);
    found.unwrap_or_else(|| panic!("{} has no check {name}", assessment.technique))
}

/// How a check came out.
pub fn status(assessment: &Assessment, name: &str) -> Status {
    check(assessment, name).status
}

/// A figure of an assessment by its name.
pub fn figure<'a>(assessment: &'a Assessment, name: &str) -> &'a Figure {
    let found = assessment.figures.iter().find(|figure| figure.name == name);
    found.unwrap_or_else(|| panic!("{} has no figure {name}", assessment.technique))
}

/// A figure's value.
pub fn value(assessment: &Assessment, name: &str) -> f64 {
    figure(assessment, name).value
}

/// Whether a caution is given.
pub fn says(assessment: &Assessment, name: &str) -> bool {
    assessment
        .cautions
        .iter()
        .any(|caution| caution.name == name)
}

/// A technique's plausible plan with some inputs changed.
pub fn assess(technique: &str, changes: &[(&str, Given)]) -> Assessment {
    let mut given = plausible(technique);
    given.0.extend(inputs(changes).0);
    find(technique).unwrap().assess(&given).unwrap()
}

/// The same with every input exact.
pub fn assess_exactly(technique: &str, changes: &[(&str, Given)]) -> Assessment {
    let technique = find(technique).unwrap();
    let mut given = plausible(technique.name());
    given.0.extend(inputs(changes).0);
    for parameter in technique.parameters() {
        let ParameterKind::Number { default, .. } = parameter.kind else {
            continue;
        };
        let stated = match given.0.get(parameter.name) {
            Some(InputValue::Number { value, .. }) => Some(*value),
            _ => default,
        };
        if let Some(value) = stated {
            let exact = InputValue::Number {
                value,
                tolerance: Some(0.0),
            };
            given.0.insert(parameter.name.to_owned(), exact);
        }
    }
    technique.assess(&given).unwrap()
}

/// The cases of one table of a fixture, as (given, found).
pub fn cases(fixture: &str, table: &str) -> Vec<(Value, Value)> {
    let all: Value = serde_json::from_str(fixture).unwrap();
    let cases = all[table].as_array().unwrap();
    assert!(!cases.is_empty());
    cases
        .iter()
        .map(|case| (case["given"].clone(), case["found"].clone()))
        .collect()
}

/// A number of a case by its name.
pub fn number(value: &Value, name: &str) -> f64 {
    value[name].as_f64().unwrap()
}
