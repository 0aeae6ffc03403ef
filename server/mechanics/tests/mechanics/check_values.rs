//! Published and worked values that no other test holds. The source stands beside each.

use crate::common::{GRAVITY, Given::Exact, POUND_FORCE, assess, check, close, plausible, value};
use gagwright_mechanics::{
    Bound, Check, Quantity, Standing, Status,
    models::{bridle, fall, gas, line_arrest, slide, stopping, tolerance, tolerance::Axis, wire},
    techniques,
    units::parse,
};

const FOOT: f64 = 0.3048;
const MILE_AN_HOUR: f64 = 0.447_04;
const DEGREE: f64 = core::f64::consts::PI / 180.0;

fn read(quantity: Quantity, text: &str) -> f64 {
    parse(quantity, text).unwrap().value
}

/// Every check of every technique whose source is that document.
fn citing(document: &str) -> Vec<(String, Check)> {
    techniques()
        .iter()
        .flat_map(|technique| {
            let assessment = technique.assess(&plausible(technique.name())).unwrap();
            let name = assessment.technique;
            let checks = assessment.checks.into_iter();
            checks.map(move |check| (name.clone(), check))
        })
        .filter(|(_, check)| check.source.document.starts_with(document))
        .collect()
}

fn clause(check: &Check) -> &str {
    check.source.clause.as_deref().unwrap_or("")
}

#[test]
fn the_rope_test_by_its_own_geometry() {
    // UIAA 101: a fall of twice 2.3 m on 2.6 m of rope, met at 9.5 m/s; that is the fall factor 1.77, and a
    // rope of 45.07 kN then pulls the standard's ceiling of 12 kN on 80 kg (rope equation, computed).
    close(fall::in_vacuum(2.0 * 2.3).speed, 9.5, 1e-3);
    let factor = 2.0 * 2.3 / 2.6;
    close(factor, 1.77, 1e-3);
    close(
        line_arrest::rope_equation(80.0, factor, 45.07e3),
        12e3,
        1e-3,
    );
}

#[test]
fn an_absorber_stops_its_test_mass() {
    // EN 355: 100 kg falls 4 m and tears at most 1.75 m: mean 3,222 N, 5,639 J (computed).
    let stop = stopping::stop(fall::in_vacuum(4.0).speed, 1.75, stopping::Shape::Square);
    let force = 100.0 * (stop.mean + GRAVITY);
    close(force, 3222.0, 1e-3);
    close(force * 1.75, 5639.0, 1e-3);
}

#[test]
fn fall_arrest_limits_wherever_they_are_cited() {
    let cited = citing("29 CFR 1926.502");
    for (technique, check) in &cited {
        // 29 CFR 1926.502(d)(16): 1,800 lbf (8 kN); 6 ft; 3.5 ft. (d)(15), from memory: 5,000 lbf (22.2 kN) for each
        // person, or a factor of 2 by a qualified person.
        let (text, share) = match clause(check) {
            says if says.contains("factor 2") => ("2", 1e-12),
            says if says.contains("5,000 lbf") => ("5000 lbf", 2e-3),
            says if says.contains("1,800 lbf") => ("1800 lbf", 1e-3),
            says if says.contains("deceleration distance") => ("3.5 ft", 1e-9),
            says if says.contains("free fall") => ("6 ft", 1e-9),
            other => panic!("{technique}: {other}"),
        };
        let limit = &check.limit;
        close(limit.value, read(limit.quantity, text), share);
        let (bound, standing) = if clause(check).starts_with("(d)(15)") {
            (Bound::AtLeast, Standing::FromMemory)
        } else {
            (Bound::AtMost, Standing::Published)
        };
        assert_eq!(limit.bound, bound, "{technique}: {}", check.name);
        assert_eq!(check.source.standing, standing, "{technique}");
    }
    // Every technique that hangs or stops a body on a line has its force.
    for name in [
        "dead-man-line",
        "descender-drop",
        "ratchet-pull",
        "wire-flight",
    ] {
        assert!(
            cited
                .iter()
                .any(|(technique, check)| technique == name && check.limit.value == 8000.0),
            "{name}"
        );
    }
    // EN 355: at most 6 kN.
    let absorbers = citing("EN 355");
    assert!(!absorbers.is_empty());
    for (_, check) in absorbers {
        close(check.limit.value, read(Quantity::Force, "6 kN"), 1e-12);
    }
}

