//! Blank firing: outside values of sound, cover and counts, and what it says of plans.

use crate::common::{
    GRAVITY,
    Given::{self, Exact, Number, Option},
    check, close, inputs, plausible, says, status, value,
};
use gagwright_mechanics::{Assessment, Inputs, Standing, Status, find, models::sound};
use serde_json::Value;

const DEGREE: f64 = core::f64::consts::PI / 180.0;

fn assess(changes: &[(&str, Given)]) -> Assessment {
    let mut given: Inputs = plausible("blank-firing");
    given.0.extend(inputs(changes).0);
    find("blank-firing").unwrap().assess(&given).unwrap()
}

#[test]
fn levels_and_pressures_are_the_directives() {
    // Directive 2003/10/EC, article 3(1), writes each peak both ways: 200 Pa and 140 dB(C), 140 Pa and 137,
    // 112 Pa and 135, each rounded.
    for (pressure, level) in [(200.0, 140.0), (140.0, 137.0), (112.0, 135.0)] {
        assert!((sound::level(pressure) - level).abs() < 0.15);
        close(sound::pressure(level), pressure, 0.012);
    }
    close(sound::pressure(sound::level(37.0)), 37.0, 1e-12);
    // NIOSH 98-126, table 1-1: 85 dB(A) for 8 h, 88 for 4 h, 100 for 15 min are each one full dose.
    for (level, hours) in [(85.0, 8.0), (88.0, 4.0), (100.0, 0.25)] {
        let daily = sound::daily_exposure(level, hours * 3600.0);
        close(sound::dose(daily, 85.0), 1.0, 0.02);
    }
}

#[test]
fn spreading_is_six_decibels_a_doubling() {
    // Inverse distance law: 6.02 dB less for each doubling (elementary acoustics).
    let near = [
        ("sweep_start", Exact(0.0)),
        ("sweep_end", Exact(0.0)),
        ("forward_gain", Exact(0.0)),
        ("muzzle_reach", Exact(1.0)),
    ];
    let at = |across: f64| {
        let mut rows = near.to_vec();
        rows.extend([
            ("performer_start_along", Exact(1.0)),
            ("performer_end_along", Exact(1.0)),
            ("performer_start_across", Exact(across)),
            ("performer_end_across", Exact(across)),
        ]);
        value(&assess(&rows), "performer_level")
    };
    close(at(4.0) - at(8.0), 6.0206, 1e-4);
    // The firer's ear at 0.75 m has no less for being behind: 156 + 3 - 25 + 2.4988 (inverse distance law).
    close(value(&assess(&[]), "firer_level"), 136.4988, 1e-6);
    // 156 dB at 1 m, 3 dB of reflections, 25 dB of plugs, 8 m away: 156 + 3 - 25 - 18.06.
    close(at(8.0), 115.938, 1e-5);
}

#[test]
fn the_sweep_is_numpys_by_brute_force() {
    let all: Value = serde_json::from_str(include_str!("../fixtures/muzzle_sweep.json")).unwrap();
    let cases = all["sweep"].as_array().unwrap();
    assert!(!cases.is_empty());
    for case in cases {
        let given = &case["given"];
        let at = |value: &Value| Exact(value.as_f64().unwrap());
        let found = assess(&[
            ("camera_cover", Option("unmanned")),
            ("sweep_start", at(&given["aim"][0])),
            ("sweep_end", at(&given["aim"][1])),
            ("firer_travel_along", at(&given["travel"][0])),
            ("firer_travel_across", at(&given["travel"][1])),
            ("muzzle_reach", at(&given["reach"])),
            ("cone_half_angle", at(&given["ahead"])),
            ("aim_error", Exact(0.0)),
            ("forward_gain", at(&given["gain"])),
            ("forward_stand_off", at(&given["stand_off"][0])),
            ("off_axis_stand_off", at(&given["stand_off"][1])),
            ("performer_start_along", at(&given["performer"][0][0])),
            ("performer_start_across", at(&given["performer"][0][1])),
            ("performer_end_along", at(&given["performer"][1][0])),
            ("performer_end_across", at(&given["performer"][1][1])),
            ("crew_along", at(&given["crew"][0])),
            ("crew_across", at(&given["crew"][1])),
            ("peak_level", Exact(150.0)),
            ("reflection_gain", Exact(0.0)),
            ("performer_protection", Exact(0.0)),
            ("crew_protection", Exact(0.0)),
        ]);
        let expected = |name: &str| case["found"][name].as_f64().unwrap();
        // Some dozens of moments against two hundred thousand: a step of the aim is 0.04 rad at the most.
        for (name, key, within) in [
            ("stand_off_margin", "margin", 0.05),
            ("front_distance", "front", 0.1),
            ("least_off_axis", "off_axis", 0.04),
        ] {
            let got = value(&found, name);
            assert!(
                (got - expected(key)).abs() <= within,
                "{name}: {got} for {}",
                expected(key)
            );
        }
        for (name, key) in [("performer_level", "performer"), ("crew_level", "crew")] {
            let got = value(&found, name) - 150.0;
            assert!((got - expected(key)).abs() < 0.05, "{name}: {got}");
        }
    }
}

