//! What a high fall's figures are held against: its checks, their limits and who says so.

use super::axis;
use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge, plan, published},
    models::{
        GRAVITY,
        tolerance::{self, Axis},
    },
    units::{Quantity, say},
};

const FOOT: f64 = 0.3048;

pub(super) const FALL: &[&str] = &["drop_height", "performer_mass"];
const STOP: &[&str] = &["drop_height", "performer_mass", "catcher_depth"];
const BODY: &[&str] = &[
    "drop_height",
    "performer_mass",
    "catcher_depth",
    "landing_attitude",
];
const CATCH: &[&str] = &[
    "drop_height",
    "performer_mass",
    "catcher_length",
    "catcher_width",
    "catcher_distance",
    "wind_speed",
];

fn guideline() -> Source {
    published(
        "Safety Guidelines for the Film and Television Industry in Ontario",
        "guideline 25, high falls",
        Some("Ontario"),
    )
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = vec![ceiling(evaluation)];
    checks.push(misses(evaluation));
    checks.extend(body(evaluation));
    checks.push(judge(
        evaluation,
        Rule::policy(
            evaluation,
            "wind",
            "Wind at the lip",
            Subject::Input("wind_speed"),
            Bound::AtMost,
            &["wind_speed"],
        ),
        |held| {
            format!(
                "The fall may go in wind up to {}; the habit is to stop at 5 to 7 m/s at the lip.",
                say(Quantity::Speed, held.value)
            )
        },
    ));
    checks.extend(people(evaluation));
    checks
}

fn ceiling(evaluation: &Evaluation) -> Check {
    let bag = evaluation.values.choice("catcher") == Some("air_bag");
    let (feet, catcher) = if bag {
        (120.0, "an air bag")
    } else {
        (40.0, "a box rig")
    };
    judge(
        evaluation,
        Rule {
            name: "catcher_ceiling",
            title: "Drop against the catcher's ceiling",
            subject: Subject::Input("drop_height"),
            quantity: Quantity::Length,
            bound: Bound::AtMost,
            limit: feet * FOOT,
            source: guideline(),
            blocking: true,
            reserve: 0.0,
            needs: &["drop_height", "catcher"],
        },
        |held| {
            format!(
                "{} into {catcher}, whose ceiling is {}; lower the drop or change the catcher to gain \
                 margin.",
                say(Quantity::Length, held.value),
                say(Quantity::Length, feet * FOOT)
            )
        },
    )
}

