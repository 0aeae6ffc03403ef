//! What happened on the day, read once for a production and laid out for each gag's case. Gathers; does not
//! judge.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{
    GagId, Plan, Policy,
    case::{
        Briefing, DayLog, DaySignOff, Debrief, Incident, Look, Practised, RegisteredItem,
        StandDown, Take, Taken,
    },
    judge,
};
use gagwright_store::{Connection, StoreError, day_records, day_records::Kind};

/// Everything recorded on the day of a production.
#[derive(Default)]
pub(crate) struct DayRecords {
    pub(crate) equipment: Vec<RegisteredItem>,
    briefings: BTreeMap<GagId, Vec<Briefing>>,
    marks: BTreeMap<GagId, Vec<DaySignOff>>,
    pub(crate) takes: BTreeMap<GagId, Vec<Take>>,
    debriefs: BTreeMap<GagId, Vec<Debrief>>,
    pub(crate) looks: Vec<Look>,
    pub(crate) stand_downs: Vec<StandDown>,
    pub(crate) incidents: Vec<Incident>,
    /// The plans, as they are now, of the gags that have takes, with the gags' codes.
    performed: BTreeMap<GagId, (String, Plan)>,
    /// What takes put whom through, by gag: counted by the plan as it is now.
    pub(crate) taken: BTreeMap<GagId, Vec<Taken>>,
    /// The skills they called for, likewise.
    pub(crate) practised: BTreeMap<GagId, Vec<Practised>>,
}

/// Reads it all.
pub(crate) fn read(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<DayRecords, StoreError> {
    let takes = by_gag(day_records::list(conn, production, Kind::Take)?);
    let debriefs: BTreeMap<GagId, Vec<Debrief>> =
        by_gag(day_records::list(conn, production, Kind::Debrief)?);
    let (mut taken, mut practised) = (BTreeMap::new(), BTreeMap::new());
    let mut performed = BTreeMap::new();
    if !takes.is_empty() {
        let gags = gagwright_store::gags::list(conn, production)?;
        let mut codes: BTreeMap<GagId, String> =
            gags.into_iter().map(|gag| (gag.id, gag.code)).collect();
        for plan in gagwright_store::plans::current_for_production(conn, production)? {
            if let Some(takes) = takes.get(&plan.gag) {
                taken.insert(plan.gag, judge::taken(&plan, takes));
                let debriefs = debriefs.get(&plan.gag).map_or(&[][..], Vec::as_slice);
                practised.insert(plan.gag, judge::practised(&plan, takes, debriefs));
                let code = codes.remove(&plan.gag).unwrap_or_default();
                performed.insert(plan.gag, (code, plan));
            }
        }
    }
    Ok(DayRecords {
        equipment: alone(day_records::list(conn, production, Kind::Equipment)?),
        briefings: by_gag(day_records::list(conn, production, Kind::Briefing)?),
        marks: by_gag(day_records::list(conn, production, Kind::Mark)?),
        takes,
        debriefs,
        looks: alone(day_records::list(conn, production, Kind::Look)?),
        stand_downs: alone(day_records::list(conn, production, Kind::StandDown)?),
        incidents: alone(day_records::list(conn, production, Kind::Incident)?),
        performed,
        taken,
        practised,
    })
}

fn alone<T>(kept: Vec<day_records::Kept<T>>) -> Vec<T> {
    kept.into_iter().map(|(_, record)| record).collect()
}

fn by_gag<T>(kept: Vec<day_records::Kept<T>>) -> BTreeMap<GagId, Vec<T>> {
    let mut gags: BTreeMap<GagId, Vec<T>> = BTreeMap::new();
    for (gag, record) in kept {
        if let Some(gag) = gag {
            gags.entry(gag).or_default().push(record);
        }
    }
    gags
}

impl DayRecords {
    /// What bears on one gag.
    pub(crate) fn of(&self, plan: &Plan, cast: &BTreeSet<PersonId>, policy: &Policy) -> DayLog {
        let gag = plan.gag;
        let used = |one: &&RegisteredItem| plan.uses(&one.serial);
        let others = self.performed.iter().filter(|(other, _)| **other != gag);
        let others = others.filter_map(|(other, (code, there))| {
            let takes = self.takes.get(other)?;
            Some(judge::elsewhere(plan, there, code, takes, policy))
        });
        let elsewhere = self.taken.iter().filter(|(other, _)| **other != gag);
        let practised = self.practised.iter().filter(|(other, _)| **other != gag);
        DayLog {
            equipment: self.equipment.iter().filter(used).cloned().collect(),
            briefings: self.briefings.get(&gag).cloned().unwrap_or_default(),
            signoffs: self.marks.get(&gag).cloned().unwrap_or_default(),
            takes: self.takes.get(&gag).cloned().unwrap_or_default(),
            debriefs: self.debriefs.get(&gag).cloned().unwrap_or_default(),
            looks: self
                .looks
                .iter()
                .filter(|one| cast.contains(&one.person))
                .cloned()
                .collect(),
            stand_downs: self
                .stand_downs
                .iter()
                .filter(|one| cast.contains(&one.person))
                .cloned()
                .collect(),
            incidents: self
                .incidents
                .iter()
                .filter(|one| one.gag.is_none_or(|other| other == gag))
                .cloned()
                .collect(),
            elsewhere: others.flatten().collect(),
            taken: elsewhere
                .flat_map(|(_, taken)| taken)
                .filter(|one| cast.contains(&one.person))
                .cloned()
                .collect(),
            practised: practised
                .flat_map(|(_, practised)| practised)
                .filter(|one| cast.contains(&one.person))
                .cloned()
                .collect(),
        }
    }
}
