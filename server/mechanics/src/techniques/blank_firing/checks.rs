//! What blank firing's figures are held against: what the armourer gives, published guidance on blanks and
//! noise, habits, and the count.

use crate::{
    assessment::{Bound, Check},
    evaluation::Evaluation,
    judging::{Rule, Subject, from_memory, judge},
    models::sound,
    units::{Quantity, say},
};

/// What the sweep needs, with a camera that has people at it, one behind a shield, or none.
macro_rules! swept {
    ($($extra:literal),*) => {
        {
            const NEEDS: &[&str] = &[
            "forward_stand_off", "off_axis_stand_off", "cone_half_angle", "sweep_start", "sweep_end",
            "performer_start_along", "performer_start_across", "performer_end_along",
            "performer_end_across", "crew_along", "crew_across", "camera_cover" $(, $extra)*
            ];
            NEEDS
        }
    };
}

macro_rules! by_cover {
    ($evaluation:expr $(, $extra:literal)*) => {
        match $evaluation.values.choice("camera_cover") {
            Some("unmanned") => swept!($($extra),*),
            Some("shielded") => swept!("camera_along", "camera_across", "shielded_stand_off" $(, $extra)*),
            _ => swept!("camera_along", "camera_across" $(, $extra)*),
        }
    };
}

/// Everything that the sweep needs.
pub(super) fn sweep_needs(evaluation: &Evaluation) -> &'static [&'static str] {
    by_cover!(evaluation)
}

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = muzzle(evaluation);
    checks.extend(shield(evaluation));
    checks.extend(peaks(evaluation));
    checks.extend(day(evaluation));
    checks.extend(misfire(evaluation));
    checks.extend(cases(evaluation));
    checks.extend(count(evaluation));
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

fn angle(value: f64) -> String {
    say(Quantity::Angle, value)
}

/// A level as people say it.
pub(super) fn decibels(level: f64) -> String {
    format!("{level:.1} dB")
}

/// What counts as ahead, straying included.
fn ahead(evaluation: &Evaluation) -> f64 {
    stated(evaluation, "cone_half_angle") + stated(evaluation, "aim_error")
}

fn muzzle(evaluation: &Evaluation) -> Vec<Check> {
    let cone = ahead(evaluation);
    let sweep = by_cover!(evaluation);
    vec![
        judge(
            evaluation,
            Rule::planned(
                "stand_off",
                "Armourer's stand-off kept",
                Subject::Figure("stand_off_margin"),
                Quantity::Length,
                Bound::AtLeast,
                0.0,
                sweep,
            ),
            |held| {
                format!(
                    "Over the sweep the nearest person has {} beyond the armourer's stand-off, {} at the least; \
                     move people back or stop the swing sooner.",
                    length(held.value),
                    length(held.low)
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "guidance_distance",
                "People ahead against guidance",
                Subject::Figure("front_distance"),
                Bound::AtLeast,
                sweep,
            ),
            |held| {
                if held.low >= super::sweep::NOBODY {
                    return format!(
                        "No unshielded person is within {} of the line of fire at any moment of the sweep.",
                        angle(cone)
                    );
                }
                if held.value >= super::sweep::NOBODY {
                    return format!(
                        "Nobody unshielded is within {} of the line of fire as stated, but within the tolerances \
                         somebody is, as near as {}; guidance is {}.",
                        angle(cone),
                        length(held.low),
                        wanted(evaluation, "guidance_distance")
                    );
                }
                format!(
                    "The nearest unshielded person within {} of the line of fire is {} away, {} at the least; \
                     guidance is {}.",
                    angle(cone),
                    length(held.value),
                    length(held.low),
                    wanted(evaluation, "guidance_distance")
                )
            },
        ),
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "given_stand_off",
                "Given stand-off against guidance",
                Subject::Input("forward_stand_off"),
                Bound::AtLeast,
                &["forward_stand_off"],
            )
            .cautionary()
            .exact(),
            |held| {
                format!(
                    "The armourer gives {} ahead and guidance is {}; for less, the armourer shows with this weapon \
                     and blank why it is enough.",
                    length(held.value),
                    wanted(evaluation, "given_stand_off")
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "line_of_fire",
                "Nobody in the line of fire",
                Subject::Figure("least_off_axis"),
                Quantity::Angle,
                Bound::AtLeast,
                cone,
                sweep,
            ),
            |held| {
                format!(
                    "The line of fire comes within {} of an unshielded person, {} at the least; {} counts as ahead, \
                     straying included. Published guidance is never to point at anyone (Ontario film and \
                     television safety guideline 39, item 3): cheat the aim or move the person.",
                    angle(held.value),
                    angle(held.low),
                    angle(cone)
                )
            },
        ),
    ]
}

