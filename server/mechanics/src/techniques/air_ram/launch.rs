//! The launch itself: gas from a reservoir through a valve into a cylinder that turns an arm about its
//! hinge, and a body that stands on the arm's plate. Knows no limit.
//!
//! The hinge is ahead of the body, so the plate rises and moves forward: at the arm's angle q over the
//! floor the foot at R moves along (sin q, cos q). The cylinder stands on the frame and pushes the arm at
//! r; its length c(q) follows from the triangle, and its push turns the arm with F dc/dq. The body rides
//! upright without turning, so the arm turns its mass as if it were at the foot:
//! (I + m R^2) q'' = F dc/dq - (m R + m_arm L / 2) g cos q. Newton's second law; gas as in [`gas`].

use crate::{
    models::{
        self, GRAVITY, STANDARD_ATMOSPHERE, atmosphere,
        gas::{self, Cylinder, Reservoir, Valve},
        ode::{self, Accuracy, End, Motion, Point},
        peak::Peak,
        trajectory::{self, Landing, Throw},
    },
    reading::Values,
};

/// Longer than any launch; one that is not over by then has stalled.
const LONGEST: f64 = 1.5;
/// The body's centre above what it lies on, m (common practice).
const LYING_HEIGHT: f64 = 0.3;

const ACCURACY: Accuracy = Accuracy {
    relative: 1e-4,
    absolute: 5e-6,
    longest_step: 0.03,
    looks: 3,
    most_steps: 12_000,
};

/// Arm and cylinder, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Arm {
    pub start: f64,
    pub end: f64,
    pub length: f64,
    pub mass: f64,
    /// Hinge to the cylinder's pin on the arm.
    pub pin: f64,
    /// The cylinder's foot: back from the hinge, and below it.
    pub back: f64,
    pub below: f64,
}

impl Arm {
    /// Length of the cylinder between its pins at an angle.
    pub(super) fn cylinder(&self, angle: f64) -> f64 {
        models::hypot(
            self.back - self.pin * libm::cos(angle),
            self.pin * libm::sin(angle) + self.below,
        )
    }

    /// How fast that length grows with the angle: the lever of the push, m.
    pub(super) fn lever(&self, angle: f64) -> f64 {
        self.at(angle).lever
    }

    /// All that an angle decides.
    fn at(&self, angle: f64) -> Place {
        let (sine, cosine) = libm::sincos(angle);
        let (along, up) = (self.back - self.pin * cosine, self.pin * sine + self.below);
        let cylinder = models::hypot(along, up);
        Place {
            sine,
            cosine,
            cylinder,
            lever: self.pin * (self.back * sine + self.below * cosine) / cylinder.max(1e-6),
        }
    }

    /// How fast the lever changes with the angle, m.
    fn lever_change(&self, place: &Place) -> f64 {
        let bent = self.pin * (self.back * place.cosine - self.below * place.sine);
        (bent - place.lever * place.lever) / place.cylinder.max(1e-6)
    }

    /// Stroke that the arm asks of its cylinder.
    pub(super) fn stroke(&self) -> f64 {
        self.cylinder(self.end) - self.cylinder(self.start)
    }

    /// Moment of inertia about the hinge, as an even bar.
    pub(super) fn inertia(&self) -> f64 {
        self.mass * self.length * self.length / 3.0
    }
}

/// The arm at an angle: its sine and cosine, the cylinder's length and the lever of its push.
struct Place {
    sine: f64,
    cosine: f64,
    cylinder: f64,
    lever: f64,
}

/// Everything the launch depends on, SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Setup {
    pub mass: f64,
    pub arm: Arm,
    pub foot: f64,
    pub hinge_height: f64,
    pub centre: f64,
    pub lean: f64,
    pub run_in: f64,
    /// Absolute.
    pub pressure: f64,
    pub reservoir_volume: f64,
    pub area: f64,
    pub dead_volume: f64,
    pub valve: Valve,
    pub opening: f64,
    pub friction: f64,
    pub temperature: f64,
    /// Where the body's centre lands, above the floor.
    pub landing: f64,
    pub drag_area: f64,
}

