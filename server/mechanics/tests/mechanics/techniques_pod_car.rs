//! Pod cars: outside values of their model, and what it says of plans.

use crate::common::{
    GRAVITY,
    Given::{self, Exact, Number, Option},
    POUND_FORCE, check, close, inputs, plausible, says, status, value,
};
use gagwright_mechanics::{
    Assessment, Inputs, Standing, Status, find,
    models::{
        car_balance::{self, Lean, Part},
        slide,
    },
};
use serde_json::Value;

const MILE_AN_HOUR: f64 = 0.447_04;
const FOOT: f64 = 0.3048;
const DEGREE: f64 = core::f64::consts::PI / 180.0;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("pod-car");
    given.0.extend(inputs(changes).0);
    find("pod-car").unwrap().assess(&given).unwrap()
}

#[test]
fn tipping_is_what_the_static_stability_factor_says() {
    // NHTSA static stability factor T / 2H: 1.5 and 0.55 m, 1.364; 1.6 and 0.8 m, 1.0.
    close(slide::stability_factor(1.5, 0.55), 1.364, 1e-3);
    close(slide::stability_factor(1.6, 0.8), 1.0, 1e-12);
    // A car that does not lean tips at just that.
    close(
        car_balance::tipping_pull(1.5, 0.55, 0.1, 0.0),
        1.363_64,
        1e-5,
    );
    // On a 30 m curve v = sqrt(SSF g R) = 20.03 m/s; a car that leans tips sooner.
    let pod = assess(&[
        ("track", Exact(1.5)),
        ("centre_height", Exact(0.55)),
        ("pod_centre_height", Exact(0.55)),
        ("lean_per_g", Exact(DEGREE)),
        ("roll_centre", Exact(0.25)),
        ("bend_radius", Exact(30.0)),
        ("bend_speed", Exact(10.0)),
    ]);
    close(value(&pod, "stability_factor"), 1.364, 1e-3);
    // One degree of lean a g takes 0.0175 (0.55 - 0.25) / 0.55 of it (Gillespie, equation 9-6).
    let lean = 1.0 + DEGREE * 0.3 / 0.55;
    close(value(&pod, "tipping_speed"), 20.03 / f64::sqrt(lean), 1e-3);
    close(value(&pod, "bend_pull"), 100.0 / 30.0, 1e-12);
    close(
        value(&pod, "rollover_margin"),
        1.364 * GRAVITY * 0.3 / lean,
        1e-3,
    );
    // A bank inward by an angle adds that angle to the one at which it tips (statics).
    let banked = car_balance::on_bank(1.0, -10.0 * DEGREE);
    close(banked, libm::tan(55.0 * DEGREE), 1e-12);
}

#[test]
fn the_pod_raises_the_whole() {
    // Weighed middles: 1,500 kg at 0.5 m and 300 kg at 2.0 m have theirs at 0.75 m.
    let car = Part {
        mass: 1500.0,
        height: 0.5,
        along: 1.5,
    };
    let pod = Part {
        mass: 300.0,
        height: 2.0,
        along: 0.3,
    };
    let whole = car_balance::together(car, pod);
    assert_eq!(whole.mass, 1800.0);
    close(whole.height, 0.75, 1e-12);
    close(whole.along, 1.3, 1e-12);
    // Parallel axes: 1,500 x 0.25^2 + 300 x 1.25^2 kg m2 over 1,800 kg, with no inertia of their own.
    let spread = (1500.0 * 0.0625 + 300.0 * 1.5625) / 1800.0;
    close(
        car_balance::roll_radius(car, pod, 0.0),
        f64::sqrt(spread),
        1e-12,
    );
}

