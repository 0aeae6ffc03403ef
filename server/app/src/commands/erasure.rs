//! Erasing a person: what the roster says of them, what they wrote and what they drew go, with the salts that
//! would let anybody guess at it. Leaves, proofs and signatures stay as good as they were.

use gagwright_casting::PersonId;
use gagwright_clearance::{Role, replay::erased_person};
use gagwright_store::{Connection, erasing};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use serde_json::json;

use super::{Actor, CommandError, record};
use crate::permissions::Permission;

/// What was taken away, and what stays.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, utoipa::ToSchema)]
pub struct ErasedPerson {
    /// Who.
    pub person: PersonId,
    /// The leaf that says so.
    pub leaf: u64,
    /// Parts taken away from beside leaves of the trail.
    pub parts: u32,
    /// Sign-offs whose texts were taken away; their commitments stand.
    pub openings: u32,
    /// Drawn marks taken away.
    pub marks: u32,
    /// Codes of gags whose current plan still casts them or names them in its inputs: plans are the production's
    /// record and stay; revise these to put somebody else in.
    pub cast_in: Vec<String>,
}

/// Erases a person.
///
/// # Errors
/// Without the role production, when nobody of that id is on the roster, or when they are the actor: somebody
/// else must see that it is done.
pub fn erase(
    conn: &mut Connection,
    actor: &Actor,
    now: Timestamp,
    person: PersonId,
) -> Result<ErasedPerson, CommandError> {
    actor.require_role(Role::Production, Permission::EditPeople)?;
    let stored = record::person(conn, actor.production, person)?;
    if person == actor.person {
        return Err(CommandError::Conflict {
            what: "person",
            detail: "nobody erases themselves; ask somebody else with the role production".into(),
        });
    }
    let nobody = erased_person(person);
    if stored.person == nobody {
        return Err(CommandError::Conflict {
            what: "person",
            detail: "they were erased before; nothing is left to do".into(),
        });
    }
    let mut cast_in = Vec::new();
    for plan in gagwright_store::plans::current_for_production(conn, actor.production)? {
        let cast = plan.facets.cast.slots.iter();
        if cast.filter_map(|slot| slot.person).any(|one| one == person) {
            cast_in.push(record::gag(conn, actor.production, plan.gag)?.code);
        }
    }
    cast_in.sort();
    let leaf = record::Leaf::new("person.erased", now, Some(actor))
        .fact("person", json!(person))
        .append(conn)?;
    let erased = erasing::erase(conn, actor.production, person, now)?;
    gagwright_store::people::update(conn, actor.production, &nobody, None)?;
    Ok(ErasedPerson {
        person,
        leaf,
        parts: count(erased.parts),
        openings: count(erased.openings),
        marks: count(erased.marks),
        cast_in,
    })
}

fn count(number: usize) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}
