//! The drop itself: what the profile does to a body on a springy line, and what an emergency stop does.
//! Knows no limit.

use super::profile::{Asked, Profile};
use crate::{
    models::{
        self, GRAVITY,
        long_line::{Even, LongLine, Moment, Piece},
        peak::Peak,
    },
    reading::Values,
};

/// Periods watched after a change: the first swing is the furthest, and a little more shows the second.
const WATCHED: f64 = 1.25;

/// Everything the run depends on, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Setup {
    pub line: LongLine,
    pub start_length: f64,
    pub end_length: f64,
    pub asked: Asked,
    pub emergency: f64,
}

impl Setup {
    pub(super) fn of(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        let (start_length, end_length) = (number("start_length")?, number("line_out")?);
        Some(Setup {
            line: LongLine {
                load: load(values)?,
                line_mass: number("line_mass")? / 100.0,
                modulus: number("line_modulus")?,
                damping: number("line_damping")?,
                runs: values.choice("brake_place")? == "head",
            },
            start_length,
            end_length,
            asked: Asked {
                travel: end_length - start_length,
                speed: number("top_speed")?,
                start: number("start_acceleration")?,
                brake: number("brake_deceleration")?,
                ramp: number("ramp_time")?,
            },
            emergency: number("emergency_stop")?,
        })
    }

    pub(super) fn profile(&self) -> Option<Profile> {
        Profile::of(&self.asked)
    }

    pub(super) fn at_start(&self) -> Even {
        Even {
            length: self.start_length,
            speed: 0.0,
            acceleration: 0.0,
        }
    }
}

/// Mass of one or two people, kg.
pub(super) fn load(values: &Values) -> Option<f64> {
    let first = values.number("performer_mass")?;
    match values.choice("people")? {
        "two" => Some(first + values.number("second_mass")?),
        _ => Some(first),
    }
}

/// What a run came to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Run {
    pub profile: Profile,
    pub least_felt: f64,
    pub most_felt: f64,
    /// Deepest below the head, m, whichever way the bounces meet.
    pub deepest: f64,
    /// How far that may be below rest, m.
    pub bounce: f64,
    pub peak_tension: f64,
    /// Most heat into the brake at once, W.
    pub peak_power: f64,
    pub emergency_felt: f64,
    pub emergency_tension: f64,
}

/// Runs the drop. None where the travel or the solver gives none.
pub(super) fn run(setup: &Setup) -> Option<Run> {
    let profile = setup.profile()?;
    let line = &setup.line;
    let (end, brake) = (setup.end_length, &profile.brake);
    let braking = end - profile.brake_distance;
    let stop_time = profile.speed / setup.emergency;
    let stopped = braking + 0.5 * profile.speed * stop_time;
    let at_rest = end + line.stretch(end);
    let planned = at_rest + line.furthest_swing(end, brake.acceleration, brake.ramp, brake.hold);
    let late = line.furthest_swing(stopped, setup.emergency, 0.0, stop_time);
    let mut found = Run {
        profile,
        least_felt: f64::INFINITY,
        most_felt: 0.0,
        deepest: 0.0,
        bounce: 0.0,
        peak_tension: 0.0,
        peak_power: 0.0,
        emergency_felt: 0.0,
        emergency_tension: 0.0,
    };
    // One run from start to stop: on a short drop the bounce of the start is still there in the brake.
    let mut lowest = Peak::over(planned);
    let [mut most_felt, mut most_tension, mut most_power] = [Peak::over(0.0); 3];
    let mut floating = Peak::over(f64::NEG_INFINITY);
    let mut before_brake = Vec::new();
    let brakes_at = profile.time() - brake.time();
    let done = line.follow(
        setup.at_start(),
        &pieces(setup, &profile, WATCHED),
        |moment| {
            let time = moment.time;
            floating.see(time, -moment.felt);
            most_felt.see(time, moment.felt);
            most_tension.see(time, moment.head_tension);
            let braked = if line.runs {
                moment.head_tension
            } else {
                line.load * moment.felt
            };
            most_power.see(time, braked * moment.pay_speed);
            lowest.see(time, moment.depth);
            if moment.time <= brakes_at {
                before_brake.push(moment);
            }
        },
    );
    if !done {
        return None;
    }
    found.least_felt = -floating.most();
    found.most_felt = most_felt.most();
    found.peak_tension = most_tension.most();
    found.peak_power = most_power.most();
    let lowest = lowest.most();
    found.bounce = lowest - at_rest;
    // An emergency stop softer than the brake, hit as the brake should begin, may end deeper.
    let mut deepest = Peak::over(lowest.max(stopped + line.stretch(stopped) + late));
    let [mut hardest_felt, mut heaviest_tension] = [Peak::over(0.0); 2];
    let mut watch = |moment: Moment| {
        hardest_felt.see(moment.time, moment.felt);
        heaviest_tension.see(moment.time, moment.head_tension);
        deepest.see(moment.time, moment.depth);
    };
    // Without a bounce a stop is hardest where the line is shortest at full speed, and heaviest at the end.
    for length in [setup.start_length + profile.start_distance, braking] {
        let even = Even {
            length,
            speed: profile.speed,
            acceleration: 0.0,
        };
        if !line.follow(even, &emergency(setup, profile.speed, length), &mut watch) {
            return None;
        }
    }
    // Hit while the drop still speeds up, or on a bounce, it is harder: there the line carries less before.
    let (mut hardest, mut heaviest) = (None, None);
    let (mut felt_there, mut tension_there) = (0.0, 0.0);
    for moment in before_brake {
        let felt = expected_felt(setup, &moment);
        let half = 0.5 * line.line_mass * moment.length;
        let tension = felt * (line.load + half) + GRAVITY * half;
        if felt >= felt_there {
            (felt_there, hardest) = (felt, Some(moment));
        }
        if tension >= tension_there {
            (tension_there, heaviest) = (tension, Some(moment));
        }
    }
    let other = heaviest.filter(|moment| Some(*moment) != hardest);
    for moment in hardest.into_iter().chain(other) {
        let stop = emergency(setup, moment.pay_speed, moment.length);
        if !line.follow_from(&moment, &stop, &mut watch) {
            return None;
        }
    }
    found.emergency_felt = hardest_felt.most();
    found.emergency_tension = heaviest_tension.most();
    found.deepest = deepest.most();
    Some(found)
}

