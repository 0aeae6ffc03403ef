//! Motorcycle jumps: outside values of the flight, and what it says of plans.

use crate::common::{
    GRAVITY,
    Given::{self, Exact, Number},
    assess_exactly, close, inputs, plausible, says, status, value,
};
use gagwright_mechanics::{Assessment, InputValue, Inputs, Status, find};

const DEGREE: f64 = core::f64::consts::PI / 180.0;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("motorcycle-jump");
    given.0.extend(inputs(changes).0);
    find("motorcycle-jump").unwrap().assess(&given).unwrap()
}

/// 30 m at 20 degrees, lip and landing 0.2 m up, with what else changes.
fn thirty_metres(changes: &[(&str, Given)]) -> Assessment {
    let mut all = vec![
        ("takeoff_speed", Exact(21.394)),
        ("takeoff_angle", Exact(20.0 * DEGREE)),
        ("lip_height", Exact(0.2)),
        ("landing_edge_height", Exact(0.2)),
        ("landing_angle", Exact(0.0)),
        ("gap", Exact(10.0)),
        ("landing_length", Exact(40.0)),
        ("drag_area", Exact(0.0)),
        ("performer_mass", Exact(75.0)),
        ("motorcycle_mass", Exact(175.0)),
    ];
    all.extend(changes.iter().cloned());
    assess(&all)
}

#[test]
fn thirty_metres_at_twenty_degrees() {
    // Projectile without drag: v 21.394 m/s, 1.4923 s, 2.730 m high (elementary mechanics), equivalent fall
    // height 2.730 m on the level (McNeil and Hubbard's v^2 / 2 g).
    let bare = thirty_metres(&[]);
    close(value(&bare, "landing_distance"), 30.0, 1e-3);
    close(value(&bare, "air_time"), 1.4923, 1e-3);
    close(value(&bare, "apex") - 0.2, 2.730, 1e-3);
    close(value(&bare, "equivalent_fall"), 2.730, 5e-3);
    // Onto a slope of 15 degrees, whose surface is 0.2 m up at 30 m: 0.177 m.
    let slope = thirty_metres(&[
        ("gap", Exact(29.0)),
        ("landing_angle", Exact(15.0 * DEGREE)),
        ("landing_edge_height", Exact(0.2 + libm::tan(15.0 * DEGREE))),
    ]);
    close(value(&slope, "landing_distance"), 30.0, 1e-3);
    close(value(&slope, "equivalent_fall"), 0.177, 5e-3);
    // With 250 kg and 0.7 m2 of drag area: 28.988 m, 1.4792 s (SciPy solve_ivp).
    let drag = thirty_metres(&[("drag_area", Exact(0.7))]);
    close(value(&drag, "landing_distance"), 28.988, 1e-3);
    close(value(&drag, "air_time"), 1.4792, 1e-3);
    // The window's slow end is the speed that lands at the margin: v^2 = g x / sin 2a.
    close(
        value(&bare, "speed_low"),
        f64::sqrt(GRAVITY * 11.5 / libm::sin(40.0 * DEGREE)),
        1e-5,
    );
}

#[test]
fn the_window_is_where_landings_meet_the_margins() {
    let planned = assess(&[]);
    let low = value(&planned, "speed_low");
    let high = value(&planned, "speed_high");
    assert!(low < high);
    let at = |speed: f64| {
        value(
            &assess(&[("takeoff_speed", Exact(speed))]),
            "landing_distance",
        )
    };
    close(at(low), 18.0 + 1.5, 1e-5);
    close(at(high), 18.0 + 16.0 - 1.5, 1e-5);
    close(value(&planned, "speed_window"), high - low, 1e-12);
}

