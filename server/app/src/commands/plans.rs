//! Revising a plan. A revision is never edited in place, and one written against a plan that has
//! moved on is refused with both sides shown, facet by facet; nothing is merged silently.

use std::collections::BTreeSet;

use gagwright_clearance::{Facet, Facets, GagId, Plan, Policy};
use gagwright_store::{Connection, StoreError, gags::GagRow};
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CommandError, Entropy, NewRevision, StalePlan,
    problems::{LONG, Problems},
    record,
};
use crate::permissions::Permission;

pub(crate) use super::NewRevision as Revision;

/// Writes the next revision of a gag's plan.
///
/// # Errors
/// Without [`Permission::EditPlans`], for fields that are not valid, when nothing differs, or as
/// [`CommandError::StalePlan`] when `expected` is no longer the current revision.
pub fn revise(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: GagId,
    expected: u32,
    revision: NewRevision,
    entropy: Entropy<'_>,
) -> Result<Plan, CommandError> {
    actor.require(Permission::EditPlans)?;
    let row = record::gag(conn, actor.production, gag)?;
    let current = gagwright_store::plans::current(conn, gag)?;
    if current.revision != expected {
        return Err(stale(conn, gag, expected, current, revision.facets));
    }
    let policy = record::policy(conn, actor.production)?;
    let mut problems = Problems::default();
    check(conn, actor.production, &revision, &mut problems)?;
    problems.finish()?;
    if current.technique == revision.technique
        && current.policy == policy.version
        && changed(&current.facets, &revision.facets).is_empty()
    {
        return Err(CommandError::invalid(
            "/facets",
            format!("say exactly what revision {expected} says"),
            "change something, or leave the plan as it is: a new revision would only be noise",
        ));
    }
    let next = current.revision + 1;
    match write(
        conn,
        actor,
        now,
        &row,
        next,
        revision,
        &policy,
        "plan.revised",
        entropy,
    ) {
        // Another writer won the race between our reading and our writing.
        Err(CommandError::Store(StoreError::Conflict { .. })) => Err(CommandError::Conflict {
            what: "revision",
            detail: format!(
                "revision {next} was written by someone else just now; read it and try again"
            ),
        }),
        other => other,
    }
}

/// Everything wrong with the contents of a plan.
pub(crate) fn check(
    conn: &mut Connection,
    production: gagwright_casting::ProductionId,
    revision: &Revision,
    problems: &mut Problems,
) -> Result<(), CommandError> {
    problems.text("/note", &revision.note, LONG);
    let known: BTreeSet<_> = gagwright_store::people::list(conn, production)?
        .into_iter()
        .map(|stored| stored.person.id)
        .collect();
    for one in gagwright_clearance::validate::validate(&revision.facets, &revision.technique) {
        problems.add(one.pointer, one.problem, one.fix);
    }
    for (at, slot) in revision.facets.cast.slots.iter().enumerate() {
        if let Some(person) = slot.person.filter(|person| !known.contains(person)) {
            problems.add(
                format!("/facets/cast/slots/{at}/person"),
                format!("{person} is nobody on this production's roster"),
                "cast someone from the roster, or add them to it first",
            );
        }
    }
    Ok(())
}

/// Appends the leaf, stores the plan and moves the gag to it.
#[allow(clippy::too_many_arguments)] // one internal step of two use cases, each argument its own thing
pub(crate) fn write(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    gag: &GagRow,
    number: u32,
    revision: Revision,
    policy: &Policy,
    kind: &'static str,
    entropy: Entropy<'_>,
) -> Result<Plan, CommandError> {
    let plan = Plan {
        gag: gag.id,
        revision: number,
        technique: revision.technique,
        facets: revision.facets,
        policy: policy.version.clone(),
        author: actor.person,
        written_at: now,
        note: revision.note,
    };
    let hashes = record::facet_hashes(&plan.facets)?;
    let digest = record::plan_digest(&plan.facets)?;
    let leaf = record::Leaf::new(kind, now, Some(actor))
        .about(gag.id)
        .fact("code", json!(gag.code))
        .fact("revision", json!(number))
        .fact("technique", json!(plan.technique))
        .fact("policy", json!(policy.version))
        .fact("plan_digest", json!(digest))
        .fact("facets", json!(hashes))
        .part(
            "plan",
            None,
            json!({ "title": gag.title, "facets": plan.facets }),
            entropy,
        )
        .personal(json!({ "note": plan.note }), entropy)
        .append(conn)?;
    gagwright_store::plans::insert(conn, &plan, &digest, &hashes, leaf)?;
    Ok(plan)
}

/// Facets whose contents differ.
pub(crate) fn changed(before: &Facets, after: &Facets) -> Vec<Facet> {
    let differs = |facet: Facet| match facet {
        Facet::Setting => before.setting != after.setting,
        Facet::Action => before.action != after.action,
        Facet::Rigging => before.rigging != after.rigging,
        Facet::Effects => before.effects != after.effects,
        Facet::Vehicles => before.vehicles != after.vehicles,
        Facet::Cast => before.cast != after.cast,
        Facet::Medical => before.medical != after.medical,
        Facet::Camera => before.camera != after.camera,
        Facet::Conditions => before.conditions != after.conditions,
        Facet::Rehearsals => before.rehearsals != after.rehearsals,
    };
    Facet::ALL
        .into_iter()
        .filter(|facet| differs(*facet))
        .collect()
}

fn stale(
    conn: &mut Connection,
    gag: GagId,
    expected: u32,
    current: Plan,
    yours: Facets,
) -> CommandError {
    let base = match gagwright_store::plans::get(conn, gag, expected) {
        Ok(base) => base,
        Err(StoreError::NotFound { .. }) => {
            return CommandError::invalid(
                "/expected",
                format!("is revision {expected}, which this gag never had"),
                format!(
                    "read the plan again; it is at revision {}",
                    current.revision
                ),
            );
        }
        Err(other) => return other.into(),
    };
    CommandError::StalePlan(Box::new(StalePlan {
        expected,
        changed_theirs: changed(&base.facets, &current.facets),
        changed_yours: changed(&base.facets, &yours),
        current,
        yours,
    }))
}
