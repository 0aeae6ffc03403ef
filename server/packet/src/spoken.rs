//! Codes as they are read over a radio, with the spelling words of the International Civil
//! Aviation Organization (Annex 10, volume II, 5.2.1.3). Digits are plain English words.

/// Spells a code: letters and digits become words, anything else parts them.
pub(crate) fn spell(code: &str) -> String {
    let words: Vec<String> = code
        .chars()
        .filter_map(|c| {
            let upper = c.to_ascii_uppercase();
            match upper {
                'A'..='Z' => Some(LETTERS[(upper as u8 - b'A') as usize].to_owned()),
                '0'..='9' => Some(DIGITS[(upper as u8 - b'0') as usize].to_owned()),
                '-' => Some("dash".to_owned()),
                c if c.is_alphanumeric() => Some(c.to_string()),
                _ => None,
            }
        })
        .collect();
    words.join(" ")
}

const LETTERS: [&str; 26] = [
    "Alfa", "Bravo", "Charlie", "Delta", "Echo", "Foxtrot", "Golf", "Hotel", "India", "Juliett",
    "Kilo", "Lima", "Mike", "November", "Oscar", "Papa", "Quebec", "Romeo", "Sierra", "Tango",
    "Uniform", "Victor", "Whiskey", "X-ray", "Yankee", "Zulu",
];

const DIGITS: [&str; 10] = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine",
];

#[cfg(test)]
mod tests {
    use super::spell;

    #[test]
    fn codes_are_spelled() {
        for (code, spoken) in [
            ("G07", "Golf zero seven"),
            ("4", "four"),
            ("3a9f", "three Alfa nine Foxtrot"),
            ("B-2", "Bravo dash two"),
            ("Ж1", "Ж one"),
            ("", ""),
        ] {
            assert_eq!(spell(code), spoken);
        }
    }
}
