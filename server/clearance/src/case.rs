//! What the judge is given and what it answers.

mod day;
mod debrief;
mod equipment;
mod reopened;
mod standing;

use std::collections::BTreeMap;

use gagwright_casting::{GagId, Person, PersonId, ProductionId, SlotId, Verdict};
use gagwright_mechanics::{Assessment, Facet};
use serde::{Deserialize, Serialize};

use crate::{
    delegation::Delegation,
    earlier::EarlierFacets,
    ids::{HoldId, RecordId, SignOffId},
    plan::{FacetHashes, Hazard, Plan},
    policy::{Policy, Role},
    resolving::Resolution,
    risk::RiskStanding,
    signoff::{Device, Member, SignOff},
};

pub use day::*;
pub use debrief::{Debrief, Used};
pub use equipment::*;
pub use standing::*;

/// Everything that bears on one gag. Owned, so that it travels as one JSON value to a phone.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Case {
    /// The production.
    pub production: ProductionId,
    /// The current revision.
    pub plan: Plan,
    /// Every sign-off ever made on this gag, any revision, in trail order.
    pub signoffs: Vec<SignOff>,
    /// Holds on this gag or on the whole production.
    pub holds: Vec<Hold>,
    /// Readings of the conditions.
    pub readings: Vec<Reading>,
    /// Rehearsal runs logged on this gag.
    pub runs: Vec<RehearsalRun>,
    /// The people cast in the plan's slots.
    pub people: Vec<Person>,
    /// Who holds which hats.
    pub members: Vec<Member>,
    /// Devices of those who signed.
    pub devices: Vec<Device>,
    /// The policy the plan is judged by.
    pub policy: Policy,
    /// What happened on the day.
    #[serde(default)]
    pub day: DayLog,
    /// What earlier revisions said, as far as sign-offs on them need.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub earlier: Vec<EarlierFacets>,
    /// Who may sign in whose stead.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub delegations: Vec<Delegation>,
    /// Declines on this gag that were resolved in writing.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub resolutions: Vec<Resolution>,
}

/// A stop anyone may raise.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Hold {
    /// Which.
    pub id: HoldId,
    /// The gag; none: everything.
    #[serde(default)]
    pub gag: Option<GagId>,
    /// When it was raised, server time.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub raised_at: jiff::Timestamp,
    /// Who raised it; none when it came by the code on the brief.
    #[serde(default)]
    pub raised_by: Option<PersonId>,
    /// Why; nobody has to say.
    #[serde(default)]
    pub reason: String,
    /// The hazard, where it was named: its owner must agree to the release.
    #[serde(default)]
    pub hazard: Option<Hazard>,
    /// Agreements to release. Released when the coordinator and the hazard's owner have agreed.
    #[serde(default)]
    pub agreements: Vec<Agreement>,
    /// When the last agreement needed arrived, server time; none: it still holds. Kept, because those
    /// who agreed may later leave the production, and a stop that they lifted stays lifted.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub released_at: Option<jiff::Timestamp>,
}

/// One agreement to release a hold.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Agreement {
    /// The hat.
    pub role: Role,
    /// Who.
    pub person: PersonId,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: jiff::Timestamp,
    /// The cause and what was done, said aloud and written.
    pub cause: String,
}

/// What is read on the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum ReadingKind {
    /// Mean wind, metres per second.
    Wind,
    /// Gust, metres per second.
    Gust,
    /// Air temperature, kelvin.
    AirTemperature,
    /// Water temperature, kelvin.
    WaterTemperature,
    /// Illuminance, lux.
    Light,
}

/// One reading.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Reading {
    /// Which.
    pub id: RecordId,
    /// Of what.
    pub kind: ReadingKind,
    /// The value, SI.
    pub value: f64,
    /// When it was read.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: jiff::Timestamp,
    /// Who read it.
    pub by: PersonId,
    /// Where.
    #[serde(default)]
    pub place: String,
}

/// One run on a rung of the ladder.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct RehearsalRun {
    /// Which.
    pub id: RecordId,
    /// The rung's machine name.
    pub rung: String,
    /// Hash of the action, rigging, effects and vehicles facets rehearsed, as in the plan then
    /// current: a run counts while the facets it rehearsed are unchanged.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<gagwright_mechanics::Facet, String>))]
    pub facets: FacetHashes,
    /// Whether it went as planned.
    pub good: bool,
    /// What was seen.
    #[serde(default)]
    pub note: String,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: jiff::Timestamp,
    /// Who logged it.
    pub by: PersonId,
}

