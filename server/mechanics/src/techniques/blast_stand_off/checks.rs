//! What a stand-off's figures are held against: what the licensed operator gives, habits, and what is
//! published about bystanders.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, from_memory, judge},
    units::{Quantity, say},
};

/// What the run and the firing need, by the clock or by a mark.
macro_rules! timed {
    ($by:literal $(, $extra:literal)*) => {
        &[
            "firing_cue", $by, "start_along", "start_across", "end_along", "end_across", "run_speed"
            $(, $extra)*
        ]
    };
}

/// The same lists for either way of firing.
macro_rules! by_cue {
    ($evaluation:expr $(, $extra:literal)*) => {
        match $evaluation.values.choice("firing_cue") {
            Some("mark") => timed!("mark_distance" $(, $extra)*),
            Some(_) => timed!("fire_after" $(, $extra)*),
            None => timed!("firing_cue" $(, $extra)*),
        }
    };
}

/// Everything the runner's figures need.
pub(super) fn run_needs(evaluation: &Evaluation) -> &'static [&'static str] {
    by_cue!(evaluation, "zone_radius", "late_delay")
}

const END: &[&str] = &[
    "start_along",
    "start_across",
    "end_along",
    "end_across",
    "run_speed",
    "firing_cue",
    "zone_radius",
];
const WIND: &[&str] = &["wind_speed", "wind_towards", "crew_along", "crew_across"];
const CREW: &[&str] = &[
    "wind_speed",
    "wind_towards",
    "crew_along",
    "crew_across",
    "debris_radius",
];
const CAMERA: &[&str] = &[
    "wind_speed",
    "wind_towards",
    "camera_cover",
    "camera_along",
    "camera_across",
    "debris_radius",
];
const SHIELDED: &[&str] = &[
    "wind_speed",
    "wind_towards",
    "camera_along",
    "camera_across",
    "camera_stand_off",
];

/// A chance as people say it.
pub(super) fn chance(probability: f64) -> String {
    if probability <= 1e-9 {
        "under 1 in a thousand million".to_owned()
    } else if probability < 0.02 {
        format!("1 in {:.0}", 1.0 / probability)
    } else {
        format!("{:.0} %", 100.0 * probability)
    }
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = runner(evaluation);
    checks.extend(operator(evaluation));
    checks.extend(others(evaluation));
    checks
}

fn stated(evaluation: &Evaluation, name: &str) -> f64 {
    evaluation.values.number(name).unwrap_or(0.0)
}

fn wanted(evaluation: &Evaluation, name: &str) -> String {
    evaluation
        .policies
        .get(name)
        .map_or_else(String::new, |policy| say(policy.quantity, policy.value))
}

fn length(value: f64) -> String {
    say(Quantity::Length, value)
}

fn time(value: f64) -> String {
    say(Quantity::Time, value)
}

fn runner(evaluation: &Evaluation) -> Vec<Check> {
    let radius = stated(evaluation, "zone_radius");
    let accepted = stated(evaluation, "accepted_chance");
    let late = time(stated(evaluation, "late_delay"));
    let spread = evaluation
        .value("place_spread")
        .map_or_else(String::new, length);
    let from_effect = |name, title, figure, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(figure),
            Quantity::Length,
            Bound::AtLeast,
            radius,
            needs,
        )
    };
    let likely = |name, title, figure, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(figure),
            Quantity::Ratio,
            Bound::AtMost,
            accepted,
            needs,
        )
    };
    vec![
        judge(
            evaluation,
            from_effect(
                "runner_stand_off",
                "Runner against the stand-off",
                "runner_distance",
                by_cue!(evaluation, "zone_radius"),
            ),
            |held| {
                format!(
                    "The runner is {} from the effect as it goes, {} at the least; the operator gives {}. Move \
                     the run out or the firing to when the runner is further.",
                    length(held.value),
                    length(held.low),
                    length(radius)
                )
            },
        ),
        judge(
            evaluation,
            likely(
                "inside_chance",
                "Chance inside the stand-off",
                "inside_chance",
                by_cue!(evaluation, "zone_radius"),
            ),
            |held| {
                format!(
                    "The chance is {} with the runner's place spread by {}; {} is accepted. Fire by a mark, or \
                     give the run more distance.",
                    chance(held.value),
                    spread,
                    chance(accepted)
                )
            },
        ),
        judge(
            evaluation,
            from_effect(
                "late_stand_off",
                "Runner against a late shot",
                "late_distance",
                by_cue!(evaluation, "zone_radius", "late_delay"),
            ),
            |held| {
                format!(
                    "Should the effect go up to {late} late, the runner is as near as {}, {} at the least; the \
                     operator gives {}.",
                    length(held.value),
                    length(held.low),
                    length(radius)
                )
            },
        ),
        judge(
            evaluation,
            likely(
                "late_chance",
                "Chance inside, late shot included",
                "late_chance",
                by_cue!(evaluation, "zone_radius", "late_delay"),
            ),
            |held| {
                format!(
                    "From the planned moment to {late} after it the chance is {}; {} is accepted. On a run that \
                     only leads away, a late shot finds the runner further out.",
                    chance(held.value),
                    chance(accepted)
                )
            },
        ),
        judge(
            evaluation,
            from_effect(
                "after_stand_off",
                "Runner once the effect has gone",
                "after_distance",
                by_cue!(evaluation, "zone_radius"),
            ),
            |held| {
                format!(
                    "From the effect on the runner is as near as {}, {} at the least; the operator gives {}, and \
                     debris may still be falling or a late shot go.",
                    length(held.value),
                    length(held.low),
                    length(radius)
                )
            },
        ),
        judge(
            evaluation,
            from_effect(
                "end_stand_off",
                "Where the runner waits",
                "end_distance",
                END,
            ),
            |held| {
                format!(
                    "The run ends {} from the effect, {} at the least, and the operator gives {}; the runner waits \
                     there until the operator says that nothing is left.",
                    length(held.value),
                    length(held.low),
                    length(radius)
                )
            },
        ),
    ]
}

