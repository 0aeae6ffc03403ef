//! Slide-ins and car hits: outside values of their models, and what they say of plans.

use crate::common::{
    GRAVITY,
    Given::{Exact, Number, Option, Within},
    assess, assess_exactly, close, inputs, plausible, says, value,
};
use gagwright_mechanics::{
    Assessment, InputValue, Inputs, Shape, Standing, Status, find,
    models::{
        head, pedestrian,
        slide::{self, Slide},
    },
    tools::{SpreadRequest, spread},
};
use serde_json::Value;

const MILE_AN_HOUR: f64 = 0.447_04;
const FOOT: f64 = 0.3048;
const DEGREE: f64 = core::f64::consts::PI / 180.0;

fn status(assessment: &Assessment, name: &str) -> Status {
    let found = assessment.checks.iter().find(|check| check.name == name);
    found
        .unwrap_or_else(|| panic!("{} has no check {name}", assessment.technique))
        .status
}

#[test]
fn braking_is_what_the_tables_say() {
    // UK Highway Code, typical stopping distances: braking ft = V^2 / 20, that is 0.67 g, and thinking
    // 1 ft for each mile an hour, that is 0.682 s; m by mph, each rounded to a metre in print.
    let braking = |v: f64| slide::deceleration(v, 0.0);
    for (mph, printed) in [
        (20.0, 12.0),
        (30.0, 23.0),
        (40.0, 36.0),
        (50.0, 53.0),
        (60.0, 73.0),
        (70.0, 96.0),
    ] {
        let found =
            slide::stopping_distance(mph * MILE_AN_HOUR, 0.3048 / MILE_AN_HOUR, braking(0.6687))
                .unwrap();
        assert!((found - printed).abs() <= 1.0, "{mph}: {found}");
    }
    // AASHTO stopping sight distance, t 2.5 s and a 11.2 ft/s2, calculated values, ft by mph: the table adds
    // two parts that are each rounded to a tenth.
    for (mph, feet) in [
        (15.0, 76.7),
        (35.0, 246.2),
        (50.0, 423.8),
        (60.0, 566.0),
        (70.0, 727.6),
    ] {
        assert!(
            (slide::sight_distance_feet(mph) - feet).abs() < 0.11,
            "{mph}"
        );
        // The same from SI: the formula's rounded factors are within half a per cent.
        let metres = slide::stopping_distance(mph * MILE_AN_HOUR, 2.5, 11.2 * FOOT).unwrap();
        close(metres / FOOT, feet, 5e-3);
    }
    // Skid marks: v = sqrt(2 mu g d), 30 m at 0.5 from 17.15 m/s, at 0.6 from 18.79 m/s.
    for (friction, speed) in [(0.5, 17.15), (0.6, 18.79)] {
        close(
            slide::braking_distance(speed, 0.0, braking(friction)).unwrap(),
            30.0,
            1e-3,
        );
    }
    assert_eq!(
        slide::braking_distance(10.0, 0.0, slide::deceleration(0.1, -0.2)),
        None
    );
    // NHTSA static stability factor T / 2H: 1.6 and 0.8 m tip at 1.0 g; 1.5 and 0.55 m, 1.364.
    close(slide::stability_factor(1.6, 0.8), 1.0, 1e-12);
    close(slide::stability_factor(1.5, 0.55), 1.364, 3e-4);
}

const CAR: Slide = Slide {
    speed: 10.0,
    heading: 0.0,
    steer: 0.0,
    friction: 0.7,
    rise: 0.0,
    wheelbase: 2.7,
    front_share: 0.58,
    yaw_radius: 1.27,
};

