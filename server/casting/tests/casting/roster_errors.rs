//! Broken tables: each fault is told with its row, its column, what is wrong and how to put it
//! right.

use gagwright_casting::{
    Person, RosterErrors, RosterTable,
    roster::{MOST_ROWS, import, parse},
};
use jiff::civil::{Date, date};
use uuid::Uuid;

use crate::builders::person;

const TODAY: Date = date(2026, 11, 25);

fn errors(table: RosterTable, text: &str) -> RosterErrors {
    parse(table, text.as_bytes()).expect_err(text)
}

/// The one error of a table: its row, column and a piece of each sentence.
fn assert_one(
    table: RosterTable,
    bytes: &[u8],
    row: usize,
    column: &str,
    problem: &str,
    fix: &str,
) {
    let shown = String::from_utf8_lossy(bytes)
        .chars()
        .take(200)
        .collect::<String>();
    let errors = import(table, bytes, &[person("P01")], TODAY, &mut Uuid::nil)
        .expect_err(&shown)
        .errors;
    assert_eq!(errors.len(), 1, "{shown}: {errors:#?}");
    let error = &errors[0];
    assert_eq!(
        (error.row, error.column.as_str()),
        (row, column),
        "{shown}: {error:?}"
    );
    assert!(error.problem.contains(problem), "{shown}: {error:?}");
    assert!(error.fix.contains(fix), "{shown}: {error:?}");
}

#[test]
fn encodings_that_are_not_utf_are_refused_with_the_place() {
    let table = RosterTable::People;
    // "é" in Latin-1 is the single byte E9.
    assert_one(
        table,
        b"code,name\nP01,Ren\xE9e\n",
        2,
        "",
        "byte 17 (0xE9)",
        "CSV UTF-8",
    );
    assert_one(
        table,
        b"\xEF\xBB\xBFcode\n\xFF\n",
        2,
        "",
        "byte 8 (0xFF)",
        "CSV UTF-8",
    );
    assert_one(table, b"code\r\xFF\n", 2, "", "byte 5", "CSV UTF-8");
    // A character cut in half: U+20AC is E2 82 AC.
    assert_one(
        table,
        b"code,name\nP01,\xE2\x82",
        2,
        "",
        "byte 14 (0xE2)",
        "CSV UTF-8",
    );
    assert_one(
        table,
        b"c\0o\0d\0e\0",
        1,
        "",
        "UTF-16 text without its opening mark",
        "CSV UTF-8",
    );
    assert_one(table, b"\xFF\xFE\0\0c\0\0\0", 1, "", "UTF-32", "CSV UTF-8");
    assert_one(
        table,
        b"\xFF\xFEc\0o",
        1,
        "",
        "middle of a character",
        "CSV UTF-8",
    );
    assert_one(
        table,
        b"\xFF\xFEc\0\x0A\0\x00\xD8x\0",
        2,
        "",
        "half of a UTF-16",
        "CSV UTF-8",
    );
    let huge = vec![b'a'; gagwright_casting::roster::MOST_BYTES + 1];
    assert_one(table, &huge, 1, "", "at most 4194304 are read", "split");
}

#[test]
#[rustfmt::skip] // one case a line
fn headers_are_known_once_and_complete() {
    use RosterTable::{Availability, Certificates, People, Skills};
    for (table, text, row, column, problem, fix) in [
        (People, "", 1, "", "empty", "code,name"),
        (People, "\n\n", 1, "", "empty", "code,name"),
        (People, "code,nmae\n", 1, "nmae", "not a column", "did you mean `name`?"),
        (People, "code,shoe-colour-today\n", 1, "shoe-colour-today", "not a column", "remove it"),
        (People, "code,name,Name\n", 1, "name", "there twice", "keep one"),
        (People, "name\n", 1, "code", "missing", "add it"),
        (Certificates, "person,kind\n", 1, "issued", "missing", "add it"),
        (Skills, "person,level\n", 1, "skill", "missing", "add it"),
        (Availability, "person,from,to\n", 1, "available", "missing", "add it"),
        (People, "code,=name\n", 1, "=name", "not a column", "name"),
        (People, "code\n\"P01\n", 2, "", "never closes", "close it"),
        (People, "code,name\nP01\n", 2, "", "1 cells and the header 2", "every column"),
        (People, "code\nP01,Ada\n", 2, "", "no column name above it", "quote a cell"),
        (People, "code,\nP01,Ada\n", 2, "", "no column name above it", "quote a cell"),
    ] {
        assert_one(table, text.as_bytes(), row, column, problem, fix);
    }
}

