//! What every command leans on: one leaf appended in the command's own transaction, and look-ups that
//! see one production only. A thing of another production is answered exactly as one that never was.

use gagwright_casting::{Person, PersonId, ProductionId};
use gagwright_clearance::{
    Facets, GagId, Hold, HoldId, Policy, canonical, plan::FacetHashes, replay::erased_person,
};
use gagwright_store::{
    Connection, StoreError, gags::GagRow, people::StoredPerson, trail::NewEntry, trail::Part,
};
use jiff::Timestamp;
use serde_json::{Value, json};

use super::{Actor, CommandError, Entropy};

impl From<StoreError> for CommandError {
    fn from(error: StoreError) -> Self {
        CommandError::Store(error)
    }
}

/// A leaf being made ready.
pub(crate) struct Leaf(NewEntry);

/// Told ahead of its arrival by less, a clock is as good as right, s.
const WORTH_TELLING_S: i64 = 60;

impl Leaf {
    /// A leaf for the actor's production. Commands that may run without an actor use
    /// [`Leaf::for_production`].
    pub(crate) fn new(kind: &'static str, now: Timestamp, actor: Option<&Actor>) -> Self {
        let production = actor.map_or(ProductionId(uuid::Uuid::nil()), |actor| actor.production);
        Self::for_production(kind, now, production, actor)
    }

    /// A leaf for a production, with or without somebody acting.
    pub(crate) fn for_production(
        kind: &'static str,
        now: Timestamp,
        production: ProductionId,
        actor: Option<&Actor>,
    ) -> Self {
        let carrier = actor.and_then(|actor| actor.carried_by);
        Self(NewEntry {
            at: now,
            kind: kind.into(),
            production,
            gag: None,
            actor: actor.map(|actor| actor.person),
            facts: carrier
                .map(|carrier| ("carried_by".to_owned(), json!(carrier)))
                .into_iter()
                .collect(),
            parts: Default::default(),
        })
    }

    /// The gag it is about.
    pub(crate) fn about(mut self, gag: GagId) -> Self {
        self.0.gag = Some(gag);
        self
    }

    /// A fact that may stand in the clear for ever: an id, a revision, a hash, a role.
    pub(crate) fn fact(mut self, name: &str, value: Value) -> Self {
        self.0.facts.insert(name.into(), value);
        self
    }

    /// When it happened by the device's clock, which may be wrong: taken as of its arrival at the latest. By how much it
    /// was told ahead of that, which is the least that the clock was ahead, is kept beside it.
    pub(crate) fn happened(mut self, name: &str, told: Timestamp) -> Self {
        let ahead = told.as_second() - self.0.at.as_second();
        if ahead >= WORTH_TELLING_S {
            let ahead = json!(ahead);
            self.0.facts.insert("told_ahead_s".into(), ahead);
        }
        let at = told.min(self.0.at);
        self.fact(name, json!(at))
    }

    /// What the actor said in their own words and what else may not stand in the clear, as the part
    /// `said`: kept beside the leaf, which carries a salted commitment to it, until the actor is erased.
    pub(crate) fn personal(self, value: Value, entropy: Entropy<'_>) -> Self {
        let actor = self.0.actor;
        self.part("said", actor, value, entropy)
    }

    /// A part of its own: what it is called, and whose erasure takes it away.
    pub(crate) fn part(
        mut self,
        name: impl Into<String>,
        about: Option<PersonId>,
        said: Value,
        entropy: Entropy<'_>,
    ) -> Self {
        let mut salt = [0u8; 32];
        entropy(&mut salt);
        let part = Part { about, salt, said };
        self.0.parts.insert(name.into(), part);
        self
    }

    /// Everything the roster says about somebody, as the part `person:` with their id.
    pub(crate) fn person(self, person: &Person, entropy: Entropy<'_>) -> Self {
        let name = gagwright_clearance::replay::person_part(person.id);
        self.part(name, Some(person.id), json!(person), entropy)
    }

    /// Appends it and gives its index.
    pub(crate) fn append(self, conn: &mut Connection) -> Result<u64, CommandError> {
        #[cfg(test)]
        watched::before(conn);
        Ok(gagwright_store::trail::append(conn, self.0)?.index)
    }
}

