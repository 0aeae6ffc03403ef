//! A loaded car as a body on four wheels: where its mass lies, what tips it, how it leans in a swerve, and what
//! each axle can brake. Quasi-static balances and one degree of freedom in roll, after T. D. Gillespie,
//! Fundamentals of Vehicle Dynamics (SAE 1992), chapters 1, 3 and 9. Tyres, springs and axles are taken alike on
//! both sides; pitch, yaw and the tyres' own give are left out.

use core::f64::consts::PI;

use super::GRAVITY;

/// A mass and where it lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// kg.
    pub mass: f64,
    /// Height over the ground, m.
    pub height: f64,
    /// Forward of the rear axle, m.
    pub along: f64,
}

/// Two parts as one: their masses added, their middles weighed.
pub fn together(one: Part, other: Part) -> Part {
    let mass = one.mass + other.mass;
    Part {
        mass,
        height: (one.mass * one.height + other.mass * other.height) / mass,
        along: (one.mass * one.along + other.mass * other.along) / mass,
    }
}

/// Radius of gyration in roll about the common middle, m: the first part's own, and the height between the two
/// (the parallel axis theorem); the second part's own is left out, which makes the lean quicker.
pub fn roll_radius(one: Part, other: Part, own: f64) -> f64 {
    let mass = one.mass + other.mass;
    let apart = one.height - other.height;
    let share = one.mass * other.mass / (mass * mass);
    f64::sqrt(one.mass / mass * own * own + share * apart * apart)
}

/// Sideways pull, in g, that tips a car which leans on its springs: T / 2H for a rigid one, less because the
/// middle moves outward as it leans (Gillespie, equation 9-6).
pub fn tipping_pull(track: f64, height: f64, roll_centre: f64, lean_per_g: f64) -> f64 {
    track / (2.0 * (height + lean_per_g * (height - roll_centre)))
}

/// The same on a road that falls away outward by an angle; negative when it is banked inward.
pub fn on_bank(pull: f64, fall: f64) -> f64 {
    libm::tan(libm::atan(pull) - fall)
}

/// How a car leans.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lean {
    /// Between the wheels of an axle, m.
    pub track: f64,
    /// Height of the axis it leans about, m.
    pub roll_centre: f64,
    /// Height of the middle over that axis, m.
    pub arm: f64,
    /// Lean under a steady sideways pull of 1 g, rad.
    pub per_g: f64,
    /// Radius of gyration in roll, m.
    pub radius: f64,
    /// Damping as a share of critical.
    pub damping: f64,
}

/// A moment of a swerve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// s.
    pub time: f64,
    /// Sideways pull, m/s2.
    pub pull: f64,
    /// Lean, rad.
    pub lean: f64,
    /// Share of the inner wheels' load that has gone to the outer ones: at 1 they lift.
    pub moved: f64,
}

impl Lean {
    /// Natural frequency in roll, rad/s: what the springs hold beyond the weight's own pull, over the inertia.
    pub fn frequency(&self) -> f64 {
        let inertia = self.radius * self.radius + self.arm * self.arm;
        f64::sqrt(GRAVITY * self.arm / (self.per_g * inertia))
    }

