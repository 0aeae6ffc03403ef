//! What a stair fall's figures are held against: published head limits, and habits, which are data.

use crate::{
    assessment::{Bound, Check, Source},
    evaluation::Evaluation,
    judging::{RESERVE, Rule, Subject, from_memory, judge, published},
    models::GRAVITY,
    units::{Quantity, say},
};

/// What the flight itself needs.
macro_rules! flight_and {
    ($($extra:literal),*) => {
        &["manner", "steps", "rise", "going", "nosing_friction", "hit_loss", $($extra),*]
    };
}

pub(super) const FLIGHT: &[&str] = flight_and!();
const PADDED: &[&str] = flight_and!("edge_padding");
const HIT: &[&str] = flight_and!("performer_mass");
const HIT_PADDED: &[&str] = flight_and!("performer_mass", "edge_padding");
const LANDING: &[&str] = flight_and!("landing_friction", "landing_length");
const PEOPLE: &[&str] = flight_and!("landing_friction", "people_distance");
const CAMERA: &[&str] = flight_and!("landing_friction", "camera_distance");

/// What a check says, given the value and the limit in words.
type Says<'a> = &'a dyn Fn(&str, &str) -> String;

pub(super) fn checks(evaluation: &Evaluation) -> Vec<Check> {
    let mut checks = head(evaluation);
    checks.extend(body(evaluation));
    checks.extend(foot(evaluation));
    checks.extend(people(evaluation));
    checks
}

fn told(evaluation: &Evaluation, rule: Rule, says: Says) -> Check {
    let (quantity, limit) = (rule.quantity, rule.limit);
    judge(evaluation, rule, |held| {
        says(&say(quantity, held.value), &say(quantity, limit))
    })
}

fn habit(
    evaluation: &Evaluation,
    name: &'static str,
    title: &'static str,
    bound: Bound,
    needs: &'static [&'static str],
) -> Rule {
    Rule::policy(evaluation, name, title, Subject::Figure(name), bound, needs)
}

fn head(evaluation: &Evaluation) -> Vec<Check> {
    let speed = evaluation
        .value("head_speed")
        .map_or_else(String::new, |speed| say(Quantity::Speed, speed));
    let rule = |name, title, quantity, limit, source: Source, needs, blocking| Rule {
        name,
        title,
        subject: Subject::Figure(name),
        quantity,
        bound: Bound::AtMost,
        limit,
        source,
        blocking,
        reserve: RESERVE,
        needs,
    };
    let playground = || from_memory("ASTM F1292", "critical fall height");
    vec![
        told(
            evaluation,
            rule(
                "hic_padded",
                "HIC on a padded edge",
                Quantity::Ratio,
                700.0,
                published("49 CFR 571.208", "S6.2, 15 ms", Some("United States")),
                PADDED,
                true,
            ),
            &|value, limit| {
                format!(
                    "A head at {speed} on a padded edge gives HIC {value} where {limit} is the limit; thicker padding \
                     on the edges and under the wig brings it down."
                )
            },
        ),
        told(
            evaluation,
            rule(
                "head_padded",
                "Head on a padded edge",
                Quantity::Acceleration,
                200.0 * GRAVITY,
                playground(),
                PADDED,
                true,
            ),
            &|value, limit| {
                format!(
                    "The head's peak on a padded edge is {value} where {limit} is the limit; more padding that gives \
                     lengthens the stop."
                )
            },
        ),
        told(
            evaluation,
            rule(
                "hic_bare",
                "HIC on a bare edge",
                Quantity::Ratio,
                1000.0,
                playground(),
                FLIGHT,
                false,
            ),
            &|value, limit| {
                format!(
                    "A head at {speed} on an edge whose padding has gone gives HIC {value} against {limit}; fix every \
                     pad so that no hit can shift it, and look after each fall."
                )
            },
        ),
    ]
}

