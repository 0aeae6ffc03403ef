//! A launch on its way: gas from the reservoir fills the cylinder, which lifts the arm and throws the body.

use super::launch::{Launch, Moment, Place, Setup};
use crate::models::{
    GRAVITY, PER_ATMOSPHERE, STANDARD_ATMOSPHERE,
    gas::{Cylinder, Filled, Reservoir, Standing},
    ode::{self, Accuracy, End, Motion, Point},
    peak::Peak,
};

/// Longer than any launch; one that is not over by then has stalled.
const LONGEST: f64 = 1.5;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-4,
    absolute: 5e-6,
    longest_step: 0.0125,
    looks: 2,
    most_steps: 12_000,
};

/// The state: fifth root of the share of gas left, cylinder pressure over atmosphere, the arm's angle and its rate.
type State = [f64; 4];

/// A launch on its way, and who watches it.
struct Launching<'a> {
    setup: &'a Setup,
    reservoir: Reservoir,
    /// One over the inertia of arm and body about the hinge, 1/(kg m2), and over the time in which the valve opens, 1/s.
    over_inertia: f64,
    over_opening: f64,
    /// Moment of their weight with the arm level, N m.
    hanging: f64,
    /// The arm where it begins.
    first: Place,
    /// Sine and cosine of the body's lean.
    lean: (f64, f64),
    /// When the arm is lifted, and from where on it is followed.
    from: Point<4>,
    samples: Vec<(f64, f64)>,
    felt: Peak,
    push: Peak,
    observe: Observe<'a>,
}

/// Who looks on, if anybody.
type Observe<'a> = Option<&'a mut dyn FnMut(Moment)>;

impl<'a> Launching<'a> {
    fn new(setup: &'a Setup, observe: Observe<'a>) -> Launching<'a> {
        let arm = &setup.arm;
        let mut launching = Launching {
            setup,
            reservoir: setup.reservoir(),
            over_inertia: 1.0 / (arm.inertia() + setup.mass * setup.foot * setup.foot),
            over_opening: 1.0 / setup.opening,
            hanging: (setup.mass * setup.foot + 0.5 * arm.mass * arm.length) * GRAVITY,
            first: arm.at(arm.start),
            lean: libm::sincos(setup.lean),
            from: Point {
                t: 0.0,
                y: [1.0, 1.0, arm.start, 0.0],
            },
            samples: Vec::new(),
            felt: Peak::over(0.0),
            push: Peak::over(0.0),
            observe,
        };
        let standing = launching.moment(0.0, &launching.from.y);
        launching.samples.push((0.0, standing.felt));
        launching.felt = Peak::over(standing.felt);
        launching.push = Peak::over(standing.push);
        launching.fill(standing);
        launching
    }

    /// First the cylinder fills while arm and body stand. Where they are never lifted, that is followed.
    fn fill(&mut self, standing: Moment) {
        let setup = self.setup;
        let cylinder = Standing {
            pressure: STANDARD_ATMOSPHERE,
            volume: setup.dead_volume,
            opening: setup.opening,
        };
        let push = self.hanging * self.first.cosine / self.first.lever + setup.friction;
        let lifts = STANDARD_ATMOSPHERE + push / setup.area;
        let Some(lifted) = self.reservoir.fills(&cylinder, lifts) else {
            return;
        };
        if lifted.time >= LONGEST {
            return;
        }
        if let Some(observe) = &mut self.observe {
            for (Filled { time, .. }, pressure) in self.reservoir.filling(&cylinder, lifts) {
                observe(Moment {
                    time,
                    cylinder: pressure,
                    ..standing
                });
            }
        }
        self.from = Point {
            t: lifted.time,
            y: [lifted.root, lifts * PER_ATMOSPHERE, setup.arm.start, 0.0],
        };
    }

    /// The moment of the push less that of the weight, N m.
    fn moment_left(&self, pressure: f64, place: &Place) -> f64 {
        let gauge = pressure * STANDARD_ATMOSPHERE - STANDARD_ATMOSPHERE;
        let push = (gauge * self.setup.area - self.setup.friction).max(0.0);
        push * place.lever - self.hanging * place.cosine
    }

    /// How the arm speeds up.
    fn turning(&self, y: &State, place: &Place) -> f64 {
        let turn = self.moment_left(y[1], place);
        // At rest the frame holds the arm until the push lifts it.
        if turn < 0.0 && y[2] <= self.setup.arm.start && y[3] <= 0.0 {
            0.0
        } else {
            turn * self.over_inertia
        }
    }

    /// Rates of the gas while the cylinder has some volume and that grows.
    #[inline(always)]
    fn gas(&self, t: f64, root: f64, pressure: f64, [volume, growth, surge]: [f64; 3]) -> [f64; 2] {
        let cylinder = Cylinder {
            pressure: (pressure * STANDARD_ATMOSPHERE).max(1.0),
            volume,
            growth,
            surge,
        };
        let open = (t * self.over_opening).min(1.0);
        let filling = self.reservoir.fill(root, open, &cylinder);
        [filling.root, filling.pressure * PER_ATMOSPHERE]
    }

    fn moment(&self, t: f64, y: &State) -> Moment {
        let setup = self.setup;
        let place = setup.arm.at(y[2]);
        let (sine, cosine) = (place.sine, place.cosine);
        let along_circle = setup.foot * self.turning(y, &place);
        let to_hinge = setup.foot * y[3] * y[3];
        // Along and up: what the foot does, and gravity.
        let force = [
            along_circle * sine + to_hinge * cosine,
            along_circle * cosine - to_hinge * sine + GRAVITY,
        ];
        let felt = force[0] * self.lean.0 + force[1] * self.lean.1;
        Moment {
            time: t,
            angle: y[2],
            speed: setup.foot * y[3],
            felt: felt.max(0.0),
            push: setup.mass * (along_circle + GRAVITY * cosine).max(0.0),
            cylinder: y[1] * STANDARD_ATMOSPHERE,
        }
    }

    fn rests(&self, at: &Point<4>) -> bool {
        let [root, pressure, _, turning] = at.y;
        at.t > self.setup.opening + 0.1
            && turning.abs() < 1e-3
            && pressure * STANDARD_ATMOSPHERE > 0.995 * self.reservoir.pressure(root)
    }

    fn outcome(mut self, end: End<4>) -> Option<Launch> {
        let (last, finished) = match end {
            End::Event(point) => (point, !self.rests(&point) && point.y[3] > 0.0),
            End::Finished(point) => (point, false),
            End::Failed => return None,
        };
        // In the air nothing is felt.
        self.samples.push((last.t, 0.0));
        Some(Launch {
            finished,
            time: last.t,
            first_moved: self.from.t,
            angle: last.y[2],
            speed: self.setup.foot * last.y[3].max(0.0),
            peak_felt: self.felt.most(),
            peak_push: self.push.most(),
            pressure_left: self.reservoir.pressure(last.y[0]),
            samples: self.samples,
        })
    }
}