#[test]
fn slides_end_where_energy_says() {
    // Straight on, only the rear axle's 0.42 of the weight rubs: v^2 / (2 x 0.42 mu g); side on, all of it
    // (elementary mechanics). Friction fades below 0.05 m/s, hence the last per cent.
    let straight = slide::slide(&CAR).unwrap();
    close(straight.along, 100.0 / (2.0 * 0.42 * 0.7 * GRAVITY), 5e-3);
    assert_eq!(straight.aside, 0.0);
    let sideways = slide::slide(&Slide {
        heading: core::f64::consts::FRAC_PI_2,
        front_share: 0.5,
        ..CAR
    })
    .unwrap();
    close(sideways.along, 100.0 / (2.0 * 0.7 * GRAVITY), 2e-2);
    // Steering left and right are mirror images.
    let left = slide::slide(&Slide { steer: 0.2, ..CAR }).unwrap();
    let right = slide::slide(&Slide { steer: -0.2, ..CAR }).unwrap();
    close(left.along, right.along, 1e-9);
    close(left.heading, -right.heading, 1e-9);
    assert!(left.heading > 1.0 && left.along < straight.along);
    // Downhill steeper than the locked axle holds, it never rests.
    assert_eq!(
        slide::slide(&Slide {
            friction: 0.1,
            rise: -0.17,
            ..CAR
        }),
        None
    );
}

#[test]
fn slides_agree_with_dop853() {
    // fixtures/vehicles.json: SciPy's DOP853 on the same equations, by tests/reference/fixtures/vehicles.py.
    let all: Value = serde_json::from_str(include_str!("../fixtures/vehicles.json")).unwrap();
    let cases = all["slide"].as_array().unwrap();
    assert_eq!(cases.len(), 3);
    for case in cases {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let found = |name: &str| case["found"][name].as_f64().unwrap();
        let rest = slide::slide(&Slide {
            speed: given("speed"),
            heading: given("heading"),
            steer: given("steer"),
            friction: given("friction"),
            rise: given("rise"),
            wheelbase: given("wheelbase"),
            front_share: given("front_share"),
            yaw_radius: given("yaw_radius"),
        })
        .unwrap();
        close(rest.along, found("along"), 3e-4);
        close(rest.heading, found("heading"), 1e-3);
        close(rest.time, found("time"), 4e-3);
        close(rest.aside, found("aside"), 1e-3);
    }
}

#[test]
fn a_slide_in_is_judged_wet_and_dry() {
    let good = assess("slide-in", &[]);
    for name in [
        "reach_dry",
        "reach_wet",
        "gap_dry",
        "gap_wet",
        "side_room",
        "tipping_margin",
        "abort_room",
    ] {
        assert_eq!(status(&good, name), Status::Within, "{name}");
    }
    assert!(value(&good, "gap_wet") < value(&good, "gap_dry"));
    assert!(says(&good, "rain"));
    // The plan's own acceptance is the limit, and says so.
    let reach = good
        .checks
        .iter()
        .find(|check| check.name == "reach_dry")
        .unwrap();
    assert_eq!(reach.source.standing, Standing::Plan);
    // On the dry it stays inside; on ice it comes to the people.
    let ice = assess("slide-in", &[("friction_wet", Number(0.2))]);
    assert_eq!(status(&ice, "reach_dry"), Status::Within);
    assert_eq!(status(&ice, "reach_wet"), Status::Exceeded);
    assert_eq!(status(&ice, "abort_room"), Status::Exceeded);
    // With the middle exactly on the allowance half of the runs pass it (symmetry of the normal),
    let mark = 23.6 + value(&good, "past_mark");
    let half = assess(
        "slide-in",
        &[
            ("mark_distance", Exact(mark)),
            ("mark_allowance", Exact(0.0)),
        ],
    );
    // up to the runs' longer tail, which moves the middle by a hair.
    close(value(&half, "pass_dry"), 0.5, 0.01);
    // One spread further back 0.1587 of them (tables of the normal distribution), and somewhat more for that tail.
    let spread = value(&good, "spread_dry");
    let back = assess(
        "slide-in",
        &[
            ("mark_distance", Exact(mark)),
            ("mark_allowance", Exact(spread)),
        ],
    );
    let passes = value(&back, "pass_dry");
    assert!((0.158_655..0.175).contains(&passes), "{passes}");
    assert_eq!(status(&back, "pass_dry"), Status::Exceeded);
    let near = assess("slide-in", &[("people_distance", Number(3.0))]);
    assert_eq!(status(&near, "gap_dry"), Status::Exceeded);
    let tall = assess("slide-in", &[("centre_height", Number(1.0))]);
    assert_eq!(status(&tall, "tipping_margin"), Status::Exceeded);
    let narrow = assess("slide-in", &[("corridor_half_width", Number(2.5))]);
    assert_eq!(status(&narrow, "side_room"), Status::Exceeded);
    let hopeful = assess("slide-in", &[("friction_dry", Number(0.9))]);
    assert_eq!(status(&hopeful, "friction_claim"), Status::Exceeded);
    let fast = assess("slide-in", &[("slide_speed", Number(16.0))]);
    assert!(says(&fast, "no_braking"));
    assert!(value(&fast, "heading") > value(&good, "heading"));
    assert_eq!(status(&fast, "heading"), Status::Exceeded);
    let hill = assess(
        "slide-in",
        &[
            ("road_rise", Number(-0.17)),
            ("friction_dry", Number(0.1)),
            ("surface_state", Option("dry")),
        ],
    );
    assert!(says(&hill, "no_stop"));
    assert_eq!(status(&hill, "reach_dry"), Status::Unknown);
}

