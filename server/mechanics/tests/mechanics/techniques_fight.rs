//! Fights: outside values of their models, and what they say of plans.

use crate::common::{
    Given::{self, Exact, Number, Option},
    close, inputs, plausible, says, value,
};
use gagwright_mechanics::{
    Assessment, Inputs, Status, find,
    models::{
        blow,
        exertion::{Day, Stamina},
    },
};
use serde_json::Value;

const ZERO: f64 = 273.15;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("fight");
    given.0.extend(inputs(changes).0);
    find("fight").unwrap().assess(&given).unwrap()
}

fn status(changes: &[(&str, Given)], name: &str) -> Status {
    assess(changes)
        .checks
        .iter()
        .find(|check| check.name == name)
        .unwrap_or_else(|| panic!("no check {name}"))
        .status
}

fn cases(table: &str) -> Vec<Value> {
    let all: Value = serde_json::from_str(include_str!("../fixtures/exertion.json")).unwrap();
    let cases = all[table].as_array().unwrap().clone();
    assert!(!cases.is_empty());
    cases
}

#[test]
fn tiring_agrees_with_scipy() {
    for case in cases("reserve") {
        let n = |name: &str| case["given"][name].as_f64().unwrap();
        let day = Day {
            takes: n("takes") as usize,
            take: n("take"),
            rest: n("rest"),
        };
        let stamina = Stamina {
            full_effort: n("full_effort"),
            recovery: n("recovery"),
        };
        let mut watched = Vec::new();
        let left = stamina.through(&day, |time, reserve| watched.push((time, reserve)));
        close(left, case["found"]["reserve"].as_f64().unwrap(), 1e-8);
        assert_eq!(watched.len(), day.takes);
        close(watched.last().unwrap().0, day.length(), 1e-12);
    }
    // A body is spent and no more than spent; one time constant brings back 1 - 1/e of it.
    let stamina = Stamina {
        full_effort: 60.0,
        recovery: 400.0,
    };
    assert_eq!(stamina.worked(1.0, 100.0), 0.0);
    close(stamina.rested(0.0, 400.0), 0.632_12, 1e-5);
}

#[test]
fn a_blow_agrees_with_scipy() {
    for case in cases("blow") {
        let n = |name: &str| case["given"][name].as_f64().unwrap();
        let found = |name: &str| case["found"][name].as_f64().unwrap();
        let blow = blow::land(n("speed"), n("strike"), n("struck"), n("distance"), None);
        close(blow.force, found("force"), 1e-6);
        close(blow.energy, found("energy"), 1e-6);
        close(blow.felt.time, found("time"), 1e-6);
        close(blow.felt.mean * blow.felt.time, found("struck_speed"), 1e-6);
    }
    // Momentum: equal masses part at half the speed and lose half the energy, 4 J of 8 at 2 m/s and 4 kg.
    close(blow::land(2.0, 4.0, 4.0, 0.02, None).energy, 4.0, 1e-12);
    // A prop that breaks at half the force: half the force, a quarter of the energy (a spring's).
    let whole = blow::land(2.0, 4.0, 4.0, 0.02, None);
    let broken = blow::land(2.0, 4.0, 4.0, 0.02, Some(0.5 * whole.force));
    close(broken.force, 0.5 * whole.force, 1e-12);
    close(broken.energy, 0.25 * whole.energy, 1e-12);
    // Slowed evenly to rest, v^2 falls in a straight line: a quarter of the way before its end, half the speed.
    close(blow::speed_when_met(8.0, 0.4, 0.1), 4.0, 1e-12);
    assert_eq!(blow::speed_when_met(8.0, 0.4, -0.1), 0.0);
    assert_eq!(blow::speed_when_met(8.0, 0.4, 1.0), 8.0);
}

