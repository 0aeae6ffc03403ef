//! Where the sun stands, how a picture moves, and what a lock-off composite says of both.

use crate::common::{
    Given,
    Given::{Exact, Number, Option as Name},
    check, close, figure, inputs, plausible, says,
};
use gagwright_mechanics::{
    Assessment, Inputs, Standing, Status, find,
    models::{
        registration::{Change, left_after_alignment, moved},
        sun::{self, Moment, Sun},
    },
};
use serde_json::Value;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("lock-off-composite");
    given.0.extend(inputs(changes).0);
    find("lock-off-composite").unwrap().assess(&given).unwrap()
}

const DEGREE: f64 = core::f64::consts::PI / 180.0;

#[test]
fn the_sun_agrees_with_astral() {
    // fixtures/sun.json is made by tests/reference/fixtures/sun.py with the PyPI package astral.
    let all: Value = serde_json::from_str(include_str!("../fixtures/sun.json")).unwrap();
    let cases = all["sun"].as_array().unwrap();
    let (mut south, mut polar, mut up) = (0, 0, 0);
    for case in cases {
        let given = |name: &str| case["given"][name].as_f64().unwrap();
        let found = |name: &str| case["found"][name].as_f64().unwrap();
        let ours = sun::position(&Moment {
            latitude: given("latitude") * DEGREE,
            longitude: given("longitude") * DEGREE,
            year: given("year"),
            day: given("day_of_year"),
            seconds: given("seconds"),
        });
        let near = |name: &str, ours: f64| {
            let apart = (ours / DEGREE - found(name)).abs();
            let apart = apart.min((360.0 - apart).abs());
            assert!(
                apart < 0.02,
                "{name}: ours {}, astral {}, {}",
                ours / DEGREE,
                found(name),
                case["given"]
            );
        };
        near("elevation", ours.elevation);
        near("seen", ours.seen);
        near("azimuth", ours.azimuth);
        south += usize::from(given("latitude") < 0.0);
        polar += usize::from(given("latitude").abs() > 66.6);
        up += usize::from(found("seen") > 0.0);
    }
    // The cases are what they claim to be: both hemispheres, polar ones, day and night.
    assert!(cases.len() > 100 && south > 40 && polar > 30 && up > 40 && up < cases.len());
}

#[test]
fn the_sun_is_where_the_seasons_put_it() {
    // At the June solstice the sun stands over the northern tropic (23.44 degrees, any almanac), so at
    // noon on the equator it stands 66.56 degrees up, in the north; in December in the south.
    let noon = |day: f64| {
        sun::position(&Moment {
            latitude: 0.0,
            longitude: 0.0,
            year: 2026.0,
            day,
            seconds: 43_200.0,
        })
    };
    let (june, december) = (noon(172.0), noon(355.0));
    assert!((june.elevation / DEGREE - 66.56).abs() < 0.1);
    assert!((december.elevation / DEGREE - 66.56).abs() < 0.1);
    assert!(libm::cos(june.azimuth) > 0.99 && libm::cos(december.azimuth) < -0.99);
}

#[test]
fn shadows_are_what_triangles_say() {
    let sun = |seen: f64, azimuth: f64| Sun {
        azimuth: azimuth * DEGREE,
        elevation: seen * DEGREE,
        seen: seen * DEGREE,
    };
    // At 45 degrees a shadow is as long as its thing is high; at 30 degrees the root of three.
    close(sun::shadow_length(&sun(45.0, 0.0)).unwrap(), 1.0, 1e-12);
    close(
        sun::shadow_length(&sun(30.0, 0.0)).unwrap(),
        f64::sqrt(3.0),
        1e-12,
    );
    assert_eq!(sun::shadow_length(&sun(-0.1, 0.0)), None);
    // The sun in the south throws it north, in the east west.
    let [east, north] = sun::shadow(&sun(45.0, 180.0)).unwrap();
    assert!(east.abs() < 1e-12 && (north - 1.0).abs() < 1e-12);
    let [east, north] = sun::shadow(&sun(45.0, 90.0)).unwrap();
    assert!((east + 1.0).abs() < 1e-12 && north.abs() < 1e-12);
    // Overhead, clear air of one air mass lets 0.7 through (Meinel and Meinel, from memory).
    close(sun::direct_share(&sun(90.0, 0.0)).unwrap(), 0.7, 1e-3);
    assert!(
        sun::direct_share(&sun(5.0, 0.0)).unwrap() < sun::direct_share(&sun(40.0, 0.0)).unwrap()
    );
}

