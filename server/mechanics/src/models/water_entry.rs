//! A body that falls into water: Newton's second law with the water's added mass, drag and lift, each
//! growing with the share of the body that is wet.
//!
//! d/dt [(m + M s) v] = m g - rho V g s - 1/2 rho CdA s v |v|, where s runs from 0 to 1 over the body's
//! length along the fall and M is the added mass of the whole body. While s grows the change of momentum
//! of the added mass is the slam (T. von Karman, NACA Technical Note 321, 1929; added masses of a rod
//! along and across, H. Lamb, Hydrodynamics, from memory). Drag coefficients are from memory. No air is
//! carried down and nobody swims: a body that spreads its arms stops sooner. So it is followed until it
//! stands still, and one that does not float never does.

use super::GRAVITY;

/// How a body meets the water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shape {
    /// Length along the fall, m.
    pub length: f64,
    /// Drag coefficient times area under water, m2.
    pub drag_area: f64,
    /// Added mass over the mass of the water that the body displaces.
    pub added: f64,
}

/// An entry.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Entry {
    /// Kitted mass, kg.
    pub mass: f64,
    /// Speed at the surface, m/s.
    pub speed: f64,
    /// Upward force on the whole body under water less its weight, N.
    pub float: f64,
    /// Density of the water, kg/m3.
    pub density: f64,
    /// The body.
    pub shape: Shape,
}

/// What becomes of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plunge {
    /// Greatest depth of the lowest point, m.
    pub depth: f64,
    /// Time to there, s.
    pub time: f64,
    /// Most felt, m/s2: the water's push over the body's mass.
    pub most_felt: f64,
}

/// How long a body that floats is followed, s. The last newton of float takes a quarter of a minute to turn
/// it; what takes longer has no depth to rely on.
const LONGEST: f64 = 60.0;
/// How long a body that sinks on is shown, s.
const SHOWN: f64 = 8.0;

/// Follows the body down, giving moments as time, depth, speed and what is felt. None when it sinks on.
///
/// Until the body is wet all over it is followed by power series in time; after that the water's push grows with
/// the square of the speed alone, and the motion has a closed form.
pub fn plunge(entry: &Entry, mut observe: impl FnMut(f64, f64, f64, f64)) -> Option<Plunge> {
    let water = Water::of(entry);
    let mut most_felt = 0.0_f64;
    let mut seen = |now: &Now, slams: bool| {
        let felt = GRAVITY - water.acceleration(now, slams);
        most_felt = most_felt.max(felt);
        observe(now.time, now.depth, now.speed, felt);
        felt
    };
    let mut tops = 0.0_f64;
    let mut now = Now {
        time: 0.0,
        depth: 0.0,
        speed: entry.speed.max(1e-3),
    };
    let look = (0.05 * entry.shape.length / entry.speed.max(0.5)).min(0.02);
    seen(&now, true);
    let mut wet = false;
    for _ in 0..MOST_PIECES {
        let series = Series::new(&water, &now);
        let entered = series.entered(&water);
        let until = entered.unwrap_or(series.holds);
        let looks = f64::ceil(until / look).clamp(LOOKS, 1000.0);
        let mut last = now;
        let mut before = [f64::NAN; 2];
        for i in 1..=looks as usize {
            last = series.at(&now, until * i as f64 / looks);
            let here = seen(&last, true);
            tops = tops.max(top([before[0], before[1], here]));
            before = [before[1], here];
        }
        now = last;
        wet = entered.is_some();
        if wet || now.time > LONGEST {
            break;
        }
    }
    if !wet {
        return None;
    }
    if now.speed > 1e-9 {
        let sinking = Sinking::from(&water, now);
        let turned = sinking.turns().filter(|after| now.time + after <= LONGEST);
        let shown = if entry.float > 0.0 { LONGEST } else { SHOWN };
        let until = turned.unwrap_or((shown - now.time).max(0.0));
        // What is felt changes soon or not at all.
        let soon = until.min(SOON);
        for (from, to, look) in [(0.0, soon, 0.02), (soon, until, 0.1)] {
            let looks = f64::ceil((to - from) / look).min(400.0);
            let begun = sinking.at(from);
            let step = Sinking::from(&water, begun).step((to - from) / looks.max(1.0));
            // The second part goes on where the first was last seen.
            if from == 0.0 {
                seen(&begun, false);
            }
            let mut last = begun;
            for _ in 0..looks as usize {
                last = step.on(&last);
                seen(&last, false);
            }
        }
        now = sinking.at(turned?);
    }
    Some(Plunge {
        depth: now.depth,
        time: now.time,
        most_felt: most_felt.max(tops),
    })
}

