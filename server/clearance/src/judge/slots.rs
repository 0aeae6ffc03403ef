//! Whether everyone cast may do it on the day. The verdict is casting's; this module gives it consent,
//! which is a performer's own standing sign-off, and says what follows for the gag.

use std::collections::BTreeMap;

use gagwright_casting::{
    Catalogue, Consent, Context, Finding, FindingStanding, Outcome, Person, PersonId, Requirement,
    Slot, Verdict, judge,
};

use jiff::civil::Date;

use super::{bench::Bench, people_today};
use crate::{
    case::{Block, BlockKind, RoleStanding, RoleState, SlotStanding},
    policy::Role,
};

/// How each slot stands, and what blocks.
pub(crate) fn slots(
    bench: &Bench<'_>,
    standings: &[RoleStanding],
) -> (Vec<SlotStanding>, Vec<Block>) {
    let setting = &bench.case.plan.facets.setting;
    let mut blocks = Vec::new();
    if setting.day.is_none() {
        blocks.push(Block {
            kind: BlockKind::Undated,
            about: "setting.day".to_owned(),
            reason: "No shooting day is set, so nobody can be judged for it.".to_owned(),
            remedy: "Set the shooting day in the setting.".to_owned(),
        });
    }
    let cast = &bench.case.plan.facets.cast.slots;
    if cast.is_empty() {
        blocks.push(Block {
            kind: BlockKind::Uncast,
            about: "cast.slots".to_owned(),
            reason: "The plan has no slot for a performer.".to_owned(),
            remedy: "Add a slot for each performer and cast it.".to_owned(),
        });
    }
    blocks.extend(cast_twice(bench));
    let slots = cast
        .iter()
        .map(|slot| {
            let verdict = setting
                .day
                .and_then(|day| verdict(bench, slot, standings, day));
            blocks.extend(block(bench, slot, verdict.as_ref(), standings));
            blocks.extend(ageless(bench, slot));
            SlotStanding {
                slot: slot.id,
                name: slot.name.clone(),
                person: slot.person,
                verdict,
            }
        })
        .collect();
    (slots, blocks)
}

/// The verdict on whoever is cast, for a day.
pub(crate) fn verdict(
    bench: &Bench<'_>,
    slot: &Slot,
    standings: &[RoleStanding],
    day: Date,
) -> Option<Verdict> {
    let plan = &bench.case.plan;
    let context = Context {
        gag: plan.gag,
        revision: plan.revision,
        day,
        // The call is the plan's day's own.
        call: plan
            .facets
            .setting
            .call
            .filter(|_| plan.facets.setting.day == Some(day)),
        today: Some(bench.today),
    };
    let person = bench.person(slot.person?)?;
    let consented = performer(slot, standings).is_some_and(|one| one.state == RoleState::Standing);
    let person = with_consent(person, bench, consented);
    Some(judge(slot, &person, &context, Catalogue::built_in()))
}

/// The person as they stand on this gag: consent is their own sign-off, standing, and nothing else.
fn with_consent(person: &Person, bench: &Bench<'_>, consented: bool) -> Person {
    let plan = &bench.case.plan;
    let mut person = person.clone();
    person.consents.retain(|consent| consent.gag != plan.gag);
    people_today::with_takes_of(bench.case, &mut person);
    if consented {
        let (gag, revision) = (plan.gag, plan.revision);
        person.consents.push(Consent {
            gag,
            revision,
            withdrawn: None,
        });
    }
    person
}

/// What a verdict finds unmet, consent apart, which the performer's own mark says.
pub(crate) fn unmet(verdict: &Verdict) -> Vec<&str> {
    let findings = verdict.findings.iter();
    findings
        .filter(|one| one.standing != FindingStanding::Met)
        .filter(|one| one.requirement != Requirement::Consent)
        .map(|one| one.reason.trim_end_matches('.'))
        .collect()
}

