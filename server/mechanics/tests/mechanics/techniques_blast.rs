//! Stand-off from an effect: outside values of the run, the chances and the sound, and what it says of plans.

use crate::common::{
    Given::{self, Exact, Number, Option},
    check, close, inputs, plausible, says, status, value,
};
use gagwright_mechanics::{
    Assessment, Inputs, Shape, Status, find,
    models::{
        sound,
        spread::normal_inside,
        sprint::{Sprint, chord},
    },
};
use serde_json::Value;

const FOOT: f64 = 0.3048;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("blast-stand-off");
    given.0.extend(inputs(changes).0);
    find("blast-stand-off").unwrap().assess(&given).unwrap()
}

fn fixture() -> Value {
    serde_json::from_str(include_str!("../fixtures/stand_off.json")).unwrap()
}

#[test]
fn the_run_is_kellers_and_scipys() {
    // Keller 1973 (from memory): 12.2 m/s2 of push and 0.892 s give 100 m in about 10.07 s.
    let keller = Sprint {
        top_speed: 12.2 * 0.892,
        rise_time: 0.892,
        length: 100.0,
    };
    close(keller.time_at(100.0), 10.07, 3e-3);
    let all = fixture();
    let cases = all["sprint"].as_array().unwrap();
    assert!(!cases.is_empty());
    for case in cases {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let sprint = Sprint {
            top_speed: given("top_speed"),
            rise_time: given("rise_time"),
            length: 1000.0,
        };
        let time = case["found"]["time"].as_f64().unwrap();
        close(sprint.time_at(given("place")), time, 1e-8);
        close(sprint.place(time), given("place"), 1e-8);
        close(
            sprint.speed(time),
            case["found"]["speed"].as_f64().unwrap(),
            1e-8,
        );
    }
}

/// A rise of next to no time is none: its shares of a time would be too great to write down.
#[test]
fn a_run_that_starts_at_speed_is_followed_however_that_is_said() {
    let run = |rise_time| {
        let plan = assess(&[("rise_time", Exact(rise_time))]);
        let times = plan.traces[0].x.values.clone();
        assert!(times.iter().all(|time| time.is_finite()) && times.is_sorted());
        times
    };
    assert_eq!(run(1.6e-308), run(0.0));
    assert!(run(1e-3).last() > run(0.0).last());
}

#[test]
fn the_run_begins_at_rest_and_stays_at_its_end() {
    let sprint = Sprint {
        top_speed: 6.0,
        rise_time: 0.0,
        length: 12.0,
    };
    assert_eq!(sprint.place(-1.0), 0.0);
    close(sprint.place(1.5), 9.0, 1e-12);
    assert_eq!(sprint.place(5.0), 12.0);
    assert_eq!(sprint.speed(5.0), 0.0);
    assert_eq!(
        sprint.times_between((-1.0, 3.0)),
        Some((f64::NEG_INFINITY, 0.5))
    );
    assert_eq!(
        sprint.times_between((9.0, 40.0)),
        Some((1.5, f64::INFINITY))
    );
    assert_eq!(sprint.times_between((12.5, 40.0)), None);
    // A 3-4-5 triangle: a line 3 m off cuts 4 m to each side out of a circle of 5 m.
    let (from, to) = chord([-10.0, 3.0], [1.0, 0.0], 5.0).unwrap();
    close(from, 6.0, 1e-12);
    close(to, 14.0, 1e-12);
    assert!(chord([-10.0, 5.5], [1.0, 0.0], 5.0).is_none());
}

#[test]
fn the_normal_inside_keeps_small_tails() {
    // Tables of the normal distribution: 68.27 % within one deviation; 2.8665e-7 beyond five.
    close(normal_inside(-1.0, 1.0, 0.0, 1.0), 0.682_689_5, 1e-6);
    close(normal_inside(5.0, f64::INFINITY, 0.0, 1.0), 2.8665e-7, 1e-4);
    close(
        normal_inside(f64::NEG_INFINITY, -5.0, 0.0, 1.0),
        2.8665e-7,
        1e-4,
    );
}