#[test]
fn chances_follow_the_stopping_law_into_its_tail() {
    let (mean, deviation) = (0.7, 0.05);
    let plan = |people: f64| {
        let mut given: Inputs = plausible("slide-in");
        let changes = [
            ("approach_speed", Exact(15.0)),
            ("slide_speed", Exact(10.0)),
            ("reaction_time", Exact(0.2)),
            ("brake_share", Exact(0.8)),
            ("steer_angle", Exact(0.3)),
            ("road_rise", Exact(0.0)),
            ("front_share", Exact(0.55)),
            ("surface_state", Option("dry")),
            ("friction_dry", Exact(mean - 3.8 * deviation)),
            ("people_distance", Exact(people)),
        ];
        given.0.extend(inputs(&changes).0);
        given
    };
    // Friction is all that varies: 0.7 with a tolerance of two deviations. The chance is then exactly that
    // of the friction at which the nose reaches; here 3.8 deviations down, 7.235e-5 by the normal's tables.
    let stops = find("slide-in").unwrap().assess(&plan(30.0)).unwrap();
    let people = 30.0 - value(&stops, "gap_dry");
    let mut given = plan(people);
    given.0.insert(
        "friction_dry".into(),
        InputValue::Number {
            value: mean,
            tolerance: Some(2.0 * deviation),
        },
    );
    let spread = find("slide-in").unwrap().assess(&given).unwrap();
    close(value(&spread, "reach_dry"), 7.235e-5, 0.05);
}

