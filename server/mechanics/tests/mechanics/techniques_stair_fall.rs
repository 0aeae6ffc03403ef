//! Stair falls: outside values of their models, and what they say of plans.

use crate::common::{
    GRAVITY,
    Given::{self, Exact, Number, Option},
    close, inputs, plausible, says, value,
};
use gagwright_mechanics::{
    Assessment, Inputs, Status, find,
    models::{
        head, head_pulse,
        stair::Tumble,
        stopping::{self, Shape},
    },
};
use serde_json::Value;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("stair-fall");
    given.0.extend(inputs(changes).0);
    find("stair-fall").unwrap().assess(&given).unwrap()
}

fn status(changes: &[(&str, Given)], name: &str) -> Status {
    let found = assess(changes);
    found
        .checks
        .iter()
        .find(|check| check.name == name)
        .unwrap_or_else(|| panic!("no check {name}"))
        .status
}

const BARE: Tumble = Tumble {
    rise: 0.18,
    going: 0.24,
    steps: 10.0,
    start_speed: 0.0,
    spacing: 0.3,
    loss: 1e-7,
    friction: 0.0,
    turning: 0.0,
};

#[test]
fn energy_along_the_stairs() {
    // No friction and no loss: v^2 = 2 g h for h = 1.8 m, 5.942 m/s (elementary mechanics).
    close(
        BARE.foot_speed().unwrap(),
        f64::sqrt(2.0 * GRAVITY * 1.8),
        1e-6,
    );
    close(BARE.foot_speed().unwrap(), 5.942, 1e-4);
    close(BARE.length(), 3.0, 1e-12);
    // Friction alone: v^2 = 2 g (h - f b), b = 2.4 m level (elementary mechanics).
    let rubbed = Tumble {
        friction: 0.4,
        ..BARE
    };
    close(
        rubbed.foot_speed().unwrap(),
        f64::sqrt(2.0 * GRAVITY * (1.8 - 0.4 * 2.4)),
        1e-6,
    );
    // A hoop that rolls has half its energy in turning, so v^2 = g h (any text on mechanics).
    let hoop = Tumble {
        turning: 1.0,
        ..BARE
    };
    close(hoop.foot_speed().unwrap(), f64::sqrt(GRAVITY * 1.8), 1e-6);
    // A slide with no hit to speak of down a slope of friction equal to its pitch keeps its speed.
    let even = Tumble {
        friction: 0.75,
        start_speed: 2.0,
        ..BARE
    };
    close(even.foot_speed().unwrap(), 2.0, 1e-6);
    // Steeper friction stops it: v^2 / (2 g (f cos - sin)) = 4 / (2 g 0.2) = 1.02 m of the 3 m.
    assert_eq!(
        Tumble {
            friction: 1.0,
            ..even
        }
        .foot_speed(),
        None
    );
    // Hits settle where what one takes is what a spacing gives: loss v^2 / 2 = a d (geometric series).
    let long = Tumble {
        loss: 0.3,
        steps: 60.0,
        ..BARE
    };
    let settled = f64::sqrt(2.0 * GRAVITY * 0.6 * 0.3 / 0.3);
    close(long.foot_speed().unwrap(), settled, 1e-6);
}

#[test]
fn friction_stops_a_body_between_contacts() {
    // The slope of friction 1 above: 2 m/s is gone after 1.02 m, so not at the foot of 1.2 m, and of 0.9 m with
    // v^2 = 4 - 2 g 0.2 0.9 left, 0.685 m/s (elementary mechanics). The first contact is beyond both.
    let rough = Tumble {
        friction: 1.0,
        start_speed: 2.0,
        spacing: 4.0,
        loss: 0.5,
        ..BARE
    };
    let flight = |steps| Tumble { steps, ..rough };
    assert_eq!(flight(4.0).foot_speed(), None);
    let foot = flight(3.0).foot_speed().unwrap();
    assert!((0.685..=2.0).contains(&foot), "{foot}");
    close(flight(3.0).first_speed(), 0.685, 2e-3);
    // And over all manner of flights the speed at the foot is there when contact by contact the body comes so far,
    // and never less than what it then has.
    let (mut reached, mut stopped) = (0, 0);
    for i in 0..4000_i32 {
        let part = |of: i32| f64::from(i % of) / f64::from(of);
        let tumble = Tumble {
            rise: 0.1 + 0.2 * part(7),
            going: 0.28,
            steps: 2.0 + f64::from(i % 13),
            start_speed: 0.5 + 3.5 * part(11),
            spacing: 0.2 + 3.0 * part(17),
            loss: 0.02 + 0.88 * part(19),
            friction: 1.2 * part(23),
            turning: part(5),
        };
        let mut last = 0.0;
        let down = tumble.go_down(|moment| last = moment.speed);
        let foot = tumble.foot_speed();
        assert_eq!(foot.is_some(), down.is_some(), "{tumble:?}");
        match foot {
            Some(foot) => assert!(foot >= last * (1.0 - 1e-6), "{foot} {last} {tumble:?}"),
            None => stopped += 1,
        }
        reached += i32::from(foot.is_some());
    }
    assert!(reached > 500 && stopped > 500, "{reached} {stopped}");
}

