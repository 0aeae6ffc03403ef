//! What each named part of a plan contains. Free text is for people; parameters are the technique's
//! own, SI; lists are what other rules read. Every facet hashes by itself, so a change in one leaves
//! the others' sign-offs standing.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::Slot;
use gagwright_mechanics::InputValue;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use crate::{case::ReadingKind, plan::Hazard, risk::Risk};

/// The technique's parameters that belong to one facet, SI.
pub type Parameters = BTreeMap<String, InputValue>;

/// Where and when.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Setting {
    /// Scene number as the script has it.
    pub scene: String,
    /// The place.
    pub location: String,
    /// The unit that shoots it.
    #[serde(default)]
    pub unit: String,
    /// The shooting day.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub day: Option<Date>,
    /// Call on that day.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = DateTime))]
    pub call: Option<jiff::Timestamp>,
    /// Light: "day", "night, two balloon lights" ...
    #[serde(default)]
    pub light: String,
    /// The technique's parameters about the place.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// What happens.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Action {
    /// One paragraph.
    pub summary: String,
    /// The steps in order, with cues.
    #[serde(default)]
    pub steps: Vec<String>,
    /// Hazards beyond those the technique always brings.
    #[serde(default)]
    pub hazards: BTreeSet<Hazard>,
    /// Hazards weighed. A hazard weighed here is one the gag has.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub risks: Vec<Risk>,
    /// What makes anyone stop: the abort word, the bail.
    #[serde(default)]
    pub abort: String,
    /// The technique's parameters about the action.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// One piece of equipment.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Equipment {
    /// What it is.
    pub name: String,
    /// Serial number.
    pub serial: String,
    /// Stated safe working load, newtons.
    #[serde(default)]
    pub working_load: Option<f64>,
    /// Last day its inspection counts.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = Option<String>, format = Date))]
    pub inspected_until: Option<Date>,
}

/// How someone is brought down or out.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Rescue {
    /// Who leads and what they do.
    pub method: String,
    /// Longest time allowed, seconds.
    #[serde(default)]
    pub limit_seconds: Option<f64>,
    /// Time of the last drill, seconds.
    #[serde(default)]
    pub drilled_seconds: Option<f64>,
}

/// Lines, anchors, catchers, equipment, rescue.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Rigging {
    /// How it is built.
    pub method: String,
    /// What it is built from.
    #[serde(default)]
    pub equipment: Vec<Equipment>,
    /// The way down or out.
    #[serde(default)]
    pub rescue: Rescue,
    /// The technique's parameters about the rig.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// A charge exactly as the licensed operator gives it. Nothing here is ever computed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct GivenCharge {
    /// What the operator calls it.
    pub name: String,
    /// How many.
    pub count: u32,
    /// Lead time before the action, seconds, as given.
    pub lead_seconds: f64,
    /// Stand-off, metres, as given.
    pub stand_off: f64,
    /// The operator who gave the values.
    pub given_by: String,
}

/// Fire, glass and charges.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Effects {
    /// What burns, breaks or bangs.
    pub method: String,
    /// Charges as the licensed operator gives them.
    #[serde(default)]
    pub charges: Vec<GivenCharge>,
    /// Who puts it out, with what.
    #[serde(default)]
    pub suppression: String,
    /// The technique's parameters about the effect.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// Cars, motorcycles, tow rigs.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Vehicles {
    /// What drives, and what was done to it.
    pub method: String,
    /// The technique's parameters about vehicles.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// Who performs.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Cast {
    /// One for each performer.
    #[serde(default)]
    pub slots: Vec<Slot>,
    /// The technique's parameters about bodies.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// Cover on the day.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Medical {
    /// Who stands where with what.
    pub cover: String,
    /// Ambulance and its alternate.
    #[serde(default)]
    pub ambulance: String,
    /// Receiving hospital and the route.
    #[serde(default)]
    pub hospital: String,
    /// The technique's parameters about medical cover.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// One camera.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct CameraPosition {
    /// Letter or name.
    pub name: String,
    /// Where it stands.
    pub place: String,
    /// Lens and frame rate.
    #[serde(default)]
    pub lens: String,
}

/// Camera positions.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Camera {
    /// Each camera.
    #[serde(default)]
    pub positions: Vec<CameraPosition>,
    /// What the shot must sell.
    #[serde(default)]
    pub notes: String,
    /// The technique's parameters about cameras.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// A band that a reading must stay inside.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Band {
    /// What is read.
    pub reading: ReadingKind,
    /// Least allowed, SI.
    #[serde(default)]
    pub min: Option<f64>,
    /// Most allowed, SI.
    #[serde(default)]
    pub max: Option<f64>,
    /// How long a reading inside the band may be leaned on before the next one, minutes. A reading
    /// outside stops the gag until a newer one is inside, however old it grows.
    pub max_age_minutes: u32,
}

/// Limits on the day's conditions.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Conditions {
    /// Bands for readings.
    #[serde(default)]
    pub bands: Vec<Band>,
    /// Anything else that stops work.
    #[serde(default)]
    pub stop_on: Vec<String>,
    /// The technique's parameters about conditions.
    #[serde(default)]
    #[cfg_attr(feature = "openapi", schema(value_type = BTreeMap<String, InputValue>))]
    pub parameters: Parameters,
}

/// One step of the rehearsal ladder.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Rung {
    /// Short machine name, unique in the ladder.
    pub name: String,
    /// What is done: "weight bag 80 kg, full height, three good runs".
    pub what: String,
    /// Good runs needed before the next rung.
    pub good_runs: u32,
}

/// The ladder from weight bag to take.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct Rehearsals {
    /// In order; each must be passed before the gag can be cleared.
    #[serde(default)]
    pub rungs: Vec<Rung>,
}
