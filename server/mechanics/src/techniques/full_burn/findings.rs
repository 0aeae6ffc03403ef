//! What a burn's figures mean: checks against limits, plots, ground to keep clear, cautions.

use super::{
    flame_time,
    layers::{HORIZON, Stack},
};
use crate::{
    assessment::{Bound, Caution, Check, Shape, Source, Trace, Zone},
    evaluation::Evaluation,
    judging::{Held, RESERVE, Rule, Subject, common_practice, from_memory, judge},
    plotting::Recorder,
    units::{Quantity, say},
};

const LAYERS: &[&str] = &[
    "outer_cloth",
    "outer_mass",
    "outer_thickness",
    "gel_mass",
    "under_cloth",
    "under_mass",
    "under_thickness",
];
const PLANNED: &[&str] = &[
    "planned_time",
    "outer_cloth",
    "outer_mass",
    "outer_thickness",
    "gel_mass",
    "under_cloth",
    "under_mass",
    "under_thickness",
];
const CALLED_OUT: &[&str] = &[
    "called_out_time",
    "outer_cloth",
    "outer_mass",
    "outer_thickness",
    "gel_mass",
    "under_cloth",
    "under_mass",
    "under_thickness",
];

struct Line {
    name: &'static str,
    title: &'static str,
    subject: Subject,
    quantity: Quantity,
    bound: Bound,
    limit: f64,
    source: Source,
    blocking: bool,
    reserve: f64,
    needs: &'static [&'static str],
}

fn hold(evaluation: &Evaluation, line: Line, detail: impl FnOnce(&Held) -> String) -> Check {
    let rule = Rule {
        name: line.name,
        title: line.title,
        subject: line.subject,
        quantity: line.quantity,
        bound: line.bound,
        limit: line.limit,
        source: line.source,
        blocking: line.blocking,
        reserve: line.reserve,
        needs: line.needs,
    };
    judge(evaluation, rule, detail)
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = skin(evaluation);
    checks.extend(times(evaluation));
    checks.extend(people(evaluation));
    checks
}

/// A time that may stand for "the horizon or more".
fn at_least(seconds: f64) -> String {
    let time = say(Quantity::Time, seconds);
    if seconds >= HORIZON {
        format!("{time} or more")
    } else {
        time
    }
}

fn skin(evaluation: &Evaluation) -> Vec<Check> {
    let second = evaluation.figure("time_to_second_degree");
    let margin = hold(
        evaluation,
        Line {
            name: "planned_under_half",
            title: "Time to second degree over plan",
            subject: Subject::Figure("time_margin"),
            quantity: Quantity::Ratio,
            bound: Bound::AtLeast,
            limit: 2.0,
            source: common_practice(),
            blocking: true,
            reserve: RESERVE,
            needs: PLANNED,
        },
        |held| {
            let (value, low) = second.map_or((0.0, 0.0), |f| (f.value, f.low));
            format!(
                "A second-degree burn comes at {} ({} at the earliest within the tolerances), {} times the \
                 planned burn; more gel or a shorter burn raises it.",
                at_least(value),
                at_least(low),
                say(Quantity::Ratio, held.value)
            )
        },
    );
    let flames = evaluation
        .value("flame_time")
        .map_or_else(String::new, |v| say(Quantity::Time, v));
    let after = evaluation
        .value("stored_heat_damage")
        .map_or_else(String::new, |v| say(Quantity::Ratio, v));
    let damage = |name, title, limit, clause, blocking| {
        hold(
            evaluation,
            Line {
                name,
                title,
                subject: Subject::Figure("skin_damage"),
                quantity: Quantity::Ratio,
                bound: Bound::AtMost,
                limit,
                source: from_memory("ASTM F1930, Henriques damage integral", clause),
                blocking,
                reserve: RESERVE,
                needs: CALLED_OUT,
            },
            |held| {
                format!(
                    "Called out at the latest and put out, {flames} in flames, the damage comes to {}, of \
                     which {after} after the last flame.",
                    say(Quantity::Ratio, held.value)
                )
            },
        )
    };
    vec![
        margin,
        damage(
            "second_degree",
            "Second-degree burn",
            1.0,
            "second degree at 1",
            true,
        ),
        damage(
            "first_degree",
            "First-degree burn",
            0.53,
            "first degree at 0.53",
            false,
        ),
    ]
}