#[test]
fn head_limits_wherever_they_are_cited() {
    let mut cited = citing("49 CFR 571.208");
    // The same rule limits chests too, in g.
    cited.retain(|(_, check)| check.limit.quantity == Quantity::Ratio);
    for (technique, check) in &cited {
        // 49 CFR 571.208 S6.2: HIC15 at most 700, HIC36 at most 1,000.
        let long = clause(check).contains("36");
        let most = if long { 1000.0 } else { 700.0 };
        assert_eq!(check.limit.value, most, "{technique}: {}", check.name);
        assert_eq!(check.limit.bound, Bound::AtMost);
    }
    assert!(cited.len() >= 5);
    // ASTM F1292: 200 g and HIC 1,000.
    let surfaces = citing("ASTM F1292");
    assert!(surfaces.len() >= 2);
    for (technique, check) in surfaces {
        let most = match check.limit.quantity {
            Quantity::Acceleration => read(Quantity::Acceleration, "200 g"),
            _ => 1000.0,
        };
        close(check.limit.value, most, 1e-12);
        assert_eq!(check.limit.bound, Bound::AtMost, "{technique}");
    }
}

#[test]
fn flying_factors_are_policy() {
    // Ten on the lifting medium is the habit of the trade; no standard's text is claimed for it.
    let flight = assess("wire-flight", &[]);
    let factor = check(&flight, "design_factor");
    assert_eq!(factor.limit.value, 10.0);
    assert_eq!(factor.source.standing, Standing::CommonPractice);
}

#[test]
fn ends_and_every_row_of_the_bend_table() {
    // TM 5-3810-305-10 table 4, rope with a wire core: a mechanical sleeve up to 1 in keeps 95 %.
    assert_eq!(wire::termination_share("swaged_sleeve"), Some(0.95));
    // Wire-rope maker's handbook, per cent kept by the ratio of sheave to rope.
    for (ratio, percent) in [
        (40.0, 95.0),
        (30.0, 93.0),
        (20.0, 91.0),
        (15.0, 89.0),
        (10.0, 86.0),
        (8.0, 83.0),
        (6.0, 79.0),
        (4.0, 75.0),
        (2.0, 65.0),
        (1.0, 50.0),
    ] {
        close(100.0 * wire::bend_share(ratio), percent, 1e-12);
    }
}

#[test]
fn each_sheave_costs_a_fiftieth() {
    // A rope maker's handbook: about 2 % of the pull is lost at each sheave.
    let lifted = |sheaves| {
        let flight = assess(
            "wire-flight",
            &[
                ("swing_angle", Exact(0.0)),
                ("lift_acceleration", Exact(1.5 * GRAVITY)),
                ("sheaves", Exact(sheaves)),
            ],
        );
        value(&flight, "peak_tension_left")
    };
    close(lifted(0.0) / lifted(1.0), 0.98, 1e-9);
    close(lifted(0.0) / lifted(3.0), 0.98 * 0.98 * 0.98, 1e-9);
}

#[test]
fn slings_by_their_angle_to_the_level() {
    // A sling maker's table: per cent of what two upright legs carry, by the angle to the level.
    for (degrees, percent) in [
        (90.0, 100.0),
        (75.0, 96.6),
        (60.0, 86.6),
        (45.0, 70.7),
        (30.0, 50.0),
        (15.0, 25.8),
    ] {
        let included = (180.0 - 2.0 * degrees) * DEGREE;
        let upright = bridle::equal_legs(1.0, 0.0);
        let found = 100.0 * upright / bridle::equal_legs(1.0, included);
        // Printed to a tenth, the last row cut and not rounded (25.88).
        assert!((found - percent).abs() < 0.1, "{degrees}: {found}");
    }
}

#[test]
fn the_response_of_a_fall_through_its_stop() {
    // 10 m into 1.5 m at constant force: 9.905, no typed-in g or time between (computed with SciPy).
    let stop = stopping::stop(fall::in_vacuum(10.0).speed, 1.5, stopping::Shape::Square);
    let samples = stopping::samples(&stop, stopping::Shape::Square, 0.0, 50);
    let mut pulse = samples.clone();
    pulse.push((samples.last().unwrap().0, 0.0));
    close(
        tolerance::dynamic_response(Axis::Headward, &pulse),
        9.905,
        5e-3,
    );
}

