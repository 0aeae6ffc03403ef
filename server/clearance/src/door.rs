//! The door: whether a sign-off may be recorded at all. What is recorded here is judged again, from
//! itself, whenever the gag is; so the door is for saying no early, and to the person who can mend it.

use std::collections::BTreeSet;

use gagwright_casting::{GagId, PersonId, ProductionId, Slot, SlotId};
use gagwright_mechanics::Facet;
use jiff::{SignedDuration, Timestamp};

use crate::{
    case::{Case, RoleState},
    certificates,
    delegation::{self, Hat},
    drawing,
    ids::DeviceId,
    ink::{self, Ink},
    judge::{Bench, Hashed, JudgeMemory, Needed, standing},
    jws,
    opening::{Opening, is_commitment, text_of},
    policy::{Attestation, Role, RolePolicy},
    signoff::{Decision, Device, SignOffError, Statement},
    validate::LONG,
    words,
};

/// How far a device's clock may be from the server's. A phone in another zone, wrongly set, is hours
/// off; more than a day is a statement made ahead of time.
pub const CLOCK_SLACK: SignedDuration = SignedDuration::from_hours(24);

/// More conditions than this are a plan of their own.
const MOST_CONDITIONS: usize = 50;

/// Decides whether a sign-off may be recorded with the texts that came beside it, and gives what it states.
/// The case must hold the signer's device. Whether its id was used on another gag is for whoever keeps all gags to check.
///
/// # Errors
/// Says what is wrong and, where something can be done, what.
pub fn accept(
    jws: &str,
    openings: &[Opening],
    case: &Case,
    now: Timestamp,
) -> Result<Statement, SignOffError> {
    accept_remembering(jws, openings, case, now, &JudgeMemory::default())
}

/// As [`accept`], leaning on what was verified and hashed before, and keeping what it verifies and hashes
/// for the judge, who asks next.
///
/// # Errors
/// As [`accept`].
pub fn accept_remembering(
    jws: &str,
    openings: &[Opening],
    case: &Case,
    now: Timestamp,
    memory: &JudgeMemory,
) -> Result<Statement, SignOffError> {
    let claimed = jws::read_unverified(jws)?;
    let device = registered(case, claimed.device)?;
    let statement = match memory.verified(jws, &device.key) {
        Some(statement) => Statement::clone(&statement),
        // Once more, for what is wrong with it.
        None => jws::verify(jws, &device.key)?,
    };
    if let Some(problem) = ink::problem(&statement) {
        return Err(SignOffError::BadStatement(problem.to_owned()));
    }
    owned(device, statement.hand())?;
    unrevoked(device)?;
    let hashed = memory.hashes(&case.plan.facets)?;
    let policy = case
        .policy
        .role(statement.role)
        .filter(|policy| policy.role != Role::Observer);
    let policy = policy.ok_or_else(|| {
        not_allowed(format!(
            "the role {} signs nothing on this production",
            statement.role.name()
        ))
    })?;
    same_content(&statement, case, policy, &hashed)?;
    wording(&statement, policy)?;
    opened(&statement, openings)?;
    unused(&statement, case, memory)?;
    times(&statement, case, policy, now)?;
    let bench = Bench::new(case, now, hashed.facets.clone(), memory);
    witnessed(statement.ink.as_ref(), &bench)?;
    let slot = place(statement.hat(), statement.slot, &bench)?;
    // Saying no must be easier than saying yes: a decline asks for the role and nothing more.
    if statement.decision != Decision::Decline {
        if bench.needs_certificates(statement.hat()) {
            qualified(statement.signer, &bench, policy)?;
        }
        apart(&statement, &bench, slot)?;
    }
    Ok(statement)
}

/// A device that may still sign, for marks of the day.
pub(crate) fn usable_device(case: &Case, id: DeviceId) -> Result<&Device, SignOffError> {
    let device = registered(case, id)?;
    unrevoked(device)?;
    Ok(device)
}

fn registered(case: &Case, id: DeviceId) -> Result<&Device, SignOffError> {
    let mut devices = case.devices.iter();
    devices.find(|device| device.id == id).ok_or_else(|| {
        not_allowed(format!(
            "the device {id} is not registered on this production; register it, then sign again"
        ))
    })
}

/// That the device is the signer's own.
pub(crate) fn owned(device: &Device, signer: PersonId) -> Result<(), SignOffError> {
    if device.person == signer {
        return Ok(());
    }
    Err(not_allowed(format!(
        "the device \"{}\" belongs to someone else",
        device.name
    )))
}

fn unrevoked(device: &Device) -> Result<(), SignOffError> {
    match device.revoked_at {
        None => Ok(()),
        Some(revoked) => Err(not_allowed(format!(
            "the device \"{}\" was revoked on {}; sign with another",
            device.name,
            words::minute(revoked)
        ))),
    }
}

