//! The cells of one row, read one after another into values. Knows nothing of what a row is about.

use super::{
    error::{Report, Wrong},
    sheet::SheetRow,
};

/// Reads the cells of one row and remembers whether any was wrong.
pub(super) struct Reader<'a> {
    pub(super) row: &'a SheetRow,
    report: &'a mut Report,
    /// Whether nothing has been wrong so far.
    pub(super) sound: bool,
}

impl<'a> Reader<'a> {
    pub(super) fn new(row: &'a SheetRow, report: &'a mut Report) -> Self {
        Self {
            row,
            report,
            sound: !row.spoiled,
        }
    }

    pub(super) fn wrong(&mut self, column: &str, wrong: Wrong) {
        self.report.add(self.row.number, column, wrong);
        self.sound = false;
    }

    /// The cell's value; none when it is blank or wrong.
    pub(super) fn optional<T>(
        &mut self,
        column: &str,
        read: impl FnOnce(&str) -> Result<T, Wrong>,
    ) -> Option<T> {
        match read(self.row.cells.get(column)?) {
            Ok(value) => Some(value),
            Err(wrong) => {
                self.wrong(column, wrong);
                None
            }
        }
    }

    /// The cell's value; a blank is wrong, unless the row has a refused cell that may be this one.
    pub(super) fn required<T>(
        &mut self,
        column: &str,
        read: impl FnOnce(&str) -> Result<T, Wrong>,
    ) -> Option<T> {
        if !self.row.cells.contains_key(column) && !self.row.spoiled {
            let problem = "the cell is blank and must not be";
            self.wrong(column, Wrong::new(problem, "fill it in, or remove the row"));
        }
        self.optional(column, read)
    }
}
