//! The named parts of a plan. They live in this crate because every parameter says which part of a
//! plan it belongs to; what a part contains, and who answers for it, is known only to clearance.

use serde::{Deserialize, Serialize};

/// A named part of a plan, in the order that plans are hashed and printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Facet {
    /// Where and when: scene, place, day.
    Setting,
    /// What happens, step by step.
    Action,
    /// Lines, anchors, catchers, equipment and the rescue.
    Rigging,
    /// Fire, glass, charges as the licensed operator gives them.
    Effects,
    /// Cars, motorcycles, tow rigs.
    Vehicles,
    /// Who performs, what each slot needs.
    Cast,
    /// Cover, ambulance, receiving hospital.
    Medical,
    /// Camera positions, lenses, lock-offs.
    Camera,
    /// Limits on wind, light, temperature, water.
    Conditions,
    /// The rungs to rehearse before the take.
    Rehearsals,
}

impl Facet {
    /// Every facet, in table order: the order of the plan digest's leaves.
    pub const ALL: [Facet; 10] = [
        Facet::Setting,
        Facet::Action,
        Facet::Rigging,
        Facet::Effects,
        Facet::Vehicles,
        Facet::Cast,
        Facet::Medical,
        Facet::Camera,
        Facet::Conditions,
        Facet::Rehearsals,
    ];

    /// The name used in JSON, in tables and on paper.
    pub fn name(self) -> &'static str {
        match self {
            Facet::Setting => "setting",
            Facet::Action => "action",
            Facet::Rigging => "rigging",
            Facet::Effects => "effects",
            Facet::Vehicles => "vehicles",
            Facet::Cast => "cast",
            Facet::Medical => "medical",
            Facet::Camera => "camera",
            Facet::Conditions => "conditions",
            Facet::Rehearsals => "rehearsals",
        }
    }
}
