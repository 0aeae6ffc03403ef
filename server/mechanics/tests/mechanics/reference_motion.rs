//! Motion models against outside values. The source stands beside each assert.

use crate::common::{GRAVITY, POUND_FORCE, close};
use gagwright_mechanics::models::{
    atmosphere, fall, head, line_arrest,
    ode::{self, Accuracy, End, Motion, Point},
    pendulum::Pendulum,
    spread, stopping, tolerance,
    tolerance::Axis,
    trajectory,
};

const STANDARD_DENSITY: f64 = 1.225;

#[test]
fn falls() {
    // v = sqrt(2 g h), t = sqrt(2 h / g), g = 9.80665 m/s2 (CGPM 1901).
    let vacuum = fall::in_vacuum(30.0);
    close(vacuum.speed, 24.257, 1e-4);
    close(vacuum.time, 2.4735, 1e-4);
    let vacuum = fall::in_vacuum(10.0);
    close(vacuum.speed, 14.005, 1e-3);
    close(vacuum.time, 1.428, 1e-3);
    // Closed form v = vt sqrt(1 - exp(-2 g h / vt^2)), vt 53.6 m/s.
    close(fall::with_drag(30.0, 53.6).speed, 23.066, 1e-4);
    // 80 kg, CdA 0.7 m2 from 10 m and CdA 0.5 m2 from 30 m: computed with SciPy from the same equation.
    let drag = fall::with_drag(10.0, fall::terminal_speed(80.0, 0.7, STANDARD_DENSITY));
    close(drag.speed, 13.638, 2e-3);
    close(drag.time, 1.441, 2e-3);
    let drag = fall::with_drag(30.0, fall::terminal_speed(80.0, 0.5, STANDARD_DENSITY));
    close(drag.speed, 22.928, 2e-3);
    // Terminal speeds of an 80 kg body: CdA 0.5 m2 50.6 m/s, 0.7 m2 42.8 m/s (computed likewise).
    close(
        fall::terminal_speed(80.0, 0.5, STANDARD_DENSITY),
        50.6,
        1e-3,
    );
    close(
        fall::terminal_speed(80.0, 0.7, STANDARD_DENSITY),
        42.8,
        1e-3,
    );
}

#[test]
fn a_stable_adult_in_free_fall() {
    // A parachuting school's free-fall table, seconds to feet; terminal 176 ft/s (USPA Skydiver's
    // Information Manual 6-3). The tanh model stays within 3 % of it from the second second on.
    const FOOT: f64 = 0.3048;
    let terminal = 176.0 * FOOT;
    let table = [
        62.0, 138.0, 242.0, 366.0, 504.0, 652.0, 808.0, 971.0, 1138.0, 1309.0, 1483.0,
    ];
    for (i, feet) in table.iter().enumerate() {
        let seconds = (i + 2) as f64;
        close(fall::with_drag(feet * FOOT, terminal).time, seconds, 0.03);
    }
}

#[test]
fn throws_without_drag() {
    // Range v^2 sin 2a / g on level ground.
    for (speed, degrees) in [(10.0_f64, 45.0_f64), (21.394, 20.0), (6.0, 70.0)] {
        let angle = degrees.to_radians();
        let landing = trajectory::fly(&trajectory::Throw {
            speed,
            angle,
            height: 0.0,
            mass: 80.0,
            drag_area: 0.0,
            density: STANDARD_DENSITY,
            wind: 0.0,
        })
        .unwrap();
        close(
            landing.distance,
            speed * speed * (2.0 * angle).sin() / GRAVITY,
            1e-8,
        );
    }
    // Worked case: 30 m at 20 degrees takes 21.394 m/s, 1.4923 s, apex 2.730 m; with drag, 250 kg and
    // CdA 0.7 m2, 28.988 m in 1.4792 s (computed with SciPy).
    let mut throw = trajectory::Throw {
        speed: 21.394,
        angle: 20.0_f64.to_radians(),
        height: 0.0,
        mass: 250.0,
        drag_area: 0.0,
        density: STANDARD_DENSITY,
        wind: 0.0,
    };
    let landing = trajectory::fly(&throw).unwrap();
    close(landing.distance, 30.0, 1e-3);
    close(landing.time, 1.4923, 1e-3);
    close(landing.apex, 2.730, 1e-3);
    throw.drag_area = 0.7;
    let landing = trajectory::fly(&throw).unwrap();
    close(landing.distance, 28.988, 1e-3);
    close(landing.time, 1.4792, 1e-3);
}

