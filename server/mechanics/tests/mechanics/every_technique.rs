//! What must hold for every technique in the registry, whatever it is: a new technique is tested here
//! the moment it is listed.

use std::collections::BTreeSet;

use crate::common::{Generator, close, inputs, plausible};
use gagwright_mechanics::{
    AssessError, Assessment, Bound, InputValue, Inputs, ParameterKind, Status, Technique,
    techniques,
};
use proptest::prelude::*;

fn is_snake(name: &str) -> bool {
    !name.is_empty()
        && name
            .bytes()
            .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_')
}

/// Everything a screen or a packet leans on.
fn well_formed(technique: &dyn Technique, assessment: &Assessment) {
    assert_eq!(assessment.technique, technique.name());
    let mut names = BTreeSet::new();
    let described: Vec<_> = technique.figures().iter().map(|f| f.name).collect();
    let mut order = Vec::new();
    for figure in &assessment.figures {
        assert!(names.insert(figure.name.clone()), "{} twice", figure.name);
        let at = described
            .iter()
            .position(|name| *name == figure.name)
            .expect("described");
        order.push(at);
        assert_eq!(figure.quantity, technique.figures()[at].quantity);
        for number in [figure.value, figure.low, figure.high] {
            assert!(
                number.is_finite(),
                "{} {} is {number}",
                technique.name(),
                figure.name
            );
        }
        assert!(
            figure.low <= figure.value && figure.value <= figure.high,
            "{figure:?}"
        );
    }
    assert!(
        order.is_sorted(),
        "figures come in the order they are described"
    );
    let mut names = BTreeSet::new();
    for check in &assessment.checks {
        assert!(names.insert(check.name.clone()), "{} twice", check.name);
        assert!(is_snake(&check.name));
        assert!(
            check.title.len() <= 40,
            "{} is too long for a phone",
            check.title
        );
        assert!(check.detail.ends_with('.'), "{}", check.detail);
        assert!(!check.detail.contains("  "), "{}", check.detail);
        assert!(check.limit.value.is_finite());
        assert!(!check.source.document.is_empty());
        assert_eq!(
            check.status == Status::Unknown,
            check.value.is_none(),
            "{check:?}"
        );
        if let Some(figure) = &check.figure {
            assert!(
                described.contains(&figure.as_str()),
                "{figure} is not a figure"
            );
        }
        if let (Some(value), Some(low), Some(high)) = (check.value, check.low, check.high) {
            assert!(low <= value && value <= high);
            let limit = check.limit.value;
            let (outside, straddles) = match check.limit.bound {
                Bound::AtMost => (value > limit, high > limit),
                Bound::AtLeast => (value < limit, low < limit),
            };
            assert_eq!(check.status == Status::Exceeded, outside, "{check:?}");
            assert!(!(straddles && check.status == Status::Within), "{check:?}");
        }
    }
    for trace in &assessment.traces {
        let count = trace.x.values.len();
        assert!(
            (2..=400).contains(&count),
            "{} has {count} points",
            trace.name
        );
        assert!(trace.x.values.is_sorted(), "{} goes back", trace.name);
        for series in &trace.y {
            assert_eq!(series.values.len(), count);
        }
        for series in trace.y.iter().chain([&trace.x]) {
            assert!(
                series.values.iter().all(|value| value.is_finite()),
                "{}",
                trace.name
            );
        }
    }
    for zone in &assessment.zones {
        let text = serde_json::to_string(zone).unwrap();
        // JSON has no word for infinity: it would be written as null.
        assert!(!text.contains("null"), "{text}");
        assert!(!zone.reason.is_empty());
    }
    for caution in &assessment.cautions {
        assert!(caution.text.ends_with('.'), "{}", caution.text);
    }
}