    /// Swerves aside and back: one whole sine of sideways pull over a time, and half a swing after it. Gives the
    /// largest share of load moved. The lean is a damped swing under a sine, which has an exact solution.
    pub fn swerve(&self, peak: f64, time: f64, mut observe: impl FnMut(Moment)) -> Option<f64> {
        let frequency = self.frequency();
        let swing = frequency * f64::sqrt(1.0 - self.damping * self.damping);
        if !(swing > 0.0 && time > 0.0 && peak.is_finite()) {
            return None;
        }
        let decay = self.damping * frequency;
        let turn = 2.0 * PI / time;
        // The steady answer a sin + b cos to f^2 per_g peak / g sin.
        let (square, rubbing) = (frequency * frequency - turn * turn, 2.0 * decay * turn);
        let forced = frequency * frequency * self.per_g * peak
            / GRAVITY
            / (square * square + rubbing * rubbing);
        let (a, b) = (forced * square, -forced * rubbing);
        let under = Motion {
            decay,
            swing,
            turn,
            steady: [a, b],
            free: free([0.0, 0.0], [b, a * turn], decay, swing),
        };
        // After it the car swings back by itself.
        let after = Motion {
            steady: [0.0, 0.0],
            free: free(under.at(time), [0.0, 0.0], decay, swing),
            ..under
        };
        // Moments that the springs and dampers hand to the wheels, over the weight.
        let spring = self.arm * (1.0 + 1.0 / self.per_g);
        let damper = 2.0 * self.damping * self.arm / (self.per_g * frequency);
        let share = |[lean, rate]: [f64; 2], pull: f64| {
            let moment = self.roll_centre * pull / GRAVITY + spring * lean + damper * rate;
            2.0 * moment / self.track
        };
        let mut most = 0.0_f64;
        let mut phase = |motion: &Motion, from: f64, length: f64, peak: f64| {
            let step = (time.min(2.0 * PI / frequency) / LOOKS).max(time / 1000.0);
            let looks = f64::ceil(length / step).clamp(2.0, 2000.0);
            let step = length / looks;
            let moved = |t: f64| share(motion.at(t), peak * libm::sin(turn * t));
            let mut walk = motion.walk(step);
            let mut seen = [0.0_f64; 2];
            for i in 0..=looks as usize {
                let (state, sine) = walk.next();
                let pull = peak * sine;
                let here = share(state, pull);
                observe(Moment {
                    time: from + length * (i as f64 / looks),
                    pull,
                    lean: state[0],
                    moved: here,
                });
                most = most.max(here.abs());
                // A top between three looks is sought where it could count.
                let [before, middle] = seen;
                let sign = middle.signum();
                let (up, down) = (sign * (middle - before), sign * (middle - here));
                if i >= 2 && up >= 0.0 && down >= 0.0 && middle.abs() + up.max(down) > most {
                    most = most.max(top(&moved, step * (i - 1) as f64, step));
                }
                // At either end there are only two.
                let at_end = i == 1 || i == looks as usize;
                if at_end && 1.05 * here.abs().max(middle.abs()) > most {
                    most = most.max(top(&moved, step * (i as f64 - 0.5), 0.5 * step));
                }
                seen = [middle, here];
            }
        };
        phase(&under, 0.0, time, peak);
        phase(&after, time, PI / frequency, 0.0);
        Some(most)
    }
}

/// Looks to a swing: tops between them are sought.
const LOOKS: f64 = 60.0;

/// The largest size of a function near a time, known to have a top within a step of it: parabolas through three
/// points, each time closer together.
fn top(value: &impl Fn(f64) -> f64, mut at: f64, mut step: f64) -> f64 {
    let mut most = 0.0_f64;
    for _ in 0..3 {
        let [a, b, c] = [at - step, at, at + step].map(|t| value(t).abs());
        let bend = a - 2.0 * b + c;
        most = most.max(b);
        if bend >= 0.0 {
            break;
        }
        at += (0.5 * step * (a - c) / bend).clamp(-step, step);
        step *= 0.05;
    }
    most.max(value(at).abs())
}

/// A damped swing under a sine: a sin + b cos of the turning, and c cos + d sin of the swing that dies away.
#[derive(Clone, Copy)]
struct Motion {
    decay: f64,
    swing: f64,
    turn: f64,
    steady: [f64; 2],
    free: [f64; 2],
}

/// The free part that takes a steady part, as place and speed, to a state at the start.
fn free(state: [f64; 2], steady: [f64; 2], decay: f64, swing: f64) -> [f64; 2] {
    let (x, v) = (state[0] - steady[0], state[1] - steady[1]);
    [x, (v + decay * x) / swing]
}

impl Motion {
    /// Place and speed at a time.
    fn at(&self, t: f64) -> [f64; 2] {
        self.of(
            libm::sincos(self.turn * t),
            libm::sincos(self.swing * t),
            libm::exp(-self.decay * t),
        )
    }

