//! Roles, signatures and performers as what a packet prints. What stands was decided by the judge.

use std::collections::BTreeMap;

use gagwright_casting::{FindingStanding, Outcome, PersonId};
use gagwright_clearance::{
    Case, Clearance, Drawing, Role, RoleStanding, RoleState, SignOff, SignOffId, SlotStanding,
    Statement,
    signoff::{self, PublicKey},
};
use gagwright_packet::document::{CastSlot, FindingRow, Mark, SignOffPart, State};
use gagwright_trail::Hash;
use jiff::tz::TimeZone;

use super::plan;
use crate::words;

/// A role's strip.
pub(crate) fn mark(state: RoleState) -> Mark {
    match state {
        RoleState::Standing => Mark::Whole,
        RoleState::Conditional | RoleState::Missing => Mark::Broken,
        RoleState::Lapsed => Mark::Torn,
        RoleState::Declined => Mark::Crossed,
    }
}

pub(super) fn parts(
    case: &Case,
    judged: &Clearance,
    names: &BTreeMap<PersonId, String>,
    zone: &TimeZone,
) -> Vec<SignOffPart> {
    let made: BTreeMap<_, (Statement, &SignOff)> = case
        .signoffs
        .iter()
        .filter_map(|one| Some((signoff::read_unverified(&one.jws).ok()?, one)))
        .map(|(statement, one)| (statement.id, (statement, one)))
        .collect();
    judged
        .roles
        .iter()
        .map(|role| {
            let mut part = asked(case, judged, role, names);
            if let Some((statement, signoff)) = role.signoff.and_then(|id| made.get(&id)) {
                signed(&mut part, case, statement, signoff, names, zone);
            }
            part
        })
        .collect()
}

/// Puts the marks that signers drew beside the sign-offs that decide; the parts are in the judge's order.
pub(super) fn draw(
    parts: &mut [SignOffPart],
    judged: &Clearance,
    drawn: &BTreeMap<SignOffId, Drawing>,
) {
    for (part, role) in parts.iter_mut().zip(&judged.roles) {
        if let Some(drawing) = role.signoff.and_then(|id| drawn.get(&id)) {
            part.drawing = drawing.0.clone();
        }
    }
}

/// What is asked of a role, signed or not.
fn asked(
    case: &Case,
    judged: &Clearance,
    role: &RoleStanding,
    names: &BTreeMap<PersonId, String>,
) -> SignOffPart {
    let policy = case.policy.roles.iter().find(|one| one.role == role.role);
    let slot = role
        .slot
        .and_then(|id| judged.slots.iter().find(|one| one.slot == id))
        .map(|slot| slot.name.as_str());
    SignOffPart {
        role: match slot {
            Some(slot) => format!("{}: {slot}", role.title),
            None => role.title.clone(),
        },
        because: role.because.clone(),
        state: State::new(words::role_state(role.state), mark(role.state)),
        stands: role.state == RoleState::Standing,
        name: expected(case, role, names),
        covers: policy
            .map(|one| {
                one.covers
                    .iter()
                    .map(|facet| plan::title(*facet).to_owned())
                    .collect()
            })
            .unwrap_or_default(),
        attestation: policy
            .map(|one| one.attestation.text.clone())
            .unwrap_or_default(),
        sentences: sentences(role, names),
        conditions: role.open_conditions.clone(),
        ..SignOffPart::default()
    }
}

/// How it was signed where that is not the usual way, why it does not stand, and what else is to be known.
fn sentences(role: &RoleStanding, names: &BTreeMap<PersonId, String>) -> Vec<String> {
    let name = |id: PersonId| {
        names
            .get(&id)
            .map_or("somebody no longer here", String::as_str)
    };
    let ink = role
        .witness
        .map(|id| format!("In ink, seen by {}.", name(id)));
    let lent = role
        .signed_for
        .map(|id| format!("Signed for {}.", name(id)));
    let told = role.reasons.iter().chain(&role.notes).cloned();
    ink.into_iter().chain(lent).chain(told).collect()
}

/// Who is expected to sign: the one cast, or the only holder of the hat.
fn expected(case: &Case, role: &RoleStanding, names: &BTreeMap<PersonId, String>) -> String {
    if role.role == Role::Performer {
        let person = case
            .plan
            .facets
            .cast
            .slots
            .iter()
            .find(|slot| Some(slot.id) == role.slot)
            .and_then(|slot| slot.person);
        return person
            .and_then(|id| names.get(&id).cloned())
            .unwrap_or_default();
    }
    let mut holders = case
        .members
        .iter()
        .filter(|member| member.roles.contains(&role.role));
    match (holders.next(), holders.next()) {
        (Some(only), None) => only.name.clone(),
        _ => String::new(),
    }
}

