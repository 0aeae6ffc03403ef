//! Text to named cells: finds the separator, matches the header to the table's columns, and gives
//! each row its number. Knows the names of columns and not what their cells mean.

use std::collections::BTreeMap;

use super::{
    MOST_ROWS, RosterTable,
    cell::sound,
    columns,
    error::{Report, Wrong},
};
use crate::nearest::nearest;

/// A table cut into cells.
pub(super) struct Sheet {
    /// The known columns that the header has.
    pub(super) columns: Vec<&'static str>,
    pub(super) rows: Vec<SheetRow>,
}

/// One row's cells that are not blank, by column.
pub(super) struct SheetRow {
    pub(super) number: usize,
    pub(super) cells: BTreeMap<&'static str, String>,
    /// Whether a cell was refused already, so that what is missing is not blamed twice.
    pub(super) spoiled: bool,
}

/// Cuts a table, or nothing once the report says why it cannot be cut.
pub(super) fn cut(table: RosterTable, text: &str, report: &mut Report) -> Option<Sheet> {
    let known: Vec<&'static str> = table.columns().collect();
    let separator = separator(text, &known);
    if let Some(row) = unclosed_quote(text, separator) {
        let problem = "a quotation mark opens a cell here and never closes it";
        let fix = "close it, or double it if it belongs to the text";
        report.add(row, "", Wrong::new(problem, fix));
        return None;
    }
    let mut records = records(text, separator).into_iter();
    let Some((header_row, header)) = records.next() else {
        let fix = format!("begin with a row of column names: {}", known.join(","));
        report.add(1, "", Wrong::new("the table is empty", fix));
        return None;
    };
    let layout = layout(table, &known, header_row, &header, report)?;
    let columns = layout.iter().flatten().copied().collect();
    let mut rows = Vec::new();
    for (number, cells) in records {
        if cells.iter().all(|cell| cell.trim().is_empty()) {
            continue;
        }
        if rows.len() == MOST_ROWS {
            let problem = format!("there are more than {MOST_ROWS} rows");
            report.add(
                number,
                "",
                Wrong::new(problem, "split the table into several"),
            );
            break;
        }
        rows.extend(row(number, cells, &layout, report));
    }
    Some(Sheet { columns, rows })
}

/// The separator under which the first row names most known columns; a comma when none does.
fn separator(text: &str, known: &[&str]) -> u8 {
    let named = |separator: &u8| {
        records(
            text.lines()
                .find(|line| !line.trim().is_empty())
                .unwrap_or(""),
            *separator,
        )
        .first()
        .map_or(0, |(_, header)| {
            header
                .iter()
                .filter(|cell| known.contains(&plain(cell).as_str()))
                .count()
        })
    };
    // The last of equals wins, so the comma comes last.
    [b'\t', b';', b',']
        .into_iter()
        .max_by_key(named)
        .unwrap_or(b',')
}

/// Every record that is not an empty line, with the number of the row it starts on.
fn records(text: &str, separator: u8) -> Vec<(usize, Vec<String>)> {
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(separator)
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut records = Vec::new();
    let mut record = csv::StringRecord::new();
    // Reading text that is already in memory and valid fails only at its end.
    while matches!(reader.read_record(&mut record), Ok(true)) {
        let cells: Vec<String> = record.iter().map(Into::into).collect();
        let inner = cells
            .iter()
            .map(|cell| cell.matches('\n').count())
            .sum::<usize>();
        // Empty lines are passed over, so only the end of a record says where it is.
        let after = usize::try_from(reader.position().line()).unwrap_or(usize::MAX);
        records.push((after.saturating_sub(1).saturating_sub(inner).max(1), cells));
    }
    records
}

/// The row where a quoted cell opens that the text never closes.
fn unclosed_quote(text: &str, separator: u8) -> Option<usize> {
    let mut row = 1;
    let mut opened = None;
    let mut at_start = true;
    for byte in text.bytes() {
        match byte {
            b'"' if opened.is_some() => opened = None,
            // A quote right after the closing one is an escaped quote and opens the cell again.
            b'"' if at_start => opened = Some(row),
            _ => {}
        }
        at_start = opened.is_none() && matches!(byte, b'"' | b'\n') || byte == separator;
        row += usize::from(byte == b'\n');
    }
    opened
}

/// A header cell as the columns are named.
fn plain(header: &str) -> String {
    header.trim().to_lowercase().replace([' ', '-'], "_")
}

/// Which column each place holds; nothing once the report says what is wrong with the header.
fn layout(
    table: RosterTable,
    known: &[&'static str],
    header_row: usize,
    header: &[String],
    report: &mut Report,
) -> Option<Vec<Option<&'static str>>> {
    let mut layout = Vec::with_capacity(header.len());
    let mut sound = true;
    for cell in header {
        let name = plain(cell);
        let column = known.iter().copied().find(|column| *column == name);
        let shown: String = cell
            .trim()
            .chars()
            .filter(|c| !c.is_control())
            .take(40)
            .collect();
        match column {
            Some(column) if layout.contains(&Some(column)) => {
                let fix = "keep one of them";
                report.add(
                    header_row,
                    column,
                    Wrong::new("the column is there twice", fix),
                );
                sound = false;
            }
            None if !name.is_empty() => {
                let fix = nearest(&name, known.iter().copied()).map_or_else(
                    || format!("remove it; the columns are {}", known.join(", ")),
                    |near| format!("did you mean `{near}`? Otherwise remove it"),
                );
                let problem = format!("`{shown}` is not a column of the {table} table");
                report.add(header_row, &shown, Wrong::new(problem, fix));
                sound = false;
            }
            _ => {}
        }
        layout.push(column);
    }
    for column in columns::of(table) {
        if column.required && !layout.contains(&Some(column.name)) {
            let problem = format!("the column `{}` is missing", column.name);
            let fix = format!(
                "add it to the first row; the columns are {}",
                known.join(", ")
            );
            report.add(header_row, column.name, Wrong::new(problem, fix));
            sound = false;
        }
    }
    sound.then_some(layout)
}

/// One row's cells by column; nothing when the row does not fit the header.
fn row(
    number: usize,
    cells: Vec<String>,
    layout: &[Option<&'static str>],
    report: &mut Report,
) -> Option<SheetRow> {
    if cells.len() < layout.len() {
        let problem = format!(
            "the row has {} cells and the header {}",
            cells.len(),
            layout.len()
        );
        report.add(
            number,
            "",
            Wrong::new(problem, "give every column a cell, blank if need be"),
        );
        return None;
    }
    let mut row = SheetRow {
        number,
        cells: BTreeMap::new(),
        spoiled: false,
    };
    let places = layout.iter().copied().chain(std::iter::repeat(None));
    for (cell, column) in cells.into_iter().zip(places) {
        let Some(column) = column else {
            if !cell.trim().is_empty() {
                let problem = "a cell has no column name above it";
                let fix = "name its column, or quote a cell that contains the separator";
                report.add(number, "", Wrong::new(problem, fix));
                row.spoiled = true;
            }
            continue;
        };
        match sound(&cell) {
            Ok("") => {}
            Ok(text) => {
                row.cells.insert(column, text.into());
            }
            Err(wrong) => {
                report.add(number, column, wrong);
                row.spoiled = true;
            }
        }
    }
    Some(row)
}
