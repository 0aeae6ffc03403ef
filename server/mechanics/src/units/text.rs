//! The pieces of what a person typed: marks, tolerances, digits and commas. Text in, text out; it knows
//! no unit and no quantity.

/// `3:40`, the way rescue drills are written down; none when the text is not that.
pub(super) fn minutes_and_seconds(text: &str) -> Option<f64> {
    let (minutes, seconds) = text.trim().split_once(':')?;
    let whole = |part: &str| -> Option<f64> {
        if part.is_empty() || part.len() > 4 || !part.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
        part.parse::<f64>().ok()
    };
    let (minutes, seconds) = (whole(minutes)?, whole(seconds)?);
    (seconds < 60.0).then_some(minutes * 60.0 + seconds)
}

/// `1 in 200 million` or `1 in a million`, the way a small chance is said; none when the text is not that.
pub(super) fn one_in(text: &str) -> Option<f64> {
    let mut words = text.trim().strip_prefix("1 in ")?.split_whitespace();
    let number = match words.next()? {
        "a" => 1.0,
        digits if digits.bytes().all(|b| b.is_ascii_digit() || b == b'.') => {
            digits.parse::<f64>().ok()?
        }
        _ => return None,
    };
    let many = words.try_fold(1.0, |many, word| match word {
        "thousand" => Some(many * 1.0e3),
        "million" => Some(many * 1.0e6),
        _ => None,
    })?;
    let chance = 1.0 / (number * many);
    (chance > 0.0 && chance <= 1.0).then_some(chance)
}

/// One spelling for the many marks that mean the same.
pub(super) fn normalise(text: &str) -> String {
    text.chars()
        .filter(|c| *c != '^')
        .map(|c| match c {
            '²' => '2',
            '³' => '3',
            '′' | '’' | '‘' => '\'',
            '″' | '”' | '“' => '"',
            '−' | '–' => '-',
            '·' | '⋅' | '*' | '\u{a0}' | '\u{202f}' => ' ',
            'º' | '˚' => '°',
            '％' => '%',
            other => other,
        })
        .collect()
}

/// The value's text and the tolerance's.
pub(super) fn split_tolerance(text: &str) -> (&str, Option<&str>) {
    ["±", "+/-", "+-"]
        .iter()
        .find_map(|mark| text.split_once(mark))
        .map_or((text, None), |(value, tolerance)| (value, Some(tolerance)))
}

/// Where the number at the start of a text ends, in bytes.
pub(super) fn number_end(text: &str) -> usize {
    let bytes = text.as_bytes();
    let mut end = 0;
    if matches!(bytes.first(), Some(b'+' | b'-')) {
        end = 1;
    }
    while matches!(bytes.get(end), Some(b'0'..=b'9' | b'.' | b',')) {
        end += 1;
    }
    // An exponent only when digits follow, so that no unit's letter is swallowed.
    if matches!(bytes.get(end), Some(b'e' | b'E')) {
        let mut next = end + 1;
        if matches!(bytes.get(next), Some(b'+' | b'-')) {
            next += 1;
        }
        let digits = next;
        while matches!(bytes.get(next), Some(b'0'..=b'9')) {
            next += 1;
        }
        if next > digits {
            end = next;
        }
    }
    end
}

pub(super) fn leading_digits(text: &str) -> Option<&str> {
    let end = text.bytes().take_while(u8::is_ascii_digit).count();
    (end > 0).then(|| &text[..end])
}

/// What the commas of a number come to.
pub(super) enum Commas {
    Plain(String),
    Ambiguous { decimal: String, thousands: String },
    Broken,
}

/// Reads commas only where they can mean one thing: `1,5` and `0,250` are decimals, `1,200.5` and
/// `1,200,000` have thousands, `1,200` could be either.
pub(super) fn commas(written: &str) -> Commas {
    let Some((head, tail)) = written.split_once(',') else {
        return Commas::Plain(written.to_owned());
    };
    let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    let unsigned = head.trim_start_matches(['+', '-']);
    if !digits(unsigned) || unsigned.is_empty() {
        return Commas::Broken;
    }
    let grouped = |whole: &str| {
        whole
            .split(',')
            .skip(1)
            .all(|group| group.len() == 3 && digits(group))
            && unsigned.len() <= 3
    };
    if let Some((whole, fraction)) = written.split_once('.') {
        return if grouped(whole) && digits(fraction) {
            Commas::Plain(written.replace(',', ""))
        } else {
            Commas::Broken
        };
    }
    if tail.contains(',') {
        return if grouped(written) {
            Commas::Plain(written.replace(',', ""))
        } else {
            Commas::Broken
        };
    }
    if tail.is_empty() || !digits(tail) {
        return Commas::Broken;
    }
    if tail.len() == 3 && unsigned.len() <= 3 && !unsigned.starts_with('0') {
        return Commas::Ambiguous {
            decimal: written.replace(',', "."),
            thousands: written.replace(',', ""),
        };
    }
    Commas::Plain(written.replace(',', "."))
}
