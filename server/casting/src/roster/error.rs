//! What is wrong with a roster table, cell by cell. Knows nothing of what cells mean.

use serde::{Deserialize, Serialize};

/// More errors than anyone reads at once; beyond it only their number is kept.
const MOST_ERRORS: usize = 1_000;

/// One thing wrong.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct RosterError {
    /// The row as a spreadsheet numbers it: the header is 1.
    pub row: usize,
    /// The column's name; empty when it is about the whole row or file.
    pub column: String,
    /// What is wrong.
    pub problem: String,
    /// How to put it right.
    pub fix: String,
}

/// Everything wrong with a table, in row order; never empty.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "openapi", derive(utoipa::ToSchema))]
pub struct RosterErrors {
    /// Each error. Past the first thousand, the last says how many more there are.
    pub errors: Vec<RosterError>,
}

impl std::error::Error for RosterErrors {}

impl std::fmt::Display for RosterErrors {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        for (place, error) in self.errors.iter().enumerate() {
            if place > 0 {
                f.write_str("\n")?;
            }
            write!(f, "row {}", error.row)?;
            if !error.column.is_empty() {
                write!(f, ", {}", error.column)?;
            }
            write!(f, ": {}; {}", error.problem, error.fix)?;
        }
        Ok(())
    }
}

/// What is wrong with one cell, before anyone says where the cell is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Wrong {
    pub(super) problem: String,
    pub(super) fix: String,
}

impl Wrong {
    pub(super) fn new(problem: impl Into<String>, fix: impl Into<String>) -> Self {
        Self {
            problem: problem.into(),
            fix: fix.into(),
        }
    }
}

/// Collects errors, so that all are told and not only the first.
#[derive(Default)]
pub(super) struct Report {
    errors: Vec<RosterError>,
    beyond: usize,
}

impl Report {
    pub(super) fn add(&mut self, row: usize, column: &str, wrong: Wrong) {
        if self.has_room() {
            let Wrong { problem, fix } = wrong;
            self.errors.push(RosterError {
                row,
                column: column.into(),
                problem,
                fix,
            });
        } else {
            self.beyond += 1;
        }
    }

    /// Whether another error would be listed, and so is worth a costly suggestion.
    pub(super) fn has_room(&self) -> bool {
        self.errors.len() < MOST_ERRORS
    }

    /// The value when nothing was wrong, else everything that was.
    pub(super) fn finish<T>(mut self, value: T) -> Result<T, RosterErrors> {
        if self.errors.is_empty() {
            return Ok(value);
        }
        self.errors.sort_by_key(|error| error.row);
        if self.beyond > 0 {
            self.errors.push(RosterError {
                row: self.errors.last().map_or(1, |error| error.row),
                column: String::new(),
                problem: format!("{} more errors are not listed", self.beyond),
                fix: "put these right and import again".into(),
            });
        }
        Err(RosterErrors {
            errors: self.errors,
        })
    }
}
