//! Plans, sign-offs and holds to one answer: cleared, or what is missing, lapsed, held or blocking.
//!
//! This crate is pure. It knows no clock, file, network, database or random source: `now` is an
//! argument, and keys are handed in. It compiles to WebAssembly, so a phone judges as the server does.
//! The one way to become cleared is [`clearance()`].

pub mod canonical;
pub mod case;
pub mod facets;
pub mod ids;
pub mod judge;
pub mod plan;
pub mod policy;
pub mod signoff;

pub use case::{
    Agreement, Block, BlockKind, Case, Clearance, ClearanceState, Hold, Reading, ReadingKind,
    RehearsalRun, RoleState, RoleStanding, SlotStanding,
};
pub use gagwright_casting::{GagId, PersonId, ProductionId, SlotId};
pub use gagwright_mechanics::Facet;
pub use ids::{DeviceId, HoldId, RecordId, SignOffId};
pub use judge::clearance;
pub use plan::{Facets, Hazard, Plan};
pub use policy::{Policy, Role, RolePolicy};
pub use signoff::{Decision, Device, Member, SignOff, SignOffError, Statement};
