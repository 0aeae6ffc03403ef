//! What is shown beside a composite's figures: drift across the picture, the sun, and cautions.

use super::{
    checks::{PICTURE, SUN},
    plates::{Plates, Shadows},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models::sun,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let mut traces = Vec::new();
    if let Some(plates) = Plates::read(&evaluation.values) {
        let mut drift = Recorder::new();
        for i in -50..=50 {
            let across = plates.half[0] * f64::from(i) / 50.0;
            if let (Some(near), Some(far)) = (
                plates.drift_at(across, plates.near),
                plates.drift_at(across, plates.far),
            ) {
                drift.push(across, [near, far]);
            }
        }
        traces.push(drift.trace(
            "drift",
            "Drift along the middle row",
            ("From the middle", Quantity::Pixels),
            [
                ("Nearest thing", Quantity::Pixels),
                ("Furthest thing", Quantity::Pixels),
            ],
        ));
    }
    if let Some(shadows) = Shadows::read(&evaluation.values) {
        let mut recorder = Recorder::new();
        for i in 0..=100 {
            let (time, sun) = shadows.during(f64::from(i) / 100.0);
            // A shadow over a kilometre long is no shadow on a set.
            let length = sun::shadow_length(&sun).map_or(0.0, |l| (shadows.height * l).min(1000.0));
            recorder.push(time, [sun.seen, length]);
        }
        traces.push(recorder.trace(
            "sun",
            "The sun between passes",
            ("Time from the first pass", Quantity::Time),
            [
                ("Height of the sun", Quantity::Angle),
                ("Shadow", Quantity::Length),
            ],
        ));
    }
    traces.retain(|trace| trace.x.values.len() >= 2);
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let clear = evaluation.values.number("camera_keep_out");
    clear
        .map(|half| Zone {
            name: "camera".to_owned(),
            title: "Round the locked camera".to_owned(),
            shape: Shape::Ellipse {
                x: 0.0,
                y: 0.0,
                half_x: half,
                half_y: half,
            },
            reason:
                "Nobody steps here between passes: a footfall on the same boards moves the picture."
                    .to_owned(),
        })
        .into_iter()
        .collect()
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    let value = |name| evaluation.value(name);
    let pixels = |value| say(Quantity::Pixels, value);
    if let (Some(parallax), Some(near)) =
        (value("parallax"), evaluation.values.number("near_distance"))
    {
        say_so(
            "parallax",
            format!(
                "What stands {} off moves {} more than the background, by the camera's shift alone; nothing done \
                 later undoes that.",
                say(Quantity::Length, near),
                pixels(parallax)
            ),
        );
    }
    if let Some(worst) = value("worst_drift") {
        say_so(
            "never_both",
            format!(
                "A drift of {} is a matter for the picture; that each pass is clear of what the other holds is a \
                 matter of life, and is read back before every pass.",
                pixels(worst)
            ),
        );
    }
    if let Some(shadows) = Shadows::read(&evaluation.values) {
        if shadows.lowest() <= 0.0 {
            say_so(
                "sun_down",
                "The sun is down at one of the passes, so there are no shadows to match."
                    .to_owned(),
            );
        } else {
            say_so(
                "clear_air",
                format!(
                    "The sun goes from {} to {} above the horizon in clear air; a cloud in one pass undoes the match.",
                    say(Quantity::Angle, shadows.first.seen),
                    say(Quantity::Angle, shadows.last.seen)
                ),
            );
        }
    }
    let lit_otherwise = evaluation
        .values
        .choice("light")
        .is_some_and(|light| light != "sun");
    let mut needed = PICTURE.to_vec();
    if !lit_otherwise {
        needed.extend(SUN);
    }
    let missing = evaluation.values.missing(&needed);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Not everything is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