/// The whole drop in pieces, and so many periods of bounce after it.
pub(super) fn pieces(setup: &Setup, profile: &Profile, periods: f64) -> [Piece; 8] {
    let even = |duration| Piece {
        duration,
        from: 0.0,
        to: 0.0,
    };
    let [a, b, c] = profile.start.pieces(1.0);
    let [d, e, f] = profile.brake.pieces(-1.0);
    let after = even(periods * setup.line.period(setup.end_length));
    [a, b, c, even(profile.cruise_time()), d, e, f, after]
}

/// About what an emergency stop hit at a moment makes the body feel, to choose where to look: the swing about
/// the stretch that the stop asks for, undamped, and less of it where the stop is over within half a swing.
fn expected_felt(setup: &Setup, moment: &Moment) -> f64 {
    let line = &setup.line;
    let frequency = 2.0 * core::f64::consts::PI / line.period(moment.length);
    let asked = GRAVITY + setup.emergency;
    let (off, rate) = (
        moment.felt - asked,
        frequency * (moment.speed - moment.pay_speed),
    );
    let turned = 0.5 * frequency * moment.pay_speed / setup.emergency;
    let share = if turned < 0.5 * core::f64::consts::PI {
        libm::sin(turned)
    } else {
        1.0
    };
    GRAVITY + share * (setup.emergency + models::hypot(off, rate))
}

/// The pieces of an emergency stop at a speed and length.
pub(super) fn emergency(setup: &Setup, speed: f64, length: f64) -> [Piece; 2] {
    let duration = speed / setup.emergency;
    let stopped = length + 0.5 * speed * duration;
    [
        Piece {
            duration,
            from: -setup.emergency,
            to: -setup.emergency,
        },
        Piece {
            duration: WATCHED * setup.line.period(stopped),
            from: 0.0,
            to: 0.0,
        },
    ]
}

/// Heat of one drop, J: what the tension at the brake gives out over the travel, drag left out.
pub(super) fn brake_energy(setup: &Setup) -> f64 {
    let (from, to) = (setup.start_length, setup.end_length);
    let line = if setup.line.runs {
        0.5 * setup.line.line_mass * (to * to - from * from)
    } else {
        0.0
    };
    GRAVITY * (setup.line.load * setup.asked.travel + line)
}

/// Temperature of the brake after the last of `drops` alike, K: each adds `rise`, and between them what
/// is over the air's temperature falls by Newton's law of cooling with the time constant `cooling`.
pub(super) fn last_temperature(air: f64, rise: f64, drops: f64, cycle: f64, cooling: f64) -> f64 {
    // The sum of a geometric row, exact also where next to nothing is lost between drops.
    air + rise * libm::expm1(-drops * cycle / cooling) / libm::expm1(-cycle / cooling)
}
