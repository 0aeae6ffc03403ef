//! Sign-offs as received: the signed text is the record, and the columns beside it are only for
//! finding it. The texts it commits to are kept apart, and can be erased. Must not know whether one stands.

use std::collections::BTreeMap;

use diesel::prelude::*;
use gagwright_casting::{GagId, PersonId, ProductionId};
use gagwright_clearance::{
    DeviceId, Opening, SignOff, SignOffId, Statement, signoff::ConditionMet,
};
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, count, stored},
    documents, guard,
    schema::{conditions_met, signoff_openings, signoffs},
};

#[derive(Insertable)]
#[diesel(table_name = signoffs)]
struct NewRow<'a> {
    id: Id,
    production: Id,
    gag: Id,
    revision: i64,
    role: &'a str,
    slot: Option<Id>,
    signer: Id,
    device: Id,
    jws: &'a str,
    received_at: Moment,
    leaf: i64,
}

#[derive(Queryable, Selectable)]
#[diesel(table_name = signoffs)]
struct Row {
    id: Id,
    gag: Id,
    jws: String,
    received_at: Moment,
    leaf: i64,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = signoff_openings)]
struct OpeningsRow {
    signoff: Id,
    document: String,
}

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = conditions_met)]
struct MetRow {
    signoff: Id,
    condition: String,
    person: Id,
    at: Moment,
}

/// Keeps a sign-off that was accepted, with the conditions already met.
///
/// # Errors
/// [`StoreError::Conflict`] when a sign-off with its id was kept before: a replay.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    statement: &Statement,
    signoff: &SignOff,
) -> Result<(), StoreError> {
    let role = documents::name("the role", &statement.role)?;
    let row = NewRow {
        id: Id(statement.id.0),
        production: Id(production.0),
        gag: Id(statement.gag.0),
        revision: i64::from(statement.revision),
        role: &role,
        slot: statement.slot.map(|slot| Id(slot.0)),
        signer: Id(statement.signer.0),
        device: Id(statement.device.0),
        jws: &signoff.jws,
        received_at: signoff.received_at.into(),
        leaf: stored(signoff.leaf)?,
    };
    guard::insert(
        conn,
        "sign-off",
        "one with this id was received before",
        |conn| {
            diesel::insert_into(signoffs::table)
                .values(&row)
                .execute(conn)
        },
    )?;
    if !signoff.openings.is_empty() {
        let row = OpeningsRow {
            signoff: Id(statement.id.0),
            document: documents::write("the openings", &signoff.openings)?,
        };
        diesel::insert_into(signoff_openings::table)
            .values(&row)
            .execute(conn)?;
    }
    signoff
        .met
        .iter()
        .try_for_each(|met| add_met(conn, statement.id, met))
}

/// Every sign-off ever made on a gag, any revision, in trail order.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gag(conn: &mut Connection, gag: GagId) -> Result<Vec<SignOff>, StoreError> {
    let rows: Vec<Row> = signoffs::table
        .filter(signoffs::gag.eq(Id(gag.0)))
        .order(signoffs::leaf)
        .select(Row::as_select())
        .load(conn)?;
    let met: Vec<MetRow> = conditions_met::table
        .inner_join(signoffs::table)
        .filter(signoffs::gag.eq(Id(gag.0)))
        .order((conditions_met::at, conditions_met::condition))
        .select(MetRow::as_select())
        .load(conn)?;
    let openings: Vec<OpeningsRow> = signoff_openings::table
        .inner_join(signoffs::table)
        .filter(signoffs::gag.eq(Id(gag.0)))
        .select(OpeningsRow::as_select())
        .load(conn)?;
    Ok(joined(rows, met, openings)?
        .into_iter()
        .map(|(_, _, signoff)| signoff)
        .collect())
}