#[test]
fn descriptions_are_fit_for_screens() {
    let mut names = BTreeSet::new();
    for technique in techniques() {
        assert!(names.insert(technique.name()));
        assert!(
            technique
                .name()
                .bytes()
                .all(|b| b.is_ascii_lowercase() || b == b'-')
        );
        assert!(technique.title().len() <= 40);
        let mut parameters = BTreeSet::new();
        for parameter in technique.parameters() {
            assert!(
                parameters.insert(parameter.name),
                "{} twice",
                parameter.name
            );
            assert!(is_snake(parameter.name));
            assert!(
                parameter.title.len() <= 36,
                "{} is too long for a phone",
                parameter.title
            );
            assert!(parameter.help.ends_with('.'));
            match &parameter.kind {
                ParameterKind::Number {
                    default,
                    min,
                    max,
                    tolerance,
                    ..
                } => {
                    assert!(min < max && min.is_finite() && max.is_finite());
                    assert!(*tolerance >= 0.0 && tolerance.is_finite());
                    assert!(default.is_none_or(|value| (*min..=*max).contains(&value)));
                }
                ParameterKind::Choice { options, default } => {
                    assert!(options.len() >= 2);
                    assert!(default.is_none_or(|name| options.iter().any(|o| o.name == name)));
                }
            }
        }
        for figure in technique.figures() {
            assert!(is_snake(figure.name));
            assert!(
                figure.title.len() <= 36,
                "{} is too long for a phone",
                figure.title
            );
            assert!(figure.help.ends_with('.'));
        }
    }
    assert!(gagwright_mechanics::find("high-fall").is_some());
    assert!(gagwright_mechanics::find("High fall").is_none());
}

#[test]
fn plausible_inputs_give_every_figure_and_no_unknowns() {
    for technique in techniques() {
        let assessment = technique.assess(&plausible(technique.name())).unwrap();
        well_formed(*technique, &assessment);
        for description in technique.figures() {
            assert!(
                assessment
                    .figures
                    .iter()
                    .any(|figure| figure.name == description.name),
                "{} gives no {}",
                technique.name(),
                description.name
            );
        }
        for check in &assessment.checks {
            assert_ne!(
                check.status,
                Status::Unknown,
                "{} {}",
                technique.name(),
                check.name
            );
        }
        assert!(!assessment.traces.is_empty() && !assessment.zones.is_empty());
    }
}

#[test]
fn nothing_entered_is_nothing_known() {
    for technique in techniques() {
        let assessment = technique.assess(&Inputs::default()).unwrap();
        well_formed(*technique, &assessment);
        for check in &assessment.checks {
            // Missing evidence is never within.
            assert_ne!(check.status, Status::Within, "{}", check.name);
            // Only a check of something that has a default can be judged.
            if check.status != Status::Unknown {
                assert!(check.figure.is_none(), "{} judged from nothing", check.name);
            } else {
                assert!(
                    check.detail.starts_with("Not known until entered"),
                    "{}",
                    check.detail
                );
            }
        }
        assert!(
            !assessment.cautions.is_empty(),
            "{} says nothing",
            technique.name()
        );
    }
}

#[test]
fn leaving_one_input_out_never_makes_a_check_pass() {
    for technique in techniques() {
        let full = plausible(technique.name());
        let known = technique.assess(&full).unwrap();
        for name in full.0.keys() {
            let has_default = technique.parameters().iter().any(|parameter| {
                parameter.name == name
                    && match parameter.kind {
                        ParameterKind::Number { default, .. } => default.is_some(),
                        ParameterKind::Choice { default, .. } => default.is_some(),
                    }
            });
            if has_default {
                continue;
            }
            let mut less = full.clone();
            less.0.remove(name);
            let assessment = technique.assess(&less).unwrap();
            well_formed(*technique, &assessment);
            let title = technique
                .parameters()
                .iter()
                .find(|p| p.name == name)
                .unwrap()
                .title;
            let named = assessment
                .checks
                .iter()
                .any(|check| check.status == Status::Unknown && check.detail.contains(title));
            let used = known.checks.len() == assessment.checks.len();
            // The wanted distance is not held against anything: it only asks for a pressure.
            assert!(
                named || !used || name == "wanted_distance",
                "{} without {name} names it nowhere",
                technique.name()
            );
            for check in &assessment.checks {
                let before = known.checks.iter().find(|other| other.name == check.name);
                if let Some(before) = before
                    && check.status == Status::Within
                {
                    assert_eq!(before.status, Status::Within, "{} {name}", check.name);
                    assert_eq!(before.value, check.value, "{} {name}", check.name);
                }
            }
        }
    }
}

