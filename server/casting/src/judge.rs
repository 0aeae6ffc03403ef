//! The verdict on one person in one slot: every requirement is looked at, and the worst finding
//! decides.
//!
//! The rules of each requirement live in the modules below; this one only adds them up and ranks.
//! It knows no clock: the shooting day and the day of asking come in the [`Context`]. What is not
//! on record is never met: it is curable where somebody can still supply it, and not met where
//! nobody can.

mod answer;
mod body;
mod certificate;
mod days;
mod skill;
mod time;

pub(crate) use certificate::{Clock, last_good_day};

use answer::Answer;

use crate::{
    catalogue::Catalogue,
    person::Person,
    requirement::{Context, Finding, FindingStanding, Outcome, Requirement, Slot, Verdict},
};

/// Judges one person for one slot on one day.
///
/// Every requirement gets a finding, in the slot's order, and the worst of them is the outcome; a
/// slot with no requirements qualifies anyone.
///
/// `fit`, 0 to 1, only ranks people who come out alike. It is the plain mean of these parts, each 0
/// to 1, and 0 when its requirement is not met:
///
/// - a skill gives two: levels held beyond the need, as a share of the levels above it; and
///   recency, 1 when used on the day itself, falling to 0 at the longest gap allowed (1 where
///   recency is not asked);
/// - a certificate gives one: days left after the last day it is needed, up to a year;
/// - a body measurement gives one: 1 on the doubled actor's value, 0 at the edge of the tolerance;
/// - kitted mass gives one: 1 in the middle of the rig's range, 0 at either end.
///
/// Other requirements are yes or no and do not rank. With nothing to compare, `fit` is 1.
#[must_use]
pub fn judge(slot: &Slot, person: &Person, context: &Context, catalogue: &Catalogue) -> Verdict {
    let mut parts = Vec::new();
    let mut findings = Vec::with_capacity(slot.requirements.len());
    for requirement in &slot.requirements {
        let answer = answer(requirement, person, slot.kit_mass, context, catalogue);
        parts.extend_from_slice(&answer.fit);
        findings.push(finding(requirement, answer));
    }
    let worst = findings.iter().map(|finding| finding.standing).max();
    let outcome = match worst {
        None | Some(FindingStanding::Met) => Outcome::Qualified,
        Some(FindingStanding::Curable) => Outcome::Conditional,
        Some(FindingStanding::NotMet) => Outcome::NotQualified,
    };
    Verdict {
        slot: slot.id,
        person: person.id,
        outcome,
        fit: mean(&parts),
        findings,
    }
}

/// Looks at one requirement by itself, for example a certificate that a signer's role asks for.
/// `kit_mass` is what is worn on top of the body, kilograms, and only kitted mass reads it.
#[must_use]
pub fn find(
    requirement: &Requirement,
    person: &Person,
    kit_mass: f64,
    context: &Context,
    catalogue: &Catalogue,
) -> Finding {
    finding(
        requirement,
        answer(requirement, person, kit_mass, context, catalogue),
    )
}

/// Judges everyone who performs, best first: outcome, then fit, then name, then code.
#[must_use]
pub fn rank<'a>(
    slot: &Slot,
    people: impl IntoIterator<Item = &'a Person>,
    context: &Context,
    catalogue: &Catalogue,
) -> Vec<Verdict> {
    let mut judged: Vec<(&Person, Verdict)> = people
        .into_iter()
        .filter(|person| person.performs)
        .map(|person| (person, judge(slot, person, context, catalogue)))
        .collect();
    judged.sort_by(|(a, first), (b, second)| {
        first
            .outcome
            .cmp(&second.outcome)
            .then(second.fit.total_cmp(&first.fit))
            .then_with(|| a.name.cmp(&b.name))
            .then_with(|| a.code.cmp(&b.code))
    });
    judged.into_iter().map(|(_, verdict)| verdict).collect()
}

fn answer(
    requirement: &Requirement,
    person: &Person,
    kit_mass: f64,
    context: &Context,
    catalogue: &Catalogue,
) -> Answer {
    match requirement {
        Requirement::Skill {
            name,
            level,
            within_days,
        } => skill::skill(name, *level, *within_days, person, context, catalogue),
        Requirement::Certificate {
            any_of,
            category,
            cover_days,
        } => certificate::certificate(
            any_of,
            category.as_deref(),
            *cover_days,
            person,
            context,
            catalogue,
        ),
        Requirement::Measurement {
            of,
            target,
            tolerance,
        } => body::measurement(*of, *target, *tolerance, person, context),
        Requirement::KittedMass { min, max } => {
            body::kitted_mass(*min, *max, kit_mass, person, context, catalogue)
        }
        Requirement::Age { min, max } => body::age(*min, *max, person, context),
        Requirement::MedicalClearance => time::medical_clearance(person, context),
        Requirement::Availability => time::availability(person, context),
        Requirement::Rest { hours } => time::rest(*hours, person, context),
        Requirement::DailyExposure {
            exposure,
            adds,
            max,
        } => time::daily_exposure(exposure, *adds, *max, person, context),
        Requirement::Consent => time::consent(person, context),
    }
}

fn finding(requirement: &Requirement, answer: Answer) -> Finding {
    Finding {
        requirement: requirement.clone(),
        standing: answer.standing,
        reason: answer.reason,
        cure: answer.cure,
    }
}

fn mean(parts: &[f64]) -> f64 {
    if parts.is_empty() {
        return 1.0;
    }
    #[expect(
        clippy::cast_precision_loss,
        reason = "a slot has a handful of requirements"
    )]
    let count = parts.len() as f64;
    parts.iter().sum::<f64>() / count
}
