//! Vehicle rolls and the fire of spilled fuel: outside values of their models, and what is said of plans.

use crate::common::{
    GRAVITY,
    Given::{self, Exact, Number, Option},
    check, close, inputs, plausible, says, status, value,
};
use gagwright_mechanics::{
    Assessment, Inputs, Standing, Status, find,
    models::{
        pool_fire::{self, DIESEL, PETROL},
        tumble::Outline,
    },
};
use serde_json::Value;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("vehicle-roll");
    given.0.extend(inputs(changes).0);
    find("vehicle-roll").unwrap().assess(&given).unwrap()
}

#[test]
fn pool_fires_are_those_of_nureg_1805() {
    // NUREG-1805 sheets: diesel over 236.44 m2 gives 472,404 kW, within 0.01 %.
    close(pool_fire::heat_released(&DIESEL, 236.44), 472_404e3, 1e-4);
    // Petrol 1 m across: 1,656.5 kW and flames of 3.54 m by Heskestad, within 0.5 %.
    let area = core::f64::consts::FRAC_PI_4;
    close(pool_fire::width(area), 1.0, 1e-12);
    let heat = pool_fire::heat_released(&PETROL, area);
    close(heat, 1_656.5e3, 5e-3);
    close(pool_fire::flame_height(heat, 1.0), 3.54, 5e-3);
    // A point source: share x Q over the sphere's surface, and the distance for a flux is its inverse.
    let flux = pool_fire::radiant_heat(heat, 0.3, 10.0);
    close(flux, 0.3 * heat / (400.0 * core::f64::consts::PI), 1e-12);
    close(pool_fire::distance_for(heat, 0.3, flux), 10.0, 1e-12);
    // All the fuel's heat comes out while it burns: m H = Q t (conservation of energy).
    let time = pool_fire::burning_time(&PETROL, area, 0.001);
    close(heat * time, 740.0 * area * 0.001 * 43.7e6, 1e-12);
    // The technique's own: 1 mm of petrol over a pool 1 m across.
    let fire = assess(&[
        ("fuel_volume", Exact(area * 0.001)),
        ("spill_depth", Exact(0.001)),
    ]);
    close(value(&fire, "heat_release"), 1_656.5e3, 5e-3);
    close(value(&fire, "flame_height"), 3.54, 5e-3);
}

#[test]
fn rolls_agree_with_scipy() {
    // fixtures/tumble.json: SciPy's DOP853 with events on the same body, by tests/reference/fixtures/tumble.py.
    let all: Value = serde_json::from_str(include_str!("../fixtures/tumble.json")).unwrap();
    let cases = all["roll"].as_array().unwrap();
    assert_eq!(cases.len(), 5);
    for case in cases {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let found = |name: &str| case["found"][name].as_f64().unwrap();
        let outline = Outline {
            track: given("track"),
            roof_width: given("roof_width"),
            roof_height: given("roof_height"),
            middle: given("middle"),
            radius: given("radius"),
        };
        let start = outline.on_ramp(given("angle"), given("rate"));
        let roll = outline.roll(start, |_| {}, |_| {}).unwrap();
        close(f64::from(roll.quarters), found("quarters"), 0.0);
        close(roll.time, found("time"), 2e-3);
        close(roll.aside, found("aside"), 2e-3);
        assert!((roll.air - found("air")).abs() < 2e-3, "{}", roll.air);
    }
}

const CAR: Outline = Outline {
    track: 1.5,
    roof_width: 1.5,
    roof_height: 1.5,
    middle: 0.75,
    radius: 0.6,
};

#[test]
fn a_strike_keeps_the_turning_about_its_corner() {
    // A square block that turns over its edge onto its face keeps (k2 + c.c') / (k2 + c2) of its rate; the old and
    // the new corner lie at a right angle from its middle, so k2 / (k2 + c2) (Housner 1963).
    let start = CAR.on_ramp(0.3, 2.0);
    let mut kept = Vec::new();
    let roll = CAR.roll(
        start,
        |strike| kept.push(strike.after.rate / strike.before.rate),
        |_| {},
    );
    let share = 0.36 / (0.36 + 2.0 * 0.75 * 0.75);
    close(kept[0], share, 1e-4);
    assert!(roll.unwrap().quarters >= 1);
    // Energy for standing on the side wheels: I w2 / 2 over m g (r - h), about those wheels.
    let arm = libm::hypot(0.75, 0.75);
    let inertia = 0.36 + arm * arm;
    let needed = GRAVITY * (arm - start.height);
    close(CAR.over(&start), 0.5 * inertia * 4.0 / needed, 1e-9);
    // Just short of it, the car falls back; just over it, it lies on its side.
    let rate = f64::sqrt(2.0 * needed / inertia);
    for (share, quarters) in [(0.99, 0), (1.01, 1)] {
        let start = CAR.on_ramp(0.3, share * rate);
        let roll = CAR.roll(start, |_| {}, |_| {}).unwrap();
        assert_eq!(roll.quarters, quarters, "{share}");
    }
}

