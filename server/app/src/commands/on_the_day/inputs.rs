//! What people send on the day: the bodies of its commands, every id minted by the sender.

use gagwright_casting::PersonId;
use gagwright_clearance::{
    GagId, RecordId, Role,
    case::{Fitness, IncidentKind, TakeResult, Used},
};
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A piece of equipment as it is to stand on the register.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PutItem {
    /// Minted by whoever enters it (UUIDv7); the same again changes the entry.
    pub id: RecordId,
    /// Serial number, unique on the production.
    pub serial: String,
    /// What it is.
    pub name: String,
    /// Stated safe working load, newtons.
    #[serde(default)]
    pub working_load: Option<f64>,
    /// What it is rated or approved for.
    #[serde(default)]
    pub rating: String,
    /// Last day its inspection counts.
    #[serde(default)]
    #[schema(value_type = Option<String>, format = Date)]
    pub inspected_until: Option<Date>,
}

/// Setting a piece of equipment aside.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SetAside {
    /// Why.
    pub reason: String,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// Taking a piece of equipment back into use.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BackInUse {
    /// What the inspection found.
    pub found: String,
    /// Last day the new inspection counts.
    #[schema(value_type = String, format = Date)]
    pub inspected_until: Date,
    /// When it was inspected, at most five minutes ahead of the server's clock: what befell the piece after that is
    /// not settled by it.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// A shock load on a piece of equipment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewShockLoad {
    /// Minted by whoever records it (UUIDv7).
    pub id: RecordId,
    /// What happened.
    pub what: String,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// A briefing.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewBriefing {
    /// Minted by whoever records it (UUIDv7).
    pub id: RecordId,
    /// The day it is for, as the people there would name it.
    #[schema(value_type = String, format = Date)]
    pub day: Date,
    /// Where.
    pub place: String,
    /// The revision that was briefed.
    pub revision: u32,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
    /// Who was there, besides whoever records it.
    pub attended: Vec<PersonId>,
    /// What was said beyond the plan.
    #[serde(default)]
    pub points: String,
}

/// A go.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewGo {
    /// Minted by whoever calls it (UUIDv7).
    pub id: RecordId,
    /// The take it is for.
    pub number: u32,
    /// When it was called, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
    /// The revision performed.
    pub revision: u32,
    /// Its digest, as whoever called the go saw it.
    pub plan_digest: String,
    /// The day.
    #[schema(value_type = String, format = Date)]
    pub day: Date,
    /// Where.
    #[serde(default)]
    pub place: String,
}

/// How a take ended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewOutcome {
    /// In a word.
    pub result: TakeResult,
    /// What was seen.
    #[serde(default)]
    pub note: String,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// The medic's look at one performer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewLook {
    /// Minted by the medic's phone (UUIDv7).
    pub id: RecordId,
    /// The take it followed; none: a rehearsal or a check without one.
    #[serde(default)]
    pub take: Option<RecordId>,
    /// Who was looked at.
    pub person: PersonId,
    /// The day it counts for.
    #[schema(value_type = String, format = Date)]
    pub day: Date,
    /// Fit, fit within limits, or not; never why.
    pub fitness: Fitness,
    /// Whether the head was struck or shaken.
    pub head_impact: bool,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// A debrief after the takes of a day.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewDebrief {
    /// Minted by whoever records it (UUIDv7).
    pub id: RecordId,
    /// The day it looks back on, as the people there would name it.
    #[schema(value_type = String, format = Date)]
    pub day: Date,
    /// Where.
    pub place: String,
    /// The revision performed.
    pub revision: u32,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
    /// Who led it.
    pub led_by: PersonId,
    /// Who was there.
    pub attended: Vec<PersonId>,
    /// What went as planned.
    #[serde(default)]
    pub as_planned: String,
    /// What went differently.
    #[serde(default)]
    pub differently: String,
    /// What changes next time.
    #[serde(default)]
    pub next_time: String,
    /// The skills that performers used, of those that their slots ask for. Of whoever is not named, all of these count.
    #[serde(default)]
    pub used: Vec<Used>,
}

/// Standing somebody down. Nobody says why.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewStandDown {
    /// Minted by whoever records it (UUIDv7).
    pub id: RecordId,
    /// Who.
    pub person: PersonId,
    /// From when, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub from: Timestamp,
    /// Until when; none: until someone entitled says otherwise.
    #[serde(default)]
    #[schema(value_type = Option<String>, format = DateTime)]
    pub until: Option<Timestamp>,
}

/// A near miss or an incident.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewIncident {
    /// Minted by whoever reports it (UUIDv7).
    pub id: RecordId,
    /// Whether there was harm.
    pub kind: IncidentKind,
    /// The gag it freezes; none: everything.
    #[serde(default)]
    pub gag: Option<GagId>,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
    /// What happened, if there is time to say.
    #[serde(default)]
    pub what: String,
}

/// That somebody has been told.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewTold {
    /// A role by machine name, or somebody outside as the policy names them.
    pub who: String,
    /// When, by the device's clock: taken as of its arrival at the latest.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
}

/// A name under what was done about an incident.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NewClosing {
    /// The hat: coordinator or production.
    pub role: Role,
    /// What was done so that it does not happen again.
    pub action: String,
}
