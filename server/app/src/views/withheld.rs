//! What a verdict tells of a body: its reasons name masses, measurements, ages and medical dates. Where
//! an answer leaves the one page that is judged afresh on every phone (on paper, in a list of candidates),
//! readers who may not read such data get how each requirement stands and not why. Must not judge.

use gagwright_casting::{Requirement, Verdict};
use gagwright_clearance::{BlockKind, Clearance, case::DayBlockKind};

use crate::{commands::Actor, permissions::Permission};

/// What stands in a withheld reason's place.
pub const WITHHELD: &str = "reason withheld: personal";

/// The permission that a requirement's reason needs; none where it tells nothing of a body.
fn needed(requirement: &Requirement) -> Option<Permission> {
    match requirement {
        Requirement::Measurement { .. }
        | Requirement::KittedMass { .. }
        | Requirement::Age { .. }
        | Requirement::Rest { .. } => Some(Permission::ReadPersonal),
        Requirement::MedicalClearance | Requirement::DailyExposure { .. } => {
            Some(Permission::ReadMedical)
        }
        Requirement::Skill { .. }
        | Requirement::Certificate { .. }
        | Requirement::Availability
        | Requirement::Consent => None,
    }
}

/// Withholds the reasons that this reader may not read, and gives them for whoever repeated them. How
/// each requirement stands, and what would cure it, stay. Everyone may read all of their own.
pub fn reasons(reader: &Actor, verdict: &mut Verdict) -> Vec<String> {
    if verdict.person == reader.person {
        return Vec::new();
    }
    hidden(verdict, |permission| !reader.may(permission))
}

fn hidden(verdict: &mut Verdict, from: impl Fn(Permission) -> bool) -> Vec<String> {
    verdict
        .findings
        .iter_mut()
        .filter(|finding| needed(&finding.requirement).is_some_and(&from))
        .map(|finding| std::mem::replace(&mut finding.reason, WITHHELD.to_owned()))
        .collect()
}

/// Withholds them in a whole clearance: in its verdicts, and in all that repeats them.
pub fn in_clearance(reader: &Actor, judged: &mut Clearance) {
    throughout(judged, |verdict| reasons(reader, verdict));
}

/// Withholds every one of them, for what is written down and shown to whoever comes.
pub fn from_everyone(judged: &mut Clearance) {
    throughout(judged, |verdict| hidden(verdict, |_| true));
    // Who is stood down, and by whose look, is the performer's to have erased.
    for block in judged.day.blocks.iter_mut().chain(&mut judged.go.why_not) {
        if matches!(block.kind, DayBlockKind::StoodDown | DayBlockKind::Look) {
            block.reason = WITHHELD.to_owned();
        }
    }
}

fn throughout(judged: &mut Clearance, mut hide: impl FnMut(&mut Verdict) -> Vec<String>) {
    let mut told = Vec::new();
    for slot in &mut judged.slots {
        if let Some(verdict) = &mut slot.verdict {
            let about = slot.slot.to_string();
            told.extend(
                hide(verdict)
                    .into_iter()
                    .map(|reason| (about.clone(), reason)),
            );
        }
    }
    told.retain(|(_, reason)| !reason.is_empty());
    // A reason may begin as a shorter one does.
    told.sort_by_key(|(_, reason)| std::cmp::Reverse(reason.len()));
    let blocks = judged.blocks.iter_mut();
    let blocks = blocks
        .filter(|block| block.kind == BlockKind::Performer)
        .map(|block| (&block.about, &mut block.reason));
    let day = judged.day.blocks.iter_mut().chain(&mut judged.go.why_not);
    let day = day.map(|block| (&block.about, &mut block.reason));
    for (about, said) in blocks.chain(day) {
        for (_, reason) in told.iter().filter(|(slot, _)| slot == about) {
            *said = said.replace(reason.trim_end_matches('.'), WITHHELD);
        }
    }
    // What voided an open go is sentences alone.
    let open = judged.go.open.iter_mut().flat_map(|open| &mut open.lapsed);
    for said in open {
        for (_, reason) in &told {
            *said = said.replace(reason.trim_end_matches('.'), WITHHELD);
        }
    }
}
