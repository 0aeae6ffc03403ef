//! A runner who comes to the end of a line that is tied to an anchor: the run up, the stop, and the way to
//! the ground.
//!
//! The run up is the sprint model v = V (1 - exp(-t / T)) (Furusawa, Hill and Parkinson 1927; J. B. Keller
//! 1973). The line is a spring with damping that pulls and never pushes, and may end in an absorber that
//! tears at a steady force until its length is used up. Newton's second law in the plane of line and run.

use super::{
    GRAVITY,
    ode::{self, Accuracy, End, Point},
    peak::Peak,
};

/// Speed, m/s, and time, s, after running `distance` from rest.
pub fn run_up(top_speed: f64, build_up: f64, distance: f64) -> (f64, f64) {
    if build_up <= 0.0 {
        return (top_speed, distance / top_speed);
    }
    let lost = |time: f64| -libm::expm1(-time / build_up);
    let gone = |time: f64| top_speed * (time - build_up * lost(time));
    // The runner is never further than at top speed from the start, nor than one build-up behind that. The way
    // bends upward in time, so Newton from the later end comes nearer from that side alone.
    let mut time = distance / top_speed + build_up;
    for _ in 0..60 {
        let speed = top_speed * lost(time);
        let past = gone(time) - distance;
        if past <= 0.0 || speed <= 0.0 {
            break;
        }
        time -= past / speed;
        if past <= 1e-15 * distance {
            break;
        }
    }
    (top_speed * lost(time), time)
}

/// An absorber that tears.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Absorber {
    /// Steady force while it tears, N.
    pub force: f64,
    /// How long it can get, m.
    pub stroke: f64,
}

/// A body on a line, at the moment the line is taut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tether {
    /// Mass of the body, kg.
    pub mass: f64,
    /// Stiffness of line and all that gives with it, N/m.
    pub stiffness: f64,
    /// Share of critical damping.
    pub damping: f64,
    /// Length of the line, m.
    pub length: f64,
    /// Anchor above the harness point, m; negative when below.
    pub rise: f64,
    /// An absorber, if any.
    pub absorber: Option<Absorber>,
}

/// What holds the body up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Legs {
    /// The legs carry it until it stands still.
    Carry,
    /// They are swept away as the line comes taut, and this far below the body lies at rest, m.
    Swept(f64),
}

/// A moment of the stop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// Time since the line was taut, s.
    pub time: f64,
    /// Tension, N.
    pub tension: f64,
    /// How far past the mark where the line came taut, m.
    pub along: f64,
    /// How far below the harness point's height, m.
    pub down: f64,
    /// Speed along, m/s; negative on the way back.
    pub speed: f64,
    /// Speed down, m/s.
    pub fall_speed: f64,
    /// Length torn from the absorber, m.
    pub torn: f64,
}

/// How a run ended.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outcome {
    /// Highest tension, N.
    pub peak: f64,
    /// The moment of standing still, where there was one.
    pub still: Option<Moment>,
    /// The last moment: slack again with legs that carry, on the ground when they are swept.
    pub last: Moment,
    /// Whether it came to that end.
    pub ended: bool,
}

/// Where the motion stands: before the absorber tears, while it does, and after.
#[derive(Clone, Copy, PartialEq)]
enum Stage {
    Whole,
    Tearing,
    Spent,
    Back,
}

/// Along, up, their speeds, length torn.
type State = [f64; 5];

/// Longer than any stop of a runner, s.
const LONGEST: f64 = 3.0;

impl Tether {
    /// Along the ground from below the anchor to the mark where the line comes taut, m; none when the line
    /// is too short to reach down (or up) to the body.
    pub fn reach(&self) -> Option<f64> {
        let square = self.length * self.length - self.rise * self.rise;
        (square > 1e-6 * self.length * self.length).then(|| f64::sqrt(square))
    }

    fn damping_rate(&self) -> f64 {
        2.0 * self.damping * f64::sqrt(self.stiffness * self.mass)
    }

    /// Stretch of the line, m, its rate without tearing, m/s, and the line's direction from the body.
    fn line(&self, reach: f64, y: &State) -> (f64, f64, [f64; 2]) {
        let (x, z) = (reach + y[0], y[1] - self.rise);
        let far = super::hypot(x, z).max(1e-9);
        let (x, z) = (x / far, z / far);
        let rate = x * y[2] + z * y[3];
        (far - self.length - y[4], rate, [-x, -z])
    }

    fn tension(&self, reach: f64, y: &State, stage: Stage) -> f64 {
        let damping = self.damping_rate();
        let (stretch, rate, _) = self.line(reach, y);
        self.pull(stretch, rate, damping, stage)
    }