fn not_allowed(reason: String) -> SignOffError {
    SignOffError::NotAllowed(reason)
}

pub(crate) fn mismatch(what: &'static str, detail: String) -> SignOffError {
    SignOffError::Mismatch { what, detail }
}

/// The very gag that is signed for.
pub(crate) fn same_gag(
    production: ProductionId,
    gag: GagId,
    case: &Case,
) -> Result<(), SignOffError> {
    if production != case.production {
        let detail = format!("{production}, but this is {}", case.production);
        return Err(mismatch("another production", detail));
    }
    if gag != case.plan.gag {
        let detail = format!("{gag}, but this is {}", case.plan.gag);
        return Err(mismatch("another gag", detail));
    }
    Ok(())
}

/// Whether this is a no to an earlier revision, which is heard: the plan moved on while it travelled, and
/// whoever said it has not said otherwise.
pub(crate) fn is_late_no(decision: Decision, revision: u32, case: &Case) -> bool {
    decision == Decision::Decline && (1..case.plan.revision).contains(&revision)
}

/// That a revision was signed which is no longer current, and what to do.
pub(crate) fn another_revision(signed: u32, case: &Case) -> SignOffError {
    let current = case.plan.revision;
    let detail =
        format!("revision {signed}, but revision {current} is current; read it, then sign that");
    mismatch("another revision", detail)
}

/// A drawn mark is named by its hash.
pub(crate) fn drawn(mark: Option<&str>) -> Result<(), SignOffError> {
    if mark.is_none_or(drawing::is_hash) {
        return Ok(());
    }
    Err(SignOffError::BadStatement(
        "mark must be the SHA-256 of the drawing, in lower-case hex; or leave it out".to_owned(),
    ))
}

/// A device's clock may be off, but not so far that it signs ahead of time.
pub(crate) fn not_ahead(signed: Timestamp, now: Timestamp) -> Result<(), SignOffError> {
    if signed.duration_since(now) <= CLOCK_SLACK {
        return Ok(());
    }
    Err(SignOffError::BadStatement(format!(
        "signed_at is {}, more than a day ahead; set the device's clock and sign again",
        words::minute(signed)
    )))
}

/// The very gag, revision and content that are current.
fn same_content(
    statement: &Statement,
    case: &Case,
    policy: &RolePolicy,
    hashed: &Hashed,
) -> Result<(), SignOffError> {
    same_gag(statement.production, statement.gag, case)?;
    if is_late_no(statement.decision, statement.revision, case) {
        return Ok(());
    }
    if statement.revision != case.plan.revision {
        return Err(another_revision(statement.revision, case));
    }
    let digest = &hashed.digest;
    if statement.plan_digest != *digest {
        let detail = format!(
            "digest {}, but the plan's is {digest}",
            statement.plan_digest
        );
        return Err(mismatch("another plan", detail));
    }
    if statement.technique != case.plan.technique {
        let (signed, current) = (&statement.technique, &case.plan.technique);
        return Err(mismatch(
            "another technique",
            format!("{signed}, but the plan's is {current}"),
        ));
    }
    let signed: BTreeSet<Facet> = statement.facets.keys().copied().collect();
    if signed != policy.covers {
        let all: Vec<Facet> = policy.covers.iter().copied().collect();
        let detail = format!(
            "{} must sign exactly for {}",
            policy.title,
            words::facets(&all)
        );
        return Err(mismatch("other facets", detail));
    }
    for (facet, hash) in &statement.facets {
        if hashed.facets.get(facet) != Some(hash) {
            let detail = format!("the {} signed is not the current one", facet.name());
            return Err(mismatch("other content", detail));
        }
    }
    Ok(())
}

