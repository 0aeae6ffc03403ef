//! Recording a briefing on the spot: who was there. Absentees are briefed by another one.

use gagwright_casting::GagId;
use gagwright_clearance::{case::Briefing, judge};
use gagwright_store::{Connection, day_records, day_records::Kind};
use jiff::Timestamp;
use serde_json::json;

use super::NewBriefing;
use crate::{
    commands::{
        Actor, CommandError, Entropy,
        problems::{LONG, Problems, SHORT},
        record,
    },
    permissions::Permission,
};

/// Records a briefing.
///
/// # Errors
/// Without [`Permission::LogDay`], for a revision there is not, for people not on the roster, or when the
/// id is taken.
pub fn brief(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    new: NewBriefing,
    entropy: Entropy<'_>,
) -> Result<Briefing, CommandError> {
    actor.require(Permission::LogDay)?;
    let row = record::gag(conn, actor.production, gag)?;
    let mut problems = Problems::default();
    problems.required("/place", &new.place, SHORT);
    problems.text("/points", &new.points, LONG);
    let current = gagwright_store::plans::current(conn, gag)?.revision;
    if new.revision == 0 || new.revision > current {
        problems.add(
            "/revision",
            format!("there is no revision {}", new.revision),
            format!("revision {current} is current"),
        );
    }
    for (at, person) in new.attended.iter().enumerate() {
        if gagwright_store::people::get(conn, actor.production, *person)?.is_none() {
            problems.add(
                format!("/attended/{at}"),
                format!("{person} is not on the roster"),
                "add them first, or leave them out",
            );
        }
    }
    problems.finish()?;
    let plan = gagwright_store::plans::get(conn, gag, new.revision)?;
    let mut facets = record::facet_hashes(&plan.facets)?;
    facets.retain(|facet, _| judge::BRIEFED.contains(facet));
    let briefing = Briefing {
        id: new.id,
        day: new.day,
        place: new.place,
        revision: new.revision,
        facets,
        at: new.at.min(now),
        by: actor.person,
        attended: new.attended,
        points: new.points,
    };
    let leaf = record::Leaf::new("briefing.held", now, Some(actor))
        .about(gag)
        .fact("code", json!(row.code))
        .fact("briefing", json!(briefing.id))
        .fact("day", json!(briefing.day))
        .fact("revision", json!(briefing.revision))
        .fact("facets", json!(briefing.facets))
        .happened("at", new.at)
        .fact("attended", json!(briefing.attended))
        .part("place", None, json!(briefing.place), entropy)
        .personal(json!({ "points": briefing.points }), entropy)
        .append(conn)?;
    let production = actor.production;
    day_records::insert(
        conn,
        production,
        Some(gag),
        Kind::Briefing,
        briefing.id,
        &briefing,
        leaf,
    )?;
    Ok(briefing)
}
