//! The run assist and the towed surface against outside values, against SciPy
//! (`tests/reference/fixtures/running.py`), and what they say of worked cases.

use crate::common::number;
use crate::common::{
    GRAVITY, Given,
    Given::{Exact, Option as Name},
    assess, check, close, says, value,
};
use gagwright_mechanics::{
    Assessment, Quantity, Standing, Status,
    models::{
        moving_floor::{Change, friction_stop},
        unweighting::{Assist, Gait},
    },
    units::say,
};
use serde_json::Value;

fn assisted(changes: &[(&str, Given)]) -> Assessment {
    assess("run-assist", changes)
}

fn towed(changes: &[(&str, Given)]) -> Assessment {
    assess("towed-surface", changes)
}

fn cases(table: &str) -> Vec<(Value, Value)> {
    crate::common::cases(include_str!("../fixtures/running.json"), table)
}

fn rig(given: &Value) -> Assist {
    Assist {
        mass: number(given, "mass"),
        weight: number(given, "weight"),
        ratio: number(given, "ratio"),
        pulleys: number(given, "pulleys"),
        loss: given["loss"].as_f64().unwrap_or(0.0),
        stiffness: number(given, "stiffness"),
        damping: given["damping"].as_f64().unwrap_or(0.1),
    }
}

fn change(given: &Value) -> Change {
    Change::of(
        number(given, "speed"),
        number(given, "acceleration"),
        number(given, "ramp"),
    )
}

#[test]
fn an_ideal_pulley() {
    // Atwood's machine (G. Atwood, 1784; computed with g 9.80665): 80 and 20 kg fall at 5.884 m/s2 with
    // 313.8 N, and 25 % is taken standing; 80 and 30 kg fall at 4.458 m/s2, 37.5 %.
    for (weight, fall, share) in [(20.0, 5.884, 0.25), (30.0, 4.458, 0.375)] {
        let assist = Assist {
            mass: 80.0,
            weight,
            ratio: 1.0,
            pulleys: 0.0,
            loss: 0.0,
            stiffness: 1e4,
            damping: 0.1,
        };
        close(assist.fall(), fall, 1e-3);
        close(assist.relief(), share, 1e-12);
        if weight == 20.0 {
            close(assist.falling_tension(), 313.8, 1e-3);
        }
    }
    let plain = assisted(&[
        ("performer_mass", Exact(80.0)),
        ("counterweight_mass", Exact(20.0)),
        ("counterweight_ratio", Exact(1.0)),
        ("pulley_inertia", Exact(0.05)),
    ]);
    // The smallest pulleys that may be entered change the fall by 0.05 kg in 100.
    close(value(&plain, "fall_acceleration"), 5.884, 1e-3);
    close(value(&plain, "falling_tension"), 313.8, 1e-3);
    close(value(&plain, "relief"), 0.25, 1e-12);
}

#[test]
fn half_relief_runs_are_feasible() {
    // Half-relief runs at 10.7 m/s (24 mph) are common practice: every blocking check passes or is close.
    close(24.0 * 0.44704, 10.7, 5e-3);
    let run = assisted(&[]);
    close(value(&run, "relief"), 0.5, 1e-12);
    for check in run.checks.iter().filter(|check| check.blocking) {
        assert!(check.status <= Status::Marginal, "{check:?}");
    }
    assert_eq!(check(&run, "speed").status, Status::Within);
    // Without the relief the same legs do not reach it.
    let heavy = assisted(&[("counterweight_mass", Exact(10.0))]);
    assert_eq!(check(&heavy, "speed").status, Status::Exceeded);
}

#[test]
fn legs_push_as_measured() {
    // Weyand et al. 2000 (J. Appl. Physiol. 89, from memory): speed is step rate times contact length times
    // mean push in body weights, so what the assist takes off the push it gives to the speed.
    let run = assisted(&[]);
    let push = value(&run, "needed_push");
    close((1.0 / 0.24) * 0.95 * push / 0.5, 10.7, 1e-9);
    close(value(&run, "reachable_speed"), 8.4 / 0.5, 1e-9);
    // Over a whole step the ground gives what the line does not: half a sine of that peak, 2 / pi of it mean.
    let mean = value(&run, "ground_peak") * 2.0 / core::f64::consts::PI
        * value(&run, "contact_time")
        / 0.24;
    close(mean, 72.0 * GRAVITY * 0.5, 1e-9);
    // A leg swings forward in hardly less than a third of a second.
    assert_eq!(
        check(&assisted(&[("step_time", Exact(0.19))]), "swing_time").status,
        Status::Exceeded
    );
}

