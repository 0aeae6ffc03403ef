//! How each mark for the day stands, and why it does not. A mark is for a day, a place, the equipment by
//! serial, the people cast and the facets its role answers for; the policy's table says what else voids
//! it.

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, Slot};
use gagwright_mechanics::Facet;
use jiff::{SignedDuration, Timestamp, civil::Date};

use super::{bench::Bench, events, required::Needed, standing};
use crate::{
    case::{DayBlock, DayBlockKind, DaySignOff, RoleStanding, RoleState},
    day_mark::{self, DayStatement, place_hash},
    delegation,
    ids::SignOffId,
    policy::{LapseEvent, Policy, Role},
    signoff::{Decision, Device},
    words,
};

/// The day and the place that are judged.
pub(crate) struct Where {
    pub day: Date,
    pub place: String,
}

/// A mark whose signature holds, and the device it was made on.
struct Verified<'b, 'a> {
    signoff: &'a DaySignOff,
    statement: &'b DayStatement,
    device: &'a Device,
}

/// How every mark that the day needs stands: the policy's roles of the day, of those the plan asks.
pub(crate) fn standings(
    bench: &Bench<'_>,
    needed: &[Needed<'_>],
    today: &Where,
) -> Vec<RoleStanding> {
    needed
        .iter()
        .filter(|needed| {
            let role = needed.policy.role;
            bench.case.policy.day_attestation(role).is_some()
        })
        .map(|needed| standing_of(bench, needed, today))
        .collect()
}

fn standing_of(bench: &Bench<'_>, needed: &Needed<'_>, today: &Where) -> RoleStanding {
    let mut standing = needed.unsigned();
    let marks = newest_first(bench, needed);
    let decider = declined(bench, needed, &marks, today).or(marks.first());
    let Some(mark) = decider else {
        standing.reasons.push(match needed.slot {
            Some(slot) => {
                let who = slot.person.map(|person| bench.name(person));
                format!(
                    "{} has not signed the day.",
                    who.as_deref().unwrap_or("The performer")
                )
            }
            None => format!("Nobody has signed the day as {}.", standing.title),
        });
        return standing;
    };
    let statement = mark.statement;
    standing.signoff = Some(statement.id);
    standing.signer = Some(statement.signer);
    standing.signed_for = bench.delegation(statement.hat()).map(|one| one.from);
    standing.witness = statement.ink.as_ref().map(|ink| ink.witness);
    standing.received_at = Some(mark.signoff.received_at);
    standing.revision = Some(statement.revision);
    if statement.decision == Decision::Decline {
        // No to another day is no answer to this one, and never a yes.
        let (state, day) = match is_today(statement, today) {
            true => (RoleState::Declined, "the day".to_owned()),
            false => (RoleState::Lapsed, statement.day.to_string()),
        };
        standing.state = state;
        let name = bench.name(statement.signer);
        standing.reasons.push(format!("{name} declined {day}."));
        return standing;
    }
    standing.changed = changed(bench, needed, statement);
    standing.reasons = lapses(bench, needed, mark, &standing.changed, today);
    standing.state = if standing.reasons.is_empty() {
        RoleState::Standing
    } else {
        RoleState::Lapsed
    };
    standing
}

fn is_today(statement: &DayStatement, today: &Where) -> bool {
    statement.day == today.day
}

/// Marks under a role whose signatures hold, newest first.
fn newest_first<'b, 'a>(bench: &'b Bench<'a>, needed: &Needed<'_>) -> Vec<Verified<'b, 'a>> {
    let mut marks: Vec<Verified<'b, 'a>> = bench
        .day_newest_first()
        .filter(|heard| {
            let claimed = &heard.statement;
            let cast = |slot: &Slot| slot.person == Some(claimed.signer);
            claimed.role == needed.policy.role
                && claimed.slot == needed.slot_id()
                && needed.slot.is_none_or(cast)
        })
        .filter_map(|heard| {
            Some(Verified {
                signoff: heard.signoff,
                statement: &heard.statement,
                device: bench.day_device_of(heard)?,
            })
        })
        .collect();
    let taken_back: BTreeSet<SignOffId> = marks
        .iter()
        .enumerate()
        .filter(|(at, mark)| marks.iter().skip(at + 1).any(|no| takes_back(no, mark)))
        .map(|(_, mark)| mark.statement.id)
        .collect();
    marks.retain(|mark| !taken_back.contains(&mark.statement.id));
    marks
}

/// Whether a signer's no for a day, received before their yes, was said after it or as it was: a yes that
/// travelled by another phone lifts no later no. Where clocks differ, doubt goes to the no.
fn takes_back(no: &Verified<'_, '_>, yes: &Verified<'_, '_>) -> bool {
    let (no, yes) = (no.statement, yes.statement);
    no.decision == Decision::Decline
        && yes.decision != Decision::Decline
        && (no.signer, no.day) == (yes.signer, yes.day)
        && no.signed_at >= yes.signed_at
}

/// The decline that stands for this day: the latest word of anyone who still holds the role or deputises for who
/// does, which nobody else can lift for them.
fn declined<'m, 'b, 'a>(
    bench: &Bench<'a>,
    needed: &Needed<'_>,
    marks: &'m [Verified<'b, 'a>],
    today: &Where,
) -> Option<&'m Verified<'b, 'a>> {
    let role = needed.policy.role;
    let entitled = |mark: &Verified<'_, '_>| {
        let (hat, received) = (mark.statement.hat(), mark.signoff.received_at);
        bench.unentitled(hat, received, "").is_none()
    };
    let mut spoken: BTreeSet<PersonId> = BTreeSet::new();
    marks.iter().find(|mark| {
        let statement = mark.statement;
        is_today(statement, today)
            && spoken.insert(statement.signer)
            && statement.decision == Decision::Decline
            && (role == Role::Performer || entitled(mark))
    })
}