#[test]
fn the_face_of_the_landing_is_not_flown_through() {
    // Bare parabola: at 18 m it is h + x tan a - g x^2 / (2 v^2 cos^2 a) high; the speed that just clears an edge
    // at 3 m. A hair slower meets the face under the edge, however steeply the landing falls away behind it.
    let (x, a) = (18.0, 0.45_f64);
    let rise = 2.5 + x * libm::tan(a) - 3.0;
    let clears = f64::sqrt(GRAVITY * x * x / (2.0 * libm::cos(a) * libm::cos(a) * rise));
    for slope in [0.0, 0.42, 0.87] {
        let at = |speed: f64| {
            assess(&[
                ("takeoff_speed", Exact(speed)),
                ("drag_area", Exact(0.0)),
                ("landing_angle", Exact(slope)),
            ])
        };
        let under = at(clears - 0.02);
        assert!(says(&under, "face"), "{slope}");
        close(
            value(&under, "across_speed"),
            (clears - 0.02) * libm::cos(a),
            1e-9,
        );
        let over = at(clears + 0.02);
        assert!(!says(&over, "face") && !says(&over, "short"), "{slope}");
        assert!(value(&over, "landing_distance") > x);
        assert!(value(&over, "speed_low") >= clears * (1.0 - 1e-9));
    }
}

#[test]
fn no_speed_reaches_a_landing_above_its_line() {
    // Straight up the ramp's own line it is 2.5 + 18 tan 0.1 = 4.3 m high at 18 m: 8 m is out of reach.
    let high = assess(&[
        ("takeoff_angle", Exact(0.1)),
        ("landing_edge_height", Exact(8.0)),
    ]);
    assert!(says(&high, "no_speed"));
    assert_eq!(status(&high, "speed_window"), Status::Unknown);
}

#[test]
fn the_wind_carries_it_aside() {
    // The same law by small steps: y'' = k V (w - y').
    let planned = assess(&[("crosswind", Exact(4.0))]);
    let (mut place, mut speed, step) = (0.0_f64, 0.0_f64, 1e-5);
    let rate = 0.5 * 1.225 * 1.2 / 190.0 * libm::hypot(16.8, 4.0);
    let steps = (value(&planned, "air_time") / step) as usize;
    for _ in 0..steps {
        speed += step * rate * (4.0 - speed);
        place += step * speed;
    }
    close(value(&planned, "drift"), place, 1e-3);
}

#[test]
fn a_flip_needs_its_turn_rate() {
    let flip = assess(&[("flips", Exact(1.0)), ("rider_turn_rate", Exact(0.0))]);
    let time = value(&flip, "air_time");
    let turn = 2.0 * core::f64::consts::PI - 0.45 - 0.42;
    close(value(&flip, "turn_rate_needed"), turn / time, 1e-9);
    assert_eq!(status(&flip, "turn_short"), Status::Exceeded);
    assert!(says(&flip, "flip"));
    let added = turn / time - value(&flip, "ramp_turn_rate");
    let turned = assess(&[("flips", Exact(1.0)), ("rider_turn_rate", Exact(added))]);
    close(
        value(&turned, "turn_given"),
        value(&turned, "turn_needed"),
        1e-9,
    );
    assert_ne!(status(&turned, "turn_past"), Status::Exceeded);
    assert_ne!(status(&turned, "turn_short"), Status::Exceeded);
    // Twenty degrees off is the policy: half a radian more turns it past.
    let over = added + 0.5 / time;
    let past = assess(&[("flips", Exact(1.0)), ("rider_turn_rate", Exact(over))]);
    assert_eq!(status(&past, "turn_past"), Status::Exceeded);
}

