//! The run past an effect and the firing as times: where the runner is, and how likely inside the stand-off.
//! Knows no check and no limit, and nothing of what makes the effect.

use std::sync::LazyLock;

use crate::{
    models::{
        self,
        spread::{normal_inside, normal_inside_each},
        sprint::{Passing, Sprint, chord},
    },
    reading::Values,
};

/// Points to each side of the middle of the speeds, and how many deviations they reach.
const HALF_POINTS: i32 = 36;
const REACH: f64 = 6.0;

/// The points and their weights: every fourth, those half way between, and the rest. For a smooth sum each round
/// doubles its good digits.
static SPEEDS: LazyLock<[Vec<(f64, f64)>; 3]> = LazyLock::new(|| {
    let mut rounds = [const { Vec::new() }; 3];
    for i in -HALF_POINTS..=HALF_POINTS {
        let x = REACH * f64::from(i) / f64::from(HALF_POINTS);
        let round = match i.rem_euclid(4) {
            0 => 0,
            2 => 1,
            _ => 2,
        };
        rounds[round].push((x, libm::exp(-0.5 * x * x)));
    }
    rounds
});

/// Where the second round leaves the sum this near to the first, the third would change no digit that counts.
const NEAR: f64 = 1e-7;

/// A chance so far below the smallest that is claimed counts as none.
const NOTHING: f64 = 1e-13;

/// Nobody runs slower than this, m/s: a slower draw would be a fall, which is not in the spread.
const SLOWEST: f64 = 0.3;

/// Shown where a run never comes into the stand-off, s.
pub(super) const LONGEST: f64 = 60.0;

/// What the firing waits for.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Cue {
    /// A time after the runner's cue.
    Clock(f64),
    /// The runner passing a place on the run.
    Mark(f64),
}

/// Everything about the run and the firing. The effect is at the origin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scene {
    start: [f64; 2],
    direction: [f64; 2],
    pub sprint: Sprint,
    speed_deviation: f64,
    reaction: f64,
    reaction_deviation: f64,
    cue: Cue,
    /// From the operator's decision to the effect, s.
    pub decision_delay: f64,
    fire_delay: f64,
    fire_deviation: f64,
}

impl Scene {
    pub fn read(values: &Values) -> Option<Scene> {
        let number = |name| values.number(name);
        let start = [number("start_along")?, number("start_across")?];
        let end = [number("end_along")?, number("end_across")?];
        let (along, across) = (end[0] - start[0], end[1] - start[1]);
        let length = models::hypot(along, across);
        let direction = if length > 0.0 {
            [along / length, across / length]
        } else {
            [1.0, 0.0]
        };
        let (press, delay) = (number("operator_reaction")?, number("firing_delay")?);
        let (cue, fire_delay) = match values.choice("firing_cue")? {
            "clock" => (Cue::Clock(number("fire_after")?), delay),
            _ => (Cue::Mark(number("mark_distance")?), press + delay),
        };
        Some(Scene {
            start,
            direction,
            sprint: Sprint {
                top_speed: number("run_speed")?,
                rise_time: number("rise_time")?,
                length,
            },
            speed_deviation: number("speed_deviation")?,
            reaction: number("start_reaction")?,
            reaction_deviation: number("reaction_deviation")?,
            cue,
            decision_delay: press + delay,
            fire_delay,
            fire_deviation: number("firing_deviation")?,
        })
    }

    /// Time of the effect after the runner sets off; none when the mark is never passed.
    fn fired(&self, sprint: &Sprint) -> Option<f64> {
        self.fired_after(sprint, &mut None)
    }

    /// The same after one for a run much like it.
    fn fired_after(&self, sprint: &Sprint, last: &mut Option<Passing>) -> Option<f64> {
        match self.cue {
            Cue::Clock(after) => Some(after + self.fire_delay - self.reaction),
            Cue::Mark(place) => {
                (place <= sprint.length).then(|| sprint.passing(place, last) + self.fire_delay)
            }
        }
    }

    /// The same at the middle of everything, after setting off and after the cue.
    pub fn fire_time(&self) -> Option<f64> {
        self.fired(&self.sprint)
    }

    pub fn after_cue(&self, time: f64) -> f64 {
        time + self.reaction
    }

    /// How far the firing varies against the runner's setting off. A mark takes the runner's own reaction out.
    fn deviation(&self) -> f64 {
        match self.cue {
            Cue::Clock(_) => models::hypot(self.fire_deviation, self.reaction_deviation),
            Cue::Mark(_) => self.fire_deviation,
        }
    }

    /// Distance from the effect at a place on the run.
    pub fn distance(&self, place: f64) -> f64 {
        models::hypot(
            self.start[0] + self.direction[0] * place,
            self.start[1] + self.direction[1] * place,
        )
    }

    /// Least distance from the effect between two places on the run: exact, because the run is straight.
    pub fn nearest(&self, from: f64, to: f64) -> f64 {
        let foot = -(self.start[0] * self.direction[0] + self.start[1] * self.direction[1]);
        self.distance(foot.max(from).min(to))
    }

