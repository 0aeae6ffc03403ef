//! Strides on a counterweighted line, which are followed piece by piece in closed form: against Runge-Kutta, against
//! SciPy's implicit solver, and against what mechanics alone says of them.

use crate::common::{GRAVITY, Generator, cases, close, number};
use core::f64::consts::PI;
use gagwright_mechanics::models::{
    ode::{Accuracy, FINE, Point, integrate},
    peak::Crest,
    stride::{Bodies, Push, State, Stride},
    unweighting::{Assist, Gait},
};

/// As many looks at a swing as strides are looked at with, and as they are only followed with.
const LOOKS: [f64; 2] = [24.0, 10.0];

fn bodies(assist: &Assist) -> Bodies {
    let (mass, inertia) = (assist.mass, assist.inertia());
    let swinging = mass * inertia / (mass + inertia);
    Bodies {
        mass,
        inertia,
        pull: assist.pull(),
        rubbing: assist.pull() * assist.loss,
        stiffness: assist.stiffness,
        damping: 2.0 * assist.damping * f64::sqrt(assist.stiffness * swinging),
    }
}

fn push(assist: &Assist, gait: Gait) -> Push {
    Push {
        peak: assist.ground_peak(gait),
        contact: gait.contact,
        flight: gait.step - gait.contact,
    }
}

/// With half a flight's fall, as a stiff line would have it.
fn first(assist: &Assist, gait: Gait) -> State {
    let speed = 0.5 * assist.fall() * (gait.step - gait.contact);
    let stretch = assist.falling_tension() / assist.stiffness;
    [stretch, speed, 0.0, speed]
}

/// Drift and its speed are let go at each touch.
fn next(end: State, gait: Gait) -> State {
    let drift = end[2] / gait.step;
    [end[0] - end[2], end[1] - drift, 0.0, end[3] - drift]
}

/// A rig and a gait anywhere in the technique's ranges with which a performer runs.
fn anywhere(generator: &mut Generator) -> (Assist, Gait) {
    loop {
        let mut between =
            |least: f64, most: f64| least * f64::powf(most / least, generator.share());
        let assist = Assist {
            mass: between(15.0, 200.0),
            weight: between(1.0, 600.0),
            ratio: between(1.0, 6.0),
            pulleys: between(0.05, 20.0),
            loss: between(1.0, 1.4) - 1.0,
            stiffness: between(200.0, 100_000.0),
            damping: between(0.01, 0.6),
        };
        let gait = Gait {
            step: between(0.15, 0.8),
            contact: between(0.3, 1.5) / between(0.5, 14.0),
        };
        if assist.left() > 0.0 && gait.contact < gait.step {
            return (assist, gait);
        }
    }
}

/// The same step without rubbing, by Runge-Kutta, which sees the slack line as a kink only.
fn integrated(bodies: &Bodies, push: Push, start: State, most: &mut Crest) -> State {
    let all = |y: &State| bodies.stiffness * (y[0] - y[2]) + bodies.damping * (y[1] - y[3]);
    let mut y = start;
    for (from, to, peak) in [
        (0.0, push.contact, push.peak),
        (push.contact, push.contact + push.flight, 0.0),
    ] {
        let rate = |t: f64, y: &State| {
            let tension = all(y).max(0.0);
            let ground = peak * f64::sin(PI * t / push.contact);
            [
                y[1],
                GRAVITY - (tension + ground) / bodies.mass,
                y[3],
                (tension - bodies.pull) / bodies.inertia,
            ]
        };
        let accuracy = Accuracy {
            longest_step: (to - from) / 500.0,
            ..FINE
        };
        let end = integrate(
            rate,
            Point { t: from, y },
            to,
            accuracy,
            |_| 1.0,
            |at| {
                let [speed, down, running, out] = rate(at.t, &at.y);
                let change = bodies.stiffness * (speed - running) + bodies.damping * (down - out);
                if all(&at.y) > 0.0 {
                    most.see(at.t, all(&at.y), change);
                } else {
                    most.see(at.t, 0.0, 0.0);
                }
            },
        );
        y = end.point().unwrap().y;
    }
    y
}

#[test]
fn pieces_agree_with_runge_kutta() {
    let mut generator = Generator::new(7);
    let mut slack = 0;
    for _ in 0..150 {
        let (assist, gait) = anywhere(&mut generator);
        let bodies = Bodies {
            rubbing: 0.0,
            ..bodies(&assist)
        };
        let push = push(&assist, gait);
        let mut start = first(&assist, gait);
        for _ in 0..4 {
            let mut expected_most = Crest::new();
            let expected = integrated(&bodies, push, start, &mut expected_most);
            // Against the way and the speed that a step without a line would gain.
            let speed = expected[3].abs().max(GRAVITY * gait.step);
            for looks in LOOKS {
                let mut most = Crest::new();
                let stride = Stride::new(bodies, push, looks).unwrap();
                let found = stride
                    .follow(start, |at| {
                        most.see(at.time, at.tension[0], at.tension[1]);
                        slack += usize::from(at.tension[0] == 0.0);
                    })
                    .unwrap();
                for (found, expected) in found.iter().zip(expected) {
                    assert!(
                        (found - expected).abs() < 2e-6 * speed,
                        "{assist:?} {gait:?} {found} {expected}"
                    );
                }
                // A top between two looks is drawn, but for a low one right after a look at which the pull falls.
                let close_to = if looks > 20.0 { 3e-4 } else { 1e-3 };
                let expected = expected_most.most();
                assert!(
                    (most.most() - expected).abs() <= close_to * expected,
                    "{assist:?} {gait:?} {} {expected}",
                    most.most()
                );
            }
            start = next(expected, gait);
        }
    }
    assert!(slack > 1000);
}

