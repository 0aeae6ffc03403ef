//! Which event of the day voids whose marks: the trade's table as rows of the policy. What a change of
//! the plan voids is not said here; each role's `covers` says it.

use std::collections::BTreeSet;

use gagwright_mechanics::Facet;
use serde::{Deserialize, Serialize};

use super::{Policy, Role};

/// Something after which marks made before it no longer count.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum LapseEvent {
    /// Other pieces of equipment than those signed for.
    EquipmentSwap,
    /// A piece of equipment took a shock load.
    ShockLoad,
    /// Another performer than the one signed for.
    PerformerSwap,
    /// Another day than the one signed for.
    NewDay,
    /// Another place than the one signed for.
    NewSite,
    /// A reading outside its band.
    OutOfBand,
    /// A performer's head was struck or shaken.
    HeadImpact,
    /// A certificate of the signer ran out or was withdrawn.
    Certificate,
    /// The device signed with was revoked before the mark arrived.
    DeviceRevoked,
}

impl LapseEvent {
    /// Every event, in the order people read them.
    pub const ALL: [LapseEvent; 9] = [
        LapseEvent::EquipmentSwap,
        LapseEvent::ShockLoad,
        LapseEvent::PerformerSwap,
        LapseEvent::NewDay,
        LapseEvent::NewSite,
        LapseEvent::OutOfBand,
        LapseEvent::HeadImpact,
        LapseEvent::Certificate,
        LapseEvent::DeviceRevoked,
    ];

    /// The machine name, as in JSON.
    pub fn name(self) -> &'static str {
        match self {
            LapseEvent::EquipmentSwap => "equipment_swap",
            LapseEvent::ShockLoad => "shock_load",
            LapseEvent::PerformerSwap => "performer_swap",
            LapseEvent::NewDay => "new_day",
            LapseEvent::NewSite => "new_site",
            LapseEvent::OutOfBand => "out_of_band",
            LapseEvent::HeadImpact => "head_impact",
            LapseEvent::Certificate => "certificate",
            LapseEvent::DeviceRevoked => "device_revoked",
        }
    }

    /// The event in running text.
    pub fn words(self) -> &'static str {
        match self {
            LapseEvent::EquipmentSwap => "another piece of equipment",
            LapseEvent::ShockLoad => "a shock load",
            LapseEvent::PerformerSwap => "another performer",
            LapseEvent::NewDay => "another day",
            LapseEvent::NewSite => "another place",
            LapseEvent::OutOfBand => "a reading outside its band",
            LapseEvent::HeadImpact => "a head impact",
            LapseEvent::Certificate => "a certificate that ran out or was withdrawn",
            LapseEvent::DeviceRevoked => "a revoked device",
        }
    }

    /// The facet in whose change the plan layer sees the event; none: it sees the event itself. Such an
    /// event voids the plan marks of exactly the roles that answer for the facet.
    pub fn seen_in(self) -> Option<Facet> {
        match self {
            LapseEvent::EquipmentSwap => Some(Facet::Rigging),
            LapseEvent::PerformerSwap => Some(Facet::Cast),
            // A plan may be shot on another day or at another place than it says: only the marks for
            // the day fall. Changing what the plan says is a revision like any other.
            LapseEvent::NewDay | LapseEvent::NewSite => Some(Facet::Setting),
            _ => None,
        }
    }
}

/// What one event voids.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(deny_unknown_fields)]
pub struct LapseRow {
    /// The event.
    pub event: LapseEvent,
    /// Whose plan marks.
    pub plan: BTreeSet<Role>,
    /// Whose marks for the day.
    pub day: BTreeSet<Role>,
    /// Whether a go called before it.
    pub go: bool,
}

impl Policy {
    /// What an event voids; none: the policy says nothing of it.
    pub fn lapse(&self, event: LapseEvent) -> Option<&LapseRow> {
        self.lapses.iter().find(|row| row.event == event)
    }

    /// Whether an event voids a role's plan mark made before it.
    pub fn voids_plan(&self, event: LapseEvent, role: Role) -> bool {
        self.lapse(event)
            .is_some_and(|row| row.plan.contains(&role))
    }

    /// Whether an event voids a role's mark for the day made before it.
    pub fn voids_day(&self, event: LapseEvent, role: Role) -> bool {
        self.lapse(event).is_some_and(|row| row.day.contains(&role))
    }

    /// Whether an event voids a go called before it. An event that the policy forgot does.
    pub fn voids_go(&self, event: LapseEvent) -> bool {
        self.lapse(event).is_none_or(|row| row.go)
    }
}
