//! Bytes to text. A table is UTF-8, or UTF-16 that says so in its first two bytes; anything else is
//! refused with the place of the first byte that gives it away, for guessing an encoding spoils
//! names silently.

use super::{
    MOST_BYTES,
    error::{Report, Wrong},
};

const SAVE_AS: &str = "save the table as \"CSV UTF-8\" and import that";

/// The text of a table with every line ended by a single line feed, or nothing once the report says
/// why.
pub(super) fn decode(bytes: &[u8], report: &mut Report) -> Option<String> {
    if bytes.len() > MOST_BYTES {
        let problem = format!(
            "the table is {} bytes long, and at most {MOST_BYTES} are read",
            bytes.len()
        );
        report.add(1, "", Wrong::new(problem, "split it into several tables"));
        return None;
    }
    let text = match bytes {
        [0xFF, 0xFE, 0, 0, ..] | [0, 0, 0xFE, 0xFF, ..] => {
            let problem = "the table is in UTF-32, which is not read";
            report.add(1, "", Wrong::new(problem, SAVE_AS));
            return None;
        }
        [0xFF, 0xFE, rest @ ..] => utf16(rest, u16::from_le_bytes, report)?,
        [0xFE, 0xFF, rest @ ..] => utf16(rest, u16::from_be_bytes, report)?,
        [0xEF, 0xBB, 0xBF, rest @ ..] => utf8(rest, 3, report)?,
        _ => utf8(bytes, 0, report)?,
    };
    let mut text = text.replace("\r\n", "\n").replace('\r', "\n");
    if !text.ends_with('\n') {
        text.push('\n');
    }
    Some(text)
}

fn utf8(bytes: &[u8], skipped: usize, report: &mut Report) -> Option<String> {
    if let Some(zero) = bytes.iter().position(|byte| *byte == 0) {
        let problem = format!(
            "byte {} is zero, as in UTF-16 text without its opening mark",
            zero + skipped
        );
        report.add(row_of(bytes, zero), "", Wrong::new(problem, SAVE_AS));
        return None;
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => Some(text.into()),
        Err(error) => {
            let at = error.valid_up_to();
            let byte = bytes.get(at).copied().unwrap_or_default();
            let problem = format!("byte {} (0x{byte:02X}) is not UTF-8", at + skipped);
            report.add(row_of(bytes, at), "", Wrong::new(problem, SAVE_AS));
            None
        }
    }
}

fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16, report: &mut Report) -> Option<String> {
    let (pairs, odd) = bytes.as_chunks::<2>();
    if !odd.is_empty() {
        let problem = "the table says it is UTF-16 but ends in the middle of a character";
        report.add(1, "", Wrong::new(problem, SAVE_AS));
        return None;
    }
    let mut text = String::with_capacity(bytes.len());
    let mut at = 2;
    for unit in char::decode_utf16(pairs.iter().map(|pair| unit(*pair))) {
        match unit {
            Ok(letter) => {
                at += 2 * letter.len_utf16();
                text.push(letter);
            }
            Err(half) => {
                let problem = format!(
                    "bytes {at} and {} (0x{:04X}) are half of a UTF-16 character",
                    at + 1,
                    half.unpaired_surrogate()
                );
                report.add(
                    row_of(text.as_bytes(), text.len()),
                    "",
                    Wrong::new(problem, SAVE_AS),
                );
                return None;
            }
        }
    }
    Some(text)
}

/// The row that holds the byte at `at`.
fn row_of(bytes: &[u8], at: usize) -> usize {
    let before = bytes.get(..at).unwrap_or(bytes);
    let feeds = before.iter().filter(|byte| **byte == b'\n').count();
    // Very old tables end their lines with a carriage return alone.
    let lines = if feeds > 0 {
        feeds
    } else {
        before.iter().filter(|byte| **byte == b'\r').count()
    };
    lines + 1
}
