//! A plan: all that is fixed about a gag, in numbered revisions that are never edited in place.

use std::collections::BTreeMap;

use gagwright_casting::{GagId, PersonId};
use gagwright_mechanics::Facet;
use serde::{Deserialize, Serialize};

use crate::day_mark::plain;
use crate::facets::{
    Action, Camera, Cast, Conditions, Effects, Medical, Rehearsals, Rigging, Setting, Vehicles,
};
pub use crate::{
    diff::{FacetChange, FieldChange, diff, facet_value},
    inputs::{Misplaced, RepeatedParameter},
    validate::{FieldProblem, validate, validate_with},
};

/// One revision of a gag's plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Plan {
    /// The gag.
    pub gag: GagId,
    /// 1, 2, 3 ...
    pub revision: u32,
    /// The technique's machine name.
    pub technique: String,
    /// The contents.
    pub facets: Facets,
    /// The policy version it is judged by.
    pub policy: String,
    /// Who wrote it.
    pub author: PersonId,
    /// When.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub written_at: jiff::Timestamp,
    /// Why it differs from the one before.
    #[serde(default)]
    pub note: String,
}

impl Plan {
    /// Whether somebody is cast in any slot.
    pub fn casts(&self, person: PersonId) -> bool {
        let mut slots = self.facets.cast.slots.iter();
        slots.any(|slot| slot.person == Some(person))
    }

    /// Whether a piece of equipment is one that the plan is built from, by its serial number.
    pub fn uses(&self, serial: &str) -> bool {
        let mut listed = self.facets.rigging.equipment.iter();
        listed.any(|item| plain(&item.serial) == plain(serial))
    }
}

/// The ten facets.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields, default)]
#[allow(missing_docs)] // each type says what it is
pub struct Facets {
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub setting: Setting,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub action: Action,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub rigging: Rigging,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub effects: Effects,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub vehicles: Vehicles,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub cast: Cast,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub medical: Medical,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub camera: Camera,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub conditions: Conditions,
    #[cfg_attr(feature = "openapi", schema(required = true))]
    pub rehearsals: Rehearsals,
}

/// SHA-256 of each facet's canonical bytes, lower-case hex.
pub type FacetHashes = BTreeMap<Facet, String>;

/// What can hurt people in a gag; decides who must sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)] // the names are the trade's
pub enum Hazard {
    Height,
    Line,
    Gas,
    Fire,
    Charge,
    Glass,
    Vehicle,
    Weapon,
    Water,
    Animal,
    Minor,
    LockOff,
}
