//! What one cell may hold, kind by kind: text, codes, dates, yes and no, grades, moments,
//! addresses.
//!
//! A spreadsheet runs a cell that begins like a formula, so text that does is refused unless an
//! apostrophe stands before it, which is also how it is exported. Invisible characters that could
//! make one name look like another are refused; joiners that scripts need are not.

use jiff::{Timestamp, civil::Date};
use unicode_normalization::{UnicodeNormalization, char::is_combining_mark};

use super::error::Wrong;

/// The longest cell read.
const MOST_LETTERS: usize = 300;

/// More marks in a row on one letter than any script writes.
const MOST_MARKS: usize = 8;

/// The cell without the space around it, when nothing in it is harmful whatever its column.
pub(super) fn sound(cell: &str) -> Result<&str, Wrong> {
    let length = cell.chars().count();
    if length > MOST_LETTERS {
        return Err(Wrong::new(
            format!("the cell is {length} characters long, and at most {MOST_LETTERS} are read"),
            "shorten it",
        ));
    }
    let mut marks = 0;
    for letter in cell.chars() {
        if let Some(what) = harmful(letter) {
            return Err(Wrong::new(
                format!("the cell holds {what} (U+{:04X})", u32::from(letter)),
                "remove it, or type the cell again",
            ));
        }
        marks = if is_combining_mark(letter) {
            marks + 1
        } else {
            0
        };
        if marks > MOST_MARKS {
            return Err(Wrong::new(
                format!("more than {MOST_MARKS} marks stand on one letter"),
                "type the cell again",
            ));
        }
    }
    Ok(cell.trim())
}

/// What is wrong with a character wherever it stands. Joiners (U+200C, U+200D) pass: many scripts
/// need them.
fn harmful(letter: char) -> Option<&'static str> {
    match letter {
        '\n' => Some("a line break"),
        '\t' => Some("a tab"),
        _ if letter.is_control() => Some("a control character"),
        '\u{061C}'
        | '\u{200E}'
        | '\u{200F}'
        | '\u{202A}'..='\u{202E}'
        | '\u{2066}'..='\u{2069}' => {
            Some("an invisible character that changes the reading direction")
        }
        '\u{FFFD}' => Some("the mark of a character lost in an earlier conversion"),
        '\u{00AD}'
        | '\u{180E}'
        | '\u{200B}'
        | '\u{2028}'
        | '\u{2029}'
        | '\u{2060}'..='\u{2064}'
        | '\u{FEFF}'
        | '\u{FFF9}'..='\u{FFFB}'
        | '\u{E0000}'..='\u{E007F}' => Some("an invisible character"),
        '\u{FDD0}'..='\u{FDEF}' => Some("a code that is no character"),
        _ if u32::from(letter) & 0xFFFE == 0xFFFE => Some("a code that is no character"),
        _ => None,
    }
}

/// The cell in quotation marks for a message, cut short when long.
pub(super) fn quoted(cell: &str) -> String {
    let mut shown: String = cell.chars().take(40).collect();
    if shown.len() < cell.len() {
        shown.push('…');
    }
    format!("\"{shown}\"")
}

/// Whether a spreadsheet would run a cell that begins so; the full-width forms count in some of
/// them.
fn begins_formula(text: &str) -> bool {
    text.starts_with(['=', '+', '-', '@', '\t', '\r', '＝', '＋', '－', '＠'])
}

/// A plain number such as -3 or +4.5 is no formula.
fn is_number(text: &str) -> bool {
    let digits = text.strip_prefix(['-', '+']).unwrap_or(text);
    let mut parts = digits.split('.');
    let whole = |part: &str| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_digit());
    parts.next().is_some_and(whole) && parts.next().is_none_or(whole) && parts.next().is_none()
}

/// Text as it is exported: with an apostrophe before anything that begins like a formula, and
/// before text that already looks escaped, so that reading it back gives the very same text.
pub(super) fn escaped(text: &str) -> String {
    let looks_escaped = text.starts_with('\'') && begins_formula(text.trim_start_matches('\''));
    if looks_escaped || begins_formula(text) && !is_number(text) {
        format!("'{text}")
    } else {
        text.into()
    }
}

/// Free text, composed (NFC).
pub(super) fn text(cell: &str) -> Result<String, Wrong> {
    if begins_formula(cell) && !is_number(cell) {
        return Err(Wrong::new(
            format!("{} begins like a spreadsheet formula", quoted(cell)),
            "remove the first character, or put an apostrophe (') before it if it belongs to the text",
        ));
    }
    let text = match cell.strip_prefix('\'') {
        Some(rest) if begins_formula(cell.trim_start_matches('\'')) => rest,
        _ => cell,
    };
    Ok(text.nfc().collect())
}