#[test]
fn chances_are_scipys() {
    let all = fixture();
    let cases = all["chance"].as_array().unwrap();
    assert!(!cases.is_empty());
    for case in cases {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let place = |name: &str, i: usize| Exact(case["given"][name][i].as_f64().unwrap());
        let mut rows = vec![
            ("start_along", place("start", 0)),
            ("start_across", place("start", 1)),
            ("end_along", place("end", 0)),
            ("end_across", place("end", 1)),
            ("zone_radius", Exact(given("radius"))),
            ("run_speed", Exact(given("top_speed"))),
            ("speed_deviation", Exact(given("speed_deviation"))),
            ("rise_time", Exact(given("rise_time"))),
            ("late_delay", Exact(given("late"))),
            ("firing_deviation", Exact(given("fire_deviation"))),
            ("start_reaction", Exact(given("reaction"))),
            ("reaction_deviation", Exact(given("reaction_deviation"))),
        ];
        if given("mark") >= 0.0 {
            rows.push(("mark_distance", Exact(given("mark"))));
            rows.push(("operator_reaction", Exact(given("delay") - 0.02)));
            rows.push(("firing_delay", Exact(0.02)));
        } else {
            rows.push(("firing_cue", Option("clock")));
            rows.push(("fire_after", Exact(given("fire_after"))));
            rows.push(("firing_delay", Exact(given("delay"))));
        }
        let found = assess(&rows);
        for (name, key) in [("inside_chance", "inside"), ("late_chance", "late")] {
            let expected = case["found"][key].as_f64().unwrap();
            let got = value(&found, name);
            assert!(
                (got - expected).abs() <= 1e-7 + 2e-3 * expected,
                "{name}: {got} for {expected}"
            );
        }
    }
}

#[test]
fn sound_travels_and_adds_up_as_published() {
    // ISO 9613-1: 343.2 m/s at 20 degrees Celsius; 331.3 m/s at 0 (physics tables).
    close(sound::speed(293.15), 343.2, 1e-12);
    close(sound::speed(273.15), 331.3, 1e-3);
    // Runner at 14.67 m and crew at 29.73 m at 15 degrees: 340.3 m/s (ISO 2533, sea level).
    let plan = assess(&[]);
    close(
        value(&plan, "sound_delay_crew"),
        libm::hypot(10.0, 28.0) / 340.29,
        1e-3,
    );
    assert!(says(&plan, "sound"));
}

#[test]
fn a_sound_plan_is_within_and_says_whose_distances_they_are() {
    let plan = assess(&[]);
    for check in &plan.checks {
        assert_eq!(
            check.status,
            Status::Within,
            "{} {}",
            check.name,
            check.detail
        );
    }
    assert!(says(&plan, "as_given") && says(&plan, "early_shot") && says(&plan, "late_shot"));
    assert!(says(&plan, "runner_in_debris"));
    let names: Vec<_> = plan.zones.iter().map(|zone| zone.name.as_str()).collect();
    assert_eq!(names, ["stand_off", "debris", "debris_downwind"]);
}

#[test]
fn the_stand_off_given_is_what_the_runner_is_held_against() {
    let at = value(&assess(&[]), "runner_distance");
    assert_eq!(
        status(
            &assess(&[("zone_radius", Exact(at + 0.1))]),
            "runner_stand_off"
        ),
        Status::Exceeded
    );
    assert_eq!(
        status(
            &assess(&[("zone_radius", Exact(at - 0.2))]),
            "runner_stand_off"
        ),
        Status::Marginal
    );
    // A mark too early fires on a runner who is still inside.
    let early = assess(&[("mark_distance", Number(8.0))]);
    assert_eq!(status(&early, "runner_stand_off"), Status::Exceeded);
    assert_eq!(status(&early, "inside_chance"), Status::Exceeded);
    assert_eq!(status(&early, "time_margin"), Status::Exceeded);
    assert_eq!(status(&early, "decision_margin"), Status::Exceeded);
    assert!(value(&early, "time_margin") < 0.0);
}