#[test]
fn a_jump_is_judged() {
    let good = assess(&[]);
    for check in &good.checks {
        assert_ne!(
            check.status,
            Status::Exceeded,
            "{}: {}",
            check.name,
            check.detail
        );
    }
    let slow = assess(&[("takeoff_speed", Number(14.5))]);
    assert_eq!(status(&slow, "near_spare"), Status::Exceeded);
    assert_eq!(status(&slow, "miss_probability"), Status::Exceeded);
    // At 18 m the bare parabola of 14.5 m/s is 1.88 m up, under the edge at 3 m: it meets the face, head on.
    assert!(says(&slow, "face") && !says(&slow, "short"));
    assert_eq!(status(&slow, "equivalent_fall"), Status::Exceeded);
    close(value(&slow, "landing_distance"), 18.0, 1e-6);
    // That of 11 m/s is on the ground by 14 m.
    let slower = assess(&[("takeoff_speed", Number(11.0))]);
    assert!(says(&slower, "short") && !says(&slower, "face"));
    let fast = assess(&[("takeoff_speed", Number(22.0))]);
    assert_eq!(status(&fast, "far_spare"), Status::Exceeded);
    let flat = assess(&[("landing_angle", Number(0.0))]);
    assert_eq!(status(&flat, "equivalent_fall"), Status::Exceeded);
    let stub = assess(&[("landing_length", Number(3.5))]);
    assert_eq!(status(&stub, "speed_window"), Status::Exceeded);
    let gale = assess(&[("crosswind", Number(8.0))]);
    assert_eq!(status(&gale, "crosswind"), Status::Exceeded);
    let cramped = assess(&[("in_run", Number(30.0)), ("run_out", Number(10.0))]);
    assert_eq!(status(&cramped, "in_run"), Status::Exceeded);
    assert_eq!(status(&cramped, "run_out"), Status::Exceeded);
    let kicker = assess(&[("ramp_radius", Number(6.0))]);
    assert_eq!(status(&kicker, "ramp_felt"), Status::Exceeded);
    let plank = assess(&[("landing_width", Number(0.8))]);
    assert_eq!(status(&plank, "drift"), Status::Exceeded);
}

#[test]
fn a_slope_does_not_go_on_under_the_ground() {
    // An edge 3 m up falling by 0.42 rad is on level ground after 3 / tan 0.42 = 6.72 m (trigonometry).
    let buried = assess_exactly("motorcycle-jump", &[("ground_fall", Number(0.0))]);
    assert!(says(&buried, "buried") && says(&buried, "past_foot"));
    close(
        value(&buried, "far_spare"),
        18.0 + 3.0 / libm::tan(0.42) - value(&buried, "landing_distance"),
        1e-9,
    );
    assert_eq!(status(&buried, "far_spare"), Status::Exceeded);
    assert_eq!(status(&buried, "equivalent_fall"), Status::Exceeded);
    // The same jump over nothing but level ground comes down at the same place, and as hard.
    let level = assess_exactly(
        "motorcycle-jump",
        &[
            ("landing_angle", Number(0.0)),
            ("landing_edge_height", Number(0.0)),
            ("ground_fall", Number(0.0)),
        ],
    );
    for name in ["landing_distance", "equivalent_fall"] {
        close(value(&buried, name), value(&level, name), 1e-6);
    }
    // With the foot of the slope over the ground, by higher works or by ground that falls, it is the landing it was.
    let fallen = assess_exactly("motorcycle-jump", &[]);
    let raised = assess_exactly(
        "motorcycle-jump",
        &[
            ("ground_fall", Number(0.0)),
            ("landing_edge_height", Number(7.2)),
            ("lip_height", Number(6.7)),
        ],
    );
    for run in [&fallen, &raised] {
        assert_eq!(status(run, "equivalent_fall"), Status::Within);
        assert_eq!(status(run, "far_spare"), Status::Within);
        assert!(!says(run, "buried"));
    }
    close(
        value(&fallen, "equivalent_fall"),
        value(&raised, "equivalent_fall"),
        1e-6,
    );
}

#[test]
fn a_turn_of_nothing_has_its_reserve() {
    // Lip and landing of 10 degrees turn by 20, just what habit lets it be off: whichever side of that the angles
    // fall, the same turn is judged the same.
    let at = |degrees: f64| {
        let given = assess(&[
            ("takeoff_angle", Number(10.0 * DEGREE)),
            ("landing_angle", Number(degrees * DEGREE)),
            ("takeoff_speed", Number(20.0)),
            ("landing_edge_height", Number(2.5)),
            ("landing_length", Number(40.0)),
            ("rider_turn_rate", Exact(-1.5)),
        ]);
        (status(&given, "turn_past"), status(&given, "turn_short"))
    };
    assert_eq!(at(10.0), at(10.01));
    assert_eq!(at(10.0), at(9.99));
    assert_eq!(at(10.0).0, Status::Marginal);
}

