//! Lock-off composite: passes from one camera position, joined into one picture, so that people and what
//! would hurt them are never there together.
//!
//! Covers how far the picture moved between passes and what the sun did meanwhile. It knows nothing of
//! lens distortion, rolling shutters, haze or what is done to the picture later.

mod checks;
mod plates;
mod presentation;
mod tables;

use crate::{
    assessment::{Caution, Check, Trace, Zone},
    evaluation::{Computed, Ends, Evaluation, over_tolerances_and},
    models::{self, registration::Change, sun},
    reading::Values,
    technique::{AssessError, Computation, FigureDescription, Parameter, Technique},
};
use plates::{Plates, Shadows};

/// The technique.
pub struct LockOffComposite;

impl Technique for LockOffComposite {
    fn name(&self) -> &'static str {
        "lock-off-composite"
    }

    fn title(&self) -> &'static str {
        "Lock-off composite"
    }

    fn summary(&self) -> &'static str {
        "Passes from one locked camera, joined later. Covers how far the corners move by turn, shift and \
         focal length, what aligning cannot undo, and the sun's shadows and light between passes; leaves \
         out lens distortion, clouds and haze."
    }

    fn parameters(&self) -> &'static [Parameter] {
        &tables::PARAMETERS
    }

    fn figures(&self) -> &'static [FigureDescription] {
        &tables::FIGURES
    }

    fn policy(&self) -> &'static str {
        include_str!("../../../../../seed-data/catalogue/limits/lock-off-composite.json")
    }

    fn prepare(&self, _: &Values) -> Computation {
        Computation::new(compute)
    }

    fn evaluate(&self, values: Values) -> Result<Evaluation, AssessError> {
        let compute = self.prepare(&values);
        let signs = signs(&values);
        let named: Vec<&Ends> = signs.iter().map(Vec::as_slice).collect();
        over_tolerances_and(values, self.figures(), &named, &compute)
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

/// What may move the picture either way.
const DRIFTS: [&str; 7] = [
    "pan_drift",
    "tilt_drift",
    "roll_drift",
    "shift_across",
    "shift_up",
    "shift_forward",
    "focal_change",
];

/// Every way in which drifts that may go either way can go together, at the distances and the lens that show
/// them most: alone each moves the picture as far one way as the other, so single moves do not tell which
/// of them add up.
fn signs(values: &Values) -> Vec<Vec<(&'static str, i8)>> {
    let mut either = Vec::new();
    let mut one_way = Vec::new();
    for name in DRIFTS {
        match values.ends_of(name) {
            Some((low, high)) if low < 0.0 && high > 0.0 => either.push(name),
            Some((low, high)) if high > -low => one_way.push((name, 1)),
            Some((low, high)) if high < -low => one_way.push((name, -1)),
            _ => {}
        }
    }
    // All drifts turned round move each point as far, the other way.
    let free = if one_way.is_empty() {
        either.len().saturating_sub(1)
    } else {
        either.len()
    };
    if either.is_empty() {
        return Vec::new();
    }
    (0..1_u32 << free)
        .map(|set| {
            let mut ends = one_way.clone();
            ends.extend(either.iter().enumerate().map(|(at, name)| {
                let turned = at < free && set >> at & 1 == 1;
                (*name, if turned { -1 } else { 1 })
            }));
            ends.extend([
                ("focal_length", 1),
                ("sensor_width", -1),
                ("pupil_offset", 1),
                ("near_distance", -1),
                ("far_distance", 1),
            ]);
            ends
        })
        .collect()
}

fn compute(values: &Values) -> Computed {
    let mut out = Computed::new();
    if let Some(plates) = Plates::read(values) {
        let change = plates.change;
        out.set_if("worst_drift", plates.worst(&change));
        out.set_if("left_after_alignment", plates.left_after_alignment());
        out.set("parallax", plates.parallax());
        let alone = |change: Change| plates.worst(&change);
        let none = Change::default();
        out.set_if(
            "pan_part",
            alone(Change {
                pan: change.pan,
                ..none
            }),
        );
        out.set_if(
            "tilt_part",
            alone(Change {
                tilt: change.tilt,
                ..none
            }),
        );
        out.set_if(
            "roll_part",
            alone(Change {
                roll: change.roll,
                ..none
            }),
        );
        out.set_if(
            "shift_part",
            alone(Change {
                shift: change.shift,
                ..none
            }),
        );
        // Growing about the middle moves a corner by its own distance from there, near or far.
        let [x, y] = plates.half;
        out.set("focal_part", models::hypot(x, y) * change.zoom.abs());
    }
    if let Some(shadows) = Shadows::read(values) {
        out.set("sun_first", shadows.first.seen);
        out.set("sun_last", shadows.last.seen);
        out.set("sun_clearance", shadows.lowest() - shadows.skyline);
        if let (Some(first), Some(last)) = (
            sun::shadow_length(&shadows.first),
            sun::shadow_length(&shadows.last),
        ) {
            out.set("shadow_turn", shadows.turn());
            out.set("shadow_first", shadows.height * first);
            out.set("shadow_last", shadows.height * last);
            out.set("shadow_stretch", (last / first - 1.0).abs());
        }
        out.set_if("shadow_tip", shadows.tip());
        out.set_if("light_change", shadows.stops());
    }
    out
}