#[test]
fn a_car_that_slides_back_down_past_its_mark_is_answered() {
    // Up 6 degrees with a friction of 0.17 its locked wheels do not hold it: it turns, slides back and comes to rest
    // 13.8 m behind where the hand brake came on, lying across the slope.
    let mut given: Inputs = plausible("slide-in");
    let changes = [
        ("approach_speed", Exact(8.0)),
        ("slide_speed", Exact(8.0)),
        ("reaction_time", Exact(0.0)),
        ("steer_angle", Exact(40.0 * DEGREE)),
        ("road_rise", Exact(6.0 * DEGREE)),
        ("wheelbase", Exact(2.7)),
        ("front_share", Exact(0.6)),
        ("friction_dry", Within(0.17, 0.02)),
        ("friction_wet", Within(0.17, 0.02)),
    ];
    given.0.extend(inputs(&changes).0);
    let found = find("slide-in").unwrap().assess(&given).unwrap();
    let stop = value(&found, "slide_distance");
    assert!(stop < -13.0, "{stop}");
    // Where its middle came furthest, by the trace of its path: at least as far as a stop at the most that friction
    // and slope can slow it, v^2 / 2 g (mu cos + sin).
    let path = found
        .traces
        .iter()
        .find(|trace| trace.name == "path")
        .unwrap();
    let along = &path.y[0].values;
    let furthest = along.iter().copied().fold(0.0, f64::max);
    assert!(furthest > 64.0 / (2.0 * slide::deceleration(0.17, 6.0 * DEGREE)));
    // People and the run-off are held against that, and the way back lies in the run-off too.
    let room = 25.0 + 6.0;
    given.0.extend(
        inputs(&[
            ("mark_distance", Exact(25.0)),
            ("people_distance", Exact(6.0)),
        ])
        .0,
    );
    let found = find("slide-in").unwrap().assess(&given).unwrap();
    let gap = value(&found, "gap");
    assert!(
        gap < room - furthest - 0.5 * 1.5 && gap > room - furthest - 4.0,
        "{gap}"
    );
    let zone = found.zones.iter().find(|zone| zone.name == "run_off");
    let Shape::Rectangle { x0, x1, .. } = zone.unwrap().shape else {
        panic!("{zone:?}");
    };
    assert!(x0 < stop - 0.75 && x1 > furthest + 0.75, "{x0} to {x1} m");
    assert!(found.cautions.iter().any(|one| one.name == "slides_back"));
    // On the flat nothing of this is said.
    given.0.extend(inputs(&[("road_rise", Exact(0.0))]).0);
    let flat = find("slide-in").unwrap().assess(&given).unwrap();
    assert!(flat.cautions.iter().all(|one| one.name != "slides_back"));
    let zone = flat.zones.iter().find(|zone| zone.name == "run_off");
    assert!(
        matches!(zone.unwrap().shape, Shape::Rectangle { x0: 0.0, .. }),
        "{zone:?}"
    );
}

#[test]
fn thrown_bodies_go_as_far_as_searle_says() {
    // Searle, SAE 831622: mu 0.66, 25 m from 15.01 to 17.99 m/s; mu 0.7, 20 m from 13.58 to 16.57 m/s, at
    // 20 degrees 14.05 m/s.
    close(pedestrian::least_speed(0.66, 25.0), 15.01, 1e-3);
    close(pedestrian::most_speed(0.66, 25.0), 17.99, 1e-3);
    close(pedestrian::least_speed(0.7, 20.0), 13.58, 1e-3);
    close(pedestrian::most_speed(0.7, 20.0), 16.57, 1e-3);
    close(pedestrian::speed_at(0.7, 20.0, 20.0 * DEGREE), 14.05, 1e-3);
    // The same read the other way.
    close(pedestrian::throws(0.7, 16.57).0, 20.0, 1e-3);
    close(pedestrian::throws(0.7, 13.58).1, 20.0, 1e-3);
    // Momentum: 1,500 kg at 10 m/s with 80 kg, 9.494 m/s.
    close(pedestrian::plastic(1500.0, 10.0, 80.0), 9.494, 1e-3);
}

#[test]
fn head_injury_criterion_of_known_pulses() {
    // 49 CFR 571.208 S6.2: 60 g for 50 ms is 418.3 over 15 ms and 1,003.9 over 36 ms; half a sine of 100 g and
    // 20 ms, 829.3 (numerical maximum of the formula).
    let pulse = |peak: f64, time: f64, sine: bool| -> Vec<(f64, f64)> {
        (0..=2000)
            .map(|i| {
                let share = f64::from(i) / 2000.0;
                let shape = if sine {
                    libm::sin(core::f64::consts::PI * share)
                } else {
                    1.0
                };
                (share * time, peak * GRAVITY * shape)
            })
            .collect()
    };
    let square = pulse(60.0, 0.05, false);
    close(head::injury_criterion(&square, 0.015), 418.3, 5e-3);
    close(head::injury_criterion(&square, 0.036), 1003.9, 5e-3);
    close(
        head::injury_criterion(&pulse(100.0, 0.02, true), 0.015),
        829.3,
        5e-3,
    );
}

