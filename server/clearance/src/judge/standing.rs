//! How one role's sign-off stands, and why it does not. The rules of lapsing live here.

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, SlotId};
use gagwright_mechanics::Facet;
use jiff::{SignedDuration, Timestamp, civil::Date};

use super::{
    bench::{Bench, Heard},
    changes, events,
    required::{Needed, unsigned},
};
use crate::{
    case::{RoleStanding, RoleState},
    certificates, opening,
    plan::FacetHashes,
    policy::{LapseEvent, Policy, Role, RolePolicy},
    resolving::Resolution,
    signoff::{Decision, Device, Statement},
    words,
};

/// A sign-off whose signature holds, and the device it was made on.
type Decider<'b, 'a> = (&'b Heard<'a>, &'a Device);

/// How a needed mark stands.
pub(crate) fn standing(bench: &Bench<'_>, needed: &Needed<'_>) -> RoleStanding {
    let role = needed.policy.role;
    let place = needed.slot.and_then(|slot| Some((slot.id, slot.person?)));
    let decider = decline(bench, role, place).or_else(|| latest(bench, role, place));
    let mut standing = needed.unsigned();
    let Some((heard, device)) = decider else {
        standing.reasons.push(missing(bench, role, place));
        return standing;
    };
    let statement = &heard.statement;
    standing.signoff = Some(statement.id);
    standing.signer = Some(statement.signer);
    standing.received_at = Some(heard.signoff.received_at);
    standing.revision = Some(statement.revision);
    standing.signed_for = bench.delegation(statement.hat()).map(|one| one.from);
    standing.witness = statement.ink.as_ref().map(|ink| ink.witness);
    if statement.decision == Decision::Decline {
        standing.state = RoleState::Declined;
        standing.reasons.push(format!(
            "{} declined revision {}: {}",
            bench.name(statement.signer),
            statement.revision,
            why(heard),
        ));
        return standing;
    }
    let changed = changes::since(bench, needed.policy, heard);
    standing.good_until = good_until(needed.policy, heard);
    standing.reasons = lapses(bench, needed.policy, (heard, device), &changed);
    if unheard_since(bench, role, place, heard) {
        standing.reasons.push(
            "A later sign-off was received whose signature does not verify, so what it says is \
             unknown."
                .to_owned(),
        );
    }
    standing.open_conditions = open_conditions(bench, heard);
    standing.changed = changed.facets;
    standing.notes = changed.accepted;
    standing.notes.extend(dissent(bench, role, place));
    standing.state = match (
        standing.reasons.is_empty(),
        standing.open_conditions.is_empty(),
    ) {
        (false, _) => RoleState::Lapsed,
        (true, false) => RoleState::Conditional,
        (true, true) => RoleState::Standing,
    };
    standing
}

/// A sign-off for a role that the policy no longer has, or a slot that the plan no longer has.
pub(crate) fn unasked(bench: &Bench<'_>, statement: &Statement) -> RoleStanding {
    let title = bench.title(statement.role);
    RoleStanding {
        state: RoleState::Lapsed,
        signoff: Some(statement.id),
        signer: Some(statement.signer),
        revision: Some(statement.revision),
        reasons: vec!["The plan no longer asks for this signature.".to_owned()],
        ..unsigned(statement.role, &title, statement.slot, "it was signed")
    }
}

/// The latest sign-off whose signature holds.
fn latest<'b, 'a>(
    bench: &'b Bench<'a>,
    role: Role,
    place: Option<(SlotId, PersonId)>,
) -> Option<Decider<'b, 'a>> {
    bench
        .newest_first(role, place)
        .find_map(|heard| bench.device_of(heard).map(|device| (heard, device)))
}

/// The decline that stands under a role: the latest word said under it; where the policy asks that
/// declines are resolved in writing, the latest word of whoever declined, until it is; and for a role
/// with the final say, the latest word of anyone who still holds it, which nobody else can lift for them.
pub(crate) fn decline<'b, 'a>(
    bench: &'b Bench<'a>,
    role: Role,
    place: Option<(SlotId, PersonId)>,
) -> Option<Decider<'b, 'a>> {
    let is_decline = |(heard, _): &Decider<'_, '_>| heard.statement.decision == Decision::Decline;
    let policy = &bench.case.policy;
    let final_say = policy.final_say.contains(&role);
    let in_writing = policy
        .settling
        .get(&role)
        .is_some_and(|settling| !settling.declines.is_empty());
    if !final_say && !in_writing {
        return latest(bench, role, place).filter(is_decline);
    }
    let stands = |heard: &Heard<'a>| match final_say {
        true => {
            let received = heard.signoff.received_at;
            bench
                .unentitled(heard.statement.hat(), received, "")
                .is_none()
        }
        false => resolution(bench, heard).is_none(),
    };
    let mut spoken: BTreeSet<PersonId> = BTreeSet::new();
    let mut newest = true;
    for heard in bench.newest_first(role, place) {
        let Some(device) = bench.device_of(heard) else {
            continue;
        };
        let last_word = spoken.insert(heard.statement.signer);
        let decider = (heard, device);
        if is_decline(&decider) && (newest || (last_word && stands(heard))) {
            return Some(decider);
        }
        newest = false;
    }
    None
}

