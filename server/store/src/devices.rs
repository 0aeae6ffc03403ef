//! Devices whose keys sign. A key is never replaced: a device that needs another one is registered
//! anew.

use diesel::prelude::*;
use gagwright_casting::{PersonId, ProductionId};
use gagwright_clearance::{Device, DeviceId};
use jiff::Timestamp;

use crate::{
    Connection, StoreError,
    columns::{Id, Moment, time_of},
    documents, guard,
    schema::devices,
};

#[derive(Queryable, Selectable, Insertable)]
#[diesel(table_name = devices)]
struct Row {
    id: Id,
    production: Id,
    person: Id,
    name: String,
    public_key: String,
    registered_at: Moment,
    revoked_at: Option<Moment>,
}

impl Row {
    fn device(self) -> Result<Device, StoreError> {
        Ok(Device {
            id: DeviceId(self.id.0),
            person: PersonId(self.person.0),
            name: self.name,
            key: documents::read("the key of device", self.id.0, &self.public_key)?,
            registered_at: self.registered_at.time()?,
            revoked_at: time_of(self.revoked_at)?,
        })
    }
}

/// Registers a device.
///
/// # Errors
/// [`StoreError::Conflict`] when the id is taken or the person is not on the roster.
pub fn insert(
    conn: &mut Connection,
    production: ProductionId,
    device: &Device,
) -> Result<(), StoreError> {
    let row = Row {
        id: Id(device.id.0),
        production: Id(production.0),
        person: Id(device.person.0),
        name: device.name.clone(),
        public_key: documents::write("the key", &device.key)?,
        registered_at: device.registered_at.into(),
        revoked_at: device.revoked_at.map(Moment::from),
    };
    guard::insert(conn, "device", "the id is registered already", |conn| {
        diesel::insert_into(devices::table)
            .values(&row)
            .execute(conn)
    })
}

/// One device of a production.
///
/// # Errors
/// When the database cannot be read.
pub fn get(
    conn: &mut Connection,
    production: ProductionId,
    id: DeviceId,
) -> Result<Option<Device>, StoreError> {
    devices::table
        .find(Id(id.0))
        .filter(devices::production.eq(Id(production.0)))
        .select(Row::as_select())
        .first(conn)
        .optional()?
        .map(Row::device)
        .transpose()
}

/// Every device of a production, in the order they were registered, revoked ones included: old
/// sign-offs are verified with their keys.
///
/// # Errors
/// When the database cannot be read.
pub fn list(conn: &mut Connection, production: ProductionId) -> Result<Vec<Device>, StoreError> {
    devices::table
        .filter(devices::production.eq(Id(production.0)))
        .order((devices::registered_at, devices::id))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::device)
        .collect()
}

/// One person's devices, in the order they were registered.
///
/// # Errors
/// When the database cannot be read.
pub fn for_person(
    conn: &mut Connection,
    production: ProductionId,
    person: PersonId,
) -> Result<Vec<Device>, StoreError> {
    devices::table
        .filter(devices::production.eq(Id(production.0)))
        .filter(devices::person.eq(Id(person.0)))
        .order((devices::registered_at, devices::id))
        .select(Row::as_select())
        .load(conn)?
        .into_iter()
        .map(Row::device)
        .collect()
}

/// Revokes a device. One that was revoked before keeps the earlier moment.
///
/// # Errors
/// [`StoreError::NotFound`] when the production has no such device.
pub fn revoke(
    conn: &mut Connection,
    production: ProductionId,
    id: DeviceId,
    at: Timestamp,
) -> Result<(), StoreError> {
    let changed = diesel::update(
        devices::table
            .filter(devices::id.eq(Id(id.0)))
            .filter(devices::production.eq(Id(production.0)))
            .filter(devices::revoked_at.is_null()),
    )
    .set(devices::revoked_at.eq(Some(Moment::from(at))))
    .execute(conn)?;
    if changed == 0 && get(conn, production, id)?.is_none() {
        return Err(StoreError::NotFound {
            what: "device",
            id: id.to_string(),
        });
    }
    Ok(())
}