#[test]
fn a_sound_plan_has_nothing_exceeded() {
    let plan = assess(&[]);
    for check in &plan.checks {
        assert_ne!(
            check.status,
            Status::Exceeded,
            "{} {}",
            check.name,
            check.detail
        );
    }
    assert!(says(&plan, "as_given") && says(&plan, "bare_ears") && says(&plan, "misfire"));
    assert!(says(&plan, "nearer_than_measured") && !says(&plan, "rounds_out"));
    assert!(
        check(&plan, "guidance_distance")
            .detail
            .starts_with("No unshielded person")
    );
}

#[test]
fn twenty_feet_ahead_and_nobody_in_line() {
    let ahead = |distance: f64| {
        assess(&[
            ("performer_start_along", Exact(0.9 + distance)),
            ("performer_end_along", Exact(0.9 + distance)),
            ("performer_start_across", Exact(0.0)),
            ("performer_end_across", Exact(0.0)),
            ("sweep_start", Exact(0.0)),
            ("sweep_end", Exact(0.0)),
            ("muzzle_reach", Exact(0.9)),
        ])
    };
    // 20 ft is 6.096 m (published trade guidance on blanks).
    let rule = ahead(6.0);
    close(
        check(&rule, "guidance_distance").limit.value,
        20.0 * 0.3048,
        1e-12,
    );
    assert_eq!(
        check(&rule, "guidance_distance").source.standing,
        Standing::Published
    );
    assert_eq!(status(&rule, "guidance_distance"), Status::Exceeded);
    assert_eq!(status(&rule, "stand_off"), Status::Exceeded);
    let far = ahead(7.0);
    assert_eq!(status(&far, "guidance_distance"), Status::Within);
    assert_eq!(status(&far, "stand_off"), Status::Within);
    // Ontario guideline 39, item 3: never pointed at anyone, however far.
    assert_eq!(status(&far, "line_of_fire"), Status::Exceeded);
    assert!(value(&far, "least_off_axis") < 1e-6);
    // It gives no angle: that is the armourer's own.
    assert_eq!(check(&far, "line_of_fire").source.standing, Standing::Plan);
    assert!(
        check(&far, "line_of_fire")
            .detail
            .contains("guideline 39, item 3")
    );
    let close_range = assess(&[("forward_stand_off", Exact(3.0))]);
    assert_eq!(status(&close_range, "given_stand_off"), Status::Exceeded);
}

#[test]
fn a_swing_passes_over_people_that_its_ends_do_not() {
    let swung = |to: f64| {
        assess(&[
            ("sweep_start", Exact(-to)),
            ("sweep_end", Exact(to)),
            ("performer_start_along", Exact(5.0)),
            ("performer_end_along", Exact(5.0)),
            ("performer_start_across", Exact(0.5)),
            ("performer_end_across", Exact(0.5)),
        ])
    };
    let over = swung(80.0 * DEGREE);
    assert_eq!(status(&over, "line_of_fire"), Status::Exceeded);
    assert_eq!(status(&over, "stand_off"), Status::Exceeded);
    assert!(value(&over, "least_off_axis") < 2.0 * DEGREE);
}

#[test]
fn people_who_run_through_the_line_are_seen() {
    // 81 m in one sweep: a thirty-second part of it steps over the whole cone, 0.74 m wide where it is crossed.
    let crossed = assess(&[
        ("sweep_start", Exact(0.0)),
        ("sweep_end", Exact(0.0)),
        ("aim_error", Exact(0.0)),
        ("cone_half_angle", Exact(10.0 * DEGREE)),
        ("performer_start_along", Exact(3.0)),
        ("performer_end_along", Exact(3.0)),
        ("performer_start_across", Exact(-31.3)),
        ("performer_end_across", Exact(50.0)),
    ]);
    // Crossing a straight line, the least angle is none and the least distance the one along it.
    assert!(value(&crossed, "least_off_axis") < 1.5 * DEGREE);
    assert!((value(&crossed, "performer_distance") - 2.1).abs() < 0.01);
    assert_eq!(status(&crossed, "line_of_fire"), Status::Exceeded);
}