/// Over when the arm meets its stop, when the feet leave a plate that slows down, or when all rests.
impl Motion<4> for Launching<'_> {
    fn rate(&self, t: f64, y: &State) -> State {
        let setup = self.setup;
        let place = setup.arm.at(y[2]);
        let turn = self.turning(y, &place);
        let grown = (place.cylinder - self.first.cylinder).max(0.0);
        let growth = setup.area * place.lever * y[3];
        let bent = setup.arm.lever_change(&place) * (y[3] * y[3]);
        let surge = setup.area * (place.lever * turn + bent);
        let volume = setup.dead_volume + setup.area * grown;
        let [left, rise] = self.gas(t, y[0], y[1], [volume, growth, surge]);
        [left, rise, y[3], turn]
    }

    fn event(&self, at: &Point<4>) -> f64 {
        if self.rests(at) {
            return 0.0;
        }
        let place = self.setup.arm.at(at.y[2]);
        let pressed = self.setup.foot * self.turning(&at.y, &place) + GRAVITY * place.cosine;
        (self.setup.arm.end - at.y[2]).min(pressed / GRAVITY)
    }

    fn observe(&mut self, at: &Point<4>) {
        let now = self.moment(at.t, &at.y);
        self.felt.see(now.time, now.felt);
        self.push.see(now.time, now.push);
        self.samples.push((now.time, now.felt));
        if let Some(observe) = &mut self.observe {
            observe(now);
        }
    }
}

/// Runs the launch. None when the solver failed.
pub(super) fn run(setup: &Setup) -> Option<Launch> {
    follow(vec![Launching::new(setup, None)]).pop()?
}

/// As [`run`], giving each look to `observe`.
pub(super) fn run_and_watch(setup: &Setup, mut observe: impl FnMut(Moment)) -> Option<Launch> {
    follow(vec![Launching::new(setup, Some(&mut observe))]).pop()?
}

/// As [`run`], for launches of any number.
pub(super) fn run_all(setups: &[Setup]) -> Vec<Option<Launch>> {
    let launches = setups.iter().map(|setup| Launching::new(setup, None));
    follow(launches.collect())
}

fn follow(mut launches: Vec<Launching>) -> Vec<Option<Launch>> {
    let from = |launching: &Launching| (launching.from, LONGEST);
    let ends = ode::integrate_all(&mut launches, from, ACCURACY);
    let each = launches.into_iter().zip(ends);
    each.map(|(launching, end)| launching.outcome(end))
        .collect()
}