#[test]
fn a_car_hit_never_has_both_live() {
    let good = assess("car-hit", &[]);
    for check in &good.checks {
        if check.blocking {
            assert_eq!(
                check.status,
                Status::Within,
                "{}: {}",
                check.name,
                check.detail
            );
        }
    }
    let live = assess("car-hit", &[("passes", Option("both_live"))]);
    let check = live
        .checks
        .iter()
        .find(|check| check.name == "both_live")
        .unwrap();
    assert_eq!(check.status, Status::Exceeded);
    assert!(check.blocking);
    assert!(says(&live, "refused"));
    // Passes that overlap on the clock, whichever goes first, and a car left in the pull's way.
    for start in [30.0, -60.0, 0.0] {
        let overlap = assess("car-hit", &[("performer_start", Number(start))]);
        assert_eq!(status(&overlap, "time_gap"), Status::Exceeded, "{start}");
        assert!(says(&overlap, "overlap"));
    }
    let before = assess("car-hit", &[("performer_start", Number(-600.0))]);
    assert_eq!(status(&before, "time_gap"), Status::Within);
    close(value(&before, "time_gap"), 480.0, 1e-12);
    let near = assess("car-hit", &[("car_parked", Number(4.0))]);
    assert_eq!(status(&near, "space_gap"), Status::Exceeded);
}

#[test]
fn a_car_hit_keeps_its_marks() {
    let good = assess("car-hit", &[]);
    // 30 m at 10 m/s; the performer moves 2.92 + 0.08 s after the mark: contact in step.
    close(value(&good, "contact_time"), 3.0, 1e-12);
    assert!(value(&good, "registration") < 1e-9);
    // Momentum again, through the technique: 1,500 kg and 72 kg.
    close(value(&good, "common_speed"), 15_000.0 / 1572.0, 1e-12);
    // v^2 / 2 mu g past the mark, when it brakes there.
    close(value(&good, "stop_past"), 100.0 / (1.4 * GRAVITY), 1e-12);
    let late = assess("car-hit", &[("trigger", Exact(2.92 + 5.0 / 24.0))]);
    close(value(&late, "registration"), 5.0, 1e-9);
    assert_eq!(status(&late, "registration"), Status::Exceeded);
    close(value(&late, "slip_needed"), -5.0, 1e-12);
    let slipped = assess(
        "car-hit",
        &[
            ("trigger", Exact(2.92 + 5.0 / 24.0)),
            ("slipped_frames", Exact(-5.0)),
        ],
    );
    assert!(value(&slipped, "registration") < 1e-9);
    // Braking 5 m early: v^2 - 2 mu g 5, and the time it takes.
    let early = assess("car-hit", &[("brake_before", Exact(5.0))]);
    let speed = f64::sqrt(100.0 - 7.0 * GRAVITY);
    close(value(&early, "contact_speed"), speed, 1e-12);
    close(
        value(&early, "contact_time"),
        2.5 + (10.0 - speed) / (0.7 * GRAVITY),
        1e-12,
    );
    let far = assess("car-hit", &[("thrown_distance", Number(25.0))]);
    assert_eq!(status(&far, "throw_miss"), Status::Exceeded);
    let hard = assess(
        "car-hit",
        &[("pad_stop", Number(0.02)), ("pick_height", Number(3.0))],
    );
    assert_eq!(status(&hard, "head_criterion"), Status::Exceeded);
    let short = assess("car-hit", &[("pad_near", Number(4.0))]);
    assert_eq!(status(&short, "pads_near"), Status::Exceeded);
    let snatch = assess("car-hit", &[("pull_travel", Number(0.3))]);
    assert_eq!(status(&snatch, "pull_acceleration"), Status::Exceeded);
    let stopped = assess("car-hit", &[("brake_before", Number(10.0))]);
    assert!(says(&stopped, "short"));
    assert_eq!(status(&stopped, "contact_speed"), Status::Unknown);
    let wall = assess("car-hit", &[("camera_distance", Number(8.0))]);
    assert_eq!(status(&wall, "stop_gap"), Status::Exceeded);
}

