//! What a slot needs, and the answer for one person.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::{
    ids::{GagId, PersonId, SlotId},
    person::Measurement,
};

/// One performer's place in a gag: what it needs and whom it doubles.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Slot {
    /// Which slot.
    pub id: SlotId,
    /// What people call it, for example "Double for Ines".
    pub name: String,
    /// What it needs.
    pub requirements: Vec<Requirement>,
    /// Who is cast in it.
    #[serde(default)]
    pub person: Option<PersonId>,
    /// Mass of costume, kit and harness worn on top of the body, kilograms.
    #[serde(default)]
    pub kit_mass: f64,
}

/// One thing a slot needs.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Requirement {
    /// A skill at a level or above, used within so many days of the shooting day.
    Skill {
        /// Name from the catalogue.
        name: String,
        /// Least level, 0 to 5.
        level: u8,
        /// Used or assessed at most this many days before the shooting day; none: recency not asked.
        within_days: Option<u32>,
    },
    /// A certificate valid through the shooting day and any days of weather cover after it.
    Certificate {
        /// Kinds that satisfy it, any one.
        any_of: Vec<String>,
        /// Category it must carry.
        #[serde(default)]
        category: Option<String>,
        /// Days after the shooting day through which it must still be valid.
        #[serde(default)]
        cover_days: u32,
    },
    /// A body measurement within a tolerance of the doubled actor's.
    Measurement {
        /// Which.
        of: Measurement,
        /// The actor's value, SI.
        target: f64,
        /// Plus or minus, SI.
        tolerance: f64,
    },
    /// Clothed and kitted mass inside the rig's range, kilograms.
    KittedMass {
        /// Least.
        min: f64,
        /// Most.
        max: f64,
    },
    /// Age on the shooting day, whole years.
    Age {
        /// Least.
        #[serde(default)]
        min: Option<u8>,
        /// Most.
        #[serde(default)]
        max: Option<u8>,
    },
    /// The medic has said fit through the shooting day.
    MedicalClearance,
    /// Available on the shooting day.
    Availability,
    /// Hours of rest between last wrap and call.
    Rest {
        /// Least hours.
        hours: f64,
    },
    /// No more than so many exposures of a kind in a day, this gag's included.
    DailyExposure {
        /// `full_burn`, `high_fall` ...
        exposure: String,
        /// How many this gag adds.
        adds: u32,
        /// The most allowed in a day.
        max: u32,
    },
    /// Consent to this very revision.
    Consent,
}

/// The circumstances a requirement is judged in. Time is an argument, never read from a clock.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Context {
    /// The gag.
    pub gag: GagId,
    /// The revision that would be performed.
    pub revision: u32,
    /// The shooting day.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// Call time on that day, where it is known.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub call: Option<jiff::Timestamp>,
    /// The day the question is asked. With it, a cure whose last day is past is no cure; without it,
    /// every cure is listed with its date and the reader decides.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub today: Option<Date>,
}

/// The answer for one person in one slot, listing every requirement.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Verdict {
    /// The slot.
    pub slot: SlotId,
    /// The person.
    pub person: PersonId,
    /// The worst of the findings decides.
    pub outcome: Outcome,
    /// How well they fit beyond qualifying, 0 to 1, for ranking.
    pub fit: f64,
    /// One finding for each requirement, in the slot's order.
    pub findings: Vec<Finding>,
}

/// The answer in a word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Every requirement is met.
    Qualified,
    /// Something is not met yet but can be cured in time; the findings say what and by when.
    Conditional,
    /// Something is not met and cannot be cured in time.
    NotQualified,
}

/// What was found for one requirement.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Finding {
    /// The requirement.
    pub requirement: Requirement,
    /// Met, curable or not met.
    pub standing: FindingStanding,
    /// One sentence with the margin: "level 4 where 3 is needed, last used 41 days before".
    pub reason: String,
    /// What would cure it, and by when, where it is curable.
    #[serde(default)]
    pub cure: Option<Cure>,
}

/// How a requirement stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum FindingStanding {
    /// Met.
    Met,
    /// Not met, and curable before the day.
    Curable,
    /// Not met.
    NotMet,
}

/// What would cure an unmet requirement.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Cure {
    /// What to do: "check-ride before the shooting day".
    pub what: String,
    /// The last day on which doing it still helps.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub by: Date,
}
