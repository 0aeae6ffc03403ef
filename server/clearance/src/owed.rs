//! What one person may sign now. The answer follows from how the roles stand, who is cast, and the hats
//! they hold; what a mark needs beyond that (certificates, hats kept apart) the door says when they sign.

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, SlotId};
use serde::{Deserialize, Serialize};

use crate::{
    case::{RoleStanding, RoleState},
    policy::Role,
};

/// A mark that a person may make.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Owed {
    /// The hat they would sign under.
    pub role: Role,
    /// The hat as people read it.
    pub title: String,
    /// The performer's slot.
    pub slot: Option<SlotId>,
    /// How it stands now; never `standing`.
    pub state: RoleState,
    /// Whether the gag waits for it to be signed: it is missing or has lapsed. One that was declined or
    /// set conditions has been answered, and may be answered again.
    pub asked: bool,
    /// Why, in a sentence or two.
    pub why: String,
}

/// Every mark that does not stand and that this person may make, in the judge's order: a performer's is
/// theirs alone who is cast, any other is for whoever holds the hat.
pub fn owed(
    roles: &[RoleStanding],
    cast: &[(SlotId, Option<PersonId>)],
    person: PersonId,
    hats: &BTreeSet<Role>,
) -> Vec<Owed> {
    let own = |slot: Option<SlotId>| {
        cast.iter()
            .any(|(one, who)| Some(*one) == slot && *who == Some(person))
    };
    roles
        .iter()
        .filter(|one| one.state != RoleState::Standing)
        .filter(|one| match one.role {
            Role::Performer => own(one.slot),
            role => hats.contains(&role),
        })
        .map(|one| Owed {
            role: one.role,
            title: one.title.clone(),
            slot: one.slot,
            state: one.state,
            asked: matches!(one.state, RoleState::Missing | RoleState::Lapsed),
            why: why(one),
        })
        .collect()
}

/// What fell and what changed, as far as a line of a list can say it.
fn why(one: &RoleStanding) -> String {
    match one.reasons.as_slice() {
        [] => one.because.clone(),
        [only] => only.clone(),
        [first, second, ..] => format!("{first} {second}"),
    }
}

#[cfg(test)]
#[path = "tests/owed.rs"]
mod tests;