#[test]
fn straight_falls_agree_with_the_closed_form() {
    for (height, mass, drag_area) in [(3.0, 50.0, 0.4), (36.0, 64.0, 0.5), (80.0, 120.0, 1.2)] {
        let landing = trajectory::fly(&trajectory::Throw {
            speed: 0.0,
            angle: 0.0,
            height,
            mass,
            drag_area,
            density: STANDARD_DENSITY,
            wind: 0.0,
        })
        .unwrap();
        let closed = fall::with_drag(
            height,
            fall::terminal_speed(mass, drag_area, STANDARD_DENSITY),
        );
        close(landing.down, closed.speed, 1e-8);
        close(landing.time, closed.time, 1e-8);
    }
}

#[test]
fn the_standard_atmosphere() {
    // ISO 2533:1975 tables: 1.225 kg/m3 and 101,325 Pa at sea level; 0.90925 kg/m3, 70,108 Pa and
    // 268.659 K at 3,000 m geometric (2,998.6 m geopotential); from memory.
    close(atmosphere::density(0.0), 1.225, 1e-5);
    close(atmosphere::pressure(0.0), 101_325.0, 1e-12);
    close(atmosphere::density(2998.6), 0.90925, 2e-4);
    close(atmosphere::pressure(2998.6), 70_121.0, 3e-4);
    close(atmosphere::temperature(2998.6), 268.659, 1e-5);
}

#[test]
fn ropes() {
    // UIAA 101 / EN 892 fall: 80 kg, fall factor 1.77. A rope at the standard's ceiling of 12 kN has a
    // modulus of 45.07 kN, one of 9.0 kN has 24.08 kN, one of 8.5 kN 21.21 kN (rope equation).
    for (peak, modulus) in [(12e3, 45.07e3), (9e3, 24.08e3), (8.5e3, 21.21e3)] {
        close(
            line_arrest::modulus_from_peak(peak, 80.0, 1.77),
            modulus,
            1e-3,
        );
        close(line_arrest::rope_equation(80.0, 1.77, modulus), peak, 1e-3);
    }
    // The same equation, worked at other fall factors for 80 kg, N.
    let factors = [0.0, 0.3, 0.5, 1.0, 1.77, 2.0];
    for (modulus, peaks) in [
        (45.07e3, [1569.0, 5457.0, 6782.0, 9230.0, 12000.0, 12703.0]),
        (24.08e3, [1569.0, 4242.0, 5201.0, 6981.0, 9000.0, 9513.0]),
    ] {
        for (factor, peak) in factors.iter().zip(peaks) {
            close(
                line_arrest::rope_equation(80.0, *factor, modulus),
                peak,
                1e-3,
            );
        }
    }
    // EN 1891 type A: 5 % from 50 kg to 150 kg makes a chord modulus of 19.6 kN; 100 kg at fall factor
    // 0.3 then gives 4,517 N, under its 6 kN.
    close(100.0 * GRAVITY / 0.05, 19.6e3, 1e-3);
    close(line_arrest::rope_equation(100.0, 0.3, 19.6e3), 4517.0, 1e-3);
}