#[test]
fn a_swing_across_the_back_leaves_the_front_alone() {
    let swung = |end: f64| {
        assess(&[
            ("sweep_start", Exact(170.0 * DEGREE)),
            ("sweep_end", Exact(end * DEGREE)),
            ("crew_along", Exact(0.0)),
            ("crew_across", Exact(-9.0)),
        ])
    };
    // The performer is between 48 and 61 degrees, the crew at -90 (plane geometry).
    let back = swung(190.0);
    assert!(value(&back, "least_off_axis") > 60.0 * DEGREE);
    assert_eq!(status(&back, "line_of_fire"), Status::Within);
    let front = swung(-170.0);
    assert_eq!(status(&front, "line_of_fire"), Status::Exceeded);
}

#[test]
fn somebody_just_outside_the_cone_is_not_nobody() {
    // 21 degrees off a cone of 15 and 5, with 3 to each side on the aim.
    let edge = assess(&[
        ("sweep_start", Number(0.0)),
        ("sweep_end", Number(0.0)),
        ("muzzle_reach", Exact(0.9)),
        ("performer_start_along", Exact(5.568)),
        ("performer_end_along", Exact(5.568)),
        ("performer_start_across", Exact(1.792)),
        ("performer_end_across", Exact(1.792)),
    ]);
    let guidance = check(&edge, "guidance_distance");
    assert_eq!(guidance.value, Some(300.0));
    assert!(guidance.low.unwrap() < 6.0);
    assert!(guidance.detail.starts_with("Nobody unshielded"));
}

#[test]
fn a_shield_covers_by_similar_triangles() {
    let shield = |changes: &[(&str, Given)]| {
        let mut all = vec![
            ("sweep_start", Exact(0.0)),
            ("sweep_end", Exact(0.0)),
            ("muzzle_reach", Exact(1.0)),
            ("camera_along", Exact(11.0)),
            ("camera_across", Exact(0.0)),
            ("shield_distance", Exact(0.5)),
            ("shield_width", Exact(1.0)),
            ("shield_height", Exact(2.2)),
            ("group_width", Exact(0.8)),
        ];
        all.extend_from_slice(changes);
        assess(&all)
    };
    // At 10 m and 0.5 m before the people an edge 0.4 m out shows at 0.38 m: 0.12 m to spare (similar triangles).
    close(value(&shield(&[]), "shield_spare"), 0.12, 1e-9);
    assert_eq!(status(&shield(&[]), "shield_cover"), Status::Within);
    let narrow = shield(&[("shield_width", Exact(0.7))]);
    assert_eq!(status(&narrow, "shield_cover"), Status::Exceeded);
    // A head at 1.8 m seen from 1.4 m shows at 1.78 m.
    let low = shield(&[("shield_width", Exact(3.0)), ("shield_height", Exact(1.7))]);
    close(value(&low, "shield_spare"), -0.08, 1e-9);
    // The firer walks past the shield and sees behind it.
    let past = shield(&[("firer_travel_along", Exact(10.2))]);
    assert!(value(&past, "shield_spare") < 0.0);
    let open = assess(&[("camera_cover", Option("open"))]);
    assert!(says(&open, "open_camera"));
    assert!(open.checks.iter().all(|check| check.name != "shield_cover"));
    assert_eq!(status(&open, "line_of_fire"), Status::Exceeded);
}

#[test]
fn bare_ears_and_many_shots_are_too_much() {
    let bare = assess(&[("performer_protection", Exact(0.0))]);
    assert_eq!(status(&bare, "firer_peak"), Status::Exceeded);
    assert_eq!(status(&bare, "noise_dose"), Status::Exceeded);
    assert_eq!(status(&bare, "daily_exposure"), Status::Exceeded);
    close(check(&bare, "firer_peak").limit.value, 200.0, 1e-12);
    // Ten times the shots are ten times the dose, 10 dB more (equal energy).
    let (one, ten) = (
        assess(&[("takes", Exact(2.0))]),
        assess(&[("takes", Exact(20.0))]),
    );
    close(
        value(&ten, "noise_dose") / value(&one, "noise_dose"),
        10.0,
        1e-9,
    );
    close(
        value(&ten, "daily_exposure") - value(&one, "daily_exposure"),
        10.0,
        1e-9,
    );
    // As many shots as are allowed are a full dose and no more.
    let shots = value(&one, "shots_allowed");
    let each = value(&one, "noise_dose") / 12.0;
    assert!(shots * each <= 1.0 && (shots + 1.0) * each > 1.0);
}

