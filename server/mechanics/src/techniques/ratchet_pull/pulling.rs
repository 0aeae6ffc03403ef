//! A pull on its way: gas drives the piston, and then the stretched line gives back what it holds.

use super::pull::{Moment, Pull, Setup, fly};
use crate::models::{
    PER_ATMOSPHERE, STANDARD_ATMOSPHERE,
    gas::{Cylinder, Filled, Reservoir, Standing},
    ode::{self, Accuracy, End, Motion, Point},
    peak::Peak,
};

/// Longer than any pull; one that is not over by then has stalled.
const LONGEST_PULL: f64 = 2.0;
/// Speed at which a body is taken to have begun to move, m/s.
const STARTED: f64 = 1e-3;

const ACCURACY: Accuracy = Accuracy {
    relative: 3e-5,
    absolute: 3e-6,
    longest_step: 0.03,
    looks: 3,
    most_steps: 12_000,
};

/// The state: fifth root of the share of gas left, cylinder pressure over atmosphere, piston place and speed, body place
/// and speed. Pressure is scaled so that every component is near 1.
type State = [f64; 6];

/// A pull on its way, and who watches it.
struct Pulling<'a> {
    setup: &'a Setup,
    reservoir: Reservoir,
    damping: f64,
    weight_along: f64,
    /// What the piston feels of the line's pull.
    geared: f64,
    /// One over the masses of body and of what moves with the piston, 1/kg, and over the time in which the valve opens, 1/s.
    over_mass: f64,
    over_moving: f64,
    over_opening: f64,
    /// Whether the gas still drives the piston; then it sits on its cushion and the stretched line gives back what it
    /// holds.
    is_driven: bool,
    /// Where the part of the pull that is followed begins, and when it is given up.
    from: Point<6>,
    until: f64,
    finished: bool,
    samples: Vec<(f64, f64)>,
    peak: Peak,
    first_moved: Option<f64>,
    before: (f64, f64),
    observe: Observe<'a>,
}

/// Who looks on, if anybody.
type Observe<'a> = Option<&'a mut dyn FnMut(Moment)>;

impl<'a> Pulling<'a> {
    fn new(setup: &'a Setup, observe: Observe<'a>) -> Pulling<'a> {
        let mut pulling = Pulling {
            setup,
            reservoir: setup.reservoir(),
            damping: setup.damping(),
            weight_along: setup.weight_along(),
            geared: setup.purchase / setup.line_share,
            over_mass: 1.0 / setup.mass,
            over_moving: 1.0 / setup.moving_mass,
            over_opening: 1.0 / setup.opening,
            is_driven: true,
            from: Point {
                t: 0.0,
                y: [1.0, 1.0, 0.0, 0.0, 0.0, 0.0],
            },
            until: LONGEST_PULL,
            finished: false,
            samples: Vec::new(),
            peak: Peak::over(0.0),
            first_moved: None,
            before: (0.0, 0.0),
            observe,
        };
        pulling.fill();
        pulling
    }

    /// While friction holds the piston, the cylinder only fills. Where it holds it for good, that is followed.
    fn fill(&mut self) {
        let setup = self.setup;
        let standing = Standing {
            pressure: STANDARD_ATMOSPHERE,
            volume: setup.dead_volume,
            opening: setup.opening,
        };
        let held = STANDARD_ATMOSPHERE + setup.friction / setup.area;
        let at = |(filled, pressure): (Filled, f64)| Point {
            t: filled.time,
            y: [filled.root, pressure * PER_ATMOSPHERE, 0.0, 0.0, 0.0, 0.0],
        };
        let Some(filled) = self.reservoir.fills(&standing, held) else {
            return;
        };
        if filled.time >= LONGEST_PULL {
            return;
        }
        // Without friction there is nothing to fill.
        if self.observe.is_some() && filled.time > 0.0 {
            let reservoir = self.reservoir;
            for look in reservoir.filling(&standing, held) {
                self.observe(&at(look));
            }
        }
        self.from = at((filled, held));
    }

    fn tension(&self, y: &State) -> f64 {
        let setup = self.setup;
        let stretch = setup.purchase * y[2] - y[4];
        let piston = if self.is_driven { y[3] } else { 0.0 };
        let rate = setup.purchase * piston - y[5];
        if stretch <= 0.0 {
            0.0
        } else {
            (setup.stiffness * stretch + self.damping * rate).max(0.0)
        }
    }

    /// How the body speeds up.
    fn body(&self, y: &State, pull: f64) -> f64 {
        let force = pull - self.weight_along;
        // Until the line wins, the floor holds the body where it stands.
        if force < 0.0 && y[4] <= 0.0 && y[5] <= 0.0 {
            0.0
        } else {
            force * self.over_mass
        }
    }

    /// First the gas drives the piston, up to the end of its stroke.
    fn driven(&self, t: f64, y: &State) -> State {
        let setup = self.setup;
        let pressure = (y[1] * STANDARD_ATMOSPHERE).max(1.0);
        let pull = self.tension(y);
        let push = (pressure - STANDARD_ATMOSPHERE) * setup.area - self.geared * pull;
        // At rest, friction holds the piston until the push beats it; a ratchet lets it go no way but
        // forward.
        let piston = if y[3] > 0.0 || push > setup.friction {
            (push - setup.friction) * self.over_moving
        } else {
            0.0
        };
        let speed = y[3].max(0.0);
        let cylinder = Cylinder {
            pressure,
            volume: setup.dead_volume + setup.area * y[2].max(0.0),
            growth: setup.area * speed,
            surge: setup.area * piston,
        };
        let open = (t * self.over_opening).min(1.0);
        let filling = self.reservoir.fill(y[0], open, &cylinder);
        [
            filling.root,
            filling.pressure * PER_ATMOSPHERE,
            speed,
            piston,
            y[5],
            self.body(y, pull),
        ]
    }

    /// Whether gas, piston and body have come to rest short of the end of the stroke.
    fn is_at_rest(&self, point: &Point<6>) -> bool {
        point.t > self.setup.opening + 0.2
            && point.y[3].abs() < 1e-3
            && point.y[5].abs() < 1e-3
            && point.y[1] * STANDARD_ATMOSPHERE > 0.995 * self.reservoir.pressure(point.y[0])
    }

    /// What the line still holds when the piston stands, m of its stretch.
    fn stretch(&self, point: &Point<6>) -> f64 {
        self.setup.purchase * point.y[2] - point.y[4]
    }

    /// Takes the end of the stroke. Whether the line has to be followed on; none when the solver failed.
    fn stops(&mut self, end: End<6>) -> Option<bool> {
        let (mut last, stalled) = match end {
            End::Event(point) => (point, self.is_at_rest(&point)),
            End::Finished(point) => (point, true),
            End::Failed => return None,
        };
        if !stalled {
            last.y[3] = 0.0;
        }
        let pulls_on = !stalled && self.stretch(&last) > 0.0;
        self.finished = !stalled && !pulls_on;
        self.from = last;
        self.until = last.t + 1.0;
        self.is_driven = false;
        if self.finished {
            self.samples.push((last.t, 0.0));
        }
        Some(pulls_on)
    }

    /// Takes the moment at which the line has given back what it held. None when the solver failed.
    fn lets_go(&mut self, end: End<6>) -> Option<()> {
        self.finished = matches!(end, End::Event(_));
        self.from = end.point()?;
        self.samples.push((self.from.t, 0.0));
        Some(())
    }

    fn outcome(self) -> Pull {
        let last = self.from;
        let finished = self.finished && last.y[5] > 0.0;
        Pull {
            finished,
            time: last.t,
            first_moved: self.first_moved.unwrap_or(last.t),
            speed: last.y[5].max(0.0),
            travel: last.y[4].max(0.0),
            peak_tension: self.peak.most(),
            pressure_left: self.reservoir.pressure(last.y[0]),
            samples: self.samples,
            landing: if finished {
                fly(self.setup, last.y[5], last.y[4])
            } else {
                None
            },
        }
    }
}

