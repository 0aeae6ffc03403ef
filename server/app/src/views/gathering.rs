//! Puts cases together for the judge: everything that bears on one gag, or on every gag of a production
//! with the same few queries however many gags there are. Gathers; does not judge and does not hide.

use std::{
    collections::{BTreeMap, BTreeSet, VecDeque},
    sync::{Arc, Mutex, PoisonError},
};

use gagwright_casting::{Person, PersonId, ProductionId};
use gagwright_clearance::{
    Case, Delegation, Device, GagId, Hold, Plan, Reading, RehearsalRun, Resolution, SignOff,
    earlier::{carried, revisions},
    signoff::Member,
};
use gagwright_store::{
    Connection, gags::GagRow, members::MemberRow, productions::Production, stamp::Stamp,
};

use super::day_records::{self, DayRecords};
use crate::commands::CommandError;

/// What every case of a production shares.
pub(crate) struct Shared {
    pub(crate) production: Production,
    pub(crate) people: BTreeMap<PersonId, Person>,
    pub(crate) members: Vec<MemberRow>,
    pub(crate) devices: Vec<Device>,
    pub(crate) holds: Vec<Hold>,
    pub(crate) delegations: Vec<Delegation>,
    pub(crate) resolutions: BTreeMap<GagId, Vec<Resolution>>,
    pub(crate) day: DayRecords,
    hats: Vec<Member>,
}

/// Productions whose shared things are kept in memory.
const KEPT: usize = 16;

/// What was read last of some productions, each with the stamp of the moment it was read at.
type Lately = VecDeque<(ProductionId, Stamp, Arc<Shared>)>;