fn times(evaluation: &Evaluation) -> Vec<Check> {
    let values = &evaluation.values;
    let mut checks = Vec::new();
    // A partial burn has no agreed longest time; an unknown coverage must not pass for one.
    if values.choice("coverage") != Some("partial") {
        checks.push(hold(
            evaluation,
            Line {
                name: "full_engulfment",
                title: "Longest full engulfment",
                subject: Subject::Input("called_out_time"),
                quantity: Quantity::Time,
                bound: Bound::AtMost,
                limit: 15.0,
                source: common_practice(),
                blocking: true,
                reserve: 0.0,
                needs: &["coverage", "called_out_time"],
            },
            |held| {
                format!(
                    "Called out at {} at the latest; full engulfment is never planned past 15 s.",
                    say(Quantity::Time, held.value)
                )
            },
        ));
    }
    let planned = values.number("planned_time").unwrap_or(0.0);
    checks.push(hold(
        evaluation,
        Line {
            name: "call_after_plan",
            title: "Call-out after the plan",
            subject: Subject::Input("called_out_time"),
            quantity: Quantity::Time,
            bound: Bound::AtLeast,
            limit: planned,
            source: common_practice(),
            blocking: true,
            reserve: 0.0,
            needs: &["planned_time", "called_out_time"],
        },
        |held| {
            format!(
                "Planned for {} and called out at {} at the latest.",
                say(Quantity::Time, planned),
                say(Quantity::Time, held.value)
            )
        },
    ));
    checks.push(hold(
        evaluation,
        Line {
            name: "breath",
            title: "Breath",
            subject: Subject::Figure("breath_share"),
            quantity: Quantity::Ratio,
            bound: Bound::AtMost,
            limit: 2.0 / 3.0,
            source: common_practice(),
            blocking: true,
            reserve: RESERVE,
            needs: &["called_out_time", "breath_hold"],
        },
        |held| {
            format!(
                "The time in flames takes {:.0} % of the rehearsed breath hold; one breath in flames burns \
                 the airway.",
                100.0 * held.value
            )
        },
    ));
    checks
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    let safeties = hold(
        evaluation,
        Line {
            name: "safeties",
            title: "Safeties per person alight",
            subject: Subject::Figure("safeties_per_person"),
            quantity: Quantity::Ratio,
            bound: Bound::AtLeast,
            limit: 6.0,
            source: common_practice(),
            blocking: true,
            reserve: 0.0,
            needs: &["safeties"],
        },
        |held| {
            format!(
                "{} for each performer alight; about 6, the count caller included, are the habit.",
                say(Quantity::Ratio, held.value)
            )
        },
    );
    let wind = hold(
        evaluation,
        Line {
            name: "wind",
            title: "Wind",
            subject: Subject::Input("wind_speed"),
            quantity: Quantity::Speed,
            bound: Bound::AtMost,
            limit: 4.0,
            source: common_practice(),
            blocking: true,
            reserve: RESERVE,
            needs: &["wind_speed"],
        },
        |held| {
            format!(
                "The burn may be lit in wind up to {}; the habit is 3 to 4 m/s, since wind drives flame \
                 under a mask.",
                say(Quantity::Speed, held.value)
            )
        },
    );
    let burns = hold(
        evaluation,
        Line {
            name: "burns_today",
            title: "Burns on the day",
            subject: Subject::Input("burns_today"),
            quantity: Quantity::Count,
            bound: Bound::AtMost,
            limit: 2.0,
            source: common_practice(),
            blocking: false,
            reserve: 0.0,
            needs: &["burns_today"],
        },
        |held| {
            format!(
                "{} planned for this performer, rehearsals included; 1 or 2 full burns a day are the habit.",
                say(Quantity::Count, held.value)
            )
        },
    );
    vec![safeties, wind, burns]
}

