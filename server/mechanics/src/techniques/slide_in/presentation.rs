//! What is shown beside a slide-in's figures: the run, ground to keep clear, and cautions.

use super::{
    checks::RUN,
    run::{self, Scatter, Setup, Surface},
};
use crate::{
    assessment::{Caution, Shape, Trace, Zone},
    evaluation::Evaluation,
    models,
    plotting::Recorder,
    reading::Values,
    units::{Quantity, say},
};

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let Some(setup) = run::surface(values).and_then(|surface| Setup::read(values, surface)) else {
        return Vec::new();
    };
    let mut speeds = Recorder::new();
    let mut places = Recorder::new();
    let run = setup.run(|moment| {
        speeds.push(moment.time, [moment.speed, moment.heading]);
        places.push(moment.time, [moment.along, moment.aside]);
    });
    if run.is_none() {
        return Vec::new();
    }
    let time = ("Time", Quantity::Time);
    vec![
        speeds.trace(
            "run",
            "The run from the brake mark",
            time,
            [("Speed", Quantity::Speed), ("Heading", Quantity::Angle)],
        ),
        places.trace(
            "path",
            "Where the car's middle is",
            time,
            [
                ("Along the approach", Quantity::Length),
                ("Aside", Quantity::Length),
            ],
        ),
    ]
}

/// The share of runs that may end beyond the run-off.
const ONE_IN_A_MILLION: f64 = 1e-6;

/// Where the runs go along the approach.
struct RunOff {
    /// Where the rear of one that slides back may be, or the brake mark.
    from: f64,
    /// How far one run in a million comes on either surface.
    to: f64,
    /// Whether that is where the runs end.
    ends: bool,
}

/// None before all is entered.
fn run_off(values: &Values) -> Option<RunOff> {
    let size = (values.number("car_length")?, values.number("car_width")?);
    let diagonal = models::hypot(size.0, size.1);
    let (mut from, mut to, mut ends) = (0.0_f64, 0.0_f64, true);
    for surface in [Surface::Dry, Surface::Wet] {
        let scatter: Scatter = run::scatter(values, surface)?;
        let end = scatter.beyond_which(ONE_IN_A_MILLION, size);
        ends &= end.is_some();
        to = to.max(end.unwrap_or_else(|| scatter.furthest() + diagonal));
        if let Some(back_to) = scatter.back_to() {
            from = from.min(back_to - 0.5 * diagonal);
        }
    }
    Some(RunOff { from, to, ends })
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(run_off), Some(side)) = (run_off(values), evaluation.figure("side_reach")) else {
        return Vec::new();
    };
    vec![Zone {
        name: "run_off".to_owned(),
        title: "Run-off of the car".to_owned(),
        shape: Shape::Rectangle {
            x0: run_off.from,
            x1: run_off.to,
            y0: -side.high,
            y1: side.high,
        },
        reason: match run_off.from < 0.0 {
            true => {
                "From as far behind the brake mark as it slides back to where one run in a million comes, wet or \
                 dry: nobody stands, crouches or leaves a camera with a person in here."
            }
            false => {
                "From the brake mark to where one run in a million ends, wet or dry: nobody stands, crouches or \
                 leaves a camera with a person in here."
            }
        }
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
    let length = |value| say(Quantity::Length, value);
    if let (Some(dry), Some(wet)) = (evaluation.value("gap_dry"), evaluation.value("gap_wet")) {
        let text = if dry >= wet {
            format!(
                "The same run rests {} further when the surface is wet: measure friction again after any rain, \
                 wetting down or oil.",
                length(dry - wet)
            )
        } else {
            format!(
                "The same run rests {} further when the surface is dry: see whether the two frictions were \
                 exchanged.",
                length(wet - dry)
            )
        };
        say_so("rain", text);
    }
    if run_off(values).is_some_and(|run_off| !run_off.ends) {
        say_so(
            "no_end",
            "Within the spread of friction more than one run in a million does not come to rest: the run-off has no \
             end that can be drawn."
                .to_owned(),
        );
    }
    let back = run::surface(values)
        .and_then(|surface| Setup::read(values, surface)?.run(|_| {})?.slid_back());
    if let Some(back) = back {
        say_so(
            "slides_back",
            format!(
                "The slope is steeper than locked wheels hold: the car slides back {} from where it came furthest, \
                 and the gap is the one there.",
                length(back)
            ),
        );
    }
    if let (Some(approach), Some(hand_brake)) = (
        values.number("approach_speed"),
        values.number("slide_speed"),
    ) && hand_brake >= approach
    {
        say_so(
            "no_braking",
            format!(
                "The hand brake is planned at {} and the car comes at {}: it slides from the mark with no \
                 straight braking.",
                say(Quantity::Speed, hand_brake),
                say(Quantity::Speed, approach)
            ),
        );
    }
    if values.missing(RUN).is_empty()
        && evaluation.value("past_mark").is_none()
        && values.number("mark_distance").is_some()
    {
        say_so(
            "no_stop",
            "With this friction and this fall of the road the car does not come to rest."
                .to_owned(),
        );
    }
    if let (Some(spread), Some(gap)) = (evaluation.value("spread_wet"), evaluation.value("gap_wet"))
        && spread > 0.0
    {
        say_so(
            "normal",
            format!(
                "The wet gap is {} spreads of {}: a burst tyre, a stuck hand brake or a late foot is not in that \
                 spread, so people need a way out as well as a gap.",
                say(Quantity::Ratio, gap / spread),
                length(spread)
            ),
        );
    }
    let missing = values.missing(RUN);
    if !missing.is_empty() {
        say_so(
            "not_entered",
            format!(
                "Nothing is computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
    }
    cautions
}
