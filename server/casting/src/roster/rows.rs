//! Cells to typed rows, with every check that needs no one on record: each cell by its kind, names
//! against the catalogue, dates in order, and rows that repeat.

use std::collections::{BTreeMap, btree_map::Entry};

use jiff::{Timestamp, civil::Date};

use super::{
    RosterTable, cell,
    columns::MEASUREMENTS,
    decode::decode,
    error::{Report, Wrong},
    measure::{MeasuredCell, measured},
    reader::Reader,
    sheet::{Sheet, cut},
};
use crate::{
    catalogue::{Catalogue, CertificateKind, same_category},
    person::{EvidenceCheck, Measurement},
};

/// A table's rows, each checked by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Rows {
    pub(super) columns: Vec<&'static str>,
    pub(super) content: Content,
}

impl Rows {
    /// How many rows there are under the header.
    #[must_use]
    pub fn len(&self) -> usize {
        match &self.content {
            Content::People(rows) => rows.len(),
            Content::Certificates(rows) => rows.len(),
            Content::Skills(rows) => rows.len(),
            Content::Availability(rows) => rows.len(),
        }
    }

    /// Whether the table has a header and nothing under it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }
}

#[derive(Clone, Debug, PartialEq)]
pub(super) enum Content {
    People(Vec<PersonRow>),
    Certificates(Vec<CertificateRow>),
    Skills(Vec<SkillRow>),
    Availability(Vec<AvailabilityRow>),
}

/// A row of the people table; none where a cell is blank.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct PersonRow {
    pub(super) row: usize,
    pub(super) code: String,
    pub(super) name: Option<String>,
    pub(super) occupation: Option<String>,
    pub(super) performs: Option<bool>,
    pub(super) email: Option<String>,
    pub(super) born: Option<Date>,
    pub(super) measurements: BTreeMap<Measurement, MeasuredCell>,
    pub(super) measured_on: Option<Date>,
    pub(super) measured_by: Option<String>,
    pub(super) medically_clear_until: Option<Date>,
    pub(super) last_wrap: Option<Timestamp>,
}

/// A row of the certificates table.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct CertificateRow {
    pub(super) row: usize,
    pub(super) person: String,
    pub(super) kind: String,
    pub(super) category: Option<String>,
    pub(super) number: Option<String>,
    pub(super) issuer: Option<String>,
    pub(super) issued: Date,
    pub(super) expires: Option<Date>,
    pub(super) last_used: Option<Date>,
    pub(super) checked: Option<EvidenceCheck>,
    pub(super) withdrawn: Option<Date>,
}

/// A row of the skills table.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SkillRow {
    pub(super) row: usize,
    pub(super) person: String,
    pub(super) skill: String,
    pub(super) level: u8,
    pub(super) assessed_by: Option<String>,
    pub(super) assessed_on: Option<Date>,
    pub(super) last_used: Option<Date>,
}

/// A row of the availability table.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct AvailabilityRow {
    pub(super) row: usize,
    pub(super) person: String,
    pub(super) from: Date,
    pub(super) to: Date,
    pub(super) available: bool,
}