fn operator(evaluation: &Evaluation) -> Vec<Check> {
    let policy = |name, title, subject, needs| {
        Rule::policy(evaluation, name, title, subject, Bound::AtLeast, needs)
    };
    vec![
        judge(
            evaluation,
            policy(
                "time_margin",
                "Time in hand at the effect",
                Subject::Figure("time_margin"),
                by_cue!(evaluation, "zone_radius"),
            ),
            |held| {
                format!(
                    "The runner has {} in hand, {} at the least; {} is wanted, so fire later after the runner is \
                     out.",
                    time(held.value),
                    time(held.low),
                    wanted(evaluation, "time_margin")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "decision_margin",
                "Operator sees the runner clear",
                Subject::Figure("decision_margin"),
                by_cue!(evaluation, "zone_radius"),
            )
            .cautionary(),
            |held| {
                format!(
                    "When the operator can last decide, the runner has {} in hand; below {} a fall is seen too \
                     late to hold the firing.",
                    time(held.value),
                    wanted(evaluation, "decision_margin")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "misfire_hold",
                "Wait after a misfire",
                Subject::Input("misfire_hold"),
                &["misfire_hold"],
            )
            .exact(),
            |held| {
                format!(
                    "Nobody goes near a misfire for {}; {} is wanted, and then the licensed operator goes alone.",
                    time(held.value),
                    wanted(evaluation, "misfire_hold")
                )
            },
        ),
        judge(
            evaluation,
            policy(
                "escape_ways",
                "Ways out that have been walked",
                Subject::Input("escape_ways"),
                &["escape_ways"],
            )
            .exact(),
            |held| {
                format!(
                    "{} are clear and walked; {} are wanted, so that one is left if the wind or the effect shuts \
                     the other.",
                    say(Quantity::Count, held.value),
                    wanted(evaluation, "escape_ways")
                )
            },
        ),
    ]
}

/// Least separations of an audience that NFPA 1126 is remembered to ask for, m: 15 ft, or 25 ft from a
/// concussion mortar, and in any case twice the fallout radius.
const LEAST_SEPARATION: f64 = 4.572;
const MORTAR_SEPARATION: f64 = 7.62;

fn others(evaluation: &Evaluation) -> Vec<Check> {
    let debris = stated(evaluation, "debris_radius");
    let carried = |rule: Rule, who: &str, given: f64| {
        judge(evaluation, rule, |held| {
            format!(
                "The nearest {who} is {} from the middle of the debris, {} at the least with the wind; the \
                 operator gives {}.",
                length(held.value),
                length(held.low),
                length(given)
            )
        })
    };
    let distance = |name, title, given, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(name),
            Quantity::Length,
            Bound::AtLeast,
            given,
            needs,
        )
    };
    let mut checks = vec![carried(
        distance(
            "crew_distance",
            "Crew against the debris zone",
            debris,
            CREW,
        ),
        "crew member",
        debris,
    )];
    match evaluation.values.choice("camera_cover") {
        Some("unmanned") => {}
        Some("shielded") => {
            let given = stated(evaluation, "camera_stand_off");
            checks.push(carried(
                distance(
                    "camera_distance",
                    "Camera behind its shield",
                    given,
                    SHIELDED,
                ),
                "shielded camera",
                given,
            ));
        }
        _ => checks.push(carried(
            distance(
                "camera_distance",
                "Camera against the debris zone",
                debris,
                CAMERA,
            ),
            "open camera",
            debris,
        )),
    }
    let least = match evaluation.values.choice("effect") {
        Some("concussion") => MORTAR_SEPARATION,
        _ => LEAST_SEPARATION,
    };
    let apart = least.max(2.0 * debris);
    checks.push(judge(
        evaluation,
        Rule::planned(
            "bystanders",
            "Bystanders' separation",
            Subject::Input("bystander_distance"),
            Quantity::Length,
            Bound::AtLeast,
            apart,
            &["bystander_distance", "effect", "debris_radius"],
        )
        .by(from_memory("NFPA 1126", "separation of the audience")),
        |held| {
            format!(
                "Bystanders are {} away, {} at the least; the greater of {} and twice the debris zone is {}.",
                length(held.value),
                length(held.low),
                length(least),
                length(apart)
            )
        },
    ));
    checks.push(judge(
        evaluation,
        distance(
            "bystander_debris",
            "Bystanders against the debris zone",
            debris,
            &["bystander_distance", "debris_radius", "wind_speed"],
        ),
        |held| {
            format!(
                "Should the wind turn their way, bystanders are {} from the middle of the debris, {} at the least; \
                 the operator gives {}.",
                length(held.value),
                length(held.low),
                length(debris)
            )
        },
    ));
    checks.push(judge(
        evaluation,
        Rule::policy(
            evaluation,
            "smoke",
            "Crew clear of the smoke",
            Subject::Figure("smoke_clearance"),
            Bound::AtLeast,
            WIND,
        )
        .cautionary(),
        |held| {
            format!(
                "The nearest crew is {} from the smoke, {} at the least as the wind swings; {} is wanted, so move \
                 upwind or wait.",
                length(held.value),
                length(held.low),
                wanted(evaluation, "smoke")
            )
        },
    ));
    checks
}
