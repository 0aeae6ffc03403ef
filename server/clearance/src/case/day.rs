//! What happens on the day: briefings, marks for the day, takes and how each
//! ended, the medic's looks, people stood down, near misses and incidents. Records only; what follows
//! from them is for the judge.

use std::collections::BTreeMap;

use gagwright_casting::{Exposure, GagId, PersonId, SlotId};
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};

use super::{Debrief, RegisteredItem};
use crate::{ids::RecordId, plan::FacetHashes, policy::Role};

/// Everything recorded on the day that bears on one gag.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(default)]
pub struct DayLog {
    /// The production's register, as far as this gag's plan names what is in it.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub equipment: Vec<RegisteredItem>,
    /// Briefings on this gag.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub briefings: Vec<Briefing>,
    /// Every mark for a day ever made on this gag, in trail order.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub signoffs: Vec<DaySignOff>,
    /// Takes of this gag.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub takes: Vec<Take>,
    /// Debriefs after takes of this gag.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub debriefs: Vec<Debrief>,
    /// The medic's looks at the people cast, whichever gag each followed.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub looks: Vec<Look>,
    /// Stand-downs of the people cast.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub stand_downs: Vec<StandDown>,
    /// Near misses and incidents on this gag or on the whole production.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub incidents: Vec<Incident>,
    /// Takes of other gags with somebody or something of this one in them.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub elsewhere: Vec<TakeElsewhere>,
    /// What the people cast have taken in the takes of other gags.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub taken: Vec<Taken>,
    /// The skills the people cast have used in the takes of other gags.
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub practised: Vec<Practised>,
}

/// A briefing on the spot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Briefing {
    /// Which.
    pub id: RecordId,
    /// The day it is for.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// Where.
    pub place: String,
    /// The revision that people were told of.
    pub revision: u32,
    /// What was briefed, as in the plan then current: a briefing counts while these are unchanged.
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<gagwright_mechanics::Facet, String>))]
    pub facets: FacetHashes,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// Who led it.
    pub by: PersonId,
    /// Who was there.
    pub attended: Vec<PersonId>,
    /// What was said beyond the plan: deviations, the abort word, who may call a stop.
    #[serde(default)]
    pub points: String,
}

/// A mark for the day as received.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct DaySignOff {
    /// The compact JWS exactly as the device made it.
    pub jws: String,
    /// When the server received it.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub received_at: Timestamp,
    /// Its leaf in the trail.
    pub leaf: u64,
}

/// A go and the take it was good for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Take {
    /// Which.
    pub id: RecordId,
    /// 1, 2, 3 ... on this gag.
    pub number: u32,
    /// When the go was called.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub called_at: Timestamp,
    /// Who called it.
    pub called_by: PersonId,
    /// The revision performed.
    pub revision: u32,
    /// Its digest.
    pub plan_digest: String,
    /// The day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// Where.
    #[serde(default)]
    pub place: String,
    /// Who performed in which slot.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = std::collections::BTreeMap<String, PersonId>))]
    pub cast: BTreeMap<SlotId, PersonId>,
    /// How the server judged the go when it arrived; none: it has not arrived yet.
    #[serde(default)]
    pub judged: Option<GoJudged>,
    /// How it ended; none: it is open.
    #[serde(default)]
    pub outcome: Option<TakeOutcome>,
}

/// How a go was judged when it reached the server: recorded either way, for what was done was done.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct GoJudged {
    /// Whether it stood.
    pub stood: bool,
    /// Why not, in sentences.
    #[serde(default)]
    pub why_not: Vec<String>,
}

/// How a take ended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct TakeOutcome {
    /// In a word.
    pub result: TakeResult,
    /// What was seen.
    #[serde(default)]
    pub note: String,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// Who says so.
    pub by: PersonId,
}

/// How a take ended, in a word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum TakeResult {
    /// As planned.
    Good,
    /// Performed, and not as planned.
    NotGood,
    /// Stopped before the action.
    Stopped,
}

