//! Goes, how their takes ended, and the medic's looks. A go called on a phone with no signal was judged
//! there; when it arrives it is recorded with the server's own judgement of the moment it was called for.

use gagwright_casting::GagId;
use gagwright_clearance::{
    RecordId, Role,
    case::{GoJudged, Look, Take, TakeOutcome},
    day_mark,
};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::Timestamp;
use serde_json::json;

use super::{NewGo, NewLook, NewOutcome, kept};
use crate::{
    commands::{
        Actor, CommandError, Entropy,
        problems::{LONG, Problems, SHORT},
        record,
    },
    permissions::{Permission, role_name},
    remembered::clearance,
    views::{gathering, withheld},
};

/// Records a go, with whether it stood and why not.
///
/// # Errors
/// Without a hat that the policy lets call one, for a revision there is not, or when the id is taken.
pub fn go(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewGo,
    entropy: Entropy<'_>,
) -> Result<Take, CommandError> {
    actor.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, actor.production)?;
    let (row, case) = gathering::case_with(conn, &shared, gag)?;
    let callers = &case.policy.day.go;
    if callers.is_disjoint(&actor.roles) {
        let names: Vec<&str> = callers.iter().copied().map(role_name).collect();
        return Err(CommandError::Forbidden {
            permission: Permission::SignOff,
            why: Some(format!(
                "a go is called by one of these roles: {}",
                names.join(", ")
            )),
        });
    }
    let mut problems = Problems::default();
    problems.text("/place", &new.place, SHORT);
    if new.number == 0 {
        problems.add("/number", "is 0", "takes count from 1");
    }
    let current = case.plan.revision;
    problems.reached("/revision", new.revision, current);
    problems.finish()?;
    let plan = gagwright_store::plans::get(conn, gag, new.revision)?;
    let plan_digest = record::plan_digest(&plan.facets)?;
    let called_at = new.at.min(now);
    // As things are known now, at the moment it was called: what has ended since was still in the way.
    let mut standing = clearance(&case.reopened(called_at), called_at);
    // Kept with the take and shown to all: what of it tells of a body is not.
    withheld::from_everyone(&mut standing);
    let mut why_not: Vec<String> = standing
        .go
        .why_not
        .iter()
        .map(|one| one.reason.clone())
        .collect();
    if new.revision != current {
        why_not.push(format!(
            "The go was for revision {}; revision {current} is current.",
            new.revision
        ));
    }
    if new.plan_digest != plan_digest {
        why_not.push(format!(
            "The go was for another content of revision {}.",
            new.revision
        ));
    }
    let day = &standing.day;
    if new.day != day.day || day_mark::plain(&new.place) != day_mark::plain(&day.place) {
        why_not.push(format!(
            "The go was for {} at \"{}\"; the day was {} at \"{}\".",
            new.day, new.place, day.day, day.place
        ));
    }
    let apart = |role: &Role| case.policy.keeps_apart(*role, Role::Performer);
    if plan.casts(actor.person) && callers.intersection(&actor.roles).all(apart) {
        why_not.push("Whoever called the go performs in it.".to_owned());
    }
    let take = Take {
        id: new.id,
        number: new.number,
        called_at,
        called_by: actor.person,
        revision: new.revision,
        plan_digest,
        day: new.day,
        place: new.place,
        cast: day_mark::cast_of(&plan),
        judged: Some(GoJudged {
            stood: why_not.is_empty(),
            why_not,
        }),
        outcome: None,
    };
    let judged = take.judged.as_ref();
    let leaf = record::Leaf::new("go.called", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("take", json!(take.id))
        .fact("number", json!(take.number))
        .happened("called_at", new.at)
        .fact("revision", json!(take.revision))
        .fact("plan_digest", json!(take.plan_digest))
        .fact("day", json!(take.day))
        .fact("cast", json!(take.cast))
        .fact("stood", json!(judged.is_some_and(|one| one.stood)))
        // A go is judged by its place too, so that stays when whoever called it is erased.
        .part("place", None, json!(take.place), entropy)
        .personal(
            json!({ "why_not": judged.map(|one| &one.why_not) }),
            entropy,
        )
        .append(conn)?;
    day_records::insert(
        conn,
        actor.production,
        Some(gag),
        Kind::Take,
        take.id,
        &take,
        leaf,
    )?;
    Ok(take)
}

/// Records how a take ended.
///
/// # Errors
/// Without [`Permission::LogDay`], or when it was recorded before.
pub fn end(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    id: RecordId,
    new: NewOutcome,
    entropy: Entropy<'_>,
) -> Result<Take, CommandError> {
    actor.require(Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    let mut take = take_of(conn, actor, gag, id)?;
    let mut problems = Problems::default();
    problems.text("/note", &new.note, LONG);
    problems.finish()?;
    let at = new.at.min(now);
    if take.outcome.is_some() {
        return Err(CommandError::Conflict {
            what: "take",
            detail: format!("how take {} ended was recorded already", take.number),
        });
    }
    record::Leaf::new("take.ended", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("take", json!(id))
        .fact("number", json!(take.number))
        .fact("result", json!(new.result))
        .happened("at", new.at)
        .personal(json!({ "note": new.note }), entropy)
        .append(conn)?;
    take.outcome = Some(TakeOutcome {
        result: new.result,
        note: new.note,
        at,
        by: actor.person,
    });
    day_records::update(conn, Kind::Take, id, &take)?;
    Ok(take)
}

/// Records the medic's look at one performer. What was found in a body never stands in the trail in the
/// clear.
///
/// # Errors
/// Without the medic's hat, at oneself, for people or takes there are not, or when the id is taken.
pub fn look(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewLook,
    entropy: Entropy<'_>,
) -> Result<Look, CommandError> {
    actor.require_role(Role::Medic, Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    record::person(conn, actor.production, new.person)?;
    record::not_erased(conn, actor.production, new.person, "look")?;
    if let Some(take) = new.take {
        take_of(conn, actor, gag, take)?;
    }
    if new.person == actor.person {
        return Err(CommandError::Forbidden {
            permission: Permission::LogDay,
            why: Some("nobody says of themselves that they are fit; ask another medic".to_owned()),
        });
    }
    let look = Look {
        id: new.id,
        gag,
        take: new.take,
        person: new.person,
        day: new.day,
        fitness: new.fitness,
        head_impact: new.head_impact,
        at: new.at.min(now),
        by: actor.person,
    };
    let leaf = record::Leaf::new("look.recorded", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("look", json!(look.id))
        .fact("take", json!(look.take))
        .fact("person", json!(look.person))
        .fact("day", json!(look.day))
        .happened("at", new.at)
        // About the performer, not the medic: erasing the performer takes it away.
        .part(
            "look",
            Some(look.person),
            json!({ "fitness": look.fitness, "head_impact": look.head_impact }),
            entropy,
        )
        .append(conn)?;
    day_records::insert(
        conn,
        actor.production,
        Some(gag),
        Kind::Look,
        look.id,
        &look,
        leaf,
    )?;
    Ok(look)
}

fn take_of(
    conn: &mut Connection,
    actor: &Actor,
    gag: GagId,
    id: RecordId,
) -> Result<Take, CommandError> {
    let (of, take) = kept(conn, actor, Kind::Take, "take", id)?;
    if of == Some(gag) {
        return Ok(take);
    }
    Err(CommandError::NotFound {
        what: "take",
        id: id.to_string(),
    })
}