#[test]
fn bad_values_are_refused_by_name() {
    for technique in techniques() {
        for parameter in technique.parameters() {
            let refused = |value: InputValue| {
                let mut given = plausible(technique.name());
                given.0.insert(parameter.name.to_owned(), value);
                match technique.assess(&given) {
                    Err(AssessError::BadValue { name, problem }) => {
                        assert_eq!(name, parameter.name);
                        assert!(problem.contains("give "), "{problem}");
                    }
                    other => panic!("{} {}: {other:?}", technique.name(), parameter.name),
                }
            };
            let number = |value, tolerance| InputValue::Number { value, tolerance };
            match &parameter.kind {
                ParameterKind::Number { min, max, .. } => {
                    for value in [
                        f64::NAN,
                        f64::INFINITY,
                        f64::NEG_INFINITY,
                        f64::MAX,
                        f64::MIN,
                    ] {
                        refused(number(value, None));
                    }
                    let step = (max - min) * 1e-6;
                    refused(number(min - step, None));
                    refused(number(max + step, None));
                    for tolerance in [f64::NAN, f64::INFINITY, -1e-9] {
                        refused(number(*min, Some(tolerance)));
                    }
                    refused(InputValue::Choice("ten".to_owned()));
                }
                ParameterKind::Choice { .. } => {
                    refused(number(1.0, None));
                    refused(InputValue::Choice("no such thing".to_owned()));
                    refused(InputValue::Choice(String::new()));
                }
            }
        }
        let mut given = plausible(technique.name());
        given
            .0
            .insert("colour".to_owned(), InputValue::Choice("red".to_owned()));
        let error = technique.assess(&given).unwrap_err();
        let text = error.to_string();
        assert!(
            text.contains("colour") && text.contains(technique.parameters()[0].name),
            "{text}"
        );
    }
}

#[test]
fn refusals_give_the_range_both_ways() {
    let given = inputs(&[("drop_height", crate::common::Given::Number(500.0))]);
    let technique = gagwright_mechanics::find("high-fall").unwrap();
    let text = technique.assess(&given).unwrap_err().to_string();
    assert_eq!(
        text,
        "drop_height: 500 m is outside what this model covers; give a length from 0.5 m to 80 m \
         (1.64 ft to 262 ft)"
    );
}

#[test]
fn exact_inputs_give_intervals_of_nothing() {
    for technique in techniques() {
        let mut given = plausible(technique.name());
        for parameter in technique.parameters() {
            if let ParameterKind::Number { default, .. } = parameter.kind {
                let value = match given.0.get(parameter.name) {
                    Some(InputValue::Number { value, .. }) => Some(*value),
                    _ => default,
                };
                if let Some(value) = value {
                    let exact = InputValue::Number {
                        value,
                        tolerance: Some(0.0),
                    };
                    given.0.insert(parameter.name.to_owned(), exact);
                }
            }
        }
        // What a plan says varies from shot to shot is no tolerance, and moves figures as one does.
        for name in ["foot_spread", "pressure_spread"] {
            if technique.parameters().iter().any(|one| one.name == name) {
                let none = InputValue::Number {
                    value: 0.0,
                    tolerance: Some(0.0),
                };
                given.0.insert(name.to_owned(), none);
            }
        }
        for figure in technique.assess(&given).unwrap().figures {
            assert_eq!(
                figure.low,
                figure.value,
                "{} {}",
                technique.name(),
                figure.name
            );
            assert_eq!(
                figure.high,
                figure.value,
                "{} {}",
                technique.name(),
                figure.name
            );
        }
    }
}

/// The plausible plan with one tolerance after the other so many times as wide, beside the plan's own answer.
fn widened(
    technique: &dyn Technique,
    by: f64,
    mut hold: impl FnMut(&str, &Assessment, &Assessment),
) {
    let given = plausible(technique.name());
    let usual = technique.assess(&given).unwrap();
    for parameter in technique.parameters() {
        let ParameterKind::Number { tolerance, .. } = parameter.kind else {
            continue;
        };
        let Some(InputValue::Number { value, .. }) = given.0.get(parameter.name) else {
            continue;
        };
        let mut wide = given.clone();
        let wider = InputValue::Number {
            value: *value,
            tolerance: Some(by * tolerance),
        };
        wide.0.insert(parameter.name.to_owned(), wider);
        hold(parameter.name, &usual, &technique.assess(&wide).unwrap());
    }
}

