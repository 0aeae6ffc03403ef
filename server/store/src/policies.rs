//! Policies that were put in force, each kept whole: a plan names the version it was written under.

use diesel::prelude::*;
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::Policy;
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, count, stored},
    documents, guard,
    schema::policies,
};

/// One policy that was put in force.
#[derive(Clone, Debug, PartialEq)]
pub struct KeptPolicy {
    /// The production.
    pub production: ProductionId,
    /// The policy.
    pub policy: Policy,
    /// Who put it in force.
    pub by: PersonId,
    /// Why, in their words.
    pub note: String,
    /// When.
    pub at: Timestamp,
    /// Its leaf in the trail.
    pub leaf: u64,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = policies)]
struct Row {
    production: Id,
    version: String,
    document: String,
    person: Id,
    note: String,
    at: Moment,
    leaf: i64,
}

impl Row {
    fn kept(self) -> Result<KeptPolicy, StoreError> {
        Ok(KeptPolicy {
            production: ProductionId(self.production.0),
            policy: documents::read(
                "the policy of production",
                self.production.0,
                &self.document,
            )?,
            by: PersonId(self.person.0),
            note: self.note,
            at: self.at.time()?,
            leaf: count(self.leaf)?,
        })
    }
}

/// Keeps a policy that comes into force.
///
/// # Errors
/// [`StoreError::Conflict`] when the production had a policy of that version.
pub fn insert(conn: &mut Connection, kept: &KeptPolicy) -> Result<(), StoreError> {
    let row = Row {
        production: Id(kept.production.0),
        version: kept.policy.version.clone(),
        document: documents::write("the policy", &kept.policy)?,
        person: Id(kept.by.0),
        note: kept.note.clone(),
        at: kept.at.into(),
        leaf: stored(kept.leaf)?,
    };
    guard::insert(
        conn,
        "policy",
        "a policy of this version was in force before",
        |conn| {
            diesel::insert_into(policies::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// Every policy that was put in force, newest first.
///
/// # Errors
/// When the database cannot be read.
pub fn list(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<KeptPolicy>, StoreError> {
    policies::table
        .filter(policies::production.eq(Id(production.0)))
        .order(policies::leaf.desc())
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::kept)
        .collect()
}
