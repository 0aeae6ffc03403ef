//! The production's day at a glance: the register, who is stood down, what is frozen.

use std::collections::BTreeMap;

use gagwright_casting::PersonId;
use gagwright_clearance::{
    RecordId, Role,
    case::{EquipmentState, Incident, RegisteredItem, StandDown, Take},
    judge::{equipment_state, is_down, missing_closings, untold},
    who_may,
};
use gagwright_store::Connection;
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{GagRef, gathering, today::gag_ref};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
    words,
};

/// The production's day at a glance.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct DayBook {
    /// The register of equipment, by serial.
    pub equipment: Vec<RegisteredItem>,
    /// How each piece stands today.
    #[schema(value_type = BTreeMap<String, EquipmentState>)]
    pub equipment_states: BTreeMap<RecordId, EquipmentState>,
    /// Takes that were called and have not ended, the oldest first.
    pub open_takes: Vec<OpenTakeOf>,
    /// Stand-downs that hold now.
    pub stand_downs: Vec<StandDown>,
    /// Those of them that the reader may end.
    pub may_bring_back: Vec<RecordId>,
    /// Near misses and incidents, the newest first.
    pub incidents: Vec<IncidentStanding>,
    /// Names of everyone mentioned.
    #[schema(value_type = BTreeMap<String, String>)]
    pub names: BTreeMap<PersonId, String>,
}

/// A take that has not ended, and of which gag.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct OpenTakeOf {
    /// The gag.
    pub gag: GagRef,
    /// The take.
    pub take: Take,
}

/// An incident and what it waits for.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
pub struct IncidentStanding {
    /// The incident.
    pub incident: Incident,
    /// Who has yet to be told: roles by machine name, others as the policy names them.
    pub untold: Vec<String>,
    /// Hats that have yet to say what was done.
    pub closers: Vec<Role>,
}

/// Reads it.
///
/// # Errors
/// When the reader may not read the production.
pub fn day_book(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
) -> Result<DayBook, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let policy = &shared.production.policy;
    let members = shared.hats();
    let day = &shared.day;
    let mut equipment = day.equipment.clone();
    equipment.sort_by(|one, other| one.serial.cmp(&other.serial));
    let stand_downs: Vec<StandDown> = day
        .stand_downs
        .iter()
        .filter(|one| is_down(one, now))
        .cloned()
        .collect();
    let may_bring_back = stand_downs
        .iter()
        .filter(|one| who_may::bring_back(reader.person, &reader.roles, one))
        .map(|one| one.id)
        .collect();
    let today = now
        .to_zoned(words::zone(&shared.production.time_zone))
        .date();
    let equipment_states = equipment
        .iter()
        .map(|one| {
            let aside = one.quarantined.is_some();
            (one.id, equipment_state(aside, one.inspected_until, today))
        })
        .collect();
    let mut incidents: Vec<IncidentStanding> = day
        .incidents
        .iter()
        .map(|incident| IncidentStanding {
            untold: untold(incident, policy),
            closers: missing_closings(incident, policy, &members),
            incident: incident.clone(),
        })
        .collect();
    incidents.sort_by_key(|one| std::cmp::Reverse((one.incident.at, one.incident.id)));
    let mut open_takes: Vec<OpenTakeOf> = gagwright_store::gags::list(conn, reader.production)?
        .iter()
        .flat_map(|row| {
            let takes = day.takes.get(&row.id).into_iter().flatten();
            takes
                .filter(|take| take.outcome.is_none())
                .map(|take| OpenTakeOf {
                    gag: gag_ref(row),
                    take: take.clone(),
                })
        })
        .collect();
    open_takes.sort_by_key(|one| (one.take.called_at, one.take.id));
    Ok(DayBook {
        equipment,
        equipment_states,
        open_takes,
        stand_downs,
        may_bring_back,
        incidents,
        names: shared.names(),
    })
}