#[test]
fn a_runner_stopped_by_a_line() {
    // 80 kg at 6 m/s, modulus 22 kN over 10 m: 2,517 N, 3.208 g, 1.144 m, 0.2995 s (computed).
    let stop = line_arrest::stop_running(80.0, 6.0, 2200.0);
    close(stop.peak_tension, 2517.0, 1e-3);
    close(stop.peak_tension / 80.0 / GRAVITY, 3.208, 1e-3);
    close(stop.stretch, 1.144, 1e-3);
    close(stop.time, 0.2995, 1e-3);
    // The damped equation with no damping and no steady force is the same stop.
    let damped = line_arrest::stop_damped(80.0, 6.0, 2200.0, 0.0, 0.0).unwrap();
    close(damped.peak_tension, stop.peak_tension, 1e-4);
    close(damped.stretch, stop.stretch, 1e-8);
    close(damped.time, stop.time, 1e-8);
    // With gravity and no damping it is the rope equation: f = v^2 / (2 g L), L = 10 m.
    let speed = (2.0 * GRAVITY * 3.0_f64).sqrt();
    let fallen = line_arrest::stop_damped(80.0, speed, 2200.0, 0.0, 80.0 * GRAVITY).unwrap();
    close(
        fallen.peak_tension,
        line_arrest::rope_equation(80.0, 0.3, 22e3),
        1e-4,
    );
    // Damping takes energy out, so the line stretches less.
    let soft = line_arrest::stop_damped(80.0, speed, 2200.0, 0.2, 80.0 * GRAVITY).unwrap();
    assert!(soft.stretch < fallen.stretch);
}

#[test]
fn arrest_limits_in_their_own_units() {
    // 29 CFR 1926.502(d)(16): 1,800 lbf, which the text rounds to 8 kN; 5,000 lbf to 22.2 kN.
    close(1800.0 * POUND_FORCE, 8000.0, 1e-3);
    close(5000.0 * POUND_FORCE, 22.2e3, 2e-3);
    // EN 355: 100 kg, 4 m fall and 1.75 m extension: 5,639 J, mean 3,222 N, under 6 kN (computed).
    let energy = 100.0 * GRAVITY * 5.75;
    close(energy, 5639.0, 1e-3);
    close(energy / 1.75, 3222.0, 1e-3);
    // A fall of 6 ft stopped in 3.5 ft by a steady force feels 1 + 6/3.5 = 2.714 g.
    let speed = (2.0 * GRAVITY * 6.0 * 0.3048_f64).sqrt();
    let stop = stopping::stop(speed, 3.5 * 0.3048, stopping::Shape::Square);
    close(stop.mean / GRAVITY + 1.0, 2.714, 1e-3);
}

#[test]
fn stops() {
    // 12.1 m/s in 2.0 m: 3.73 g net mean (v^2 / 2 g s).
    close(
        stopping::stop(12.1, 2.0, stopping::Shape::Square).mean / GRAVITY,
        3.73,
        1e-3,
    );
    // 10 m into 1.5 m at constant force: net 6.667 g, felt 7.667 g, 0.2142 s (energy: h / s).
    let stop = stopping::stop(fall::in_vacuum(10.0).speed, 1.5, stopping::Shape::Square);
    close(stop.mean / GRAVITY, 6.667, 1e-3);
    close(stop.mean / GRAVITY + 1.0, 7.667, 1e-3);
    close(stop.time, 0.2142, 1e-3);
    // Every shape stops the body: the area under the pulse is the speed, its mean is one.
    use stopping::Shape::{HalfSine, Haversine, Square, Triangle};
    for shape in [Square, HalfSine, Haversine, Triangle] {
        let mean: f64 = (0..10_000)
            .map(|i| shape.at((i as f64 + 0.5) / 10_000.0))
            .sum::<f64>()
            / 1e4;
        close(mean, 1.0, 1e-6);
        let highest = (0..=1000)
            .map(|i| shape.at(i as f64 / 1000.0))
            .fold(0.0, f64::max);
        close(highest, shape.peak_factor(), 1e-6);
    }
}

