//! One roll: off the ramp or roller, over and over, and along to rest; and rolls already worked out.

use core::cell::RefCell;

use crate::{
    evaluation::keep,
    models::{
        self, GRAVITY,
        stopping::{self, Shape},
        tolerance::{self, Axis},
        tumble::{Outline, State, Tumble},
    },
    reading::Values,
};

/// All that a roll depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Setup {
    pub outline: Outline,
    pub start: State,
    /// Speed along the run at take-off, m/s.
    pub speed: f64,
    /// The driver's chest from the car's middle: aside and above; none when that is not known.
    seat: Option<(f64, f64)>,
}

/// A car rolls as if its mass sat this share of the track from the middle (measured cars: about 0.38).
const ROLL_SHARE: f64 = 0.38;
/// A ramp that leans the car further than this lays it down instead of throwing it, sine of the angle.
const STEEPEST: f64 = 0.94;
/// Less roof than this over the middle is no car, m.
const LEAST_ROOF: f64 = 0.1;

/// Rise of the ramp's end, m.
pub(super) fn rise(values: &Values) -> Option<f64> {
    Some(values.number("ramp_length")? * libm::tan(values.number("ramp_slope")?))
}

impl Setup {
    /// None when something is not known, or the car does not come off the ramp upright at all.
    pub fn read(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        let track = number("track")?;
        let outline = Outline {
            track,
            roof_width: number("roof_width")?,
            roof_height: number("roof_height")?,
            middle: number("centre_height")?,
            radius: ROLL_SHARE * track,
        };
        if outline.roof_height - outline.middle < LEAST_ROOF {
            return None;
        }
        let speed = number("run_speed")?;
        let (start, speed) = match values.choice("method")? {
            "ramp" => ramp(values, &outline, speed)?,
            _ => {
                // A roller that throws it up less than that only turns it about its side wheels.
                let flat = outline.on_ramp(0.0, number("measured_rate")?);
                let start = State {
                    up: number("measured_rise")?.max(flat.up),
                    ..flat
                };
                (start, speed)
            }
        };
        let seat = number("seat_side")
            .zip(number("chest_height"))
            .map(|(side, chest)| (side, chest - outline.middle));
        Some(Setup {
            outline,
            start,
            speed,
            seat,
        })
    }

    pub fn run(&self, watch: impl FnMut(&State)) -> Option<Roll> {
        let mut strikes = Vec::new();
        let mut roof: Option<f64> = None;
        let tumble = self.outline.roll(
            self.start,
            |strike| {
                if strike.is_roof() {
                    let (side, head) = strike.change(0.0, 0.0);
                    let change = models::hypot(side, head);
                    roof = Some(roof.map_or(change, |most| most.max(change)));
                }
                let Some((aside, above)) = self.seat else {
                    return;
                };
                let (side, head) = strike.change(aside, above);
                strikes.push(Strike { side, head });
            },
            watch,
        )?;
        Some(Roll {
            tumble,
            strikes,
            roof,
        })
    }
}

/// Off the ramp: the wheels of one side follow it, so that the car turns about the others; what lifting and turning
/// take comes from the speed.
fn ramp(values: &Values, outline: &Outline, speed: f64) -> Option<(State, f64)> {
    let sine = rise(values)? / outline.track;
    if sine > STEEPEST {
        return None;
    }
    let angle = libm::asin(sine);
    let slope = libm::tan(values.number("ramp_slope")?);
    let turn = values.number("rate_share")? * slope / (outline.track * libm::cos(angle));
    let start = outline.on_ramp(angle, 1.0);
    // About the wheels: the middle's own motion and the turning.
    let inertia = outline.radius * outline.radius + start.out * start.out + start.up * start.up;
    let left = speed * speed - 2.0 * GRAVITY * (start.height - outline.middle);
    if left <= 0.0 {
        return None;
    }
    let speed = f64::sqrt(left / (1.0 + inertia * turn * turn));
    Some((outline.on_ramp(angle, turn * speed), speed))
}

/// A strike at the driver's chest: changes of velocity in the car's frame, m/s.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Strike {
    pub side: f64,
    /// Towards the head; negative towards the feet, as on a roof.
    pub head: f64,
}

/// Samples of a pulse.
const SAMPLES: usize = 17;

impl Strike {
    pub fn change(&self) -> f64 {
        models::hypot(self.side, self.head)
    }

