//! What the judge need not work out again: the same gag is judged for every list, page and packet. Marks
//! whose signatures verified are kept, for checking one is by far the dearest step; the hashes of a plan's
//! contents; and what a policy's own check found. A mark gets in here in one way, by verifying, and stands
//! only under the very key it was verified with. What any of it means is not known here.

use std::{
    collections::{BTreeMap, VecDeque},
    sync::{Arc, PoisonError, RwLock},
};

use crate::{
    canonical::{self, CanonicalError},
    day_mark::{self, DayStatement},
    jws,
    plan::{FacetHashes, Facets},
    policy::Policy,
    signoff::{PublicKey, SignOffError, Statement},
};

/// What a signed text can be read as.
trait Signed: Sized + PartialEq {
    fn read_unverified(jws: &str) -> Result<Self, SignOffError>;
    fn verify(jws: &str, key: &PublicKey) -> Result<Self, SignOffError>;
}

impl Signed for Statement {
    fn read_unverified(jws: &str) -> Result<Self, SignOffError> {
        jws::read_unverified(jws)
    }

    fn verify(jws: &str, key: &PublicKey) -> Result<Self, SignOffError> {
        jws::verify(jws, key)
    }
}

impl Signed for DayStatement {
    fn read_unverified(jws: &str) -> Result<Self, SignOffError> {
        day_mark::read_unverified(jws)
    }

    fn verify(jws: &str, key: &PublicKey) -> Result<Self, SignOffError> {
        day_mark::verify(jws, key)
    }
}

/// Contents and policies kept; the oldest goes first. A production has some forty gags.
const LATELY: usize = 64;

/// Remembers what was judged before: which marks verified and with which key, and what contents hash to.
/// It can only ever save the judge work that it has done: handed to [`crate::clearance_remembering`], it
/// changes no answer.
#[derive(Debug)]
pub struct JudgeMemory {
    plan: Kept<Statement>,
    day: Kept<DayStatement>,
    contents: Lately<Facets, Hashed>,
    policies: Lately<Policy, Vec<String>>,
}

/// The hashes of a plan's contents.
#[derive(Debug)]
pub(crate) struct Hashed {
    pub facets: FacetHashes,
    pub digest: String,
}

impl Default for JudgeMemory {
    /// Room for some thousands of marks: several productions' worth.
    fn default() -> JudgeMemory {
        JudgeMemory::holding(8 * 1024 * 1024)
    }
}

impl JudgeMemory {
    /// Room for so many bytes of signed text, plan and day each. When it is full it begins anew.
    pub fn holding(bytes: usize) -> JudgeMemory {
        JudgeMemory {
            plan: Kept::holding(bytes),
            day: Kept::holding(bytes),
            contents: Lately::default(),
            policies: Lately::default(),
        }
    }

    /// How many marks are kept.
    pub fn marks(&self) -> usize {
        self.plan.texts() + self.day.texts()
    }

    /// What contents hash to.
    pub(crate) fn hashes(&self, facets: &Facets) -> Result<Arc<Hashed>, CanonicalError> {
        self.contents.find(facets, |facets| {
            let (facets, digest) = canonical::hashes_and_digest(facets)?;
            Ok(Hashed { facets, digest })
        })
    }

    /// Everything in a policy that does not fit together.
    pub(crate) fn problems(&self, policy: &Policy) -> Arc<Vec<String>> {
        let found: Result<_, std::convert::Infallible> =
            self.policies.find(policy, |policy| Ok(policy.problems()));
        found.unwrap_or_else(|never| match never {})
    }

    /// What a plan sign-off claims. Never to decide by.
    pub(crate) fn claimed(&self, jws: &str) -> Option<Arc<Statement>> {
        self.plan.claimed(jws)
    }

    /// What a plan sign-off states, if its signature holds with this key. Asked before there is a case, by
    /// whoever has time for it, it spares those who judge.
    pub fn verified(&self, jws: &str, key: &PublicKey) -> Option<Arc<Statement>> {
        self.plan.verified(jws, key)
    }

    /// What a mark for the day claims. Never to decide by.
    pub(crate) fn claimed_day(&self, jws: &str) -> Option<Arc<DayStatement>> {
        self.day.claimed(jws)
    }

    /// What a mark for the day states, if its signature holds with this key.
    pub(crate) fn verified_day(&self, jws: &str, key: &PublicKey) -> Option<Arc<DayStatement>> {
        self.day.verified(jws, key)
    }
}

/// Texts of one kind, each with the key that it verified with and what it says.
#[derive(Debug)]
struct Kept<T> {
    most: usize,
    texts: RwLock<Texts<T>>,
}

#[derive(Debug)]
struct Texts<T> {
    bytes: usize,
    by_text: BTreeMap<String, (PublicKey, Arc<T>)>,
}

impl<T: Signed> Kept<T> {
    fn holding(most: usize) -> Kept<T> {
        Kept {
            most,
            texts: RwLock::new(Texts {
                bytes: 0,
                by_text: BTreeMap::new(),
            }),
        }
    }

    // A thread that panicked while holding the lock left whole entries behind.
    fn texts(&self) -> usize {
        let texts = self.texts.read().unwrap_or_else(PoisonError::into_inner);
        texts.by_text.len()
    }

    fn claimed(&self, jws: &str) -> Option<Arc<T>> {
        let texts = self.texts.read().unwrap_or_else(PoisonError::into_inner);
        if let Some((_, statement)) = texts.by_text.get(jws) {
            return Some(statement.clone());
        }
        drop(texts);
        T::read_unverified(jws).ok().map(Arc::new)
    }

    fn verified(&self, jws: &str, key: &PublicKey) -> Option<Arc<T>> {
        let texts = self.texts.read().unwrap_or_else(PoisonError::into_inner);
        if let Some((with, statement)) = texts.by_text.get(jws)
            && with == key
        {
            return Some(statement.clone());
        }
        drop(texts);
        // What does not verify is not kept: it is rare, and checked again whenever it is met.
        let statement = Arc::new(T::verify(jws, key).ok()?);
        let mut texts = self.texts.write().unwrap_or_else(PoisonError::into_inner);
        if texts.bytes + jws.len() > self.most {
            texts.by_text.clear();
            texts.bytes = 0;
        }
        let kept = (key.clone(), statement.clone());
        if texts.by_text.insert(jws.to_owned(), kept).is_none() {
            texts.bytes += jws.len();
        }
        Some(statement)
    }
}

/// What was worked out lately from something, which is held whole against what is asked about.
#[derive(Debug)]
struct Lately<K, V>(RwLock<VecDeque<(K, Arc<V>)>>);

impl<K, V> Default for Lately<K, V> {
    fn default() -> Lately<K, V> {
        Lately(RwLock::default())
    }
}

impl<K: Clone + PartialEq, V> Lately<K, V> {
    fn find<E>(&self, key: &K, work: impl Fn(&K) -> Result<V, E>) -> Result<Arc<V>, E> {
        let kept = self.0.read().unwrap_or_else(PoisonError::into_inner);
        if let Some(one) = kept.iter().find(|one| one.0 == *key) {
            return Ok(one.1.clone());
        }
        drop(kept);
        let found = Arc::new(work(key)?);
        let mut kept = self.0.write().unwrap_or_else(PoisonError::into_inner);
        kept.truncate(LATELY - 1);
        kept.push_front((key.clone(), found.clone()));
        Ok(found)
    }
}

#[cfg(test)]
#[path = "../tests/memory.rs"]
mod tests;
