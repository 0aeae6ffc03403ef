//! The shot as geometry: where the camera, the occluder and both people are at any time, and what that
//! hides. Knows no check and no limit.

use core::cell::OnceCell;

use crate::{
    models::{
        self,
        camera::{self, Body, Occluder, Plan, Sight},
    },
    reading::Values,
};

/// Looks at least this close together, s; edges between them are found by halving.
const STEP: f64 = 0.1;

/// Somebody who waits, goes straight at a steady speed, and stays.
pub(super) struct Walk {
    pub from: Plan,
    pub to: Plan,
    pub speed: f64,
    pub cue: f64,
    pub height: f64,
    length: f64,
}

impl Walk {
    fn new(from: Plan, to: Plan, speed: f64, cue: f64, height: f64) -> Walk {
        Walk {
            from,
            to,
            speed,
            cue,
            height,
            length: models::hypot(to[0] - from[0], to[1] - from[1]),
        }
    }

    pub fn length(&self) -> f64 {
        self.length
    }

    pub fn arrival(&self) -> f64 {
        self.cue + self.length() / self.speed
    }

    pub fn at(&self, time: f64) -> Plan {
        let length = self.length();
        let gone = (self.speed * (time - self.cue)).clamp(0.0, length);
        let share = if length > 0.0 { gone / length } else { 0.0 };
        [0, 1].map(|i| self.from[i] + (self.to[i] - self.from[i]) * share)
    }

    /// Ground still to cover at a time, m.
    pub fn left(&self, time: f64) -> f64 {
        self.length() - (self.speed * (time - self.cue)).clamp(0.0, self.length())
    }
}

/// Everything that moves in the shot.
pub(super) struct Scene {
    pub actor: Walk,
    pub double: Walk,
    pub radius: f64,
    pub shot_length: f64,
    camera_height: f64,
    travel: Plan,
    move_from: f64,
    move_time: f64,
    pan: (f64, f64),
    /// Sines and cosines of both, and of half the field.
    turned: [(f64, f64); 3],
    half_field: f64,
    occluder: Occluder,
    occluder_speed: f64,
    /// Cover of the actor and of the double at the looks over the whole shot.
    looked: OnceCell<Vec<(f64, [f64; 2])>>,
}

impl Scene {
    pub fn read(values: &Values) -> Option<Scene> {
        let n = |name| values.number(name);
        let (middle, half) = (n("occluder_offset")?, 0.5 * n("occluder_width")?);
        let front = n("occluder_distance")?;
        let pan = (n("pan_start")?, n("pan_end")?);
        let half_field = camera::half_field(n("focal_length")?, n("sensor_width")?);
        Some(Scene {
            actor: Walk::new(
                [n("actor_start_across")?, n("actor_start_away")?],
                [n("actor_end_across")?, n("actor_end_away")?],
                n("actor_speed")?,
                0.0,
                n("actor_height")?,
            ),
            double: Walk::new(
                [n("double_start_across")?, n("double_start_away")?],
                [n("double_end_across")?, n("double_end_away")?],
                n("double_speed")?,
                n("double_cue")?,
                n("double_height")?,
            ),
            radius: 0.5 * n("body_width")?,
            shot_length: n("shot_length")?,
            camera_height: n("camera_height")?,
            travel: [n("camera_travel_across")?, n("camera_travel_away")?],
            move_from: n("camera_move_start")?,
            move_time: n("camera_move_time")?,
            pan,
            turned: [pan.0, pan.1, half_field].map(libm::sincos),
            half_field,
            looked: OnceCell::new(),
            occluder: Occluder {
                across: (middle - half, middle + half),
                away: (front, front + n("occluder_thickness")?),
                up: (n("occluder_gap")?, n("occluder_height")?),
            },
            occluder_speed: n("occluder_speed")?,
        })
    }

    /// Share of the camera's move that is done.
    fn moved(&self, time: f64) -> f64 {
        ((time - self.move_from) / self.move_time).clamp(0.0, 1.0)
    }

    pub fn eye(&self, time: f64) -> Plan {
        self.travel.map(|whole| whole * self.moved(time))
    }