/// Every sign-off of a production by gag, each gag's in trail order; three queries however many gags.
///
/// # Errors
/// When the database cannot be read.
pub fn for_gags(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<BTreeMap<GagId, Vec<SignOff>>, StoreError> {
    let rows: Vec<Row> = signoffs::table
        .filter(signoffs::production.eq(Id(production.0)))
        .order(signoffs::leaf)
        .select(Row::as_select())
        .load(conn)?;
    let met: Vec<MetRow> = conditions_met::table
        .inner_join(signoffs::table)
        .filter(signoffs::production.eq(Id(production.0)))
        .order((conditions_met::at, conditions_met::condition))
        .select(MetRow::as_select())
        .load(conn)?;
    let openings: Vec<OpeningsRow> = signoff_openings::table
        .inner_join(signoffs::table)
        .filter(signoffs::production.eq(Id(production.0)))
        .select(OpeningsRow::as_select())
        .load(conn)?;
    let mut by_gag: BTreeMap<GagId, Vec<SignOff>> = BTreeMap::new();
    for (_, gag, signoff) in joined(rows, met, openings)? {
        by_gag.entry(gag).or_default().push(signoff);
    }
    Ok(by_gag)
}

/// When the last sign-off made on each device of a production was received.
///
/// # Errors
/// When the database cannot be read.
pub fn last_by_device(
    conn: &mut Connection,
    production: ProductionId,
) -> Result<BTreeMap<DeviceId, Timestamp>, StoreError> {
    let rows: Vec<(Id, Option<Moment>)> = signoffs::table
        .filter(signoffs::production.eq(Id(production.0)))
        .group_by(signoffs::device)
        .select((signoffs::device, diesel::dsl::max(signoffs::received_at)))
        .load(conn)?;
    rows.into_iter()
        .filter_map(|(device, at)| Some((device, at?)))
        .map(|(device, at)| Ok((DeviceId(device.0), at.time()?)))
        .collect()
}

/// One sign-off of any production, and its gag.
///
/// # Errors
/// When the database cannot be read.
pub fn get(conn: &mut Connection, id: SignOffId) -> Result<Option<(SignOff, GagId)>, StoreError> {
    let rows: Vec<Row> = signoffs::table
        .find(Id(id.0))
        .select(Row::as_select())
        .load(conn)?;
    let met: Vec<MetRow> = conditions_met::table
        .filter(conditions_met::signoff.eq(Id(id.0)))
        .order((conditions_met::at, conditions_met::condition))
        .select(MetRow::as_select())
        .load(conn)?;
    let openings: Vec<OpeningsRow> = signoff_openings::table
        .find(Id(id.0))
        .select(OpeningsRow::as_select())
        .load(conn)?;
    Ok(joined(rows, met, openings)?
        .pop()
        .map(|(_, gag, signoff)| (signoff, gag)))
}

/// Erases the texts of every sign-off that somebody made on a production; the commitments stand in what was
/// signed. Gives how many sign-offs had some.
///
/// # Errors
/// When the database cannot be written.
pub fn erase_openings(
    conn: &mut Connection,
    production: ProductionId,
    signer: PersonId,
) -> Result<usize, StoreError> {
    let theirs = signoffs::table
        .filter(signoffs::production.eq(Id(production.0)))
        .filter(signoffs::signer.eq(Id(signer.0)))
        .select(signoffs::id);
    Ok(
        diesel::delete(signoff_openings::table.filter(signoff_openings::signoff.eq_any(theirs)))
            .execute(conn)?,
    )
}

/// Records that a condition was met. One condition is met once.
///
/// # Errors
/// [`StoreError::Conflict`] when it was met before, or there is no such sign-off.
pub fn add_met(conn: &mut Connection, id: SignOffId, met: &ConditionMet) -> Result<(), StoreError> {
    let row = MetRow {
        signoff: Id(id.0),
        condition: met.condition.clone(),
        person: Id(met.by.0),
        at: met.at.into(),
    };
    guard::insert(conn, "condition", "it was said to be met before", |conn| {
        diesel::insert_into(conditions_met::table)
            .values(&row)
            .execute(conn)
    })
}

fn joined(
    rows: Vec<Row>,
    met: Vec<MetRow>,
    openings: Vec<OpeningsRow>,
) -> Result<Vec<(SignOffId, GagId, SignOff)>, StoreError> {
    let mut texts: BTreeMap<Id, Vec<Opening>> = BTreeMap::new();
    for row in openings {
        let read = documents::read("the openings of sign-off", row.signoff.0, &row.document)?;
        texts.insert(row.signoff, read);
    }
    let mut by_signoff: BTreeMap<Id, Vec<ConditionMet>> = BTreeMap::new();
    for row in met {
        by_signoff
            .entry(row.signoff)
            .or_default()
            .push(ConditionMet {
                condition: row.condition,
                by: PersonId(row.person.0),
                at: row.at.time()?,
            });
    }
    rows.into_iter()
        .map(|row| {
            let signoff = SignOff {
                jws: row.jws,
                received_at: row.received_at.time()?,
                leaf: count(row.leaf)?,
                met: by_signoff.remove(&row.id).unwrap_or_default(),
                openings: texts.remove(&row.id).unwrap_or_default(),
            };
            Ok((SignOffId(row.id.0), GagId(row.gag.0), signoff))
        })
        .collect()
}
