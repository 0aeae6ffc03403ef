//! A step of a runner on a counterweighted line, followed piece by piece in closed form.
//!
//! Performer and counterweight are two bodies on a line that pulls as spring and damper and cannot push. The pulleys
//! rub dry (C. A. Coulomb, Théorie des machines simples, 1785): with a steady share of the pull against the way the
//! counterweight moves, and at rest with whatever holds it, up to that share. While the line stays taut or slack and
//! the counterweight keeps its way, all of it is linear with constant coefficients (`stride_piece.rs`). Each piece is
//! walked in even small steps, over which its solution is a few products; where a look tells that a piece has ended,
//! the end is found on the solution itself.
//!
//! It knows nothing of what the bodies are or of how a step begins.

use super::{
    stride_piece::{Ground, Instant, Look, Mode, Piece, Way},
    swing::{Line, Passage, Swing},
};
use core::f64::consts::PI;

/// Two bodies on a line, SI, all as at the performer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bodies {
    /// Performer, kg.
    pub mass: f64,
    /// What the counterweight's end adds to every change of speed, kg.
    pub inertia: f64,
    /// Steady pull of the counterweight, N.
    pub pull: f64,
    /// What the pulleys rub away at most, N.
    pub rubbing: f64,
    /// Of the line, N/m.
    pub stiffness: f64,
    /// Of the line, N s/m.
    pub damping: f64,
}

/// How the ground pushes over a step: half a sine wave and then nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Push {
    /// Highest, N.
    pub peak: f64,
    /// Foot on the ground, s.
    pub contact: f64,
    /// Foot off the ground after it, s.
    pub flight: f64,
}

/// Performer down, its speed, line run towards the performer at the counterweight, its speed; m and m/s.
pub type State = [f64; 4];

/// What is seen at a moment of a step.
#[derive(Clone, Copy, Debug)]
pub struct Sight {
    /// Since the touch, s.
    pub time: f64,
    /// Of the line, N, and its change, N/s.
    pub tension: [f64; 2],
    /// Push of the ground, N.
    pub ground: f64,
    /// Where the bodies are.
    pub state: State,
}

/// A step, ready to be followed from any state.
#[derive(Clone, Debug)]
pub struct Stride {
    bodies: Bodies,
    contact: Phase,
    flight: Phase,
}

/// Most looks at contact or flight, so that nothing can run for ever: a line that swings so often holds no runner.
const MOST_LOOKS: f64 = 20_000.0;
/// Most pieces of contact or flight, for the same reason.
const MOST_PIECES: usize = 10_000;

impl Stride {
    /// With so many looks at a swing of the line, and at least half as many at contact and at flight. None where the
    /// line damps too much to swing, or where it would take too many looks.
    pub fn new(bodies: Bodies, push: Push, looks: f64) -> Option<Stride> {
        let pushing = Ground {
            push: push.peak,
            turn: PI / push.contact,
        };
        let none = Ground {
            push: 0.0,
            turn: 0.0,
        };
        Some(Stride {
            contact: Phase::new(&bodies, pushing, push.contact, looks)?,
            flight: Phase::new(&bodies, none, push.flight, looks)?,
            bodies,
        })
    }

    /// From touch to touch. The looks are even, but for two at every change in between: before it and after it. None
    /// where the step cannot be followed.
    pub fn follow(&self, start: State, mut observe: impl FnMut(Sight)) -> Option<State> {
        let mode = Mode::at(&self.bodies, &Instant::at_start(start));
        let (leaves, mode) = self
            .contact
            .follow(&self.bodies, start, mode, &mut observe)?;
        let mut later = |sight: Sight| {
            observe(Sight {
                time: self.contact.length + sight.time,
                ..sight
            });
        };
        let (end, _) = self.flight.follow(&self.bodies, leaves, mode, &mut later)?;
        end.iter().all(|part| part.is_finite()).then_some(end)
    }
}

/// Contact or flight: all that does not depend on where it begins.
#[derive(Clone, Debug)]
struct Phase {
    length: f64,
    ground: Ground,
    looks: u32,
    /// From one look to the next, s.
    look: f64,
    /// How the line stretches with both bodies on it, with the performer alone, and slack.
    swings: [Swing; 3],
    /// Over one look.
    even: [Passage; 3],
}

impl Phase {
    fn new(bodies: &Bodies, ground: Ground, length: f64, looks: f64) -> Option<Phase> {
        let (mass, inertia) = (bodies.mass, bodies.inertia);
        let line = |mass| {
            Some(Line {
                stiffness: bodies.stiffness,
                damping: bodies.damping,
                mass,
            })
        };
        let swing = |line| Swing::new(line, ground.push / mass, ground.turn);
        let both = swing(line(mass * inertia / (mass + inertia)))?;
        let swings = [both, swing(line(mass))?, swing(None)?];
        let looks = f64::ceil((looks * length / both.period()).max(0.5 * looks));
        if !(1.0..=MOST_LOOKS).contains(&looks) {
            return None;
        }
        let look = length / looks;
        Some(Phase {
            length,
            ground,
            looks: looks as u32,
            look,
            swings,
            even: swings.map(|swing| swing.passage(look)),
        })
    }

    fn time_of(&self, look: u32) -> f64 {
        if look == self.looks {
            self.length
        } else {
            f64::from(look) * self.look
        }
    }

    fn follow(
        &self,
        bodies: &Bodies,
        start: State,
        mut mode: Mode,
        observe: &mut dyn FnMut(Sight),
    ) -> Option<(State, Mode)> {
        let mut at = Instant::at_start(start);
        let (mut time, mut behind, mut is_even) = (0.0, 0, true);
        let mut changed = None;
        for _ in 0..MOST_PIECES {
            let kind = kind(mode);
            let swing = &self.swings[kind];
            let piece = Piece::new(bodies, self.ground, swing, mode);
            let mut inner = piece.enter(&at);
            let mut look = piece.look(&inner);
            observe(sight(&piece, time, &look));
            loop {
                if behind == self.looks {
                    return Some((look.at.state(), mode));
                }
                let next_time = self.time_of(behind + 1);
                // What is left of a look after a change.
                let odd;
                let passage = if is_even {
                    &self.even[kind]
                } else {
                    odd = swing.passage((next_time - time).max(0.0));
                    &odd
                };
                let next = piece.pass(&inner, passage);
                let next_look = piece.look(&next);
                if let Some(end) = piece.end(&inner, [&look, &next_look], passage.time, changed) {
                    time = (time + end.time).min(next_time);
                    observe(sight(&piece, time, &end.look));
                    (at, mode) = piece.after(&end);
                    (changed, is_even) = (Some(end.by), false);
                    break;
                }
                (inner, look, time) = (next, next_look, next_time);
                (changed, is_even) = (None, true);
                behind += 1;
                observe(sight(&piece, time, &look));
            }
        }
        None
    }
}

/// Which of the swings.
fn kind(mode: Mode) -> usize {
    match mode {
        Mode { taut: false, .. } => 2,
        Mode { way: Way::Held, .. } => 1,
        Mode { .. } => 0,
    }
}

fn sight(piece: &Piece, time: f64, look: &Look) -> Sight {
    let [tension, change] = piece.tension(look);
    Sight {
        time,
        tension: [tension.max(0.0), change],
        ground: piece.ground(look),
        state: look.at.state(),
    }
}