/// A name or an occupation: text with at least one letter in it.
pub(super) fn wording(cell: &str) -> Result<String, Wrong> {
    let text = text(cell)?;
    if text.chars().any(char::is_alphabetic) {
        Ok(text)
    } else {
        Err(Wrong::new(
            format!("{} has no letter in it", quoted(cell)),
            "write it in words",
        ))
    }
}

/// A person's code.
pub(super) fn code(cell: &str) -> Result<String, Wrong> {
    let well_formed = cell.len() <= 16
        && cell.starts_with(|first: char| first.is_ascii_alphanumeric())
        && cell
            .chars()
            .all(|c| c.is_ascii_alphanumeric() || c == '-' || c == '_');
    if well_formed {
        Ok(cell.into())
    } else {
        Err(Wrong::new(
            format!("{} is not a code", quoted(cell)),
            "use 1 to 16 of the letters A to Z, digits, - and _, for example P07",
        ))
    }
}

/// A day, YYYY-MM-DD and nothing else: other orders mean different days in different countries.
pub(super) fn date(cell: &str) -> Result<Date, Wrong> {
    let shape: Vec<bool> = cell.bytes().map(|byte| byte.is_ascii_digit()).collect();
    let written = cell.len() == 10
        && cell.bytes().enumerate().all(|(place, byte)| match place {
            4 | 7 => byte == b'-',
            _ => shape.get(place) == Some(&true),
        });
    if !written {
        return Err(Wrong::new(
            format!("{} is not a date written YYYY-MM-DD", quoted(cell)),
            "write the year, the month and the day, for example 2027-03-08",
        ));
    }
    let day: Date = cell.parse().map_err(|_| {
        Wrong::new(
            format!("{} is not a day in the calendar", quoted(cell)),
            "check month and day",
        )
    })?;
    if (1900..=2199).contains(&day.year()) {
        Ok(day)
    } else {
        Err(Wrong::new(
            format!("the year in {} is not from 1900 to 2199", quoted(cell)),
            "check the year",
        ))
    }
}

/// A moment with its offset from UTC.
pub(super) fn moment(cell: &str) -> Result<Timestamp, Wrong> {
    cell.parse().map_err(|_| {
        Wrong::new(
            format!("{} is not a moment with its offset from UTC", quoted(cell)),
            "write it as 2027-03-08T19:30:00Z or 2027-03-08T20:30:00+01:00",
        )
    })
}

/// Yes or no.
pub(super) fn yes_no(cell: &str) -> Result<bool, Wrong> {
    match cell.to_lowercase().as_str() {
        "yes" | "y" | "true" | "1" => Ok(true),
        "no" | "n" | "false" | "0" => Ok(false),
        _ => Err(Wrong::new(
            format!("{} is neither yes nor no", quoted(cell)),
            "write yes or no",
        )),
    }
}

/// A level, 0 to 5.
pub(super) fn level(cell: &str) -> Result<u8, Wrong> {
    match cell.as_bytes() {
        [digit @ b'0'..=b'5'] => Ok(digit - b'0'),
        _ => Err(Wrong::new(
            format!("{} is not a level from 0 to 5", quoted(cell)),
            "write one digit: 0 untested, 1 supervised closely, 2 known versions, 3 independent, \
             4 leads, 5 assesses others",
        )),
    }
}