#[test]
fn the_ramp_takes_its_energy_from_the_run() {
    // With no lost turning, speed along, lift and roll add up to the speed at the foot (conservation of energy).
    let exact = [
        ("rate_share", Exact(1.0)),
        ("run_speed", Exact(16.0)),
        ("ramp_length", Exact(2.9)),
        ("ramp_slope", Exact(0.28)),
    ];
    let roll = assess(&exact);
    close(value(&roll, "ramp_rise"), 2.9 * libm::tan(0.28), 1e-12);
    let angle = libm::asin(2.9 * libm::tan(0.28) / 1.5);
    close(value(&roll, "takeoff_roll"), angle, 1e-12);
    let (speed, rate) = (value(&roll, "takeoff_speed"), value(&roll, "roll_rate"));
    // The lifted wheels rise as the ramp does: v tan(slope) = T cos(roll) w.
    close(rate * 1.5 * libm::cos(angle), speed * libm::tan(0.28), 1e-9);
    let (radius, middle) = (0.38 * 1.5, 0.55);
    let inertia = radius * radius + 0.75 * 0.75 + middle * middle;
    let height = 0.75 * libm::sin(angle) + middle * libm::cos(angle);
    close(
        speed * speed + inertia * rate * rate + 2.0 * GRAVITY * (height - middle),
        16.0 * 16.0,
        1e-9,
    );
}

#[test]
fn the_way_to_rest_is_what_its_parts_add_up_to() {
    // Slowing alike all the way, it is v2 / 2a after the landing, however long it rolls.
    let even = assess(&[("tumble_share", Exact(0.5)), ("slide_share", Exact(0.5))]);
    let speed = value(&even, "takeoff_speed");
    close(
        value(&even, "rest_distance") - value(&even, "landing_distance"),
        speed * speed / GRAVITY,
        1e-9,
    );
    let icy = assess(&[("slide_share", Exact(0.1))]);
    assert!(value(&icy, "rest_distance") > 1.5 * value(&even, "rest_distance"));
    assert_eq!(status(&icy, "clear_ahead"), Status::Exceeded);
    // The way ends there.
    let way = even
        .traces
        .iter()
        .find(|trace| trace.name == "way")
        .unwrap();
    close(
        *way.y[1].values.last().unwrap(),
        value(&even, "rest_distance"),
        1e-9,
    );
    close(
        *way.x.values.last().unwrap(),
        value(&even, "rest_time"),
        1e-9,
    );
}

