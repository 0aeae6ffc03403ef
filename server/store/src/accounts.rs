//! Who may sign in. The store keeps a password's hash as text and must not know how it was made.

use diesel::prelude::*;
use jiff::Timestamp;
use uuid::Uuid;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment},
    guard,
    schema::accounts,
};

/// An account.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Account {
    /// Which.
    pub id: Uuid,
    /// Address, unique whatever its case.
    pub email: String,
    /// What people call its owner.
    pub name: String,
    /// The password's hash, in PHC form.
    pub password_hash: String,
    /// When it was made.
    pub created_at: Timestamp,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = accounts)]
struct Row {
    id: Id,
    email: String,
    name: String,
    password_hash: String,
    created_at: Moment,
}

impl Row {
    fn account(self) -> Result<Account, StoreError> {
        Ok(Account {
            id: self.id.0,
            email: self.email,
            name: self.name,
            password_hash: self.password_hash,
            created_at: self.created_at.time()?,
        })
    }
}

/// One address, one spelling.
fn folded(email: &str) -> String {
    email.trim().to_lowercase()
}

/// Adds an account. The address is kept in lower case.
///
/// # Errors
/// [`StoreError::Conflict`] when the address or the id has an account already.
pub fn insert(conn: &mut Connection, account: &Account) -> Result<(), StoreError> {
    let row = Row {
        id: Id(account.id),
        email: folded(&account.email),
        name: account.name.clone(),
        password_hash: account.password_hash.clone(),
        created_at: account.created_at.into(),
    };
    guard::insert(
        conn,
        "account",
        "the address or the id has an account already",
        |conn| {
            diesel::insert_into(accounts::table)
                .values(&row)
                .execute(conn)
        },
    )
}

/// The account with an address, whatever its case.
///
/// # Errors
/// When the database cannot be read.
pub fn by_email(conn: &mut Connection, email: &str) -> Result<Option<Account>, StoreError> {
    accounts::table
        .filter(accounts::email.eq(folded(email)))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::account)
        .transpose()
}

/// The account with an id.
///
/// # Errors
/// When the database cannot be read.
pub fn by_id(conn: &mut Connection, id: Uuid) -> Result<Option<Account>, StoreError> {
    accounts::table
        .find(Id(id))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::account)
        .transpose()
}

/// Replaces the password's hash.
///
/// # Errors
/// [`StoreError::NotFound`] when there is no such account.
pub fn set_password(conn: &mut Connection, id: Uuid, hash: &str) -> Result<(), StoreError> {
    let changed = diesel::update(accounts::table.find(Id(id)))
        .set(accounts::password_hash.eq(hash))
        .execute(conn)?;
    guard::found(changed, "account", id)
}

/// How many accounts there are; none: the server is not set up yet.
///
/// # Errors
/// When the database cannot be read.
pub fn count(conn: &mut Connection) -> Result<u64, StoreError> {
    crate::columns::count(accounts::table.count().get_result(conn)?)
}
