//! The four tools, and the comparison, over every technique in the registry: a new technique is tested
//! here the moment it is listed.

use std::{collections::BTreeMap, sync::Mutex};

use crate::common::{Generator, close, plausible};
use gagwright_mechanics::{
    AssessError, InputValue, Inputs, ParameterKind, Quantity, Technique, find, techniques,
    tools::{
        CalibrateRequest, CompareRequest, Dealer, Runner, SensitivityRequest, SolveRequest,
        SpreadRequest, TestShot, calibrate, compare, sensitivity, solve_for, spread, spread_on,
    },
};

fn number(inputs: &Inputs, name: &str) -> Option<f64> {
    match inputs.0.get(name) {
        Some(InputValue::Number { value, .. }) => Some(*value),
        _ => None,
    }
}

/// The inputs with every number entered, and no tolerance.
fn exact(technique: &dyn Technique, inputs: &Inputs) -> Inputs {
    let mut exact = inputs.clone();
    for parameter in technique.parameters() {
        if let ParameterKind::Number { default, .. } = &parameter.kind
            && let Some(value) = number(inputs, parameter.name).or(*default)
        {
            set(&mut exact, parameter.name, value, Some(0.0));
        }
    }
    exact
}

fn set(inputs: &mut Inputs, name: &str, value: f64, tolerance: Option<f64>) {
    let value = InputValue::Number { value, tolerance };
    inputs.0.insert(name.to_owned(), value);
}

fn asked(inputs: Inputs, draws: u32) -> SpreadRequest {
    SpreadRequest {
        inputs,
        draws,
        seed: 7,
    }
}

#[test]
fn spread_without_tolerances_is_the_assessment() {
    for technique in techniques() {
        let inputs = exact(*technique, &plausible(technique.name()));
        let assessment = technique.assess(&inputs).unwrap();
        let spread = spread(*technique, &asked(inputs, 100)).unwrap();
        for figure in &spread.figures {
            let known = assessment
                .figures
                .iter()
                .find(|one| one.name == figure.name);
            let value = known.expect("the assessment gives it too").value;
            for found in [
                figure.value,
                figure.mean,
                figure.low,
                figure.median,
                figure.high,
            ] {
                assert_eq!(found, value, "{} {}", technique.name(), figure.name);
            }
            assert_eq!((figure.deviation, figure.share), (0.0, 1.0));
        }
        for crossing in &spread.crossings {
            let check = assessment
                .checks
                .iter()
                .find(|one| one.name == crossing.check);
            let exceeded = check.unwrap().status == gagwright_mechanics::Status::Exceeded;
            assert_eq!(
                crossing.share,
                Some(f64::from(u8::from(exceeded))),
                "{crossing:?}"
            );
        }
    }
}

