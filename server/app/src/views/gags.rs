//! A gag's page and the list of gags, each judged by clearance from the case that the reader may see.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{PersonId, Requirement};
use gagwright_clearance::{
    Case, Clearance, GagId, RoleState, TestShot,
    case::{DayLog, StandDown},
    judge::{self, age_day, missing_agreements},
    plan::FacetHashes,
};
use gagwright_mechanics::{Facet, Status};
use gagwright_store::{Connection, gags::GagRow};
use jiff::Timestamp;

use super::{GagHead, GagPage, GagSummary, PersonRef, PlanRevision, TrailPlace, gathering, reader};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
    remembered::clearance,
};

/// Everything about one gag.
///
/// # Errors
/// When the gag is not on the reader's production.
pub fn gag_page(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
    gag: GagId,
) -> Result<GagPage, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let (row, case) = gathering::case_with(conn, &shared, gag)?;
    let history = history(conn, gag, &shared.people)?;
    let leaf = history.first().map_or(0, |one| one.leaf);
    let case = shown(reader, case);
    let clearance = clearance(&case, now);
    let test_shots = gagwright_store::test_shots::for_gag(conn, gag)?;
    Ok(GagPage {
        names: mentioned(&case, &history, &test_shots, &shared.names()),
        marks: gagwright_store::drawn_marks::for_gag(conn, gag)?,
        test_shots,
        packet_url: format!("/api/v1/gags/{gag}/packet"),
        trail: TrailPlace {
            size: gagwright_store::trail::size(conn, reader.production)?,
            leaf,
        },
        gag: GagHead {
            id: row.id,
            code: row.code,
            title: row.title,
            production: reader.production,
        },
        plan: case.plan.clone(),
        case,
        clearance,
        history,
    })
}

/// A case as this reader may see it. The judge answers the same from it as from the whole.
pub fn shown(reader: &Actor, mut case: Case) -> Case {
    let day = case.plan.facets.setting.day;
    let age_day = age_day(&case.plan);
    let slots = &case.plan.facets.cast.slots;
    case.people = case
        .people
        .iter()
        .map(
            |person| match slots.iter().find(|slot| slot.person == Some(person.id)) {
                Some(slot) => reader::in_slot(reader, person, slot, day, age_day),
                None => reader::on_roster(reader, person),
            },
        )
        .collect();
    if !reader.may(Permission::ReadMedical) {
        keep_to_the_medic(reader, &mut case);
    }
    if !reader.may(Permission::ReadPersonal) {
        for member in case
            .members
            .iter_mut()
            .filter(|member| member.person != reader.person)
        {
            for certificate in &mut member.certificates {
                certificate.number = None;
            }
        }
    }
    case
}

/// That somebody's head was struck is between them and the medic: what others need to know is until when
/// they do not perform.
fn keep_to_the_medic(reader: &Actor, case: &mut Case) {
    let days = case.policy.after_take.head_impact_days;
    let mut asked: BTreeSet<PersonId> = BTreeSet::new();
    for slot in &case.plan.facets.cast.slots {
        let counts = slot.requirements.iter().any(|one| {
            matches!(one, Requirement::DailyExposure { exposure, .. } if exposure == judge::HEAD_IMPACT)
        });
        asked.extend(slot.person.filter(|_| counts));
    }
    let day = &mut case.day;
    let looks = day.looks.iter_mut();
    for look in looks.filter(|look| look.head_impact && look.person != reader.person) {
        look.head_impact = false;
        day.stand_downs.push(StandDown {
            id: look.id,
            person: look.person,
            from: look.at,
            until: Some(judge::rests_until(look, days)),
            by: look.by,
            returned: None,
            after_look: true,
        });
        if asked.contains(&look.person) {
            day.taken.push(judge::head_impact(look));
        }
    }
}

fn history(
    conn: &mut Connection,
    gag: GagId,
    people: &BTreeMap<PersonId, gagwright_casting::Person>,
) -> Result<Vec<PlanRevision>, CommandError> {
    let mut revisions = Vec::new();
    let mut before = FacetHashes::new();
    for one in gagwright_store::plans::history(conn, gag)? {
        let changed = Facet::ALL
            .into_iter()
            .filter(|facet| before.get(facet) != one.facets.get(facet))
            .collect();
        before = one.facets;
        revisions.push(PlanRevision {
            revision: one.revision,
            author: person_ref(one.author, people),
            written_at: one.written_at,
            note: one.note,
            digest: one.digest,
            leaf: one.leaf,
            changed,
        });
    }
    revisions.reverse();
    Ok(revisions)
}