    fn of(&self, forced: (f64, f64), swung: (f64, f64), left: f64) -> [f64; 2] {
        let ([a, b], [c, d]) = (self.steady, self.free);
        let ((s, k), (sine, cosine)) = (forced, swung);
        let (x, q) = (c * cosine + d * sine, d * cosine - c * sine);
        [
            a * s + b * k + left * x,
            self.turn * (a * k - b * s) + left * (self.swing * q - self.decay * x),
        ]
    }

    /// Even looks from the start on: each is turned on from the one before.
    fn walk(&self, step: f64) -> Walk<'_> {
        Walk {
            motion: self,
            by: (
                libm::sincos(self.turn * step),
                libm::sincos(self.swing * step),
            ),
            less: libm::exp(-self.decay * step),
            forced: (0.0, 1.0),
            swung: (0.0, 1.0),
            left: 1.0,
        }
    }
}

struct Walk<'a> {
    motion: &'a Motion,
    by: ((f64, f64), (f64, f64)),
    less: f64,
    forced: (f64, f64),
    swung: (f64, f64),
    left: f64,
}

impl Walk<'_> {
    /// The state at this look, and the sine of the turning.
    fn next(&mut self) -> ([f64; 2], f64) {
        let found = (
            self.motion.of(self.forced, self.swung, self.left),
            self.forced.0,
        );
        let on = |(s, c): (f64, f64), by: (f64, f64)| (s * by.1 + c * by.0, c * by.1 - s * by.0);
        self.forced = on(self.forced, self.by.0);
        self.swung = on(self.swung, self.by.1);
        self.left *= self.less;
        found
    }
}

/// The pull that moves a car aside over a time in one whole sine, m/s2: y = A t^2 / 2 pi.
pub fn swerve_pull(aside: f64, time: f64) -> f64 {
    2.0 * core::f64::consts::PI * aside / (time * time)
}

/// Deceleration at which the first axle locks, m/s2, for a front share of weight and of braking (Gillespie,
/// chapter 3: load moves forward by a H / L). None when an axle carries nothing.
pub fn locking(
    friction: f64,
    front_share: f64,
    front_brake: f64,
    height: f64,
    wheelbase: f64,
) -> Option<f64> {
    if !(front_share > 0.0 && front_share < 1.0) {
        return None;
    }
    let shift = friction * height / wheelbase;
    let rear = friction * GRAVITY * (1.0 - front_share) / (1.0 - front_brake + shift);
    let left = front_brake - shift;
    // Where load arrives faster than braking, the front never locks.
    let front = if left > 0.0 {
        friction * GRAVITY * front_share / left
    } else {
        f64::INFINITY
    };
    Some(front.min(rear))
}

/// Road hidden in front of an eye by an edge ahead and below it, measured from under the eye, m: similar
/// triangles. None when the edge is not below the eye.
pub fn hidden_ahead(eye: f64, edge: f64, distance: f64) -> Option<f64> {
    (eye - edge > 1e-3).then(|| distance * eye / (eye - edge))
}

/// Load on the worst of `mounts` under a pull along a base, N: its share of the push, and of the weight and the
/// overturning on the loaded side (statics; the middle lies over the middle of the base).
pub fn mount_load(mass: f64, pull: f64, height: f64, base: f64, mounts: f64) -> f64 {
    let upright = 2.0 * (pull * height / base + 0.5 * GRAVITY);
    mass * super::hypot(pull, upright) / mounts
}

/// The pull, m/s2, at which that load comes to a strength; nothing when the weight alone does.
pub fn mount_pull(mass: f64, strength: f64, height: f64, base: f64, mounts: f64) -> f64 {
    let slope = 2.0 * height / base;
    let most = strength * mounts / mass;
    let square = 1.0 + slope * slope;
    let half = slope * GRAVITY;
    let room = half * half - square * (GRAVITY * GRAVITY - most * most);
    if room <= 0.0 {
        return 0.0;
    }
    ((f64::sqrt(room) - half) / square).max(0.0)
}