#[test]
fn wider_tolerances_never_narrow_an_interval() {
    for technique in techniques() {
        // A figure that turns within a tolerance is seen only at the ends, so a span may shrink by a hair: a
        // difference of two that move together turns between the corners by more, and a gimbal's reserve near
        // balance by most of all, at its milder end.
        let hair = match technique.name() {
            "body-gimbal" => 0.15,
            "pod-car" => 0.035,
            "motorcycle-jump" => 0.025,
            _ => 0.02,
        };
        widened(*technique, 1.5, |name, usual, wide| {
            for (before, after) in usual.figures.iter().zip(&wide.figures) {
                assert_eq!(before.name, after.name);
                // A chance or a spread that is made of the tolerances moves with them as a whole.
                if before.value != after.value {
                    continue;
                }
                let slack = 2e-4 * before.value.abs() + hair * (before.high - before.low);
                assert!(
                    after.low <= before.low + slack && after.high >= before.high - slack,
                    "{name}: {before:?} {after:?}"
                );
            }
        });
    }
}

/// No slack at all: what is uncertain does not become safe by knowing less.
#[test]
fn wider_tolerances_never_take_a_caution_away() {
    for technique in techniques() {
        for by in [1.5, 3.0] {
            widened(*technique, by, |name, usual, wide| {
                for (before, after) in usual.checks.iter().zip(&wide.checks) {
                    assert_eq!(before.name, after.name);
                    if before.value == after.value && before.status == Status::Marginal {
                        assert_ne!(
                            after.status,
                            Status::Within,
                            "{name} {by}: {before:?} {after:?}"
                        );
                    }
                }
            });
        }
    }
}

