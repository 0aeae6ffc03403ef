//! A throw with quadratic drag, by the slope of its path. In the air's own frame the level speed u and the slope
//! p = w / u obey du/dp = (k / g) u^3 sqrt(1 + p^2), which has the closed form
//! 1 / u^2 = constant - (k / g) (p sqrt(1 + p^2) + asinh p); time and place are then integrals over the slope, and
//! those are found by Gauss's rule (any text on exterior ballistics; N. de Mestre, The Mathematics of Projectiles
//! in Sport, 1990, from memory). The slope is counted downward, as p = -sinh q with q growing all the way.

use super::GRAVITY;

/// Longest piece in q for six points, with shorter ones for four and for two. The integrands have their nearest poles a
/// quarter turn off the axis: what is left out is under 1e-8 of a piece of people's throws and falls, and a millionth
/// where drag holds as much as weight.
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
const SIX: [(f64, f64); 3] = [
    (0.238_619_186_083_196_9, 0.467_913_934_572_691),
    (0.661_209_386_466_264_5, 0.360_761_573_048_138_6),
    (0.932_469_514_203_152, 0.171_324_492_379_170_4),
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
    /// Level speed through the air, m/s, and the slope's exponential.
    level: f64,
    turn: Turn,
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
        let turn = Turn::at(slope);
        path.base = 1.0 / (level * level) - path.drag * (turn.sinh() * turn.cosh() + slope);
        let start = State {
            time: 0.0,
            place,
            speed,
            slope,
            level,
            turn,
        };
        (path, start)
    }

    /// The level speed and its square, by the slope and its hyperbolic sine and cosine.
    fn level(&self, slope: f64, turn: &Turn) -> (f64, f64) {
        let square = 1.0 / (self.base + self.drag * (turn.sinh() * turn.cosh() + slope));
        (f64::sqrt(square), square)
    }

    /// The state where the slope has changed by so much, which is no more than a piece.
    pub fn on(&self, from: &State, by: f64) -> State {
        let far = by.abs();
        if far > 0.3 {
            self.sum::<3, LONG_SERIES>(from, by, &SIX)
        } else if far > 0.02 {
            self.sum::<2, MIDDLE_SERIES>(from, by, &FOUR)
        } else {
            self.sum::<1, SHORT_SERIES>(from, by, &TWO)
        }
    }

    fn sum<const POINTS: usize, const TERMS: usize>(
        &self,
        from: &State,
        by: f64,
        points: &[(f64, f64); POINTS],
    ) -> State {
        let half = 0.5 * by;
        let at_middle = from.slope + half;
        let [_, middle] = from.turn.beside::<TERMS>(half);
        // Rates of time, of the way through the air and of the fall, over gravity.
        let mut sums = [0.0; 3];
        for (at, weight) in points {
            let aside = half * at;
            let sides = middle.beside::<TERMS>(aside);
            for (aside, turn) in [-aside, aside].into_iter().zip(&sides) {
                let (level, square) = self.level(at_middle + aside, turn);
                let out = weight * square * turn.cosh();
                sums[0] += weight * level * turn.cosh();
                sums[1] += out;
                sums[2] += out * turn.sinh();
            }
        }
        let [time, out, fall] = sums.map(|sum| half / GRAVITY * sum);
        let slope = from.slope + by;
        let [_, mut turn] = middle.beside::<TERMS>(half);
        // At the top nothing is left of the rise.
        if slope == 0.0 {
            turn = Turn::LEVEL;
        }
        let (level, _) = self.level(slope, &turn);
        State {
            time: from.time + time,
            place: [
                from.place[0] + self.way * out + self.wind * time,
                from.place[1] - fall,
            ],
            speed: [self.way * level + self.wind, -level * turn.sinh()],
            slope,
            level,
            turn,
        }
    }

    /// How far to go on from a state at once: no further than the rule is good for, than the top, or than takes
    /// so long, s.
    pub fn piece(&self, from: &State, longest: f64) -> f64 {
        let fast = from.level * from.turn.cosh();
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

/// Terms of either half of the exponential's series for half of a piece, by its length: the next would change no digit.
const LONG_SERIES: usize = 8;
const MIDDLE_SERIES: usize = 6;
const SHORT_SERIES: usize = 4;

/// A slope, as its exponential and one over that, so that a step along it loses no digit however steep it is.
#[derive(Clone, Copy, Debug)]
struct Turn {
    up: f64,
    down: f64,
}

impl Turn {
    const LEVEL: Turn = Turn { up: 1.0, down: 1.0 };

    fn at(slope: f64) -> Turn {
        let up = libm::exp(slope);
        Turn { up, down: 1.0 / up }
    }

    fn sinh(&self) -> f64 {
        0.5 * (self.up - self.down)
    }

    fn cosh(&self) -> f64 {
        0.5 * (self.up + self.down)
    }

    /// As far to the lower side as to the upper, no more than half a piece, by the first terms of the exponential's
    /// series.
    #[inline(always)]
    fn beside<const TERMS: usize>(&self, aside: f64) -> [Turn; 2] {
        let square = aside * aside;
        let (mut odd, mut even) = (1.0, 1.0);
        for term in (1..TERMS).rev() {
            let n = 2.0 * term as f64;
            odd = 1.0 + square * (1.0 / (n * (n + 1.0))) * odd;
            even = 1.0 + square * (1.0 / (n * (n - 1.0))) * even;
        }
        let (more, less) = (even + aside * odd, even - aside * odd);
        [(less, more), (more, less)].map(|(up, down)| Turn {
            up: self.up * up,
            down: self.down * down,
        })
    }
}
