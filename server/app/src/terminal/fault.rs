//! How a subcommand fails: a plain sentence that says what to do, and an exit code. It knows how errors
//! are shown, not how they come about.

use std::process::ExitCode;

use gagwright_store::StoreError;

use super::table::WIDTH;
use crate::commands::CommandError;

/// Why a subcommand did not do what was asked.
#[derive(Debug)]
pub(crate) enum Fault {
    /// It was typed wrongly: exit code 2.
    Usage(String),
    /// It could not be done: exit code 1.
    Failed(String),
    /// Nobody is listening any more: exit code 1, no words.
    Quiet,
}

impl Fault {
    pub(crate) fn usage(text: impl Into<String>) -> Self {
        Fault::Usage(text.into())
    }

    pub(crate) fn failed(text: impl Into<String>) -> Self {
        Fault::Failed(text.into())
    }

    /// The words.
    pub(crate) fn sentence(&self) -> &str {
        match self {
            Fault::Usage(text) | Fault::Failed(text) => text,
            Fault::Quiet => "",
        }
    }

    /// Says it on standard error and gives the exit code.
    pub(crate) fn report(self) -> ExitCode {
        let (text, code) = match self {
            Fault::Usage(text) => (text, 2),
            Fault::Failed(text) => (text, 1),
            Fault::Quiet => return ExitCode::from(1),
        };
        let mut lines = Vec::new();
        for line in text.lines() {
            lines.extend(super::table::wrap(line, WIDTH));
        }
        eprintln!("gagwright: {}", lines.join("\n"));
        ExitCode::from(code)
    }
}

impl From<StoreError> for Fault {
    fn from(error: StoreError) -> Self {
        Fault::Failed(error.to_string())
    }
}

impl From<CommandError> for Fault {
    fn from(error: CommandError) -> Self {
        match error {
            CommandError::Roster { problems } => Fault::Failed(format!(
                "the roster was refused, nothing was imported:\n{}",
                cells(&problems)
            )),
            other => Fault::Failed(other.to_string()),
        }
    }
}

/// Wrong cells, one a line.
pub(crate) fn cells(problems: &[crate::commands::CellProblem]) -> String {
    let told: Vec<String> = problems
        .iter()
        .map(|one| {
            let place = match (one.row, one.column.as_str()) {
                (0, _) => "whole file".to_owned(),
                (row, "") => format!("row {row}"),
                (row, column) => format!("row {row}, column {column}"),
            };
            format!("  {place}: {}; {}", one.problem, one.fix)
        })
        .collect();
    told.join("\n")
}