fn square(g: f64, seconds: f64) -> Vec<(f64, f64)> {
    vec![(0.0, g * GRAVITY), (seconds, g * GRAVITY), (seconds, 0.0)]
}

fn half_sine(g: f64, seconds: f64) -> Vec<(f64, f64)> {
    (0..=400)
        .map(|i| {
            let share = i as f64 / 400.0;
            (
                share * seconds,
                g * GRAVITY * (core::f64::consts::PI * share).sin(),
            )
        })
        .collect()
}

#[test]
fn dynamic_response() {
    let spine = |samples: &[(f64, f64)]| tolerance::dynamic_response(Axis::Headward, samples);
    // A slow rise to 10 g gives 10; a lasting step of 10 g gives 14.857 (step factor 1.485748 at damping
    // 0.224); a short pulse 3.96 for each m/s (DRI as in STANAG 4569 practice; exact 3.95996).
    close(
        spine(&[(0.0, 0.0), (20.0, 10.0 * GRAVITY), (21.0, 10.0 * GRAVITY)]),
        10.0,
        1e-3,
    );
    close(spine(&square(10.0, 5.0)), 14.857, 5e-4);
    let pulse = 0.0005;
    close(
        spine(&[(0.0, 1.0 / pulse), (pulse, 1.0 / pulse), (pulse, 0.0)]),
        3.960,
        1e-3,
    );
    // Worked cases: 10 g for 50 ms 14.300; 20 g half sine of 50 ms 20.885, over the ejection limit of
    // 18; the 10 m fall into 1.5 m, 6.667 g for 0.2142 s, 9.905 (computed with SciPy).
    close(spine(&square(10.0, 0.05)), 14.300, 5e-3);
    close(spine(&half_sine(20.0, 0.05)), 20.885, 5e-3);
    close(spine(&square(6.667, 0.2142)), 9.905, 5e-3);
}

#[test]
fn dynamic_response_two_ways() {
    // The exact piecewise road and the ODE solver must agree on every axis.
    for axis in [
        Axis::Forward,
        Axis::Backward,
        Axis::Sideways,
        Axis::Headward,
        Axis::Footward,
    ] {
        let exact = tolerance::dynamic_response(axis, &half_sine(20.0, 0.08));
        let solved = tolerance::dynamic_response_of(axis, 0.5, |t| {
            if t < 0.08 {
                20.0 * GRAVITY * (core::f64::consts::PI * t / 0.08).sin()
            } else {
                0.0
            }
        })
        .unwrap();
        close(exact, solved, 1e-3);
    }
    // beta is 1 at any one limit and grows with a second axis (root of the sum of squares).
    close(tolerance::combined_risk(&[(15.2, 15.2)]), 1.0, 1e-12);
    close(
        tolerance::combined_risk(&[(9.0, 15.0), (8.0, 10.0)]),
        1.0,
        1e-12,
    );
}

#[test]
fn head_injury() {
    // HIC of a square pulse is A^2.5 min(T, window): 100 g for 10 ms is 1000 (49 CFR 571.208 formula).
    close(
        head::injury_criterion(&square(100.0, 0.01), 0.036),
        1000.0,
        1e-3,
    );
    // 60 g for 50 ms: HIC15 418.3, HIC36 1003.9; 100 g half sine of 20 ms: 829.3 (half-sine coefficient
    // 0.41464), triangle coefficient 0.24640 (computed).
    close(
        head::injury_criterion(&square(60.0, 0.05), 0.015),
        418.3,
        5e-3,
    );
    close(
        head::injury_criterion(&square(60.0, 0.05), 0.036),
        1003.9,
        5e-3,
    );
    close(
        head::injury_criterion(&half_sine(100.0, 0.02), 0.036),
        829.3,
        5e-3,
    );
    let triangle = [(0.0, 0.0), (0.01, 100.0 * GRAVITY), (0.02, 0.0)];
    close(
        head::injury_criterion(&triangle, 1.0),
        0.24640 * 1e5 * 0.02,
        5e-3,
    );
}

