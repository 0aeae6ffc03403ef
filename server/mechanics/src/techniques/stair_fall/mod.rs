//! Stair fall: a body goes down a flight of stairs, tumbling or sliding, and runs out on the landing.
//!
//! Covers the energy along the edges, each contact's share, a head and a body against padded and bare edges, the
//! run-out and who stands at the foot. It knows nothing of a neck that bends, of which part hits, or of a body
//! that leaves its line.

mod checks;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Evaluation},
    models::{
        self, GRAVITY, head_pulse,
        stair::Tumble,
        stopping::{self, Shape, Stop},
    },
    reading::Values,
    technique::{Computation, FigureDescription, Parameter, Technique},
};

/// The technique.
pub struct StairFall;

impl Technique for StairFall {
    fn name(&self) -> &'static str {
        "stair-fall"
    }

    fn title(&self) -> &'static str {
        "Stair fall"
    }

    fn summary(&self) -> &'static str {
        "A body tumbles or slides down a flight of stairs onto a landing. Covers speed, hits and their energy, \
         head and body on padded and bare edges, run-out and stand-off; leaves out the neck, which part hits, \
         bending stairs and balusters."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn coefficients(&self) -> &'static [&'static str] {
        &[
            "nosing_friction",
            "hit_loss",
            "landing_friction",
            "pad_usable",
            "into_edge",
        ]
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/stair-fall.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(compute)
    }

    fn checks(&self, evaluation: &Evaluation) -> Vec<Check> {
        checks::checks(evaluation)
    }

    fn traces(&self, evaluation: &Evaluation) -> Vec<Trace> {
        presentation::traces(evaluation)
    }

    fn zones(&self, evaluation: &Evaluation) -> Vec<Zone> {
        presentation::zones(evaluation)
    }

    fn cautions(&self, evaluation: &Evaluation) -> Vec<Caution> {
        presentation::cautions(evaluation)
    }
}

/// The flight as it is entered.
fn tumble(values: &Values) -> Option<Tumble> {
    let n = |name| values.number(name);
    let (rise, going) = (n("rise")?, n("going")?);
    let (spacing, turning) = if values.choice("manner")? == "tumble" {
        let turn = n("turn_length")?;
        let arm = n("gyration")? * 2.0 * core::f64::consts::PI / turn;
        (turn / n("hits_per_turn")?, arm * arm)
    } else {
        (models::hypot(rise, going), 0.0)
    };
    Some(Tumble {
        rise,
        going,
        steps: n("steps")?,
        start_speed: n("start_speed")?,
        spacing,
        loss: n("hit_loss")?,
        friction: n("nosing_friction")?,
        turning,
    })
}

/// Windows of the criterion on a padded edge, s (49 CFR 571.208 S6.2).
const WINDOW: f64 = 0.015;

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    let n = |name| values.number(name);
    let whole = tumble(values).and_then(|tumble| Some((tumble, tumble.foot_speed()?)));
    if let Some((tumble, foot)) = whole {
        // The speed only gains or only falls from contact to contact, so one of these is the highest.
        let fastest = foot.max(tumble.start_speed).max(tumble.first_speed());
        out.set("foot_speed", foot);
        out.set("top_speed", fastest);
        out.set("settled_speed", f64::sqrt(tumble.settled_square().max(0.0)));
        head(values, &tumble, fastest, &mut out);
        hits(values, &tumble, fastest, &mut out);
        out.set("hits", tumble.contacts());
        out.set_if(
            "hits_today",
            n("falls_today").map(|falls| falls * tumble.contacts()),
        );
        if let Some(mass) = n("performer_mass") {
            let height = tumble.steps * tumble.rise;
            out.set("energy_released", mass * GRAVITY * height);
            out.set(
                "energy_rubbed",
                tumble.friction * mass * GRAVITY * tumble.steps * tumble.going,
            );
        }
        out.set_if("flight_time", tumble.go_down(|_| {}));
        out.set("landing_height", tumble.landing_height(foot));
        landing(values, &tumble, foot, &mut out);
    }
    out.set_if(
        "side_room",
        n("stair_width")
            .zip(n("body_reach"))
            .map(|(width, reach)| width - reach),
    );
    out
}

fn head(values: &Values, tumble: &Tumble, fastest: f64, out: &mut Computed) {
    let n = |name| values.number(name);
    let (Some(into), Some(give), Some(worn), Some(usable)) = (
        n("into_edge"),
        n("edge_give"),
        n("head_padding"),
        n("pad_usable"),
    ) else {
        return;
    };
    let along = into * fastest;
    let speed = f64::sqrt(along * along + 2.0 * GRAVITY * tumble.rise);
    out.set("head_speed", speed);
    let stop = |padding: f64| -> Stop {
        stopping::stop(speed, give + usable * (worn + padding), Shape::HalfSine)
    };
    if let Some(padding) = n("edge_padding") {
        let padded = stop(padding);
        out.set("head_padded", padded.peak);
        out.set(
            "hic_padded",
            head_pulse::half_sine_criterion(&padded, WINDOW),
        );
    }
    let bare = stop(0.0);
    out.set("head_bare", bare.peak);
    // ASTM F1292, which the bare edge is held against, does not cap its windows.
    out.set(
        "hic_bare",
        head_pulse::half_sine_criterion(&bare, f64::INFINITY),
    );
}

fn hits(values: &Values, tumble: &Tumble, fastest: f64, out: &mut Computed) {
    let n = |name| values.number(name);
    let (Some(mass), Some(give), Some(worn), Some(usable)) = (
        n("performer_mass"),
        n("flesh_give"),
        n("body_padding"),
        n("pad_usable"),
    ) else {
        return;
    };
    let energy = 0.5 * mass * (1.0 + tumble.turning) * fastest * fastest * tumble.loss;
    out.set("hit_energy", energy);
    let force =
        |padding: f64| Shape::HalfSine.peak_factor() * energy / (give + usable * (worn + padding));
    out.set_if("hit_force", n("edge_padding").map(force));
    out.set("hit_force_bare", force(0.0));
}

fn landing(values: &Values, tumble: &Tumble, foot: f64, out: &mut Computed) {
    let n = |name| values.number(name);
    let Some(friction) = n("landing_friction") else {
        return;
    };
    let run_out = tumble.run_out(foot, friction);
    out.set("run_out", run_out);
    let left = |room: &'static str| Some(n(room)? - run_out - 0.5 * n("body_reach")?);
    out.set_if("landing_left", left("landing_length"));
    out.set_if("people_gap", left("people_distance"));
    out.set_if("camera_gap", left("camera_distance"));
}