/// What was written to resolve a decline, by somebody who holds a hat that may.
fn resolution<'a>(bench: &Bench<'a>, heard: &Heard<'_>) -> Option<&'a Resolution> {
    let settling = bench.case.policy.settling.get(&heard.statement.role)?;
    bench
        .case
        .resolutions
        .iter()
        .find(|one| one.signoff == heard.statement.id && settling.declines.contains(&one.role))
}

/// Declines that no longer stop anything, with what was written to resolve each: dissent stays on the
/// record beside the approval that followed.
fn dissent(bench: &Bench<'_>, role: Role, place: Option<(SlotId, PersonId)>) -> Vec<String> {
    bench
        .newest_first(role, place)
        .filter(|heard| heard.statement.decision == Decision::Decline)
        .filter(|heard| bench.device_of(heard).is_some())
        .filter_map(|heard| Some((heard, resolution(bench, heard)?)))
        .map(|(heard, resolved)| {
            format!(
                "{} declined revision {}: {} {} resolved it in writing on {}: {}",
                bench.name(heard.statement.signer),
                heard.statement.revision,
                full_stop(&why(heard)),
                bench.name(resolved.by),
                words::minute(resolved.at),
                full_stop(&resolved.text),
            )
        })
        .collect()
}

/// Why somebody declined, while the text is kept.
fn why(heard: &Heard<'_>) -> String {
    heard.statement.reason.as_deref().map_or_else(
        || "no reason was given".to_owned(),
        |reason| opening::told(reason, &heard.signoff.openings),
    )
}

fn full_stop(text: &str) -> String {
    format!("{}.", text.trim().trim_end_matches('.'))
}

/// Whether something newer was received under the role that cannot be checked: it may have been a
/// decline, so the older word is not leaned on.
fn unheard_since<'a>(
    bench: &Bench<'a>,
    role: Role,
    place: Option<(SlotId, PersonId)>,
    decider: &Heard<'a>,
) -> bool {
    bench
        .newest_first(role, place)
        .take_while(|heard| heard.statement.id != decider.statement.id)
        .any(|heard| bench.device_of(heard).is_none())
}

fn missing(bench: &Bench<'_>, role: Role, place: Option<(SlotId, PersonId)>) -> String {
    let unheard = bench.newest_first(role, place).next().is_some();
    let nobody = match place {
        Some((_, person)) => format!("{} has not consented.", bench.name(person)),
        None => format!("Nobody has signed as {}.", bench.title(role)),
    };
    if unheard {
        format!(
            "{nobody} A sign-off was received whose signature does not verify; it counts for nothing."
        )
    } else {
        nobody
    }
}

/// Facets the role answers for whose content is not that of these hashes, in table order.
pub(crate) fn changed_facets(
    bench: &Bench<'_>,
    policy: &RolePolicy,
    signed: &FacetHashes,
) -> Vec<Facet> {
    Facet::ALL
        .into_iter()
        .filter(|facet| policy.covers.contains(facet) || signed.contains_key(facet))
        .filter(|facet| match (signed.get(facet), bench.hashes.get(facet)) {
            (Some(signed), Some(current)) => signed != current,
            _ => true,
        })
        .collect()
}

