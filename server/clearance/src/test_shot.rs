//! Logged test shots: what a rig did with a weight bag, and then with a person, beside the settings it was
//! shot at. Knows nothing of how a model is fitted to them; that is mechanics'.

use std::collections::BTreeMap;

use gagwright_casting::{GagId, PersonId};
use gagwright_mechanics::Inputs;
use serde::{Deserialize, Serialize};

use crate::ids::RecordId;

/// What was on the line, in the catcher or in the seat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Load {
    /// A weight bag, or a dummy.
    Bag,
    /// A person.
    Person,
}

/// One test shot as it was logged. Never changed and never taken back: a later one simply adds to it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct TestShot {
    /// Which.
    pub id: RecordId,
    /// The gag it was shot for.
    pub gag: GagId,
    /// The technique's machine name; often the plan's, though a gag may test another first.
    pub technique: String,
    /// The technique's inputs as they were set for this shot, SI.
    pub inputs: Inputs,
    /// What was measured, by the figure's machine name, SI.
    pub measured: BTreeMap<String, f64>,
    /// What was shot.
    pub load: Load,
    /// What was seen.
    #[serde(default)]
    pub note: String,
    /// When it was shot, by the clock of whoever logged it.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub shot_at: jiff::Timestamp,
    /// Who logged it.
    pub recorded_by: PersonId,
    /// When it was logged, server time.
    #[cfg_attr(feature = "openapi", schema(value_type = String, format = DateTime))]
    pub recorded_at: jiff::Timestamp,
}
