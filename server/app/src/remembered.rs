//! The judge with techniques that remember what they answered, and with the signatures that it has verified.
//! An assessment follows from its inputs alone and costs milliseconds, and the same plan is judged for
//! every list, page and packet. Knows nothing of what an assessment means.

use std::{
    collections::HashMap,
    sync::{LazyLock, Mutex, OnceLock, PoisonError},
};

use gagwright_clearance::{
    Case, Clearance, JudgeMemory, Opening, SignOffError, Statement, clearance_remembering,
    signoff::{self, PublicKey},
};
use gagwright_mechanics::{
    AssessError, Assessment, FigureDescription, Inputs, Parameter, SetLimit, Technique, techniques,
};
use jiff::Timestamp;

/// Answers kept for each technique. A production has some forty gags; an answer with its plots is about
/// 30 kB.
const KEPT: usize = 96;

static MEMORY: LazyLock<JudgeMemory> = LazyLock::new(JudgeMemory::default);

/// Judges a case at a moment, as [`gagwright_clearance::clearance()`] does.
pub fn clearance(case: &Case, now: Timestamp) -> Clearance {
    clearance_remembering(case, now, find, &MEMORY)
}

/// Decides whether a sign-off may be recorded, as [`signoff::accept`] does.
///
/// # Errors
/// As there.
pub fn accept(
    jws: &str,
    openings: &[Opening],
    case: &Case,
    now: Timestamp,
) -> Result<Statement, SignOffError> {
    signoff::accept_remembering(jws, openings, case, now, &MEMORY)
}

/// Checks a signature ahead of those who will ask for it while everybody waits for them. It decides
/// nothing: they ask for the same text under the key that is registered then.
pub fn look_at(jws: &str, key: &PublicKey) {
    MEMORY.verified(jws, key);
}

/// A technique that answers what it answered before to the same inputs.
struct Remembering {
    technique: &'static dyn Technique,
    answers: Mutex<HashMap<String, Assessment>>,
}

/// The technique of that name, which remembers what it answered.
pub(crate) fn find(name: &str) -> Option<&'static dyn Technique> {
    static ALL: OnceLock<Vec<Remembering>> = OnceLock::new();
    ALL.get_or_init(|| {
        let remembering = |&technique| Remembering {
            technique,
            answers: Mutex::default(),
        };
        techniques().iter().map(remembering).collect()
    })
    .iter()
    .find(|one| one.technique.name() == name)
    .map(|one| one as &dyn Technique)
}

impl Technique for Remembering {
    fn name(&self) -> &'static str {
        self.technique.name()
    }

    fn title(&self) -> &'static str {
        self.technique.title()
    }

    fn summary(&self) -> &'static str {
        self.technique.summary()
    }

    fn parameters(&self) -> &'static [Parameter] {
        self.technique.parameters()
    }

    fn figures(&self) -> &'static [FigureDescription] {
        self.technique.figures()
    }

    /// Refusals are not kept: they are cheap, and numbers that JSON cannot write only ever lead to one.
    fn assess(&self, inputs: &Inputs) -> Result<Assessment, AssessError> {
        self.assess_set(inputs, &[])
    }

    fn assess_set(&self, inputs: &Inputs, own: &[SetLimit]) -> Result<Assessment, AssessError> {
        let Ok(key) = serde_json::to_string(&(inputs, own)) else {
            return self.technique.assess_set(inputs, own);
        };
        let known = |answers: &HashMap<_, Assessment>| answers.get(&key).cloned();
        // A thread that panicked while holding the lock left whole answers behind.
        let kept = known(&self.answers.lock().unwrap_or_else(PoisonError::into_inner));
        if let Some(answer) = kept {
            return Ok(answer);
        }
        let answer = self.technique.assess_set(inputs, own)?;
        let mut answers = self.answers.lock().unwrap_or_else(PoisonError::into_inner);
        if answers.len() >= KEPT {
            answers.clear();
        }
        answers.insert(key, answer.clone());
        Ok(answer)
    }
}

#[cfg(test)]
mod tests {
    use gagwright_mechanics::InputValue;

    use super::*;

    #[test]
    fn what_is_remembered_is_what_the_technique_says() {
        for technique in techniques() {
            let remembering = find(technique.name()).expect("every technique is found");
            let mut inputs = Inputs::default();
            for value in [61.0, 74.5, 61.0] {
                let value = InputValue::Number {
                    value,
                    tolerance: None,
                };
                inputs.0.insert("performer_mass".into(), value);
                let (ours, theirs) = (remembering.assess(&inputs), technique.assess(&inputs));
                assert_eq!(ours, theirs, "{}", technique.name());
                assert_eq!(remembering.assess(&inputs), theirs, "asked again");
            }
        }
        assert!(find("levitation").is_none());
    }

    #[test]
    fn a_refusal_is_given_every_time() {
        let remembering = find("high-fall").expect("there is one");
        let value = InputValue::Number {
            value: f64::NAN,
            tolerance: None,
        };
        let inputs = Inputs([("drop_height".to_owned(), value)].into());
        assert!(remembering.assess(&inputs).is_err());
        assert!(remembering.assess(&inputs).is_err());
    }
}
