//! Productions: what everything else belongs to.

use diesel::prelude::*;
use gagwright_casting::ProductionId;
use gagwright_clearance::Policy;
use jiff::Timestamp;
use uuid::Uuid;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment},
    documents, guard,
    schema::{members, productions},
};

/// A production.
#[derive(Clone, Debug, PartialEq)]
pub struct Production {
    /// Which.
    pub id: ProductionId,
    /// Its working title.
    pub name: String,
    /// Whether it holds invented people and sign-ins anyone may read.
    pub demo: bool,
    /// IANA time zone its days are in.
    pub time_zone: String,
    /// The policy its gags are judged by.
    pub policy: Policy,
    /// Whoever has this code may raise a hold.
    pub hold_code: String,
    /// When it was made.
    pub created_at: Timestamp,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = productions)]
struct Row {
    id: Id,
    name: String,
    demo: bool,
    time_zone: String,
    policy: String,
    hold_code: String,
    created_at: Moment,
}

impl Row {
    fn production(self) -> Result<Production, StoreError> {
        Ok(Production {
            id: ProductionId(self.id.0),
            policy: documents::read("the policy of production", self.id.0, &self.policy)?,
            name: self.name,
            demo: self.demo,
            time_zone: self.time_zone,
            hold_code: self.hold_code,
            created_at: self.created_at.time()?,
        })
    }
}

/// Adds a production.
///
/// # Errors
/// [`StoreError::Conflict`] when the id or the hold code is taken.
pub fn insert(conn: &mut Connection, production: &Production) -> Result<(), StoreError> {
    let row = Row {
        id: Id(production.id.0),
        name: production.name.clone(),
        demo: production.demo,
        time_zone: production.time_zone.clone(),
        policy: documents::write("the policy", &production.policy)?,
        hold_code: production.hold_code.clone(),
        created_at: production.created_at.into(),
    };
    guard::insert(
        conn,
        "production",
        "the id or the hold code is taken",
        |conn| {
            diesel::insert_into(productions::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// One production.
///
/// # Errors
/// When the database cannot be read.
pub fn get(conn: &mut Connection, id: ProductionId) -> Result<Option<Production>, StoreError> {
    productions::table
        .find(Id(id.0))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::production)
        .transpose()
}

/// The production whose brief carries a hold code.
///
/// # Errors
/// When the database cannot be read.
pub fn by_hold_code(conn: &mut Connection, code: &str) -> Result<Option<Production>, StoreError> {
    productions::table
        .filter(productions::hold_code.eq(code))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::production)
        .transpose()
}

/// Every production, oldest first.
///
/// # Errors
/// When the database cannot be read.
pub fn list(conn: &mut Connection) -> Result<Vec<Production>, StoreError> {
    productions::table
        .order((productions::created_at, productions::id))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::production)
        .collect()
}

/// Productions in which an account is a member, oldest first.
///
/// # Errors
/// When the database cannot be read.
pub fn for_account(conn: &mut Connection, account: Uuid) -> Result<Vec<Production>, StoreError> {
    members::table
        .inner_join(productions::table)
        .filter(members::account.eq(Id(account)))
        .order((productions::created_at, productions::id))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::production)
        .collect()
}

/// Replaces the policy.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such production.
pub fn set_policy(
    conn: &mut Connection,
    id: ProductionId,
    policy: &Policy,
) -> Result<(), StoreError> {
    let text = documents::write("the policy", policy)?;
    let changed = diesel::update(productions::table.find(Id(id.0)))
        .set(productions::policy.eq(text))
        .execute(conn)?;
    guard::found(changed, "production", id)
}
