//! What the judge answers about the day: how each mark, the briefing, the readings, the equipment and
//! the people stand, and whether a go may be called.

use gagwright_casting::{PersonId, SlotId};
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};

use super::{ReadingKind, RoleStanding};
use crate::{ids::RecordId, policy::Role};

/// How the day stands, beside the plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct DayStanding {
    /// The day judged: the one briefed for, the plan's while it is to come or is now, or today.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// The place: the one briefed at, or the plan's.
    pub place: String,
    /// Whether everything of the day stands. Says nothing of the plan.
    pub stands: bool,
    /// Every role that must sign the day, and how it stands.
    pub marks: Vec<RoleStanding>,
    /// The briefing.
    pub briefing: BriefingStanding,
    /// What must be read.
    pub readings: Vec<ReadingStanding>,
    /// What the plan is built from.
    pub equipment: Vec<EquipmentStanding>,
    /// Who performs.
    pub people: Vec<PersonStanding>,
    /// Everything that the day waits for, in the order of the list above. Empty exactly when it stands.
    pub blocks: Vec<DayBlock>,
}

/// Who was briefed.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct BriefingStanding {
    /// Whether the policy asks for one.
    pub asked: bool,
    /// When the last that counts was held; none: none was.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub at: Option<Timestamp>,
    /// Whether one was held for this day and place that the plan has since left behind.
    pub outdated: bool,
    /// Who was there, over every briefing that counts.
    pub attended: Vec<PersonId>,
    /// Who must be and was not.
    pub missed: Vec<PersonId>,
}

/// How one kind of reading stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct ReadingStanding {
    /// What is read.
    pub kind: ReadingKind,
    /// How it stands.
    pub state: ReadingState,
    /// The reading that decides.
    #[serde(default)]
    pub reading: Option<RecordId>,
    /// Its value, SI.
    #[serde(default)]
    pub value: Option<f64>,
    /// When it was read.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub at: Option<Timestamp>,
    /// Until when it may be leaned on.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub good_until: Option<Timestamp>,
    /// The greatest age it may have, minutes.
    pub max_age_minutes: u32,
    /// Least allowed, SI.
    #[serde(default)]
    pub min: Option<f64>,
    /// Most allowed, SI.
    #[serde(default)]
    pub max: Option<f64>,
}

/// How a reading stands, best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum ReadingState {
    /// Read lately, and inside.
    Good,
    /// Inside, and read too long ago.
    Old,
    /// Not read.
    Missing,
    /// Outside.
    Outside,
}

/// How one piece of equipment stands.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct EquipmentStanding {
    /// Its serial number.
    pub serial: String,
    /// What it is.
    pub name: String,
    /// Its entry on the register; none: it is only in the plan.
    #[serde(default)]
    pub item: Option<RecordId>,
    /// Stated safe working load, newtons.
    #[serde(default)]
    pub working_load: Option<f64>,
    /// Last day its inspection counts.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub inspected_until: Option<Date>,
    /// How it stands.
    pub state: EquipmentState,
    /// Why it does not, in a sentence.
    #[serde(default)]
    pub reason: String,
}

/// How a piece of equipment stands, best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum EquipmentState {
    /// May be used.
    Ready,
    /// No inspection counts on the day.
    Uninspected,
    /// Set aside.
    Quarantined,
}

/// How one performer stands on the day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct PersonStanding {
    /// The slot.
    pub slot: SlotId,
    /// Who.
    pub person: PersonId,
    /// Why they do not perform, in a sentence without a cause; none: they may.
    #[serde(default)]
    pub stood_down: Option<String>,
    /// Until when; none: until someone entitled says otherwise, or they are not stood down.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub until: Option<Timestamp>,
    /// Whether the medic still has to look at them after the last take.
    pub look_owed: bool,
}

/// One thing that the day or a go waits for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct DayBlock {
    /// What kind of thing.
    pub kind: DayBlockKind,
    /// The role, slot, serial, reading, person or take it is about, by machine name or id.
    pub about: String,
    /// What is wrong, in a sentence.
    pub reason: String,
    /// What would put it right, in a sentence.
    pub remedy: String,
}

/// What kind of thing the day or a go waits for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)] // the names say it
pub enum DayBlockKind {
    Plan,
    NotToday,
    Briefing,
    Reading,
    Equipment,
    StoodDown,
    Performer,
    Decline,
    Lapsed,
    Unsigned,
    OpenTake,
    Look,
}

/// Whether a go may be called.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct GoStanding {
    /// Whether it may, now.
    pub may: bool,
    /// Why not. Empty exactly when it may.
    pub why_not: Vec<DayBlock>,
    /// The go that was called and whose take has not ended.
    #[serde(default)]
    pub open: Option<OpenTake>,
    /// The number of the take that the next go is for.
    pub next: u32,
    /// Hats that may call it.
    pub callers: Vec<Role>,
}

/// A go that was called and whose take has not ended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct OpenTake {
    /// Which.
    pub take: RecordId,
    /// Its number.
    pub number: u32,
    /// Who called the go.
    pub called_by: PersonId,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub called_at: Timestamp,
    /// Why the go no longer stands; empty: it does.
    pub lapsed: Vec<String>,
}