/// A person by their names; somebody no longer on the roster keeps their id.
pub(crate) fn person_ref(
    id: PersonId,
    people: &BTreeMap<PersonId, gagwright_casting::Person>,
) -> PersonRef {
    match people.get(&id) {
        Some(person) => PersonRef {
            id,
            name: person.name.clone(),
            code: person.code.clone(),
        },
        None => PersonRef {
            id,
            name: "no longer on the roster".into(),
            code: String::new(),
        },
    }
}

fn mentioned(
    case: &Case,
    history: &[PlanRevision],
    test_shots: &[TestShot],
    names: &BTreeMap<PersonId, String>,
) -> BTreeMap<PersonId, String> {
    let mut ids: Vec<PersonId> = history.iter().map(|one| one.author.id).collect();
    ids.extend(case.people.iter().map(|person| person.id));
    ids.extend(case.members.iter().map(|member| member.person));
    ids.extend(case.devices.iter().map(|device| device.person));
    ids.extend(case.readings.iter().map(|reading| reading.by));
    ids.extend(case.runs.iter().map(|run| run.by));
    ids.extend(test_shots.iter().map(|shot| shot.recorded_by));
    ids.extend(day_mentions(&case.day));
    for hold in &case.holds {
        ids.extend(hold.raised_by);
        ids.extend(hold.agreements.iter().map(|one| one.person));
    }
    ids.into_iter()
        .filter_map(|id| names.get(&id).map(|name| (id, name.clone())))
        .collect()
}

/// Everyone whom the day's records name.
fn day_mentions(day: &DayLog) -> Vec<PersonId> {
    let mut ids: Vec<PersonId> = Vec::new();
    for one in &day.briefings {
        ids.push(one.by);
        ids.extend(&one.attended);
    }
    for one in &day.takes {
        ids.push(one.called_by);
        ids.extend(one.cast.values());
        ids.extend(one.outcome.iter().map(|outcome| outcome.by));
    }
    for one in &day.debriefs {
        ids.extend([one.led_by, one.by]);
        ids.extend(&one.attended);
        ids.extend(one.used.iter().map(|used| used.person));
    }
    ids.extend(day.looks.iter().flat_map(|one| [one.person, one.by]));
    ids.extend(day.stand_downs.iter().flat_map(|one| [one.person, one.by]));
    ids.extend(day.incidents.iter().map(|one| one.by));
    ids
}

/// Every gag of the production, by shooting day and code.
///
/// # Errors
/// When the reader may not read the production.
pub fn gag_list(
    conn: &mut Connection,
    reader: &Actor,
    now: Timestamp,
) -> Result<Vec<GagSummary>, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let mut items: Vec<GagSummary> = gathering::all_cases(conn, &shared)?
        .into_iter()
        .map(|(row, case)| {
            let case = shown(reader, case);
            summary(&row, &case, &clearance(&case, now))
        })
        .collect();
    items.sort_by(|a, b| (a.day.is_none(), a.day, &a.code).cmp(&(b.day.is_none(), b.day, &b.code)));
    Ok(items)
}

/// One line about a gag.
pub(crate) fn summary(row: &GagRow, case: &Case, judged: &Clearance) -> GagSummary {
    let setting = &case.plan.facets.setting;
    let standing = judged
        .roles
        .iter()
        .filter(|role| role.state == RoleState::Standing)
        .count();
    let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
    GagSummary {
        id: row.id,
        code: row.code.clone(),
        title: row.title.clone(),
        technique: case.plan.technique.clone(),
        technique_title: gagwright_mechanics::find(&case.plan.technique)
            .map_or_else(|| case.plan.technique.clone(), |one| one.title().to_owned()),
        scene: setting.scene.clone(),
        location: setting.location.clone(),
        unit: setting.unit.clone(),
        day: setting.day,
        revision: case.plan.revision,
        state: judged.state,
        roles_needed: count(judged.roles.len()),
        roles_standing: count(standing),
        worst_check: judged.assessment.as_ref().map(|one| {
            one.checks
                .iter()
                .map(|check| check.status)
                .max()
                .unwrap_or(Status::Within)
        }),
        top_block: judged.blocks.first().map(|block| block.reason.clone()),
        open_holds: count(
            case.holds
                .iter()
                .filter(|hold| !missing_agreements(hold, &case.policy, &case.members).is_empty())
                .count(),
        ),
    }
}
