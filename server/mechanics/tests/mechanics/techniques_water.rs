//! What water does to a body that falls in, to its breath and to its warmth, and what is said of it.

use crate::common::{
    GRAVITY, Given,
    Given::{Exact, Number, Option as Name},
    check, close, figure, inputs, plausible, says,
};
use gagwright_mechanics::{
    Assessment, Inputs, Standing, Status, find,
    models::{
        cold_water,
        water_entry::{Entry, Shape, plunge},
        weather,
    },
};
use serde_json::Value;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("water-work");
    given.0.extend(inputs(changes).0);
    find("water-work").unwrap().assess(&given).unwrap()
}

const ZERO: f64 = 273.15;

#[test]
fn plunges_agree_with_dop853() {
    // fixtures/water_entry.json is made by tests/reference/fixtures/water_entry.py with SciPy.
    let all: Value = serde_json::from_str(include_str!("../fixtures/water_entry.json")).unwrap();
    for case in all["plunge"].as_array().unwrap() {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let found = |name: &str| case["found"][name].as_f64().unwrap();
        let ours = plunge(
            &Entry {
                mass: given("mass"),
                speed: given("speed"),
                float: given("float_force"),
                density: given("density"),
                shape: Shape {
                    length: given("length"),
                    drag_area: given("drag_area"),
                    added: given("added"),
                },
            },
            |_, _, _, _| {},
        )
        .unwrap();
        close(ours.depth, found("depth"), 1e-5);
        close(ours.time, found("time"), 1e-4);
        // The peak lies between our steps, twenty to a body's length.
        close(ours.most_felt, found("most_felt"), 2e-3);
    }
}

#[test]
fn a_slam_conserves_momentum() {
    // T. von Karman 1929: with no drag, and too fast for weight to matter, m v = (m + M) u; here M = m.
    let mut under = None;
    let entry = Entry {
        mass: 70.0,
        speed: 40.0,
        float: 0.0,
        density: 1000.0,
        shape: Shape {
            length: 0.25,
            drag_area: 0.0,
            added: 1.0,
        },
    };
    let sunk = plunge(&entry, |_, depth, speed, _| {
        if depth >= 0.25 - 1e-9 && under.is_none() {
            under = Some(speed);
        }
    });
    // With nothing to slow it afterwards it has no greatest depth.
    assert!(sunk.is_none());
    close(under.unwrap(), 20.0, 5e-3);
}

#[test]
fn breath_falls_with_the_water() {
    // Hayward and others 1984, J. Appl. Physiol. 56: 15.01 + 0.92 T seconds (abstract, as read).
    let share =
        |water: f64, rehearsed: f64| cold_water::breath_share(ZERO + water, ZERO + rehearsed);
    close(share(10.0, 28.0), 24.21 / 40.77, 1e-9);
    close(share(0.0, 28.0), 15.01 / 40.77, 1e-9);
    assert_eq!(share(30.0, 20.0), 1.0);
}

#[test]
fn useful_time_is_the_rescue_tables() {
    // Rescue services' table, time to exhaustion or unconsciousness, least of each band: 32.5 to 40 F 15
    // min; 40 to 50 F 30 min; 50 to 60 F 1 h; 60 to 70 F 2 h; 70 to 80 F 3 h.
    let minutes =
        |fahrenheit: f64| cold_water::exhaustion_time(ZERO + (fahrenheit - 32.0) / 1.8) / 60.0;
    for (fahrenheit, least) in [
        (32.5, 15.0),
        (40.0, 30.0),
        (50.0, 60.0),
        (60.0, 120.0),
        (70.0, 180.0),
    ] {
        close(minutes(fahrenheit), least, 1e-9);
    }
    // Below 32.5 F the table says "under 15 minutes" and no least.
    assert!(minutes(32.0) < 15.0 && minutes(32.0) > 0.0);
    assert!(minutes(30.0) < minutes(32.0));
    assert_eq!(minutes(28.0), 0.0);
    close(minutes(90.0), 180.0, 1e-9);
    assert!(minutes(45.0) > 30.0 && minutes(45.0) < 60.0);
}

#[test]
fn a_body_cools_as_its_heat_balance_says() {
    // Heat in less heat out is heat stored (first law): over a short time the fall is the balance's own.
    let (mass, water, suit, heat) = (75.0, ZERO + 10.0, 0.0, 200.0);
    let body = cold_water::cooling(mass, water, suit, heat);
    let lost = 1.9 * (cold_water::WARM - water) / cold_water::resistance(suit);
    let fall = cold_water::WARM - body.after(10.0);
    close(fall, 10.0 * (lost - heat) / (3470.0 * mass), 1e-3);
    // The time to lose a kelvin is when a kelvin is lost.
    close(
        cold_water::WARM - body.after(body.time_to_lose(1.0)),
        1.0,
        1e-9,
    );
    let suited = cold_water::cooling(mass, water, 0.005, heat);
    assert!(suited.time_to_lose(1.0) > 1.5 * body.time_to_lose(1.0));
    // In a warm pool nothing is lost.
    let pool = cold_water::cooling(mass, ZERO + 33.0, 0.0, heat);
    assert_eq!(pool.time_to_lose(1.0), 86_400.0);
    assert_eq!(pool.after(3600.0), cold_water::WARM);
}