fn signed(
    part: &mut SignOffPart,
    case: &Case,
    statement: &Statement,
    signoff: &SignOff,
    names: &BTreeMap<PersonId, String>,
    zone: &TimeZone,
) {
    part.name = names.get(&statement.signer).cloned().unwrap_or_default();
    part.decision = words::decision(statement.decision).into();
    part.signed_at = words::moment(statement.signed_at, zone);
    part.received_at = words::moment(signoff.received_at, zone);
    part.revision = Some(statement.revision);
    part.covers = statement
        .facets
        .keys()
        .map(|facet| plan::title(*facet).to_owned())
        .collect();
    part.leaf = Some(signoff.leaf);
    if let Some(device) = case
        .devices
        .iter()
        .find(|device| device.id == statement.device)
    {
        part.device = device.name.clone();
        part.key_fingerprint = thumbprint(&device.key);
    }
}

/// The key's RFC 7638 thumbprint: SHA-256 over its required members in lexical order, hex in groups of
/// four so that it can be read aloud.
pub(crate) fn thumbprint(key: &PublicKey) -> String {
    let text = format!(
        "{{\"crv\":\"{}\",\"kty\":\"{}\",\"x\":\"{}\",\"y\":\"{}\"}}",
        key.crv, key.kty, key.x, key.y
    );
    let hex = Hash::of(text.as_bytes()).to_hex();
    let groups: Vec<&str> = (0..hex.len())
        .step_by(4)
        .filter_map(|at| hex.get(at..at + 4))
        .collect();
    groups.join(" ")
}

pub(super) fn cast(
    case: &Case,
    judged: &Clearance,
    names: &BTreeMap<PersonId, String>,
) -> Vec<CastSlot> {
    judged
        .slots
        .iter()
        .map(|slot| one_slot(case, slot, names))
        .collect()
}

fn one_slot(case: &Case, slot: &SlotStanding, names: &BTreeMap<PersonId, String>) -> CastSlot {
    let kit = case
        .plan
        .facets
        .cast
        .slots
        .iter()
        .find(|one| one.id == slot.slot)
        .map_or(0.0, |one| one.kit_mass);
    let (outcome, findings) = match &slot.verdict {
        Some(verdict) => {
            let mark = match verdict.outcome {
                Outcome::Qualified => Mark::Whole,
                Outcome::Conditional => Mark::Broken,
                Outcome::NotQualified => Mark::Crossed,
            };
            (
                State::new(words::outcome(verdict.outcome), mark),
                verdict.findings.as_slice(),
            )
        }
        None if slot.person.is_some() => (State::new("Not judged", Mark::Broken), &[][..]),
        None => (State::new("Nobody cast", Mark::Broken), &[][..]),
    };
    CastSlot {
        slot: slot.name.clone(),
        person: slot
            .person
            .and_then(|id| names.get(&id).cloned())
            .unwrap_or_default(),
        remark: if kit > 0.0 {
            format!(
                "costume and kit {}",
                words::both(gagwright_mechanics::Quantity::Mass, kit)
            )
        } else {
            String::new()
        },
        outcome,
        findings: findings
            .iter()
            .map(|one| FindingRow {
                requirement: words::requirement(&one.requirement),
                state: State::new(
                    words::finding(one.standing),
                    match one.standing {
                        FindingStanding::Met => Mark::Whole,
                        FindingStanding::Curable => Mark::Broken,
                        FindingStanding::NotMet => Mark::Crossed,
                    },
                ),
                reason: one.reason.clone(),
                cure: one
                    .cure
                    .as_ref()
                    .map(|cure| format!("{} by {}", cure.what, words::day(cure.by)))
                    .unwrap_or_default(),
            })
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_thumbprint_is_the_one_another_program_gives() {
        // Python: hashlib.sha256 of the four members in lexical order with no white space.
        let key = PublicKey {
            kty: "EC".into(),
            crv: "P-256".into(),
            x: "f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU".into(),
            y: "x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0".into(),
        };
        assert_eq!(thumbprint(&key).replace(' ', ""), THUMBPRINT);
    }

    const THUMBPRINT: &str = "a0a232c2f194a53553cb1310ddbc0821e414b9d7ebfc290b323084d7d1020fe5";
}