/// The top of the parabola through three even looks, where it lies between them; nothing where there are not three.
fn top([a, b, c]: [f64; 3]) -> f64 {
    let bend = 2.0 * b - a - c;
    if b >= a && b >= c && bend > 0.0 {
        b + (c - a) * (c - a) / (8.0 * bend)
    } else {
        0.0
    }
}

/// No fewer looks at any piece of an entry: what is felt may rise and fall within one.
const LOOKS: f64 = 8.0;

/// For how long the body is looked at closely once it is under, s.
const SOON: f64 = 0.5;

/// Where the body is and how fast.
#[derive(Clone, Copy)]
struct Now {
    time: f64,
    depth: f64,
    speed: f64,
}

/// What the water does to a body.
struct Water {
    mass: f64,
    weight: f64,
    length: f64,
    lift: f64,
    added: f64,
    drag: f64,
}

impl Water {
    fn of(entry: &Entry) -> Water {
        let weight = entry.mass * GRAVITY;
        let lift = weight + entry.float;
        Water {
            mass: entry.mass,
            weight,
            length: entry.shape.length,
            lift,
            added: entry.shape.added * lift / GRAVITY,
            drag: 0.5 * entry.density * entry.shape.drag_area,
        }
    }

    fn acceleration(&self, now: &Now, slams: bool) -> f64 {
        let wet = (now.depth / self.length).clamp(0.0, 1.0);
        let square = now.speed * now.speed.abs();
        let slam = if slams && now.speed > 0.0 {
            self.added / self.length * square
        } else {
            0.0
        };
        (self.weight - wet * (self.lift + self.drag * square) - slam)
            / (self.mass + self.added * wet)
    }
}

/// More pieces than any entry has.
const MOST_PIECES: usize = 20_000;

/// Order of the series.
const ORDER: usize = 12;

/// Allowed error of a series, m and m/s.
const CLOSE: f64 = 1e-11;

/// The entry as a power series in time, from the same law term by term.
struct Series {
    depth: [f64; ORDER + 2],
    speed: [f64; ORDER + 1],
    holds: f64,
}

fn sum(series: &[f64], at: f64) -> f64 {
    series.iter().rev().fold(0.0, |sum, one| sum * at + one)
}

impl Series {
    fn new(water: &Water, now: &Now) -> Series {
        let (mut depth, mut speed) = ([0.0; ORDER + 2], [0.0; ORDER + 1]);
        let (mut wet, mut square, mut rate) = ([0.0; ORDER], [0.0; ORDER], [0.0; ORDER]);
        depth[0] = now.depth;
        speed[0] = now.speed;
        let per_length = 1.0 / water.length;
        let heavy = 1.0 / (water.mass + water.added * now.depth * per_length);
        for k in 0..ORDER {
            wet[k] = depth[k] * per_length;
            square[k] = (0..=k).map(|i| speed[i] * speed[k - i]).sum();
            let dragged: f64 = (0..=k).map(|i| wet[i] * square[k - i]).sum();
            let carried: f64 = (1..=k).map(|i| wet[i] * rate[k - i]).sum();
            let pull = if k == 0 { water.weight } else { 0.0 };
            rate[k] = heavy
                * (pull
                    - water.lift * wet[k]
                    - water.drag * dragged
                    - water.added * (per_length * square[k] + carried));
            speed[k + 1] = rate[k] / (k + 1) as f64;
            depth[k + 1] = speed[k] / (k + 1) as f64;
        }
        depth[ORDER + 1] = speed[ORDER] / (ORDER + 1) as f64;
        let holds = |k: usize| {
            let size = speed[k].abs().max(1e-300);
            libm::pow(CLOSE / size, 1.0 / k as f64)
        };
        Series {
            holds: holds(ORDER).min(holds(ORDER - 1)).min(1.0),
            depth,
            speed,
        }
    }

