//! The roster: each person whole, with a version that counts changes so that two editors notice each
//! other. Must not know who may see what of a person.

use diesel::prelude::*;
use gagwright_casting::{Person, PersonId, ProductionId};

use crate::{Connection, StoreError, columns::Id, documents, guard, schema::people};

/// A person as kept.
#[derive(Clone, Debug, PartialEq)]
pub struct StoredPerson {
    /// The person.
    pub person: Person,
    /// The production whose roster they are on.
    pub production: ProductionId,
    /// 1 when added, one more with each change.
    pub version: i64,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = people)]
struct Row {
    id: Id,
    production: Id,
    code: String,
    document: String,
    version: i64,
}

impl Row {
    fn stored(self) -> Result<StoredPerson, StoreError> {
        Ok(StoredPerson {
            person: documents::read("person", self.id.0, &self.document)?,
            production: ProductionId(self.production.0),
            version: self.version,
        })
    }
}

/// Which rule a clash breaks.
const UNIQUE: &str = "the id or the code is another person's";

/// Adds a person.
///
/// # Errors
/// [`StoreError::Conflict`] when the id, or the code within the production, is taken.
pub fn insert(conn: &mut Connection, stored: &StoredPerson) -> Result<(), StoreError> {
    let row = Row {
        id: Id(stored.person.id.0),
        production: Id(stored.production.0),
        code: stored.person.code.clone(),
        document: documents::write("the person", &stored.person)?,
        version: stored.version,
    };
    guard::insert(conn, "person", UNIQUE, |conn| {
        diesel::insert_into(people::table)
            .values(&row)
            .execute(conn)
    })
}

/// Replaces a person and gives the new version. With an expected version, only when it is still that.
///
/// # Errors
/// [`StoreError::NotFound`] when the production has no such person; [`StoreError::Conflict`] when the
/// version has moved on, or the code is another person's.
pub fn update(
    conn: &mut Connection,
    production: ProductionId,
    person: &Person,
    expected: Option<i64>,
) -> Result<i64, StoreError> {
    let current: Option<i64> = people::table
        .find(Id(person.id.0))
        .filter(people::production.eq(Id(production.0)))
        .select(people::version)
        .first(conn)
        .optional()?;
    let Some(current) = current else {
        return Err(StoreError::NotFound {
            what: "person",
            id: person.id.to_string(),
        });
    };
    let moved_on = |now: &str| StoreError::Conflict {
        what: "person",
        detail: format!(
            "version {} was expected and {now} is kept",
            expected.unwrap_or(current)
        ),
    };
    if expected.is_some_and(|expected| expected != current) {
        return Err(moved_on(&format!("version {current}")));
    }
    let text = documents::write("the person", person)?;
    let mut changed = 0;
    guard::insert(conn, "person", UNIQUE, |conn| {
        // The version is asked for once more in the statement itself: it alone decides.
        changed = diesel::update(
            people::table
                .filter(people::id.eq(Id(person.id.0)))
                .filter(people::version.eq(current)),
        )
        .set((
            people::code.eq(&person.code),
            people::document.eq(&text),
            people::version.eq(current + 1),
        ))
        .execute(conn)?;
        Ok(changed)
    })?;
    if changed == 0 {
        Err(moved_on("another"))
    } else {
        Ok(current + 1)
    }
}

/// One person of a production.
///
/// # Errors
/// When the database cannot be read.
pub fn get(
    conn: &mut Connection,
    production: ProductionId,
    id: PersonId,
) -> Result<Option<StoredPerson>, StoreError> {
    people::table
        .find(Id(id.0))
        .filter(people::production.eq(Id(production.0)))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::stored)
        .transpose()
}

/// Those of the given people who are on the production's roster, by code, in one query.
///
/// # Errors
/// When the database cannot be read.
pub fn get_many(
    conn: &mut Connection,
    production: ProductionId,
    ids: &[PersonId],
) -> Result<Vec<StoredPerson>, StoreError> {
    people::table
        .filter(people::production.eq(Id(production.0)))
        .filter(people::id.eq_any(ids.iter().map(|id| Id(id.0)).collect::<Vec<_>>()))
        .order(people::code)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::stored)
        .collect()
}

/// The person with a code.
///
/// # Errors
/// When the database cannot be read.
pub fn by_code(
    conn: &mut Connection,
    production: ProductionId,
    code: &str,
) -> Result<Option<StoredPerson>, StoreError> {
    people::table
        .filter(people::production.eq(Id(production.0)))
        .filter(people::code.eq(code))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::stored)
        .transpose()
}

/// The whole roster, by code.
///
/// # Errors
/// When the database cannot be read.
pub fn list(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<Vec<StoredPerson>, StoreError> {
    people::table
        .filter(people::production.eq(Id(production.0)))
        .order(people::code)
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::stored)
        .collect()
}
