//! What people can do, one use case a file: checked, stored and recorded as one leaf of the trail, all
//! inside the caller's transaction. Shared by the API and the terminal. Commands know the store and the
//! pure crates; they must not know HTTP, a terminal, a clock or where random bytes come from.

pub mod day;
pub mod delegations;
pub mod devices;
pub mod erasure;
pub mod gags;
pub mod handed;
pub mod holds;
pub mod inputs;
pub mod marks;
pub mod members;
pub mod on_the_day;
pub mod people;
pub mod photographs;
pub mod plans;
pub mod policies;
pub(crate) mod problems;
pub mod productions;
pub(crate) mod record;
pub mod resolutions;
pub mod signoffs;
pub mod test_shots;
pub mod witnesses;

use std::collections::BTreeSet;

use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{Facet, Facets, Plan, Role, SignOffError, handed::HandedError};
use gagwright_store::StoreError;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

pub use inputs::*;

use crate::permissions::{self, Permission};

/// Where random bytes come from: the operating system at the edge, a seed in the demo and in tests.
/// They salt the commitments that stand for personal data in the trail.
pub type Entropy<'a> = &'a mut dyn FnMut(&mut [u8]);

/// Who acts, on which production, under which hats. Made at the edge from a session's membership, so
/// a command never has to believe a production or a role that the caller named.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Actor {
    /// The account, where there is one.
    pub account: Option<Uuid>,
    /// The one production this actor may touch.
    pub production: ProductionId,
    /// The person acting.
    pub person: PersonId,
    /// The hats they hold on that production.
    pub roles: BTreeSet<Role>,
    /// Who brought what they ask here, when their own phone did not.
    pub carried_by: Option<PersonId>,
}

impl Actor {
    /// Whether any of the hats carries the permission.
    pub fn may(&self, permission: Permission) -> bool {
        self.roles
            .iter()
            .any(|role| permissions::of_role(*role).contains(&permission))
    }

    /// Demands the permission.
    ///
    /// # Errors
    /// [`CommandError::Forbidden`], naming the permission and who holds it.
    pub fn require(&self, permission: Permission) -> Result<(), CommandError> {
        if self.may(permission) {
            return Ok(());
        }
        Err(CommandError::Forbidden {
            permission,
            why: None,
        })
    }

    /// Demands that the actor holds this very hat.
    ///
    /// # Errors
    /// [`CommandError::Forbidden`], naming the hat.
    pub fn require_role(&self, role: Role, permission: Permission) -> Result<(), CommandError> {
        if self.roles.contains(&role) {
            return Ok(());
        }
        Err(CommandError::Forbidden {
            permission,
            why: Some(format!(
                "you do not hold the role {} on this production",
                permissions::role_name(role)
            )),
        })
    }
}

/// One thing wrong with what was given, and how to put it right.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, utoipa::ToSchema)]
pub struct FieldProblem {
    /// JSON pointer (RFC 6901) to the field.
    pub pointer: String,
    /// What is wrong.
    pub problem: String,
    /// How to put it right.
    pub fix: String,
}

impl FieldProblem {
    /// Shorthand.
    pub fn new(
        pointer: impl Into<String>,
        problem: impl Into<String>,
        fix: impl Into<String>,
    ) -> Self {
        Self {
            pointer: pointer.into(),
            problem: problem.into(),
            fix: fix.into(),
        }
    }
}

/// One thing wrong with one cell of a roster, and how to put it right.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, utoipa::ToSchema)]
pub struct CellProblem {
    /// Line of the file, counting the header as 1; 0 when it is about the whole file.
    pub row: u64,
    /// The column's name; empty when it is about the whole row.
    pub column: String,
    /// What is wrong.
    pub problem: String,
    /// How to put it right.
    pub fix: String,
}

/// A revision was written against one that is no longer current; both sides, so that people can choose.
#[derive(Clone, Debug, PartialEq)]
pub struct StalePlan {
    /// The revision the caller had in hand.
    pub expected: u32,
    /// The plan that is current.
    pub current: Plan,
    /// What the caller wanted to write.
    pub yours: Facets,
    /// Facets that others changed since the revision in hand.
    pub changed_theirs: Vec<Facet>,
    /// Facets that the caller changed against the revision in hand.
    pub changed_yours: Vec<Facet>,
}

/// Why a command was refused. Nothing was stored.
#[derive(Debug, thiserror::Error)]
pub enum CommandError {
    /// No such thing on this production. Things of other productions look the same as none at all.
    #[error("there is no {what} {id} on this production")]
    NotFound {
        /// What was looked for.
        what: &'static str,
        /// By which id or code.
        id: String,
    },
    /// The actor's hats do not allow it.
    #[error("{}", forbidden_sentence(*permission, why.as_deref()))]
    Forbidden {
        /// What it needs.
        permission: Permission,
        /// A closer reason, where there is one.
        why: Option<String>,
    },
    /// Fields that are not valid.
    #[error("{}", problems_sentence(problems))]
    Invalid {
        /// Every problem found, not only the first.
        problems: Vec<FieldProblem>,
    },
    /// The plan moved on.
    #[error(
        "the plan is at revision {}, not {}; read it and decide which side of each changed facet to keep",
        .0.current.revision, .0.expected
    )]
    StalePlan(Box<StalePlan>),
    /// It collides with what is there.
    #[error("{what}: {detail}")]
    Conflict {
        /// What collides.
        what: &'static str,
        /// How, and what to do.
        detail: String,
    },
    /// A sign-off that was refused at the door.
    #[error(transparent)]
    SignOff(#[from] SignOffError),
    /// What was handed over is refused, or its author may not ask it.
    #[error(transparent)]
    Handed(#[from] HandedError),
    /// A roster that was refused, whole.
    #[error("the roster was refused; {} cells are wrong, nothing was imported", problems.len())]
    Roster {
        /// Every problem found.
        problems: Vec<CellProblem>,
    },
    /// The store failed.
    #[error(transparent)]
    Store(StoreError),
}

#[cfg(test)]
mod tests;

fn forbidden_sentence(permission: Permission, why: Option<&str>) -> String {
    let holders: Vec<&str> = permission
        .held_by()
        .into_iter()
        .map(permissions::role_name)
        .collect();
    match why {
        Some(why) => format!("you may not do this: {why}"),
        None => format!(
            "you may not {}; that needs one of these roles: {}",
            permission.sentence(),
            holders.join(", ")
        ),
    }
}

fn problems_sentence(problems: &[FieldProblem]) -> String {
    let told: Vec<String> = problems
        .iter()
        .map(|one| format!("{}: {}; {}", one.pointer, one.problem, one.fix))
        .collect();
    told.join("\n")
}

impl CommandError {
    /// One invalid field.
    pub fn invalid(
        pointer: impl Into<String>,
        problem: impl Into<String>,
        fix: impl Into<String>,
    ) -> Self {
        CommandError::Invalid {
            problems: vec![FieldProblem::new(pointer, problem, fix)],
        }
    }
}
