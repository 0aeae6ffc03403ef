//! A person swinging on a line: the plain pendulum at any amplitude, with quadratic drag. Newton's
//! second law along the arc; the line's pull from the balance across it. Any text on mechanics.

use super::{
    GRAVITY,
    ode::{self, Accuracy, Point},
};

/// A pendulum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pendulum {
    /// Length from the pivot to the body's centre, m.
    pub length: f64,
    /// Angle from the vertical at release, rad.
    pub release_angle: f64,
    /// Mass, kg.
    pub mass: f64,
    /// Drag coefficient times area, m2.
    pub drag_area: f64,
    /// Air density, kg/m3.
    pub density: f64,
}

/// A moment of the swing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time since release, s.
    pub time: f64,
    /// Angle from the vertical, rad.
    pub angle: f64,
    /// Speed along the arc, m/s, signed like the angle.
    pub speed: f64,
    /// What the body feels along the line, m/s2: g cos(angle) + v^2 / L.
    pub felt: f64,
}

impl Pendulum {
    /// Period of small swings, s.
    pub fn small_period(&self) -> f64 {
        2.0 * core::f64::consts::PI * f64::sqrt(self.length / GRAVITY)
    }

    /// What drag takes of the turning, over its square.
    fn drag_share(&self) -> f64 {
        0.5 * self.density * self.drag_area * self.length / self.mass
    }

    fn moment(&self, point: &Point<2>) -> Moment {
        let [angle, turning] = point.y;
        let speed = turning * self.length;
        Moment {
            time: point.t,
            angle,
            speed,
            felt: GRAVITY * libm::cos(angle) + turning * turning * self.length,
        }
    }

    /// Swings for `duration` seconds, giving each step to `observe`. False when the solver failed.
    pub fn swing(&self, duration: f64, mut observe: impl FnMut(Moment)) -> bool {
        let factor = self.drag_share();
        let accuracy = Accuracy {
            relative: 1e-9,
            absolute: 1e-11,
            longest_step: self.small_period() / 60.0,
            looks: 1,
            most_steps: 50_000,
        };
        ode::integrate(
            |_, y: &[f64; 2]| {
                [
                    y[1],
                    -GRAVITY / self.length * libm::sin(y[0]) - factor * y[1] * y[1].abs(),
                ]
            },
            Point {
                t: 0.0,
                y: [self.release_angle, 0.0],
            },
            duration,
            accuracy,
            |_| 1.0,
            |point| observe(self.moment(point)),
        )
        .point()
        .is_some()
    }

    /// The moment of the first swing in which the body feels most, near its bottom: later swings have less. Over the
    /// angle the square of the turning obeys a linear equation, (w^2)' = 2 f w^2 - 2 g / L sin(angle), which has a
    /// closed form; the time is its integral. None for one that is released at the bottom.
    pub fn most_felt(&self) -> Option<Moment> {
        let released = self.release_angle;
        if released <= 0.0 {
            return None;
        }
        let drag = self.drag_share();
        let b = 2.0 * GRAVITY / self.length / (1.0 + 4.0 * drag * drag);
        let a = 2.0 * drag * b;
        let (sine, cosine) = libm::sincos(released);
        let start = a * sine + b * cosine;
        // The square of the turning, with sine and cosine of the angle and what the drag has left of the start.
        let turning = |angle: f64| {
            let (sine, cosine) = libm::sincos(angle);
            let left = start * libm::exp(2.0 * drag * (angle - released));
            (a * sine + b * cosine - left, sine, cosine, left)
        };
        // What is felt, g cos + L w^2, is most where its slope by the angle is nothing.
        let mut angle = 0.0;
        for _ in 0..30 {
            let (_, sine, cosine, left) = turning(angle);
            let slope = (a * cosine - b * sine - 2.0 * drag * left) * self.length - GRAVITY * sine;
            let bend = -(a * sine + b * cosine + 4.0 * drag * drag * left) * self.length
                - GRAVITY * cosine;
            let step = slope / bend;
            angle = (angle - step).clamp(-0.5 * released, 0.9 * released);
            if step.abs() <= 1e-15 {
                break;
            }
        }
        let (square, _, cosine, _) = turning(angle);
        // Near the release the turning grows with the root of the way: in that root the rest is smooth.
        let way = released - angle;
        let time: f64 = SIXTEEN
            .iter()
            .flat_map(|(at, weight)| [(0.5 - 0.5 * at, weight), (0.5 + 0.5 * at, weight)])
            .map(|(root, weight)| {
                let (square, ..) = turning(released - way * root * root);
                weight * way * root / f64::sqrt(square)
            })
            .sum();
        Some(Moment {
            time,
            angle,
            speed: -f64::sqrt(square) * self.length,
            felt: GRAVITY * cosine + square * self.length,
        })
    }
}

/// Points and weights of Gauss's rule of sixteen on -1 to 1, one side (Abramowitz and Stegun, table 25.4).
const SIXTEEN: [(f64, f64); 8] = [
    (0.095_012_509_837_637_44, 0.189_450_610_455_068_5),
    (0.281_603_550_779_258_9, 0.182_603_415_044_923_6),
    (0.458_016_777_657_227_4, 0.169_156_519_395_002_54),
    (0.617_876_244_402_643_7, 0.149_595_988_816_576_73),
    (0.755_404_408_355_003, 0.124_628_971_255_533_87),
    (0.865_631_202_387_831_7, 0.095_158_511_682_492_78),
    (0.944_575_023_073_232_6, 0.062_253_523_938_647_89),
    (0.989_400_934_991_649_9, 0.027_152_459_411_754_095),
];