/// Where a figure is close to a straight line in every input, its deviation is the root of the sum of the
/// squared slopes times deviations (JCGM 100:2008, Guide to the expression of uncertainty, eq. 10), and
/// nine draws in ten lie within 1.645 of them.
#[test]
fn spread_agrees_with_the_linear_estimate_where_that_holds() {
    let mut compared = 0;
    for technique in techniques() {
        let mut inputs = plausible(technique.name());
        // Small tolerances make every smooth figure a straight line.
        for parameter in technique.parameters() {
            if let ParameterKind::Number {
                default,
                tolerance,
                quantity,
                min,
                max,
                ..
            } = parameter.kind
                && let Some(value) = number(&inputs, parameter.name).or(default)
            {
                let inside = value > min && value < max && quantity != Quantity::Count;
                let small = if inside { 0.02 * tolerance } else { 0.0 };
                set(&mut inputs, parameter.name, value, Some(small));
            }
        }
        let draws = 1500;
        let spread = spread(*technique, &asked(inputs.clone(), draws)).unwrap();
        for figure in spread.figures {
            let asked = SensitivityRequest {
                inputs: inputs.clone(),
                figure: figure.name.clone(),
            };
            let moves = sensitivity(*technique, &asked).unwrap();
            let mut variance = 0.0;
            let mut straight = true;
            for bar in &moves.bars {
                let (Some(low), Some(high)) = (bar.at_low, bar.at_high) else {
                    straight = false;
                    continue;
                };
                let (up, down) = (high - figure.value, figure.value - low);
                straight &= (up - down).abs() <= 0.02 * (up.abs() + down.abs());
                variance += (0.25 * (high - low)).powi(2);
            }
            let deviation = variance.sqrt();
            if !straight || deviation <= 1e-7 * figure.value.abs().max(1e-9) || figure.share < 1.0 {
                continue;
            }
            compared += 1;
            // A deviation of 1,500 draws is itself known to 1.8 per cent (one in sixty draws is out by more
            // than three times that); a quantile somewhat less well.
            let name = format!("{} {}", technique.name(), figure.name);
            assert!(
                (figure.deviation / deviation - 1.0).abs() < 0.08,
                "{name} {figure:?} {deviation}"
            );
            let half = 0.5 * (figure.high - figure.low);
            assert!(
                (half / (1.645 * deviation) - 1.0).abs() < 0.10,
                "{name} {figure:?} {deviation}"
            );
        }
    }
    assert!(
        compared >= 10 * techniques().len() / 4,
        "only {compared} figures are straight"
    );
}

#[test]
fn spread_is_the_same_for_the_same_seed_and_no_other() {
    let technique = find("high-fall").unwrap();
    let mut request = asked(plausible("high-fall"), 400);
    let first = spread(technique, &request).unwrap();
    assert_eq!(spread(technique, &request).unwrap(), first);
    request.seed = 8;
    assert_ne!(spread(technique, &request).unwrap().figures, first.figures);
    for draws in [0, 99, 100_001] {
        request.draws = draws;
        let error = spread(technique, &request).unwrap_err().to_string();
        assert!(error.starts_with("draws: "), "{error}");
    }
}

/// Shares out the parts from the last to the first on three threads, and one of them twice.
struct Backwards;

impl Runner for Backwards {
    fn run(&self, parts: usize, worker: &(dyn Fn(&Dealer) + Sync)) {
        let left = Mutex::new((0..parts).collect::<Vec<_>>());
        std::thread::scope(|scope| {
            for _ in 0..3 {
                scope.spawn(|| worker(&|| left.lock().unwrap().pop()));
            }
        });
        let again = Mutex::new(vec![0]);
        worker(&|| again.lock().unwrap().pop());
    }
}

/// Nobody can tell from an answer who worked it out: the same bytes, for every technique.
#[test]
fn spread_is_the_same_whoever_runs_it() {
    for technique in techniques() {
        // Three whole parts and a bit.
        let request = asked(plausible(technique.name()), 400);
        let alone = spread(*technique, &request).unwrap();
        let shared = spread_on(&Backwards, *technique, &request).unwrap();
        let text = |found| serde_json::to_string(found).unwrap();
        assert_eq!(text(&alone), text(&shared), "{}", technique.name());
    }
}

/// A limit at the median is crossed by half of the draws.
#[test]
fn crossings_count_the_draws_outside_a_limit() {
    let technique = find("high-fall").unwrap();
    let mut inputs = plausible("high-fall");
    set(&mut inputs, "wind_speed", 7.0, Some(1.0));
    let spread = spread(technique, &asked(inputs, 4000)).unwrap();
    let wind = spread
        .crossings
        .iter()
        .find(|one| one.check == "wind")
        .unwrap();
    let share = wind.share.unwrap();
    // Three standard deviations of a share of one half among 4,000.
    assert!(
        (share - 0.5).abs() < 3.0 * (0.25_f64 / 4000.0).sqrt(),
        "{share}"
    );
    let spotters = spread
        .crossings
        .iter()
        .find(|one| one.check == "spotters")
        .unwrap();
    assert_eq!(spotters.share, Some(0.0));
}

