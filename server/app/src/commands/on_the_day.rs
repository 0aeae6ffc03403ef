//! What is done on the day, one file a subject: the register of equipment, briefings, marks for the day,
//! takes and what follows them, debriefs, people stood down, near misses and incidents. Everything here is an
//! addition and is recorded whenever it arrives: a phone with no signal has judged it already.

pub mod briefings;
pub mod debriefs;
pub mod equipment;
pub mod incidents;
mod inputs;
pub mod marks;
pub mod stand_downs;
pub mod takes;

use gagwright_casting::GagId;
use gagwright_clearance::RecordId;
use gagwright_store::{Connection, day_records, day_records::Kind};
use serde::de::DeserializeOwned;

pub use inputs::*;

use super::{Actor, CommandError};

/// One record of the actor's production.
fn kept<T: DeserializeOwned>(
    conn: &mut Connection,
    actor: &Actor,
    kind: Kind,
    what: &'static str,
    id: RecordId,
) -> Result<(Option<GagId>, T), CommandError> {
    day_records::get(conn, actor.production, kind, id)?.ok_or_else(|| CommandError::NotFound {
        what,
        id: id.to_string(),
    })
}
