//! The high fall: where the middle of the landings may lie, throws to the side, and the energy of a running
//! exit, on worked cases.

use crate::common::{GRAVITY, Given, Given::Exact, check, close, figure, inputs, plausible};
use gagwright_mechanics::{Assessment, InputValue, Inputs, Shape, Status, find};

/// Numbers with their tolerances over the plausible inputs.
fn given(rows: &[(&str, f64, f64)]) -> Inputs {
    let mut given = plausible("high-fall");
    for (name, value, tolerance) in rows {
        let number = InputValue::Number {
            value: *value,
            tolerance: Some(*tolerance),
        };
        given.0.insert((*name).to_owned(), number);
    }
    given
}

fn assess(rows: &[(&str, f64, f64)]) -> Assessment {
    find("high-fall").unwrap().assess(&given(rows)).unwrap()
}

fn exactly(changes: &[(&str, Given)]) -> Assessment {
    let mut given = plausible("high-fall");
    given.0.extend(inputs(changes).0);
    find("high-fall").unwrap().assess(&given).unwrap()
}

#[test]
fn what_may_be_off_moves_the_middle_of_the_landings() {
    let unsure = |height, height_off, drag, drag_off| {
        assess(&[
            ("drop_height", height, height_off),
            ("exit_speed", 4.0, 0.1),
            ("exit_angle", 0.0, 0.02),
            ("drag_area", drag, drag_off),
            ("catcher_distance", 9.54, 0.1),
            ("catcher_length", 2.4, 0.05),
            ("wind_speed", 1.0, 0.5),
        ])
    };
    let planned = unsure(30.0, 2.0, 0.6, 0.3);
    let chance = figure(&planned, "miss_probability");
    assert_ne!(check(&planned, "miss_probability").status, Status::Within);
    // The chance of each plan that the tolerances allow, stated outright, is inside the interval.
    for (height, drag) in [(28.0, 0.9), (32.0, 0.3), (28.0, 0.3), (32.0, 0.9)] {
        let outright = unsure(height, 0.0, drag, 0.0);
        let found = figure(&outright, "miss_probability").value;
        assert!(
            found <= chance.high * (1.0 + 1e-9),
            "{height} {drag}: {found}"
        );
        let needed = figure(&outright, "catcher_length_needed").value;
        assert!(needed <= figure(&planned, "catcher_length_needed").high * 1.02);
    }
    // 28 m with 0.9 m2 misses nearly one in ten (computed apart): far over one in a thousand.
    assert!(chance.high > 0.05, "{}", chance.high);
}

#[test]
fn what_makes_the_scatter_does_not_move_its_middle() {
    // Speed, angle and direction of the exit are in the scatter already: alone they leave one chance.
    let exits = exactly(&[
        ("drop_height", Exact(14.0)),
        ("performer_mass", Exact(64.0)),
        ("drag_area", Exact(0.5)),
        ("catcher_distance", Exact(4.0)),
        ("catcher_length", Exact(7.0)),
        ("catcher_width", Exact(7.0)),
        ("wind_speed", Exact(5.0)),
    ]);
    let chance = figure(&exits, "miss_probability");
    assert!(chance.value > 1e-9);
    close(chance.low, chance.value, 1e-9);
    close(chance.high, chance.value, 1e-9);
    assert!(figure(&exits, "landing_distance").high > figure(&exits, "landing_distance").value);
}

/// A jump to the side: 28 degrees off the line to the catcher.
fn aside(degrees: f64) -> Assessment {
    assess(&[
        ("exit_speed", 4.0, 0.2),
        ("exit_direction", degrees.to_radians(), 0.02),
        ("catcher_width", 12.0, 0.05),
        ("catcher_length", 3.2, 0.05),
        ("catcher_distance", 7.0, 0.1),
        ("wind_speed", 0.0, 0.0),
    ])
}

#[test]
fn a_throw_to_the_side_comes_down_shorter() {
    // At 28 degrees the body comes down D cos 28 along: short of the usable edge at 7.0 - 1.1 m, so that more
    // than half of the landings miss.
    let found = aside(28.0);
    let range = figure(&found, "landing_distance").value;
    assert!(range * 28.0_f64.to_radians().cos() < 5.9);
    assert!(figure(&found, "miss_probability").value > 0.5);
    assert_eq!(check(&found, "miss_probability").status, Status::Exceeded);
    // Straight on, the same throw is caught.
    assert!(figure(&aside(0.0), "miss_probability").value < 0.001);
}

#[test]
fn the_ellipse_lies_where_the_body_comes_down() {
    for degrees in [-30.0_f64, 0.0, 25.0] {
        let found = aside(degrees);
        let range = figure(&found, "landing_distance").value;
        let zone = found.zones.iter().find(|zone| zone.name == "landing");
        let Shape::Ellipse {
            x,
            y,
            half_x,
            half_y,
        } = zone.unwrap().shape
        else {
            panic!("an ellipse");
        };
        let (sine, cosine) = degrees.to_radians().sin_cos();
        assert!((x - range * cosine).abs() < 1e-9 && (y - range * sine).abs() < 1e-9);
        // No smaller than the scatter, and wider for a height and a drag that are not known.
        assert!(half_x > figure(&found, "landing_half_length").value);
        assert!(half_y >= figure(&found, "landing_half_width").value);
    }
}

#[test]
fn a_drop_that_may_be_over_fifteen_feet_has_spotters() {
    // Ontario guideline 25: two above 15 ft, 4.572 m. 4.55 m give or take 0.1 may be over it.
    let near = assess(&[("drop_height", 4.55, 0.1), ("spotters", 0.0, 0.0)]);
    assert_eq!(check(&near, "spotters").status, Status::Exceeded);
    let under = assess(&[("drop_height", 4.45, 0.1), ("spotters", 0.0, 0.0)]);
    assert!(!under.checks.iter().any(|check| check.name == "spotters"));
}

#[test]
fn a_catcher_takes_up_the_whole_energy() {
    // m v^2 / 2 and m g s: 64 kg off an edge 5 m up at 9 m/s, 2.1 m of stopping. Without drag v^2 is
    // 81 + 2 g 5 m^2/s^2; drag takes a few hundredths.
    let found = exactly(&[
        ("drop_height", Exact(5.0)),
        ("exit_speed", Exact(9.0)),
        ("exit_angle", Exact(0.0)),
        ("catcher_depth", Exact(3.0)),
        ("usable_depth", Exact(0.7)),
    ]);
    let energy = figure(&found, "impact_energy").value;
    let speed = figure(&found, "impact_speed").value;
    close(energy, 64.0 * (0.5 * speed * speed + GRAVITY * 2.1), 1e-9);
    let free = 64.0 * (0.5 * (81.0 + 10.0 * GRAVITY) + GRAVITY * 2.1);
    assert!(energy < free && energy > 0.93 * free, "{energy} of {free}");
}
