//! One run of the car, from the brake mark to rest, and how runs scatter.

use std::sync::LazyLock;

use crate::{
    evaluation::Memory,
    models::{
        self,
        slide::{self, Moment, Rest, Slide},
        spread::{normal_below, normal_below_near, normal_density},
    },
    reading::Values,
};

/// What the car runs on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Surface {
    Dry,
    Wet,
}

impl Surface {
    pub fn parameter(self) -> &'static str {
        match self {
            Surface::Dry => "friction_dry",
            Surface::Wet => "friction_wet",
        }
    }
}

/// The surface that the shot is planned on.
pub(super) fn surface(values: &Values) -> Option<Surface> {
    Some(match values.choice("surface_state")? {
        "dry" => Surface::Dry,
        _ => Surface::Wet,
    })
}

/// All that a run depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Setup {
    approach: f64,
    late: f64,
    share: f64,
    slide: Slide,
}

/// A car yaws as if its mass sat this share of the wheelbase from the middle (measured cars: about 0.47).
const YAW_SHARE: f64 = 0.47;

impl Setup {
    pub fn read(values: &Values, surface: Surface) -> Option<Setup> {
        let number = |name| values.number(name);
        let approach = number("approach_speed")?;
        let wheelbase = number("wheelbase")?;
        Some(Setup {
            approach,
            late: number("reaction_time")?,
            share: number("brake_share")?,
            slide: Slide {
                speed: number("slide_speed")?.min(approach),
                heading: 0.0,
                steer: number("steer_angle")?,
                friction: number(surface.parameter())?,
                rise: number("road_rise")?,
                wheelbase,
                front_share: number("front_share")?,
                yaw_radius: YAW_SHARE * wheelbase,
            },
        })
    }

    /// Runs the car; none when it never stops.
    pub fn run(&self, mut watch: impl FnMut(Moment)) -> Option<Run> {
        let braking = self.braking()?;
        for time in [0.0, self.late] {
            watch(Moment {
                time,
                along: self.approach * time,
                aside: 0.0,
                speed: self.approach,
                heading: 0.0,
            });
        }
        let rest = slide::slide_and_watch(&self.slide, |moment| {
            watch(Moment {
                time: braking.time + moment.time,
                along: braking.way + moment.along,
                ..moment
            });
        })?;
        Some(braking.then(&rest))
    }

    /// As [`Setup::run`], for runs of any number.
    pub fn run_all(setups: &[Setup]) -> Vec<Option<Run>> {
        let braking: Vec<Option<Braking>> = setups.iter().map(Setup::braking).collect();
        let slowing = setups
            .iter()
            .zip(&braking)
            .filter(|(_, braking)| braking.is_some());
        let slides: Vec<Slide> = slowing.map(|(setup, _)| setup.slide).collect();
        let mut rests = slide::slide_all(&slides).into_iter();
        let runs = braking.into_iter().map(|braking| {
            let braking = braking?;
            Some(braking.then(&rests.next()??))
        });
        runs.collect()
    }

    /// What comes before the slide; none when the car does not slow down.
    fn braking(&self) -> Option<Braking> {
        let slowing = slide::deceleration(self.share * self.slide.friction, self.slide.rise);
        let slowed = slide::braking_distance(self.approach, self.slide.speed, slowing)?;
        Some(Braking {
            way: self.approach * self.late + slowed,
            time: self.late + (self.approach - self.slide.speed) / slowing,
        })
    }
}

/// From the brake mark to where the rear wheels lock.
struct Braking {
    way: f64,
    time: f64,
}

impl Braking {
    fn then(&self, rest: &Rest) -> Run {
        Run {
            braked: self.way,
            along: self.way + rest.along,
            furthest: self.way + rest.furthest,
            aside: rest.aside,
            furthest_aside: rest.furthest_aside,
            heading: rest.heading,
            time: self.time + rest.time,
        }
    }
}

/// Where a run ends, from the brake mark, and how far out it swings on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Run {
    pub braked: f64,
    pub along: f64,
    /// Furthest that the middle comes along the approach: past where it rests when it slides back down.
    pub furthest: f64,
    pub aside: f64,
    /// Furthest that the middle comes from the line of the approach, either way.
    pub furthest_aside: f64,
    pub heading: f64,
    pub time: f64,
}

/// Turning round at the end of a spin a car may come back by less than this; more is sliding back down, m. Chosen
/// here, from no source: a tenth of a car's length.
const NO_WAY_BACK: f64 = 0.5;

impl Run {
    /// How far it comes back from where it was furthest.
    fn back(&self) -> f64 {
        self.furthest - self.along
    }

    /// How far it slides back down; none when it rests about where it came furthest.
    pub fn slid_back(&self) -> Option<f64> {
        Some(self.back()).filter(|back| *back > NO_WAY_BACK)
    }

