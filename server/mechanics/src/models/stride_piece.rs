//! A piece of a step on a counterweighted line: the line stays taut or slack and the counterweight keeps its way, so
//! that the stretch swings or flies (`swing.rs`) and the common centre of mass falls, both under steady forces and the
//! ground's push. What must last for that are margins; the first that is gone ends the piece.
//!
//! It knows nothing of when contact and flight begin and end.

use super::{
    GRAVITY,
    margin::{Ahead, Margin},
    stride::{Bodies, State},
    swing::{Passage, Swing},
};

/// What has just changed lasts at least this share of a look: where a margin is only grazed, rounding could otherwise
/// take it back and forth without end.
const SHORTEST: f64 = 1.0 / 256.0;

/// Both bodies, and how far the push of the ground has come.
#[derive(Clone, Copy, Debug)]
pub(super) struct Instant {
    /// Of the line, m.
    stretch: f64,
    /// m/s.
    stretching: f64,
    /// Line run towards the performer at the counterweight, m.
    run: f64,
    /// m/s.
    running: f64,
    sine: f64,
    cosine: f64,
}

impl Instant {
    /// As the push of the ground begins, or nothing does.
    pub(super) fn at_start([down, speed, run, running]: State) -> Instant {
        Instant {
            stretch: down - run,
            stretching: speed - running,
            run,
            running,
            sine: 0.0,
            cosine: 1.0,
        }
    }

    pub(super) fn state(&self) -> State {
        [
            self.run + self.stretch,
            self.running + self.stretching,
            self.run,
            self.running,
        ]
    }
}

/// Way of the counterweight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Way {
    /// Line runs towards the performer.
    Out,
    /// Rubbing holds it.
    Held,
    /// Line runs towards the counterweight.
    Back,
}

/// What stays the same through a piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Mode {
    pub(super) taut: bool,
    pub(super) way: Way,
}

impl Mode {
    pub(super) fn at(bodies: &Bodies, at: &Instant) -> Mode {
        let tension = bodies.stiffness * at.stretch + bodies.damping * at.stretching;
        let way = if at.running > 0.0 {
            Way::Out
        } else if at.running < 0.0 {
            Way::Back
        } else {
            way_from_rest(bodies, tension.max(0.0))
        };
        Mode {
            taut: tension > 0.0,
            way,
        }
    }
}

fn way_from_rest(bodies: &Bodies, tension: f64) -> Way {
    if tension > bodies.pull + bodies.rubbing {
        Way::Out
    } else if tension < bodies.pull - bodies.rubbing {
        Way::Back
    } else {
        Way::Held
    }
}

/// What must last.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Change {
    /// A line that pulls, or one that does not.
    Line,
    /// A counterweight that keeps its way, or does not begin to run out.
    Way,
    /// A counterweight that does not begin to run back.
    Back,
}

const CHANGES: [Change; 3] = [Change::Line, Change::Way, Change::Back];

/// The push of the ground at its highest, N, and how fast its sine turns, rad/s; nothing of either in flight.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ground {
    pub(super) push: f64,
    pub(super) turn: f64,
}

/// A mode of motion over the ground.
pub(super) struct Piece<'a> {
    bodies: &'a Bodies,
    mode: Mode,
    swing: &'a Swing,
    ground: Ground,
    /// Steady part of the stretch's acceleration, m/s2.
    stretched_by: f64,
    /// Performer's share of the mass that moves together, or nothing where the counterweight does not move.
    share: f64,
    /// Fall of the common centre of mass without the ground, m/s2, or nothing.
    falling: f64,
    /// What the ground takes off that at its highest, m/s2; that over its turning; and over its turning twice.
    slowed_by: [f64; 3],
}

/// The motion with the answer to the ground set aside, so that only steady forces are left in it: the stretch, and the
/// common centre of mass, or the counterweight where that is held.
#[derive(Clone, Copy)]
pub(super) struct Inner {
    stretch: f64,
    stretching: f64,
    middle: f64,
    moving: f64,
    sine: f64,
    cosine: f64,
}

/// An instant, with what it is about to do.
#[derive(Clone, Copy)]
pub(super) struct Look {
    pub(super) at: Instant,
    /// What spring and damper say, N, and its change, N/s; below nothing where the line is slack.
    tension: [f64; 2],
    /// Acceleration of the line's run, m/s2.
    gaining: f64,
}

/// Where a piece ends, and by what.
pub(super) struct PieceEnd {
    pub(super) time: f64,
    pub(super) look: Look,
    pub(super) by: Change,
}