#[test]
fn sight_is_the_whole_aashto_table() {
    // AASHTO, A Policy on Geometric Design of Highways and Streets, stopping sight distance on level roads, ft:
    // calculated and design values.
    let table = [
        (15.0, 76.7, 80.0),
        (20.0, 111.9, 115.0),
        (25.0, 151.9, 155.0),
        (30.0, 196.7, 200.0),
        (35.0, 246.2, 250.0),
        (40.0, 300.6, 305.0),
        (45.0, 359.8, 360.0),
        (50.0, 423.8, 425.0),
        (55.0, 492.4, 495.0),
        (60.0, 566.0, 570.0),
        (65.0, 644.4, 645.0),
        (70.0, 727.6, 730.0),
    ];
    for (mph, calculated, design) in table {
        let given = assess(&[("top_speed", Exact((mph * MILE_AN_HOUR).min(40.0)))]);
        let feet = value(&given, "road_sight") / FOOT;
        assert!((feet - calculated).abs() < 0.11, "{mph}: {feet}");
        // Design values are those rounded up to the next five feet.
        assert!(feet <= design + 0.11 && design - feet < 5.1, "{mph}");
    }
    // 60 mph: 566.0 ft within 0.2 ft. Sight of just less is short of it, just more is not.
    let at_sixty = |sight: f64| {
        assess(&[
            ("top_speed", Exact(60.0 * MILE_AN_HOUR)),
            ("clear_road", Exact(400.0)),
            ("sight_ahead", Exact(sight * FOOT)),
        ])
    };
    assert_eq!(status(&at_sixty(565.8), "road_sight"), Status::Exceeded);
    let enough = at_sixty(566.2);
    assert_eq!(status(&enough, "road_sight"), Status::Within);
    assert_eq!(
        check(&enough, "road_sight").source.standing,
        Standing::Published
    );
    assert!(!check(&enough, "road_sight").blocking);
}

#[test]
fn brakes_lock_where_the_load_is() {
    // With brakes shared as the loaded axles are, both lock at friction times g (Gillespie, chapter 3).
    let (friction, height, wheelbase, share) = (0.7, 0.6, 2.8, 0.55);
    let ideal = share + friction * height / wheelbase;
    close(
        car_balance::locking(friction, share, ideal, height, wheelbase).unwrap(),
        friction * GRAVITY,
        1e-12,
    );
    // Any other share is worse, both ways.
    for other in [ideal - 0.1, ideal + 0.1] {
        let found = car_balance::locking(friction, share, other, height, wheelbase).unwrap();
        assert!(found < friction * GRAVITY);
    }
    assert_eq!(car_balance::locking(0.7, -0.1, 0.7, 0.6, 2.8), None);
    // The same force on more mass: 7 m/s2 of 1,850 kg are 6.19 of 2,084 + 5 kg where grip is plenty.
    let plenty = assess(&[
        ("friction", Exact(1.2)),
        ("brakes_alone", Exact(7.0)),
        ("front_brake_share", Exact(0.75)),
    ]);
    close(
        value(&plenty, "braking"),
        7.0 * 1850.0 / (1850.0 + 160.0 + 74.0),
        1e-9,
    );
    let speed = 11.0;
    close(
        value(&plenty, "stop_distance"),
        speed * 1.5 + speed * speed / (2.0 * value(&plenty, "braking")),
        1e-9,
    );
    // In that stop the front axle carries what stands on it and a H / (g L) of the whole.
    let whole = value(&plenty, "total_mass");
    let thrown =
        value(&plenty, "front_load_braking") - whole * value(&plenty, "front_share_loaded");
    close(
        thrown,
        whole * value(&plenty, "braking") * value(&plenty, "whole_height") / (GRAVITY * 2.85),
        1e-9,
    );
}

