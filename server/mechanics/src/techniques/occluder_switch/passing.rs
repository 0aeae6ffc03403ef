//! How near the two may come when cue and speeds fall anywhere inside their tolerances, and not only at the ends:
//! the distance over a cue is a valley, and its bottom may lie in between.

use super::scene::{Scene, Walk};
use crate::{
    models::{self, camera::Plan},
    reading::Values,
};

/// The most time between two looks, s, and how often the best place is looked at again ten times closer.
const LOOK: f64 = 0.05;
const CLOSER: i32 = 3;

/// Least room between the two bodies over every cue and speed inside the tolerances; none when none of these has
/// a tolerance, or something is not entered. At any time each of them is somewhere on a stretch of their path, any
/// place on one with any on the other. Places and widths give what they can besides, in the direction in question.
pub(super) fn least(values: &Values) -> Option<f64> {
    let ends = |name| values.ends_of(name);
    let timing = ["actor_speed", "double_speed", "double_cue"];
    if timing
        .iter()
        .all(|name| ends(name).is_none_or(|(low, high)| low == high))
    {
        return None;
    }
    let scene = Scene::read(values)?;
    let actor = Loose::read(
        values,
        &scene.actor,
        ["actor_speed", "actor_start", "actor_end"],
        (0.0, 0.0),
    )?;
    let cue = ends("double_cue")?;
    let double = Loose::read(
        values,
        &scene.double,
        ["double_speed", "double_start", "double_end"],
        cue,
    )?;
    let width = ends("body_width")?.1;
    let end = ends("shot_length")?.1;
    let room = |time: f64| between(&actor, &double, time) - width;
    let (mut from, mut to) = (0.0, end);
    let mut parts = f64::ceil(end / LOOK).max(1.0);
    let mut least = f64::INFINITY;
    for _ in 0..=CLOSER {
        let step = (to - from) / parts;
        let mut at = from;
        for i in 0..=(parts as u32) {
            let time = from + step * f64::from(i);
            let here = room(time);
            if here < least {
                (least, at) = (here, time);
            }
        }
        (from, to) = ((at - step).max(0.0), (at + step).min(end));
        parts = 20.0;
    }
    Some(least)
}

/// A walk whose speed, cue and places have tolerances.
struct Loose<'a> {
    walk: &'a Walk,
    speed: (f64, f64),
    cue: (f64, f64),
    /// Tolerances of the places, across and away, at the start and at the end.
    places: [Plan; 2],
}

impl<'a> Loose<'a> {
    fn read(
        values: &Values,
        walk: &'a Walk,
        [speed, start, end]: [&str; 3],
        cue: (f64, f64),
    ) -> Option<Loose<'a>> {
        let half = |place: &str, way: &str| {
            let (low, high) = values.ends_of(&format!("{place}_{way}"))?;
            Some(0.5 * (high - low))
        };
        let place = |name: &str| Some([half(name, "across")?, half(name, "away")?]);
        Some(Loose {
            walk,
            speed: values.ends_of(speed)?,
            cue,
            places: [place(start)?, place(end)?],
        })
    }

    /// The stretch that it may be on at a time, as shares of its path.
    fn stretch(&self, time: f64) -> (f64, f64) {
        let length = self.walk.length();
        let share = |speed: f64, cue: f64| {
            if length > 0.0 {
                (speed * (time - cue) / length).clamp(0.0, 1.0)
            } else {
                0.0
            }
        };
        (
            share(self.speed.0, self.cue.1),
            share(self.speed.1, self.cue.0),
        )
    }

    fn at(&self, share: f64) -> Plan {
        [0, 1].map(|i| self.walk.from[i] + (self.walk.to[i] - self.walk.from[i]) * share)
    }

    /// How far its place may come along a direction. Whoever is still walking has gone as far as ever from wherever
    /// they began: a start that moves along the path takes the whole of them with it, and only across the path do
    /// both ends have their share.
    fn give(&self, share: f64, way: Plan) -> f64 {
        let [start, end] = self.places;
        let bound = |tolerance: Plan, along: Plan| {
            tolerance[0] * along[0].abs() + tolerance[1] * along[1].abs()
        };
        let length = self.walk.length();
        if length <= 0.0 {
            return bound(start, way).max(bound(end, way));
        }
        let ahead = minus(self.walk.to, self.walk.from).map(|part| part / length);
        let along = ahead[0] * way[0] + ahead[1] * way[1];
        let lengthways = ahead.map(|part| part * along);
        let across = minus(way, lengthways);
        let by_start = [0, 1].map(|i| lengthways[i] + (1.0 - share) * across[i]);
        let walking = bound(start, by_start) + bound(end, across.map(|part| share * part));
        if share < 1.0 {
            walking
        } else {
            walking.max(bound(end, way))
        }
    }
}

/// Least distance of two people on their stretches at a time, less what their places give.
fn between(a: &Loose, b: &Loose, time: f64) -> f64 {
    let ((a0, a1), (b0, b1)) = (a.stretch(time), b.stretch(time));
    let (p0, p1, q0, q1) = (a.at(a0), a.at(a1), b.at(b0), b.at(b1));
    let (u, v) = (minus(p1, p0), minus(q1, q0));
    let across = u[0] * v[1] - u[1] * v[0];
    if across != 0.0 {
        let w = minus(q0, p0);
        let s = (w[0] * v[1] - w[1] * v[0]) / across;
        let t = (w[0] * u[1] - w[1] * u[0]) / across;
        if (0.0..=1.0).contains(&s) && (0.0..=1.0).contains(&t) {
            // The stretches cross: the two may stand on one point, and no place makes that worse.
            return 0.0;
        }
    }
    // Otherwise the nearest of two straight stretches is at an end of one.
    let ends = [
        (0.0, nearest(p0, q0, v)),
        (1.0, nearest(p1, q0, v)),
        (nearest(q0, p0, u), 0.0),
        (nearest(q1, p0, u), 1.0),
    ];
    let distance = |(s, t): (f64, f64)| {
        let (s, t) = (a0 + (a1 - a0) * s, b0 + (b1 - b0) * t);
        let apart = minus(b.at(t), a.at(s));
        let far = models::hypot(apart[0], apart[1]);
        if far <= 0.0 {
            return 0.0;
        }
        let way = apart.map(|part| part / far);
        (far - a.give(s, way) - b.give(t, way)).max(0.0)
    };
    ends.into_iter().map(distance).fold(f64::INFINITY, f64::min)
}

fn minus(a: Plan, b: Plan) -> Plan {
    [a[0] - b[0], a[1] - b[1]]
}

/// Share of the stretch from `from` along `way` that lies nearest to a point.
fn nearest(point: Plan, from: Plan, way: Plan) -> f64 {
    let square = way[0] * way[0] + way[1] * way[1];
    if square > 0.0 {
        let to = minus(point, from);
        ((to[0] * way[0] + to[1] * way[1]) / square).clamp(0.0, 1.0)
    } else {
        0.0
    }
}
