//! A straight run from rest: speed nears its top exponentially, v' = (V - v) / T (J. B. Keller, Physics
//! Today 26, 1973, the first phase of his sprint), and the runner stays where the run ends.

/// A run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sprint {
    /// Speed that it nears, m/s.
    pub top_speed: f64,
    /// Time in which 63 % of it is reached, s; 0 starts at full speed.
    pub rise_time: f64,
    /// From start to end, m.
    pub length: f64,
}

/// A rise shorter than this is none, s: times over it would soon be too great to write down.
const SHORTEST_RISE: f64 = 1e-6;

impl Sprint {
    /// The rise time, where there is one to speak of.
    fn rise(&self) -> Option<f64> {
        (self.rise_time >= SHORTEST_RISE).then_some(self.rise_time)
    }

    /// Distance from the start a time after setting off, m.
    pub fn place(&self, time: f64) -> f64 {
        if time <= 0.0 {
            return 0.0;
        }
        let behind = self
            .rise()
            .map_or(0.0, |rise| -rise * libm::expm1(-time / rise));
        (self.top_speed * (time - behind)).clamp(0.0, self.length)
    }

    /// Speed a time after setting off, m/s; none is left at the end.
    pub fn speed(&self, time: f64) -> f64 {
        if time <= 0.0 || self.place(time) >= self.length {
            return 0.0;
        }
        let share = self.rise().map_or(1.0, |rise| -libm::expm1(-time / rise));
        self.top_speed * share
    }

    /// Time after setting off at which a distance within the run is reached, s.
    pub fn time_at(&self, place: f64) -> f64 {
        self.passing(place, &mut None)
    }

    /// The same after one already solved for a run much like it, which is near.
    pub fn passing(&self, place: f64, last: &mut Option<Passing>) -> f64 {
        let steady = place.clamp(0.0, self.length) / self.top_speed;
        let Some(rise) = self.rise().filter(|_| steady > 0.0) else {
            return steady;
        };
        let share = steady / rise;
        let guess = match last {
            Some(near) => near.moved(share),
            None => share + f64::sqrt(2.0 * share).min(1.0),
        };
        let found = Passing::solve(share, guess);
        *last = Some(found);
        found.time * rise
    }

    /// Times between which the run is between two of its places: none when it never is, without a
    /// beginning when it starts there, without an end when it ends there.
    pub fn times_between(&self, places: (f64, f64)) -> Option<(f64, f64)> {
        self.passing_between(places, &mut [None; 2])
    }

    /// The same after those of a run much like it.
    pub fn passing_between(
        &self,
        places: (f64, f64),
        [first, second]: &mut [Option<Passing>; 2],
    ) -> Option<(f64, f64)> {
        let (from, to) = places;
        if to < 0.0 || from > self.length {
            return None;
        }
        let begins = if from <= 0.0 {
            f64::NEG_INFINITY
        } else {
            self.passing(from, first)
        };
        let ends = if to >= self.length {
            f64::INFINITY
        } else {
            self.passing(to, second)
        };
        Some((begins, ends))
    }
}

/// A time over the rise time, t - (1 - exp(-t)) = share, and the share of top speed reached by then.
#[derive(Clone, Copy, Debug)]
pub struct Passing {
    share: f64,
    time: f64,
    gone: f64,
}

impl Passing {
    /// Halley's method: each round leaves about the cube of what was off.
    fn solve(share: f64, guess: f64) -> Passing {
        let mut found = Passing {
            share,
            time: guess,
            gone: 1.0,
        };
        for _ in 0..60 {
            let gone = -libm::expm1(-found.time);
            if gone <= 0.0 {
                break;
            }
            let step = (found.time - gone - share) / gone;
            let step = step / (1.0 - 0.5 * step * (1.0 - gone) / gone).max(0.5);
            found.time = (found.time - step).max(0.25 * found.time);
            found.gone = gone - step * (1.0 - gone);
            if step.abs() <= 1e-5 * found.time {
                break;
            }
        }
        found
    }

    /// About the time for another share: a parabola.
    fn moved(&self, share: f64) -> f64 {
        let by = (share - self.share) / self.gone;
        let bent = by - 0.5 * by * by * (1.0 - self.gone) / self.gone;
        let guess = self.time + bent;
        if guess > 0.5 * self.time && guess < 2.0 * self.time {
            guess
        } else {
            share + f64::sqrt(2.0 * share).min(1.0)
        }
    }
}

/// Where a straight line enters and leaves a circle about the origin, as distances from the line's start;
/// none when it passes outside.
pub fn chord(start: [f64; 2], direction: [f64; 2], radius: f64) -> Option<(f64, f64)> {
    let foot = -(start[0] * direction[0] + start[1] * direction[1]);
    let square = start[0] * start[0] + start[1] * start[1] - foot * foot;
    let half = radius * radius - square;
    (half > 0.0).then(|| {
        let half = f64::sqrt(half);
        (foot - half, foot + half)
    })
}