#[test]
fn wind_chill_is_the_weather_services() {
    // United States National Weather Service chart, 2001, and its formula at 0 F, 15 mph: -19.40 F.
    for (air, miles, chill) in [
        (0.0, 15.0, -19.40),
        (5.0, 30.0, -19.0),
        (20.0, 25.0, 3.0),
        (40.0, 5.0, 36.0),
    ] {
        let kelvin = weather::wind_chill(ZERO + (air - 32.0) / 1.8, miles * 1609.344 / 3600.0);
        let fahrenheit = (kelvin - ZERO) * 1.8 + 32.0;
        assert!(
            (fahrenheit - chill).abs() < 0.5,
            "{air} {miles}: {fahrenheit}"
        );
    }
    let exact = weather::wind_chill(ZERO - 32.0 / 1.8, 15.0 * 1609.344 / 3600.0);
    assert!(((exact - ZERO) * 1.8 + 32.0 + 19.40).abs() < 0.01);
    // Warm or still air is what it is.
    assert_eq!(weather::wind_chill(ZERO + 20.0, 10.0), ZERO + 20.0);
    assert_eq!(weather::wind_chill(ZERO, 1.0), ZERO);
}

#[test]
fn sound_water_work_passes() {
    let good = assess(&[]);
    for check in &good.checks {
        assert!(
            !check.blocking || check.status != Status::Exceeded,
            "{} {}",
            check.name,
            check.detail
        );
        let published = matches!(check.name.as_str(), "response_low" | "response_medium");
        let expected = if published {
            Standing::FromMemory
        } else {
            Standing::CommonPractice
        };
        assert_eq!(check.source.standing, expected, "{}", check.name);
    }
    // 2 m of free fall with no air is 6.263 m/s (v^2 = 2 g h); air takes a little.
    let speed = figure(&good, "entry_speed").value;
    assert!(speed < 6.264 && speed > 6.2, "{speed}");
}

#[test]
fn an_entry_is_judged_by_bottom_and_body() {
    let shallow = assess(&[("water_depth", Number(2.0))]);
    assert_eq!(check(&shallow, "bottom").status, Status::Exceeded);
    // Flat, a body stops in less water and is hit many times as hard.
    let feet = assess(&[("entry_height", Exact(9.0))]);
    let flat = assess(&[
        ("entry_height", Exact(9.0)),
        ("entry_attitude", Name("front")),
    ]);
    assert!(figure(&flat, "depth_reached").value < 0.5 * figure(&feet, "depth_reached").value);
    assert!(figure(&flat, "peak_felt").value > 5.0 * figure(&feet, "peak_felt").value);
    assert_eq!(check(&flat, "response_medium").status, Status::Exceeded);
    assert_eq!(check(&feet, "response_medium").status, Status::Within);
    let high = assess(&[("entry_height", Number(14.0)), ("water_depth", Number(9.0))]);
    assert_eq!(check(&high, "entry_speed").status, Status::Exceeded);
    assert!(!check(&high, "entry_speed").blocking);
    let ledge = assess(&[("clear_radius", Number(1.0))]);
    assert_eq!(check(&ledge, "clear_water").status, Status::Exceeded);
    let often = assess(&[("entries_today", Exact(9.0))]);
    assert_eq!(check(&often, "entries_today").status, Status::Exceeded);
    // A body heavier than its water sinks at sqrt(2 F / rho CdA), never slower: no depth is its greatest.
    let heavy = assess(&[
        ("float_force", Exact(-50.0)),
        ("performer_mass", Exact(90.0)),
        ("entry_height", Exact(3.0)),
        ("entry_attitude", Name("feet")),
        ("water_depth", Exact(12.0)),
    ]);
    assert!(says(&heavy, "sinks"));
    assert!(heavy.figures.iter().all(|f| f.name != "depth_reached"));
    assert_eq!(check(&heavy, "bottom").status, Status::Unknown);
    // Mean over the depth: v^2 / 2 s.
    let speed = figure(&feet, "entry_speed").value;
    let depth = figure(&feet, "depth_reached").value;
    close(
        figure(&feet, "mean_slowing").value,
        speed * speed / (2.0 * depth),
        1e-12,
    );
    assert!(figure(&feet, "peak_felt").value > GRAVITY);
}