    fn at(&self, from: &Now, after: f64) -> Now {
        Now {
            time: from.time + after,
            depth: sum(&self.depth, after),
            speed: sum(&self.speed, after),
        }
    }

    /// When the body is wet all over, or stops before it is; none when that is later. By halving and secants between
    /// two times of which the second is past it.
    fn entered(&self, water: &Water) -> Option<f64> {
        let left = |t: f64| (water.length - sum(&self.depth, t)).min(sum(&self.speed, t));
        let (mut low, mut high) = ((0.0, left(0.0)), (self.holds, left(self.holds)));
        if high.1 > 0.0 {
            return None;
        }
        for tried in 0..80 {
            let width = high.0 - low.0;
            if width <= 1e-15 || high.1 == 0.0 {
                break;
            }
            let secant = low.0 + width * low.1 / (low.1 - high.1);
            // Every other time a little past it, so that both ends close in.
            let past = if tried % 2 == 0 { 1e-14 } else { 1e-4 * width };
            let inside = secant + past > low.0 && secant + past < high.0 && tried % 5 != 4;
            let time = if inside {
                secant + past
            } else {
                low.0 + 0.5 * width
            };
            let now = (time, left(time));
            if now.1 > 0.0 {
                low = now;
            } else {
                high = now;
            }
        }
        Some(high.0)
    }
}

/// A body that is wet all over and goes down: v' = -a - b v^2, a the lift it has left and b its drag, over its mass
/// with the water's.
struct Sinking {
    from: Now,
    a: f64,
    b: f64,
}

/// A step of such a body: the tangent of its angle over the root of a b, and the logarithm of its cosine over b.
struct Step {
    length: f64,
    tangent: f64,
    cosine: f64,
    a: f64,
    b: f64,
}

impl Sinking {
    fn from(water: &Water, from: Now) -> Sinking {
        let heavy = water.mass + water.added;
        Sinking {
            from,
            a: (water.lift - water.weight) / heavy,
            b: (water.drag / heavy).max(1e-9),
        }
    }

    /// Time until it turns; none for one that does not float.
    fn turns(&self) -> Option<f64> {
        let Sinking { from, a, b } = self;
        (*a > 0.0).then(|| libm::atan(from.speed * f64::sqrt(b / a)) / f64::sqrt(a * b))
    }

    fn step(&self, length: f64) -> Step {
        let Sinking { a, b, .. } = *self;
        let root = f64::sqrt((a * b).abs());
        let angle = root * length;
        let (tangent, cosine) = if angle < 1e-8 {
            (length, 0.0)
        } else if a > 0.0 {
            (libm::tan(angle) / root, libm::log(libm::cos(angle)))
        } else {
            (libm::tanh(angle) / root, libm::log(libm::cosh(angle)))
        };
        Step {
            length,
            tangent,
            cosine: cosine / b,
            a,
            b,
        }
    }

    fn at(&self, after: f64) -> Now {
        if self.turns().is_some_and(|turns| after >= turns) {
            return Now {
                time: self.from.time + after,
                depth: self.from.depth
                    + libm::log1p(self.b / self.a * self.from.speed * self.from.speed)
                        / (2.0 * self.b),
                speed: 0.0,
            };
        }
        self.step(after).on(&self.from)
    }
}

impl Step {
    fn on(&self, now: &Now) -> Now {
        let turned = self.b * self.tangent * now.speed;
        Now {
            time: now.time + self.length,
            depth: now.depth + self.cosine + libm::log1p(turned) / self.b,
            speed: (now.speed - self.a * self.tangent) / (1.0 + turned),
        }
    }
}
