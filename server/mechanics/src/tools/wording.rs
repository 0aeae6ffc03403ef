//! Titles inside sentences.

/// A title as it stands within a sentence: its first letter small, unless the next is a capital too.
pub(super) fn first_small(title: &str) -> String {
    let mut letters = title.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if !second.is_uppercase() => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => title.to_owned(),
    }
}

/// A title as it stands at the start of a sentence.
pub(super) fn first_large(title: &str) -> String {
    let mut letters = title.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}
