//! People, certificates and requirements to verdicts: who may do a gag on the day.
//!
//! This crate is pure. It knows no clock, file, network or database: the shooting day is an
//! argument, and rosters come in as text. It compiles to WebAssembly, so a phone judges as the
//! server does.

pub mod catalogue;
pub mod ids;
pub mod judge;
pub mod lapsing;
mod nearest;
pub mod person;
pub mod requirement;
pub mod roster;
pub mod words;

pub use catalogue::{Catalogue, CatalogueError, CertificateKind, SkillKind, UnknownName};
pub use ids::{CertificateId, GagId, PersonId, ProductionId, SlotId};
pub use judge::{find, judge, rank};
pub use lapsing::{Lapse, LapseCause, lapsing};
pub use person::{
    Availability, Certificate, Consent, EvidenceCheck, Exposure, Measured, Measurement, Person,
    Skill,
};
pub use requirement::{
    Context, Cure, Finding, FindingStanding, Outcome, Requirement, Slot, Verdict,
};
pub use roster::{Applied, RosterError, RosterErrors, RosterTable};
