//! The register of equipment: what there is, until when its inspection counts, and what befell it. A piece that
//! was set aside or took a shock load is out of use until somebody has inspected it since.

use gagwright_casting::PersonId;
use jiff::{Timestamp, civil::Date};
use serde::{Deserialize, Serialize};

use crate::ids::RecordId;

/// One piece of equipment on the production's register.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct RegisteredItem {
    /// Which.
    pub id: RecordId,
    /// Serial number, unique on the production.
    pub serial: String,
    /// What it is.
    pub name: String,
    /// Stated safe working load, newtons.
    #[serde(default)]
    pub working_load: Option<f64>,
    /// What it is rated or approved for, as its plate or certificate says.
    #[serde(default)]
    pub rating: String,
    /// Last day its inspection counts.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub inspected_until: Option<Date>,
    /// Set while nobody may use it.
    #[serde(default)]
    pub quarantined: Option<Quarantine>,
    /// Every time it took a shock load.
    #[serde(default)]
    pub shock_loads: Vec<ShockLoad>,
}

/// Why a piece is set aside that took a shock load, whoever recorded it.
pub const SHOCKED: &str = "it took a shock load";

impl RegisteredItem {
    /// Takes the piece back into use after an inspection, unless something has befallen it since: an
    /// inspection that arrives late settles nothing that it did not see.
    pub fn taken_back(&mut self, inspected: Timestamp) -> bool {
        let set_aside = self.quarantined.iter().map(Quarantine::last);
        let mut befell = set_aside.chain(self.shock_loads.iter().map(|one| one.at));
        if befell.any(|at| at > inspected) {
            return false;
        }
        self.quarantined = None;
        true
    }

    /// Sets the piece aside. When several did, the earliest is told, in whatever order they arrive.
    pub fn set_aside(&mut self, since: Timestamp, reason: String, by: PersonId) {
        let mut first = Quarantine {
            since,
            reason,
            by,
            again_at: None,
        };
        if let Some(mut before) = self.quarantined.take() {
            let last = before.last().max(since);
            if (before.since, before.by) <= (since, first.by) {
                std::mem::swap(&mut first, &mut before);
            }
            first.again_at = Some(last).filter(|last| *last > first.since);
        }
        self.quarantined = Some(first);
    }

    /// Records a shock load: nobody may use the piece until somebody has inspected it.
    pub fn shocked(&mut self, shock: ShockLoad) {
        self.set_aside(shock.at, SHOCKED.to_owned(), shock.by);
        self.shock_loads.push(shock);
    }
}

/// Why nobody may use a piece of equipment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct Quarantine {
    /// Since when.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub since: Timestamp,
    /// Why.
    pub reason: String,
    /// Who set it aside.
    pub by: PersonId,
    /// When it was last set aside once more; an inspection from before has not seen why.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub again_at: Option<Timestamp>,
}

impl Quarantine {
    /// When somebody last had reason to set it aside.
    fn last(&self) -> Timestamp {
        self.again_at
            .map_or(self.since, |again| again.max(self.since))
    }
}

/// A brief overload, which nobody can see from outside.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct ShockLoad {
    /// Which.
    pub id: RecordId,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub at: Timestamp,
    /// What happened.
    pub what: String,
    /// Who recorded it.
    pub by: PersonId,
}
