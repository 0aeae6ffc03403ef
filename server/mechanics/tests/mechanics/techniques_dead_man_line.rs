//! The dead-man line against outside values, against SciPy (`tests/reference/fixtures/tether.py`), and what
//! it says of worked cases.

use crate::common::number;
use crate::common::{
    GRAVITY, Given,
    Given::{Exact, Option as Name},
    POUND_FORCE, check, close, inputs, plausible, says, value,
};
use gagwright_mechanics::{
    Assessment, Standing, Status, find,
    models::{
        line_arrest,
        stopping::{Shape, stop},
        tether::{Absorber, Legs, Moment, Outcome, Tether, run_up},
    },
};
use serde_json::Value;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given = plausible("dead-man-line");
    given.0.extend(inputs(changes).0);
    find("dead-man-line").unwrap().assess(&given).unwrap()
}

/// A level line with no damping, no give and no absorber; the runner at speed from the first step.
/// It lies as high as it runs, so that nothing but the run up loads the line.
const PLAIN: [(&str, Given); 7] = [
    ("landing_height", Exact(1.0)),
    ("build_up", Exact(0.0)),
    ("line_damping", Exact(0.0)),
    ("harness_give", Exact(0.0)),
    ("absorber", Name("none")),
    ("anchor_height", Exact(1.2)),
    ("pick_height", Exact(1.2)),
];

fn plain(changes: &[(&str, Given)]) -> Assessment {
    assess(&[&PLAIN[..], changes].concat())
}

#[test]
fn the_worked_stop() {
    // 80 kg at 6 m/s, EA 22 kN over 10 m: 2,517 N, 3.208 g, 1.144 m, 0.2995 s (computed from
    // F = v sqrt(k m), x = v sqrt(m / k), t = pi / 2 sqrt(m / k)).
    let stop = plain(&[
        ("performer_mass", Exact(80.0)),
        ("top_speed", Exact(6.0)),
        ("line_modulus", Exact(22e3)),
        ("line_length", Exact(10.0)),
    ]);
    close(value(&stop, "peak_force"), 2517.0, 1e-3);
    close(value(&stop, "peak_acceleration") / GRAVITY, 3.208, 1e-3);
    close(value(&stop, "stopping_distance"), 1.144, 1e-3);
    close(value(&stop, "stop_time"), 0.2995, 1e-3);
    close(value(&stop, "line_stiffness"), 2200.0, 1e-12);
    // Nothing is lost on the way, so all of it comes back.
    close(value(&stop, "rebound_speed"), 6.0, 1e-5);
    // 29 CFR 1926.502(d)(16): 1.144 m is over 3.5 ft; 6 m/s is a fall of 1.835 m, over 6 ft.
    assert_eq!(check(&stop, "arrest_distance").status, Status::Exceeded);
    assert_eq!(check(&stop, "free_fall").status, Status::Exceeded);
    close(value(&stop, "fall_equal"), 1.835, 1e-3);
    assert!(!check(&stop, "free_fall").blocking);
}

#[test]
fn an_absorber_takes_the_energy_of_its_standard() {
    // EN 355: 100 kg with a fall of 4 m and 1.75 m of extension: 5,639 J, mean 3,222 N, under 6 kN
    // (computed). A run with that energy into an absorber of that force tears 1.75 m.
    let energy = 100.0 * GRAVITY * 5.75;
    close(energy, 5639.0, 1e-3);
    let speed = (2.0 * energy / 100.0).sqrt();
    let run = plain(&[
        ("performer_mass", Exact(100.0)),
        ("top_speed", Exact(speed)),
        ("line_modulus", Exact(1.5e6)),
        ("line_length", Exact(1.0)),
        ("absorber", Name("tearing")),
        ("absorber_force", Exact(energy / 1.75)),
        ("absorber_stroke", Exact(2.0)),
    ]);
    close(value(&run, "run_energy"), energy, 1e-9);
    close(value(&run, "absorber_travel"), 1.75, 3e-3);
    close(value(&run, "peak_force"), 3222.0, 1e-3);
    let limit = check(&run, "absorber_limit");
    assert_eq!(limit.status, Status::Within);
    assert_eq!(limit.source.standing, Standing::Published);
    // 6 kN is the limit: a stiff line alone is over it and over 8 kN too (29 CFR 1926.502(d)(16)).
    let stiff = plain(&[("line_modulus", Exact(900e3))]);
    assert_eq!(check(&stiff, "absorber_limit").status, Status::Exceeded);
    assert_eq!(check(&stiff, "harness_force").status, Status::Exceeded);
    assert!(check(&stiff, "harness_force").blocking);
    assert!(says(&stiff, "stiff_line"));
}