#[test]
fn what_is_clear_may_be_less_than_stated() {
    // What a tolerance allows is possible: where the check at its low end is not within, neither is the whole.
    for (name, check, value) in [
        ("run_out", "run_out", 70.0),
        ("in_run", "in_run", 80.0),
        ("landing_width", "drift", 5.0),
    ] {
        let at = |value: f64, tolerance: f64| {
            let mut given: Inputs = plausible("motorcycle-jump");
            let number = InputValue::Number {
                value,
                tolerance: Some(tolerance),
            };
            given.0.insert(name.to_owned(), number);
            let run = find("motorcycle-jump").unwrap().assess(&given).unwrap();
            status(&run, check)
        };
        let shares = [0.0, 0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 0.8];
        let seen = shares.map(|share| {
            let whole = at(value, share * value);
            let end = at((1.0 - share) * value, 0.0);
            assert!(
                end == Status::Within || whole != Status::Within,
                "{name} {share}"
            );
            whole
        });
        assert_eq!(seen[0], Status::Within, "{name}");
        assert_eq!(seen[7], Status::Marginal, "{name}");
    }
    // No room at all beside the handlebars, 0.4 m to either side of the middle, has nothing in hand either.
    let bare = assess(&[("landing_width", Number(0.8)), ("crosswind", Exact(0.0))]);
    assert_eq!(status(&bare, "drift"), Status::Marginal);
}

#[test]
fn a_headwind_carries_it_further_aside() {
    // The flight in three dimensions by small steps (Newton's law, quadratic drag of the air relative to the body):
    // along and up with the frontal area, across with the side's, both at the whole speed through the air.
    for head in [0.0, -10.0, -15.0] {
        let run = assess_exactly(
            "motorcycle-jump",
            &[
                ("takeoff_speed", Number(18.0)),
                ("head_wind", Number(head)),
                ("crosswind", Number(3.0)),
            ],
        );
        let k = 0.5 * 1.225 / 190.0;
        let step = 1e-4;
        let mut v = [18.0 * libm::cos(0.45), 18.0 * libm::sin(0.45), 0.0_f64];
        let mut aside = 0.0;
        for _ in 0..(value(&run, "air_time") / step) as usize {
            let air = [v[0] - head, v[1], v[2] - 3.0];
            let speed = f64::sqrt(air.iter().map(|part| part * part).sum());
            let areas = [0.7, 0.7, 1.2];
            let pull = [0, 1, 2].map(|i| -k * areas[i] * speed * air[i]);
            v = [
                v[0] + step * pull[0],
                v[1] + step * (pull[1] - GRAVITY),
                v[2] + step * pull[2],
            ];
            aside += step * v[2];
        }
        let drift = value(&run, "drift");
        assert!(drift >= aside * (1.0 - 1e-3), "{head}: {drift} {aside}");
        assert!(drift <= aside * 1.12, "{head}: {drift} {aside}");
    }
}

#[test]
fn striking_the_face_is_landing_short() {
    for (speed, angle) in [
        (13.5, 0.45),
        (15.0, 0.45),
        (14.0, 0.3),
        (30.0, 0.05),
        (12.0, 0.6),
    ] {
        let run = assess_exactly(
            "motorcycle-jump",
            &[
                ("takeoff_speed", Number(speed)),
                ("takeoff_angle", Number(angle)),
                ("edge_margin", Number(0.0)),
            ],
        );
        if says(&run, "face") {
            assert!(value(&run, "near_spare") < 0.0, "{speed} {angle}");
            assert_eq!(status(&run, "near_spare"), Status::Exceeded);
        } else {
            assert!(
                speed < 13.0 || speed == 15.0 || angle == 0.3,
                "{speed} {angle}"
            );
        }
    }
    // Rising into a face: a flat, fast jump at a high edge meets it long before it would sink.
    let wall = assess_exactly(
        "motorcycle-jump",
        &[
            ("takeoff_speed", Number(40.0)),
            ("takeoff_angle", Number(0.3)),
            ("gap", Number(8.0)),
            ("landing_edge_height", Number(6.0)),
            ("edge_margin", Number(0.0)),
        ],
    );
    assert!(says(&wall, "face"));
    assert_eq!(status(&wall, "near_spare"), Status::Exceeded);
    assert_eq!(status(&wall, "miss_probability"), Status::Exceeded);
}
