//! What was said after the takes of a day: a record, which changes no answer but through the skills that it says
//! were used.

use std::collections::BTreeSet;

use gagwright_casting::PersonId;
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};

use crate::ids::RecordId;

/// What was said after the takes of a day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Debrief {
    /// Which.
    pub id: RecordId,
    /// The day it looks back on.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = Date))]
    pub day: Date,
    /// Where.
    pub place: String,
    /// The revision performed.
    pub revision: u32,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// Who led it.
    pub led_by: PersonId,
    /// Who wrote it down.
    pub by: PersonId,
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
    /// What each performer used; of whoever is not named here, what their slot asks for counts.
    #[serde(default)]
    pub used: Vec<Used>,
}

/// The skills that one performer used in the takes of the day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Used {
    /// Who.
    pub person: PersonId,
    /// Skills by their names in the catalogue; none of them: they used none.
    pub skills: BTreeSet<String>,
}

impl Debrief {
    /// What it says of one performer; none: nothing.
    pub fn of(&self, person: PersonId) -> Option<&Used> {
        self.used.iter().find(|one| one.person == person)
    }
}