/// The depth is where the body stands still. Wet all over it is slowed by F + k v^2 with k = rho CdA / 2, so
/// from there it goes m / 2k ln(1 + k v^2 / F) deeper: without end where it does not float.
#[test]
fn depth_is_where_the_body_stands_still() {
    // 68 kg, feet first from 2 m: 3.70 m with 30 N of float, 4.35 m with 10 N, 4.77 m with 5 N (the same
    // equations down to rest by another solver).
    for (float, depth) in [(30.0, 3.70), (10.0, 4.35), (5.0, 4.77)] {
        let found = assess(&[("float_force", Exact(float))]);
        close(figure(&found, "depth_reached").value, depth, 3e-3);
    }
    // 4.4 m of water leaves 0.05 m under the body, where half a metre is wanted.
    let light = assess(&[("float_force", Exact(10.0)), ("water_depth", Exact(4.4))]);
    assert_eq!(check(&light, "bottom").status, Status::Exceeded);
    // Nothing to turn it: however deep the water, nobody knows that it is enough.
    for float in [0.0, -10.0, -20.0] {
        let sinks = assess(&[("float_force", Exact(float)), ("water_depth", Exact(5.5))]);
        assert_eq!(check(&sinks, "bottom").status, Status::Unknown);
    }
    // Where the tolerance reaches to no float, the interval is not whole.
    let perhaps = assess(&[("float_force", Number(15.0)), ("water_depth", Number(30.0))]);
    assert_eq!(check(&perhaps, "bottom").status, Status::Marginal);
}

#[test]
fn breath_is_held_to_what_was_rehearsed_in_warm_water() {
    let long = assess(&[("planned_submerged", Number(40.0))]);
    assert_eq!(check(&long, "breath").status, Status::Exceeded);
    // 18 C after a rehearsal at 28 C leaves (15.01 + 0.92 x 18) / (15.01 + 0.92 x 28) of 64 s.
    close(
        figure(&long, "breath_available").value,
        64.0 * 31.57 / 40.77,
        1e-9,
    );
    assert!(says(&long, "cold_breath"));
    let same = assess(&[("rehearsal_temperature", Exact(291.15))]);
    assert!(!says(&same, "cold_breath"));
    let far = assess(&[("diver_distance", Number(25.0))]);
    assert_eq!(check(&far, "air").status, Status::Exceeded);
    let deep = assess(&[("planned_depth", Number(3.6))]);
    assert_eq!(check(&deep, "depth_untrained").status, Status::Exceeded);
    let diver = assess(&[("planned_depth", Number(3.6)), ("training", Name("diver"))]);
    assert!(
        !diver
            .checks
            .iter()
            .any(|check| check.name == "depth_untrained")
    );
    assert_eq!(check(&diver, "planned_depth").status, Status::Within);
    let abyss = assess(&[("planned_depth", Number(14.0)), ("training", Name("diver"))]);
    assert_eq!(check(&abyss, "planned_depth").status, Status::Exceeded);
}

#[test]
fn cold_current_and_cover_are_judged() {
    let cold = assess(&[
        ("water_temperature", Number(ZERO + 6.0)),
        ("planned_immersion", Number(3000.0)),
        ("suit_thickness", Exact(0.0)),
    ]);
    assert_eq!(check(&cold, "immersion").status, Status::Exceeded);
    assert_eq!(check(&cold, "body_temperature").status, Status::Exceeded);
    assert_eq!(check(&cold, "cold_shock").status, Status::Exceeded);
    assert!(!check(&cold, "cold_shock").blocking);
    let windy = assess(&[
        ("air_temperature", Number(ZERO)),
        ("wind_speed", Number(12.0)),
    ]);
    assert_eq!(check(&windy, "wind_chill").status, Status::Exceeded);
    let alone = assess(&[("safety_divers", Exact(1.0))]);
    assert_eq!(check(&alone, "divers").status, Status::Exceeded);
    let nobody = assess(&[("lifeguards", Exact(0.0))]);
    assert_eq!(check(&nobody, "rescuers").status, Status::Exceeded);
    let river = assess(&[("current_speed", Number(0.6))]);
    assert_eq!(check(&river, "current").status, Status::Exceeded);
    assert!(river.zones.iter().any(|zone| zone.name == "downstream"));
    let still = assess(&[("current_speed", Exact(0.0))]);
    assert!(!still.zones.iter().any(|zone| zone.name == "downstream"));
    let heavy = assess(&[("float_force", Number(-40.0))]);
    assert!(says(&heavy, "sinks") && !says(&still, "sinks"));
}