fn body(evaluation: &Evaluation) -> Vec<Check> {
    let speed = evaluation
        .value("top_speed")
        .map_or_else(String::new, |speed| say(Quantity::Speed, speed));
    let hits = evaluation
        .value("hits")
        .map_or_else(String::new, |hits| say(Quantity::Ratio, hits));
    vec![
        told(
            evaluation,
            habit(
                evaluation,
                "top_speed",
                "Speed on the stairs",
                Bound::AtMost,
                FLIGHT,
            ),
            &|value, limit| {
                format!(
                    "The body reaches {value} where {limit} is the most by habit; fewer steps, a cut on the stairs or \
                     a rougher runner slows it."
                )
            },
        ),
        told(
            evaluation,
            habit(
                evaluation,
                "hit_energy",
                "Energy of the hardest hit",
                Bound::AtMost,
                HIT,
            ),
            &|value, limit| {
                format!(
                    "One hit at {speed} takes {value} out of the body, one of {hits} in the flight; {limit} is the most \
                     by habit, so slow the fall or hit more often and softer."
                )
            },
        ),
        told(
            evaluation,
            habit(
                evaluation,
                "hit_force",
                "Force of a hit, padded",
                Bound::AtMost,
                HIT_PADDED,
            ),
            &|value, limit| {
                format!(
                    "The hardest hit on a padded edge peaks at {value} where {limit} is the most by habit; pad hip, \
                     shoulder and edge more."
                )
            },
        ),
        told(
            evaluation,
            habit(
                evaluation,
                "hit_force_bare",
                "Force of a hit, bare edge",
                Bound::AtMost,
                HIT,
            )
            .cautionary(),
            &|value, limit| {
                format!(
                    "The same hit on a bare edge peaks at {value} against {limit}; the body's own padding has to do \
                     when an edge has lost its pad."
                )
            },
        ),
    ]
}

fn foot(evaluation: &Evaluation) -> Vec<Check> {
    let run_out = evaluation
        .figure("run_out")
        .map_or_else(String::new, |figure| say(Quantity::Length, figure.high));
    let room = |name, title, needs| habit(evaluation, name, title, Bound::AtLeast, needs);
    vec![
        told(
            evaluation,
            habit(
                evaluation,
                "landing_height",
                "Landing as a fall",
                Bound::AtMost,
                FLIGHT,
            ),
            &|value, limit| {
                format!(
                    "The body comes onto the landing as from a fall of {value}; {limit} is the most by habit on a hard \
                     floor, so lay a mat that the lens does not see."
                )
            },
        ),
        told(
            evaluation,
            room("landing_left", "Room on the landing", LANDING),
            &|value, limit| {
                format!(
                    "The run-out is up to {run_out} and {value} of the landing are left past the body; {limit} is \
                     wanted before a wall or the next flight."
                )
            },
        ),
        told(
            evaluation,
            room("people_gap", "Stand-off of people", PEOPLE),
            &|value, limit| {
                format!(
                    "The run-out is up to {run_out} and {value} are left between the body and the nearest person; \
                     {limit} is wanted, so move people back or to the side."
                )
            },
        ),
        told(
            evaluation,
            room("camera_gap", "Stand-off of the camera", CAMERA),
            &|value, limit| {
                format!(
                    "The run-out is up to {run_out} and {value} are left between the body and the camera; {limit} is \
                     wanted, so use a longer lens or leave the camera unattended."
                )
            },
        ),
        told(
            evaluation,
            room("side_room", "Room to the sides", &["stair_width"]).cautionary(),
            &|value, limit| {
                format!(
                    "The stairs are {value} wider than the body at full stretch; {limit} is wanted, so keep the limbs \
                     in or pad the balusters and the wall."
                )
            },
        ),
    ]
}

fn people(evaluation: &Evaluation) -> Vec<Check> {
    let counted = |name, title, bound, needs| {
        Rule::policy(evaluation, name, title, Subject::Input(name), bound, needs).exact()
    };
    let hits = evaluation.value("hits_today").map_or_else(
        || "an unknown number of".to_owned(),
        |hits| say(Quantity::Count, hits),
    );
    vec![
        told(
            evaluation,
            counted(
                "falls_today",
                "Falls on the day",
                Bound::AtMost,
                &["falls_today"],
            ),
            &|value, limit| {
                format!(
                    "Whole flights by one performer: {value}, which is {hits} hits; {limit} is the most by habit, so \
                     share the rest or cover it from other angles."
                )
            },
        ),
        told(
            evaluation,
            counted(
                "part_falls",
                "Last steps rehearsed",
                Bound::AtLeast,
                &["part_falls"],
            )
            .cautionary(),
            &|value, limit| {
                format!(
                    "Falls of the last steps before the whole flight: {value}; at least {limit} is the habit, from the \
                     bottom three up."
                )
            },
        ),
        told(
            evaluation,
            counted(
                "spotters",
                "Spotters at the stairs",
                Bound::AtLeast,
                &["spotters"],
            ),
            &|value, limit| {
                format!(
                    "Spotters who do nothing else: {value}; at least {limit} is the habit, one beside the flight and \
                     one at the foot."
                )
            },
        ),
        told(
            evaluation,
            counted("medics", "Medics at the foot", Bound::AtLeast, &["medics"]),
            &|value, limit| {
                format!(
                    "Medics at the foot of the stairs: {value}; at least {limit} is the habit, with what holds a neck \
                     still."
                )
            },
        ),
    ]
}