#[test]
fn fall_arrest_by_its_own_numbers() {
    // A fall of 6 ft stopped evenly in 3.5 ft: (1 + 6 / 3.5) W = 2.714 W. A man of 310 lb takes 841 lbf;
    // 664 lb reach 1,800 lbf (29 CFR 1926.502(d)(16); computed).
    let foot = 0.3048;
    let speed = (2.0 * GRAVITY * 6.0 * foot).sqrt();
    let mean = stop(speed, 3.5 * foot, Shape::Square).mean + GRAVITY;
    let force = |pounds: f64| pounds * 0.453_592_37 * mean / POUND_FORCE;
    close(force(310.0), 841.0, 1e-3);
    close(force(664.0), 1800.0, 2e-3);
    let speed = plain(&[("top_speed", Exact(speed))]);
    close(value(&speed, "fall_equal"), 6.0 * foot, 1e-9);
    let rope = line_arrest::modulus_from_peak(12e3, 80.0, 1.77);
    // UIAA 101: 80 kg, fall factor 1.77 and 12 kN make 45.07 kN.
    close(rope, 45.07e3, 1e-3);
}

#[test]
fn level_stops_are_the_shared_model() {
    // The line arrest model of the same stop, an equation of its own.
    for damping in [0.0, 0.1, 0.4] {
        let tether = Tether {
            mass: 80.0,
            stiffness: 2200.0,
            damping,
            length: 10.0,
            rise: 0.0,
            absorber: None,
        };
        let ours = tether.stop(6.0, Legs::Carry, |_| {}).unwrap();
        let other = line_arrest::stop_damped(80.0, 6.0, 2200.0, damping, 0.0).unwrap();
        close(ours.peak, other.peak_tension, 2e-3);
        let still = ours.still.unwrap();
        close(still.along, other.stretch, 1e-5);
        close(still.time, other.time, 1e-5);
    }
}

fn cases(table: &str) -> Vec<(Value, Value)> {
    crate::common::cases(include_str!("../fixtures/tether.json"), table)
}

#[test]
fn runs_up_agree_with_rk45() {
    for (given, found) in cases("run_up") {
        let (speed, time) = run_up(
            number(&given, "top_speed"),
            number(&given, "build_up"),
            number(&given, "distance"),
        );
        close(speed, number(&found, "speed"), 1e-8);
        close(time, number(&found, "time"), 1e-8);
    }
    // At once at top speed when nothing has to be built up.
    assert_eq!(run_up(6.0, 0.0, 3.0), (6.0, 0.5));
}

fn solved(given: &Value) -> (Outcome, Vec<Moment>) {
    let tether = Tether {
        mass: number(given, "mass"),
        stiffness: number(given, "stiffness"),
        damping: number(given, "damping"),
        length: number(given, "length"),
        rise: number(given, "rise"),
        absorber: given["force"].as_f64().map(|force| Absorber {
            force,
            stroke: number(given, "stroke"),
        }),
    };
    let legs = given["fall"].as_f64().map_or(Legs::Carry, Legs::Swept);
    let mut seen = Vec::new();
    let outcome = tether
        .stop(number(given, "speed"), legs, |moment| seen.push(moment))
        .unwrap();
    (outcome, seen)
}

#[test]
fn stops_agree_with_rk45() {
    for (given, found) in cases("tether") {
        let (outcome, _) = solved(&given);
        let end = match outcome.still {
            Some(still) => still,
            None => {
                assert!(outcome.ended);
                outcome.last
            }
        };
        // Half a per cent: SciPy's absorber slips like a dashpot, ours at a steady force.
        let peak = number(&found, "peak");
        close(outcome.peak, peak, 5e-3);
        assert!(
            (end.along - number(&found, "along")).abs() < 5e-3,
            "{given}"
        );
        close(end.time, number(&found, "time"), 5e-3);
        if let Some(torn) = found["torn"].as_f64() {
            assert!(torn > 0.05 && (end.torn - torn).abs() < 5e-3, "{given}");
        }
        if let Some(landing) = found["landing_speed"].as_f64() {
            close(end.speed.hypot(end.fall_speed), landing, 5e-3);
        }
    }
}