/// The closed form of the moment that loads most, beside the swing itself as the solver follows it (which scipy.rs
/// holds against RK45): nothing on the way is felt more, and the two pass that angle together.
#[test]
fn the_bottom_of_a_swing_is_where_the_solver_finds_it() {
    for (length, release_angle, drag_area) in [
        (9.0, 1.0, 0.6),
        (4.0, 1.5, 0.3),
        (30.0, 0.2, 1.2),
        (70.0, 0.8, 3.0),
    ] {
        let pendulum = Pendulum {
            length,
            release_angle,
            mass: 60.0,
            drag_area,
            density: STANDARD_DENSITY,
        };
        let most = pendulum.most_felt().unwrap();
        let mut last = None;
        let mut passed = false;
        assert!(
            pendulum.swing(most.time + pendulum.small_period() / 8.0, |m| {
                assert!(m.felt <= most.felt * (1.0 + 1e-9), "{m:?} {most:?}");
                if let Some((time, angle, speed)) = last
                    && m.time >= most.time
                    && !passed
                {
                    // Between two steps both go nearly straight.
                    let share = (most.time - time) / (m.time - time);
                    let between = |from: f64, to: f64| from + (to - from) * share;
                    passed = true;
                    close(between(angle, m.angle) - most.angle + 1.0, 1.0, 2e-3);
                    close(between(speed, m.speed), most.speed, 2e-3);
                }
                last = Some((m.time, m.angle, m.speed));
            })
        );
        assert!(passed);
    }
    // Nobody is thrown from the bottom.
    let still = Pendulum {
        length: 9.0,
        release_angle: 0.0,
        mass: 60.0,
        drag_area: 0.6,
        density: STANDARD_DENSITY,
    };
    assert_eq!(still.most_felt(), None);
}

#[test]
fn pendulums() {
    // Without drag a swing from angle a feels g (3 - 2 cos a) at the bottom and moves at
    // sqrt(2 g L (1 - cos a)) (energy).
    let angle = 60.0_f64.to_radians();
    let pendulum = Pendulum {
        length: 9.0,
        release_angle: angle,
        mass: 70.0,
        drag_area: 0.0,
        density: 1.2,
    };
    let (mut felt, mut speed, mut crossings, mut last) =
        (0.0_f64, 0.0_f64, Vec::new(), (0.0, angle));
    assert!(pendulum.swing(14.0, |m| {
        felt = felt.max(m.felt);
        speed = speed.max(m.speed.abs());
        if last.1 > 0.0 && m.angle <= 0.0 {
            crossings.push(last.0 + (m.time - last.0) * last.1 / (last.1 - m.angle));
        }
        last = (m.time, m.angle);
    }));
    close(felt / GRAVITY, 2.0, 2e-3);
    close(speed, (9.0 * GRAVITY).sqrt(), 2e-3);
    // Period of a 60 degree swing is 1.07318 times the small one (complete elliptic integral tables).
    close(
        crossings[1] - crossings[0],
        1.07318 * pendulum.small_period(),
        1e-4,
    );
}

#[test]
fn normal_distribution() {
    // Tables of the normal distribution: 95 % lie within 1.959964, 99.9 % within 3.290527 deviations.
    close(spread::two_sided_quantile(0.05), 1.959_964, 1e-6);
    close(spread::two_sided_quantile(0.001), 3.290_527, 1e-6);
    close(spread::normal_below(1.0), 0.841_344_746, 1e-8);
    close(
        spread::normal_outside(-1.0, 1.0, 0.0, 1.0),
        1.0 - 0.682_689_492,
        1e-8,
    );
    // Far out the tails must not drown in rounding: beyond six deviations 1.97318e-9.
    close(
        spread::normal_outside(-6.0, 6.0, 0.0, 1.0),
        1.973_18e-9,
        1e-5,
    );
}