#[test]
fn strides_agree_with_radau() {
    for (given, found) in cases("bounce") {
        let gait = Gait {
            step: number(&given, "step"),
            contact: number(&given, "contact"),
        };
        let mut mean = (0.0, 0.0, 0.0);
        let mut last: Option<(f64, f64)> = None;
        let ours = rig(&given)
            .bounce(gait, |at| {
                if let Some((time, tension)) = last {
                    mean.0 += 0.5 * (tension + at.tension) * (at.time - time);
                    mean.1 += at.time - time;
                }
                mean.2 = at.time;
                last = Some((at.time, at.tension));
            })
            .unwrap();
        // The same step of the same run: what is between two looks is drawn.
        close(ours.most, number(&found, "eighth_most"), 2e-5);
        close(ours.height, number(&found, "eighth_height"), 2e-5);
        let least = number(&found, "eighth_least");
        assert!(
            (ours.least - least).abs() < 2e-5 * ours.most,
            "{ours:?} {least}"
        );
        // It stands for what lasts, of which a soft line comes short by 1.0024 percent in seven steps, in SciPy too.
        close(ours.most, number(&found, "most"), 0.0101);
        close(ours.height, number(&found, "height"), 0.01);
        let least = number(&found, "least");
        assert!(
            (ours.least - least).abs() < 0.01 * ours.most,
            "{ours:?} {least}"
        );
        // Over an even step the counterweight gains nothing, so the line's mean is its steady pull but for
        // what rubs.
        close(mean.2, gait.step, 1e-9);
        let pull = rig(&given).pull();
        close(mean.0 / mean.1, pull, number(&given, "loss") * 0.5 + 0.01);
    }
}

#[test]
fn strides_that_never_repeat_are_told() {
    let gait = Gait {
        step: 0.34,
        contact: 0.13,
    };
    let rig = |weight, stiffness, damping| Assist {
        mass: 75.0,
        weight,
        ratio: 1.0,
        pulleys: 2.0,
        loss: 0.04,
        stiffness,
        damping,
    };
    // A light counterweight on a long stride leaves the line slack, and each catch is another one.
    let (calmest, hardest) = rig(20.0, 8000.0, 0.1).unsettled(gait).unwrap();
    assert!(calmest < 0.8 * hardest, "{calmest} {hardest}");
    // A taut line settles however lightly it is damped, and however long that takes.
    let gait = Gait {
        step: 0.25,
        contact: 0.13,
    };
    for damping in [0.01, 0.02, 0.2] {
        let taut = rig(45.0, 8000.0, damping);
        assert!(taut.bounce(gait, |_| {}).unwrap().least > 0.0);
        assert_eq!(taut.unsettled(gait), None, "{damping}");
    }
    let told = assisted(&[
        ("counterweight_mass", Exact(20.0)),
        ("counterweight_ratio", Exact(1.0)),
        ("line_stiffness", Exact(8000.0)),
        ("step_time", Exact(0.34)),
    ]);
    assert!(says(&told, "uneven"));
    assert!(!says(&assisted(&[]), "uneven"));
}

#[test]
fn inertia_is_less_with_purchase() {
    let plain = assisted(&[
        ("counterweight_ratio", Exact(1.0)),
        ("counterweight_mass", Exact(36.0)),
    ]);
    let geared = assisted(&[]);
    close(value(&plain, "relief"), value(&geared, "relief"), 1e-12);
    assert!(value(&plain, "stride_peak") > value(&geared, "stride_peak"));
    assert!(value(&plain, "fall_acceleration") < value(&geared, "fall_acceleration"));
    // A plain line of this stiffness goes slack at every stride, and the answer says so.
    assert_eq!(check(&plain, "stride_least").status, Status::Exceeded);
    assert!(says(&plain, "slack") && !says(&geared, "slack"));
    // A line that swings in the time of a step is named.
    let swinging = assisted(&[("line_stiffness", Exact(7300.0))]);
    close(value(&swinging, "line_period"), 0.24, 0.02);
    assert!(says(&swinging, "in_step"));
}

