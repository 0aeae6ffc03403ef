//! One step of a swing whose frequency, damping and push change slowly: u'' = p(t) - s(t) u - d(t) u'.
//!
//! The Magnus expansion to the fourth order by two Gauss points (S. Blanes, F. Casas, J. A. Oteo and J. Ros,
//! Physics Reports 470, 2009, section 5.4; A. Iserles and S. P. Norsett, Phil. Trans. R. Soc. A 357, 1999): exact
//! for a swing that does not change, however long the step, and where it changes the error goes with the change
//! alone. A Runge-Kutta pair has to follow each swing.

/// What makes the swing at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Swing {
    /// The square of its frequency, s, above nothing, 1/s2.
    pub square: f64,
    /// The damping d, 1/s.
    pub damping: f64,
    /// The push p on a unit of mass, in the displacement's unit over s2.
    pub push: f64,
}

/// Where within a step the two moments lie, as shares of it.
pub const MOMENTS: [f64; 2] = [
    0.5 - 0.288_675_134_594_812_87,
    0.5 + 0.288_675_134_594_812_87,
];

/// A twelfth of the root of three, which is what the change within the step weighs.
const CHANGE: f64 = 0.144_337_567_297_406_44;

/// Where a step comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moved {
    /// Displacement and its rate.
    pub to: [f64; 2],
    /// The square of the acceleration by which it swings, about what changes slowly.
    pub swing: f64,
}

/// Displacement and its rate after a step of `h`, at most three eighths of a swing, known with the swing at the
/// two [`MOMENTS`] of it. None where the swing changes as fast as it swings.
///
/// The swing is about a straight line in time that is a solution at both moments, so that nothing pushes what is left.
#[inline]
pub fn step(first: &Swing, second: &Swing, h: f64, [u, rate]: [f64; 2]) -> Option<Moved> {
    let [early, late] = MOMENTS;
    let lean1 = first.square * (early * h) + first.damping;
    let lean2 = second.square * (late * h) + second.damping;
    let straight = first.square * lean2 - second.square * lean1;
    let apart = first.square * second.square * h * (late - early);
    if straight.is_nan() || straight <= 0.5 * apart {
        return None;
    }
    let scale = 1.0 / straight;
    let at_start = (first.push * lean2 - second.push * lean1) * scale;
    let slope = (first.square * second.push - second.square * first.push) * scale;
    let change = CHANGE * h * h;
    let fall = change * (second.square - first.square);
    let mean = |first: f64, second: f64| 0.5 * h * (first + second);
    let [[a, b], [c, d]] = exponential([
        [fall, h - change * (first.damping - second.damping)],
        [
            -mean(first.square, second.square)
                - change * (first.damping * second.square - second.damping * first.square),
            -mean(first.damping, second.damping) - fall,
        ],
    ]);
    let (off, off_rate) = (u - at_start, rate - slope);
    Some(Moved {
        to: [
            at_start + slope * h + a * off + b * off_rate,
            slope + c * off + d * off_rate,
        ],
        swing: first.square * (first.square * off * off + off_rate * off_rate),
    })
}

/// The exponential of a small two by two matrix: half its trace, and a traceless rest whose square is a number.
#[inline]
fn exponential([[m, n], [o, p]]: [[f64; 2]; 2]) -> [[f64; 2]; 2] {
    let half = 0.5 * (m + p);
    let off = 0.5 * (m - p);
    let square = off * off + n * o;
    // cosh and sinh of the root over the root, as series of the square: it is below nothing for what swings.
    let even = series(square, &EVEN);
    let odd = series(square, &ODD);
    let scale = exponential_of(half);
    [
        [scale * (even + odd * off), scale * odd * n],
        [scale * odd * o, scale * (even - odd * off)],
    ]
}

/// So many are exact to a ten millionth for a step of three eighths of a swing.
const TERMS: usize = 8;

/// One over the factorials of 0, 2, 4 and so on.
const EVEN: [f64; TERMS] = over_factorials(0, 2);
/// One over the factorials of 1, 3, 5 and so on.
const ODD: [f64; TERMS] = over_factorials(1, 2);
/// One over the factorials of 0, 1, 2 and so on.
const ALL: [f64; TERMS] = over_factorials(0, 1);

const fn over_factorials(first: usize, apart: usize) -> [f64; TERMS] {
    let mut all = [0.0; TERMS];
    let mut factorial = 1.0;
    let mut at = 0;
    let mut n = 0;
    while n < TERMS {
        while at < first + n * apart {
            at += 1;
            factorial *= at as f64;
        }
        all[n] = 1.0 / factorial;
        n += 1;
    }
    all
}

/// In pairs of terms, which do not wait for each other.
#[inline(always)]
fn series(x: f64, [a, b, c, d, e, f, g, h]: &[f64; TERMS]) -> f64 {
    let square = x * x;
    let low = (a + b * x) + square * (c + d * x);
    let high = (e + f * x) + square * (g + h * x);
    low + (square * square) * high
}

/// The exponential: what damps a step of most swings is so little that its series is as good and quicker.
fn exponential_of(x: f64) -> f64 {
    if x.abs() < 0.2 {
        series(x, &ALL)
    } else {
        libm::exp(x)
    }
}

/// Displacement, its rate and its acceleration.
pub type State = [f64; 3];

/// The inside of a step that is no longer than three eighths of a swing: the polynomial of the fifth degree through
/// displacement, rate and acceleration at both ends.
#[derive(Clone, Copy, Debug)]
pub struct Within {
    step: f64,
    terms: [f64; 6],
}

impl Within {
    /// Of a step of `step` between two states.
    #[inline]
    pub fn new(from: &State, to: &State, step: f64) -> Within {
        let (rate0, rate1) = (from[1] * step, to[1] * step);
        let (bend0, bend1) = (0.5 * from[2] * step * step, 0.5 * to[2] * step * step);
        let rise = to[0] - from[0] - rate0 - bend0;
        let steeper = rate1 - rate0 - 2.0 * bend0;
        let bent = bend1 - bend0;
        Within {
            step,
            terms: [
                from[0],
                rate0,
                bend0,
                10.0 * rise - 4.0 * steeper + bent,
                -15.0 * rise + 7.0 * steeper - 2.0 * bent,
                6.0 * rise - 3.0 * steeper + bent,
            ],
        }
    }

    /// How long the step is.
    #[inline]
    pub fn step(&self) -> f64 {
        self.step
    }

    /// Displacement and rate at a share of the step.
    #[inline]
    pub fn at(&self, s: f64) -> [f64; 2] {
        let [a, b, c, d, e, f] = self.terms;
        [
            a + s * (b + s * (c + s * (d + s * (e + s * f)))),
            (b + s * (2.0 * c + s * (3.0 * d + s * (4.0 * e + s * 5.0 * f)))) / self.step,
        ]
    }

    /// The share of the step where the acceleration, with a part that grows at `slope` beside it, turns; none where it
    /// does not, or turns and turns back.
    #[inline]
    pub fn turn(&self, slope: f64) -> Option<f64> {
        let [_, _, _, d, e, f] = self.terms;
        let (a, b) = (60.0 * f, 24.0 * e);
        let c = 6.0 * d + slope * (self.step * self.step) * self.step;
        if c * (a + b + c) >= 0.0 {
            return None;
        }
        // One root lies within: of the two forms of each root, those that lose no digits.
        let root = f64::sqrt((b * b - 4.0 * a * c).max(0.0));
        let q = -0.5 * (b + root.copysign(b));
        let inside = |s: &f64| *s >= 0.0 && *s <= 1.0;
        [c / q, q / a].into_iter().find(inside)
    }
}
