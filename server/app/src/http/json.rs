//! Reading JSON bodies strictly: a syntax error says where it is, a wrong or missing field is named by
//! its pointer, a key given twice is refused (two values for one drop height must never be settled by
//! whichever came last). Knows nothing of any particular body.

use std::{cell::RefCell, collections::HashSet, fmt};

use serde::de::{DeserializeOwned, DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};
use serde_json::error::Category;

use super::problem::{Code, Problem, escape};

/// Most bytes of a JSON body.
pub const MAX_BYTES: usize = 1024 * 1024;

/// Reads one JSON body.
///
/// # Errors
/// `malformed_json` with line and column when it is not JSON; `invalid_input` with a pointer when it is
/// JSON and not what is expected.
pub fn read<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, Problem> {
    if bytes.is_empty() {
        return Err(Problem::new(
            Code::MalformedJson,
            "The body is empty; send a JSON object with Content-Type application/json.",
        ));
    }
    refuse_repeated_keys(bytes)?;
    let mut text = serde_json::Deserializer::from_slice(bytes);
    let value = serde_path_to_error::deserialize(&mut text).map_err(|error| {
        let pointer = pointer_of(error.path());
        misfit(error.into_inner(), pointer)
    })?;
    text.end().map_err(|error| syntax(&error))?;
    Ok(value)
}

/// The RFC 8785 form of JSON text, in which order and spacing of keys do not matter; none for text that
/// has no such form.
pub fn canonical(bytes: &[u8]) -> Option<Vec<u8>> {
    let value: serde_json::Value = serde_json::from_slice(bytes).ok()?;
    gagwright_trail::canonical_bytes(&value).ok()
}

fn pointer_of(path: &serde_path_to_error::Path) -> String {
    use serde_path_to_error::Segment;
    let mut pointer = String::new();
    for segment in path.iter() {
        match segment {
            Segment::Seq { index } => pointer.push_str(&format!("/{index}")),
            Segment::Map { key } => pointer.push_str(&format!("/{}", escape(key))),
            // A variant of a tagged enum is no level of the JSON text, and an unknown one has no name.
            Segment::Enum { .. } | Segment::Unknown => {}
        }
    }
    pointer
}

fn misfit(error: serde_json::Error, pointer: String) -> Problem {
    if error.classify() != Category::Data {
        return syntax(&error);
    }
    let told = error.to_string();
    let told = told.split(" at line ").next().unwrap_or(&told).to_owned();
    // A missing or unknown field is reported at the object around it; the pointer goes to the field.
    let quoted = told.split('`').nth(1);
    match quoted {
        Some(name) if told.starts_with("missing field") => {
            let pointer = format!("{pointer}/{}", escape(name));
            Problem::field(pointer, "is missing", "add it")
        }
        Some(name) if told.starts_with("unknown field") => {
            let expected = told
                .split_once("expected ")
                .map_or("nothing", |(_, rest)| rest);
            let parent = pointer
                .strip_suffix(&format!("/{}", escape(name)))
                .unwrap_or(&pointer);
            Problem::field(
                format!("{parent}/{}", escape(name)),
                "is not known here",
                format!("leave it out; what is known: {expected}"),
            )
        }
        _ => {
            let fix = told.split_once("expected ").map_or_else(
                || "give a value of the described kind".into(),
                |(_, rest)| format!("give {rest}"),
            );
            Problem::field(pointer, format!("is not as expected ({told})"), fix)
        }
    }
}

fn syntax(error: &serde_json::Error) -> Problem {
    let told = error.to_string();
    let told = told.split(" at line ").next().unwrap_or(&told);
    Problem::new(
        Code::MalformedJson,
        format!(
            "The body stops being JSON at line {}, column {}: {told}. Numbers must be finite and written \
             as JSON writes them.",
            error.line(),
            error.column()
        ),
    )
}

fn refuse_repeated_keys(bytes: &[u8]) -> Result<(), Problem> {
    let repeated = RefCell::new(None);
    let mut text = serde_json::Deserializer::from_slice(bytes);
    let walk = Walk {
        pointer: String::new(),
        repeated: &repeated,
    };
    let outcome = walk.deserialize(&mut text).and_then(|()| text.end());
    if let Some(pointer) = repeated.into_inner() {
        return Err(Problem::field(
            pointer,
            "is given twice in one object",
            "keep one of the two",
        ));
    }
    outcome.map_err(|error| syntax(&error))
}