    fn bearing(&self, time: f64) -> f64 {
        self.pan.0 + (self.pan.1 - self.pan.0) * self.moved(time)
    }

    pub fn occluder(&self, time: f64) -> Occluder {
        let shift = self.occluder_speed * time;
        let (left, right) = self.occluder.across;
        Occluder {
            across: (left + shift, right + shift),
            ..self.occluder
        }
    }

    fn body(&self, walk: &Walk, time: f64) -> Body {
        Body {
            at: walk.at(time),
            radius: self.radius,
            height: walk.height,
        }
    }

    fn sight(&self, time: f64) -> Sight {
        Sight::new(&self.occluder(time), self.eye(time))
    }

    /// How far inside the cover somebody is, m at the body.
    pub fn cover(&self, walk: &Walk, time: f64) -> f64 {
        self.sight(time)
            .cover(self.camera_height, &self.body(walk, time))
    }

    fn covers(&self, time: f64) -> [f64; 2] {
        let sight = self.sight(time);
        [&self.actor, &self.double]
            .map(|walk| sight.cover(self.camera_height, &self.body(walk, time)))
    }

    /// Spans over the whole shot of something made of both covers, whose looks are shared.
    fn covered(&self, f: impl Fn([f64; 2]) -> f64) -> Vec<(f64, f64)> {
        let looked = self.looked.get_or_init(|| {
            camera::looks(&self.times(0.0, self.shot_length), STEP)
                .into_iter()
                .map(|at| (at, self.covers(at)))
                .collect()
        });
        let looks = looked
            .iter()
            .map(|(at, covers)| (*at, f(*covers)))
            .collect();
        camera::spans_of(|time| f(self.covers(time)), looks)
    }

    /// The same, where being out of the picture hides as well.
    fn unseen(&self, walk: &Walk, time: f64) -> f64 {
        let body = self.body(walk, time);
        let eye = self.eye(time);
        let moved = self.moved(time);
        let bearing = if moved <= 0.0 || self.pan.0 == self.pan.1 {
            self.turned[0]
        } else if moved >= 1.0 {
            self.turned[1]
        } else {
            libm::sincos(self.bearing(time))
        };
        let out = camera::outside_by(eye, bearing, self.turned[2], &body);
        Sight::new(&self.occluder(time), eye)
            .cover(self.camera_height, &body)
            .max(out)
    }

    /// Times between `from` and `to` where something starts or stops, so that all between is smooth.
    fn times(&self, from: f64, to: f64) -> Vec<f64> {
        let mut times = vec![
            from,
            to,
            self.move_from,
            self.move_from + self.move_time,
            self.actor.arrival(),
            self.double.cue,
            self.double.arrival(),
        ];
        times.retain(|time| (from..=to).contains(time));
        times.sort_by(f64::total_cmp);
        times
    }

    fn spans(&self, f: impl Fn(f64) -> f64, from: f64, to: f64) -> Vec<(f64, f64)> {
        camera::spans(f, &self.times(from, to), STEP)
    }

    /// The longest time in which both are wholly hidden.
    pub fn window(&self) -> Option<(f64, f64)> {
        self.covered(|[actor, double]| actor.min(double))
            .into_iter()
            .max_by(|a, b| (a.1 - a.0).total_cmp(&(b.1 - b.0)))
    }

    /// The window over the time in which anything of the two passes the occluder's edges.
    pub fn hidden_share(&self, from: f64, to: f64) -> f64 {
        let around = |who: usize, time: f64| {
            self.covered(|covers| covers[who] + 2.0 * self.radius)
                .into_iter()
                .find(|span| span.0 <= time && time <= span.1)
        };
        let begun = around(0, from).map_or(from, |span| span.0);
        let done = around(1, to).map_or(to, |span| span.1);
        if done > begun {
            ((to - from) / (done - begun)).min(1.0)
        } else {
            1.0
        }
    }

    /// How fast somebody's cover grows or shrinks, m/s.
    pub fn edge_speed(&self, walk: &Walk, time: f64) -> f64 {
        let h = 1e-3;
        ((self.cover(walk, time + h) - self.cover(walk, time - h)) / (2.0 * h)).abs()
    }

