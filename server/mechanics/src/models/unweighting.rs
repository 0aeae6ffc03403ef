//! A runner held up in part by a counterweight over pulleys.
//!
//! Statics and the fall off the feet are G. Atwood's machine. Running: over even steps the ground gives what
//! the line does not, so the mean push during contact is that share of body weight times step time over
//! contact time (P. G. Weyand et al., "Faster top running speeds are achieved with greater ground forces not
//! more rapid leg movements", J. Appl. Physiol. 89, 2000), shaped as half a sine wave (R. McN. Alexander,
//! Principles of Animal Locomotion). Masses and line are then two bodies with a spring that cannot push, and dry
//! rubbing (`stride.rs`).

use super::{
    GRAVITY,
    peak::Crest,
    stride::{Bodies, Push, State, Stride},
};
use core::f64::consts::PI;

/// The rig, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Assist {
    /// Performer, kg.
    pub mass: f64,
    /// Counterweight, kg.
    pub weight: f64,
    /// How much further the performer's line runs than the counterweight.
    pub ratio: f64,
    /// What the pulleys' turning adds to the inertia at the performer's line, kg.
    pub pulleys: f64,
    /// Share of the line's pull that the pulleys rub away.
    pub loss: f64,
    /// Line from performer to counterweight, N/m at the performer.
    pub stiffness: f64,
    /// Share of critical damping of the two masses on the line.
    pub damping: f64,
}

/// How a runner steps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gait {
    /// From one foot's touch to the other's, s.
    pub step: f64,
    /// Foot on the ground, s.
    pub contact: f64,
}

/// What the line does over one even step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounce {
    /// Highest tension at the performer, N.
    pub most: f64,
    /// Lowest tension, N.
    pub least: f64,
    /// Rise and fall of the performer, m.
    pub height: f64,
}

/// A moment of an even step.
#[derive(Clone, Copy, Debug)]
pub struct Moment {
    /// Since the first touch, s.
    pub time: f64,
    /// At the performer, N.
    pub tension: f64,
    /// Push of the ground, N.
    pub ground: f64,
    /// Of the performer, above the first touch, m.
    pub height: f64,
}

/// A performer's drop that ends as the counterweight meets its stop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Catch {
    /// Speed as the stop is met, m/s.
    pub speed: f64,
    /// Stretch of the line beyond the counterweight's steady pull, m.
    pub stretch: f64,
    /// Highest tension, N.
    pub force: f64,
}

/// Steps run before one is looked at, so that the start is forgotten.
const SETTLING: usize = 7;
/// Most steps that are run until two begin alike, where it is asked whether they ever do.
const MOST_SETTLING: usize = 60;
/// Steps from then on that are held against each other where none did.
const HELD_TOGETHER: usize = 4;
/// Steps begin alike when stretch and speeds are within this share of their size.
const ALIKE: f64 = 1e-3;
/// Looks at a swing of the line where a step is looked at.
const LOOKS: f64 = 24.0;
/// And where it is only followed: as many as find whatever changes on the way.
const FEW_LOOKS: f64 = 10.0;

impl Assist {
    /// Steady pull on the performer, N.
    pub fn pull(&self) -> f64 {
        self.weight * GRAVITY / self.ratio
    }

    /// Share of the performer's weight that it takes.
    pub fn relief(&self) -> f64 {
        self.pull() / (self.mass * GRAVITY)
    }

    /// What is left on the feet, N; negative when the performer floats.
    pub fn left(&self) -> f64 {
        self.mass * GRAVITY - self.pull()
    }

    /// Mass that the line adds to every rise and fall, kg.
    pub fn inertia(&self) -> f64 {
        self.weight / (self.ratio * self.ratio) + self.pulleys
    }

    /// Downward acceleration off the feet, m/s2, without rubbing.
    pub fn fall(&self) -> f64 {
        self.left() / (self.mass + self.inertia())
    }

    /// Tension while falling so, N.
    pub fn falling_tension(&self) -> f64 {
        self.pull() + self.inertia() * self.fall()
    }

    /// Highest push of the ground over an even step, N.
    pub fn ground_peak(&self, gait: Gait) -> f64 {
        0.5 * PI * self.left() * gait.step / gait.contact
    }

    /// Time of a swing of the two masses against each other on the line, s.
    pub fn line_period(&self) -> f64 {
        let (m, i) = (self.mass, self.inertia());
        2.0 * PI * f64::sqrt(m * i / (m + i) / self.stiffness)
    }

