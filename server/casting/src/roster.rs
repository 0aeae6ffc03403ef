//! The roster as four tables of comma-separated text: people, their certificates, their skills, and
//! the days they can work.
//!
//! Import is all or nothing. Every cell that is wrong is reported with its row, its column, what is
//! wrong and how to put it right, and nothing is changed until all of them are right. Importing the
//! same table again updates: people are found by their code, certificates by person, kind,
//! category, number and day of issue, skills by person and skill; a blank cell keeps what is on
//! record. Availability is replaced for every person that the table lists.
//!
//! This module reads and writes text and nothing else: no file, no clock, no store. New identifiers
//! come from a function it is given.

mod apply;
mod belongings;
mod cell;
mod columns;
mod decode;
mod error;
mod export;
mod measure;
mod reader;
mod rows;
mod sheet;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::person::Person;

pub use error::{RosterError, RosterErrors};
pub use export::export;
pub use rows::Rows;

use error::Report;

/// The largest table read, in bytes: far above any production's roster, far below what could hurt.
pub const MOST_BYTES: usize = 4 << 20;

/// The most rows read under the header.
pub const MOST_ROWS: usize = 5_000;

/// One of the four tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum RosterTable {
    /// Who: code, name, occupation, measurements.
    People,
    /// Dated proofs, one a row.
    Certificates,
    /// Graded competences, one a row.
    Skills,
    /// Runs of days on which someone can or cannot work.
    Availability,
}

impl RosterTable {
    /// All four, in the order they are imported: people first, for the others name people.
    pub const ALL: [Self; 4] = [
        Self::People,
        Self::Certificates,
        Self::Skills,
        Self::Availability,
    ];

    /// The table's name in addresses, file names and reports.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::People => "people",
            Self::Certificates => "certificates",
            Self::Skills => "skills",
            Self::Availability => "availability",
        }
    }

    /// The columns the table may have, in the order they are exported.
    pub fn columns(self) -> impl Iterator<Item = &'static str> {
        columns::of(self).iter().map(|column| column.name)
    }
}

impl std::fmt::Display for RosterTable {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name())
    }
}

impl std::str::FromStr for RosterTable {
    type Err = UnknownTable;
    fn from_str(text: &str) -> Result<Self, Self::Err> {
        Self::ALL
            .into_iter()
            .find(|table| table.name() == text)
            .ok_or_else(|| UnknownTable(text.chars().take(40).collect()))
    }
}

/// A name that is none of the four tables'.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("there is no roster table `{0}`; use people, certificates, skills or availability")]
pub struct UnknownTable(pub String);

/// What an import comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Applied {
    /// Everyone new or changed, whole, by code.
    pub people: Vec<Person>,
    /// Rows that made something new.
    pub created: usize,
    /// Rows that changed something.
    pub updated: usize,
    /// Rows that say what is already on record.
    pub unchanged: usize,
    /// Runs of days taken off record because a newer table for the same person does not have them.
    pub removed: usize,
}

/// Reads a table's bytes into checked rows.
///
/// # Errors
///
/// Everything wrong with the text itself: encoding, columns, cells, rows that repeat. Each error
/// names its row (the header is row 1), its column, and the fix.
pub fn parse(table: RosterTable, bytes: &[u8]) -> Result<Rows, RosterErrors> {
    let mut report = Report::default();
    let rows = rows::read(table, bytes, &mut report);
    report.finish(rows)
}

/// Puts checked rows over the people on record.
///
/// `today` is the day of the import: a fact dated more than a day after it is refused, for nobody
/// can have been weighed next month. `mint` makes identifiers for new people and certificates.
///
/// # Errors
///
/// Everything wrong between the rows and the record: people that are not there, new people without
/// a name, facts from the future, two people with one address.
pub fn apply(
    rows: &Rows,
    existing: &[Person],
    today: Date,
    mint: &mut dyn FnMut() -> Uuid,
) -> Result<Applied, RosterErrors> {
    let mut report = Report::default();
    let applied = apply::apply(rows, existing, today, mint, &mut report);
    report.finish(applied)
}

/// Reads a table and puts it over the people on record, reporting what is wrong with either at
/// once.
///
/// # Errors
///
/// As [`parse()`] and [`apply()`], together.
pub fn import(
    table: RosterTable,
    bytes: &[u8],
    existing: &[Person],
    today: Date,
    mint: &mut dyn FnMut() -> Uuid,
) -> Result<Applied, RosterErrors> {
    let mut report = Report::default();
    let rows = rows::read(table, bytes, &mut report);
    let applied = apply::apply(&rows, existing, today, mint, &mut report);
    report.finish(applied)
}