#[test]
fn sensitivity_ranks_what_moves_a_figure() {
    for technique in techniques() {
        let inputs = plausible(technique.name());
        for figure in technique.figures() {
            let request = SensitivityRequest {
                inputs: inputs.clone(),
                figure: figure.name.to_owned(),
            };
            let found = sensitivity(*technique, &request).unwrap();
            assert!(
                found
                    .bars
                    .windows(2)
                    .all(|pair| pair[0].swing >= pair[1].swing)
            );
            let shares: f64 = found.bars.iter().map(|bar| bar.share).sum();
            assert!(
                found.bars.is_empty() || (shares - 1.0).abs() < 1e-9,
                "{shares}"
            );
        }
    }
    // In a fall without drag to speak of, height rules the speed and mass does nothing to it.
    let request = SensitivityRequest {
        inputs: plausible("high-fall"),
        figure: "fall_time".to_owned(),
    };
    let found = sensitivity(find("high-fall").unwrap(), &request).unwrap();
    let place = |name: &str| found.bars.iter().position(|bar| bar.parameter == name);
    assert!(place("exit_speed").is_some() || place("drop_height").is_some());
    assert_eq!(place("spotters"), None);
    let unknown = SensitivityRequest {
        inputs: Inputs::default(),
        figure: "grace".to_owned(),
    };
    let error = sensitivity(find("high-fall").unwrap(), &unknown).unwrap_err();
    assert!(error.to_string().contains("impact_speed"), "{error}");
}

/// What is solved for, put in, gives what was wanted: for every technique, over its figures and inputs.
#[test]
fn a_root_put_in_gives_the_wanted_figure() {
    for technique in techniques() {
        let mut generator = Generator::new(41);
        let base = exact(*technique, &plausible(technique.name()));
        let numbers: Vec<_> = technique
            .parameters()
            .iter()
            .filter(|one| one.range().is_some() && one.quantity() != Quantity::Count)
            .collect();
        let (mut found, mut asked) = (0, 0);
        for _ in 0..10 {
            let parameter = numbers[generator.below(numbers.len())];
            let figure = &technique.figures()[generator.below(technique.figures().len())];
            // Wanted is what the figure is somewhere else, so that there often is an answer.
            let (min, max) = parameter.range().unwrap();
            let mut elsewhere = base.clone();
            let place = number(&base, parameter.name).unwrap_or(0.5 * (min + max));
            let place = (place * (0.7 + 0.6 * generator.share())).clamp(min, max);
            set(&mut elsewhere, parameter.name, place, Some(0.0));
            let Ok(there) = technique.assess(&elsewhere) else {
                continue;
            };
            let Some(wanted) = there.figures.iter().find(|one| one.name == figure.name) else {
                continue;
            };
            asked += 1;
            let request = SolveRequest {
                inputs: base.clone(),
                parameter: parameter.name.to_owned(),
                figure: figure.name.to_owned(),
                wanted: wanted.value,
                from: None,
                to: None,
            };
            let solution = solve_for(*technique, &request).unwrap();
            let case = format!("{} {} {}", technique.name(), parameter.name, figure.name);
            assert_eq!(
                solution.roots.is_empty(),
                !solution.note.is_empty(),
                "{case}"
            );
            // A figure that does not move with the input has no root to find.
            if solution.lowest == solution.highest {
                asked -= 1;
                continue;
            }
            assert!(solution.roots.is_sorted(), "{case}");
            for root in &solution.roots {
                found += 1;
                assert!((min..=max).contains(root), "{case}");
                let mut answer = base.clone();
                set(&mut answer, parameter.name, *root, Some(0.0));
                let again = technique.assess(&answer).unwrap();
                let value = again
                    .figures
                    .iter()
                    .find(|one| one.name == figure.name)
                    .unwrap()
                    .value;
                close(value, wanted.value, 1e-6);
            }
        }
        assert!(
            found >= asked * 2 / 3,
            "{}: {found} of {asked}",
            technique.name()
        );
    }
}