impl<'a> Piece<'a> {
    /// The swing is the mode's own.
    pub(super) fn new(
        bodies: &'a Bodies,
        ground: Ground,
        swing: &'a Swing,
        mode: Mode,
    ) -> Piece<'a> {
        let held = Piece {
            bodies,
            mode,
            swing,
            ground,
            stretched_by: GRAVITY,
            share: 0.0,
            falling: 0.0,
            slowed_by: [0.0; 3],
        };
        let pull = match mode.way {
            Way::Out => bodies.pull + bodies.rubbing,
            Way::Back => bodies.pull - bodies.rubbing,
            Way::Held => return held,
        };
        let all = bodies.mass + bodies.inertia;
        let slowed_by = ground.push / all;
        Piece {
            stretched_by: GRAVITY + pull / bodies.inertia,
            share: bodies.mass / all,
            falling: (bodies.mass * GRAVITY - pull) / all,
            slowed_by: if ground.turn > 0.0 {
                let once = slowed_by / ground.turn;
                [slowed_by, once, once / ground.turn]
            } else {
                [0.0; 3]
            },
            ..held
        }
    }

    pub(super) fn enter(&self, at: &Instant) -> Inner {
        let (stretch, stretching) = self.swing.answer(at.sine, at.cosine);
        let [_, once, twice] = self.slowed_by;
        Inner {
            stretch: at.stretch - stretch,
            stretching: at.stretching - stretching,
            middle: at.run + self.share * at.stretch - twice * at.sine,
            moving: at.running + self.share * at.stretching - once * at.cosine,
            sine: at.sine,
            cosine: at.cosine,
        }
    }

    pub(super) fn pass(&self, from: &Inner, by: &Passage) -> Inner {
        let weigh = |of: &[f64; 3]| {
            of[0] * from.stretch + of[1] * from.stretching + of[2] * self.stretched_by
        };
        let gained = self.falling * by.time;
        Inner {
            stretch: weigh(&by.stretch),
            stretching: weigh(&by.stretching),
            middle: from.middle + (from.moving + 0.5 * gained) * by.time,
            moving: from.moving + gained,
            sine: from.sine * by.cosine + from.cosine * by.sine,
            cosine: from.cosine * by.cosine - from.sine * by.sine,
        }
    }

    pub(super) fn look(&self, inner: &Inner) -> Look {
        let (sine, cosine) = (inner.sine, inner.cosine);
        let answer = self.swing.answer(sine, cosine);
        let (stretch, stretching) = (inner.stretch + answer.0, inner.stretching + answer.1);
        let lifted = self.ground.push / self.bodies.mass * sine;
        let turning = self.stretched_by - lifted - self.swing.pulls(stretch, stretching);
        let [slowed, once, twice] = self.slowed_by;
        let Bodies {
            stiffness, damping, ..
        } = *self.bodies;
        Look {
            at: Instant {
                stretch,
                stretching,
                run: inner.middle + twice * sine - self.share * stretch,
                running: inner.moving + once * cosine - self.share * stretching,
                sine,
                cosine,
            },
            tension: [
                stiffness * stretch + damping * stretching,
                stiffness * stretching + damping * turning,
            ],
            gaining: self.falling - slowed * sine - self.share * turning,
        }
    }

    /// What the line pulls, N, and its change, N/s.
    pub(super) fn tension(&self, look: &Look) -> [f64; 2] {
        if self.mode.taut {
            look.tension
        } else {
            [0.0, 0.0]
        }
    }

    /// Push of the ground, N.
    pub(super) fn ground(&self, look: &Look) -> f64 {
        (self.ground.push * look.at.sine).max(0.0)
    }

    /// How it goes on from the end of this piece.
    pub(super) fn after(&self, end: &PieceEnd) -> (Instant, Mode) {
        let Mode { taut, way } = self.mode;
        if end.by == Change::Line {
            return (end.look.at, Mode { taut: !taut, way });
        }
        let still = Instant {
            running: 0.0,
            ..end.look.at
        };
        let way = match (way, end.by) {
            (Way::Held, Change::Way) => Way::Out,
            (Way::Held, _) => Way::Back,
            (Way::Out | Way::Back, _) => way_from_rest(self.bodies, self.tension(&end.look)[0]),
        };
        (still, Mode { taut, way })
    }

    fn margin(&self, look: &Look, of: Change) -> Margin {
        let way = [look.at.running, look.gaining];
        match (of, self.mode.way) {
            (Change::Line, _) if self.mode.taut => Margin::of(look.tension),
            (Change::Line, _) => Margin::under(look.tension),
            (Change::Way, Way::Out) => Margin::of(way),
            (Change::Way, Way::Back) => Margin::under(way),
            (Change::Way, Way::Held) => {
                let [tension, change] = self.tension(look);
                let most = self.bodies.pull + self.bodies.rubbing;
                Margin::under([tension - most, change])
            }
            (Change::Back, Way::Held) => {
                let [tension, change] = self.tension(look);
                let least = self.bodies.pull - self.bodies.rubbing;
                Margin::of([tension - least, change])
            }
            (Change::Back, Way::Out | Way::Back) => Margin::of([1.0, 0.0]),
        }
    }

    /// The first end of the piece between two looks, if there is one. What has just changed is told.
    pub(super) fn end(
        &self,
        from: &Inner,
        [first, last]: [&Look; 2],
        time: f64,
        changed: Option<Change>,
    ) -> Option<PieceEnd> {
        let mut earliest: Option<PieceEnd> = None;
        for of in CHANGES {
            let is_new = changed.is_some_and(|by| (by == Change::Line) == (of == Change::Line));
            let ahead = Ahead {
                first: self.margin(first, of),
                last: self.margin(last, of),
                time,
                lasts: if is_new { SHORTEST * time } else { 0.0 },
            };
            let end = ahead.gone(|time| {
                let look = self.look(&self.pass(from, &self.swing.passage(time)));
                (look, self.margin(&look, of))
            });
            if let Some((time, look)) = end
                && earliest.as_ref().is_none_or(|known| time < known.time)
            {
                earliest = Some(PieceEnd { time, look, by: of });
            }
        }
        earliest
    }
}