#[test]
fn distances_are_what_reaction_and_friction_need() {
    // Reach 0.7 m, 2 m/s for 0.5 s, and v^2 / 2 mu g = 0.3399 m at friction 0.6 (elementary mechanics).
    let found = assess(&[
        ("reach", Exact(0.7)),
        ("closing_speed", Exact(2.0)),
        ("reaction_time", Exact(0.5)),
        ("shoe_friction", Exact(0.6)),
        ("distance", Exact(2.5)),
    ]);
    close(value(&found, "standoff_needed"), 0.7 + 1.0 + 0.3399, 1e-4);
    close(value(&found, "standoff_left"), 2.5 - 2.0399, 1e-3);
    // Five standard deviations leave 2.867e-7 in one tail (tables of the normal distribution); one strike,
    // one take, nothing added by tiring.
    let far = assess(&[
        ("distance", Exact(1.2)),
        ("reach", Exact(0.95)),
        ("mark_scatter", Exact(0.05)),
        ("spent_scatter", Exact(0.0)),
        ("strikes", Exact(1.0)),
        ("takes", Exact(1.0)),
    ]);
    close(value(&far, "chance_first"), 2.867e-7, 1e-3);
    close(value(&far, "chance_day"), 2.867e-7, 1e-3);
    // Two strikes at a chance of one half: three quarters (no gap at all).
    let none = assess(&[
        ("distance", Exact(1.0)),
        ("reach", Exact(1.0)),
        ("strikes", Exact(2.0)),
        ("takes", Exact(1.0)),
    ]);
    close(value(&none, "chance_day"), 0.75, 1e-9);
}

#[test]
fn a_step_in_adds_to_a_hit_by_mistake() {
    // A head that steps in at 2 m/s onto a fist at the end of its way: 2 m/s over 10 mm as a half sine peaks at
    // pi v^2 / 4 d = 314.16 m/s2; 3 kg against a head of 0.0694 of 70 kg counts with 1.8547 kg, so 582.7 N
    // (elementary mechanics).
    let mut met = [
        ("weapon", Option("unarmed")),
        ("performer_mass", Exact(70.0)),
        ("strike_mass", Exact(3.0)),
        ("strike_padding", Exact(0.0)),
        ("face_give", Exact(0.01)),
        ("reach", Exact(0.9)),
        ("step_error", Exact(0.3 + 1e-9)),
        ("distance", Exact(1.2)),
        ("closing_speed", Exact(2.0)),
    ];
    let found = assess(&met);
    close(value(&found, "contact_speed"), 2.0, 1e-3);
    close(value(&found, "peak_force"), 582.7, 1e-3);
    assert_eq!(status(&met, "peak_force"), Status::Exceeded);
    // Out of reach no step adds anything.
    met[7].1 = Exact(1.3);
    assert_eq!(value(&assess(&met), "contact_speed"), 0.0);
    // How fast they close is not known, so neither is the hit.
    let mut given = plausible("fight");
    given.0.remove("closing_speed");
    let found = find("fight").unwrap().assess(&given).unwrap();
    let check = found.checks.iter().find(|check| check.name == "peak_force");
    assert_eq!(check.unwrap().status, Status::Unknown);
}

#[test]
fn heat_is_the_standards() {
    // ISO 7243 in the sun, 25/45/32 gives 29.7; out of it 25/30 gives 26.5. Two layers add 3 (ISO 7243:2017
    // clothing adjustment for double cloth, from memory).
    let heat = |place, globe, air, costume| {
        let found = assess(&[
            ("place", Option(place)),
            ("wet_bulb", Exact(25.0 + ZERO)),
            ("globe", Exact(globe + ZERO)),
            ("air_temperature", Exact(air + ZERO)),
            ("costume", Option(costume)),
        ]);
        value(&found, "wet_bulb_globe") - ZERO
    };
    close(heat("sun", 45.0, 32.0, "single"), 29.7, 1e-9);
    close(heat("shade", 30.0, 32.0, "single"), 26.5, 1e-9);
    close(heat("shade", 30.0, 32.0, "double"), 29.5, 1e-9);
    // National Weather Service: 90 F and 70 % feel like 105.92 F.
    let warm = [
        ("air_temperature", Exact((90.0 - 32.0) / 1.8 + ZERO)),
        ("humidity", Exact(0.7)),
    ];
    let index = value(&assess(&warm), "heat_index");
    close((index - ZERO) * 1.8 + 32.0, 105.92, 1e-4);
    // That is over 103 F, where the service's chart reads danger (from memory).
    assert_eq!(status(&warm, "heat_index"), Status::Exceeded);
    // By hand, 30 degrees and used to it: 10^((56.7 - 30) / 11.5) = 209.8 W allowed; between a rest of 115 W and
    // 520 W (ISO 7243 class 4, from memory) that is 0.234 of the hour.
    let used = assess(&[
        ("place", Option("shade")),
        ("wet_bulb", Exact(30.0 + ZERO)),
        ("globe", Exact(30.0 + ZERO)),
        ("costume", Option("single")),
        ("used_to_heat", Option("yes")),
    ]);
    close(value(&used, "work_allowed"), 0.234, 2e-3);
}