fn interval(assessment: &Assessment, name: &str) -> (f64, f64) {
    let found = assessment.figures.iter().find(|figure| figure.name == name);
    let found = found.unwrap_or_else(|| panic!("no figure {name}"));
    (found.low, found.high)
}

fn with_tolerance(technique: &str, name: &str, value: f64, tolerance: f64) -> Assessment {
    let mut given: Inputs = plausible(technique);
    let number = InputValue::Number {
        value,
        tolerance: Some(tolerance),
    };
    given.0.insert(name.to_owned(), number);
    find(technique).unwrap().assess(&given).unwrap()
}

#[test]
fn a_slide_swings_out_further_than_it_rests() {
    // The path itself is the measure: nothing of the car may pass the reach on the way. Half a width is the least
    // that a car reaches from its middle, however it lies.
    for speed in [12.0, 16.0, 20.0, 25.0] {
        for degrees in [6.0, 14.0, 22.0, 30.0, 40.0] {
            let run = assess_exactly(
                "slide-in",
                &[
                    ("approach_speed", Number(speed)),
                    ("slide_speed", Number(speed)),
                    ("steer_angle", Number(degrees * DEGREE)),
                ],
            );
            let path = run
                .traces
                .iter()
                .find(|trace| trace.name == "path")
                .unwrap();
            let most = path.y[1]
                .values
                .iter()
                .fold(0.0_f64, |most, aside| most.max(aside.abs()));
            assert!(
                value(&run, "side_reach") >= most + 0.9,
                "{speed} {degrees}: {most}"
            );
        }
    }
    // 20 m/s with 30 degrees on 0.7: it rests 1.8 m aside, and a corner reaches 5.30 m on the way (each corner from
    // the path and the heading at each moment), where 5 m are clear.
    let out = [
        ("approach_speed", Number(20.0)),
        ("slide_speed", Number(20.0)),
        ("steer_angle", Number(30.0 * DEGREE)),
        ("friction_wet", Number(0.7)),
        ("people_distance", Number(60.0)),
        ("corridor_half_width", Number(5.0)),
    ];
    let swings = assess_exactly("slide-in", &out);
    assert!(value(&swings, "aside").abs() < 2.0);
    assert!(value(&swings, "side_reach") >= 5.30);
    assert_eq!(status(&swings, "side_room"), Status::Exceeded);
}

#[test]
fn the_nose_stops_before_the_people() {
    // 10 m/s, 1.5 s, then 0.85 x 0.55 g: 15 + 100 / (2 x 4.5846) = 25.906 m for the middle and 2.25 m more for the
    // nose (elementary mechanics), where the people are 27.298 m from the brake mark.
    let changes = [
        ("approach_speed", Number(10.0)),
        ("slide_speed", Number(6.0)),
        ("mark_distance", Number(12.0)),
        ("people_distance", Number(15.298)),
    ];
    let run = assess_exactly("slide-in", &changes);
    close(value(&run, "abort_distance"), 25.906 + 2.25, 1e-4);
    assert_eq!(status(&run, "abort_room"), Status::Exceeded);
    let mut given: Inputs = plausible("slide-in");
    given.0.remove("car_length");
    let unknown = find("slide-in").unwrap().assess(&given).unwrap();
    assert_eq!(status(&unknown, "abort_room"), Status::Unknown);
}

#[test]
fn what_is_clear_may_be_less_than_stated() {
    // What a tolerance allows is possible: where the check at its low end is not within, neither is the whole.
    for (name, check, value) in [
        ("corridor_half_width", "side_room", 8.0),
        ("people_distance", "abort_room", 44.0),
    ] {
        let mut seen = Vec::new();
        for tolerance in [0.0, 0.5, 1.0, 2.0, 4.0, 6.0, 8.0, 12.0, 16.0] {
            let whole = status(&with_tolerance("slide-in", name, value, tolerance), check);
            let low = (value - tolerance).max(1.0);
            let end = status(&with_tolerance("slide-in", name, low, 0.0), check);
            assert!(
                end == Status::Within || whole != Status::Within,
                "{check} {tolerance}"
            );
            seen.push(whole);
        }
        assert_eq!(seen.first(), Some(&Status::Within), "{check}");
        assert_eq!(seen.last(), Some(&Status::Marginal), "{check}");
    }
}