/// Range of a throw over level ground is v2 sin 2a / g: two angles give the same range. With an edge no
/// height to speak of above the landing, the exit angle of a jump has both roots.
#[test]
fn every_root_in_the_range_is_reported() {
    let technique = find("high-fall").unwrap();
    let mut inputs = exact(technique, &plausible("high-fall"));
    for (name, value) in [
        ("drop_height", 0.5),
        ("exit_speed", 10.0),
        ("drag_area", 0.05),
        ("performer_mass", 200.0),
    ] {
        set(&mut inputs, name, value, Some(0.0));
    }
    let request = SolveRequest {
        inputs,
        parameter: "exit_angle".to_owned(),
        figure: "landing_distance".to_owned(),
        wanted: 8.0,
        from: None,
        to: None,
    };
    let solution = solve_for(technique, &request).unwrap();
    assert_eq!(solution.roots.len(), 2, "{solution:?}");
    assert!(
        solution.roots[0] < 0.6 && solution.roots[1] > 0.9,
        "{solution:?}"
    );
    let none = SolveRequest {
        wanted: 30.0,
        ..request
    };
    let solution = solve_for(technique, &none).unwrap();
    assert!(solution.roots.is_empty());
    assert!(
        solution.note.contains("does not become 30 m"),
        "{}",
        solution.note
    );
    for (field, bad) in [
        (
            "parameter",
            SolveRequest {
                parameter: "catcher".to_owned(),
                ..none.clone()
            },
        ),
        (
            "figure",
            SolveRequest {
                figure: "grace".to_owned(),
                ..none.clone()
            },
        ),
        (
            "wanted",
            SolveRequest {
                wanted: f64::NAN,
                ..none.clone()
            },
        ),
        (
            "from",
            SolveRequest {
                from: Some(2.0),
                to: Some(1.0),
                ..none.clone()
            },
        ),
    ] {
        let error = solve_for(technique, &bad).unwrap_err().to_string();
        assert!(error.starts_with(&format!("{field}: ")), "{error}");
    }
}

/// Shots that the model itself makes with hidden coefficients, each measurement straying a little.
struct Truth {
    technique: &'static dyn Technique,
    coefficient: &'static str,
    hidden: f64,
    figure: &'static str,
    lever: &'static str,
    stray: f64,
}

impl Truth {
    fn measure(&self, inputs: &Inputs, stray: f64) -> f64 {
        let mut inputs = exact(self.technique, inputs);
        set(&mut inputs, self.coefficient, self.hidden, Some(0.0));
        let assessment = self.technique.assess(&inputs).unwrap();
        let figure = assessment
            .figures
            .iter()
            .find(|one| one.name == self.figure);
        figure.unwrap().value + stray
    }

    fn shot(&self, lever: f64, stray: f64) -> TestShot {
        let mut inputs = plausible(self.technique.name());
        set(&mut inputs, self.lever, lever, None);
        let value = self.measure(&inputs, stray);
        TestShot {
            inputs,
            measured: BTreeMap::from([(self.figure.to_owned(), value)]),
        }
    }

    fn request(&self, next: f64, shots: Vec<TestShot>) -> CalibrateRequest {
        let mut inputs = plausible(self.technique.name());
        set(&mut inputs, self.lever, next, None);
        CalibrateRequest {
            inputs,
            shots,
            coefficients: Some(vec![self.coefficient.to_owned()]),
            confidence: 0.9,
        }
    }
}

fn fall() -> Truth {
    Truth {
        technique: find("high-fall").unwrap(),
        coefficient: "usable_depth",
        hidden: 0.58,
        figure: "mean_felt",
        lever: "drop_height",
        stray: 4.0,
    }
}