fn misses(evaluation: &Evaluation) -> Check {
    let accepted = evaluation
        .values
        .number("wanted_miss_probability")
        .unwrap_or(0.001);
    let needed = |name| {
        evaluation
            .value(name)
            .map_or_else(String::new, |v| say(Quantity::Length, v))
    };
    let (length, width) = (
        needed("catcher_length_needed"),
        needed("catcher_width_needed"),
    );
    judge(
        evaluation,
        Rule {
            name: "miss_probability",
            title: "Chance of missing the catcher",
            subject: Subject::Figure("miss_probability"),
            quantity: Quantity::Ratio,
            bound: Bound::AtMost,
            limit: accepted,
            source: plan(),
            blocking: true,
            reserve: RESERVE,
            needs: CATCH,
        },
        |held| {
            format!(
                "The chance of coming down outside the catcher less its margin is {}; {length} by {width} \
                 at this place would bring it to {}.",
                chance(held.value),
                chance(accepted)
            )
        },
    )
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

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let mean_limit = evaluation
        .values
        .number("mean_limit")
        .unwrap_or(10.0 * GRAVITY);
    let axis = axis(&evaluation.values);
    let limits = tolerance::response(axis.unwrap_or(Axis::Headward)).limits;
    let distance = evaluation.value("stopping_distance");
    let deeper = distance.map_or_else(String::new, |d| say(Quantity::Length, d));
    let response = |name, title, risk, limit: f64, blocking| {
        judge(
            evaluation,
            Rule {
                name,
                title,
                subject: Subject::Figure("dynamic_response"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: limit * GRAVITY,
                source: from_memory("J. W. Brinkley, dynamic response limits", risk),
                blocking,
                reserve: RESERVE,
                needs: BODY,
            },
            |held| {
                format!(
                    "The stop gives a dynamic response of {} in {deeper}; a deeper catcher or a lower \
                     drop brings it down.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        )
    };
    let mut checks = vec![
        judge(
            evaluation,
            Rule {
                name: "mean_felt",
                title: "Mean while stopping",
                subject: Subject::Figure("mean_felt"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: mean_limit,
                source: plan(),
                blocking: true,
                reserve: RESERVE,
                needs: STOP,
            },
            |held| {
                format!(
                    "The body feels {} on average over {deeper}; this does not depend on the pulse shape.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ),
        response(
            "response_low",
            "Dynamic response, low risk",
            "low risk",
            limits[0],
            false,
        ),
        response(
            "response_medium",
            "Dynamic response, medium risk",
            "medium risk",
            limits[1],
            true,
        ),
    ];
    if axis == Some(Axis::Headward) {
        checks.push(judge(
            evaluation,
            Rule {
                name: "spinal_injury",
                title: "Spine, ejection criterion",
                subject: Subject::Figure("dynamic_response"),
                quantity: Quantity::Acceleration,
                bound: Bound::AtMost,
                limit: 18.0 * GRAVITY,
                source: from_memory("Dynamic Response Index, aircrew ejection", "18: at most 5 % injured"),
                blocking: true,
                reserve: RESERVE,
                needs: BODY,
            },
            |held| {
                format!(
                    "Seated or feet first the spine answers with {}; 18 g is where ejection seats hurt \
                     up to one in twenty.",
                    say(Quantity::Acceleration, held.value)
                )
            },
        ));
    }
    checks.push(judge(
        evaluation,
        Rule {
            name: "head_criterion",
            title: "Head injury criterion, 15 ms",
            subject: Subject::Figure("head_criterion"),
            quantity: Quantity::Ratio,
            bound: Bound::AtMost,
            limit: 700.0,
            source: published("49 CFR 571.208", "S6.2, 15 ms", Some("United States")),
            blocking: true,
            reserve: RESERVE,
            needs: STOP,
        },
        |held| {
            format!(
                "HIC is {} for a head that stops with the body; a head that strikes a hard part would \
                 take far more.",
                say(Quantity::Ratio, held.value)
            )
        },
    ));
    checks
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    let highest = evaluation.values.ends_of("drop_height").map(|ends| ends.1);
    let mut checks = Vec::new();
    // The guideline asks for two spotters only above 15 ft; a drop surely below that is held to nothing.
    if highest.is_none_or(|height| height > 15.0 * FOOT) {
        checks.push(count(
            evaluation,
            ("spotters", "Spotters", "spotters"),
            2.0,
            guideline(),
            true,
            &["drop_height", "spotters"],
            "spotters planned; above 4.57 m at least 2 watch the catcher's edges.",
        ));
    }
    checks.push(count(
        evaluation,
        (
            "emergency_providers",
            "Emergency providers",
            "emergency_providers",
        ),
        2.0,
        guideline(),
        false,
        &["emergency_providers"],
        "standing by; the guideline generally expects 2 providers for a high fall.",
    ));
    checks.push(count(
        evaluation,
        ("ambulance", "Ambulance", "ambulances"),
        1.0,
        guideline(),
        false,
        &["ambulances"],
        "standing by; the guideline generally expects an ambulance for a high fall.",
    ));
    checks.push(judge(
        evaluation,
        Rule::policy(evaluation, "falls_today", "Falls on the day", Subject::Input("falls_today"), Bound::AtMost, &["falls_today"]).cautionary().exact(),
        |held| {
            format!(
                "{} planned for this performer, rehearsals included; 2 or 3 of the highest a day is the \
                 habit.",
                say(Quantity::Count, held.value)
            )
        },
    ));
    checks
}

fn count(
    evaluation: &Evaluation,
    (name, title, input): (&'static str, &'static str, &'static str),
    limit: f64,
    source: Source,
    blocking: bool,
    needs: &'static [&'static str],
    says: &str,
) -> Check {
    judge(
        evaluation,
        Rule {
            name,
            title,
            subject: Subject::Input(input),
            quantity: Quantity::Count,
            bound: Bound::AtLeast,
            limit,
            source,
            blocking,
            reserve: 0.0,
            needs,
        },
        |held| format!("{} {says}", say(Quantity::Count, held.value)),
    )
}