/// 50 mm on 36 mm at 4096 px.
const FOCAL: f64 = 0.05 / 0.036 * 4096.0;

#[test]
fn a_hundredth_of_a_degree_is_one_picture_element() {
    // Pinhole: 50 mm on 36 mm wide at 4096 px, 0.01 degrees of pan is 0.993 px in the middle.
    let pan = Change {
        pan: 0.01 * DEGREE,
        ..Change::default()
    };
    let [x, y] = moved(&pan, FOCAL, [0.0, 0.0], 30.0).unwrap();
    close(-x, 0.993, 5e-4);
    assert!(y.abs() < 1e-12);
    // At the frame's edge it grows by 1 + (x / f)^2.
    let edge = 2048.0;
    let [x, _] = moved(&pan, FOCAL, [edge, 0.0], 30.0).unwrap();
    close(
        edge - x,
        0.99289 * (1.0 + (edge / FOCAL) * (edge / FOCAL)),
        1e-3,
    );
}

#[test]
fn each_cause_moves_the_picture_as_geometry_says() {
    let none = Change::default();
    // Roll turns about the middle; zoom scales from it; depth does not matter to either.
    let roll = Change {
        roll: 0.001,
        ..none
    };
    let [x, y] = moved(&roll, FOCAL, [1000.0, 0.0], 5.0).unwrap();
    close(y, 1.0, 1e-5);
    assert!((x - 1000.0).abs() < 1e-3);
    let zoom = Change {
        zoom: 0.002,
        ..none
    };
    close(
        moved(&zoom, FOCAL, [1000.0, 0.0], 5.0).unwrap()[0],
        1002.0,
        1e-12,
    );
    // A shift of 1 mm is f x 1 mm / depth, however far from the middle: parallax.
    let shift = Change {
        shift: [0.001, 0.0, 0.0],
        ..none
    };
    for at in [0.0, 1500.0] {
        for depth in [2.0, 20.0] {
            let [x, _] = moved(&shift, FOCAL, [at, 0.0], depth).unwrap();
            close(at - x, FOCAL * 0.001 / depth, 1e-9);
        }
    }
    // About an axis 0.1 m behind the pupil, a pan of 0.1 degrees carries the pupil 0.1745 mm sideways.
    let pan = Change {
        pan: 0.1 * DEGREE,
        ..none
    }
    .about_axes(0.1);
    close(pan.shift[0], 0.174_53e-3, 1e-4);
    // No change moves nothing.
    assert_eq!(
        moved(&none, FOCAL, [700.0, 300.0], 9.0).unwrap(),
        [700.0, 300.0]
    );
}

#[test]
fn aligning_undoes_turns_and_not_parallax() {
    let square = [
        [-1000.0, -500.0],
        [1000.0, -500.0],
        [-1000.0, 500.0],
        [1000.0, 500.0],
    ];
    let left = |change: Change, depths: &[f64]| {
        let mut pairs = Vec::new();
        for depth in depths {
            for at in square {
                pairs.push((at, moved(&change, FOCAL, at, *depth).unwrap()));
            }
        }
        left_after_alignment(&pairs)
    };
    let none = Change::default();
    // A roll and a zoom are exactly a turn and a scale, so nothing is left of them.
    assert!(
        left(
            Change {
                roll: 0.01,
                zoom: 0.01,
                ..none
            },
            &[5.0, 50.0]
        ) < 1e-9
    );
    // One depth shifts as a whole; two depths keep half of their difference each.
    let shift = Change {
        shift: [0.001, 0.0, 0.0],
        ..none
    };
    assert!(left(shift, &[5.0]) < 1e-9);
    close(
        left(shift, &[5.0, 50.0]),
        0.5 * FOCAL * 0.001 * (1.0 / 5.0 - 1.0 / 50.0),
        1e-3,
    );
}

