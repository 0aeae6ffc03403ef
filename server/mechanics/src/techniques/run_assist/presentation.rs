//! What is shown beside a run assist's figures: plots, ground to keep clear, and cautions.

use super::{assist, checks::NEEDED, gait, is_run};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    plotting::Recorder,
    units::{Quantity, say},
};

/// Strides whose highest pulls differ by less than this share of the hardest are as good as alike.
const AS_GOOD_AS_ALIKE: f64 = 0.05;

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let (Some(assist), Some(gait)) = (assist(values), gait(values).filter(is_run)) else {
        return Vec::new();
    };
    if assist.left() <= 0.0 {
        return Vec::new();
    }
    let mut step = Recorder::new();
    let done = assist.bounce(gait, |at| {
        step.push(at.time, [at.tension, at.ground, at.height]);
    });
    if done.is_none() {
        return Vec::new();
    }
    vec![step.trace(
        "step",
        "One step",
        ("Time from the foot's touch", Quantity::Time),
        [
            ("Line pull", Quantity::Force),
            ("Push of the ground", Quantity::Force),
            ("Rise of the body", Quantity::Length),
        ],
    )]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let (Some(travel), Some(track)) = (
        evaluation.figure("travel"),
        evaluation.values.number("track_length"),
    ) else {
        return Vec::new();
    };
    vec![Zone {
        name: "lane".to_owned(),
        title: "Lane under the track".to_owned(),
        shape: Shape::Rectangle {
            x0: -2.0,
            x1: travel.high.max(track) + 2.0,
            y0: -2.0,
            y1: 2.0,
        },
        reason: "A runner who is held overhead cannot step aside, and swings out at a stumble. Measured from \
                 the first step."
            .to_owned(),
    }]
}

pub(super) fn cautions(evaluation: &Evaluation) -> Vec<Caution> {
    let mut cautions = Vec::new();
    let mut say_so = |name: &str, text: String| {
        cautions.push(Caution {
            name: name.to_owned(),
            text,
        });
    };
    let values = &evaluation.values;
    let force = |v| say(Quantity::Force, v);
    let length = |v| say(Quantity::Length, v);
    let time = |v| say(Quantity::Time, v);
    let (Some(assist), Some(gait)) = (assist(values), gait(values)) else {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                values.missing(NEEDED).join(", ")
            ),
        );
        return cautions;
    };
    if assist.left() <= 0.0 {
        say_so(
            "floats",
            format!(
                "The line pulls {} on a performer of {}: the feet leave the ground and nothing else is \
                 computed.",
                force(assist.pull()),
                say(Quantity::Mass, assist.mass)
            ),
        );
        return cautions;
    }
    if !is_run(&gait) {
        say_so(
            "walks",
            format!(
                "A foot is down for {} of a step of {}: this is a walk, and the bounce of a run is not \
                 computed.",
                time(gait.contact),
                time(gait.step)
            ),
        );
        return cautions;
    }
    if evaluation.value("stride_least") == Some(0.0) {
        say_so(
            "slack",
            format!(
                "The counterweight cannot follow the stride: the line goes slack and snatches at {}.",
                force(evaluation.value("stride_peak").unwrap_or(0.0))
            ),
        );
    }
    if let Some((calmest, hardest)) = assist
        .unsettled(gait)
        .filter(|(calmest, hardest)| hardest - calmest > AS_GOOD_AS_ALIKE * hardest)
    {
        say_so(
            "uneven",
            format!(
                "The strides never settle: the highest pull goes from {} to {} from one to the next, and in a \
                 longer run may go further, while one stride is what line and structure are held against. A line \
                 that stays taut steadies it.",
                force(calmest),
                force(hardest)
            ),
        );
    }
    let swing = assist.line_period() / gait.step;
    if (0.8..1.25).contains(&swing) {
        say_so(
            "in_step",
            format!(
                "Performer and counterweight swing on the line in {} and a step takes {}: each step feeds the \
                 swing, so change the line's stiffness or the purchase.",
                time(assist.line_period()),
                time(gait.step)
            ),
        );
    }
    say_so(
        "felt_inertia",
        format!(
            "At every rise and fall the counterweight counts as {} more to lift, so the body comes down at {} \
             and not as its lighter weight alone would.",
            say(Quantity::Mass, assist.inertia()),
            say(Quantity::Acceleration, assist.fall())
        ),
    );
    if let Some(height) = evaluation
        .value("catch_height")
        .filter(|height| *height <= 0.0)
    {
        say_so(
            "not_caught",
            format!(
                "A stumbling body meets the floor before it is held: the catch would end {} below it.",
                length(-height)
            ),
        );
    }
    if let Some(rise) = evaluation.value("end_rise") {
        say_so(
            "dead_stop",
            format!(
                "At full speed the trolley must never meet its end: the runner could swing up by up to {}.",
                length(rise)
            ),
        );
    }
    if values.choice("counterweight_place") == Some("fixed") {
        say_so(
            "led_line",
            "The fixed counterweight counts as neither moved by the travel nor pulling the trolley along, as \
             when its line leads on through the trolley to the far end: on a plain line it would travel the \
             whole run and drag the trolley with its pull."
                .to_owned(),
        );
    }
    say_so(
        "let_go",
        format!(
            "If the line parts the counterweight of {} falls free and the full weight comes back on the feet \
             at once.",
            say(Quantity::Mass, assist.weight)
        ),
    );
    cautions
}