#[test]
fn the_first_contact_may_be_the_fastest() {
    // By energy: v^2 = 3.3^2 + 2 g (h - f b) / (1 + c) over the first metre of a pitch of 0.18 in 0.28, with
    // c = (0.3 pi)^2 for half a turn a metre: 3.84 m/s (elementary mechanics).
    let plan = [
        ("steps", Exact(12.0)),
        ("rise", Exact(0.18)),
        ("going", Exact(0.28)),
        ("start_speed", Exact(3.3)),
        ("turn_length", Exact(2.0)),
        ("hits_per_turn", Exact(2.0)),
        ("gyration", Exact(0.3)),
        ("hit_loss", Exact(0.6)),
        ("nosing_friction", Exact(0.2)),
        ("performer_mass", Exact(68.0)),
    ];
    let found = assess(&plan);
    close(value(&found, "top_speed"), 3.842, 1e-3);
    assert!(value(&found, "foot_speed") < 3.3);
    // The hit takes 0.6 of the going and the turning: 0.6 68 (1 + 0.888) 3.842^2 / 2 = 568.6 J.
    close(value(&found, "hit_energy"), 568.6, 2e-3);
}

#[test]
fn a_bare_edge_has_windows_of_any_length_and_no_more_force() {
    // ASTM F1292 does not cap the window. A half sine's criterion is then 0.4146 A^2.5 T, A its peak in g and
    // T = 2 d / v (from memory; 2 y / pi of it is the worst window, y the root of the derivative).
    let soft = assess(&[
        ("edge_give", Exact(0.03)),
        ("head_padding", Exact(0.06)),
        ("pad_usable", Exact(0.9)),
    ]);
    let time = 2.0 * (0.03 + 0.9 * 0.06) / value(&soft, "head_speed");
    assert!(time > 0.04, "{time}");
    let peak = value(&soft, "head_bare") / GRAVITY;
    close(
        value(&soft, "hic_bare"),
        0.4146 * libm::pow(peak, 2.5) * time,
        1e-3,
    );
    // A bare edge bears on less of the body, so no more force than on a padded one is allowed (mechanics).
    let limit = |name: &str| {
        let check = soft.checks.iter().find(|check| check.name == name);
        check.unwrap().limit.value
    };
    assert!(limit("hit_force_bare") <= limit("hit_force"));
}

#[test]
fn the_way_down_agrees_with_scipy() {
    let all: Value = serde_json::from_str(include_str!("../fixtures/stairs.json")).unwrap();
    let cases = all["way_down"].as_array().unwrap();
    assert!(!cases.is_empty());
    for case in cases {
        let n = |name: &str| case["given"][name].as_f64().unwrap();
        let tumble = Tumble {
            rise: n("rise"),
            going: n("going"),
            steps: n("steps"),
            start_speed: n("start_speed"),
            spacing: n("spacing"),
            loss: n("loss"),
            friction: n("friction"),
            turning: n("turning"),
        };
        let mut last = 0.0;
        let time = tumble.go_down(|moment| last = moment.speed).unwrap();
        close(time, case["found"]["time"].as_f64().unwrap(), 1e-8);
        let speed = case["found"]["speed"].as_f64().unwrap();
        close(last, speed, 1e-8);
        // The speed that is held against limits is the one before a hit: never less, and little more.
        let foot = tumble.foot_speed().unwrap();
        assert!(
            foot >= speed * (1.0 - 1e-9) && foot < 1.25 * speed,
            "{foot} {speed}"
        );
    }
}

#[test]
fn a_half_sine_has_its_criterion() {
    let pulse = |peak: f64, time: f64| stopping::Stop {
        mean: peak * 2.0 / core::f64::consts::PI,
        peak,
        time,
    };
    // 100 g for 20 ms: 829.3 (computed with SciPy from 49 CFR 571.208's definition).
    let found = head_pulse::half_sine_criterion(&pulse(100.0 * GRAVITY, 0.02), 0.015);
    close(found, 829.3, 5e-4);
    let all: Value = serde_json::from_str(include_str!("../fixtures/stairs.json")).unwrap();
    for case in all["half_sine"].as_array().unwrap() {
        let n = |name: &str| case["given"][name].as_f64().unwrap();
        let stop = pulse(n("peak"), n("duration"));
        let found = head_pulse::half_sine_criterion(&stop, n("window"));
        close(found, case["found"]["criterion"].as_f64().unwrap(), 1e-4);
        // And by the search over windows that other techniques use.
        let samples = stopping::samples(&stop, Shape::HalfSine, 0.0, 400);
        close(found, head::injury_criterion(&samples, n("window")), 2e-3);
    }
    assert_eq!(
        head_pulse::half_sine_criterion(&pulse(0.0, 0.0), 0.015),
        0.0
    );
}

