//! The first answer to each write that carried a key, kept durably: a phone without signal repeats its
//! writes hours later and must be given the first answer again.

use diesel::prelude::*;
use gagwright_casting::PersonId;
use jiff::Timestamp;
use uuid::Uuid;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment},
    guard,
    schema::answers,
};

/// An answer as it was given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stored {
    /// SHA-256 of what was asked: the same key with another request is a mistake.
    pub request_hash: Vec<u8>,
    /// HTTP status.
    pub status: u16,
    /// Media type of the body.
    pub content_type: String,
    /// The Location header, if there was one.
    pub location: Option<String>,
    /// The ETag header, if there was one.
    pub etag: Option<String>,
    /// The body.
    pub body: Vec<u8>,
    /// When it was given.
    pub created_at: Timestamp,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = answers)]
struct Row {
    account_key: String,
    key: Id,
    request_hash: Vec<u8>,
    status: i64,
    content_type: String,
    location: Option<String>,
    etag: Option<String>,
    body: Vec<u8>,
    created_at: Moment,
}

/// The answer given to a key, if one was. Keys of different accounts never meet.
///
/// # Errors
/// When the database cannot be read.
pub fn find(
    conn: &mut Connection,
    account_key: &str,
    key: Uuid,
) -> Result<Option<Stored>, StoreError> {
    let row: Option<Row> = answers::table
        .find((account_key, Id(key)))
        .select(Row::as_select())
        .first(conn)
        .optional()?;
    row.map(|row| {
        Ok(Stored {
            status: u16::try_from(row.status)
                .map_err(|_| StoreError::unreadable("the status of answer", key, row.status))?,
            request_hash: row.request_hash,
            content_type: row.content_type,
            location: row.location,
            etag: row.etag,
            body: row.body,
            created_at: row.created_at.time()?,
        })
    })
    .transpose()
}

/// Keeps the answer to a key, in the same write as what it answers.
///
/// # Errors
/// [`StoreError::Conflict`] when the key was answered before.
pub fn save(
    conn: &mut Connection,
    account_key: &str,
    key: Uuid,
    answer: &Stored,
) -> Result<(), StoreError> {
    let row = Row {
        account_key: account_key.to_owned(),
        key: Id(key),
        request_hash: answer.request_hash.clone(),
        status: i64::from(answer.status),
        content_type: answer.content_type.clone(),
        location: answer.location.clone(),
        etag: answer.etag.clone(),
        body: answer.body.clone(),
        created_at: answer.created_at.into(),
    };
    guard::insert(conn, "answer", "this key was answered before", |conn| {
        diesel::insert_into(answers::table)
            .values(&row)
            .execute(conn)
    })
}

/// Forgets answers given before a moment; gives how many.
///
/// # Errors
/// When the database cannot be written.
pub fn purge_before(conn: &mut Connection, moment: Timestamp) -> Result<usize, StoreError> {
    Ok(
        diesel::delete(answers::table.filter(answers::created_at.lt(Moment::from(moment))))
            .execute(conn)?,
    )
}

/// How many answers are looked through at a time.
const AT_ONCE: i64 = 500;

/// Forgets answers that name somebody by their id, since an answer may tell of them what was erased.
///
/// # Errors
/// When the database cannot be read or written.
pub fn forget_about(conn: &mut Connection, person: PersonId) -> Result<(), StoreError> {
    let name = person.to_string();
    let mut naming: Vec<(String, Id)> = Vec::new();
    for page in 0.. {
        let some: Vec<(String, Id, Vec<u8>)> = answers::table
            .order((answers::account_key, answers::key))
            .offset(page * AT_ONCE)
            .limit(AT_ONCE)
            .select((answers::account_key, answers::key, answers::body))
            .load(conn)?;
        if some.is_empty() {
            break;
        }
        let named = some
            .into_iter()
            .filter(|(_, _, body)| body.windows(name.len()).any(|part| part == name.as_bytes()));
        naming.extend(named.map(|(account, key, _)| (account, key)));
    }
    for (account, key) in naming {
        diesel::delete(answers::table.find((account, key))).execute(conn)?;
    }
    Ok(())
}
