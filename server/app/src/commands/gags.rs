//! Adding a gag: its code, its title and the first revision of its plan.

use gagwright_casting::SlotId;
use gagwright_clearance::Plan;
use gagwright_store::{Connection, gags::GagRow};
use jiff::Timestamp;

use super::{
    Actor, CommandError, Entropy, NewGag,
    plans::{self, Revision},
    problems::{Problems, SHORT},
    record,
};
use crate::permissions::Permission;

/// Creates a gag with revision 1 of its plan. What the body leaves out starts from the policy's
/// defaults for the technique: its ladder, and one slot with the technique's requirements.
///
/// # Errors
/// Without [`Permission::EditPlans`], for fields that are not valid, or when the id or the code is
/// taken.
pub fn create(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    new: NewGag,
    entropy: Entropy<'_>,
) -> Result<Plan, CommandError> {
    actor.require(Permission::EditPlans)?;
    let policy = record::policy(conn, actor.production)?;
    let mut problems = Problems::default();
    problems.required("/code", &new.code, 12);
    if !new
        .code
        .chars()
        .all(|one| one.is_ascii_alphanumeric() || one == '-')
    {
        problems.add(
            "/code",
            "holds something other than letters, digits and dashes",
            "use a short code that reads well over a radio, for example G07",
        );
    }
    problems.required("/title", &new.title, SHORT);
    let facets = match new.facets {
        Some(facets) => facets,
        // The slot's id follows from the gag's, so that the same request makes the same plan.
        None => Plan::starting(&new.technique, &policy, SlotId(new.id.0)),
    };
    let revision = Revision {
        technique: new.technique,
        facets,
        note: new.note,
    };
    plans::check(conn, actor.production, &revision, &mut problems)?;
    problems.finish()?;
    if gagwright_store::gags::by_code(conn, actor.production, &new.code)?.is_some() {
        return Err(CommandError::Conflict {
            what: "code",
            detail: format!(
                "{} is another gag on this production; choose another code",
                new.code
            ),
        });
    }
    let row = GagRow {
        id: new.id,
        production: actor.production,
        code: new.code,
        title: new.title,
        // The plan that follows in this same transaction makes it 1.
        current_revision: 0,
        created_at: now,
    };
    gagwright_store::gags::insert(conn, &row)?;
    plans::write(
        conn,
        actor,
        now,
        &row,
        1,
        revision,
        &policy,
        "gag.created",
        entropy,
    )
}
