//! Every field of a sign-off and of a mark for a day, altered one after the other: nothing verifies, and the
//! error says whether the header, the statement or the signature is at fault. Both were made by the program
//! itself and stand, with their device, among the leaves that the trail's own tests tamper with.

use super::*;
use crate::day_mark;

/// The JWS of that leaf of the fixture, and its device's key.
fn real(kind: &str) -> (String, PublicKey) {
    let leaves = include_str!("../../../trail/src/export_tests_leaves.jsonl");
    let leaves: Vec<Value> = leaves
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    let facts = |kind: &str| {
        let mut found = leaves.iter().filter(|leaf| leaf["entry"]["kind"] == kind);
        found.next().unwrap()["entry"]["facts"].clone()
    };
    let key = serde_json::from_value(facts("device.registered")["key"].clone()).unwrap();
    (facts(kind)["jws"].as_str().unwrap().to_owned(), key)
}

type Check = fn(&str, &PublicKey) -> Result<(), SignOffError>;

/// Both kinds of signed statement: what checks them, and the least number of claims they make.
const KINDS: [(&str, Check, usize); 2] = [
    ("signoff.made", |jws, key| verify(jws, key).map(drop), 14),
    (
        "day.signed",
        |jws, key| day_mark::verify(jws, key).map(drop),
        18,
    ),
];

fn decoded(part: &str) -> Value {
    serde_json::from_slice(&URL_SAFE_NO_PAD.decode(part).unwrap()).unwrap()
}

fn encoded(value: &Value) -> String {
    URL_SAFE_NO_PAD.encode(canonical_bytes(value).unwrap())
}

/// Pointers (RFC 6901) to every value inside, the branches as well as what hangs on them.
fn pointers(value: &Value, at: &str, found: &mut Vec<String>) {
    let mut inside = |name: String, value: &Value| {
        let at = format!("{at}/{}", name.replace('~', "~0").replace('/', "~1"));
        found.push(at.clone());
        pointers(value, &at, found);
    };
    match value {
        Value::Object(members) => members
            .iter()
            .for_each(|(name, value)| inside(name.clone(), value)),
        Value::Array(items) => items
            .iter()
            .enumerate()
            .for_each(|(index, value)| inside(index.to_string(), value)),
        _ => {}
    }
}

/// Another value of the same shape, so that it is not the shape which is refused: the last digit or letter is
/// another one.
fn altered(value: &Value) -> Value {
    match value {
        Value::String(text) => {
            let mut text = text.clone();
            let last = text.pop();
            text.push(if last == Some('0') { '1' } else { '0' });
            json!(text)
        }
        Value::Number(number) => json!(number.as_f64().unwrap() + 1.0),
        Value::Bool(yes) => json!(!yes),
        Value::Array(items) => json!(items.iter().chain([&json!("0")]).collect::<Vec<_>>()),
        Value::Object(members) => {
            let mut members = members.clone();
            members.insert("0".to_owned(), json!(0));
            Value::Object(members)
        }
        Value::Null => json!(0),
    }
}

/// The value without what the pointer leads to.
fn without(value: &Value, pointer: &str) -> Value {
    let mut value = value.clone();
    let (parent, name) = pointer.rsplit_once('/').unwrap();
    match value.pointer_mut(parent).unwrap() {
        Value::Object(members) => drop(members.remove(name).unwrap()),
        Value::Array(items) => drop(items.remove(name.parse().unwrap())),
        _ => unreachable!(),
    }
    value
}

#[test]
fn no_claim_can_be_altered_or_taken_away_under_its_signature() {
    for (kind, check, least) in KINDS {
        let (jws, key) = real(kind);
        check(&jws, &key).unwrap();
        let parts: Vec<&str> = jws.split('.').collect();
        let payload = decoded(parts[1]);
        assert_eq!(encoded(&payload), parts[1]);
        let mut claims = Vec::new();
        pointers(&payload, "", &mut claims);
        assert!(claims.len() >= least, "{kind}: {claims:?}");
        let mut added = payload.clone();
        added["also"] = json!(1);
        let mut changed = vec![("an added claim".to_owned(), added)];
        for claim in claims {
            let mut other = payload.clone();
            let value = other.pointer_mut(&claim).unwrap();
            *value = altered(value);
            changed.push((claim.clone(), other));
            changed.push((format!("{claim} gone"), without(&payload, &claim)));
        }
        for (what, payload) in changed {
            let jws = format!("{}.{}.{}", parts[0], encoded(&payload), parts[2]);
            assert_eq!(
                check(&jws, &key),
                Err(SignOffError::BadSignature),
                "{kind}: {what}"
            );
        }
    }
}

#[test]
fn no_header_field_can_be_altered_and_the_error_names_it() {
    for (kind, check, _) in KINDS {
        let (jws, key) = real(kind);
        let parts: Vec<&str> = jws.split('.').collect();
        let header = decoded(parts[0]);
        assert_eq!(header.as_object().unwrap().len(), 3);
        let refused = |header: &Value| {
            let jws = format!("{}.{}.{}", encoded(header), parts[1], parts[2]);
            check(&jws, &key).unwrap_err()
        };
        for name in ["alg", "kid", "typ"] {
            let mut other = header.clone();
            other[name] = altered(&header[name]);
            let error = refused(&other);
            match name {
                // Any id is an id; only the signature knows that it is another one.
                "kid" => assert_eq!(error, SignOffError::BadSignature),
                _ => assert!(
                    error.to_string().contains(&format!("its {name}")),
                    "{error}"
                ),
            }
            let error = refused(&without(&header, &format!("/{name}"))).to_string();
            assert!(
                error.contains(&format!("missing field `{name}`")),
                "{error}"
            );
        }
        let mut added = header.clone();
        added["crit"] = json!(["exp"]);
        let error = refused(&added).to_string();
        assert!(error.contains("unknown field `crit`"), "{error}");
    }
}

#[test]
fn no_bit_of_a_signature_can_be_flipped() {
    for (kind, check, _) in KINDS {
        let (jws, key) = real(kind);
        let (text, signature) = jws.rsplit_once('.').unwrap();
        let signature = URL_SAFE_NO_PAD.decode(signature).unwrap();
        for bit in 0..signature.len() * 8 {
            let mut other = signature.clone();
            other[bit / 8] ^= 1 << (bit % 8);
            let jws = format!("{text}.{}", URL_SAFE_NO_PAD.encode(other));
            assert_eq!(
                check(&jws, &key),
                Err(SignOffError::BadSignature),
                "{kind}: bit {bit}"
            );
        }
    }
}