    /// Follows even steps and looks at one, once the start is forgotten. None when it cannot be followed.
    pub fn bounce(&self, gait: Gait, mut observe: impl FnMut(Moment)) -> Option<Bounce> {
        let start = self.settled(&self.stride(gait, FEW_LOOKS)?, gait)?;
        // The least of each is the most of its negative.
        let [mut most, mut least, mut lowest, mut highest] = [Crest::new(); 4];
        self.stride(gait, LOOKS)?.follow(start, |at| {
            let (time, [tension, change]) = (at.time, at.tension);
            let [down, speed, ..] = at.state;
            most.see(time, tension, change);
            least.see(time, -tension, -change);
            lowest.see(time, down, speed);
            highest.see(time, -down, -speed);
            observe(Moment {
                time,
                tension,
                ground: at.ground,
                height: start[0] - down,
            });
        })?;
        let least = -least.most();
        Some(Bounce {
            most: most.most(),
            least: if least > 0.0 { least } else { 0.0 },
            height: highest.most() + lowest.most(),
        })
    }

    /// The highest tension, N, of the calmest and of the hardest of some steps on end, where the steps never come to
    /// be alike: on a line that goes slack they may come in turns, or never repeat. None where they settle.
    pub fn unsettled(&self, gait: Gait) -> Option<(f64, f64)> {
        let change = self.fall() * gait.step;
        let stretched = self.falling_tension() / self.stiffness;
        let stride = self.stride(gait, FEW_LOOKS)?;
        let mut start = self.settled(&stride, gait)?;
        for _ in SETTLING..MOST_SETTLING {
            let next = start_of_next(stride.follow(start, |_| {})?, gait);
            let alike = |i: usize, size: f64| (next[i] - start[i]).abs() <= ALIKE * size;
            if alike(0, stretched) && alike(1, change) && alike(3, change) {
                return None;
            }
            start = next;
        }
        let stride = self.stride(gait, LOOKS)?;
        let (mut calmest, mut hardest) = (f64::INFINITY, 0.0_f64);
        for _ in 0..HELD_TOGETHER {
            let mut most = Crest::new();
            let end = stride.follow(start, |at| most.see(at.time, at.tension[0], at.tension[1]))?;
            start = start_of_next(end, gait);
            calmest = calmest.min(most.most());
            hardest = hardest.max(most.most());
        }
        Some((calmest, hardest))
    }

    /// How a step begins after so many that the start is forgotten: performer down, its speed, line run towards the
    /// performer at the counterweight, its speed. The first begins as a stiff line would have it, with half a flight's
    /// fall.
    fn settled(&self, stride: &Stride, gait: Gait) -> Option<State> {
        let speed = 0.5 * self.fall() * (gait.step - gait.contact);
        let mut start = [self.falling_tension() / self.stiffness, speed, 0.0, speed];
        for _ in 0..SETTLING {
            start = start_of_next(stride.follow(start, |_| {})?, gait);
        }
        Some(start)
    }

    /// An even step, with so many looks at a swing of the line.
    fn stride(&self, gait: Gait, looks: f64) -> Option<Stride> {
        let (mass, inertia, pull) = (self.mass, self.inertia(), self.pull());
        let bodies = Bodies {
            mass,
            inertia,
            pull,
            rubbing: pull * self.loss,
            stiffness: self.stiffness,
            damping: 2.0
                * self.damping
                * f64::sqrt(self.stiffness * mass * inertia / (mass + inertia)),
        };
        let push = Push {
            peak: self.ground_peak(gait),
            contact: gait.contact,
            flight: gait.step - gait.contact,
        };
        Stride::new(bodies, push, looks)
    }

    /// The performer drops until the counterweight meets its stop, and the line alone catches the rest.
    pub fn catch(&self, drop: f64) -> Catch {
        let squared = 2.0 * self.fall().max(0.0) * drop;
        let left = self.left().max(0.0);
        let stretch =
            (left + f64::sqrt(left * left + self.stiffness * self.mass * squared)) / self.stiffness;
        Catch {
            speed: f64::sqrt(squared),
            stretch,
            force: self.pull() + self.stiffness * stretch,
        }
    }
}

/// Only speeds and the stretch matter, so the way drifted is let go. So is its speed: a runner who is to rise no
/// higher from step to step sets that right with the legs, here at each touch.
fn start_of_next(end: State, gait: Gait) -> State {
    let drift = end[2] / gait.step;
    [end[0] - end[2], end[1] - drift, 0.0, end[3] - drift]
}
