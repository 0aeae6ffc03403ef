//! Everyone who performs, held against one slot on its shooting day, best first.

use std::collections::BTreeSet;

use gagwright_casting::{Catalogue, Consent, Context, Person, SlotId, judge::rank};
use gagwright_clearance::{GagId, RoleState, judge::with_takes};
use gagwright_store::Connection;
use jiff::Timestamp;

use super::{Candidate, CandidatePerson, Matches, gathering, withheld};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
    remembered::clearance,
    words,
};

/// Ranks the roster for a slot. Whoever may read the production learns who qualifies; the reasons that tell
/// of bodies and health are withheld from those who may not read them.
///
/// # Errors
/// Without the permission, when there is no such slot, or when the gag has no shooting day yet.
pub fn matches(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
    gag: GagId,
    slot: SlotId,
) -> Result<Matches, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let (_, case) = gathering::case_with(conn, &shared, gag)?;
    let setting = &case.plan.facets.setting;
    let slot = case
        .plan
        .facets
        .cast
        .slots
        .iter()
        .find(|one| one.id == slot)
        .ok_or_else(|| CommandError::NotFound {
            what: "slot",
            id: slot.to_string(),
        })?;
    let Some(day) = setting.day else {
        return Err(CommandError::Conflict {
            what: "shooting day",
            detail:
                "the plan has none, and who qualifies depends on it; write one into the setting"
                    .into(),
        });
    };
    let context = Context {
        gag,
        revision: case.plan.revision,
        day,
        call: setting.call,
        today: Some(
            now.to_zoned(words::zone(&shared.production.time_zone))
                .date(),
        ),
    };
    // Consent is the performer's own standing sign-off, as the judge has it, and nothing else.
    let consented: BTreeSet<_> = clearance(&case, now)
        .roles
        .into_iter()
        .filter(|role| role.slot == Some(slot.id) && role.state == RoleState::Standing)
        .filter_map(|role| role.signer)
        .collect();
    let people: Vec<Person> = shared
        .people
        .values()
        .cloned()
        .map(|mut person| {
            person.consents.retain(|consent| consent.gag != gag);
            let day = &shared.day;
            with_takes(
                &mut person,
                day.taken.values().flatten(),
                day.practised.values().flatten(),
                &day.looks,
            );
            if consented.contains(&person.id) {
                let revision = case.plan.revision;
                person.consents.push(Consent {
                    gag,
                    revision,
                    withdrawn: None,
                });
            }
            person
        })
        .collect();
    let items = rank(slot, &people, &context, Catalogue::built_in())
        .into_iter()
        .filter_map(|mut verdict| {
            withheld::reasons(reader, &mut verdict);
            let person = shared.people.get(&verdict.person)?;
            Some(Candidate {
                person: CandidatePerson {
                    id: person.id,
                    name: person.name.clone(),
                    code: person.code.clone(),
                    occupation: person.occupation.clone(),
                },
                verdict,
            })
        })
        .collect();
    Ok(Matches {
        slot: slot.clone(),
        day: Some(day),
        items,
    })
}
