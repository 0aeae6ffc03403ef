//! Plans, sign-offs and holds to one answer: cleared, or what is missing, lapsed, held or blocking.
//!
//! This crate is pure. It knows no clock, file, network, database or random source: `now` is an
//! argument, and keys are handed in. It compiles to WebAssembly, so a phone judges as the server does.
//! The one way to become cleared is [`clearance()`].

pub mod accepted;
pub mod canonical;
pub mod case;
mod certificates;
mod compact;
pub mod day_mark;
pub mod delegation;
pub mod diff;
pub mod door;
pub mod draft;
pub mod drawing;
pub mod earlier;
pub mod facets;
pub mod handed;
pub mod ids;
pub mod ink;
pub mod inputs;
pub mod judge;
pub mod jws;
pub mod opening;
pub mod owed;
pub mod own_limits;
mod own_rules;
pub mod plan;
pub mod policy;
pub mod policy_change;
mod policy_check;
mod reading;
pub mod replay;
pub mod resolving;
pub mod risk;
mod said_changes;
pub mod signoff;
mod starting;
pub mod test_shot;
pub mod validate;
pub mod who_may;
pub mod words;

#[cfg(test)]
#[path = "tests/day_scene.rs"]
mod day_scene;
#[cfg(test)]
#[path = "tests/scene.rs"]
mod scene;
#[cfg(test)]
#[path = "tests/test_fall.rs"]
mod test_fall;

pub use case::{
    Agreement, Block, BlockKind, Case, Clearance, ClearanceState, Hold, Reading, ReadingKind,
    RehearsalRun, RoleStanding, RoleState, SlotStanding,
};
pub use delegation::{Delegation, DelegationRule};
pub use diff::{FacetChange, FieldChange};
pub use drawing::Drawing;
pub use gagwright_casting::{GagId, PersonId, ProductionId, SlotId};
pub use gagwright_mechanics::Facet;
pub use ids::{DeviceId, HoldId, RecordId, SignOffId};
pub use ink::Ink;
pub use judge::{FindTechnique, JudgeMemory, clearance, clearance_remembering, clearance_with};
pub use opening::Opening;
pub use owed::{Owed, owed};
pub use plan::{Facets, Hazard, Plan};
pub use policy::{Policy, PolicyError, Role, RolePolicy};
pub use resolving::Resolution;
pub use risk::{Control, ControlKind, Rating, Risk, RiskStanding};
pub use signoff::{Decision, Device, Member, SignOff, SignOffError, Statement};
pub use test_shot::{Load, TestShot};
pub use validate::FieldProblem;