/// Facets the role answers for whose content is not what was signed for the day.
fn changed(bench: &Bench<'_>, needed: &Needed<'_>, statement: &DayStatement) -> Vec<Facet> {
    standing::changed_facets(bench, needed.policy, &statement.facets)
}

/// Every reason a mark that once stood no longer does.
fn lapses(
    bench: &Bench<'_>,
    needed: &Needed<'_>,
    mark: &Verified<'_, '_>,
    changed: &[Facet],
    today: &Where,
) -> Vec<String> {
    let policy = &bench.case.policy;
    let role = needed.policy.role;
    let statement = mark.statement;
    let name = bench.name(statement.signer);
    let mut reasons = Vec::new();
    if !changed.is_empty() {
        let have = if changed.len() == 1 { "has" } else { "have" };
        reasons.push(format!(
            "{} {have} changed since {name} signed the day on revision {}.",
            words::capital(&words::facets(changed)),
            statement.revision,
        ));
    }
    let asked = policy.day_attestation(role).map(|one| one.id.as_str());
    if asked != Some(statement.attestation.as_str()) {
        reasons.push(format!(
            "{name} signed the words \"{}\"; the policy now asks for \"{}\".",
            statement.attestation,
            asked.unwrap_or_default()
        ));
    }
    let made = statement.signed_at.min(mark.signoff.received_at);
    let until = good_until(policy, statement, made);
    if until <= bench.now {
        reasons.push(format!(
            "{name}'s mark for the day was good until {}.",
            words::minute(until)
        ));
    }
    reasons.extend(differs(bench, statement, &name, today));
    reasons.extend(events::since(
        bench,
        role,
        statement.signer,
        made,
        Policy::voids_day,
    ));
    if policy.voids_day(LapseEvent::DeviceRevoked, role)
        && let Some(reason) = standing::revoked(mark.device, mark.signoff.received_at)
    {
        reasons.push(reason);
    }
    if role != Role::Performer {
        let (hat, received) = (statement.hat(), mark.signoff.received_at);
        reasons.extend(bench.unentitled(hat, received, &needed.policy.title));
    }
    if bench.case.plan.casts(statement.signer) && policy.keeps_apart(role, Role::Performer) {
        reasons.push(format!(
            "{name} performs on this gag; the policy keeps {} and performers apart.",
            needed.policy.title
        ));
    }
    if policy.voids_day(LapseEvent::Certificate, role) && bench.needs_certificates(statement.hat())
    {
        let (who, day) = (statement.signer, Some(today.day));
        reasons.extend(standing::certificate_reasons(
            bench,
            needed.policy,
            who,
            day,
        ));
    }
    reasons
}