/// The words signed, and conditions or a reason where the decision asks for them and nowhere else.
fn wording(statement: &Statement, policy: &RolePolicy) -> Result<(), SignOffError> {
    if statement.attestation != policy.attestation.id {
        let detail = format!(
            "{}, but {} is current",
            statement.attestation, policy.attestation.id
        );
        return Err(mismatch("another attestation", detail));
    }
    if let Some(language) = &statement.language
        && (language == Attestation::ENGLISH || policy.attestation.in_language(language).is_none())
    {
        let detail = format!(
            "in \"{}\", in which {} has no words; leave language out for English",
            language.escape_debug(),
            policy.attestation.id
        );
        return Err(mismatch("another language", detail));
    }
    let bad = |problem: &str| Err(SignOffError::BadStatement(problem.to_owned()));
    drawn(statement.mark.as_deref())?;
    match (statement.decision, statement.reason.as_deref()) {
        (Decision::Decline, Some(reason)) if is_commitment(reason) => {}
        (Decision::Decline, _) => {
            return bad("a decline must say why: reason holds the commitment to the text");
        }
        (_, None) => {}
        (_, Some(_)) => return bad("only a decline has a reason; leave reason out"),
    }
    let conditions = &statement.conditions;
    match (statement.decision, conditions.is_empty()) {
        (Decision::ApproveWithConditions, true) => {
            return bad("approving with conditions needs at least one condition");
        }
        (Decision::ApproveWithConditions, false) | (_, true) => {}
        (_, false) => {
            return bad("only approve_with_conditions has conditions; leave conditions out");
        }
    }
    let different: BTreeSet<&String> = conditions.iter().collect();
    if conditions.len() > MOST_CONDITIONS
        || different.len() != conditions.len()
        || !conditions.iter().all(|condition| is_commitment(condition))
    {
        return bad("conditions must be at most 50 commitments to texts, all different");
    }
    Ok(())
}

/// Every commitment comes with the text it stands for, and no text without one.
fn opened(statement: &Statement, openings: &[Opening]) -> Result<(), SignOffError> {
    let bad = |problem: String| Err(SignOffError::BadStatement(problem));
    let wanted: Vec<&String> = statement
        .conditions
        .iter()
        .chain(&statement.reason)
        .collect();
    for (at, commitment) in wanted.iter().enumerate() {
        let what = match at < statement.conditions.len() {
            true => format!("condition {}", at + 1),
            false => "reason".to_owned(),
        };
        let Some(text) = text_of(commitment, openings) else {
            return bad(format!(
                "the text of {what} is not among the openings, or is not what was signed; send each text \
                 with its salt beside the sign-off"
            ));
        };
        if text.trim().is_empty() || text.chars().count() > LONG {
            return bad(format!(
                "the text of {what} must not be empty and have at most {LONG} characters"
            ));
        }
    }
    let texts: BTreeSet<&str> = openings.iter().map(|one| one.text.as_str()).collect();
    if openings.len() != wanted.len() || texts.len() != openings.len() {
        return bad(
            "openings must hold each text that was signed once, and nothing else".to_owned(),
        );
    }
    Ok(())
}

fn unused(statement: &Statement, case: &Case, memory: &JudgeMemory) -> Result<(), SignOffError> {
    let used = case.signoffs.iter().any(|signoff| {
        let earlier = memory.claimed(&signoff.jws);
        earlier.is_some_and(|earlier| earlier.id == statement.id)
    });
    if used {
        return Err(not_allowed(format!(
            "the sign-off {} is recorded already; a new one needs a new id",
            statement.id
        )));
    }
    Ok(())
}

/// The device's clock is shown and never trusted for order, but it must be possible.
fn times(
    statement: &Statement,
    case: &Case,
    policy: &RolePolicy,
    now: Timestamp,
) -> Result<(), SignOffError> {
    let signed = statement.signed_at;
    let bad = |problem: String| Err(SignOffError::BadStatement(problem));
    not_ahead(signed, now)?;
    if case.plan.written_at.duration_since(signed) > CLOCK_SLACK {
        return bad(format!(
            "signed_at is {}, more than a day before this revision was written; set the device's \
             clock and sign again",
            words::minute(signed)
        ));
    }
    if let Some(until) = statement.good_until
        && (until <= now || until <= signed)
    {
        return bad(format!(
            "good_until is {}, which is past",
            words::minute(until)
        ));
    }
    let Some(hours) = policy.good_for_hours else {
        return Ok(());
    };
    let longest = SignedDuration::from_hours(hours.into());
    match statement.good_until {
        Some(until) if until.duration_since(now) <= longest => Ok(()),
        _ => bad(format!(
            "good_until must be given, at most {hours} hours from now, for {}",
            policy.title
        )),
    }
}

/// That the signer holds the role, is lent it or, to consent, is cast in the slot they sign for: the same for the
/// plan and for the day.
pub(crate) fn place<'a>(
    hat: Hat,
    slot: Option<SlotId>,
    bench: &Bench<'a>,
) -> Result<Option<&'a Slot>, SignOffError> {
    if hat.role != Role::Performer {
        if slot.is_some() {
            return Err(SignOffError::BadStatement(
                "only a performer signs for a slot; leave slot out".to_owned(),
            ));
        }
        deputised(hat, bench)?;
        return Ok(None);
    }
    if hat.delegation.is_some() {
        return Err(not_allowed(
            "consent is one's own and is never delegated; leave delegation out".to_owned(),
        ));
    }
    let Some(slot) = slot else {
        return Err(SignOffError::BadStatement(
            "a performer signs for a slot; give slot".to_owned(),
        ));
    };
    let mut slots = bench.case.plan.facets.cast.slots.iter();
    match slots.find(|one| one.id == slot) {
        Some(cast) if cast.person == Some(hat.signer) => Ok(Some(cast)),
        Some(cast) => Err(not_allowed(format!(
            "{} is not cast as {}; consent is one's own",
            bench.name(hat.signer),
            cast.name
        ))),
        None => Err(mismatch(
            "another slot",
            format!("the plan has no slot {slot}"),
        )),
    }
}

