//! What people send: the bodies of commands, with every id minted by the sender so that a phone with
//! no signal can name what it makes. Plain data; the commands check it.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::PersonId;
use gagwright_clearance::{
    DeviceId, Facets, GagId, HoldId, Load, ReadingKind, RecordId, Role, plan::Hazard,
    signoff::PublicKey,
};
use gagwright_mechanics::Inputs;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

/// What a new gag is made of.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewGag {
    /// Minted by whoever creates it (UUIDv7).
    pub id: GagId,
    /// Short code, unique in the production.
    pub code: String,
    /// Title.
    pub title: String,
    /// The technique's machine name.
    pub technique: String,
    /// The contents; what is left out starts from the policy's defaults for the technique.
    #[serde(default)]
    pub facets: Option<Facets>,
    /// Why.
    #[serde(default)]
    pub note: String,
}

/// What a new revision is made of.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewRevision {
    /// The technique's machine name.
    pub technique: String,
    /// The whole contents.
    pub facets: Facets,
    /// Why it differs from the revision before.
    #[serde(default)]
    pub note: String,
}

/// What a hold is made of. Nobody has to say why.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewHold {
    /// Minted by whoever raises it (UUIDv7).
    pub id: HoldId,
    /// The gag; none: everything on the production.
    #[serde(default)]
    pub gag: Option<GagId>,
    /// Why, if they care to say.
    #[serde(default)]
    pub reason: String,
    /// The hazard, where they name one: its owner must then agree to the release.
    #[serde(default)]
    pub hazard: Option<Hazard>,
}

/// A reading of the conditions.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewReading {
    /// Minted by whoever logs it (UUIDv7).
    pub id: RecordId,
    /// Of what.
    pub kind: ReadingKind,
    /// The value, SI.
    pub value: f64,
    /// When it was read: at most five minutes ahead of the server's clock.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
    /// Where.
    #[serde(default)]
    pub place: String,
}

/// One run on a rung of the rehearsal ladder.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewRun {
    /// Minted by whoever logs it (UUIDv7).
    pub id: RecordId,
    /// The rung's machine name.
    pub rung: String,
    /// Whether it went as planned.
    pub good: bool,
    /// What was seen.
    #[serde(default)]
    pub note: String,
    /// The revision that was rehearsed.
    pub revision: u32,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// One test shot: the settings, and what the rig then did.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewTestShot {
    /// Minted by whoever logs it (UUIDv7).
    pub id: RecordId,
    /// The technique's machine name; any there is, the plan's most often.
    pub technique: String,
    /// The technique's inputs as they were set, SI.
    pub inputs: Inputs,
    /// What was measured, by the figure's machine name, SI; at least one.
    pub measured: BTreeMap<String, f64>,
    /// What was shot.
    pub load: Load,
    /// What was seen.
    #[serde(default)]
    pub note: String,
    /// When it was shot, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub shot_at: Timestamp,
}

/// A device that will sign.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewDevice {
    /// Minted by the device (UUIDv7).
    pub id: DeviceId,
    /// What its owner calls it.
    pub name: String,
    /// Its public key; the private half never leaves the device.
    pub key: PublicKey,
}

/// What a new production is made of.
#[derive(Clone, Debug, PartialEq)]
pub struct NewProduction {
    /// Minted by whoever creates it.
    pub id: gagwright_casting::ProductionId,
    /// Its name.
    pub name: String,
    /// IANA time zone of its call times.
    pub time_zone: String,
    /// Whether it is the demo.
    pub demo: bool,
    /// The first person on it, who becomes coordinator.
    pub founder: Founder,
}

/// Who starts a production.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Founder {
    /// Minted by whoever creates the production.
    pub person: PersonId,
    /// The production's short code for them.
    pub code: String,
    /// Name.
    pub name: String,
    /// What they are called for.
    pub occupation: String,
    /// Their account, where they have one.
    pub account: Option<Uuid>,
    /// Their address.
    pub email: Option<String>,
    /// The hats they start with.
    pub roles: BTreeSet<Role>,
}