#[test]
fn catches_agree_with_rk45() {
    for (given, found) in cases("caught") {
        let catch = rig(&given).catch(number(&given, "drop"));
        close(catch.speed, number(&found, "speed"), 1e-6);
        close(catch.stretch, number(&found, "stretch"), 1e-6);
        close(catch.force, number(&found, "force"), 1e-6);
    }
    // A long way for the counterweight lets the body down to the floor.
    let low = assisted(&[("counterweight_travel", Exact(0.5))]);
    assert_eq!(check(&low, "catch_height").status, Status::Exceeded);
    assert!(says(&low, "not_caught"));
    // 29 CFR 1926.502(d)(16): 8 kN in a full-body harness.
    let hard = assisted(&[
        ("line_stiffness", Exact(100e3)),
        ("counterweight_travel", Exact(1.0)),
    ]);
    let force = check(&hard, "catch_force");
    assert_eq!(force.status, Status::Exceeded);
    assert_eq!(force.source.standing, Standing::Published);
    assert_eq!(check(&hard, "line_factor").status, Status::Exceeded);
}

#[test]
fn travel_and_grip() {
    // v^2 / 2a each way, the shot and the answer to the call (elementary mechanics).
    let run = assisted(&[]);
    let each = 10.7 * 10.7 / 4.0;
    close(value(&run, "stop_distance"), each + 5.35, 1e-12);
    close(value(&run, "travel"), 2.0 * each + 10.7 + 5.35, 1e-12);
    let short = assisted(&[("track_length", Exact(70.0))]);
    assert_eq!(check(&short, "travel").status, Status::Exceeded);
    // The counterweight on the trolley must be sped up by feet with half their grip.
    let carried = assisted(&[("counterweight_place", Name("on_trolley"))]);
    assert_eq!(check(&carried, "grip").status, Status::Exceeded);
    assert!(value(&carried, "lag_angle") > value(&run, "lag_angle"));
    // A plain line from a fixed weight would move it with the run, and only there is that said.
    assert!(says(&run, "led_line") && !says(&carried, "led_line"));
    // Energy alone: 10.7 m/s is a rise of 5.837 m, twice that with half the weight.
    close(value(&run, "end_rise"), 2.0 * 5.837, 1e-3);
}

#[test]
fn what_is_no_run_is_said() {
    let floating = assisted(&[("counterweight_mass", Exact(230.0))]);
    assert!(says(&floating, "floats"));
    assert_eq!(check(&floating, "relief").status, Status::Exceeded);
    assert_eq!(check(&floating, "speed").status, Status::Unknown);
    let walking = assisted(&[("run_speed", Exact(2.0))]);
    assert!(says(&walking, "walks"));
    assert_eq!(check(&walking, "line_factor").status, Status::Unknown);
    let alone = assisted(&[("operators", Exact(1.0)), ("clear_below", Exact(1.0))]);
    assert_eq!(check(&alone, "operators").status, Status::Exceeded);
    assert_eq!(check(&alone, "clear_below").status, Status::Exceeded);
    let weak = assisted(&[("overhead_strength", Exact(20e3))]);
    assert_eq!(check(&weak, "overhead_factor").status, Status::Exceeded);
    let tight = assisted(&[
        ("counterweight_travel", Exact(0.01)),
        ("counterweight_ratio", Exact(1.0)),
        ("counterweight_mass", Exact(36.0)),
    ]);
    assert_eq!(check(&tight, "bounce").status, Status::Exceeded);
}

#[test]
fn speeds_add_up_over_the_ground() {
    // Towed at 3 m/s and run on at 5 m/s: 8 or 2 m/s over the ground by the way of the run (kinematics).
    for (way, sum) in [("along", 8.0), ("against", 2.0)] {
        let run = towed(&[
            ("tow_speed", Exact(3.0)),
            ("run_speed", Exact(5.0)),
            ("direction", Name(way)),
        ]);
        close(value(&run, "ground_speed"), sum, 1e-12);
    }
    let back = towed(&[("direction", Name("against"))]);
    assert!(says(&back, "carried_back"));
    close(value(&back, "run_off_speed"), 4.6, 1e-9);
}

#[test]
fn no_stop_is_shorter_than_friction() {
    // Friction 0.8 stops 6 m/s in 2.294 m (v^2 / 2 mu g, computed).
    close(friction_stop(6.0, 0.8), 2.294, 1e-3);
    let run = towed(&[
        ("tow_speed", Exact(1.0)),
        ("run_speed", Exact(5.0)),
        ("foot_friction", Exact(0.8)),
    ]);
    close(value(&run, "friction_stop"), 2.294, 1e-3);
}