#[test]
fn what_lasts_agrees_with_radau() {
    for (given, found) in cases(include_str!("../fixtures/running.json"), "bounce") {
        let assist = Assist {
            mass: number(&given, "mass"),
            weight: number(&given, "weight"),
            ratio: number(&given, "ratio"),
            pulleys: number(&given, "pulleys"),
            loss: number(&given, "loss"),
            stiffness: number(&given, "stiffness"),
            damping: number(&given, "damping"),
        };
        let gait = Gait {
            step: number(&given, "step"),
            contact: number(&given, "contact"),
        };
        let [fine, coarse] =
            LOOKS.map(|looks| Stride::new(bodies(&assist), push(&assist, gait), looks).unwrap());
        let mut start = first(&assist, gait);
        for _ in 0..39 {
            start = next(coarse.follow(start, |_| {}).unwrap(), gait);
        }
        let [mut most, mut least, mut lowest, mut highest] = [Crest::new(); 4];
        fine.follow(start, |at| {
            most.see(at.time, at.tension[0], at.tension[1]);
            least.see(at.time, -at.tension[0], -at.tension[1]);
            lowest.see(at.time, at.state[0], at.state[1]);
            highest.see(at.time, -at.state[0], -at.state[1]);
        })
        .unwrap();
        close(most.most(), number(&found, "most"), 2e-5);
        close(
            lowest.most() + highest.most(),
            number(&found, "height"),
            2e-5,
        );
        let expected = number(&found, "least");
        assert!((-least.most() - expected).abs() < 2e-5 * most.most());
    }
}

#[test]
fn rubbing_holds_what_pulls_less() {
    // Dry friction (Coulomb): a counterweight at rest is held until the line pulls more or less than its steady pull
    // by all that rubs. Below that the performer alone swings on the line, as on a fixed one.
    let held = Bodies {
        mass: 65.0,
        inertia: 42.0,
        pull: 392.0,
        rubbing: 157.0,
        stiffness: 5000.0,
        damping: 250.0,
    };
    let push = Push {
        peak: 770.0,
        contact: 0.12,
        flight: 0.12,
    };
    let start = [392.0 / 5000.0, 0.2, 0.0, 0.0];
    let mut y = [start[0], start[1]];
    for (from, to, peak) in [(0.0, 0.12, push.peak), (0.12, 0.24, 0.0)] {
        let rate = |t: f64, y: &[f64; 2]| {
            let tension = 5000.0 * y[0] + 250.0 * y[1];
            let ground = peak * f64::sin(PI * t / 0.12);
            [y[1], GRAVITY - (tension + ground) / 65.0]
        };
        let end = integrate(rate, Point { t: from, y }, to, FINE, |_| 1.0, |_| {});
        y = end.point().unwrap().y;
    }
    let (mut most, mut least) = (0.0_f64, f64::INFINITY);
    let end = Stride::new(held, push, 24.0)
        .unwrap()
        .follow(start, |at| {
            assert_eq!(at.state[2..], [0.0, 0.0]);
            most = most.max(at.tension[0]);
            least = least.min(at.tension[0]);
        })
        .unwrap();
    close(end[0], y[0], 1e-8);
    assert!((end[1] - y[1]).abs() < 1e-8);
    assert!(least > held.pull - held.rubbing && most < held.pull + held.rubbing);
    // With less to hold it, it begins to run at the very pull that is too much.
    let slipping = Bodies {
        rubbing: 0.9 * (most - held.pull),
        ..held
    };
    let (mut last, mut moves) = (0.0, false);
    Stride::new(slipping, push, 24.0)
        .unwrap()
        .follow(start, |at| {
            moves |= at.state[3] != 0.0;
            if !moves {
                last = at.tension[0];
            }
        })
        .unwrap();
    assert!(moves);
    let over = (last - slipping.pull).abs();
    close(over, slipping.rubbing, 1e-6);
}