pub(super) fn traces(evaluation: &Evaluation) -> Vec<Trace> {
    let values = &evaluation.values;
    let (Some(stack), Some(flames)) = (Stack::of(values), flame_time(values)) else {
        return Vec::new();
    };
    let mut heat = Recorder::new();
    let mut damage = Recorder::new();
    stack.call_out(flames, |moment| {
        heat.push(moment.time, [moment.skin_surface, moment.epidermis_base]);
        damage.push(
            moment.time,
            [moment.damage.min(super::MOST_DAMAGE), moment.water],
        );
    });
    vec![
        heat.trace(
            "skin_temperature",
            "Skin temperature",
            ("Time from ignition", Quantity::Time),
            [
                ("Skin surface", Quantity::Temperature),
                ("Base of the epidermis", Quantity::Temperature),
            ],
        ),
        damage.trace(
            "damage",
            "Damage and water left",
            ("Time from ignition", Quantity::Time),
            [
                ("Second-degree damage", Quantity::Ratio),
                ("Water left", Quantity::ArealDensity),
            ],
        ),
    ]
}

pub(super) fn zones(evaluation: &Evaluation) -> Vec<Zone> {
    let values = &evaluation.values;
    let (Some(radius), Some((_, travel))) = (
        values.number("clear_radius"),
        values.ends_of("travel_length"),
    ) else {
        return Vec::new();
    };
    vec![Zone {
        name: "burn".to_owned(),
        title: "Burn ground".to_owned(),
        shape: Shape::Ellipse {
            x: 0.5 * travel,
            y: 0.0,
            half_x: 0.5 * travel + radius,
            half_y: radius,
        },
        reason: "Only the performer and the safeties; nothing that burns or hides the performer."
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
    let Some(stack) = Stack::of(values) else {
        let missing = values.missing(LAYERS);
        say_so(
            "not_entered",
            format!(
                "Heat to the skin is not computed before these are entered: {}.",
                missing.join(", ")
            ),
        );
        return cautions;
    };
    let value = |name| evaluation.value(name);
    if let Some(bare) = value("bare_skin_time") {
        say_so(
            "gaps",
            format!(
                "Where gel or cloth is missing, a second-degree burn comes after {}: the figures hold only \
                 where every layer is as thick as entered.",
                at_least(bare)
            ),
        );
    }
    if let (Some(left), Some(flames)) = (value("water_left"), value("flame_time")) {
        let started = stack.water();
        if started <= 0.0 {
            say_so(
                "dry",
                "No water is entered in any layer: all the time there is comes from cloth."
                    .to_owned(),
            );
        } else if left < 0.25 * started {
            say_so(
                "drying_out",
                format!(
                    "After {} in flames only {} of {} water is left; once it is gone the skin heats fast.",
                    say(Quantity::Time, flames),
                    say(Quantity::ArealDensity, left),
                    say(Quantity::ArealDensity, started)
                ),
            );
        }
        if started > left {
            say_so(
                "steam",
                format!(
                    "{} of steam is taken to leave outward; where a tight layer keeps it in, it condenses on \
                     the skin and burns sooner than computed.",
                    say(Quantity::ArealDensity, started - left)
                ),
            );
        }
    }
    if let (Some(stored), Some(total)) = (value("stored_heat_damage"), value("skin_damage"))
        && total > 0.05
        && stored > 0.2 * total
    {
        say_so(
            "stored_heat",
            format!(
                "{:.0} % of the damage comes after the last flame: soak and strip the layers at once.",
                100.0 * stored / total
            ),
        );
    }
    cautions
}
