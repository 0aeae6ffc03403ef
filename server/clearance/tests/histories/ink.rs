//! Makes the JWS of a mark, each once: ES256 is deterministic here, so the same words with the same key
//! are the same text, and only making it takes time.

use std::{
    collections::BTreeMap,
    hash::{DefaultHasher, Hash, Hasher},
    sync::RwLock,
};

use gagwright_casting::{GagId, ProductionId};
use gagwright_clearance::{
    Policy, Role, SignOffId, Statement,
    day_mark::{self, DayStatement, place_hash},
    plan::FacetHashes,
    signoff,
};

use crate::{
    clock,
    contents::{Content, PLACES, slot},
    people::{self, id},
    story::Mark,
};

pub const GAG: u128 = 1;

pub fn gag() -> GagId {
    GagId(id(3, GAG))
}

pub fn production() -> ProductionId {
    ProductionId(id(4, 1))
}

/// The same mark has the same id, and no other has it.
pub fn mark_id(mark: &Mark) -> SignOffId {
    let mut hasher = DefaultHasher::new();
    mark.hash(&mut hasher);
    SignOffId(id(6, hasher.finish().into()))
}

/// The condition that a conditional mark sets.
pub fn condition() -> String {
    "ab".repeat(32)
}

pub struct Signing<'a> {
    pub contents: &'a [Content],
    pub policy: &'a Policy,
    pub made: RwLock<BTreeMap<Mark, String>>,
}

impl Signing<'_> {
    /// The text of a mark; `deputy` is the id of the delegation it names.
    pub fn jws(&self, mark: &Mark) -> String {
        if let Some(made) = self.made.read().unwrap().get(mark) {
            return made.clone();
        }
        let signer = if mark.forged {
            (mark.by + 1) % people::COMPANY.len()
        } else {
            mark.by
        };
        let key = people::key(signer);
        let made = match mark.day {
            None => signoff::sign(&self.plan(mark), &key).unwrap(),
            Some((day, place)) => day_mark::sign(&self.day(mark, day, place), &key).unwrap(),
        };
        self.made
            .write()
            .unwrap()
            .insert(mark.clone(), made.clone());
        made
    }

    fn covered(&self, mark: &Mark) -> FacetHashes {
        let covers = &self.policy.role(mark.role).unwrap().covers;
        let mut hashes = self.contents[mark.content].hashes.clone();
        hashes.retain(|facet, _| covers.contains(facet));
        hashes
    }

    fn words(&self, mark: &Mark) -> String {
        let words = match mark.day {
            None => self.policy.role(mark.role).map(|one| &one.attestation),
            Some(_) => self.policy.day_attestation(mark.role),
        };
        let words = words.map_or("none", |one| one.id.as_str());
        if mark.old_words {
            format!("{words}/old")
        } else {
            words.to_owned()
        }
    }

    fn plan(&self, mark: &Mark) -> Statement {
        Statement {
            kind: Statement::KIND.to_owned(),
            id: mark_id(mark),
            production: production(),
            gag: gag(),
            revision: mark.revision,
            plan_digest: self.contents[mark.content].digest.clone(),
            technique: "test-fall".to_owned(),
            facets: self.covered(mark),
            role: mark.role,
            slot: mark.slot.map(slot),
            decision: mark.decision(),
            conditions: if mark.conditional {
                vec![condition()]
            } else {
                Vec::new()
            },
            reason: None,
            attestation: self.words(mark),
            language: None,
            delegation: mark.deputy.map(crate::world::record),
            ink: None,
            signer: people::person(mark.by),
            device: people::device(mark.by),
            signed_at: clock::moment(mark.signed_at),
            good_until: mark.good_until.map(clock::moment),
            mark: None,
        }
    }

    fn day(&self, mark: &Mark, day: i64, place: usize) -> DayStatement {
        let content = &self.contents[mark.content];
        let cast = content.slots.iter();
        DayStatement {
            kind: DayStatement::KIND.to_owned(),
            id: mark_id(mark),
            production: production(),
            gag: gag(),
            revision: mark.revision,
            plan_digest: content.digest.clone(),
            facets: self.covered(mark),
            role: mark.role,
            slot: mark.slot.map(slot),
            delegation: mark.deputy.map(crate::world::record),
            decision: mark.decision(),
            attestation: self.words(mark),
            day: clock::date(day),
            place: place_hash(PLACES[place]),
            serials: vec![content.serial.to_owned()],
            cast: cast
                .filter_map(|(number, who)| Some((slot(*number), people::person((*who)?))))
                .collect(),
            readings: Vec::new(),
            signer: people::person(mark.by),
            device: people::device(mark.by),
            signed_at: clock::moment(mark.signed_at),
            good_until: clock::moment(mark.good_until.unwrap_or(mark.signed_at + 18 * 60)),
            mark: None,
            ink: None,
        }
    }
}

/// Roles of the plan in these histories that sign the day.
pub fn signs_day(policy: &Policy, role: Role) -> bool {
    policy.day_attestation(role).is_some()
}
