//! The drop itself: what the profile does to a body on a springy line, and what an emergency stop does.
//! Knows no limit.

use super::profile::{Asked, Profile};
use crate::{
    models::{
        self, GRAVITY,
        long_line::{Even, FOR_PEAKS, LongLine, Moment, Piece},
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

/// The extremes of a motion that is looked at wherever a taut line turns, and closely where it hangs slack.
struct Extremes {
    least_felt: f64,
    most_felt: f64,
    tension: f64,
    depth: f64,
    last: Option<Moment>,
}

impl Extremes {
    /// Of a motion that is taken to come at least so deep, and in which less is felt at some time than `least_felt`.
    fn beyond(depth: f64, least_felt: f64) -> Extremes {
        Extremes {
            least_felt,
            most_felt: 0.0,
            tension: 0.0,
            depth,
            last: None,
        }
    }

    fn see(&mut self, moment: Moment) {
        self.least_felt = self.least_felt.min(moment.felt);
        self.most_felt = self.most_felt.max(moment.felt);
        self.tension = self.tension.max(moment.head_tension);
        self.depth = self.depth.max(moment.depth);
        self.last = Some(moment);
    }

    /// Watches a load that stands still after a piece, unless nothing that may come of its swing is further out than
    /// what was.
    fn see_after(&mut self, line: &LongLine, after: Piece) -> Option<()> {
        let last = self.last?;
        let swing = line.still_to_come(&last);
        if swing.least_felt >= self.least_felt
            && swing.most_felt <= self.most_felt
            && swing.head_tension <= self.tension
            && swing.depth <= self.depth
        {
            return Some(());
        }
        line.follow_from(&last, &[after], FOR_PEAKS, |moment| self.see(moment))
    }
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
    let late = line.furthest_swing(stopped, setup.emergency, 0.0, stop_time);
    // One run from start to stop: on a short drop the bounce of the start is still there in the brake.
    let furthest = line.furthest_swing(end, brake.acceleration, brake.ramp, brake.hold);
    let mut planned = Extremes::beyond(at_rest + furthest, f64::INFINITY);
    let mut most_power = Peak::over(0.0);
    let mut before_brake = Vec::new();
    let mut see = |moment: Moment| {
        planned.see(moment);
        let braked = if line.runs {
            moment.head_tension
        } else {
            line.load * moment.felt
        };
        most_power.see(moment.time, braked * moment.pay_speed);
    };
    let [a, b, c, cruise, d, e, f, after] = pieces(setup, &profile, WATCHED);
    line.follow(setup.at_start(), &[a, b, c, cruise], FOR_PEAKS, |moment| {
        see(moment);
        before_brake.push(moment);
    })?;
    // Power has a peak of its own there.
    line.follow_from(before_brake.last()?, &[d, e, f], 0.5 * FOR_PEAKS, see)?;
    planned.see_after(line, after)?;
    // An emergency stop softer than the brake, hit as the brake should begin, may end deeper.
    let lowest = planned.depth;
    // That the line hangs slack after one is nothing new, so the least felt is not asked for.
    let deep = lowest.max(stopped + line.stretch(stopped) + late);
    let mut stops = Extremes::beyond(deep, f64::NEG_INFINITY);
    // Without a bounce a stop is hardest where the line is shortest at full speed, and heaviest at the end.
    for length in [setup.start_length + profile.start_distance, braking] {
        let even = Even {
            length,
            speed: profile.speed,
            acceleration: 0.0,
        };
        let [stop, after] = emergency(setup, profile.speed, length);
        line.follow(even, &[stop], FOR_PEAKS, |moment| stops.see(moment))?;
        stops.see_after(line, after)?;
    }
    // Hit while the drop still speeds up, or on a bounce, it is harder: there the line carries less before.
    for moment in worst(setup, &before_brake).into_iter().flatten() {
        let [stop, after] = emergency(setup, moment.pay_speed, moment.length);
        line.follow_from(moment, &[stop], FOR_PEAKS, |moment| stops.see(moment))?;
        stops.see_after(line, after)?;
    }
    Some(Run {
        profile,
        least_felt: planned.least_felt,
        most_felt: planned.most_felt,
        deepest: stops.depth,
        bounce: lowest - at_rest,
        peak_tension: planned.tension,
        peak_power: most_power.most(),
        emergency_felt: stops.most_felt,
        emergency_tension: stops.tension,
    })
}

/// The moments at which an emergency stop is felt most and pulls most, or the one that is both.
fn worst<'a>(setup: &Setup, moments: &'a [Moment]) -> [Option<&'a Moment>; 2] {
    let line = &setup.line;
    let (mut hardest, mut heaviest) = (None, None);
    let (mut felt_there, mut tension_there) = (0.0, 0.0);
    for moment in moments {
        let felt = expected_felt(setup, moment);
        let half = 0.5 * line.line_mass * moment.length;
        let tension = felt * (line.load + half) + GRAVITY * half;
        if felt >= felt_there {
            (felt_there, hardest) = (felt, Some(moment));
        }
        if tension >= tension_there {
            (tension_there, heaviest) = (tension, Some(moment));
        }
    }
    [hardest, heaviest.filter(|moment| Some(*moment) != hardest)]
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
    let frequency = line.frequency(moment.length);
    let asked = GRAVITY + setup.emergency;
    let (off, rate) = (
        moment.felt - asked,
        frequency * (moment.speed - moment.pay_speed),
    );
    let swing = setup.emergency + models::hypot(off, rate);
    // The angle of the swing by the time the stop is half over.
    let turned = 0.5 * frequency * moment.pay_speed;
    if turned < 0.5 * core::f64::consts::PI * setup.emergency {
        GRAVITY + swing * libm::sin(turned / setup.emergency)
    } else {
        GRAVITY + swing
    }
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
