//! The tables of what people have: certificates, skills, days. Each row names its person by code.

use std::collections::BTreeMap;

use super::{
    apply::Desk,
    error::{Report, Wrong},
    rows::{AvailabilityRow, CertificateRow, SkillRow},
};
use crate::{
    ids::CertificateId,
    nearest::nearest,
    person::{Availability, Certificate, Person, Skill},
};

/// The person a row names, or nothing once the report says they are not there.
fn owner<'a>(
    code: &str,
    row: usize,
    people: &'a mut BTreeMap<String, Person>,
    report: &mut Report,
) -> Option<&'a mut Person> {
    let key = code.to_lowercase();
    if !people.contains_key(&key) {
        // Every unlisted row would pay for a search that nobody reads.
        let near = report
            .has_room()
            .then(|| nearest(&key, people.keys().map(String::as_str)))
            .flatten()
            .and_then(|near| people.get(near));
        let fix = near.map_or_else(
            || "import the people table first, or check the code".into(),
            |near| {
                format!(
                    "did you mean {} ({})? Otherwise import people first",
                    near.code, near.name
                )
            },
        );
        let problem = format!("nobody has the code {code}");
        report.add(row, "person", Wrong::new(problem, fix));
    }
    people.get_mut(&key)
}

pub(super) fn certificates(rows: &[CertificateRow], desk: &mut Desk<'_>, report: &mut Report) {
    for row in rows {
        let facts = [
            ("last_used", row.last_used),
            ("checked_on", row.checked.as_ref().map(|check| check.on)),
        ];
        for (column, day) in facts {
            if let Some(day) = day {
                desk.not_future(row.row, column, day, report);
            }
        }
        let Some(person) = owner(&row.person, row.row, &mut desk.people, report) else {
            continue;
        };
        let held = person.certificates.iter_mut().find(|held| {
            held.kind == row.kind
                && held.category == row.category
                && held.number == row.number
                && held.issued == row.issued
        });
        match held {
            Some(held) => {
                let before = held.clone();
                held.issuer = row.issuer.clone().or(held.issuer.take());
                held.expires = row.expires.or(held.expires);
                held.last_used = row.last_used.or(held.last_used);
                held.checked = row.checked.clone().or(held.checked.take());
                held.withdrawn = row.withdrawn.or(held.withdrawn);
                let changed = *held != before;
                desk.count(changed);
            }
            None => {
                person.certificates.push(Certificate {
                    id: CertificateId((desk.mint)()),
                    kind: row.kind.clone(),
                    category: row.category.clone(),
                    number: row.number.clone(),
                    issuer: row.issuer.clone(),
                    issued: row.issued,
                    expires: row.expires,
                    last_used: row.last_used,
                    checked: row.checked.clone(),
                    withdrawn: row.withdrawn,
                });
                desk.created += 1;
            }
        }
    }
}

pub(super) fn skills(rows: &[SkillRow], desk: &mut Desk<'_>, report: &mut Report) {
    for row in rows {
        for (column, day) in [
            ("assessed_on", row.assessed_on),
            ("last_used", row.last_used),
        ] {
            if let Some(day) = day {
                desk.not_future(row.row, column, day, report);
            }
        }
        let Some(person) = owner(&row.person, row.row, &mut desk.people, report) else {
            continue;
        };
        match person.skills.iter_mut().find(|held| held.name == row.skill) {
            Some(held) => {
                let before = held.clone();
                held.level = row.level;
                held.assessed_by = row.assessed_by.clone().or(held.assessed_by.take());
                held.assessed_on = row.assessed_on.or(held.assessed_on);
                held.last_used = row.last_used.or(held.last_used);
                let changed = *held != before;
                desk.count(changed);
            }
            None => {
                person.skills.push(Skill {
                    name: row.skill.clone(),
                    level: row.level,
                    assessed_by: row.assessed_by.clone(),
                    assessed_on: row.assessed_on,
                    last_used: row.last_used,
                });
                desk.created += 1;
            }
        }
    }
}

/// Days are replaced for everyone the table lists: a newer answer to "when can you work" is the
/// whole answer, and an old refusal left standing beside it would win.
pub(super) fn availability(rows: &[AvailabilityRow], desk: &mut Desk<'_>, report: &mut Report) {
    let mut by_person: BTreeMap<String, Vec<&AvailabilityRow>> = BTreeMap::new();
    for row in rows {
        by_person
            .entry(row.person.to_lowercase())
            .or_default()
            .push(row);
    }
    for rows in by_person.values() {
        let Some(first) = rows.first() else { continue };
        let Some(person) = owner(&first.person, first.row, &mut desk.people, report) else {
            continue;
        };
        let mut before = person.availability.clone();
        let mut after: Vec<Availability> = rows
            .iter()
            .map(|row| Availability {
                from: row.from,
                to: row.to,
                available: row.available,
            })
            .collect();
        let span = |run: &Availability| (run.from, run.to, run.available);
        before.sort_by_key(span);
        after.sort_by_key(span);
        if before != after {
            person.availability.clone_from(&after);
        }
        for run in &after {
            let same_days = |old: &&Availability| old.from == run.from && old.to == run.to;
            match before.iter().find(same_days) {
                None => desk.created += 1,
                Some(old) => desk.count(old != run),
            }
        }
        let kept = |old: &&Availability| {
            after
                .iter()
                .any(|run| run.from == old.from && run.to == old.to)
        };
        desk.removed += before.iter().filter(|old| !kept(old)).count();
    }
}