#[test]
#[rustfmt::skip] // one case a line
fn cells_are_refused_one_by_one() {
    use RosterTable::{Availability, Certificates, People, Skills};
    let long = format!("code,name\nP01,{}\n", "x".repeat(301));
    for (table, text, row, column, problem, fix) in [
        (People, "code,name\nP01,=cmd()\n", 2, "name", "spreadsheet formula", "apostrophe"),
        (People, "code,name\nP01,@here\n", 2, "name", "spreadsheet formula", "apostrophe"),
        (People, "code,name\nP01,-Ada\n", 2, "name", "spreadsheet formula", "apostrophe"),
        (People, "code,name\nP01,+Ada\n", 2, "name", "spreadsheet formula", "apostrophe"),
        (People, "code,name\nP01,\"\tAda\"\n", 2, "name", "a tab", "remove it"),
        (People, "code,name\nP01,\"\rAda\"\n", 2, "name", "a line break", "remove it"),
        (People, "code,name\nP01,\"A\nda\"\n", 2, "name", "a line break", "remove it"),
        (People, "code,name\nP01,A\u{202E}da\n", 2, "name", "U+202E", "type the cell again"),
        (People, "code,name\nP01,A\u{7}da\n", 2, "name", "U+0007", "remove it"),
        (People, "code,name\nP01,A\u{FFFD}da\n", 2, "name", "lost", "type the cell again"),
        (People, &long, 2, "name", "301 characters", "shorten"),
        (People, "code,name\nP01,-3\n", 2, "name", "no letter", "words"),
        (People, "code\n=P01\n", 2, "code", "not a code", "P07"),
        (People, "code,name\n,Ada\n", 2, "code", "blank", "fill it in"),
        (People, "code,performs\nP01,perhaps\n", 2, "performs", "neither yes nor no", "yes or no"),
        (People, "code,email\nP01,ada\n", 2, "email", "not a mail address", "place.example"),
        (People, "code,born\nP01,08/03/1990\n", 2, "born", "YYYY-MM-DD", "2027-03-08"),
        (People, "code,born\nP01,1990-02-30\n", 2, "born", "not a day in the calendar", "check"),
        (People, "code,born\nP01,2026-12-01\n", 2, "born", "after today", "really was"),
        (People, "code,mass\nP01,62\n", 2, "mass", "no unit", "62 kg"),
        (People, "code,mass\nP01,\"62,5 kg\"\n", 2, "mass", "comma", "62.5 kg"),
        (People, "code,mass\nP01,62 kg\n", 2, "mass", "when mass was measured", "measured_on"),
        (People, "code,mass\nP01,62 kg on 2027-01-01\n", 2, "mass", "after today", "really was"),
        (
            People,
            "code,last_wrap\nP01,2026-11-27T00:00:00Z\n",
            2,
            "last_wrap",
            "after today",
            "really was",
        ),
        (People, "code,last_wrap\nP01,2026-10-01\n", 2, "last_wrap", "offset from UTC", "Z"),
        (Certificates, "person,kind,issued\nP01,first_aid,2026-01-01\n", 2, "kind", "no kind", "catalogue"),
        (
            Certificates,
            "person,kind,issued\nP01,rope_acess_1,2026-01-01\n",
            2,
            "kind",
            "no kind",
            "did you mean `rope_access_1`?",
        ),
        (
            Certificates,
            "person,kind,category,issued\nP01,powered_access,9z,2026-01-01\n",
            2,
            "category",
            "not a category",
            "3b",
        ),
        (
            Certificates,
            "person,kind,issued,expires\nP01,paramedic,2026-01-01,2025-12-31\n",
            2,
            "expires",
            "before the day of issue",
            "check both",
        ),
        (
            Certificates,
            "person,kind,issued,checked_by,checked_how\nP01,paramedic,2026-01-01,Ada,register\n",
            2,
            "checked_on",
            "blank while other cells",
            "all three",
        ),
        (
            Certificates,
            "person,kind,issued,last_used\nP01,paramedic,2026-01-01,2026-12-01\n",
            2,
            "last_used",
            "after today",
            "really was",
        ),
        (
            Certificates,
            "person,kind,issued\nP02,paramedic,2026-01-01\n",
            2,
            "person",
            "nobody has the code P02",
            "did you mean P01 (Name of P01)?",
        ),
        (Skills, "person,skill,level\nP01,high_fal,3\n", 2, "skill", "no skill", "`high_fall`"),
        (Skills, "person,skill,level\nP01,high_fall,6\n", 2, "level", "0 to 5", "one digit"),
        (
            Skills,
            "person,skill,level,assessed_on\nP01,high_fall,3,2026-12-01\n",
            2,
            "assessed_on",
            "after today",
            "really was",
        ),
        (
            Availability,
            "person,from,to,available\nP01,2027-03-08,2027-03-07,yes\n",
            2,
            "to",
            "before the first day",
            "check both",
        ),
        (Availability, "person,from,to,available\nP01,,2027-03-07,yes\n", 2, "from", "blank", "fill it in"),
    ] {
        assert_one(table, text.as_bytes(), row, column, problem, fix);
    }
}