/// What every case of a production shares: read once, and again when any of it was written since, by this
/// process or another. A sign-off writes none of it, so a hundred of them read it once.
pub(crate) fn shared(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Arc<Shared>, CommandError> {
    static LATELY: Mutex<Lately> = Mutex::new(VecDeque::new());
    let stamp = gagwright_store::stamp::now(conn)?;
    // A thread that panicked while holding the lock left whole entries behind.
    let lately = || LATELY.lock().unwrap_or_else(PoisonError::into_inner);
    let kept = lately()
        .iter()
        .find(|(of, at, _)| (*of, at) == (production, &stamp))
        .map(|(.., shared)| shared.clone());
    if let Some(shared) = kept {
        return Ok(shared);
    }
    let read = Arc::new(read(conn, production)?);
    let mut lately = lately();
    // What was erased since goes out of memory with the state it was in.
    lately.retain(|(of, ..)| *of != production);
    lately.truncate(KEPT - 1);
    lately.push_front((production, stamp, read.clone()));
    Ok(read)
}

fn read(conn: &mut Connection, production: ProductionId) -> Result<Shared, CommandError> {
    let found = gagwright_store::productions::get(conn, production)?.ok_or_else(|| {
        CommandError::NotFound {
            what: "production",
            id: production.to_string(),
        }
    })?;
    let people: BTreeMap<PersonId, Person> = gagwright_store::people::list(conn, production)?
        .into_iter()
        .map(|stored| (stored.person.id, stored.person))
        .collect();
    let members = gagwright_store::members::list(conn, production)?;
    Ok(Shared {
        production: found,
        hats: hats(&members, &people),
        people,
        members,
        devices: gagwright_store::devices::list(conn, production)?,
        holds: gagwright_store::holds::list(conn, production)?
            .into_iter()
            .map(|kept| kept.hold)
            .collect(),
        delegations: gagwright_store::delegations::list(conn, production)?,
        resolutions: gagwright_store::resolutions::for_production(conn, production)?,
        day: day_records::read(conn, production)?,
    })
}

/// Who holds which hats, with the certificates the policy may ask of them.
fn hats(members: &[MemberRow], people: &BTreeMap<PersonId, Person>) -> Vec<Member> {
    members
        .iter()
        .filter_map(|member| {
            let person = people.get(&member.person)?;
            Some(Member {
                person: member.person,
                name: person.name.clone(),
                roles: member.roles.clone(),
                certificates: person.certificates.clone(),
            })
        })
        .collect()
}

impl Shared {
    /// Names of everyone on the roster.
    pub(crate) fn names(&self) -> BTreeMap<PersonId, String> {
        self.people
            .iter()
            .map(|(id, person)| (*id, person.name.clone()))
            .collect()
    }

    /// Who holds which hats, with the certificates the policy may ask of them.
    pub(crate) fn hats(&self) -> Vec<Member> {
        self.hats.clone()
    }

    /// One gag's case.
    pub(crate) fn case(
        &self,
        plan: Plan,
        signoffs: Vec<SignOff>,
        readings: Vec<Reading>,
        runs: Vec<RehearsalRun>,
        earlier: Vec<Plan>,
    ) -> Case {
        let holds = self
            .holds
            .iter()
            .filter(|hold| hold.gag.is_none_or(|gag| gag == plan.gag))
            .cloned()
            .collect();
        let cast: BTreeSet<PersonId> = plan
            .facets
            .cast
            .slots
            .iter()
            .filter_map(|slot| slot.person)
            .collect();
        let day = self.day.of(&plan, &cast, &self.production.policy);
        let signers: BTreeSet<PersonId> = signoffs
            .iter()
            .filter_map(|one| gagwright_clearance::signoff::read_unverified(&one.jws).ok())
            .map(|statement| statement.hand())
            .chain(gagwright_clearance::day_mark::hands(&day))
            .collect();
        Case {
            production: self.production.id,
            signoffs,
            holds,
            readings,
            runs,
            people: cast
                .iter()
                .filter_map(|id| self.people.get(id))
                .cloned()
                .collect(),
            members: self.hats(),
            devices: self
                .devices
                .iter()
                .filter(|device| signers.contains(&device.person))
                .cloned()
                .collect(),
            policy: self.production.policy.clone(),
            day,
            earlier: carried(&plan, earlier),
            delegations: self.delegations.clone(),
            resolutions: self.resolutions.get(&plan.gag).cloned().unwrap_or_default(),
            plan,
        }
    }
}

/// One gag's case, whole.
///
/// # Errors
/// When the gag is not on this production.
pub fn case(
    conn: &mut Connection,
    production: ProductionId,
    gag: GagId,
) -> Result<Case, CommandError> {
    let shared = shared(conn, production)?;
    Ok(case_with(conn, &shared, gag)?.1)
}

/// One gag and its case, from what is read already.
pub(crate) fn case_with(
    conn: &mut Connection,
    shared: &Shared,
    gag: GagId,
) -> Result<(GagRow, Case), CommandError> {
    let production = shared.production.id;
    let row = crate::commands::record::gag(conn, production, gag)?;
    let plan = gagwright_store::plans::current(conn, gag)?;
    let signoffs = gagwright_store::signoffs::for_gag(conn, gag)?;
    let readings = gagwright_store::readings::for_gag(conn, production, gag)?;
    let runs = gagwright_store::runs::for_gag(conn, gag)?;
    let wanted = revisions(&signoffs, plan.revision);
    let wanted = wanted.into_iter().map(|one| (gag, one)).collect();
    let earlier = gagwright_store::plans::some(conn, &wanted)?;
    Ok((row, shared.case(plan, signoffs, readings, runs, earlier)))
}

/// Every gag of a production and its case, by code.
pub(crate) fn all_cases(
    conn: &mut Connection,
    shared: &Shared,
) -> Result<Vec<(GagRow, Case)>, CommandError> {
    let production = shared.production.id;
    let mut plans: BTreeMap<GagId, Plan> =
        gagwright_store::plans::current_for_production(conn, production)?
            .into_iter()
            .map(|plan| (plan.gag, plan))
            .collect();
    let mut signoffs = gagwright_store::signoffs::for_gags(conn, production)?;
    let mut runs = gagwright_store::runs::for_production(conn, production)?;
    let readings = gagwright_store::readings::for_production(conn, production)?;
    let wanted = plans
        .iter()
        .flat_map(|(gag, plan)| {
            let here = signoffs.get(gag).map_or(&[][..], Vec::as_slice);
            let numbers = revisions(here, plan.revision);
            numbers.into_iter().map(|one| (*gag, one))
        })
        .collect();
    let mut earlier: BTreeMap<GagId, Vec<Plan>> = BTreeMap::new();
    for plan in gagwright_store::plans::some(conn, &wanted)? {
        earlier.entry(plan.gag).or_default().push(plan);
    }
    let mut cases = Vec::new();
    for row in gagwright_store::gags::list(conn, production)? {
        let Some(plan) = plans.remove(&row.id) else {
            continue;
        };
        let here = readings
            .iter()
            .filter(|(gag, _)| gag.is_none_or(|gag| gag == row.id))
            .map(|(_, reading)| reading.clone())
            .collect();
        let case = shared.case(
            plan,
            signoffs.remove(&row.id).unwrap_or_default(),
            here,
            runs.remove(&row.id).unwrap_or_default(),
            earlier.remove(&row.id).unwrap_or_default(),
        );
        cases.push((row, case));
    }
    Ok(cases)
}