#[test]
fn a_clock_spreads_more_than_a_mark() {
    // The same moment at the middle of everything.
    let by_mark = assess(&[("mark_distance", Exact(13.0))]);
    let by_clock = assess(&[
        ("firing_cue", Option("clock")),
        ("fire_after", Exact(value(&by_mark, "fire_time") - 0.02)),
    ]);
    close(
        value(&by_clock, "runner_distance"),
        value(&by_mark, "runner_distance"),
        1e-9,
    );
    assert!(value(&by_clock, "place_spread") > 1.5 * value(&by_mark, "place_spread"));
    assert!(value(&by_clock, "inside_chance") > value(&by_mark, "inside_chance"));
}

#[test]
fn a_late_shot_finds_a_runner_who_comes_past() {
    // Fired before the runner comes in, well clear; two seconds later the runner is beside it.
    let past = assess(&[
        ("start_along", Exact(-30.0)),
        ("end_along", Exact(30.0)),
        ("mark_distance", Exact(10.0)),
        ("late_delay", Exact(4.0)),
    ]);
    assert_eq!(status(&past, "runner_stand_off"), Status::Within);
    assert_eq!(status(&past, "late_stand_off"), Status::Exceeded);
    assert_eq!(status(&past, "late_chance"), Status::Exceeded);
    close(value(&past, "late_distance"), 3.0, 1e-9);
    assert!(value(&past, "late_chance") > 0.99);
    assert!(says(&past, "passes_through"));
    let prompt = assess(&[
        ("start_along", Exact(-30.0)),
        ("end_along", Exact(30.0)),
        ("mark_distance", Exact(10.0)),
        ("late_delay", Exact(0.0)),
    ]);
    assert_eq!(status(&prompt, "late_stand_off"), Status::Within);
    // A shot on time finds the runner 3 m from it a moment later all the same, while debris may still fall.
    close(value(&prompt, "after_distance"), 3.0, 1e-9);
    assert_eq!(status(&prompt, "after_stand_off"), Status::Exceeded);
    assert_eq!(status(&prompt, "time_margin"), Status::Exceeded);
    assert!(!check(&prompt, "time_margin").detail.contains("comes in"));
    assert!(!check(&past, "late_chance").detail.contains("safe from"));
}

#[test]
fn where_the_run_ends_counts() {
    let near = assess(&[("end_along", Exact(5.0)), ("mark_distance", Exact(6.0))]);
    assert_eq!(status(&near, "end_stand_off"), Status::Exceeded);
    assert!(says(&near, "always_inside"));
    let never = assess(&[("mark_distance", Exact(60.0))]);
    assert!(says(&never, "mark_not_passed"));
    assert_eq!(status(&never, "runner_stand_off"), Status::Unknown);
    let ends_inside = assess(&[("start_along", Exact(-40.0)), ("end_along", Exact(0.0))]);
    assert!(says(&ends_inside, "held_shot"));
}

#[test]
fn bystanders_by_nfpa_1126() {
    // NFPA 1126 (from memory): the greater of 15 ft and twice the fallout radius; 25 ft from a mortar.
    let limit = |effect, debris| {
        let found = assess(&[("effect", Option(effect)), ("debris_radius", Exact(debris))]);
        check(&found, "bystanders").limit.value
    };
    close(limit("fireball", 2.0), 15.0 * FOOT, 1e-9);
    close(limit("concussion", 2.0), 25.0 * FOOT, 1e-9);
    close(limit("concussion", 15.0), 30.0, 1e-9);
    let near = assess(&[("bystander_distance", Exact(29.0))]);
    assert_eq!(status(&near, "bystanders"), Status::Exceeded);
    // 3 m/s for 16 s carries debris 48 m: twice the debris zone is kept, and 60 m are 12 m from its middle.
    let carried = assess(&[("wind_speed", Exact(3.0)), ("debris_time", Exact(16.0))]);
    assert_eq!(status(&carried, "bystanders"), Status::Within);
    let still = assess(&[
        ("bystander_distance", Exact(60.0)),
        ("wind_speed", Exact(3.0)),
        ("debris_time", Exact(16.0)),
    ]);
    close(value(&still, "bystander_debris"), 12.0, 1e-12);
    assert_eq!(status(&carried, "bystander_debris"), Status::Exceeded);
}

