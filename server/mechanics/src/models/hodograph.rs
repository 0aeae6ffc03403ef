//! A throw with quadratic drag, by the slope of its path. In the air's own frame the level speed u and the slope
//! p = w / u obey du/dp = (k / g) u^3 sqrt(1 + p^2), which has the closed form
//! 1 / u^2 = constant - (k / g) (p sqrt(1 + p^2) + asinh p); time and place are then integrals over the slope, and
//! those are found by Gauss's rule (any text on exterior ballistics; N. de Mestre, The Mathematics of Projectiles
//! in Sport, 1990, from memory). The slope is counted downward, as p = -sinh q with q growing all the way.

use super::GRAVITY;

/// Longest piece in q for eight points: the integrands have their nearest poles a quarter turn off the axis, so what
/// is left out is under 1e-14 of the piece.
const LONGEST: f64 = 0.8;

/// A body that goes straight up or down is followed as if it went aside this slowly, m/s: its fall is the same to
/// the square of that.
const SLOWEST: f64 = 1e-6;

/// Points and weights of Gauss's rule on -1 to 1, one side (Abramowitz and Stegun, table 25.4).
const TWO: [(f64, f64); 1] = [(0.577_350_269_189_625_8, 1.0)];
const FOUR: [(f64, f64); 2] = [
    (0.339_981_043_584_856_3, 0.652_145_154_862_546_1),
    (0.861_136_311_594_052_6, 0.347_854_845_137_453_9),
];
const EIGHT: [(f64, f64); 4] = [
    (0.183_434_642_495_649_8, 0.362_683_783_378_362),
    (0.525_532_409_916_329, 0.313_706_645_877_887_3),
    (0.796_666_477_413_626_7, 0.222_381_034_453_374_5),
    (0.960_289_856_497_536_3, 0.101_228_536_290_376_3),
];

/// Where a body is and how fast.
#[derive(Clone, Copy, Debug)]
pub(super) struct State {
    /// s.
    pub time: f64,
    /// Along and up, m.
    pub place: [f64; 2],
    /// Along and up, m/s.
    pub speed: [f64; 2],
    /// Slope of the path through the air, as q.
    pub slope: f64,
    /// Level speed through the air, m/s, and the cosine of the slope: the speed through it over the level one.
    level: f64,
    cosh: f64,
}

/// One throw.
pub(super) struct Path {
    /// Drag's deceleration over the square of the speed through the air, over gravity, s2/m2.
    drag: f64,
    wind: f64,
    /// Which way it goes through the air: 1, -1, or 0 for straight up and down.
    way: f64,
    /// 1 / u^2 less what the slope adds to it.
    base: f64,
}

impl Path {
    /// The path of a throw from a place at a speed, and its first state. `drag` is the deceleration over the
    /// square of the speed through the air, 1/m.
    pub fn new(place: [f64; 2], speed: [f64; 2], drag: f64, wind: f64) -> (Path, State) {
        let through = speed[0] - wind;
        let level = through.abs().max(SLOWEST);
        let slope = -libm::asinh(speed[1] / level);
        let mut path = Path {
            drag: drag / GRAVITY,
            wind,
            way: if through.abs() < SLOWEST {
                through / SLOWEST
            } else {
                through.signum()
            },
            base: 0.0,
        };
        let (sinh, cosh) = Turn::at(slope).by(0.0);
        path.base = 1.0 / (level * level) - path.drag * (sinh * cosh + slope);
        let start = State {
            time: 0.0,
            place,
            speed,
            slope,
            level,
            cosh,
        };
        (path, start)
    }

    /// The level speed and its square, by the slope and its hyperbolic sine and cosine.
    fn level(&self, slope: f64, (sinh, cosh): (f64, f64)) -> (f64, f64) {
        let square = 1.0 / (self.base + self.drag * (sinh * cosh + slope));
        (f64::sqrt(square), square)
    }

    /// The state where the slope has changed by so much, which is no more than a piece.
    pub fn on(&self, from: &State, by: f64) -> State {
        let far = by.abs();
        let points: &[(f64, f64)] = if far > 0.2 {
            &EIGHT
        } else if far > 0.004 {
            &FOUR
        } else {
            &TWO
        };
        let half = 0.5 * by;
        let middle = Turn::at(from.slope + half);
        // Rates of time, of the way through the air and of the fall, over gravity.
        let mut sums = [0.0; 3];
        for (at, weight) in points {
            for aside in [-half * at, half * at] {
                let turned = middle.by(aside);
                let (level, square) = self.level(middle.slope + aside, turned);
                let out = weight * square * turned.1;
                sums[0] += weight * level * turned.1;
                sums[1] += out;
                sums[2] += out * turned.0;
            }
        }
        let [time, out, fall] = sums.map(|sum| half / GRAVITY * sum);
        let slope = from.slope + by;
        let (sinh, cosh) = middle.by(half);
        // At the top nothing is left of the rise.
        let sinh = if slope == 0.0 { 0.0 } else { sinh };
        let (level, _) = self.level(slope, (sinh, cosh));
        State {
            time: from.time + time,
            place: [
                from.place[0] + self.way * out + self.wind * time,
                from.place[1] - fall,
            ],
            speed: [self.way * level + self.wind, -level * sinh],
            slope,
            level,
            cosh,
        }
    }

    /// How far to go on from a state at once: no further than the rule is good for, than the top, or than takes
    /// so long, s.
    pub fn piece(&self, from: &State, longest: f64) -> f64 {
        let fast = from.level * from.cosh;
        // Where drag is strong a pole lies close behind.
        let room = 1.0 / (fast * fast * self.drag.max(1e-12));
        let on = LONGEST.min(room).min(longest * GRAVITY / fast);
        if from.slope < 0.0 && from.slope + 1.1 * on > 0.0 {
            -from.slope
        } else {
            on
        }
    }
}

/// A slope with its hyperbolic sine and cosine.
struct Turn {
    slope: f64,
    sinh: f64,
    cosh: f64,
}

impl Turn {
    fn at(slope: f64) -> Turn {
        let up = libm::exp(slope);
        let down = 1.0 / up;
        Turn {
            slope,
            sinh: 0.5 * (up - down),
            cosh: 0.5 * (up + down),
        }
    }

    /// Hyperbolic sine and cosine a little aside, no more than half a piece: by the addition theorem and the
    /// first terms of their series, of which the next would change no digit.
    fn by(&self, aside: f64) -> (f64, f64) {
        let square = aside * aside;
        let term = |over: f64, rest: f64| 1.0 + square * (1.0 / over) * rest;
        let odd = [210.0, 156.0, 110.0, 72.0, 42.0, 20.0, 6.0];
        let even = [240.0, 182.0, 132.0, 90.0, 56.0, 30.0, 12.0, 2.0];
        let s = aside * odd.into_iter().fold(1.0, |rest, over| term(over, rest));
        let c = even.into_iter().fold(1.0, |rest, over| term(over, rest));
        (self.sinh * c + self.cosh * s, self.cosh * c + self.sinh * s)
    }
}
