//! What one person has to know today: what they are asked to sign, what is held, which gags come next
//! and which certificates run out before they are needed.

use std::collections::BTreeMap;

use gagwright_casting::{Catalogue, PersonId};
use gagwright_clearance::{Case, Clearance, day_mark, delegation, judge::missing_agreements, owed};
use gagwright_store::{Connection, gags::GagRow};
use jiff::{Timestamp, civil::Date};

use super::{
    CertificateExpiry, GagRef, HeldItem, LapsingCertificate, ToSign, Today,
    gags::{person_ref, shown, summary},
    gathering,
};
use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
    remembered::clearance,
    words,
};

/// How many gags are shown as next.
const NEXT: usize = 5;

/// Puts the reader's day together.
///
/// # Errors
/// When the reader may not read the production.
pub fn today(conn: &mut Connection, reader: &Actor, now: Timestamp) -> Result<Today, CommandError> {
    reader.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, reader.production)?;
    let today = now
        .to_zoned(words::zone(&shared.production.time_zone))
        .date();
    let mut judged: Vec<(GagRow, Case, Clearance)> = gathering::all_cases(conn, &shared)?
        .into_iter()
        .map(|(row, case)| {
            let case = shown(reader, case);
            let answer = clearance(&case, now);
            (row, case, answer)
        })
        .collect();
    judged.sort_by(|a, b| {
        let day = |case: &Case| case.plan.facets.setting.day;
        (day(&a.1).is_none(), day(&a.1), &a.0.code).cmp(&(
            day(&b.1).is_none(),
            day(&b.1),
            &b.0.code,
        ))
    });

    let to_sign = judged
        .iter()
        .flat_map(|(row, case, answer)| to_sign(reader, row, case, answer, now))
        .collect();
    let by_id: BTreeMap<_, GagRef> = judged
        .iter()
        .map(|(row, _, _)| (row.id, gag_ref(row)))
        .collect();
    let members = shared.hats();
    let held = shared
        .holds
        .iter()
        .filter_map(|hold| {
            let needs = missing_agreements(hold, &shared.production.policy, &members);
            (!needs.is_empty()).then(|| HeldItem {
                gag: hold.gag.and_then(|gag| by_id.get(&gag).cloned()),
                hold: hold.clone(),
                needs,
            })
        })
        .collect();
    let next = judged
        .iter()
        .filter(|(_, case, _)| case.plan.facets.setting.day.is_some_and(|day| day >= today))
        .take(NEXT)
        .map(|(row, case, answer)| summary(row, case, answer))
        .collect();
    Ok(Today {
        now,
        to_sign,
        held,
        next,
        lapsing_certificates: lapsing(reader, &shared, &judged, today),
    })
}

pub(crate) fn gag_ref(row: &GagRow) -> GagRef {
    GagRef {
        id: row.id,
        code: row.code.clone(),
        title: row.title.clone(),
    }
}

/// Signatures the reader could give now, under any of their hats.
fn to_sign(
    reader: &Actor,
    row: &GagRow,
    case: &Case,
    answer: &Clearance,
    now: Timestamp,
) -> Vec<ToSign> {
    let (who, cast) = (reader.person, answer.cast());
    let hats = delegation::hats(case, who, now);
    let plan = owed(&answer.roles, &cast, who, &hats);
    // A day is signed on the day.
    let day = Some(answer.day.day).filter(|_| day_mark::is_today(case, now));
    let marks = day.map_or_else(Vec::new, |_| owed(&answer.day.marks, &cast, who, &hats));
    let plan = plan.into_iter().map(|one| (one, None));
    plan.chain(marks.into_iter().map(|one| (one, day)))
        .filter(|(one, _)| one.asked)
        .map(|(one, day)| ToSign {
            gag: gag_ref(row),
            role: one.role,
            role_title: one.title,
            slot: one.slot,
            state: one.state,
            why: one.why,
            day,
        })
        .collect()
}

/// Certificates that run out before a day their holder is cast for. Everyone sees their own; those who
/// cast see all.
fn lapsing(
    reader: &Actor,
    shared: &gathering::Shared,
    judged: &[(GagRow, Case, Clearance)],
    today: Date,
) -> Vec<LapsingCertificate> {
    let mut days: BTreeMap<PersonId, Vec<Date>> = BTreeMap::new();
    for (_, case, _) in judged {
        let Some(day) = case.plan.facets.setting.day.filter(|day| *day >= today) else {
            continue;
        };
        for person in case
            .plan
            .facets
            .cast
            .slots
            .iter()
            .filter_map(|slot| slot.person)
        {
            days.entry(person).or_default().push(day);
        }
    }
    let all = reader.may(Permission::EditPlans) || reader.may(Permission::EditPeople);
    let mut found: Vec<LapsingCertificate> = days
        .into_iter()
        .filter(|(person, _)| all || *person == reader.person)
        .filter_map(|(person, days)| Some((shared.people.get(&person)?, days)))
        .flat_map(|(person, days)| {
            gagwright_casting::lapsing([person], &days, Catalogue::built_in())
        })
        .map(|lapse| LapsingCertificate {
            person: person_ref(lapse.person, &shared.people),
            certificate: CertificateExpiry {
                kind: lapse.kind,
                expires: lapse.last_day,
            },
            before_day: lapse.before,
        })
        .collect();
    found.sort_by_key(|one| one.certificate.expires);
    found
}