/// The answer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Clearance {
    /// The gag.
    pub gag: GagId,
    /// The revision judged.
    pub revision: u32,
    /// Its digest.
    pub plan_digest: String,
    /// Each facet's hash.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<gagwright_mechanics::Facet, String>))]
    pub facets: FacetHashes,
    /// The answer in a word.
    pub state: ClearanceState,
    /// Every role that must sign and how it stands.
    pub roles: Vec<RoleStanding>,
    /// Every slot, who is cast and whether they may.
    pub slots: Vec<SlotStanding>,
    /// Everything that stops it, worst first. Empty exactly when `state` is `cleared`.
    pub blocks: Vec<Block>,
    /// The figures and checks it was judged by; none when the inputs were refused.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub assessment: Option<Assessment>,
    /// Hazards present.
    pub hazards: Vec<Hazard>,
    /// How the day stands. `state` and `blocks` are the plan's answer alone.
    pub day: DayStanding,
    /// Whether a go may be called: the plan cleared, the day standing, and nothing in between.
    pub go: GoStanding,
    /// The plan's risks with the levels of the matrix, in the plan's order.
    pub risks: Vec<RiskStanding>,
}

impl Clearance {
    /// Who is cast in which slot.
    pub fn cast(&self) -> Vec<(SlotId, Option<PersonId>)> {
        self.slots
            .iter()
            .map(|one| (one.slot, one.person))
            .collect()
    }
}

/// The answer in a word, best first; the worst that applies is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum ClearanceState {
    /// Everything stands.
    Cleared,
    /// Nobody has been asked yet: no sign-off on any revision.
    NotAsked,
    /// Signatures, casting or rehearsals are missing.
    Waiting,
    /// A sign-off that stood has lapsed, or one was declined.
    Lapsed,
    /// A check, a performer or a condition forbids it.
    Blocked,
    /// Held.
    Held,
}

/// How one role stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct RoleStanding {
    /// The role.
    pub role: Role,
    /// What people read.
    pub title: String,
    /// The performer's slot, for [`Role::Performer`].
    #[serde(default)]
    pub slot: Option<SlotId>,
    /// Why it must sign: "every gag", "fire", "a check is marginal".
    pub because: String,
    /// How it stands.
    pub state: RoleState,
    /// The sign-off that decides, if there is one.
    #[serde(default)]
    pub signoff: Option<SignOffId>,
    /// Who signed it.
    #[serde(default)]
    pub signer: Option<PersonId>,
    /// When it was received.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub received_at: Option<jiff::Timestamp>,
    /// The revision it was signed on.
    #[serde(default)]
    pub revision: Option<u32>,
    /// Why it does not stand, in sentences.
    #[serde(default)]
    pub reasons: Vec<String>,
    /// Facets it covers that changed since it was signed.
    #[serde(default)]
    pub changed: Vec<Facet>,
    /// Conditions not met yet.
    #[serde(default)]
    pub open_conditions: Vec<String>,
    /// Whom the signer deputised for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub signed_for: Option<PersonId>,
    /// Who saw it signed on paper; none: it was signed on the signer's own device.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(nullable = false))]
    pub witness: Option<PersonId>,
    /// Until when it is good, if it runs out by itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime, nullable = false))]
    pub good_until: Option<jiff::Timestamp>,
    /// What else is to be known, in sentences: changes the role accepted in advance, dissent that was
    /// resolved.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub notes: Vec<String>,
}

/// How a role's sign-off stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum RoleState {
    /// Approved, and everything it covers is unchanged.
    Standing,
    /// Approved with conditions that are not all met.
    Conditional,
    /// Never signed.
    Missing,
    /// Signed, and no longer good.
    Lapsed,
    /// Declined.
    Declined,
}

/// How one slot stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct SlotStanding {
    /// The slot.
    pub slot: SlotId,
    /// Its name.
    pub name: String,
    /// Who is cast.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub person: Option<PersonId>,
    /// The verdict on them; none when nobody is cast or the person is not in the case.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub verdict: Option<Verdict>,
}

/// One thing that stops a gag.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Block {
    /// What kind of thing.
    pub kind: BlockKind,
    /// The role, check, slot, hold, band or rung it is about, by machine name or id.
    pub about: String,
    /// What is wrong, in a sentence.
    pub reason: String,
    /// What would put it right, in a sentence.
    pub remedy: String,
}

/// What kind of thing stops a gag, worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)] // the names say it
pub enum BlockKind {
    Hold,
    Incident,
    Check,
    Inputs,
    Performer,
    Condition,
    Equipment,
    Decline,
    Separation,
    Lapsed,
    Unsigned,
    OpenCondition,
    Uncast,
    Undated,
    Rehearsal,
}

/// Names of people by id, for building sentences.
pub type Names = BTreeMap<PersonId, String>;