/// Reads every row that is right, and reports everything that is not.
pub(super) fn read(table: RosterTable, bytes: &[u8], report: &mut Report) -> Rows {
    let sheet = decode(bytes, report)
        .and_then(|text| cut(table, &text, report))
        .unwrap_or(Sheet {
            columns: Vec::new(),
            rows: Vec::new(),
        });
    let rows = sheet.rows.iter();
    let content = match table {
        RosterTable::People => {
            let rows: Vec<_> = rows
                .filter_map(|row| person(Reader::new(row, report)))
                .collect();
            once(
                &rows,
                |row| (row.row, row.code.to_lowercase()),
                "code",
                report,
            );
            Content::People(rows)
        }
        RosterTable::Certificates => {
            let rows: Vec<_> = rows
                .filter_map(|row| certificate(Reader::new(row, report)))
                .collect();
            let key = |row: &CertificateRow| {
                let who = row.person.to_lowercase();
                let what = (row.kind.clone(), row.category.clone(), row.number.clone());
                (row.row, (who, what, row.issued))
            };
            once(&rows, key, "kind", report);
            Content::Certificates(rows)
        }
        RosterTable::Skills => {
            let rows: Vec<_> = rows
                .filter_map(|row| skill(Reader::new(row, report)))
                .collect();
            let key = |row: &SkillRow| (row.row, (row.person.to_lowercase(), row.skill.clone()));
            once(&rows, key, "skill", report);
            Content::Skills(rows)
        }
        RosterTable::Availability => {
            let rows: Vec<_> = rows
                .filter_map(|row| availability(Reader::new(row, report)))
                .collect();
            let key =
                |row: &AvailabilityRow| (row.row, (row.person.to_lowercase(), row.from, row.to));
            once(&rows, key, "from", report);
            Content::Availability(rows)
        }
    };
    Rows {
        columns: sheet.columns,
        content,
    }
}

/// Reports rows that speak of the same thing twice.
fn once<T, K: Ord>(rows: &[T], key: impl Fn(&T) -> (usize, K), column: &str, report: &mut Report) {
    let mut seen = BTreeMap::new();
    for row in rows {
        let (number, key) = key(row);
        match seen.entry(key) {
            Entry::Vacant(place) => {
                place.insert(number);
            }
            Entry::Occupied(first) => {
                let problem = format!("row {} is about the same one", first.get());
                report.add(
                    number,
                    column,
                    Wrong::new(problem, "keep one of the two rows"),
                );
            }
        }
    }
}

fn person(mut reader: Reader<'_>) -> Option<PersonRow> {
    let code = reader.required("code", cell::code);
    let name = reader.optional("name", cell::wording);
    let occupation = reader.optional("occupation", cell::wording);
    let performs = reader.optional("performs", cell::yes_no);
    let email = reader.optional("email", cell::email);
    let born = reader.optional("born", cell::date);
    let measurements = MEASUREMENTS
        .iter()
        .filter_map(|(of, column)| {
            Some((*of, reader.optional(column, |cell| measured(*of, cell))?))
        })
        .collect();
    let measured_on = reader.optional("measured_on", cell::date);
    let measured_by = reader.optional("measured_by", cell::text);
    let medically_clear_until = reader.optional("medically_clear_until", cell::date);
    let last_wrap = reader.optional("last_wrap", cell::moment);
    reader.sound.then_some(PersonRow {
        row: reader.row.number,
        code: code?,
        name,
        occupation,
        performs,
        email,
        born,
        measurements,
        measured_on,
        measured_by,
        medically_clear_until,
        last_wrap,
    })
}

fn certificate(mut reader: Reader<'_>) -> Option<CertificateRow> {
    let person = reader.required("person", cell::code);
    let kind = reader.required("kind", certificate_kind);
    let category = reader.optional("category", |cell| category(cell, kind));
    let number = reader.optional("number", cell::text);
    let issuer = reader.optional("issuer", cell::text);
    let issued = reader.required("issued", cell::date);
    let expires = reader.optional("expires", cell::date);
    let last_used = reader.optional("last_used", cell::date);
    let checked = checked(&mut reader);
    let withdrawn = reader.optional("withdrawn", cell::date);
    for (column, day) in [("expires", expires), ("withdrawn", withdrawn)] {
        if let (Some(issued), Some(day)) = (issued, day)
            && day < issued
        {
            let problem = format!("{day} is before the day of issue, {issued}");
            reader.wrong(column, Wrong::new(problem, "check both dates"));
        }
    }
    reader.sound.then_some(CertificateRow {
        row: reader.row.number,
        person: person?,
        kind: kind?.kind.clone(),
        category,
        number,
        issuer,
        issued: issued?,
        expires,
        last_used,
        checked,
        withdrawn,
    })
}