#[test]
fn a_slack_line_lets_both_go() {
    // A throw: the line is slack for the whole of the step, and the counterweight falls back as what rubs slows it and
    // then lets it (Newton and Coulomb).
    let bodies = Bodies {
        mass: 70.0,
        inertia: 20.0,
        pull: 150.0,
        rubbing: 30.0,
        stiffness: 9000.0,
        damping: 80.0,
    };
    let push = Push {
        peak: 2000.0,
        contact: 0.1,
        flight: 0.2,
    };
    let end = Stride::new(bodies, push, 24.0)
        .unwrap()
        .follow([-5.0, 0.3, 0.0, 0.9], |at| {
            assert_eq!(at.tension, [0.0, 0.0]);
        })
        .unwrap();
    // Slowed by 180 N over 20 kg it stands after 0.1 s and has run 45 mm; then 120 N draw it back for 0.2 s.
    close(end[3], -6.0 * 0.2, 1e-9);
    close(end[2], 0.045 - 0.5 * 6.0 * 0.04, 1e-9);
    // Half a sine of 0.1 s gives 2 / pi of its peak, and its middle is the middle of the contact.
    let given = 2000.0 * 2.0 / PI * 0.1 / 70.0;
    close(end[1], 0.3 + GRAVITY * 0.3 - given, 1e-9);
    close(
        end[0],
        -5.0 + 0.3 * 0.3 + 0.5 * GRAVITY * 0.09 - given * 0.25,
        1e-9,
    );
}

#[test]
fn what_rubs_and_damps_is_what_is_lost() {
    // Energy over a step of a taut line: height and speed of both and the stretch, less what the ground takes, what
    // damps and what rubs, both of which only take. Looked at so often that sums stand for integrals.
    let assist = Assist {
        mass: 72.0,
        weight: 108.0,
        ratio: 3.0,
        pulleys: 0.5,
        loss: 0.1,
        stiffness: 15_000.0,
        damping: 0.1,
    };
    let gait = Gait {
        step: 0.24,
        contact: 0.0888,
    };
    let bodies = bodies(&assist);
    let energy = |[down, speed, run, running]: State| {
        0.5 * (bodies.mass * speed * speed + bodies.inertia * running * running)
            + 0.5 * bodies.stiffness * (down - run) * (down - run)
            - bodies.mass * GRAVITY * down
            + bodies.pull * run
    };
    let start = first(&assist, gait);
    let (mut lost, mut rubbed) = (0.0, 0.0);
    let mut last: Option<(f64, [f64; 2])> = None;
    let end = Stride::new(bodies, push(&assist, gait), 20_000.0)
        .unwrap()
        .follow(start, |at| {
            assert!(at.tension[0] > 0.0);
            let [_, speed, _, running] = at.state;
            let rubs = bodies.rubbing * running.abs();
            let damps = bodies.damping * (speed - running) * (speed - running);
            let takes = [at.ground * speed + damps + rubs, rubs];
            if let Some((time, before)) = last {
                lost += 0.5 * (takes[0] + before[0]) * (at.time - time);
                rubbed += 0.5 * (takes[1] + before[1]) * (at.time - time);
            }
            last = Some((at.time, takes));
        })
        .unwrap();
    assert!(rubbed > 1.0, "{rubbed}");
    let gone = energy(start) - energy(end);
    assert!((gone - lost).abs() < 1e-5 * rubbed, "{gone} {lost}");
}

#[test]
fn looks_decide_nothing() {
    let mut generator = Generator::new(3);
    for _ in 0..400 {
        let (assist, gait) = anywhere(&mut generator);
        let [few, many] = [LOOKS[1], 200.0]
            .map(|looks| Stride::new(bodies(&assist), push(&assist, gait), looks).unwrap());
        let mut start = first(&assist, gait);
        for _ in 0..4 {
            let [few, many] = [&few, &many].map(|stride| stride.follow(start, |_| {}).unwrap());
            let speed = many[3].abs().max(GRAVITY * gait.step);
            for (few, many) in few.iter().zip(many) {
                assert!(
                    (few - many).abs() < 1e-6 * speed,
                    "{assist:?} {gait:?} {few} {many}"
                );
            }
            start = next(many, gait);
        }
    }
}

#[test]
fn every_run_is_followed() {
    let mut generator = Generator::new(11);
    for _ in 0..1500 {
        let (assist, gait) = anywhere(&mut generator);
        let mut before = 0.0;
        let bounce = assist
            .bounce(gait, |at| {
                assert!(at.time >= before && at.tension >= 0.0 && at.ground >= 0.0);
                before = at.time;
            })
            .unwrap_or_else(|| panic!("{assist:?} {gait:?}"));
        close(before, gait.step, 1e-12);
        assert!(bounce.most.is_finite() && bounce.height.is_finite());
        assert!(0.0 <= bounce.least && bounce.least <= bounce.most && bounce.height >= 0.0);
    }
    // A line that damps too much to swing is none of these.
    let (assist, gait) = anywhere(&mut generator);
    let stiff = Assist {
        damping: 1.0,
        ..assist
    };
    assert_eq!(stiff.bounce(gait, |_| {}), None);
    // What is held on the very edge of what rubs is let go once.
    let edge = Assist {
        mass: 39.38625220646636,
        weight: 65.50662727259143,
        ratio: 4.886903323643185,
        pulleys: 0.10306390679051665,
        loss: 0.2493236093164859,
        stiffness: 799.2119103445411,
        damping: 0.5731291568785193,
    };
    let gait = Gait {
        step: 0.6419029113565615,
        contact: 0.023540262352583514,
    };
    assert!(edge.bounce(gait, |_| {}).is_some());
}
