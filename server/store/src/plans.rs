//! Revisions of plans, kept whole in the very bytes their digest was made of. A revision is never
//! changed; the next one is another row.

use std::collections::BTreeSet;

use diesel::prelude::*;
use gagwright_casting::{GagId, PersonId, ProductionId};
use gagwright_clearance::{Plan, plan::FacetHashes};
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, count, revision, stored},
    documents, guard,
    schema::{gags, plans},
};

/// One revision in a gag's history.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlanSummary {
    /// Which.
    pub revision: u32,
    /// Who wrote it.
    pub author: PersonId,
    /// When.
    pub written_at: Timestamp,
    /// Why it differs from the one before.
    pub note: String,
    /// Its digest, hex.
    pub digest: String,
    /// Each facet's hash: what changed between two revisions is seen from these.
    pub facets: FacetHashes,
    /// Its leaf in the trail.
    pub leaf: u64,
}

#[derive(Insertable)]
#[diesel(table_name = plans)]
struct NewRow<'a> {
    gag: Id,
    revision: i64,
    document: &'a str,
    author: Id,
    written_at: Moment,
    note: &'a str,
    digest: &'a str,
    facets: &'a str,
    leaf: i64,
}

#[derive(Queryable, Selectable)]
#[diesel(table_name = plans)]
struct SummaryRow {
    gag: Id,
    revision: i64,
    author: Id,
    written_at: Moment,
    note: String,
    digest: String,
    facets: String,
    leaf: i64,
}

impl SummaryRow {
    fn summary(self) -> Result<PlanSummary, StoreError> {
        Ok(PlanSummary {
            facets: documents::read("the facet hashes of gag", self.gag.0, &self.facets)?,
            revision: revision(self.revision)?,
            author: PersonId(self.author.0),
            written_at: self.written_at.time()?,
            note: self.note,
            digest: self.digest,
            leaf: count(self.leaf)?,
        })
    }
}

/// Keeps a new revision and makes it the gag's current one. Revisions are numbered without gaps, so
/// of two writers that start from the same revision one is refused.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such gag; [`StoreError::Conflict`] when the plan is not
/// the one after the current revision.
pub fn insert(
    conn: &mut Connection,
    plan: &Plan,
    digest: &str,
    facets: &FacetHashes,
    leaf: u64,
) -> Result<(), StoreError> {
    let document = documents::write("the plan", plan)?;
    let hashes = documents::write("the facet hashes", facets)?;
    let number = i64::from(plan.revision);
    let row = NewRow {
        gag: Id(plan.gag.0),
        revision: number,
        document: &document,
        author: Id(plan.author.0),
        written_at: plan.written_at.into(),
        note: &plan.note,
        digest,
        facets: &hashes,
        leaf: stored(leaf)?,
    };
    let rule = format!("revision {} of this gag is written already", plan.revision);
    let latest: Option<i64> = plans::table
        .filter(plans::gag.eq(Id(plan.gag.0)))
        .select(diesel::dsl::max(plans::revision))
        .first(conn)?;
    if latest.unwrap_or(0) + 1 < number {
        return Err(StoreError::Conflict {
            what: "plan",
            detail: format!(
                "revision {number} cannot follow revision {}",
                latest.unwrap_or(0)
            ),
        });
    }
    guard::insert(conn, "plan", &rule, |conn| {
        diesel::insert_into(plans::table).values(&row).execute(conn)
    })?;
    let changed = diesel::update(gags::table.find(Id(plan.gag.0)))
        .set(gags::current_revision.eq(number))
        .execute(conn)?;
    guard::found(changed, "gag", plan.gag)
}

/// The plan that counts.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such gag, or it has no plan yet.
pub fn current(conn: &mut Connection, gag: GagId) -> Result<Plan, StoreError> {
    let text: Option<String> = plans::table
        .inner_join(gags::table)
        .filter(gags::id.eq(Id(gag.0)))
        .filter(plans::revision.eq(gags::current_revision))
        .select(plans::document)
        .first(conn)
        .optional()?;
    let text = text.ok_or_else(|| StoreError::NotFound {
        what: "plan of gag",
        id: gag.to_string(),
    })?;
    documents::read("the plan of gag", gag, &text)
}

/// The current plans of every gag of a production, by the gag's code, in one query.
///
/// # Errors
/// When the database cannot be read.
pub fn current_for_production(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<Plan>, StoreError> {
    let texts: Vec<(Id, String)> = plans::table
        .inner_join(gags::table)
        .filter(gags::production.eq(Id(production.0)))
        .filter(plans::revision.eq(gags::current_revision))
        .order(gags::code)
        .select((plans::gag, plans::document))
        .load(conn)?;
    texts
        .iter()
        .map(|(gag, text)| documents::read("the plan of gag", gag.0, text))
        .collect()
}

/// One revision.
///
/// # Errors
/// [`StoreError::NotFound`] when the gag never had it.
pub fn get(conn: &mut Connection, gag: GagId, revision: u32) -> Result<Plan, StoreError> {
    let text: Option<String> = plans::table
        .find((Id(gag.0), i64::from(revision)))
        .select(plans::document)
        .first(conn)
        .optional()?;
    let text = text.ok_or_else(|| StoreError::NotFound {
        what: "plan",
        id: format!("revision {revision} of gag {gag}"),
    })?;
    documents::read("the plan of gag", gag, &text)
}

/// Those revisions of those gags that are there, by gag and number, in one query.
///
/// # Errors
/// When the database cannot be read.
pub fn some(
    conn: &mut Connection,
    wanted: &BTreeSet<(GagId, u32)>,
) -> Result<Vec<Plan>, StoreError> {
    if wanted.is_empty() {
        return Ok(Vec::new());
    }
    let of: BTreeSet<Id> = wanted.iter().map(|(gag, _)| Id(gag.0)).collect();
    let numbers: BTreeSet<i64> = wanted.iter().map(|(_, one)| i64::from(*one)).collect();
    let texts: Vec<(Id, i64, String)> = plans::table
        .filter(plans::gag.eq_any(of))
        .filter(plans::revision.eq_any(numbers))
        .order((plans::gag, plans::revision))
        .select((plans::gag, plans::revision, plans::document))
        .load(conn)?;
    let mut found = Vec::new();
    for (gag, number, text) in texts {
        // Each number of one gag was asked of every gag.
        if wanted.contains(&(GagId(gag.0), revision(number)?)) {
            found.push(documents::read("the plan of gag", gag.0, &text)?);
        }
    }
    Ok(found)
}

/// Every revision of a gag, oldest first, without the plans themselves.
///
/// # Errors
/// When the database cannot be read.
pub fn history(conn: &mut Connection, gag: GagId) -> Result<Vec<PlanSummary>, StoreError> {
    plans::table
        .filter(plans::gag.eq(Id(gag.0)))
        .order(plans::revision)
        .select(SummaryRow::as_select())
        .load(conn)?
        .into_iter()
        .map(SummaryRow::summary)
        .collect()
}