    /// How far the nose of a car of that length and width comes. The further it came back, the less its heading at
    /// rest says of how it lay where it was furthest: after a while, it may have pointed anywhere.
    pub fn nose(&self, (length, width): (f64, f64)) -> f64 {
        let ahead = slide::half_extent(length, width, self.heading);
        let anyhow = 0.5 * models::hypot(length, width);
        self.furthest + ahead + (anyhow - ahead) * (self.back() / NO_WAY_BACK).min(1.0)
    }
}

/// Runs already driven in this assessment.
#[derive(Default)]
pub(super) struct Runs(Memory<Setup, Option<Run>>);

impl Runs {
    pub fn get(&self, setup: &Setup) -> Option<Run> {
        self.0.get(setup, |setup| setup.run(|_| {}))
    }

    /// Drives what is asked for next.
    pub fn look_ahead(&self, setups: Vec<Setup>) {
        self.0.look_ahead(setups, Setup::run_all);
    }
}

/// How the stop scatters.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Scatter {
    /// How far the middle of the car comes as stated.
    furthest: f64,
    pub deviation: f64,
    /// Deviation from all but friction.
    rest: f64,
    /// The runs at frictions from low to high; none where the car never stops.
    by_friction: Vec<Option<Run>>,
}

/// Frictions to each side of the middle, and how many deviations they reach.
const HALF_POINTS: i32 = 20;
const REACH: f64 = 6.0;

/// Places between two frictions and their weights: Gauss and Legendre's rule of three points (Abramowitz and
/// Stegun, Handbook of Mathematical Functions, table 25.4), on the way from 0 to 1.
const PLACES: [(f64, f64); 3] = [
    (0.112_701_665_379_258_31, 5.0 / 18.0),
    (0.5, 8.0 / 18.0),
    (0.887_298_334_620_741_7, 5.0 / 18.0),
];

/// Places between two frictions with the rule laid over so many parts, and how likely the standard normal makes
/// each, from one end of the frictions to the other: the same for every scatter.
fn places(parts: u32) -> Vec<Vec<(f64, f64)>> {
    let step = REACH / f64::from(HALF_POINTS);
    let of = |steps: i32| {
        let of_part = |part: u32| {
            PLACES.map(|(place, weight)| {
                let at = (f64::from(part) + place) / f64::from(parts);
                let density = normal_density(step * (f64::from(steps) + at));
                (at, step * weight / f64::from(parts) * density)
            })
        };
        (0..parts).flat_map(of_part).collect()
    };
    (-HALF_POINTS..HALF_POINTS).map(of).collect()
}

/// For what goes smoothly between two frictions, and for what goes steeply or jumps.
static FEW: LazyLock<Vec<Vec<(f64, f64)>>> = LazyLock::new(|| places(1));
static MANY: LazyLock<Vec<Vec<(f64, f64)>>> = LazyLock::new(|| places(4));

/// Deviations between two frictions from which it goes steeply.
const STEEP: f64 = 1.5;

/// Deviations past which a normal variable is taken to be for certain: a chance of under 1e-12, a thousandth of
/// the smallest that is claimed.
const SURE: f64 = 7.2;

impl Scatter {
    /// Chance that the place of a run lies beyond `limit`. The way goes with one over friction, so its far
    /// tail is longer than a normal's: frictions are summed, and at each the rest is normal and grows with
    /// the way. A car that never stops reaches.
    pub fn reaches(&self, limit: f64, place: impl Fn(&Run) -> f64) -> f64 {
        let placed = |run: &Option<Run>| {
            run.as_ref()
                .map(|run| (place(run), self.rest * run.furthest / self.furthest))
        };
        let step = REACH / f64::from(HALF_POINTS);
        // Frictions lower than the lowest are counted as reaching.
        let mut chance = normal_below(-REACH);
        let mut from = self.by_friction.first().and_then(placed);
        let masses = (-HALF_POINTS..).zip(FEW.iter().zip(MANY.iter()));
        for (run, (steps, (few, many))) in self.by_friction[1..].iter().zip(masses) {
            let to = placed(run);
            let ends = from.zip(to);
            from = to;
            let all = || few.iter().map(|(_, mass)| mass).sum::<f64>();
            let Some(((a, rest_a), (b, rest_b))) = ends else {
                chance += all();
                continue;
            };
            // Between two frictions the deviations left to the limit go steadily from one end's to the other's.
            let left = |over: f64, deviation: f64| {
                if deviation > 0.0 {
                    over / deviation
                } else {
                    f64::INFINITY.copysign(over)
                }
            };
            let (near, far) = (left(limit - a, rest_a), left(limit - b, rest_b));
            // Less is sure enough of a friction that is seldom itself: the densities of both multiply.
            let seldom = step * f64::from(steps.abs().min((steps + 1).abs()));
            let sure = f64::sqrt(SURE * SURE - seldom * seldom);
            if near.min(far) > sure {
                continue;
            }
            if near.max(far) < -sure {
                chance += all();
                continue;
            }
            if rest_a.max(rest_b) <= 0.0 {
                // Nothing but friction varies: it reaches on one side of one friction.
                let below = |at: f64| normal_below(step * (f64::from(steps) + at));
                let meets = (a - limit) / (a - b);
                chance += (below(meets) - below(if a > b { 0.0 } else { 1.0 })).abs();
                continue;
            }
            let smooth = (near - far).abs() < STEEP;
            for (at, mass) in if smooth { few } else { many } {
                let over = limit - (a + (b - a) * at);
                chance += mass * normal_below_near(-left(over, rest_a + (rest_b - rest_a) * at));
            }
        }
        chance.min(1.0)
    }