#[test]
fn a_roll_is_judged() {
    let good = assess(&[]);
    for one in good.checks.iter().filter(|one| one.blocking) {
        let close_to = matches!(one.status, Status::Within | Status::Marginal);
        assert!(close_to, "{one:?}");
    }
    for name in [
        "clear_ahead",
        "clear_aside",
        "belt",
        "cage",
        "people_distance",
    ] {
        assert_eq!(status(&good, name), Status::Within, "{name}");
    }
    for name in ["more_turns", "fire"] {
        assert!(says(&good, name), "{name}");
    }
    let exceeded = |changes: &[(&str, Given)], name: &str| {
        let found = assess(changes);
        assert_eq!(status(&found, name), Status::Exceeded, "{name}");
        found
    };
    // Ontario film safety guideline 14: a 4/5-point harness and a cage by a specialist maker or engineer-certified.
    for belt in ["none", "lap", "three"] {
        exceeded(&[("belt", Option(belt))], "belt");
    }
    assert_eq!(
        status(&assess(&[("belt", Option("four"))]), "belt"),
        Status::Within
    );
    for cage in ["none", "built"] {
        exceeded(&[("cage", Option(cage))], "cage");
    }
    // SAE 640843, volunteers: 9.02 g with a lap belt, 11.59 g with a torso harness too.
    let lap = assess(&[("belt", Option("lap"))]);
    close(
        check(&lap, "driver_side").limit.value,
        9.02 * GRAVITY,
        1e-12,
    );
    close(
        check(&good, "driver_side").limit.value,
        11.59 * GRAVITY,
        1e-12,
    );
    let stiff = exceeded(&[("stop_length", Number(0.05))], "driver_risk");
    assert_eq!(status(&stiff, "driver_side"), Status::Exceeded);
    // The body's limits are quoted from memory, and say so.
    assert_eq!(
        check(&stiff, "driver_risk").source.standing,
        Standing::FromMemory
    );
    // v2 / 2s, and half a sine peaks at pi / 2 of it; the cage takes the middle's change as a roof corner strikes.
    let car = Outline {
        track: 1.5,
        roof_width: 1.25,
        roof_height: 1.45,
        middle: 0.55,
        radius: 0.38 * 1.5,
    };
    let start = car.on_ramp(value(&good, "takeoff_roll"), value(&good, "roll_rate"));
    let mut roof: f64 = 0.0;
    car.roll(
        start,
        |strike| {
            let (before, after) = (strike.before, strike.after);
            if strike.corner.rem_euclid(4) >= 2 {
                roof = roof.max(libm::hypot(after.out - before.out, after.up - before.up));
            }
        },
        |_| {},
    )
    .unwrap();
    let change = value(&good, "landing_change");
    close(value(&good, "driver_mean"), change * change / 0.5, 1e-9);
    close(
        value(&good, "cage_load"),
        1428.0 * roof * roof / 0.2 * core::f64::consts::FRAC_PI_2,
        1e-9,
    );
    exceeded(&[("cage_proof", Number(90_000.0))], "cage_factor");
    exceeded(&[("clear_ahead", Number(30.0))], "clear_ahead");
    exceeded(&[("clear_aside", Number(5.0))], "clear_aside");
    exceeded(&[("wanted_turns", Number(6.0))], "turns");
    exceeded(&[("exit_time", Number(20.0))], "exit_time");
    exceeded(&[("crew_time", Number(20.0))], "crew_time");
    exceeded(&[("fuel_volume", Number(0.02))], "fuel_volume");
    exceeded(&[("people_distance", Number(8.0))], "people_distance");
    let near = exceeded(&[("people_distance", Number(3.0))], "people_distance");
    assert!(says(&near, "near_fire"));
    let slow = exceeded(&[("run_speed", Number(5.0))], "tip_margin");
    assert!(says(&slow, "falls_back"));
    assert_eq!(value(&slow, "turns"), 0.0);
    // A ramp higher than the car is wide lays it down.
    let high = assess(&[("ramp_length", Number(8.0))]);
    assert!(says(&high, "no_take_off"));
    assert_eq!(status(&high, "clear_ahead"), Status::Unknown);
}

#[test]
fn a_roller_counts_only_as_it_was_measured() {
    let mut given = plausible("vehicle-roll");
    given.0.extend(inputs(&[("method", Option("measured"))]).0);
    for name in ["ramp_length", "ramp_slope"] {
        given.0.remove(name);
    }
    let technique = find("vehicle-roll").unwrap();
    let unmeasured = technique.assess(&given).unwrap();
    assert_eq!(status(&unmeasured, "clear_ahead"), Status::Unknown);
    assert!(
        check(&unmeasured, "clear_ahead")
            .detail
            .contains("Roll rate as measured")
    );
    let measured = [("measured_rate", Exact(6.0)), ("measured_rise", Exact(5.0))];
    given.0.extend(inputs(&measured).0);
    let roll = technique.assess(&given).unwrap();
    assert!(says(&roll, "measured"));
    // Thrown up at 5 m/s at least this long in the air (free flight onto no lower a middle than its own).
    assert!(value(&roll, "air_time") > 0.8 * 2.0 * 5.0 / GRAVITY);
    close(
        value(&roll, "highest"),
        0.55 + 5.0 * 5.0 / (2.0 * GRAVITY),
        1e-9,
    );
    assert!(value(&roll, "turns") >= 0.5);
}

#[test]
fn falling_back_is_a_strike_too() {
    // It comes down with the energy it left with (conservation of energy), and the block keeps k2 / (k2 + c2) of its
    // rate on its other edge as well (Housner 1963).
    let start = CAR.on_ramp(0.3, 1.2);
    let mut strikes = Vec::new();
    let roll = CAR
        .roll(start, |strike| strikes.push(*strike), |_| {})
        .unwrap();
    assert_eq!((roll.quarters, strikes.len()), (0, 1));
    let inertia = 0.36 + 2.0 * 0.75 * 0.75;
    let rate = strikes[0].before.rate;
    close(
        0.5 * inertia * rate * rate,
        0.5 * inertia * 1.44 + GRAVITY * (start.height - 0.75),
        1e-4,
    );
    assert!(rate < 0.0);
    close(strikes[0].before.angle, 0.0, 1e-9);
    close(strikes[0].after.rate / rate, 0.36 / inertia, 1e-9);
    // The driver feels it, and a car on its wheels goes on as far as nobody knows.
    let slow = assess(&[("run_speed", Number(5.0))]);
    for name in ["landing_change", "driver_risk", "driver_side"] {
        assert!(value(&slow, name) > 0.0, "{name}");
    }
    for name in ["clear_ahead", "clear_aside"] {
        assert_eq!(status(&slow, name), Status::Unknown, "{name}");
    }
}