#[test]
fn the_two_spinal_criteria_are_kept_apart() {
    // 18: at most 5 % (ejection seats, a public review); 17.7: 10 %, about 62 mm of the model's spring
    // (STANAG 4569, on a secondary page). x = DR g / w^2 with w = 52.9 rad/s joins the two numbers.
    assert_eq!(tolerance::EJECTION_RESPONSE, 18.0);
    assert_eq!(tolerance::VEHICLE_RESPONSE, 17.7);
    let w = tolerance::response(Axis::Headward).frequency;
    let pressed = tolerance::VEHICLE_RESPONSE * GRAVITY / (w * w);
    close(pressed, tolerance::VEHICLE_COMPRESSION, 2e-3);
    // The middle limit of the headward model is the ejection criterion, and no other.
    assert_eq!(
        tolerance::response(Axis::Headward).limits[1],
        tolerance::EJECTION_RESPONSE
    );
}

/// What is looked at within steps follows the motion as well as the steps' own ends: a swing with its closed form,
/// cos t. The extension is of the fourth order, so an eighth of the step leaves well under a thousandth of the error.
#[test]
fn looks_within_steps_follow_the_motion() {
    let furthest_off = |longest_step: f64| {
        let accuracy = Accuracy {
            relative: 1.0,
            absolute: 1.0,
            longest_step,
            looks: 5,
            most_steps: 10_000,
        };
        let start = Point {
            t: 0.0,
            y: [1.0, 0.0],
        };
        let (mut off, mut looks) = (0.0_f64, 0);
        ode::integrate(
            |_, y: &[f64; 2]| [y[1], -y[0]],
            start,
            6.0,
            accuracy,
            |_| 1.0,
            |point| {
                off = off.max((point.y[0] - point.t.cos()).abs());
                looks += 1;
            },
        )
        .point()
        .unwrap();
        (off, looks)
    };
    let ((coarse, few), (fine, many)) = (furthest_off(0.8), furthest_off(0.1));
    assert!(many > 4 * few && few % 5 == 1 && many % 5 == 1);
    assert!(coarse < 2e-3 && fine < 1e-3 * coarse, "{coarse} {fine}");
}

/// A ball that is thrown up, and how often it is looked at.
struct Thrown {
    speed: f64,
    drag: f64,
    seen: Vec<f64>,
}

impl Motion<2> for Thrown {
    fn rate(&self, _: f64, y: &[f64; 2]) -> [f64; 2] {
        [y[1], -9.81 - self.drag * y[1] * y[1].abs()]
    }

    fn event(&self, at: &Point<2>) -> f64 {
        if at.y[1] > 0.0 { 1.0 } else { at.y[0] }
    }

    fn observe(&mut self, at: &Point<2>) {
        self.seen.push(at.y[0]);
    }
}

/// Motions that are integrated abreast come to the same bits as each alone, however many there are and however unlike.
#[test]
fn motions_abreast_are_as_each_alone() {
    let thrown = |i: usize| Thrown {
        speed: 1.0 + 7.0 * (i % 3) as f64,
        drag: 0.3 * i as f64,
        seen: Vec::new(),
    };
    let start = |ball: &Thrown| {
        let y = [0.0, ball.speed];
        (Point { t: 0.0, y }, 1.2)
    };
    let accuracy = Accuracy {
        looks: 2,
        ..ode::FINE
    };
    for count in 0..8 {
        let mut together: Vec<Thrown> = (0..count).map(thrown).collect();
        let ends = ode::integrate_all(&mut together, start, accuracy);
        assert_eq!(ends.len(), count);
        for (i, (ball, end)) in together.iter().zip(ends).enumerate() {
            let mut alone = [thrown(i)];
            let [expected] = ode::integrate_all(&mut alone, start, accuracy)[..] else {
                panic!("one end of one motion");
            };
            assert_eq!(end, expected);
            assert_eq!(ball.seen, alone[0].seen);
            assert!(matches!(end, End::Event(_) | End::Finished(_)));
        }
    }
}
