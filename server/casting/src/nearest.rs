//! The known word nearest to a mistyped one, for errors that say what was probably meant. Knows
//! nothing of what the words name.

/// The candidate with the fewest single-character edits from `word`, when few enough to be a likely
/// slip: at most two, or a third of the word's length if that is more. The first wins a tie.
pub(crate) fn nearest<'a>(
    word: &str,
    candidates: impl Iterator<Item = &'a str>,
) -> Option<&'a str> {
    // A cell can hold anything; nothing this long is a slip of the pen.
    let letters: Vec<char> = word.to_lowercase().chars().take(61).collect();
    if letters.len() > 60 {
        return None;
    }
    let limit = (letters.len() / 3).max(2);
    let mut best: Option<(usize, &str)> = None;
    for candidate in candidates {
        let edits = edits(&letters, candidate);
        if edits <= limit && best.is_none_or(|(fewest, _)| edits < fewest) {
            best = Some((edits, candidate));
        }
    }
    best.map(|(_, candidate)| candidate)
}

/// Levenshtein distance, one row at a time.
fn edits(letters: &[char], candidate: &str) -> usize {
    let mut row: Vec<usize> = (0..=letters.len()).collect();
    for (i, theirs) in candidate.chars().enumerate() {
        let mut diagonal = i;
        if let Some(first) = row.first_mut() {
            *first = i + 1;
        }
        let mut left = i + 1;
        for (cell, ours) in row.iter_mut().skip(1).zip(letters) {
            let above = *cell;
            let changed = diagonal + usize::from(*ours != theirs);
            left = changed.min(above + 1).min(left + 1);
            diagonal = above;
            *cell = left;
        }
    }
    row.last().copied().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn slips_are_found_and_strangers_are_not() {
        let known = ["high_fall", "wire_flight", "full_burn"];
        let cases = [
            ("hihg_fall", Some("high_fall")),
            ("HIGH_FALL", Some("high_fall")),
            ("wireflight", Some("wire_flight")),
            ("ful_burn", Some("full_burn")),
            ("basket_weaving", None),
            ("", None),
        ];
        for (word, expected) in cases {
            assert_eq!(nearest(word, known.into_iter()), expected, "{word}");
        }
        assert_eq!(nearest(&"x".repeat(1000), known.into_iter()), None);
    }

    #[test]
    fn distance_is_levenshtein() {
        // Textbook values: kitten/sitting 3, flaw/lawn 2, both computed by hand.
        let chars = |word: &str| word.chars().collect::<Vec<_>>();
        assert_eq!(edits(&chars("kitten"), "sitting"), 3);
        assert_eq!(edits(&chars("flaw"), "lawn"), 2);
        assert_eq!(edits(&chars(""), "abc"), 3);
    }
}