    /// Tension by the stretch and its rate.
    fn pull(&self, stretch: f64, rate: f64, damping: f64, stage: Stage) -> f64 {
        if let (Stage::Tearing, Some(absorber)) = (stage, self.absorber) {
            return absorber.force;
        }
        if stretch <= 0.0 {
            // At the very start the line is taut and not yet stretched: only its damping pulls.
            let starting = stretch > -1e-12 && rate > 0.0;
            return if starting { damping * rate } else { 0.0 };
        }
        (self.stiffness * stretch + damping * rate).max(0.0)
    }

    fn rate(&self, reach: f64, y: &State, damping: f64, (stage, legs): (Stage, Legs)) -> State {
        let (stretch, rate, to) = self.line(reach, y);
        let pull = self.pull(stretch, rate, damping, stage) / self.mass;
        let torn = match (stage, self.absorber) {
            // Under the steady force the damped line goes on stretching to where it alone holds it.
            (Stage::Tearing, Some(absorber)) => {
                let slow = damping.max(0.02 * f64::sqrt(self.stiffness * self.mass));
                (rate - (absorber.force - self.stiffness * stretch) / slow).max(0.0)
            }
            _ => 0.0,
        };
        match legs {
            Legs::Carry => [y[2], 0.0, pull * to[0], 0.0, torn],
            Legs::Swept(_) => [y[2], y[3], pull * to[0], pull * to[1] - GRAVITY, torn],
        }
    }

    fn moment(&self, reach: f64, point: &Point<5>, stage: Stage) -> Moment {
        let y = &point.y;
        Moment {
            time: point.t,
            tension: self.tension(reach, y, stage),
            along: y[0],
            down: -y[1],
            speed: y[2],
            fall_speed: -y[3],
            torn: y[4],
        }
    }

    /// Stops a body that runs at `speed`, giving each step to `observe`. None when the line does not reach
    /// or the solver failed.
    pub fn stop(&self, speed: f64, legs: Legs, mut observe: impl FnMut(Moment)) -> Option<Outcome> {
        let reach = self.reach()?;
        let accuracy = Accuracy {
            relative: 1e-5,
            absolute: 1e-7,
            longest_step: (0.4 * f64::sqrt(self.mass / self.stiffness)).min(0.1),
            looks: 3,
            most_steps: 20_000,
        };
        let mut now = Point {
            t: 0.0,
            y: [0.0, 0.0, speed, 0.0, 0.0],
        };
        let mut stage = match self.absorber {
            None => Stage::Spent,
            // Damping alone may tear it at once.
            Some(absorber) if self.tension(reach, &now.y, Stage::Whole) >= absorber.force => {
                Stage::Tearing
            }
            Some(_) => Stage::Whole,
        };
        let damping = self.damping_rate();
        let mut peak = Peak::over(0.0);
        let mut still = None;
        let mut ended = false;
        let mut taut = true;
        // Whole, tearing, spent, back, and slack on the way down: each comes at most once.
        for _ in 0..5 {
            let event = |point: &Point<5>| {
                let (stretch, rate, _) = self.line(reach, &point.y);
                let change = match (stage, self.absorber) {
                    (Stage::Whole, Some(absorber)) => {
                        (absorber.force - self.tension(reach, &point.y, stage)) / absorber.force
                    }
                    (Stage::Tearing, Some(absorber)) => rate.min(absorber.stroke - point.y[4]),
                    // A line goes slack only on the way back.
                    (Stage::Back, _) if rate < 0.0 => stretch,
                    _ => 1.0,
                };
                match legs {
                    Legs::Carry if stage != Stage::Back => change.min(point.y[2]),
                    Legs::Carry => change,
                    // The pull ends in a kink, which a step should not run over.
                    Legs::Swept(height) if taut => change.min(height + point.y[1]).min(stretch),
                    Legs::Swept(height) => change.min(height + point.y[1]),
                }
            };
            let end = ode::integrate(
                |_, y: &State| self.rate(reach, y, damping, (stage, legs)),
                now,
                LONGEST,
                accuracy,
                event,
                |point| {
                    let moment = self.moment(reach, point, stage);
                    peak.see(moment.time, moment.tension);
                    observe(moment);
                },
            );
            now = end.point()?;
            if !matches!(end, End::Event(_)) {
                break;
            }
            let stopped = legs == Legs::Carry && stage != Stage::Back && now.y[2] <= 1e-9;
            let landed = matches!(legs, Legs::Swept(height) if height + now.y[1] <= 1e-9);
            if stopped {
                still = Some(self.moment(reach, &now, stage));
                stage = Stage::Back;
                // Begin the way back with a hair of speed, so that it is one.
                now.y[2] = -1e-9;
            } else if landed || stage == Stage::Back {
                ended = true;
                break;
            } else if taut && self.line(reach, &now.y).0 <= 1e-9 {
                taut = false;
            } else {
                stage = if stage == Stage::Whole {
                    Stage::Tearing
                } else {
                    Stage::Spent
                };
            }
        }
        Some(Outcome {
            peak: peak.most(),
            still,
            last: self.moment(reach, &now, stage),
            ended,
        })
    }
}
