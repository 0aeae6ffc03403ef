//! Recording what was said after the takes of a day. Whoever may brief may debrief; a second one of the same day
//! says more, and of a performer's skills the last word counts.

use std::collections::{BTreeMap, BTreeSet};

use gagwright_casting::{GagId, PersonId, Requirement};
use gagwright_clearance::{
    Plan,
    case::{Debrief, Take},
    replay::used_part,
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::{Timestamp, ToSpan, tz::Offset};
use serde_json::json;

use super::NewDebrief;
use crate::{
    commands::{
        Actor, CommandError, Entropy,
        problems::{LONG, Problems, SHORT},
        record,
    },
    permissions::Permission,
};

/// A debrief that is kept.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    /// The record.
    pub debrief: Debrief,
    /// Whether the very same was recorded before.
    pub before: bool,
}

/// Records a debrief. The same one sent again is recorded once.
///
/// # Errors
/// Without [`Permission::LogDay`], when it says nothing, for a revision there is not, for people not on the roster, for
/// skills that nobody asked of them, or when the id is taken.
pub fn debrief(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewDebrief,
    entropy: Entropy<'_>,
) -> Result<Taken, CommandError> {
    actor.require(Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    let debrief = Debrief {
        id: new.id,
        day: new.day,
        place: new.place,
        revision: new.revision,
        at: new.at.min(now),
        led_by: new.led_by,
        by: actor.person,
        attended: new.attended,
        as_planned: new.as_planned,
        differently: new.differently,
        next_time: new.next_time,
        used: new.used,
    };
    let known: Option<day_records::Kept<Debrief>> =
        day_records::get(conn, actor.production, Kind::Debrief, debrief.id)?;
    if let Some((of, known)) = known {
        // By a clock that is ahead it was taken as of its arrival, which comes later when it is sent again.
        let again = Debrief {
            at: known.at,
            ..debrief.clone()
        };
        if of == Some(gag) && again == known && known.at <= new.at {
            return Ok(Taken {
                debrief: known,
                before: true,
            });
        }
    }
    let mut problems = Problems::default();
    words(&mut problems, &debrief);
    // Somewhere it is tomorrow already.
    let tomorrow = Offset::UTC.to_datetime(now).date().saturating_add(1.day());
    if debrief.day > tomorrow {
        problems.add(
            "/day",
            "is still to come",
            "debrief after the takes of a day",
        );
    }
    let current = gagwright_store::plans::current(conn, gag)?.revision;
    problems.reached("/revision", debrief.revision, current);
    on_roster(conn, actor, &mut problems, &debrief)?;
    problems.finish()?;
    let plan = gagwright_store::plans::get(conn, gag, debrief.revision)?;
    let takes: Vec<day_records::Kept<Take>> =
        day_records::list(conn, actor.production, Kind::Take)?;
    let takes = takes
        .into_iter()
        .filter(|(of, take)| *of == Some(gag) && take.day == debrief.day)
        .map(|(_, take)| take);
    asked_of_them(&debrief, &asked(&plan, takes))?;
    let performers: Vec<PersonId> = debrief.used.iter().map(|one| one.person).collect();
    let mut leaf = record::Leaf::new("gag.debriefed", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("debrief", json!(debrief.id))
        .fact("day", json!(debrief.day))
        .fact("revision", json!(debrief.revision))
        .happened("at", new.at)
        .fact("led_by", json!(debrief.led_by))
        .fact("attended", json!(debrief.attended))
        .fact("performers", json!(performers))
        .part("place", None, json!(debrief.place), entropy);
    for one in &debrief.used {
        // About the performer, not about whoever wrote it down: erasing the performer takes it away.
        let name = used_part(one.person);
        leaf = leaf.part(name, Some(one.person), json!(one.skills), entropy);
    }
    let leaf = leaf
        .personal(
            json!({
                "as_planned": debrief.as_planned,
                "differently": debrief.differently,
                "next_time": debrief.next_time,
            }),
            entropy,
        )
        .append(conn)?;
    day_records::insert(
        conn,
        actor.production,
        Some(gag),
        Kind::Debrief,
        debrief.id,
        &debrief,
        leaf,
    )?;
    Ok(Taken {
        debrief,
        before: false,
    })
}

fn words(problems: &mut Problems, new: &Debrief) {
    problems.required("/place", &new.place, SHORT);
    let said = [
        ("/as_planned", &new.as_planned),
        ("/differently", &new.differently),
        ("/next_time", &new.next_time),
    ];
    for (pointer, text) in said {
        problems.text(pointer, text, LONG);
    }
    if said.iter().all(|(_, text)| text.trim().is_empty()) {
        problems.add(
            "/as_planned",
            "nothing is said here or beside it",
            "say what went as planned, what went differently or what changes next time",
        );
    }
}

fn on_roster(
    conn: &mut Connection,
    actor: &Actor,
    problems: &mut Problems,
    new: &Debrief,
) -> Result<(), CommandError> {
    let attended = new.attended.iter().enumerate();
    let attended = attended.map(|(at, person)| (format!("/attended/{at}"), *person));
    let used = new.used.iter().enumerate();
    let used = used.map(|(at, one)| (format!("/used/{at}/person"), one.person));
    let all = [("/led_by".to_owned(), new.led_by)];
    for (pointer, person) in all.into_iter().chain(attended).chain(used) {
        if gagwright_store::people::get(conn, actor.production, person)?.is_none() {
            problems.add(
                pointer,
                format!("{person} is not on the roster"),
                "add them first, or leave them out",
            );
        }
    }
    let mut named = BTreeSet::new();
    for (at, one) in new.used.iter().enumerate() {
        if record::is_erased(conn, actor.production, one.person)? {
            problems.add(
                format!("/used/{at}/person"),
                format!("{} was erased from the record", one.person),
                "leave them out",
            );
        }
        if !named.insert(one.person) {
            problems.add(
                format!("/used/{at}/person"),
                format!("{} is named twice", one.person),
                "name each performer once, with every skill they used",
            );
        }
    }
    Ok(())
}

/// The skills that their slots asked of everyone who is cast or performed.
fn asked(plan: &Plan, takes: impl Iterator<Item = Take>) -> BTreeMap<PersonId, BTreeSet<String>> {
    let slots = &plan.facets.cast.slots;
    let cast = slots
        .iter()
        .filter_map(|slot| Some((slot.id, slot.person?)));
    let performed = takes.flat_map(|take| take.cast);
    let mut asked: BTreeMap<PersonId, BTreeSet<String>> = BTreeMap::new();
    for (slot, person) in cast.chain(performed) {
        let requirements = slots.iter().filter(|one| one.id == slot);
        let skills = requirements
            .flat_map(|one| &one.requirements)
            .filter_map(|one| match one {
                Requirement::Skill { name, .. } => Some(name.clone()),
                _ => None,
            });
        asked.entry(person).or_default().extend(skills);
    }
    asked
}

fn asked_of_them(
    new: &Debrief,
    asked: &BTreeMap<PersonId, BTreeSet<String>>,
) -> Result<(), CommandError> {
    let mut problems = Problems::default();
    for (at, one) in new.used.iter().enumerate() {
        let Some(skills) = asked.get(&one.person) else {
            problems.add(
                format!("/used/{at}/person"),
                format!(
                    "{} is not cast in revision {} and was in no take of {}",
                    one.person, new.revision, new.day
                ),
                "name only who performed that day",
            );
            continue;
        };
        for (place, name) in one.skills.iter().enumerate() {
            if skills.contains(name) {
                continue;
            }
            let fix = if skills.is_empty() {
                "leave it out: their slot asks for no skill".to_owned()
            } else {
                let known: Vec<&str> = skills.iter().map(String::as_str).collect();
                format!("leave it out, or choose from: {}", known.join(", "))
            };
            let name: String = name.chars().take(80).collect();
            problems.add(
                format!("/used/{at}/skills/{place}"),
                format!("\"{name}\" is no skill that their slot asks for"),
                fix,
            );
        }
    }
    problems.finish()
}