#[test]
fn a_body_on_the_way_to_the_ground_keeps_its_energy() {
    // Without damping, speed, height and stretch hold one sum (first law).
    let tether = Tether {
        mass: 70.0,
        stiffness: 3000.0,
        damping: 0.0,
        length: 6.0,
        rise: 1.0,
        absorber: None,
    };
    let reach = tether.reach().unwrap();
    let mut sums = Vec::new();
    let outcome = tether
        .stop(6.0, Legs::Swept(0.9), |m| {
            let far = (reach + m.along).hypot(-m.down - 1.0);
            let stretch = (far - 6.0).max(0.0);
            let moving = 0.5 * 70.0 * (m.speed * m.speed + m.fall_speed * m.fall_speed);
            sums.push(moving - 70.0 * GRAVITY * m.down + 0.5 * 3000.0 * stretch * stretch);
        })
        .unwrap();
    assert!(outcome.ended && sums.len() > 10);
    for sum in sums {
        close(sum, 0.5 * 70.0 * 36.0, 1e-5);
    }
    close(outcome.last.down, 0.9, 1e-6);
}

#[test]
fn harness_and_line_give_in_a_row() {
    // Compliances add: 10 m of 20 kN give 0.5 m a kilonewton, the harness 0.02 m more.
    let soft = plain(&[
        ("line_modulus", Exact(20e3)),
        ("line_length", Exact(10.0)),
        ("harness_give", Exact(0.02)),
    ]);
    close(value(&soft, "line_stiffness"), 1000.0 / 0.52, 1e-9);
}

#[test]
fn slack_is_what_makes_the_stop_hard() {
    let peak = |slack| value(&assess(&[("slack", Exact(slack))]), "run_speed");
    assert!(peak(2.0) < peak(6.0) && peak(6.0) < peak(20.0));
    let short = assess(&[("slack", Exact(3.0))]);
    assert!(says(&short, "still_gathering"));
    let far = assess(&[("slack", Exact(14.0))]);
    assert!(says(&far, "past_the_anchor"));
    let hard = plain(&[("top_speed", Exact(9.0))]);
    assert_eq!(check(&hard, "peak_acceleration").status, Status::Exceeded);
}

#[test]
fn an_absorber_that_is_used_up_helps_no_more() {
    let short = assess(&[
        ("absorber_force", Exact(800.0)),
        ("absorber_stroke", Exact(0.1)),
        ("top_speed", Exact(7.0)),
    ]);
    close(value(&short, "absorber_travel"), 0.1, 1e-9);
    assert_eq!(check(&short, "absorber_travel").status, Status::Exceeded);
    // The limit shown is what the equipment is marked with; the reserve is in the rule.
    close(check(&short, "absorber_travel").limit.value, 0.1, 2e-6);
    assert!(value(&short, "peak_force") > 800.0);
    let long = assess(&[
        ("absorber_force", Exact(800.0)),
        ("absorber_stroke", Exact(3.0)),
        ("top_speed", Exact(7.0)),
    ]);
    close(value(&long, "peak_force"), 800.0, 1e-6);
    assert!(value(&long, "rebound_speed") < value(&short, "rebound_speed"));
    let none = assess(&[("absorber", Name("none"))]);
    assert!(
        none.checks
            .iter()
            .all(|check| check.name != "absorber_travel")
    );
    assert_eq!(value(&none, "absorber_travel"), 0.0);
}