#[test]
fn a_free_fall_from_its_first_second_to_its_last() {
    // A parachuting school's table: 16 ft in the first second, and after twelve, 1,483 ft down, 174 ft/s; the tanh
    // model with 176 ft/s (USPA Skydiver's Information Manual 6-3) stays within 3 %.
    let terminal = read(Quantity::Speed, "176 ft/s");
    close(fall::with_drag(16.0 * FOOT, terminal).time, 1.0, 0.03);
    let speed = fall::with_drag(1483.0 * FOOT, terminal).speed;
    close(speed, read(Quantity::Speed, "174 ft/s"), 0.03);
}

#[test]
fn gas_at_its_two_limits() {
    // 7 bar absolute from 10 L to 15 L: at one temperature 2,838.3 J, which no expansion exceeds; the
    // polytropic work comes to it as its exponent comes to 1 (computed).
    let work = |exponent| gas::polytropic_work(7e5, 0.010, 0.015, exponent);
    close(work(1.0 + 1e-6), 2838.3, 1e-4);
    assert!(work(1.4) < work(1.2) && work(1.2) < work(1.0 + 1e-6));
    // Air through an ideal nozzle chokes at 0.528 of its pressure, where it has cooled to 2 / (1.4 + 1)
    // (a maker's note on choked flow; ideal gas).
    close(
        gas::polytropic_temperature_ratio(0.528, 1.4),
        2.0 / 2.4,
        1e-3,
    );
}

#[test]
fn thinking_and_braking_apart() {
    // UK Highway Code, m by mph: thinking at 1 ft for each mile an hour, braking at 0.67 g; printed to a metre.
    let braking = slide::deceleration(0.67, 0.0);
    for (mph, thought, braked) in [
        (20.0, 6.0, 6.0),
        (30.0, 9.0, 14.0),
        (40.0, 12.0, 24.0),
        (50.0, 15.0, 38.0),
        (60.0, 18.0, 55.0),
        (70.0, 21.0, 75.0),
    ] {
        let speed = mph * MILE_AN_HOUR;
        let brakes = slide::braking_distance(speed, 0.0, braking).unwrap();
        let stops = slide::stopping_distance(speed, FOOT / MILE_AN_HOUR, braking).unwrap();
        assert_eq!(brakes.round(), braked, "{mph}");
        assert_eq!((stops - brakes).round(), thought, "{mph}");
    }
    // AASHTO at 65 mph: 405.5 ft of braking at 11.2 ft/s2 (the formula; one printed page has it wrong).
    let brakes = slide::braking_distance(65.0 * MILE_AN_HOUR, 0.0, 11.2 * FOOT).unwrap();
    close(brakes / FOOT, 405.5, 1e-3);
    close(
        slide::sight_distance_feet(65.0) - 1.47 * 65.0 * 2.5,
        405.5,
        1e-3,
    );
}

#[test]
fn a_high_fall_has_medics_and_an_ambulance() {
    // Ontario film guideline 25: generally two emergency medics and an ambulance; two spotters above 15 ft.
    let judged = |name: &str, input, count| {
        let fallen = assess("high-fall", &[(input, Exact(count))]);
        let check = check(&fallen, name).clone();
        assert_eq!(check.source.standing, Standing::Published);
        assert!(clause(&check).contains("25") || check.source.document.contains("25"));
        check.status
    };
    for (name, input, wanted) in [
        ("emergency_providers", "emergency_providers", 2.0),
        ("ambulance", "ambulances", 1.0),
        ("spotters", "spotters", 2.0),
    ] {
        assert_eq!(judged(name, input, wanted), Status::Within, "{name}");
        assert_eq!(
            judged(name, input, wanted - 1.0),
            Status::Exceeded,
            "{name}"
        );
    }
}

#[test]
fn forces_in_pounds_come_out_in_newtons() {
    // 3,600 lbf (16 kN) proof of a snaphook and 5,000 lbf (22.2 kN) of a lanyard, 29 CFR 1926.502(d), both figures
    // as printed; 16 CFR 1201: 400 ft lb, 542.3 J.
    close(
        read(Quantity::Force, "3600 lbf"),
        read(Quantity::Force, "16 kN"),
        2e-3,
    );
    close(
        read(Quantity::Force, "5000 lbf"),
        read(Quantity::Force, "22.2 kN"),
        2e-3,
    );
    close(read(Quantity::Energy, "400 ft lbf"), 542.3, 1e-4);
    // 4 in at 100 psi: 1,256.6 lbf.
    let area = gas::piston_area(read(Quantity::Length, "4 in"), 0.0);
    close(
        area * read(Quantity::Pressure, "100 psi") / POUND_FORCE,
        1256.6,
        1e-4,
    );
}