    /// Time in which the actor is seen after the window began, and the double before it ended.
    pub fn stray_time(&self, from: f64, to: f64) -> f64 {
        let seen = |walk: &Walk, a: f64, b: f64| {
            if b <= a {
                return 0.0;
            }
            let hidden = self
                .spans(|time| self.unseen(walk, time) + 1e-9, a, b)
                .iter()
                .map(|span| span.1 - span.0)
                .sum::<f64>();
            let seen = b - a - hidden;
            // Edges are found to well under a microsecond.
            if seen < 1e-6 { 0.0 } else { seen }
        };
        seen(&self.actor, from, self.shot_length) + seen(&self.double, 0.0, to)
    }

    /// The least share of the frame left beside the actor who vanishes and the double who appears.
    pub fn frame_margin(&self, from: f64, to: f64) -> Option<f64> {
        let inside = |walk: &Walk, time: f64| {
            camera::framing(
                self.eye(time),
                self.bearing(time),
                self.half_field,
                &self.body(walk, time),
            )
        };
        Some(inside(&self.actor, from)?.min(inside(&self.double, to)?))
    }

    /// Least distance between the two bodies: exact, because between the times they move straight.
    pub fn closest_approach(&self) -> f64 {
        let apart = |time: f64| {
            let (a, b) = (self.actor.at(time), self.double.at(time));
            [b[0] - a[0], b[1] - a[1]]
        };
        let mut least = f64::INFINITY;
        for pair in self.times(0.0, self.shot_length).windows(2) {
            let (a, b) = (apart(pair[0]), apart(pair[1]));
            let along = [b[0] - a[0], b[1] - a[1]];
            let square = along[0] * along[0] + along[1] * along[1];
            let share = if square > 0.0 {
                (-(a[0] * along[0] + a[1] * along[1]) / square).clamp(0.0, 1.0)
            } else {
                0.0
            };
            let near = [a[0] + along[0] * share, a[1] + along[1] * share];
            least = least.min(models::hypot(near[0], near[1]));
        }
        least - 2.0 * self.radius
    }

    /// Least room between the occluder's back and a body beside it; none when nobody goes beside it. Between the
    /// times everything moves straight, so the least is where a body comes beside, leaves, or turns.
    pub fn clearance_behind(&self) -> Option<f64> {
        let mut least: Option<f64> = None;
        for pair in self.times(0.0, self.shot_length).windows(2) {
            for walk in [&self.actor, &self.double] {
                // How far past the left side, short of the right side, and past the front; and the room.
                let at = |time: f64| {
                    let (at, occluder) = (walk.at(time), self.occluder(time));
                    [
                        at[0] - occluder.across.0 + self.radius,
                        occluder.across.1 + self.radius - at[0],
                        at[1] - occluder.away.0,
                        at[1] - self.radius - occluder.away.1,
                    ]
                };
                let (from, to) = (at(pair[0]), at(pair[1]));
                let Some((enters, leaves)) = inside([0, 1, 2].map(|i| (from[i], to[i]))) else {
                    continue;
                };
                for share in [enters, leaves] {
                    let room = from[3] + (to[3] - from[3]) * share;
                    least = Some(least.map_or(room, |before| before.min(room)));
                }
            }
        }
        least
    }

    /// Ground hidden from vanishing to the actor's mark, less what stopping takes.
    pub fn stop_room(&self, from: f64, rate: f64) -> f64 {
        let speed = if from < self.actor.arrival() {
            self.actor.speed
        } else {
            0.0
        };
        self.actor.left(from) - speed * speed / (2.0 * rate)
    }
}

/// Between which shares of a straight change all of these are positive; none when they never are together.
fn inside(changes: [(f64, f64); 3]) -> Option<(f64, f64)> {
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    for (from, to) in changes {
        if from <= 0.0 && to <= 0.0 {
            return None;
        }
        let crosses = from / (from - to);
        if from < 0.0 {
            enters = enters.max(crosses);
        } else if to < 0.0 {
            leaves = leaves.min(crosses);
        }
    }
    (enters <= leaves).then_some((enters, leaves))
}