/// What was signed for and is not what is.
fn differs(bench: &Bench<'_>, statement: &DayStatement, name: &str, today: &Where) -> Vec<String> {
    let voids = |event| bench.case.policy.voids_day(event, statement.role);
    let mut reasons = Vec::new();
    let serials = day_mark::serials(bench.case);
    if voids(LapseEvent::EquipmentSwap) && statement.serials != serials {
        let only = |these: &[String], those: &[String]| -> Vec<String> {
            let lone = these.iter().filter(|one| !those.contains(one));
            lone.cloned().collect()
        };
        let (gone, come) = (
            only(&statement.serials, &serials),
            only(&serials, &statement.serials),
        );
        let parts: Vec<String> = [("without", gone), ("with", come)]
            .into_iter()
            .filter(|(_, these)| !these.is_empty())
            .map(|(how, these)| format!("{how} {}", words::list(&these)))
            .collect();
        reasons.push(format!(
            "The equipment is not what {name} signed the day for: it is now {}.",
            parts.join(" and ")
        ));
    }
    if voids(LapseEvent::PerformerSwap) && statement.cast != day_mark::cast(bench.case) {
        reasons.push(format!(
            "{name} signed the day for other performers than those cast now."
        ));
    }
    if voids(LapseEvent::NewDay) && statement.day != today.day {
        reasons.push(format!(
            "{name} signed for {}; this is {}.",
            statement.day, today.day
        ));
    }
    if voids(LapseEvent::NewSite) && statement.place != place_hash(&today.place) {
        reasons.push(format!(
            "{name} signed for another place than \"{}\".",
            today.place
        ));
    }
    reasons
}

/// The earliest of what was signed, what the policy allows, and the end of the day signed for.
fn good_until(policy: &Policy, statement: &DayStatement, made: Timestamp) -> Timestamp {
    let hours = SignedDuration::from_hours(policy.day.good_for_hours.into());
    let allowed = made.checked_add(hours).unwrap_or(Timestamp::MAX);
    statement
        .good_until
        .min(allowed)
        .min(day_mark::span(statement.day).1)
}

/// Whether whoever decided may still speak under that hat, their own or one lent to them.
fn still_speaks(bench: &Bench<'_>, mark: &RoleStanding) -> bool {
    mark.role == Role::Performer
        || mark.signer.is_some_and(|signer| {
            delegation::hats(bench.case, signer, bench.now).contains(&mark.role)
        })
}

/// One block for each mark that does not stand.
pub(crate) fn blocks(bench: &Bench<'_>, marks: &[RoleStanding]) -> Vec<DayBlock> {
    marks
        .iter()
        .filter_map(|mark| {
            let reasons = mark.reasons.join(" ");
            let (kind, reason) = match mark.state {
                RoleState::Standing => return None,
                RoleState::Missing => (DayBlockKind::Unsigned, reasons),
                RoleState::Declined => {
                    (DayBlockKind::Decline, format!("{}: {reasons}", mark.title))
                }
                RoleState::Lapsed | RoleState::Conditional => {
                    (DayBlockKind::Lapsed, format!("{}: {reasons}", mark.title))
                }
            };
            Some(DayBlock {
                kind,
                about: super::marks::about(mark),
                reason,
                remedy: match mark.state {
                    RoleState::Declined if still_speaks(bench, mark) => {
                        "Put right what they name; only they can say otherwise.".to_owned()
                    }
                    _ => format!("{} for the day.", super::marks::ask(bench, mark)),
                },
            })
        })
        .collect()
}