impl Setup {
    pub(super) fn of(values: &Values) -> Option<Setup> {
        let number = |name| values.number(name);
        Some(Setup {
            mass: number("performer_mass")?,
            arm: Arm {
                start: number("arm_start")?,
                end: number("arm_end")?,
                length: number("arm_length")?,
                mass: number("arm_mass")?,
                pin: number("cylinder_pin")?,
                back: number("cylinder_back")?,
                below: number("cylinder_below")?,
            },
            foot: number("foot_distance")?,
            hinge_height: number("hinge_height")?,
            centre: number("centre_height")?,
            lean: number("body_lean")?,
            run_in: number("run_in_speed")?,
            pressure: number("reservoir_pressure")? + STANDARD_ATMOSPHERE,
            reservoir_volume: number("reservoir_volume")?,
            area: gas::piston_area(number("bore")?, 0.0),
            dead_volume: number("dead_volume")?,
            valve: Valve {
                conductance: number("valve_conductance")?,
                critical_ratio: number("valve_critical_ratio")?,
            },
            opening: number("valve_opening_time")?,
            friction: number("seal_friction")?,
            temperature: number("air_temperature")?,
            landing: number("landing_height")? + LYING_HEIGHT,
            drag_area: number("drag_area")?,
        })
    }

    /// Whether the arm goes up at all and its cylinder pushes it that way all along.
    pub(super) fn turns(&self) -> bool {
        let arm = &self.arm;
        arm.end > arm.start
            && (0..=8).all(|i| {
                let angle = arm.start + (arm.end - arm.start) * f64::from(i) / 8.0;
                arm.lever(angle) > 1e-3
            })
    }

    fn reservoir(&self) -> Reservoir {
        Reservoir::new(
            self.reservoir_volume,
            self.pressure,
            self.temperature,
            self.valve,
        )
    }

    /// The flight of the body's centre after the launch, in a steady wind along; none where nobody was thrown.
    pub(super) fn fly(&self, launch: &Launch, wind: f64) -> Option<Landing> {
        self.fly_and_sample(launch, wind, |_| {})
    }

    pub(super) fn fly_and_sample(
        &self,
        launch: &Launch,
        wind: f64,
        observe: impl FnMut(trajectory::Sample),
    ) -> Option<Landing> {
        if !launch.finished {
            return None;
        }
        let height = self.hinge_height
            + self.foot * libm::sin(launch.angle)
            + self.centre * libm::cos(self.lean)
            - self.landing;
        let (along, up) = launch.velocity(self);
        let throw = Throw {
            speed: models::hypot(along, up),
            angle: libm::atan2(up, along),
            height,
            mass: self.mass,
            drag_area: self.drag_area,
            density: atmosphere::density(0.0),
            wind,
        };
        trajectory::fly_and_sample(&throw, observe)
    }

    /// How far the body's centre is ahead of the first footprint when it leaves the plate, m.
    pub(super) fn carried(&self, launch: &Launch) -> f64 {
        self.foot * (libm::cos(self.arm.start) - libm::cos(launch.angle))
            + self.centre * libm::sin(self.lean)
    }
}

/// A moment of the launch.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Moment {
    pub time: f64,
    /// Arm's angle over the floor, rad.
    pub angle: f64,
    /// Speed of the foot along its circle, m/s.
    pub speed: f64,
    /// What the legs feel along the body, m/s2.
    pub felt: f64,
    /// Push of the plate on the feet, N.
    pub push: f64,
    /// Absolute, Pa.
    pub cylinder: f64,
}

/// What a launch came to.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Launch {
    /// Whether the body was thrown.
    pub finished: bool,
    pub time: f64,
    pub first_moved: f64,
    /// Where the body left the plate.
    pub angle: f64,
    /// Speed of the foot there.
    pub speed: f64,
    pub peak_felt: f64,
    pub peak_push: f64,
    /// Absolute, Pa.
    pub pressure_left: f64,
    /// `(time, acceleration)` along the legs, gravity included.
    pub samples: Vec<(f64, f64)>,
}

impl Launch {
    /// Speeds of the body along and up as it leaves.
    pub(super) fn velocity(&self, setup: &Setup) -> (f64, f64) {
        (
            self.speed * libm::sin(self.angle) + setup.run_in,
            self.speed * libm::cos(self.angle),
        )
    }

    /// From a tenth to nine tenths of the way from standing to the peak, s.
    pub(super) fn rise_time(&self) -> Option<f64> {
        let stood = self.samples.first()?.1;
        let first = |share: f64| {
            let level = stood + share * (self.peak_felt - stood);
            let at = self.samples.iter().position(|sample| sample.1 >= level)?;
            let (t1, a1) = self.samples[at];
            if at == 0 {
                return Some(t1);
            }
            let (t0, a0) = self.samples[at - 1];
            Some(t0 + (t1 - t0) * (level - a0) / (a1 - a0))
        };
        (self.peak_felt > stood).then_some(())?;
        Some(first(0.9)? - first(0.1)?)
    }
}