fn certificate_kind(cell: &str) -> Result<&'static CertificateKind, Wrong> {
    let catalogue = Catalogue::built_in();
    catalogue.certificate(cell).ok_or_else(|| {
        let fix = catalogue.nearest_certificate(cell).map_or_else(
            || "use a kind from the catalogue, for example first_aid_at_work".into(),
            |near| format!("did you mean `{near}`?"),
        );
        Wrong::new(
            format!("there is no kind {} in the catalogue", cell::quoted(cell)),
            fix,
        )
    })
}

/// A category as the catalogue spells it; free text where the kind leaves its categories open.
fn category(cell: &str, kind: Option<&CertificateKind>) -> Result<String, Wrong> {
    let text = cell::text(cell)?;
    let known = kind.map_or(&[][..], |kind| &kind.categories);
    if known.is_empty() {
        return Ok(text);
    }
    known
        .iter()
        .find(|known| same_category(known, &text))
        .cloned()
        .ok_or_else(|| {
            Wrong::new(
                format!("{} is not a category of this kind", cell::quoted(cell)),
                format!("use one of {}", known.join(", ")),
            )
        })
}

/// Who looked at the evidence, when and how: all three or none, for half a check proves nothing.
fn checked(reader: &mut Reader<'_>) -> Option<EvidenceCheck> {
    let blank = ["checked_by", "checked_on", "checked_how"]
        .into_iter()
        .filter(|column| !reader.row.cells.contains_key(column))
        .collect::<Vec<_>>();
    if blank.len() == 3 {
        return None;
    }
    // A spoiled row has cells that were refused already and only look blank.
    if !reader.row.spoiled {
        for column in blank {
            let problem = "blank while other cells say the evidence was checked";
            let fix = "fill in who looked, on which day and how, or leave all three blank";
            reader.wrong(column, Wrong::new(problem, fix));
        }
    }
    let by = reader.optional("checked_by", cell::text);
    let on = reader.optional("checked_on", cell::date);
    let method = reader.optional("checked_how", cell::text);
    Some(EvidenceCheck {
        by: by?,
        on: on?,
        method: method?,
    })
}

fn skill(mut reader: Reader<'_>) -> Option<SkillRow> {
    let person = reader.required("person", cell::code);
    let skill = reader.required("skill", |cell| {
        let catalogue = Catalogue::built_in();
        catalogue
            .skill(cell)
            .map(|skill| skill.name.clone())
            .ok_or_else(|| {
                let fix = catalogue.nearest_skill(cell).map_or_else(
                    || "use a skill from the catalogue, for example high_fall".into(),
                    |near| format!("did you mean `{near}`?"),
                );
                Wrong::new(
                    format!("there is no skill {} in the catalogue", cell::quoted(cell)),
                    fix,
                )
            })
    });
    let level = reader.required("level", cell::level);
    let assessed_by = reader.optional("assessed_by", cell::text);
    let assessed_on = reader.optional("assessed_on", cell::date);
    let last_used = reader.optional("last_used", cell::date);
    reader.sound.then_some(SkillRow {
        row: reader.row.number,
        person: person?,
        skill: skill?,
        level: level?,
        assessed_by,
        assessed_on,
        last_used,
    })
}

fn availability(mut reader: Reader<'_>) -> Option<AvailabilityRow> {
    let person = reader.required("person", cell::code);
    let from = reader.required("from", cell::date);
    let to = reader.required("to", cell::date);
    let available = reader.required("available", cell::yes_no);
    if let (Some(from), Some(to)) = (from, to)
        && to < from
    {
        let problem = format!("{to} is before the first day, {from}");
        reader.wrong("to", Wrong::new(problem, "check both dates"));
    }
    reader.sound.then_some(AvailabilityRow {
        row: reader.row.number,
        person: person?,
        from: from?,
        to: to?,
        available: available?,
    })
}