/// A mail address: enough of a check to catch a slip, for only a mail that arrives proves more.
pub(super) fn email(cell: &str) -> Result<String, Wrong> {
    let address = text(cell)?;
    let sound = address.split_once('@').is_some_and(|(local, domain)| {
        !local.is_empty()
            && !domain.contains('@')
            && domain.contains('.')
            && domain.split('.').all(|label| !label.is_empty())
    }) && !address
        .chars()
        .any(|c| c.is_whitespace() || "<>(),;:\"\\".contains(c));
    if sound {
        Ok(address)
    } else {
        Err(Wrong::new(
            format!("{} is not a mail address", quoted(cell)),
            "write it as name@place.example",
        ))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn formulas_are_refused_and_their_escaped_form_read_back() {
        let refused = [
            "=1+1", "+cmd", "-x", "@sum", "＝1", "－x", "=", "-", "+-3", "-3.", "-3.1.2",
        ];
        for cell in refused {
            assert!(text(cell).is_err(), "{cell}");
            let exported = escaped(cell);
            assert_eq!(exported, format!("'{cell}"));
            assert_eq!(text(&exported).unwrap(), cell);
        }
        for cell in [
            "-3", "+4.5", "-12.75", "'Abd", "O'Neil", "a=b", "'", "''x", "3-4",
        ] {
            assert_eq!(escaped(cell), cell);
            assert_eq!(text(cell).unwrap(), cell);
        }
        // Text that already looks escaped gets one more apostrophe, so that it too comes back as it
        // was.
        for cell in ["'=1", "''=1", "'-3", "'@x"] {
            assert_eq!(escaped(cell), format!("'{cell}"));
            assert_eq!(text(&escaped(cell)).unwrap(), cell);
        }
    }

    #[test]
    fn names_in_any_script_pass_and_are_composed() {
        for name in [
            "Ísgerður Þorvaldsdóttir",
            "Trịnh Thục Vy",
            "د. ليلى الدرعاوي",
            "فرهاد شب\u{200C}خیز",
            "पुष्पा खळदकर",
            "क्\u{200D}ष",
            "榎並 汐里",
            "맹하랑",
            "Αικατερίνη Βρυσάκη",
        ] {
            assert_eq!(wording(sound(name).unwrap()).unwrap(), name);
        }
        assert_eq!(wording("Zoe\u{0308}").unwrap(), "Zo\u{00EB}");
        assert!(wording("1234").is_err());
        assert!(wording("...").is_err());
    }

    #[test]
    fn harmful_characters_are_named() {
        for (cell, word) in [
            ("a\u{202E}b", "reading direction"),
            ("a\u{2066}b", "reading direction"),
            ("a\u{200F}b", "reading direction"),
            ("a\u{200B}b", "invisible"),
            ("a\u{E0041}b", "invisible"),
            ("a\u{FFFD}b", "lost"),
            ("a\u{1F}b", "control"),
            ("a\u{85}b", "control"),
            ("\ta", "tab"),
            ("a\nb", "line break"),
            ("a\u{FFFF}b", "no character"),
        ] {
            let wrong = sound(cell).unwrap_err();
            assert!(wrong.problem.contains(word), "{cell:?}: {}", wrong.problem);
        }
        assert!(sound(&format!("a{}", "\u{0301}".repeat(9))).is_err());
        assert!(sound(&format!("a{}", "\u{0301}".repeat(8))).is_ok());
        assert!(sound(&"x".repeat(301)).is_err());
        assert!(sound(&"榎".repeat(300)).is_ok());
    }

    #[test]
    fn dates_are_written_one_way() {
        assert_eq!(date("2027-03-08").unwrap(), jiff::civil::date(2027, 3, 8));
        assert_eq!(date("2028-02-29").unwrap(), jiff::civil::date(2028, 2, 29));
        for cell in [
            "2027-3-8",
            "08/03/2027",
            "8.3.2027",
            "20270308",
            "2027-03-08T00:00",
            "2027-02-29",
            "2027-13-01",
            "1899-12-31",
            "2200-01-01",
            "+002027-03",
            "２０２７-03-08",
            "",
        ] {
            assert!(date(cell).is_err(), "{cell}");
        }
    }

    #[test]
    fn closed_cells_take_what_they_say_and_no_more() {
        assert_eq!(level("5").unwrap(), 5);
        for cell in ["6", "-1", "3.0", "three", "33", ""] {
            assert!(level(cell).is_err(), "{cell}");
        }
        assert!(yes_no("Yes").unwrap());
        assert!(!yes_no("0").unwrap());
        assert!(yes_no("maybe").is_err());
        assert_eq!(code("P07").unwrap(), "P07");
        for cell in ["", "-P", "P 7", "Ψ1", "P0123456789ABCDEF"] {
            assert!(code(cell).is_err(), "{cell}");
        }
        assert_eq!(
            email("vy@salt-meridian.example").unwrap(),
            "vy@salt-meridian.example"
        );
        for cell in [
            "vy",
            "@x.example",
            "a@b",
            "a@b..c",
            "a b@c.d",
            "a@b@c.d",
            "=a@b.c",
            "a@b.",
        ] {
            assert!(email(cell).is_err(), "{cell}");
        }
        assert_eq!(
            moment("2027-03-08T20:30:00+01:00").unwrap().to_string(),
            "2027-03-08T19:30:00Z"
        );
        for cell in ["2027-03-08", "2027-03-08T20:30:00", "yesterday"] {
            assert!(moment(cell).is_err(), "{cell}");
        }
    }
}