/// Walks any JSON value and stops at the first key that an object has twice.
struct Walk<'a> {
    pointer: String,
    repeated: &'a RefCell<Option<String>>,
}

impl<'de> DeserializeSeed<'de> for Walk<'_> {
    type Value = ();
    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Walk<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }
    fn visit_bool<E>(self, _: bool) -> Result<(), E> {
        Ok(())
    }
    fn visit_i64<E>(self, _: i64) -> Result<(), E> {
        Ok(())
    }
    fn visit_u64<E>(self, _: u64) -> Result<(), E> {
        Ok(())
    }
    fn visit_f64<E>(self, _: f64) -> Result<(), E> {
        Ok(())
    }
    fn visit_str<E>(self, _: &str) -> Result<(), E> {
        Ok(())
    }
    fn visit_unit<E>(self) -> Result<(), E> {
        Ok(())
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<(), A::Error> {
        let mut index = 0_usize;
        loop {
            let step = Walk {
                pointer: format!("{}/{index}", self.pointer),
                repeated: self.repeated,
            };
            if items.next_element_seed(step)?.is_none() {
                return Ok(());
            }
            index += 1;
        }
    }
    fn visit_map<A: MapAccess<'de>>(self, mut members: A) -> Result<(), A::Error> {
        let mut seen = HashSet::new();
        while let Some(key) = members.next_key::<String>()? {
            let pointer = format!("{}/{}", self.pointer, escape(&key));
            if !seen.insert(key) {
                *self.repeated.borrow_mut() = Some(pointer);
                return Err(serde::de::Error::custom("a key is given twice"));
            }
            members.next_value_seed(Walk {
                pointer,
                repeated: self.repeated,
            })?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use std::collections::BTreeMap;

    use serde::Deserialize;

    use super::*;

    #[derive(Debug, Deserialize)]
    #[serde(deny_unknown_fields)]
    #[allow(dead_code)] // read through Debug alone
    struct Fall {
        height: f64,
        #[serde(default)]
        parts: Vec<Part>,
        #[serde(default)]
        inputs: BTreeMap<String, f64>,
    }

    #[derive(Debug, Deserialize)]
    #[allow(dead_code)]
    struct Part {
        serial: String,
    }

    /// The code, and the pointer of the first error where there is one.
    fn refusal(text: &str) -> (&'static str, Option<String>) {
        let problem = read::<Fall>(text.as_bytes()).unwrap_err();
        let pointer = problem.document()["errors"][0]["pointer"]
            .as_str()
            .map(str::to_owned);
        (problem.code().name(), pointer)
    }

    #[test]
    fn refusals_name_the_place() {
        let invalid = |text, pointer: &str| {
            assert_eq!(
                refusal(text),
                ("invalid_input", Some(pointer.to_owned())),
                "{text}"
            );
        };
        invalid(r#"{"height":"ten"}"#, "/height");
        invalid(r#"{}"#, "/height");
        invalid(
            r#"{"height":1,"parts":[{"serial":"a"},{}]}"#,
            "/parts/1/serial",
        );
        invalid(r#"{"height":1,"hieght":2}"#, "/hieght");
        invalid(r#"{"height":1,"height":2}"#, "/height");
        invalid(
            r#"{"height":1,"inputs":{"drop/a":1,"drop/a":2}}"#,
            "/inputs/drop~1a",
        );
        invalid(r#"{"height":null}"#, "/height");
    }

    #[test]
    fn what_is_not_json_is_placed_by_line_and_column() {
        for text in [
            r#"{"height":NaN}"#,
            r#"{"height":1e999}"#,
            r#"{"height":1"#,
            "",
            "{} {}",
            "\u{feff}{}",
        ] {
            assert_eq!(refusal(text).0, "malformed_json", "{text}");
        }
        let problem = read::<Fall>(b"{\n  \"height\": 1,,\n}").unwrap_err();
        assert!(
            problem.to_string().contains("line 2, column 15"),
            "{problem}"
        );
        assert_eq!(
            read::<Fall>(&[b'{', b'"', 0xff, b'"']).unwrap_err().code(),
            Code::MalformedJson
        );
        let deep = "[".repeat(10_000);
        assert_eq!(
            read::<Fall>(deep.as_bytes()).unwrap_err().code(),
            Code::MalformedJson
        );
    }
}