#[test]
fn a_composite_is_judged_by_drift_and_sun() {
    let good = assess(&[]);
    for check in &good.checks {
        assert_eq!(check.status, Status::Within, "{}", check.name);
        // No document sets any of these; all are habit.
        assert_eq!(check.source.standing, Standing::CommonPractice);
    }
    let kicked = assess(&[("pan_drift", Number(0.015 * DEGREE))]);
    assert_eq!(check(&kicked, "drift").status, Status::Exceeded);
    assert!(check(&kicked, "drift").detail.contains("most of it by pan"));
    // A turn can be aligned away, a shift past near things cannot.
    assert_ne!(
        check(&kicked, "left_after_alignment").status,
        Status::Exceeded
    );
    let slid = assess(&[
        ("shift_across", Number(0.003)),
        ("near_distance", Number(3.0)),
    ]);
    assert_eq!(
        check(&slid, "left_after_alignment").status,
        Status::Exceeded
    );
    let focus = assess(&[("focal_change", Exact(0.001))]);
    assert!(
        check(&focus, "drift")
            .detail
            .contains("most of it by focal length")
    );
    let late = assess(&[("between_passes", Number(7200.0))]);
    assert_eq!(check(&late, "shadow_angle").status, Status::Exceeded);
    let crowded = assess(&[("camera_keep_out", Exact(1.0))]);
    assert_eq!(check(&crowded, "keep_out").status, Status::Exceeded);
    assert!(!check(&crowded, "keep_out").blocking);
}

#[test]
fn evening_passes_lose_the_sun() {
    // Sunset near Granada in mid June falls a little after 19:35 universal time (any almanac): the sun is
    // up at 19:00, down at 20:00.
    let dusk = assess(&[
        ("first_pass", Number(68_400.0)),
        ("between_passes", Number(3600.0)),
    ]);
    assert!(figure(&dusk, "sun_first").value > 0.0 && figure(&dusk, "sun_last").value < 0.0);
    assert_eq!(check(&dusk, "sun_up").status, Status::Exceeded);
    assert_eq!(check(&dusk, "shadow_angle").status, Status::Unknown);
    assert!(says(&dusk, "sun_down") && !says(&dusk, "clear_air"));
    let low = assess(&[
        ("first_pass", Number(66_600.0)),
        ("between_passes", Number(1800.0)),
    ]);
    assert_eq!(check(&low, "shadow_length").status, Status::Exceeded);
    assert_eq!(check(&low, "light").status, Status::Exceeded);
    // A hill hides the sun that the horizon does not.
    let hill = assess(&[("skyline", Exact(59.0 * DEGREE))]);
    assert_eq!(check(&hill, "sun_up").status, Status::Exceeded);
}

#[test]
fn without_sun_there_is_no_shadow_to_match() {
    for light in ["overcast", "lamps"] {
        let assessment = assess(&[("light", Name(light))]);
        assert!(
            !assessment
                .checks
                .iter()
                .any(|check| check.name == "shadow_angle")
        );
        assert!(
            !assessment
                .figures
                .iter()
                .any(|figure| figure.name == "sun_first")
        );
        assert_eq!(check(&assessment, "drift").status, Status::Within);
    }
    // Not to know the light is not to be without sun.
    let mut given = plausible("lock-off-composite");
    given.0.remove("light");
    let unknown = find("lock-off-composite").unwrap().assess(&given).unwrap();
    assert_eq!(check(&unknown, "shadow_angle").status, Status::Unknown);
    assert_eq!(check(&unknown, "sun_up").status, Status::Unknown);
}
