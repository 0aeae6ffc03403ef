//! Putting a production's own policy in force. Sign-offs are judged by the policy in force, so what would
//! lapse can be seen before it does.

use gagwright_clearance::{
    Policy,
    policy_change::{self, PolicyEffects},
};
use gagwright_store::{Connection, gags::GagRow, policies::KeptPolicy};
use jiff::Timestamp;
use serde_json::json;

use super::{
    Actor, CommandError, Entropy,
    problems::{LONG, Problems},
    record,
};
use crate::{permissions::Permission, remembered, views::gathering};

/// A policy looked at before it is put in force.
pub struct Previewed {
    /// What keeps it from coming into force.
    pub problems: Vec<gagwright_clearance::FieldProblem>,
    /// What it would change now, by gag; only gags on which it would change something.
    pub effects: Vec<(GagRow, PolicyEffects)>,
}

/// Says what a policy would change, without changing anything.
///
/// # Errors
/// Without [`Permission::ReadProduction`].
pub fn preview(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    policy: &Policy,
) -> Result<Previewed, CommandError> {
    actor.require(Permission::ReadProduction)?;
    let shared = gathering::shared(conn, actor.production)?;
    let problems = problems_of(conn, actor, &shared.production.policy, policy)?;
    let mut effects = Vec::new();
    for (row, case) in gathering::all_cases(conn, &shared)? {
        let found = policy_change::effects(&case, policy, now, remembered::find);
        if !found.is_empty() {
            effects.push((row, found));
        }
    }
    Ok(Previewed { problems, effects })
}

/// Puts a policy in force.
///
/// # Errors
/// Without [`Permission::ChangePolicy`], when `expected` is no longer the version in force, or when the
/// policy cannot follow it; then every problem is named.
pub fn put_in_force(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    expected: &str,
    mut policy: Policy,
    note: String,
    entropy: Entropy<'_>,
) -> Result<Policy, CommandError> {
    actor.require(Permission::ChangePolicy)?;
    let before = record::policy(conn, actor.production)?;
    if before.version != expected {
        return Err(CommandError::Conflict {
            what: "policy",
            detail: format!(
                "version {} is in force, not {expected}; read it, make the change in it and try again",
                before.version
            ),
        });
    }
    let mut problems = Problems::default();
    problems.text("/note", &note, LONG);
    for one in problems_of(conn, actor, &before, &policy)? {
        problems.add(format!("/policy{}", one.pointer), one.problem, one.fix);
    }
    problems.finish()?;
    name_setters(&before, &mut policy, actor);
    let document = serde_json::to_value(&policy).map_err(|error| {
        CommandError::invalid(
            "/policy",
            error.to_string(),
            "give finite numbers of ordinary size",
        )
    })?;
    let leaf = record::Leaf::new("policy.changed", now, Some(actor))
        .fact("from", json!(before.version))
        .fact("version", json!(policy.version))
        .fact("policy", document)
        .personal(json!({ "note": note }), entropy)
        .append(conn)?;
    gagwright_store::productions::set_policy(conn, actor.production, &policy)?;
    gagwright_store::policies::insert(
        conn,
        &KeptPolicy {
            production: actor.production,
            policy: policy.clone(),
            by: actor.person,
            note,
            at: now,
            leaf,
        },
    )?;
    Ok(policy)
}

fn problems_of(
    conn: &mut Connection,
    actor: &Actor,
    before: &Policy,
    policy: &Policy,
) -> Result<Vec<gagwright_clearance::FieldProblem>, CommandError> {
    let kept = gagwright_store::policies::list(conn, actor.production)?;
    let earlier: Vec<&Policy> = kept.iter().map(|one| &one.policy).collect();
    let mut found = policy_change::succession(before, &earlier, policy);
    let used = kept.iter().any(|one| one.policy.version == policy.version)
        || policy.version == Policy::built_in().version;
    if used && policy.version != before.version {
        found.push(gagwright_clearance::FieldProblem {
            pointer: "/version".to_owned(),
            problem: format!("a policy of version {} was in force before", policy.version),
            fix: "give the new one another version".to_owned(),
        });
    }
    Ok(found)
}

/// Whoever puts a limit in force has set it; one that stays as it was keeps who did.
fn name_setters(before: &Policy, policy: &mut Policy, actor: &Actor) {
    for (technique, own) in &mut policy.limits {
        for (check, limit) in own {
            let earlier = before.limits.get(technique).and_then(|all| all.get(check));
            let same = earlier
                .filter(|was| was.value == limit.value && was.because == limit.because)
                .and_then(|was| was.by);
            limit.by = Some(same.unwrap_or(actor.person));
        }
    }
}