#[test]
fn swerves_agree_with_dop853() {
    // fixtures/car_balance.json: SciPy's DOP853 on forces and moments, by tests/reference/fixtures/car_balance.py.
    let all: Value = serde_json::from_str(include_str!("../fixtures/car_balance.json")).unwrap();
    let cases = all["swerve"].as_array().unwrap();
    assert_eq!(cases.len(), 3);
    for case in cases {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let lean = Lean {
            track: given("track"),
            roll_centre: given("roll_centre"),
            arm: given("arm"),
            per_g: given("per_g"),
            radius: given("radius"),
            damping: given("damping"),
        };
        let mut leans = 0.0_f64;
        let moved = lean.swerve(given("peak"), given("time"), |moment| {
            leans = leans.max(moment.lean.abs());
        });
        close(
            moved.unwrap(),
            case["found"]["moved"].as_f64().unwrap(),
            2e-3,
        );
        close(leans, case["found"]["lean"].as_f64().unwrap(), 2e-3);
    }
}

#[test]
fn a_slow_swerve_lifts_as_a_steady_bend_does() {
    // So slow that nothing swings: the load moved is then the pull over the pull that tips (statics).
    let lean = Lean {
        track: 1.6,
        roll_centre: 0.15,
        arm: 0.6,
        per_g: 0.15,
        radius: 0.7,
        damping: 0.25,
    };
    let moved = lean.swerve(0.3 * GRAVITY, 200.0, |_| {}).unwrap();
    close(
        moved,
        0.3 / car_balance::tipping_pull(1.6, 0.75, 0.15, 0.15),
        2e-3,
    );
    // A sine of pull moves the car aside by A t^2 / 2 pi (integrated twice).
    close(
        car_balance::swerve_pull(1.8, 2.0),
        1.8 * 2.0 * core::f64::consts::PI / 4.0,
        1e-12,
    );
}

#[test]
fn mounts_and_tie_downs_are_held_to_the_road_rule() {
    // 49 CFR 393.102: 0.8 g forward, 0.5 g sideways. Four mounts with no height share the push and the weight:
    // 200 kg at 0.8 g need hypot(0.8, 1) x 200 g / 4 = 628.0 N each.
    let needed = car_balance::mount_load(200.0, 0.8 * GRAVITY, 0.0, 1.0, 4.0);
    close(needed, libm::hypot(0.8, 1.0) * 50.0 * GRAVITY, 1e-12);
    // Read the other way it gives the pull back, with height too.
    for height in [0.0, 0.6] {
        let load = car_balance::mount_load(200.0, 0.8 * GRAVITY, height, 1.2, 6.0);
        let pull = car_balance::mount_pull(200.0, load, height, 1.2, 6.0);
        close(pull, 0.8 * GRAVITY, 1e-9);
    }
    assert_eq!(car_balance::mount_pull(200.0, 100.0, 0.5, 1.0, 4.0), 0.0);
    let good = assess(&[]);
    for (name, limit) in [
        ("mount_forward", 0.8 * GRAVITY),
        ("mount_side", 0.5 * GRAVITY),
    ] {
        assert_eq!(status(&good, name), Status::Within, "{name}");
        close(check(&good, name).limit.value, limit, 1e-12);
        assert_eq!(check(&good, name).source.standing, Standing::Published);
    }
    let weak = assess(&[("mount_strength", Number(500.0))]);
    assert_eq!(status(&weak, "mount_forward"), Status::Exceeded);
    assert_eq!(status(&weak, "mount_side"), Status::Exceeded);
    assert_eq!(status(&weak, "mount_factor"), Status::Exceeded);
    // 49 CFR 393.106: limits add to half the weight. Two straps of 1,000 lbf over 1,000 lb count in full, 2; from
    // car to pod each counts for half, 1.
    let straps = |run| {
        assess(&[
            ("pod_mass", Exact(1000.0 * POUND_FORCE / GRAVITY - 74.0)),
            ("tie_downs", Exact(2.0)),
            ("tie_down_limit", Exact(1000.0 * POUND_FORCE)),
            ("tie_down_run", Option(run)),
        ])
    };
    close(value(&straps("over"), "tie_down_share"), 2.0, 1e-9);
    close(value(&straps("direct"), "tie_down_share"), 1.0, 1e-9);
    assert_eq!(status(&straps("direct"), "tie_down_share"), Status::Within);
    let thin = assess(&[("tie_down_limit", Number(500.0))]);
    assert_eq!(status(&thin, "tie_down_share"), Status::Exceeded);
    close(check(&thin, "tie_down_share").limit.value, 0.5, 1e-12);
}