#[test]
fn every_round_is_accounted_for() {
    // Forty-six issued and forty-five accounted for: the set stays closed.
    let short = assess(&[("returned", Exact(9.0))]);
    assert_eq!(value(&short, "rounds_unaccounted"), 1.0);
    assert_eq!(status(&short, "rounds_unaccounted"), Status::Exceeded);
    let over = assess(&[("returned", Exact(11.0))]);
    assert_eq!(status(&over, "rounds_unaccounted"), Status::Exceeded);
    let cases = assess(&[("cases_found", Exact(34.0))]);
    assert_eq!(status(&cases, "cases_missing"), Status::Exceeded);
    let before = assess(&[("count_stage", Option("before"))]);
    assert!(
        before
            .checks
            .iter()
            .all(|check| check.name != "rounds_unaccounted")
    );
    assert!(says(&before, "rounds_out"));
    let few = assess(&[("issued", Exact(30.0))]);
    assert_eq!(status(&few, "issued_enough"), Status::Exceeded);
}

#[test]
fn misfires_wait_and_point_where_nobody_is() {
    // Binomial: one in a hundred over six rounds is 1 - 0.99^6 = 5.852 % of takes.
    close(value(&assess(&[]), "misfire_in_take"), 0.058_519_9, 1e-5);
    let hasty = assess(&[("misfire_wait", Exact(10.0))]);
    assert_eq!(status(&hasty, "misfire_wait"), Status::Exceeded);
    // One in a thousand over six rounds is 0.5985 %, one take in 167; never is not spoken of.
    let rare = assess(&[("misfire_chance", Exact(0.001))]);
    let caution = rare.cautions.iter().find(|told| told.name == "misfire");
    assert!(caution.unwrap().text.contains("take is 1 in 167:"));
    assert!(!says(&assess(&[("misfire_chance", Exact(0.0))]), "misfire"));
    // Held at 90 degrees the muzzle is at (0, 0.9), a metre and 1.1 m from the performer (right triangle).
    let held = assess(&[
        ("sweep_start", Exact(0.0)),
        ("sweep_end", Exact(0.0)),
        ("safe_direction", Exact(90.0 * DEGREE)),
        ("muzzle_reach", Exact(0.9)),
        ("performer_start_along", Exact(1.0)),
        ("performer_end_along", Exact(1.0)),
        ("performer_start_across", Exact(2.0)),
        ("performer_end_across", Exact(2.0)),
    ]);
    close(value(&held, "safe_angle"), libm::atan2(1.0, 1.1), 1e-9);
    let at_crew = assess(&[("safe_direction", Exact(155.0 * DEGREE))]);
    assert_eq!(status(&at_crew, "safe_direction"), Status::Exceeded);
}

#[test]
fn cases_fly_as_thrown_things_do() {
    // Thrown level from 1.4 m at 5 m/s: 5 sqrt(2 h / g) (elementary mechanics).
    let level = assess(&[("ejection_rise", Exact(0.0)), ("port_height", Exact(1.4))]);
    close(
        value(&level, "case_range"),
        5.0 * f64::sqrt(2.0 * 1.4 / GRAVITY),
        1e-12,
    );
    // The crew stands a metre to the right of the firer, in the cases' way; to the left they miss them.
    let beside = |side| {
        assess(&[
            ("ejection", Option(side)),
            ("sweep_start", Exact(0.0)),
            ("sweep_end", Exact(0.0)),
            ("crew_along", Exact(0.2)),
            ("crew_across", Exact(-3.0)),
        ])
    };
    assert_eq!(status(&beside("right"), "case_clearance"), Status::Exceeded);
    assert_eq!(status(&beside("left"), "case_clearance"), Status::Within);
    let kept = beside("kept");
    assert!(
        kept.checks
            .iter()
            .all(|check| check.name != "case_clearance")
    );
}