fn shield(evaluation: &Evaluation) -> Option<Check> {
    if evaluation.values.choice("camera_cover") != Some("shielded") {
        return None;
    }
    Some(judge(
        evaluation,
        Rule::policy(
            evaluation,
            "shield_cover",
            "Shield covers the camera's people",
            Subject::Figure("shield_spare"),
            Bound::AtLeast,
            swept!(
                "camera_along",
                "camera_across",
                "shielded_stand_off",
                "shield_distance",
                "shield_width",
                "shield_height"
            ),
        ),
        |held| {
            format!(
                "Seen from the muzzle the shield reaches {} past the people at the worst moment, {} at the least; \
                 {} is wanted, so bring it nearer to the people, widen it or shorten the swing.",
                length(held.value),
                length(held.low),
                wanted(evaluation, "shield_cover")
            )
        },
    ))
}

/// 140 dB(C) as a pressure, Pa, as directive 2003/10/EC writes it.
const PEAK_LIMIT: f64 = 200.0;

/// Daily exposure limit of the same directive, dB(A), protection counted.
const DAILY_LIMIT: f64 = 87.0;

const FIRER: &[&str] = &["peak_level", "performer_protection"];

/// Each ear by the European limit, under protection as worn (article 3(2)), which is also the peak that
/// 29 CFR 1910.95(b)(1) says no exposure should pass.
fn peaks(evaluation: &Evaluation) -> Vec<Check> {
    let performers = by_cover!(evaluation, "peak_level", "performer_protection");
    let crew = by_cover!(evaluation, "peak_level", "crew_protection");
    [
        ("firer_peak", "Peak at the firer's ear", "firer_pressure", "firer", FIRER),
        (
            "performer_peak",
            "Peak at the performer's ear",
            "performer_pressure",
            "performer",
            performers,
        ),
        ("crew_peak", "Peak at the crew's ear", "crew_pressure", "crew", crew),
    ]
    .into_iter()
    .map(|(name, title, figure, who, needs)| {
        judge(
            evaluation,
            Rule::planned(
                name,
                title,
                Subject::Figure(figure),
                Quantity::Pressure,
                Bound::AtMost,
                PEAK_LIMIT,
                needs,
            )
            .by(from_memory(
                "Directive 2003/10/EC",
                "article 3(1)(a); as 29 CFR 1910.95(b)(1)",
            )),
            |held| {
                format!(
                    "A shot peaks at {} at the ear of the {who}, up to {} within the tolerances; {} is the limit, \
                     so give better protection, more distance or a quieter blank.",
                    decibels(sound::level(held.value)),
                    decibels(sound::level(held.high)),
                    decibels(sound::level(PEAK_LIMIT))
                )
            },
        )
    })
    .collect()
}

fn day(evaluation: &Evaluation) -> Vec<Check> {
    let needs = by_cover!(
        evaluation,
        "peak_level",
        "performer_protection",
        "crew_protection",
        "rounds_per_take",
        "takes"
    );
    let shots = say(
        Quantity::Count,
        stated(evaluation, "rounds_per_take") * stated(evaluation, "takes"),
    );
    let allowed = evaluation
        .value("shots_allowed")
        .map_or_else(String::new, |shots| say(Quantity::Count, shots));
    let rule = |name, title, limit| {
        Rule::planned(
            name,
            title,
            Subject::Figure(name),
            Quantity::Ratio,
            Bound::AtMost,
            limit,
            needs,
        )
    };
    vec![
        judge(
            evaluation,
            rule("noise_dose", "Noise dose of the day", 1.0).by(from_memory(
                "NIOSH publication 98-126",
                "recommended exposure limit",
            )),
            |held| {
                format!(
                    "{shots} shots give the most exposed ear {:.0} % of a day's dose, up to {:.0} % within the \
                     tolerances; {allowed} shots fill it.",
                    100.0 * held.value,
                    100.0 * held.high
                )
            },
        ),
        judge(
            evaluation,
            rule("daily_exposure", "Daily exposure to noise", DAILY_LIMIT)
                .by(from_memory("Directive 2003/10/EC", "article 3(1)(a)"))
                .exact(),
            |held| {
                format!(
                    "{shots} shots over 8 hours come to {} at the most exposed ear, up to {} within the tolerances; \
                     {} is the limit.",
                    decibels(held.value),
                    decibels(held.high),
                    decibels(DAILY_LIMIT)
                )
            },
        ),
    ]
}