#[test]
fn each_strike_counts_by_what_it_does_sideways() {
    let car = Outline {
        track: 1.5,
        roof_width: 1.25,
        roof_height: 1.45,
        middle: 0.55,
        radius: 0.38 * 1.5,
    };
    let mut hidden = 0;
    for i in 0..160 {
        let (seat, chest) = [(0.4, 0.8), (-0.4, 0.8), (0.4, 1.1), (0.1, 0.6)][i % 4];
        let rise = 0.5 * (i % 13) as f64;
        let roll = assess(&[
            ("method", Option("measured")),
            ("measured_rate", Exact(2.0 + 0.04 * i as f64)),
            ("measured_rise", Exact(rise)),
            ("seat_side", Exact(seat)),
            ("chest_height", Exact(chest)),
        ]);
        let mut start = car.on_ramp(0.0, value(&roll, "roll_rate"));
        start.up = start.up.max(rise);
        let mut felt = Vec::new();
        car.roll(
            start,
            |strike| felt.push(strike.change(seat, chest - 0.55)),
            |_| {},
        )
        .unwrap();
        // v2 / 2s on the mean, of which the sideways share of v.
        let mean = |(side, head): (f64, f64)| libm::hypot(side, head) * side.abs() / 0.5;
        let most = felt.iter().map(|one| mean(*one)).fold(0.0, f64::max);
        close(value(&roll, "driver_side"), most, 1e-9);
        let hardest = felt
            .iter()
            .copied()
            .max_by(|a, b| libm::hypot(a.0, a.1).total_cmp(&libm::hypot(b.0, b.1)))
            .unwrap();
        hidden += i32::from(mean(hardest) < 0.99 * most);
    }
    assert!(
        hidden > 0,
        "the hardest strike was the hardest sideways in every roll"
    );
}

#[test]
fn a_roll_claims_no_more_than_is_known() {
    let good = assess(&[]);
    // On the ramp's end its middle may be half its length ahead, and it may lie corner first.
    close(
        value(&good, "rest_reach"),
        value(&good, "rest_distance") + 2.25 + 0.5 * libm::hypot(4.5, 1.45),
        1e-12,
    );
    // What is wanted is held against the turns it is sure to make.
    let (least, most) = (value(&good, "turns"), value(&good, "turns_most"));
    assert!(most > least + 0.25);
    let more = assess(&[("wanted_turns", Exact(0.5 * (least + most)))]);
    assert_eq!(status(&more, "turns"), Status::Exceeded);
    // The limits are those of people who were belted in (SAE 640843; Brinkley's are of a restrained body).
    let loose = assess(&[("belt", Option("none"))]);
    for name in ["driver_risk", "driver_side"] {
        assert_eq!(status(&loose, name), Status::Unknown, "{name}");
        assert!(check(&loose, name).detail.starts_with("Without a belt"));
    }
    assert_eq!(
        check(&good, "cage").source.standing,
        Standing::CommonPractice
    );
    let unsigned = assess(&[("cage", Option("built"))]);
    assert!(check(&unsigned, "cage").detail.starts_with("Built, but"));
    // A point source tells too little within 2.5 widths of the pool (common practice).
    let faint = assess(&[("fuel", Option("ethanol")), ("accepted_flux", Exact(6.3e3))]);
    close(
        value(&faint, "safe_distance"),
        2.5 * value(&faint, "pool_width"),
        1e-12,
    );
    // How the driver hangs is not said of a chest that nobody measured.
    let mut given = plausible("vehicle-roll");
    let speed = (0..60)
        .map(|i| 11.0 + 0.2 * f64::from(i))
        .find(|speed| says(&assess(&[("run_speed", Exact(*speed))]), "on_roof"))
        .unwrap();
    given.0.extend(inputs(&[("run_speed", Exact(speed))]).0);
    given.0.remove("chest_height");
    let bare = find("vehicle-roll").unwrap().assess(&given).unwrap();
    assert!(!says(&bare, "on_roof"));
}
