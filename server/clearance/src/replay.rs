//! Who knew what when: folds the leaves of a trail, with the parts kept beside them, into the case of any
//! gag as it stood after any leaf. It uses no leaf that came later and no database, and where a part was
//! erased or withheld it says what cannot be known any more instead of guessing.

mod day;
mod day_then;
mod kinds;
mod rebuilt;

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{GagId, Person, PersonId, ProductionId};
use gagwright_trail::Entry;
use jiff::Timestamp;
use serde::de::DeserializeOwned;
use serde_json::Value;

pub use rebuilt::Rebuilt;

use crate::{
    case::{Hold, Reading, RehearsalRun},
    delegation::Delegation,
    ids::DeviceId,
    plan::Plan,
    policy::{Policy, Role},
    resolving::Resolution,
    signoff::{Device, SignOff},
    test_shot::TestShot,
};

/// The name of the part that holds everything the roster says about somebody.
pub fn person_part(person: PersonId) -> String {
    format!("person:{person}")
}

/// The name of the part that holds the skills somebody used on a day.
pub fn used_part(person: PersonId) -> String {
    format!("used:{person}")
}

/// What is left of somebody on the roster once they are erased: an id that leaves and plans name.
pub fn erased_person(person: PersonId) -> Person {
    let id = person.0.simple().to_string();
    let code = format!("erased-{}", id.get(20..).unwrap_or_default());
    Person::named(person, code, "Erased person")
}

/// A leaf that cannot have been written by a server of this kind.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("leaf {leaf}, {kind}: {problem}")]
pub struct ReplayError {
    /// Which.
    pub leaf: u64,
    /// Its kind.
    pub kind: String,
    /// What is wrong.
    pub problem: String,
}

/// Something that was written down, or that was and cannot be read any more.
#[derive(Clone, Debug, PartialEq)]
pub enum Kept<T> {
    /// It is known.
    Known(T),
    /// It was erased from this leaf, or left out of the file.
    Gone {
        /// The leaf.
        leaf: u64,
    },
}

impl<T> Kept<T> {
    /// It, where it is known.
    pub fn known(&self) -> Option<&T> {
        match self {
            Kept::Known(known) => Some(known),
            Kept::Gone { .. } => None,
        }
    }
}

/// What had been written about one gag.
#[derive(Clone, Debug, PartialEq)]
pub struct GagThen {
    /// Its code.
    pub code: String,
    /// Its title.
    pub title: Kept<String>,
    /// The number of the current revision.
    pub revision: u32,
    /// The current revision.
    pub plan: Kept<Plan>,
    /// The revisions before it.
    pub earlier: Vec<Kept<Plan>>,
    /// Declines that were resolved, in the order they were received.
    pub resolutions: Vec<Resolution>,
    /// Sign-offs in the order they were received.
    pub signoffs: Vec<SignOff>,
    /// Readings in the order they were received.
    pub readings: Vec<Reading>,
    /// Runs in the order they were received.
    pub runs: Vec<RehearsalRun>,
    /// Test shots in the order they were received.
    pub test_shots: Vec<TestShot>,
    /// Test shots whose settings cannot be read any more.
    pub lost_shots: usize,
}

/// Everything that the leaves so far said.
#[derive(Clone, Debug, Default)]
pub struct Replay {
    production: Option<ProductionId>,
    size: u64,
    at: Option<Timestamp>,
    policy: Option<Kept<Policy>>,
    people: BTreeMap<PersonId, Kept<Person>>,
    roles: BTreeMap<PersonId, BTreeSet<Role>>,
    devices: BTreeMap<DeviceId, Device>,
    holds: Vec<(u64, Hold)>,
    delegations: Vec<Delegation>,
    gags: BTreeMap<GagId, GagThen>,
    day: day::DayThen,
    /// Leaves of a kind that this program does not know.
    strange: Vec<(u64, String)>,
    /// Parts that the leaves commit to and that are not here.
    gone: BTreeSet<u64>,
}

impl Replay {
    /// Before the first leaf.
    pub fn new() -> Replay {
        Replay::default()
    }

    /// Leaves so far.
    pub fn size(&self) -> u64 {
        self.size
    }

    /// When the last of them was received.
    pub fn at(&self) -> Option<Timestamp> {
        self.at
    }

    /// What had been written about a gag.
    pub fn gag(&self, gag: GagId) -> Option<&GagThen> {
        self.gags.get(&gag)
    }

    /// Every gag by its id.
    pub fn gags(&self) -> impl Iterator<Item = (GagId, &GagThen)> {
        self.gags.iter().map(|(id, gag)| (*id, gag))
    }

