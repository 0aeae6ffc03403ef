//! The small grammar that sentences share. It decides nothing.

/// With a capital first letter, for starting a sentence.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

#[cfg(test)]
mod tests {
    use super::capital;

    #[test]
    fn only_the_first_letter_changes_in_any_script() {
        for (text, expected) in [
            ("mean wind", "Mean wind"),
            ("éclair board", "Éclair board"),
            ("straße", "Straße"),
            ("白鳥", "白鳥"),
            ("", ""),
        ] {
            assert_eq!(capital(text), expected);
        }
    }
}