impl Motion<6> for Pulling<'_> {
    fn rate(&self, t: f64, y: &State) -> State {
        if self.is_driven {
            return self.driven(t, y);
        }
        [0.0, 0.0, 0.0, 0.0, y[5], self.body(y, self.tension(y))]
    }

    fn event(&self, at: &Point<6>) -> f64 {
        if !self.is_driven {
            self.stretch(at)
        } else if self.is_at_rest(at) {
            0.0
        } else {
            self.setup.stroke - at.y[2]
        }
    }

    fn observe(&mut self, at: &Point<6>) {
        let pull = self.tension(&at.y);
        self.peak.see(at.t, pull);
        if self.first_moved.is_none() {
            let (time, speed) = self.before;
            if at.y[5] > STARTED {
                // On the line between the two looks.
                let share = (STARTED - speed) / (at.y[5] - speed);
                self.first_moved = Some(time + share * (at.t - time));
            }
            self.before = (at.t, at.y[5]);
        }
        self.samples.push((at.t, pull * self.over_mass));
        if let Some(observe) = &mut self.observe {
            observe(Moment {
                time: at.t,
                tension: pull,
                speed: at.y[5],
                travel: at.y[4],
                cylinder: at.y[1] * STANDARD_ATMOSPHERE,
            });
        }
    }
}

/// Runs the pull. None when the solver failed.
pub(super) fn run(setup: &Setup) -> Option<Pull> {
    follow(vec![Pulling::new(setup, None)]).pop()?
}

/// As [`run`], giving each look to `observe`.
pub(super) fn run_and_watch(setup: &Setup, mut observe: impl FnMut(Moment)) -> Option<Pull> {
    follow(vec![Pulling::new(setup, Some(&mut observe))]).pop()?
}

/// As [`run`], for pulls of any number.
pub(super) fn run_all(setups: &[Setup]) -> Vec<Option<Pull>> {
    let pulls = setups.iter().map(|setup| Pulling::new(setup, None));
    follow(pulls.collect())
}

fn follow(mut pulls: Vec<Pulling>) -> Vec<Option<Pull>> {
    fn from(pulling: &Pulling) -> (Point<6>, f64) {
        (pulling.from, pulling.until)
    }
    let ends = ode::integrate_all(&mut pulls, from, ACCURACY);
    let mut is_followed: Vec<bool> = vec![true; pulls.len()];
    let mut on = Vec::with_capacity(pulls.len());
    for ((pulling, end), is_followed) in pulls.iter_mut().zip(ends).zip(&mut is_followed) {
        match pulling.stops(end) {
            Some(true) => on.push((pulling, is_followed)),
            Some(false) => {}
            None => *is_followed = false,
        }
    }
    let mut pulling: Vec<_> = on.iter_mut().map(|(pulling, _)| &mut **pulling).collect();
    let ends = ode::integrate_all(&mut pulling, |pulling| from(pulling), ACCURACY);
    for ((pulling, is_followed), end) in on.into_iter().zip(ends) {
        *is_followed = pulling.lets_go(end).is_some();
    }
    let pulls = pulls.into_iter().zip(is_followed);
    pulls
        .map(|(pulling, is_followed)| is_followed.then(|| pulling.outcome()))
        .collect()
}