#[test]
fn a_fact_from_tomorrow_has_a_day_of_grace_and_no_more() {
    let born = |day: &str| {
        let text = format!("code,born\nP01,{day}\n");
        import(
            RosterTable::People,
            text.as_bytes(),
            &[person("P01")],
            TODAY,
            &mut Uuid::nil,
        )
    };
    assert!(born("2026-11-26").is_ok());
    assert!(born("2026-11-27").is_err());
}

#[test]
#[rustfmt::skip] // one case a line
fn rows_that_repeat_are_refused() {
    use RosterTable::{Availability, Certificates, People, Skills};
    for (table, text, column) in [
        (People, "code\nP01\np01\n", "code"),
        (Certificates, "person,kind,issued\nP01,paramedic,2026-01-01\nP01,paramedic,2026-01-01\n", "kind"),
        (Skills, "person,skill,level\nP01,high_fall,3\nP01,high_fall,4\n", "skill"),
        (
            Availability,
            "person,from,to,available\nP01,2027-03-08,2027-03-09,yes\n\
             P01,2027-03-08,2027-03-09,no\n",
            "from",
        ),
    ] {
        assert_one(
            table,
            text.as_bytes(),
            3,
            column,
            "row 2 is about the same",
            "keep one",
        );
    }
}

#[test]
fn a_new_person_needs_a_name_an_occupation_and_whether_they_perform() {
    let refused = |text: &str| {
        import(
            RosterTable::People,
            text.as_bytes(),
            &[],
            TODAY,
            &mut Uuid::nil,
        )
        .unwrap_err()
        .errors
    };
    let errors = refused("code,name\nP09,\n");
    let columns: Vec<_> = errors.iter().map(|error| error.column.as_str()).collect();
    assert_eq!(columns, ["name", "occupation", "performs"]);
    assert!(errors[0].fix.contains("fill it in"), "{:?}", errors[0]);
    assert!(errors[1].fix.contains("add the column"), "{:?}", errors[1]);
}