    /// Where the car's nose comes in no more than that share of runs; none when more of them never stop.
    pub fn beyond_which(&self, share: f64, size: (f64, f64)) -> Option<f64> {
        let mut low = self.furthest;
        let mut high = self.furthest + FIRST_LOOK;
        while self.reaches(high, |run| run.nose(size)) > share {
            if high > FURTHEST_LOOK {
                return None;
            }
            low = high;
            high *= 2.0;
        }
        while high - low > 0.01 {
            let middle = 0.5 * (low + high);
            if self.reaches(middle, |run| run.nose(size)) > share {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(high)
    }

    /// The furthest that the middle of the car comes, over all frictions looked at.
    pub fn furthest(&self) -> f64 {
        let runs = self.by_friction.iter().flatten();
        runs.fold(self.furthest, |most, run| most.max(run.furthest))
    }

    /// The furthest back that it rests, over those frictions on which it slides back.
    pub fn back_to(&self) -> Option<f64> {
        let runs = self.by_friction.iter().flatten();
        let back = runs.filter(|run| run.slid_back().is_some());
        back.map(|run| run.along).min_by(f64::total_cmp)
    }
}

/// Where the search for the end of the runs begins and where it gives up, m.
const FIRST_LOOK: f64 = 10.0;
const FURTHEST_LOOK: f64 = 5000.0;

/// The inputs whose tolerances differ from run to run.
const SCATTERING: [&str; 7] = [
    "approach_speed",
    "reaction_time",
    "brake_share",
    "slide_speed",
    "steer_angle",
    "road_rise",
    "front_share",
];

/// The scatter of the stop: each tolerance counts as two standard deviations, and they add as independent
/// errors do. Taken from the stated inputs, so that a tolerance does not also move the middle.
pub(super) fn scatter(stated: &Values, surface: Surface) -> Option<Scatter> {
    let setup = Setup::read(stated, surface)?;
    let moving = SCATTERING.into_iter().chain([surface.parameter()]);
    let ends: Vec<(&str, [f64; 2], usize)> = moving
        .filter_map(|name| {
            let index = stated.index_of(name)?;
            let (low, high) = stated.ends(index)?;
            Some((name, [low, high], index))
        })
        .collect();
    let mut setups = vec![setup];
    for (_, ends, index) in &ends {
        for end in ends {
            let mut moved = stated.clone();
            moved.set(*index, *end);
            setups.push(Setup::read(&moved, surface)?);
        }
    }
    let friction_ends = stated.ends_of(surface.parameter());
    let deviation = friction_ends.map_or(0.0, |(low, high)| 0.25 * (high - low));
    let frictions = (-HALF_POINTS..=HALF_POINTS).map(|i| {
        let away = REACH * f64::from(i) / f64::from(HALF_POINTS);
        let mut moved = setup;
        moved.slide.friction += away * deviation;
        moved
    });
    if deviation > 0.0 {
        setups.extend(frictions.filter(|setup| setup.slide.friction > 0.0));
    }
    let mut runs = Setup::run_all(&setups).into_iter();
    let middle = runs.next()??;
    let (mut sum, mut rest) = (0.0, 0.0);
    for (name, ..) in &ends {
        let (low, high) = (runs.next()??, runs.next()??);
        let quarter = 0.25 * (high.along - low.along);
        sum += quarter * quarter;
        if *name != surface.parameter() {
            let quarter = 0.25 * (high.furthest - low.furthest);
            rest += quarter * quarter;
        }
    }
    let points = 2 * HALF_POINTS as usize + 1;
    let by_friction = if deviation > 0.0 {
        // Where friction is gone the car never stops; those are the lowest.
        let runs: Vec<Option<Run>> = runs.collect();
        let gone = points.saturating_sub(runs.len());
        core::iter::repeat_n(None, gone).chain(runs).collect()
    } else {
        vec![Some(middle); points]
    };
    Some(Scatter {
        furthest: middle.furthest,
        deviation: f64::sqrt(sum),
        rest: f64::sqrt(rest),
        by_friction,
    })
}

/// How far the nose comes, from where the middle is at the call, when the car stops straight on an abort on the
/// slipperier surface.
pub(super) fn abort(values: &Values) -> Option<f64> {
    let friction = values
        .number("friction_dry")?
        .min(values.number("friction_wet")?);
    let slowing = slide::deceleration(
        values.number("brake_share")? * friction,
        values.number("road_rise")?,
    );
    let stop = slide::stopping_distance(
        values.number("approach_speed")?,
        values.number("abort_reaction")?,
        slowing,
    )?;
    Some(stop + 0.5 * values.number("car_length")?)
}