/// Near enough normal for a stray: the sum of twelve shares less six (the central limit theorem).
fn stray(generator: &mut Generator) -> f64 {
    (0..12).map(|_| generator.share()).sum::<f64>() - 6.0
}

#[test]
fn calibration_recovers_what_made_the_shots() {
    let truth = fall();
    let shots = [6.0, 8.0, 10.0, 12.0]
        .map(|height| truth.shot(height, 0.0))
        .to_vec();
    let found = calibrate(truth.technique, &truth.request(14.0, shots)).unwrap();
    close(found.coefficients[0].value, truth.hidden, 1e-6);
    assert_eq!(found.coefficients[0].stated, 0.7);
    let mut next = plausible("high-fall");
    set(&mut next, "drop_height", 14.0, None);
    close(found.prediction[0].value, truth.measure(&next, 0.0), 1e-6);
    assert!(found.prediction[0].stated.unwrap() < found.prediction[0].value);
    assert_eq!(found.shots.len(), 4);
}

/// Nine new shots in ten lie within the 90 % interval.
#[test]
fn the_prediction_interval_holds_what_it_says() {
    let truth = fall();
    let mut generator = Generator::new(90);
    let heights = [6.0, 7.0, 8.0, 9.0, 10.0, 11.0];
    let clean = heights.map(|height| truth.shot(height, 0.0));
    let mut next = plausible("high-fall");
    set(&mut next, "drop_height", 14.0, None);
    let landed = truth.measure(&next, 0.0);
    let (trials, mut held) = (1000, 0);
    for _ in 0..trials {
        let shots = clean.clone().map(|mut shot| {
            for value in shot.measured.values_mut() {
                *value += truth.stray * stray(&mut generator);
            }
            shot
        });
        let found = calibrate(truth.technique, &truth.request(14.0, shots.to_vec())).unwrap();
        let prediction = &found.prediction[0];
        let new = landed + truth.stray * stray(&mut generator);
        held += u32::from((prediction.low..=prediction.high).contains(&new));
    }
    let share = f64::from(held) / f64::from(trials);
    assert!((0.86..=0.94).contains(&share), "{share}");
}

/// A figure that was measured once lies on the fit, and must not for that count as exact: the interval
/// still holds nine new shots in ten.
#[test]
fn a_figure_measured_once_does_not_pass_for_exact() {
    let truth = fall();
    let mut generator = Generator::new(17);
    let heights = [6.0, 7.0, 8.0, 9.0, 10.0];
    let clean = heights.map(|height| truth.shot(height, 0.0));
    let depth = Truth {
        figure: "stopping_distance",
        ..fall()
    };
    let once = depth.shot(11.0, 0.0);
    let mut next = plausible("high-fall");
    set(&mut next, "drop_height", 14.0, None);
    let landed = truth.measure(&next, 0.0);
    let (trials, mut held) = (300, 0);
    for _ in 0..trials {
        let mut shots: Vec<TestShot> = clean.to_vec();
        shots.push(once.clone());
        for shot in &mut shots {
            for (name, value) in &mut shot.measured {
                // Both stray by much the same share of their size.
                let by = if name == "mean_felt" { 4.0 } else { 0.06 };
                *value += by * stray(&mut generator);
            }
        }
        let found = calibrate(truth.technique, &truth.request(14.0, shots)).unwrap();
        let prediction = found
            .prediction
            .iter()
            .find(|one| one.figure == "mean_felt")
            .unwrap();
        let new = landed + 4.0 * stray(&mut generator);
        held += u32::from((prediction.low..=prediction.high).contains(&new));
    }
    let share = f64::from(held) / f64::from(trials);
    assert!((0.84..=0.96).contains(&share), "{share}");
}

