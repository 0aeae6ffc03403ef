//! What is shown beside a stand-off's figures: the run over time, zones as given, and cautions.

use super::{
    SMALLEST_CHANCE,
    checks::{chance, run_needs},
    drift,
    run::{Plume, Scene},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models,
    plotting::Recorder,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let Some(scene) = Scene::read(&evaluation.values) else {
        return Vec::new();
    };
    let sprint = &scene.sprint;
    let arrival = scene.after_cue(sprint.time_at(sprint.length));
    let last = scene
        .fire_time()
        .map_or(arrival, |fired| arrival.max(scene.after_cue(fired)))
        .max(0.1);
    let mut run = Recorder::new();
    for i in 0..=160 {
        let time = last * f64::from(i) / 160.0;
        let since = time - scene.after_cue(0.0);
        run.push(
            time,
            [scene.distance(sprint.place(since)), sprint.speed(since)],
        );
    }
    let mut traces = vec![run.trace(
        "run",
        "The run from the cue",
        ("Time", Quantity::Time),
        [
            ("Distance from the effect", Quantity::Length),
            ("Speed", Quantity::Speed),
        ],
    )];
    let mut later = Recorder::new();
    if let Some(radius) = evaluation.values.number("zone_radius") {
        let most = evaluation
            .values
            .number("late_delay")
            .unwrap_or(0.0)
            .max(2.0);
        let after: [f64; 41] = core::array::from_fn(|i| most * i as f64 / 40.0);
        if let Some(found) = scene.chances_later(radius, after) {
            for (after, then) in after.into_iter().zip(found) {
                later.push(after, [then.max(SMALLEST_CHANCE)]);
            }
        }
    }
    if !later.is_empty() {
        traces.push(later.trace(
            "late",
            "Chance inside if it goes later",
            ("Later by", Quantity::Time),
            [("Chance", Quantity::Ratio)],
        ));
    }
    traces
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let circle = |x, y, radius| Shape::Ellipse {
        x,
        y,
        half_x: radius,
        half_y: radius,
    };
    let mut zones = Vec::new();
    let mut zone = |name: &str, title: &str, shape, reason: &str| {
        zones.push(Zone {
            name: name.to_owned(),
            title: title.to_owned(),
            shape,
            reason: reason.to_owned(),
        });
    };
    if let Some(radius) = values.number("zone_radius") {
        zone(
            "stand_off",
            "Performers' stand-off, as given",
            circle(0.0, 0.0, radius),
            "Nobody is in here from arming until the licensed operator says that the effect is spent and safe.",
        );
    }
    if let Some(radius) = values.number("debris_radius") {
        zone(
            "debris",
            "Debris zone, as given",
            circle(0.0, 0.0, radius),
            "The licensed operator expects debris here; nobody without a shield but the runner.",
        );
        if let Some([x, y]) = drift(values).filter(|[x, y]| models::hypot(*x, *y) > 0.1) {
            zone(
                "debris_downwind",
                "Light debris, carried by the wind",
                Shape::Rectangle {
                    x0: x.min(0.0) - radius,
                    x1: x.max(0.0) + radius,
                    y0: y.min(0.0) - radius,
                    y1: y.max(0.0) + radius,
                },
                "The box around the same debris, from where it falls at once to as far as this wind carries it.",
            );
        }
    }
    zones
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let values = &evaluation.values;
    let length = |value| say(Quantity::Length, value);
    let time = |value| say(Quantity::Time, value);
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    let radius = values.number("zone_radius");
    if let (Some(radius), Some(debris)) = (radius, values.number("debris_radius")) {
        say_so(
            "as_given",
            format!(
                "The stand-off of {} and the debris zone of {} are the licensed operator's own; nothing here \
                 shows that they are enough.",
                length(radius),
                length(debris)
            ),
        );
        if debris > radius {
            say_so(
                "runner_in_debris",
                format!(
                    "Debris may land {} outside the stand-off, where the runner is: the operator and the \
                     coordinator settle what the runner wears and which way the runner faces.",
                    length(debris - radius)
                ),
            );
        }
    }
    let scene = Scene::read(values);
    if let (Some(scene), Some(radius)) = (&scene, radius) {
        if scene.fire_time().is_none() {
            say_so(
                "mark_not_passed",
                format!(
                    "The firing mark lies past the end of the run, {} from its start: the runner never passes it.",
                    length(scene.sprint.length)
                ),
            );
        }
        let late = values.number("late_delay");
        match scene.inside(radius) {
            Some((from, to)) if from.is_infinite() && to.is_infinite() => say_so(
                "always_inside",
                format!(
                    "The whole run is inside the stand-off of {}: there is no moment to fire.",
                    length(radius)
                ),
            ),
            Some((from, to)) if from.is_infinite() => say_so(
                "early_shot",
                format!(
                    "The run starts inside the stand-off and is out {} after the cue: until then an effect that \
                     goes early finds the runner inside, so arm only after that.",
                    time(scene.after_cue(to))
                ),
            ),
            Some((from, to)) if to.is_infinite() => say_so(
                "held_shot",
                format!(
                    "From {} after the cue the runner is inside the stand-off and stays there: a shot that has \
                     not gone by then must be held.",
                    time(scene.after_cue(from))
                ),
            ),
            Some((from, to)) => say_so(
                "passes_through",
                format!(
                    "The runner is inside the stand-off from {} to {} after the cue: nothing may go then, early \
                     or late.",
                    time(scene.after_cue(from)),
                    time(scene.after_cue(to))
                ),
            ),
            None => {}
        }
        if let (Some(late), Some(found)) = (late, evaluation.value("late_chance")) {
            say_so(
                "late_shot",
                format!(
                    "A shot up to {} late finds the runner inside with a chance of {}; once it is called a misfire \
                     the runner stays at the end, and nobody goes to look.",
                    time(late),
                    chance(found)
                ),
            );
        }
    }
    if let (Some(runner), Some(crew)) = (
        evaluation.value("sound_delay"),
        evaluation.value("sound_delay_crew"),
    ) {
        say_so(
            "sound",
            format!(
                "The bang comes {} after the flash at the runner and {} at the crew: nobody takes it for a cue, \
                 and ears are covered before it.",
                time(runner),
                time(crew)
            ),
        );
    }
    if let (Some(carried), Some(plume)) = (drift(values), Plume::read(values)) {
        say_so(
            "wind",
            format!(
                "This wind carries light debris {} and smoke {} before they are gone; look again at both when it \
                 turns or rises.",
                length(models::hypot(carried[0], carried[1])),
                length(plume.reach)
            ),
        );
    }
    let missing = values.missing(run_needs(evaluation));
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "The runner is not computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