#[test]
fn a_jerk_past_friction_slips() {
    // The foot slips where the acceleration is above mu g (Coulomb): 0.3 g of friction is 2.942 m/s2.
    for (pull, slips) in [(2.9, false), (3.0, true)] {
        let run = towed(&[
            ("foot_friction", Exact(0.3)),
            ("tow_acceleration", Exact(pull)),
            ("runner_acceleration", Exact(1.0)),
            ("ramp_time", Exact(0.0)),
        ]);
        assert_eq!(says(&run, "slips_at_take_up"), slips, "{pull}");
        assert_eq!(check(&run, "grip_take_up").status, Status::Exceeded);
        close(value(&run, "grip_take_up"), pull / 2.942, 1e-3);
    }
    // Together, along the tow, runner and tow share the grip.
    let both = towed(&[("order", Name("together"))]);
    close(value(&both, "grip_take_up"), 4.5 / (0.9 * GRAVITY), 1e-9);
    assert!(says(&both, "waits_for_the_tow"));
    assert_eq!(
        check(&towed(&[("runner_stop", Exact(6.0))]), "grip_stop").status,
        Status::Exceeded
    );
}

#[test]
fn the_longest_shot_of_a_24_m_surface() {
    // A surface of 24 m (80 ft) and 15.6 m/s (35 mph) over the ground are common practice, and there is a
    // shot of more than a second in it.
    close(80.0 * 0.3048, 24.0, 0.02);
    close(35.0 * 0.44704, 15.6, 5e-3);
    let run = towed(&[]);
    close(value(&run, "ground_speed"), 15.6, 1e-12);
    // Exact kinematics: 5.5 m/s with 3 m/s2 each way is 5.0417 m twice, half a second of answer 2.75 m.
    let left = 24.0 - 2.5 - 2.0 * 5.5 * 5.5 / 6.0 - 2.75;
    close(value(&run, "longest_shot"), left / 5.5, 1e-9);
    assert!(value(&run, "longest_shot") > 1.0);
    assert_eq!(check(&run, "shot").status, Status::Within);
    // A shot that long uses the mat to its margins and no further.
    let longest = towed(&[("shot_time", Exact(left / 5.5))]);
    close(value(&longest, "surface_used"), 21.5, 1e-9);
    // The same sum with faster legs and a slower tow has less in it, and a short mat nothing.
    let legs = towed(&[("run_speed", Exact(8.0)), ("tow_speed", Exact(7.6))]);
    close(value(&legs, "ground_speed"), 15.6, 1e-12);
    assert_eq!(check(&legs, "shot").status, Status::Exceeded);
    assert!(value(&towed(&[("surface_length", Exact(12.0))]), "longest_shot") < 0.0);
}

#[test]
fn changes_of_speed_agree_with_quadrature() {
    for (given, found) in cases("change") {
        let change = change(&given);
        close(change.time, number(&found, "time"), 1e-9);
        close(change.distance(), number(&found, "distance"), 1e-9);
        let (a, v, x) = change.at(change.time);
        assert_eq!(a, 0.0);
        close(v, number(&found, "gained"), 1e-9);
        close(x, number(&found, "distance"), 1e-9);
        // The two halves meet, in speed and in place.
        let middle = 0.5 * change.time;
        let (before, after) = (change.at(middle - 1e-9), change.at(middle + 1e-9));
        assert!((before.1 - after.1).abs() < 1e-7 && (before.2 - after.2).abs() < 1e-7);
    }
}