#[test]
fn a_sound_plan_stands() {
    let sound = assess(&[]);
    for check in &sound.checks {
        assert_ne!(check.status, Status::Exceeded, "{}", check.detail);
    }
    assert!(value(&sound, "chance_last") > value(&sound, "chance_first"));
    assert!(value(&sound, "chance_day") > value(&sound, "chance_last"));
    assert!(value(&sound, "contact_speed") > 0.0);
}

#[test]
fn plans_that_must_not_stand() {
    for (name, change) in [
        ("standoff_left", ("closing_speed", Exact(1.5))),
        ("standoff_left", ("reach", Exact(1.7))),
        ("chance_day", ("mark_scatter", Exact(0.15))),
        ("chance_day", ("rest_time", Exact(0.0))),
        ("peak_force", ("strike_mass", Exact(5.0))),
        ("hit_energy", ("strike_mass", Exact(5.0))),
        ("edge_radius", ("edge_radius", Exact(0.0005))),
        ("crew_gap", ("crew_distance", Exact(2.0))),
        ("heat_margin", ("costume", Option("closed"))),
        ("heat_margin", ("rest_time", Exact(0.0))),
        ("heat_margin", ("wet_bulb", Exact(32.0 + ZERO))),
        ("reserve_end", ("full_effort_time", Exact(45.0))),
        ("takes", ("takes", Exact(12.0))),
        ("run_throughs", ("run_throughs", Exact(0.0))),
        ("first_aiders", ("first_aiders", Exact(0.0))),
    ] {
        assert_ne!(status(&[], name), Status::Exceeded, "{name} before");
        // A hot day is where no rests tell.
        let hot = ("globe", Exact(45.0 + ZERO));
        assert_eq!(
            status(&[change.clone(), hot], name),
            Status::Exceeded,
            "{name} {change:?}"
        );
    }
    // A fist at its whole speed on bare bone: the brain's limit too.
    let through = [
        ("step_error", Exact(1.5)),
        ("strike_mass", Exact(6.0)),
        ("strike_speed", Exact(12.0)),
        ("face_give", Exact(0.004)),
        ("strike_padding", Exact(0.0)),
    ];
    assert_eq!(status(&through, "head_criterion"), Status::Exceeded);
}

#[test]
fn what_strikes_decides_what_is_asked() {
    // A fist has no edge to be filed.
    let fist = assess(&[("weapon", Option("unarmed"))]);
    assert!(fist.checks.iter().all(|check| check.name != "edge_radius"));
    // A breakaway prop of unknown strength is not known to be harmless, and one of known strength holds the force.
    let unknown = [("weapon", Option("breakaway")), ("strike_mass", Exact(5.0))];
    for name in ["peak_force", "hit_energy", "head_criterion"] {
        assert_eq!(status(&unknown, name), Status::Unknown, "{name}");
    }
    let known = assess(&[
        ("weapon", Option("breakaway")),
        ("strike_mass", Exact(5.0)),
        ("break_force", Number(100.0)),
    ]);
    close(value(&known, "peak_force"), 100.0, 1e-9);
    assert!(says(&known, "breakaway"));
    assert!(!says(&fist, "breakaway"));
}

#[test]
fn what_a_fight_is_warned_of() {
    assert!(says(&assess(&[]), "tired"));
    assert!(!says(&assess(&[("spent_scatter", Exact(0.0))]), "tired"));
    let met = |changes: &[(&str, Given)]| {
        let found = assess(changes);
        let caution = found.cautions.iter().find(|caution| caution.name == "met");
        caution.unwrap().text.clone()
    };
    assert!(met(&[]).contains("is met at"));
    assert!(met(&[("step_error", Exact(0.1))]).contains("not yet in reach"));
    assert!(says(&assess(&[("wet_bulb", Exact(30.0 + ZERO))]), "heat"));
    assert!(!says(
        &assess(&[
            ("wet_bulb", Exact(5.0 + ZERO)),
            ("globe", Exact(10.0 + ZERO))
        ]),
        "heat"
    ));
    let trace = &assess(&[]).traces[0];
    close(trace.y[0].values[0], 1.0, 1e-12);
}