/// Names are found by a table of a fixed size, with room to spare.
#[test]
fn no_form_outgrows_the_table_of_names() {
    for technique in techniques() {
        assert!(technique.parameters().len() <= 128);
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 60,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    /// Anything inside the declared ranges, with anything left out, gives finite figures or an error
    /// that names what is wrong; twice the same.
    #[test]
    fn any_input_in_range_is_answered(seed in any::<u64>()) {
        for technique in techniques() {
            let given = Generator::new(seed).inputs(*technique);
            let first = technique.assess(&given);
            let again = technique.assess(&given);
            prop_assert_eq!(&first, &again);
            match first {
                Ok(assessment) => well_formed(*technique, &assessment),
                Err(AssessError::BadValue { name, problem }) => {
                    prop_assert!(
                        technique.figures().iter().any(|f| f.name == name),
                        "{} {}", name, problem
                    );
                }
                Err(other) => prop_assert!(false, "{other}"),
            }
        }
    }

    /// Anything at all: numbers of every size and sign, not-a-numbers, names in place of numbers.
    #[test]
    fn any_input_at_all_is_answered_or_refused(seed in any::<u64>(), wild in prop::num::f64::ANY) {
        for technique in techniques() {
            let mut generator = Generator::new(seed);
            let mut given = generator.inputs(*technique);
            let index = generator.below(technique.parameters().len());
            let name = technique.parameters()[index].name.to_owned();
            let tolerance = generator.chance(0.5).then_some(wild);
            given.0.insert(name, InputValue::Number { value: wild, tolerance });
            if let Ok(assessment) = technique.assess(&given) {
                well_formed(*technique, &assessment);
            }
        }
    }
}

/// A suit so thin that a burn comes before the horizon, for what would otherwise never show.
const THIN: [(&str, f64); 4] = [
    ("outer_thickness", 0.5e-3),
    ("gel_mass", 0.4),
    ("under_mass", 0.15),
    ("under_thickness", 0.4e-3),
];

fn value(technique: &str, changes: &[(&str, f64)], figure: &str) -> f64 {
    let mut given = plausible(technique);
    let thin: &[(&str, f64)] = if technique == "full-burn" { &THIN } else { &[] };
    for (name, value) in thin {
        let number = InputValue::Number {
            value: *value,
            tolerance: Some(0.0),
        };
        given.0.insert((*name).to_owned(), number);
    }
    for (name, value) in changes {
        let number = InputValue::Number {
            value: *value,
            tolerance: Some(0.0),
        };
        given.0.insert((*name).to_owned(), number);
    }
    let assessment = gagwright_mechanics::find(technique)
        .unwrap()
        .assess(&given)
        .unwrap();
    let found = assessment.figures.iter().find(|f| f.name == figure);
    found
        .unwrap_or_else(|| panic!("{technique} gives no {figure}"))
        .value
}

/// Asserts that a figure goes one way, never back, as a parameter rises.
fn steady(technique: &str, parameter: &str, range: (f64, f64), figure: &str, rises: bool) {
    let mut last: Option<f64> = None;
    for step in 0..=12 {
        let at = (range.0 + (range.1 - range.0) * f64::from(step) / 12.0).min(range.1);
        let now = value(technique, &[(parameter, at)], figure);
        if let Some(last) = last {
            let slack = 1e-6 * last.abs();
            let right = if rises {
                now >= last - slack
            } else {
                now <= last + slack
            };
            assert!(
                right,
                "{technique}: {figure} goes from {last} to {now} at {parameter} {at}"
            );
        }
        last = Some(now);
    }
    let ends = [range.0, range.1].map(|at| value(technique, &[(parameter, at)], figure));
    assert_ne!(
        ends[0], ends[1],
        "{technique}: {parameter} does not move {figure}"
    );
}

#[test]
fn physics_goes_the_right_way() {
    steady(
        "high-fall",
        "drop_height",
        (1.0, 80.0),
        "impact_speed",
        true,
    );
    steady("high-fall", "drop_height", (1.0, 80.0), "fall_time", true);
    steady("high-fall", "drag_area", (0.05, 1.5), "impact_speed", false);
    steady("high-fall", "catcher_depth", (0.5, 8.0), "mean_felt", false);
    steady(
        "high-fall",
        "catcher_depth",
        (0.5, 8.0),
        "dynamic_response",
        false,
    );
    steady(
        "high-fall",
        "wind_speed",
        (0.0, 20.0),
        "landing_half_length",
        true,
    );
    steady(
        "high-fall",
        "wind_speed",
        (0.0, 30.0),
        "miss_probability",
        true,
    );
    steady(
        "high-fall",
        "catcher_length",
        (2.0, 10.0),
        "miss_probability",
        false,
    );
    steady(
        "high-fall",
        "wanted_miss_probability",
        (1e-6, 0.1),
        "catcher_width_needed",
        false,
    );
    steady(
        "ratchet-pull",
        "reservoir_pressure",
        (4e5, 15e5),
        "release_speed",
        true,
    );
    steady(
        "ratchet-pull",
        "reservoir_pressure",
        (4e5, 15e5),
        "total_distance",
        true,
    );
    steady(
        "ratchet-pull",
        "performer_mass",
        (40.0, 120.0),
        "release_speed",
        false,
    );
    steady(
        "ratchet-pull",
        "performer_mass",
        (40.0, 120.0),
        "pressure_needed",
        true,
    );
    steady(
        "ratchet-pull",
        "valve_conductance",
        (5e-8, 60e-8),
        "release_speed",
        true,
    );
    steady(
        "ratchet-pull",
        "line_strength",
        (5e3, 50e3),
        "line_factor",
        true,
    );
    steady(
        "wire-flight",
        "performer_mass",
        (30.0, 150.0),
        "lowest_factor",
        false,
    );
    steady(
        "wire-flight",
        "swing_angle",
        (0.3, 1.4),
        "peak_tension_left",
        true,
    );
    steady(
        "wire-flight",
        "overhead_spread",
        (0.5, 12.0),
        "lowest_factor",
        false,
    );
    steady(
        "wire-flight",
        "sheave_ratio",
        (1.0, 40.0),
        "wire_strength",
        true,
    );
    steady(
        "wire-flight",
        "emergency_stop",
        (1.0, 50.0),
        "emergency_factor",
        false,
    );
    steady(
        "full-burn",
        "gel_mass",
        (0.0, 3.0),
        "time_to_second_degree",
        true,
    );
    steady(
        "full-burn",
        "under_water",
        (0.0, 3.0),
        "time_to_second_degree",
        true,
    );
    steady(
        "full-burn",
        "gel_water_share",
        (0.2, 0.99),
        "water_left",
        true,
    );
    steady(
        "full-burn",
        "flame_flux",
        (20e3, 200e3),
        "bare_skin_time",
        false,
    );
    steady(
        "full-burn",
        "called_out_time",
        (4.0, 60.0),
        "peak_skin_temperature",
        true,
    );
}

#[test]
fn assessments_survive_json() {
    for technique in techniques() {
        let assessment = technique.assess(&plausible(technique.name())).unwrap();
        let text = serde_json::to_string(&assessment).unwrap();
        let back: Assessment = serde_json::from_str(&text).unwrap();
        for (before, after) in assessment.figures.iter().zip(&back.figures) {
            close(after.value, before.value, 1e-15);
        }
        assert_eq!(assessment.checks.len(), back.checks.len());
    }
}