fn misfire(evaluation: &Evaluation) -> Vec<Check> {
    let cone = ahead(evaluation);
    vec![
        judge(
            evaluation,
            Rule::policy(
                evaluation,
                "misfire_wait",
                "Wait after a misfire",
                Subject::Input("misfire_wait"),
                Bound::AtLeast,
                &["misfire_wait"],
            )
            .exact(),
            |held| {
                format!(
                    "The muzzle is held in the safe direction for {}; {} is wanted, because a round may still go.",
                    say(Quantity::Time, held.value),
                    wanted(evaluation, "misfire_wait")
                )
            },
        ),
        judge(
            evaluation,
            Rule::planned(
                "safe_direction",
                "Nobody in the safe direction",
                Subject::Figure("safe_angle"),
                Quantity::Angle,
                Bound::AtLeast,
                cone,
                by_cover!(evaluation, "safe_direction"),
            ),
            |held| {
                format!(
                    "Held in the safe direction the muzzle comes within {} of somebody, {} at the least; {} counts as \
                     ahead.",
                    angle(held.value),
                    angle(held.low),
                    angle(cone)
                )
            },
        ),
    ]
}

fn cases(evaluation: &Evaluation) -> Option<Check> {
    if evaluation.values.choice("ejection") == Some("kept") {
        return None;
    }
    let range = evaluation
        .value("case_range")
        .map_or_else(String::new, length);
    Some(judge(
        evaluation,
        Rule::policy(
            evaluation,
            "case_clearance",
            "People clear of thrown cases",
            Subject::Figure("case_clearance"),
            Bound::AtLeast,
            by_cover!(evaluation, "ejection"),
        )
        .cautionary(),
        |held| {
            format!(
                "Hot cases fly {range} to the side and pass {} from the nearest unshielded person, {} at the least; \
                 {} is wanted, or a net at the port.",
                length(held.value),
                length(held.low),
                wanted(evaluation, "case_clearance")
            )
        },
    ))
}

fn count(evaluation: &Evaluation) -> Vec<Check> {
    let planned = stated(evaluation, "rounds_per_take") * stated(evaluation, "takes");
    let number = |value| say(Quantity::Count, value);
    let mut checks = vec![judge(
        evaluation,
        Rule::planned(
            "issued_enough",
            "Rounds issued for the plan",
            Subject::Input("issued"),
            Quantity::Count,
            Bound::AtLeast,
            planned,
            &["issued", "rounds_per_take", "takes"],
        )
        .cautionary()
        .exact(),
        |held| {
            format!(
                "{} are issued for {} planned; rounds fetched in a hurry are where counts go wrong.",
                number(held.value),
                number(planned)
            )
        },
    )];
    if evaluation.values.choice("count_stage") == Some("before") {
        return checks;
    }
    let balanced = |name, title, needs| {
        Rule::planned(
            name,
            title,
            Subject::Figure(name),
            Quantity::Count,
            Bound::AtMost,
            0.0,
            needs,
        )
        .exact()
    };
    let [issued, fired, misfires, returned, found] =
        ["issued", "fired", "misfires", "returned", "cases_found"]
            .map(|name| number(stated(evaluation, name)));
    checks.push(judge(
        evaluation,
        balanced(
            "rounds_unaccounted",
            "Every round accounted for",
            &["count_stage", "issued", "fired", "misfires", "returned"],
        ),
        |held| {
            format!(
                "{issued} issued, {fired} fired, {misfires} misfired and {returned} returned: {} not accounted for. \
                 Unless none is, the set stays closed until they are found.",
                number(held.value)
            )
        },
    ));
    checks.push(judge(
        evaluation,
        balanced(
            "cases_missing",
            "Every case accounted for",
            &["count_stage", "fired", "cases_found"],
        )
        .cautionary(),
        |held| {
            format!(
                "{fired} fired and {found} cases found: {} not accounted for. A case that is missing may be a round \
                 still in the weapon.",
                number(held.value)
            )
        },
    ));
    checks
}