#[test]
fn what_is_hidden_follows_similar_triangles() {
    // Eyes at 2 m over an edge of 1.5 m that is 1 m ahead meet the ground 4 m ahead.
    close(
        car_balance::hidden_ahead(2.0, 1.5, 1.0).unwrap(),
        4.0,
        1e-12,
    );
    assert_eq!(car_balance::hidden_ahead(1.5, 1.5, 1.0), None);
    let low = assess(&[("eye_height", Number(1.4))]);
    assert!(says(&low, "no_sight"));
    assert_eq!(status(&low, "hidden_ahead"), Status::Unknown);
    let high = assess(&[("eye_height", Number(1.7))]);
    assert_eq!(status(&high, "hidden_ahead"), Status::Exceeded);
}

#[test]
fn a_pod_car_is_judged() {
    let good = assess(&[]);
    for one in &good.checks {
        assert_eq!(one.status, Status::Within, "{one:?}");
    }
    for name in ["raised", "longer_stop", "abort_word"] {
        assert!(says(&good, name), "{name}");
    }
    let exceeded = |changes: &[(&str, Given)], name: &str| {
        let found = assess(changes);
        assert_eq!(status(&found, name), Status::Exceeded, "{name}");
        found
    };
    // Ontario film safety guideline 17: seven people on a camera car, and no eighth.
    assert_eq!(
        status(&assess(&[("people", Number(7.0))]), "people"),
        Status::Within
    );
    exceeded(&[("people", Number(8.0))], "people");
    exceeded(&[("actor_controls", Option("live"))], "drivers");
    exceeded(&[("bend_speed", Number(13.0))], "rollover_margin");
    exceeded(&[("bend_speed", Number(13.0))], "bend_pull");
    exceeded(&[("bend_speed", Number(13.0))], "bend_grip");
    exceeded(
        &[
            ("pod_centre_height", Number(3.8)),
            ("pod_mass", Number(400.0)),
        ],
        "slide_margin",
    );
    let tight = exceeded(&[("swerve_length", Number(12.0))], "swerve_grip");
    assert!(says(&tight, "no_swerve"));
    let tippy = exceeded(
        &[
            ("swerve_length", Number(14.0)),
            ("friction", Number(1.0)),
            ("pod_centre_height", Number(3.0)),
            ("lean_per_g", Number(12.0 * DEGREE)),
        ],
        "swerve_lift",
    );
    assert!(says(&tippy, "lifts"));
    exceeded(&[("clear_road", Number(20.0))], "stop_distance");
    exceeded(&[("sight_ahead", Number(20.0))], "stop_in_sight");
    exceeded(&[("pod_mass", Number(500.0))], "total_mass");
    exceeded(&[("pod_place", Number(-2.5))], "rear_load");
    exceeded(&[("pod_place", Number(-2.5))], "front_share_loaded");
    // Moments about the rear axle (statics): 234 kg of pod over the front axle rest on it whole, beside 0.56 of
    // 1,850 kg.
    let forward = [("pod_place", Exact(2.85)), ("car_mass", Exact(1850.0))];
    close(
        value(&assess(&forward), "front_load"),
        0.56 * 1850.0 + 234.0,
        1e-9,
    );
    exceeded(&[("pod_place", Number(5.5))], "front_load");
    let both = value(&good, "front_load") + value(&good, "rear_load");
    close(both, value(&good, "total_mass"), 1e-12);
    let stands = assess(&[
        ("pod_place", Number(-3.0)),
        ("pod_mass", Number(1000.0)),
        ("car_mass", Number(1000.0)),
        ("front_share", Number(0.3)),
    ]);
    assert!(says(&stands, "stands_up"));
    assert_eq!(status(&stands, "stop_distance"), Status::Unknown);
}