/// Every reason a sign-off that once stood no longer does.
fn lapses(
    bench: &Bench<'_>,
    policy: &RolePolicy,
    (heard, device): Decider<'_, '_>,
    changed: &changes::Changes,
) -> Vec<String> {
    let statement = &heard.statement;
    let received = heard.signoff.received_at;
    let name = bench.name(statement.signer);
    let mut reasons = Vec::new();
    reasons.extend(changed.sentences(&name, statement.revision, &policy.title));
    if statement.technique != bench.case.plan.technique {
        reasons.push(format!(
            "The technique has changed since {name} signed revision {}.",
            statement.revision,
        ));
    }
    if statement.attestation != policy.attestation.id {
        reasons.push(format!(
            "{name} signed the words \"{}\"; the policy now asks for \"{}\".",
            statement.attestation, policy.attestation.id
        ));
    }
    if let Some(until) = good_until(policy, heard)
        && until <= bench.now
    {
        reasons.push(format!(
            "{name}'s sign-off was good until {}.",
            words::minute(until)
        ));
    }
    let table = &bench.case.policy;
    if table.voids_plan(LapseEvent::DeviceRevoked, policy.role) {
        reasons.extend(revoked(device, received));
    }
    // A performer's place is their casting, which `newest_first` has already matched.
    if policy.role != Role::Performer {
        reasons.extend(bench.unentitled(statement.hat(), received, &policy.title));
    }
    if table.voids_plan(LapseEvent::Certificate, policy.role)
        && bench.needs_certificates(statement.hat())
    {
        let day = bench.case.plan.facets.setting.day;
        reasons.extend(certificate_reasons(bench, policy, statement.signer, day));
    }
    let made = statement.signed_at.min(received);
    reasons.extend(events::since(
        bench,
        policy.role,
        statement.signer,
        made,
        Policy::voids_plan,
    ));
    reasons
}

/// That a device was revoked before what was signed on it arrived.
pub(crate) fn revoked(device: &Device, received: Timestamp) -> Option<String> {
    let revoked = device.revoked_at.filter(|revoked| *revoked <= received)?;
    Some(format!(
        "The device \"{}\" was revoked on {}, before this sign-off arrived.",
        device.name,
        words::minute(revoked)
    ))
}

/// The earlier of what was signed and what the policy allows. Hours run from the earlier of the
/// device's clock and the server's, so that neither a clock set ahead nor a late delivery gains time.
fn good_until(policy: &RolePolicy, heard: &Heard<'_>) -> Option<Timestamp> {
    let signed = heard.statement.signed_at.min(heard.signoff.received_at);
    let allowed = policy.good_for_hours.map(|hours| {
        // Past the calendar's end a sign-off is good for ever, which is what so many hours mean.
        signed
            .checked_add(SignedDuration::from_hours(hours.into()))
            .unwrap_or(Timestamp::MAX)
    });
    [heard.statement.good_until, allowed]
        .into_iter()
        .flatten()
        .min()
}

pub(crate) fn certificate_reasons(
    bench: &Bench<'_>,
    policy: &RolePolicy,
    signer: PersonId,
    day: Option<Date>,
) -> Vec<String> {
    let Some(member) = bench.member(signer) else {
        return Vec::new();
    };
    let plan = &bench.case.plan;
    certificates::missing(
        member,
        &policy.certificates,
        plan.gag,
        plan.revision,
        bench.today,
        day,
    )
    .into_iter()
    .map(|reason| {
        format!(
            "{} needs a certificate to sign as {}: {reason}.",
            member.name, policy.title
        )
    })
    .collect()
}

/// Conditions that nobody entitled has said are met: someone who holds the role that set them may, and
/// whoever else the policy says.
fn open_conditions(bench: &Bench<'_>, heard: &Heard<'_>) -> Vec<String> {
    let statement = &heard.statement;
    if statement.decision != Decision::ApproveWithConditions {
        return Vec::new();
    }
    let entitled = |person: PersonId| match statement.role {
        Role::Performer => person == statement.signer,
        role => {
            let settling = bench.case.policy.settling.get(&role);
            let others = settling.into_iter().flat_map(|one| &one.conditions);
            std::iter::once(&role)
                .chain(others)
                .any(|role| bench.holds_role(person, *role))
        }
    };
    let met = |condition: &str| {
        heard
            .signoff
            .met
            .iter()
            .any(|met| met.condition == condition && entitled(met.by))
    };
    statement
        .conditions
        .iter()
        .filter(|condition| !met(condition))
        .map(|condition| opening::told(condition, &heard.signoff.openings))
        .collect()
}