    /// Times after setting off between which the runner is inside a radius.
    pub fn inside(&self, radius: f64) -> Option<(f64, f64)> {
        self.sprint
            .times_between(chord(self.start, self.direction, radius)?)
    }

    /// Time from the runner's leaving a radius to the effect; negative when it goes before. A runner who has
    /// yet to come in has nothing in hand: debris may still be falling then.
    pub fn time_in_hand(&self, radius: f64) -> Option<f64> {
        let fired = self.fire_time()?;
        Some(match self.inside(radius) {
            None => LONGEST,
            Some((_, to)) => (fired - to).clamp(-LONGEST, LONGEST),
        })
    }

    /// One deviation of the runner's place along the run when the effect goes.
    pub fn place_deviation(&self) -> Option<f64> {
        let fired = self.fire_time()?;
        let timing = self.sprint.speed(fired) * self.deviation();
        let at = |sign: f64| {
            let sprint = self.at_speed(sign);
            Some(sprint.place(self.fired(&sprint)?))
        };
        let speed = 0.5 * (at(1.0)? - at(-1.0)?);
        Some(models::hypot(timing, speed))
    }

    fn at_speed(&self, deviations: f64) -> Sprint {
        Sprint {
            top_speed: (self.sprint.top_speed + deviations * self.speed_deviation).max(SLOWEST),
            ..self.sprint
        }
    }

    /// Chance that the runner is inside a radius when the effect goes as planned, and that the runner is
    /// inside at any moment from then until `late` after it.
    pub fn chances(&self, radius: f64, late: f64) -> Option<[f64; 2]> {
        self.over_speeds(radius, |from, to, fired, deviation| {
            normal_inside_each([from, from - late], to, fired, deviation)
        })
    }

    /// Chances that the runner is inside a radius when the effect goes so much later than planned.
    pub fn chances_later<const N: usize>(&self, radius: f64, later: [f64; N]) -> Option<[f64; N]> {
        self.over_speeds(radius, |from, to, fired, deviation| {
            later.map(|after| normal_inside(from, to, fired + after, deviation))
        })
    }

    /// Chances over how the speed varies. At a given speed, from the times of coming in, of leaving, of the
    /// effect and its deviation, each is normal in time and exact; speeds are summed by the trapezium rule, with as
    /// many points as it takes.
    fn over_speeds<const N: usize>(
        &self,
        radius: f64,
        chances: impl Fn(f64, f64, f64, f64) -> [f64; N],
    ) -> Option<[f64; N]> {
        self.fire_time()?;
        let Some(places) = chord(self.start, self.direction, radius) else {
            return Some([0.0; N]);
        };
        let deviation = self.deviation();
        let mut passed = [None; 2];
        let mut marked = None;
        let mut at = |deviations: f64| {
            let sprint = self.at_speed(deviations);
            let (Some((from, to)), Some(fired)) = (
                sprint.passing_between(places, &mut passed),
                self.fired_after(&sprint, &mut marked),
            ) else {
                return [0.0; N];
            };
            chances(from, to, fired, deviation)
        };
        if self.speed_deviation <= 0.0 {
            return Some(at(0.0));
        }
        let (mut sums, mut weights) = ([0.0; N], 0.0);
        let mut before = None;
        for round in &*SPEEDS {
            for (x, weight) in round {
                for (sum, found) in sums.iter_mut().zip(at(*x)) {
                    *sum += weight * found;
                }
                weights += weight;
            }
            let means = sums.map(|sum| sum / weights);
            let near =
                |(one, other): (&f64, &f64)| (one - other).abs() <= NEAR * one.abs() + NOTHING;
            if before.is_some_and(|before: [f64; N]| means.iter().zip(&before).all(near)) {
                break;
            }
            before = Some(means);
        }
        Some(sums.map(|sum| (sum / weights).clamp(0.0, 1.0)))
    }
}

/// Ground that smoke drifts over: a wedge from the effect, downwind.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plume {
    pub towards: f64,
    pub half_angle: f64,
    pub reach: f64,
}

impl Plume {
    pub fn read(values: &Values) -> Option<Plume> {
        Some(Plume {
            towards: values.number("wind_towards")?,
            half_angle: values.number("plume_half_angle")?,
            reach: values.number("wind_speed")? * values.number("smoke_time")?,
        })
    }

    /// From a place to the nearest smoke; 0 inside it.
    pub fn clearance(&self, place: [f64; 2]) -> f64 {
        let far = models::hypot(place[0], place[1]);
        let (sin, cos) = libm::sincos(self.towards);
        let (along, across) = (
            place[0] * cos + place[1] * sin,
            (place[1] * cos - place[0] * sin).abs(),
        );
        let off = libm::atan2(across, along) - self.half_angle;
        if off <= 0.0 {
            return (far - self.reach).max(0.0);
        }
        // To the wedge's edge, which is a straight piece as long as the reach.
        let along_edge = (far * libm::cos(off)).clamp(0.0, self.reach);
        let edge = [far * libm::cos(off) - along_edge, far * libm::sin(off)];
        models::hypot(edge[0], edge[1])
    }
}
