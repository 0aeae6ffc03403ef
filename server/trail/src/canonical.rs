//! RFC 8785 canonical bytes: one value, one byte string. Everything that is hashed or signed goes
//! through here. It must not know what the values mean.
//!
//! JSON numbers are IEEE doubles to RFC 8785, so an integer above 2^53 would be rounded in silence and
//! two different values would share one hash. Such integers are refused, as are NaN and infinities.

use serde::{Serialize, de::DeserializeOwned};

use crate::guard::refuse_lossy;

/// The largest integer that every JSON reader keeps exactly.
pub const LARGEST_INTEGER: u64 = 1 << 53;

/// Values nested deeper than this are refused, so that no reader runs out of stack.
pub const DEEPEST: usize = 64;

/// Why a value has no canonical bytes, or bytes are not canonical.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum CanonicalError {
    /// An integer that a double would round.
    #[error("{pointer}: the integer {value} is beyond 2^53; write it as a string")]
    LargeInteger {
        /// JSON pointer to it.
        pointer: String,
        /// What it is.
        value: String,
    },
    /// NaN or an infinity.
    #[error("{pointer}: the number is not finite")]
    NotFinite {
        /// JSON pointer to it.
        pointer: String,
    },
    /// Something that has no JSON form.
    #[error("the value has no canonical form: {0}")]
    Unrepresentable(String),
    /// Nested beyond [`DEEPEST`].
    #[error("{pointer}: nested more than 64 levels deep")]
    TooDeep {
        /// JSON pointer to where it was given up.
        pointer: String,
    },
    /// Not JSON, or not of the wanted shape.
    #[error("not the JSON that was expected: {0}")]
    NotExpected(String),
    /// Valid JSON in another spelling.
    #[error("the JSON is not in RFC 8785 canonical form")]
    NotCanonical,
}

/// The RFC 8785 bytes of a value.
///
/// # Errors
/// For NaN, infinities, integers beyond 2^53 and values nested too deep.
pub fn canonical_bytes<T: Serialize>(value: &T) -> Result<Vec<u8>, CanonicalError> {
    refuse_lossy(value)?;
    serde_json_canonicalizer::to_vec(value)
        .map_err(|error| CanonicalError::Unrepresentable(error.to_string()))
}

/// Reads a value from bytes that must be its RFC 8785 form, so that one value has one spelling.
///
/// # Errors
/// When the bytes are not JSON of that shape, or are not canonical (whitespace, key order, repeated
/// keys, other spellings of numbers or strings).
pub fn from_canonical_bytes<T: Serialize + DeserializeOwned>(
    bytes: &[u8],
) -> Result<T, CanonicalError> {
    let value: T = serde_json::from_slice(bytes)
        .map_err(|error| CanonicalError::NotExpected(error.to_string()))?;
    if canonical_bytes(&value)? == bytes {
        Ok(value)
    } else {
        Err(CanonicalError::NotCanonical)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::{Value, json};

    #[test]
    fn the_sample_of_rfc_8785_section_3_2_2() {
        let source = r#"{
            "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
            "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
            "literals": [null, true, false]
        }"#;
        let value: Value = serde_json::from_str(source).unwrap();
        let expected = "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,\
                        0.002,1e-27],\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}";
        assert_eq!(
            String::from_utf8(canonical_bytes(&value).unwrap()).unwrap(),
            expected
        );
    }

    #[test]
    fn keys_sort_by_utf16_units_as_rfc_8785_section_3_2_3_asks() {
        // RFC 8785 section 3.2.3: the sample whose order differs between UTF-8 and UTF-16.
        let value = json!({
            "\u{20ac}": "Euro Sign", "\r": "Carriage Return", "\u{fb33}": "Hebrew Letter Dalet With Dagesh",
            "1": "One", "\u{1f600}": "Emoji: Grinning Face", "\u{80}": "Control", "\u{f6}": "Latin Small Letter O With Diaeresis"
        });
        let text = String::from_utf8(canonical_bytes(&value).unwrap()).unwrap();
        let order = [
            "\\r",
            "1",
            "\u{80}",
            "\u{f6}",
            "\u{20ac}",
            "\u{1f600}",
            "\u{fb33}",
        ];
        let places: Vec<usize> = order
            .iter()
            .map(|key| text.find(&format!("\"{key}\":")).unwrap())
            .collect();
        assert!(places.is_sorted(), "{text}");
    }

    #[test]
    fn numbers_that_json_readers_would_round_are_refused_by_name() {
        assert!(canonical_bytes(&json!({"a": 9_007_199_254_740_992_u64})).is_ok());
        let error = canonical_bytes(&json!({"a": [1, 9_007_199_254_740_993_u64]})).unwrap_err();
        assert!(error.to_string().contains("/a/1"), "{error}");
        assert!(canonical_bytes(&json!({"a": i64::MIN})).is_err());
        assert!(canonical_bytes(&f64::NAN).is_err());
        let deep = std::collections::BTreeMap::from([("a/b", vec![1.0, f64::INFINITY])]);
        assert_eq!(
            canonical_bytes(&deep),
            Err(CanonicalError::NotFinite {
                pointer: "/a~1b/1".to_owned()
            })
        );
    }

    #[test]
    fn other_spellings_of_the_same_value_are_refused() {
        for (text, right) in [
            (r#"{"a":1,"b":2}"#, true),
            (r#"{"b":2,"a":1}"#, false),
            (r#"{"a": 1,"b":2}"#, false),
            (r#"{"a":1.0,"b":2}"#, false),
            (r#"{"a":1,"a":1,"b":2}"#, false),
            (r#"{"a":"\u0041"}"#, false),
            ("{\"a\":1}\n", false),
            ("{", false),
        ] {
            assert_eq!(
                from_canonical_bytes::<Value>(text.as_bytes()).is_ok(),
                right,
                "{text}"
            );
        }
    }

    #[test]
    fn deep_nesting_is_refused_without_running_out_of_stack() {
        let mut value = json!(1);
        for _ in 0..100 {
            value = json!([value]);
        }
        assert!(matches!(
            canonical_bytes(&value),
            Err(CanonicalError::TooDeep { .. })
        ));
    }
}