    /// Mean across the seat, m/s2.
    pub fn sideways(&self, give: f64) -> f64 {
        let change = self.change();
        if change <= 0.0 {
            return 0.0;
        }
        stopping::stop(change, give, Shape::HalfSine).mean * self.side.abs() / change
    }

    /// Dynamic response sideways and along the spine against the limits of low risk, together.
    pub fn risk(&self, give: f64) -> f64 {
        let change = self.change();
        if change <= 0.0 {
            return 0.0;
        }
        let stop = stopping::stop(change, give, Shape::HalfSine);
        let pulse = stopping::samples(&stop, Shape::HalfSine, 0.0, SAMPLES);
        let pair = |axis, part: f64| {
            let share = (part / change).abs();
            (
                share * tolerance::dynamic_response(axis, &pulse),
                tolerance::response(axis).limits[0],
            )
        };
        tolerance::combined_risk(&[
            pair(Axis::Sideways, self.side),
            pair(self.spine(), self.head),
        ])
    }

    /// No less than that risk: nothing shakes a body further than twice as far as it would press it in the end.
    fn risk_at_most(&self, give: f64) -> f64 {
        let change = self.change();
        if change <= 0.0 {
            return 0.0;
        }
        let peak = stopping::stop(change, give, Shape::HalfSine).peak / GRAVITY;
        let pair = |axis, part: f64| {
            let share = (part / change).abs();
            (2.0 * share * peak, tolerance::response(axis).limits[0])
        };
        tolerance::combined_risk(&[
            pair(Axis::Sideways, self.side),
            pair(self.spine(), self.head),
        ])
    }

    fn spine(&self) -> Axis {
        if self.head < 0.0 {
            Axis::Footward
        } else {
            Axis::Headward
        }
    }
}

/// A roll.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Roll {
    pub tumble: Tumble,
    /// Every strike at the driver's chest; none when the seat is not known or nothing strikes.
    pub strikes: Vec<Strike>,
    /// Largest change of velocity of the car's middle as a roof corner strikes, m/s.
    pub roof: Option<f64>,
}

impl Roll {
    /// The most that any strike gives by some measure: the hardest in one is not so in each.
    pub fn most(&self, measure: impl Fn(&Strike) -> f64) -> Option<f64> {
        self.strikes.iter().map(measure).reduce(f64::max)
    }

    /// The same for the risk: strikes that cannot have the most are not looked at.
    pub fn most_risk(&self, give: f64) -> Option<f64> {
        let hardest = |one: &&Strike, other: &&Strike| {
            one.risk_at_most(give).total_cmp(&other.risk_at_most(give))
        };
        let first = self.strikes.iter().max_by(hardest)?;
        let mut most = first.risk(give);
        for strike in &self.strikes {
            if strike.risk_at_most(give) > most && strike != first {
                most = most.max(strike.risk(give));
            }
        }
        Some(most)
    }
}

/// Along the run, m and s, from the ramp's end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Along {
    pub lands: f64,
    pub rests: f64,
    pub time: f64,
}

/// Along to rest: no slowing until the body is down, then as a tumble until it lies, then as a slide.
pub(super) fn along(speed: f64, tumble: &Tumble, tumbling: f64, sliding: f64) -> Along {
    let lands = speed * tumble.lands;
    let tumbling = tumbling * GRAVITY;
    let time = (tumble.time - tumble.lands).min(speed / tumbling);
    let left = speed - tumbling * time;
    let tumbled = speed * time - 0.5 * tumbling * time * time;
    let sliding = sliding * GRAVITY;
    Along {
        lands,
        rests: lands + tumbled + left * left / (2.0 * sliding),
        time: (tumble.lands + time + left / sliding).max(tumble.time),
    }
}

/// Rolls already worked out: most tolerances do not move them.
#[derive(Default)]
pub(super) struct Rolls(RefCell<Vec<(Setup, Option<Roll>)>>);

impl Rolls {
    pub fn get(&self, setup: &Setup) -> Option<Roll> {
        let found = self
            .0
            .borrow()
            .iter()
            .find(|(known, _)| known == setup)
            .map(|(_, roll)| roll.clone());
        found.unwrap_or_else(|| {
            let roll = setup.run(|_| {});
            keep(&self.0, (*setup, roll.clone()));
            roll
        })
    }
}
