//! What a verdict tells of a body: its reasons name masses, measurements, ages and medical dates. Where
//! an answer leaves the one page that is judged afresh on every phone (on paper, in a list of candidates),
//! readers who may not read such data get how each requirement stands and not why. Must not judge.

use gagwright_casting::{Requirement, Verdict};
use gagwright_clearance::{BlockKind, Clearance};

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
    verdict
        .findings
        .iter_mut()
        .filter(|finding| needed(&finding.requirement).is_some_and(|one| !reader.may(one)))
        .map(|finding| std::mem::replace(&mut finding.reason, WITHHELD.to_owned()))
        .collect()
}

/// Withholds them in a whole clearance: in its verdicts, and in the blocks that repeat them.
pub fn in_clearance(reader: &Actor, judged: &mut Clearance) {
    for slot in &mut judged.slots {
        let Some(verdict) = &mut slot.verdict else {
            continue;
        };
        let told = reasons(reader, verdict);
        let about = slot.slot.to_string();
        for block in &mut judged.blocks {
            if block.kind != BlockKind::Performer || block.about != about {
                continue;
            }
            for reason in &told {
                block.reason = block.reason.replace(reason.trim_end_matches('.'), WITHHELD);
            }
        }
    }
}
