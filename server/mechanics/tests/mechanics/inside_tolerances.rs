//! Intervals against states drawn from within the tolerances: no state may give what its interval leaves
//! out, nor exceed a limit that the plan was said to be within.

use crate::common::{
    Generator, Given,
    Given::{Exact, Number, Option as Name},
    inputs, plausible, status,
};
use gagwright_mechanics::{InputValue, Inputs, ParameterKind, Status, Technique, find};

/// An exact state within the tolerances: one in three inputs stays, the others go to an end or anywhere.
fn state(
    technique: &dyn Technique,
    plan: &Inputs,
    generator: &mut Generator,
    moves: bool,
) -> Inputs {
    let mut given = plan.clone();
    for parameter in technique.parameters() {
        let ParameterKind::Number {
            default,
            min,
            max,
            tolerance: usual,
            ..
        } = parameter.kind
        else {
            continue;
        };
        let (value, tolerance) = match (plan.0.get(parameter.name), default) {
            (Some(InputValue::Number { value, tolerance }), _) => {
                (*value, tolerance.unwrap_or(usual))
            }
            (_, Some(value)) => (value, usual),
            _ => continue,
        };
        let by = match generator.below(6) {
            0 | 1 => -1.0,
            2 | 3 => 1.0,
            4 => 0.0,
            _ => 2.0 * generator.share() - 1.0,
        };
        let by = if moves { by } else { 0.0 };
        let value = (value + by * tolerance).clamp(min, max);
        let tolerance = Some(0.0);
        given.0.insert(
            parameter.name.to_owned(),
            InputValue::Number { value, tolerance },
        );
    }
    given
}

/// Draws `states` and holds each against the plan's assessment.
fn holds(name: &str, plan: &Inputs, states: usize) {
    let technique = find(name).unwrap();
    let said = technique.assess(plan).unwrap();
    let mut generator = Generator::new(7);
    let exact = technique
        .assess(&state(technique, plan, &mut generator, false))
        .unwrap();
    for _ in 0..states {
        let given = state(technique, plan, &mut generator, true);
        let found = technique.assess(&given).unwrap();
        for figure in &said.figures {
            let alike = |one: &&gagwright_mechanics::Figure| one.name == figure.name;
            let stated = exact.figures.iter().find(alike).unwrap();
            // A figure that is made of the tolerances is another one without them.
            let Some(one) = found.figures.iter().find(alike) else {
                continue;
            };
            if stated.value != figure.value {
                continue;
            }
            let slack = 0.01 * (figure.high - figure.low) + 1e-9 * figure.value.abs();
            assert!(
                one.value >= figure.low - slack && one.value <= figure.high + slack,
                "{name} {}: {} is outside {} to {} for {given:?}",
                figure.name,
                one.value,
                figure.low,
                figure.high
            );
        }
        for check in said
            .checks
            .iter()
            .filter(|one| one.status == Status::Within)
        {
            let now = found.checks.iter().find(|one| one.name == check.name);
            assert_ne!(
                now.map(|one| one.status),
                Some(Status::Exceeded),
                "{name} {}: said {:?}, found {now:?} for {given:?}",
                check.name,
                check
            );
        }
    }
}

/// A partial burn under gel that just lasts: found by review to burn within the tolerances.
const JUST_WET: [(&str, Given); 10] = [
    ("coverage", Name("partial")),
    ("planned_time", Number(8.0)),
    ("called_out_time", Number(14.0)),
    ("outer_cloth", Name("wool")),
    ("outer_mass", Number(0.5)),
    ("outer_thickness", Number(0.8e-3)),
    ("gel_mass", Number(0.5)),
    ("under_mass", Number(0.3)),
    ("under_thickness", Number(4.0e-3)),
    ("breath_hold", Number(60.0)),
];

#[test]
fn gel_that_may_boil_dry_is_not_within() {
    let mut plan = plausible("full-burn");
    plan.0.extend(inputs(&JUST_WET).0);
    let technique = find("full-burn").unwrap();
    let said = technique.assess(&plan).unwrap();
    assert_eq!(status(&said, "second_degree"), Status::Marginal);
    // Five inputs at an end of their own tolerance leave a second-degree burn.
    let dry = inputs(&[
        ("gel_mass", Exact(0.3)),
        ("outer_thickness", Exact(0.7e-3)),
        ("outer_mass", Exact(0.48)),
        ("flame_flux", Exact(92.4e3)),
        ("extinguish_time", Exact(4.0)),
    ]);
    let mut burnt = plan.clone();
    burnt.0.extend(dry.0);
    assert_eq!(
        status(&technique.assess(&burnt).unwrap(), "second_degree"),
        Status::Exceeded
    );
    holds("full-burn", &plan, 100);
    // The same, called out a second after the plan and under a thinner layer.
    plan.0.extend(
        inputs(&[
            ("planned_time", Number(12.0)),
            ("called_out_time", Number(13.0)),
            ("outer_thickness", Number(1.0e-3)),
            ("under_thickness", Number(3.0e-3)),
        ])
        .0,
    );
    let said = technique.assess(&plan).unwrap();
    assert_ne!(status(&said, "second_degree"), Status::Within);
}

#[test]
fn no_state_within_the_tolerances_is_left_out() {
    for (name, states) in [
        ("full-burn", 60),
        ("horse-fall", 300),
        ("water-work", 200),
        ("lock-off-composite", 300),
        ("glass-exit", 100),
    ] {
        holds(name, &plausible(name), states);
    }
}

#[test]
fn drifts_that_may_go_either_way_add_up() {
    let mut plan = plausible("lock-off-composite");
    let none =
        ["pan_drift", "tilt_drift", "roll_drift", "shift_across"].map(|name| (name, Number(0.0)));
    plan.0.extend(inputs(&none).0);
    holds("lock-off-composite", &plan, 500);
    plan.0.extend(
        inputs(&[
            ("focal_length", Number(0.1)),
            ("near_distance", Number(3.0)),
        ])
        .0,
    );
    holds("lock-off-composite", &plan, 500);
}