/// That the signer holds the role or, where they sign for somebody who does, may.
fn deputised(hat: Hat, bench: &Bench<'_>) -> Result<(), SignOffError> {
    let (name, title) = (bench.name(hat.signer), bench.title(hat.role));
    let holds = bench.holds_role(hat.signer, hat.role);
    if hat.delegation.is_none() {
        let refused = || not_allowed(format!("{name} does not hold the role {title}"));
        return holds.then_some(()).ok_or_else(refused);
    }
    if holds {
        return Err(not_allowed(format!(
            "{name} holds the role {title} and signs in their own name; leave delegation out"
        )));
    }
    let Some(delegation) = bench.delegation(hat) else {
        return Err(not_allowed(format!("nobody let {name} sign as {title}")));
    };
    let say = |person| bench.name(person);
    match delegation::refusal(bench.case, delegation, bench.now, bench.now, say) {
        Some(reason) => Err(not_allowed(reason.trim_end_matches('.').to_owned())),
        None => Ok(()),
    }
}

/// That a sign-off on paper was seen by somebody with a hat on this production.
pub(crate) fn witnessed(ink: Option<&Ink>, bench: &Bench<'_>) -> Result<(), SignOffError> {
    let Some(ink) = ink else {
        return Ok(());
    };
    let member = bench.member(ink.witness);
    if member.is_none_or(|member| member.roles.is_empty()) {
        return Err(not_allowed(format!(
            "{} holds no role on this production, and so cannot be a witness",
            bench.name(ink.witness)
        )));
    }
    Ok(())
}

/// That the signer holds the certificates their role asks for.
pub(crate) fn qualified(
    signer: PersonId,
    bench: &Bench<'_>,
    policy: &RolePolicy,
) -> Result<(), SignOffError> {
    let plan = &bench.case.plan;
    let missing = match bench.member(signer) {
        Some(member) => certificates::missing(
            member,
            &policy.certificates,
            plan.gag,
            plan.revision,
            bench.today,
            plan.facets.setting.day,
        ),
        // A performer need not be a member; a role that asks for certificates cannot do without.
        None if policy.certificates.is_empty() => Vec::new(),
        None => vec!["no certificates are on record".to_owned()],
    };
    if missing.is_empty() {
        return Ok(());
    }
    let (name, title) = (bench.name(signer), &policy.title);
    Err(not_allowed(format!(
        "{name} needs a certificate to sign as {title}: {}",
        missing.join("; ")
    )))
}

/// That the signer has not signed under a hat that the policy keeps apart from this one.
fn apart(
    statement: &Statement,
    bench: &Bench<'_>,
    slot: Option<&Slot>,
) -> Result<(), SignOffError> {
    for pair in &bench.case.policy.separate {
        let other = match pair {
            [one, other] if *one == statement.role => *other,
            [other, one] if *one == statement.role => *other,
            _ => continue,
        };
        if stands(bench, other, statement.signer) {
            let titles = [bench.title(statement.role), bench.title(other)];
            let what = slot.map_or_else(String::new, |slot| format!(" in {}", slot.name));
            return Err(not_allowed(format!(
                "{} has signed as {}; the policy keeps {} apart, so someone else must sign{what}",
                bench.name(statement.signer),
                titles[1],
                words::list(&titles)
            )));
        }
    }
    Ok(())
}

/// Whether that person's sign-off stands under a role.
fn stands(bench: &Bench<'_>, role: Role, signer: PersonId) -> bool {
    let Some(policy) = bench.role(role) else {
        return false;
    };
    let slots = &bench.case.plan.facets.cast.slots;
    let places: Vec<Option<&Slot>> = match role {
        Role::Performer => slots
            .iter()
            .filter(|slot| slot.person == Some(signer))
            .map(Some)
            .collect(),
        _ => vec![None],
    };
    places.into_iter().any(|slot| {
        let found = standing(
            bench,
            &Needed {
                policy,
                slot,
                because: String::new(),
            },
        );
        found.signer == Some(signer)
            && matches!(found.state, RoleState::Standing | RoleState::Conditional)
    })
}

#[cfg(test)]
#[path = "tests/door.rs"]
mod tests;