fn performer<'s>(slot: &Slot, standings: &'s [RoleStanding]) -> Option<&'s RoleStanding> {
    standings
        .iter()
        .find(|one| one.role == Role::Performer && one.slot == Some(slot.id))
}

fn block(
    bench: &Bench<'_>,
    slot: &Slot,
    verdict: Option<&Verdict>,
    standings: &[RoleStanding],
) -> Option<Block> {
    let about = slot.id.to_string();
    let Some(person) = slot.person else {
        return Some(Block {
            kind: BlockKind::Uncast,
            about,
            reason: format!("Nobody is cast as {}.", slot.name),
            remedy: "Cast someone who qualifies; the matches list who does.".to_owned(),
        });
    };
    let name = bench.name(person);
    if bench.person(person).is_none() {
        return Some(Block {
            kind: BlockKind::Performer,
            about,
            reason: format!("{name}, cast as {}, is not on the roster.", slot.name),
            remedy: "Add them to the roster with their proofs, or cast someone else.".to_owned(),
        });
    }
    let verdict = verdict?;
    if verdict.outcome == Outcome::Qualified {
        return None;
    }
    // Consent that is missing, lapsed or declined is already said by the performer's own standing.
    let said = performer(slot, standings).is_some_and(|one| one.state != RoleState::Standing);
    let unmet: Vec<&Finding> = verdict
        .findings
        .iter()
        .filter(|finding| finding.standing != FindingStanding::Met)
        .filter(|finding| !(said && finding.requirement == Requirement::Consent))
        .collect();
    if unmet.is_empty() {
        return None;
    }
    let reasons: Vec<&str> = unmet
        .iter()
        .map(|one| one.reason.trim_end_matches('.'))
        .collect();
    let cures: Option<Vec<String>> = unmet
        .iter()
        .map(|one| {
            one.cure
                .as_ref()
                .map(|cure| format!("{} by {}", cure.what, cure.by))
        })
        .collect();
    let remedy = match cures {
        Some(cures) => format!("In time still: {}.", cures.join("; ")),
        None => "Cast someone who qualifies, or change what the slot needs.".to_owned(),
    };
    Some(Block {
        kind: BlockKind::Performer,
        about,
        reason: format!(
            "{name} is not qualified as {}: {}.",
            slot.name,
            reasons.join("; ")
        ),
        remedy,
    })
}

/// Somebody of unknown age, where the slot asks for none: they could be a minor, and then a guardian
/// would have to sign. A slot that asks for an age says so itself.
fn ageless(bench: &Bench<'_>, slot: &Slot) -> Option<Block> {
    let asks = |one: &Requirement| matches!(one, Requirement::Age { .. });
    let person = bench.person(slot.person?)?;
    if person.born.is_some() || slot.requirements.iter().any(asks) {
        return None;
    }
    Some(Block {
        kind: BlockKind::Performer,
        about: slot.id.to_string(),
        reason: format!(
            "No birthday is on record for {}, cast as {}: they may be a minor.",
            bench.name(person.id),
            slot.name
        ),
        remedy: "Enter their birthday on the roster, or cast someone else.".to_owned(),
    })
}

fn cast_twice(bench: &Bench<'_>) -> Vec<Block> {
    let mut first: BTreeMap<PersonId, &Slot> = BTreeMap::new();
    let mut blocks = Vec::new();
    for slot in &bench.case.plan.facets.cast.slots {
        let Some(person) = slot.person else { continue };
        match first.get(&person) {
            Some(other) => blocks.push(Block {
                kind: BlockKind::Performer,
                about: slot.id.to_string(),
                reason: format!(
                    "{} is cast both as {} and as {}.",
                    bench.name(person),
                    other.name,
                    slot.name
                ),
                remedy: "Cast each performer in one slot.".to_owned(),
            }),
            None => {
                first.insert(person, slot);
            }
        }
    }
    blocks
}