#[test]
fn the_landing() {
    // Equivalent fall height v_perp^2 / 2 g: 3 m/s, 0.459 m (Hubbard and McNeil 2012).
    let steep = Tumble {
        rise: 0.3,
        going: 0.3,
        ..BARE
    };
    close(steep.landing_height(3.0 * f64::sqrt(2.0)), 0.459, 1e-3);
    // v^2 / 2 mu g of what the impulse leaves: 45 degrees, friction 0.5, 5 m/s leaves 1.7678 m/s, 0.3187 m
    // (elementary mechanics, Coulomb's impulse).
    close(steep.landing_speed(5.0, 0.5), 1.7678, 1e-4);
    close(steep.run_out(5.0, 0.5), 0.3187, 1e-3);
    // Thrown level off a 3-4-5 flight at 4 m/s along it: 3.2 m/s level, 2 u^2 tan a / g = 1.566 m, 6.53 goings.
    close(BARE.cleared(4.0), 6.526, 1e-3);
}

#[test]
fn a_sound_plan_stands() {
    let sound = assess(&[]);
    for check in &sound.checks {
        assert_ne!(check.status, Status::Exceeded, "{}", check.detail);
    }
    // Padding and energy: the released energy is weight times height, 68 kg down 14 steps of 0.17 m.
    close(
        value(&sound, "energy_released"),
        68.0 * GRAVITY * 2.38,
        1e-9,
    );
    assert!(value(&sound, "energy_rubbed") < value(&sound, "energy_released"));
    assert!(value(&sound, "hic_bare") > value(&sound, "hic_padded"));
    close(
        value(&sound, "hits_today"),
        3.0 * value(&sound, "hits"),
        1e-12,
    );
}

#[test]
fn plans_that_must_not_stand() {
    // Slippery, steep and unpadded: hits take little, so the body gains to the foot.
    let fast = [
        ("nosing_friction", Exact(0.0)),
        ("hit_loss", Exact(0.05)),
        ("start_speed", Exact(4.0)),
        ("rise", Exact(0.25)),
        ("into_edge", Exact(1.0)),
        ("edge_padding", Exact(0.0)),
        ("head_padding", Exact(0.0)),
    ];
    for name in [
        "hic_padded",
        "head_padded",
        "hic_bare",
        "top_speed",
        "landing_height",
    ] {
        assert_eq!(status(&fast, name), Status::Exceeded, "{name}");
    }
    // One hit that takes nearly all of a fast body's energy.
    let hard = [
        ("hit_loss", Exact(0.8)),
        ("start_speed", Exact(4.0)),
        ("edge_padding", Exact(0.0)),
    ];
    for name in ["hit_energy", "hit_force", "hit_force_bare"] {
        assert_eq!(status(&hard, name), Status::Exceeded, "{name}");
    }
    for (name, change) in [
        ("landing_left", ("landing_length", Number(1.5))),
        ("people_gap", ("people_distance", Number(2.0))),
        ("camera_gap", ("camera_distance", Number(1.2))),
        ("side_room", ("stair_width", Number(1.2))),
        ("falls_today", ("falls_today", Number(5.0))),
        ("part_falls", ("part_falls", Number(1.0))),
        ("spotters", ("spotters", Number(1.0))),
        ("medics", ("medics", Number(0.0))),
    ] {
        assert_ne!(status(&[], name), Status::Exceeded, "{name} before");
        assert_eq!(status(&[change], name), Status::Exceeded, "{name}");
    }
}

#[test]
fn what_a_fall_is_warned_of() {
    let stops = assess(&[("nosing_friction", Exact(1.2)), ("start_speed", Exact(0.5))]);
    assert!(says(&stops, "stops_on_stairs"));
    assert!(stops.traces.is_empty());
    // A body that stops has no run-out to be held against anything, and that is not within.
    for name in ["hic_padded", "people_gap", "camera_gap", "landing_left"] {
        let check = stops.checks.iter().find(|check| check.name == name);
        assert_eq!(check.unwrap().status, Status::Unknown, "{name}");
    }
    let fast = assess(&[("nosing_friction", Exact(0.0)), ("hit_loss", Exact(0.05))]);
    assert!(says(&fast, "thrown_clear"));
    assert!(!says(
        &assess(&[("start_speed", Exact(0.1)), ("hit_loss", Exact(0.8))]),
        "thrown_clear"
    ));
    // Sliding puts nothing into turning and hits every edge: 14 hits on 14 steps.
    let slid = assess(&[("manner", Option("slide"))]);
    close(value(&slid, "hits"), 14.0, 1e-9);
    let trace = &assess(&[]).traces[0];
    assert_eq!(trace.y[0].values.last(), Some(&0.0));
    assert!(trace.y[1].values.is_sorted());
}
