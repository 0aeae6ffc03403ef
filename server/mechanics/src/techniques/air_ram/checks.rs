//! What an air ram's figures are held against: its checks, their limits and who says so.

use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, common_practice, from_memory, judge, plan},
    models::{
        GRAVITY,
        tolerance::{self, Axis},
    },
    units::{Quantity, say},
};

/// What the launch needs, and more.
macro_rules! launch_and {
    ($($extra:literal),*) => {
        &[
            "performer_mass", "foot_distance", "arm_end", "arm_length", "arm_mass", "cylinder_pin",
            "cylinder_back", "cylinder_below", "reservoir_pressure", "reservoir_volume", "bore",
            "valve_conductance", $($extra),*
        ]
    };
}

pub(super) const LAUNCH: &[&str] = launch_and!();

/// A maker's own limit, as marked on the equipment.
fn marking() -> Source {
    Source {
        document: "the marking on the equipment".to_owned(),
        ..common_practice()
    }
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = body(evaluation);
    checks.extend(rig(evaluation));
    checks.extend(flight(evaluation));
    checks.extend(day(evaluation));
    checks
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let rise = evaluation.value("rise_time").map_or_else(
        || "no rise at all".to_owned(),
        |v| format!("a rise of {}", say(Quantity::Time, v)),
    );
    let limits = tolerance::response(Axis::Headward).limits;
    let response = |name, title, limit: f64, source, blocking| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure("dynamic_response"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: limit * GRAVITY,
                source,
                blocking,
                reserve: RESERVE,
                needs: LAUNCH,
            },
            |held| {
                format!(
                    "The kick gives the spine a dynamic response of {}; a slower valve or less pressure \
                     lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
    let brinkley = |risk| from_memory("J. W. Brinkley, dynamic response limits", risk);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "peak_felt",
                "Peak through the legs",
                Subject::Figure("peak_felt"),
                Bound::AtMost,
                LAUNCH,
            ),
            |held| {
                format!(
                    "The legs take up to {} with {rise}; less pressure, a longer arm or a slower \
                     valve lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
        response(
            "response_low",
            "Dynamic response, low risk",
            limits[0],
            brinkley("low risk"),
            false,
        ),
        response(
            "response_medium",
            "Dynamic response, medium risk",
            limits[1],
            brinkley("medium risk"),
            true,
        ),
        response(
            "spinal_injury",
            "Spine, ejection criterion",
            18.0,
            from_memory(
                "Dynamic Response Index, aircrew ejection",
                "18: at most 5 % injured",
            ),
            true,
        ),
    ]
}

fn rig(evaluation: &Evaluation) -> Vec<Check> {
    let input = |name| evaluation.values.number(name).unwrap_or(0.0);
    let push = evaluation
        .value("plate_force")
        .map_or_else(String::new, |v| say(Quantity::Force, v));
    vec![
        judge(
            evaluation,
            Rule {
                name: "rated_pressure",
                title: "Pressure against the rating",
                subject: Subject::Input("reservoir_pressure"),
                quantity: Quantity::Pressure,
                bound: Bound::AtMost,
                limit: input("rated_pressure"),
                source: marking(),
                blocking: true,
                reserve: RESERVE,
                needs: &["reservoir_pressure", "rated_pressure"],
            },
            |held| {
                format!(
                    "{}, up to {} from shot to shot, in equipment marked for {}.",
                    say(Quantity::Pressure, held.value),
                    say(Quantity::Pressure, held.high),
                    say(Quantity::Pressure, input("rated_pressure"))
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "stroke",
                title: "Stroke of the cylinder",
                subject: Subject::Figure("stroke_needed"),
                quantity: Quantity::Length,
                bound: Bound::AtMost,
                limit: input("stroke"),
                source: marking(),
                blocking: true,
                reserve: 0.0,
                needs: launch_and!("stroke"),
            },
            |held| {
                format!(
                    "The arm asks for {} of a cylinder that gives {}; short of that the piston strikes its \
                     end before the arm meets its stop.",
                    say(Quantity::Length, held.value),
                    say(Quantity::Length, input("stroke"))
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "plate_factor",
                "Plate factor",
                Subject::Figure("plate_factor"),
                Bound::AtLeast,
                launch_and!("plate_strength"),
            ),
            |held| {
                format!(
                    "{}: the plate pushes the feet with up to {push}; a stronger plate and hinge raise it.",
                    say(Quantity::Ratio, held.value)
                )
            },
        ),
    ]
}

fn flight(evaluation: &Evaluation) -> Vec<Check> {
    let number = |name| evaluation.values.number(name);
    let of = |name| {
        evaluation
            .value(name)
            .map_or_else(String::new, |v| say(Quantity::Length, v))
    };
    let accepted = number("wanted_miss_probability").unwrap_or(0.001);
    let (length, width) = (of("mat_length_needed"), of("mat_width_needed"));
    let (place, apex) = (of("landing_distance"), of("apex"));
    let depth = number("mat_depth")
        .zip(number("usable_depth"))
        .map_or_else(String::new, |(d, s)| say(Quantity::Length, d * s));
    vec![
        judge(
            evaluation,
            Rule {
                name: "miss_probability",
                title: "Chance of missing the mat",
                subject: Subject::Figure("miss_probability"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit: accepted,
                source: plan(),
                blocking: true,
                reserve: RESERVE,
                needs: launch_and!("wind_speed", "mat_distance", "mat_length", "mat_width"),
            },
            |held| {
                format!(
                    "The body lands {place} from the marked feet; the chance of coming down outside the mat \
                     less its margin is {}, and {length} by {width} there would bring it to {}.",
                    chance(held.value),
                    chance(accepted)
                )
            },
        ),
        judge(
            evaluation,
            Rule {
                name: "landing_mean",
                title: "Mean while stopping",
                subject: Subject::Figure("landing_mean"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: number("mean_limit").unwrap_or(10.0 * GRAVITY),
                source: plan(),
                blocking: true,
                reserve: RESERVE,
                needs: launch_and!("mat_depth"),
            },
            |held| {
                format!(
                    "The mat stops the body with {} on average over {depth}; a deeper mat lowers it.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "headroom",
                "Headroom",
                Subject::Figure("headroom"),
                Bound::AtLeast,
                launch_and!("clear_height"),
            ),
            |held| {
                format!(
                    "The body's centre rises to {apex}, {} under what is above it; arms and legs reach \
                     further.",
                    say(Quantity::Length, held.value)
                )
            },
        ),
    ]
}

/// A small chance as people say it.
fn chance(probability: f64) -> String {
    if probability <= 1e-9 {
        "under 1 in a thousand million".to_owned()
    } else if probability < 0.02 {
        format!("1 in {:.0}", 1.0 / probability)
    } else {
        format!("{:.0} %", 100.0 * probability)
    }
}

fn day(evaluation: &Evaluation) -> Vec<Check> {
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "wind",
                "Wind in the flight",
                Subject::Input("wind_speed"),
                Bound::AtMost,
                &["wind_speed"],
            ),
            |held| {
                format!(
                    "The launch may go in wind up to {}; a body thrown high drifts with it.",
                    say(Quantity::Speed, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "spotters",
                "Spotters at the mat",
                Subject::Input("spotters"),
                Bound::AtLeast,
                &["spotters"],
            )
            .exact(),
            |held| {
                format!(
                    "{} at the mat, and the operator watches the feet and nothing else.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "launches_today",
                "Launches on the day",
                Subject::Input("launches_today"),
                Bound::AtMost,
                &["launches_today"],
            )
            .cautionary()
            .exact(),
            |held| {
                format!(
                    "{} planned for this performer, rehearsals included; ankles tire before the rest does.",
                    say(Quantity::Count, held.value)
                )
            },
        ),
    ]
}