    /// A gag by its code.
    pub fn by_code(&self, code: &str) -> Option<GagId> {
        self.gags
            .iter()
            .find(|(_, gag)| gag.code == code)
            .map(|(id, _)| *id)
    }

    /// Names of those on the roster, while they are known.
    pub fn names(&self) -> BTreeMap<PersonId, String> {
        let name = |(id, kept): (&PersonId, &Kept<Person>)| Some((*id, kept.known()?.name.clone()));
        self.people.iter().filter_map(name).collect()
    }

    /// The kinds of leaf met that this program does not know.
    pub fn strange(&self) -> impl Iterator<Item = &str> {
        self.strange.iter().map(|(_, kind)| kind.as_str())
    }

    /// Takes in the next leaf with the parts that are kept beside it. The caller has checked that parts are
    /// what the leaf commits to.
    ///
    /// # Errors
    /// When leaves are not in order, or a leaf does not say what its kind must.
    pub fn add(
        &mut self,
        entry: &Entry,
        said: &BTreeMap<String, Value>,
    ) -> Result<(), ReplayError> {
        let leaf = Leaf { entry, said };
        if entry.index != self.size {
            return Err(leaf.wrong(format!("leaf {} was expected here", self.size)));
        }
        let at: Timestamp = leaf.parsed("at", &entry.at)?;
        let production: ProductionId = leaf.parsed("production", &entry.production)?;
        if *self.production.get_or_insert(production) != production {
            return Err(leaf.wrong("it belongs to another production"));
        }
        if entry
            .commitments
            .keys()
            .any(|name| !said.contains_key(name))
        {
            self.gone.insert(entry.index);
        }
        kinds::apply(self, &leaf, at)?;
        self.size += 1;
        self.at = Some(at);
        Ok(())
    }
}

/// A leaf with its parts, being read.
struct Leaf<'a> {
    entry: &'a Entry,
    said: &'a BTreeMap<String, Value>,
}

impl Leaf<'_> {
    fn wrong(&self, problem: impl Into<String>) -> ReplayError {
        ReplayError {
            leaf: self.entry.index,
            kind: self.entry.kind.clone(),
            problem: problem.into(),
        }
    }

    fn parsed<T: std::str::FromStr>(&self, what: &str, text: &str) -> Result<T, ReplayError> {
        text.parse()
            .map_err(|_| self.wrong(format!("{what} \"{text}\" cannot be read")))
    }

    /// A fact that the kind must have.
    fn fact<T: DeserializeOwned>(&self, name: &str) -> Result<T, ReplayError> {
        let value = self.entry.facts.get(name).cloned().unwrap_or(Value::Null);
        serde_json::from_value(value)
            .map_err(|error| self.wrong(format!("the fact {name} cannot be read: {error}")))
    }

    /// Something inside a part; gone when the part is.
    fn part<T: DeserializeOwned>(&self, part: &str, pointer: &str) -> Result<Kept<T>, ReplayError> {
        let Some(whole) = self.said.get(part) else {
            if self.entry.commitments.contains_key(part) {
                return Ok(Kept::Gone {
                    leaf: self.entry.index,
                });
            }
            return Err(self.wrong(format!("it has no part \"{part}\"")));
        };
        let value = whole.pointer(pointer).cloned().unwrap_or(Value::Null);
        serde_json::from_value(value)
            .map(Kept::Known)
            .map_err(|error| {
                self.wrong(format!(
                    "the part \"{part}{pointer}\" cannot be read: {error}"
                ))
            })
    }

    /// A text of the actor's; empty when it is gone.
    fn text(&self, name: &str) -> Result<String, ReplayError> {
        Ok(match self.part("said", &format!("/{name}"))? {
            Kept::Known(text) => text,
            Kept::Gone { .. } => String::new(),
        })
    }

    fn gag(&self) -> Result<GagId, ReplayError> {
        match &self.entry.gag {
            Some(gag) => self.parsed("gag", gag),
            None => Err(self.wrong("it is about no gag")),
        }
    }

    fn actor(&self) -> Result<PersonId, ReplayError> {
        match self.maybe_actor()? {
            Some(actor) => Ok(actor),
            None => Err(self.wrong("nobody did it")),
        }
    }

    fn maybe_actor(&self) -> Result<Option<PersonId>, ReplayError> {
        let actor = self.entry.actor.as_deref();
        actor.map(|actor| self.parsed("actor", actor)).transpose()
    }
}

#[cfg(test)]
#[path = "tests/replay.rs"]
mod tests;