#[test]
fn balance_agrees_with_the_pendulum() {
    for (given, found) in cases("base") {
        let base = change(&given).base_needed(number(&given, "height"), number(&given, "reaction"));
        close(base, number(&found, "base"), 1e-5);
    }
    // Hof, Gazendam and Sinke 2005 (from memory): a push that gives v at once moves the point of balance by
    // v / w, with w^2 = g / h.
    let push = Change::of(0.4, 4e4, 0.0).base_needed(1.0, 0.0);
    close(push, 0.4 / GRAVITY.sqrt(), 1e-3);
    // A pull held for long needs a h / g, the lean of a body at rest in it.
    close(
        Change::of(60.0, 1.2, 0.0).base_needed(1.0, 0.0),
        1.2 / GRAVITY,
        1e-3,
    );
    // A pull that comes at once needs more than one that builds up, and a counted start less.
    let sudden = towed(&[("ramp_time", Exact(0.0)), ("tow_acceleration", Exact(2.5))]);
    assert_eq!(check(&sudden, "balance_take_up").status, Status::Exceeded);
    let counted = towed(&[
        ("ramp_time", Exact(0.0)),
        ("tow_acceleration", Exact(2.5)),
        ("reaction_time", Exact(0.0)),
    ]);
    assert_ne!(check(&counted, "balance_take_up").status, Status::Exceeded);
    let hard = towed(&[("ramp_time", Exact(0.1)), ("tow_stop", Exact(4.0))]);
    assert_eq!(check(&hard, "balance_stop").status, Status::Exceeded);
    // A tow that parts is not stood through on this ground, and the signers are told.
    let parted = check(&sudden, "balance_let_go");
    assert_eq!(parted.status, Status::Exceeded);
    assert!(!parted.blocking);
    // Coulomb and Newton: 72 kg of runner press a mat of 60 kg, so 0.4 of friction slows it at 0.88 g. A body
    // that answers nothing is left 10.1 m/s in 1.17 s: the integral of a exp(-w t) / w.
    let w = GRAVITY.sqrt();
    let slowing = 0.4 * GRAVITY * 132.0 / 60.0;
    let base = (w * 0.2).exp() * slowing / (w * w) * (1.0 - (-w * 10.1 / slowing).exp());
    let run = towed(&[("weight_height", Exact(1.0)), ("reaction_time", Exact(0.2))]);
    close(value(&run, "let_go_base"), base, 1e-9);
    // A heavy mat is slowed by hardly more than its own friction.
    let heavy = towed(&[
        ("surface_mass", Exact(3000.0)),
        ("tow_speed", Exact(0.4)),
        ("ground_friction", Exact(1.0)),
        ("reaction_time", Exact(0.0)),
    ]);
    let alone = GRAVITY / (w * w) * (1.0 - (-w * 0.4 / GRAVITY).exp());
    close(value(&heavy, "let_go_base"), alone, 0.03);
    // Along the tow the runner's own slowing, 3 m/s2 from 5.5 m/s, leans the same way: 3 / g of a metre, less
    // what its end leaves out. The answer says so, and not against the tow, where it leans the other way.
    let own = 3.0 / GRAVITY * (1.0 - (-w * 5.5 / 3.0).exp());
    let said = run.cautions.iter().find(|c| c.name == "own_slowing");
    assert!(
        said.unwrap()
            .text
            .contains(&format!("asks for {} more", say(Quantity::Length, own)))
    );
    assert!(!says(
        &towed(&[("direction", Name("against"))]),
        "own_slowing"
    ));
}

#[test]
fn ways_and_loads_of_the_tow() {
    let run = towed(&[]);
    // Half the speed times the time for each change, and the even way between (kinematics).
    let even = 10.1 * (5.5 / 3.0 + 0.9 + 0.5);
    let changes = 0.5 * 10.1 * (10.1 / 1.5 + 0.8 + 10.1 / 2.0 + 0.8);
    close(value(&run, "tow_distance"), even + changes, 1e-9);
    assert_eq!(
        check(&towed(&[("tow_path", Exact(95.0))]), "tow_path").status,
        Status::Exceeded
    );
    assert_eq!(
        check(&towed(&[("run_out", Exact(40.0))]), "run_out").status,
        Status::Exceeded
    );
    // Newton and Coulomb: 132 kg over a friction of 0.4, and the push of 72 kg gathering at 3 m/s2.
    close(
        value(&run, "tow_force"),
        132.0 * 0.4 * GRAVITY + 216.0,
        1e-9,
    );
    assert_eq!(
        check(&towed(&[("tow_strength", Exact(3000.0))]), "tow_factor").status,
        Status::Exceeded
    );
    assert_eq!(check(&run, "run_off_speed").status, Status::Exceeded);
    // Against the tow it is the slowing that pushes the mat back, and together along it both count at once.
    let against = towed(&[("direction", Name("against")), ("runner_stop", Exact(5.0))]);
    close(
        value(&against, "tow_force"),
        132.0 * 0.4 * GRAVITY + 360.0,
        1e-9,
    );
    let both = towed(&[("order", Name("together"))]);
    close(
        value(&both, "tow_force"),
        132.0 * (0.4 * GRAVITY + 1.5) + 216.0,
        1e-9,
    );
    let slow = towed(&[("tow_speed", Exact(2.0))]);
    assert_eq!(check(&slow, "run_off_speed").status, Status::Within);
    assert_eq!(
        check(&towed(&[("spotters", Exact(1.0))]), "spotters").status,
        Status::Exceeded
    );
    // The plotted run ends where the figures say, and all is still there.
    let trace = &run.traces[0];
    let last = |i: usize| *trace.y[i].values.last().unwrap();
    close(last(2), value(&run, "surface_used"), 1e-9);
    assert!(last(0).abs() < 1e-9 && last(1).abs() < 1e-9);
}
