//! Who wears which hats on a production, and which account is theirs. Must not know what a hat allows.

use std::collections::BTreeSet;

use diesel::prelude::*;
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::Role;
use uuid::Uuid;

use crate::{Connection, StoreError, columns::Id, documents, guard, schema::members};

/// One person's place in a production.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MemberRow {
    /// The production.
    pub production: ProductionId,
    /// The person.
    pub person: PersonId,
    /// Their account; none until an invitation is accepted.
    pub account: Option<Uuid>,
    /// Their hats.
    pub roles: BTreeSet<Role>,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = members)]
struct Row {
    production: Id,
    person: Id,
    account: Option<Id>,
    roles: String,
}

impl Row {
    fn member(self) -> Result<MemberRow, StoreError> {
        Ok(MemberRow {
            production: ProductionId(self.production.0),
            person: PersonId(self.person.0),
            account: self.account.map(|account| account.0),
            roles: documents::read("the roles of member", self.person.0, &self.roles)?,
        })
    }
}

/// Adds a member, or replaces the account and hats of one.
///
/// # Errors
/// [`StoreError::Conflict`] when the account belongs to another person of the same production, or the
/// person is not on the roster.
pub fn upsert(conn: &mut Connection, member: &MemberRow) -> Result<(), StoreError> {
    let row = Row {
        production: Id(member.production.0),
        person: Id(member.person.0),
        account: member.account.map(Id),
        roles: documents::write("the roles", &member.roles)?,
    };
    let rule = "the account is another person's on this production";
    guard::insert(conn, "member", rule, |conn| {
        let changed = diesel::update(members::table.find((row.production, row.person)))
            .set((
                members::account.eq(row.account),
                members::roles.eq(&row.roles),
            ))
            .execute(conn)?;
        if changed == 0 {
            return diesel::insert_into(members::table)
                .values(&row)
                .execute(conn);
        }
        Ok(changed)
    })
}

/// One member.
///
/// # Errors
/// When the database cannot be read.
pub fn get(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
) -> Result<Option<MemberRow>, StoreError> {
    members::table
        .find((Id(production.0), Id(person.0)))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::member)
        .transpose()
}

/// The member an account is, on a production.
///
/// # Errors
/// When the database cannot be read.
pub fn by_account(
    conn: &mut Connection,
    production: ProductionId,
    account: Uuid,
) -> Result<Option<MemberRow>, StoreError> {
    members::table
        .filter(members::production.eq(Id(production.0)))
        .filter(members::account.eq(Id(account)))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::member)
        .transpose()
}

/// Every member of a production.
///
/// # Errors
/// When the database cannot be read.
pub fn list(conn: &mut Connection, production: ProductionId) -> Result<Vec<MemberRow>, StoreError> {
    members::table
        .filter(members::production.eq(Id(production.0)))
        .order(members::person)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::member)
        .collect()
}

/// Everywhere an account is a member.
///
/// # Errors
/// When the database cannot be read.
pub fn memberships(conn: &mut Connection, account: Uuid) -> Result<Vec<MemberRow>, StoreError> {
    members::table
        .filter(members::account.eq(Id(account)))
        .order(members::production)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::member)
        .collect()
}

/// Ties an account to a member.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such member; [`StoreError::Conflict`] when the account is
/// another person's on this production.
pub fn link_account(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
    account: Uuid,
) -> Result<(), StoreError> {
    let mut changed = 0;
    let rule = "the account is another person's on this production";
    guard::insert(conn, "member", rule, |conn| {
        changed = diesel::update(members::table.find((Id(production.0), Id(person.0))))
            .set(members::account.eq(Some(Id(account))))
            .execute(conn)?;
        Ok(changed)
    })?;
    guard::found(changed, "member", person)
}