/// The medic's look at one performer: what others need to know, and never why.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Look {
    /// Which.
    pub id: RecordId,
    /// The gag.
    pub gag: GagId,
    /// The take it followed; none: a rehearsal or a check without one.
    #[serde(default)]
    pub take: Option<RecordId>,
    /// Who was looked at.
    pub person: PersonId,
    /// The day it counts for.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// Fit, fit within limits, or not.
    pub fitness: Fitness,
    /// Whether the head was struck or shaken.
    pub head_impact: bool,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// The medic.
    pub by: PersonId,
}

/// What the medic says to the others.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Fitness {
    /// Fit to go on.
    Fit,
    /// Fit within limits that the medic tells the coordinator.
    Limits,
    /// Not fit to go on.
    Unfit,
}

/// Somebody who does not perform for a while. Never says why.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct StandDown {
    /// Which.
    pub id: RecordId,
    /// Who.
    pub person: PersonId,
    /// From when.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub from: Timestamp,
    /// Until when; none: until someone entitled says otherwise.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub until: Option<Timestamp>,
    /// Who stood them down; themselves, often.
    pub by: PersonId,
    /// Set when they came back before `until`.
    #[serde(default)]
    pub returned: Option<Returned>,
    /// Whether it stands for a look of the medic's that keeps them from performing, for those who do not
    /// read what was found. Nobody comes back from it early.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "openapi", schema(required = false))]
    pub after_look: bool,
}

/// That somebody stood down may perform again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Returned {
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// Who says so.
    pub by: PersonId,
}

/// Something that hurt somebody, or could have.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Incident {
    /// Which.
    pub id: RecordId,
    /// Whether there was harm.
    pub kind: IncidentKind,
    /// The gag it froze; none: everything.
    #[serde(default)]
    pub gag: Option<GagId>,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// Who reports it.
    pub by: PersonId,
    /// What happened.
    #[serde(default)]
    pub what: String,
    /// Who has been told.
    #[serde(default)]
    pub told: Vec<Told>,
    /// Corrective actions put a name to.
    #[serde(default)]
    pub closings: Vec<Closing>,
    /// When it was closed, server time. Kept, because those who closed it may later leave the production.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub closed_at: Option<Timestamp>,
}

/// Harm, or nearly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum IncidentKind {
    /// No harm, could have.
    NearMiss,
    /// Somebody was hurt, or something broke that could have hurt.
    Incident,
}

/// That somebody has been told of an incident.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Told {
    /// A role by machine name, or somebody outside as the policy names them.
    pub who: String,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// Who told them.
    pub by: PersonId,
}

/// One name under what was done so that it does not happen again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Closing {
    /// The hat.
    pub role: Role,
    /// Who.
    pub person: PersonId,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// What was done.
    pub action: String,
}

/// A take of another gag that has somebody or something of this one in it: one that is open, or one after
/// which the medic looks at somebody.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct TakeElsewhere {
    /// Of which gag.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Uuid))]
    pub gag: GagId,
    /// The gag's code.
    pub code: String,
    /// Which take.
    pub take: RecordId,
    /// Its number.
    pub number: u32,
    /// The shooting day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// When its go was called.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub called_at: Timestamp,
    /// When it ended; none: it is open.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub ended_at: Option<Timestamp>,
    /// Who of this gag's cast is in it.
    pub people: Vec<PersonId>,
    /// Serial numbers of this gag's equipment that it uses, while it is open.
    pub serials: Vec<String>,
    /// Whether the medic looks at whoever was in it.
    pub look: bool,
}

/// A skill that a take called for, and who used it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Practised {
    /// Who.
    pub person: PersonId,
    /// The skill, by its name in the catalogue.
    pub skill: String,
    /// The day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub on: Date,
}

/// What one body took elsewhere.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Taken {
    /// Who.
    pub person: PersonId,
    /// What, on which day, how often.
    pub exposure: Exposure,
}
