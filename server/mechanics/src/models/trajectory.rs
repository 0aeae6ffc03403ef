//! A body thrown in a vertical plane, with quadratic drag and a steady wind along the plane: Newton's
//! second law with drag 1/2 rho CdA |u| u against the air, followed by the slope of its path.

use super::hodograph::{Path, State};

/// A throw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Throw {
    /// Speed at the start, m/s.
    pub speed: f64,
    /// Angle of the start above the horizontal, rad.
    pub angle: f64,
    /// Height of the start above the landing surface, m; negative where the body must rise to it.
    pub height: f64,
    /// Mass, kg.
    pub mass: f64,
    /// Drag coefficient times area, m2; 0 for no drag.
    pub drag_area: f64,
    /// Air density, kg/m3.
    pub density: f64,
    /// Wind along the throw, m/s, positive when it pushes forward.
    pub wind: f64,
}

/// Where and how a throw lands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Landing {
    /// Distance along, m.
    pub distance: f64,
    /// Time in the air, s.
    pub time: f64,
    /// Speed along, m/s.
    pub along: f64,
    /// Speed downward, m/s.
    pub down: f64,
    /// Highest point above the landing surface, m.
    pub apex: f64,
    /// Height there above what the throw's own height was measured from, m; more than nothing where something
    /// upright was met.
    pub height: f64,
}

impl Landing {
    /// Speed at landing, m/s.
    pub fn speed(&self) -> f64 {
        super::hypot(self.along, self.down)
    }
}

/// A point on the way: time, distance along, height above the landing surface, and the two speeds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// Time, s.
    pub time: f64,
    /// Distance along, m.
    pub along: f64,
    /// Height above the landing surface, m.
    pub height: f64,
    /// Speed, m/s.
    pub speed: f64,
}

/// What is said of a throw that has no landing for that reason.
pub const NEVER_UP: &str = "The body does not rise to what it should land on: lower the landing, or throw it higher or steeper.";

/// Longer than any fall or throw of a person.
const LONGEST_FLIGHT: f64 = 120.0;

/// More pieces than any flight of a person has.
const MOST_PIECES: usize = 20_000;

/// How close together it is looked whether the body has landed, s.
const LOOK: f64 = 0.5;

/// The same where somebody draws what is seen, s.
const DRAW: f64 = 0.04;

/// What is told of a flight on its way, if anybody wants to know.
pub type Watch<'a> = Option<&'a mut dyn FnMut(Sample)>;

/// Flies until the landing surface; none when it is not reached within two minutes or lies above the top
/// of the flight.
pub fn fly(throw: &Throw) -> Option<Landing> {
    fly_level(throw, None)
}

/// As [`fly`], giving moments on the way to `observe`.
pub fn fly_and_sample(throw: &Throw, mut observe: impl FnMut(Sample)) -> Option<Landing> {
    fly_level(throw, Some(&mut observe))
}

fn fly_level(throw: &Throw, watch: Watch) -> Option<Landing> {
    let rises = throw.speed * libm::sin(throw.angle) > 0.0;
    if throw.height < 0.0 && !rises {
        return None;
    }
    // A body whose top is still under the surface does not come down onto it.
    fly_over(throw, |_| 0.0, watch).filter(|landing| landing.apex >= 0.0)
}

/// As [`fly`], onto ground whose height at each distance is given.
pub fn fly_over(throw: &Throw, ground: impl Fn(f64) -> f64, watch: Watch) -> Option<Landing> {
    fly_until(throw, |state| over(state, &ground), watch)
}

/// As [`fly`], until level ground or an upright plane this far along, whichever is met first.
pub fn fly_to_plane(throw: &Throw, plane: f64, watch: Watch) -> Option<Landing> {
    fly_until(
        throw,
        |state| over(state, &|_| 0.0).min(plane - state.place[0]),
        watch,
    )
}

/// What counts as the height over the ground while a body rises, m.
const RISING: f64 = 1.0;

/// Height over the ground. The start itself lies on the surface when the height is nothing and the throw
/// rises, so only a falling body can land.
fn over(state: &State, ground: &impl Fn(f64) -> f64) -> f64 {
    if state.speed[1] > 0.0 {
        RISING
    } else {
        state.place[1] - ground(state.place[0]) + tiny(state)
    }
}

/// Lets a throw that starts level on the surface begin above zero, so that its fall is an event.
fn tiny(state: &State) -> f64 {
    if state.time == 0.0 { 1e-12 } else { 0.0 }
}

/// Flies until `event` falls from above nothing.
fn fly_until(throw: &Throw, event: impl Fn(&State) -> f64, mut watch: Watch) -> Option<Landing> {
    let drag = 0.5 * throw.density * throw.drag_area / throw.mass;
    let (sine, cosine) = libm::sincos(throw.angle);
    let speed = [throw.speed * cosine, throw.speed * sine];
    let (path, mut now) = Path::new([0.0, throw.height], speed, drag, throw.wind);
    let spacing = if watch.is_some() { DRAW } else { LOOK };
    let mut tell = |state: &State| {
        if let Some(watch) = &mut watch {
            watch(Sample {
                time: state.time,
                along: state.place[0],
                height: state.place[1].max(0.0),
                speed: super::hypot(state.speed[0], state.speed[1]),
            });
        }
    };
    let mut apex = throw.height;
    let mut value = event(&now);
    tell(&now);
    for _ in 0..MOST_PIECES {
        // Every piece rises or falls all the way, so the top is an end of one.
        let next = path.on(&now, path.piece(&now, spacing));
        let here = event(&next);
        if value > 0.0 && here <= 0.0 {
            let met = falls(&path, &event, (now, value), (next, here));
            tell(&met);
            return Some(Landing {
                distance: met.place[0],
                time: met.time,
                along: met.speed[0],
                down: -met.speed[1],
                apex: apex.max(met.place[1]),
                height: met.place[1].max(0.0),
            });
        }
        apex = apex.max(next.place[1]);
        tell(&next);
        (now, value) = (next, here);
        if now.time >= LONGEST_FLIGHT {
            break;
        }
    }
    None
}

/// The first state known to be past where the event falls to nothing between two: secants through the last two looks,
/// and halving where those lead out or are slow.
fn falls(
    path: &Path,
    event: &impl Fn(&State) -> f64,
    mut low: (State, f64),
    mut high: (State, f64),
) -> State {
    // Closer than this no number of the state changes.
    let close = 4e-16 * (1.0 + high.0.slope.abs());
    let mut looks = [(low.0.slope, low.1), (high.0.slope, high.1)];
    let mut steps = [f64::INFINITY; 2];
    for _ in 0..100 {
        let width = high.0.slope - low.0.slope;
        if width <= 2.0 * close || high.1 == 0.0 {
            break;
        }
        let [before, last] = looks;
        let moved = -last.1 * (last.0 - before.0) / (last.1 - before.1);
        if last.1 <= 0.0 && moved.abs() <= close {
            break;
        }
        // Aimed a hair past, so that what is found can be told.
        let mut into = last.0 - low.0.slope + moved + close;
        if !(into > 0.0 && into < width) || moved.abs() > 0.5 * steps[0] {
            into = 0.5 * width;
        }
        steps = [steps[1], (low.0.slope + into - last.0).abs()];
        // From the nearer end there is less to sum.
        let state = if into < 0.5 * width {
            path.on(&low.0, into)
        } else {
            path.on(&high.0, into - width)
        };
        let now = event(&state);
        looks = [last, (state.slope, now)];
        if now > 0.0 {
            low = (state, now);
        } else {
            high = (state, now);
        }
    }
    high.0
}