#[test]
fn the_run_off_ends_where_one_run_in_a_million_does() {
    // By its own meaning: with people at the zone's end, the chance to reach them is one in a million.
    for wet in [0.55, 0.35] {
        let run = assess("slide-in", &[("friction_wet", Number(wet))]);
        let Shape::Rectangle { x1, .. } = run.zones[0].shape else {
            panic!("{:?}", run.zones[0].shape)
        };
        let people = x1 - 23.6;
        let at = assess(
            "slide-in",
            &[
                ("friction_wet", Number(wet)),
                ("people_distance", Number(people)),
            ],
        );
        let reach = value(&at, "reach_dry").max(value(&at, "reach_wet"));
        assert!(reach <= 1e-6 * (1.0 + 1e-9), "{wet}: {reach}");
        assert!(reach > 0.9e-6, "{wet}: {reach}");
    }
    // Friction that may be nothing within four of its deviations: 3e-5 of runs never stop.
    let ice = assess("slide-in", &[("friction_wet", Number(0.1))]);
    assert!(says(&ice, "no_end"));
    assert!(!says(&assess("slide-in", &[]), "no_end"));
}

#[test]
fn chances_past_the_mark_are_those_of_many_runs() {
    // Runs drawn one by one from the same tolerances and driven by the model: one in twenty comes further than their
    // own 95 % point. A sum over friction alone, the rest as a normal, is near it; a plain normal gives about 0.036.
    let mut given: Inputs = plausible("slide-in");
    given
        .0
        .extend(inputs(&[("surface_state", Option("wet"))]).0);
    let technique = find("slide-in").unwrap();
    let request = SpreadRequest {
        inputs: given.clone(),
        draws: 4000,
        seed: 7,
    };
    let drawn = spread(technique, &request).unwrap();
    let past = drawn
        .figures
        .iter()
        .find(|f| f.name == "past_mark")
        .unwrap();
    // 4,000 draws place these shares within 0.024 and 0.007 (two deviations of a binomial share).
    for (allowed, share, within) in [(past.median, 0.5, 0.024), (past.high, 0.05, 0.007)] {
        let mut at = given.clone();
        at.0.extend(inputs(&[("mark_allowance", Exact(allowed))]).0);
        let found = value(&technique.assess(&at).unwrap(), "pass_wet");
        assert!((found - share).abs() < within, "{found} {share}");
    }
}

#[test]
fn a_heading_is_off_by_as_much_as_its_far_end() {
    let mut given: Inputs = plausible("slide-in");
    given
        .0
        .extend(inputs(&[("wanted_heading", Exact(1.794_981))]).0);
    let run = find("slide-in").unwrap().assess(&given).unwrap();
    let (low, high) = interval(&run, "heading");
    let (least, most) = interval(&run, "heading_miss");
    // The difference to a fixed heading moves as the heading does.
    close(high - low, most - least, 1e-9);
    close(most, high - 1.794_981, 1e-9);
    for name in ["heading", "heading_short"] {
        assert_ne!(status(&run, name), Status::Within, "{name}");
    }
}

#[test]
fn the_slipperier_surface_is_named_as_it_is() {
    let run = assess(
        "slide-in",
        &[("friction_dry", Number(0.5)), ("friction_wet", Number(0.6))],
    );
    let rain = run
        .cautions
        .iter()
        .find(|caution| caution.name == "rain")
        .unwrap();
    assert!(!rain.text.contains('-'), "{}", rain.text);
    assert!(rain.text.contains("further when the surface is dry"));
}