#[test]
fn a_fit_that_would_take_hours_is_refused() {
    let truth = fall();
    let shots = vec![truth.shot(8.0, 1.0); 200];
    let mut request = truth.request(14.0, shots);
    request.coefficients = None;
    for (at, shot) in request.shots.iter_mut().enumerate() {
        for value in shot.measured.values_mut() {
            *value += 0.01 * at as f64;
        }
    }
    // Refused for what it cannot settle or for what it would cost, but answered.
    let error = calibrate(truth.technique, &request)
        .unwrap_err()
        .to_string();
    assert!(
        error.contains("too many shots") || error.contains("cannot settle"),
        "{error}"
    );
}

#[test]
fn calibration_refuses_what_the_shots_cannot_settle() {
    let truth = fall();
    let refusal = |request: &CalibrateRequest| match calibrate(truth.technique, request) {
        Err(AssessError::BadValue { name, problem }) => (name, problem),
        other => panic!("{other:?}"),
    };
    let one = vec![truth.shot(8.0, 0.0)];
    let (name, problem) = refusal(&truth.request(14.0, one.clone()));
    assert_eq!(name, "shots");
    assert!(
        problem.contains("at least 1 more") && problem.contains("A shot with"),
        "{problem}"
    );
    // The time of the fall does not depend on the catcher.
    let timed = [6.0, 8.0, 10.0].map(|height| {
        let mut shot = truth.shot(height, 0.0);
        shot.measured = BTreeMap::from([("fall_time".to_owned(), 1.0 + 0.01 * height)]);
        shot
    });
    let (name, problem) = refusal(&truth.request(14.0, timed.to_vec()));
    assert_eq!(name, "usable_depth");
    assert!(
        problem.contains("cannot settle usable share of depth"),
        "{problem}"
    );
    assert!(problem.contains("measuring"), "{problem}");
    let mut twice = truth.request(14.0, one.clone());
    twice.coefficients = Some(vec!["usable_depth".to_owned(), "usable_depth".to_owned()]);
    assert_eq!(refusal(&twice).0, "coefficients");
    let mut wrong = truth.request(14.0, one);
    wrong.shots[0].measured.insert("grace".to_owned(), 1.0);
    assert_eq!(refusal(&wrong).0, "figure");
    wrong.confidence = 1.0;
    assert_eq!(refusal(&wrong).0, "confidence");
}

/// One tape read in two ways: how far a drag runs on after the release, and what that leaves of clear ground.
fn taped(distance: f64, clear: f64) -> TestShot {
    let mut inputs = plausible("horse-fall");
    set(&mut inputs, "clear_ground", clear, None);
    TestShot {
        inputs,
        measured: BTreeMap::from([
            ("release_distance".to_owned(), distance),
            ("ground_left".to_owned(), clear - distance),
        ]),
    }
}

fn tape_request(shots: Vec<TestShot>, clear: f64) -> CalibrateRequest {
    let mut inputs = plausible("horse-fall");
    set(&mut inputs, "clear_ground", clear, None);
    CalibrateRequest {
        inputs,
        shots,
        coefficients: Some(vec!["ground_friction".to_owned()]),
        confidence: 0.9,
    }
}

/// What the model gives for the drag with the friction as stated.
fn run_on() -> f64 {
    let drag = find("horse-fall").unwrap();
    let inputs = exact(drag, &plausible("horse-fall"));
    let figures = drag.assess(&inputs).unwrap().figures;
    let found = figures.iter().find(|one| one.name == "release_distance");
    found.unwrap().value
}

