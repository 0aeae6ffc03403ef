//! Witnesses of the trail as people read them: who, since when, and which sizes each cosigned.

use gagwright_store::{
    Connection,
    witnesses::{self as kept, Cosignature, Witness},
};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::{
    commands::{Actor, CommandError},
    permissions::Permission,
};

/// A checkpoint that a witness cosigned.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct CosignedView {
    /// The witness's name.
    pub name: String,
    /// How many entries the trail had.
    pub size: u64,
    /// When, by the witness's clock.
    #[schema(value_type = String, format = DateTime)]
    pub at: Timestamp,
    /// When it came here.
    #[schema(value_type = String, format = DateTime)]
    pub received_at: Timestamp,
}

/// A witness of the production.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct WitnessView {
    /// The entry that added it, by which it is removed.
    pub id: u64,
    /// The name it signs under.
    pub name: String,
    /// Its public key, `name+hash+base64`.
    pub key: String,
    /// Since when.
    #[schema(value_type = String, format = DateTime)]
    pub added_at: Timestamp,
    /// Until when, where it was removed.
    #[schema(value_type = Option<String>, format = DateTime)]
    pub removed_at: Option<Timestamp>,
    /// What it cosigned, the newest first.
    pub cosigned: Vec<CosignedView>,
}

/// The production's witnesses.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Witnesses {
    /// How many entries the trail has now.
    pub size: u64,
    /// In the order they were added, those that were removed included.
    pub items: Vec<WitnessView>,
}

impl From<Cosignature> for CosignedView {
    fn from(one: Cosignature) -> Self {
        // What was taken in is dated at most minutes ahead of the server's clock.
        let seconds = i64::try_from(one.seconds).unwrap_or(i64::MAX);
        CosignedView {
            name: one.name,
            size: one.size,
            at: Timestamp::from_second(seconds).unwrap_or(Timestamp::MAX),
            received_at: one.received_at,
        }
    }
}

/// One witness with what it cosigned.
pub fn witness_view(witness: Witness, cosigned: &[Cosignature]) -> WitnessView {
    let own = cosigned.iter().rev().filter(|one| one.key == witness.key);
    WitnessView {
        cosigned: own.cloned().map(CosignedView::from).collect(),
        id: witness.leaf,
        name: witness.name,
        key: witness.key,
        added_at: witness.added_at,
        removed_at: witness.removed_at,
    }
}

/// Every witness of the production.
///
/// # Errors
/// Without [`Permission::ReadTrail`].
pub fn witnesses(conn: &mut Connection, reader: &Actor) -> Result<Witnesses, CommandError> {
    reader.require(Permission::ReadTrail)?;
    let cosigned = kept::cosignatures(conn, reader.production)?;
    let all = kept::list(conn, reader.production)?;
    Ok(Witnesses {
        size: gagwright_store::trail::size(conn, reader.production)?,
        items: all
            .into_iter()
            .map(|one| witness_view(one, &cosigned))
            .collect(),
    })
}