/// A UUIDv7 from a given moment and given random bytes, for what the server itself has to name.
pub(crate) fn mint(now: Timestamp, entropy: Entropy<'_>) -> uuid::Uuid {
    let mut bytes = [0u8; 10];
    entropy(&mut bytes);
    let millis = u64::try_from(now.as_millisecond()).unwrap_or(0);
    uuid::Builder::from_unix_timestamp_millis(millis, &bytes).into_uuid()
}

fn not_found(what: &'static str, id: impl ToString) -> CommandError {
    CommandError::NotFound {
        what,
        id: id.to_string(),
    }
}

/// The policy a production's plans are judged by.
pub(crate) fn policy(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Policy, CommandError> {
    gagwright_store::productions::get(conn, production)?
        .map(|production| production.policy)
        .ok_or_else(|| not_found("production", production))
}

/// A gag of this production.
pub(crate) fn gag(
    conn: &mut Connection,
    production: ProductionId,
    gag: GagId,
) -> Result<GagRow, CommandError> {
    gagwright_store::gags::get(conn, gag)?
        .filter(|row| row.production == production)
        .ok_or_else(|| not_found("gag", gag))
}

/// A person on this production's roster.
pub(crate) fn person(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
) -> Result<StoredPerson, CommandError> {
    gagwright_store::people::get(conn, production, person)?
        .ok_or_else(|| not_found("person", person))
}

/// Whether somebody on the roster was erased from the record. What comes late about them is not taken in again.
pub(crate) fn is_erased(
    conn: &mut Connection,
    production: ProductionId,
    id: PersonId,
) -> Result<bool, CommandError> {
    let stored = gagwright_store::people::get(conn, production, id)?;
    Ok(stored.is_some_and(|stored| stored.person == erased_person(id)))
}

/// Refuses what is about somebody who was erased.
pub(crate) fn not_erased(
    conn: &mut Connection,
    production: ProductionId,
    id: PersonId,
    what: &'static str,
) -> Result<(), CommandError> {
    match is_erased(conn, production, id)? {
        false => Ok(()),
        true => Err(about_erased(what)),
    }
}

/// Why what is about somebody who was erased is refused.
pub(crate) fn about_erased(what: &'static str) -> CommandError {
    CommandError::Conflict {
        what,
        detail: "whom it is about was erased from the record, so it is not kept; leave it"
            .to_owned(),
    }
}

/// A hold on this production.
pub(crate) fn hold(
    conn: &mut Connection,
    production: ProductionId,
    hold: HoldId,
) -> Result<Hold, CommandError> {
    gagwright_store::holds::get(conn, hold)?
        .filter(|kept| kept.production == production)
        .map(|kept| kept.hold)
        .ok_or_else(|| not_found("hold", hold))
}

/// Hashes of a plan's facets. Plans are checked before they come here, so a failure means a number that
/// slipped through; it is still told as the fault of the input it is.
pub(crate) fn facet_hashes(facets: &Facets) -> Result<FacetHashes, CommandError> {
    canonical::facet_hashes(facets).map_err(no_canonical_form)
}

/// A plan's digest, hex.
pub(crate) fn plan_digest(facets: &Facets) -> Result<String, CommandError> {
    canonical::plan_digest(facets).map_err(no_canonical_form)
}

fn no_canonical_form(error: canonical::CanonicalError) -> CommandError {
    CommandError::invalid(
        "/facets",
        error.to_string(),
        "give finite numbers of ordinary size",
    )
}

/// Lets a test see the database as it stands between two leaves.
#[cfg(test)]
pub(crate) mod watched {
    use std::cell::RefCell;

    use super::Connection;

    type Watcher = Box<dyn FnMut(&mut Connection)>;

    thread_local! {
        static WATCHER: RefCell<Option<Watcher>> = const { RefCell::new(None) };
    }

    /// From now on, on this thread, called before each leaf is appended; none: nothing is.
    pub(crate) fn watch(watcher: Option<Watcher>) {
        WATCHER.with(|kept| *kept.borrow_mut() = watcher);
    }

    pub(super) fn before(conn: &mut Connection) {
        WATCHER.with(|kept| {
            if let Some(watcher) = kept.borrow_mut().as_mut() {
                watcher(conn);
            }
        });
    }
}