/// The state while the arm is held: fifth root of the share of gas left, cylinder pressure over atmosphere.
type Held = [f64; 2];

/// The state while it turns: the same, its angle and its rate.
type State = [f64; 4];

/// A launch on its way, and who watches it.
struct Launching<'a> {
    setup: &'a Setup,
    reservoir: Reservoir,
    /// Of arm and body about the hinge, kg m2.
    inertia: f64,
    /// Moment of their weight with the arm level, N m.
    hanging: f64,
    /// The arm where it begins.
    first: Place,
    /// Sine and cosine of the body's lean.
    lean: (f64, f64),
    /// While the body only stands.
    standing: Moment,
    /// When the arm is lifted, and with how much gas.
    lifted: Point<2>,
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
            inertia: arm.inertia() + setup.mass * setup.foot * setup.foot,
            hanging: (setup.mass * setup.foot + 0.5 * arm.mass * arm.length) * GRAVITY,
            first: arm.at(arm.start),
            lean: libm::sincos(setup.lean),
            standing: Moment::default(),
            lifted: Point {
                t: 0.0,
                y: [1.0, 1.0],
            },
            samples: Vec::new(),
            felt: Peak::over(0.0),
            push: Peak::over(0.0),
            observe,
        };
        let standing = launching.moment(0.0, &[1.0, 1.0, arm.start, 0.0]);
        launching.standing = standing;
        launching.samples.push((0.0, standing.felt));
        launching.felt = Peak::over(standing.felt);
        launching.push = Peak::over(standing.push);
        launching
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
            turn / self.inertia
        }
    }

    /// Rates of the gas while the cylinder has some volume and that grows.
    fn gas(&self, t: f64, root: f64, pressure: f64, [volume, growth, surge]: [f64; 3]) -> Held {
        let cylinder = Cylinder {
            pressure: (pressure * STANDARD_ATMOSPHERE).max(1.0),
            volume,
            growth,
            surge,
        };
        let open = (t / self.setup.opening).min(1.0);
        let filling = self.reservoir.fill(root, open, &cylinder);
        [filling.root, filling.pressure / STANDARD_ATMOSPHERE]
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

    fn is_at_rest(&self, t: f64, root: f64, pressure: f64, turning: f64) -> bool {
        t > self.setup.opening + 0.1
            && turning.abs() < 1e-3
            && pressure * STANDARD_ATMOSPHERE > 0.995 * self.reservoir.pressure(root)
    }

    fn rests(&self, at: &Point<4>) -> bool {
        self.is_at_rest(at.t, at.y[0], at.y[1], at.y[3])
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
            first_moved: self.lifted.t,
            angle: last.y[2],
            speed: self.setup.foot * last.y[3].max(0.0),
            peak_felt: self.felt.most(),
            peak_push: self.push.most(),
            pressure_left: self.reservoir.pressure(last.y[0]),
            samples: self.samples,
        })
    }
}

/// First the cylinder fills, until it lifts the arm or all rests. Until then the body only stands.
impl Motion<2> for Launching<'_> {
    fn rate(&self, t: f64, y: &Held) -> Held {
        self.gas(t, y[0], y[1], [self.setup.dead_volume, 0.0, 0.0])
    }

    fn event(&self, at: &Point<2>) -> f64 {
        let [root, pressure] = at.y;
        if self.is_at_rest(at.t, root, pressure, 0.0) {
            0.0
        } else {
            -self.moment_left(pressure, &self.first)
        }
    }

    fn observe(&mut self, at: &Point<2>) {
        let now = Moment {
            time: at.t,
            cylinder: at.y[1] * STANDARD_ATMOSPHERE,
            ..self.standing
        };
        if let Some(observe) = &mut self.observe {
            observe(now);
        }
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
    let start = |launching: &Launching| (launching.lifted, LONGEST);
    let filled = ode::integrate_all(&mut launches, start, ACCURACY);
    for (launching, filled) in launches.iter_mut().zip(&filled) {
        launching.lifted = filled.point().unwrap_or(launching.lifted);
    }
    let lifted = |launching: &Launching| {
        let Point { t, y } = launching.lifted;
        let y = [y[0], y[1], launching.setup.arm.start, 0.0];
        (Point { t, y }, LONGEST)
    };
    let ends = ode::integrate_all(&mut launches, lifted, ACCURACY);
    let launches = launches.into_iter().zip(filled.iter().zip(ends));
    launches
        .map(|(launching, (filled, end))| launching.outcome(filled.point().and(Some(end))?))
        .collect()
}