#[test]
fn one_address_belongs_to_one_person() {
    let ada = Person {
        email: Some("Ada@salt-meridian.example".into()),
        ..person("P01")
    };
    let text = "code,email\nP02,ada@SALT-meridian.example\n";
    let both = [ada, person("P02")];
    let errors = import(
        RosterTable::People,
        text.as_bytes(),
        &both,
        TODAY,
        &mut Uuid::nil,
    )
    .unwrap_err()
    .errors;
    assert_eq!((errors[0].row, errors[0].column.as_str()), (2, "email"));
    assert!(
        errors[0].problem.contains("P01 has the same address"),
        "{errors:?}"
    );
}

#[test]
fn every_fault_is_told_and_nothing_is_changed() {
    let text = "code,name,occupation,performs,mass,born\n\
                P01,=bad,rider,yes,62,1990-01-01\n\
                P02,Ada,rider,maybe,62 kg,1990-13-01\n\
                \n\
                P04,,rider,yes,,2030-01-01\n";
    let mut minted = 0;
    let mut mint = || {
        minted += 1;
        Uuid::nil()
    };
    let errors = import(
        RosterTable::People,
        text.as_bytes(),
        &[person("P01")],
        TODAY,
        &mut mint,
    )
    .unwrap_err();
    let places: Vec<_> = errors
        .errors
        .iter()
        .map(|error| (error.row, error.column.as_str()))
        .collect();
    // The empty line keeps its number: the last row is the fifth, as a spreadsheet shows it.
    assert_eq!(
        places,
        [
            (2, "name"),
            (2, "mass"),
            (3, "performs"),
            (3, "born"),
            (5, "name")
        ],
        "{errors}"
    );
    let told = errors.to_string();
    assert_eq!(told.lines().count(), 5);
    assert!(told.starts_with("row 2, name: "), "{told}");
}

#[test]
fn tables_have_an_end() {
    let mut text = String::from("code\n");
    for row in 0..=MOST_ROWS {
        text.push_str(&format!("P{row}\n"));
    }
    let errors = errors(RosterTable::People, &text).errors;
    assert_eq!(errors.len(), 1);
    assert_eq!(errors[0].row, MOST_ROWS + 2);
    let mut text = String::from("code,performs\n");
    for row in 0..1_500 {
        text.push_str(&format!("P{row},perhaps\n"));
    }
    let errors = parse(RosterTable::People, text.as_bytes())
        .unwrap_err()
        .errors;
    assert_eq!(errors.len(), 1_001);
    assert!(
        errors[1_000].problem.contains("500 more errors"),
        "{:?}",
        errors[1_000]
    );
}

#[test]
fn half_a_check_of_the_evidence_is_told_cell_by_cell() {
    let text = "person,kind,issued,checked_by\nP01,paramedic,2026-01-01,Ada\n";
    let errors = errors(RosterTable::Certificates, text).errors;
    let columns: Vec<_> = errors.iter().map(|error| error.column.as_str()).collect();
    assert_eq!(columns, ["checked_on", "checked_how"]);
}

#[test]
fn errors_come_in_row_order_whatever_found_them() {
    // A control character is found while the table is cut, a wrong word only when cells are read.
    let text = "code,name,performs\nP01,Ada,perhaps\nP02,B\u{7}o,yes\n";
    let errors = errors(RosterTable::People, text).errors;
    let places: Vec<_> = errors
        .iter()
        .map(|error| (error.row, error.column.as_str()))
        .collect();
    assert_eq!(places, [(2, "performs"), (3, "name")]);
}

#[test]
fn one_day_is_long_enough() {
    for (table, text) in [
        (
            RosterTable::Certificates,
            "person,kind,issued,expires,withdrawn\nP01,paramedic,2026-01-01,2026-01-01,2026-01-01\n",
        ),
        (
            RosterTable::Availability,
            "person,from,to,available\nP01,2027-03-08,2027-03-08,yes\n",
        ),
    ] {
        assert!(parse(table, text.as_bytes()).is_ok(), "{text}");
    }
}
