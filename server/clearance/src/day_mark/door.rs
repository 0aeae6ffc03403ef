//! The door for marks of the day: whether one may be recorded at all. What is recorded is judged again,
//! from itself, whenever the gag is.

use jiff::Timestamp;

use super::{DayStatement, cast, read_unverified, serials, verify};
use crate::{
    canonical::{facet_hashes, signed_content},
    case::Case,
    door::{self, mismatch},
    drawing,
    judge::{Bench, JudgeMemory},
    policy::Role,
    signoff::{Decision, SignOffError},
    words,
};

/// Decides whether a mark for the day may be recorded, and gives what it states. The case must hold the
/// signer's device. Whether its id was used on another gag is for whoever keeps all gags to check.
///
/// # Errors
/// Says what is wrong and, where something can be done, what.
pub fn accept(jws: &str, case: &Case, now: Timestamp) -> Result<DayStatement, SignOffError> {
    let claimed = read_unverified(jws)?;
    let device = door::usable_device(case, claimed.device)?;
    let statement = verify(jws, &device.key)?;
    if let Some(problem) = statement.ink_problem() {
        return Err(SignOffError::BadStatement(problem.to_owned()));
    }
    door::owned(device, statement.hand())?;
    let used = case
        .day
        .signoffs
        .iter()
        .any(|one| read_unverified(&one.jws).is_ok_and(|earlier| earlier.id == statement.id));
    if used {
        return Err(SignOffError::NotAllowed(format!(
            "the mark {} is recorded already; a new one needs a new id",
            statement.id
        )));
    }
    same_content(&statement, case)?;
    wording(&statement, case)?;
    times(&statement, case, now)?;
    let hashes = facet_hashes(&case.plan.facets).unwrap_or_default();
    let memory = JudgeMemory::default();
    let bench = Bench::new(case, now, hashes, &memory);
    door::witnessed(statement.ink.as_ref(), &bench)?;
    door::place(statement.hat(), statement.slot, &bench)?;
    // Saying no must be easier than saying yes: a decline asks for the hat and nothing more.
    if statement.decision != Decision::Decline {
        qualified(&statement, &bench)?;
        apart(&statement, case)?;
    }
    Ok(statement)
}

/// That the signer does not perform, and has not signed this day, under a hat that the policy keeps apart
/// from this one.
fn apart(statement: &DayStatement, case: &Case) -> Result<(), SignOffError> {
    let signed = case.day.signoffs.iter();
    let signed = signed.filter_map(|one| read_unverified(&one.jws).ok());
    let worn = signed
        .filter(|one| one.signer == statement.signer && one.day == statement.day)
        .filter(|one| one.decision == Decision::Approve)
        .map(|one| one.role)
        .chain(case.plan.casts(statement.signer).then_some(Role::Performer))
        .find(|other| case.policy.keeps_apart(*other, statement.role));
    let Some(other) = worn else {
        return Ok(());
    };
    let title = |role| case.policy.role(role).map_or(role.name(), |one| &one.title);
    Err(SignOffError::NotAllowed(format!(
        "the policy keeps {} and {} apart, so someone else must sign the day as {}",
        title(other),
        title(statement.role),
        title(statement.role)
    )))
}

pub(super) fn not_asked(role: Role) -> SignOffError {
    SignOffError::NotAllowed(format!(
        "the role {} does not sign the day on this production",
        role.name()
    ))
}

/// The very gag, revision, equipment and cast that are current.
fn same_content(statement: &DayStatement, case: &Case) -> Result<(), SignOffError> {
    let plan = &case.plan;
    door::same_gag(statement.production, statement.gag, case)?;
    let policy = case.policy.role(statement.role);
    let policy = policy.ok_or_else(|| not_asked(statement.role))?;
    if door::is_late_no(statement.decision, statement.revision, case) {
        return Ok(());
    }
    let (digest, covered) = signed_content(&plan.facets, &policy.covers)?;
    if statement.revision != plan.revision || statement.plan_digest != digest {
        return Err(door::another_revision(statement.revision, case));
    }
    if statement.facets != covered {
        let detail = format!(
            "{} must sign exactly for what they answer for",
            policy.title
        );
        return Err(mismatch("other facets", detail));
    }
    if statement.serials != serials(case) {
        let detail = "the serial numbers signed are not the plan's, sorted".to_owned();
        return Err(mismatch("other equipment", detail));
    }
    if statement.cast != cast(case) {
        let detail = "the people signed for are not those cast".to_owned();
        return Err(mismatch("another cast", detail));
    }
    for leaned in &statement.readings {
        let known = case.readings.iter().find(|one| one.id == leaned.id);
        if known.is_some_and(|known| known.kind != leaned.kind || known.value != leaned.value) {
            let detail = format!("the reading {} says something else", leaned.id);
            return Err(mismatch("another reading", detail));
        }
    }
    Ok(())
}

fn wording(statement: &DayStatement, case: &Case) -> Result<(), SignOffError> {
    let asked = case
        .policy
        .day_attestation(statement.role)
        .ok_or_else(|| not_asked(statement.role))?;
    if statement.attestation != asked.id {
        let detail = format!("{}, but {} is current", statement.attestation, asked.id);
        return Err(mismatch("another attestation", detail));
    }
    let bad = |problem: &str| Err(SignOffError::BadStatement(problem.to_owned()));
    door::drawn(statement.mark.as_deref())?;
    if !drawing::is_hash(&statement.place) {
        return bad("place must be the SHA-256 of the place's plain spelling, in lower-case hex");
    }
    match statement.decision {
        Decision::ApproveWithConditions => {
            bad("a day is signed or declined; conditions belong to the plan")
        }
        Decision::Approve | Decision::Decline => Ok(()),
    }
}

/// The device's clock is never trusted for order, but it must be possible.
fn times(statement: &DayStatement, case: &Case, now: Timestamp) -> Result<(), SignOffError> {
    let signed = statement.signed_at;
    let bad = |problem: String| Err(SignOffError::BadStatement(problem));
    door::not_ahead(signed, now)?;
    let (from, until) = super::span(statement.day);
    if signed < from || signed >= until {
        return bad(format!(
            "a day is signed on the day; {} was not {}",
            words::minute(signed),
            statement.day
        ));
    }
    let hours = case.policy.day.good_for_hours;
    let longest = jiff::SignedDuration::from_hours(hours.into());
    let lasts = statement.good_until.duration_since(signed);
    if lasts.is_negative() || lasts.is_zero() || lasts > longest || statement.good_until > until {
        return bad(format!(
            "good_until must be at most {hours} hours after signed_at and not outlast the day"
        ));
    }
    Ok(())
}

fn qualified(statement: &DayStatement, bench: &Bench<'_>) -> Result<(), SignOffError> {
    match bench.case.policy.role(statement.role) {
        Some(_) if !bench.needs_certificates(statement.hat()) => Ok(()),
        Some(policy) => door::qualified(statement.signer, bench, policy),
        None => Err(not_asked(statement.role)),
    }
}