#[test]
fn wind_carries_debris_and_smoke_to_people() {
    // 3 m/s for 10 s carries debris 30 m: a crew 40 m downwind is 10 m from its middle.
    let downwind = assess(&[
        ("crew_along", Exact(0.0)),
        ("crew_across", Exact(40.0)),
        ("debris_time", Exact(10.0)),
        ("wind_speed", Exact(3.0)),
    ]);
    close(value(&downwind, "crew_distance"), 10.0, 1e-9);
    assert_eq!(status(&downwind, "crew_distance"), Status::Exceeded);
    assert_eq!(value(&downwind, "smoke_clearance"), 0.0);
    assert_eq!(status(&downwind, "smoke"), Status::Exceeded);
    // What falls sooner lands on the way: 10 m abreast of its middle are 10 m and not 18.
    let abreast = assess(&[
        ("crew_along", Exact(15.0)),
        ("crew_across", Exact(10.0)),
        ("debris_time", Exact(10.0)),
        ("wind_speed", Exact(3.0)),
        ("wind_towards", Exact(0.0)),
    ]);
    close(value(&abreast, "crew_distance"), 10.0, 1e-12);
    let zone = abreast
        .zones
        .iter()
        .find(|zone| zone.name == "debris_downwind")
        .unwrap();
    // Both circles of 15 m, at the effect and 30 m along, and all between.
    let Shape::Rectangle { x0, x1, y0, y1 } = zone.shape else {
        panic!("no box round the debris");
    };
    for (found, expected) in [(x0, -15.0), (x1, 45.0), (y0, -15.0), (y1, 15.0)] {
        close(found, expected, 1e-12);
    }
    // The same crew upwind stays as far as it is; a plume of 60 m ends where it ends.
    let upwind = assess(&[
        ("crew_along", Exact(0.0)),
        ("crew_across", Exact(-40.0)),
        ("debris_time", Exact(10.0)),
    ]);
    close(value(&upwind, "crew_distance"), 40.0, 1e-9);
    let beyond = assess(&[("crew_along", Exact(0.0)), ("crew_across", Exact(75.0))]);
    close(value(&beyond, "smoke_clearance"), 15.0, 1e-9);
}

#[test]
fn a_camera_is_held_against_what_is_in_front_of_it() {
    let at = &[
        ("camera_along", Exact(12.0)),
        ("camera_across", Exact(-5.0)),
    ][..];
    let with = |more: &[(&str, Given)]| assess(&[at, more].concat());
    assert_eq!(status(&with(&[]), "camera_distance"), Status::Exceeded);
    let shielded = with(&[
        ("camera_cover", Option("shielded")),
        ("camera_stand_off", Exact(10.0)),
    ]);
    assert_eq!(status(&shielded, "camera_distance"), Status::Within);
    let unsaid = with(&[("camera_cover", Option("shielded"))]);
    assert_eq!(status(&unsaid, "camera_distance"), Status::Unknown);
    let unmanned = with(&[("camera_cover", Option("unmanned"))]);
    assert!(unmanned.checks.iter().all(|c| c.name != "camera_distance"));
}

#[test]
fn a_misfire_is_left_alone_and_ways_out_are_two() {
    let hasty = assess(&[("misfire_hold", Exact(600.0)), ("escape_ways", Exact(1.0))]);
    assert_eq!(status(&hasty, "misfire_hold"), Status::Exceeded);
    assert_eq!(status(&hasty, "escape_ways"), Status::Exceeded);
}