/// A reading in two ways is one reading: nine new shots in ten lie within the interval of either figure, and
/// the figure that is near nothing strays as far as the other.
#[test]
fn one_tape_read_twice_is_no_surer_than_once() {
    let drag = find("horse-fall").unwrap();
    let true_distance = run_on();
    // So little ground that what is left of it is small beside the distance.
    let clear = true_distance + 0.5;
    let mut generator = Generator::new(31);
    for count in [2, 4] {
        let (trials, mut held) = (300, [0, 0]);
        for _ in 0..trials {
            let shots = (0..count)
                .map(|_| taped(true_distance + 0.1 * stray(&mut generator), clear))
                .collect();
            let found = calibrate(drag, &tape_request(shots, clear)).unwrap();
            let new = true_distance + 0.1 * stray(&mut generator);
            for (at, (figure, value)) in [("release_distance", new), ("ground_left", clear - new)]
                .into_iter()
                .enumerate()
            {
                let prediction = found.prediction.iter().find(|one| one.figure == figure);
                let prediction = prediction.unwrap();
                held[at] += u32::from((prediction.low..=prediction.high).contains(&value));
            }
            let width = |at: usize| found.prediction[at].high - found.prediction[at].low;
            // What a tape reads to may hold up the longer reading's alone, never by much.
            let ratio = width(0) / width(1);
            assert!((0.6..=1.0 / 0.6).contains(&ratio), "{ratio}");
        }
        for held in held {
            let share = f64::from(held) / f64::from(trials);
            // Never surer than it says; with so few shots it may hold more.
            assert!(share >= 0.86, "{count} shots: {share}");
        }
    }
}

#[test]
fn readings_of_one_shot_cannot_say_how_sure_they_are() {
    let drag = find("horse-fall").unwrap();
    let error = calibrate(drag, &tape_request(vec![taped(4.0, 20.0)], 20.0)).unwrap_err();
    assert!(
        error
            .to_string()
            .starts_with("shots: 1 measured shots cannot settle 1 coefficients"),
        "{error}"
    );
}

/// Two readings that are alike were rounded: each strays by the deviation of a rounded last digit at least,
/// a root of a twelfth of it (uniform distribution). Student's t at 90 % with one degree of freedom is 6.314.
#[test]
fn readings_that_are_alike_are_not_exact() {
    let drag = find("horse-fall").unwrap();
    let distance = (10.0 * run_on()).round() / 10.0;
    let mut shots = vec![taped(distance, 20.0); 2];
    for shot in &mut shots {
        shot.measured.remove("ground_left");
    }
    let found = calibrate(drag, &tape_request(shots, 20.0)).unwrap();
    let prediction = &found.prediction[0];
    let half = 0.5 * (prediction.high - prediction.low);
    assert!(half >= 6.31 * 0.1 / 12.0_f64.sqrt(), "{half}");
    assert!(half < 1.0, "{half}");
}

/// A body that floats less and less sinks deeper without end: a depth that lies between the last place looked
/// at that has one and the first that has none is found.
#[test]
fn roots_beside_the_end_of_what_is_given_are_found() {
    let water = find("water-work").unwrap();
    let mut request = SolveRequest {
        inputs: exact(water, &plausible("water-work")),
        parameter: "float_force".to_owned(),
        figure: "depth_reached".to_owned(),
        wanted: 5.0,
        from: None,
        to: None,
    };
    for wanted in [5.0, 6.0, 7.0] {
        request.wanted = wanted;
        let solution = solve_for(water, &request).unwrap();
        let [root] = solution.roots[..] else {
            panic!("{wanted}: {solution:?}");
        };
        assert!(
            root > 0.0 && solution.highest.unwrap() > wanted,
            "{solution:?}"
        );
        let mut inputs = request.inputs.clone();
        set(&mut inputs, "float_force", root, Some(0.0));
        let figures = water.assess(&inputs).unwrap().figures;
        let depth = figures.iter().find(|one| one.name == "depth_reached");
        close(depth.unwrap().value, wanted, 1e-5);
    }
}

