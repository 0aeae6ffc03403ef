//! The drop itself: what the profile does to a body on a springy line, and what an emergency stop does.
//! Knows no limit.

use super::profile::{Asked, Profile};
use crate::{
    models::{
        GRAVITY,
        long_line::{Even, LongLine, Moment, Piece},
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
    /// Deepest below the head, m, whichever way the bounces of the stop meet.
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
    let bounce = line.furthest_swing(end, brake.acceleration, brake.ramp, brake.hold);
    let late = line.furthest_swing(stopped, setup.emergency, 0.0, stop_time);
    let planned = end + line.stretch(end) + bounce;
    let mut found = Run {
        profile,
        least_felt: f64::INFINITY,
        most_felt: 0.0,
        // An emergency stop softer than the brake, hit as the brake should begin, may end deeper.
        deepest: planned.max(stopped + line.stretch(stopped) + late),
        bounce,
        peak_tension: 0.0,
        peak_power: 0.0,
        emergency_felt: 0.0,
        emergency_tension: 0.0,
    };
    let mut watch = |moment: Moment| {
        found.least_felt = found.least_felt.min(moment.felt);
        found.most_felt = found.most_felt.max(moment.felt);
        found.peak_tension = found.peak_tension.max(moment.head_tension);
        let braked = if line.runs {
            moment.head_tension
        } else {
            line.load * moment.felt
        };
        found.peak_power = found.peak_power.max(braked * moment.pay_speed);
    };
    let at = |length, speed, acceleration| Even {
        length,
        speed,
        acceleration,
    };
    let after = |length: f64| Piece {
        duration: WATCHED * line.period(length),
        from: 0.0,
        to: 0.0,
    };
    // Only where something changes does the load bounce, so the even parts between are left out.
    let [bring_in, hold, take_out] = profile.start.pieces(1.0);
    if !line.follow(
        at(setup.start_length, 0.0, 0.0),
        &[bring_in, hold],
        &mut watch,
    ) {
        return None;
    }
    let at_speed = setup.start_length + profile.start_distance;
    let (ramp, full) = (profile.start.ramp, profile.start.acceleration);
    let before = at_speed - ramp * (profile.speed - full * ramp / 6.0);
    let even = at(before, profile.speed - 0.5 * full * ramp, full);
    let mut settling = after(at_speed);
    settling.duration = settling.duration.min(profile.cruise_time());
    if !line.follow(even, &[take_out, settling], &mut watch) {
        return None;
    }
    let [bring_in, hold, take_out] = profile.brake.pieces(-1.0);
    let pieces = [bring_in, hold, take_out, after(setup.end_length)];
    if !line.follow(at(braking, profile.speed, 0.0), &pieces, &mut watch) {
        return None;
    }
    // An emergency stop is hardest where the line is shortest at full speed, and heaviest at the end.
    for length in [at_speed, braking] {
        let stop = emergency(setup, &profile, length);
        let done = line.follow(at(length, profile.speed, 0.0), &stop, |moment| {
            found.emergency_felt = found.emergency_felt.max(moment.felt);
            found.emergency_tension = found.emergency_tension.max(moment.head_tension);
        });
        if !done {
            return None;
        }
    }
    Some(found)
}

/// The pieces of an emergency stop at a length.
pub(super) fn emergency(setup: &Setup, profile: &Profile, length: f64) -> [Piece; 2] {
    let duration = profile.speed / setup.emergency;
    let stopped = length + 0.5 * profile.speed * duration;
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