#[test]
fn a_swept_body_may_load_a_high_anchor_more() {
    let changes = [
        ("anchor_height", Exact(4.0)),
        ("line_length", Exact(6.0)),
        ("performer_mass", Exact(80.0)),
        ("line_modulus", Exact(2200.0 * 6.0)),
        ("top_speed", Exact(3.0)),
        ("anchor_strength", Exact(15e3)),
        ("landing_height", Exact(0.0)),
    ];
    let high = plain(&changes);
    let tether = Tether {
        mass: 80.0,
        stiffness: 2200.0,
        damping: 0.0,
        length: 6.0,
        rise: 4.0 - 1.2,
        absorber: None,
    };
    let carried = tether.stop(3.0, Legs::Carry, |_| {}).unwrap();
    let swept = tether.stop(3.0, Legs::Swept(1.0), |_| {}).unwrap();
    assert!(
        swept.peak > 1.1 * carried.peak,
        "{} {}",
        swept.peak,
        carried.peak
    );
    close(value(&high, "peak_force"), swept.peak, 1e-9);
    close(value(&high, "peak_acceleration"), swept.peak / 80.0, 1e-9);
    close(value(&high, "anchor_factor"), 15e3 / swept.peak, 1e-9);
    // The shake follows a slow pull with little overshoot, and is more than the carried body's.
    assert!(value(&high, "dynamic_response") > carried.peak / 80.0);
}

#[test]
fn anchors_and_lines_are_held_to() {
    // 29 CFR 1926.502(d)(15): 5,000 lbf, which the text rounds to 22.2 kN, or a factor of 2.
    close(5000.0 * POUND_FORCE, 22.2e3, 2e-3);
    let weak = assess(&[("anchor_strength", Exact(2000.0))]);
    assert_eq!(check(&weak, "anchor_factor").status, Status::Exceeded);
    assert_eq!(check(&weak, "anchor_rating").status, Status::Exceeded);
    assert!(!check(&weak, "anchor_rating").blocking);
    let designed = assess(&[("anchor_strength", Exact(15e3))]);
    assert_eq!(check(&designed, "anchor_factor").status, Status::Within);
    assert_eq!(check(&designed, "anchor_rating").status, Status::Exceeded);
    let thin = assess(&[("line_strength", Exact(5000.0))]);
    assert_eq!(check(&thin, "line_factor").status, Status::Exceeded);
    assert_eq!(
        check(&thin, "line_factor").source.standing,
        Standing::CommonPractice
    );
}

#[test]
fn the_ground_has_pads_where_the_body_lands() {
    let sound = assess(&[]);
    assert_eq!(check(&sound, "pads").status, Status::Within);
    let behind = assess(&[
        ("absorber", Name("none")),
        ("line_damping", Exact(0.0)),
        ("line_modulus", Exact(400e3)),
        ("pad_behind", Exact(0.5)),
    ]);
    // A stiff line flings the body back behind the mark.
    assert!(value(&behind, "landing_place") < 0.0);
    assert_eq!(check(&behind, "pads").status, Status::Exceeded);
    assert!(check(&behind, "pads").detail.contains("behind the mark"));
    assert_eq!(check(&behind, "rebound").status, Status::Exceeded);
    let wall = assess(&[("site_clear", Exact(0.4))]);
    assert_eq!(check(&wall, "clear_run").status, Status::Exceeded);
    // Free fall from the harness point to 0.2 m over the pads bounds the time to the ground.
    let fall: f64 = 1.2 - 0.1 - 0.2;
    assert!(value(&sound, "landing_time") >= 0.99 * (2.0 * fall / GRAVITY).sqrt());
    let many = assess(&[("stops_today", Exact(4.0))]);
    assert_eq!(check(&many, "stops_today").status, Status::Exceeded);
}

#[test]
fn anchors_out_of_reach_and_overhead() {
    let high = assess(&[("anchor_height", Exact(12.0))]);
    assert!(says(&high, "line_does_not_reach"));
    assert_eq!(check(&high, "harness_force").status, Status::Unknown);
    // From high above on a stiff short line the body swings and never lands.
    let overhead = assess(&[
        ("anchor_height", Exact(5.0)),
        ("line_length", Exact(4.0)),
        ("line_modulus", Exact(900e3)),
        ("absorber", Name("none")),
    ]);
    assert!(says(&overhead, "stays_up"));
    assert_eq!(check(&overhead, "pads").status, Status::Unknown);
    assert_ne!(check(&overhead, "harness_force").status, Status::Unknown);
}
