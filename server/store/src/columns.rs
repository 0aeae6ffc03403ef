//! How values lie in columns that both databases share: ids as 16 bytes, times as microseconds since
//! 1970, hashes as 32 bytes. Must not know which table a column is in.

use diesel::{
    backend::Backend,
    deserialize::{self, FromSql, FromSqlRow},
    expression::AsExpression,
    serialize::{self, Output, ToSql},
    sql_types::{BigInt, Binary},
};
use gagwright_trail::Hash;
use jiff::Timestamp;
use uuid::Uuid;

use crate::error::StoreError;

/// An id of any kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, AsExpression, FromSqlRow)]
#[diesel(sql_type = Binary)]
pub(crate) struct Id(pub Uuid);

impl<DB: Backend> ToSql<Binary, DB> for Id
where
    [u8]: ToSql<Binary, DB>,
{
    fn to_sql<'b>(&'b self, out: &mut Output<'b, '_, DB>) -> serialize::Result {
        <[u8] as ToSql<Binary, DB>>::to_sql(self.0.as_bytes(), out)
    }
}

impl<DB: Backend> FromSql<Binary, DB> for Id
where
    Vec<u8>: FromSql<Binary, DB>,
{
    fn from_sql(bytes: DB::RawValue<'_>) -> deserialize::Result<Self> {
        let bytes = <Vec<u8> as FromSql<Binary, DB>>::from_sql(bytes)?;
        Ok(Id(Uuid::from_slice(&bytes)?))
    }
}

/// SHA-256 of something.
#[derive(Clone, Copy, Debug, PartialEq, Eq, AsExpression, FromSqlRow)]
#[diesel(sql_type = Binary)]
pub(crate) struct Digest(pub [u8; 32]);

impl<DB: Backend> ToSql<Binary, DB> for Digest
where
    [u8]: ToSql<Binary, DB>,
{
    fn to_sql<'b>(&'b self, out: &mut Output<'b, '_, DB>) -> serialize::Result {
        <[u8] as ToSql<Binary, DB>>::to_sql(self.0.as_slice(), out)
    }
}

impl<DB: Backend> FromSql<Binary, DB> for Digest
where
    Vec<u8>: FromSql<Binary, DB>,
{
    fn from_sql(bytes: DB::RawValue<'_>) -> deserialize::Result<Self> {
        let bytes = <Vec<u8> as FromSql<Binary, DB>>::from_sql(bytes)?;
        let length = bytes.len();
        Ok(Digest(bytes.try_into().map_err(|_| {
            format!("a hash has 32 bytes, this one has {length}")
        })?))
    }
}

impl From<Hash> for Digest {
    fn from(hash: Hash) -> Self {
        Digest(hash.0)
    }
}

impl From<Digest> for Hash {
    fn from(digest: Digest) -> Self {
        Hash(digest.0)
    }
}

/// A moment, to the microsecond.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, AsExpression, FromSqlRow)]
#[diesel(sql_type = BigInt)]
pub(crate) struct Moment(i64);

impl Moment {
    /// The moment as the rest of the program has it.
    pub(crate) fn time(self) -> Result<Timestamp, StoreError> {
        Timestamp::from_microsecond(self.0)
            .map_err(|error| StoreError::unreadable("a time", self.0, error))
    }
}

impl From<Timestamp> for Moment {
    fn from(time: Timestamp) -> Self {
        Moment(time.as_microsecond())
    }
}

/// The moment, where there is one.
pub(crate) fn time_of(moment: Option<Moment>) -> Result<Option<Timestamp>, StoreError> {
    moment.map(Moment::time).transpose()
}

impl<DB: Backend> ToSql<BigInt, DB> for Moment
where
    i64: ToSql<BigInt, DB>,
{
    fn to_sql<'b>(&'b self, out: &mut Output<'b, '_, DB>) -> serialize::Result {
        <i64 as ToSql<BigInt, DB>>::to_sql(&self.0, out)
    }
}

impl<DB: Backend> FromSql<BigInt, DB> for Moment
where
    i64: FromSql<BigInt, DB>,
{
    fn from_sql(value: DB::RawValue<'_>) -> deserialize::Result<Self> {
        Ok(Moment(<i64 as FromSql<BigInt, DB>>::from_sql(value)?))
    }
}

/// A count or index as a column has it. Counts here stay far under 2^63.
pub(crate) fn stored(count: u64) -> Result<i64, StoreError> {
    i64::try_from(count)
        .map_err(|_| StoreError::Internal(format!("the number {count} is too large to keep")))
}

/// A count or index read back.
pub(crate) fn count(stored: i64) -> Result<u64, StoreError> {
    u64::try_from(stored).map_err(|_| StoreError::unreadable("a count", stored, "it is negative"))
}

/// A revision number read back.
pub(crate) fn revision(stored: i64) -> Result<u32, StoreError> {
    u32::try_from(stored)
        .map_err(|_| StoreError::unreadable("a revision", stored, "it is not a small whole number"))
}