/// For every technique that has coefficients, each alone is found again from clean shots of a figure that
/// it moves.
#[test]
fn every_techniques_coefficients_are_found_again() {
    for technique in techniques() {
        for name in technique.coefficients() {
            let base = exact(*technique, &plausible(technique.name()));
            let parameter = technique.parameters().iter().find(|one| one.name == *name);
            let parameter = parameter.expect("a coefficient is a parameter");
            let (min, max) = parameter.range().expect("a coefficient is a number");
            let default = match parameter.kind {
                ParameterKind::Number { default, .. } => default,
                ParameterKind::Choice { .. } => None,
            };
            let stated = number(&base, name)
                .or(default)
                .expect("a coefficient has a value");
            let hidden = (stated + 0.1 * stated.abs().max(0.02 * (max - min))).min(max);
            let hidden = if hidden > stated {
                hidden
            } else {
                stated - 0.1 * (stated - min)
            };
            let figures = |value: f64, factor: f64| {
                let mut inputs = base.clone();
                for one in technique.parameters() {
                    if one.name == "performer_mass"
                        && let (Some(mass), Some((low, high))) =
                            (number(&base, one.name), one.range())
                    {
                        set(
                            &mut inputs,
                            one.name,
                            (mass * factor).clamp(low, high),
                            Some(0.0),
                        );
                    }
                }
                let shot = inputs.clone();
                set(&mut inputs, name, value, Some(0.0));
                (shot, technique.assess(&inputs).unwrap().figures)
            };
            let (_, before) = figures(stated, 1.0);
            let (_, after) = figures(hidden, 1.0);
            let moved = before.iter().find(|one| {
                let later = after.iter().find(|other| other.name == one.name);
                later.is_some_and(|later| (later.value - one.value).abs() > 1e-4 * one.value.abs())
                    && one.name != "pressure_needed"
            });
            let figure = &moved
                .unwrap_or_else(|| panic!("{} {name} moves nothing", technique.name()))
                .name;
            let shots = [0.9, 1.0, 1.1].map(|factor| {
                let (inputs, figures) = figures(hidden, factor);
                let value = figures
                    .iter()
                    .find(|one| one.name == *figure)
                    .unwrap()
                    .value;
                TestShot {
                    inputs,
                    measured: BTreeMap::from([(figure.clone(), value)]),
                }
            });
            let request = CalibrateRequest {
                inputs: base.clone(),
                shots: shots.to_vec(),
                coefficients: Some(vec![(*name).to_owned()]),
                confidence: 0.9,
            };
            let found = calibrate(*technique, &request)
                .unwrap_or_else(|error| panic!("{} {name}: {error}", technique.name()));
            let value = found.coefficients[0].value;
            assert!(
                (value - hidden).abs() <= 0.02 * (hidden - stated).abs(),
                "{} {name} by {figure}: {value}, not {hidden}",
                technique.name()
            );
        }
    }
}

#[test]
fn comparison_shows_what_moved() {
    for technique in techniques() {
        let before = plausible(technique.name());
        let same = CompareRequest {
            before: before.clone(),
            after: before.clone(),
        };
        let found = compare(*technique, &same).unwrap();
        assert!(found.inputs.is_empty());
        assert!(
            found
                .figures
                .iter()
                .all(|one| !one.moved && one.before == one.after)
        );
        assert!(found.checks.iter().all(|one| !one.moved));
    }
    let technique = find("high-fall").unwrap();
    let before = plausible("high-fall");
    let mut after = before.clone();
    set(&mut after, "drop_height", 40.0, None);
    let found = compare(technique, &CompareRequest { before, after }).unwrap();
    assert_eq!(found.inputs.len(), 1);
    assert_eq!(found.inputs[0].name, "drop_height");
    let moved = |name: &str| {
        found
            .figures
            .iter()
            .find(|one| one.name == name)
            .unwrap()
            .moved
    };
    assert!(moved("impact_speed") && !moved("stopping_distance"));
    let ceiling = found
        .checks
        .iter()
        .find(|one| one.name == "catcher_ceiling")
        .unwrap();
    assert!(ceiling.moved, "{ceiling:?}");
}
